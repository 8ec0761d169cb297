"""The planned swim: legs, stops and flags, as they go to layers, the card and the report."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime

import numpy as np

from .flag import Flag
from .transits import Transit
from .turn_back import TurnBack


@dataclass(frozen=True, kw_only=True)
class HeadingChange:
    """A heading to hold from a moment on. Degrees, true and magnetic."""

    moment: datetime
    heading_true_deg: float
    heading_mag_deg: float


@dataclass(frozen=True, kw_only=True)
class TrackPoint:
    """A place of the track really swum: degrees, time, ground speed and stream at that moment."""

    lon: float
    lat: float
    moment: datetime
    heading_mag_deg: float
    ground_speed_m_s: float
    stream_set_deg: float
    stream_kn: float


@dataclass(frozen=True, kw_only=True)
class Leg:
    """One leg as swum. Unknown numbers are None and ``reason`` says why.

    Bearings and headings in degrees, ``heading_*`` the one held when leaving; ``ground_speed_m_s`` is the distance made
    good over the time; the stream is the mean vector on the leg; ``off_line_m`` the largest bow off the straight line.
    ``track`` is empty where the leg could not be dated.
    """

    number: int
    start_name: str
    end_name: str
    start_lon: float
    start_lat: float
    end_lon: float
    end_lat: float
    distance_m: float
    bearing_true_deg: float
    bearing_mag_deg: float
    heading_true_deg: float | None
    heading_mag_deg: float | None
    card_heading: str | None
    ground_speed_m_s: float | None
    minutes: float | None
    depart: datetime | None
    arrive: datetime | None
    stream_set_deg: float | None
    stream_kn: float | None
    off_line_m: float | None
    feasible: bool
    reason: str
    headings: tuple[HeadingChange, ...] = ()
    track: tuple[TrackPoint, ...] = ()


@dataclass(frozen=True, kw_only=True)
class Stop:
    """A place the swim stops at (the entry first, the last exit last), its depth now and its latest leaving times.

    ``charted_depth_m`` positive down from the plan's datum; ``depth_by_hour`` pairs of (moment, depth in metres);
    ``deepest_m`` is the greatest depth of the stay; ``swing_m`` how far a float swings on the whole anchor line, None
    where the line does not reach the bottom;
    ``transits`` those the user picked for the place, in the order of their layer.
    """

    name: str
    kind: str
    lon: float
    lat: float
    arrive: datetime | None
    leave: datetime | None
    charted_depth_m: float | None = None
    depth_now_m: float | None = None
    depth_by_hour: tuple[tuple[datetime, float], ...] = ()
    latest_leave: datetime | None = None
    latest_leave_pessimistic: datetime | None = None
    exit: str | None = None
    note: str = ""
    swing_m: float | None = None
    deepest_m: float | None = None
    transits: tuple[Transit, ...] = ()


@dataclass(frozen=True, kw_only=True)
class TideMoment:
    """A high or low water for the foot of the card: ``kind`` HW or LW, metres above datum or None."""

    moment: datetime
    kind: str
    height_m: float | None


@dataclass(frozen=True, kw_only=True)
class StreamTurn:
    """A slack or least rate along the route: ``set_after_deg`` is where the water goes afterwards."""

    moment: datetime
    rate_kn: float
    set_after_deg: float | None


@dataclass(frozen=True, kw_only=True)
class ChartShape:
    """A channel, a ferry's way or an area with rules near the swim, for the sketch: its rings as (n, 2) degrees, lon
    first; a ring within another is a hole."""

    kind: str  # channel, ferry or rules
    name: str
    rings: tuple[np.ndarray, ...]


@dataclass(frozen=True, kw_only=True)
class SwimPlan:
    """A whole swim, planned. Times are aware and in the plan's zone; angles in degrees, variation east positive.

    ``marks_left_out`` says that it is made for others to see: positions, headings and distances are missing.
    """

    route: str
    swimmer: str
    zone: str
    datum: str
    title: str
    depart: datetime
    arrive: datetime | None
    total_m: float
    total_min: float | None
    swim_min: float | None
    feasible: bool
    variation_deg: float
    variation_model: str
    variation_date: datetime
    heading_mode: int
    heading_step_deg: float
    line_m: float | None
    legs: tuple[Leg, ...]
    stops: tuple[Stop, ...]
    flags: tuple[Flag, ...]
    warnings: tuple[str, ...] = ()
    tides: tuple[TideMoment, ...] = ()
    stream_turns: tuple[StreamTurn, ...] = ()
    sunset: datetime | None = None
    civil_dusk: datetime | None = None
    alarm: datetime | None = None
    land_rings: tuple[np.ndarray, ...] = field(default=(), repr=False)
    chart_shapes: tuple[ChartShape, ...] = field(default=(), repr=False)
    turn_back: TurnBack | None = None
    marks_left_out: bool = False
