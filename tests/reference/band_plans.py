"""Composes the 40 plans of the bands: plan_composer's runs, furnished with every part.

What comes from the index (so that each part is in several plans) is in the tuples below;
where it sits and how large it is comes from the generator.
"""

from numpy.random import default_rng

from plan_composer import Composer

CASES = 40
TRANSITIONS = (
    {"semi_rigid": {"short_of_full_stretch_percent": 0.0}},
    {"foil": {"short_of_full_stretch_percent": 12.0}},
    "rigid",
    {"foil": {"short_of_full_stretch_percent": 0.0}},
    {"semi_rigid": {"short_of_full_stretch_percent": 8.0}},
    "rigid",
    {"foil": {"short_of_full_stretch_percent": 28.0}},
)
TERMINATIONS = ("wall_hood", "louvred_hood", "roof_cap", "wall_hood", "open_end")
FLAT = {"flat_rectangular": {"width_m": 0.33, "depth_m": 0.057}}
OVERRIDES = (
    {"input": "rigid_roughness", "low": 0.0001, "likely": 0.0002, "high": 0.0004},
    {"input": "wall_hood", "low": 1.2, "likely": 1.4, "high": 1.9},
    {"input": "blower_free_airflow", "low": 0.07, "likely": 0.07, "high": 0.07},
)


def furnish_legs(composer, plan, index):
    points = plan["run"]["points"]
    legs = len(points)

    def one_leg():
        return points[int(composer.generator.integers(legs))]

    points[0]["duct"] = TRANSITIONS[index % len(TRANSITIONS)]
    if index % 9 == 4 and legs > 2:
        points[1]["duct"] = FLAT
    if index % 8 == 6 and legs > 1:
        points[-1]["diameter_m"] = 0.127
    if index % 4 == 1:
        one_leg()["blockage_free_area"] = composer.uniform(0.35, 0.9, 2)
    if index % 4 == 2:
        for _ in range(2):
            less, more = composer.uniform(0.1, 1.5, 1), composer.uniform(0.2, 3.0, 1)
            one_leg()["estimate"] = {"less_m": less, "more_m": more}
    if index % 6 == 5:
        least = int(composer.generator.integers(2))
        most = least + 1 + int(composer.generator.integers(3))
        one_leg()["concealed_elbows"] = {"least": least, "most": most}
    if index % 6 == 1:
        one_leg()["leak_free_area_m2"] = composer.uniform(1e-4, 6e-4, 6)
    if index % 5 == 3 and legs > 1:
        points[0]["ends_in_wall_box"] = True


def furnish_elbows(composer, plan, index):
    """Every fourth elbow or so is made otherwise; a bend by hand ends a flexible leg."""
    run = plan["run"]
    nodes = [run["outlet"], *run["points"]]
    for number, node in enumerate(nodes):
        before = node.get("duct", "rigid")
        if before not in ("rigid", FLAT) and index % 2 == 0:
            node["elbow"]["kind"] = "bent_flexible"
        elif number > 0 and index % 3 == 0 and composer.chance(0.35):
            node["elbow"]["kind"] = "sharp_mitre"
        elif composer.chance(0.15):
            node["elbow"]["kind"] = "segmented"


def furnish(composer, plan, index):
    furnish_legs(composer, plan, index)
    furnish_elbows(composer, plan, index)
    end = {"kind": TERMINATIONS[index % len(TERMINATIONS)]}
    if index % 7 == 2:
        end["free_area"] = composer.uniform(0.4, 0.9, 2)
    plan["run"]["termination"] = end
    if index % 5 in (0, 2):
        plan["site"]["make_up_free_area_m2"] = composer.uniform(0.008, 0.04, 4)
    if index % 6 == 4:
        plan["site"]["house_pressure_pa"] = composer.uniform(-8.0, 4.0, 1)
    if index % 13 == 5:
        plan["overrides"] = [{**one, "note": "Invented."} for one in OVERRIDES]


def plans():
    generator = default_rng(400)
    for index in range(CASES):
        bends = 1 + index * 5 % 8
        diameter = {3: 0.0889, 7: 0.127}.get(index % 12, 0.1016)
        longest = (0.8, 2.0, 5.0)[index % 3]
        composer = Composer(generator, diameter, longest)
        nodes = composer.nodes(
            bends, None, outlet_bend=index % 3 == 1, roof_end=index % 5 == 2
        )
        airflow = composer.uniform(0.03, 0.07, 4) if index % 4 == 3 else None
        flow = "typical blower" if airflow is None else "stated airflow"
        title = f"Band {index + 1:02}: {bends} bends, {flow}"
        plan = composer.plan(title, nodes, (0, 90, 180, 45)[index // 3 % 4], airflow, 2500.0)
        furnish(composer, plan, index)
        yield plan
