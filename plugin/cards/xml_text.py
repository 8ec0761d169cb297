"""Text in XML: what it cannot carry is left out, what it would take for its own is escaped."""

from __future__ import annotations

import re
from html import escape

# What XML 1.0 has no way to carry: control characters, surrogates, two non-characters.
UNWRITABLE = re.compile("[\x00-\x1f\x7f-\x9f\ud800-\udfff\ufffe\uffff]+")


def clean(text: str) -> str:
    """The text without what XML cannot carry, runs of it become one space."""
    return UNWRITABLE.sub(" ", text).strip()


def element(tag: str, text: str) -> str:
    """``<tag>text</tag>``."""
    return f"<{tag}>{escape(clean(text))}</{tag}>"
