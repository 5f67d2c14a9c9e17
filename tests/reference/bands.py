"""bands/NN.json, bands.csv and band_shares.csv: how sure 40 runs' figures are.

Source: 262,144 points of a scrambled Sobol sequence (scipy 1.17.1, fixed seed) through
band_model.py (fluids, CoolProp, numpy), each uncertain input triangular (band_inputs.py),
one draw of it shared by all elements that use it. Percentiles by numpy, straight between
neighbours. The likely figure is the run at the likely inputs.
Shares: first-order Sobol indices S_i = V(E(Y|x_i)) / V(Y) by pick-freeze (A. Saltelli et
al., Computer Physics Communications 181 (2010) 259-270, table 2, b), the mean of 8
independent scrambles of 8,192 points; the standard error is that of this mean. The airflow
that a plan states does not vary and has none.
Range: 1 to 8 bends of every make, all ducts, hoods, openings, leaks, estimates, some
overrides; 30 with the typical blower, 10 at a stated airflow; all draws turbulent.
Checked here first: the model against all likely figures of runs.csv, operating.csv and
leaks.csv, and against band_scalar.py on 20 random draws of each plan, to 1e-6.
"""

import csv
import json
from collections import Counter
from math import isclose
from pathlib import Path

import numpy as np
from scipy.stats.qmc import Sobol

from band_inputs import BY_ELEMENT, FIGURES as INPUT_FIGURES, Draws
from band_model import TURBULENT_FROM, Model, Run, likely
from band_plans import plans
from band_scalar import OneDraw
from csv_table import write_table

# The plans that are worked out again by a quick check.
QUICK = ("01", "02")

POWER_OF_TWO = 18
CHUNK = 16384
SCRAMBLES = 8
SHARE_POWER_OF_TWO = 13
GREATEST_STANDARD_ERROR = 0.005
LEAST_PLANS = 3
SCALAR_DRAWS = 20
SCALAR_TOLERANCE = 1e-6

BAND_COLUMNS = ("plan", "figure", "element", "percentile_10", "percentile_90", "likely")
SHARE_COLUMNS = ("plan", "figure", "input", "first_order", "standard_error")
FIGURES = ("airflow_m3_per_s", "back_pressure_pa", "velocity_m_per_s", "equivalent_length_m")
SHARED = ("airflow_m3_per_s", "back_pressure_pa")


def totals(result):
    return (
        result.airflow, result.back_pressure, result.velocity, result.equivalent_length,
    )


def solved(run, names, points, start):
    """Rows of totals and losses, by chunks that a processor's cache holds."""
    columns = []
    for chunk in np.split(points, range(CHUNK, len(points), CHUNK)):
        quantiles = {name: chunk[:, index] for index, name in enumerate(names)}
        result = Model(run, Draws(run.figures, quantiles, len(chunk))).solve(start)
        assert result.least_reynolds > TURBULENT_FROM
        columns.append(np.array([*totals(result), *result.losses]))
    return np.concatenate(columns, axis=1)


def band_rows(name, run):
    at_likely = likely(run)
    names = run.inputs()
    points = Sobol(len(names), scramble=True, rng=int(name)).random_base2(POWER_OF_TWO)
    rows = solved(run, names, points, at_likely.airflow[0])
    labels = [(figure, None) for figure in FIGURES]
    labels += [("loss_pa", element.part) for element in run.elements]
    middle = [*totals(at_likely), *at_likely.losses]
    for (figure, element), row, value in zip(labels, rows, middle):
        low, high = np.percentile(row, (10.0, 90.0))
        yield name, figure, element, low, high, value[0]


def first_order(run, names, start, seed):
    """Index by figure and input from one scramble; nought where a figure does not vary."""
    count = len(names)
    both = Sobol(2 * count, scramble=True, rng=seed).random_base2(SHARE_POWER_OF_TWO)
    one, other = both[:, :count], both[:, count:]
    at_one = solved(run, names, one, start)[: len(SHARED)]
    at_other = solved(run, names, other, start)[: len(SHARED)]
    everything = np.concatenate([at_one, at_other], axis=1)
    mean, variance = everything.mean(axis=1, keepdims=True), everything.var(axis=1)
    variance[variance == 0.0] = np.inf
    at_one, at_other = at_one - mean, at_other - mean
    indices = np.zeros((len(SHARED), count))
    for index in range(count):
        mixed = one.copy()
        mixed[:, index] = other[:, index]
        at_mixed = solved(run, names, mixed, start)[: len(SHARED)] - mean
        # E(other mixed) - E(other one): what only the frozen input has in common.
        indices[:, index] = (at_other * (at_mixed - at_one)).mean(axis=1) / variance
    return indices


def share_rows(name, run):
    names, start = run.inputs(), likely(run).airflow[0]
    found = np.array([
        first_order(run, names, start, 1000 * int(name) + scramble)
        for scramble in range(SCRAMBLES)
    ])
    index = found.mean(axis=0)
    error = found.std(axis=0, ddof=1) / SCRAMBLES**0.5
    for row, figure in enumerate(SHARED):
        if figure == "airflow_m3_per_s" and run.stated is not None:
            continue
        for column, input_name in enumerate(names):
            assert error[row, column] < GREATEST_STANDARD_ERROR, (name, figure, input_name)
            share, by_chance = index[row, column], error[row, column]
            yield name, figure, input_name, round(float(share), 6), round(float(by_chance), 6)


def check_against_one_by_one(name, run):
    """The vectorised model and the scalar one, at likely inputs and at random draws."""
    names = run.inputs()
    quantiles = np.random.default_rng(int(name)).random((len(names), SCALAR_DRAWS))
    drawn = dict(zip(names, quantiles))
    cases = [(likely(run), 0, {})]
    many = Model(run, Draws(run.figures, drawn, SCALAR_DRAWS)).solve()
    cases += [
        (many, column, {key: row[column] for key, row in drawn.items()})
        for column in range(SCALAR_DRAWS)
    ]
    for result, column, one_draw in cases:
        *expected, losses = OneDraw(run, one_draw).solve()
        found = [row[column] for row in (*totals(result), *result.losses)]
        for here, there in zip(found, [*expected, *losses], strict=True):
            assert isclose(here, there, rel_tol=SCALAR_TOLERANCE, abs_tol=1e-9), (name, one_draw)


def check_against_other_sets(directory):
    """Every run of the other sets at its likely inputs."""
    for one_set in ("runs", "operating", "leaks"):
        with open(directory / f"{one_set}.csv", encoding="ascii", newline="") as table:
            rows = list(csv.DictReader(table))
        assert rows
        for row in rows:
            plan = json.loads((directory / one_set / f"{row['run']}.json").read_text())
            result = likely(Run(plan))
            for figure, found in zip(FIGURES, totals(result)):
                if figure in row:
                    expected = float(row[figure])
                    assert isclose(found[0], expected, rel_tol=SCALAR_TOLERANCE), (one_set, row)


def committed_rows(path, plan_names):
    with open(path, encoding="ascii", newline="") as table:
        reader = csv.reader(table)
        next(reader)
        return [row for row in reader if row[0] in plan_names]


def write(directory, others_from=None):
    """Works everything out; or, with others_from, the QUICK plans' figures alone, and takes
    the other plans' rows as they stand in that folder. Plans are always composed anew."""
    check_against_other_sets(directory)
    folder = directory / "bands"
    folder.mkdir(parents=True, exist_ok=True)
    bands, shares, names, used = [], [], [], Counter()
    for number, plan in enumerate(plans(), start=1):
        name, text = f"{number:02}", json.dumps(plan, indent=1) + "\n"
        (folder / f"{name}.json").write_text(text, encoding="ascii", newline="\n")
        names.append(name)
        run = Run(json.loads(text))
        used.update(run.inputs())
        if others_from is None or name in QUICK:
            check_against_one_by_one(name, run)
            bands += band_rows(name, run)
            shares += share_rows(name, run)
    seldom = [one for one in (*INPUT_FIGURES, *BY_ELEMENT) if used[one] < LEAST_PLANS]
    assert not seldom, f"inputs that too few plans exercise: {seldom}"
    if others_from is not None:
        others = [name for name in names if name not in QUICK]
        bands += committed_rows(Path(others_from) / "bands.csv", others)
        shares += committed_rows(Path(others_from) / "band_shares.csv", others)
    write_table(directory / "bands.csv", BAND_COLUMNS, bands)
    write_table(directory / "band_shares.csv", SHARE_COLUMNS, shares)
