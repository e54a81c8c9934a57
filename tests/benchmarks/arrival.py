#!/usr/bin/env python3
"""The forecast's sampler beside the same model in NumPy, in one run on one core.

usage: arrival.py endplate-bench-arrival DATASETS [--markdown]

The C++ program writes each question (lesions, ways in every limb, parameters) into a folder, times
itself and prints its answers; this script answers the same question from these files, compares the
answers and times itself in the same minute. Both are pinned to one core. What NumPy gets ready made
and outside the clock: the ways from each lesion to each target in every limb, one row a patient.
"""
import json
import os
import subprocess
import sys
import tempfile
import time

os.environ["OMP_NUM_THREADS"] = os.environ["OPENBLAS_NUM_THREADS"] = "1"
import numpy as np  # noqa: E402

ROUNDS = 3


def load(folder):
    with open(os.path.join(folder, "question.json")) as file:
        q = json.load(file)
    n = q["samples"]

    def column(name):
        values = np.fromfile(os.path.join(folder, name))
        return np.ascontiguousarray(np.resize(values, n))

    for lesion in q["lesions"]:
        lesion["place"] = column(lesion["places"])
    for target in q["targets"]:
        for way in target["ways"]:
            way["to_target"] = column(way["to_target"])
            way["leaves"] = column(way["leaves"])
    return q


def log_parameters(p):
    sd = np.sqrt(np.log1p((p["sd"] / p["mean"]) ** 2))
    return p["mean"] * np.exp(-0.5 * sd * sd), sd


def lognormal(rng, p, n):
    median, sd = log_parameters(p)
    x = rng.standard_normal(n)
    x *= sd
    np.exp(x, out=x)
    x *= median
    return x


def summary(x):
    """Mean, SD and type 7 percentiles; the order of x is not kept."""
    n = len(x)
    mean = x.mean()
    off = x - mean
    sd = np.sqrt(off @ off / (n - 1))
    ranks = np.array([0.05, 0.5, 0.95]) * (n - 1)
    low = ranks.astype(int)
    x.partition(np.unique(np.concatenate([low, np.minimum(low + 1, n - 1)])))
    part = ranks - low
    return mean, sd, *(x[low] * (1 - part) + x[np.minimum(low + 1, n - 1)] * part)


def answer(q, seed):
    rng = np.random.Generator(np.random.SFC64(seed))
    n = q["samples"]
    p = q["parameters"]
    z = rng.standard_normal(n)
    block_first = lognormal(rng, p["block_first"], n)
    block_first + lognormal(rng, p["block_useful"], n)
    grade = rng.random(n)
    slowness = {}
    lesions = []
    for model in q["lesions"]:
        if model["repaired"]:
            delay = np.zeros(n)
            for _ in range(model["coaptations"]):
                delay += np.maximum(
                    0.0, p["coaptation"]["mean"] + p["coaptation"]["sd"] * rng.standard_normal(n))
            ready = model["operation_days"] + delay
            block = np.zeros(n, bool)
            growth = np.ones(n, bool)
        else:
            ready = np.maximum(
                0.0, p["latency"]["mean"] + p["latency"]["sd"] * rng.standard_normal(n))
            block = grade <= model["chance"][0]
            growth = ~block & (grade <= model["chance"][0] + model["chance"][1])
        at = model["place"]
        if model["sd_mm"] > 0.0:
            at = np.clip(at + model["sd_mm"] * rng.standard_normal(n), 0.0, model["length"])
        lesions.append((model, at, ready, block, growth))

    length = q["slowing_mm"]
    scale = length / (length * np.expm1(q["reference_mm"] / length) / q["reference_mm"])
    results = []
    for target in q["targets"]:
        best = None
        for way in target["ways"]:
            model, at, ready, block, growth = lesions[way["lesion"]]
            rate = target["rates"][1 if model["repaired"] else 0]
            if rate["id"] not in slowness:
                median, sd = log_parameters(rate)
                slowness[rate["id"]] = np.exp(-sd * z) / median
            below = at < way["leaves"]
            every = bool(below.all())
            distance = way["to_target"] - at
            if model["repaired"]:
                distance += 0.5 * model["gap_mm"]
            if len(target["ways"]) == 1:
                chosen = np.flatnonzero(growth if every else growth & below)
                blocked = np.count_nonzero(block if every else block & below)
                there = distance[chosen]
                arrive = there / length
                np.expm1(arrive, out=arrive)
                arrive *= scale
                arrive *= slowness[rate["id"]][chosen]
                arrive += ready[chosen]
                if not every:
                    distance = distance[below]
                best = (distance, arrive, blocked, len(distance))
                continue
            # 0: not below, 1: none, 2: growth, 3: block
            state = np.where(below, 1 + growth + 2 * block, 0)
            arrive = distance / length
            np.expm1(arrive, out=arrive)
            arrive *= scale
            arrive *= slowness[rate["id"]]
            arrive += ready
            if best is None:
                best = (distance, arrive, state)
                continue
            take = (state > best[2]) | ((state == best[2]) & (state == 2) & (arrive < best[1]))
            for old, new in zip(best, (distance, arrive, state)):
                np.copyto(old, new, where=take)
        if len(target["ways"]) > 1:
            distance, arrive, state = best
            grows = state == 2
            best = (distance[state > 0], arrive[grows], np.count_nonzero(state == 3),
                    np.count_nonzero(state))
        distance, arrive, blocked, below = best
        m = len(arrive)
        result = {"distance": summary(distance)}
        if target["motor"]:
            units = lognormal(rng, p["units"], m)
            units += arrive
            movement = lognormal(rng, p["movement"], m)
            movement += units
            useful = lognormal(rng, target["useful"], m)
            useful += movement
            chance = arrive / p["window"]["median"]
            np.power(chance, p["window"]["shape"], out=chance)
            chance += 1.0
            np.reciprocal(chance, out=chance)
            in_time = chance.sum() + blocked
            result["units"] = summary(units)
            result["movement"] = summary(movement)
        else:
            useful = lognormal(rng, target["useful"], m)
            useful += arrive
            in_time = float(m + blocked)
        result["arrive"] = summary(arrive)
        result["useful"] = summary(useful)
        result["in_time"] = in_time / below
        results.append(result)
    return results


def compare(q, numpy_results, cpp_results):
    """Largest difference of the two, in standard errors of the difference of two means; of the
    percentiles in standard errors of a percentile of a normal sample."""
    worst = 0.0
    n = q["samples"]
    for a, b in zip(numpy_results, cpp_results):
        for key in ("arrive", "units", "movement", "useful"):
            if key not in a:
                continue
            mean, sd, _, p50, _ = a[key]
            error = sd * np.sqrt(2.0 / (n * b["share_growing"]))
            worst = max(worst, abs(mean - b[key][0]) / error)
            worst = max(worst, abs(p50 - b[key][3]) / (1.2533 * error))
        error = np.sqrt(2.0 * 0.25 / n)
        worst = max(worst, abs(a["in_time"] - b["in_time"]) / error)
    return worst


def main():
    program, datasets = sys.argv[1:3]
    core = max(os.sched_getaffinity(0))
    os.sched_setaffinity(0, {core})
    cases = [("radial", 2000, 20)]
    cases += [("plexus", 4000, t) for t in (5, 10, 20, 40, 80)]
    cases += [("plexus", n, 20) for n in (1000, 2000, 8000, 16000, 32000, 64000)]
    print("case samples targets  C++ ms  NumPy ms  ratio  ns/target/sample  words %  numbers %  "
          "ways %  differ")
    for name, samples, targets in cases:
        with tempfile.TemporaryDirectory() as folder:
            own, other = [], []
            q = None
            for _ in range(ROUNDS):
                out = subprocess.run(
                    [program, datasets, folder, name, str(samples), str(targets)],
                    check=True, capture_output=True, text=True)
                cpp = json.loads(out.stdout)
                own.append(cpp)
                q = q or load(folder)
                best = 1e9
                for k in range(max(2, int(20000 / samples))):
                    start = time.process_time()
                    results = answer(q, k + 1)
                    best = min(best, time.process_time() - start)
                other.append(best)
            best = min(own, key=lambda run: run["seconds"])
            theirs = min(other)
            count = len(q["targets"])
            print(f"{name} {samples:6d} {count:3d}  {1e3 * best['seconds']:8.2f}  "
                  f"{1e3 * theirs:8.2f}  {theirs / best['seconds']:5.1f}  "
                  f"{1e9 * best['seconds'] / samples / count:6.1f}  "
                  f"{100 * best['words_seconds'] / best['seconds']:5.1f}  "
                  f"{100 * best['numbers_seconds'] / best['seconds']:5.1f}  "
                  f"{100 * best['ways_seconds'] / best['seconds']:5.1f}  "
                  f"{compare(q, results, cpp['targets']):.1f}", flush=True)


main()
