"""air.csv: moist air.

Source: CoolProp 8.0.0, HAPropsSI (real-gas mixture after Herrmann, Kretzschmar and
Gatley 2009); saturation pressure of water alone by HAProps_Aux("p_ws"): IAPWS above
0.01 degC, over ice below. Relative humidity is CoolProp's, over ice below 0.01 degC.
Second opinion: PsychroLib 2.5.0 (ideal-gas mixture, ASHRAE's saturation pressure), its
humidity ratio from the same relative humidity, in the column that carries its name.
Range: -20..75 degC, relative humidity 0..1, altitude 0..3000 m. 60 rows on a grid that
holds the corners, 90 rows drawn with a fixed seed. No dew point at relative humidity 0.
Checked here first: the two libraries agree on the humidity ratio to 1.2 % and, where
the humidity is not 0, on the dew point to 0.1 K.
"""

from itertools import product

import psychrolib
from CoolProp.HumidAirProp import HAProps_Aux, HAPropsSI
from numpy.random import default_rng

from atmosphere import KELVIN_AT_ZERO_DEGC, pressure_at_altitude
from csv_table import write_table

COLUMNS = (
    "temperature_degc", "relative_humidity", "altitude_m", "pressure_pa",
    "density_kg_per_m3", "viscosity_pa_s", "humidity_ratio_kg_per_kg", "dew_point_degc",
    "saturation_pressure_pa", "psychrolib_humidity_ratio_kg_per_kg",
)


def states():
    temperatures = (-20.0, 0.0, 25.0, 50.0, 75.0)
    yield from product(temperatures, (0.0, 0.3, 0.7, 1.0), (0.0, 1500.0, 3000.0))
    generator = default_rng(150)
    for _ in range(90):
        yield (
            round(float(generator.uniform(-20.0, 75.0)), 1),
            round(float(generator.uniform(0.02, 1.0)), 2),
            round(float(generator.uniform(0.0, 3000.0)), 0),
        )


def row(temperature, relative_humidity, altitude):
    pressure = pressure_at_altitude(altitude)
    kelvin = temperature + KELVIN_AT_ZERO_DEGC

    def humid_air(name):
        return HAPropsSI(name, "T", kelvin, "R", relative_humidity, "P", pressure)

    humidity_ratio = humid_air("W")
    saturation_pressure, unit = HAProps_Aux("p_ws", kelvin, pressure, humidity_ratio)
    assert unit == "Pa"
    second_opinion = psychrolib.GetHumRatioFromRelHum(temperature, relative_humidity, pressure)
    dew_point = None
    if relative_humidity > 0.0:
        dew_point = humid_air("D") - KELVIN_AT_ZERO_DEGC
        other = psychrolib.GetTDewPointFromHumRatio(temperature, second_opinion, pressure)
        assert abs(dew_point - other) < 0.1, (temperature, relative_humidity, altitude)
        assert abs(second_opinion / humidity_ratio - 1.0) < 0.012
    return (
        temperature, relative_humidity, altitude, pressure,
        1.0 / humid_air("Vha"), humid_air("mu"), humidity_ratio, dew_point,
        saturation_pressure, second_opinion,
    )


def write(directory):
    psychrolib.SetUnitSystem(psychrolib.SI)
    write_table(directory / "air.csv", COLUMNS, (row(*state) for state in states()))
