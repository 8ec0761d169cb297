"""A new plan from the dock: a form of its own, a file that stays, and the plan open at the end."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from desk import desk_with_dock, opened
from qgis.core import QgsProject
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtTest import QTest
from swims import DAY, invented_bay
from tideleg.dock import new_plan_form
from tideleg.dock.dock import TidelegDock
from tideleg.dock.new_plan_form import NewPlanForm
from tideleg.plan_package.settings import read_settings

LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def dock(qgis_app, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[TidelegDock]:
    monkeypatch.setattr(new_plan_form, "documents", lambda: tmp_path)
    with desk_with_dock() as (_, made):
        yield made


def asked(dock: TidelegDock) -> NewPlanForm:
    """Press New."""
    QTest.mouseClick(dock.plan.new, LEFT)
    assert dock.plan.form.isVisible()
    return dock.plan.form


def press_ok(form: NewPlanForm) -> None:
    QTest.mouseClick(form.buttons.button(form.buttons.StandardButton.Ok), LEFT)


@pytest.mark.parametrize(
    ("told", "zone"), [(b"Pacific/Auckland", "Pacific/Auckland"), (b"", "UTC"), (b"UTC+03:00", "UTC"), (b"\xff", "UTC")]
)
def test_a_new_plan_is_asked_for_in_the_computers_own_zone(qgis_app, monkeypatch, told: bytes, zone: str) -> None:
    monkeypatch.setattr(new_plan_form.QTimeZone, "systemTimeZoneId", lambda: told)
    assert new_plan_form.own_zone() == zone and new_plan_form.zone_box().currentText() == zone


def test_a_plan_is_made_in_the_users_documents_named_by_its_title_and_opened(dock, tmp_path: Path) -> None:
    form = asked(dock)
    QTest.keyClicks(form.name, "Kelp: autumn")
    assert Path(form.file.filePath()) == tmp_path / "Kelp autumn.gpkg"
    form.zone.setCurrentText("Pacific/Auckland")
    form.datum.setText("lowest tide")
    form.port.setText("Port Tern")
    press_ok(form)
    assert dock.session.path == (tmp_path / "Kelp autumn.gpkg").resolve() and dock.session.title == "Kelp: autumn"
    settings = read_settings(dock.session.path)
    assert [settings[key] for key in ("zone", "datum", "port")] == ["Pacific/Auckland", "lowest tide", "Port Tern"]
    assert dock.session.layers.layer("marks") is not None and dock.plan.name.text() == "Kelp: autumn"


def test_the_layers_of_the_plan_before_are_folded_away_and_stay(dock, tmp_path: Path) -> None:
    opened(dock, invented_bay(tmp_path / "bay.gpkg"), depart=f"{DAY} 10:00")
    before = dock.session.layers.group()
    layers = {node.layerId() for node in before.findLayers() if "result" not in node.parent().name()}
    form = asked(dock)
    press_ok(form)
    assert dock.session.path.name == "New plan.gpkg"
    assert not before.itemVisibilityChecked() and not before.isExpanded()
    assert layers <= set(QgsProject.instance().mapLayers())
    assert dock.session.layers.group().itemVisibilityChecked()


def test_bad_input_is_said_in_the_form_and_nothing_is_made_or_replaced(dock, tmp_path: Path) -> None:
    there = tmp_path / "there.gpkg"
    there.write_text("another file")
    form = asked(dock)
    for field, value, words in (
        ("zone", "Azores", "'Azores'"),
        ("file", "", "No file is named"),
        ("file", str(there), "there already"),
        ("file", str(tmp_path / "no such folder" / "a.gpkg"), "no such folder"),
        ("file", str(tmp_path / "a%20b.gpkg"), "%20"),
    ):
        form.zone.setCurrentText(value if field == "zone" else "UTC")
        form.file.setFilePath(value if field == "file" else str(tmp_path / "new.gpkg"))
        press_ok(form)
        assert form.isVisible() and words in form.problem.text(), form.problem.text()
        assert dock.session.path is None
    assert [path.name for path in tmp_path.iterdir()] == ["there.gpkg"] and there.read_text() == "another file"
    form.reject()


def test_a_zone_is_found_by_a_part_of_its_name_and_the_file_has_the_plans_ending(dock, tmp_path: Path) -> None:
    form = asked(dock)
    completer = form.zone.completer()
    completer.setCompletionPrefix("auckl")
    assert completer.currentCompletion() == "Pacific/Auckland"
    form.file.setFilePath(str(tmp_path / "named"))
    QTest.keyClicks(form.name, "Another")  # a file that was chosen stays
    press_ok(form)
    assert dock.session.path.name == "named.gpkg"
