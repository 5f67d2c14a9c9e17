"""One duct run cooled by still air, marched apart from the project.

Inside: ht 1.2.0 (turbulent_Gnielinski with fluids' Colebrook f; 3.66 to Re 2300, straight to
Re 4000). Outside: ht's Churchill-Chu forms, horizontal cylinder for level stretches and
vertical plate for risers, air at the film temperature, and grey radiation by hand.
Properties of moist air and of still dry air: CoolProp 8.0.0 (real gas). Wall: brentq.
Along the run: for sensible cooling scipy's solve_ivp on the temperature; for condensing
runs a march of our own in steps of at most 0.1 m, each taken twice (Heun; half the step
moves the water by less than 0.1 %), with enthalpies
from CoolProp, so that heat and water can be balanced at the end. Mass transfer by Lewis'
analogy with Le 0.85, as the design text sets it; latent heat at the wall.
"""

from dataclasses import dataclass
from math import ceil, log, pi

from CoolProp.CoolProp import PropsSI
from CoolProp.HumidAirProp import HAPropsSI
from fluids.friction import Colebrook
from ht.conv_free_immersed import Nu_horizontal_cylinder_Churchill_Chu, Nu_vertical_plate_Churchill
from ht.conv_internal import turbulent_Gnielinski
from scipy.constants import sigma
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

from atmosphere import KELVIN_AT_ZERO_DEGC, pressure_at_altitude

ROUGHNESS = 0.09e-3
GRAVITY = 9.80665
LEWIS = 0.85
INSULATION_CONDUCTIVITY = 0.040
JACKET_EMISSIVITY = 0.9
EMISSIVITY = {"galvanized": 0.25, "aluminium": 0.1}
STEP_M = 0.1


@dataclass
class Case:
    name: str
    diameter: float
    leg: float  # level straight, m
    riser: float  # vertical straight after a bend, m; 0 for none
    bend: float  # arc between the two, m
    airflow: float
    temperature: float  # degC
    relative_humidity: float
    surroundings: float  # degC
    altitude: float
    thickness: float  # of insulation, m; 0 for bare
    metal: str


class OutOfSet(Exception):
    """A run that the set has no place for."""


class Duct:
    def __init__(self, case):
        self.case = case
        self.pressure = pressure_at_altitude(case.altitude)
        kelvin = case.temperature + KELVIN_AT_ZERO_DEGC
        at = ("T", kelvin, "P", self.pressure, "R", case.relative_humidity)
        self.humidity_ratio = HAPropsSI("W", *at)
        # Vha is a kg of moist air, Vda a kg of dry air.
        self.moist_flow = case.airflow / HAPropsSI("Vha", *at)
        self.dry_flow = case.airflow / HAPropsSI("Vda", *at)
        self.perimeter = pi * case.diameter
        self.outside = case.diameter + 2.0 * case.thickness
        self.ambient = case.surroundings + KELVIN_AT_ZERO_DEGC
        insulated = case.thickness > 0.0
        self.emissivity = JACKET_EMISSIVITY if insulated else EMISSIVITY[case.metal]
        self.resistance = (
            log(self.outside / case.diameter) / (2.0 * pi * INSULATION_CONDUCTIVITY)
            if insulated
            else 0.0
        )

    def stretches(self):
        case = self.case
        yield case.leg, None
        if case.riser > 0.0:
            yield case.bend, None
            yield case.riser, case.riser

    def moist(self, name, kelvin, ratio):
        # Air that is over saturated is read at saturation: only by the last digits.
        saturated = self.saturated(kelvin)
        return HAPropsSI(name, "T", kelvin, "P", self.pressure, "W", min(ratio, saturated))

    def saturated(self, kelvin):
        return HAPropsSI("W", "T", kelvin, "P", self.pressure, "R", 1.0)

    def inside(self, kelvin, ratio):
        """h, and heat capacity a kg of dry air."""
        viscosity = self.moist("mu", kelvin, ratio)
        conductivity = self.moist("k", kelvin, ratio)
        capacity_dry = self.moist("cp", kelvin, ratio)
        capacity = self.moist("cp_ha", kelvin, ratio)
        flow = self.dry_flow * (1.0 + ratio)
        reynolds = 4.0 * flow / (pi * self.case.diameter * viscosity)
        prandtl = viscosity * capacity / conductivity

        def turbulent(reynolds):
            friction = Colebrook(reynolds, ROUGHNESS / self.case.diameter)
            return turbulent_Gnielinski(Re=reynolds, Pr=prandtl, fd=friction)

        if reynolds <= 2300.0:
            nusselt = 3.66
        elif reynolds >= 4000.0:
            nusselt = turbulent(reynolds)
        else:
            share = (reynolds - 2300.0) / 1700.0
            nusselt = 3.66 + share * (turbulent(4000.0) - 3.66)
        return nusselt * conductivity / self.case.diameter, capacity_dry

    def outside_coefficient(self, surface, height):
        film = (surface + self.ambient) / 2.0
        at = ("T", film, "P", self.pressure, "Air")
        density, viscosity = PropsSI("D", *at), PropsSI("V", *at)
        conductivity, capacity = PropsSI("L", *at), PropsSI("C", *at)
        prandtl = viscosity * capacity / conductivity
        length = self.outside if height is None else height
        grashof = (
            GRAVITY / film * abs(surface - self.ambient) * length**3 / (viscosity / density) ** 2
        )
        if height is None:
            nusselt = Nu_horizontal_cylinder_Churchill_Chu(Pr=prandtl, Gr=grashof)
        else:
            nusselt = Nu_vertical_plate_Churchill(Pr=prandtl, Gr=grashof)
        squares = surface**2 + self.ambient**2
        radiation = self.emissivity * sigma * squares * (surface + self.ambient)
        return nusselt * conductivity / length + radiation

    def outward(self, wall, height):
        """Heat that leaves a wall of this temperature, W/m."""
        if self.resistance == 0.0:
            out = self.outside_coefficient(wall, height) * pi * self.outside
            return out * (wall - self.ambient)

        def residual(surface):
            film = self.outside_coefficient(surface, height) * pi * self.outside
            return (wall - surface) / self.resistance - film * (surface - self.ambient)

        low, high = sorted((wall, self.ambient))
        if high - low < 1e-9:
            return 0.0
        surface = brentq(residual, low, high, xtol=1e-8)
        return (wall - surface) / self.resistance

    def wall(self, kelvin, ratio, height):
        """Wall temperature, heat to it as warmth, vapour to it, heat out; W/m and kg/(s m)."""
        film, capacity = self.inside(kelvin, ratio)
        transfer = film / (capacity * LEWIS ** (2.0 / 3.0))

        def vapour(wall):
            over = ratio - self.saturated(wall)
            return max(0.0, over) * transfer * self.perimeter

        # Enthalpy of the vapour in this air; a little less of it, so that none is over.
        vapour_in_air = (self.heat_of(kelvin, ratio) - self.heat_of(kelvin, ratio * 0.99)) / (
            ratio * 0.01
        ) if ratio > 0.0 else 0.0

        def latent(wall):
            return vapour_in_air - self.liquid(wall)

        def residual(wall):
            warmth = film * self.perimeter * (kelvin - wall)
            water = vapour(wall)
            gained = water * latent(wall) if water > 0.0 else 0.0
            return warmth + gained - self.outward(wall, height)

        low, high = sorted((self.ambient, kelvin))
        if high - low < 1e-9:
            return kelvin, 0.0, 0.0, 0.0
        wall = brentq(residual, low - 1e-6, high + 1e-6, xtol=1e-8)
        warmth = film * self.perimeter * (kelvin - wall)
        return wall, warmth, vapour(wall), self.outward(wall, height)

    def heat_of(self, kelvin, ratio):
        """Enthalpy, J a kg of dry air."""
        return self.moist("H", kelvin, ratio)

    @staticmethod
    def liquid(kelvin):
        """Enthalpy of liquid water, J/kg, above that of 0 degC; supercooled as it goes on."""
        warm = max(kelvin, KELVIN_AT_ZERO_DEGC + 0.02)
        return PropsSI("H", "T", warm, "Q", 0, "Water") + 4200.0 * (kelvin - warm)


def sensible(case):
    """Temperature at the end, degC, and wall at the beginning and at the end."""
    duct = Duct(case)
    ratio = duct.humidity_ratio
    kelvin = case.temperature + KELVIN_AT_ZERO_DEGC
    first = duct.wall(kelvin, ratio, None)[0]
    for length, height in duct.stretches():
        def slope(_, state):
            wall, warmth, water, _ = duct.wall(state[0], ratio, height)
            assert water == 0.0, (case.name, wall)
            return [-warmth / (duct.dry_flow * duct.moist("cp", state[0], ratio))]

        found = solve_ivp(slope, (0.0, length), [kelvin], rtol=1e-8, atol=1e-8)
        kelvin = float(found.y[0][-1])
        last = duct.wall(kelvin, ratio, height)[0]
    return kelvin - KELVIN_AT_ZERO_DEGC, first - KELVIN_AT_ZERO_DEGC, last - KELVIN_AT_ZERO_DEGC


def condensing(case):
    """End temperature, end wall, end humidity ratio, water in kg/h, wet length; balances checked."""
    duct = Duct(case)
    ratio = duct.humidity_ratio
    kelvin = case.temperature + KELVIN_AT_ZERO_DEGC
    entering = duct.heat_of(kelvin, ratio)
    water, heat, drained, wet = 0.0, 0.0, 0.0, 0.0
    wall = kelvin
    for length, height in duct.stretches():
        steps = ceil(length / STEP_M)
        step = length / steps
        for _ in range(steps):
            wall, warmth, vapour, out = duct.wall(kelvin, ratio, height)
            capacity = duct.moist("cp", kelvin, ratio)
            foreseen = kelvin - warmth * step / (duct.dry_flow * capacity)
            foreseen_ratio = ratio - vapour * step / duct.dry_flow
            after = duct.wall(foreseen, foreseen_ratio, height)
            vapour = (vapour + after[2]) / 2.0
            out = (out + after[3]) / 2.0
            middle_wall = (wall + after[0]) / 2.0
            ratio_after = ratio - vapour * step / duct.dry_flow
            # The air's heat after the step follows from the balance; its temperature from that.
            left = (
                duct.heat_of(kelvin, ratio)
                - (out * step + vapour * step * duct.liquid(middle_wall)) / duct.dry_flow
            )
            kelvin_after = brentq(
                lambda at: duct.heat_of(at, ratio_after) - left,
                foreseen - 1.0,
                foreseen + 1.0,
                xtol=1e-10,
            )
            if ratio_after > duct.saturated(kelvin_after):
                raise OutOfSet(f"{case.name}: the air itself becomes mist")
            water += vapour * step
            heat += out * step
            drained += vapour * step * duct.liquid(middle_wall)
            wet += step if vapour > 0.0 else 0.0
            kelvin, ratio, wall = kelvin_after, ratio_after, after[0]
    if water == 0.0:
        raise OutOfSet(f"{case.name}: the wall stays dry")
    leaving = duct.heat_of(kelvin, ratio)
    given = duct.dry_flow * (entering - leaving)
    assert abs(given - heat - drained) < 1e-6 * abs(given), (case.name, given, heat, drained)
    lost = duct.dry_flow * (duct.humidity_ratio - ratio)
    assert abs(lost - water) < 1e-6 * water, (case.name, lost, water)
    return (
        kelvin - KELVIN_AT_ZERO_DEGC, wall - KELVIN_AT_ZERO_DEGC, ratio, water * 3600.0, wet, heat,
    )
