"""The waters of many days at once: the streams of a plan, each day's stronger or weaker and earlier or later."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import ArrayLike

from .field import Station, StreamField
from .model_stream import ModelStream
from .stream import StationStream, Stream, StreamSample


@dataclass(frozen=True, kw_only=True)
class MemberWater:
    """A plan's streams on n days, a ``RowStream`` with a day a row.

    ``rate_doubts`` and ``phase_doubts`` (n,) are in units of what each source is uncertain by: a source of +-30 % and
    +-30 min has 1.3 times its rates half an hour late where both are 1. All sources share one doubt a day. Rates are
    never turned round: a factor does not go below 0. What is not known stays so, and the tide that decides which way a
    ruled area turns keeps its clock.
    """

    field: StreamField
    rate_doubts: np.ndarray
    phase_doubts: np.ndarray

    def __post_init__(self) -> None:
        field = self.field.with_sources(
            tuple(self._station(station) for station in self.field.stations),
            tuple(self._model(model) for model in self.field.models),
        )
        object.__setattr__(self, "_field", field)

    def at(self, x_m: ArrayLike, y_m: ArrayLike, t_s: ArrayLike) -> StreamSample:
        """Stream at places of the plan's frame and times in seconds from its start, rows on the first axis."""
        return self._field.at(x_m, y_m, t_s)

    def of_rows(self, rows: np.ndarray) -> MemberWater:
        """The waters of some days, in the order of their numbers; a day may come more than once."""
        return replace(self, rate_doubts=self.rate_doubts[rows], phase_doubts=self.phase_doubts[rows])

    def _station(self, station: Station) -> Station:
        factor, later_s = self._changes(station.rate_uncertainty, station.phase_uncertainty_s)
        return replace(station, stream=_RowStation(stream=station.stream, rate_factor=factor, later_s=later_s))

    def _model(self, model: ModelStream) -> ModelStream:
        factor, later_s = self._changes(model.rate_uncertainty, model.phase_uncertainty_s)
        changed = _RowModel(stream=model.stream, rate_factor=factor, later_s=later_s)
        return replace(model, stream=changed)

    def _changes(self, rate_uncertainty: float, phase_uncertainty_s: float) -> tuple[np.ndarray, np.ndarray]:
        factor = np.maximum(1.0 + rate_uncertainty * self.rate_doubts, 0.0)
        return factor, phase_uncertainty_s * self.phase_doubts


@dataclass(frozen=True, kw_only=True)
class _RowStation:
    """A station's stream with a factor and a shift (n,) a row."""

    stream: StationStream
    rate_factor: np.ndarray
    later_s: np.ndarray

    def at(self, t_s: ArrayLike) -> StreamSample:
        t_s = np.asarray(t_s, dtype=float)
        return _times(self.stream.at(t_s - down(self.later_s, t_s.ndim)), self.rate_factor)


@dataclass(frozen=True, kw_only=True)
class _RowModel:
    """A model's stream with a factor and a shift (n,) a row."""

    stream: Stream
    rate_factor: np.ndarray
    later_s: np.ndarray

    def at(self, x_m: ArrayLike, y_m: ArrayLike, t_s: ArrayLike) -> StreamSample:
        t_s = np.asarray(t_s, dtype=float)
        return _times(self.stream.at(x_m, y_m, t_s - down(self.later_s, t_s.ndim)), self.rate_factor)


def down(values: np.ndarray, dimensions: int) -> np.ndarray:
    """Values (n,) of rows made to stand beside arrays of so many dimensions whose first axis is the rows."""
    return values.reshape((-1,) + (1,) * (dimensions - 1))


def _times(sample: StreamSample, factor: np.ndarray) -> StreamSample:
    factor = down(factor, sample.east_m_s.ndim)
    return replace(sample, east_m_s=sample.east_m_s * factor, north_m_s=sample.north_m_s * factor)
