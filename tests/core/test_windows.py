"""Windows of departures against planswim itself, departure by departure, and against closed forms."""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import datetime, time, timedelta

import numpy as np
import pytest
from invented_requests import NOON, SWIMMER, UTC, Site
from tideleg.core.chart.areas import Channel, ClosedArea, Land, Sailing
from tideleg.core.chart.hours import InForce
from tideleg.core.errors import StoppedError, SwimPlanError
from tideleg.core.planar import PlanarArea, stretches_inside, stretches_of_many
from tideleg.core.solve.plan_swim import plan_swim
from tideleg.core.solve.swim import HOLD_LINE
from tideleg.core.solve.windows.departures import swim_departures
from tideleg.core.solve.windows.find_windows import _best, departures_between, find_windows
from tideleg.core.solve.windows.limits import LIMITS
from tideleg.core.water.field import StreamField
from tideleg.core.water.stream import KNOWN, UNKNOWN, StreamSample
from tideleg.core.water.tide import TideTable

HALF_S = 372.0 * 60.0
STOPS = [(0.0, 0.0), (300.0, 700.0), (-200.0, 900.0), (0.0, 0.0)]


class Turning:
    """A stream along one line, a sine in time whose strength grows from tide to tide; unknown after a while."""

    def __init__(self, towards_deg: float, rate_m_s: float, slack_s: float = 0.0, *, grows: float = 0.0, until=np.inf):
        self.angle, self.rate, self.slack_s, self.grows, self.until = (
            math.radians(towards_deg),
            rate_m_s,
            slack_s,
            grows,
            until,
        )

    def at(self, t_s) -> StreamSample:
        phase = (np.asarray(t_s, dtype=float) - self.slack_s) / HALF_S
        rate = self.rate * (1.0 + self.grows * np.floor(phase / 2.0 + 0.5)) * np.sin(np.pi * phase)
        rate = np.where(np.asarray(t_s) <= self.until, rate, np.nan)
        status = np.where(np.isnan(rate), UNKNOWN, KNOWN).astype(np.int8)
        return StreamSample(east_m_s=rate * np.sin(self.angle), north_m_s=rate * np.cos(self.angle), status=status)


def tides(count: int = 12, *, spring: float = 4.5, first_s: float = -3 * HALF_S) -> TideTable:
    times = first_s + HALF_S * np.arange(count)
    high = np.arange(count) % 2 == 0
    return TideTable(port="invented", times_s=times, heights_m=np.where(high, spring, 0.6), is_high=high)


def crowded(site: Site, **changes):
    """A swim with everything that can stop it: stream, dusk, hours, a ferry, closed hours, depth."""
    channel = Channel(
        name="Cut",
        kind="ferry",
        area=site.box(-1500.0, 300.0, 1500.0, 420.0),
        flow_deg=site.towards(90.0),
        sailings=tuple(Sailing(when=time(hour, 20), clear_before_min=10, clear_after_min=5) for hour in (9, 13, 16)),
    )
    closed = ClosedArea(
        name="Range",
        rule="no_entry",
        area=site.box(-60.0, 760.0, 200.0, 960.0),
        in_force=InForce(start=time(10, 0), end=time(11, 30)),
    )
    about = {
        "stream": StreamField(stations=(site.station(stream=Turning(site.towards(10.0), 0.75, 1800.0)),)),
        "stays_min": (20.0, 15.0),
        "depths_m": (8.0, 9.5),
        "tide": tides(),
        "channels": (channel,),
        "closed_areas": (closed,),
        "land": (Land(name="Skerry", area=site.box(280.0, 250.0, 320.0, 420.0)),),
        "swimmer": replace(SWIMMER, depth_limit_m=13.0, max_hours=2.4),
    }
    return site.request(STOPS, **{**about, **changes})


def looked_at_one_by_one(request, departs_s):
    """Whether planswim finds a departure feasible and its marks neither too deep nor too shoal."""
    good = []
    for t_s in departs_s:
        plan = plan_swim(replace(request, depart=request.clock.moment(float(t_s))))
        depth = any(flag.kind in ("deep", "shallow") for flag in plan.flags)
        good.append((plan.feasible and not depth, plan.total_min))
    return good


@pytest.mark.parametrize(
    ("site", "zone"),
    [
        (Site(), "UTC"),
        (Site(lon=179.999, lat=-41.0, turn_deg=130.0), "Pacific/Auckland"),
        (Site(lon=-28.5, lat=60.5, turn_deg=-70.0), "America/St_Johns"),
    ],
)
def test_windows_are_planswim_departure_by_departure(site: Site, zone: str) -> None:
    request = crowded(site, zone=zone)
    departs = np.arange(-10 * 3600.0, 14 * 3600.0, 600.0)
    swum = swim_departures(request, departs)
    one_by_one = looked_at_one_by_one(request, departs)
    assert swum.feasible.tolist() == [good for good, _ in one_by_one]
    minutes = [m for good, m in one_by_one if good]
    assert np.allclose(swum.total_s[swum.feasible] / 60.0, minutes, atol=1.0 / 60.0)
    assert 2 < len(minutes) < len(departs) - 20
    # What stops them is really there: most limits have their turn.
    assert {"stream", "dark"} <= {LIMITS[code] for code in swum.limit}


def test_each_limit_is_named() -> None:
    site = Site()
    calm = {"stream": site.steady(0.0, 0.0), "swimmer": replace(SWIMMER, depth_limit_m=20.0, max_hours=6.0)}

    def limit(depart_s: float = 1.5 * 3600.0, **changes) -> str:
        return LIMITS[int(swim_departures(crowded(site, **{**calm, **changes}), np.array([depart_s])).limit[0])]

    far = replace(calm["swimmer"], range_m=1000.0)
    assert limit() == ""
    assert limit(swimmer=far) == "range"
    assert limit(swimmer=replace(calm["swimmer"], max_hours=0.5)) == "hours"
    assert limit(swimmer=replace(calm["swimmer"], depth_limit_m=9.0)) == "depth"
    assert limit(stream=site.steady(180.0, 0.9)) == "stream"
    assert limit(stream=StreamField(stations=())) == "unknown"
    assert limit(land=(Land(name="Isle", area=site.box(100.0, 300.0, 200.0, 500.0)),)) == "land"
    assert limit(13 * 3600.0) == "dark"
    assert limit(-2.6 * 3600.0) == "closed"
    assert limit(0.1 * 3600.0) == "ferry"


def test_the_other_heading_modes_have_windows_too() -> None:
    site = Site()
    weak = StreamField(stations=(site.station(stream=Turning(site.towards(10.0), 0.5, 1800.0)),))
    request = crowded(site, stream=weak, mode=HOLD_LINE)
    departs = np.arange(0.0, 5 * 3600.0, 900.0)
    swum = swim_departures(request, departs)
    assert swum.feasible.tolist() == [good for good, _ in looked_at_one_by_one(request, departs)]
    assert swum.feasible.any()


def test_window_of_a_sine_stream_is_the_closed_form() -> None:
    """Minutes below c0 are 2 (T / pi) asin(c0 / cmax), common practice, no source; a hop is as good as a moment."""
    site, most = Site(), 1.2
    hop = site.request(
        [(0.0, 0.0), (0.0, 3.0)],
        stream=StreamField(stations=(site.station(stream=Turning(site.towards(90.0), most)),)),
        swimmer=replace(SWIMMER, pace_m_s=0.6, min_ground_speed_m_s=0.0),
    )
    found, _ = find_windows(hop, NOON - timedelta(hours=3), NOON + timedelta(hours=3), 1.0)
    (window,) = found.windows
    exact = 2.0 * 372.0 / math.pi * math.asin(0.6 / most)
    assert abs(window.open_min - exact) <= 2.0
    assert window.opens.limit == window.closes.limit == "stream"
    assert "you make 0.60 m/s" in window.opens.words


def test_story_3_window_by_the_limit_of_the_stream() -> None:
    """Story 3, common practice, no source: slack 11:40, cmax 0.9, limit 0.3: window 11:00-12:20."""
    site = Site()
    slack = datetime(2027, 6, 5, 11, 40, tzinfo=UTC)
    request = site.request([(0.0, 0.0), (0.0, 0.01)], depart=slack)
    # Only what is across counts against the limit here: a swimmer who makes 0.3 m/s is set off the line beyond it.
    field = StreamField(stations=(site.station(stream=Turning(site.towards(90.0), 0.9)),))
    request = replace(
        request, stream=field, swimmer=replace(SWIMMER, pace_m_s=0.3, min_ground_speed_m_s=0.0, path_factor=1.0)
    )
    found, _ = find_windows(request, slack - timedelta(hours=2), slack + timedelta(hours=2), 1.0)
    (window,) = found.windows
    edge = 372.0 / math.pi * math.asin(0.3 / 0.9)
    first, last = slack - timedelta(minutes=edge), slack + timedelta(minutes=edge)
    assert (f"{window.first:%H:%M}", f"{window.last:%H:%M}") == ("11:00", "12:20")
    assert first <= window.first < first + timedelta(minutes=1) and last - timedelta(minutes=1) < window.last <= last


def test_window_ends_are_told_in_words_and_days_are_ranked() -> None:
    request = crowded(Site())
    found, swum = find_windows(request, NOON - timedelta(hours=13), NOON + timedelta(hours=35), 10.0)
    assert found.feasible == swum.feasible.sum() == sum(window.departures for window in found.windows)
    assert all(window.opens.words and window.closes.words for window in found.windows)
    assert [day.rank for day in found.days] == list(range(1, len(found.days) + 1))
    longest = [day.longest_min for day in found.days]
    assert longest == sorted(longest, reverse=True)
    best = [window for window in found.windows if window.first.date() == found.days[0].day]
    assert found.days[0].longest_min == max(window.open_min for window in best)
    for window in found.windows:
        assert window.first <= window.best <= window.last
        assert window.best_min <= window.worst_min
    off = timedelta(minutes=15)
    long = [window for window in found.windows if window.last - window.first >= 3 * off]
    assert long and all(window.first + off <= window.best <= window.last - off for window in long)


def test_the_best_departure_is_never_the_last_before_what_closes_the_window() -> None:
    """The later the quicker, until the channel's sailing: whoever leaves a little late must still be in the window."""
    depart = np.arange(0.0, 7201.0, 600.0)
    assert depart[_best(depart, 9000.0 - depart)] == 6000.0
    assert depart[_best(depart, 9000.0 + depart)] == 1200.0
    assert _best(depart[:4], 9000.0 - depart[:4]) == 2  # 0, 10, 20, 30 min: a third of them is off
    assert _best(depart[:1], depart[:1]) == 0


def test_story_6_range_that_gives_a_weak_stream_long_enough() -> None:
    """Story 6, common practice, no source: 160 min with |c| <= 0.4 needs cmax <= 0.64: range <= 2.3 m."""
    site = Site()
    count = 40
    times = HALF_S * (np.arange(count) - 1.0)
    high = np.arange(count) % 2 == 0
    range_of = 2.0 + 3.0 * np.arange(count) / count
    tide = TideTable(port="invented", times_s=times, heights_m=np.where(high, range_of, 0.0), is_high=high)
    knot = 1852.0 / 3600.0

    class ByRange:
        """cmax linear in the range: 0.55 at 2.0 m, 1.4 at 5.0 m; here the figures are knots."""

        def at(self, t_s) -> StreamSample:
            t = np.asarray(t_s, dtype=float)
            day = np.interp(t, times, range_of)
            rate = knot * (0.55 + (1.4 - 0.55) * (day - 2.0) / 3.0) * np.sin(np.pi * t / HALF_S)
            return StreamSample(east_m_s=rate, north_m_s=0.0 * rate, status=np.full(t.shape, KNOWN, dtype=np.int8))

    request = site.request(
        [(0.0, 0.0), (0.0, 100.0)], stream=StreamField(stations=(site.station(stream=ByRange()),)), tide=tide
    )
    start = request.clock.moment(times[1])
    found, _ = find_windows(
        request, start, start + timedelta(seconds=HALF_S * (count - 3)), 30.0, weak_kn=0.4, weak_for_min=160.0
    )
    assert round(0.4 / math.sin(math.pi * 160.0 / (2.0 * 372.0)), 2) == 0.64
    assert round(found.weak_needed.between_m, 1) == 2.3
    assert found.weak_needed.up_to_m <= found.weak_needed.between_m <= found.weak_needed.not_at_m
    good = {tide.high_water.date() for tide in found.tides if tide.weak_min >= 160.0}
    assert set(found.weak_needed.days) == good and good


def test_range_a_route_needs_is_between_the_tides_that_let_it_be_swum_and_those_that_do_not() -> None:
    site = Site()
    tide = tides(40)
    heights = np.where(tide.is_high, 2.0 + 0.1 * np.arange(40), 0.6)
    tide = replace(tide, heights_m=heights)
    stream = Turning(site.towards(0.0), 0.3, 0.0, grows=0.05)
    request = site.request(
        [(0.0, 0.0), (0.0, 8000.0)],
        stream=StreamField(stations=(site.station(stream=stream),)),
        tide=tide,
        swimmer=replace(SWIMMER, range_m=9000.0, min_ground_speed_m_s=0.68),
    )
    found, _ = find_windows(request, NOON - timedelta(hours=8), NOON + timedelta(days=8), 15.0)
    assert len(found.tides) > 8
    assert all(one.range_m is not None for one in found.tides)
    needed = found.range_needed
    for one in found.tides:
        if needed.up_to_m is not None and one.range_m <= needed.up_to_m:
            assert one.open_min > 0.0
    assert needed.not_at_m is None or any(one.range_m == needed.not_at_m and one.open_min == 0.0 for one in found.tides)


def test_stopping_raises_and_too_much_is_refused() -> None:
    request = crowded(Site())
    with pytest.raises(StoppedError):
        swim_departures(request, np.arange(0.0, 3600.0, 60.0), is_cancelled=lambda: True)
    with pytest.raises(SwimPlanError, match="At most 300000"):
        departures_between(request, NOON, NOON + timedelta(days=400), 1.0)
    with pytest.raises(SwimPlanError, match="first is before the last"):
        departures_between(request, NOON, NOON, 1.0)


def test_progress_rises_to_the_end() -> None:
    told: list[float] = []
    swim_departures(crowded(Site()), np.arange(0.0, 9000 * 60.0, 60.0), progress=told.append)
    assert told == sorted(told) and told[-1] == 1.0 and len(told) == 9


def test_stretches_of_many_tracks_are_those_of_each() -> None:
    rng = np.random.default_rng(4)
    turn = np.sort(rng.uniform(0.0, 2.0 * np.pi, 9))
    size = rng.uniform(200.0, 900.0, 9)[:, None]
    hole = 60.0 * np.array([(1.0, 1.0), (-1.0, 1.0), (-1.0, -1.0), (1.0, -1.0)])
    area = PlanarArea(rings=(size * np.column_stack([np.sin(turn), np.cos(turn)]), hole))
    tracks = np.cumsum(rng.normal(0.0, 220.0, (200, 12, 2)), axis=1)
    tracks[17] = np.nan
    row, start, end = stretches_of_many(area, tracks)
    found = [(int(r), float(a), float(b)) for r, a, b in zip(row, start, end)]
    alone = [
        (r, a, b)
        for r, track in enumerate(tracks)
        if np.isfinite(track).all()
        for _, a, b in stretches_inside([area], track)
    ]
    assert len(alone) > 100
    assert [r for r, _, _ in found] == [r for r, _, _ in alone]
    assert np.allclose([(a, b) for _, a, b in found], [(a, b) for _, a, b in alone])
