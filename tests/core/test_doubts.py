"""What a plan says a swimmer should look at again."""

from __future__ import annotations

import numpy as np
from tideleg.core.chart.marks import Mark, Route, doubts_about_stops, marks_at_stops
from tideleg.core.geodesy import LocalFrame

FRAME = LocalFrame(lon=-40.0, lat=35.0)


def route_over(*places_m: tuple[float, float]) -> Route:
    return Route(name="R", lonlat=FRAME.to_lonlat(np.array(places_m)))


def mark(name: str, kind: str, east_m: float, north_m: float) -> Mark:
    lon, lat = FRAME.to_lonlat(np.array([[east_m, north_m]]))[0]
    return Mark(name=name, kind=kind, lon=float(lon), lat=float(lat))


MARKS = [mark("Beach", "entry", 0.0, 0.0), mark("Ledge", "mark", 800.0, 0.0), mark("Slip", "exit", 0.0, 300.0)]


def doubts(*places_m: tuple[float, float]) -> list[str]:
    route = route_over(*places_m)
    return doubts_about_stops(route, marks_at_stops(route, MARKS), MARKS)


def test_a_swim_from_an_entry_over_a_mark_to_an_exit_or_back_to_the_entry_raises_none() -> None:
    assert doubts((0.0, 0.0), (800.0, 0.0), (0.0, 300.0)) == []
    assert doubts((0.0, 0.0), (800.0, 0.0), (0.0, 0.0)) == []


def test_a_route_that_ends_at_a_mark_has_no_way_home_in_it() -> None:
    (doubt,) = doubts((0.0, 0.0), (800.0, 0.0))
    assert "ends at Ledge" in doubt and "way home" in doubt


def test_a_route_that_starts_at_a_mark_has_no_way_out_in_it() -> None:
    (doubt,) = doubts((800.0, 0.0), (0.0, 0.0))
    assert "starts at Ledge" in doubt


def test_a_vertex_that_misses_a_mark_by_28_m_is_told() -> None:
    (doubt,) = doubts((0.0, 0.0), (800.0, 28.0), (0.0, 0.0))
    assert "28 m from Ledge" in doubt
