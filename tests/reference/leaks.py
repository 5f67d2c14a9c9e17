"""leaks/NN.json and leaks.csv: 12 straight runs with one to three leaking joints.

Source: orifice law at each leak (discharge coefficient 0.6, an assumption), fluids 1.3.1
(Colebrook friction), CoolProp 8.0.0 (air); all stretches' airflows solved together by
scipy 1.17.1 (scipy.optimize.root), as unknowns of one system of equations.
A leak's pressure is the duct's static pressure just past it, less that of the house.
Range: 2 to 4 legs of 0.4 to 4 m, gaps of 0.2 to 8 cm2, house -8 to 5 Pa, the typical
blower or a stated airflow.
"""

import json

from math import pi, sqrt

from fluids.core import Reynolds, dP_from_K
from fluids.friction import Colebrook
from numpy.random import default_rng
from scipy.optimize import root

from csv_table import write_table
from plan_composer import Composer, Node
from run_physics import (
    BLOWER_DENSITY, BLOWER_FREE_FLOW, BLOWER_SHUT_OFF_PA, FLAP_WEIGHT_PA, HOOD_COEFFICIENT,
    ROUGHNESS, humid_air,
)

CASES = 12
DIAMETER = 0.1016
AREA = pi * DIAMETER**2 / 4.0
DISCHARGE = 0.6
COLUMNS = ("run", "airflow_m3_per_s", "airflow_at_end_m3_per_s", "back_pressure_pa")


def plans():
    generator = default_rng(12)
    for index in range(CASES):
        composer = Composer(generator, DIAMETER, longest_leg=4.0)
        legs = 2 + index % 3
        nodes = [Node(("smooth", 1.0)) for _ in range(legs + 1)]
        airflow = composer.uniform(0.03, 0.06, 4) if index % 3 == 0 else None
        title = f"Leaking run {index + 1:02}: {legs} legs"
        plan = composer.plan(title, nodes, (0, 90)[index % 2], airflow, 1500.0)
        plan["site"]["house_pressure_pa"] = composer.uniform(-8.0, 5.0, 1)
        for point in plan["run"]["points"][:: 1 + index % 2]:
            point["leak_free_area_m2"] = composer.uniform(0.2e-4, 8e-4, 6)
        yield plan


class LeakingRun:
    def __init__(self, plan):
        dryer, site, exhaust = plan["dryer"], plan["site"], plan["exhaust"]
        state = (exhaust["temperature_degc"], exhaust["relative_humidity"], site["altitude_m"])
        self.density = 1.0 / humid_air("Vha", *state)
        self.viscosity = humid_air("mu", *state)
        self.house = site["house_pressure_pa"]
        self.flow = plan["flow"]
        points = plan["run"]["points"]
        across = dryer["turned_deg"] == 90.0
        places = [dryer["x_m"] + dryer["depth_m"] / 2.0 if across else
                  dryer["y_m"] - dryer["depth_m"] / 2.0]
        places += [point["x_m"] if across else point["y_m"] for point in points]
        self.lengths = [abs(far - near) for near, far in zip(places, places[1:])]
        self.gaps = [point.get("leak_free_area_m2", 0.0) for point in points]

    def velocity_pressure(self, airflow):
        return dP_from_K(1.0, self.density, airflow / AREA)

    def leg_loss(self, length, airflow):
        velocity = airflow / AREA
        reynolds = Reynolds(V=velocity, D=DIAMETER, rho=self.density, mu=self.viscosity)
        friction = Colebrook(reynolds, ROUGHNESS / DIAMETER)
        return dP_from_K(friction * length / DIAMETER, self.density, velocity)

    def total_pressures(self, airflows):
        """Total pressure at the start of each leg, against outdoors."""
        totals = []
        total = dP_from_K(HOOD_COEFFICIENT, self.density, airflows[-1] / AREA) + FLAP_WEIGHT_PA
        for length, airflow in reversed(list(zip(self.lengths, airflows[1:]))):
            total += self.leg_loss(length, airflow)
            totals.insert(0, total)
        return totals

    def residuals(self, airflows):
        """airflows: at the outlet, then in each leg."""
        totals = self.total_pressures(airflows)
        found = []
        for gap, total, before, after in zip(self.gaps, totals, airflows, airflows[1:]):
            gauge = total - self.velocity_pressure(after) - self.house
            speed = sqrt(2.0 * abs(gauge) / self.density)
            leak = DISCHARGE * gap * (speed if gauge > 0.0 else -speed)
            found.append((before - after - leak) * 1e3)
        if self.flow["kind"] == "stated_airflow":
            found.append((airflows[0] - self.flow["airflow_m3_per_s"]) * 1e3)
        else:
            share = 1.0 - (airflows[0] / BLOWER_FREE_FLOW) ** 2
            rise = BLOWER_SHUT_OFF_PA * self.density / BLOWER_DENSITY * share
            found.append((rise - self.back_pressure(airflows)) / 100.0)
        return found

    def back_pressure(self, airflows):
        total = self.total_pressures(airflows)[0] - self.house
        return total - self.velocity_pressure(airflows[0])

    def row(self, name):
        start = [0.045] * (len(self.lengths) + 1)
        solved = root(self.residuals, start, tol=1e-13)
        assert max(map(abs, self.residuals(solved.x))) < 1e-9, name
        return (name, solved.x[0], solved.x[-1], self.back_pressure(solved.x))


def write(directory):
    folder = directory / "leaks"
    folder.mkdir(parents=True, exist_ok=True)
    rows = []
    for number, plan in enumerate(plans(), start=1):
        text = json.dumps(plan, indent=1) + "\n"
        (folder / f"{number:02}.json").write_text(text, encoding="ascii", newline="\n")
        rows.append(LeakingRun(json.loads(text)).row(f"{number:02}"))
    write_table(directory / "leaks.csv", COLUMNS, rows)
