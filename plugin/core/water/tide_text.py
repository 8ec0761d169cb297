"""Tables of tides as people have them, from text: high and low waters, even series, constants, secondary ports."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import tzinfo

import numpy as np

from ..clock_rows import RowMoments, moments_of_rows, moments_of_series
from ..errors import BadInputError
from ..table_clock import clock_of_table
from ..text_moments import PrintedMoment, zone_in
from ..text_table import tables_of
from ..words import marked, spoken, tr
from .height_curve import LONGEST_STEP_RATIO
from .tide import LONGEST_GAP_S
from .tide_columns import Layout, layout_of, units_of_titles
from .tide_constants_text import looks_like_constants, read_constants
from .tide_ports_text import looks_like_secondary, read_secondary
from .tide_reading import (
    CONSTANTS,
    EVENTS,
    SECONDARY,
    SERIES,
    HeightRow,
    Skipped,
    TideReading,
    TidesAsked,
    row_runs,
)
from .tide_rows import NO_HEIGHT, Reading, printed_rows, readings_of
from .tide_series import unlikely_rises

LONGEST_SERIES_STEP_S = 2.0 * 3600.0
SHORTEST_EVENT_STEP_S = 2.5 * 3600.0
EVEN_SHARE = 0.8
LONGEST_TWICE_DAILY_S = 9.0 * 3600.0  # between high and low water where there are two of each a day
# A rise smaller than this, or than this share of the usual one, does not tell high from low; no source.
LEAST_CLEAR_RISE_M, LEAST_CLEAR_SHARE = 0.05, 0.1
GIVEN_TWICE = marked("given twice")
DOUBTFUL_HOUR = marked("in the hour that comes twice that night, and it is not said which")


def read_tides(text: str, asked: TidesAsked) -> TideReading:
    """What a text says of tides.

    SwimPlanError, as a rule BadInputError naming the row, where a row cannot be read, where the text leaves a choice
    that ``asked`` does not make, and where there is nothing to read. Nothing ambiguous is guessed.
    """
    tables = tables_of(text, asked.name)
    if asked.form == SECONDARY or (not asked.form and looks_like_secondary(tables)):
        return read_secondary(tables, asked)
    if asked.form == CONSTANTS or (not asked.form and looks_like_constants(tables)):
        return read_constants(tables, asked)
    return _read_heights(layout_of(tables, asked.columns, asked.name), asked)


def _read_heights(layout: Layout, asked: TidesAsked) -> TideReading:
    _refuse_titles(layout, asked)
    readings, skipped, carried = readings_of(layout, asked)
    if not readings:
        raise BadInputError(
            layer=asked.name,
            allowed=tr("None of its rows has a height"),
            remedy=tr("Check which column holds the heights"),
        )
    printed, order = printed_rows(readings, asked)
    form = asked.form or _form_of(readings, printed, asked)
    zone, zone_words = _zone_of(layout, printed, asked)
    taken = {
        "separator": layout.table.separator,
        "columns": [
            {
                "column": one.number,
                "heading": one.heading,
                "taken_for": one.role,
                "unit": one.unit,
                "why": spoken(one.why),
            }
            for one in layout.columns
        ],
        "zone": zone_words,
        "date_order": order,
        "units": asked.units or tr("as written"),
        "dates": carried,
    }
    read = TideReading(form=form, taken=taken, zone=zone)
    if form == SERIES:
        return _series(read, readings, moments_of_series(printed, zone, asked.name), skipped, asked)
    return _events(read, readings, moments_of_rows(printed, zone, asked.name), skipped, asked)


def _refuse_titles(layout: Layout, asked: TidesAsked) -> None:
    """A title that says feet is not passed over where UNITS says metres."""
    for row, unit in units_of_titles(layout):
        if asked.units and unit != asked.units:
            raise BadInputError(
                layer=asked.name,
                row=row.number,
                value=" ".join(row.cells)[:60],
                allowed=tr("It says {unit}, and UNITS says {units}").format(unit=unit, units=asked.units),
                remedy=tr("Correct UNITS, or delete that line if it does not speak of the heights"),
            )


def _form_of(readings: Sequence[Reading], printed: Sequence[tuple[int, PrintedMoment]], asked: TidesAsked) -> str:
    """Whether rows are high and low waters or an even series; BadInputError where neither is plain."""
    if any(one.is_high is not None for one in readings):
        return EVENTS
    clocks = [one.naive for _row, one in printed]
    steps = np.array([(after - before).total_seconds() for before, after in zip(clocks, clocks[1:])])
    usual = float(np.median(steps)) if len(steps) else 0.0
    even = np.mean(np.abs(steps - usual) < 1.0) if len(steps) else 0.0
    if 0.0 < usual <= LONGEST_SERIES_STEP_S and even >= EVEN_SHARE:
        return SERIES
    if SHORTEST_EVENT_STEP_S <= usual <= LONGEST_GAP_S:
        return EVENTS
    raise BadInputError(
        layer=asked.name,
        row=readings[0].row,
        field="time",
        value=tr("a usual step of {minutes:.0f} min").format(minutes=usual / 60.0),
        allowed=tr("High and low waters are hours apart, an even series has steps of up to two hours"),
        remedy=tr("Say in FORM which it is: events or series"),
    )


def _zone_of(layout: Layout, printed: Sequence[tuple[int, PrintedMoment]], asked: TidesAsked) -> tuple[tzinfo, str]:
    """The zone of the clock readings and where it comes from; BadInputError where nothing says it, or two things do."""
    given = zone_in(asked.zone) if asked.zone.strip() else None
    zone, words = clock_of_table(given, layout.clocks, printed, asked.name)
    if zone is not None:
        return zone, words
    row, first = next(((row, one) for row, one in printed if one.zone is None), printed[0])
    if first.zone is not None:
        return first.zone, words
    raise BadInputError(
        layer=asked.name,
        row=row,
        field="time",
        value=f"{first.naive:%Y-%m-%d %H:%M}",
        allowed=tr("Nothing in the table says which clock its times are read from"),
        remedy=tr("Give ZONE: an IANA name such as Europe/Lisbon where its clock changes in summer, else UTC or UTC-8"),
    )


def _rows(readings: Sequence[Reading], moments: RowMoments) -> list[HeightRow]:
    rows = [
        HeightRow(row=one.row, time=moment, height_m=one.height_m, is_high=one.is_high)
        for one, moment in zip(readings, moments.moments)
        if moment is not None
    ]
    return sorted(rows, key=lambda row: row.time)


def _without_twins(rows: Sequence[HeightRow], asked: TidesAsked) -> tuple[list[HeightRow], list[Skipped]]:
    """Rows of one time and height once; BadInputError where one time has two heights."""
    kept, skipped = [], []
    for row in rows:
        if not kept or row.time != kept[-1].time:
            kept.append(row)
        elif (row.height_m, row.is_high) == (kept[-1].height_m, kept[-1].is_high):
            skipped.append(Skipped(row=row.row, reason=GIVEN_TWICE))
        else:
            raise BadInputError(
                layer=asked.name,
                row=row.row,
                field="height",
                value=f"{row.height_m:.2f} m",
                allowed=tr("Row {row} differs at the same time, {time:%Y-%m-%d %H:%M} UTC").format(
                    row=kept[-1].row, time=row.time
                ),
                remedy=tr("Delete one of them"),
            )
    return kept, skipped


def _series(
    read: TideReading, readings: Sequence[Reading], moments: RowMoments, skipped: list[Skipped], asked: TidesAsked
) -> TideReading:
    doubtful = [
        Skipped(row=one.row, reason=DOUBTFUL_HOUR) for one, moment in zip(readings, moments.moments) if moment is None
    ]
    rows, twins = _without_twins(_rows(readings, moments), asked)
    if len(rows) < 3:
        raise BadInputError(
            layer=asked.name,
            value=tr("{count} heights").format(count=len(rows)),
            allowed=tr("A series has three or more"),
            remedy=tr("Read more rows"),
        )
    warnings = [_doubt_words(readings, first, last) for first, last in moments.doubtful]
    return replace(
        read,
        heights=tuple(replace(row, is_high=None) for row in rows),
        skipped=(*skipped, *doubtful, *twins),
        warnings=(*warnings, *_gap_words(rows), *_jump_words(rows)),
    )


def _doubt_words(readings: Sequence[Reading], first: int, last: int) -> str:
    """What is known of a doubtful hour: its rows, and where the height jumps beside it."""
    words = tr(
        "Rows {first} to {last}: clocks go back that night, this hour comes twice and stands "
        "there once. Its rows are left out."
    ).format(first=readings[first].row, last=readings[last].row)
    jumps = []
    for after in (first, last + 1):
        if after < 2 or after >= len(readings) or after + 1 >= len(readings):
            continue
        two_before, before, here, next_on = (readings[after + n].height_m for n in (-2, -1, 0, 1))
        expected = ((before - two_before) + (next_on - here)) / 2.0
        jumps.append((abs(here - before - expected), here - before, expected, after))
    if jumps and max(jumps)[0] > 0.02:
        _size, rise, expected, after = max(jumps)
        words += tr(
            " Between rows {before} and {after} the height changes by {rise:+.3f} m, beside them "
            "by {expected:+.3f} m: the other reading of that hour is missing there."
        ).format(before=readings[after - 1].row, after=readings[after].row, rise=rise, expected=expected)
    return words


def _gap_words(rows: Sequence[HeightRow]) -> list[str]:
    steps = np.diff([row.time.timestamp() for row in rows])
    wide = np.flatnonzero(steps > LONGEST_STEP_RATIO * np.median(steps))
    if not len(wide):
        return []
    first = rows[int(wide[0])].row
    if len(wide) == 1:
        return [tr("1 gap in the series, the first after row {first}: the curve is unknown there.").format(first=first)]
    return [
        tr("{count} gaps in the series, the first after row {first}: the curve is unknown there.").format(
            count=len(wide), first=first
        )
    ]


def _jump_words(rows: Sequence[HeightRow]) -> list[str]:
    times = np.array([row.time.timestamp() for row in rows])
    found = unlikely_rises(times, np.array([row.height_m for row in rows]))
    if not len(found):
        return []
    where = row_runs([rows[place].row for place in found])
    if len(found) == 1:
        return [tr("The height jumps before row {where}: a slip, or a clock that was changed.").format(where=where)]
    return [tr("The height jumps before rows {where}: a slip, or a clock that was changed.").format(where=where)]


def _events(
    read: TideReading, readings: Sequence[Reading], moments: RowMoments, skipped: list[Skipped], asked: TidesAsked
) -> TideReading:
    rows, twins = _without_twins(_rows(readings, moments), asked)
    lettered = sum(row.is_high is not None for row in rows)
    if 0 < lettered < len(rows):
        row = next(row for row in rows if row.is_high is None)
        raise BadInputError(
            layer=asked.name,
            row=row.row,
            field="kind",
            value="",
            allowed=tr("Other rows say high or low water, this one does not"),
            remedy=tr("Write H or L"),
        )
    if not lettered:
        _refuse_holes(skipped, asked)
        rows = _with_kinds(rows, asked)
        least_m = min(abs(after.height_m - before.height_m) for before, after in zip(rows, rows[1:]))
        words = tr(
            "none says high or low; told from the heights, which rise and fall in turn by {least_m:.2f} m or more"
        ).format(least_m=least_m)
        read = replace(read, taken={**read.taken, "kinds": words})
    _check_alternation(rows, asked)
    return replace(read, heights=tuple(rows), skipped=(*skipped, *twins))


def _refuse_holes(skipped: Sequence[Skipped], asked: TidesAsked) -> None:
    """Without letters the turn of high and low says which is which, and a missing height breaks it."""
    hole = next((one for one in skipped if one.reason == NO_HEIGHT), None)
    if hole is not None:
        raise BadInputError(
            layer=asked.name,
            row=hole.row,
            field="height",
            allowed=tr("It has no height, and no row says whether it is high or low water"),
            remedy=tr("Fill in the height or delete the row, and write H or L in each row"),
        )


def _with_kinds(rows: Sequence[HeightRow], asked: TidesAsked) -> list[HeightRow]:
    """High and low waters told by their heights; BadInputError for a row that is neither above nor below both sides.

    Rows further apart than high and low water are twice a day tell nothing of each other: they may be high waters
    alone. Nor do rises that are small beside the others.
    """
    steps = [_seconds(before, after) for before, after in zip(rows, rows[1:])]
    limit_s = LONGEST_TWICE_DAILY_S
    _refuse_unclear(rows, steps, asked)
    kinds: list[bool | None] = [None] * len(rows)
    for place, (before, after) in enumerate(zip(rows, rows[1:])):
        if steps[place] > limit_s:
            continue
        for side, is_high in ((place, before.height_m > after.height_m), (place + 1, after.height_m > before.height_m)):
            if kinds[side] not in (None, is_high):
                raise _no_turn(rows[side], asked, tr("The rows beside it are one higher and one lower"))
            kinds[side] = is_high
    for row, kind in zip(rows, kinds):
        if kind is None:
            raise _no_turn(
                row,
                asked,
                tr("No row within {hours:.0f} hours of it is higher or lower").format(hours=limit_s / 3600.0),
            )
    return [replace(row, is_high=kind) for row, kind in zip(rows, kinds)]


def _refuse_unclear(rows: Sequence[HeightRow], steps: Sequence[float], asked: TidesAsked) -> None:
    """Rows so far apart that they may be of one kind, and heights that hardly differ, are not told apart."""
    if len(steps) and np.median(steps) > LONGEST_TWICE_DAILY_S:
        raise _unlettered(
            rows[0],
            asked,
            tr(
                "Its rows are some {hours:.1f} h apart: they may be high waters alone, low waters "
                "alone, or one of each a day"
            ).format(hours=np.median(steps) / 3600.0),
        )
    near = [place for place, step in enumerate(steps) if step <= LONGEST_TWICE_DAILY_S]
    rises = {place: abs(rows[place + 1].height_m - rows[place].height_m) for place in near}
    usual = float(np.median(list(rises.values()))) if rises else 0.0
    for place, rise_m in rises.items():
        if rise_m < max(LEAST_CLEAR_RISE_M, LEAST_CLEAR_SHARE * usual):
            raise _unlettered(
                rows[place + 1],
                asked,
                tr(
                    "It differs from row {row} by {rise_m:.2f} m, others by some {usual:.2f} m: that "
                    "does not tell high from low water"
                ).format(row=rows[place].row, rise_m=rise_m, usual=usual),
            )


def _unlettered(row: HeightRow, asked: TidesAsked, why: str) -> BadInputError:
    return BadInputError(
        layer=asked.name,
        row=row.row,
        field="kind",
        value=tr("{height_m:.2f} m at {time:%Y-%m-%d %H:%M} UTC").format(height_m=row.height_m, time=row.time),
        allowed=tr("{why}; and no row says which").format(why=why),
        remedy=tr("Write H or L in each row"),
    )


def _check_alternation(rows: Sequence[HeightRow], asked: TidesAsked) -> None:
    alone = len({row.is_high for row in rows}) == 1  # high waters alone: hours are counted from them
    for before, after in zip(rows, rows[1:]):
        if _seconds(before, after) > (LONGEST_TWICE_DAILY_S if alone else LONGEST_GAP_S):
            continue
        if before.is_high == after.is_high:
            raise _no_turn(
                after,
                asked,
                tr("It is a high water and so is row {row}, {hours} h before").format(
                    row=before.row, hours=_hours(before, after)
                )
                if after.is_high
                else tr("It is a low water and so is row {row}, {hours} h before").format(
                    row=before.row, hours=_hours(before, after)
                ),
            )
        if (after.height_m - before.height_m) * (1.0 if after.is_high else -1.0) < 0.0:
            raise _no_turn(
                after,
                asked,
                tr("It is a high water and lower than row {row}").format(row=before.row)
                if after.is_high
                else tr("It is a low water and higher than row {row}").format(row=before.row),
            )


def _no_turn(row: HeightRow, asked: TidesAsked, why: str) -> BadInputError:
    return BadInputError(
        layer=asked.name,
        row=row.row,
        field="height",
        value=tr("{height_m:.2f} m at {time:%Y-%m-%d %H:%M} UTC").format(height_m=row.height_m, time=row.time),
        allowed=tr("{why}; high and low waters alternate").format(why=why),
        remedy=tr("Correct that row or the one before, add the missing one, write H or L, or read it as FORM series"),
    )


def _seconds(before: HeightRow, after: HeightRow) -> float:
    return (after.time - before.time).total_seconds()


def _hours(before: HeightRow, after: HeightRow) -> str:
    return f"{_seconds(before, after) / 3600.0:.1f}"
