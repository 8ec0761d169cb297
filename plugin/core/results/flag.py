"""Something to mind on a swim."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

FLAG_KINDS = (
    "channel",
    "closed_area",
    "land",
    "over_range",
    "over_time",
    "not_swimmable",
    "after_dark",
    "shallow",
    "deep",
    "stream_unknown",
    "stream_extrapolated",
    "tide_unknown",
    "fluid",
    "uncalibrated",
)
SEVERITIES = ("stop", "warn", "note")


@dataclass(frozen=True, kw_only=True)
class Flag:
    """Something to mind: ``kind`` and ``severity`` from the lists above, ``message`` a sentence a swimmer understands.

    ``points`` are (lon, lat) pairs: one for a place, two or more for a stretch of the track; never empty. ``brief``
    says it in the few words a card has room for. ``start`` and ``end`` bound the time; ``crossing_angle_deg`` is that
    of the heading to the channel's flow (0-90).
    """

    kind: str
    severity: str
    message: str
    points: tuple[tuple[float, float], ...]
    brief: str = ""
    leg: int | None = None
    name: str = ""
    start: datetime | None = None
    end: datetime | None = None
    length_m: float | None = None
    crossing_angle_deg: float | None = None

    def __post_init__(self) -> None:
        if self.kind not in FLAG_KINDS or self.severity not in SEVERITIES or not self.points:
            raise ValueError(f"flag of kind {self.kind!r}, severity {self.severity!r}, {len(self.points)} points")
