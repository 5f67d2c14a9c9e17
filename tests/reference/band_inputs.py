"""The uncertain inputs of a run: low, likely and high of each, and draws of them.

Each input is triangular over its three figures. One draw of an input is shared by every
element that uses it. Three inputs have no figures of their own, since their span is
worked out for each element: there the draw is a quantile that all spans share.

Where the figures are from:
 rigid_roughness            duct handbooks, galvanized or aluminium with longitudinal seam
                            (Griggs et al. 1987 with Hutchinson 1953 and Wright 1945)
 semi_rigid_roughness       duct handbooks, metallic flexible duct, fully extended (memory)
 foil_roughness,
 flexible_compression       Abushakra, Walker and Sherman 2004; Culp 2011 (carried to 4 in)
 sharp_mitre                Rennels and Hudson's 1.2 for a 90, believed from 0.97 to 1.6
 blockage                   Idelchik, thin orifice, within 10 %
 make_up_discharge          handbooks, sharp-edged opening
 all others                 assumptions of the project's design; no open figure was found
"""

import numpy as np

# low, likely, high; roughness in m, flap weight and shut-off pressure in Pa, airflow in m3/s.
FIGURES = {
    "rigid_roughness": (0.05e-3, 0.09e-3, 0.15e-3),
    "semi_rigid_roughness": (1.2e-3, 1.6e-3, 3.0e-3),
    "foil_roughness": (0.9e-3, 0.9e-3, 2.1e-3),
    "flexible_compression": (0.6, 1.0, 1.4),
    "segmented_elbow": (0.40, 0.50, 0.70),
    "sharp_mitre": (0.97 / 1.2, 1.0, 1.6 / 1.2),
    "bent_flexible": (0.7, 1.0, 1.3),
    "blockage": (0.9, 1.0, 1.1),
    "wall_hood": (1.5, 2.0, 3.0),
    "louvred_hood": (2.0, 3.0, 5.0),
    "roof_cap": (1.5, 2.5, 4.0),
    "flap_weight": (0.0, 5.0, 15.0),
    "make_up_discharge": (0.5, 0.6, 0.7),
    "blower_free_airflow": (0.066, 0.080, 0.100),
    "blower_shut_off_pressure": (200.0, 320.0, 500.0),
    "blower_exponent": (1.5, 2.0, 2.5),
    "leak_discharge": (0.4, 0.6, 0.8),
    "wall_box": (0.0, 0.1, 0.3),
}
BY_ELEMENT = ("smooth_elbow", "close_elbows", "estimates")


def figures_of(plan):
    """The project's figures with the plan's own in their place."""
    own = {
        one["input"]: (one["low"], one["likely"], one["high"]) for one in plan.get("overrides", ())
    }
    return {**FIGURES, **own}


def triangular(low, likely, high, quantiles):
    """Quantiles of a triangular distribution; a span of nothing is its likely value."""
    width = high - low
    if width <= 0.0:
        return np.full_like(quantiles, likely)
    peak = min(max(likely, low), high)
    rising = low + np.sqrt(quantiles * width * (peak - low))
    falling = high - np.sqrt((1.0 - quantiles) * width * (high - peak))
    return np.where(quantiles * width <= peak - low, rising, falling)


class Draws:
    """Many draws of all inputs at once, from a quantile of each.

    quantiles: input's name to an array; an input that is not named is at its likely value,
    and so is every input where quantiles is empty.
    """

    def __init__(self, figures, quantiles, count):
        self.figures = figures
        self.quantiles = quantiles
        self.count = count

    def value(self, name):
        low, likely, high = self.figures[name]
        return self.spread(name, low, likely, high)

    def spread(self, name, low, likely, high):
        if name not in self.quantiles:
            return np.full(self.count, likely)
        return triangular(low, likely, high, self.quantiles[name])
