"""The pages of the documentation as they came with the plugin: where they are, and what their headings are called."""

from __future__ import annotations

import re
from pathlib import Path

PLUGIN = Path(__file__).resolve().parents[1]
FOLDERS = (PLUGIN / "docs", PLUGIN.parent / "docs")  # in the zip; in the checkout around the plugin
HEADING = re.compile(r"^#{1,6} +(.+?) *#*$", re.MULTILINE)
CODE_BLOCK = re.compile(r"^(```|~~~).*?^\1", re.MULTILINE | re.DOTALL)


def docs_folder() -> Path | None:
    """Where the pages are; None for a copy of the plugin without any."""
    return next((folder for folder in FOLDERS if (folder / "dock.md").is_file()), None)


def anchor_of(heading: str) -> str:
    """``Turn back (late)`` is ``turn-back-late``: small letters, hyphens for blanks, no punctuation."""
    return re.sub(r"[^\w\- ]", "", heading.strip().lower()).replace(" ", "-")


def anchors_in(text: str) -> set[str]:
    """The anchors of all headings of a page in Markdown."""
    return {anchor_of(heading) for heading in HEADING.findall(CODE_BLOCK.sub("", text))}
