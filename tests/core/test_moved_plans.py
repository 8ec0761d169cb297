"""A plan turned to any side and moved anywhere on Earth is the same plan but for its bearings."""

from datetime import timedelta

import numpy as np
import pytest
from invented_requests import NOON, WGS84, Site, of_kind
from tideleg.core.chart.areas import Channel, ClosedArea, Land, Sailing
from tideleg.core.chart.hours import InForce
from tideleg.core.quantities import m_s_from_knots
from tideleg.core.solve.plan_swim import plan_swim
from tideleg.core.water.field import RuledArea, StreamField
from tideleg.core.water.hourly import HourlyStream, HourlyTable
from tideleg.core.water.tide import TideTable

STOPS = [(0.0, 0.0), (300.0, 900.0), (-500.0, 1300.0), (40.0, 30.0)]
HOUR_S = 3600.0


def table(site, *, set_now_deg, spring_kn):
    """An invented table whose set turns by 6 degrees an hour."""
    hours = np.arange(-6, 7)
    rates = spring_kn * np.abs(np.cos(np.pi * (hours + 1.5) / 6.2)) + 0.1
    return HourlyTable(
        station="drawn",
        reference="HW",
        set_deg=(site.towards(set_now_deg) + 6.0 * hours) % 360.0,
        spring_m_s=m_s_from_knots(rates),
        neap_m_s=m_s_from_knots(0.5 * rates),
        spring_range_m=4.2,
        neap_range_m=1.9,
    )


def drawn_plan(site, mode):
    depart = NOON - timedelta(hours=site.lon / 15.0 + 1.9)  # noon by the sun, so that daylight has no say
    tide = TideTable(
        port="drawn",
        times_s=HOUR_S * np.array([-14.2, -8.0, -1.8, 4.4, 10.6]),
        heights_m=np.array([3.9, 0.9, 3.8, 0.8, 4.0]),
        is_high=np.array([True, False, True, False, True]),
    )
    streams = StreamField(
        stations=(
            site.station(
                "near", (100.0, -300.0), stream=HourlyStream(table(site, set_now_deg=70.0, spring_kn=0.6), tide)
            ),
            site.station(
                "far", (-900.0, 1500.0), stream=HourlyStream(table(site, set_now_deg=110.0, spring_kn=0.9), tide)
            ),
            site.station("eddy", (-200.0, 800.0), towards=250.0, rate_m_s=0.15, tide=tide),
        ),
        ruled_areas=(RuledArea(area=site.box(-450.0, 650.0, -50.0, 1000.0), station="eddy", phase="ebb"),),
    )
    channels = (
        Channel(
            name="fairway",
            kind="fairway",
            area=site.box(-2000.0, 350.0, 2000.0, 520.0),
            flow_deg=site.towards(90.0),
            boat_m_s=m_s_from_knots(25.0),
        ),
        Channel(
            name="ferry",
            kind="ferry",
            area=site.box(-120.0, 600.0, 120.0, 2500.0),
            centre=site.xy([(0.0, 600.0), (0.0, 2500.0)]),
            sailings=(Sailing(when=depart + timedelta(minutes=40), clear_before_min=10.0, clear_after_min=10.0),),
        ),
    )
    closed = (
        ClosedArea(
            name="nursery",
            rule="no_spearing",
            area=site.area([(150.0, 700.0), (700.0, 850.0), (380.0, 1100.0)]),
            in_force=InForce(start=depart, end=depart + timedelta(hours=2)),
        ),
        ClosedArea(
            name="over by then",
            rule="no_entry",
            area=site.box(100.0, 100.0, 400.0, 600.0),
            in_force=InForce(end=depart - timedelta(minutes=5)),
        ),
    )
    land = (Land(name="cay", area=site.area([(-260.0, 480.0), (-180.0, 560.0), (-300.0, 640.0)])),)
    request = site.request(
        STOPS, stream=streams, depart=depart, mode=mode, stays_min=(20.0, 15.0), depths_m=(8.0, 14.0), tide=tide,
        channels=channels, closed_areas=closed, land=land,
    )  # fmt: skip
    return plan_swim(request)


HOME = Site()
PLACES = {
    "turned by 37": Site(turn_deg=37.0),
    "turned by 180": Site(turn_deg=180.0),
    "turned by 271.3": Site(turn_deg=271.3),
    "across the date line": Site(lon=179.9999, lat=-19.0, turn_deg=63.0),
    "west of the date line": Site(lon=-179.999, lat=51.0),
    "on longitude 180": Site(lon=180.0, lat=5.0, turn_deg=-20.0),
    "southern hemisphere": Site(lon=18.0, lat=-44.0, turn_deg=140.0),
    "equator": Site(lon=-90.0, lat=0.0, turn_deg=301.0),
    "Greenwich": Site(lon=0.0, lat=-0.0001, turn_deg=5.0),
    "60 N": Site(lon=-140.0, lat=60.0, turn_deg=88.0),
    "70 N": Site(lon=15.0, lat=70.0, turn_deg=200.0),
}
PLANS = {mode: drawn_plan(HOME, mode) for mode in (0, 1, 2)}


def turned(deg):
    """An angle brought to -180..180."""
    return (deg + 180.0) % 360.0 - 180.0


@pytest.mark.parametrize("site", PLACES.values(), ids=PLACES.keys())
@pytest.mark.parametrize("mode", [0, 1, 2])
def test_moved_plan_is_the_same_plan_but_for_bearings(site, mode):
    """Within 2 s, 0.5 m and 0.1 degree, what the meridians' convergence leaves: streams have a true set, and at 70 N
    meridians 1 km apart differ by 0.025 degree; a bow is also read at nodes half a minute apart."""
    here, there = PLANS[mode], drawn_plan(site, mode)
    assert there.total_m == pytest.approx(here.total_m, abs=0.01)
    for first, second in zip(here.legs, there.legs):
        assert second.feasible and first.feasible
        assert second.distance_m == pytest.approx(first.distance_m, abs=0.01)
        assert 60.0 * second.minutes == pytest.approx(60.0 * first.minutes, abs=2.0)
        assert second.off_line_m == pytest.approx(first.off_line_m, abs=0.5)
        assert second.stream_kn == pytest.approx(first.stream_kn, abs=0.001)
        for name in ("bearing_true_deg", "heading_true_deg", "stream_set_deg"):
            change = turned(getattr(second, name) - getattr(first, name) - site.turn_deg)
            assert abs(change) < (0.1 if name != "stream_set_deg" else 0.2), name
        magnetic = turned(second.heading_true_deg - second.heading_mag_deg - there.variation_deg)
        assert magnetic == pytest.approx(0.0, abs=1e-9)
    assert [flag.kind for flag in there.flags] == [flag.kind for flag in here.flags]
    for first, second in zip(here.flags, there.flags):
        assert (second.severity, second.leg, second.name) == (first.severity, first.leg, first.name)
        if first.start is not None:
            for name in ("start", "end"):
                since = [
                    (getattr(flag, name) - plan.depart).total_seconds()
                    for flag, plan in ((first, here), (second, there))
                ]
                assert since[1] == pytest.approx(since[0], abs=2.0)
        if first.length_m is not None:
            assert second.length_m == pytest.approx(first.length_m, abs=1.0)
        if first.crossing_angle_deg is not None:
            assert second.crossing_angle_deg == pytest.approx(first.crossing_angle_deg, abs=0.1)
    for first, second in zip(here.stops, there.stops):
        assert second.depth_now_m == first.depth_now_m or second.depth_now_m == pytest.approx(
            first.depth_now_m, abs=0.002
        )


@pytest.mark.parametrize("mode", [0, 1, 2])
def test_drawn_plan_has_flags_to_move(mode):
    plan = PLANS[mode]
    assert len(of_kind(plan, "channel")) >= 3 and len(of_kind(plan, "closed_area")) == 2
    assert len(of_kind(plan, "land")) == 1 and len(of_kind(plan, "deep")) == 1
    bows = [leg.off_line_m for leg in plan.legs]
    assert max(bows) < 1e-6 if mode == 2 else min(bows) > 1.0
    assert any(leg.stream_kn > 0.3 for leg in plan.legs)


@pytest.mark.parametrize("site", PLACES.values(), ids=PLACES.keys())
def test_track_of_a_moved_plan_stays_in_one_piece(site):
    """No piece jumps round the Earth, every longitude lies within 180, and the ends are the stops."""
    plan = drawn_plan(site, 0)
    for leg in plan.legs:
        lon = np.array([point.lon for point in leg.track])
        lat = np.array([point.lat for point in leg.track])
        assert np.all(np.abs(lon) <= 180.0)
        _, _, pieces = WGS84.inv(lon[:-1], lat[:-1], lon[1:], lat[1:])
        assert np.max(pieces) < 60.0
        _, _, off = WGS84.inv(
            [lon[0], lon[-1]], [lat[0], lat[-1]], [leg.start_lon, leg.end_lon], [leg.start_lat, leg.end_lat]
        )
        assert np.max(off) < 0.05
