"""Names of files out of what the user calls a thing: one rule for plans, pictures and swims, good on any system."""

from __future__ import annotations

import re
import unicodedata

LONGEST_BYTES = 120  # of such a name in that of a file: file systems take some 255 for all of it
_UNSAFE = re.compile(r"[^\w\- ]+")


def plain_name(words: str) -> str:
    """Letters, digits, blanks and hyphens alone; empty where nothing is left of the words."""
    plain = unicodedata.normalize("NFC", words)
    kept = " ".join(_UNSAFE.sub(" ", plain).split()).encode()[:LONGEST_BYTES]
    return kept.decode(errors="ignore").strip(" -")
