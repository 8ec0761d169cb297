"""Harmonic constants as text: a name, an amplitude and a phase in each row."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timezone, tzinfo

from ..clock_labels import LabelledPlace, is_steady, labels_in_heading, labels_in_line
from ..errors import BadInputError
from ..text_moments import dates_in, is_clock, moment_parts, offset_zone
from ..text_table import TextRow, TextTable, is_missing
from ..words import marked, tr
from .constituents import Basis, constituent_names, standard_name
from .tide_columns import SAMPLE, number_in, stated_unit, unit_of
from .tide_reading import CONSTANTS, METRES_PER, ConstantRow, Skipped, TideReading, TidesAsked

MEANS = {"Z0", "A0", "MSL", "MEAN"}
LARGEST_AMPLITUDE_M = 25.0
SPEED_NEAR_DEG_H = 0.01
ABOVE, NO_AMPLITUDE = marked("above the table"), marked("no amplitude or phase")
NOT_KNOWN_AND_ZERO = marked("not known, and of amplitude 0")
_AMPLITUDE, _PHASE = re.compile(r"ampl|^h$|^a$", re.I), re.compile(r"phase|epoch|lag|kappa|^g$", re.I)
ANY_DAY = datetime(2000, 1, 1, tzinfo=timezone.utc).replace(tzinfo=None)


@dataclass(frozen=True, kw_only=True)
class _Columns:
    """Columns, from 0, and the headings of amplitude and phase."""

    name: int
    amplitude: int
    phase: int
    amplitude_heading: str
    phase_heading: str


def looks_like_constants(tables: Sequence[TextTable]) -> bool:
    """Whether most rows with figures name a constituent and have two numbers, and none a time."""
    return any(_name_column(table) is not None for table in tables)


def read_constants(tables: Sequence[TextTable], asked: TidesAsked) -> TideReading:
    """Constants of a table; a row named Z0 (or MSL) is the mean level.

    BadInputError naming the row for an unknown constituent that is not zero, for one given twice, for a number out of
    range, where neither heading nor ``asked`` says the unit or the clock of the phases, and where columns are unclear.
    """
    table = next((table for table in tables if _name_column(table) is not None), None)
    if table is None:
        raise BadInputError(
            layer=asked.name,
            allowed=tr("No column of it names constituents such as M2 beside two numbers"),
            remedy=tr("Write rows such as: M2, 1.234, 210.5"),
        )
    before, rows = _split(table)
    columns = _columns(before, rows, _name_column(table), asked)
    hours_east, clock_words = _clock(columns, table, before, asked)
    skipped = [Skipped(row=row.number, reason=ABOVE) for row in before if row.number]
    constants: list[ConstantRow] = []
    mean_level_m = None
    for row in rows:
        name = row.cell(columns.name)
        amplitude_m = _amplitude_m(row, columns, asked)
        if name.upper() in MEANS:
            mean_level_m = amplitude_m
            continue
        phase_deg = _phase_deg(row, columns, asked)
        if amplitude_m is None or phase_deg is None:
            skipped.append(Skipped(row=row.number, reason=NO_AMPLITUDE))
        elif not standard_name(name) and amplitude_m == 0.0:
            skipped.append(Skipped(row=row.number, reason=NOT_KNOWN_AND_ZERO))
        else:
            constants.append(_constant(row, name, amplitude_m, phase_deg, hours_east, constants, asked))
    if not constants:
        raise BadInputError(
            layer=asked.name, allowed=tr("None of its rows is whole"), remedy=tr("Fill in amplitudes and phases")
        )
    return TideReading(
        form=CONSTANTS,
        constants=tuple(constants),
        mean_level_m=mean_level_m,
        skipped=tuple(skipped),
        taken={
            "separator": table.separator,
            "columns": {
                "constituent": columns.name + 1,
                "amplitude": columns.amplitude + 1,
                "phase": columns.phase + 1,
            },
            "phases": clock_words,
            "units": unit_of(columns.amplitude_heading) or asked.units or tr("as written"),
        },
    )


def _named(row: TextRow) -> list[int]:
    return [place for place, cell in enumerate(row.cells) if standard_name(cell) or cell.upper() in MEANS]


def _name_column(table: TextTable) -> int | None:
    """The column that names constituents in most rows with figures."""
    top = table.rows[:SAMPLE]
    rows = [row for row in top if sum(number_in(cell) is not None for cell in row.cells) >= 2]
    if not rows or any(is_clock(cell) or moment_parts(cell) or _is_day(cell) for row in rows for cell in row.cells):
        return None
    for place in range(max(len(row.cells) for row in rows)):
        if sum(place in _named(row) for row in rows) * 2 > len(rows):
            return place
    return None


def _is_day(cell: str) -> bool:
    return bool(dates_in(cell)) and number_in(cell) is None


def _split(table: TextTable) -> tuple[list[TextRow], list[TextRow]]:
    """The rows above the first one that names a constituent, and the rest."""
    place = _name_column(table)
    first = next(n for n, row in enumerate(table.rows) if place in _named(row))
    return list(table.rows[:first]), list(table.rows[first:])


def _columns(before: list[TextRow], rows: list[TextRow], name: int, asked: TidesAsked) -> _Columns:
    width = max(len(row.cells) for row in rows)
    headed = next((row for row in reversed(before) if len(row.cells) >= name + 3), None)
    headings = [headed.cell(place) if headed else "" for place in range(width)]
    by_heading = [
        [place for place in range(width) if place != name and pattern.search(headings[place])]
        for pattern in (_AMPLITUDE, _PHASE)
    ]
    if [len(found) for found in by_heading] == [1, 1]:
        amplitude, phase = by_heading[0][0], by_heading[1][0]
    else:
        amplitude, phase = _by_cells(rows, name, width, asked)
    return _Columns(
        name=name,
        amplitude=amplitude,
        phase=phase,
        amplitude_heading=headings[amplitude],
        phase_heading=headings[phase],
    )


def _by_cells(rows: list[TextRow], name: int, width: int, asked: TidesAsked) -> tuple[int, int]:
    """Amplitude and phase without headings: the phases are the one of two columns that goes beyond any amplitude."""
    numbers = {}
    for place in range(name + 1, width):
        cells = [(row, number_in(row.cell(place))) for row in rows if row.cell(place)]
        if cells and sum(found is not None for _row, found in cells) * 2 > len(cells) and not _is_speed(cells, name):
            numbers[place] = max(abs(found[0]) for _row, found in cells if found is not None)
    wide = [place for place, largest in numbers.items() if largest > LARGEST_AMPLITUDE_M]
    narrow = [place for place in numbers if place not in wide]
    if len(wide) == len(narrow) == 1:
        return narrow[0], wide[0]
    raise BadInputError(
        layer=asked.name,
        row=rows[0].number,
        field="columns",
        value=", ".join(rows[0].cells),
        allowed=tr("It is not plain which number is the amplitude and which the phase"),
        remedy=tr("Put headings above the columns: constituent, amplitude, phase"),
    )


def _is_speed(cells: list[tuple[TextRow, tuple[float, str] | None]], name: int) -> bool:
    """Whether a column holds the speeds of the constituents, as printed tables of constants add them."""
    known = [
        (standard_name(row.cell(name)), found[0]) for row, found in cells if found and standard_name(row.cell(name))
    ]
    speeds = Basis(names=tuple(constituent for constituent, _speed in known)).speeds_deg_h() if known else []
    return bool(known) and all(abs(speed - value) < SPEED_NEAR_DEG_H for speed, (_name, value) in zip(speeds, known))


def _clock(columns: _Columns, table: TextTable, before: Sequence[TextRow], asked: TidesAsked) -> tuple[float, str]:
    """Hours that the clock of the phases is ahead of UTC, and where that comes from."""
    given, places = _given_zone(asked), _clocks(columns, table, before)
    decided = next((place for place in places if place.zone() is not None and is_steady(place.zone())), None)
    if given is None and not places and re.search("greenwich", columns.phase_heading, re.I):
        return 0.0, tr("Greenwich, by a heading")
    zone = given or (decided.zone() if decided else None)
    if zone is None:
        raise BadInputError(
            layer=asked.name,
            field="ZONE",
            allowed=tr(
                "Phases belong to Greenwich and UTC or to a local clock of fixed offset, and {who} says {label}"
            ).format(who=places[0].words, label=places[0].text)
            if places
            else tr(
                "Phases belong to Greenwich and UTC or to a local clock of fixed offset, and nothing "
                "says to which of them"
            ),
            remedy=tr("Give ZONE: UTC, or the fixed offset of the clock, such as UTC-8"),
        )
    for place in places:
        if not any(label.holds(ANY_DAY, zone) for label in place.labels):
            who = place.words[:1].upper() + place.words[1:]
            raise BadInputError(
                layer=asked.name,
                field="ZONE",
                value=asked.zone.strip() or str(zone),
                allowed=tr("{who} says {label}, and {zone} is another clock").format(
                    who=who, label=place.text, zone=zone
                ),
                remedy=tr("Correct ZONE or that label"),
            )
    words = (
        tr("of {zone}, as given").format(zone=asked.zone.strip())
        if given
        else tr("of {label}, by {who}").format(label=decided.text, who=decided.words)
    )
    return zone.utcoffset(ANY_DAY).total_seconds() / 3600.0, words


def _given_zone(asked: TidesAsked) -> tzinfo | None:
    zone = offset_zone(asked.zone) if asked.zone.strip() else None
    if asked.zone.strip() and zone is None:
        raise BadInputError(
            layer=asked.name,
            field="ZONE",
            value=asked.zone,
            allowed=tr("Phases belong to UTC (Greenwich) or to a fixed offset"),
            remedy=tr("Write UTC or for example UTC-8"),
        )
    return zone


def _clocks(columns: _Columns, table: TextTable, before: Sequence[TextRow]) -> list[LabelledPlace]:
    """What the heading of the phases, and titles and notes, say of their clock."""
    lines = [row for row in before if row.number and columns.phase_heading not in row.cells]
    found = [labels_in_heading(columns.phase_heading), *(labels_in_line(None, note) for note in table.notes)]
    found += [labels_in_line(row.number, ", ".join(filter(None, row.cells))) for row in lines]
    return [place for place in found if place is not None]


def _amplitude_m(row: TextRow, columns: _Columns, asked: TidesAsked) -> float | None:
    cell = row.cell(columns.amplitude)
    if is_missing(cell):
        return None
    number = number_in(cell)
    if number is None:
        raise _refused(row, "amplitude", cell, asked, tr("That is no number"), tr("Write it like 1.234"))
    try:
        unit = stated_unit(number[1], columns.amplitude_heading, asked.units)
    except ValueError as error:
        raise _refused(
            row, "amplitude", cell, asked, str(error), tr("Correct UNITS, the heading or the row")
        ) from error
    if not unit:
        raise _refused(row, "amplitude", cell, asked, tr("Nothing says metres or feet"), tr("Give UNITS: m or ft"))
    amplitude_m = number[0] * METRES_PER[unit]
    lowest_m = -LARGEST_AMPLITUDE_M if row.cell(columns.name).upper() in MEANS else 0.0
    if not lowest_m <= amplitude_m <= LARGEST_AMPLITUDE_M:
        raise _refused(
            row,
            "amplitude",
            cell,
            asked,
            tr("It is from {lowest_m} to {largest} m").format(lowest_m=lowest_m, largest=LARGEST_AMPLITUDE_M),
            tr("Correct it"),
        )
    return amplitude_m


def _phase_deg(row: TextRow, columns: _Columns, asked: TidesAsked) -> float | None:
    cell = row.cell(columns.phase)
    if is_missing(cell):
        return None
    number = number_in(cell.rstrip("°"))
    if number is None or number[1] or not -360.0 <= number[0] <= 360.0:
        raise _refused(row, "phase", cell, asked, tr("A phase is in degrees, from -360 to 360"), tr("Correct it"))
    return number[0]


def _constant(
    row: TextRow,
    name: str,
    amplitude_m: float,
    phase_deg: float,
    hours_east: float,
    found: Sequence[ConstantRow],
    asked: TidesAsked,
) -> ConstantRow:
    standard = standard_name(name)
    if not standard:
        known = ", ".join(constituent_names()[:30])
        raise _refused(
            row,
            "constituent",
            name,
            asked,
            tr("Known are {known} and more").format(known=known),
            tr("Correct it or leave the row out"),
        )
    twin = next((one for one in found if one.constituent == standard), None)
    if twin is not None:
        raise _refused(
            row,
            "constituent",
            name,
            asked,
            tr("Row {row} gives {standard} too").format(row=twin.row, standard=standard),
            tr("Delete one of them"),
        )
    # At a clock so many hours ahead the same moment has an argument larger by speed times hours.
    speed_deg_h = float(Basis(names=(standard,)).speeds_deg_h()[0])
    greenwich_deg = (phase_deg - speed_deg_h * hours_east) % 360.0
    return ConstantRow(row=row.number, constituent=standard, amplitude_m=amplitude_m, phase_deg=greenwich_deg)


def _refused(row: TextRow, field: str, value: object, asked: TidesAsked, allowed: str, remedy: str) -> BadInputError:
    return BadInputError(layer=asked.name, row=row.number, field=field, value=value, allowed=allowed, remedy=remedy)
