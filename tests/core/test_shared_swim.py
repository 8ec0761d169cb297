"""A swim made for others to see, lines cut at 180 degrees, and points on the way, against other ways to find them."""

from __future__ import annotations

import dataclasses
import math
from dataclasses import replace
from datetime import timezone

import numpy as np
import pytest
from plans import GEOD, make_plan, with_turn_backs, with_ways_home
from tideleg.core.results.date_line import cut_at_180
from tideleg.core.results.file_contents import contents_words, shown_places, swum_legs
from tideleg.core.results.on_the_way import points_on_the_way
from tideleg.core.results.report import ReportError, report_text
from tideleg.core.results.shared import holds_position, without_marks


def every_value(thing: object) -> list[object]:
    """All that stands anywhere in a result, fields of fields too."""
    if dataclasses.is_dataclass(thing):
        return [value for field in dataclasses.fields(thing) for value in every_value(getattr(thing, field.name))]
    if isinstance(thing, np.ndarray):
        return thing.ravel().tolist()
    if isinstance(thing, (tuple, list)):
        return [value for one in thing for value in every_value(one)]
    return [thing]


def test_nothing_in_a_shared_swim_tells_where_a_mark_is_or_how_to_get_there() -> None:
    plan = with_ways_home(with_turn_backs(make_plan(legs=4, headings_per_leg=3)))
    private = [leg.end_lon for leg in plan.legs[:-1]] + [leg.end_lat for leg in plan.legs[:-1]]
    for leg in plan.legs:
        private += [leg.distance_m, leg.bearing_true_deg, leg.bearing_mag_deg, leg.heading_true_deg]
        private += [leg.heading_mag_deg, leg.ground_speed_m_s, leg.off_line_m, leg.card_heading]
    private += [213.0, plan.total_m, *(point.lon for leg in plan.legs for point in leg.track[1:-1])]
    before, after = every_value(plan), every_value(without_marks(plan))
    assert all(value in before for value in private)
    assert not [value for value in private if value in after]


def test_entries_exits_names_and_times_of_a_shared_swim_stay() -> None:
    plan = with_turn_backs(make_plan(legs=3))
    shared = without_marks(plan)
    assert [place.name for place in shown_places(shared)] == ["Kettle Slip"]
    # As the card prints them: finer times would give a leg's length to a metre.
    for mine, told in zip(plan.legs, shared.legs):
        assert told.end_name == mine.end_name and told.minutes == math.ceil(mine.minutes - 1e-6)
        for moment, rounded in ((mine.depart, told.depart), (mine.arrive, told.arrive)):
            assert -1.0 < (rounded - moment).total_seconds() < 60.5 and rounded.second == rounded.microsecond == 0
    assert [one.latest_leave for one in shared.turn_back.stops] == [one.latest_leave for one in plan.turn_back.stops]
    assert [(flag.kind, flag.severity, flag.leg) for flag in shared.flags] == [
        (flag.kind, flag.severity, flag.leg) for flag in plan.flags
    ]


def test_a_waypoint_is_as_private_as_a_mark_and_a_mark_that_begins_the_route_too() -> None:
    plan = make_plan(legs=3)
    kinds = ("mark", "waypoint", "exit", "exit")
    plan = replace(plan, stops=tuple(replace(stop, kind=kind) for stop, kind in zip(plan.stops, kinds)))
    shared = without_marks(plan)
    assert math.isnan(shared.legs[0].start_lon) and math.isnan(shared.legs[0].end_lat)
    assert [place.name for place in shown_places(shared)] == [plan.stops[2].name, plan.stops[3].name]


def test_a_shared_swim_is_never_told_as_a_report_with_noughts() -> None:
    with pytest.raises(ReportError):
        report_text(without_marks(make_plan()), "0")


def test_sharing_what_is_shared_changes_nothing_more() -> None:
    once = without_marks(with_turn_backs(make_plan(legs=3)))
    assert repr(without_marks(once)) == repr(once)


@pytest.mark.parametrize(
    "name",
    [
        "Wreck 42°24.189'N 28°29.558'W",
        "42.40315 -28.49264",
        "reef42,40315;28,49264",
        "N42 24.189 W028 29.558",
        "28 29.558 W 42 24.189 N hole",
        "42-24.189N 028-29.558W",
        "Loch 42 24 11 N, 28 29 33 O",
        "26S 500123 4700456",
    ],
)
def test_a_name_that_holds_a_position_is_a_number_wherever_it_stands(name: str) -> None:
    assert holds_position(name)
    plan = with_turn_backs(make_plan(legs=3, names=("Slip", name, "Rock", "Slip")))
    after = every_value(without_marks(replace(plan, route=name)))
    assert not [value for value in after if isinstance(value, str) and name in value]
    assert "Rock" in after


@pytest.mark.parametrize(
    "name", ["Rock 12", "N of E ledge 2", "10 m patch", "Ledge 2027-06-05", "Reef 1.5 2.5", "", "ÑE"]
)
def test_a_name_that_only_has_figures_stays(name: str) -> None:
    assert not holds_position(name)


def test_the_words_count_what_the_plan_holds() -> None:
    assert "4 places, 4 legs, 1 track of a leg, 3 flags; times in Atlantic/Azores." in contents_words(
        make_plan(legs=4, unswimmable=(2,)), flags=True
    )
    assert "Leg 2 CANNOT BE SWUM" in contents_words(make_plan(legs=4, unswimmable=(2,)))
    shared = contents_words(without_marks(make_plan()), flags=True)
    assert "1 place; times" in shared and shared.endswith(
        "Marks are left out for sharing: no positions, headings or distances."
    )


@pytest.mark.parametrize("seed", range(20))
def test_a_line_is_cut_where_it_crosses_180_and_loses_nothing(seed: int) -> None:
    rng = np.random.default_rng(seed)
    lon = 180.0 + np.cumsum(rng.normal(0.0, 0.01, 40))
    line = [(float((x + 180.0) % 360.0 - 180.0), float(y)) for x, y in zip(lon, rng.uniform(-1.0, 1.0, 40))]
    pieces = cut_at_180(line)
    sides = np.where(lon >= 180.0, 1, 0)
    assert len(pieces) == 1 + np.count_nonzero(np.diff(sides))  # counted without cutting
    kept = [point for piece in pieces for point in piece if abs(point[0]) != 180.0]
    assert np.allclose(kept, line, rtol=0.0, atol=1e-9)
    for piece in pieces:
        assert all(abs(a[0] - b[0]) < 1.0 for a, b in zip(piece, piece[1:]))
    for before, after in zip(pieces, pieces[1:]):
        assert (before[-1][0], before[-1][1]) == (-after[0][0], after[0][1]) and abs(after[0][0]) == 180.0


def test_a_line_that_ends_on_180_or_never_comes_there_is_one_piece() -> None:
    assert cut_at_180([(179.9, 1.0), (180.0, 2.0)]) == [[(179.9, 1.0), (180.0, 2.0)]]
    assert cut_at_180([(-0.1, 1.0), (0.1, 2.0)]) == [[(-0.1, 1.0), (0.1, 2.0)]]


@pytest.mark.parametrize(("lon", "lat", "zone"), [(-28.5, 42.4, "UTC"), (179.999, -47.0, "Pacific/Auckland")])
def test_points_on_the_way_are_so_far_along_the_track_as_asked(lon: float, lat: float, zone: str) -> None:
    plan = make_plan(legs=3, lon=lon, lat=lat, zone=zone)
    found = points_on_the_way(plan, 90.0)
    for leg in swum_legs(plan):
        ours = [point for point in found if point.leg == leg.number]
        total_m = GEOD.line_length([p.lon for p in leg.track], [p.lat for p in leg.track])
        assert [point.number for point in ours] == list(range(1, len(ours) + 1))
        assert total_m - 135.0 <= 90.0 * len(ours) < total_m - 45.0 + 1e-6
        # Walked along the track's own points up to the time at which one should be there.
        for point in ours:
            past = [p for p in leg.track if p.moment.astimezone(timezone.utc) <= point.moment.astimezone(timezone.utc)]
            walked = GEOD.line_length([*(p.lon for p in past), point.lon], [*(p.lat for p in past), point.lat])
            assert walked == pytest.approx(90.0 * point.number, abs=0.05)


def test_a_leg_that_cannot_be_swum_has_no_points_on_the_way() -> None:
    assert {point.leg for point in points_on_the_way(make_plan(legs=4, unswimmable=(2,)), 50.0)} == {1}
