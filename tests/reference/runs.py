"""runs/NN.json and runs.csv: 64 whole runs, plan files with what each of them must give.

Source: fluids 1.3.1 (friction, bends), CoolProp 8.0.0 (air), scipy 1.17.1 (blower), numpy
(geometry); see run_physics.py, elbow_loss.py and run_geometry.py.
Range: 1 to 8 bends of 5 to 135 deg, smooth r/D 0.75 to 2 and segmented r/D 1 and 1.5,
risers and drops, vertical ends, bends at the outlet, dryer turned by 0, 45, 90, 180 deg,
duct 0.1016 m and some 0.1 and 0.127 m, altitude 0..2500 m, outdoors -20..35 degC, exhaust
20..70 degC. 48 at a stated airflow of 0.03..0.09 m3/s, 16 with the typical blower.
"""

from numpy.random import default_rng

from plan_composer import ELBOWS, Composer
from plan_set import write_plan_set

STATED = 48
BLOWER = 16


def plans():
    generator = default_rng(64)
    for index in range(STATED + BLOWER):
        bends = 1 + index % 8
        diameter = {5: 0.127, 11: 0.1}.get(index % 16, 0.1016)
        composer = Composer(generator, diameter, longest_leg=3.0)
        elbow = (*ELBOWS, None)[index % 5]
        nodes = composer.nodes(bends, elbow, outlet_bend=index % 3 == 0, roof_end=index % 7 < 2)
        airflow = composer.uniform(0.03, 0.09, 4) if index < STATED else None
        flow = "typical blower" if airflow is None else "stated airflow"
        title = f"Reference run {index + 1:02}: {bends} bends, {flow}"
        yield composer.plan(title, nodes, (0, 90, 180, 45)[index // 3 % 4], airflow, 2500.0)


def write(directory):
    write_plan_set(directory, "runs", plans())
