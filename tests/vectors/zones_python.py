"""Writes tests/data/zoneinfo.csv: local times near a change of the clock, resolved by Python's zoneinfo.

Run from the top of the repository, with the IANA time zones installed:

    python3 tests/vectors/zones_python.py

A missing time and a doubled time are read with fold 0: forward over the gap, and the first of two.
"""

import csv
import pathlib
import platform
from datetime import datetime, timedelta, timezone
from zoneinfo import ZoneInfo

CASES = [
    ("Europe/Dublin", "2026-03-29", ["00:59", "01:00", "01:30", "01:59", "02:00", "06:00"]),
    ("Europe/Dublin", "2026-10-25", ["00:59", "01:00", "01:30", "02:00", "06:00"]),
    ("America/St_Johns", "2026-03-08", ["01:59", "02:30", "03:00"]),
    ("America/St_Johns", "2026-11-01", ["00:59", "01:30", "02:00"]),
    ("Australia/Lord_Howe", "2026-10-04", ["01:59", "02:15", "02:30"]),
    ("Australia/Lord_Howe", "2026-04-05", ["01:15", "01:45", "02:00"]),
    ("Pacific/Auckland", "2026-09-27", ["02:30"]),
]


def offset_min(zone, at):
    return int(at.astimezone(zone).utcoffset().total_seconds() // 60)


def change(zone, day):
    """The one change of the clock within a day of local noon: offset before, instant, offset after."""
    low = datetime.fromisoformat(f"{day}T12:00").replace(tzinfo=zone).astimezone(timezone.utc) - timedelta(days=1)
    high = low + timedelta(days=2)
    before, after = offset_min(zone, low), offset_min(zone, high)
    assert before != after
    while high - low > timedelta(seconds=1):
        middle = low + (high - low) / 2
        low, high = (middle, high) if offset_min(zone, middle) == before else (low, middle)
    return before, round(high.timestamp() / 60) * 60, after


rows = []
for name, day, times in CASES:
    zone = ZoneInfo(name)
    before, at, after = change(zone, day)
    for time in times:
        local = datetime.fromisoformat(f"{day}T{time}").replace(tzinfo=zone, fold=0)
        planned = int(local.astimezone(timezone.utc).timestamp())
        inputs = f"zone={name};date={day};time={time}:00;before={before};at={at};after={after}"
        rows.append((inputs, planned))

out = pathlib.Path(__file__).resolve().parent.parent / "data" / "zoneinfo.csv"
with out.open("w", newline="") as file:
    file.write(f"# Python {platform.python_version()} zoneinfo, written by tests/vectors/zones_python.py\n")
    writer = csv.writer(file, lineterminator="\n")
    writer.writerow("id origin mark formula inputs expected tolerance unit".split())
    for number, (inputs, planned) in enumerate(rows, start=1):
        writer.writerow([f"Z{number}", "program", "published", "units.planned", inputs, planned, "0", "s"])
print(f"{len(rows)} rows to {out}")
