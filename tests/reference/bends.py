"""bends.csv: loss coefficients of single bends by method.

Source: fluids 1.3.1, fluids.fittings.bend_rounded and bend_miter. K is a loss of total
pressure in velocity pressures; in all bend_rounded methods it includes the friction
along the arc. What was passed, per method:
 rennels        Rennels and Hudson 2012. fd is given, so Re and roughness play no part;
                the plain formula at every angle and radius, with no small-angle rule.
 ito            Ito 1960. Re given, roughness 0; angles 45..180, r/D 1..4.
 miller         Miller 1990. Re given, roughness 0, 30 D of free duct downstream (the most
                that its chart knows); angles 20..180, r/D 0.75..4, Re 1e4..2e5.
 mitre_rennels  Rennels and Hudson 2012, sharp mitre, angle alone: no Reynolds factor;
                angles 10..150.
Left out: Swamee (1.25 for a 90 of r/D 1, around three times the others there).
"""

from itertools import product

from fluids.fittings import bend_miter, bend_rounded

from csv_table import write_table

COLUMNS = ("method", "angle_deg", "radius_over_diameter", "reynolds", "friction_factor", "k")

# Every method works with r/D alone; the diameter stands here because fluids asks for one.
DIAMETER = 0.1016


def rennels_rows():
    angles = (10.0, 22.5, 30.0, 45.0, 60.0, 90.0, 120.0, 150.0, 180.0)
    for angle, ratio, factor in product(angles, (0.5, 0.75, 1.0, 1.5, 2.0, 4.0), (0.018, 0.026)):
        k = bend_rounded(
            Di=DIAMETER, angle=angle, fd=factor, bend_diameters=ratio, method="Rennels"
        )
        yield "rennels", angle, ratio, None, factor, k


def ito_rows():
    angles = (45.0, 60.0, 90.0, 120.0, 180.0)
    for angle, ratio, reynolds in product(angles, (1.0, 1.5, 2.0, 3.0, 4.0), (3e4, 1e5)):
        k = bend_rounded(
            Di=DIAMETER, angle=angle, Re=reynolds, bend_diameters=ratio, roughness=0.0, method="Ito"
        )
        yield "ito", angle, ratio, reynolds, None, k


def miller_rows():
    angles = (20.0, 45.0, 90.0, 135.0, 180.0)
    for angle, ratio, reynolds in product(angles, (0.75, 1.0, 1.5, 4.0), (1e4, 4e4, 2e5)):
        k = bend_rounded(
            Di=DIAMETER, angle=angle, Re=reynolds, bend_diameters=ratio, roughness=0.0,
            L_unimpeded=30.0 * DIAMETER, method="Miller",
        )
        yield "miller", angle, ratio, reynolds, None, k


def mitre_rows():
    for angle in sorted([22.5, *(float(angle) for angle in range(10, 151, 5))]):
        yield "mitre_rennels", angle, None, None, None, bend_miter(angle=angle, method="Rennels")


def write(directory):
    rows = [*rennels_rows(), *ito_rows(), *miller_rows(), *mitre_rows()]
    write_table(directory / "bends.csv", COLUMNS, rows)
