"""Prints the table of ./bench/peers/seawater/compare from what the runs left in a folder; fails where a peer computed something else.

    python3 bench/peers/seawater/table.py bench/target/peers/seawater
"""

import csv
import json
import pathlib
import re
import statistics
import sys

PEERS = {
    "gsw": "GSW",
    "c-O2": "own C, `-O2`",
    "c-O3": "own C, `-O3 -march=native`",
}
SAME = 1e-9  # relative, of the means of all results


def table_of(path):
    """Rows by name; nothing where that peer was not there."""
    if not path.is_file():
        return {}
    with path.open(encoding="utf-8") as lines:
        return {row["name"]: row for row in csv.DictReader(lines)}


def ours(path):
    """Median nanoseconds of each of our methods, by key: single, then batched."""
    medians = {}
    for run in json.loads(path.read_text(encoding="utf-8")):
        method = run["benchmark"].rsplit(".", 1)[1]
        single = method.removesuffix("Batched")
        key = re.sub("([A-Z])", r"_\1", single).lower()
        metric = run["primaryMetric"]
        assert metric["scoreUnit"] == "ns/op", metric["scoreUnit"]
        rounds = [value for fork in metric["rawData"] for value in fork]
        medians.setdefault(key, {})["single" if method == single else "batched"] = statistics.median(rounds)
    return medians


def cell(value):
    return "" if value is None else f"{value:.3g}" if value < 100 else f"{value:.0f}"


def main(folder):
    java = ours(folder / "jmh.json")
    means = table_of(folder / "means.csv")
    peers = {name: table_of(folder / f"{name}.csv") for name in PEERS}
    keys = list(java) + [key for rows in peers.values() for key in rows if key not in java]
    different = []
    print("| function | ours single ns | ours batched ns | C ns (which) | ratio ours/C |")
    print("|---|---:|---:|---:|---:|")
    for key in dict.fromkeys(keys):
        here = java.get(key, {})
        best = here.get("batched", here.get("single"))
        there = [(PEERS[name], rows[key]) for name, rows in peers.items() if key in rows]
        for which, row in there or [("", None)]:
            nanoseconds = float(row["ns_per_point"]) if row else None
            ratio = best / nanoseconds if best and nanoseconds else None
            print(
                f"| {key.replace('_', ' ')} | {cell(here.get('single'))} | {cell(here.get('batched'))}"
                f" | {cell(nanoseconds)}{f' ({which})' if which else ''} | {f'{ratio:.2f}' if ratio else ''} |"
            )
            if row and key in means:
                mine, theirs = float(means[key]["mean_result"]), float(row["mean_result"])
                if not abs(mine - theirs) <= SAME * abs(theirs):
                    different.append(f"{key}: our mean is {mine}, that of {which} {theirs}")
    if different:
        sys.exit("Not the same results:\n" + "\n".join(different))


main(pathlib.Path(sys.argv[1]))
