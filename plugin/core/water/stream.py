"""What every source of tidal stream answers: rate and set at places and times, and whether it knows."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import Protocol

import numpy as np
from numpy.typing import ArrayLike

from ..errors import StoppedError

UNKNOWN, EXTRAPOLATED, KNOWN = 0, 1, 2


@dataclass(frozen=True, kw_only=True)
class StreamSample:
    """Stream at places and times: ``east_m_s`` and ``north_m_s`` TOWARDS (true), NaN where unknown.

    ``status`` holds UNKNOWN, EXTRAPOLATED or KNOWN; ``source`` the number of the source with the largest share, -1
    where there is none, and is None from a source itself. All arrays have the broadcast shape of what was asked.
    """

    east_m_s: np.ndarray
    north_m_s: np.ndarray
    status: np.ndarray
    source: np.ndarray | None = None

    @property
    def rate_m_s(self) -> np.ndarray:
        """Rate, m/s."""
        return np.hypot(self.east_m_s, self.north_m_s)

    @property
    def set_deg(self) -> np.ndarray:
        """Set, TOWARDS, degrees 0-360."""
        return np.degrees(np.arctan2(self.east_m_s, self.north_m_s)) % 360.0


def unknown_sample(shape: tuple[int, ...]) -> StreamSample:
    """Stream that is not known anywhere: NaN, never zero."""
    return StreamSample(
        east_m_s=np.full(shape, np.nan),
        north_m_s=np.full(shape, np.nan),
        status=np.full(shape, UNKNOWN, dtype=np.int8),
        source=np.full(shape, -1, dtype=np.int16),
    )


class StationStream(Protocol):
    """Stream at one station as a function of time alone."""

    def at(self, t_s: ArrayLike) -> StreamSample:
        """Stream at times in seconds from the plan's start (any shape)."""


class Stream(Protocol):
    """Stream as a function of place and time."""

    def at(self, x_m: ArrayLike, y_m: ArrayLike, t_s: ArrayLike) -> StreamSample:
        """Stream at places of the plan's frame and times in seconds from its start; arguments broadcast."""


class RowStream(Stream, Protocol):
    """A stream that is another one for every row: places, and times that have rows, have them on their first axis.

    So the waters of many days are swum at once. Whoever asks for some of its rows alone asks ``for_rows``.
    """

    def of_rows(self, rows: np.ndarray) -> Stream:
        """The stream of some of the rows, in the order of their numbers (n,)."""


def for_rows(stream: Stream, rows: np.ndarray) -> Stream:
    """The stream to ask when only some rows are: a plain stream is the same for all of them."""
    of_rows = getattr(stream, "of_rows", None)
    return stream if of_rows is None else of_rows(rows)


def has_edges(stream: Stream) -> bool:
    """Whether a stream may change at once from place to place: at an eddy, a coast, the end of a model.

    One that does not say is taken to; one that lies in another is asked there.
    """
    inner = getattr(stream, "stream", getattr(stream, "field", None))
    return has_edges(inner) if inner is not None else getattr(stream, "edged", True)


@dataclass(frozen=True, kw_only=True)
class StoppableStream:
    """A stream that raises StoppedError when the user has stopped: solvers ask it often, whatever they are about."""

    stream: Stream
    is_cancelled: Callable[[], bool]

    def at(self, x_m: ArrayLike, y_m: ArrayLike, t_s: ArrayLike) -> StreamSample:
        """The stream, unless stopped."""
        if self.is_cancelled():
            raise StoppedError()
        return self.stream.at(x_m, y_m, t_s)

    def of_rows(self, rows: np.ndarray) -> StoppableStream:
        """The stream of some of the rows."""
        return replace(self, stream=for_rows(self.stream, rows))


@dataclass(frozen=True, kw_only=True)
class ConstantStream:
    """A stream that never changes: a river's outflow, a wind-driven current. NaN components mean unknown."""

    east_m_s: float
    north_m_s: float

    @classmethod
    def from_set(cls, set_deg: float, rate_m_s: float) -> ConstantStream:
        """A constant stream of that rate TOWARDS the true direction."""
        angle = np.radians(set_deg)
        return cls(east_m_s=float(rate_m_s * np.sin(angle)), north_m_s=float(rate_m_s * np.cos(angle)))

    def at(self, t_s: ArrayLike) -> StreamSample:
        """The same stream at every time."""
        shape = np.shape(t_s)
        known = np.isfinite(self.east_m_s) and np.isfinite(self.north_m_s)
        return StreamSample(
            east_m_s=np.full(shape, self.east_m_s),
            north_m_s=np.full(shape, self.north_m_s),
            status=np.full(shape, KNOWN if known else UNKNOWN, dtype=np.int8),
        )
