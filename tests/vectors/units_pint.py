"""Writes tests/data/pint.csv: what people type, converted by pint.

Run from the top of the repository, with pint 0.25 installed:

    python3 tests/vectors/units_pint.py

pint defines its pound, inch, hand and calorie itself; nothing here repeats a factor of the core.
"""

import csv
import pathlib

import pint

ureg = pint.UnitRegistry(autoconvert_offset_to_baseunit=True)
Q = ureg.Quantity

TOLERANCE = "1e-9%"


def mass(*parts):
    return sum((Q(value, unit) for value, unit in parts), Q(0, "kg")).to("kg").magnitude


def length(*parts):
    return sum((Q(value, unit) for value, unit in parts), Q(0, "cm")).to("cm").magnitude


ROWS = [
    # formula, inputs, expected, unit
    ("units.body_mass", "typed=480 lb;bare=kg", mass((480, "lb")), "kg"),
    ("units.body_mass", "typed=480;bare=lb", mass((480, "lb")), "kg"),
    ("units.body_mass", "typed=1102.5 lbs;bare=kg", mass((1102.5, "lb")), "kg"),
    ("units.body_mass", "typed=12 st;bare=kg", mass((12, "stone")), "kg"),
    ("units.body_mass", "typed=12 st 4;bare=kg", mass((12, "stone"), (4, "lb")), "kg"),
    ("units.body_mass", "typed=31 st 6 lb;bare=lb", mass((31, "stone"), (6, "lb")), "kg"),
    ("units.body_mass_lb", "kg=203.5", Q(203.5, "kg").to("lb").magnitude, "lb"),
    ("units.body_mass_lb", "kg=545", Q(545, "kg").to("lb").magnitude, "lb"),
    ("units.as_fed", "typed=3 lb 8 oz;bare=kg", mass((3, "lb"), (8, "oz")), "kg"),
    ("units.as_fed", "typed=7.25;bare=lb", mass((7.25, "lb")), "kg"),
    ("units.as_fed", "typed=750 g;bare=lb", mass((750, "g")), "kg"),
    ("units.as_fed", "typed=12 oz;bare=kg", mass((12, "oz")), "kg"),
    ("units.length", "typed=14.2 hh;bare=cm", length((14, "hand"), (2, "inch")), "cm"),
    ("units.length", "typed=9.3 hh;bare=cm", length((9, "hand"), (3, "inch")), "cm"),
    ("units.length", "typed=16 hands;bare=cm", length((16, "hand")), "cm"),
    ("units.length", "typed=42 in;bare=cm", length((42, "inch")), "cm"),
    ("units.length", "typed=71.5;bare=in", length((71.5, "inch")), "cm"),
    ("units.length", "typed=1,78 m;bare=cm", length((1.78, "m")), "cm"),
    ("units.length_inches", "cm=178", Q(178, "cm").to("inch").magnitude, "in"),
    ("units.temperature", "typed=102 F", Q(102, "degF").to("degC").magnitude, "degC"),
    ("units.temperature", "typed=14 °F", Q(14, "degF").to("degC").magnitude, "degC"),
    ("units.temperature", "typed=-40 F", Q(-40, "degF").to("degC").magnitude, "degC"),
    ("units.temperature_f", "celsius=38.4", Q(38.4, "degC").to("degF").magnitude, "degF"),
    ("units.temperature_f", "celsius=-6", Q(-6, "degC").to("degF").magnitude, "degF"),
    ("units.energy_mcal", "mj=69.7", Q(69.7, "MJ").to("Mcal").magnitude, "Mcal"),
    ("units.energy_mcal", "mj=8.4", Q(8.4, "MJ").to("Mcal").magnitude, "Mcal"),
    ("units.energy_mj", "mcal=16.7", Q(16.7, "Mcal").to("MJ").magnitude, "MJ"),
    ("units.energy_mj", "mcal=2.03", Q(2.03, "Mcal").to("MJ").magnitude, "MJ"),
    ("units.mg_per_kg", "percent=0.35", Q(0.35, "percent").to("mg/kg").magnitude, "mg/kg"),
    ("units.nutrient_mg", "g=1.2", Q(1.2, "g").to("mg").magnitude, "mg"),
    ("units.span_hours", "minutes=725", Q(725, "minute").to("hour").magnitude, "h"),
]

out = pathlib.Path(__file__).resolve().parent.parent / "data" / "pint.csv"
with out.open("w", newline="") as file:
    file.write(f"# pint {pint.__version__}, units written by tests/vectors/units_pint.py\n")
    writer = csv.writer(file, lineterminator="\n")
    writer.writerow("id origin mark formula inputs expected tolerance unit".split())
    for number, (formula, inputs, expected, unit) in enumerate(ROWS, start=1):
        writer.writerow(
            [f"P{number}", "program", "published", formula, inputs, repr(float(expected)), TOLERANCE, unit]
        )
print(f"{len(ROWS)} rows to {out}")
