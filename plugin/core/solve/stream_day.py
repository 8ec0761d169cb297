"""The stream at one place through a day, looked at every minute."""

from __future__ import annotations

from datetime import datetime

import numpy as np

from ..clock import PlanClock
from ..geodesy import LocalFrame
from ..quantities import knots_from_m_s
from ..results.stream_day import StreamDay, StreamEvent, StreamRow, WeakWindow
from ..water.field import StreamField
from ..water.stream import EXTRAPOLATED, KNOWN, UNKNOWN, StreamSample

MINUTE_S = 60.0
TURN_ROWS = 15  # a quarter of an hour before and after tells where a stream turned from and to
STATUS_WORDS = {KNOWN: "known", EXTRAPOLATED: "extrapolated", UNKNOWN: "unknown"}


def stream_day(
    field: StreamField,
    frame: LocalFrame,
    clock: PlanClock,
    *,
    lon: float,
    lat: float,
    start: datetime,
    end: datetime,
    step_min: float = 60.0,
    below_kn: float = 0.5,
    warnings: tuple[str, ...] = (),
) -> StreamDay:
    """Rows every ``step_min``, least and greatest rates to the minute, and the windows at or below a rate."""
    x_m, y_m = frame.to_xy(np.array([[lon, lat]]))[0]
    times = np.arange(clock.seconds(start), clock.seconds(end) + 1.0, MINUTE_S)
    sample = field.at(x_m, y_m, times)
    rate = knots_from_m_s(sample.rate_m_s)
    every = max(1, round(step_min))
    return StreamDay(
        lon=lon,
        lat=lat,
        zone=clock.zone_name,
        start=clock.moment(times[0]),
        end=clock.moment(times[-1]),
        below_kn=below_kn,
        rows=tuple(_row(field, clock, times, sample, row) for row in range(0, len(times), every)),
        events=tuple(_events(clock, times, sample, rate)),
        windows=tuple(_windows(clock, times, rate, below_kn)),
        warnings=warnings,
    )


def _row(field: StreamField, clock: PlanClock, times: np.ndarray, sample: StreamSample, row: int) -> StreamRow:
    known = sample.status[row] != UNKNOWN
    return StreamRow(
        moment=clock.moment(times[row]),
        set_deg=float(sample.set_deg[row]) if known else None,
        rate_kn=float(knots_from_m_s(sample.rate_m_s[row])) if known else None,
        known=STATUS_WORDS[int(sample.status[row])],
        source=field.source_names[sample.source[row]] if known else "",
    )


def _events(clock: PlanClock, times: np.ndarray, sample: StreamSample, rate: np.ndarray) -> list[StreamEvent]:
    """Least and greatest rates inside the span; a flat stretch counts once, a constant stream has none."""
    turning = [(row, "least") for row in _peaks(-rate)] + [(row, "greatest") for row in _peaks(rate)]
    return [_event(clock, times, sample, rate, row, kind) for row, kind in sorted(turning)]


def _peaks(values: np.ndarray) -> list[int]:
    """Rows at which values rise before and fall after; the middle one of a flat top."""
    rows, found = np.flatnonzero(np.abs(np.diff(values)) > 1e-9), []
    for before, after in zip(rows[:-1], rows[1:]):
        whole = np.all(np.isfinite(values[before : after + 2]))
        if whole and values[before + 1] > values[before] and values[after + 1] < values[after]:
            found.append(int(before + 1 + after) // 2)
    return found


def _event(
    clock: PlanClock, times: np.ndarray, sample: StreamSample, rate: np.ndarray, row: int, kind: str
) -> StreamEvent:
    before, after = (_set_at(sample, row + shift) for shift in (-TURN_ROWS, TURN_ROWS))
    turned = None not in (before, after) and np.cos(np.radians(after - before)) < 0.0
    return StreamEvent(
        moment=clock.moment(times[row]),
        kind="slack" if kind == "least" and turned else kind,
        rate_kn=float(rate[row]),
        set_before_deg=before,
        set_after_deg=after,
    )


def _set_at(sample: StreamSample, row: int) -> float | None:
    inside = 0 <= row < len(sample.status) and sample.status[row] != UNKNOWN
    return float(sample.set_deg[row]) if inside else None


def _windows(clock: PlanClock, times: np.ndarray, rate: np.ndarray, below_kn: float) -> list[WeakWindow]:
    """Times at or below the rate; an edge by the rate lies where a straight line between two minutes crosses it."""
    weak = rate <= below_kn
    edges = np.diff(np.concatenate([[False], weak, [False]]).astype(int))
    found = []
    for first, last in zip(np.flatnonzero(edges == 1), np.flatnonzero(edges == -1) - 1):
        start, starts_by = _edge(times, rate, below_kn, int(first), int(first) - 1)
        end, ends_by = _edge(times, rate, below_kn, int(last), int(last) + 1)
        found.append(WeakWindow(start=clock.moment(start), end=clock.moment(end), starts_by=starts_by, ends_by=ends_by))
    return found


def _edge(times: np.ndarray, rate: np.ndarray, below_kn: float, inside: int, outside: int) -> tuple[float, str]:
    if not 0 <= outside < len(times):
        return float(times[inside]), "day"
    if np.isnan(rate[outside]):
        return float(times[inside]), "unknown"
    share = (below_kn - rate[inside]) / (rate[outside] - rate[inside])
    return float(times[inside] + (times[outside] - times[inside]) * share), "rate"
