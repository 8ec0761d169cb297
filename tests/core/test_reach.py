"""The reach of an entry over a chart: out, home, staying, and what more pace, time or a shorter stay changes."""

from __future__ import annotations

import json
from dataclasses import replace
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from independent_swim import WaterStream, shoot
from invented_requests import NOON, SWIMMER, Site
from invented_waters import RandomWater
from tideleg.core.chart.areas import Channel, ClosedArea, Land
from tideleg.core.chart.hours import InForce
from tideleg.core.chart.marks import Mark
from tideleg.core.clock import PlanClock
from tideleg.core.errors import StoppedError, SwimPlanError
from tideleg.core.results.reach import reach_dict
from tideleg.core.solve.reach.find_reach import find_reach
from tideleg.core.solve.reach.request import CROSS_SQUARE, KEEP_OUT, ReachRequest
from tideleg.core.water.field import StreamField
from tideleg.core.water.model_stream import ModelStream
from tideleg.core.water.stream import ConstantStream

HOURS = 3.0
MARK = (0.0, 900.0)


def asked(site: Site | None = None, *, hours=HOURS, stay_min=20.0, mark=MARK, cell_m=25.0, channels=0, **about):
    """A reach round an entry at the drawn origin, in an area of 4 km to every side."""
    site = site or Site()
    swim = site.request([(0.0, 0.0), mark], **about)
    swim = replace(swim, clock=PlanClock(start=swim.depart, zone_name=swim.settings.zone))
    back_by = swim.clock.moment(hours * 3600.0)
    entry = swim.stops_m[0]
    marks = (replace(swim.stops[1], kind="mark", name="Rock"),)
    return ReachRequest(
        swim=swim,
        back_by=back_by,
        stay_min=stay_min,
        area=np.concatenate([entry - 4000.0, entry + 4000.0]),
        marks=marks,
        cell_m=cell_m,
        channels=channels,
    )


def with_water(request: ReachRequest, flow) -> ReachRequest:
    """The request in a stream of a formula, as a plan holds a model of currents."""
    field = StreamField(stations=(), models=(ModelStream(name="formula", stream=WaterStream(flow)),))
    return replace(request, swim=replace(request.swim, stream=field))


def close(a: np.ndarray, b: np.ndarray, minutes: float) -> None:
    both = np.isfinite(a) & np.isfinite(b)
    assert both.any() and np.max(np.abs(a[both] - b[both])) < minutes


def test_still_water_out_and_home_are_mirror_images() -> None:
    found = find_reach(asked())
    close(found.out_min, found.horizon_min - found.home_by_min, 0.05)
    numbers = found.marks[0].solver
    assert numbers.out_min == pytest.approx(900.0 / 0.7 / 60.0, rel=3e-3)
    assert numbers.latest_min == pytest.approx(180.0 - 900.0 / 0.7 / 60.0, rel=2e-3)
    # The water with time to stay is a circle: out and home at 0.7 m/s within 160 minutes.
    radius_km = 80.0 * 60.0 * 0.7 / 1000.0
    assert found.stay_area_km2 == pytest.approx(np.pi * radius_km**2, rel=0.01)


def test_steady_stream_meets_the_closed_forms_out_and_home() -> None:
    site = Site()
    found = find_reach(asked(site, stream=site.steady(0.0, 0.3), cell_m=20.0))
    mark = found.marks[0]
    assert mark.solver.out_min == pytest.approx(900.0 / 1.0 / 60.0, rel=3e-3)
    assert mark.solver.latest_min == pytest.approx(180.0 - 900.0 / 0.4 / 60.0, rel=3e-3)
    assert mark.one_heading.out_min == pytest.approx(15.0, abs=0.02)
    assert mark.one_heading.latest_min == pytest.approx(142.5, abs=0.3)


@pytest.mark.parametrize("seed", range(4))
def test_leaving_at_the_latest_and_swimming_arrives_at_the_time_to_be_back(seed: int) -> None:
    """From places all over, the way home that the front's parents give is swum by RK4 shooting leg by leg."""
    rng = np.random.default_rng(seed)
    flow = RandomWater(rng, [2500.0], [2.0], [0.3]).one(0)
    request = with_water(asked(cell_m=20.0), flow)
    for place in rng.uniform(-1200.0, 1200.0, (3, 2)):
        lonlat = request.swim.frame.to_lonlat(request.entry_m + place)[0]
        mark = Mark(name="Rock", kind="mark", lon=float(lonlat[0]), lat=float(lonlat[1]))
        found = find_reach(replace(request, marks=(mark,)))
        leave = 60.0 * found.marks[0].solver.latest_min
        start, end = complex(*(request.entry_m + place)), complex(*request.entry_m)
        _, seconds = shoot(flow, start, end, leave, SWIMMER.made_good_m_s, 4 * 3600.0)
        # One heading is a way too: the front's is no slower than that, and in so smooth a stream hardly faster.
        assert leave + seconds > 3 * 3600.0 * 0.998
        assert leave + seconds < 3 * 3600.0 * 1.01


@pytest.mark.parametrize("seed", range(3))
def test_more_pace_more_time_or_a_shorter_stay_never_shrink_the_reach(seed: int) -> None:
    rng = np.random.default_rng(50 + seed)
    flow = RandomWater(rng, [1500.0], [1.5], [0.45]).one(0)
    base = with_water(asked(cell_m=50.0, stay_min=30.0, hours=2.0), flow)

    def stays(request: ReachRequest) -> np.ndarray:
        """Where one can stay, on the whole area's own lattice."""
        found = find_reach(request)
        can = np.zeros((200, 200), dtype=bool)
        rows, columns = np.nonzero(found.possible_stay_min >= request.stay_min)
        place = found.low_m + 50.0 * np.column_stack([columns, rows]) - request.area[:2]
        index = np.floor(place / 50.0).astype(int)
        can[index[:, 1], index[:, 0]] = True
        return can

    quick = replace(base.swim, swimmer=replace(SWIMMER, pace_m_s=0.8))
    later = base.swim.clock.moment(2.5 * 3600.0)
    small = stays(base)
    assert small.sum() > 50
    # A cell at the very edge may change sides by the grid's own error.
    edge = 0.004 * small.sum() + 2
    for larger in (replace(base, swim=quick), replace(base, back_by=later), replace(base, stay_min=20.0)):
        wide = stays(larger)
        assert (small & ~wide).sum() <= edge
        assert wide.sum() > small.sum()


def test_land_is_gone_round_by_the_solver_and_on_one_heading() -> None:
    site = Site()
    land = Land(name="Head", area=site.box(-600.0, 400.0, 150.0, 500.0))
    found = find_reach(asked(site, land=[land], cell_m=10.0, hours=2.0))
    mark = found.marks[0]
    shortest = (np.hypot(150.0, 400.0) + 100.0 + np.hypot(150.0, 400.0)) / 0.7 / 60.0
    assert shortest < mark.solver.out_min < shortest * 1.02 + 0.5
    assert mark.one_heading.out_min == pytest.approx(mark.solver.out_min, rel=0.05)
    # Nothing is told over land.
    middle = site.xy([(-200.0, 450.0)])[0]
    column, row = np.rint((middle - found.low_m) / found.cell_m).astype(int)
    assert np.isnan(found.out_min[row, column]) and np.isnan(found.home_by_min[row, column])


def test_closed_areas_count_in_their_hours() -> None:
    site = Site()
    belt = site.box(-5000.0, 400.0, 5000.0, 500.0)
    shut = ClosedArea(name="Range", rule="no_entry", area=belt)
    caution = replace(shut, rule="caution")
    # Open until an hour after the departure: out is no matter, home is.
    later = replace(shut, in_force=InForce(start=NOON + timedelta(hours=1), end=NOON + timedelta(hours=9)))
    free = find_reach(asked(site)).marks[0].solver
    assert find_reach(asked(site, closed_areas=[caution])).marks[0].solver == free
    assert find_reach(asked(site, closed_areas=[shut])).marks[0].solver.out_min is None
    timed = find_reach(asked(site, closed_areas=[later])).marks[0]
    assert timed.solver.out_min == pytest.approx(free.out_min, rel=1e-2)
    # Home leads through the belt before it closes: 500 m of way are left behind its near edge.
    assert timed.solver.latest_min is None or timed.solver.latest_min < 60.0 - 400.0 / 0.7 / 60.0 + 1.0
    assert timed.one_heading.latest_min is None or timed.one_heading.latest_min < 60.0


def test_a_place_that_closes_is_left_before() -> None:
    site = Site()
    around = site.box(-100.0, 800.0, 100.0, 1000.0)
    rule = InForce(start=NOON + timedelta(minutes=90), end=NOON + timedelta(hours=9))
    found = find_reach(
        asked(site, closed_areas=[ClosedArea(name="Nursery", rule="no_entry", area=around, in_force=rule)])
    )
    column, row = np.rint((site.xy([MARK])[0] - found.low_m) / found.cell_m).astype(int)
    assert found.out_min[row, column] < 30.0
    assert 84.0 <= found.home_by_min[row, column] <= 88.0


def test_channels_are_taken_no_notice_of_kept_out_of_or_crossed_square() -> None:
    site = Site()
    channel = Channel(name="Cut", kind="fairway", area=site.box(-5000.0, 400.0, 5000.0, 500.0), flow_deg=90.0)
    slant = (900.0, 900.0)
    free = find_reach(asked(site, mark=slant, cell_m=20.0)).marks[0].solver.out_min
    with_cut = {
        way: find_reach(_with_channel(asked(site, mark=slant, cell_m=20.0, channels=way), channel)).marks[0].solver
        for way in (0, KEEP_OUT, CROSS_SQUARE)
    }
    assert with_cut[0].out_min == pytest.approx(free)
    assert with_cut[KEEP_OUT].out_min is None
    # Two slants and a square crossing are a little longer than the straight slant.
    assert free * 1.001 < with_cut[CROSS_SQUARE].out_min < free * 1.05


def _with_channel(request: ReachRequest, channel: Channel) -> ReachRequest:
    return replace(request, swim=replace(request.swim, chart=replace(request.swim.chart, channels=(channel,))))


def test_the_best_of_all_exits_is_home() -> None:
    """A strong stream ahead: back to the entry takes long, a beach beyond the mark is near."""
    site = Site()
    request = asked(site, stream=site.steady(0.0, 0.4), cell_m=20.0)
    lon, lat = site.lonlat([(0.0, 1500.0)])[0]
    beach = Mark(name="Far Beach", kind="exit", lon=float(lon), lat=float(lat))
    alone = find_reach(request).marks[0].solver
    both = find_reach(replace(request, swim=replace(request.swim, exits=(beach,)))).marks[0]
    assert both.solver.exit == both.one_heading.exit == "Far Beach"
    assert both.solver.latest_min == pytest.approx(180.0 - 600.0 / 1.1 / 60.0, abs=0.2)
    assert alone.latest_min == pytest.approx(180.0 - 900.0 / 0.3 / 60.0, abs=0.3)


@pytest.mark.parametrize(("lon", "lat"), [(-28.5, -42.4), (179.995, 11.0), (-179.99, -55.0), (20.0, 71.0)])
def test_the_same_reach_anywhere_on_the_earth(lon: float, lat: float) -> None:
    """Southern hemisphere, both sides of the date line, far north: the drawing is the same, and so is the reach."""
    here, there = Site(turn_deg=30.0), Site(lon, lat, turn_deg=30.0)
    found = [
        find_reach(asked(site, stream=site.steady(70.0, 0.25), cell_m=20.0, hours=2.0)).marks[0]
        for site in (here, there)
    ]
    assert found[0].solver.out_min == pytest.approx(found[1].solver.out_min, rel=3e-3)
    assert found[0].solver.latest_min == pytest.approx(found[1].solver.latest_min, rel=3e-3)
    assert found[0].one_heading.out_min == pytest.approx(found[1].one_heading.out_min, rel=1e-3)


def test_a_night_on_which_clocks_change_is_counted_in_elapsed_time() -> None:
    """Lisbon, 2027-10-31: 02:00 summer time becomes 01:00. From 00:30 to 02:30 by the clock are three hours."""
    zone = ZoneInfo("Europe/Lisbon")
    depart = datetime(2027, 10, 31, 0, 30, tzinfo=zone)
    request = asked(depart=depart, zone="Europe/Lisbon")
    assert request.back_by == datetime(2027, 10, 31, 2, 30, tzinfo=zone)
    found = find_reach(request)
    assert found.horizon_min == 180.0
    told = reach_dict(found, version="0")
    assert told["back_by"] == "2027-10-31T02:30:00+00:00"
    assert told["marks"][0]["solver"]["latest_leave"].endswith("+00:00")
    assert told["marks"][0]["solver"]["arrive"].endswith("+01:00")


def test_a_hidden_cove_shows_the_cells_size_in_the_expected_error() -> None:
    coarse, fine = (find_reach(asked(cell_m=cell)) for cell in (80.0, 20.0))
    assert fine.error_mean_min < coarse.error_mean_min
    assert fine.error_most_min < 2.0


def test_cells_are_chosen_or_refused() -> None:
    chosen = find_reach(asked(cell_m=0.0))
    assert chosen.cell_chosen and 60_000 < chosen.out_min.size <= 170_000
    for size in (0.5, 900.0):
        with pytest.raises(SwimPlanError, match="CELL"):
            find_reach(asked(cell_m=size))


def test_refusals_name_what_is_wrong() -> None:
    site = Site()
    inland = Land(name="Main", area=site.box(-2000.0, -2000.0, 2000.0, 300.0))
    with pytest.raises(SwimPlanError, match="'Slip' lies 300 m inside Main"):
        find_reach(asked(site, land=[inland]))
    shut = ClosedArea(name="Range", rule="no_entry", area=site.box(-50.0, -50.0, 50.0, 50.0))
    with pytest.raises(SwimPlanError, match="Range, which nobody may enter"):
        find_reach(asked(site, closed_areas=[shut]))
    unknown = StreamField(stations=(site.station(stream=ConstantStream(east_m_s=np.nan, north_m_s=np.nan)),))
    with pytest.raises(SwimPlanError, match="No stream is known at the entry 'Slip'"):
        find_reach(asked(site, stream=unknown))
    with pytest.raises(SwimPlanError, match="BACK_BY"):
        asked(hours=-1.0)
    with pytest.raises(SwimPlanError, match="STAY"):
        asked(stay_min=-5.0)


def test_a_beach_a_little_inland_still_lets_one_out() -> None:
    site = Site()
    coast = Land(name="Main", area=site.box(-2000.0, -2000.0, 2000.0, 30.0))
    found = find_reach(asked(site, land=[coast], cell_m=20.0))
    assert found.marks[0].solver.out_min == pytest.approx(900.0 / 0.7 / 60.0, rel=0.01)


def test_water_that_is_not_known_is_told_in_words_and_never_taken_as_slack() -> None:
    def flow(place, t_s):
        return np.where(place.imag > 600.0, complex(np.nan), 0.0 * place)

    found = find_reach(with_water(asked(), flow))
    assert found.unknown_cells > 0
    assert any("not known" in warning for warning in found.warnings)
    assert found.marks[0].solver.out_min is None and "known" in found.marks[0].solver.reason
    assert found.marks[0].one_heading.out_min is None and "not known" in found.marks[0].one_heading.reason


def test_progress_rises_to_one_and_stopping_stops() -> None:
    shares: list[float] = []
    find_reach(asked(), progress=shares.append)
    assert shares == sorted(shares) and shares[-1] == 1.0
    with pytest.raises(StoppedError):
        find_reach(asked(), is_cancelled=lambda: True)


def test_the_report_says_who_steers_and_holds_no_number_that_is_none() -> None:
    told = reach_dict(find_reach(asked()), version="0")
    assert "steers anew" in told["method"]
    json.dumps(told, allow_nan=False)
    assert told["grid"]["crs"].startswith("+proj=tmerc")
