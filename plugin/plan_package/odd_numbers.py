"""Numbers of a plan that are none: SQLite keeps any text in any column, and GDAL reads it as 0 without a word."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from ..core.errors import BadInputError
from ..words import tr
from .database import first_row_where, quoted, table_columns
from .field_spec import FieldSpec, LayerSpec
from .schema import LAYERS


def check_numbers(plan: str | Path) -> None:
    """BadInputError naming the first row, field and value that is no number where one is due, or not a whole one."""
    path = Path(plan)
    columns = table_columns(path)
    for spec in LAYERS:
        present = [field for field in spec.fields if field.is_number and field.name in columns.get(spec.name, ())]
        if present:
            _check(path, spec, present)


def _check(path: Path, spec: LayerSpec, fields: Sequence[FieldSpec]) -> None:
    tests = [_test(field) for field in fields]
    found = first_row_where(path, spec.name, [field.name for field in fields], " OR ".join(tests))
    if found is None:
        return
    row, values = found
    for field, value in zip(fields, values):
        if not _is_due(field, value):
            empty = isinstance(value, str) and not value.strip()
            noun = tr("a whole number") if field.kind == "integer" else tr("a number")
            raise BadInputError(
                layer=spec.name,
                row=row,
                field=field.name,
                value=value,
                allowed=tr("It is {noun}, or nothing at all (NULL)").format(noun=noun),
                remedy=tr("Set it to NULL, which means unknown")
                if empty
                else tr("Correct it, with a point before decimals"),
            )


def _test(field: FieldSpec) -> str:
    """What SQLite is asked to find a value that is none of the field's kind."""
    name = quoted(field.name)
    test = f"typeof({name}) IN ('text', 'blob')"
    return f"{test} OR (typeof({name}) = 'real' AND {name} <> round({name}))" if field.kind == "integer" else test


def _is_due(field: FieldSpec, value: object) -> bool:
    return value is None or (isinstance(value, (int, float)) and (field.kind != "integer" or value == round(value)))
