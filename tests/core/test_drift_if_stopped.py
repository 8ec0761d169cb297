"""A float let go drifts with the stream and the wind's push, and stays on land, against closed forms."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from independent_swim import WaterStream
from invented_requests import Site
from invented_waters import RandomWater, steady
from tideleg.core.errors import StoppedError, SwimPlanError
from tideleg.core.geodesy import LocalFrame
from tideleg.core.hull import RIM_M, convex_hull, hull_round
from tideleg.core.planar import PlanarArea
from tideleg.core.solve.confidence import Asked, how_sure
from tideleg.core.solve.doubts import NO_DOUBTS
from tideleg.core.solve.drift import Wind, drift

EQUATOR = LocalFrame(lon=-28.5, lat=0.0)  # here the grid's north is true everywhere
KNOT = 1852.0 / 3600.0
MIDDLE = np.zeros(1)


def adrift(water, start=(0.0, 0.0), *, seconds=7200.0, aside=MIDDLE, frame=EQUATOR, **about):
    """Floats let go at one place at second 0, one for each of ``aside``."""
    stream = water if hasattr(water, "at") else WaterStream(water)
    return drift(stream, frame, np.array([start]), np.zeros(1), np.full(1, seconds), aside, **about)


def end_of(found) -> np.ndarray:
    """Where the first float is at the end."""
    return found.places_m[0, 0, -1]


def test_in_a_uniform_stream_it_goes_with_the_stream() -> None:
    found = adrift(steady(60.0, 0.4))
    np.testing.assert_allclose(
        end_of(found), 0.4 * 7200.0 * np.array([np.sin(np.pi / 3), np.cos(np.pi / 3)]), atol=1e-6
    )
    places, ashore = found.at(0, 1234.0)
    np.testing.assert_allclose(np.hypot(*places[0]), 0.4 * 1234.0, atol=1e-6)
    assert not ashore.any()


def test_in_a_shear_its_way_is_the_parabola() -> None:
    # East a y, north b: y = b t, x = a b t^2 / 2.
    a, b = 2e-4, 0.3
    found = adrift(lambda place, t_s: a * place.imag + 1j * b)
    np.testing.assert_allclose(end_of(found), [a * b * 7200.0**2 / 2.0, b * 7200.0], rtol=1e-9)


def test_in_a_solid_rotation_it_circles_and_halving_the_step_quarters_the_error() -> None:
    turn = 2.0 * np.pi / 7200.0  # once round in two hours

    def error(step_s: float) -> float:
        found = adrift(lambda place, t_s: 1j * turn * place, (500.0, 0.0), step_s=step_s)
        return float(np.hypot(*(end_of(found) - [500.0, 0.0])))

    errors = np.array([error(step) for step in (240.0, 120.0, 60.0)])
    assert errors[1] < 10.0
    assert np.all(np.log2(errors[:-1] / errors[1:]) > 1.9)


def test_it_meets_another_integration_in_random_waters() -> None:
    rng = np.random.default_rng(6)
    waters = RandomWater(rng, rng.uniform(600.0, 1500.0, 8), rng.uniform(1.0, 2.0, 8), rng.uniform(0.2, 0.8, 8))
    for row in range(8):
        water = waters.one(row)
        place, step = 0j, 5.0
        for t_s in np.arange(0.0, 7200.0, step):  # the midpoint rule in small steps
            place = place + step * water(place + step / 2.0 * water(place, t_s), t_s + step / 2.0)
        assert np.hypot(*(end_of(adrift(water)) - [place.real, place.imag])) < 3.0


@pytest.mark.parametrize(
    ("from_deg", "towards"), [(0.0, (0.0, -1.0)), (270.0, (1.0, 0.0)), (225.0, (0.5**0.5, 0.5**0.5))]
)
@pytest.mark.parametrize("lat", [0.0, -44.0])
def test_the_wind_pushes_it_1_93_percent_of_its_speed_downwind(from_deg: float, towards, lat: float) -> None:
    # Allen 2010, leeway list used with SAROPS: surfboard with person, 1.93 % downwind.
    found = adrift(steady(0.0, 0.0), wind=Wind(from_deg=from_deg, speed_kn=12.0), frame=LocalFrame(lon=-28.5, lat=lat))
    pushed = 0.0193 * 12.0 * KNOT * 7200.0
    np.testing.assert_allclose(end_of(found), pushed * np.array(towards), atol=0.1)


def test_it_yaws_up_to_0_51_percent_to_either_side_of_downwind() -> None:
    # Allen 2010: 0.51 % across. A wind from the west pushes to the east; right of that is south.
    found = adrift(steady(0.0, 0.0), aside=np.array([-1.0, 0.0, 1.0, 0.5]), wind=Wind(from_deg=270.0, speed_kn=10.0))
    across = 0.0051 * 10.0 * KNOT * 7200.0
    np.testing.assert_allclose(found.places_m[0, :, -1, 1], across * np.array([1.0, 0.0, -1.0, -0.5]), atol=1e-6)
    np.testing.assert_allclose(found.places_m[0, :, -1, 0], 0.0193 * 10.0 * KNOT * 7200.0, atol=1e-6)


def test_stream_and_push_add_up() -> None:
    wind = Wind(from_deg=200.0, speed_kn=15.0)
    both, stream = adrift(steady(100.0, 0.3), wind=wind), adrift(steady(100.0, 0.3))
    np.testing.assert_allclose(end_of(both), end_of(stream) + end_of(adrift(steady(0.0, 0.0), wind=wind)), atol=1e-6)


@pytest.mark.parametrize("wrong", [{"from_deg": 400.0, "speed_kn": 5.0}, {"from_deg": 10.0, "speed_kn": -1.0}])
def test_a_wind_that_cannot_be_is_refused(wrong: dict[str, float]) -> None:
    with pytest.raises(SwimPlanError, match="0 to 360"):
        Wind(**wrong)


def box(west: float, south: float, east: float, north: float) -> PlanarArea:
    return PlanarArea(rings=(np.array([[west, south], [east, south], [east, north], [west, north]]),))


@pytest.mark.parametrize("width_m", [2000.0, 40.0])
def test_it_stays_where_it_meets_land_even_a_thin_spit(width_m: float) -> None:
    found = adrift(steady(90.0, 0.4), land=[box(1000.0, -500.0, 1000.0 + width_m, 500.0), box(5e4, 0.0, 6e4, 1e4)])
    end = end_of(found)
    assert end == pytest.approx([1000.0, 0.0], abs=12.0)
    (before,), (after,) = found.at(0, 2300.0)[1], found.at(0, 2900.0)[1]
    assert not before and after
    assert np.hypot(*(found.at(0, 2900.0)[0][0] - end)) == 0.0


def test_it_drifts_past_land_beside_its_way_and_stays_on_land_it_starts_on() -> None:
    land = [box(1000.0, 20.0, 2000.0, 500.0)]
    np.testing.assert_allclose(end_of(adrift(steady(90.0, 0.4), land=land)), [2880.0, 0.0], atol=1e-6)
    on_land = adrift(steady(90.0, 0.4), (1500.0, 200.0), land=land)
    assert end_of(on_land) == pytest.approx([1500.0, 200.0]) and on_land.ashore[0, 0, -1]


def test_where_the_stream_is_not_known_the_place_is_not_from_there_on() -> None:
    def known_to_the_west(place, t_s):
        return np.where(place.real < 600.0, 0.4, np.nan)

    found = adrift(known_to_the_west)
    (place,), _ = found.at(0, 1200.0)
    assert place == pytest.approx([480.0, 0.0])
    assert np.isnan(found.at(0, 3000.0)[0]).all() and np.isnan(end_of(found)).all()
    # A wind does not make up for it.
    assert np.isnan(end_of(adrift(known_to_the_west, wind=Wind(from_deg=270.0, speed_kn=10.0)))).all()


def test_stopping_is_heard_at_every_step() -> None:
    asked = iter(range(100))
    with pytest.raises(StoppedError):
        adrift(steady(0.0, 0.1), is_cancelled=lambda: next(asked) > 3)
    assert next(asked) == 5


def test_the_areas_hold_every_member_at_30_60_and_120_minutes_and_after_the_return() -> None:
    site = Site(lat=0.0)
    request = site.request([(0.0, 0.0), (0.0, 1500.0)], stream=site.steady(90.0, 0.3))
    found = how_sure(request, Asked(members=60))
    starts = {area.start for area in found.drift if area.start is not None}
    # 1500 m at sqrt(0.7^2 - 0.3^2): 39.5 min: the departure, two quarters, and the arrival.
    assert len(starts) == 4 and len(found.drift) == 4 * 3 + 3
    for area in found.drift:
        ring = site.frame.to_xy(np.array(area.ring))
        if area.start is not None:
            (start,) = site.frame.to_xy(np.array([[area.lon, area.lat]]))
            assert (area.moment - area.start).total_seconds() == 60.0 * area.after_min
            # Rates +-30 % are two standard deviations: from 0.55 to 1.45 of 0.3 m/s.
            reach = 60.0 * area.after_min * 0.3
            assert ring[:, 0].min() >= start[0] + 0.55 * reach - RIM_M - 0.1
            assert ring[:, 0].max() <= start[0] + 1.45 * reach + RIM_M + 0.1
            assert np.abs(ring[:, 1] - start[1]).max() <= RIM_M + 0.1
        else:
            assert (area.moment - found.arrive).total_seconds() == pytest.approx(60.0 * area.after_min)
            assert ring[:, 1].max() - ring[:, 1].min() > 1400.0
    assert any("No wind was given" in words for words in found.warnings) and "not counted" in found.wind


def test_without_doubts_or_wind_an_area_is_a_place_as_wide_as_a_fix() -> None:
    site = Site(lat=0.0)
    request = site.request([(0.0, 0.0), (0.0, 600.0)], stream=site.steady(45.0, 0.2))
    area = how_sure(request, Asked(members=10, doubts=NO_DOUBTS)).drift[1]
    ring = site.frame.to_xy(np.array(area.ring))
    expected = 3600.0 * 0.2 * np.full(2, 0.5**0.5)
    assert np.hypot(*(ring - expected).T).max() == pytest.approx(RIM_M, abs=0.1)
    assert area.farthest_m == pytest.approx(720.0, abs=0.1)


def test_a_drift_into_land_is_told_by_the_share_ashore() -> None:
    from tideleg.core.chart.areas import Chart, Land

    site = Site(lat=0.0)
    request = site.request([(0.0, 0.0), (0.0, 600.0)], stream=site.steady(90.0, 0.3))
    shore = Land(name="shore", area=site.box(500.0, -3000.0, 5000.0, 3000.0))
    found = how_sure(
        replace(request, chart=Chart(land=(shore,))), Asked(members=50, wind=Wind(from_deg=0.0, speed_kn=0.0))
    )
    by_minutes = {area.after_min: area for area in found.drift[:3]}
    # 500 m at 0.3 m/s are 28 min; at the weakest, 0.55 of that, 51 min.
    assert 0.2 < by_minutes[30.0].ashore_share < 0.9 and by_minutes[60.0].ashore_share == 1.0
    assert not any("No wind" in words for words in found.warnings)


def test_a_hull_is_convex_holds_all_and_needs_no_three_places() -> None:
    rng = np.random.default_rng(2)
    for n in (1, 2, 3, 40):
        places = rng.normal(size=(n, 2)) * 100.0
        ring = hull_round(places)
        steps = np.diff(ring, axis=0)
        turns = steps[:, 0] * np.roll(steps[:, 1], -1) - steps[:, 1] * np.roll(steps[:, 0], -1)
        assert np.all(turns > 0.0) and np.array_equal(ring[0], ring[-1])
        for place in places:
            offset = place - ring[:-1]
            inside = steps[:, 0] * offset[:, 1] - steps[:, 1] * offset[:, 0]
            assert np.all(inside > 0.0)
    assert len(convex_hull(np.array([[0.0, 0.0], [1.0, 1.0], [2.0, 2.0]]))) == 2
