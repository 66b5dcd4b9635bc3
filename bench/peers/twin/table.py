#!/usr/bin/env python3
"""Prints what bench/peers/twin/compare measured as a table.

The error of a course is its largest difference from the reference at any sample, over the largest value of the quantity,
of the quantity where that is worst. "Same error" takes our own best time at that error from a line through our own
figures, logarithms of both; where even our coarsest run errs less, the time of that run.
"""

import math
import pathlib
import sys

OURS = ("AS_SUITS", "EXPLICIT")
NOTHING = 1e-12  # a quantity that is nothing but rounding in this plan
WORDS = {
    "AS_SUITS": "ours, additive of order 4",
    "EXPLICIT": "ours, Dormand-Prince",
    "bdf": "CVODE BDF, dense",
    "bdf-sparse": "CVODE BDF, sparse (KLU)",
    "adams": "CVODE Adams, fixed point",
    "dormand-prince": "ARKODE Dormand-Prince",
    "imex-3": "ARKODE additive of order 3, dense",
    "imex-4": "ARKODE additive of order 4, dense",
}


def course(path):
    lines = path.read_text(encoding="utf-8").splitlines()
    names = lines[0].split("\t")[1:]
    rows = [[float(value) for value in line.split("\t")[1:]] for line in lines[1:]]
    return {name: [row[i] for row in rows] for i, name in enumerate(names)}


def error(found, reference):
    worst = (0.0, "")
    for name, right in reference.items():
        largest = max(map(abs, right))
        if largest > NOTHING:
            worst = max(worst, (max(abs(a - b) for a, b in zip(found[name], right)) / largest, name))
    return worst


def at_error(line, wanted):
    """Milliseconds at an error, between the two figures it lies between; None where none of them errs so little."""
    coarsest, time = max(line)
    if wanted >= coarsest:
        return time
    for (e1, t1), (e2, t2) in zip(line, line[1:]):
        if min(e1, e2) <= wanted <= max(e1, e2) and e1 != e2:
            share = math.log(wanted / e1) / math.log(e2 / e1)
            return t1 * (t2 / t1) ** share
    return None


def main():
    folder = pathlib.Path(sys.argv[1])
    reference = course(folder / "reference")
    rows = []
    for file in ("java.times", "c.times"):
        for line in (folder / file).read_text(encoding="utf-8").splitlines():
            solver, tolerance, evaluations, steps, time = line.split("\t")
            far, where = error(course(folder / f"{solver}_{tolerance}.course"), reference)
            rows.append((solver, tolerance, float(evaluations), float(steps), float(time), far, where))
    chosen = {}  # what a run takes by itself
    for solver, tolerance, _, _, time, _, _ in rows:
        if solver == "AS_SUITS":
            chosen[tolerance] = time
    lines = {s: [(r[5], r[4]) for r in rows if r[0] == s] for s in OURS}
    print("| solver | tolerance | evaluations | steps | ms a year | error | µs an evaluation | ours/theirs, same tolerance "
          "| same error |")
    print("|---|---:|---:|---:|---:|---:|---:|---:|---:|")
    for solver, tolerance, evaluations, steps, time, far, where in rows:
        at = [t for t in (at_error(lines[s], far) for s in OURS) if t is not None]
        same = f"{min(at) / time:.2g}" if at and solver not in OURS else ""
        ratio = f"{chosen[tolerance] / time:.2g}" if solver not in OURS else ""
        print(f"| {WORDS[solver]} | {tolerance} | {evaluations:.0f} | {steps:.0f} | {time:.4g} | {far:.1e} "
              f"| {1e3 * time / evaluations:.2g} | {ratio} | {same} |")


if __name__ == "__main__":
    main()
