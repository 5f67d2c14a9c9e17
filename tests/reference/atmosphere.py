"""Pressure of the standard atmosphere by altitude, and the zero of degC in kelvin.

Source: ISO 2533 / US Standard Atmosphere 1976 below 11 km in its usual rounded form,
p = 101325 Pa (1 - 2.25577e-5 z)^5.2559. Checked on import against fluids 1.3.1,
ATMOSPHERE_1976, to 5e-6 at the same geopotential altitude, 0..3000 m.
"""

from fluids.atmosphere import ATMOSPHERE_1976

KELVIN_AT_ZERO_DEGC = 273.15


def pressure_at_altitude(altitude_m):
    return 101325.0 * (1.0 - 2.25577e-5 * altitude_m) ** 5.2559


for metres in (0.0, 500.0, 1000.0, 2000.0, 3000.0):
    standard = ATMOSPHERE_1976(metres)
    assert abs(pressure_at_altitude(standard.H) / standard.P - 1.0) < 5e-6
