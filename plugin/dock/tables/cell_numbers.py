"""Numbers as people and spreadsheets write them: decimal points and commas, groups of thousands, units behind them."""

from __future__ import annotations

import re

from ...plan_package.field_spec import FieldSpec
from ...words import tr
from .cell_words import refused

_PLAIN = re.compile(r"^[+-]?(\d+(\.\d*)?|\.\d+)([eE][+-]?\d{1,2})?$")
_BLANKS = "\u00a0\u202f\u2009' "
_GROUPED_BY_BLANKS = re.compile(rf"^[+-]?\d{{1,3}}(?:[{_BLANKS}]\d{{3}})+(?:[.,]\d*)?$")
_WITH_UNIT = re.compile(r"^(.*[\d.,])\s*([^\d\s.,][^\d.,]*)$", re.DOTALL)
_THREE_AFTER_COMMA = re.compile(r"^[+-]?[1-9]\d{0,2},\d{3}$")
MOST_DIGITS = 40
# What a unit of the schema may be called in a heading or behind a number.
UNIT_NAMES: dict[str, frozenset[str]] = {
    "m": frozenset({"m", "metre", "metres", "meter", "meters"}),
    "kn": frozenset({"kn", "kt", "kts", "knot", "knots"}),
    "m/s": frozenset({"m/s", "mps"}),
    "min": frozenset({"min", "mins", "minute", "minutes"}),
    "h": frozenset({"h", "hr", "hrs", "hour", "hours"}),
    "deg": frozenset({"deg", "degree", "degrees", "\N{DEGREE SIGN}"}),
    "deg true": frozenset(
        {
            "deg",
            "degree",
            "degrees",
            "\N{DEGREE SIGN}",
            "deg true",
            "true",
            "t",
            "\N{DEGREE SIGN}t",
            "\N{DEGREE SIGN}true",
        }
    ),
    "deg C": frozenset({"c", "deg c", "\N{DEGREE SIGN}c"}),
    "L": frozenset({"l", "litre", "litres", "liter", "liters"}),
    "L/h": frozenset({"l/h"}),
    "%": frozenset({"%", "percent"}),
}


def is_unit(field: FieldSpec, name: str) -> bool:
    """Whether a name is one of the field's unit."""
    return name.strip().casefold() in UNIT_NAMES.get(field.unit, frozenset({field.unit.casefold()} - {""}))


def number_from(field: FieldSpec, text: str) -> float | int:
    """The number a text means, a whole one where the field holds whole ones. SwimPlanError where it is none, has
    another unit, or a comma that may part thousands as well as decimals. The range is checked elsewhere."""
    digits = _without_unit(field, text.strip().replace("\N{MINUS SIGN}", "-").replace("\N{EN DASH}", "-"), text)
    digits = _with_point(field, digits, text)
    if not _PLAIN.match(digits) or len(digits) > MOST_DIGITS:
        raise refused(text, tr("Allowed is {}").format(field.allowed_words()), tr("Write a number"))
    number = float(digits)
    return int(number) if field.kind == "integer" and number == int(number) else number


def _without_unit(field: FieldSpec, digits: str, text: str) -> str:
    found = _WITH_UNIT.match(digits[: MOST_DIGITS * 2])
    if found is None or _PLAIN.match(digits):
        return digits
    number, unit = found.groups()
    if is_unit(field, unit):
        return number
    if not _PLAIN.match(number.replace(",", ".")):
        return digits
    here = tr("The column is in {}").format(field.unit) if field.unit else tr("The column has no unit")
    raise refused(text, here, tr("Convert the number and leave the unit out"))


def _with_point(field: FieldSpec, digits: str, text: str) -> str:
    """Without groups of thousands, and with a point before the decimals."""
    if _GROUPED_BY_BLANKS.match(digits):
        digits = re.sub(f"[{_BLANKS}]", "", digits)
    marks = [one for one in digits if one in ".,"]
    if len(marks) > 1:
        group = marks[0]
        last = marks[-1] if marks[-1] != group else ""
        whole = rf"[+-]?\d{{1,3}}(?:{re.escape(group)}\d{{3}})+"
        if not re.fullmatch(whole + (rf"{re.escape(last)}\d*" if last else ""), digits):
            return digits  # no number
        return digits.replace(group, "").replace(",", ".")
    if _THREE_AFTER_COMMA.match(digits) and _both_allowed(field, digits):
        raise refused(
            text,
            tr("It may be {} or {}").format(digits.replace(",", ""), digits.replace(",", ".")),
            tr("Write it without the comma, or with a point before the decimals"),
        )
    return digits.replace(",", ".")


def _both_allowed(field: FieldSpec, digits: str) -> bool:
    readings = (float(digits.replace(",", mark)) for mark in ("", "."))
    low = float("-inf") if field.minimum is None else field.minimum
    high = float("inf") if field.maximum is None else field.maximum
    return all(low <= one <= high for one in readings)
