"""A planned swim minute by minute, and the stream along and round it, ready to be drawn and played."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

KNOWN_WORDS = ("known", "extrapolated", "unknown")


@dataclass(frozen=True, kw_only=True)
class StreamHere:
    """The stream at a place and moment: set TOWARDS in degrees true, rate in knots, both None where it is not known.

    ``begin`` to ``end`` is how long the reading stands for the water there; all times are None where nobody can say
    when the swimmer would be there. ``known`` is one of ``KNOWN_WORDS``. ``is_stay`` where the swimmer stops.
    """

    lon: float
    lat: float
    moment: datetime | None
    begin: datetime | None
    end: datetime | None
    set_deg: float | None
    rate_kn: float | None
    known: str
    leg: int | None = None
    is_stay: bool = False

    def __post_init__(self) -> None:
        if self.known not in KNOWN_WORDS or (self.known == "unknown") != (self.rate_kn is None):
            raise ValueError(f"stream called {self.known!r} at a rate of {self.rate_kn} kn")


@dataclass(frozen=True, kw_only=True)
class SwimMoment:
    """Where the swimmer is from ``moment`` to ``end``, and what the water does there.

    ``leg`` is the leg being swum or the one that ended at this stop, ``place`` the stop swum to or stayed at. The
    heading to hold is magnetic, None during a stay and on a leg that cannot be swum (``can_be_swum``). ``tide_m`` is
    above the plan's datum, ``depth_m`` the water's depth with that tide; None where not known, as is ``tide_rises``.
    """

    moment: datetime
    end: datetime
    lon: float
    lat: float
    leg: int
    place: str
    is_stay: bool
    can_be_swum: bool
    heading_mag_deg: float | None
    stream: StreamHere
    tide_m: float | None
    tide_rises: bool | None
    depth_m: float | None


@dataclass(frozen=True, kw_only=True)
class SwimInTime:
    """The whole swim: its ``minutes`` in order, the stream ``along`` the track, and ``around`` it on a grid.

    The minutes end where the swim does, or where it gets no further. Times are aware and in the plan's zone.
    """

    zone: str
    datum: str
    heading_step_deg: float
    minutes: tuple[SwimMoment, ...]
    along: tuple[StreamHere, ...]
    around: tuple[StreamHere, ...]
