"""What the section on transits lists: the suggested pairs with their two lines, then what else is picked."""

from __future__ import annotations

from dataclasses import dataclass

from ..core.results.transits import Transit, bearing_text
from ..layers_in.transits_at_mark import TransitsAtMark
from ..layers_out.transits_layer import transit_sentence
from ..words import tr
from .rows import Row


@dataclass(frozen=True, kw_only=True)
class TransitRow(Row):
    """A line with its ``transit``, ticked where it is picked; the head of a pair has none."""

    transit: Transit | None = None
    is_picked: bool = False
    about: str = ""


def names_of(transit: Transit) -> tuple[str, str, str]:
    """What a row of the plan's transits tells it by."""
    return transit.mark, transit.front, transit.rear


def transit_headers() -> list[tuple[str, str]]:
    """Title and tooltip of the columns."""
    return [
        (tr("Front / rear"), tr("Two landmarks in line, the nearer one first; ticked ones go on the card")),
        (tr("Bearing"), tr("Bearing of the line from the mark over the front, degrees magnetic, as on the card")),
        (tr("Crosses"), tr("Angle with the other line of its pair; the nearer to 90 degrees, the sharper the fix")),
    ]


def transit_rows(seen: TransitsAtMark) -> list[TransitRow]:
    """The pairs, best first, each below a head of its own; single lines where there is no pair; then other picks."""
    picked = {names_of(one) for one in seen.picked}
    rows, listed = [], set()
    for number, fix in enumerate(seen.found.fixes, start=1):
        words = tr("Pair {}: crosses at {:.0f}°, puts you within about {:.0f} m")
        both = (fix.first, fix.second)
        rows.append(_head(words.format(number, fix.crossing_deg, fix.error_m), both))
        rows += [_line(one, picked) for one in both]
        listed |= {names_of(one) for one in both}
    singles = [one for one in seen.found.singles if names_of(one) not in listed]
    if singles:
        rows.append(_head(tr("Single lines"), singles))
        rows += [_line(one, picked) for one in singles]
        listed |= {names_of(one) for one in singles}
    others = [one for one in seen.picked if names_of(one) not in listed]
    if others:
        rows.append(_head(tr("Picked besides"), others))
        rows += [_line(one, picked) for one in others]
    return rows


def _head(words: str, lines: tuple[Transit, ...] | list[Transit]) -> TransitRow:
    spots = tuple(dict.fromkeys(place for one in lines for place in one.lonlat[1:]))
    points = tuple(place for one in lines for place in (*one.lonlat, one.lonlat[0]))
    return TransitRow(cells=(words,), points=points, spots=spots)


def _line(one: Transit, picked: set[tuple[str, str, str]]) -> TransitRow:
    crosses = "" if one.crossing_deg is None else f"{one.crossing_deg:.0f}°"
    return TransitRow(
        cells=(f"{one.front} / {one.rear}", bearing_text(one), crosses),
        points=one.lonlat,
        spots=one.lonlat[1:],
        transit=one,
        is_picked=names_of(one) in picked,
        about=transit_sentence(one),
    )


def picked_words(seen: TransitsAtMark, stops: list[str]) -> str:
    """What the card will have of this mark."""
    mark, lines = seen.found.mark, seen.picked
    if not lines:
        return tr("Nothing is picked for {}: tick both lines of a pair.").format(mark)
    crossing = max((one.crossing_deg for one in lines if one.crossing_deg is not None), default=None)
    if crossing is None:
        words = tr("One line alone does not fix {}: tick one that crosses it, too.").format(mark)
    else:
        words = tr("Picked for {}: {} lines, crossing at {:.0f}°.").format(mark, len(lines), crossing)
    if mark not in stops:
        return f"{words} {tr('It is no stop of this route, so its card leaves them out.')}"
    return words
