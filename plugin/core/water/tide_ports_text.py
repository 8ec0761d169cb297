"""Secondary ports as text: differences from a reference port, a row for each port or a line for each difference."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Any

from ..errors import BadInputError
from ..text_table import TextRow, TextTable, is_missing
from ..words import marked, tr
from .tide_columns import number_in, stated_unit
from .tide_reading import METRES_PER, SECONDARY, Skipped, TideReading, TidesAsked

MINUTES = ("hw_minutes_springs", "hw_minutes_neaps", "lw_minutes_springs", "lw_minutes_neaps")
HEIGHTS = ("hw_height_springs_m", "hw_height_neaps_m", "lw_height_springs_m", "lw_height_neaps_m")
LARGEST_MIN, LARGEST_M = 1440.0, 10.0
ABOVE = marked("above the table")
FEWEST_HEADED = 3
HIGHEST_HEADINGS = 60  # rows from the top in which headings are looked for
_CLOCKED = re.compile(r"^([+-]?)(\d{1,2}):?(\d{2})$")
_MINUTES = re.compile(r"^([+-]?\d+(?:[.,]\d+)?)\s*(?:min|minutes)?$", re.I)
_SHORT = {"mhws": (True, True), "mhwn": (True, False), "mlwn": (False, False), "mlws": (False, True)}


def looks_like_secondary(tables: Sequence[TextTable]) -> bool:
    """Whether its headings, or the words its lines begin with, are those of differences."""
    return any(_oriented(table) is not None for table in tables)


def read_secondary(tables: Sequence[TextTable], asked: TidesAsked) -> TideReading:
    """One record for each port with the field names of the plan's tide_ports; a field that is not given is left out.

    Minutes are written 20, -15 min, +0:20 or with four digits and a sign, +0020. BadInputError naming the row for what
    cannot be read, and where no unit of heights is said.
    """
    found = next((oriented for oriented in map(_oriented, tables) if oriented is not None), None)
    if found is None:
        raise BadInputError(
            layer=asked.name,
            allowed=tr("It has no headings such as hw_minutes_springs, lw_height_neaps_m"),
            remedy=tr("Head each column by water (hw, lw), minutes or height, and springs or neaps where they differ"),
        )
    head, rows, above = found
    fields = [_fields(heading) for heading in head.cells]
    records = [_record(row, head, fields, asked) for row in rows]
    return TideReading(
        form=SECONDARY,
        secondary=tuple(records),
        skipped=tuple(Skipped(row=row.number, reason=ABOVE) for row in above),
        taken={
            "columns": [
                {"column": place + 1, "heading": heading, "taken_for": ", ".join(taken) or "skip"}
                for place, (heading, taken) in enumerate(zip(head.cells, fields))
            ],
            "units": asked.units or tr("as headed"),
        },
    )


def _fields(heading: str) -> tuple[str, ...]:
    """The fields of a record that a heading names: one, or springs and neaps where it says neither."""
    words = re.sub(r"[^a-z]+", " ", heading.lower()).split()
    if "reference" in words or "standard" in words:
        return ("reference_port",)
    if set(words) & {"port", "place", "station", "name"}:
        return ("port",)
    short = next((_SHORT[word] for word in words if word in _SHORT), None)
    high = short[0] if short else bool(set(words) & {"hw", "high"})
    low = not short[0] if short else bool(set(words) & {"lw", "low"})
    springs = short[1] if short else bool(set(words) & {"springs", "spring"})
    neaps = not short[1] if short else bool(set(words) & {"neaps", "neap"})
    time = bool(set(words) & {"minutes", "min", "mins", "time"})
    height = bool(set(words) & {"height", "heights", "m", "ft"}) or bool(short and not time)
    if high == low or time == height:
        return ()
    water = "hw" if high else "lw"
    when = [word for word, named in (("springs", springs), ("neaps", neaps)) if named or springs == neaps]
    return tuple(f"{water}_minutes_{one}" if time else f"{water}_height_{one}_m" for one in when)


def _oriented(table: TextTable) -> tuple[TextRow, list[TextRow], list[TextRow]] | None:
    """Headings, rows, and rows above them; lines of a word and a value are turned into one row. None for neither."""
    for place, row in enumerate(table.rows[:HIGHEST_HEADINGS]):
        if sum(bool(_fields(cell)) for cell in row.cells) >= FEWEST_HEADED:
            rows = [one for one in table.rows[place + 1 :] if any(not is_missing(cell) for cell in one.cells)]
            return (row, rows, list(table.rows[:place])) if rows else None
    pairs = [row for row in table.rows[:HIGHEST_HEADINGS] if len(row.cells) == 2 and _fields(row.cells[0])]
    if len(pairs) < FEWEST_HEADED or len(pairs) * 2 <= len(table.rows):
        return None
    above = [row for row in table.rows if row not in pairs]
    head = TextRow(number=pairs[0].number, cells=tuple(row.cells[0] for row in pairs))
    return head, [TextRow(number=pairs[0].number, cells=tuple(row.cells[1] for row in pairs))], above


def _record(row: TextRow, head: TextRow, fields: Sequence[tuple[str, ...]], asked: TidesAsked) -> dict[str, Any]:
    record: dict[str, Any] = {}
    for place, names in enumerate(fields):
        cell = row.cell(place)
        if is_missing(cell):
            continue
        for name in names:
            if name in record:
                raise _refused(row, name, cell, asked, tr("Two columns give it"), tr("Delete one of them"))
            record[name] = _value(row, name, cell, head.cells[place], asked)
    if not any(name in record for name in (*MINUTES, *HEIGHTS)):
        raise _refused(
            row, "", ", ".join(row.cells), asked, tr("It has no difference"), tr("Fill it in or delete the row")
        )
    return record


def _value(row: TextRow, name: str, cell: str, heading: str, asked: TidesAsked) -> Any:
    if name in MINUTES:
        return _minutes(row, name, cell, asked)
    return _metres(row, name, cell, heading, asked) if name in HEIGHTS else cell


def _minutes(row: TextRow, name: str, cell: str, asked: TidesAsked) -> float:
    """Minutes, or hours and minutes where a colon, or a sign and four digits, say so."""
    plain = re.sub(r"^[\u2212\u2013]", "-", cell)
    clocked, counted = _CLOCKED.match(plain), _MINUTES.match(plain)
    if clocked and (":" in plain or (clocked.group(1) and len(clocked.group(2)) == 2)):
        sign, hours, minutes = clocked.groups()
        if int(minutes) < 60:
            return (-1.0 if sign == "-" else 1.0) * (60.0 * int(hours) + int(minutes))
    elif counted:
        value = float(counted.group(1).replace(",", "."))
        if abs(value) <= LARGEST_MIN and len(re.sub(r"\D.*$", "", plain.lstrip("+-"))) < 4:
            return value
    raise _refused(
        row,
        name,
        cell,
        asked,
        tr("That is no difference of time up to a day"),
        tr("Write minutes, such as -20, or -0:20"),
    )


def _metres(row: TextRow, name: str, cell: str, heading: str, asked: TidesAsked) -> float:
    number = number_in(re.sub(r"^[\u2212\u2013]", "-", cell))
    if number is None:
        raise _refused(row, name, cell, asked, tr("That is no height"), tr("Write it like -0.4"))
    try:
        unit = stated_unit(number[1], heading, asked.units)
    except ValueError as error:
        raise _refused(row, name, cell, asked, str(error), tr("Correct UNITS, the heading or the row")) from error
    if not unit:
        raise _refused(row, name, cell, asked, tr("Nothing says metres or feet"), tr("Give UNITS: m or ft"))
    metres = number[0] * METRES_PER[unit]
    if abs(metres) > LARGEST_M:
        raise _refused(
            row,
            name,
            cell,
            asked,
            tr("Differences are up to {largest} m").format(largest=LARGEST_M),
            tr("Correct it or UNITS"),
        )
    return metres


def _refused(row: TextRow, field: str, value: object, asked: TidesAsked, allowed: str, remedy: str) -> BadInputError:
    return BadInputError(layer=asked.name, row=row.number, field=field, value=value, allowed=allowed, remedy=remedy)
