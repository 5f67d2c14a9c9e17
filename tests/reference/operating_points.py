"""operating/NN.json and operating.csv: 40 plans with the typical blower, widely spread.

Source: as for runs.csv; every airflow solved by scipy 1.17.1 brentq to the last digits.
Range: no bend to 11 bends, legs from 0.1 to 9 m between bends, ducts of 0.0889, 0.1016
and 0.127 m, altitude 0..3000 m, outdoors -20..35 degC, exhaust 20..70 degC.
"""

from numpy.random import default_rng

from plan_composer import ELBOWS, Composer
from plan_set import write_plan_set

CASES = 40


def plans():
    generator = default_rng(40)
    for index in range(CASES):
        bends = index % 12
        diameter = {3: 0.0889, 7: 0.127}.get(index % 10, 0.1016)
        composer = Composer(generator, diameter, longest_leg=(1.0, 3.0, 9.0)[index // 2 % 3])
        elbow = (None, *ELBOWS)[index % 5]
        roof_end = bends > 0 and index % 4 == 1
        nodes = composer.nodes(bends, elbow, outlet_bend=index % 3 == 1, roof_end=roof_end)
        title = f"Operating point {index + 1:02}: {bends} bends"
        yield composer.plan(title, nodes, (0, 90, 180, 45)[index % 4], None, 3000.0)


def write(directory):
    write_plan_set(directory, "operating", plans())
