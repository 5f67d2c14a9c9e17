"""heat.csv: 48 runs that stay dry; condensation.csv: 24 runs whose wall is wet from
end to end, 8 that turn wet or dry on their way.

Source: ht 1.2.0, fluids 1.3.1, CoolProp 8.0.0, scipy 1.17.1; see heat_model.py.
Range: duct 0.1016, 0.127 and 0.1524 m, 1 to 10 m level, some with a riser behind a bend,
airflow 0.02..0.09 m3/s (some laminar ones too), 25..70 degC out of the dryer, surroundings
-25..45 degC, altitude 0..2500 m, bare or 10 to 75 mm of insulation, both metals.
Wall temperatures are at the end of the run.
"""

from itertools import islice

from numpy.random import default_rng

from csv_table import write_table
from heat_model import Case, OutOfSet, condensing, sensible

INPUTS = (
    "run", "diameter_m", "leg_m", "riser_m", "bend_m", "airflow_m3_per_s", "temperature_degc",
    "relative_humidity", "surroundings_degc", "altitude_m", "thickness_m", "metal",
)
SENSIBLE = 48
WET_WHOLLY = 24
WET_PARTLY = 8


def cases(seed, count, humidity, surroundings, temperature):
    generator = default_rng(seed)

    def uniform(low, high, digits):
        return round(float(generator.uniform(low, high)), digits)

    for index in range(count):
        diameter = (0.1016, 0.1016, 0.127, 0.1524)[index % 4]
        has_riser = index % 3 == 1
        yield Case(
            name=f"{index + 1:02}",
            diameter=diameter,
            leg=uniform(1.0, 10.0, 2),
            riser=uniform(0.8, 4.0, 2) if has_riser else 0.0,
            # A quarter turn of centre-line radius D.
            bend=diameter * 1.5707963267948966 if has_riser else 0.0,
            airflow=0.0025 if index % 12 == 11 else uniform(0.02, 0.09, 4),
            temperature=uniform(*temperature, 1),
            relative_humidity=uniform(*humidity, 3),
            surroundings=uniform(*surroundings, 1),
            altitude=0.0 if index % 2 else uniform(0.0, 2500.0, 0),
            thickness=(0.0, 0.0, 0.0, 0.01, 0.025, 0.075)[index % 6],
            metal=("galvanized", "aluminium")[index // 2 % 2],
        )


def inputs(case):
    return tuple(vars(case).values())


def dry_rows():
    for case in cases(481, SENSIBLE, (0.0, 0.02), (-25.0, 45.0), (25.0, 70.0)):
        yield inputs(case) + sensible(case)


def wet_rows(most_whole, most_partly):
    """Runs that are wet from end to end, and some that turn wet, or dry, on their way."""
    left = {True: most_whole, False: most_partly}
    for case in cases(242, 200, (0.35, 0.8), (-20.0, 12.0), (35.0, 60.0)):
        if case.airflow < 0.02:
            # So slow that the air itself becomes mist, which no independent model here has.
            continue
        try:
            found = condensing(case)
        except OutOfSet:
            continue
        length = case.leg + case.bend + case.riser
        is_whole = found[4] > length - 1e-9
        if left[is_whole] == 0:
            continue
        left[is_whole] -= 1
        yield inputs(case) + found
        if not any(left.values()):
            return


def write(directory, others_from=None):
    """With `others_from` all but the first two wet runs are copied from there: they take minutes."""
    outputs = ("end_degc", "first_wall_degc", "last_wall_degc")
    write_table(directory / "heat.csv", INPUTS + outputs, dry_rows())
    outputs = (
        "end_degc", "last_wall_degc", "humidity_ratio_kg_per_kg", "water_kg_per_h", "wet_m", "heat_w",
    )
    path = directory / "condensation.csv"
    rows = wet_rows(WET_WHOLLY, WET_PARTLY)
    if others_from is None:
        write_table(path, INPUTS + outputs, rows)
        return
    write_table(path, INPUTS + outputs, islice(rows, 2))
    others = (others_from / path.name).read_text(encoding="ascii").splitlines(keepends=True)
    with path.open("a", encoding="ascii", newline="\n") as file:
        file.writelines(others[3:])
