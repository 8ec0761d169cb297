"""The water of the day before there is a route: tide, light and the stream at one station that is named."""

from __future__ import annotations

from pathlib import Path

import pytest
from day_hands import dock_on, hover, local, shown
from desk import desk_with_dock, layer_of, opened, settle
from qgis.core import QgsFeature
from swims import (
    DAY,
    KNOT_M_S,
    TIDE_ROWS,
    ZONE,
    add_constant_stream,
    add_sine_stream,
    box,
    line,
    moved,
    new_plan,
    point,
    utc,
)
from tideleg.dock.dock import TidelegDock
from tideleg.layers_in.day_asked import stream_day_asked
from tideleg.plan_package.store import append_rows

EAST, NORTH = moved(900.0, 0.0), moved(0.0, 900.0)


def plan_at(path: Path, *, tides: bool = True) -> Path:
    """A plan without route, marks and swimmers."""
    plan = new_plan(path, ZONE=ZONE)
    rows = [{"port": "P", "time": utc(at), "height_m": height, "kind": kind} for at, height, kind in TIDE_ROWS]
    append_rows(plan, "tides", [(None, row) for row in rows] if tides else [])
    return plan


def two_stations(path: Path) -> Path:
    plan = plan_at(path)
    add_constant_stream(plan, 0.5 * KNOT_M_S, 90.0, "East Gut", EAST)
    add_constant_stream(plan, 1.5 * KNOT_M_S, 0.0, "North Gut", NORTH)
    return plan


def entry_at(plan: Path, place: tuple[float, float], kind: str = "entry") -> None:
    append_rows(plan, "marks", [(point(place), {"name": "Kettle Slip", "kind": kind})])


def read(dock: TidelegDock, clock: str = "13:30") -> list[str]:
    return hover(dock, local(clock))


def test_the_stream_is_that_of_the_station_nearest_to_the_entry_and_both_are_named(qgis_app, tmp_path: Path) -> None:
    plan = two_stations(tmp_path / "plan.gpkg")
    append_rows(plan, "marks", [(point(EAST), {"name": "Ledge", "kind": "mark"})])
    entry_at(plan, moved(100.0, 700.0))
    with dock_on(plan) as dock:
        tide, stream, light, leaving = read(dock)
        where = dock.water.where.text()
        assert dock.water.isVisible() and "North Gut" in where and "nearest to Kettle Slip" in where
        assert stream == "1.5 kn towards 000° true" and light == "daylight"
        # HW 08:00 UTC 3.9 m, LW 14:15 UTC 0.9 m: the height that a cosine between them has at 12:30 UTC.
        assert tide == "1.4 m, falling"
        assert leaving == "not looked at" and dock.water.readout.values[-1].isHidden()
        assert "low water 15:15, 0.9 m" in dock.water.words.text() and "civil dusk" in dock.water.words.text()
        assert "Without a route no departures" in dock.water.words.text()
        assert any("North Gut" in placed.text for placed in painted(dock))
        assert not any("on the route" in placed.text for placed in painted(dock))


def painted(dock: TidelegDock) -> tuple:
    dock.water.view.grab()
    return dock.water.view.placed


def test_without_an_entry_it_is_the_first_mark_that_counts_and_without_marks_the_first_station(
    qgis_app, tmp_path: Path
) -> None:
    plan = two_stations(tmp_path / "plan.gpkg")
    with dock_on(plan) as dock:
        assert "East Gut, the first of the plan" in dock.water.where.text()
        assert read(dock)[1] == "0.5 kn towards 090° true"
    entry_at(plan, NORTH, "mark")
    with dock_on(plan) as dock:
        assert "North Gut, the nearest to Kettle Slip" in dock.water.where.text()


def test_the_day_is_that_of_the_stream_at_the_station(qgis_app, tmp_path: Path) -> None:
    plan = plan_at(tmp_path / "plan.gpkg")
    add_sine_stream(plan, utc("12:00"), 0.8, 90.0)
    with dock_on(plan) as dock:
        day = dock.water.work.day
        lon, lat = dock.water.work.place.lon, dock.water.work.place.lat
        asked = stream_day_asked(plan, lon=lon, lat=lat, day=DAY, step_min=10.0, below_kn=0.5)
        found = [day.read(row.moment) for row in asked.rows]
        assert [one.most_kn for one in found] == pytest.approx(
            [row.rate_kn for row in asked.rows], abs=1e-6, nan_ok=True
        )
        slack = [event.moment for event in asked.events if event.kind == "slack"]
        assert slack and {one.moment for one in day.weakest} >= set(slack)


def test_where_only_a_tide_is_known_the_rest_is_not_known_and_never_nothing(qgis_app, tmp_path: Path) -> None:
    with dock_on(plan_at(tmp_path / "plan.gpkg")) as dock:
        tide, stream, light, _ = read(dock)
        assert tide == "1.4 m, falling" and stream == light == "not known"
        assert "Nothing is drawn yet" in dock.water.where.text()
        assert "Daylight is not known" in dock.water.words.text() and " 0.0" not in dock.water.words.text()


def test_a_chart_alone_gives_daylight_and_a_mark_alone_is_named(qgis_app, tmp_path: Path) -> None:
    plan = plan_at(tmp_path / "plan.gpkg")
    append_rows(plan, "land", [(box(-400.0, -600.0, -30.0, 600.0), {"name": "Head"})])
    with dock_on(plan) as dock:
        assert read(dock)[1:3] == ["not known", "daylight"]
    entry_at(plan, moved(0.0, 0.0))
    with dock_on(plan) as dock:
        assert read(dock)[1] == "not known"
        assert "at Kettle Slip; the plan has no station" in dock.water.where.text()


def test_without_tide_and_stream_the_section_says_what_to_do_and_shows_the_day_once_there_is_one(
    qgis_app, tmp_path: Path
) -> None:
    plan = plan_at(tmp_path / "plan.gpkg", tides=False)
    with desk_with_dock() as (_, dock):
        opened(dock, plan, depart=f"{DAY} 10:00")
        hint = dock.water.hint
        assert hint.isVisible() and "Tables" in hint.text() and "Draw" in hint.text()
        tides = layer_of(dock, "tides")
        assert tides.startEditing()
        for at, height, kind in TIDE_ROWS:
            row = QgsFeature(tides.fields())
            row["port"], row["time"], row["height_m"], row["kind"] = "P", utc(at).isoformat(), height, kind
            assert tides.addFeature(row)
        shown(dock)
        assert hint.isHidden() and read(dock)[0] == "1.4 m, falling"
        tides.rollBack()
        settle(dock.session)
        assert hint.isVisible() and dock.water.work.day is None


def test_a_first_route_takes_the_places_of_the_station(qgis_app, tmp_path: Path) -> None:
    with dock_on(two_stations(tmp_path / "plan.gpkg")) as dock:
        assert dock.water.readout.values[-1].isHidden()
        routes = layer_of(dock, "routes")
        assert routes.startEditing()
        row = QgsFeature(routes.fields())
        row["name"] = "Out"
        row.setGeometry(line(moved(0.0, 0.0), EAST))
        assert routes.addFeature(row)
        shown(dock)
        assert dock.water.where.isHidden() and dock.water.readout.values[-1].isVisible()
        assert dock.water.work.day.strip.states and not dock.water.work.day.strip.place
        routes.rollBack()
        shown(dock)
        assert dock.water.where.isVisible() and not dock.water.work.day.strip.states


def test_another_day_is_looked_at_without_a_route_too(qgis_app, tmp_path: Path) -> None:
    with dock_on(two_stations(tmp_path / "plan.gpkg")) as dock:
        dock.water.after.click()
        shown(dock)
        assert dock.water.work.day.strip.start.date().isoformat() == "2027-06-06"
        assert hover(dock, local("12:00", "2027-06-06"))[1] == "0.5 kn towards 090° true"


def test_the_picture_of_a_place_is_saved_under_its_name(qgis_app, tmp_path: Path) -> None:
    with dock_on(two_stations(tmp_path / "plan.gpkg")) as dock:
        assert Path(dock.water.export.proposed_name()).name == f"East Gut {DAY}"
        assert dock.water.export.save(tmp_path / "day.svg") and (tmp_path / "day.svg").stat().st_size > 1000


def test_a_bad_value_is_told_in_the_place_of_the_day(qgis_app, tmp_path: Path) -> None:
    plan = two_stations(tmp_path / "plan.gpkg")
    with dock_on(plan) as dock:
        rates = layer_of(dock, "stream_rates")
        assert rates.startEditing()
        row = next(rates.getFeatures())
        assert rates.changeAttributeValue(row.id(), rates.fields().indexOf("spring_kn"), 40.0)
        shown(dock)
        assert "40" in dock.water.status.text() and dock.water.where.isHidden()
        rates.rollBack()
