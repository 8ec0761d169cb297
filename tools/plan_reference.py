"""Writes the tables of docs/plan-package.md from the schema, so that page and plan cannot disagree.

Run `python3 tools/plan_reference.py` after a change of the schema; a test compares the two.
"""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from tideleg.plan_package.field_spec import FieldSpec, LayerSpec

ROOT = Path(__file__).resolve().parent.parent
PAGE = ROOT / "docs" / "plan-package.md"
BEGIN = "<!-- written by tools/plan_reference.py from here -->"
END = "<!-- to here -->"


def reference() -> str:
    """The layers and settings as Markdown."""
    from tideleg.plan_package.schema import LAYERS, SETTINGS

    parts = []
    for layer in LAYERS:
        parts.append(f"### `{layer.name}` ({_geometry(layer)})\n\n{layer.help}\n")
        rows = [_field_row(field) for field in layer.fields]
        parts.append(_table(("Field", "In the form", "Type", "Holds", "Default", "Meaning"), rows))
    parts.append("### Keys of `settings`\n")
    rows = [
        (f"`{s.key}`", s.value.allowed_words(), f"`{s.default_text}`" if s.default_text else "empty", s.value.help)
        for s in SETTINGS
    ]
    parts.append(_table(("Key", "Value", "Default", "Meaning"), rows))
    return "\n".join(parts)


def page_with(tables: str, page: str) -> str:
    """The page with its tables replaced."""
    before, rest = page.split(BEGIN)
    after = rest.split(END)[1]
    return f"{before}{BEGIN}\n\n{tables}\n{END}{after}"


def _geometry(layer: LayerSpec) -> str:
    return "table" if not layer.has_geometry else layer.geometry


def _field_row(field: FieldSpec) -> tuple[str, ...]:
    holds = field.allowed_words() if not field.choices else ", ".join(f"`{value}`" for value in field.allowed)
    needed = "" if field.required else ", or empty"
    default = "" if field.default is None else f"`{field.default}`"
    return f"`{field.name}`", field.alias, field.kind, holds + needed, default, field.help


def _table(head: tuple[str, ...], rows: list[tuple[str, ...]]) -> str:
    lines = [head, tuple("---" for _ in head), *rows]
    return "\n".join("| " + " | ".join(line) + " |" for line in lines) + "\n"


if __name__ == "__main__":
    sys.path.insert(0, str(ROOT / ".cache" / "python"))
    PAGE.write_text(page_with(reference(), PAGE.read_text(encoding="utf-8")), encoding="utf-8")
