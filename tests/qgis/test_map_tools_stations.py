"""Stream stations, eddy areas and landmarks drawn on the real canvas, and the rates that a station lacks at first."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from desk import Desk, desk_with_dock, layer_of, opened, settle
from map_hand import LEFT, Hand
from pyproj import Geod
from qgis.core import QgsVectorLayer
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtTest import QTest
from swims import DAY, invented_bay, moved, point
from tideleg.dock.dock import TidelegDock
from tideleg.map_tools.row_form import RowForm
from tideleg.plan_package.store import append_rows, create_plan

AWAY, STATION_A = moved(700.0, -300.0), moved(600.0, 900.0)


@pytest.fixture()
def at_desk(qgis_app: object) -> Iterator[tuple[Desk, TidelegDock]]:
    with desk_with_dock() as both:
        yield both


@pytest.fixture()
def hand(at_desk: tuple[Desk, TidelegDock], tmp_path: Path) -> Iterator[Hand]:
    """A hand over the invented bay; what is edited is thrown away at the end."""
    opened(at_desk[1], invented_bay(tmp_path / "bay.gpkg"), depart=f"{DAY} 10:00")
    made = Hand(*at_desk)
    made.show()
    yield made
    for name in ("stream_stations", "stream_areas", "stream_rates", "stream_events", "landmarks"):
        layer_of(made.dock, name).rollBack()
    settle(made.dock.session)


def stations(hand: Hand) -> dict[str, tuple[float, float]]:
    return {
        row["station"]: (row.geometry().asPoint().x(), row.geometry().asPoint().y())
        for row in layer_of(hand.dock, "stream_stations").getFeatures()
    }


def apart_m(one: tuple[float, float], other: tuple[float, float]) -> float:
    return Geod(ellps="WGS84").inv(*one, *other)[2]


def commands(layer: QgsVectorLayer) -> list[str]:
    return [layer.undoStack().text(number) for number in range(layer.undoStack().count())]


def asked(form: RowForm) -> list[str]:
    """The fields that are there to be filled in."""
    return [name for name, wrapper in form.wrappers.items() if not wrapper.widget().isHidden()]


def placed(hand: Hand, **values: object) -> None:
    hand.take("stream_station")
    hand.click(AWAY)
    hand.fill(**values)


# ---------------------------------------------------------------- stations


def test_a_click_asks_for_a_station_and_puts_it_into_the_edits_in_one_step(hand: Hand) -> None:
    layer = layer_of(hand.dock, "stream_stations")
    hand.take("stream_station")
    said = hand.move(AWAY)
    assert any(line.startswith("From Kettle Slip: ") for line in said)
    assert any("° true" in line and "° magnetic" in line for line in said)
    hand.click(AWAY)
    form = hand.form()
    begun = {name: wrapper.value() for name, wrapper in form.wrappers.items()}
    assert (begun["station"], begun["form"], begun["reference"], begun["port"]) == ("Station 1", "hourly", "HW", "P")
    assert "Station 1" not in stations(hand)
    hand.fill(station="Race", spring_range_m=4.0, neap_range_m=1.8, source="Own table", confidence="official")
    assert apart_m(stations(hand)["Race"], AWAY) < 4.0
    row = next(row for row in layer.getFeatures() if row["station"] == "Race")
    assert (row["source"], row["confidence"], row["spring_range_m"], row["reach_m"]) == (
        "Own table",
        "official",
        4.0,
        3000.0,
    )
    assert commands(layer) == ["Place stream station"]
    QTest.mouseClick(hand.section.undo, LEFT)
    assert "Race" not in stations(hand)
    QTest.mouseClick(hand.section.redo, LEFT)
    assert "Race" in stations(hand)


def test_only_what_a_form_needs_is_asked_for_and_what_it_needs_none_of_stays_empty(hand: Hand) -> None:
    hand.take("stream_station")
    hand.click(AWAY)
    form = hand.form()
    hourly = ["station", "form", "reference", "port", "spring_range_m", "neap_range_m", "source", "confidence"]
    assert asked(form) == hourly
    form.wrappers["spring_range_m"].setValues(4.0, [])
    form.wrappers["form"].setValues("constant", [])
    assert asked(form) == ["station", "form", "source", "confidence"]
    form.wrappers["form"].setValues("wind", [])
    assert asked(form) == ["station", "form", "wind_percent", "wind_turn_deg", "source", "confidence"]
    hand.fill()
    assert "is empty" in form.problem.text() and "wind" in form.problem.text()  # a share nobody guesses
    hand.fill(form="constant")
    row = next(row for row in layer_of(hand.dock, "stream_stations").getFeatures() if row["station"] == "Station 1")
    for name in ("reference", "port", "spring_range_m", "wind_percent"):
        assert not isinstance(row[name], (str, float)), name


def test_a_name_that_is_taken_and_ranges_the_wrong_way_round_are_refused_with_the_drawing_kept(hand: Hand) -> None:
    hand.take("stream_station")
    hand.click(AWAY)
    form = hand.form()
    hand.fill(station="A")
    assert "'A' is there already" in form.problem.text()
    hand.fill(station="Race", spring_range_m=1.8, neap_range_m=4.0)
    assert "neap range of 4 m is not below the spring range of 1.8 m" in form.problem.text()
    assert list(stations(hand)) == ["A"]
    hand.fill(spring_range_m=5.0)
    assert set(stations(hand)) == {"A", "Race"}


def test_a_subordinate_station_chooses_among_those_with_slacks_and_maxima(hand: Hand) -> None:
    placed(hand, station="Narrows", form="events")
    hand.click(moved(900.0, -300.0))
    form = hand.form()
    form.wrappers["form"].setValues("subordinate", [])
    box = form.wrappers["reference_station"].widget()
    names = [box.itemText(number) for number in range(box.count())]
    assert "Narrows" in names and "A" not in names
    minutes = dict.fromkeys(("slack_before_flood_min", "flood_minutes", "slack_before_ebb_min", "ebb_minutes"), -12.0)
    sets = {"flood_set_deg": 20.0, "ebb_set_deg": 200.0}
    hand.fill(station="Gut", reference_station="Narrows", **minutes, **sets, flood_speed_ratio=0.65)
    assert "'Ebb rate times' is empty" in form.problem.text()
    hand.fill(ebb_speed_ratio=0.0)
    row = next(row for row in layer_of(hand.dock, "stream_stations").getFeatures() if row["station"] == "Gut")
    assert (row["reference_station"], row["flood_speed_ratio"], row["ebb_speed_ratio"]) == ("Narrows", 0.65, 0.0)
    assert row["ebb_minutes"] == -12.0


def test_a_typed_position_places_a_station_exactly_there(hand: Hand) -> None:
    hand.take("stream_station")
    assert hand.section.there.text() == "Place Station There"
    hand.section.position.setText("44 00.500 N 017 33.000 W")
    hand.section.take_position()
    hand.fill(station="Exact")
    assert stations(hand)["Exact"] == pytest.approx((-17.55, 44.0 + 0.5 / 60.0), abs=1e-12)


def test_a_station_is_dragged_or_typed_to_another_place_as_one_step(hand: Hand) -> None:
    hand.take("stream_station")
    assert hand.move(STATION_A)[0] == "A"
    hand.drag(STATION_A, AWAY)
    assert apart_m(stations(hand)["A"], AWAY) < 5.0 and commands(layer_of(hand.dock, "stream_stations")) == [
        "Move stream station"
    ]
    hand.click(AWAY)
    assert "'A'" in hand.section.next.text() and hand.section.there.text() == "Move Station There"
    hand.section.position.setText("44 00.500 N 017 33.000 W")
    hand.section.take_position()
    assert stations(hand)["A"] == pytest.approx((-17.55, 44.0 + 0.5 / 60.0), abs=1e-12)
    hand.key(Qt.Key.Key_Escape)
    assert len(stations(hand)) == 1 and hand.section.tools.used is None


def test_esc_leaves_a_station_in_hand_where_it_was(hand: Hand) -> None:
    before = stations(hand)
    hand.take("stream_station")
    hand.click(STATION_A)
    hand.move(AWAY)
    hand.key(Qt.Key.Key_Escape)
    assert stations(hand) == before and hand.section.tools.used is not None
    assert not layer_of(hand.dock, "stream_stations").isModified()


# ---------------------------------------------------------------- rates


def test_a_plan_whose_stations_have_rates_says_nothing_of_them(hand: Hand) -> None:
    assert hand.section.rates.isHidden() and hand.section.rates.found == []


@pytest.mark.parametrize(
    ("form", "table", "hours"),
    [("hourly", "stream_rates", 13), ("constant", "stream_rates", 1), ("events", "stream_events", None)],
)
def test_a_station_without_rates_is_told_and_its_table_opens_at_its_rows(hand: Hand, form, table, hours) -> None:
    placed(hand, station="Race", form=form)
    hint = hand.section.rates
    assert not hint.isHidden() and "'Race' has no rates yet" in hint.words.text()
    assert "not known is not slack" in hint.words.text()
    QTest.mouseClick(hint.fill, LEFT)
    window = hand.dock.tables.windows.open_ones[table]
    assert window.isVisible()
    mine = [values for values in window.model.values.values() if values["station"] == "Race"]
    rates = [value for values in mine for name, value in values.items() if name.endswith("_kn")]
    assert rates and set(rates) == {None}  # empty, never 0
    if hours is not None:
        assert [values["hour"] for values in mine] == ([0] if hours == 1 else list(range(-6, 7)))
    assert len(commands(layer_of(hand.dock, table))) == 1
    count = window.model.rowCount()
    QTest.mouseClick(hint.fill, LEFT)
    assert window.model.rowCount() == count  # rows that are there are not begun twice
    assert not hint.isHidden()  # empty rows are no rates
    window.release()


def test_the_words_on_rates_go_when_a_rate_is_typed_and_come_back_when_it_is_undone(hand: Hand) -> None:
    placed(hand, station="Race", form="constant")
    QTest.mouseClick(hand.section.rates.fill, LEFT)
    rates = layer_of(hand.dock, "stream_rates")
    row = next(row for row in rates.getFeatures() if row["station"] == "Race")
    assert rates.changeAttributeValue(row.id(), rates.fields().indexOf("spring_kn"), 0.0)
    settle(hand.dock.session)
    assert hand.section.rates.isHidden()  # a rate of 0 that was typed is known
    rates.undoStack().undo()
    settle(hand.dock.session)
    assert not hand.section.rates.isHidden()
    hand.dock.tables.windows.close_all()


def test_forms_that_the_row_holds_whole_lack_no_rates(hand: Hand) -> None:
    sets = {"flood_set_deg": 20.0, "ebb_set_deg": 200.0}
    placed(hand, station="Slack", form="slack_offset", slack_offset_min=60.0, spring_kn=1.5, **sets)
    assert "Slack" in stations(hand) and hand.section.rates.isHidden()
    hand.settled()
    assert hand.dock.session.problem == ""


def test_an_hourly_station_without_rates_leaves_the_stream_unknown_near_it(hand: Hand) -> None:
    """The swim is not planned in slack water where nothing is known."""
    layer = layer_of(hand.dock, "stream_stations")
    assert layer.startEditing() and layer.deleteFeature(next(layer.getFeatures()).id())
    rates = layer_of(hand.dock, "stream_rates")
    assert rates.startEditing() and rates.deleteFeatures([row.id() for row in rates.getFeatures()])
    placed(hand, station="Race")
    hand.settled()
    swim = hand.dock.session.swim
    assert swim is None or any(flag.kind == "stream_unknown" for flag in swim.flags)
    assert swim is None or all(leg.stream_kn is None for leg in swim.legs)


# ---------------------------------------------------------------- eddy areas


CORNERS = [moved(400.0, 700.0), moved(800.0, 700.0), moved(800.0, 1100.0), moved(400.0, 1100.0)]


def test_an_eddy_area_takes_the_station_inside_it_and_is_asked_when_it_rules(hand: Hand) -> None:
    hand.take("eddy_area")
    for place in CORNERS:
        hand.click(place)
    hand.key(Qt.Key.Key_Return)
    form = hand.form()
    assert (form.wrappers["station"].value(), form.wrappers["phase"].value()) == ("A", "always")
    hand.fill(phase="ebb")
    layer = layer_of(hand.dock, "stream_areas")
    (row,) = layer.getFeatures()
    assert (row["station"], row["phase"]) == ("A", "ebb") and row.geometry().isGeosValid()
    assert commands(layer) == ["Draw eddy area"] and "'A' is drawn" in hand.section.done.text()
    hand.settled()
    assert hand.dock.session.problem == ""


def test_an_eddy_area_around_no_station_is_not_guessed_one(hand: Hand) -> None:
    hand.take("eddy_area")
    for place in (moved(300.0, -400.0), moved(600.0, -400.0), moved(600.0, -100.0)):
        hand.click(place)
    hand.key(Qt.Key.Key_Return)
    form = hand.form()
    hand.fill()
    assert form.isVisible() and "'Station'" in form.problem.text()
    hand.fill(station="A")
    assert layer_of(hand.dock, "stream_areas").featureCount() == 1


def test_without_a_station_no_eddy_area_is_begun(at_desk, tmp_path: Path) -> None:
    opened(at_desk[1], create_plan(tmp_path / "empty.gpkg"))
    hand = Hand(*at_desk)
    hand.show()
    hand.take("eddy_area")
    hand.click(AWAY)
    assert "no stream station" in hand.section.problem.text()
    assert hand.section.tools.used.vertices == []


# ---------------------------------------------------------------- landmarks


def test_a_landmark_is_placed_with_a_name_that_stands_once_and_moved(hand: Hand, tmp_path: Path) -> None:
    layer = layer_of(hand.dock, "landmarks")
    hand.take("landmark")
    hand.click(AWAY)
    hand.fill(name="Old Kiln", kind="chimney", height_m=12.0)
    hand.click(moved(900.0, -300.0))
    form = hand.form()
    hand.fill(name="Old Kiln")
    assert "'Old Kiln' is there already" in form.problem.text()
    form.reject()
    hand.drag(AWAY, moved(900.0, -300.0))
    (row,) = layer.getFeatures()
    place = row.geometry().asPoint()
    assert (row["name"], row["kind"], row["height_m"]) == ("Old Kiln", "chimney", 12.0)
    assert apart_m((place.x(), place.y()), moved(900.0, -300.0)) < 5.0
    assert commands(layer) == ["Place landmark", "Move landmark"]


def test_a_station_without_rates_that_was_not_drawn_here_is_told_too(at_desk, tmp_path: Path) -> None:
    plan = invented_bay(tmp_path / "bay.gpkg")
    append_rows(plan, "stream_stations", [(point(AWAY), {"station": "B", "form": "constant"})])
    opened(at_desk[1], plan)
    hand = Hand(*at_desk)
    hand.show()
    assert [one.station for one in hand.section.rates.found] == ["B"]
    settle(hand.dock.session)
