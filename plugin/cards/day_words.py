"""What a day's picture says: names of the limits, times of the plan's clock, the legend and the notes."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date, datetime

from qgis.PyQt.QtCore import QLocale

from ..core.clock import PlanClock
from ..core.daylight import Daylight
from ..core.results.card import clock_down, clock_nearest, clock_up, day_text, offset_text, whole_minutes
from ..core.results.day_strip import ENDS_DARK, FEASIBLE, STATES, DayStrip
from ..core.results.windows import DepartureWindow
from ..core.sun_days import Spans, night_spans, sun_down_spans
from ..words import tr
from .day_hatch import NIGHT, TWILIGHT


def state_word(state: str) -> str:
    """The one word that stands in a stretch of departures."""
    return {
        FEASIBLE: tr("feasible"),
        "stream": tr("stream"),
        "dark": tr("dark"),
        ENDS_DARK: tr("too late"),
        "hours": tr("hours"),
        "range": tr("range"),
        "land": tr("land"),
        "closed": tr("closed"),
        "ferry": tr("ferry"),
        "depth": tr("depth"),
        "unknown": tr("not known"),
    }[state]


def state_meaning(hatch: str) -> str:
    """What a hatch stands for, in the legend."""
    return {
        FEASIBLE: tr("feasible departures"),
        "stream": tr("stream too strong"),
        NIGHT: tr("dark"),
        ENDS_DARK: tr("home only in the dark"),
        TWILIGHT: tr("twilight"),
        "hours": tr("longer than your hours"),
        "range": tr("beyond your range"),
        "land": tr("land in the way"),
        "closed": tr("closed water"),
        "ferry": tr("ferry due"),
        "depth": tr("depth at a mark"),
        "unknown": tr("stream not known"),
    }[hatch]


def not_known() -> str:
    """What stands in a gap."""
    return tr("not known")


def state_hatches(*strips: DayStrip) -> tuple[str, ...]:
    """The states of the departures of some days, in their order."""
    used = {state for strip in strips for state in strip.states}
    return tuple(state for state in STATES if state in used)


def legend_hatches(strip: DayStrip) -> tuple[str, ...]:
    """What a day's lanes are hatched with: its states, then night and twilight where they are not among them."""
    found = list(state_hatches(strip))
    night_s, dim_s = (_seconds_within(strip, spans) for spans in (night_spans, sun_down_spans))
    found += [NIGHT] if night_s > 0.0 and NIGHT not in found else []
    return (*found, TWILIGHT) if dim_s > night_s else tuple(found)


def _seconds_within(strip: DayStrip, spans: Callable[[Sequence[Daylight], PlanClock], Spans]) -> float:
    """How much of the day is night, or has the sun down, which holds the nights."""
    found = spans(strip.daylight, strip.clock)
    return sum(max(min(high, strip.length_s) - max(low, 0.0), 0.0) for low, high in found)


def lane_name(lane: str, strip: DayStrip) -> tuple[str, ...]:
    """A lane's name with its unit, as lines of its margin."""
    above = tr("above {datum}").format(datum=strip.datum) if strip.datum else tr("datum not known")
    return {
        "departures": (tr("Departures"),),
        "stream": (tr("Stream, kn"), tr("at {}").format(strip.place) if strip.place else tr("on the route")),
        "tide": (tr("Tide, m"), above),
        "light": (tr("Daylight"),),
    }[lane]


def unit_word(lane: str) -> str:
    """The unit alone, where there is no room for a name."""
    return {"stream": "kn", "tide": "m"}[lane]


def date_text(strip: DayStrip) -> str:
    """``Sat 2027-06-05``."""
    return named_day(strip.start.astimezone(strip.clock.zone))


def named_day(day: date) -> str:
    """The same for any day."""
    return f"{QLocale().dayName(day.isoweekday(), QLocale.FormatType.ShortFormat)} {day_text(day)}"


def clock_text(strip: DayStrip, moment: datetime, rounding: str = "nearest") -> str:
    """``HH:MM`` by the day's clock, rounded up, down or to the nearest minute; with its offset where it comes twice."""
    return certain_clock(moment.astimezone(strip.clock.zone), rounding)


def certain_clock(shown: datetime, rounding: str = "nearest") -> str:
    """The same for a moment in the zone that it is shown in."""
    text = {"up": clock_up, "down": clock_down, "nearest": clock_nearest}[rounding](shown)
    twice = shown.replace(fold=0).utcoffset() != shown.replace(fold=1).utcoffset()
    return f"{text} {offset_text(shown)}" if twice else text


def zone_text(strip: DayStrip, changes: tuple[datetime, ...]) -> str:
    """``Europe/Lisbon, UTC+1``; on a day on which clocks change, the offset after it as well."""
    first = strip.start.astimezone(strip.clock.zone)
    then = "".join(f", {tr('then {offset}').format(offset=offset_text(moment))}" for moment in changes)
    return f"{strip.zone_name}, {offset_text(first)}{then}" if strip.zone_name != "UTC" else "UTC"


def change_text(before: datetime, after: datetime) -> str:
    """What clocks do between two moments next to each other."""
    minutes = round((after.utcoffset() - before.utcoffset()).total_seconds() / 60.0)
    words = tr("clocks go on {minutes} min") if minutes > 0 else tr("clocks go back {minutes} min")
    return words.format(minutes=abs(minutes))


def height_text(height_m: float) -> str:
    """``5.2 m``, and never minus nothing."""
    return f"{round(height_m, 1) + 0.0:.1f} m"


def window_texts(strip: DayStrip, window: DepartureWindow) -> tuple[str, ...]:
    """A window's first, last and best departure, the fullest text first; an end on another day is said as such."""
    before, beyond = strip.seconds(window.first) < 0.0, strip.seconds(window.last) > strip.length_s
    first, last = clock_text(strip, window.first, "up"), clock_text(strip, window.last, "down")
    if before and beyond:
        return (tr("any time"),)
    if before:
        span = tr("until {last}").format(last=last)
    elif beyond:
        span = tr("from {first}").format(first=first)
    else:
        span = first if first == last else f"{first}\u2013{last}"
    if 0.0 <= strip.seconds(window.best) <= strip.length_s:
        best = clock_text(strip, window.best)
        full = tr("{span}, best {best}").format(span=span, best=best)
        return (span,) if span == best else (full, span)
    return (span,)


def swim_texts(strip: DayStrip, depart: datetime, home: datetime) -> tuple[str, ...]:
    """How long a swim lasts and when it is home."""
    minutes = whole_minutes((strip.seconds(home) - strip.seconds(depart)) / 60.0)
    at = clock_text(strip, home, "up")
    return (tr("{minutes} min, home {at}").format(minutes=minutes, at=at), tr("home {at}").format(at=at), at)


def notes(strip: DayStrip) -> tuple[str, ...]:
    """A sentence for each window: what ends it on either side; and what holds of every such picture."""
    # What there is no room for goes from the end, the caution kept: so the doubt stands before the windows.
    doubt = any(window.extrapolated for window in strip.windows)
    lines = [tr("The stream lies partly outside its tables: less sure.")] if doubt else []
    lines += [_window_note(strip, window) for window in strip.windows]
    if strip.states and FEASIBLE not in strip.states:
        lines.append(tr("No departure of this day is feasible."))
    return (*lines, caution())


def dashed() -> str:
    """What days at a glance, with no room to say so themselves, show of stream and swimmer."""
    return tr("Stream in kn; dashed: what you make.")


def caution() -> str:
    """What holds of every such picture."""
    return tr("Predicted, not observed. Feasible is not safe. Not for the navigation of vessels.")


def _window_note(strip: DayStrip, window: DepartureWindow) -> str:
    words = tr("{span}. Opens: {opens}. Closes: {closes}.")
    return words.format(
        span=window_texts(strip, window)[-1],
        opens=window.opens.words.rstrip(". "),
        closes=window.closes.words.rstrip(". "),
    )
