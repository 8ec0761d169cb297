"""How much a card says: from all of it down to what none may be without, and what comes back where there is room."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from .card_flags import MOST_LINES

TITLE, FLAGS, SKETCH, POSITIONS, TRANSITS = "title", "flags", "sketch", "positions", "transits"
HOME, LATE, TIDES, DEPTHS = "home by departure", "if late", "tides", "depths"


@dataclass(frozen=True, kw_only=True)
class Detail:
    """How much is said: lines of flags (until so many notes, until so many stops and warnings) and of later headings,
    rows of ways home and of depths, tides and turns of the stream, and the parts that are left out.

    ``low``: the legs' rows take as few lines as they can, and positions are listed by themselves.
    ``home_headings``: the black block gives the heading home at its times where no table does.
    """

    heading_lines: int
    note_lines: int
    late_rows: int
    home_rows: int
    depth_rows: int
    moments: int
    home_of_all_marks: bool = True
    grave_lines: int = MOST_LINES
    low: bool = False
    home_headings: bool = False
    leaves_out: tuple[str, ...] = ()


ALL = Detail(heading_lines=3, note_lines=12, late_rows=8, home_rows=8, depth_rows=8, moments=4)
FEWER = replace(ALL, note_lines=6, late_rows=5, home_rows=5, depth_rows=4)
FEW = replace(
    FEWER, heading_lines=1, note_lines=4, late_rows=4, home_rows=4, home_of_all_marks=False, depth_rows=2, moments=3
)
NO_SKETCH = replace(FEW, note_lines=3, late_rows=3, depth_rows=1, leaves_out=(SKETCH,))
NO_PLACES = replace(NO_SKETCH, moments=2, low=True, leaves_out=(SKETCH, POSITIONS, TRANSITS))
NO_HOME = replace(NO_PLACES, home_rows=0, leaves_out=(*NO_PLACES.leaves_out, HOME))
LESS = replace(NO_HOME, late_rows=2, depth_rows=0, leaves_out=(*NO_HOME.leaves_out, DEPTHS))
NO_TIDES = replace(LESS, moments=0, leaves_out=(*LESS.leaves_out, TIDES))
LEAST = replace(NO_TIDES, late_rows=0, leaves_out=(*NO_TIDES.leaves_out, LATE))
BARE = replace(LEAST, grave_lines=1)  # the gravest flag alone in words, and as many more as there is room for
DETAILS = (ALL, FEWER, FEW, NO_SKETCH, NO_PLACES, NO_HOME, LESS, NO_TIDES, LEAST, BARE)

# What comes back where there is room, in this order: parts that were left out, and more of those that are there. Of
# each the first that finds room is taken, so the most stands first.
MORE: tuple[tuple[str, str, tuple], ...] = (
    (FLAGS, "grave_lines", (40, 30, 24, 20, 16, 13, 10, 8, 6, 5, 4, 3)),
    ("turn back", "home_headings", (True,)),
    (LATE, "late_rows", (3, 2)),
    (TIDES, "moments", (3, 2, 1)),
    (HOME, "home_rows", (3, 2)),
    (LATE, "late_rows", (5, 4)),
    (HOME, "home_of_all_marks", (True,)),
    (HOME, "home_rows", (8, 6, 5, 4)),
    (DEPTHS, "depth_rows", (8, 4, 2, 1)),
    (POSITIONS, "low", (False, True)),
    (TRANSITS, "", ()),
    (SKETCH, "", ()),
    (LATE, "late_rows", (16, 12, 10, 8, 6)),
    (TIDES, "moments", (4, 3)),
    ("legs", "heading_lines", (3, 2)),
    (FLAGS, "note_lines", (12, 9, 6, 5, 4)),
)


def more_of(detail: Detail, part: str, field: str, values: tuple) -> Iterator[Detail]:
    """The same with a part that was left out, or with more of it, most of it first."""
    here = replace(detail, leaves_out=tuple(name for name in detail.leaves_out if name != part))
    if not field or part == POSITIONS:  # which is there or not
        if part in detail.leaves_out:
            yield from (replace(here, **{field: value}) for value in values) if field else (here,)
        return
    if part == HOME and part in detail.leaves_out and field != "home_rows":
        return  # it comes back with rows
    yield from (replace(here, **{field: value}) for value in values if value > getattr(detail, field))
