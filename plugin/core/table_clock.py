"""Which clock a table's times are read from: as given, or as the table itself says, and never against what it says."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta, tzinfo

from .clock_labels import LabelledPlace
from .errors import BadInputError
from .text_moments import PrintedMoment
from .words import tr


def clock_of_table(
    given: tzinfo | None,
    places: Sequence[LabelledPlace],
    rows: Sequence[tuple[int, PrintedMoment]],
    name: str,
) -> tuple[tzinfo | None, str]:
    """The zone of the rows that do not say their own, and where it comes from; None where nothing says it.

    ``rows`` are row numbers and readings. BadInputError where a label of the table cannot be true in that zone at the
    rows' dates, and where labels are all there is and they decide no one zone, as abbreviations do not.
    """
    if not any(printed.zone is None for _row, printed in rows):
        return given, tr("each row says its offset")
    decided = [(place, place.zone()) for place in places if place.zone() is not None]
    if given is None and places and not decided:
        raise _undecided(places[0], rows, name)
    if given is None and not decided:
        return None, ""
    zone = given if given is not None else decided[0][1]
    for place in places:
        if not place.doubtful:
            _check(place, zone, rows, name, given is not None)
    says = [
        tr("{who} says {label}").format(who=place.words, label=place.text)
        for place in places
        if given is not None or place is not decided[0][0]
    ]
    source = (
        tr("{zone}, as given").format(zone=zone)
        if given is not None
        else tr("{label}, by {who}").format(label=decided[0][0].text, who=decided[0][0].words)
    )
    return zone, "; ".join([source, *says])


def _check(
    place: LabelledPlace, zone: tzinfo, rows: Sequence[tuple[int, PrintedMoment]], name: str, is_given: bool
) -> None:
    hours: set[datetime] = set()
    for row, printed in rows:
        hour = printed.naive.replace(minute=0, second=0, microsecond=0)
        if printed.zone is not None or hour in hours:
            continue
        hours.add(hour)
        if not any(label.holds(printed.naive, zone) for label in place.labels):
            raise _refused(place, zone, row, printed.naive, name, is_given)


def _refused(place: LabelledPlace, zone: tzinfo, row: int, naive: datetime, name: str, is_given: bool) -> BadInputError:
    decided = place.zone()
    offset = place.labels[0].steady_offset(naive, zone) if decided is None else decided.utcoffset(naive)
    possible = place.labels[0].offsets
    if len(place.labels) > 1 and decided is None:
        remedy = tr("Give ZONE as the zone or the fixed offset of that clock, such as -05:00")
    elif offset is not None:
        such = tr("the fixed offset {offset}").format(offset=_hours(offset)) if offset else "UTC"
        remedy = tr("If the table's clock stays at {label}, give ZONE as {such}").format(label=place.text, such=such)
    else:
        such = (
            tr("{offset}, where {label} means that").format(offset=_hours(possible[0]), label=place.text)
            if possible
            else "-05:00"
        )
        remedy = tr("Give ZONE as the fixed offset of that clock, such as {such}").format(such=such)
    then = naive.replace(tzinfo=zone)
    return BadInputError(
        layer=name,
        row=row,
        field="ZONE" if is_given else "time",
        value=str(zone),
        allowed=tr("{who} says {label}, and at {time:%Y-%m-%d %H:%M} {zone} has {clock}").format(
            who=_capital(place.words), label=place.text, time=naive, zone=zone, clock=_clock_name(then)
        ),
        remedy=tr("{remedy}; if that label is wrong, correct it").format(remedy=remedy),
    )


def _undecided(place: LabelledPlace, rows: Sequence[tuple[int, PrintedMoment]], name: str) -> BadInputError:
    row, printed = next((row, printed) for row, printed in rows if printed.zone is None)
    possible = place.labels[0].offsets
    one = len(place.labels) == 1 and possible
    such = (
        tr("{offset}, where {label} means that").format(offset=_hours(possible[0]), label=place.text)
        if one
        else "-05:00"
    )
    return BadInputError(
        layer=name,
        row=row,
        field="time",
        value=f"{printed.naive:%Y-%m-%d %H:%M}",
        allowed=tr("{who} says {label}, which names no one zone for certain").format(
            who=_capital(place.words), label=place.text
        ),
        remedy=tr(
            "Give ZONE: an IANA name such as Europe/Lisbon where the clock changes in summer, "
            "else its fixed offset, such as {such}"
        ).format(such=such),
    )


def _clock_name(moment: datetime) -> str:
    """A clock as zoneinfo calls it, with its offset."""
    called, offset = moment.tzname() or "", _hours(moment.utcoffset())
    return f"{called} ({offset})" if called.isalpha() else offset


def _hours(offset: timedelta) -> str:
    minutes = round(abs(offset).total_seconds() / 60.0)
    return f"{'-' if offset < timedelta(0) else '+'}{minutes // 60:02}:{minutes % 60:02}"


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]
