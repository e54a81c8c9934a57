#!/usr/bin/env python3
"""Draws what a comparison of transfers costs against limbs and candidates, with straight lines.

usage: transfer_cost.py endplate-bench-transfer DATASETS PICTURE.svg CASE...
"""
import csv
import subprocess
import sys

import matplotlib

matplotlib.use("svg")
import matplotlib.pyplot as plt  # noqa: E402
import numpy as np  # noqa: E402

bench, datasets, picture, *cases = sys.argv[1:]
text = subprocess.run([bench, datasets, *cases], check=True, text=True, capture_output=True).stdout
rows = list(csv.DictReader(text.splitlines()))

# The same bytes from the same figures.
plt.rcParams["svg.hashsalt"] = "endplate"
figure, panels = plt.subplots(1, 2, figsize=(9, 3.4), layout="constrained")
for panel, what, label in zip(panels, ("limbs", "candidates"), ("sampled limbs", "candidate pairs")):
    of = [row for row in rows if row["what"] == what]
    x = np.array([float(row[what]) for row in of])
    y = np.array([float(row["ms"]) for row in of])
    slope, start = np.polyfit(x, y, 1)
    share = 1.0 - np.sum((y - start - slope * x) ** 2) / np.sum((y - y.mean()) ** 2)
    print(f"{what}: {start:.1f} ms + {slope:.4f} ms each, share of variance explained {share:.4f}")
    other = f"{of[0]['candidates']} pairs" if what == "limbs" else f"{of[0]['limbs']} limbs"
    panel.plot(x, start + slope * x, color="0.6", linewidth=1)
    panel.plot(x, y, "o", color="black", markersize=4)
    panel.set_xlabel(label)
    panel.set_ylabel("processor time, ms")
    panel.set_title(f"reach, {other}", fontsize=10)
    panel.xaxis.set_major_locator(plt.MaxNLocator(5))
    panel.set_xlim(left=0)
    panel.set_ylim(bottom=0)
figure.savefig(picture, metadata={"Date": None})
for row in rows:
    print(",".join(row.values()))
