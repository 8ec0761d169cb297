"""A planned swim as it may be shown to others: where the marks are, and what leads there, is not in it any more.

This is the one place that says what is private of a swim. What is written from the plan it gives cannot tell more.
"""

from __future__ import annotations

import math
import re
from dataclasses import replace
from datetime import datetime, timedelta

from ..clock import later
from ..errors import SwimPlanError
from ..typed_position import position_from_text
from ..words import marked
from .card import whole_minutes
from .flag import Flag
from .plain_values import nearest_second
from .swim_plan import Leg, Stop, SwimPlan
from .turn_back import LeavingBand, StopTurnBack, TurnBack

MARKS_LEFT_OUT = marked("Marks are left out for sharing: no positions, headings or distances.")
OPEN_KINDS = ("entry", "exit")  # everybody sees where one goes in; every other kind of place is private
NOWHERE = math.nan  # missing, never 0
# Minutes, pace and the stream of the legs out and home would give distance and direction: the stream and the speed go
# with the headings.
PRIVATE_OF_A_LEG = {
    "distance_m": NOWHERE,
    "bearing_true_deg": NOWHERE,
    "bearing_mag_deg": NOWHERE,
    "heading_true_deg": None,
    "heading_mag_deg": None,
    "card_heading": None,
    "ground_speed_m_s": None,
    "stream_set_deg": None,
    "stream_kn": None,
    "off_line_m": None,
    "headings": (),
    "track": (),
}
_WORD = re.compile(r"[^\W\d_]{2,}")
_DECIMALS = re.compile(r"\d{1,2}[.,]\d{3,}\D+\d{1,3}[.,]\d{3,}")  # 42.40012, -28.50034, also within other words
_GRID = re.compile(r"(?<!\d)\d{5,7}\s*[A-Z]?\D{1,3}\d{5,7}(?!\d)")  # eastings and northings in metres
_ALONE = r"(?<![^\W\d_])[{}](?![^\W\d_])"  # a letter with no other letter beside it
_HEMISPHERES = tuple(re.compile(_ALONE.format(letters), re.IGNORECASE) for letters in ("NS", "EWO"))


def without_marks(plan: SwimPlan) -> SwimPlan:
    """The plan with marks and waypoints left out: no positions, bearings, headings, distances, depths or tracks.

    Entries and exits keep their places, everything its times, places their names; a name that holds a position becomes
    a number. Times and minutes are whole minutes, rounded as a card prints them: finer ones would give a leg's length
    to a metre. Numbers that are left out are NaN or None. A flag keeps its kind, gravity and leg.
    """
    names = _Names()
    return replace(
        plan,
        route=names.of(plan.route, "Route"),
        title=names.of(plan.title, "Plan"),
        total_m=NOWHERE,
        arrive=_up(plan.arrive),
        total_min=_whole(plan.total_min),
        swim_min=_whole(plan.swim_min),
        alarm=_down(plan.alarm),
        legs=tuple(_leg(leg, plan, names) for leg in plan.legs),
        stops=tuple(_stop(stop, names) for stop in plan.stops),
        flags=tuple(_flag(flag) for flag in plan.flags),
        warnings=(),
        land_rings=(),
        chart_shapes=(),
        turn_back=None if plan.turn_back is None else _turn_back(plan.turn_back, names),
        marks_left_out=True,
    )


def holds_position(name: str) -> bool:
    """Whether a name gives a position away: degrees in any usual form, or metres of a grid, also among other words."""
    if _DECIMALS.search(name) or _GRID.search(name):
        return True
    if not all(hemisphere.search(name) for hemisphere in _HEMISPHERES):
        return False
    try:
        position_from_text(_WORD.sub(" ", name))
    except SwimPlanError:
        # Not one that can be read for certain; figures and hemispheres in one name are too near to it all the same.
        return len(re.findall(r"\d+", name)) >= 4
    return True


class _Names:
    """Names as written; one that holds a position is the same number wherever it stands."""

    def __init__(self) -> None:
        self._given: dict[str, str] = {}

    def of(self, name: str, instead: str = "Place") -> str:
        """The name, or what stands for it."""
        if not holds_position(name):
            return name
        return self._given.setdefault(name, f"{instead} {len(self._given) + 1}")

    def of_some(self, name: str | None) -> str | None:
        """The same for a name that there may not be."""
        return None if name is None else self.of(name)


def _leg(leg: Leg, plan: SwimPlan, names: _Names) -> Leg:
    ends = {}
    for end, stop in (("start", plan.stops[leg.number - 1]), ("end", plan.stops[leg.number])):
        ends[f"{end}_name"] = names.of(getattr(leg, f"{end}_name"))
        if stop.kind not in OPEN_KINDS:
            ends[f"{end}_lon"] = ends[f"{end}_lat"] = NOWHERE
    when = {"depart": _up(leg.depart), "arrive": _up(leg.arrive), "minutes": _whole(leg.minutes)}
    return replace(leg, **when, **ends, **PRIVATE_OF_A_LEG)


def _stop(stop: Stop, names: _Names) -> Stop:
    place = {} if stop.kind in OPEN_KINDS else {"lon": NOWHERE, "lat": NOWHERE}
    # With a chart at hand a depth finds the mark on its contour. A note may say anything.
    depths = {"charted_depth_m": None, "depth_now_m": None, "depth_by_hour": (), "swing_m": None, "deepest_m": None}
    exit_name = names.of_some(stop.exit)
    when = {"arrive": _up(stop.arrive), "leave": _up(stop.leave)}
    return replace(stop, name=names.of(stop.name), exit=exit_name, note="", transits=(), **when, **place, **depths)


def _flag(flag: Flag) -> Flag:
    words = flag.kind.replace("_", " ")
    nowhere = ((NOWHERE, NOWHERE),)
    return Flag(kind=flag.kind, severity=flag.severity, message=words, brief=words, points=nowhere, leg=flag.leg)


def _up(moment: datetime | None) -> datetime | None:
    """The next whole minute, as a card prints arrivals and departures."""
    if moment is None:
        return None
    moment = nearest_second(moment)
    return later(moment, timedelta(seconds=-moment.second % 60))


def _down(moment: datetime | None) -> datetime | None:
    """The whole minute before, as a card prints an alarm."""
    return None if moment is None else nearest_second(moment).replace(second=0)


def _whole(minutes: float | None) -> float | None:
    return None if minutes is None else float(whole_minutes(minutes))


def _turn_back(found: TurnBack, names: _Names) -> TurnBack:
    exits = tuple(map(names.of, found.exits))
    stops = tuple(_turn_back_stop(stop, names) for stop in found.stops)
    return replace(found, exits=exits, stops=stops, no_return=(), flags=(), warnings=())


def _turn_back_stop(stop: StopTurnBack, names: _Names) -> StopTurnBack:
    return replace(
        stop,
        name=names.of(stop.name),
        arrive=_up(stop.arrive),
        leave=_up(stop.leave),
        lon=NOWHERE,
        lat=NOWHERE,
        bands=tuple(_band(band, names) for band in stop.bands),
        bands_pessimistic=tuple(_band(band, names) for band in stop.bands_pessimistic),
        exit=names.of_some(stop.exit),
        planned_exit=names.of(stop.planned_exit),
        else_exit=names.of_some(stop.else_exit),
        if_late=(),
        by_departure=(),
    )


def _band(band: LeavingBand, names: _Names) -> LeavingBand:
    return replace(band, exit=names.of(band.exit))
