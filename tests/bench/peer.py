"""The same evaluation by general libraries: fluids for losses, scipy for the operating point.

    peer.py PLAN.json FIGURES.json

PLAN.json is a plan file, FIGURES.json what `elbowroom figures` printed for it. Prints one
line of JSON: the median and 95th percentile of one evaluation, us, and both airflows.

Written as the run calls for and no slower: air and geometry are worked out beforehand, f
is solved once an airflow, Rennels' K once for each different bend, and the root is asked
for no more digits than Elbowroom's. The ledger has loss, share, rank and equivalent length;
Elbowroom's has more (sources, the methods side by side, the air's state).
"""

import json
import statistics
import sys
from math import pi, radians
from pathlib import Path
from time import perf_counter_ns

sys.path.insert(0, str(Path(__file__).parents[1] / "reference"))

from fluids.core import Reynolds, dP_from_K
from fluids.fittings import bend_miter
from fluids.friction import friction_factor
from numpy import interp
from scipy.optimize import brentq

from elbow_loss import (
    MITRE_FACTOR,
    MITRE_REYNOLDS,
    SEGMENTED_45_SHARE,
    SEGMENTED_90,
    rennels,
)
from run_physics import (
    BLOWER_DENSITY,
    BLOWER_FREE_FLOW,
    BLOWER_SHUT_OFF_PA,
    FLAP_WEIGHT_PA,
    GRAVITY,
    HOOD_COEFFICIENT,
    ROUGHNESS,
    Run,
)

# Of the airflow, as in the check set `operating`: air alone, real here and ideal there.
TOLERANCE = 0.006
# The airflow is found to this, m3/s, as Elbowroom finds it.
ROOT_TOLERANCE = 2e-7
LEAST_SHARE = 1e-4

WARM_UP = 200
SAMPLES = 1000


class Peer:
    """Bends of 45 and 90 deg with r/D of at least 1 alone: what twenty.json has."""

    def __init__(self, plan):
        run = Run(plan)
        self.density, self.viscosity, self.diameter = run.density, run.viscosity, run.diameter
        self.area = pi * run.diameter**2 / 4.0
        self.stack = GRAVITY * run.path.rise_m * (run.density - run.outdoor_density)
        self.blower_scale = BLOWER_SHUT_OFF_PA * run.density / BLOWER_DENSITY
        self.straights = [length / run.diameter for length in run.path.straights_m]
        self.bends = []
        for bend in run.path.bends:
            angle, ratio = round(bend.angle_deg, 6), round(bend.radius_m / run.diameter, 6)
            assert angle in (45.0, 90.0) and ratio >= 1.0
            if bend.kind == "segmented":
                share = 1.0 if angle == 90.0 else SEGMENTED_45_SHARE
                self.bends.append((None, SEGMENTED_90 * share, (90.0, ratio), ratio * radians(angle)))
            else:
                mitre = bend_miter(angle=angle, method="Rennels")
                self.bends.append((mitre, None, (angle, ratio), None))
        self.shapes = {bend[2] for bend in self.bends} | {(90.0, 1.0)}

    def coefficients(self, airflow):
        """K of every straight, bend and the hood; the velocity; f."""
        velocity = airflow / self.area
        reynolds = Reynolds(V=velocity, D=self.diameter, rho=self.density, mu=self.viscosity)
        f = friction_factor(Re=reynolds, eD=ROUGHNESS / self.diameter)
        rounded = {shape: rennels(*shape, f) for shape in self.shapes}
        at_one = rounded[90.0, 1.0]
        mitre_factor = float(interp(reynolds, MITRE_REYNOLDS, MITRE_FACTOR))
        straights = [f * diameters for diameters in self.straights]
        bends = [
            min(rounded[shape], mitre * mitre_factor)
            if mitre is not None
            else segmented * rounded[shape] / at_one + f * arc
            for mitre, segmented, shape, arc in self.bends
        ]
        return [*straights, *bends, HOOD_COEFFICIENT], velocity, f

    def spare(self, airflow):
        coefficients, velocity, _ = self.coefficients(airflow)
        loss = dP_from_K(sum(coefficients) - 1.0, self.density, velocity) + FLAP_WEIGHT_PA
        rise = self.blower_scale * (1.0 - (airflow / BLOWER_FREE_FLOW) ** 2)
        return rise - loss - self.stack

    def evaluate(self):
        """The airflow and the ledger's rows: loss, share, rank, equivalent length."""
        least = LEAST_SHARE * BLOWER_FREE_FLOW
        airflow = brentq(self.spare, least, BLOWER_FREE_FLOW, xtol=ROOT_TOLERANCE)
        coefficients, velocity, f = self.coefficients(airflow)
        losses = [dP_from_K(k, self.density, velocity) for k in coefficients]
        losses[-1] += FLAP_WEIGHT_PA
        whole = sum(losses)
        per_metre = dP_from_K(f / self.diameter, self.density, velocity)
        order = sorted(range(len(losses)), key=lambda index: -losses[index])
        ranks = {index: rank for rank, index in enumerate(order, start=1)}
        rows = [
            (loss, loss / whole, ranks[index], loss / per_metre)
            for index, loss in enumerate(losses)
        ]
        return airflow, rows


def main(plan_file, figures_file):
    peer = Peer(json.loads(Path(plan_file).read_text()))
    figures = json.loads(Path(figures_file).read_text())
    airflow, rows = peer.evaluate()
    ours = figures["totals"]["airflow_m3_per_s"]
    assert len(rows) == len(figures["elements"]), (len(rows), len(figures["elements"]))
    assert abs(ours / airflow - 1.0) < TOLERANCE, f"airflow {airflow} here, {ours} there"
    for _ in range(WARM_UP):
        peer.evaluate()
    times = []
    for _ in range(SAMPLES):
        started = perf_counter_ns()
        peer.evaluate()
        times.append((perf_counter_ns() - started) / 1e3)
    percentiles = statistics.quantiles(times, n=20, method="inclusive")
    print(
        json.dumps(
            {
                "median_us": statistics.median(times),
                "p95_us": percentiles[-1],
                "airflow_m3_per_s": airflow,
                "elbowroom_airflow_m3_per_s": ours,
            }
        )
    )


if __name__ == "__main__":
    main(*sys.argv[1:])
