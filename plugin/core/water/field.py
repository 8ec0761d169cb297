"""The stream over the whole plan: several stations, land between them, and eddies with a station of their own."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
from numpy.typing import ArrayLike

from ..grid import EvenGrid
from ..planar import PlanarArea, filled_grid
from .stream import EXTRAPOLATED, KNOWN, UNKNOWN, StationStream, StreamSample
from .tide import TideTable

STATION_REACH_M = (
    10_000.0  # farther from every station than this, the stream is extrapolated; common practice, no source
)
GRID_SIDE = 128
RULED_GRID_SIDE = 256
EDGE_M = 40.0
PHASES = ("flood", "ebb", "always")


@dataclass(frozen=True, kw_only=True)
class Station:
    """A stream station: its place in the frame, its stream, its source, and its port's tide for flood and ebb."""

    name: str
    x_m: float
    y_m: float
    stream: StationStream
    source: str = ""
    confidence: float = float("nan")
    tide: TideTable | None = None


@dataclass(frozen=True, kw_only=True)
class RuledArea:
    """An eddy or a bight in which one station rules, on the flood (tide rising at its port), the ebb, or always.

    Its edge is a shear layer: outside it the rule fades over 40 m (common practice, no source).
    """

    area: PlanarArea
    station: str
    phase: str = "always"
    _share: EvenGrid = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        low, high = self.area.bounds[:2] - 2.0 * EDGE_M, self.area.bounds[2:] + 2.0 * EDGE_M
        cell = max(EDGE_M / 4.0, float(np.max(high - low)) / RULED_GRID_SIDE)
        x, y = EvenGrid.places(low, high, cell)
        places = np.stack(np.meshgrid(x, y), axis=-1).reshape(-1, 2)
        away = np.where(self.area.contains(places), 0.0, self.area.distance_m(places))
        share = np.clip(1.0 - away / EDGE_M, 0.0, 1.0).reshape(1, len(y), len(x))
        object.__setattr__(self, "_share", EvenGrid(low_m=low, cell_m=cell, values=share))

    def share(self, x_m: np.ndarray, y_m: np.ndarray) -> np.ndarray:
        """How much the station rules at places: 1 inside, 0 from 40 m outside."""
        return self._share.at(x_m, y_m)[0]


@dataclass(frozen=True, kw_only=True)
class StreamField:
    """Stream at any place and time of the plan.

    Between stations the vectors are shared by the inverse square of the distance (D. Shepard, A two-dimensional
    interpolation function for irregularly-spaced data, Proc. 23rd ACM National Conference, 1968); a station with land
    between it and the place has no share. Where land lies between the place and every station they all share, and the
    stream is extrapolated; so it is more than 10 km from the nearest. A station named by a ruled area rules there alone
    and has no share elsewhere. A station that does not know at that time leaves the stream unknown wherever it has more
    than a tenth of the share. Where there is no station the stream is unknown.
    """

    stations: tuple[Station, ...]
    ruled_areas: tuple[RuledArea, ...] = ()
    land: tuple[PlanarArea, ...] = ()
    places_m: np.ndarray = field(default_factory=lambda: np.empty((0, 2)))
    _sight: _Sight | None = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        shared = self.shared_stations
        sight = _Sight(self.land, shared, self.places_m) if self.land and shared and len(self.places_m) else None
        object.__setattr__(self, "_sight", sight)

    @property
    def shared_stations(self) -> tuple[Station, ...]:
        """The stations that rule no area of their own."""
        rulers = {ruled.station for ruled in self.ruled_areas}
        return tuple(station for station in self.stations if station.name not in rulers)

    def at(self, x_m: ArrayLike, y_m: ArrayLike, t_s: ArrayLike) -> StreamSample:
        """Stream at places (metres) and times (seconds from the plan's start); arguments broadcast."""
        x, y, t = np.broadcast_arrays(*(np.asarray(value, dtype=float) for value in (x_m, y_m, t_s)))
        sample = self._shared_at(x, y, t)
        by_name = {station.name: station for station in self.stations}
        for ruled in self.ruled_areas:
            sample = _overruled(sample, ruled, by_name[ruled.station], x, y, t)
        return sample

    def _shared_at(self, x: np.ndarray, y: np.ndarray, t: np.ndarray) -> StreamSample:
        stations = self.shared_stations
        if not stations:
            nothing = np.full(x.shape, np.nan)
            return StreamSample(east_m_s=nothing, north_m_s=nothing, status=np.full(x.shape, UNKNOWN, dtype=np.int8))
        samples = [station.stream.at(t) for station in stations]
        square = np.stack([(x - station.x_m) ** 2 + (y - station.y_m) ** 2 for station in stations])
        share = 1.0 / np.maximum(square, 1.0)
        doubt = np.min(square, axis=0) > STATION_REACH_M**2
        if self._sight is not None:
            seen = share * self._sight.of(x, y)
            hidden = seen.sum(axis=0) <= 0.0
            share, doubt = np.where(hidden, share, seen), doubt | hidden
        return _mixed(samples, share / share.sum(axis=0), doubt)


def _mixed(samples: list[StreamSample], share: np.ndarray, doubt: np.ndarray) -> StreamSample:
    """The stations' vectors by their shares (k, ...); unknown where a station that matters does not know."""
    known = np.stack([sample.status for sample in samples]) != UNKNOWN
    beyond = np.stack([sample.status for sample in samples]) == EXTRAPOLATED
    counted = np.where(known, share, 0.0)
    left = counted.sum(axis=0)
    lost = np.any(~known & ~(share <= 0.1), axis=0) | ~(left > 0.0)
    counted = counted / np.where(lost, np.nan, left)
    east = sum(np.where(weight > 0.0, weight * sample.east_m_s, 0.0) for weight, sample in zip(counted, samples))
    north = sum(np.where(weight > 0.0, weight * sample.north_m_s, 0.0) for weight, sample in zip(counted, samples))
    status = np.where(np.any(beyond & (counted > 0.0), axis=0) | doubt, EXTRAPOLATED, KNOWN)
    return StreamSample(
        east_m_s=np.where(lost, np.nan, east),
        north_m_s=np.where(lost, np.nan, north),
        status=np.where(lost, UNKNOWN, status).astype(np.int8),
    )


def _overruled(
    sample: StreamSample, ruled: RuledArea, station: Station, x: np.ndarray, y: np.ndarray, t: np.ndarray
) -> StreamSample:
    """The sample with the ruling station's stream put in where and when it rules."""
    share = ruled.share(x, y)
    if not share.any():
        return sample
    own = station.stream.at(t)
    if ruled.phase != "always":
        rising = station.tide.rising(t) if station.tide is not None else np.full(t.shape, np.nan)
        # Where the tide is not known, neither is which stream rules: NaN makes it unknown.
        share = np.where(share > 0.0, share * (rising if ruled.phase == "flood" else 1.0 - rising), 0.0)
    part = {
        name: np.where(share != 0.0, share * getattr(own, name), 0.0)
        + np.where(share != 1.0, (1.0 - share) * getattr(sample, name), 0.0)
        for name in ("east_m_s", "north_m_s")
    }
    status = np.where(share >= 0.5, own.status, sample.status)
    status = np.where(np.isfinite(part["east_m_s"]), status, UNKNOWN).astype(np.int8)
    return StreamSample(**part, status=status)


class _Sight:
    """Which stations see which places over water, on a grid over the stations and places."""

    def __init__(self, land: tuple[PlanarArea, ...], stations: tuple[Station, ...], places_m: np.ndarray) -> None:
        spots = np.array([[station.x_m, station.y_m] for station in stations])
        corners = np.vstack([places_m, spots])
        self._low, high = corners.min(axis=0) - 500.0, corners.max(axis=0) + 500.0
        self._cell = float(np.max(high - self._low)) / (GRID_SIDE - 1)
        x, y = EvenGrid.places(self._low, high, self._cell)
        dry = filled_grid(list(land), x, y)
        seen = np.stack([self._seen_from(spot, dry, x, y) for spot in spots]).astype(float)
        self._grid = EvenGrid(low_m=self._low, cell_m=self._cell, values=seen)

    def of(self, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        """Share 0-1 (k, ...) to which each station sees each place."""
        return self._grid.at(x, y)

    def _seen_from(self, spot: np.ndarray, dry: np.ndarray, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        """Grid points whose straight line to the station crosses no dry grid point."""
        columns, rows = np.meshgrid(np.arange(len(x)), np.arange(len(y)))
        own = (spot - self._low) / self._cell
        seen = np.ones(dry.shape, dtype=bool)
        steps = int(max(dry.shape)) * 2
        # The station's own cell and the place's own cell do not count: stations and beaches stand at the coast.
        for share in np.arange(1, steps) / steps:
            c, r = columns + (own[0] - columns) * share, rows + (own[1] - rows) * share
            apart = np.maximum(np.abs(c - columns), np.abs(r - rows)) > 1.0
            apart &= np.maximum(np.abs(c - own[0]), np.abs(r - own[1])) > 1.0
            seen &= ~(apart & dry[np.rint(r).astype(int), np.rint(c).astype(int)])
        return seen
