"""A run under many draws of its uncertain inputs at once, in numpy.

Air from CoolProp; Colebrook by Newton's method; the operating point by secants to the last
digits. The spread of methods of a smooth elbow is taken with fluids 1.3.1 (Rennels, Miller,
Ito) and Idelchik's diagram 6-1 (from memory) at the state of 120 cfm in clean 4 in duct.
band_scalar.py does the same for one draw with fluids and scipy; the two are held together.
"""

from dataclasses import dataclass
from functools import cached_property
from math import log10, pi, radians, sin, tan

import numpy as np
from fluids.fittings import bend_miter, bend_rounded
from fluids.friction import Colebrook
from scipy.optimize import brentq

from band_elements import elements_of, round_bore
from band_inputs import Draws, figures_of
from elbow_loss import MITRE_FACTOR, MITRE_REYNOLDS, SEGMENTED_45_SHARE, smooth
from run_physics import BLOWER_DENSITY, GRAVITY, humid_air

TURBULENT_FROM = 4000.0

# The room that make-up air comes through: 20 degC, half saturated (an assumption).
ROOM = (20.0, 0.5)

# The state at which methods are set side by side, and what of Miller's wall gives this f.
TYPICAL_REYNOLDS = 4.3e4
TYPICAL_FRICTION = 0.025
TYPICAL_ROUGHNESS = brentq(
    lambda rough: Colebrook(TYPICAL_REYNOLDS, rough) - TYPICAL_FRICTION, 1e-6, 0.01
)

HOODS = ("wall_hood", "louvred_hood", "roof_cap")


def idelchik(angle_deg, ratio, friction):
    """K = A1 B1 + f a r/D; A1 0.9 sin a to 70 deg, 1 at 90, 0.7 + 0.35 a/90 from 100 deg."""
    at_70, at_100 = 0.9 * sin(radians(70.0)), 0.7 + 0.35 * 100.0 / 90.0
    if angle_deg <= 70.0:
        by_angle = 0.9 * sin(radians(angle_deg))
    elif angle_deg < 100.0:
        by_angle = float(np.interp(angle_deg, (70.0, 90.0, 100.0), (at_70, 1.0, at_100)))
    else:
        by_angle = 0.7 + 0.35 * angle_deg / 90.0
    by_radius = 0.21 * ratio ** (-2.5 if ratio < 1.0 else -0.5)
    return by_angle * by_radius + friction * radians(angle_deg) * ratio


def spread_of_methods(angle_deg, ratio):
    """Least and greatest K of the methods that cover an elbow, over the one by Rennels."""
    own = smooth(angle_deg, ratio, TYPICAL_FRICTION, TYPICAL_REYNOLDS)
    found = [own]
    dust = 1e-6
    bend = {"Di": 1.0, "angle": angle_deg, "Re": TYPICAL_REYNOLDS, "bend_diameters": ratio}
    if angle_deg >= 10.0 and 0.75 - dust <= ratio <= 4.0 + dust:
        rough = {"roughness": TYPICAL_ROUGHNESS, "L_unimpeded": 30.0}
        found.append(bend_rounded(**bend, **rough, method="Miller"))
    if angle_deg >= 45.0 - dust and 1.0 - dust <= ratio < 9.85:
        found.append(bend_rounded(**bend, roughness=0.0, method="Ito"))
    if 0.5 - dust <= ratio <= 4.0 + dust:
        found.append(idelchik(angle_deg, ratio, TYPICAL_FRICTION))
    return min(found) / own, max(found) / own


def rennels_terms(angle_deg, ratio):
    """Rennels' K is a straight line in f: its value at none, and its slope."""
    at = {"Di": 1.0, "angle": angle_deg, "bend_diameters": ratio, "method": "Rennels"}
    constant = bend_rounded(**at, fd=0.0)
    return constant, (bend_rounded(**at, fd=0.1) - constant) / 0.1


def smooth_law(angle_deg, ratio):
    """K of (f, mitre's Reynolds factor): elbow_loss.smooth for arrays."""
    if angle_deg > 90.0 + 1e-6 and ratio < 1.0 - 1e-6:
        first, rest = smooth_law(90.0, ratio), smooth_law(angle_deg - 90.0, ratio)
        return lambda friction, factor: first(friction, factor) + rest(friction, factor)
    constant, slope = rennels_terms(angle_deg, ratio)
    mitre = bend_miter(angle=angle_deg, method="Rennels")
    share = min(1.0, angle_deg / 10.0)
    straight = (1.0 - share) * 2.0 * tan(radians(angle_deg) / 2.0) * ratio

    def k(friction, factor):
        rounded = constant + slope * friction
        return share * np.minimum(rounded, mitre * factor) + straight * friction

    return k


def segmented_share(angle_deg):
    if angle_deg > 90.0:
        return 1.0 + segmented_share(angle_deg - 90.0)
    return float(np.interp(angle_deg, (0.0, 45.0, 90.0), (0.0, SEGMENTED_45_SHARE, 1.0)))


def segmented_law(angle_deg, ratio):
    """K of (f, K of a 90 of r/D 1), friction along the arc included."""
    here, one = rennels_terms(90.0, ratio), rennels_terms(90.0, 1.0)
    share, arc = segmented_share(angle_deg), ratio * radians(angle_deg)

    def k(friction, right_angle):
        scaled = (here[0] + here[1] * friction) / (one[0] + one[1] * friction)
        return right_angle * share * scaled + arc * friction

    return k


def colebrook(reynolds, relative_roughness):
    """Newton's method on x = 1/sqrt(f); four steps leave less than 1e-12."""
    rough = relative_roughness / 3.7
    thin = 2.51 / reynolds
    x = -2.0 * np.log10(rough + 13.0 * thin)
    slope = 2.0 * log10(np.e)
    for _ in range(4):
        inside = rough + thin * x
        x -= (x + 2.0 * np.log10(inside)) / (1.0 + slope * thin / inside)
    return 1.0 / (x * x)


class State:
    """The air in one bore at one airflow."""

    def __init__(self, model, bore, airflow):
        velocity = airflow / bore.area
        self.velocity = velocity
        self.pressure = 0.5 * model.density * velocity * velocity
        self.reynolds = model.density * velocity * bore.diameter / model.viscosity
        self.wall = colebrook(self.reynolds, model.roughness[bore.roughness] / bore.diameter)

    @cached_property
    def mitre_factor(self):
        return np.interp(self.reynolds, MITRE_REYNOLDS, MITRE_FACTOR)


@dataclass
class Result:
    airflow: np.ndarray
    velocity: np.ndarray
    back_pressure: np.ndarray
    equivalent_length: np.ndarray
    losses: list
    least_reynolds: float


class Run:
    """What hangs on the plan alone."""

    def __init__(self, plan):
        site, exhaust = plan["site"], plan["exhaust"]
        altitude = site["altitude_m"]
        inside = (exhaust["temperature_degc"], exhaust["relative_humidity"], altitude)
        outside = (site["outdoor_temperature_degc"], site["outdoor_relative_humidity"], altitude)
        assert plan.get("bend_method", "rennels") == "rennels"
        self.density = 1.0 / humid_air("Vha", *inside)
        self.viscosity = humid_air("mu", *inside)
        self.outdoor_density = 1.0 / humid_air("Vha", *outside)
        self.room_density = 1.0 / humid_air("Vha", *ROOM, altitude)
        self.house = site.get("house_pressure_pa", 0.0)
        self.elements, self.rise = elements_of(plan)
        self.diameter = plan["run"]["diameter_m"]
        self.figures = figures_of(plan)
        flow = plan["flow"]
        self.stated = flow.get("airflow_m3_per_s")
        self.leaks = any(element.kind == "leak" for element in self.elements)
        for element in self.elements:
            self.settle_law(element)

    def settle_law(self, element):
        figures = element.figures
        if element.kind in ("smooth", "bent_flexible"):
            figures["law"] = smooth_law(figures["angle_deg"], figures["ratio"])
        if element.kind == "smooth":
            figures["spread"] = spread_of_methods(figures["angle_deg"], figures["ratio"])
        if element.kind == "segmented":
            figures["law"] = segmented_law(figures["angle_deg"], figures["ratio"])
        if element.kind == "sharp_mitre":
            figures["k"] = bend_miter(angle=figures["angle_deg"], method="Rennels")

    def stack(self, rise):
        """What a column of exhaust adds at its foot; negative where it is warm."""
        return GRAVITY * rise * (self.density - self.outdoor_density)

    def inputs(self):
        """The inputs that play a part in the figures, by name; figures' order first."""
        used = {"rigid_roughness"}
        for element in self.elements:
            used |= inputs_of(element)
        if self.stated is None:
            used |= {"blower_free_airflow", "blower_shut_off_pressure", "blower_exponent"}
        return [name for name in (*self.figures, *sorted(used - set(self.figures))) if name in used]


def inputs_of(element):
    kind, used = element.kind, set()
    if element.close:
        used.add("close_elbows")
    if kind == "straight":
        used.add(element.bore.roughness)
        if element.bore.added_friction > 0.0:
            used.add("flexible_compression")
        if element.figures["span"][0] < element.figures["span"][2]:
            used.add("estimates")
    elif kind == "smooth":
        used |= {"smooth_elbow", element.bore.roughness}
    elif kind == "segmented":
        used |= {"segmented_elbow", element.bore.roughness}
    elif kind == "bent_flexible":
        used |= {"bent_flexible", element.bore.roughness}
    elif kind == "concealed_elbows":
        used |= {"segmented_elbow", "estimates"}
    elif kind in HOODS:
        used |= {kind, "flap_weight"} if kind == "wall_hood" else {kind}
    else:
        named = {"sharp_mitre": "sharp_mitre", "blockage": "blockage", "wall_box": "wall_box"}
        named |= {"leak": "leak_discharge", "make_up_air": "make_up_discharge"}
        used |= {named[kind]} if kind in named else set()
    return used


class Model:
    """A run under one set of draws: what hangs on the draws alone is worked out once."""

    def __init__(self, run, draws):
        self.run = run
        self.draws = draws
        self.density, self.viscosity = run.density, run.viscosity
        self.roughness = {name: draws.value(name) for name in run.figures if "roughness" in name}
        self.compression = draws.value("flexible_compression")
        self.losses = [self.loss_of(element) for element in run.elements]
        self.outlet_bore = round_bore(run.diameter)

    def loss_of(self, element):
        """A function of (airflow, state) that gives the element's loss."""
        draws, figures = self.draws, element.figures
        kind, value = element.kind, draws.value
        if kind == "make_up_air":
            opening = value("make_up_discharge") * figures["area"]
            half = 0.5 * self.run.room_density
            return lambda airflow, _: half * (airflow / opening) ** 2
        if kind == "leak":
            return lambda airflow, _: np.zeros_like(airflow)
        k = self.coefficient(element, value)
        if kind == "wall_hood":
            flap = value("flap_weight")
            return lambda _, state: state.pressure * k(state) + flap
        return lambda _, state: state.pressure * k(state)

    def coefficient(self, element, value):
        """A function of the state that gives K."""
        figures, kind = element.figures, element.kind
        if kind == "straight":
            low, likely, high = figures["span"]
            diameters = self.draws.spread("estimates", low, likely, high)
            factor = diameters * (1.0 + element.bore.added_friction * self.compression)
            return lambda state: state.wall * factor
        if kind == "area_change":
            return lambda _: figures["k"]
        if kind == "concealed_elbows":
            k = self.draws.spread("estimates", *figures["span"]) * value("segmented_elbow")
            return lambda _: k
        if kind in ("blockage", "wall_box"):
            k = value(kind) * figures.get("k", 1.0)
            return lambda _: k
        if kind in HOODS or kind == "open_end":
            k = figures["k_extra"] + (value(kind) if kind in HOODS else 1.0)
            return lambda _: k
        close = 1.0
        if element.close:
            close = self.draws.spread("close_elbows", element.close[0], 1.0, element.close[1])
        if kind == "smooth":
            low, high = figures["spread"]
            factor = close * self.draws.spread("smooth_elbow", low, 1.0, high)
            return lambda state: factor * figures["law"](state.wall, state.mitre_factor)
        if kind == "segmented":
            right_angle = value("segmented_elbow")
            return lambda state: close * figures["law"](state.wall, right_angle)
        factor = close * value(kind)
        if kind == "sharp_mitre":
            return lambda state: factor * figures["k"] * state.mitre_factor
        assert kind == "bent_flexible", kind
        return lambda state: factor * figures["law"](state.wall, state.mitre_factor)

    def at(self, at_end, take=None):
        """From the termination back to the outlet, with so much air at the termination.

        Returns airflow, total pressure, sum of losses and the air's state at the outlet.
        """
        airflow, loss, rise = at_end, 0.0, 0.0
        states = {}

        def state(bore):
            key = (bore.diameter, bore.area, bore.roughness)
            if key not in states:
                states[key] = State(self, bore, airflow)
            return states[key]

        for element, loss_of in reversed(list(zip(self.run.elements, self.losses))):
            here = state(element.bore)
            own = loss_of(airflow, here)
            if element.kind == "leak":
                gauge = loss + self.run.stack(rise) - self.run.house - here.pressure
                speed = np.sqrt(2.0 * np.abs(gauge) / self.density)
                opening = self.draws.value("leak_discharge") * element.figures["area"]
                airflow = airflow + opening * np.copysign(speed, gauge)
                states = {}
            loss = loss + own
            rise += element.rise
            if take:
                take(own)
        outlet = state(self.outlet_bore)
        total = loss + self.run.stack(self.run.rise) - self.run.house
        return airflow, total, loss, outlet

    def residual(self, at_end):
        """Falls as the airflow rises; nought at the operating point. With its slope, roughly."""
        airflow, total, loss, outlet = self.at(at_end)
        if self.run.stated is not None:
            return self.run.stated / airflow - 1.0, -1.0 / at_end
        back = total - outlet.pressure
        share = (airflow / self.free) ** self.exponent
        slope = -(self.shut_off * self.exponent * share + 2.0 * loss) / at_end
        return self.shut_off * (1.0 - share) - back, slope

    def airflow_at_end(self, start):
        if self.run.stated is not None and not self.run.leaks:
            return np.full(self.draws.count, self.run.stated)
        value = self.draws.value
        if self.run.stated is None:
            self.free, self.exponent = value("blower_free_airflow"), value("blower_exponent")
            self.shut_off = value("blower_shut_off_pressure") * self.density / BLOWER_DENSITY
        before = np.full(self.draws.count, start)
        residual_before, slope = self.residual(before)
        here = before - np.clip(residual_before / slope, -2.0 * before, 0.7 * before)
        for _ in range(MOST_STEPS):
            residual_here, _ = self.residual(here)
            change, moved = residual_here - residual_before, here - before
            still = (change == 0.0) | (np.abs(moved) <= 1e-14 * here)
            step = np.where(still, 0.0, -residual_here * moved / np.where(still, 1.0, change))
            before, residual_before = here, residual_here
            here = here + np.clip(step, -0.7 * here, 2.0 * here)
            if np.max(np.abs(here - before) / here) < SETTLED:
                return here
        raise AssertionError("an operating point was not found")

    def solve(self, start=0.045):
        at_end = self.airflow_at_end(start)
        losses = []
        airflow, total, loss, outlet = self.at(at_end, losses.append)
        per_diameter = outlet.pressure * outlet.wall
        return Result(
            airflow, outlet.velocity, total - outlet.pressure,
            self.run.diameter * loss / per_diameter, losses[::-1],
            float(np.min(outlet.reynolds)),
        )


MOST_STEPS = 30
# The step after one so small changes nothing but the last digits.
SETTLED = 1e-10


def likely(run):
    return Model(run, Draws(run.figures, {}, 1)).solve()
