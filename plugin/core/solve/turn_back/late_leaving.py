"""What is wrong with leaving a stop as planned: after its turn back, or too late on a bad day."""

from __future__ import annotations

from datetime import datetime, timedelta

from ...clock import PlanClock, elapsed
from ...results.card import clock_down, clock_up
from ...results.flag import Flag
from ...results.turn_back import StopTurnBack
from ...words import tr

MINUTE_S = 60.0


def flag_of_late(stop: StopTurnBack, clock: PlanClock) -> Flag | None:
    """The warning of a plan that leaves the stop when that is not safe even on the day expected; None where it is."""
    words, brief = _too_late(stop, clock)
    if not words:
        return None
    return Flag(
        kind="over_time",
        severity="warn",
        message=tr("Turn back: {words}").format(words=words),
        brief=brief,
        leg=stop.number + 1,
        name=stop.name,
        points=((stop.lon, stop.lat),),
        start=stop.leave,
        end=stop.leave,
    )


def _before(latest: datetime | None, stop: StopTurnBack, clock: PlanClock) -> bool:
    """Whether the plan leaves more than a minute after the latest moment."""
    return latest is not None and clock.seconds(latest) + MINUTE_S < clock.seconds(stop.leave)


def _too_late(stop: StopTurnBack, clock: PlanClock) -> tuple[str, str]:
    """The gravest of what is wrong with leaving a stop as planned on the day expected, in a sentence and in a few
    words; empty where nothing is."""
    arrive, leave, name = clock_up(stop.arrive), clock_up(stop.leave), stop.name
    if stop.latest_leave is None:
        words = tr("on arriving at {name} at {arrive} no exit is reached in time.").format(name=name, arrive=arrive)
        return words, tr("From {name} no exit is reached in time").format(name=name)
    if elapsed(stop.arrive, stop.bands[0].first) > timedelta(minutes=1):
        until = clock_up(_holding(stop))
        words = tr("leave {name} not before {until}: on arriving at {arrive} no exit is reached in time.")
        brief = tr("Leave {name} not before {until}").format(name=name, until=until)
        return words.format(name=name, until=until, arrive=arrive), brief
    if _before(stop.latest_leave, stop, clock):
        last = clock_down(stop.latest_leave)
        words = tr("the plan leaves {name} at {leave}, after {last}, the last safe minute.")
        brief = tr("The plan leaves {name} at {leave}: too late after {last}")
        return words.format(name=name, leave=leave, last=last), brief.format(name=name, leave=leave, last=last)
    if not _before(stop.latest_planned_exit, stop, clock) and stop.latest_planned_exit is not None:
        return "", ""
    until = (
        tr("never safe")
        if stop.latest_planned_exit is None
        else tr("safe until {last}").format(last=clock_down(stop.latest_planned_exit))
    )
    words = tr("the plan leaves {name} at {leave} for {planned_exit}, which is {until}: take {exit}.")
    brief = tr("From {name} to {planned_exit} is too late: take {exit}")
    about = {"name": name, "planned_exit": stop.planned_exit, "exit": stop.exit}
    return words.format(leave=leave, until=until, **about), brief.format(**about)


def late_on_a_bad_day(stop: StopTurnBack, clock: PlanClock) -> str:
    """What is wrong with leaving a stop as planned on a bad day, empty where nothing is."""
    arrive, leave = clock_up(stop.arrive), clock_up(stop.leave)
    if stop.latest_leave_pessimistic is None:
        return tr(
            "on a bad day (slower, more or less stream, turning early or late) no exit is reached in "
            "time from {name}, not even leaving on arrival at {arrive}."
        ).format(name=stop.name, arrive=arrive)
    if _before(stop.latest_leave_pessimistic, stop, clock):
        bad = clock_down(stop.latest_leave_pessimistic)
        return tr("the plan leaves {name} at {leave}; on a bad day that is too late after {bad}.").format(
            name=stop.name, leave=leave, bad=bad
        )
    return ""


def _holding(stop: StopTurnBack) -> datetime:
    """The beginning of the band that ends with the latest leaving."""
    return next(band.first for band in stop.bands if band.last == stop.latest_leave)
