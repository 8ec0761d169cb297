"""The parts of a text of stream tables, each under notes of its own: lines `# name: value`."""

from __future__ import annotations

import re
from dataclasses import dataclass, field, replace

from ..clock_labels import LabelledPlace, labels_in_line
from ..errors import BadInputError
from ..text_moments import zone_in
from ..words import tr
from .stream_asked import GUESS, StreamAsked

_NOTE = re.compile(r"^#\s*([A-Za-z][A-Za-z0-9_ ]*?)\s*:\s*(.*)$")
OF_THE_CLOCK = ("zone", "source", "note")  # notes that may name the clock of the times


@dataclass(kw_only=True)
class Block:
    """A part of the text under its own notes; other lines are left blank, so that numbers stay.

    ``comments`` are the lines that say something to people; those above everything else belong to every part.
    """

    notes: dict[str, str] = field(default_factory=dict)
    lines: dict[int, str] = field(default_factory=dict)
    comments: dict[int, str] = field(default_factory=dict)
    first: int = 1

    def clocks(self) -> tuple[LabelledPlace, ...]:
        """What its comments and notes say of the clock."""
        found = (labels_in_line(number, line) for number, line in self.comments.items())
        return tuple(place for place in found if place is not None)

    def text(self) -> str:
        """Its lines where they stand in the whole text."""
        return "\n".join(self.lines.get(number, "") for number in range(1, max(self.lines, default=0) + 1))


def blocks_of(text: str) -> list[Block]:
    """The parts of the text, [] where there is nothing in it; `# station:` and `# table:` begin a new one."""
    blocks = [Block()]
    above: dict[int, str] = {}
    for number, line in enumerate(text.lstrip("\ufeff").splitlines(), start=1):
        stripped = line.strip()
        note = _NOTE.match(stripped)
        if note:
            key = note.group(1).strip().lower().replace(" ", "_")
            # The station of a table that belongs to none by itself, as drifts, is one of its notes.
            of_table = key == "station" and "table" in blocks[-1].notes and not blocks[-1].lines
            if key in ("station", "table") and not of_table and (blocks[-1].lines or blocks[-1].notes):
                blocks.append(Block(first=number, comments=dict(above)))
            blocks[-1].notes[key] = note.group(2).strip()
            if key in OF_THE_CLOCK:
                blocks[-1].comments[number] = f"{key}: {note.group(2)}"
        elif stripped.startswith("#"):
            blocks[-1].comments[number] = stripped.lstrip("# ")
            if len(blocks) == 1 and not blocks[0].lines and not blocks[0].notes:
                above[number] = stripped.lstrip("# ")
        elif stripped:
            blocks[-1].lines[number] = line
    return [block for block in blocks if block.lines or block.notes]


def asked_of(block: Block, asked: StreamAsked) -> StreamAsked:
    """What the notes of a block say, where the user does not; SwimPlanError where the two contradict each other."""
    notes, said = block.notes, {}
    for key, mine in (("station", asked.station), ("reference", asked.reference), ("port", asked.port)):
        theirs = notes.get(key, "")
        if mine and theirs and mine != theirs:
            raise BadInputError(
                layer=asked.name,
                row=block.first,
                field=key,
                value=theirs,
                allowed=tr("The {key} asked for is {mine}").format(key=key, mine=mine),
                remedy=tr("Leave it out, or read this part alone"),
            )
        said[key] = mine or theirs
    zone = asked.zone
    if notes.get("zone") and zone is None:
        zone = zone_in(notes["zone"])
    form = asked.form if asked.form != GUESS else {"harmonic": "constants"}.get(notes.get("form", ""), "")
    form = form or notes.get("form") or notes.get("table") or GUESS
    return replace(asked, form=form, zone=zone, unit=asked.unit or notes.get("units", ""), **said)
