"""Writes rations_highs.csv beside this file: status and least cost of 5,000 rations made from seeds, by HiGHS.

Run from the top of the repository, with highspy 1.16 installed:

    python3 tests/vectors/rations_highs.py

The rations are made from their seeds by splitmix64 (Steele, Lea and Flood 2014) and whole numbers alone, in the same way
here and in `tests/tests/solver/rations.rs`; every number of a ration is a whole number over a power of two, so that both
programs see the same doubles. Seed modulo 5 says what it is: 0 feasible, 1 infeasible, 2 degenerate, 3 with whole doses,
4 with at most so many bought foods. Each is made around amounts that fit it, except where it is made not to fit.

HiGHS answers each once, mip_rel_gap 0. Where there are whole doses, they are then held at their whole numbers and the rest
is solved again, so that its tolerance of whole numbers is not in the cost. An infeasible ration stays infeasible when each
of its limits is looser by a thousandth; this is tried here.
"""

import pathlib

import highspy

HERE = pathlib.Path(__file__).resolve().parent
COUNT = 5000
MASK = (1 << 64) - 1
NONE = None


class Chance:
    def __init__(self, seed):
        self.state = seed

    def next(self):
        self.state = (self.state + 0x9E3779B97F4A7C15) & MASK
        z = self.state
        z = ((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9) & MASK
        z = ((z ^ (z >> 27)) * 0x94D049BB133111EB) & MASK
        return z ^ (z >> 31)

    def below(self, n):
        return self.next() % n

    def one_in(self, n):
        return self.below(n) == 0


def ration(seed):
    """Columns (lower, upper, cost, dose, bought), rows (terms, lower, upper) and the number of bought foods.

    Amounts, doses and bounds of columns are in eighths; sums of rows in eighths over the row's divisor.
    """
    c = Chance(seed)
    kind = seed % 5
    small = kind >= 3
    n = 3 + c.below(10 if small else 28)
    m = 2 + c.below(8 if small else 28)
    amounts, columns = [], []
    for _ in range(n):
        dose = [1, 2, 3, 4, 6][c.below(5)] if kind == 3 and not c.one_in(3) else 0
        step = dose if dose else 1
        amount = 0 if c.one_in(2) else step * (1 + c.below(8 if dose else 60))
        lower, upper = 0, amount + step * c.below(40)
        if c.one_in(6):
            lower = step * c.below(amount // step + 1)
        if kind != 4 and c.one_in(3):
            upper = NONE
        if c.one_in(12):
            lower, upper = amount, amount
        cost = 1 + c.below(400)
        bought = kind == 4 and not c.one_in(4)
        amounts.append(amount)
        columns.append([lower, upper, cost, dose, bought])
    rows = []
    for _ in range(m):
        largest = [9, 60, 4000][c.below(3)]
        divisor = [1, 16, 1024][c.below(3)]
        mixed = c.one_in(5)
        terms = []
        for _ in range(n):
            term = 0 if c.one_in(4) else 1 + c.below(largest)
            if mixed and c.one_in(2):
                term = -term
            terms.append(term)
        total = sum(t * x for t, x in zip(terms, amounts))
        tight = kind == 2 and not c.one_in(3)
        shape = c.below(3)
        below, above = (0, 0) if tight else (c.below(1 + abs(total) // 4), c.below(1 + abs(total) // 4))
        lower = total - below if shape != 1 else NONE
        upper = total + above if shape != 0 else NONE
        rows.append([terms, lower, upper, divisor])
    if kind == 2:
        first, last = rows[0], rows[-1]
        rows.append([[2 * t for t in first[0]], *(NONE if v is NONE else 2 * v for v in first[1:3]), first[3]])
        for column, a, b in zip(columns, first[0], last[0]):
            column[2] = abs(a) + abs(b)
    if kind == 1:
        terms = [1 + c.below(60) for _ in range(n)]
        share = 4 + c.below(300)
        if c.one_in(2):
            # More than all columns together can bring.
            most = 0
            for column, term, amount in zip(columns, terms, amounts):
                if column[1] is NONE:
                    column[1] = amount + 8
                most += term * column[1]
            rows.append([[1000 * t for t in terms], most * (1000 + share) + 1000, NONE, 1024])
        else:
            # A floor over a ceiling.
            total = sum(t * x for t, x in zip(terms, amounts)) + 8
            rows.append([[1000 * t for t in terms], 1000 * total, NONE, 1024])
            rows.append([[1000 * t for t in terms], NONE, (1000 - share) * total, 1024])
    if kind == 3 and c.one_in(8):
        # Between two doses: the amounts would fit, the doses do not. In quarters of a dose.
        for j, column in enumerate(columns):
            if column[3] and column[0] != column[1]:
                at = 4 * (column[0] // column[3]) + 1
                terms = [4 if k == j else 0 for k in range(n)]
                rows.append([terms, column[3] * at, column[3] * (at + 2), 1])
                break
    most = NONE
    if kind == 4:
        most = sum(1 for column, amount in zip(columns, amounts) if column[4] and amount > 0)
        if c.one_in(6):
            most = max(most - 1, 0)
    return columns, rows, most


def over(value, divisor, otherwise):
    return otherwise if value is NONE else value / divisor


def least_cost(seed, looser, tolerance=1e-9):
    columns, rows, most = ration(seed)
    h = highspy.Highs()
    h.setOptionValue("output_flag", False)
    for option, value in {
        "mip_rel_gap": 0.0,
        "mip_abs_gap": 0.0,
        "primal_feasibility_tolerance": tolerance,
        "dual_feasibility_tolerance": 1e-9,
        "mip_feasibility_tolerance": 1e-9,
    }.items():
        assert h.setOptionValue(option, value) == highspy.HighsStatus.kOk
    inf = highspy.kHighsInf
    whole, used = [], []
    x = []
    for lower, upper, cost, dose, bought in columns:
        if dose and lower != upper:
            x.append(h.addIntegral(lb=lower // dose, ub=inf if upper is NONE else upper // dose))
            h.changeColCost(x[-1].index, cost * dose / 8)
            whole.append(x[-1])
        else:
            x.append(h.addVariable(lb=lower / 8, ub=over(upper, 8, inf)))
            h.changeColCost(x[-1].index, float(cost))
    size = [c[3] / 8 if c[3] and c[0] != c[1] else 1 for c in columns]
    for terms, lower, upper, divisor in rows:
        low, high = over(lower, 8 * divisor, -inf), over(upper, 8 * divisor, inf)
        low, high = low - looser * abs(low) if low > -inf else low, high + looser * abs(high) if high < inf else high
        index = [v.index for v, t in zip(x, terms) if t]
        value = [t / divisor * s for t, s in zip(terms, size) if t]
        h.addRow(low, high, len(index), index, value)
    if most is not NONE:
        for v, column in zip(x, columns):
            if column[4]:
                z = h.addBinary()
                used.append(z)
                h.addRow(-inf, 0.0, 2, [v.index, z.index], [1.0, -column[1] / 8])
        h.addRow(-inf, float(most), len(used), [z.index for z in used], [1.0] * len(used))
    h.run()
    status = h.getModelStatus()
    if status == highspy.HighsModelStatus.kOptimal and (whole or used):
        found = h.getSolution().col_value
        for v in whole + used:
            value = round(found[v.index])
            h.changeColBounds(v.index, value, value)
            h.changeColIntegrality(v.index, highspy.HighsVarType.kContinuous)
        h.run()
        assert h.getModelStatus() == highspy.HighsModelStatus.kOptimal, seed
    if status == highspy.HighsModelStatus.kOptimal:
        return h.getInfo().objective_function_value
    assert status == highspy.HighsModelStatus.kInfeasible, (seed, status)
    return None


def main():
    lines = []
    for seed in range(COUNT):
        cost = least_cost(seed, 0.0)
        if cost is None and least_cost(seed, 1e-3) is not None:
            # Where all limits meet in one point, the tolerance is under the rounding.
            cost = least_cost(seed, 0.0, 1e-7)
            assert cost is not None, f"{seed} is infeasible by a hair"
        if cost is None:
            lines.append(f"{seed},infeasible,")
        else:
            lines.append(f"{seed},optimal,{cost!r}")
    version = highspy.Highs().version()
    head = f"# HiGHS {version}, mip_rel_gap 0, written by tests/vectors/rations_highs.py\nseed,status,cost\n"
    (HERE / "rations_highs.csv").write_text(head + "\n".join(lines) + "\n")
    print(sum(",infeasible," in line for line in lines), "infeasible of", COUNT)


if __name__ == "__main__":
    main()
