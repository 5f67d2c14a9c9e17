"""Composes invented plan files (format elbowroom-plan, version 1) from a seeded generator.

A plan is drawn as a chain of nodes, outlet first: each passes straight on, turns, or holds
a riser. Legs come last, each long enough for the tangents at both of its ends. Places are
rounded to a micrometre, so that an angle drawn as 30 deg is 30 deg to about 1e-4.
"""

from dataclasses import dataclass
from math import cos, radians, sin, tan

ELBOWS = (("smooth", 1.0), ("smooth", 1.5), ("smooth", 2.0), ("segmented", 1.0))
ODD_ELBOWS = (("smooth", 0.75), ("segmented", 1.5))
TURNS = (
    90, 90, 90, 90, 90, 45, 45, 45, 30, 30, 60, 22.5, 75,
    5, 8, 12, 17.3, 38.6, 52.4, 101.7, 120, 135,
)
TURNS_OVER_A_RISER = (0, 0, 90, -90, 45, -33)


@dataclass
class Node:
    elbow: tuple
    turn_deg: float = 0.0
    riser_elbow: tuple = None
    drop: bool = False
    rise_m: float = None


class Composer:
    def __init__(self, generator, diameter, longest_leg):
        self.generator = generator
        self.diameter = diameter
        self.longest_leg = longest_leg

    def uniform(self, low, high, digits):
        return round(float(self.generator.uniform(low, high)), digits)

    def choice(self, options):
        return options[int(self.generator.integers(len(options)))]

    def chance(self, probability):
        return float(self.generator.random()) < probability

    def tangent(self, elbow, angle_deg):
        return elbow[1] * self.diameter * tan(radians(abs(angle_deg)) / 2.0)

    def nodes(self, bends, elbow, outlet_bend, roof_end):
        """elbow None: each elbow drawn anew, odd ones among them."""

        def elbow_here():
            return elbow or self.choice(ELBOWS + ODD_ELBOWS)

        nodes = [] if outlet_bend else [Node(elbow_here())]
        left = bends - (1 if roof_end else 0)
        turned = 0.0
        while left > 0:
            if left >= 2 and self.chance(0.35):
                turn = self.choice(TURNS_OVER_A_RISER)
                drop = self.chance(0.35)
                nodes.append(Node(elbow_here(), turn, riser_elbow=elbow_here(), drop=drop))
                left -= 2
            else:
                turn = self.choice(TURNS)
                back = turned > 0.0 if abs(turned) >= 60.0 else self.chance(0.5)
                nodes.append(Node(elbow_here(), -turn if back else turn))
                left -= 1
            turned += nodes[-1].turn_deg
        if not nodes:
            nodes.append(Node(elbow_here()))
        last = Node(elbow_here())
        if roof_end:
            last.riser_elbow = elbow_here()
        return [*nodes, last]

    def set_rises(self, nodes, outlet_height):
        """A drop that would end under the floor becomes a rise."""
        height = outlet_height
        for node in nodes:
            if node.riser_elbow is None:
                continue
            tangents = self.tangent(node.elbow, 90.0)
            if node is not nodes[-1]:
                tangents += self.tangent(node.riser_elbow, 90.0)
            least = round(tangents + 0.1, 2)
            if node.drop and height - least > 0.1:
                node.rise_m = -self.uniform(least, min(height - 0.1, least + 1.5), 2)
            else:
                node.rise_m = self.uniform(least, least + 0.8 * self.longest_leg, 2)
            height += node.rise_m

    def leg_length(self, node, following, is_last):
        angle = 90.0 if node.riser_elbow else node.turn_deg
        tangents = self.tangent(node.riser_elbow or node.elbow, angle)
        if following.riser_elbow:
            tangents += self.tangent(following.elbow, 90.0)
        elif not is_last:
            tangents += self.tangent(following.elbow, following.turn_deg)
        return round(tangents + self.uniform(0.1, self.longest_leg, 2), 2)

    def elbow_field(self, elbow):
        kind, ratio = elbow
        return {"kind": kind, "centre_line_radius_m": round(ratio * self.diameter, 6)}

    def riser_field(self, node):
        if node.riser_elbow is None:
            return None
        return {"rise_m": node.rise_m, "elbow": self.elbow_field(node.riser_elbow)}

    def run_and_dryer(self, nodes, turned_deg, outlet_height):
        depth = 0.74
        self.set_rises(nodes, outlet_height)
        heading = float(turned_deg)
        x = depth / 2.0 * sin(radians(heading))
        y = -depth / 2.0 * cos(radians(heading))
        places = []
        for node, following in zip(nodes, nodes[1:]):
            heading += node.turn_deg
            length = self.leg_length(node, following, following is nodes[-1])
            x += length * sin(radians(heading))
            y -= length * cos(radians(heading))
            places.append((x, y))
        # The dryer is put so that nothing lies left of, or above, the sheet's origin.
        dryer_x = round(1.0 - min(0.0, *(place[0] for place in places)), 1)
        dryer_y = round(1.0 - min(0.0, *(place[1] for place in places)), 1)
        points = [
            {
                "id": f"p{number}",
                "x_m": round(dryer_x + place[0], 6),
                "y_m": round(dryer_y + place[1], 6),
                "duct": "rigid",
                "elbow": self.elbow_field(node.elbow),
                "riser": self.riser_field(node),
            }
            for number, (place, node) in enumerate(zip(places, nodes[1:]), start=1)
        ]
        run = {
            "diameter_m": self.diameter,
            "outlet": {
                "elbow": self.elbow_field(nodes[0].elbow),
                "riser": self.riser_field(nodes[0]),
            },
            "points": points,
            "termination": {"kind": "wall_hood"},
        }
        dryer = {
            "x_m": dryer_x,
            "y_m": dryer_y,
            "width_m": 0.69,
            "depth_m": depth,
            "turned_deg": float(turned_deg),
            "outlet_height_m": outlet_height,
            "energy": "electric",
        }
        return run, dryer

    def plan(self, title, nodes, turned_deg, airflow, highest_altitude):
        """airflow None: the typical blower."""
        run, dryer = self.run_and_dryer(nodes, turned_deg, self.uniform(0.1, 1.0, 2))
        flow = {"kind": "typical_blower"}
        if airflow is not None:
            flow = {"kind": "stated_airflow", "airflow_m3_per_s": airflow}
        return {
            "format": "elbowroom-plan",
            "version": 1,
            "title": title,
            "note": "Invented for checking; no real house.",
            "site": {
                "altitude_m": self.uniform(0.0, highest_altitude, 0) if self.chance(0.7) else 0.0,
                "outdoor_temperature_degc": self.uniform(-20.0, 35.0, 1),
                "outdoor_relative_humidity": self.uniform(0.1, 1.0, 2),
            },
            "exhaust": {
                "temperature_degc": self.uniform(20.0, 70.0, 1),
                "relative_humidity": self.uniform(0.05, 0.6, 2),
            },
            "flow": flow,
            "code": {"rule_set": "irc_2021", "path_through_fittings_counts": True},
            "walls": [],
            "openings": [],
            "obstacles": [],
            "dryer": dryer,
            "run": run,
        }
