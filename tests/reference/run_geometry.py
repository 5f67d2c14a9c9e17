"""The path of a run in space, worked out from a plan file with numpy alone.

x to the right of the sheet, y toward its bottom, z up. The run is a polyline: outlet,
points, and the far end of each riser; a bend stands wherever two of its lines meet at an
angle. A bend of angle a and centre-line radius r takes r tan(a/2) off both lines; the one
at the outlet has no line before it, only the direction in which the dryer blows.
"""

from dataclasses import dataclass

import numpy as np

LEAST_BEND_DEG = 0.1


@dataclass
class Bend:
    angle_deg: float
    radius_m: float
    kind: str


@dataclass
class Path:
    straights_m: list
    bends: list
    rise_m: float  # height of the termination less that of the outlet

    @property
    def straight_length_m(self):
        return float(sum(self.straights_m))

    @property
    def developed_length_m(self):
        arcs = sum(bend.radius_m * np.radians(bend.angle_deg) for bend in self.bends)
        return float(self.straight_length_m + arcs)


def outlet_of(plan):
    """Where the outlet is, and the direction in which it blows."""
    dryer = plan["dryer"]
    turned = np.radians(dryer["turned_deg"])
    direction = np.array([np.sin(turned), -np.cos(turned), 0.0])
    centre = np.array([dryer["x_m"], dryer["y_m"], dryer["outlet_height_m"]])
    return centre + direction * dryer["depth_m"] / 2.0, direction


def corners_of(plan):
    """The polyline's vertices and the elbow that would stand at each."""
    run = plan["run"]
    position, _ = outlet_of(plan)
    vertices, elbows = [], []
    nodes = [(position[0], position[1], run["outlet"])]
    nodes += [(point["x_m"], point["y_m"], point) for point in run["points"]]
    height = position[2]
    for x, y, node in nodes:
        vertices.append((x, y, height))
        elbows.append(node["elbow"])
        if node["riser"] is not None:
            height += node["riser"]["rise_m"]
            vertices.append((x, y, height))
            elbows.append(node["riser"]["elbow"])
    return np.array(vertices), elbows


def angle_between_deg(before, after):
    across = np.linalg.norm(np.cross(before, after))
    return float(np.degrees(np.arctan2(across, np.dot(before, after))))


def path_of(plan):
    vertices, elbows = corners_of(plan)
    lines = np.diff(vertices, axis=0)
    lengths = np.linalg.norm(lines, axis=1)
    _, heading = outlet_of(plan)
    bends = []
    for index, line in enumerate(lines):
        angle = angle_between_deg(heading, line)
        heading = line
        if angle < LEAST_BEND_DEG:
            continue
        elbow = elbows[index]
        radius = elbow["centre_line_radius_m"]
        tangent = radius * np.tan(np.radians(angle) / 2.0)
        lengths[index] -= tangent
        if index > 0:
            lengths[index - 1] -= tangent
        bends.append(Bend(angle, radius, elbow["kind"]))
    assert (lengths > 0.0).all(), f"{plan['title']}: a leg is shorter than its bends' tangents"
    rise = float(vertices[-1, 2] - vertices[0, 2])
    return Path([float(length) for length in lengths], bends, rise)
