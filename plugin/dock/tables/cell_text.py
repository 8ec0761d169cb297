"""One cell as text: how a stored value is shown, and what a typed or pasted text means.

What cannot be meant is refused with words and never guessed: a date that reads two ways, an hour that clocks skip, a
comma that may part thousands. An empty cell is no value, never 0.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import datetime, tzinfo

from ...core.clock import UTC, local_moment, zone_named
from ...core.errors import BadInputError, SwimPlanError
from ...core.text_moments import clock_in, dates_in, moment_parts, printed_moment
from ...core.text_table import is_missing
from ...core.water.tide_columns import water_in
from ...plan_package.field_spec import FieldSpec, LayerSpec
from ...plan_package.row_check import checked_value
from ...plan_package.words import schema_words
from ...words import tr
from .cell_numbers import number_from
from .cell_words import UNSEEN, refused

MOST_CHARACTERS, MOST_IN_NOTES = 500, 10_000
_LINE_ENDS = re.compile("[\r\n\t]")


@dataclass(frozen=True, kw_only=True)
class Column:
    """One column of a table: a field of the schema, seen in the plan's zone."""

    layer: LayerSpec
    field: FieldSpec
    zone_name: str = "UTC"

    @property
    def zone(self) -> tzinfo:
        """The zone in which times of the column are shown and typed."""
        return zone_named(self.zone_name)

    @property
    def title(self) -> str:
        """The field's title with its unit; of times with the zone they are shown in."""
        title, zone = schema_words(self.field.alias), f"({self.zone_name})"
        return title.replace("(UTC)" if self.field.kind == "datetime" else tr("(plan's zone)"), zone)

    @property
    def tip(self) -> str:
        """What the column holds and what it may hold."""
        zone = tr(" Typed and shown in {}, stored as UTC.").format(self.zone_name)
        more = zone if self.field.kind == "datetime" else ""
        return f"{schema_words(self.field.help)}{more}\n{tr('Allowed:')} {self.allowed_words}"

    @property
    def allowed_words(self) -> str:
        """What a cell may hold; an offset need not be typed here, since the column has its zone."""
        return tr("a date and time") if self.field.kind == "datetime" else self.field.allowed_words()


def columns_of(layer: LayerSpec, zone_name: str) -> tuple[Column, ...]:
    """The columns of a table in the schema's order."""
    return tuple(Column(layer=layer, field=field, zone_name=zone_name) for field in layer.fields)


def shown(column: Column, value: object, *, in_words: bool = True) -> str:
    """A stored value as text that ``value_of`` reads back; "" for none. ``in_words`` shows what a code stands for."""
    if value is None:
        return ""
    if isinstance(value, datetime):
        return _shown_moment(value, column.zone)
    if isinstance(value, float):
        return f"{value:.10g}"
    if in_words and column.field.choices and value in column.field.choices:
        return schema_words(column.field.choices[value])
    return str(value)


def value_of(column: Column, text: str, *, zone: tzinfo | None = None, order: str = "") -> object:
    """What a text means: str, int, float, aware moment in UTC, or None for an empty cell. SwimPlanError where refused.

    ``zone`` is the clock of times that do not say their own, the plan's unless given; ``order`` (ymd, dmy, mdy) says
    how dates in figures are written, where the table they come from has shown it.
    """
    field = column.field
    try:
        if field.kind == "text":
            value = _text(field, text)
        elif is_missing(text):
            value = None
        elif field.kind == "datetime":
            value = _moment(text, zone or column.zone, order)
        else:
            value = number_from(field, text)
        return checked_value(column.layer, 0, field, value)
    except BadInputError as error:
        raise _as_cell(column, text, error) from error


def problem_of(column: Column, value: object) -> str:
    """Why a stored value is not what the field may hold, in words; "" where it is."""
    try:
        checked_value(column.layer, 0, column.field, value)
    except SwimPlanError as error:
        return str(_as_cell(column, shown(column, value), error))
    return ""


def _as_cell(column: Column, text: str, error: SwimPlanError) -> SwimPlanError:
    """A refusal of the schema's as said of a cell of the table."""
    allowed = error.allowed.replace(column.field.allowed_words(), column.allowed_words)
    return refused(text, allowed, error.remedy)


def _shown_moment(value: datetime, zone: tzinfo) -> str:
    """With its offset where the digits alone would not say which hour is meant."""
    try:
        local = value.astimezone(zone)
        naive = local.replace(tzinfo=None)
    except OverflowError:  # the first and the last day that a calendar can hold
        return value.isoformat(sep=" ")
    text = f"{naive:%Y-%m-%d %H:%M:%S}".removesuffix(":00")
    try:
        local_moment(naive, zone)
    except SwimPlanError:
        return text + local.isoformat()[-6:]
    return text


def _text(field: FieldSpec, text: str) -> str | None:
    text = text.strip()
    if not text:
        return None
    if field.choices:
        text = _choice(field, text)
    most = MOST_IN_NOTES if field.long_text else MOST_CHARACTERS
    if UNSEEN.search(_LINE_ENDS.sub("", text) if field.long_text else text):
        raise refused(text, tr("It holds characters that cannot be seen"), tr("Type it anew"))
    if len(text) > most:
        raise refused(text, tr("A text has up to {} characters").format(most), tr("Shorten it"))
    if text.startswith("="):
        raise refused(text, "", "")
    return _clock_digits(text) if field.pattern else text


def _choice(field: FieldSpec, text: str) -> str:
    """The code that a code or its words stand for, whatever their case; another text where the list is open."""
    wanted = text.casefold()
    for code, words in field.choices.items():
        spoken = (words, schema_words(words))
        names = (code, *spoken, *(one.split("(")[0].strip() for one in spoken))
        if wanted in (name.casefold() for name in names):
            return code
    water = water_in(text)
    if water is not None and {"HW", "LW"} <= field.choices.keys():
        return "HW" if water else "LW"
    return text  # where the list is closed, the check refuses it


def _clock_digits(text: str) -> str:
    """``9:40`` as ``09:40``; anything else as it is."""
    since_midnight = clock_in(text, plain=False)
    return "0" + text if since_midnight is not None and re.match(r"^\d:\d\d(:\d\d)?$", text) else text


def _moment(text: str, zone: tzinfo, order: str) -> datetime:
    parts = moment_parts(text.strip())
    if parts is None:
        lacks_time = bool(dates_in(text.strip()))
        allowed = tr("It lacks the time of day") if lacks_time else tr("Allowed is a date and time")
        raise refused(text, allowed, tr("Write it like 2027-06-05 09:40"))
    day_text, since_midnight, written = parts
    days = dates_in(day_text)
    day = days[order] if order in days else next(iter(days.values()))
    if order not in days and len(set(days.values())) > 1:
        both = tr(" or ").join(dict.fromkeys(one.isoformat() for one in days.values()))
        raise refused(text, tr("Its date may be {}").format(both), tr("Write it like 2027-06-05 09:40"))
    naive = printed_moment(day, since_midnight).naive
    return local_moment(naive, written or zone).astimezone(UTC)
