"""Members drawn from doubts, and the waters they swim in."""

from __future__ import annotations

from dataclasses import replace
from statistics import NormalDist

import numpy as np
import pytest
from invented_requests import Site
from tideleg.core.errors import SwimPlanError
from tideleg.core.solve.doubts import NO_DOUBTS, Doubts, draw_members
from tideleg.core.solve.swim import SwimWay, swim_route
from tideleg.core.swimmer import Swimmer
from tideleg.core.water.corrected import CorrectedStream
from tideleg.core.water.field import Station, StreamField
from tideleg.core.water.members import MemberWater
from tideleg.core.water.model_stream import ModelStream
from tideleg.core.water.ruled_area import RuledArea
from tideleg.core.water.stream import KNOWN, StreamSample

SWIMMER = Swimmer(pace_m_s=0.6, path_factor=1.12)
SITE = Site()
# Beyond three standard deviations nothing is drawn: what is left of the variance (1 - 2 a pdf(a) / (2 cdf(a) - 1)).
CUT = 1.0 - 6.0 * NormalDist().pdf(3.0) / (2.0 * NormalDist().cdf(3.0) - 1.0)


class Sine:
    """A station or model stream with a formula, in a quarter of a tide from nothing to its rate."""

    def __init__(self, rate: float, *, model: bool = False) -> None:
        self.rate, self.model = rate, model

    def at(self, *asked) -> StreamSample:
        t_s = np.asarray(asked[-1], dtype=float)
        east = self.rate * np.sin(t_s / 4000.0)
        return StreamSample(east_m_s=east, north_m_s=0.4 * east, status=np.full(t_s.shape, KNOWN, dtype=np.int8))


def field(*, ruled: bool = False) -> StreamField:
    """Two stations of their own uncertainty and a model that rules in one half of the bay."""
    area = RuledArea(area=SITE.box(-800.0, -800.0, -200.0, 800.0), station="bight")
    return StreamField(
        stations=(
            Station(name="sill", x_m=500.0, y_m=0.0, stream=Sine(0.3), rate_uncertainty=0.1, phase_uncertainty_s=600.0),
            Station(name="bight", x_m=-500.0, y_m=0.0, stream=Sine(0.2), rate_uncertainty=0.5, phase_uncertainty_s=0.0),
        ),
        ruled_areas=(area,) if ruled else (),
    )


def test_the_spread_of_members_is_that_of_the_doubts() -> None:
    n = 20_000
    members = draw_members(SWIMMER, Doubts(path=0.0, pace=0.2, rate_times=2.0, phase_times=0.5), n)
    draws = {
        "pace": (members.pace_m_s / SWIMMER.made_good_m_s - 1.0) / 0.2,
        "rate": members.rate_doubts / 2.0,
        "phase": members.phase_doubts / 0.5,
    }
    for name, drawn in draws.items():
        # +- is two standard deviations; four standard errors of a mean and of a variance are allowed.
        assert abs(drawn.mean()) < 4.0 * 0.5 / np.sqrt(n), name
        assert drawn.var() == pytest.approx(0.25 * CUT, rel=4.0 * np.sqrt(2.0 / n)), name
        assert np.abs(drawn).max() <= 1.5 + 1e-12, name
    assert abs(np.corrcoef(list(draws.values())) - np.eye(3)).max() < 4.0 / np.sqrt(n)
    assert members.aside.min() >= -1.0 and members.aside.max() <= 1.0 and abs(members.aside.mean()) < 0.02


def test_nobody_swims_a_path_shorter_than_the_line() -> None:
    for factor in (1.0, 1.05):
        swimmer = Swimmer(pace_m_s=0.6, path_factor=factor)
        members = draw_members(swimmer, Doubts(pace=0.0, path=0.08), 5000)
        assert members.pace_m_s.max() <= 0.6
        assert members.pace_m_s.min() >= 0.6 / (factor + 0.12) - 1e-12


def test_without_doubts_every_member_is_the_plan() -> None:
    members = draw_members(SWIMMER, NO_DOUBTS, 20)
    assert np.all(members.pace_m_s == SWIMMER.made_good_m_s)
    assert not members.rate_doubts.any() and not members.phase_doubts.any()


def test_the_same_seed_draws_the_same_members_and_another_seed_others() -> None:
    first, second, third = (draw_members(SWIMMER, Doubts(), 100, seed) for seed in (4, 4, 5))
    assert np.array_equal(first.pace_m_s, second.pace_m_s) and np.array_equal(first.aside, second.aside)
    assert not np.array_equal(first.rate_doubts, third.rate_doubts)


@pytest.mark.parametrize("wrong", [{"pace": -0.1}, {"pace": 0.9}, {"path": 2.0}, {"rate_times": float("nan")}])
def test_a_doubt_out_of_bounds_is_refused(wrong: dict[str, float]) -> None:
    with pytest.raises(SwimPlanError, match="lies from 0 to"):
        Doubts(**wrong)


@pytest.mark.parametrize("count", [0, 9, 20_001])
def test_too_few_and_too_many_members_are_refused(count: int) -> None:
    with pytest.raises(SwimPlanError, match="10 to 20000"):
        draw_members(SWIMMER, Doubts(), count)


@pytest.mark.parametrize("ruled", [False, True])
def test_each_row_is_the_field_with_every_source_off_by_its_own_measure(ruled: bool) -> None:
    rng, plain = np.random.default_rng(3), field(ruled=ruled)
    rates, phases = rng.normal(size=(2, 30))
    water = MemberWater(field=plain, rate_doubts=rates, phase_doubts=phases)
    x, y = rng.uniform(-1000.0, 1000.0, (2, 30, 7))
    t = rng.uniform(0.0, 20_000.0, (30, 7))
    together = water.at(x, y, t)
    for row in range(30):
        stations = tuple(
            replace(
                one,
                stream=CorrectedStream(
                    stream=one.stream,
                    rate_factor=max(0.0, 1.0 + one.rate_uncertainty * rates[row]),
                    shift_s=one.phase_uncertainty_s * phases[row],
                ),
            )
            for one in plain.stations
        )
        alone = StreamField(stations=stations, ruled_areas=plain.ruled_areas).at(x[row], y[row], t[row])
        np.testing.assert_allclose(together.east_m_s[row], alone.east_m_s, atol=1e-12)
        np.testing.assert_array_equal(together.status[row], alone.status)
    some = np.array([4, 4, 29])
    np.testing.assert_array_equal(water.of_rows(some).at(x[some], y[some], t[some]).east_m_s, together.east_m_s[some])


def test_a_model_keeps_its_own_correction_below_the_days() -> None:
    model = ModelStream(name="m", stream=Sine(0.3), rate_factor=0.8, shift_s=700.0, rate_uncertainty=0.2)
    water = MemberWater(
        field=StreamField(stations=(), models=(model,)), rate_doubts=np.array([1.0]), phase_doubts=np.array([-0.5])
    )
    found = water.at(np.zeros((1, 1)), np.zeros((1, 1)), np.array([[5000.0]]))
    later = 700.0 - 0.5 * model.phase_uncertainty_s
    assert found.east_m_s[0, 0] == pytest.approx(0.3 * 0.8 * 1.2 * np.sin((5000.0 - later) / 4000.0))


def test_a_rate_is_never_turned_round() -> None:
    water = MemberWater(field=field(), rate_doubts=np.array([-5.0]), phase_doubts=np.zeros(1))
    found = water.at(np.array([-500.0]), np.array([0.0]), np.array([5000.0]))
    plain = field().at(-500.0, 0.0, 5000.0)
    assert 0.0 <= found.east_m_s[0] < 0.01 * plain.east_m_s


def test_other_streams_in_the_same_places_keep_what_each_station_sees() -> None:
    spit = SITE.box(-20.0, -300.0, 20.0, 300.0)
    corners = np.array([[-1000.0, -1000.0], [1000.0, 1000.0]])
    walled = replace(field(), land=(spit,), places_m=corners)
    stations = tuple(replace(one, stream=Sine(0.1)) for one in walled.stations)
    changed = walled.with_sources(stations, ())
    made = StreamField(stations=stations, land=(spit,), places_m=corners)
    x, y = np.random.default_rng(1).uniform(-800.0, 800.0, (2, 200))
    np.testing.assert_array_equal(changed.at(x, y, 900.0).east_m_s, made.at(x, y, 900.0).east_m_s)
    assert walled.at(x, y, 900.0).east_m_s.max() > changed.at(x, y, 900.0).east_m_s.max()


def test_members_swum_together_are_plain_swims_one_by_one() -> None:
    members = draw_members(SWIMMER, Doubts(), 25)
    plain, stops = field(ruled=True), np.array([[0.0, 0.0], [600.0, 500.0], [-500.0, 700.0], [0.0, 0.0]])
    stays, depart = np.array([0.0, 900.0, 0.0, 0.0]), np.full(25, 3000.0)
    water = MemberWater(field=plain, rate_doubts=members.rate_doubts, phase_doubts=members.phase_doubts)
    frame, way = SITE.frame, SwimWay(step_s=10.0)
    together = swim_route(water, frame, stops, stays, depart, SWIMMER, way, pace_m_s=members.pace_m_s)
    for row in range(25):
        stations = tuple(
            replace(
                one,
                stream=CorrectedStream(
                    stream=one.stream,
                    rate_factor=1.0 + one.rate_uncertainty * members.rate_doubts[row],
                    shift_s=one.phase_uncertainty_s * members.phase_doubts[row],
                ),
            )
            for one in plain.stations
        )
        own = Swimmer(pace_m_s=float(members.pace_m_s[row]), path_factor=1.0)
        alone = swim_route(replace(plain, stations=stations), frame, stops, stays, depart[:1], own, way)
        np.testing.assert_allclose(together.arrive_s[row], alone.arrive_s[0], atol=0.2)
