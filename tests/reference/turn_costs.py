"""turn_costs.csv: shortest runs through 50 small rooms, for each number of quarter turns.

Source: networkx 3.4.2, Dijkstra on an expanded graph whose nodes are (corner, heading,
quarter turns so far) and whose edges are whole straight legs.
Range: rooms of 7 to 11 ft, three boxes, one level, elbows of 90 deg with a radius of 3 in,
1 in of clearance about a 4 in duct, up to 4 turns. Lengths in inches along the corners.

The boxes stand on odd sixteenths of an inch, so that no two corners lie on a 45 deg line but
those that a radius from the outlet makes; legs at 45 deg are no part of this set.
"""

import networkx

from numpy.random import default_rng

from csv_table import write_table

PLANS = 50
REACH = 3.0
RADIUS = 3.0
MOST_TURNS = 4
HALF_WALL = 3.0
DRYER_WIDE, DRYER_DEEP = 27.0, 30.0
WAYS = ((1, 0), (0, 1), (-1, 0), (0, -1))
BOX = tuple(f"box_{index}_{name}_in" for index in range(3)
            for name in ("x", "y", "width", "depth"))
COLUMNS = ("plan", "width_in", "depth_in", "outlet_x_in", "outlet_y_in", "right_is_outside",
           *BOX, *(f"length_{turns}_turns_in" for turns in range(MOST_TURNS + 1)))


def sixteenths(generator, least, most):
    return float(generator.integers(least * 16, most * 16)) / 16.0


def room(generator):
    width = float(generator.integers(84, 132))
    depth = float(generator.integers(84, 132))
    outlet = (sixteenths(generator, 24, 60), sixteenths(generator, 26, 44))
    boxes = [
        (sixteenths(generator, 0, 90), sixteenths(generator, 0, 60),
         sixteenths(generator, 6, 26), sixteenths(generator, 6, 20))
        for _ in range(3)
    ]
    return width, depth, outlet, bool(generator.integers(0, 2)), boxes


def gap(a, b, box):
    """Between a level leg and a box; a leg lies along an axis, so it is a box too."""
    x, y, width, depth = box
    right = max(x - max(a[0], b[0]), min(a[0], b[0]) - (x + width), 0.0)
    down = max(y - max(a[1], b[1]), min(a[1], b[1]) - (y + depth), 0.0)
    return (right * right + down * down) ** 0.5


def lengths(width, depth, outlet, right_is_outside, boxes):
    body = (outlet[0] - DRYER_WIDE / 2, outlet[1], DRYER_WIDE, DRYER_DEEP)
    # First corner a radius off the outlet, and two radii about it; the reach beside everything.
    first = outlet[1] - RADIUS
    xs = {outlet[0], outlet[0] - 2 * RADIUS, outlet[0] + 2 * RADIUS, REACH, width - REACH}
    ys = {outlet[1], first, first - 2 * RADIUS, first + 2 * RADIUS, REACH, depth - REACH}
    for x, y, wide, deep in [*boxes, body]:
        xs |= {x - REACH, x + wide + REACH}
        ys |= {y - REACH, y + deep + REACH}
    xs = [x for x in xs if REACH <= x <= width - REACH]
    ys = [y for y in ys if REACH <= y <= depth - REACH]

    def clear(a, b, leaves_dryer):
        around = boxes if leaves_dryer else [*boxes, body]
        return all(gap(a, b, box) >= REACH - 1e-6 for box in around)

    graph = networkx.DiGraph()
    start = (outlet, WAYS[3], 0)
    graph.add_node(start)
    waiting, seen = [start], {start}
    while waiting:
        node = waiting.pop()
        at, way, turns = node
        is_start = at == outlet and turns == 0
        if way[0]:
            ahead = [(x, at[1]) for x in xs if (x - at[0]) * way[0] > 1e-9]
        else:
            ahead = [(at[0], y) for y in ys if (y - at[1]) * way[1] > 1e-9]
        for stop in ahead:
            leg = abs(stop[0] - at[0]) + abs(stop[1] - at[1])
            fits = leg + 1e-6 >= (RADIUS if is_start else 2 * RADIUS)
            if turns == MOST_TURNS or not fits or not clear(at, stop, is_start):
                continue
            for turned in WAYS:
                if turned[0] * way[0] + turned[1] * way[1] == 0:
                    after = (stop, turned, turns + 1)
                    graph.add_edge(node, after, weight=leg)
                    if after not in seen:
                        seen.add(after)
                        waiting.append(after)
        out = None
        if way == (0, -1):
            out = (at[0], -2 * HALF_WALL)
        elif way == (1, 0) and right_is_outside:
            out = (width + 2 * HALF_WALL, at[1])
        if out is not None and clear(at, out, is_start):
            leg = abs(out[0] - at[0]) + abs(out[1] - at[1])
            if leg + 1e-6 >= (0.0 if is_start else RADIUS):
                graph.add_edge(node, ("end", turns), weight=leg)
    found = networkx.single_source_dijkstra_path_length(graph, start)
    return [found.get(("end", turns)) for turns in range(MOST_TURNS + 1)]


def write(directory):
    generator = default_rng(50)
    rows = []
    while len(rows) < PLANS:
        width, depth, outlet, right_is_outside, boxes = room(generator)
        found = lengths(width, depth, outlet, right_is_outside, boxes)
        if found[0] is not None or all(length is None for length in found):
            continue
        flat = [value for box in boxes for value in box]
        rows.append((len(rows), width, depth, *outlet, int(right_is_outside), *flat, *found))
    write_table(directory / "turn_costs.csv", COLUMNS, rows)
