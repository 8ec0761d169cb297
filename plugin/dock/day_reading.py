"""A day of a route in words: what is read at a moment, and what the picture says to those who cannot see it."""

from __future__ import annotations

from collections import Counter
from datetime import datetime, timedelta

from ..cards.day_words import clock_text, date_text, height_text, state_meaning
from ..core.clock import UTC
from ..core.results.card import card_angle, clock_up, whole_minutes
from ..core.results.day_strip import FEASIBLE
from ..core.results.route_day import DARK, LIGHT, TWILIGHT, DayReading, RouteDay
from ..words import tr


def captions() -> tuple[str, ...]:
    """What is read, in the order of ``readings``."""
    return (tr("Tide"), tr("Stream"), tr("Light"), tr("Leaving then"))


def readings(day: RouteDay, moment: datetime) -> tuple[str, ...]:
    """Tide, stream on the route, light, and what comes of leaving at that moment."""
    reading = day.read(moment)
    return (_tide(reading), _stream(reading, day.strip.place), light_words(reading.light), _leaving(reading))


def _tide(reading: DayReading) -> str:
    if reading.tide_m is None:
        return tr("not known")
    words = {None: "", True: tr(", rising"), False: tr(", falling")}[reading.rises]
    return f"{height_text(reading.tide_m)}{words}"


def tips(day: RouteDay) -> tuple[str, ...]:
    """What the readings are, with their units and what they are counted from."""
    datum = tr("above {}").format(day.strip.datum) if day.strip.datum else tr("above a datum that is not known")
    return (
        tr("Height of tide, metres {}").format(datum),
        _stream_tip(day.strip.place),
        tr("Twilight is from civil dawn to sunrise and from sunset to civil dusk"),
        tr("What comes of leaving at that moment, looked at every five minutes; a window keeps no reserve"),
    )


def _stream_tip(place: str) -> str:
    if place:
        return tr("The stream at {}: rate in knots, and set: degrees true it runs towards").format(place)
    return tr("The weakest and the strongest rate on the route, knots, and its mean set: degrees true it runs towards")


def _stream(reading: DayReading, place: str) -> str:
    if reading.least_kn is None:
        return tr("not known") if place else tr("not known on the whole route")
    least, most = f"{reading.least_kn:.1f}", f"{reading.most_kn:.1f}"
    rate = f"{most} kn" if least == most else tr("{least} to {most} kn").format(least=least, most=most)
    if reading.sets_differ:
        return tr("{rate}, its sets differ along the route").format(rate=rate)
    if reading.set_deg is None:
        return rate
    return tr("{rate} towards {set}° true").format(rate=rate, set=card_angle(reading.set_deg))


def light_words(light: str | None) -> str:
    """Light, twilight or dark; in words where it is not known."""
    return {LIGHT: tr("daylight"), TWILIGHT: tr("twilight"), DARK: tr("dark"), None: tr("not known")}[light]


def _leaving(reading: DayReading) -> str:
    if reading.state is None:
        return tr("not looked at")
    if reading.state == FEASIBLE:
        if reading.home is None:
            return tr("can be swum")
        lasts = reading.home.astimezone(UTC) - reading.moment.astimezone(UTC)
        minutes = whole_minutes(lasts / timedelta(minutes=1))
        return tr("can be swum: {minutes} min, home {at}").format(minutes=minutes, at=clock_up(reading.home))
    return tr("cannot be swum: {}").format(reading.why or state_meaning(reading.state))


def day_sentences(day: RouteDay, departure: datetime | None) -> str:
    """The day in words: the next high and low water, the weak streams, the departures, the light."""
    told = (_waters(day, departure), _weakest(day), _departures(day), _daylight(day))
    return " ".join((f"{date_text(day.strip)}.", *told))


def _waters(day: RouteDay, departure: datetime | None) -> str:
    """The high and the low water that come next after the departure, or after midnight where it is of another day."""
    strip = day.strip
    here = departure is not None and 0.0 <= strip.seconds(departure) < strip.length_s
    after = departure if here else strip.start
    coming = [tide for tide in day.tides if strip.seconds(tide.moment) >= strip.seconds(after)]
    found = [next((tide for tide in coming if tide.kind == kind), None) for kind in ("HW", "LW")]
    if not any(found):
        return tr("High and low water are not known.")
    names = {"HW": tr("high water"), "LW": tr("low water")}
    words = []
    for tide in sorted((one for one in found if one), key=lambda one: strip.seconds(one.moment)):
        height = tr("height not known") if tide.height_m is None else height_text(tide.height_m)
        beyond = tr(" the day after") if tide.moment.astimezone(UTC) >= strip.end.astimezone(UTC) else ""
        words.append(f"{names[tide.kind]} {clock_text(strip, tide.moment)}{beyond}, {height}")
    return tr("Next after {at}: {waters}.").format(at=clock_text(strip, after), waters=tr("; then ").join(words))


def _weakest(day: RouteDay) -> str:
    if not day.weakest:
        known = day.strip.stream_most_kn == day.strip.stream_most_kn
        return tr("The stream has no weakest moment.") if known.all() else tr("The stream is not known all day.")
    found = ", ".join(f"{clock_text(day.strip, one.moment)} ({one.most_kn:.1f} kn)" for one in day.weakest)
    if day.strip.place:
        return tr("Stream at {place} weakest at {times}.").format(place=day.strip.place, times=found)
    return tr("Stream on the route weakest at {}.").format(found)


def _departures(day: RouteDay) -> str:
    strip, feasible = day.strip, day.feasible()
    if not strip.states:
        if strip.place:
            return tr("Without a route no departures are looked at.")
        return tr("No departures were looked at.")
    if not feasible:
        state, _ = Counter(strip.states).most_common(1)[0]
        return tr("No departure of this day can be swum; most often: {}.").format(state_meaning(state))
    first, last = clock_text(strip, feasible[0], "up"), clock_text(strip, feasible[-1], "down")
    if len(strip.windows) > 1:
        words = tr("Departures that can be swum: in {count} windows, the first at {first}, the last at {last}.")
        return words.format(count=len(strip.windows), first=first, last=last)
    return tr("Departures that can be swum: the first at {first}, the last at {last}.").format(first=first, last=last)


def _daylight(day: RouteDay) -> str:
    strip = day.strip
    if not strip.daylight:
        return tr("Daylight is not known.")
    edges = [(one.civil_dawn, one.civil_dusk) for one in strip.daylight]
    dawns, dusks = ([moment for moment in side if moment is not None] for side in zip(*edges))
    words = []
    for moments, name, rounding in ((dawns, tr("civil dawn {}"), "up"), (dusks, tr("civil dusk {}"), "down")):
        here = [moment for moment in moments if 0.0 <= strip.seconds(moment) <= strip.length_s]
        words += [name.format(clock_text(strip, moment, rounding)) for moment in here]
    if words:
        return f"{words[0][:1].upper()}{', '.join(words)[1:]}."
    return tr("Light all day and night.") if day.read(strip.start).light != DARK else tr("Dark all day.")
