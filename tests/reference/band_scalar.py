"""A run under one draw of its uncertain inputs: the check on band_model.py.

The same elements, worked out one by one with fluids 1.3.1 (Colebrook, bends, mitres),
elbow_loss.py, and scipy 1.17.1 (quantiles of the triangular
distribution, brentq for the operating point).
"""

from math import radians

from fluids.core import Reynolds, dP_from_K
from fluids.fittings import bend_miter
from fluids.friction import Colebrook
from numpy import interp
from scipy.optimize import brentq
from scipy.stats import triang

from band_elements import round_bore
from band_model import HOODS
from elbow_loss import (
    MITRE_FACTOR, MITRE_REYNOLDS, SEGMENTED_90, segmented_without_arc, smooth,
)
from run_physics import BLOWER_DENSITY


class OneDraw:
    """quantiles: input's name to a number; an input not named is at its likely value."""

    def __init__(self, run, quantiles):
        self.run = run
        self.quantiles = quantiles

    def spread(self, name, low, likely, high):
        if name not in self.quantiles or low == high:
            return likely
        width = high - low
        at = self.quantiles[name]
        return float(triang.ppf(at, (likely - low) / width, loc=low, scale=width))

    def value(self, name):
        return self.spread(name, *self.run.figures[name])

    def friction(self, bore, reynolds):
        # Plain floats: in numpy's, fluids' way through very rough duct overflows with a warning.
        return Colebrook(float(reynolds), float(self.value(bore.roughness) / bore.diameter))

    def elbow(self, element, friction, reynolds):
        figures, kind = element.figures, element.kind
        angle, ratio = figures["angle_deg"], figures["ratio"]
        close = 1.0
        if element.close:
            close = self.spread("close_elbows", element.close[0], 1.0, element.close[1])
        if kind == "segmented":
            k = segmented_without_arc(angle, ratio, friction)
            k *= self.value("segmented_elbow") / SEGMENTED_90
            return close * (k + friction * ratio * radians(angle))
        if kind == "sharp_mitre":
            k = bend_miter(angle=angle, method="Rennels")
            k *= float(interp(reynolds, MITRE_REYNOLDS, MITRE_FACTOR))
            return close * k * self.value("sharp_mitre")
        k = smooth(angle, ratio, friction, reynolds)
        if kind == "bent_flexible":
            return close * k * self.value("bent_flexible")
        low, high = figures["spread"]
        return close * k * self.spread("smooth_elbow", low, 1.0, high)

    def coefficient(self, element, friction, reynolds):
        figures, kind = element.figures, element.kind
        if kind == "straight":
            pushed = 1.0 + element.bore.added_friction * self.value("flexible_compression")
            return friction * pushed * self.spread("estimates", *figures["span"])
        if kind == "area_change":
            return figures["k"]
        if kind == "concealed_elbows":
            count = self.spread("estimates", *figures["span"])
            return count * self.value("segmented_elbow")
        if kind in ("blockage", "wall_box"):
            return self.value(kind) * figures.get("k", 1.0)
        if kind == "open_end":
            return figures["k_extra"] + 1.0
        if kind in HOODS:
            return figures["k_extra"] + self.value(kind)
        return self.elbow(element, friction, reynolds)

    def losses(self, at_end):
        """Airflow at the outlet, and the losses in the order of the elements."""
        run, airflow, rise, losses = self.run, at_end, 0.0, []
        for element in reversed(run.elements):
            bore = element.bore
            velocity = airflow / bore.area
            own = 0.0
            if element.kind == "leak":
                gauge = sum(losses) + run.stack(rise) - run.house
                gauge -= dP_from_K(1.0, run.density, velocity)
                speed = (2.0 * abs(gauge) / run.density) ** 0.5
                leak = self.value("leak_discharge") * element.figures["area"] * speed
                airflow += leak if gauge > 0.0 else -leak
            elif element.kind == "make_up_air":
                through = airflow / (self.value("make_up_discharge") * element.figures["area"])
                own = dP_from_K(1.0, run.room_density, through)
            else:
                reynolds = Reynolds(V=velocity, D=bore.diameter, rho=run.density, mu=run.viscosity)
                friction = self.friction(bore, reynolds)
                k = self.coefficient(element, friction, reynolds)
                own = dP_from_K(k, run.density, velocity)
                if element.kind == "wall_hood":
                    own += self.value("flap_weight")
            losses.append(own)
            rise += element.rise
        return airflow, losses[::-1]

    def back_pressure(self, airflow, losses):
        run = self.run
        velocity = airflow / round_bore(run.diameter).area
        total = sum(losses) + run.stack(run.rise) - run.house
        return total - dP_from_K(1.0, run.density, velocity)

    def solve(self):
        """Airflow, back pressure, velocity, equivalent length, and the losses."""
        run = self.run

        def residual(at_end):
            airflow, losses = self.losses(at_end)
            if run.stated is not None:
                return run.stated - airflow
            share = (airflow / self.value("blower_free_airflow")) ** self.value("blower_exponent")
            shut_off = self.value("blower_shut_off_pressure") * run.density / BLOWER_DENSITY
            return shut_off * (1.0 - share) - self.back_pressure(airflow, losses)

        at_end = brentq(residual, 0.004, 0.2, xtol=1e-16, rtol=1e-14)
        airflow, losses = self.losses(at_end)
        bore = round_bore(run.diameter)
        velocity = airflow / bore.area
        reynolds = Reynolds(V=velocity, D=bore.diameter, rho=run.density, mu=run.viscosity)
        metre = dP_from_K(self.friction(bore, reynolds) / bore.diameter, run.density, velocity)
        return (
            airflow, self.back_pressure(airflow, losses), velocity, sum(losses) / metre, losses,
        )
