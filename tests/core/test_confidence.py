"""How sure a plan is, against closed forms: one leg in a uniform stream, where every spread can be written down."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from statistics import NormalDist

import numpy as np
import pytest
from invented_requests import NOON, SWIMMER, Site
from questions import StopAfter
from tideleg.core.errors import StoppedError
from tideleg.core.results.confidence import confidence_dict
from tideleg.core.solve.confidence import Asked, Planned, how_sure
from tideleg.core.solve.doubts import NO_DOUBTS, SEED, Doubts, draw_members
from tideleg.core.solve.member_swims import quantile, swim_members
from tideleg.core.solve.plan_swim import plan_swim
from tideleg.core.swimmer import Swimmer, group_of
from tideleg.core.water.field import StreamField
from tideleg.core.water.stream import KNOWN, UNKNOWN, StreamSample

LENGTH_M = 1200.0
OUT, THERE_AND_BACK = [(0.0, 0.0), (0.0, LENGTH_M)], [(0.0, 0.0), (0.0, LENGTH_M), (0.0, 0.0)]
MANY = 4000
STANDARD = NormalDist()
CUT = 1.0 - 6.0 * STANDARD.pdf(3.0) / (2.0 * STANDARD.cdf(3.0) - 1.0)  # of the variance, by the cut at three


def only(**doubts: float) -> Doubts:
    """One doubt alone."""
    return replace(NO_DOUBTS, **doubts)


def drawn(share: float) -> float:
    """The quantile of a draw in units of its +-: normal, cut off at three standard deviations, half of which +- is."""
    low = STANDARD.cdf(-3.0)
    return STANDARD.inv_cdf(low + share * (1.0 - 2.0 * low)) / 2.0


def between_s(found, stop: int, share: float) -> float:
    """Seconds from the departure to a quantile of the arrival."""
    return (getattr(found.stops[stop], f"p{round(100 * share)}") - found.depart).total_seconds()


def quantile_bounds(seconds_of, share: float) -> tuple[float, float]:
    """Where the sample's quantile lies but for one case in 15 000: four standard errors of its share to either side."""
    error = 4.0 * np.sqrt(share * (1.0 - share) / MANY)
    ends = [seconds_of(drawn(min(max(share + sign * error, 1e-6), 1.0 - 1e-6))) for sign in (-1.0, 1.0)]
    return min(ends) - 0.1, max(ends) + 0.1


@pytest.mark.parametrize("share", [0.1, 0.5, 0.9])
@pytest.mark.parametrize("towards", [0.0, 180.0, 90.0])
def test_quantiles_of_arrival_are_those_of_the_rate_in_a_uniform_stream(towards: float, share: float) -> None:
    site, rate, pace = Site(), 0.3, SWIMMER.pace_m_s
    found = how_sure(
        site.request(OUT, stream=site.steady(towards, rate)), Asked(doubts=only(rate_times=1.0), members=MANY)
    )

    def seconds_of(draw: float) -> float:
        c = rate * (1.0 + 0.3 * draw)
        along, across = c * np.cos(np.radians(towards)), c * np.sin(np.radians(towards))
        return LENGTH_M / (along + np.sqrt(pace**2 - across**2))

    # A stronger stream against or across is later, one from behind earlier.
    low, high = quantile_bounds(seconds_of, 1.0 - share if towards == 0.0 else share)
    assert low <= between_s(found, 1, share) <= high


@pytest.mark.parametrize("share", [0.1, 0.5, 0.9])
def test_quantiles_of_arrival_are_those_of_the_pace_in_slack_water(share: float) -> None:
    found = how_sure(Site().request(OUT), Asked(doubts=only(pace=0.10), members=MANY))
    low, high = quantile_bounds(lambda draw: LENGTH_M / (SWIMMER.pace_m_s * (1.0 + 0.10 * draw)), 1.0 - share)
    assert low <= between_s(found, 1, share) <= high


class Growing:
    """A station whose stream along the leg grows from nothing at noon, 0.1 m/s in an hour."""

    def at(self, t_s) -> StreamSample:
        north = 0.1 * np.asarray(t_s, dtype=float) / 3600.0
        return StreamSample(east_m_s=0.0 * north, north_m_s=north, status=np.full(north.shape, KNOWN, dtype=np.int8))


@pytest.mark.parametrize("share", [0.1, 0.9])
def test_quantiles_of_arrival_are_those_of_the_phase_in_a_growing_stream(share: float) -> None:
    site = Site()
    stream = StreamField(stations=(site.station(stream=Growing()),))
    found = how_sure(site.request(OUT, stream=stream), Asked(doubts=only(phase_times=1.0), members=MANY))

    def seconds_of(draw: float) -> float:
        # v T + g (T^2 / 2 - shift T) = L, the stream being g (t - shift).
        g, shift = 0.1 / 3600.0, 1800.0 * draw
        b = SWIMMER.pace_m_s - g * shift
        return (-b + np.sqrt(b**2 + 2.0 * g * LENGTH_M)) / g

    low, high = quantile_bounds(seconds_of, share)
    assert low <= between_s(found, 1, share) <= high


@pytest.mark.parametrize("turn_deg", [0.0, 65.0])
def test_the_ellipse_of_dead_reckoning_has_the_axes_of_pace_and_stream(turn_deg: float) -> None:
    site, rate = Site(turn_deg=turn_deg), 0.2
    request = site.request(OUT, stream=site.steady(90.0, rate))
    found = how_sure(request, Asked(doubts=only(pace=0.10, rate_times=1.0), members=20_000))
    ellipse, seconds = found.stops[1].ellipse, (found.arrive - found.depart).total_seconds()
    # place = T (v p e + c f): the variances of pace and rate along two directions, exactly linear.
    lean = np.arcsin(-rate / SWIMMER.pace_m_s)
    heading, stream = np.array([np.sin(lean), np.cos(lean)]), np.array([1.0, 0.0])
    own, moved = 0.05 * SWIMMER.pace_m_s * seconds, 0.15 * rate * seconds
    drawn_m2 = CUT * (own**2 * np.outer(heading, heading) + moved**2 * np.outer(stream, stream))
    values, vectors = np.linalg.eigh(drawn_m2)
    rel = 4.0 * np.sqrt(2.0 / 20_000)
    assert ellipse.semi_major_m == pytest.approx(np.sqrt(5.991 * values[1]), rel=rel)
    assert ellipse.semi_minor_m == pytest.approx(np.sqrt(5.991 * values[0]), rel=rel)
    direction = (np.degrees(np.arctan2(*vectors[:, 1])) + turn_deg) % 180.0
    assert abs((ellipse.major_true_deg - direction + 90.0) % 180.0 - 90.0) < 1.5
    assert ellipse.off_m < 4.0 * np.sqrt(values.sum() / 20_000) + 0.1
    assert np.linalg.det([[ellipse.east_m2, ellipse.east_north_m2], [ellipse.east_north_m2, ellipse.north_m2]]) == (
        pytest.approx(np.prod(values), rel=2.0 * rel)
    )
    ring = site.frame.to_xy(np.array(ellipse.ring))
    size = 0.5 * abs(np.sum(ring[:-1, 0] * ring[1:, 1] - ring[1:, 0] * ring[:-1, 1]))
    assert size == pytest.approx(np.pi * ellipse.semi_major_m * ellipse.semi_minor_m, rel=0.002)


@pytest.mark.parametrize("mode", [0, 1, 2])
def test_without_doubts_the_answer_is_the_plan_itself(mode: int) -> None:
    site = Site()
    stream = StreamField(
        stations=(site.station(stream=Growing()), site.station("side", (500.0, 300.0), towards=60.0, rate_m_s=0.2))
    )
    request = site.request(THERE_AND_BACK, stream=stream, mode=mode, stays_min=[20.0])
    plan, found = plan_swim(request), how_sure(request, Asked(doubts=NO_DOUBTS, members=20))
    for stop, sure in zip(plan.stops, found.stops):
        moment = stop.arrive or plan.depart
        assert sure.p10 == sure.p50 == sure.p90 == sure.planned
        assert abs((sure.planned - moment).total_seconds()) < 1e-3 or sure.number == 0
        assert sure.sd_min == pytest.approx(0.0, abs=1e-9) and sure.arrives_share == 1.0
    for sure in found.stops[1:]:
        assert sure.ellipse.semi_major_m < 0.01
        # Marched by Heun's method on the headings of the plan, the swimmer ends on the mark.
        assert sure.ellipse.off_m < 1.0
    assert found.completed_share == 1.0 and [one.share for one in found.home_by] == [1.0, 1.0, 1.0]


def test_the_same_request_prints_the_same_twice_and_another_seed_another() -> None:
    site = Site()
    request = site.request(OUT, stream=site.steady(90.0, 0.2))
    first, second, other = (
        confidence_dict(how_sure(request, Asked(members=50, seed=seed)), version="t") for seed in (1, 1, 2)
    )
    assert first == second
    assert first["stops"] != other["stops"] and first["drift"] != other["drift"]


def test_members_who_cannot_swim_a_leg_are_counted_and_are_not_home() -> None:
    site = Site()
    # On the plan 0.06 m/s are left of the pace across; a rate 9 % up takes them.
    request = site.request(
        THERE_AND_BACK, stream=site.steady(90.0, 0.64), swimmer=replace(SWIMMER, min_ground_speed_m_s=0.0)
    )
    found = how_sure(request, Asked(doubts=only(rate_times=1.0), members=2000))
    expected = 1.0 - STANDARD.cdf((0.70 / 0.64 - 1.0) / 0.15)
    (out, home) = found.legs
    assert out.began == 2000 and out.failed / 2000 == pytest.approx(expected, abs=0.05)
    assert home.began == 2000 - out.failed and home.failed == 0
    assert sum(count for _, count in out.reasons) == out.failed and out.reasons[0][0].startswith("no arrival")
    assert found.completed_share == pytest.approx(1.0 - out.failed / 2000)
    assert all(one.share <= found.completed_share for one in found.home_by)
    assert found.stops[1].p90 is None and found.stops[1].p10 is not None


def test_home_by_the_alarm_is_the_share_of_arrivals_before_it() -> None:
    request = Site().request(OUT, alarm_after_min=1.0)
    found = how_sure(request, Asked(doubts=only(pace=0.10), members=MANY))
    alarm = found.home_by[0]
    assert alarm.moment == found.arrive + timedelta(minutes=1)
    seconds = LENGTH_M / SWIMMER.pace_m_s
    expected = 1.0 - STANDARD.cdf((seconds / (seconds + 60.0) - 1.0) / 0.05)
    assert alarm.share == pytest.approx(expected, abs=4.0 * np.sqrt(0.25 / MANY))


def test_a_plan_that_cannot_be_swum_has_no_alarm_and_says_so() -> None:
    site = Site()
    found = how_sure(site.request(OUT, stream=site.steady(90.0, 0.9)), Asked(members=50))
    assert found.arrive is None and found.stops[1].planned is None and found.stops[1].ellipse is None
    assert (found.home_by[0].moment, found.home_by[0].share) == (None, None)
    assert any("no planned return" in words for words in found.warnings)
    assert found.legs[0].failed > 40 and all(area.start is not None for area in found.drift)


def test_water_that_is_not_known_fails_every_member_and_every_drift() -> None:
    class Nothing:
        def at(self, t_s) -> StreamSample:
            blank = np.full(np.shape(t_s), np.nan)
            return StreamSample(east_m_s=blank, north_m_s=blank, status=np.full(blank.shape, UNKNOWN))

    site = Site()
    found = how_sure(
        site.request(OUT, stream=StreamField(stations=(site.station(stream=Nothing()),))), Asked(members=20)
    )
    assert found.legs[0].reasons == (("the stream is not known", 20),)
    assert found.completed_share == 0.0
    assert all(area.ring == () and area.unknown_share == 1.0 for area in found.drift)
    assert any("drift is not known" in words for words in found.warnings)


@pytest.mark.parametrize(("lon", "lat"), [(179.995, -17.0), (-28.5, -44.0), (-179.999, 44.0)])
def test_the_answer_is_the_same_anywhere_on_the_globe(lon: float, lat: float) -> None:
    def answer(site: Site):
        request = site.request(THERE_AND_BACK, stream=site.steady(70.0, 0.25), stays_min=[10.0])
        return how_sure(request, Asked(members=40))

    here, there = answer(Site()), answer(Site(lon, lat, 30.0))
    for one, other in zip(here.stops, there.stops):
        assert one.mean_min == pytest.approx(other.mean_min, abs=0.005)
        if one.ellipse is not None:
            assert other.ellipse.semi_major_m == pytest.approx(one.ellipse.semi_major_m, rel=1e-3)
            assert other.ellipse.major_true_deg == pytest.approx((one.ellipse.major_true_deg + 30.0) % 180.0, abs=0.2)
            assert all(abs(x) <= 180.0 for x, _ in other.ellipse.ring)
    assert there.drift[-1].ashore_share == 0.0 and len(there.drift[-1].ring) > 3


def test_stopping_stops_within_a_chunk_and_progress_only_rises() -> None:
    request, told = Site().request(THERE_AND_BACK), []
    how_sure(request, Asked(members=300), progress=told.append)
    assert told == sorted(told) and told[-1] == pytest.approx(1.0) and len(told) > 5
    asked = iter(range(1000))
    with pytest.raises(StoppedError):
        how_sure(request, Asked(members=300), is_cancelled=lambda: next(asked) > 4)


def test_members_and_the_plan_ask_at_every_look_at_the_stream_and_stop_at_the_last() -> None:
    request = Site().request(THERE_AND_BACK)
    members = draw_members(request.swimmer, Doubts(), 50, SEED)

    for work in (
        lambda stopped: Planned.of(request, stopped),
        lambda stopped: swim_members(request, members, 0.0, is_cancelled=stopped),
    ):
        never = StopAfter()
        work(never)
        # Even water that never changes is looked at twice a leg; once a leg was what was asked before.
        assert never.asked >= 2 * (len(request.stops) - 1)
        last = StopAfter(never.asked - 1)
        with pytest.raises(StoppedError):
            work(last)
        assert last.asked == never.asked


def test_a_quantile_counts_those_who_never_arrive() -> None:
    arrive = np.array([50.0, np.nan, 10.0, 30.0, 20.0, 40.0, np.nan, np.nan, np.nan, 60.0])
    assert [quantile(arrive, share) for share in (0.1, 0.5, 0.6)] == [10.0, 50.0, 60.0]
    assert quantile(arrive, 0.7) == np.inf


def test_a_group_is_told_when_each_would_have_to_leave_the_last_mark() -> None:
    site = Site()
    slow = Swimmer(name="Odd", pace_m_s=0.5, path_factor=1.0)
    about = {"reserve_factor": 1.0, "reserve_min": 0.0, "back_by": "16:00"}
    request = site.request(THERE_AND_BACK, swimmer=group_of([SWIMMER, slow]), **about)
    found = how_sure(request, Asked(members=10))
    leave = {one.who: one.latest for one in found.latest_home}
    assert list(leave) == ["steady", "Odd", "steady and Odd"]
    for name, pace in (("steady", 0.7), ("Odd", 0.5), ("steady and Odd", 0.5)):
        expected = NOON.replace(hour=16) - timedelta(seconds=LENGTH_M / pace)
        assert abs((leave[name] - expected).total_seconds()) < 1.5
    alone = how_sure(replace(request, swimmer=SWIMMER), Asked(members=10))
    assert alone.latest_home == () and alone.home_deadline is None
