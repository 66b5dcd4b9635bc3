"""Counts the sheets in this folder with Python's own csv reader: the numbers in README.md and OpenSheetsTest.

Run it in this folder: python3 count.py
"""
import collections
import csv
import re
import statistics


def rows(name):
    with open(name, newline="") as file:
        return [dict(row, line=number) for number, row in enumerate(csv.DictReader(file), 2)]


def told(name, numbers):
    print("  %-20s %4d  %s %s %s" % (name, len(numbers), min(numbers), statistics.median(numbers), max(numbers)))


print("daily_tank_checks.csv, one line for each quantity: how many, least, median, most")
checks = rows("daily_tank_checks.csv")
columns = [c for c in checks[0] if re.match("temp|salinity|ph_|do_", c)]
bad = [r for r in checks if r["date"] and r["time_start"] and not re.fullmatch(r"\d+:\d\d:?\d*(AM)?", r["time_start"])]
print("  rows", len(checks), "without date", sum(not r["date"] for r in checks),
      "of those with values", sum(not r["date"] and any(r[c] for c in columns) for r in checks))
print("  no time of day:", [(r["line"], r["sample"], r["time_start"]) for r in bad])
for tank in ("1", "3"):
    print(" tank", tank)
    sound = [r for r in checks if r["sample"] == tank and r["date"] and r not in bad]
    for column in columns:
        told(column, [float(r[column]) for r in sound if r[column]])
    print("  first", min(r["date"] for r in sound if any(r[c] for c in columns)),
          "last", max(r["date"] for r in sound if any(r[c] for c in columns)))

print("tanks_5min_ph_co2_part.csv")
tanks = rows("tanks_5min_ph_co2_part.csv")
for tank in ("Bare", "Eelgrass"):
    of_tank = [r for r in tanks if r["tank"] == tank]
    print(" ", tank, len(of_tank), of_tank[0]["datetime"], of_tank[-1]["datetime"])
    for column in ("temp_c", "sal_psu", "do_mgl", "ph_total"):
        told(column, [float(r[column]) for r in of_tank])

for name in ("ambient", "machine"):
    print(name + "_temperature_part.csv")
    sheet = rows(name + "_temperature_part.csv")
    # What can be meant at all of temperature: -2 to 45 °C.
    bad = [r["line"] for r in sheet if not -2 <= (float(r["value"]) - 32) / 1.8 <= 45]
    sound = [r for r in sheet if r["line"] not in bad]
    print("  rows", len(sheet), sheet[0]["timestamp"], "to", sheet[-1]["timestamp"], "cannot be meant:", bad)
    told("value", [float(r["value"]) for r in sound])
    stamps = collections.Counter(r["timestamp"] for r in sound)
    print("  stamps that stand more than once:", sorted(s for s in stamps if stamps[s] > 1))
