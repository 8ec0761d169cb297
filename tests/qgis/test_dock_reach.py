"""How far, in the dock: the algorithm's own numbers, as bands on the map and rows in a table."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path

import numpy as np
import pytest
from desk import Desk, cells, click_cell, desk_with_dock, group_names, layer_of, leave, opened, settle, wait_for
from qgis.core import QgsApplication, QgsFeature, QgsGeometry, QgsPointXY, QgsProject
from qgis.PyQt.QtCore import QDateTime
from qgis.PyQt.QtGui import QColor
from swims import DAY, LEDGE, SLIP, box, edited, invented_bay, moved, point, run
from tideleg.core.results.card import clock_down, clock_up
from tideleg.core.results.reach import reach_dict
from tideleg.dock.departure import digits_of
from tideleg.dock.dock import TidelegDock
from tideleg.dock.reach_rows import stay_text
from tideleg.layers_out.reach_band_styles import band_color
from tideleg.layers_out.reach_bands import MOST_BANDS, band_minutes
from tideleg.plan_package.store import append_rows
from tideleg.processing.reach import ReachOfEntry
from tideleg.version import tideleg_version

BACK = "2027-06-05 12:30"
FAR = moved(1500.0, 900.0)


@pytest.fixture(scope="module")
def bay(qgis_app: object, tmp_path_factory) -> Path:
    """The invented bay with an exit of its own and two marks of one name."""
    plan = invented_bay(tmp_path_factory.mktemp("far") / "bay.gpkg")
    rows = [("South Steps", "exit", moved(60.0, -900.0)), ("Twin", "mark", moved(700.0, 600.0)), ("Twin", "mark", FAR)]
    append_rows(plan, "marks", [(point(place), {"name": name, "kind": kind}) for name, kind, place in rows])
    return plan


@pytest.fixture()
def at_desk(qgis_app: object, bay: Path) -> Iterator[tuple[Desk, TidelegDock]]:
    with desk_with_dock() as (desk, dock):
        opened(dock, bay, depart=f"{DAY} 10:00")
        yield desk, dock
        for layer in QgsProject.instance().mapLayers().values():
            if layer.isEditable():
                layer.rollBack()


@pytest.fixture()
def dock(at_desk: tuple[Desk, TidelegDock]) -> TidelegDock:
    return at_desk[1]


def back_by(dock: TidelegDock, text: str) -> None:
    editor = dock.reach.back_by
    editor.setDateTime(editor.dateTimeFromText(text.replace(" ", "  ")))


def ended(dock: TidelegDock) -> None:
    wait_for(lambda: not dock.reach._work.is_busy, "the reach")


def show(dock: TidelegDock, back: str = BACK) -> None:
    """Press the button and wait for the answer."""
    if back:
        back_by(dock, back)
    dock.reach.ask.click()
    ended(dock)
    assert dock.reach.found is not None, dock.reach.status.text()


def rasters(plan: Path, folder: Path) -> tuple[dict, np.ndarray, np.ndarray]:
    """The algorithm's report, and the minutes of its rasters, row 0 south."""
    from osgeo import gdal

    asked = {
        "PLAN": str(plan),
        "ENTRY": "{},{} [EPSG:4326]".format(*SLIP),
        "DEPART": f"{DAY}T10:00",
        "BACK_BY": BACK.replace(" ", "T"),
        "STAY": 30,
        "REPORT": str(folder / "reach.json"),
        "OUT_TIME": str(folder / "out.tif"),
        "HOME_BY": str(folder / "home.tif"),
    }
    ran = run(ReachOfEntry().create(), asked)
    assert ran.ok, ran.said
    both = []
    for name in ("out.tif", "home.tif"):
        file = gdal.Open(str(folder / name))
        values = file.GetRasterBand(1).ReadAsArray().astype(float)[::-1]
        values[values == file.GetRasterBand(1).GetNoDataValue()] = np.nan
        both.append(values)
    return ran.report, *both


def drawn(dock: TidelegDock, parameter: str) -> list[QgsFeature]:
    layer = dock.reach.layers.layer(parameter)
    return [] if layer is None else list(layer.getFeatures())


def test_numbers_bands_and_words_are_those_of_the_algorithm(dock, bay: Path, tmp_path: Path) -> None:
    show(dock)
    report, out, home = rasters(bay, tmp_path)
    reach = dock.reach.found.reach
    assert reach_dict(reach, version=tideleg_version()) == report
    rows = {row[0]: row for row in cells(dock.reach.table)}
    told = next(mark for mark in report["marks"] if mark["name"] == "Gannet Ledge")["solver"]
    assert rows["Gannet Ledge"][1:] == [
        clock_up(reach.moment(told["out_min"])),
        clock_down(reach.moment(told["latest_leave_min"])),
        stay_text(told["stay_min"]),
        told["exit"],
    ]
    assert f"{report['stay_area_km2']:.2f} square kilometres" in dock.reach.headline.text()
    assert "leave 2027-06-05 10:00, back by 12:30, stay 30 min" in dock.reach.headline.text()
    assert f"Cells of {report['grid']['cell_m']:g} m" in dock.reach.grid.text()
    assert f"{report['expected_error']['mean_min']:.1f} min on average" in dock.reach.grid.text()
    check_bands(dock, out, home)


def check_bands(dock: TidelegDock, out: np.ndarray, home: np.ndarray) -> None:
    """A cell lies in the band of its minutes where one is home from it in time, in no band else; near the edges of a
    band, where lines between cells pass, nothing is asked."""
    reach, every = dock.reach.found.reach, dock.reach.found.every_min
    bands = {row["number"]: row.geometry() for row in drawn(dock, "REACH_BANDS")}
    spare, tested = home - out, set()
    rng = np.random.default_rng(5)
    inner = np.argwhere(np.isfinite(out) & np.isfinite(home))
    for row, column in rng.permutation(inner)[:600]:
        near = (slice(max(row - 1, 0), row + 2), slice(max(column - 1, 0), column + 2))
        numbers = set(np.ceil(out[near].ravel() / every))
        if len(numbers) != 1 or not np.isfinite(spare[near]).all() or np.ptp(np.sign(spare[near])) > 0:
            continue
        lon, lat = reach.frame.to_lonlat((reach.low_m + reach.cell_m * np.array([column, row]))[None])[0]
        place = QgsGeometry.fromPointXY(QgsPointXY(lon, lat))
        found = {number for number, band in bands.items() if band.contains(place)}
        expected = numbers if spare[row, column] > 0.0 else set()
        assert found == expected, (row, column, out[row, column], spare[row, column])
        tested |= expected or {"too late"}
    assert tested >= {*bands, "too late"} - {max(bands)}


def test_bands_lie_beside_each_other_and_their_lines_carry_the_minutes(dock) -> None:
    show(dock)
    bands, every = drawn(dock, "REACH_BANDS"), dock.reach.found.every_min
    assert [row["to_min"] for row in bands] == [every * number for number in range(1, len(bands) + 1)]
    whole = QgsGeometry.unaryUnion([row.geometry() for row in bands])
    assert sum(row.geometry().area() for row in bands) == pytest.approx(whole.area(), rel=1e-6)
    assert {row["label"] for row in drawn(dock, "REACH_LINES")} <= {f"{row['to_min']:.0f} min" for row in bands}
    (stay,) = drawn(dock, "REACH_STAY")
    assert stay["label"] == "time to stay 30 min and be home by 12:30"
    assert stay.geometry().difference(whole).area() < 1e-3 * stay.geometry().area()
    assert stay.geometry().contains(point(LEDGE))


def test_bands_are_told_apart_by_lightness_and_named_in_the_legend(dock) -> None:
    greys = [QColor(*map(int, band_color(number).split(","))) for number in range(1, MOST_BANDS + 1)]
    lightness = [0.299 * one.red() + 0.587 * one.green() + 0.114 * one.blue() for one in greys]  # ITU-R BT.601
    assert all(near - far > 12.0 for near, far in zip(lightness, lightness[1:]))
    show(dock)
    every = f"{dock.reach.found.every_min:.0f}"
    legend = [one.label() for one in dock.reach.layers.layer("REACH_BANDS").renderer().categories()]
    assert legend[0] == f"out in up to {every} min" and legend[1].startswith(f"out in {every} to ")
    lines = dock.reach.layers.layer("REACH_LINES")
    assert lines.labelsEnabled() and lines.labeling().settings().fieldName == '"label"'


def test_a_few_bands_reach_as_far_as_one_can_go() -> None:
    assert [band_minutes(far) for far in (0.0, 30.0, 100.0, 140.0, 700.0)] == [5.0, 5.0, 15.0, 20.0, 120.0]


def test_bands_lie_in_a_group_of_their_own_and_go_with_the_dock(at_desk) -> None:
    _, dock = at_desk
    show(dock)
    assert "How far (result)" in group_names(dock.session.layers.group())
    layers = [dock.reach.layers.layer(name) for name in ("REACH_BANDS", "REACH_LINES", "REACH_STAY")]
    assert all(layer.customProperty("tideleg/result") and not layer.startEditing() for layer in layers)
    dock.close()
    assert not [one for one in QgsProject.instance().mapLayers().values() if one.customProperty("tideleg/result")]
    assert "How far (result)" not in group_names()


def test_a_click_on_a_mark_goes_there_and_marks_of_one_name_are_told_apart(at_desk) -> None:
    desk, dock = at_desk
    show(dock)
    names = [row[0] for row in cells(dock.reach.table)]
    twins = [name for name in names if name.startswith("Twin (")]
    assert len(twins) == 2 and all("N" in name and "W" in name for name in twins)
    desk.canvas.setExtent(desk.canvas.extent().buffered(5.0))
    click_cell(dock.reach.table, names.index(twins[1]))
    assert desk.canvas.extent().contains(QgsPointXY(*FAR)) and desk.canvas.extent().width() < 0.5


def test_the_time_to_be_home_is_the_first_of_the_swims_own_limits(dock, bay: Path) -> None:
    hours = dock.session.request.swimmer.max_hours
    expected = dock.session.depart + timedelta(hours=hours)
    assert dock.reach.back_by.dateTime() == digits_of(expected)
    assert "hours in the water" in dock.reach.why.text()
    leave(dock, f"{DAY} 19:30")
    settle(dock.session)
    (dusk,) = [one for one in dock.session.swim.turn_back.hard_stops if one.name == "dusk"]
    assert dock.reach.back_by.dateTime() == digits_of(dusk.moment)
    assert "usk" in dock.reach.why.text()


def test_a_plan_that_says_when_to_be_back_is_heeded(dock, bay: Path) -> None:
    edited(bay, "settings", {"value": "13:15"}, "\"key\" = 'back_by'")
    dock.session.plan_again()
    settle(dock.session)
    assert dock.reach.back_by.dateTime().toString("HH:mm") == "13:15"
    assert "plan's time" in dock.reach.why.text()
    edited(bay, "settings", {"value": ""}, "\"key\" = 'back_by'")


def test_a_time_that_was_typed_stays_until_it_no_longer_holds(dock) -> None:
    assert not dock.reach.limit.isVisibleTo(dock.reach)
    back_by(dock, BACK)
    dock.swim.later.click()
    settle(dock.session)
    assert dock.reach.back_by.dateTime().toString("HH:mm") == "12:30" and dock.reach.limit.isVisibleTo(dock.reach)
    dock.reach.limit.click()
    limit: QDateTime = dock.reach.back_by.dateTime()
    assert limit.toString("HH:mm") != "12:30" and not dock.reach.limit.isVisibleTo(dock.reach)
    back_by(dock, BACK)
    leave(dock, f"{DAY} 12:40")
    settle(dock.session)
    assert dock.reach.back_by.dateTime() > digits_of(dock.session.depart)


def test_a_stop_answers_at_once_and_leaves_nothing(dock) -> None:
    told = []
    dock.reach.ask.click()

    def is_under_way() -> bool:
        told.append(dock.reach.status.text())
        return "%" in told[-1]

    wait_for(is_under_way, "words on how far it is")
    assert "Reading the plan…" in told and told[-1].startswith("On the way")
    dock.reach.stop.click()
    assert dock.reach.status.text() == "Stopped." and not dock.reach._work.is_busy
    wait_for(lambda: QgsApplication.taskManager().countActiveTasks() == 0, "the worker's end")
    assert dock.reach.found is None and drawn(dock, "REACH_BANDS") == []
    assert dock.reach.answer.isHidden() and dock.reach.ask.isVisibleTo(dock.reach)


def test_an_edit_makes_the_answer_old_and_the_bands_stay_to_draw_in(dock) -> None:
    show(dock)
    bands = dock.reach.layers.layer("REACH_BANDS")
    assert "before the last change" not in bands.name()
    areas = layer_of(dock, "closed_areas")
    assert areas.startEditing()
    row = QgsFeature(areas.fields())
    row["name"], row["rule"] = "New reserve", "no_entry"
    row.setGeometry(box(700.0, -500.0, 1600.0, 1500.0))
    assert areas.addFeature(row)
    assert not dock.reach.answer.isEnabled() and "ask again" in dock.reach.status.text()
    assert bands.name().endswith("before the last change") and bands.featureCount()
    before = dock.reach.found.reach.stay_area_km2
    settle(dock.session)
    show(dock)
    assert dock.reach.found.reach.stay_area_km2 < 0.8 * before  # not saved, and minded
    assert dock.reach.answer.isEnabled() and dock.reach.status.text() == ""
    assert not dock.reach.layers.layer("REACH_BANDS").name().endswith("change")
    assert not any(row.geometry().contains(point(LEDGE)) for row in drawn(dock, "REACH_BANDS"))


@pytest.mark.parametrize("change", ["pace", "stay", "entry"])
def test_what_is_chosen_otherwise_makes_the_answer_old(dock, change: str) -> None:
    show(dock)
    if change == "pace":
        dock.swim.pace.setValue(1.1)
    elif change == "stay":
        dock.reach.stay.setValue(60)
    else:
        dock.reach.entry.setCurrentIndex(1)
        dock.reach.entry.activated.emit(1)
    assert not dock.reach.answer.isEnabled() and "ask again" in dock.reach.status.text()


def test_an_entry_on_land_is_refused_in_words_and_nothing_is_drawn(dock) -> None:
    marks = layer_of(dock, "marks")
    slip = next(row for row in marks.getFeatures() if row["name"] == "Kettle Slip")
    assert marks.startEditing()
    assert marks.changeGeometry(slip.id(), point(moved(-250.0, 0.0)))
    settle(dock.session)
    dock.reach.entry.setCurrentIndex(dock.reach.entry.findText("Kettle Slip"))
    dock.reach.ask.click()
    ended(dock)
    assert "Kettle Slip" in dock.reach.status.text() and "inside" in dock.reach.status.text()
    assert dock.reach.found is None and dock.reach.answer.isHidden() and drawn(dock, "REACH_BANDS") == []


def test_water_that_is_too_far_says_why_and_never_nought(dock) -> None:
    show(dock, f"{DAY} 10:30")
    rows = {row[0]: row for row in cells(dock.reach.table)}
    ledge = rows["Gannet Ledge"]
    assert "not reached" in ledge[1] or "not in time" in ledge[1]
    assert ledge[2:] == ["", "", ""] and "0 min" not in " ".join(ledge)


def test_the_start_of_the_route_comes_first_and_the_entries_after_it(dock) -> None:
    entry = dock.reach.entry
    assert [entry.itemText(row) for row in range(entry.count())] == ["Start of the route: Kettle Slip", "Kettle Slip"]
    assert "10:00" in dock.reach.leave.text()


def test_without_a_plan_there_is_nothing_to_ask(qgis_app) -> None:
    with desk_with_dock() as (_, dock):
        assert not dock.reach.isEnabled() and dock.reach.hint.text() == "Open a plan first."


def test_a_dock_closed_or_unloaded_while_the_reach_is_worked_out_leaves_nothing(qgis_app, bay: Path) -> None:
    logged = []
    receive = lambda text, tag, _level: tag == "Tideleg" and logged.append(text)  # noqa: E731  disconnected by the same
    QgsApplication.messageLog().messageReceived.connect(receive)
    with desk_with_dock() as (_, dock):
        opened(dock, bay, depart=f"{DAY} 10:00")
        for gone in (dock.close, lambda: None):
            dock.setUserVisible(True)
            settle(dock.session)
            back_by(dock, BACK)
            dock.reach.ask.click()
            wait_for(lambda: "%" in dock.reach.status.text(), "words on how far it is")
            gone()
        dock_gone = dock.reach._work
        assert dock_gone.is_busy
    wait_for(lambda: QgsApplication.taskManager().countActiveTasks() == 0, "the worker's end")
    QgsApplication.messageLog().messageReceived.disconnect(receive)
    assert logged == [] and QgsProject.instance().mapLayers() == {}


def test_marks_are_read_again_only_where_they_have_changed(dock) -> None:
    known = dock.reach._marks.marks()
    dock.swim.later.click()
    settle(dock.session)
    assert dock.reach._marks.marks() is known
    marks = layer_of(dock, "marks")
    assert marks.startEditing()
    assert marks.changeGeometry(next(marks.getFeatures()).id(), point(moved(5.0, 5.0)))
    settle(dock.session)
    assert dock.reach._marks.marks() is not known
