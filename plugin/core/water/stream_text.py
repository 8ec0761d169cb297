"""Stream tables as people hold them, as text: what form a text has, and its rows for a plan."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator

from ..errors import BadInputError, SwimPlanError
from ..text_table import TextTable, separator_words, tables_of
from ..words import tr
from .constituents import standard_name
from .heading_words import check_headings
from .stream_asked import GUESS, StreamAsked, StreamReading
from .stream_blocks import Block, asked_of, blocks_of
from .stream_cells import hour_in
from .stream_columns import BY_PLACE, NEEDED, Columns, columns_by_heading, columns_by_place
from .stream_panels import panel_readings, series_reading
from .stream_rows import (
    RowReader,
    TextPlanRow,
    constant_rows,
    drift_rows,
    event_rows,
    hourly_rows,
    series_rows,
    wind_rows,
)

FORMS = (
    GUESS,
    "hourly",
    "coefficients",
    "events",
    "ts_tsp",
    "ts_tsv",
    "series",
    "constants",
    "drift",
    "winds",
    "tide_coefficients",
)
# The form that a station whose rows these are has in a plan; the others belong to no station.
STATION_FORM = {
    "hourly": "hourly",
    "coefficients": "coefficients",
    "events": "events",
    "ts_tsp": "hourly",
    "ts_tsv": "series",
    "series": "series",
    "constants": "harmonic",
}
WITHOUT_ROWS = ("slack_offset", "subordinate", "wind", "constant")
_PANEL = re.compile(r"^[^,\n]*,[^,\n]*,\s*(HW|LW)\s*,", re.IGNORECASE)


def read_streams(text: str, asked: StreamAsked) -> list[StreamReading]:
    """The tables of a text, in its order.

    A line `# station: name` begins a part of its own, lines `# field: value` say more of it. BadInputError names the
    row of what cannot be read; SwimPlanError says what is missing to read it at all.
    """
    blocks = blocks_of(text)
    if not blocks:
        raise BadInputError(
            layer=asked.name, allowed=tr("There is nothing in it"), remedy=tr("Paste the table or choose another file")
        )
    return [reading for block in blocks for reading in _read_block(block, asked_of(block, asked))]


def _read_block(block: Block, asked: StreamAsked) -> Iterator[StreamReading]:
    form = asked.form
    if form == GUESS and any(_PANEL.match(line.strip()) for line in block.lines.values()):
        form = "ts_tsp"
    if form == "ts_tsp":
        yield from panel_readings(block, asked)
        return
    if form == "ts_tsv":
        yield series_reading(block, asked)
        return
    if not block.lines and block.notes.get("form") and asked.station:
        yield StreamReading(form=form, station={**block.notes, "station": asked.station}, rows=(), line=block.first)
        return
    form = {"constant": "hourly"}.get(form, form)
    if form not in (*FORMS, *NEEDED):
        raise BadInputError(
            layer=asked.name,
            row=block.first,
            field="form",
            value=form,
            allowed=tr("Forms are {forms}").format(forms=", ".join((*FORMS, *WITHOUT_ROWS))),
            remedy=tr("Correct the form"),
        )
    yield _table_reading(block, asked, form)


def _table_reading(block: Block, asked: StreamAsked, form: str) -> StreamReading:
    table, columns, form = _understood(tables_of(block.text(), asked.name), form, asked.name)
    roles = {place: role for role, place in columns.places.items()}
    check_headings(columns.headings, roles, form, table.rows[0].number, asked.name)
    _check_columns(columns, form, asked.name)
    _check_widths(table, asked.name)
    reader = RowReader(
        name=asked.name,
        table=table,
        columns=columns,
        station=asked.station,
        reference=asked.reference,
        unit=asked.unit,
        zone=asked.zone,
        date_order=asked.date_order,
        clocks=block.clocks(),
    )
    if form in STATION_FORM and not asked.station:
        raise SwimPlanError(
            asked=tr("The table does not say which station it belongs to"),
            allowed=tr("Every stream table has a station"),
            remedy=tr("Name it in STATION"),
        )
    rows = tuple(_coefficient_rows(reader, asked.port) if form == "tide_coefficients" else _ROWS[form](reader))
    station = {}
    if form in STATION_FORM:
        station = {**block.notes, "station": asked.station, "port": asked.port}
        station["form"] = block.notes.get("form") or STATION_FORM[form]
        if form in ("hourly", "coefficients") and station["form"] != "constant":
            station["reference"] = _reference(reader, asked)
    return StreamReading(
        form=form,
        station=station,
        rows=rows,
        columns=tuple(columns.words()),
        separator=table.separator,
        clock=reader.clock,
        skipped=tuple(reader.skipped),
        notes=tuple(reader.notes),
        line=block.first,
    )


def _reference(reader: RowReader, asked: StreamAsked) -> str:
    if reader.reference not in ("HW", "LW"):
        raise SwimPlanError(
            asked=tr("The table of {station} does not say from which tide its hours are counted").format(
                station=asked.station
            ),
            allowed=tr("Hours are counted from high water or from low water"),
            remedy=tr("Choose REFERENCE"),
        )
    return reader.reference


def _coefficient_rows(reader: RowReader, port: str) -> Iterator[TextPlanRow]:
    times = reader.times()
    for row in reader.rows:
        value = reader.number(row, "coefficient", 10.0, 130.0)
        if value is None:
            reader.skip(row, tr("no coefficient"))
            continue
        values = {"port": port or None, "time": times[row.number], "coefficient": value}
        yield TextPlanRow(layer="tide_coefficients", values=values, line=row.number)


_ROWS: dict[str, Callable[[RowReader], Iterator[TextPlanRow]]] = {
    "hourly": hourly_rows,
    "coefficients": hourly_rows,
    "events": event_rows,
    "series": series_rows,
    "constants": constant_rows,
    "drift": drift_rows,
    "winds": wind_rows,
}


def _understood(tables: list[TextTable], form: str, name: str) -> tuple[TextTable, Columns, str]:
    """The table as the separator parts it that gives the most known columns, its columns, and its form."""
    best: tuple[TextTable, Columns] | None = None
    doubled: BadInputError | None = None
    for table in tables:
        try:
            columns = columns_by_heading(table)
        except ValueError as error:
            doubled = doubled or BadInputError(
                layer=name, row=table.rows[0].number, allowed=str(error), remedy=tr("Rename one of them")
            )
            continue
        if columns and (best is None or len(columns.places) > len(best[1].places)):
            best = (table, columns)
    if best is not None:
        return *best, _form_of(best[1]) if form == GUESS else form
    if doubled is not None:
        raise doubled
    for table in tables:
        guessed = _form_by_place(table) if form == GUESS else form
        columns = columns_by_place(table, guessed) if guessed else None
        if columns is not None:
            return table, columns, guessed
    wanted = [form] if form in BY_PLACE else list(BY_PLACE)
    orders = "; ".join(f"{one}: {', '.join(BY_PLACE[one][0])}" for one in wanted)
    raise BadInputError(
        layer=name,
        row=tables[0].rows[0].number if tables else 1,
        value=" ".join(tables[0].rows[0].cells)[:60] if tables else "",
        allowed=tr("The first row names the columns, or the columns are in the order of the form ({orders})").format(
            orders=orders
        ),
        remedy=tr("Write headings such as hour, set_deg, spring_kn, neap_kn, or choose FORM"),
    )


def _form_of(columns: Columns) -> str:
    """The form that the known columns make."""
    has = columns.places.__contains__
    if has("constituent"):
        return "constants"
    if has("end_lon") or has("end_lat"):
        return "drift"
    if has("hour"):
        return "coefficients" if has("at_95") or has("at_45") else "hourly"
    if has("coefficient"):
        return "tide_coefficients"
    if has("wind_speed"):
        return "winds"
    return "series" if has("set") else "events"


def _form_by_place(table: TextTable) -> str:
    """The form of a table without headings, by what its first row holds; "" where that could be several."""
    cells = table.rows[0].cells
    if standard_name(cells[0]) and len(cells) == 5:
        return "constants"
    words = " ".join(cells).lower()
    if re.search(r"\b(slack|flood|ebb|max)\b", words) and re.search(r"\d{4}|\d:\d\d", words):
        return "events"
    try:
        hour_in(cells[0])
    except ValueError:
        return ""
    return "hourly" if len(cells) in (3, 4) else ""


def _check_columns(columns: Columns, form: str, name: str) -> None:
    for roles in NEEDED[form]:
        if not any(role in columns.places for role in roles):
            known = ", ".join(word["column"] for word in columns.words())
            raise BadInputError(
                layer=name,
                field=roles[0],
                allowed=tr("A table of the form '{form}' has a column for {roles}; it has {known}").format(
                    form=form, roles=_or(roles), known=known
                ),
                remedy=tr("Add the column, correct its heading, or choose another FORM"),
            )


def _or(words: Iterable[str]) -> str:
    return tr(" or ").join(words)


def _check_widths(table: TextTable, name: str) -> None:
    """A comma too many, of a decimal number for instance, must not move the cells after it."""
    width = len(table.rows[0].cells)
    for row in table.rows:
        if any(row.cells[width:]) or (table.separator in ("space", "wide space") and len(row.cells) < width):
            raise BadInputError(
                layer=name,
                row=row.number,
                value=" | ".join(row.cells)[:60],
                allowed=tr("The first row has {width} cells (parted by {separator}), this one {count}").format(
                    width=width, separator=separator_words(table.separator), count=len(row.cells)
                ),
                remedy=tr("Give every row the same cells; part cells by semicolons where numbers have a decimal comma"),
            )
