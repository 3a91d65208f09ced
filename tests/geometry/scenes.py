#!/usr/bin/env python3
"""Random scenes of polygons, measured by shapely: a judge from outside for the program's geometry.

Writes JSON to the standard output. Needs only `pip install shapely` (2.x) in an environment of its own.

    python3 tests/geometry/scenes.py > tests/geometry/scenes.json          the scenes kept with the tests
    python3 tests/geometry/scenes.py 5000 11 > /tmp/more.json              five thousand others, seed 11
    TRIMWRIGHT_SCENES=/tmp/more.json cargo test geometry::reference        check against them

Coordinates are whole nanometres. Every scene says by which kind of polygon it was made, and holds
    shapes     for each polygon its rings, the outer one first
    areas      their areas, square nanometres
    pair       of the first two: the areas of intersection, union, first less second; how they lie to each
               other (apart, touching, overlapping, inside, around, same); the distance of their edges
               `turned`: the same by a tolerance of 1 µm, a part counting only if something of it is left
               when 500 nm are taken off all round
    visible    what is seen of each when they lie on each other, the first one lowest: areas
    turned     the first polygon turned about a pivot: hundredths of a degree, pivot, its corners as floats
"""

import json
import math
import random
import sys

import shapely
from shapely.affinity import rotate
from shapely.geometry import Polygon, box

INCH = 25_400_000
MM = 1_000_000


def ruler(rng):
    return rng.choice([INCH // 16, INCH // 8, MM, 1])


def upright(rng, step, reach):
    """A rectangle with its edges on a ruler's marks."""
    def two():
        return sorted(rng.sample(range(0, reach // step + 1), 2))
    (left, right), (bottom, top) = two(), two()
    return box(left * step, bottom * step, right * step, top * step)


def triangle(rng, step, reach):
    """Half of an upright rectangle."""
    left, bottom, right, top = map(int, upright(rng, step, reach).bounds)
    corners = [(left, bottom), (right, bottom), (right, top), (left, top)]
    del corners[rng.randrange(4)]
    return Polygon(corners)


def star(rng, step, reach):
    """Corners round a middle, some near and some far."""
    while True:
        middle = (rng.uniform(0.3, 0.7) * reach, rng.uniform(0.3, 0.7) * reach)
        count = rng.randrange(3, 11)
        ways = sorted(rng.uniform(0, 2 * math.pi) for _ in range(count))
        far = [rng.uniform(0.1, 0.45) * reach for _ in range(count)]
        corners = [
            (round((middle[0] + f * math.cos(w)) / step) * step, round((middle[1] + f * math.sin(w)) / step) * step)
            for w, f in zip(ways, far)
        ]
        made = Polygon(corners)
        if made.is_valid and made.area > step * step and len(set(corners)) == count:
            return made


def strip(rng, step, reach):
    """A strip turned by any angle, its corners rounded to a nanometre."""
    long, high = rng.uniform(0.3, 1.2) * reach, rng.uniform(0.02, 0.3) * reach
    made = rotate(box(0, 0, long, high), rng.uniform(0, 360), origin=(0, 0))
    dx, dy = rng.uniform(0, 0.6) * reach, rng.uniform(0, 0.6) * reach
    return Polygon([(round(x + dx), round(y + dy)) for x, y in made.exterior.coords[:-1]])


def frame(rng, step, reach):
    """A rectangle with a window or two."""
    outer = upright(rng, step, reach)
    left, bottom, right, top = map(int, outer.bounds)
    wide, high = (right - left) // 8, (top - bottom) // 8
    if wide < 2 or high < 2:
        return outer
    first = box(left + wide, bottom + high, left + 3 * wide, top - high)
    second = Polygon([(left + 4 * wide, bottom + high), (left + 7 * wide, bottom + 2 * high), (left + 5 * wide, top - high)])
    return outer.difference(first).difference(second) if rng.random() < 0.5 else outer.difference(first)


def neighbours(rng, step, reach):
    """Two rectangles that nearly meet, or nearly fill each other, turned together."""
    off = rng.choice([at for at in range(-3_000, 3_001) if abs(abs(at) - 1_000) > 8])
    wide, high = rng.randrange(reach // 8, reach), rng.randrange(reach // 8, reach)
    one = box(0, 0, wide, high)
    if rng.random() < 0.5:
        other = box(wide // 4, high + off, wide // 4 + wide, high + off + high // 2)
    else:
        other = box(-off, 0, wide if rng.random() < 0.5 else wide + off, high)
    angle, origin = rng.uniform(0, 360), (rng.randrange(reach), rng.randrange(reach))
    turned = [rotate(shape, angle, origin=origin).exterior.coords[:-1] for shape in (one, other)]
    return [Polygon([(round(x), round(y)) for x, y in corners]) for corners in turned]


# Marks so few that edges often fall on each other.
def coarse(make):
    return lambda rng, step, reach: make(rng, INCH, 6 * INCH)


KINDS = {
    "rectangles": [upright],
    "halves": [upright, triangle],
    "stars": [star],
    "strips": [strip, upright],
    "windows": [frame, star],
    "marks": [coarse(upright)],
    "slopes on marks": [coarse(upright), coarse(triangle), coarse(star)],
    "neighbours": [],
    "mixed": [upright, triangle, star, strip, frame],
}


def rings(polygon):
    every = [polygon.exterior, *polygon.interiors]
    return [[[round(x), round(y)] for x, y in ring.coords[:-1]] for ring in every]


def lie_turned(one, other):
    """By the tolerance for turned shapes."""
    def counts(area):
        return not area.buffer(-500, quad_segs=32).is_empty
    ours, theirs = counts(one.difference(other)), counts(other.difference(one))
    if counts(one.intersection(other)):
        return {(0, 0): "same", (0, 1): "inside", (1, 0): "around", (1, 1): "overlapping"}[ours, theirs]
    return "touching" if one.boundary.distance(other.boundary) <= 1_000 else "apart"


def lie(one, other):
    if one.equals(other):
        return "same"
    if one.within(other):
        return "inside"
    if other.within(one):
        return "around"
    if one.disjoint(other):
        return "apart"
    if one.touches(other):
        return "touching"
    return "overlapping"


def scene(rng, kind):
    reach = rng.choice([4 * INCH, 6 * INCH, 150 * MM, 12 * INCH])
    step = ruler(rng)
    if kind == "neighbours":
        shapes = neighbours(rng, step, reach)
    else:
        shapes = [rng.choice(KINDS[kind])(rng, step, reach) for _ in range(rng.randrange(2, 5))]
    if kind != "neighbours" and rng.random() < 0.05:
        shapes[1] = shapes[0]
    one, other = shapes[:2]
    seen, above = [], Polygon()
    for layer in reversed(shapes):
        seen.insert(0, layer.difference(above).area)
        above = above.union(layer)
    angle = rng.randrange(0, 36_000)
    pivot = [rng.randrange(0, reach), rng.randrange(0, reach)]
    corners = rotate(one, angle / 100, origin=tuple(pivot)).exterior.coords[:-1]
    return {
        "kind": kind,
        "shapes": [rings(shape) for shape in shapes],
        "areas": [shape.area for shape in shapes],
        "pair": {
            "intersection": one.intersection(other).area,
            "union": one.union(other).area,
            "difference": one.difference(other).area,
            "lie": lie(one, other),
            "turned": lie_turned(one, other),
            "distance": one.boundary.distance(other.boundary),
        },
        "visible": seen,
        "turned": {"angle": angle, "pivot": pivot, "corners": [[round(x, 3), round(y, 3)] for x, y in corners]},
    }


def main():
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 270
    seed = int(sys.argv[2]) if len(sys.argv) > 2 else 7
    rng = random.Random(seed)
    names = list(KINDS)
    lines = [json.dumps(scene(rng, names[at % len(names)]), separators=(",", ":")) for at in range(count)]
    judge = {"shapely": shapely.__version__, "geos": shapely.geos_version_string, "seed": seed}
    print('{"judge":' + json.dumps(judge) + ',"scenes":[\n' + ",\n".join(lines) + "\n]}")


if __name__ == "__main__":
    main()
