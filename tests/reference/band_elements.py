"""A plan's run as a list of elements in the order in which the air meets them.

Geometry in space by numpy, as in run_geometry.py. What an element is made of:
 bore       diameter (hydraulic), area, the input that its wall's roughness is, and what
            pushing together likely adds to its friction, as a share of it
 straights  have their own wall; fittings, hoods and changes of area are rigid; a bend by
            hand has the wall of the flexible duct that arrives, else of the one that leaves
Two elbows with less than 10 diameters between them: the second one's K has a wider span.
Figures of that (Idelchik, elbows in combination, from memory; assumption for rounded ones):
 same way round (a U)   least 0.6 with no gap, straight to 1 at 10 D; greatest 1
 back, both sharp (Z)   least 1; greatest 1.8 to 1.8 D, straight to 1.05 at 10 D
 else                   least 0.8, greatest 1.2 with no gap, both straight to 1 at 10 D
"""

from dataclasses import dataclass, field
from math import cos, exp, pi, radians, sqrt

import numpy as np

from run_geometry import LEAST_BEND_DEG, angle_between_deg, outlet_of

FAR_DIAMETERS = 10.0
ROUGHNESS_OF = {
    "rigid": "rigid_roughness",
    "flat_rectangular": "rigid_roughness",
    "semi_rigid": "semi_rigid_roughness",
    "foil": "foil_roughness",
}


@dataclass(frozen=True)
class Bore:
    diameter: float
    area: float
    roughness: str = "rigid_roughness"
    added_friction: float = 0.0

    def as_fitting(self):
        return Bore(self.diameter, self.area)


@dataclass
class Element:
    part: str
    kind: str
    bore: Bore
    rise: float = 0.0
    figures: dict = field(default_factory=dict)
    close: tuple = None  # least and greatest factor of an elbow close behind another


def round_bore(diameter):
    return Bore(diameter, pi * diameter**2 / 4.0)


def duct_of(duct):
    """Kind and details: a duct is a word, or one word with its details."""
    if isinstance(duct, str):
        return duct, {}
    ((kind, details),) = duct.items()
    return kind, details


def bore_of(duct, diameter):
    kind, details = duct_of(duct)
    if kind == "flat_rectangular":
        width, depth = details["width_m"], details["depth_m"]
        return Bore(2.0 * width * depth / (width + depth), width * depth)
    bore = round_bore(diameter)
    if kind == "rigid":
        return bore
    # Abushakra, Walker and Sherman 2004: percent short of full stretch, D in m.
    added = 0.58 * details["short_of_full_stretch_percent"] * exp(-4.96 * diameter)
    return Bore(bore.diameter, bore.area, ROUGHNESS_OF[kind], added)


def thin_blockage(free):
    """Idelchik, thin orifice in a straight duct."""
    return (1.0 + 0.707 * sqrt(1.0 - free) - free) ** 2 / free**2


@dataclass
class Line:
    """A straight line of the run between two of its vertices."""

    part: str
    vector: np.ndarray
    elbow_part: str
    elbow: dict  # what would stand where it starts
    point: dict  # whose duct it has
    is_riser: bool


def lines_of(plan):
    points = plan["run"]["points"]
    position, _ = outlet_of(plan)
    lines = []

    def duct_of_riser(index):
        """Past a recessed wall box a riser is made of what leaves it."""
        if index >= 0 and not points[index].get("ends_in_wall_box", False):
            return points[index]
        return points[index + 1] if index + 1 < len(points) else {"duct": "rigid"}

    def riser(node, name, index):
        if node["riser"] is None:
            return node["elbow"], f"elbow:{name}"
        vector = np.array([0.0, 0.0, node["riser"]["rise_m"]])
        point = duct_of_riser(index)
        lines.append(
            Line(f"riser:{name}", vector, f"elbow:{name}", node["elbow"], point, True)
        )
        return node["riser"]["elbow"], f"elbow-after-riser:{name}"

    elbow, elbow_part = riser(plan["run"]["outlet"], "@outlet", -1)
    at = position[:2]
    for index, point in enumerate(points):
        to = np.array([point["x_m"], point["y_m"]])
        vector = np.array([*(to - at), 0.0])
        lines.append(Line(f"leg:{point['id']}", vector, elbow_part, elbow, point, False))
        elbow, elbow_part = riser(point, point["id"], index)
        at = to
    return lines, f"termination:{points[-1]['id']}"


def closeness(before, after, gap):
    """Least and greatest factor on the second of two bends; each is its two directions,
    and whether it is sharp."""
    axes = []
    for incoming, outgoing, _ in (before, after):
        axis = np.cross(incoming, outgoing)
        axes.append(axis / np.linalg.norm(axis))
    along = float(np.dot(*axes))
    near = 1.0 - gap / FAR_DIAMETERS
    if along > cos(radians(45.0)):
        return 1.0 - 0.4 * near, 1.0
    if along < -cos(radians(45.0)) and before[2] and after[2]:
        share = max(0.0, (gap - 1.8) / (FAR_DIAMETERS - 1.8))
        return 1.0, 1.8 + (1.05 - 1.8) * share
    return 1.0 - 0.2 * near, 1.0 + 0.2 * near


class Walk:
    def __init__(self, plan):
        self.plan = plan
        self.diameter = plan["run"]["diameter_m"]
        self.bore = round_bore(self.diameter)
        self.elements = []
        self.last_bend = None
        self.since_last_bend = 0.0

    def add(self, part, kind, bore=None, **figures):
        self.elements.append(Element(part, kind, bore or self.bore, figures=figures))
        return self.elements[-1]

    def bend(self, line, angle, before, after):
        kind, radius = line.elbow["kind"], line.elbow["centre_line_radius_m"]
        bore = self.bore.as_fitting()
        if kind == "bent_flexible":
            rough = self.bore.roughness
            if rough == "rigid_roughness":
                leaving, _ = duct_of(line.point["duct"])
                rough = "foil_roughness" if leaving == "foil" else "semi_rigid_roughness"
            bore = Bore(bore.diameter, bore.area, rough)
        ratio = radius / bore.diameter
        element = self.add(line.elbow_part, kind, bore, angle_deg=angle, ratio=ratio)
        here = (before, after, kind == "sharp_mitre")
        gap = self.since_last_bend / bore.diameter
        if self.last_bend is not None and gap < FAR_DIAMETERS:
            element.close = closeness(self.last_bend, here, gap)
        self.last_bend, self.since_last_bend = here, 0.0

    def change_area(self, line, bore):
        ratio = bore.area / self.bore.area
        if abs(ratio - 1.0) < 1e-6:
            return
        if ratio > 1.0:
            k, narrow = (1.0 - 1.0 / ratio) ** 2, self.bore
        else:
            k, narrow = 0.5 * (1.0 - ratio), bore
        place = "area-change-into-riser" if line.is_riser else "area-change"
        name = line.part.split(":")[1]
        self.add(f"{place}:{name}", "area_change", narrow.as_fitting(), k=k)

    def straight(self, line, length):
        point, name = line.point, line.part.split(":")[1]
        bore = bore_of(point["duct"], point.get("diameter_m") or self.diameter)
        self.change_area(line, bore)
        self.bore = bore
        if not line.is_riser and point.get("leak_free_area_m2") is not None:
            self.add(f"leak:{name}", "leak", area=point["leak_free_area_m2"])
        estimate = {} if line.is_riser else point.get("estimate") or {}
        low = max(0.0, length - estimate.get("less_m", 0.0))
        high = length + estimate.get("more_m", 0.0)
        span = tuple(metres / bore.diameter for metres in (low, length, high))
        element = self.add(line.part, "straight", span=span)
        element.rise = float(line.vector[2])
        self.since_last_bend += length
        if not line.is_riser:
            self.within_leg(point, name)

    def within_leg(self, point, name):
        concealed = point.get("concealed_elbows")
        if concealed is not None:
            least, most = concealed["least"], concealed["most"]
            span = (float(least), (least + most) / 2.0, float(most))
            self.bore = self.bore.as_fitting()
            self.add(f"concealed-elbows:{name}", "concealed_elbows", span=span)
        free = point.get("blockage_free_area")
        if free is not None:
            self.add(f"blockage:{name}", "blockage", k=thin_blockage(free))
        if point.get("ends_in_wall_box", False):
            self.bore = self.bore.as_fitting()
            self.add(f"wall-box:{name}", "wall_box")


def elements_of(plan):
    """The elements, and the height of the termination above the outlet."""
    walk = Walk(plan)
    opening = plan["site"].get("make_up_free_area_m2")
    if opening is not None:
        walk.add("make-up-air:@outlet", "make_up_air", area=opening)
    lines, termination_part = lines_of(plan)
    lengths = [float(np.linalg.norm(line.vector)) for line in lines]
    _, heading = outlet_of(plan)
    angles = []
    for index, line in enumerate(lines):
        angle = angle_between_deg(heading, line.vector)
        angles.append((angle, heading, line.vector))
        heading = line.vector
        if angle >= LEAST_BEND_DEG:
            tangent = line.elbow["centre_line_radius_m"] * np.tan(radians(angle) / 2.0)
            lengths[index] -= tangent
            if index > 0:
                lengths[index - 1] -= tangent
    assert min(lengths) > 0.0, f"{plan['title']}: a leg is shorter than its bends' tangents"
    for line, length, (angle, before, after) in zip(lines, lengths, angles):
        if angle >= LEAST_BEND_DEG:
            walk.bend(line, angle, before, after)
        walk.straight(line, length)
    end = plan["run"]["termination"]
    free = end.get("free_area", 1.0)
    k_extra = (1.0 + sqrt(thin_blockage(free))) ** 2 - 1.0
    walk.bore = walk.bore.as_fitting()
    walk.add(termination_part, end["kind"], k_extra=k_extra)
    return walk.elements, sum(float(line.vector[2]) for line in lines)
