#!/usr/bin/env python3
"""The forecast's sampler beside the same model in NumPy, in one run on one core.

usage: arrival.py endplate-bench-arrival DATASETS

The C++ program writes each question (lesions, ways in every limb, parameters) into a folder, times
itself and prints its answers; this script answers the same question from these files, compares the
answers and times itself in the same minute. Both are pinned to one core. What is ready made and
outside the clock: for the program the limbs' lengths by columns, as they are made once a case; for
NumPy the ways from each lesion to each target in every limb, one row a patient.

NumPy is timed in double and in single precision, which the program's columns have, and the shorter
time counts.
"""
import json
import math
import os
import subprocess
import sys
import tempfile
import time

os.environ["OMP_NUM_THREADS"] = os.environ["OPENBLAS_NUM_THREADS"] = "1"
import numpy as np  # noqa: E402

ROUNDS = 3


class Precision:
    """Columns, random numbers and results of one type."""

    def __init__(self, dtype):
        self.dtype = dtype

    def normals(self, rng, n):
        return rng.standard_normal(n, dtype=self.dtype)

    def uniforms(self, rng, n):
        return rng.random(n, dtype=self.dtype)


def load(folder, precision):
    with open(os.path.join(folder, "question.json")) as file:
        q = json.load(file)
    n = q["samples"]

    def column(name):
        values = np.fromfile(os.path.join(folder, name))
        return np.ascontiguousarray(np.resize(values, n).astype(precision.dtype))

    for lesion in q["lesions"]:
        lesion["place"] = column(lesion["places"])
    for target in q["targets"]:
        for way in target["ways"]:
            way["to_target"] = column(way["to_target"])
            way["leaves"] = column(way["leaves"])
    return q


def log_parameters(p):
    """Plain floats, which leave the precision of a column as it is."""
    sd = math.sqrt(math.log1p((p["sd"] / p["mean"]) ** 2))
    return p["mean"] * math.exp(-0.5 * sd * sd), sd


def lognormal(rng, p, n, precision):
    median, sd = log_parameters(p)
    x = precision.normals(rng, n)
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


def answer(q, seed, precision):
    rng = np.random.Generator(np.random.SFC64(seed))
    n = q["samples"]
    p = q["parameters"]
    z = precision.normals(rng, n)
    block_first = lognormal(rng, p["block_first"], n, precision)
    block_first + lognormal(rng, p["block_useful"], n, precision)
    grade = precision.uniforms(rng, n)
    slowness = {}
    lesions = []
    for model in q["lesions"]:
        if model["repaired"]:
            delay = np.zeros(n, precision.dtype)
            for _ in range(model["coaptations"]):
                delay += np.maximum(
                    0.0, p["coaptation"]["mean"] + p["coaptation"]["sd"] * precision.normals(rng, n))
            ready = model["operation_days"] + delay
            block = np.zeros(n, bool)
            growth = np.ones(n, bool)
        else:
            ready = np.maximum(
                0.0, p["latency"]["mean"] + p["latency"]["sd"] * precision.normals(rng, n))
            block = grade <= model["chance"][0]
            growth = ~block & (grade <= model["chance"][0] + model["chance"][1])
        at = model["place"]
        if model["sd_mm"] > 0.0:
            at = np.clip(at + model["sd_mm"] * precision.normals(rng, n), 0.0, model["length"])
        lesions.append((model, at, ready, block, growth))

    length = q["slowing_mm"]
    scale = q["reference_mm"] / math.expm1(q["reference_mm"] / length)
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
            units = lognormal(rng, p["units"], m, precision)
            units += arrive
            movement = lognormal(rng, p["movement"], m, precision)
            movement += units
            useful = lognormal(rng, target["useful"], m, precision)
            useful += movement
            chance = arrive / p["window"]["median"]
            np.power(chance, p["window"]["shape"], out=chance)
            chance += 1.0
            np.reciprocal(chance, out=chance)
            in_time = chance.sum() + blocked
            result["units"] = summary(units)
            result["movement"] = summary(movement)
        else:
            useful = lognormal(rng, target["useful"], m, precision)
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
    precisions = {"double": Precision(np.float64), "single": Precision(np.float32)}
    print("case samples targets  C++ ms  NumPy double ms  single ms  ratio  without ways  "
          "ns/target/sample  words %  numbers %  ways %  limbs ms  columns ms  differ")
    for case, samples, targets in cases:
        with tempfile.TemporaryDirectory() as folder:
            own, other = [], {"double": [], "single": []}
            questions = None
            for _ in range(ROUNDS):
                out = subprocess.run(
                    [program, datasets, folder, case, str(samples), str(targets)],
                    check=True, capture_output=True, text=True)
                cpp = json.loads(out.stdout)
                own.append(cpp)
                questions = questions or {name: (precision, load(folder, precision))
                                          for name, precision in precisions.items()}
                for name, (precision, q) in questions.items():
                    for k in range(max(4, int(40000 / samples))):
                        start = time.process_time()
                        results = answer(q, k + 1, precision)
                        other[name].append(time.process_time() - start)
            best = min(own, key=lambda run: run["seconds"])
            double, single = min(other["double"]), min(other["single"])
            theirs = min(double, single)
            q = questions["double"][1]
            count = len(q["targets"])
            seconds = best["seconds"]
            print(f"{case} {samples:6d} {count:3d}  {1e3 * seconds:8.2f}  "
                  f"{1e3 * double:8.2f}  {1e3 * single:8.2f}  {theirs / seconds:5.1f}  "
                  f"{theirs / (seconds - best['ways_seconds']):5.1f}  "
                  f"{1e9 * seconds / samples / count:6.1f}  "
                  f"{100 * best['words_seconds'] / seconds:5.1f}  "
                  f"{100 * best['numbers_seconds'] / seconds:5.1f}  "
                  f"{100 * best['ways_seconds'] / seconds:5.1f}  "
                  f"{1e3 * best['limbs_seconds']:6.1f}  {1e3 * best['columns_seconds']:5.2f}  "
                  f"{compare(q, results, cpp['targets']):.1f}", flush=True)


main()
