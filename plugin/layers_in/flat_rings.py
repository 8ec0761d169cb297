"""Rings and lines of degrees laid flat in the plan's frame, with their edges where the map draws them.

A map draws an edge straight in longitude and latitude: along a parallel, not along the shortest line. Over 100 km the
two are 200 m apart at 45 degrees, so a long edge is cut into short ones before it is laid flat.
"""

from __future__ import annotations

import numpy as np

from ..core.geodesy import LocalFrame

NEAR_DEG = 1.0  # what lies farther from the plan's centre cannot be on a swim
EDGE_DEG = 0.02  # the bow of an edge of 0.02 degree stays below 0.1 m up to 75 degrees of latitude


def near_lon_deg(frame: LocalFrame) -> float:
    """Degrees of longitude that are as far as ``NEAR_DEG`` of latitude at the plan's centre."""
    return NEAR_DEG / max(float(np.cos(np.radians(frame.lat))), 0.02)


def flat_rings(rings: tuple[np.ndarray, ...], frame: LocalFrame) -> tuple[np.ndarray, ...]:
    """The rings (k, 2) of one polygon in metres, cut off two ``NEAR_DEG`` from the centre; none where nothing is left.

    What is far away is cut off because the frame reaches no farther than a quarter of the Earth.
    """
    unwrapped = [_unwrapped(ring, frame) for ring in rings]
    middle = (unwrapped[0][:, 0].min() + unwrapped[0][:, 0].max()) / 2.0
    shift = 360.0 * np.round((frame.lon - middle) / 360.0)
    cut = [_cut_off(ring + [shift, 0.0], frame) for ring in unwrapped]
    return tuple(flat_line(ring, frame) for ring in cut if len(ring) > 2)


def flat_line(lonlat: np.ndarray, frame: LocalFrame) -> np.ndarray:
    """A line (k, 2) in metres, its long edges divided."""
    return frame.to_xy(_divided(_unwrapped(lonlat, frame)))


def _unwrapped(lonlat: np.ndarray, frame: LocalFrame) -> np.ndarray:
    """Longitudes without a jump over the date line, the first one within half a turn of the centre."""
    lon = np.unwrap(np.concatenate([[frame.lon], lonlat[:, 0]]), period=360.0)[1:]
    return np.column_stack([lon, lonlat[:, 1]])


def _divided(lonlat: np.ndarray) -> np.ndarray:
    counts = np.ceil(np.abs(np.diff(lonlat, axis=0)).max(axis=1, initial=0.0) / EDGE_DEG).astype(int)
    if not np.any(counts > 1):
        return lonlat
    counts = np.maximum(counts, 1)
    ends = np.concatenate([[0], np.cumsum(counts)])
    places = np.arange(ends[-1] + 1)
    return np.column_stack([np.interp(places, ends, column) for column in lonlat.T])


def _cut_off(ring: np.ndarray, frame: LocalFrame) -> np.ndarray:
    """The ring inside a window round the centre, closed.

    Source: I. E. Sutherland and G. W. Hodgman, Reentrant polygon clipping, CACM 17 (1974); cited from memory.
    """
    reach = 2.0 * np.array([near_lon_deg(frame), NEAR_DEG])
    centre = np.array([frame.lon, frame.lat])
    if np.all(np.abs(ring - centre) <= reach):
        return ring
    for axis in (0, 1):
        for sign in (-1.0, 1.0):
            ring = _one_side(ring, reach[axis] - sign * (ring[:, axis] - centre[axis]))
    return np.vstack([ring, ring[:1]])


def _one_side(ring: np.ndarray, room: np.ndarray) -> np.ndarray:
    """The part of an open or closed ring where there is room (k,), with the places where it runs out."""
    inside, room_next, ring_next = room >= 0.0, np.roll(room, -1), np.roll(ring, -1, axis=0)
    crosses = inside != np.roll(inside, -1)
    share = room / np.where(crosses, room - room_next, 1.0)
    crossing = ring + share[:, None] * (ring_next - ring)
    return np.stack([ring, crossing], axis=1)[np.stack([inside, crosses], axis=1)]
