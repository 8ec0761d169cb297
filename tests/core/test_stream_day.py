"""The stream at a place through a day, on streams whose slacks, maxima and windows have a formula."""

from __future__ import annotations

from datetime import datetime, timedelta, timezone

import numpy as np
import pytest
from tideleg.core.clock import PlanClock
from tideleg.core.geodesy import LocalFrame
from tideleg.core.quantities import M_S_PER_KNOT
from tideleg.core.results.stream_day import stream_day_dict
from tideleg.core.solve.stream_day import stream_day
from tideleg.core.water.field import Station, StreamField
from tideleg.core.water.stream import KNOWN, UNKNOWN, ConstantStream, StreamSample

START = datetime(2027, 6, 5, tzinfo=timezone.utc)
CLOCK = PlanClock(start=START, zone_name="UTC")
FRAME = LocalFrame(lon=-40.0, lat=35.0)
HALF_PERIOD_S = 372.0 * 60.0
SLACK_S = 13 * 3600.0


class Formula:
    """A station's stream by a formula of time, unknown in a span."""

    def __init__(self, east_north_kn, unknown=(np.inf, np.inf)) -> None:
        self.east_north_kn, self.unknown = east_north_kn, unknown

    def at(self, t_s) -> StreamSample:
        t_s = np.asarray(t_s, dtype=float)
        lost = (t_s >= self.unknown[0]) & (t_s <= self.unknown[1])
        east, north = (np.where(lost, np.nan, part * M_S_PER_KNOT + 0.0 * t_s) for part in self.east_north_kn(t_s))
        return StreamSample(east_m_s=east, north_m_s=north, status=np.where(lost, UNKNOWN, KNOWN))


def day_of(stream, **asked):
    field = StreamField(stations=(Station(name="S", x_m=0.0, y_m=0.0, stream=stream),))
    span = {"start": START, "end": START + timedelta(hours=24)}
    return stream_day(field, FRAME, CLOCK, lon=-40.0, lat=35.0, **{**span, **asked})


def sine(t_s):
    return 0.9 / M_S_PER_KNOT * np.sin(np.pi * (t_s - SLACK_S) / HALF_PERIOD_S), 0.0


def clock(moment: datetime) -> str:
    return f"{moment + timedelta(seconds=30):%H:%M}"


def test_slacks_of_a_sine_come_every_half_period_and_maxima_half_way() -> None:
    events = day_of(Formula(sine)).events
    assert [clock(event.moment) for event in events if event.kind == "slack"] == ["00:36", "06:48", "13:00", "19:12"]
    assert [clock(event.moment) for event in events if event.kind == "greatest"] == ["03:42", "09:54", "16:06", "22:18"]
    noon = next(event for event in events if clock(event.moment) == "13:00")
    assert (noon.set_before_deg, noon.set_after_deg) == (pytest.approx(270.0), pytest.approx(90.0))


def test_the_window_below_a_rate_is_as_long_as_the_arcsine_says() -> None:
    # 2 (T / pi) asin(c0 / cmax): common practice, no source.
    minutes = 2.0 * 372.0 / np.pi * np.arcsin(0.3 / 0.9)
    window = next(w for w in day_of(Formula(sine), below_kn=0.3 / M_S_PER_KNOT).windows if w.start.hour == 12)
    assert window.minutes == pytest.approx(minutes, abs=0.02)
    assert (window.starts_by, window.ends_by) == ("rate", "rate")


def test_a_rotary_stream_has_least_rates_and_no_slack() -> None:
    def rotary(t_s):
        return 0.4 * np.sin(np.pi * t_s / HALF_PERIOD_S), 1.0 * np.cos(np.pi * t_s / HALF_PERIOD_S)

    events = day_of(Formula(rotary)).events
    assert {event.kind for event in events} == {"least", "greatest"}
    assert min(event.rate_kn for event in events) == pytest.approx(0.4, abs=1e-3)


def test_unknown_hours_have_no_numbers_and_end_a_window_as_unknown() -> None:
    day = day_of(Formula(sine, unknown=(SLACK_S, SLACK_S + 3600.0)), below_kn=0.6)
    row = next(row for row in day.rows if row.moment.hour == 13)
    assert (row.set_deg, row.rate_kn, row.known, row.source) == (None, None, "unknown", "")
    window = next(window for window in day.windows if window.end.hour == 12)
    assert window.ends_by == "unknown"
    assert window.end < START + timedelta(hours=13)
    assert not [event for event in day.events if 12.9 < (event.moment - START) / timedelta(hours=1) < 14.1]


def test_a_constant_stream_has_no_events_and_is_weak_all_day_or_never() -> None:
    stream = ConstantStream.from_set(120.0, 0.4 * M_S_PER_KNOT)
    weak, strong = day_of(stream, below_kn=0.5), day_of(stream, below_kn=0.3)
    assert weak.events == () and strong.windows == ()
    assert [(window.minutes, window.starts_by, window.ends_by) for window in weak.windows] == [(1440.0, "day", "day")]
    assert {row.source for row in weak.rows} == {"S"} and len(weak.rows) == 25


def test_the_day_as_json_keeps_what_is_not_known_as_null() -> None:
    day = day_of(Formula(sine, unknown=(0.0, 3600.0)))
    told = stream_day_dict(day, version="1.2.3")
    assert told["rows"][0]["rate_kn"] is None and told["rows"][0]["known"] == "unknown"
    assert told["rows"][2]["time"] == "2027-06-05T02:00:00+00:00"
