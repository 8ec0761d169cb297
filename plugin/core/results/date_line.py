"""Lines of degrees cut where they cross the 180th meridian, as files for the whole globe want them."""

from __future__ import annotations

import math
from collections.abc import Iterable

from .report import unwrapped

LonLat = tuple[float, float]


def cut_at_180(points: Iterable[LonLat]) -> list[list[LonLat]]:
    """The line of (lon, lat) points in pieces that do not cross the 180th meridian, longitudes within 180.

    Each cut puts a point on the meridian into both pieces. No step of the line may be longer than half a turn.
    Source: RFC 7946, section 3.1.9.
    """
    line = unwrapped(points)
    pieces = [[line[0]]]
    turns = [_turn(line[0][0])]
    for before, after in zip(line, line[1:]):
        turn = _turn(after[0])
        if turn != turns[-1]:
            meridian = 360.0 * max(turn, turns[-1]) - 180.0
            share = (meridian - before[0]) / (after[0] - before[0])
            cut = (meridian, before[1] + share * (after[1] - before[1]))
            pieces[-1].append(cut)
            pieces.append([cut])
            turns.append(turn)
        pieces[-1].append(after)
    turned = [[(lon - 360.0 * turn, lat) for lon, lat in piece] for piece, turn in zip(pieces, turns)]
    cleaned = [_without_repeats(piece) for piece in turned] if len(turned) > 1 else turned
    # A line that only touches the meridian leaves pieces of one place behind.
    return [piece for piece in cleaned if len(piece) > 1] or turned[:1]


def _turn(lon: float) -> int:
    """Whole turns to take off a longitude to bring it to [-180, 180)."""
    return math.floor((lon + 180.0) / 360.0)


def _without_repeats(piece: list[LonLat]) -> list[LonLat]:
    """Points on the meridian once where the cut has put them twice."""
    kept = piece[:1]
    for point in piece[1:]:
        if point != kept[-1] or abs(point[0]) != 180.0:
            kept.append(point)
    return kept
