"""Transits that the user picked, as the stops of a swim have them."""

from __future__ import annotations

from dataclasses import replace

import pytest
from invented_requests import Site
from tideleg.core.magnetism import variation_at
from tideleg.core.solve.picked_transits import PickedTransit, picked_at_stops
from tideleg.core.solve.plan_swim import plan_swim
from tideleg.core.solve.transits import Landmarks

SITES = [Site(), Site(lon=179.99, lat=-35.0), Site(lon=-179.99, lat=61.0, turn_deg=140.0)]
# Drawn metres: to the right, ahead. The mark of the route lies 1000 m ahead.
THINGS = {"Post": (0.0, 1600.0), "Mill": (0.0, 2600.0), "Barn": (700.0, 1000.0), "Spire": (1500.0, 1030.0)}


def picked(site: Site, mark: str, front: str, rear: str) -> PickedTransit:
    return PickedTransit(
        mark=mark, pair=Landmarks(names=(front, rear), lonlat=site.lonlat([THINGS[front], THINGS[rear]]))
    )


def request_with(site: Site, *pairs: tuple[str, str, str]):
    request = site.request([(0.0, 0.0), (0.0, 1000.0), (0.0, 0.0)], stream=site.steady(0.0, 0.0))
    sill = replace(request.stops[1], name="Sill", kind="mark")
    stops = (request.stops[0], sill, request.stops[2])
    return replace(request, stops=stops, transits=tuple(picked(site, *pair) for pair in pairs))


@pytest.mark.parametrize("site", SITES)
def test_stop_has_its_transits_with_bearings_by_the_swims_own_variation(site: Site) -> None:
    request = request_with(site, ("Sill", "Post", "Mill"), ("Sill", "Barn", "Spire"), ("Elsewhere", "Post", "Mill"))
    plan = plan_swim(request)
    assert [len(stop.transits) for stop in plan.stops] == [0, 2, 0]
    ahead, right = plan.stops[1].transits
    assert (ahead.front, ahead.rear, ahead.mark) == ("Post", "Mill", "Sill")
    assert (ahead.bearing_true_deg - site.towards(0.0) + 180.0) % 360.0 - 180.0 == pytest.approx(0.0, abs=0.02)
    entry = request.stops[0]
    variation = variation_at(entry.lon, entry.lat, request.depart)
    assert ahead.bearing_mag_deg == pytest.approx(variation.magnetic(ahead.bearing_true_deg))
    assert plan.variation_deg == pytest.approx(variation.east_deg)
    # The line through (700, 0) and (1500, 30) from the mark meets the mark's own abscissa at -26.25 m.
    assert right.offset_m == pytest.approx(26.25 * 800.0 / (800.0**2 + 30.0**2) ** 0.5, abs=0.02)
    assert [one.crossing_deg for one in (ahead, right)] == pytest.approx([90.0 - 2.148] * 2, abs=0.01)


def test_transit_that_passes_well_off_the_mark_says_how_far_and_on_which_side() -> None:
    plan = plan_swim(request_with(SITES[0], ("Sill", "Barn", "Spire")))
    assert any("Barn / Spire" in warning and "26 m to the right of Sill" in warning for warning in plan.warnings)
    assert plan.stops[1].transits[0].crossing_deg is None


def test_rear_that_is_nearer_or_on_the_other_side_is_left_out_with_words() -> None:
    for front, rear in (("Mill", "Post"), ("Barn", "Barn")):
        plan = plan_swim(request_with(SITES[0], ("Sill", front, rear), ("Sill", "Post", "Mill")))
        assert [(one.front, one.rear) for one in plan.stops[1].transits] == [("Post", "Mill")]
        assert any(f"{front} / {rear} of Sill is left out" in warning for warning in plan.warnings)


def test_swim_without_transits_has_none_and_says_nothing_of_them() -> None:
    request = request_with(SITES[0])
    warnings: list[str] = []
    variation = variation_at(SITES[0].lon, SITES[0].lat, request.depart)
    assert picked_at_stops((), request.stops, variation, warnings) == {} and warnings == []
    assert not any("ransit" in warning for warning in plan_swim(request).warnings)
