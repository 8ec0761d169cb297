"""The planned swim played on the real canvas: by the slider, by a clock of its own, by QGIS's temporal controller."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Iterator
from datetime import datetime, timedelta, timezone
from pathlib import Path

import pytest
from desk import Desk, desk_with_dock, layer_of, leave, opened, settle, wait_for
from qgis.core import (
    QgsDateTimeRange,
    QgsFeature,
    QgsFeatureRequest,
    QgsProject,
    QgsTemporalNavigationObject,
    QgsVectorLayer,
    QgsVectorLayerTemporalContext,
)
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtTest import QTest
from swims import DAY, LEDGE, SLIP, invented_bay, line, moved
from tideleg.dock.dock import TidelegDock
from tideleg.dock.result_layers import IN_TIME
from tideleg.layers_out.plan_layers import utc_qdatetime

MINUTE = timedelta(minutes=1)


@pytest.fixture()
def at_desk(qgis_app: object) -> Iterator[tuple[Desk, TidelegDock]]:
    with desk_with_dock() as both:
        yield both


@pytest.fixture()
def desk(at_desk: tuple[Desk, TidelegDock]) -> Desk:
    return at_desk[0]


@pytest.fixture()
def dock(at_desk: tuple[Desk, TidelegDock], tmp_path: Path) -> TidelegDock:
    """The dock with a plan swum at ten and looked at minute by minute."""
    opened(at_desk[1], invented_bay(tmp_path / "bay.gpkg"), depart=f"{DAY} 10:00")
    wait_for(lambda: at_desk[1].time.swim is not None, "the swim in time")
    return at_desk[1]


def seen(layer: QgsVectorLayer, shown: QgsDateTimeRange) -> list[QgsFeature]:
    """The rows that QGIS itself picks for a range of time."""
    context = QgsVectorLayerTemporalContext()
    context.setLayer(layer)
    asked = layer.temporalProperties().createFilterString(context, shown)
    return list(layer.getFeatures(QgsFeatureRequest().setFilterExpression(asked)))


def span(begin: datetime, minutes: float = 1.0) -> QgsDateTimeRange:
    return QgsDateTimeRange(utc_qdatetime(begin), utc_qdatetime(begin + minutes * MINUTE), True, False)


def swimmer_shown(desk: Desk, dock: TidelegDock) -> list[str]:
    """The clock of the swimmers that the canvas's own time lets through."""
    return [row["clock"] for row in seen(dock.results.layer("SWIMMER"), desk.canvas.temporalRange())]


def test_until_somebody_plays_the_map_shows_all_times(desk, dock) -> None:
    assert desk.canvas.temporalRange().isInfinite()
    assert not dock.time.whole.isEnabled() and dock.time.clock.text() == "The map shows all times"
    assert dock.time.slider.maximum() == len(dock.time.swim.minutes) - 1 > 30


def test_the_slider_moves_swimmer_stream_and_tide_together(desk, dock) -> None:
    dock.time.slider.setValue(25)
    minute = dock.time.swim.minutes[25]
    assert desk.canvas.temporalRange() == span(minute.moment)
    assert swimmer_shown(desk, dock) == ["10:25"]
    shown = desk.canvas.temporalRange()
    assert [row["clock"] for row in seen(dock.results.layer("STREAM_ALONG"), shown)] == ["10:25"]
    around = seen(dock.results.layer("STREAM_AROUND"), shown)
    assert len({(row["to_lon"], row["to_lat"]) for row in around}) == len(around) > 10
    assert dock.time.clock.text() == "10:25 UTC+1, 25 min after leaving"
    leg = dock.session.swim.legs[0]
    lines = dock.time.lines.text().split("\n")
    assert lines[0] == f"Leg 1 to Gannet Ledge: hold {leg.card_heading}"
    assert lines[1].startswith("Stream: to ") and lines[1].endswith(" kn")
    assert lines[2].startswith(f"Tide: {minute.tide_m:.1f} m, falling (above ")
    row = seen(dock.results.layer("SWIMMER"), shown)[0]
    assert row["tide_m"] == minute.tide_m and row["tide"] in lines[2]


def test_at_the_ledge_the_section_says_stop_and_depth(dock) -> None:
    stay = next(number for number, one in enumerate(dock.time.swim.minutes) if one.is_stay)
    dock.time.slider.setValue(stay)
    lines = dock.time.lines.text().split("\n")
    assert lines[0] == "At Gannet Ledge"
    assert lines[3] == f"Depth here: about {dock.time.swim.minutes[stay].depth_m:.0f} m"


def test_keys_move_the_slider_by_one_minute_and_by_ten(desk, dock) -> None:
    QTest.keyClick(dock.time.slider, Qt.Key.Key_Right)
    assert swimmer_shown(desk, dock) == ["10:01"]
    QTest.keyClick(dock.time.slider, Qt.Key.Key_PageUp)
    assert swimmer_shown(desk, dock) == ["10:11"]


def test_moving_the_slider_computes_nothing_and_leaves_the_rows_alone(dock) -> None:
    said = []
    for output in IN_TIME:
        layer = dock.results.layer(output.parameter)
        layer.dataProvider().dataChanged.connect(lambda: said.append("rows"))
    dock.time.looked_at.connect(said.append)
    swim, looks = dock.time.swim, dock.time._work
    for number in range(0, dock.time.slider.maximum(), 3):
        dock.time.slider.setValue(number)
        assert not looks.is_busy
    assert said == [] and dock.time.swim is swim


def test_play_goes_minute_by_minute_and_pause_stays(desk, dock) -> None:
    QTest.mouseClick(dock.time.play, Qt.MouseButton.LeftButton)
    assert dock.time.play.text() == "Pause" and swimmer_shown(desk, dock) == ["10:00"]
    wait_for(lambda: dock.time.slider.value() == 4, "four minutes")
    QTest.mouseClick(dock.time.play, Qt.MouseButton.LeftButton)
    stood = dock.time.slider.value()
    assert not dock.time.is_playing and dock.time.play.text() == "Play"
    assert swimmer_shown(desk, dock) == [f"10:{stood:02d}"]


def test_play_stops_at_the_end_and_begins_anew_from_there(desk, dock) -> None:
    last = dock.time.slider.maximum()
    dock.time.slider.setValue(last - 1)
    dock.time.play.click()
    wait_for(lambda: not dock.time.is_playing, "the end")
    assert dock.time.slider.value() == last
    dock.time.play.click()
    assert dock.time.slider.value() == 0 and dock.time.is_playing


def test_all_times_puts_the_maps_time_back_as_it_was(desk, dock) -> None:
    before = span(datetime(2027, 1, 1, tzinfo=timezone.utc), 60.0 * 24.0)
    desk.canvas.setTemporalRange(before)
    dock.time.slider.setValue(10)
    assert desk.canvas.temporalRange() != before
    dock.time.whole.click()
    assert desk.canvas.temporalRange() == before and not dock.time.whole.isEnabled()


@pytest.mark.parametrize("end", ["closed", "no plan", "project", "refused"])
def test_when_the_dock_closes_or_the_swim_goes_the_maps_time_is_put_back(desk, dock, end: str) -> None:
    dock.time.slider.setValue(10)
    dock.time.play.click()
    assert not desk.canvas.temporalRange().isInfinite()
    if end == "closed":
        dock.close()
    elif end == "no plan":
        dock.session.close_plan()
    elif end == "project":
        desk.canvas.stopRendering()
        QgsProject.instance().clear()
    else:
        leave(dock, "2027-03-28 01:30")  # an hour that Lisbon's clocks skip (IANA zone data)
    assert desk.canvas.temporalRange().isInfinite()
    assert not dock.time.is_playing and dock.time.swim is None and dock.time.hint.text()


def test_a_swim_planned_anew_keeps_the_time_that_is_shown(desk, dock) -> None:
    dock.time.slider.setValue(25)
    first = dock.time.swim
    leave(dock, f"{DAY} 10:10")
    settle(dock.session)
    wait_for(lambda: dock.time.swim is not first, "the other swim in time")
    assert dock.time.slider.value() == 15 and swimmer_shown(desk, dock) == ["10:25"]
    assert dock.time.clock.text().startswith("10:25 ")


def test_while_another_swim_is_planned_what_is_old_is_grey(dock) -> None:
    assert dock.time.body.isEnabled()
    dock.swim.later.click()
    assert not dock.time.body.isEnabled()
    settle(dock.session)
    assert dock.time.body.isEnabled()


def test_qgis_temporal_controller_plays_the_same_layers_and_is_followed(desk, dock) -> None:
    """What QGIS's own panel does: a navigation object over the swim whose ranges the canvas shows."""
    minutes = dock.time.swim.minutes
    panel = QgsTemporalNavigationObject()
    panel.updateTemporalRange.connect(desk.canvas.setTemporalRange)
    panel.setNavigationMode(QgsTemporalNavigationObject.NavigationMode.Animated)
    panel.setTemporalExtents(QgsDateTimeRange(utc_qdatetime(minutes[0].moment), utc_qdatetime(minutes[-1].end)))
    panel.setFrameDuration(_ten_minutes())
    for frame, clock in ((1, "10:10"), (3, "10:30")):
        panel.setCurrentFrameNumber(frame)
        assert swimmer_shown(desk, dock)[0] == clock
        assert dock.time.clock.text().startswith(f"{clock} UTC+1") and dock.time.slider.value() == 10 * frame
    panel.setNavigationMode(QgsTemporalNavigationObject.NavigationMode.NavigationOff)
    assert desk.canvas.temporalRange().isInfinite() and dock.time.clock.text() == "The map shows all times"
    panel.updateTemporalRange.disconnect()


def _ten_minutes() -> object:
    from qgis.core import QgsInterval, QgsUnitTypes

    return QgsInterval(10.0, QgsUnitTypes.TemporalUnit.TemporalMinutes)


def test_a_time_that_the_user_sets_meanwhile_is_not_put_back_to_an_older_one(desk, dock) -> None:
    dock.time.slider.setValue(10)
    chosen = span(datetime(2030, 1, 1, tzinfo=timezone.utc), 60.0)
    desk.canvas.setTemporalRange(chosen)
    assert dock.time.clock.text() == "The map shows all times"  # of the swim: that time lies outside it
    dock.close()
    assert desk.canvas.temporalRange() == chosen


def test_the_times_of_the_layers_reach_from_leaving_to_landing(dock) -> None:
    layer, swim = dock.results.layer("SWIMMER"), dock.session.swim
    index = layer.fields().indexOf("begin"), layer.fields().indexOf("end")
    first, last = layer.minimumValue(index[0]), layer.maximumValue(index[1])
    assert first.toSecsSinceEpoch() == round(swim.depart.timestamp())
    assert last.toSecsSinceEpoch() == pytest.approx(swim.arrive.timestamp() + 60.0, abs=1.0)
    for output in IN_TIME:
        times = dock.results.layer(output.parameter).temporalProperties()
        assert times.isActive() and (times.startField(), times.endField()) == ("begin", "end")
    assert not dock.results.layer("TRACK").temporalProperties().isActive()  # the whole of it stays in sight


def test_a_swim_in_unknown_water_has_marks_that_say_so_at_any_time(at_desk, tmp_path: Path) -> None:
    from tideleg.plan_package.store import append_rows, create_plan

    desk, dock = at_desk
    plan = create_plan(tmp_path / "dry.gpkg", zone="UTC")
    append_rows(plan, "routes", [(line(SLIP, LEDGE, SLIP), {"name": "Out"})])
    opened(dock, plan, depart=f"{DAY} 10:00")
    wait_for(lambda: dock.time.swim is not None, "the swim in time")
    rows = list(dock.results.layer("STREAM_ALONG").getFeatures())
    assert {row["leg"] for row in rows if not row["stay"]} == {1, 2}
    assert {row["state"] for row in rows} == {"unknown"} and {row["words"] for row in rows} == {"not known"}
    assert not any(isinstance(row[name], float) for row in rows for name in ("rate_kn", "set_deg"))
    assert not dock.time.slider.isEnabled() and not dock.time.play.isEnabled()


def test_an_edited_route_is_looked_at_again(dock) -> None:
    first, routes = dock.time.swim, layer_of(dock, "routes")
    assert routes.startEditing() and routes.moveVertex(*moved(1500.0, 250.0), next(routes.getFeatures()).id(), 1)
    settle(dock.session)
    wait_for(lambda: dock.time.swim is not first, "the other swim in time")
    assert len(dock.time.swim.minutes) > len(first.minutes)
    assert dock.results.layer("SWIMMER").featureCount() == len(dock.time.swim.minutes)
    routes.rollBack()


def test_names_tips_and_keys_reach_every_control(dock) -> None:
    for control in (dock.time.slider, dock.time.play, dock.time.whole):
        assert control.accessibleName() and control.toolTip()
        assert control.focusPolicy() & Qt.FocusPolicy.TabFocus


SCRIPT = """
import sys
sys.path[:0] = sys.argv[1:]
from qgis.core import QgsApplication
application = QgsApplication([], True)
application.initQgis()
from datetime import timedelta, timezone
from qgis.gui import QgsMapCanvas
from qgis.core import QgsProject
from invented_requests import Site
from tideleg.core.solve.plan_swim import plan_swim
from tideleg.core.solve.swim_in_time import swim_in_time
from tideleg.dock.result_layers import _made, _fill_one
from tideleg.dock.time_on_canvas import TimeOnCanvas
from tideleg.layers_out.time_layers import SWIMMER
from test_dock_time import seen
from datetime import datetime
from zoneinfo import ZoneInfo
wrong = []
canvas = QgsMapCanvas()
shown = TimeOnCanvas(canvas)
for when in ("2027-06-05T13:00", "2027-03-28T00:30", "2027-09-25T13:30", "2027-03-14T06:00", "2027-10-31T00:10"):
    depart = datetime.fromisoformat(when).replace(tzinfo=timezone.utc).astimezone(ZoneInfo("Europe/Lisbon"))
    request = Site().request([(0.0, 0.0), (0.0, 2500.0), (0.0, 0.0)], depart=depart, zone="Europe/Lisbon")
    swim = swim_in_time(request, plan_swim(request))
    layer = _made(SWIMMER)
    _fill_one(layer, SWIMMER, swim)
    for number, minute in enumerate(swim.minutes[:-1]):
        shown.show(minute.moment, minute.end)
        rows = [row["minute"] for row in seen(layer, canvas.temporalRange())]
        if rows != [number]:
            wrong.append((when, number, rows))
shown.release()
print("wrong:", wrong[:5], len(wrong))
"""


@pytest.mark.parametrize("zone", ["UTC", "Pacific/Auckland", "America/St_Johns", "America/New_York"])
def test_the_minute_shown_does_not_shift_with_the_zone_of_the_machine(zone: str) -> None:
    """Also on nights on which the clocks of the plan or of the machine change (IANA zone data)."""
    here = os.path.dirname(__file__)
    folders = [os.path.join(here, "..", "..", ".cache", "python"), os.path.join(here, "..", "core"), here]
    environment = {**os.environ, "TZ": zone, "QT_QPA_PLATFORM": "offscreen"}
    done = subprocess.run(
        [sys.executable, "-c", SCRIPT, *folders], env=environment, capture_output=True, text=True, check=False
    )
    assert "wrong: [] 0" in done.stdout, done.stdout + done.stderr
