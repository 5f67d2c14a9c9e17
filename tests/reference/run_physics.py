"""What one run does: pressures, and with a blower its operating point.

Air from CoolProp 8.0.0 (density and viscosity of moist air, real gas), isothermal in the
duct; friction from fluids 1.3.1 (Colebrook), elbows from elbow_loss.py, the operating
point from scipy 1.17.1 (brentq). All duct is rigid, roughness 0.09 mm.
Segmented elbows' arc friction is counted among the elbows' losses, not the straights'.
"""

from dataclasses import dataclass
from math import pi

from CoolProp.HumidAirProp import HAPropsSI
from fluids.core import Reynolds, dP_from_K
from fluids.friction import Colebrook
from scipy.optimize import brentq

from atmosphere import KELVIN_AT_ZERO_DEGC, pressure_at_altitude
from elbow_loss import loss_coefficient
from run_geometry import path_of

ROUGHNESS = 0.09e-3
GRAVITY = 9.80665

# Wall hood with a free flap; the lost velocity pressure of the exit is in the coefficient.
HOOD_COEFFICIENT = 2.0
FLAP_WEIGHT_PA = 5.0

# The typical blower: static rise at the outlet, an assumption.
BLOWER_SHUT_OFF_PA = 320.0
BLOWER_FREE_FLOW = 0.080
BLOWER_DENSITY = 1.2

LEAST_REYNOLDS = 5000.0

COLUMNS = (
    "run", "airflow_m3_per_s", "density_kg_per_m3", "velocity_m_per_s", "reynolds",
    "total_pressure_pa", "back_pressure_pa", "stack_pa", "developed_length_m",
    "straight_length_m", "elbow_loss_pa", "straight_loss_pa", "termination_loss_pa",
)


@dataclass
class Result:
    velocity: float
    reynolds: float
    total_pressure: float
    back_pressure: float
    stack: float
    elbow_loss: float
    straight_loss: float
    termination_loss: float


def humid_air(name, temperature_degc, relative_humidity, altitude_m):
    kelvin = temperature_degc + KELVIN_AT_ZERO_DEGC
    pressure = pressure_at_altitude(altitude_m)
    return HAPropsSI(name, "T", kelvin, "R", relative_humidity, "P", pressure)


class Run:
    def __init__(self, plan):
        site, exhaust = plan["site"], plan["exhaust"]
        inside = (exhaust["temperature_degc"], exhaust["relative_humidity"], site["altitude_m"])
        outside = (
            site["outdoor_temperature_degc"],
            site["outdoor_relative_humidity"],
            site["altitude_m"],
        )
        assert plan["run"]["termination"] == {"kind": "wall_hood"}
        assert all(point["duct"] == "rigid" for point in plan["run"]["points"])
        self.plan = plan
        self.diameter = plan["run"]["diameter_m"]
        self.path = path_of(plan)
        self.density = 1.0 / humid_air("Vha", *inside)
        self.viscosity = humid_air("mu", *inside)
        self.outdoor_density = 1.0 / humid_air("Vha", *outside)

    def at(self, airflow):
        velocity = airflow / (pi * self.diameter**2 / 4.0)
        reynolds = Reynolds(V=velocity, D=self.diameter, rho=self.density, mu=self.viscosity)
        friction = Colebrook(reynolds, ROUGHNESS / self.diameter)
        straight_k = friction * self.path.straight_length_m / self.diameter
        elbow_k = sum(
            loss_coefficient(bend, self.diameter, friction, reynolds) for bend in self.path.bends
        )
        straight_loss = dP_from_K(straight_k, self.density, velocity)
        elbow_loss = dP_from_K(elbow_k, self.density, velocity)
        termination_loss = dP_from_K(HOOD_COEFFICIENT, self.density, velocity) + FLAP_WEIGHT_PA
        stack = GRAVITY * self.path.rise_m * (self.density - self.outdoor_density)
        total = straight_loss + elbow_loss + termination_loss + stack
        back_pressure = total - dP_from_K(1.0, self.density, velocity)
        return Result(
            velocity, reynolds, total, back_pressure, stack,
            elbow_loss, straight_loss, termination_loss,
        )

    def blower_pressure(self, airflow):
        share = 1.0 - (airflow / BLOWER_FREE_FLOW) ** 2
        return BLOWER_SHUT_OFF_PA * self.density / BLOWER_DENSITY * share

    def operating_airflow(self):
        def residual(airflow):
            return self.blower_pressure(airflow) - self.at(airflow).back_pressure

        return brentq(residual, 0.01, BLOWER_FREE_FLOW, xtol=1e-16, rtol=1e-15)

    def airflow(self):
        flow = self.plan["flow"]
        if flow["kind"] == "stated_airflow":
            return flow["airflow_m3_per_s"]
        assert flow["kind"] == "typical_blower"
        return self.operating_airflow()

    def row(self, name):
        airflow = self.airflow()
        result = self.at(airflow)
        assert result.reynolds > LEAST_REYNOLDS, (name, result.reynolds)
        return (
            name, airflow, self.density, result.velocity, result.reynolds,
            result.total_pressure, result.back_pressure, result.stack,
            self.path.developed_length_m, self.path.straight_length_m,
            result.elbow_loss, result.straight_loss, result.termination_loss,
        )
