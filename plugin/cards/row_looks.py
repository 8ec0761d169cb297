"""Where the words of a leg's row stand, for three widths: those of A4, A5 and A6 within their margins.

A card to share has no headings, streams, bearings, distances or positions: its rows close up over them.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from ..core.errors import SwimPlanError
from ..words import tr
from .block import BIG_DROP_MM, BIG_LINE_MM, SMALL_DROP_MM, SMALL_LINE_MM


@dataclass(frozen=True)
class Cell:
    """A column on a line (0 is the one in large letters), from its left edge; without a width it is not cut."""

    line: int
    left: float
    width: float = 0.0
    right: bool = False

    @property
    def baseline(self) -> float:
        """From the row's top down to the letters' feet."""
        return BIG_DROP_MM if self.line == 0 else BIG_LINE_MM + (self.line - 1) * SMALL_LINE_MM + SMALL_DROP_MM


@dataclass(frozen=True)
class Box:
    """A frame to write an actual time into."""

    left: float
    width: float
    top: float = 0.0
    height: float = BIG_LINE_MM


@dataclass(frozen=True, kw_only=True)
class RowLook:
    """A row of at least this width; ``heads`` are the words above, on two small lines."""

    least_mm: float
    lines: int
    cells: Mapping[str, Cell]
    heads: Mapping[str, Cell]
    boxes: tuple[Box, ...]
    arrow_mm: float = 6.0
    arrow_gap_mm: float = 2.0

    @property
    def indent(self) -> float:
        """Left edge of what stands below the row's first figure."""
        return min(cell.left for cell in self.cells.values() if cell.line == 0)


WIDE = RowLook(
    least_mm=190.0,
    lines=2,
    cells={
        "heading": Cell(0, 10.0),
        "leave": Cell(0, 43.0),
        "arrive": Cell(0, 72.0),
        "minutes": Cell(0, 100.0, 18.0, True),
        "stream": Cell(0, 124.0),
        "name": Cell(1, 10.0, 60.0),
        "bearing": Cell(1, 72.0),
        "distance": Cell(1, 92.0, 26.0, True),
        "position": Cell(1, 124.0),
    },
    heads={
        "heading": Cell(0, 10.0),
        "leave": Cell(0, 43.0),
        "arrive": Cell(0, 72.0),
        "minutes": Cell(0, 100.0, 18.0, True),
        "stream": Cell(0, 124.0),
        "box": Cell(0, 152.0, 42.0),
        "name": Cell(1, 10.0),
        "bearing": Cell(1, 72.0),
        "distance": Cell(1, 92.0, 26.0, True),
        "position": Cell(1, 124.0),
    },
    boxes=(Box(152.0, 20.0), Box(174.0, 20.0)),
    arrow_mm=8.0,
    arrow_gap_mm=3.0,
)
MIDDLE = RowLook(
    least_mm=134.0,
    lines=3,
    cells={
        "heading": Cell(0, 9.0),
        "leave": Cell(0, 41.0),
        "arrive": Cell(0, 70.0),
        "name": Cell(1, 9.0, 58.0),
        "minutes": Cell(1, 68.0, 27.0, True),
        "stream": Cell(1, 100.0),
        "bearing": Cell(2, 9.0),
        "distance": Cell(2, 32.0, 26.0, True),
        "position": Cell(2, 64.0),
    },
    heads={
        "heading": Cell(0, 9.0),
        "leave": Cell(0, 41.0),
        "arrive": Cell(0, 70.0),
        "box": Cell(0, 99.0, 35.0),
        "stream": Cell(1, 100.0, 34.0),
        "bearing": Cell(1, 9.0, 25.0),
        "distance": Cell(1, 34.0, 26.0, True),
        "position": Cell(1, 64.0),
    },
    boxes=(Box(99.0, 17.0), Box(117.5, 17.0)),
    arrow_mm=6.0,
    arrow_gap_mm=2.0,
)
NARROW = RowLook(
    least_mm=94.0,
    lines=3,
    cells={
        "heading": Cell(0, 8.0),
        "leave": Cell(0, 39.0),
        "arrive": Cell(0, 67.5),
        "name": Cell(1, 8.0, 43.0),
        "minutes": Cell(1, 51.0, 20.0, True),
        "stream": Cell(2, 8.0),
        "bearing": Cell(2, 31.0),
        "distance": Cell(2, 45.0, 26.0, True),
    },
    heads={
        "heading": Cell(0, 8.0),
        "leave": Cell(0, 39.0),
        "arrive": Cell(0, 67.5),
        "stream": Cell(1, 8.0, 23.0),
        "bearing": Cell(1, 31.0, 20.5),
        "distance": Cell(1, 51.0, 22.0, True),
        "box": Cell(1, 73.5, 20.5, True),
    },
    boxes=(Box(73.0, 21.0, BIG_LINE_MM, 2 * SMALL_LINE_MM),),
    arrow_mm=5.5,
    arrow_gap_mm=2.0,
)
# The same in two lines: positions are then listed by themselves, where there is room.
MIDDLE_LOW = RowLook(
    least_mm=134.0,
    lines=2,
    cells={
        "heading": Cell(0, 9.0),
        "leave": Cell(0, 41.0),
        "arrive": Cell(0, 70.0),
        "name": Cell(1, 9.0, 51.0),
        "minutes": Cell(1, 60.0, 18.0, True),
        "stream": Cell(1, 80.5),
        "bearing": Cell(1, 99.0),
        "distance": Cell(1, 114.0, 22.0, True),
    },
    heads={
        "heading": Cell(0, 9.0),
        "leave": Cell(0, 41.0),
        "arrive": Cell(0, 70.0),
        "box": Cell(0, 99.0, 35.0),
        "name": Cell(1, 9.0, 50.0),
        "stream": Cell(1, 74.5, 23.0),
        "bearing": Cell(1, 99.0, 35.0),
    },
    boxes=MIDDLE.boxes,
)
WIDE_TO_SHARE = RowLook(
    least_mm=190.0,
    lines=1,
    cells={
        "leave": Cell(0, 10.0),
        "arrive": Cell(0, 39.0),
        "minutes": Cell(0, 67.0, 18.0, True),
        "name": Cell(0, 90.0, 60.0),
    },
    heads={
        "leave": Cell(1, 10.0),
        "arrive": Cell(1, 39.0),
        "minutes": Cell(1, 67.0, 18.0, True),
        "name": Cell(1, 90.0, 60.0),
        "box": Cell(1, 152.0, 42.0),
    },
    boxes=WIDE.boxes,
)
MIDDLE_TO_SHARE = RowLook(
    least_mm=134.0,
    lines=2,
    cells={
        "leave": Cell(0, 9.0),
        "arrive": Cell(0, 38.0),
        "minutes": Cell(0, 66.0, 27.0, True),
        "name": Cell(1, 9.0, 125.0),
    },
    heads={
        "leave": Cell(1, 9.0),
        "arrive": Cell(1, 38.0),
        "minutes": Cell(1, 66.0, 27.0, True),
        "box": Cell(1, 99.0, 35.0),
    },
    boxes=MIDDLE.boxes,
)
NARROW_TO_SHARE = RowLook(
    least_mm=94.0,
    lines=2,
    cells={
        "leave": Cell(0, 8.0),
        "arrive": Cell(0, 37.0),
        "name": Cell(1, 8.0, 64.0),
        "minutes": Cell(1, 72.0, 22.0, True),
    },
    heads={"leave": Cell(1, 8.0), "arrive": Cell(1, 37.0), "box": Cell(1, 66.0, 28.0)},
    boxes=(Box(66.0, 28.0),),
)
LOOKS = (WIDE, MIDDLE, NARROW)
LOW = (WIDE, MIDDLE_LOW, NARROW)
TO_SHARE = (WIDE_TO_SHARE, MIDDLE_TO_SHARE, NARROW_TO_SHARE)


def row_look(width_mm: float, *, low: bool = False, private: bool = False) -> RowLook:
    """The look for rows so wide, ``low`` in as few lines as they can be, ``private`` without what says where.

    SwimPlanError for a width that holds no row.
    """
    for look in TO_SHARE if private else LOW if low else LOOKS:
        if look.least_mm <= width_mm + 0.01:
            return look
    raise SwimPlanError(
        asked=tr("The card's legs have {width} mm of width").format(width=f"{width_mm:.0f}"),
        allowed=tr("at least {width} mm").format(width=f"{NARROW.least_mm:.0f}"),
        remedy=tr("Make the frame wider"),
    )
