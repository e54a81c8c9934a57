#!/usr/bin/env python3
"""Runs the benchmark of the map of risk, draws its cost, and says how it stands beside libraries.

usage: risk_map.py endplate-bench-risk DATASETS PICTURE.svg [FINENESS [LIMBS]]
       risk_map.py FIGURES.csv PICTURE.svg
"""
import csv
import subprocess
import sys

import matplotlib

matplotlib.use("svg")
import matplotlib.pyplot as plt  # noqa: E402
import numpy as np  # noqa: E402

if sys.argv[1].endswith(".csv"):
    text, picture = open(sys.argv[1], encoding="utf-8").read(), sys.argv[2]
else:
    bench, datasets, picture, *rest = sys.argv[1:]
    text = subprocess.run([bench, datasets, *rest], check=True, text=True,
                          capture_output=True).stdout
rows = list(csv.DictReader(text.splitlines()))

# The same bytes from the same figures.
plt.rcParams["svg.hashsalt"] = "endplate"
figure, panels = plt.subplots(1, 3, figsize=(11, 3.4), layout="constrained")
labels = {"vertices": "vertices of the skin", "limbs": "sampled limbs", "nerves": "nerves"}
for panel, (what, label) in zip(panels, labels.items()):
    for depth, marker in (("depth 0", "o"), ("depth 10", "s")):
        of = [row for row in rows if row["what"] == "cost" and row["question"] == what
              and row["name"] == depth]
        x = np.array([float(row["count"]) for row in of])
        y = np.array([float(row["value"]) for row in of])
        panel.plot(x, y, marker + "-", color="black" if marker == "o" else "0.5", markersize=4,
                   linewidth=1, label=f"{depth} mm")
        power = np.polyfit(np.log(x[x > 0]), np.log(y[x > 0]), 1)[0]
        print(f"{what}, {depth} mm: grows with the power {power:.2f}")
    panel.set_xlabel(label)
    panel.set_ylabel("processor time, s")
    panel.xaxis.set_major_locator(plt.MaxNLocator(4))
    panel.set_xlim(left=0)
    panel.set_ylim(bottom=0)
panels[0].legend(frameon=False)
figure.suptitle("chance within 10 mm, one map", fontsize=10)
figure.savefig(picture, metadata={"Date": None})

own = {row["question"]: float(row["value"]) for row in rows if row["what"] == "own"}
print("question | method | microseconds a vertex | times as long as ours")
for row in rows:
    if row["what"] != "rival":
        continue
    mine = own[row["question"]]
    print(f"{row['question']} | {row['name']} | {row['value']} | {float(row['value']) / mine:.0f}")
    if row["question"].endswith("nearest"):
        # It answers every distance at once: beside each of ours.
        depth = row["question"].removesuffix(" nearest")
        for question, micro in own.items():
            if question.startswith(depth + " within"):
                print(f"  for {question}: {float(row['value']) / micro:.0f}")
for row in rows:
    if row["what"] in ("own", "prepare", "apart"):
        print(" | ".join(row.values()))
