"""Which landmarks stand in line as seen from a mark, and which two such lines fix it best."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from ..geodesy import LocalFrame
from ..magnetism import Variation
from ..results.transits import MarkTransits, Transit, TransitFix
from ..words import tr
from .transit_fixes import best_fixes, nearest_square
from .transit_lines import Lines, TransitLimits, lines_kept, measured


@dataclass(frozen=True, kw_only=True)
class Landmarks:
    """Things ashore that can be told from afar: their names and ``lonlat`` (n, 2) in degrees."""

    names: tuple[str, ...]
    lonlat: np.ndarray

    def __post_init__(self) -> None:
        lonlat = np.array(self.lonlat, dtype=float).reshape(-1, 2)
        if len(lonlat) != len(self.names):
            raise ValueError(f"{len(self.names)} names for {len(lonlat)} places")
        lonlat.setflags(write=False)
        object.__setattr__(self, "lonlat", lonlat)


def find_transits(
    mark: str,
    lon: float,
    lat: float,
    landmarks: Landmarks,
    variation: Variation,
    *,
    limits: TransitLimits | None = None,
    most: int = 3,
) -> MarkTransits:
    """The best pairs of transits for a mark at a place in degrees, ``most`` of them at most.

    What hides a landmark (higher land, trees, houses) is not known here. Cost: n log n in the landmarks, plus the pairs
    that are in line.
    """
    limits = limits or TransitLimits()
    xy_m = LocalFrame(lon=lon, lat=lat).to_xy(landmarks.lonlat)
    lines, in_line, in_range = lines_kept(xy_m, limits)
    pairs = best_fixes(lines, limits.least_crossing_deg, most)

    def transit(number: int, crossing_deg: float | None = None) -> Transit:
        return _transit(mark, (lon, lat), landmarks, variation, lines, number, crossing_deg)

    fixes = tuple(
        TransitFix(
            first=transit(pair.first, pair.crossing_deg),
            second=transit(pair.second, pair.crossing_deg),
            crossing_deg=pair.crossing_deg,
            error_m=pair.error_m,
        )
        for pair in pairs
    )
    return MarkTransits(
        mark=mark,
        lon=lon,
        lat=lat,
        in_line=in_line,
        fixes=fixes,
        singles=() if fixes else tuple(transit(number) for number in np.argsort(lines.error_m, kind="stable")[:most]),
        reason="" if fixes else _reason(mark, len(landmarks.names), in_range, in_line, limits),
    )


def measured_transit(mark: str, lon: float, lat: float, landmarks: Landmarks, variation: Variation) -> Transit | None:
    """The transit through two landmarks, front and rear, as it is seen from a mark, whatever the limits.

    None where the rear is no farther than the front, or the mark lies between the two.
    """
    frame = LocalFrame(lon=lon, lat=lat)
    xy_m = frame.to_xy(landmarks.lonlat)
    lines = measured(xy_m, np.array([0]), np.array([1]))
    if not (lines.rear_m[0] > lines.front_m[0] > 0.0 and xy_m[0] @ xy_m[1] > 0.0):
        return None
    return _transit(mark, (lon, lat), landmarks, variation, lines, 0, None)


def with_crossings(transits: tuple[Transit, ...]) -> tuple[Transit, ...]:
    """The transits of one mark, each with the angle to the other one that it crosses most squarely."""
    bearings = np.array([transit.bearing_true_deg for transit in transits])
    return tuple(
        replace(transit, crossing_deg=nearest_square(bearings, number)) for number, transit in enumerate(transits)
    )


def _transit(
    mark: str,
    place: tuple[float, float],
    landmarks: Landmarks,
    variation: Variation,
    lines: Lines,
    number: int,
    crossing_deg: float | None,
) -> Transit:
    front, rear = int(lines.front[number]), int(lines.rear[number])
    true_deg = float(lines.bearing_deg[number])
    return Transit(
        mark=mark,
        front=landmarks.names[front],
        rear=landmarks.names[rear],
        bearing_true_deg=true_deg,
        bearing_mag_deg=variation.magnetic(true_deg),
        offset_m=float(lines.offset_m[number]),
        sensitivity_m=float(lines.sensitivity_m[number]),
        front_m=float(lines.front_m[number]),
        rear_m=float(lines.rear_m[number]),
        lonlat=(place, tuple(landmarks.lonlat[front].tolist()), tuple(landmarks.lonlat[rear].tolist())),
        crossing_deg=crossing_deg,
    )


def _reason(mark: str, given: int, in_range: int, in_line: int, limits: TransitLimits) -> str:
    """Why there is no pair, and what to do."""
    if not given:
        return tr(
            "No transits of {mark}: there are no landmarks. Put some on the map, or read them from a chart."
        ).format(mark=mark)
    if in_range < 2:
        return tr(
            "No transits of {mark}: {in_range} of {given} landmarks lie from {nearest_m:g} m to "
            "{farthest_km:g} km away, and a transit needs two. Add landmarks."
        ).format(
            mark=mark,
            in_range=in_range,
            given=given,
            nearest_m=limits.nearest_m,
            farthest_km=limits.farthest_m / 1000.0,
        )
    if not in_line:
        return tr(
            "No transits of {mark}: no two of {in_range} landmarks are in line within {offset_m:g} m of "
            "it. Add landmarks, move the mark, or allow a larger offset."
        ).format(mark=mark, in_range=in_range, offset_m=limits.offset_m)
    return tr(
        "Transits of {mark} found: {in_line}, but no two that cross at {least_crossing_deg:g} "
        "degrees or more. One line alone does not fix a mark: cross it with a depth or a compass "
        "bearing, or add landmarks elsewhere."
    ).format(mark=mark, in_line=in_line, least_crossing_deg=limits.least_crossing_deg)
