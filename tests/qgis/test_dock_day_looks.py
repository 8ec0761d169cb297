"""The picture of the day in the dock: saved, through a night with a change of clocks, narrow, wide, dark and large."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta, timezone
from pathlib import Path

import pytest
from day_hands import dock_on, drag, lightness
from desk import settle
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtGui import QColor, QImage, QPalette
from qgis.PyQt.QtTest import QTest
from swims import DAY, invented_bay
from tideleg.core.clock import later
from tideleg.dock.dock import TidelegDock
from tideleg.plan_package.store import append_rows


@pytest.fixture(scope="module")
def bay(qgis_app: object, tmp_path_factory) -> Path:
    return invented_bay(tmp_path_factory.mktemp("bay") / "bay.gpkg")


@pytest.fixture()
def dock(bay: Path) -> Iterator[TidelegDock]:
    with dock_on(bay) as open_dock:
        yield open_dock


@pytest.mark.parametrize("ending", ["png", "svg", "pdf"])
def test_the_picture_is_saved_and_is_not_blank(dock, tmp_path: Path, ending: str) -> None:
    path = tmp_path / f"day.{ending}"
    assert dock.water.export.save(path) and path.name in dock.water.status.text()
    if ending == "pdf":
        from osgeo import gdal

        grey = gdal.OpenEx(str(path), open_options=["DPI=60"]).ReadAsArray()[:3].mean(axis=0)
        assert 0.003 < (grey < 128).mean() < 0.5
        return
    image = QImage(str(path))
    assert not image.isNull()
    inked = [one < 128 for one in lightness(image)]
    assert 0.005 < sum(inked) / len(inked) < 0.5


def test_the_menu_asks_for_a_file_and_gives_it_its_ending(dock, tmp_path: Path, monkeypatch) -> None:
    asked: list[str] = []

    def choose(_parent: object, _title: str, name: str, kinds: str) -> tuple[str, str]:
        asked.append(f"{name} {kinds}")
        return str(tmp_path / "picture"), kinds

    monkeypatch.setattr("tideleg.dock.day_export_menu.QFileDialog.getSaveFileName", choose)
    for action in dock.water.export.menu().actions():
        action.trigger()
    assert sorted(path.name for path in tmp_path.iterdir()) == ["picture.pdf", "picture.png", "picture.svg"]
    route, folder = dock.session.route, dock.session.path.parent
    assert asked[0] == f"{folder / f'{route} {DAY}'}.pdf PDF (*.pdf)"
    # What is saved has the departure on it.
    assert "planned 10:00" in (tmp_path / "picture.svg").read_text(encoding="utf-8")


def test_a_picture_that_cannot_be_written_is_told_with_its_reason(dock, tmp_path: Path) -> None:
    (tmp_path / "file").write_text("no folder", encoding="utf-8")
    assert not dock.water.export.save(tmp_path / "file" / "day.png")
    assert "day.png" in dock.water.status.text()


# ---------------------------------------------------------------- a night with a change of clocks


@pytest.fixture()
def autumn(qgis_app: object, tmp_path: Path) -> Iterator[TidelegDock]:
    """A plan in Lisbon's time on the day on which 01:00 to 02:00 comes twice, 2027-10-31; tides around it."""
    plan = invented_bay(tmp_path / "autumn.gpkg")
    first = datetime(2027, 10, 30, 2, tzinfo=timezone.utc)
    rows = [
        {"port": "P", "time": first + timedelta(hours=6.2 * number), "height_m": 3.9 if number % 2 else 0.7}
        for number in range(12)
    ]
    append_rows(plan, "tides", [(None, {**row, "kind": "HW" if row["height_m"] > 2.0 else "LW"}) for row in rows])
    with dock_on(plan, "2027-10-31 10:00") as open_dock:
        yield open_dock


def test_both_of_an_hour_that_comes_twice_can_be_dragged_to(autumn) -> None:
    start = autumn.water.work.day.strip.start
    offsets = []
    for minutes, clock in ((90, "01:30"), (150, "01:30"), (60, "01:00"), (120, "01:00")):
        drag(autumn, later(start, timedelta(minutes=minutes)))
        depart = autumn.session.depart
        assert f"{depart:%H:%M}" == clock
        assert (depart.astimezone(timezone.utc) - start.astimezone(timezone.utc)) == timedelta(minutes=minutes)
        assert autumn.swim.depart.dateTime().toString("HH:mm") == clock
        assert f"{clock} UTC" in autumn.water.readout.when.text()
        offsets.append(depart.utcoffset())
        settle(autumn.session)
        assert autumn.session.swim.depart.utcoffset() == depart.utcoffset()
    assert len(set(offsets)) == 2


def test_arrow_keys_go_through_the_hour_that_comes_twice(autumn) -> None:
    autumn.session.choose_moment(datetime(2027, 10, 31, 0, 30, tzinfo=timezone.utc))
    seen = []
    for _ in range(9):
        seen.append(f"{autumn.session.depart:%H:%M}")
        QTest.keyClick(autumn.water.view, Qt.Key.Key_Right)
    assert seen == ["01:30", "01:40", "01:50", "01:00", "01:10", "01:20", "01:30", "01:40", "01:50"]


def test_a_day_step_onto_an_hour_that_is_skipped_takes_the_hour_after_it(autumn) -> None:
    autumn.session.choose_moment(datetime(2027, 3, 27, 1, 30, tzinfo=timezone.utc))  # no summer time yet: UTC
    QTest.keyClick(autumn.water.view, Qt.Key.Key_PageDown)
    assert autumn.session.depart.isoformat() == "2027-03-28T02:30:00+01:00"


# ---------------------------------------------------------------- looks


@pytest.mark.parametrize("width", [300, 430, 900])
def test_the_picture_fits_narrow_and_wide(dock, width: int) -> None:
    view = dock.water.view
    view.setParent(None)
    view.resize(width, view.height())
    view.show()
    image = view.grab().toImage()
    words = " ".join(one.text for one in view.placed)
    assert view.width() == width and "planned 10:00" in words and DAY in words and "not observed" in words
    for one in view.placed:
        assert 0.0 <= one.rect.left() and one.rect.right() <= width / view.scale
    assert len({image.pixel(x, y) for x in range(0, width, 3) for y in range(0, image.height(), 3)}) > 4


def test_a_dark_theme_has_light_letters_on_a_dark_ground(dock) -> None:
    view = dock.water.view
    palette = QPalette(view.palette())
    palette.setColor(QPalette.ColorRole.Base, QColor("#202020"))
    palette.setColor(QPalette.ColorRole.Text, QColor("#f0f0f0"))
    view.setPalette(palette)
    lights = lightness(view.grab().toImage())
    assert sorted(lights)[len(lights) // 2] < 60 and max(lights) > 180


def test_a_theme_that_leaves_the_picture_no_ground_gets_that_of_the_section(dock) -> None:
    # As QGIS's own dark theme does it: widgets are transparent, the boxes around them are not.
    sheet = "QWidget { background: transparent; } QGroupBox { color: #c0c0c0; background-color: #303030; }"
    dock.setStyleSheet(sheet)
    view = dock.water.view
    shades = sorted(lightness(view.grab().toImage()))
    assert abs(shades[len(shades) // 2] - 0x30) < 25 and shades[-1] > 150
    dock.setStyleSheet("")
    shades = sorted(lightness(view.grab().toImage()))
    assert shades[len(shades) // 2] > 200


def test_larger_letters_of_the_desktop_make_the_pictures_larger(dock) -> None:
    view = dock.water.view
    view.setParent(None)
    view.resize(700, view.height())
    font, before = view.font(), view.scale
    font.setPointSizeF(18.0)
    view.setFont(font)
    assert view.scale > 1.3 * before
    view.grab()
    assert any("planned" in one.text for one in view.placed)


def test_a_swim_of_before_is_not_drawn_as_that_of_a_departure_after_it(dock) -> None:
    drag(dock, later(dock.session.swim.arrive, timedelta(minutes=10)))
    strip = dock.water.view.strip()
    assert strip.planned == dock.session.depart
    assert strip.planned_home is None or strip.seconds(strip.planned_home) > strip.planned_s
