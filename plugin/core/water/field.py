"""The stream over the whole plan: stations, models, land between them, and eddies with a station of their own."""

from __future__ import annotations

from copy import copy
from dataclasses import dataclass, field, replace

import numpy as np
from numpy.typing import ArrayLike

from ..planar import PlanarArea
from .blend import laid_over, shared
from .model_stream import ModelStream
from .ruled_area import RuledArea
from .sight import Sight
from .stream import UNKNOWN, StationStream, StreamSample, unknown_sample
from .tide import TideTable

# Farther than this from every station the stream is extrapolated; common practice, no source.
STATION_REACH_M = 10_000.0
# The best rank rules where it knows. Own measurement before official local table, table, model, words.
RANKS = {"measured": 0, "official": 1, "table": 2, "model": 3, "words": 4}
MODEL_RANK = RANKS["model"]
FADES_OVER = 0.2  # of a station's reach, so that rule passes on without a sudden edge; common practice, no source


@dataclass(frozen=True, kw_only=True)
class Station:
    """A stream station: its place in the frame, its stream, its source, and its port's tide for flood and ebb.

    Beside a model or a source of another rank it rules within ``reach_m``. ``rate_uncertainty`` is a share of the rate,
    ``phase_uncertainty_s`` seconds; their defaults are common practice, no source.
    """

    name: str
    x_m: float
    y_m: float
    stream: StationStream
    source: str = ""
    rank: int = RANKS["table"]
    reach_m: float = 3000.0
    rate_uncertainty: float = 0.30
    phase_uncertainty_s: float = 1800.0
    tide: TideTable | None = None


@dataclass(frozen=True, kw_only=True)
class StreamField:
    """Stream at any place and time of the plan.

    Between stations the vectors are shared by the inverse square of the distance (D. Shepard, A two-dimensional
    interpolation function for irregularly-spaced data, Proc. 23rd ACM National Conference, 1968); a station with land
    between it and the place has no share. Where land lies between the place and every station they all share, and the
    stream is extrapolated; so it is more than 10 km from the nearest. A station that does not know at that time leaves
    the stream unknown wherever it has more than a tenth of the share.

    Where there are models, or stations of several ranks, a model rules where it knows, and a station before it within
    its reach; of several ranks the best. A station named by a ruled area rules there alone and has no share elsewhere.
    Where no source knows the stream is unknown.
    """

    stations: tuple[Station, ...]
    models: tuple[ModelStream, ...] = ()
    ruled_areas: tuple[RuledArea, ...] = ()
    land: tuple[PlanarArea, ...] = ()
    places_m: np.ndarray = field(default_factory=lambda: np.empty((0, 2)))
    _shared: tuple[Station, ...] = field(init=False, repr=False, compare=False)
    _numbers: dict[str, int] = field(init=False, repr=False, compare=False)
    _sight: Sight | None = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        rulers = {ruled.station for ruled in self.ruled_areas}
        open_water = tuple(station for station in self.stations if station.name not in rulers)
        spots = np.array([[station.x_m, station.y_m] for station in open_water])
        sight = Sight(self.land, spots, self.places_m) if self.land and open_water and len(self.places_m) else None
        object.__setattr__(self, "_shared", open_water)
        object.__setattr__(self, "_numbers", {station.name: row for row, station in enumerate(self.stations)})
        object.__setattr__(self, "_sight", sight)

    @property
    def edged(self) -> bool:
        """Whether the stream may change at once from place to place."""
        return bool(self.ruled_areas or self.models or self._sight is not None)

    @property
    def source_names(self) -> tuple[str, ...]:
        """Names of the sources by their number in a sample: the stations, then the models."""
        return tuple(station.name for station in self.stations) + tuple(model.name for model in self.models)

    def with_sources(self, stations: tuple[Station, ...], models: tuple[ModelStream, ...]) -> StreamField:
        """The field with the same sources in the same places and other streams; what each station sees is kept."""
        other = copy(self)
        rulers = {ruled.station for ruled in self.ruled_areas}
        object.__setattr__(other, "stations", stations)
        object.__setattr__(other, "models", models)
        object.__setattr__(other, "_shared", tuple(station for station in stations if station.name not in rulers))
        return other

    def at(self, x_m: ArrayLike, y_m: ArrayLike, t_s: ArrayLike) -> StreamSample:
        """Stream at places (metres) and times (seconds from the plan's start); arguments broadcast."""
        x, y, t = np.broadcast_arrays(*(np.asarray(value, dtype=float) for value in (x_m, y_m, t_s)))
        sample = self._open_water(x, y, t)
        for ruled in self.ruled_areas:
            share = ruled.share(x, y)
            if share.any():
                number = self._numbers[ruled.station]
                station = self.stations[number]
                sample = ruled.ruled(sample, _numbered(station.stream.at(t), number), station.tide, share, t)
        return sample

    def _open_water(self, x: np.ndarray, y: np.ndarray, t: np.ndarray) -> StreamSample:
        """The stream outside ruled areas."""
        if not self._shared and not self.models:
            return unknown_sample(x.shape)
        samples = [_numbered(station.stream.at(t), self._numbers[station.name]) for station in self._shared]
        square = [(x - station.x_m) ** 2 + (y - station.y_m) ** 2 for station in self._shared]
        seen = None if self._sight is None else self._sight.of(x, y)
        sample = self._all_stations(samples, square, seen) if samples else unknown_sample(x.shape)
        ranks = {station.rank for station in self._shared}
        if not self.models and len(ranks) < 2:
            return sample
        # From the least trusted to the best, each laid over what stands.
        for rank in sorted(ranks | {MODEL_RANK}, reverse=True):
            if rank == MODEL_RANK:
                sample = self._under_models(sample, x, y, t)
            members = [row for row, station in enumerate(self._shared) if station.rank == rank]
            if members:
                sample = self._laid_by(members, samples, square, seen, sample)
        return sample

    def _all_stations(
        self, samples: list[StreamSample], square: list[np.ndarray], seen: np.ndarray | None
    ) -> StreamSample:
        share = 1.0 / np.maximum(np.stack(square), 1.0)
        doubt = np.min(square, axis=0) > STATION_REACH_M**2
        if seen is not None:
            in_sight = share * seen
            hidden = in_sight.sum(axis=0) <= 0.0
            share, doubt = np.where(hidden, share, in_sight), doubt | hidden
        numbers = np.array([self._numbers[station.name] for station in self._shared])
        return shared(samples, share / share.sum(axis=0), doubt, numbers)

    def _laid_by(
        self,
        members: list[int],
        samples: list[StreamSample],
        square: list[np.ndarray],
        seen: np.ndarray | None,
        lower: StreamSample,
    ) -> StreamSample:
        """The stations of one rank, each within its reach and in sight, laid over the rest."""
        reach = np.array([self._shared[row].reach_m for row in members]).reshape((-1,) + (1,) * lower.status.ndim)
        away = np.sqrt(np.stack([square[row] for row in members]))
        rule = np.clip((reach - away) / (FADES_OVER * reach), 0.0, 1.0)
        if seen is not None:
            rule = rule * seen[members]
        share = rule / np.maximum(away, 1.0) ** 2
        total = share.sum(axis=0)
        numbers = np.array([self._numbers[self._shared[row].name] for row in members])
        none = np.zeros(lower.status.shape, dtype=bool)
        own = shared([samples[row] for row in members], share / np.where(total > 0.0, total, 1.0), none, numbers)
        return laid_over(lower, rule.max(axis=0), own)

    def _under_models(self, lower: StreamSample, x: np.ndarray, y: np.ndarray, t: np.ndarray) -> StreamSample:
        """The first model that knows laid over the rest."""
        for number, model in reversed(list(enumerate(self.models, start=len(self.stations)))):
            own = _numbered(model.at(x, y, t), number)
            lower = laid_over(lower, (own.status != UNKNOWN).astype(float), own)
        return lower


def _numbered(sample: StreamSample, number: int) -> StreamSample:
    """The sample with its source's number, -1 where it does not know."""
    source = np.where(sample.status == UNKNOWN, -1, number).astype(np.int16)
    return replace(sample, source=source)
