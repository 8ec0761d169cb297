"""How a refused cell is spoken of: what was in it, in one short line, and why a formula is none of its values."""

from __future__ import annotations

import re

from ...core.errors import SwimPlanError
from ...words import tr

SHOWN_CHARACTERS = 40
# Control characters, and those that turn the direction of what is written after them.
UNSEEN = re.compile("[\x00-\x1f\x7f-\x9f\u200e\u200f\u202a-\u202e\u2028\u2029\u2066-\u2069\ufeff]")


def short(text: str) -> str:
    """A text of the user's as it may stand in a message: one line, not too long."""
    cut = UNSEEN.sub("\N{REPLACEMENT CHARACTER}", text[: SHOWN_CHARACTERS + 1])
    return cut if len(text) <= SHOWN_CHARACTERS else f"{cut[:SHOWN_CHARACTERS]}…"


def refused(text: str, allowed: str, remedy: str) -> SwimPlanError:
    """Why the text of a cell is not taken; a formula is refused as one, whatever it stands for."""
    if text.lstrip().startswith("="):
        allowed, remedy = tr("That is a formula, not its result"), tr("Paste the values")
    asked = tr("Got '{}'").format(short(text)) if text else tr("The cell is empty")
    return SwimPlanError(asked=asked, allowed=allowed, remedy=remedy)
