"""Loss coefficient of one elbow, from the bend formulas of fluids 1.3.1.

Rennels and Hudson 2012 through fluids' bend_rounded (fd passed, so that it is the duct's
own) and bend_miter. The rules on top of them are those of the check set:
 smooth                   the lesser of Rennels and the sharp mitre times its Reynolds
                          factor; over 90 deg with r/D under 1: K(90) + K(angle - 90);
                          below 10 deg the share angle/10 deg of that, the rest
                          being the friction of the straight that the elbow replaces.
 segmented                K 0.50 for the 90 of r/D 1, scaled to another r/D as Rennels
                          scales; 45 deg at 0.6 of the 90; straight lines between 0, 45
                          and 90 deg; over 90: K(90) + K(angle - 90); friction along the
                          arc comes on top.
Assumptions, not published figures: 0.50, 0.6 and the fading below 10 deg.
"""

from math import radians, tan

from fluids.fittings import bend_miter, bend_rounded
from numpy import interp

# Reynolds factor of a mitred elbow: ASHRAE's table for rectangular ones (from memory);
# linear in Re between rows, constant outside.
MITRE_REYNOLDS = (1e4, 2e4, 3e4, 4e4, 6e4, 8e4, 1e5, 1.4e5)
MITRE_FACTOR = (1.40, 1.26, 1.19, 1.14, 1.09, 1.06, 1.04, 1.0)

SEGMENTED_90 = 0.50
SEGMENTED_45_SHARE = 0.6


def rennels(angle_deg, ratio, friction):
    return bend_rounded(
        Di=1.0, angle=angle_deg, fd=friction, bend_diameters=ratio, method="Rennels"
    )


def smooth(angle_deg, ratio, friction, reynolds):
    if angle_deg > 90.0 and ratio < 1.0:
        rest = smooth(angle_deg - 90.0, ratio, friction, reynolds)
        return smooth(90.0, ratio, friction, reynolds) + rest
    rounded = rennels(angle_deg, ratio, friction)
    mitre = bend_miter(angle=angle_deg, method="Rennels")
    mitre *= float(interp(reynolds, MITRE_REYNOLDS, MITRE_FACTOR))
    share = min(1.0, angle_deg / 10.0)
    straight = friction * 2.0 * tan(radians(angle_deg) / 2.0) * ratio
    return share * min(rounded, mitre) + (1.0 - share) * straight


def segmented_without_arc(angle_deg, ratio, friction):
    at_90 = SEGMENTED_90 * rennels(90.0, ratio, friction) / rennels(90.0, 1.0, friction)
    if angle_deg > 90.0:
        return at_90 + segmented_without_arc(angle_deg - 90.0, ratio, friction)
    return at_90 * float(interp(angle_deg, (0.0, 45.0, 90.0), (0.0, SEGMENTED_45_SHARE, 1.0)))


def loss_coefficient(bend, diameter, friction, reynolds):
    ratio = bend.radius_m / diameter
    if bend.kind == "smooth":
        return smooth(bend.angle_deg, ratio, friction, reynolds)
    assert bend.kind == "segmented", bend.kind
    arc_friction = friction * ratio * radians(bend.angle_deg)
    return segmented_without_arc(bend.angle_deg, ratio, friction) + arc_friction
