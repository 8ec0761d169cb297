"""What one field, one layer and one setting of a plan are: the words the schema is written in."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from ..words import tr
from .words import schema_words

KINDS = ("text", "integer", "real", "datetime")
GEOMETRIES = ("Point", "LineString", "Polygon", "LineString or Polygon", "none")

CLOCK_PATTERN = r"([01][0-9]|2[0-3]):[0-5][0-9](:[0-5][0-9])?"
_DATE_PATTERN = r"[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])"
_OFFSET_PATTERN = r"(Z|[+-]([01][0-9]|2[0-3]):?[0-5][0-9])?"
_PARTIAL_DATE_PATTERN = r"--(0[1-9]|1[0-2])-?(0[1-9]|[12][0-9]|3[01])"
DATE_PATTERN = f"^{_DATE_PATTERN}$"
DAILY_OR_DATED_PATTERN = (
    f"^({CLOCK_PATTERN}|{_PARTIAL_DATE_PATTERN}|{_DATE_PATTERN}([T ]{CLOCK_PATTERN}{_OFFSET_PATTERN})?)$"
)
CLOCK_OR_DATED_PATTERN = f"^({CLOCK_PATTERN}|{_DATE_PATTERN}[T ]{CLOCK_PATTERN}{_OFFSET_PATTERN})$"


@dataclass(frozen=True, kw_only=True)
class FieldSpec:
    """One field of a layer.

    `alias` is the title shown to a person, with the unit in it. `choices` maps each allowed text to its words.
    With `open_list` any other text is let in beside them.
    `minimum` and `maximum` are in `unit` and included in the range; with `above_minimum` the minimum itself is refused.
    `pattern` is a regular expression for texts with a form (clock times, dates), `pattern_words` says it in words.
    `group` is the box of the form the field stands in. `long_text` asks for a form widget of several lines.
    """

    name: str
    kind: str
    alias: str
    unit: str = ""
    default: str | int | float | None = None
    choices: Mapping[str, str] | None = None
    open_list: bool = False
    minimum: float | None = None
    maximum: float | None = None
    above_minimum: bool = False
    required: bool = False
    pattern: str = ""
    pattern_words: str = ""
    group: str = ""
    long_text: bool = False
    help: str = ""

    def __post_init__(self) -> None:
        if self.kind not in KINDS:
            raise ValueError(f"Field {self.name}: kind {self.kind!r} is none of {', '.join(KINDS)}.")
        if self.unit and f"({self.unit})" not in self.alias:
            raise ValueError(f"Field {self.name}: the alias {self.alias!r} lacks its unit ({self.unit}).")
        if self.default is not None and self.allowed and self.default not in self.allowed:
            raise ValueError(f"Field {self.name}: the default {self.default!r} is not in its own value list.")

    @property
    def allowed(self) -> tuple[str, ...]:
        """The values of the value list, in the order shown; empty when the field has none."""
        return tuple(self.choices) if self.choices else ()

    @property
    def is_number(self) -> bool:
        """Whether the field holds an integer or a real number."""
        return self.kind in ("integer", "real")

    def allowed_words(self) -> str:
        """What the field may hold, in words for an error message."""
        if self.choices:
            words = tr("one of {names}, or another text") if self.open_list else tr("one of {names}")
            return words.format(names=", ".join(self.allowed))
        if self.pattern:
            return schema_words(self.pattern_words)
        if self.kind == "datetime":
            return tr("a date and time with its UTC offset")
        if self.kind == "text":
            return tr("text")
        return self._number_words()

    def _number_words(self) -> str:
        noun = tr("a whole number") if self.kind == "integer" else tr("a number")
        unit = f" {self.unit}" if self.unit else ""
        low, high = self.minimum, self.maximum
        about = {"noun": noun, "low": low, "high": high, "unit": unit}
        if low is not None and high is not None:
            between = tr("{noun} above {low:g} to {high:g}{unit}") if self.above_minimum else None
            return (between or tr("{noun} from {low:g} to {high:g}{unit}")).format(**about)
        if low is not None:
            above = tr("{noun} above {low:g}{unit}") if self.above_minimum else None
            return (above or tr("{noun} of at least {low:g}{unit}")).format(**about)
        return noun if high is None else tr("{noun} of at most {high:g}{unit}").format(**about)


@dataclass(frozen=True, kw_only=True)
class LayerSpec:
    """One layer (or table without geometry) of a plan; `title` is what the layer tree shows."""

    name: str
    geometry: str
    title: str
    fields: tuple[FieldSpec, ...]
    help: str = ""

    def __post_init__(self) -> None:
        if self.geometry not in GEOMETRIES:
            raise ValueError(f"Layer {self.name}: geometry {self.geometry!r} is none of {', '.join(GEOMETRIES)}.")
        names = [field.name for field in self.fields]
        if len(names) != len(set(names)):
            raise ValueError(f"Layer {self.name}: a field name is used twice.")

    @property
    def has_geometry(self) -> bool:
        """Whether rows of this layer have a place on the chart."""
        return self.geometry != "none"

    @property
    def geometry_types(self) -> tuple[str, ...]:
        """The single geometry types a row may have, `()` for a table."""
        return tuple(self.geometry.split(" or ")) if self.has_geometry else ()

    def field(self, name: str) -> FieldSpec:
        """The field of that name; raises KeyError when the layer has none."""
        for field in self.fields:
            if field.name == name:
                return field
        raise KeyError(name)


@dataclass(frozen=True, kw_only=True)
class SettingSpec:
    """One key of the `settings` table: the value is stored as text, `value` says what that text must mean."""

    key: str
    value: FieldSpec

    @property
    def default_text(self) -> str:
        """The default as the table stores it."""
        return "" if self.value.default is None else str(self.value.default)
