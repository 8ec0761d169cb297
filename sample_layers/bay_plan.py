"""What people have put on the invented bay: marks, routes, channels, ferry, closed areas, streams' places, swimmers.

INVENTED - NOT FOR NAVIGATION. No place, person, rule or authority here exists. Places are metres of the bay's frame.
"""

from __future__ import annotations

import numpy as np
from bay_frame import NOTICE
from bay_shape import CHANNEL_AXIS
from bay_water import EDDY, INNER, OUTER

Place = tuple[float, float]

DEPART = "2027-06-26T10:00"
"""Departure of the sample swims, in the plan's zone: the bay stream turns about an hour later."""

WINDOW_DAYS = ("2027-06-24", "2027-06-27")
"""Days in which the demo looks for windows."""

INVENTED = f"{NOTICE}."

# name: place, kind, minutes of stay, bottom, note. Depths come from the seabed.
MARKS: dict[str, tuple[Place, str, float, str, str]] = {
    "Long Shingle": ((0.0, 0.0), "entry", 0.0, "shingle", "Wide beach, easy in any height of tide."),
    "Boathouse Slip": ((-1100.0, 125.0), "exit", 0.0, "concrete and sand", "Second way out, down-stream of the bay."),
    "Head Steps": (
        (1325.0, 745.0),
        "entry",
        0.0,
        "rock",
        "Cut steps in the lee of Veshan Head; slippery at low water.",
    ),
    "Kelp Step": ((-264.0, 1368.0), "mark", 25.0, "kelp on rock", "Where the reef's south wall meets the gully."),
    "Wether Table": ((12.0, 1512.0), "mark", 30.0, "flat rock", "Shoalest part of the inner reef."),
    "East Shoulder": ((180.0, 1560.0), "mark", 25.0, "rock and sand", "End of the inner reef, drops off eastward."),
    "Far Table": ((732.0, 2100.0), "mark", 20.0, "flat rock", "Outer reef, open to the stream off the head."),
    "The Spindle": ((1416.0, 2328.0), "mark", 20.0, "bare rock", "Pinnacle in the full stream off Veshan Head."),
    "Gully Mouth": ((-455.0, 1165.0), "waypoint", 0.0, "sand", "North edge of the fairway, below the gully."),
    "Elbow North": ((905.0, 1850.0), "waypoint", 0.0, "sand", "Keeps the way home from the Spindle clear of the head."),
}

ROUTES: dict[str, tuple[tuple[str, ...], str]] = {
    "Inner reef and home": (
        ("Long Shingle", "Kelp Step", "Wether Table", "Long Shingle"),
        "The easy one: squarely over the fairway, two marks, home to the same beach.",
    ),
    "Round by the Spindle": (
        ("Head Steps", "East Shoulder", "The Spindle", "Elbow North", "Head Steps"),
        "Runs into the stream off the head: at the sample's hour one leg cannot be swum.",
    ),
    "Slantwise from the slip": (
        ("Boathouse Slip", "East Shoulder", "Kelp Step", "Long Shingle"),
        "First leg slants over the fairway and the ferry track.",
    ),
}

# name: place, kind, height of the top in metres, note. All stand on the bay's land.
LANDMARKS: dict[str, tuple[Place, str, float | None, str]] = {
    "Shingle Cross": ((-20.0, -150.0), "cross", 14.0, "White, on the bank behind the beach."),
    "Ostrel Mill": ((-30.0, -690.0), "windmill", 46.0, "Without sails."),
    "Veshan Beacon": ((1330.0, 1010.0), "beacon", 22.0, "At the west edge of the head."),
    "Upper House": ((2121.0, 709.0), "building", 58.0, "Two gables, dark roof."),
    "Head Mast": ((2047.0, 850.0), "mast", 75.0, "Thin; seen against the sky only."),
    "Slip Chimney": ((-1050.0, -150.0), "chimney", 30.0, "Brick, of the old boatyard."),
    "Grey Tank": ((-1326.0, -682.0), "tank", 52.0, ""),
    "East Gable": ((300.0, -120.0), "building", 12.0, "White gable end."),
    "Long Barn": ((342.0, -674.0), "building", None, "Red roof on the ridge."),
    "Signal Pole": ((2136.0, 628.0), "flagpole", 49.0, ""),
}
# mark, front, rear
TRANSITS: tuple[tuple[str, str, str], ...] = (
    ("Kelp Step", "Veshan Beacon", "Head Mast"),
    ("Kelp Step", "Slip Chimney", "Grey Tank"),
    ("Wether Table", "Veshan Beacon", "Upper House"),
    ("Wether Table", "Shingle Cross", "Ostrel Mill"),
)

FAIRWAY_HALF_WIDTH_M = 110.0
FAIRWAY_REACHES = ("inner reach", "elbow", "outer reach")
FERRY = "Tam Islet ferry"
FERRY_LINE: tuple[Place, ...] = ((-625.0, 190.0), (-650.0, 700.0), (-735.0, 1300.0), (-735.0, 2680.0))
FERRY_TIMES = ("08:00", "09:10", "10:25", "12:40", "15:00", "16:10", "17:20")
SMALL_CRAFT_LINE: tuple[Place, ...] = ((-985.0, 170.0), (-1010.0, 480.0), (-960.0, 730.0))

BOARD = "Ostrel Bay Shore Board (invented)"
# name: corners, rule, from, to, citation, checked on. Each shows another way of writing when.
CLOSED_AREAS: dict[str, tuple[tuple[Place, ...], str, str | None, str | None, str, str]] = {
    "Marl Bank reserve": (
        (
            (-2080.0, 1390.0),
            (-1500.0, 1230.0),
            (-930.0, 1380.0),
            (-930.0, 1800.0),
            (-1560.0, 1900.0),
            (-2080.0, 1720.0),
        ),
        "no_spearing",
        None,
        None,
        f"{BOARD}, Reserve Order 7, section 2",
        "2027-05-22",
    ),
    "Tam Islet nesting ground": (
        (
            (-1080.0, 2760.0),
            (-880.0, 2630.0),
            (-560.0, 2640.0),
            (-330.0, 2800.0),
            (-320.0, 3030.0),
            (-520.0, 3180.0),
            (-880.0, 3170.0),
            (-1070.0, 3010.0),
        ),
        "no_entry",
        "--0401",
        "--0815",
        f"{BOARD}, Birds Order 2, schedule A",
        "2027-05-22",
    ),
    "Long Shingle bathing water": (
        ((-190.0, -90.0), (280.0, -30.0), (270.0, 210.0), (-190.0, 170.0)),
        "loaded_gun_ban",
        "--0501",
        "--0930",
        f"{BOARD}, Beach Order 11, section 4",
        "2027-05-23",
    ),
    "Sailing school water": (
        ((330.0, 330.0), (800.0, 400.0), (860.0, 820.0), (560.0, 960.0), (310.0, 780.0)),
        "caution",
        "13:00",
        "17:30",
        f"Notice board at Boathouse Slip, {BOARD}",
        "2027-06-02",
    ),
    "Spindle race": (
        ((1020.0, 2010.0), (1900.0, 2160.0), (1980.0, 2640.0), (1400.0, 2700.0), (1010.0, 2420.0)),
        "caution",
        "2027-06-26T06:00",
        "2027-06-27T18:00",
        f"{BOARD}, notice of a boat race",
        "2027-06-20",
    ),
}

# station: place, form, confidence
STATIONS: dict[str, tuple[Place, str, str]] = {
    INNER: ((-40.0, 1180.0), "hourly", "invented hourly table"),
    OUTER: ((2350.0, 2650.0), "hourly", "invented hourly table"),
    EDDY: ((1060.0, 980.0), "constant", "invented, from a drift that nobody timed"),
}
EDDY_PHASE = "flood"
EDDY_CORNERS: tuple[Place, ...] = (
    (1150.0, 1420.0),
    (900.0, 1330.0),
    (790.0, 1040.0),
    (850.0, 700.0),
    (1080.0, 520.0),
    (1330.0, 600.0),
    (1400.0, 800.0),
    (1290.0, 1130.0),
)

# name: pace m/s, path factor, range m, hours, depth limit m, fluid L, fluid L/h, line m
SWIMMERS: dict[str, tuple[float, ...]] = {
    "Steady": (0.60, 1.10, 5000.0, 4.0, 12.0, 2.5, 0.7, 30.0),
    "Brisk": (0.75, 1.08, 6500.0, 5.0, 15.0, 3.0, 0.8, 30.0),
    "Towing a float": (0.50, 1.14, 4000.0, 4.0, 10.0, 2.0, 0.7, 25.0),
}


def rounded(corners: tuple[Place, ...], times: int = 3) -> list[Place]:
    """A closed line through rounded-off corners (each corner cut at a quarter of its sides, again and again)."""
    ring = np.array(corners)
    for _ in range(times):
        ahead = np.roll(ring, -1, axis=0)
        ring = np.stack([0.75 * ring + 0.25 * ahead, 0.25 * ring + 0.75 * ahead], axis=1).reshape(-1, 2)
    return closed([(float(x), float(y)) for x, y in ring])


def closed(corners: list[Place] | tuple[Place, ...]) -> list[Place]:
    """The corners with the first one repeated at the end."""
    return [*corners, corners[0]]


def fairway_reaches() -> list[tuple[str, float, list[Place]]]:
    """(name, direction in degrees, ring) of each straight reach; neighbours share an edge, so bends have no gap."""
    axis = np.array(CHANNEL_AXIS)
    along = np.diff(axis, axis=0)
    along /= np.linalg.norm(along, axis=1)[:, None]
    right = np.stack([along[:, 1], -along[:, 0]], axis=1)
    joint = np.vstack([right[:1], right[:-1] + right[1:], right[-1:]])
    neighbour = np.vstack([right, right[-1:]])
    joint *= (FAIRWAY_HALF_WIDTH_M / np.sum(joint * neighbour, axis=1))[:, None]
    reaches = []
    for number, name in enumerate(FAIRWAY_REACHES):
        here, there = axis[number], axis[number + 1]
        ring = [here + joint[number], there + joint[number + 1], there - joint[number + 1], here - joint[number]]
        direction = float(np.degrees(np.arctan2(*along[number])) % 360.0)
        corners = closed([(float(x), float(y)) for x, y in ring])
        reaches.append((f"Ostrel Channel, {name}", round(direction, 1), corners))
    return reaches
