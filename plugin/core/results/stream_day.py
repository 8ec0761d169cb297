"""The stream at one place through a day: by the step, its slacks and maxima, and when it is weak."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime


@dataclass(frozen=True, kw_only=True)
class StreamRow:
    """The stream at a moment: set TOWARDS, degrees true, and rate, both None where it is not known.

    ``known`` is known, extrapolated or unknown; ``source`` the source with the largest share.
    """

    moment: datetime
    set_deg: float | None
    rate_kn: float | None
    known: str
    source: str


@dataclass(frozen=True, kw_only=True)
class StreamEvent:
    """A least or greatest rate, to the minute.

    A ``slack`` is a least rate at which the set turns by more than a right angle; a rotary stream has ``least`` rates
    instead. The sets are those a quarter of an hour before and after.
    """

    moment: datetime
    kind: str
    rate_kn: float
    set_before_deg: float | None
    set_after_deg: float | None


@dataclass(frozen=True, kw_only=True)
class WeakWindow:
    """A time in which the stream is known and not above the rate asked for, and what ends it on either side:
    ``rate``, ``unknown`` or ``day`` (the span looked at ends)."""

    start: datetime
    end: datetime
    starts_by: str
    ends_by: str

    @property
    def minutes(self) -> float:
        """Its length."""
        return (self.end - self.start).total_seconds() / 60.0


@dataclass(frozen=True, kw_only=True)
class StreamDay:
    """The stream at a place in degrees over a span of aware moments; ``below_kn`` is the rate the windows keep to."""

    lon: float
    lat: float
    zone: str
    start: datetime
    end: datetime
    below_kn: float
    rows: tuple[StreamRow, ...]
    events: tuple[StreamEvent, ...]
    windows: tuple[WeakWindow, ...]
    warnings: tuple[str, ...] = ()


def stream_day_dict(day: StreamDay, *, version: str) -> dict[str, object]:
    """The day as JSON's own kinds of value: times ISO 8601 with offset, None where something is not known."""
    return {
        "tideleg": version,
        "lon": day.lon,
        "lat": day.lat,
        "zone": day.zone,
        "from": day.start.isoformat(),
        "to": day.end.isoformat(),
        "below_kn": day.below_kn,
        "rows": [
            {
                "time": row.moment.isoformat(),
                "set_deg": row.set_deg,
                "rate_kn": row.rate_kn,
                "known": row.known,
                "source": row.source,
            }
            for row in day.rows
        ],
        "events": [
            {
                "time": event.moment.isoformat(),
                "kind": event.kind,
                "rate_kn": event.rate_kn,
                "set_before_deg": event.set_before_deg,
                "set_after_deg": event.set_after_deg,
            }
            for event in day.events
        ],
        "windows": [
            {
                "from": window.start.isoformat(),
                "to": window.end.isoformat(),
                "minutes": window.minutes,
                "starts_by": window.starts_by,
                "ends_by": window.ends_by,
            }
            for window in day.windows
        ],
        "warnings": list(day.warnings),
    }
