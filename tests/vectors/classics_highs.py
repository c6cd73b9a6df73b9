"""Writes tests/data/highs.csv: least costs and shadow prices of two diets by HiGHS.

Run from the top of the repository, with highspy 1.16 installed:

    python3 tests/vectors/classics_highs.py

- Stigler's diet of 1939: stigler_1945.csv beside this file, 77 foods in dollars a day, nine needs; shown by the year.
- Six invented feeds for a horse at rest, with eight limits; the numbers stand here and in tests/tests/reference/ration.rs.
"""

import csv
import pathlib

import highspy

HERE = pathlib.Path(__file__).resolve().parent
INF = highspy.kHighsInf
DAYS = 365

PRICES = [0.16, 0.3, 0.35, 0.6, 0.25, 0.3]
# Dry matter, Mcal, protein, calcium, phosphorus, sodium in a kilogram.
FEEDS = [
    [0.9, 1.6, 65, 3, 1.8, 0.1],
    [0.9, 2.16, 170, 12, 2.2, 0.7],
    [0.89, 2.85, 118, 0.8, 3.4, 0.2],
    [0.89, 3.15, 444, 3.5, 6.3, 0.3],
    [0.99, 0, 0, 380, 0, 0],
    [0.99, 0, 0, 0, 0, 390],
]


def solve(costs, rows):
    h = highspy.Highs()
    h.setOptionValue("output_flag", False)
    x = [h.addVariable(lb=0, ub=INF) for _ in costs]
    for v, cost in zip(x, costs):
        h.changeColCost(v.index, cost)
    for terms, low, high in rows:
        h.addRow(low, high, len(x), [v.index for v in x], terms)
    h.run()
    assert h.getModelStatus() == highspy.HighsModelStatus.kOptimal
    solution = h.getSolution()
    return h.getInfo().objective_function_value, list(solution.col_value), list(solution.row_dual)


def stigler():
    lines = (HERE / "stigler_1945.csv").read_text().splitlines()[1:]
    table = list(csv.DictReader(lines))
    nutrients = list(table[0])[1:]
    need, foods = table[0], table[1:]
    rows = [([float(food[n]) for food in foods], float(need[n]), INF) for n in nutrients]
    cost, amounts, prices = solve([1.0] * len(foods), rows)
    yield "stigler cost", "ration.stigler", "ask=cost", cost * DAYS, "$ a year"
    for food, amount in zip(foods, amounts):
        if amount > 1e-9:
            name = food["food"].replace(" ", "_")
            yield f"stigler {name}", "ration.stigler", f"ask=food;name={name}", amount * DAYS, "$ a year"
    for nutrient, price in zip(nutrients, prices):
        yield f"stigler {nutrient}", "ration.stigler", f"ask=price;name={nutrient}", price * DAYS, "$ a year and unit"


def six_feeds():
    def column(k):
        return [feed[k] for feed in FEEDS]

    # One and a half times as much calcium as phosphorus; seven tenths of the dry matter from the first two.
    ratio = [feed[3] - 1.5 * feed[4] for feed in FEEDS]
    forage = [0.3 * feed[0] if k < 2 else -0.7 * feed[0] for k, feed in enumerate(FEEDS)]
    rows = [
        (column(1), 23.3, INF),
        (column(2), 768, INF),
        (column(3), 35, INF),
        (column(4), 21, INF),
        (column(5), 13.9, INF),
        (column(0), -INF, 11.25),
        (ratio, 0, INF),
        (forage, 0, INF),
    ]
    cost, _, prices = solve(PRICES, rows)
    yield "six feeds cost", "ration.six_feeds", "ask=cost", cost, "a day"
    for row, price in enumerate(prices):
        yield f"six feeds row {row}", "ration.six_feeds", f"ask=price;row={row}", price, "a day and unit"


def main():
    version = highspy.Highs().version()
    lines = [
        f"# HiGHS {version}, least costs and shadow prices of two diets, written by tests/vectors/classics_highs.py",
        "id,origin,mark,formula,inputs,expected,tolerance,unit",
    ]
    for name, formula, inputs, value, unit in [*stigler(), *six_feeds()]:
        tolerance = f"{max(abs(value), 1e-3) * 1e-8:.1e}"
        lines.append(f"{name},program,published,{formula},{inputs},{value!r},{tolerance},{unit}")
    (HERE.parent / "data" / "highs.csv").write_text("\n".join(lines) + "\n")


if __name__ == "__main__":
    main()
