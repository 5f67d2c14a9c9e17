"""friction.csv: Darcy friction factors.

Source: fluids 1.3.1, fluids.friction.Colebrook in its exact (Lambert W) form of
Colebrook's equation of 1939, and fluids' laminar 64/Re.
Checked here first: every turbulent row against scipy 1.17.1 brentq on the equation
itself, 1/sqrt(f) = -2 log10((e/D)/3.7 + 2.51/(Re sqrt(f))), to 1e-10 of f.
Range: 180 turbulent rows, Re 4000..1e6 in even steps of log Re, rounded to 0.1, e/D
0..0.05; 20 laminar rows, Re 100..2035 (fluids' limit is 2040), where e/D must not matter.
"""

from math import log10

from fluids.friction import Colebrook, friction_laminar
from numpy import geomspace
from scipy.optimize import brentq

from csv_table import write_table

# One of them is 0.09 mm in a duct of 0.1016 m.
RELATIVE_ROUGHNESSES = (
    0.0, 1e-6, 1e-5, 5e-5, 1e-4, 2e-4, 3e-4, 5e-4,
    0.09 / 101.6, 2e-3, 5e-3, 0.01, 0.02, 0.035, 0.05,
)
LAMINAR_ROUGHNESSES = (0.0, 1e-3, 0.01, 0.05)


def friction_factor_by_bracketing(reynolds, relative_roughness):
    def residual(inverse_root):
        argument = relative_roughness / 3.7 + 2.51 * inverse_root / reynolds
        return inverse_root + 2.0 * log10(argument)

    return brentq(residual, 1.0, 40.0, xtol=1e-14, rtol=1e-15) ** -2


def log_spread(low, high, count):
    return [round(reynolds, 1) for reynolds in geomspace(low, high, count).tolist()]


def rows():
    for index, reynolds in enumerate(log_spread(100.0, 2035.0, 20)):
        roughness = LAMINAR_ROUGHNESSES[index % len(LAMINAR_ROUGHNESSES)]
        yield reynolds, roughness, friction_laminar(reynolds), "laminar"
    for reynolds in log_spread(4000.0, 1e6, 12):
        for roughness in RELATIVE_ROUGHNESSES:
            factor = Colebrook(reynolds, roughness)
            bracketed = friction_factor_by_bracketing(reynolds, roughness)
            assert abs(factor / bracketed - 1.0) < 1e-10, (reynolds, roughness)
            yield reynolds, roughness, factor, "turbulent"


def write(directory):
    columns = ("reynolds", "relative_roughness", "darcy_friction_factor", "regime")
    write_table(directory / "friction.csv", columns, rows())
