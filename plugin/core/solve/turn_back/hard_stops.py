"""The moments by which a swimmer must be ashore, and which ways home keep them."""

from __future__ import annotations

from datetime import datetime, time, timedelta

import numpy as np

from ...clock import later
from ...daylight import daylight_on
from ...results.turn_back import HardStop
from ...words import tr
from ..request import SwimRequest


def hard_stops_of(request: SwimRequest, arrive_s: float) -> tuple[HardStop, ...]:
    """Dusk, the swimmer's hours, the plan's ``back_by`` and the alarm. ``arrive_s``: the planned return, NaN for none.

    The alarm goes out a fixed time after the planned return: it is kept without the reserve, which would otherwise
    forbid the plan itself. Common practice, no source.
    """
    zone = request.clock.zone
    found = [
        _dusk(request),
        HardStop(
            name="hours",
            words=tr("{max_hours:g} h in the water").format(max_hours=request.swimmer.max_hours),
            moment=later(request.depart.astimezone(zone), timedelta(hours=request.swimmer.max_hours)),
            with_reserve=True,
        ),
        _back_by(request),
    ]
    alarm = request.clock.moment(arrive_s + 60.0 * request.settings.alarm_after_min)
    if alarm is not None:
        found.append(HardStop(name="alarm", words=tr("the alarm"), moment=alarm, with_reserve=False))
    return tuple(stop for stop in found if stop is not None)


def _dusk(request: SwimRequest) -> HardStop | None:
    entry, before_min = request.stops[0], request.settings.ashore_before_sunset_min
    light = daylight_on(entry.lon, entry.lat, request.depart, request.clock)
    if light.always_light:
        return None
    ends = [] if light.sunset is None else [later(light.sunset, timedelta(minutes=-before_min))]
    ends += [] if light.civil_dusk is None else [light.civil_dusk]
    # Where neither comes the sun does not show that day: it is dark from the beginning.
    moment = min(ends, default=request.depart.astimezone(request.clock.zone), key=request.clock.seconds)
    return HardStop(name="dusk", words="dusk", moment=moment, with_reserve=True)


def _back_by(request: SwimRequest) -> HardStop | None:
    """The first such clock time after the departure that comes within the swimmer's hours, else that of its day: past.

    A clock time that daylight saving skips, or that comes twice, is the earlier of what it may mean.
    """
    text = request.settings.back_by.strip()
    if not text:
        return None
    clock = request.clock
    hours, minutes = (int(part) for part in text.split(":"))
    depart = request.depart.astimezone(clock.zone)
    moments = []
    for days in (0, 1):
        naive = datetime.combine(depart.date() + timedelta(days=days), time(hours, minutes), tzinfo=clock.zone)
        moments.append(min((naive.replace(fold=fold) for fold in (0, 1)), key=clock.seconds))
    depart_s, until_s = clock.seconds(depart), clock.seconds(depart) + 3600.0 * request.swimmer.max_hours
    chosen = next((moment for moment in moments if depart_s < clock.seconds(moment) <= until_s), None)
    if chosen is None:
        chosen = next((moment for moment in moments if clock.seconds(moment) > until_s), None)
        chosen = moments[0] if clock.seconds(moments[0]) <= depart_s else chosen
    return HardStop(name="back_by", words=tr("back by {text}").format(text=text), moment=chosen, with_reserve=True)


def spare_s(request: SwimRequest, stops: tuple[HardStop, ...], leave_s: np.ndarray, arrive_s: np.ndarray) -> np.ndarray:
    """What each hard stop has to spare (n_stops, ...) in seconds, its reserve kept: t + k T + fixed before the stop.

    NaN where the way home cannot be swum. Source of the rule: common practice, no source.
    """
    home_s, fixed_s = arrive_s - leave_s, 60.0 * request.settings.reserve_min
    with_reserve = leave_s + request.settings.reserve_factor * home_s + fixed_s
    ends = [with_reserve if stop.with_reserve else arrive_s for stop in stops]
    return np.stack([request.clock.seconds(stop.moment) - end for stop, end in zip(stops, ends)])
