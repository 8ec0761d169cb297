"""What stands beside the mouse over a feature: texts of the user's in map tips, which QGIS shows as HTML."""

from __future__ import annotations

from ...plan_package.field_spec import FieldSpec, LayerSpec
from ...plan_package.words import schema_words
from ...words import tr


def plain(expression: str) -> str:
    """The expression's value as part of a map tip, its marks of HTML shown as written: names are the user's."""
    return f"[% replace(replace(coalesce(to_string({expression}), ''), '&', '&amp;'), '<', '&lt;') %]"


def tip(title: str, *lines: tuple[str, str]) -> str:
    """A map tip of a result: the title's expression in bold, then pairs of words and expression, a line each.

    What has no value is said to be not known.
    """
    unknown = "'" + tr("not known").replace("'", "''") + "'"
    told = [f"<br>{words}: " + plain(f"coalesce(to_string({value}), {unknown})") for words, value in lines]
    return f"<b>{plain(title)}</b>" + "".join(told)


def plan_tip(spec: LayerSpec) -> str:
    """A map tip for a layer of the plan: its title, then every field that is filled, a line each."""
    return f"<b>{schema_words(spec.title)}</b>" + "".join(_line(field) for field in spec.fields)


def _line(field: FieldSpec) -> str:
    """A field's title and value; nothing where it is empty, so that unknown is never read as 0."""
    filled = f"coalesce(to_string(\"{field.name}\"), '') <> ''"
    title = schema_words(field.alias).replace("'", "''")
    return f"[% if({filled}, '<br>{title}: ', '') %]{plain(_value(field))}"


def _value(field: FieldSpec) -> str:
    """The value, or the words of the value list for it."""
    words = {value: schema_words(word).replace("'", "''") for value, word in (field.choices or {}).items()}
    known = " ".join(f"WHEN \"{field.name}\" = '{value}' THEN '{word}'" for value, word in words.items())
    return f'CASE {known} ELSE "{field.name}" END' if known else f'"{field.name}"'
