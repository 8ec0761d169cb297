"""How a table of tides was taken, in sentences for the one who reads it in."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from ..core.text_table import separator_words
from ..core.words import marked, spoken
from ..words import tr

# By what a reading says of a whole table; its columns are told one by one.
_OF_THE_TABLE = {
    "zone": marked("Clock of the times: {said}"),
    "phases": marked("Phases: {said}"),
    "date_order": marked("Order of day, month and year: {said}"),
    "units": marked("Units of the heights: {said}"),
    "dates": marked("Dates: {said}"),
    "kinds": marked("High or low water: {said}"),
    "kept": marked("Kept: {said}"),
}


def taken_sentences(taken: dict[str, Any]) -> Iterator[str]:
    """A sentence for each thing that ``taken`` of a reading says: separator, columns, clock, units and so on."""
    if "separator" in taken:
        yield tr("Cells parted by: {separator}").format(separator=separator_words(taken["separator"]))
    columns = taken.get("columns", [])
    if isinstance(columns, dict):
        yield tr("Columns: constituent {constituent}, amplitude {amplitude}, phase {phase}").format(**columns)
    else:
        yield from map(_column_sentence, columns)
    for name, words in _OF_THE_TABLE.items():
        if taken.get(name):
            yield spoken(words).format(said=taken[name])


def _column_sentence(column: dict[str, Any]) -> str:
    words = tr("Column {number} '{heading}': taken for {role}").format(
        number=column["column"], heading=column["heading"], role=column["taken_for"]
    )
    more = [one for one in (column.get("unit"), column.get("why")) if one]
    return f"{words} ({', '.join(more)})" if more else words


def row_sentence(row: dict[str, Any]) -> str:
    """One of the first rows as read: its number, and its values by the names of their fields."""
    values = ", ".join(f"{name} {value}" for name, value in row.items() if name != "row" and value != "")
    return tr("Row {number}: {values}").format(number=row["row"], values=values) if "row" in row else values
