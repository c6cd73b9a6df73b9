"""Writes tests/data/mpmath.csv: chances of the normal distribution, by mpmath at 40 digits.

Run from the top of the repository, with mpmath 1.4 installed:

    python3 tests/vectors/forage_mpmath.py

The tails come from mpmath's own distribution function, and must agree with normal_sf.json beside this file. What a test
would decide comes from integrating over the unknown truth, not from the closed form that the core uses.
"""

import csv
import json
import pathlib

import mpmath as mp

mp.mp.dps = 40
HERE = pathlib.Path(__file__).resolve().parent


def below(limit, mean, spread):
    return mp.ncdf((mp.mpf(limit) - mp.mpf(mean)) / mp.mpf(spread))


def outlook(mean, spread, limit, laboratory=1):
    """Within and over, by integrating over the truth: a test scatters about it with the laboratory's spread."""
    mean, spread, limit = mp.mpf(mean), mp.mpf(spread), mp.mpf(limit)
    guard = laboratory * mp.sqrt(2) * mp.erfinv(mp.mpf("0.8"))
    ends = [mean - 12 * spread, mean - 3 * spread, mean, mean + 3 * spread, mean + 12 * spread]

    def integrate(chance):
        return mp.quad(lambda truth: mp.npdf(truth, mean, spread) * chance(truth), ends)

    within = integrate(lambda truth: mp.ncdf((limit - guard - truth) / laboratory))
    over = integrate(lambda truth: mp.ncdf((truth - limit - guard) / laboratory))
    return within, over


rows = []


def row(ident, formula, inputs, expected, tolerance, unit="1"):
    rows.append([ident, "program", "published", formula, inputs, mp.nstr(expected, 20), tolerance, unit])


for vector in json.loads((HERE / "normal_sf.json").read_text()):
    z = mp.mpf(vector["z"])
    tail = mp.ncdf(-z)
    assert abs(tail / mp.mpf(vector["sf"]) - 1) < mp.mpf("1e-16"), vector
    row(f"SF{vector['z']}", "forage.normal_above", f"z={vector['z']}", tail, "1e-10%")

for ident, mean, spread, limit in [
    ("F19", "12.0", "4.5", "10"),
    ("F20", "12.0", "4.5", "12"),
    ("F21", "22.1", "6", "12"),
    ("F22", "9.5", "1.0", "10"),
    ("chance1", "11", "3.5", "10"),
    ("chance2", "7.4", "2.2", "10"),
    ("chance3", "14.0", "4.5", "10"),
    ("chance4", "6.0", "3.0", "12"),
]:
    row(ident, "forage.chance", f"mean={mean};spread={spread};limit={limit}", below(limit, mean, spread), "1e-10%")

row("F23", "forage.passes_at_most", "limit=10", 10 - mp.sqrt(2) * mp.erfinv(mp.mpf("0.8")), "1e-9", "% of dry matter")

for number, (mean, spread, limit) in enumerate(
    [("12.0", "4.5", "10"), ("11.0", "2.2", "10"), ("9.0", "3.0", "10"), ("22.1", "6.0", "12")], start=1
):
    within, over = outlook(mean, spread, limit)
    inputs = f"mean={mean};spread={spread};limit={limit}"
    row(f"within{number}", "forage.test_within", inputs, within, "1e-9")
    row(f"over{number}", "forage.test_over", inputs, over, "1e-9")

for number, parts in enumerate([[("5.25", "12.0"), ("2.25", "11.0")], [("3", "9"), ("3", "14.5")]], start=1):
    whole = sum(mp.mpf(kg) for kg, _ in parts)
    mean = sum(mp.mpf(kg) * (mp.mpf(wsc) + 1) for kg, wsc in parts) / whole
    spread = mp.sqrt(sum((mp.mpf(kg) / whole) ** 2 for kg, _ in parts))
    inputs = ";".join(f"kg{i}={kg};wsc{i}={wsc}" for i, (kg, wsc) in enumerate(parts, start=1))
    row(f"mix{number}", "forage.mix_chance", f"{inputs};limit=10", below("10", mean, spread), "1e-9")

out = HERE.parent / "data" / "mpmath.csv"
with out.open("w", newline="") as file:
    file.write(f"# mpmath {mp.__version__}, chances written by tests/vectors/forage_mpmath.py\n")
    writer = csv.writer(file, lineterminator="\n")
    writer.writerow("id origin mark formula inputs expected tolerance unit".split())
    writer.writerows(rows)
print(f"{len(rows)} rows to {out}")
