"""What is asked of a stream table given as text, and what it gave."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime, tzinfo

from ..words import tr
from .stream_rows import TextPlanRow

GUESS = "guess"


@dataclass(frozen=True, kw_only=True)
class StreamAsked:
    """What the user says of a text; "" and None leave it to the text. ``name`` is what errors call it."""

    form: str = GUESS
    name: str = field(default_factory=lambda: tr("the text"))
    station: str = ""
    reference: str = ""
    port: str = ""
    unit: str = ""
    zone: tzinfo | None = None
    date_order: str = ""
    start: datetime | None = None
    step_min: float | None = None


@dataclass(frozen=True, kw_only=True)
class StreamReading:
    """What one table of a text gave.

    ``station`` holds fields of stream_stations as texts ("" in `station` where the rows belong to none), with lon and
    lat where the text says them. ``columns`` says of each column what it was taken for;
    ``clock`` which clock its times were read from, and why.
    """

    form: str
    station: dict[str, str]
    rows: tuple[TextPlanRow, ...]
    columns: tuple[dict[str, str], ...] = ()
    separator: str = ""
    clock: str = ""
    skipped: tuple[tuple[int, str], ...] = ()
    notes: tuple[str, ...] = ()
    line: int = 1
