"""Where names stand on the sketch: beside their places, over no other name and no place, and off the track if possible.

Placed by our own hand and not by the map's labelling, because a name left out or printed over another is worse on a
card than a number: if no arrangement of the names exists, the caller tries shorter labels.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

MARKER_MM = 2.4  # half of a place's symbol, with a little room
MOST_TRIES = 4000


@dataclass(frozen=True, kw_only=True)
class NameBox:
    """A label's rectangle in millimetres, y down the page; ``ink`` counts the points of tracks it would cover."""

    left: float
    top: float
    width: float
    height: float
    ink: int = 0

    def touches(self, other: NameBox) -> bool:
        """True where the two rectangles share more than an edge."""
        return (
            self.left < other.left + other.width
            and other.left < self.left + self.width
            and self.top < other.top + other.height
            and other.top < self.top + self.height
        )


def place_names(
    places_mm: np.ndarray,
    widths_mm: list[float],
    height_mm: float,
    page_mm: tuple[float, float],
    lines_mm: np.ndarray,
    *,
    most_ink: int | None = None,
) -> list[NameBox] | None:
    """A box for every place, in the same order; None where no arrangement was found.

    ``places_mm`` (n, 2) and ``lines_mm`` (m, 2) are x, y from the top left corner of the map, ``page_mm`` its size.
    Eight places round each symbol are tried, those that cover least of the tracks first, going back when stuck; none
    covers more than ``most_ink`` of their points.
    """
    markers = [
        NameBox(left=x - MARKER_MM, top=y - MARKER_MM, width=2 * MARKER_MM, height=2 * MARKER_MM) for x, y in places_mm
    ]
    choices = []
    for own, width in enumerate(widths_mm):
        boxes = _beside(places_mm[own], width, height_mm)
        free = [box for box in boxes if _inside(box, page_mm) and not _covers(box, markers, own)]
        weighed = [_weighed(box, lines_mm) for box in free]
        bearable = [box for box in weighed if most_ink is None or box.ink <= most_ink]
        choices.append(sorted(bearable, key=lambda box: box.ink))
    return _arranged(choices)


def _beside(place: np.ndarray, width: float, height: float) -> list[NameBox]:
    """Right, left, above, below, then the corners."""
    x, y = place
    near, corner = MARKER_MM + 0.6, MARKER_MM * 0.7
    corners = [
        (x + corner, y - corner - height),
        (x + corner, y + corner),
        (x - corner - width, y - corner - height),
        (x - corner - width, y + corner),
    ]
    sides = [
        (x + near, y - height / 2),
        (x - near - width, y - height / 2),
        (x - width / 2, y - near - height),
        (x - width / 2, y + near),
    ]
    return [NameBox(left=left, top=top, width=width, height=height) for left, top in sides + corners]


def _inside(box: NameBox, page_mm: tuple[float, float]) -> bool:
    edge = 1.0
    right, bottom = box.left + box.width, box.top + box.height
    return box.left >= edge and box.top >= edge and right <= page_mm[0] - edge and bottom <= page_mm[1] - edge


def _covers(box: NameBox, markers: list[NameBox], own: int) -> bool:
    return any(box.touches(marker) for number, marker in enumerate(markers) if number != own)


def _weighed(box: NameBox, lines_mm: np.ndarray) -> NameBox:
    low, high = (box.left, box.top), (box.left + box.width, box.top + box.height)
    ink = int(((lines_mm >= low) & (lines_mm <= high)).all(axis=1).sum())
    return NameBox(left=box.left, top=box.top, width=box.width, height=box.height, ink=ink)


def _arranged(choices: list[list[NameBox]]) -> list[NameBox] | None:
    """One of each list so that none touch: the hardest place first, one step back whenever nothing is left."""
    order = sorted(range(len(choices)), key=lambda number: len(choices[number]))
    taken: list[NameBox] = []
    next_choice = [0] * (len(order) + 1)
    for _ in range(MOST_TRIES):
        depth = len(taken)
        if depth == len(order):
            found = dict(zip(order, taken))
            return [found[number] for number in range(len(order))]
        options = choices[order[depth]]
        if next_choice[depth] < len(options):
            box = options[next_choice[depth]]
            next_choice[depth] += 1
            if not any(box.touches(other) for other in taken):
                taken.append(box)
                next_choice[depth + 1] = 0
        elif depth == 0:
            return None
        else:
            taken.pop()
    return None
