"""The flags of the card in words, the gravest first."""

from __future__ import annotations

from ..core.results.card import merged_flags
from ..core.results.flag import Flag
from ..core.results.swim_plan import SwimPlan
from ..words import tr
from .block import Block, small_lines, wrapped
from .paper import SMALL

FLAG_LINES = {"stop": 5, "warn": 3, "note": 2}  # at most, for one flag
MOST_LINES = 60  # as good as all: no swim has as many


def flags(plan: SwimPlan, note_lines: int, grave_lines: int, width_mm: float) -> list[Block]:
    """Stops and warnings in words within so many lines, notes while all together are within the other number.

    How many are not shown is said, and how many of them are grave.
    """
    found = merged_flags(plan.flags)
    blocks: list[Block] = []
    used = 0
    for number, (flag, legs) in enumerate(found):
        text = flag_words(flag, legs, shared=plan.marks_left_out)
        words = SMALL.whole_sentences(text, width_mm, FLAG_LINES[flag.severity])
        most = note_lines if flag.severity == "note" else grave_lines
        # The last line is kept free for the count as long as more flags wait; the gravest of all always stands there.
        if number and used + len(words) > most - (number + 1 < len(found)):
            break
        blocks.append(small_lines(words))
        used += len(words)
    hidden = [flag for flag, _ in found[len(blocks) :]]
    if hidden:
        blocks.append(wrapped(_hidden_words(hidden), width_mm, 3))
    return blocks or [small_lines([tr("No flags. Feasible is not safe.")])]


def _hidden_words(hidden: list[Flag]) -> str:
    grave = sum(flag.severity != "note" for flag in hidden)
    if grave:
        words = tr("{count} more flags, {grave} of them stops or warnings: read the report.")
        return words.format(count=len(hidden), grave=grave)
    if len(hidden) == 1:
        return tr("1 more flag: read the report.")
    return tr("{count} more flags: read the report.").format(count=len(hidden))


def flag_words(flag: Flag, legs: list[int], *, shared: bool = False) -> str:
    """``STOP: leg 2, crosses land.``: a flag of so many legs in the few words a card has room for.

    ``shared``: of a plan whose flags keep no words but that of their kind.
    """
    leads = {"stop": tr("STOP:"), "warn": tr("WARNING:"), "note": tr("note:")}
    said = kind_words(flag.kind) if shared else flag.brief or flag.message
    return f"{leads[flag.severity]} {_on_legs(legs)}{said}"


def kind_words(kind: str) -> str:
    """What a flag is about, without saying where."""
    return {
        "channel": tr("crosses a channel"),
        "closed_area": tr("touches an area with rules"),
        "land": tr("crosses land"),
        "over_range": tr("longer than the swimmer's range"),
        "over_time": tr("longer than there is time for"),
        "not_swimmable": tr("cannot be swum"),
        "after_dark": tr("in the dark"),
        "shallow": tr("too shallow"),
        "deep": tr("too deep"),
        "stream_unknown": tr("stream not known"),
        "stream_extrapolated": tr("stream beyond its tables"),
        "tide_unknown": tr("tide not known"),
        "fluid": tr("water to drink"),
        "uncalibrated": tr("pace and limits are guesses"),
    }[kind]


def _on_legs(legs: list[int]) -> str:
    """``leg 2, `` or ``legs 1 and 3, `` before what is to be minded there; nothing without a leg."""
    if len(legs) < 2:
        return "".join(tr("leg {number}").format(number=number) + ", " for number in legs)
    first = ", ".join(str(number) for number in legs[:-1])
    return tr("legs {first} and {last}").format(first=first, last=legs[-1]) + ", "
