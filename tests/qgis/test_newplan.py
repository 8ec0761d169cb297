"""`tideleg:newplan` makes a whole plan or says why not."""

from __future__ import annotations

from pathlib import Path

import pytest
from qgis.core import (
    QgsApplication,
    QgsProcessingAlgRunnerTask,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProject,
)
from qgis.PyQt.QtCore import QEventLoop, QTimer
from tideleg.plan_package.schema import LAYERS
from tideleg.plan_package.store import open_layer, read_settings
from tideleg.processing.newplan import NewPlan


def run(project: QgsProject | None = None, **parameters: object) -> tuple[dict, bool, str]:
    algorithm = NewPlan().create()
    context = QgsProcessingContext()
    if project is not None:
        context.setProject(project)
    feedback = QgsProcessingFeedback(False)
    results, ok = algorithm.run(parameters, context, feedback)
    return results, ok, feedback.textLog()


def test_id_and_parameters_are_the_agreed_ones() -> None:
    algorithm = NewPlan().create()
    assert algorithm.name() == "newplan"
    assert [output.name() for output in algorithm.outputDefinitions()] == ["PLAN"]
    names = [parameter.name() for parameter in algorithm.parameterDefinitions()]
    assert names == ["PLAN", "TITLE", "ZONE", "DATUM", "OVERWRITE", "OPEN"]
    needed = [p.name() for p in algorithm.parameterDefinitions() if not p.flags() & p.Flag.FlagOptional]
    assert set(needed) - {"OVERWRITE", "OPEN"} == {"PLAN"}
    assert "UTC" in algorithm.shortHelpString()


def test_plan_alone_is_enough(tmp_path: Path) -> None:
    path = tmp_path / "bay.gpkg"
    results, ok, log = run(PLAN=str(path))
    assert ok, log
    assert results == {"PLAN": str(path)}
    assert all(open_layer(path, layer.name).isValid() for layer in LAYERS)
    settings = read_settings(path)
    assert (settings["title"], settings["zone"], settings["datum"]) == ("", "UTC", "chart datum")


def test_title_zone_and_datum_arrive_in_the_settings(tmp_path: Path) -> None:
    path = tmp_path / "bay.gpkg"
    _results, ok, log = run(PLAN=str(path), TITLE=" North bay ", ZONE="Atlantic/Azores", DATUM="LAT")
    assert ok, log
    settings = read_settings(path)
    assert (settings["title"], settings["zone"], settings["datum"]) == ("North bay", "Atlantic/Azores", "LAT")


def test_unknown_zone_is_told_before_the_run_with_its_remedy(tmp_path: Path) -> None:
    algorithm = NewPlan().create()
    parameters = {"PLAN": str(tmp_path / "bay.gpkg"), "ZONE": "Moon/Base"}
    ok, message = algorithm.checkParameterValues(parameters, QgsProcessingContext())
    assert not ok
    assert "Moon/Base" in message
    assert "Europe/Lisbon" in message


def test_existing_plan_is_left_alone_unless_replacing_is_asked_for(tmp_path: Path) -> None:
    path = tmp_path / "bay.gpkg"
    run(PLAN=str(path), TITLE="First")
    _results, ok, log = run(PLAN=str(path), TITLE="Second")
    assert not ok
    assert "already there" in log
    assert read_settings(path)["title"] == "First"
    _results, ok, log = run(PLAN=str(path), TITLE="Second", OVERWRITE=True)
    assert ok, log
    assert read_settings(path)["title"] == "Second"


@pytest.mark.parametrize("wanted", [True, False])
def test_layers_come_into_the_project_when_asked_for(tmp_path: Path, wanted: bool) -> None:
    project = QgsProject()
    _results, ok, log = run(project, PLAN=str(tmp_path / "bay.gpkg"), TITLE="Bay", OPEN=wanted)
    assert ok, log
    groups = [group.name() for group in project.layerTreeRoot().findGroups()]
    assert groups == (["Bay"] if wanted else [])
    assert len(project.mapLayers()) == (len(LAYERS) + 1 if wanted else 0)


def test_folder_that_is_not_there_is_told_with_its_remedy(tmp_path: Path) -> None:
    _results, ok, log = run(PLAN=str(tmp_path / "none" / "bay.gpkg"))
    assert not ok
    assert "Make the folder" in log


def test_runs_in_a_background_task_as_the_desktop_runs_it(tmp_path: Path) -> None:
    path = tmp_path / "bay.gpkg"
    context, feedback = QgsProcessingContext(), QgsProcessingFeedback(False)
    task = QgsProcessingAlgRunnerTask(NewPlan().create(), {"PLAN": str(path)}, context, feedback)
    loop, outcome = QEventLoop(), []
    task.executed.connect(lambda ok, results: (outcome.append((ok, results)), loop.quit()))
    QTimer.singleShot(30_000, loop.quit)
    QgsApplication.taskManager().addTask(task)
    if not outcome:
        loop.exec()
    assert outcome == [(True, {"PLAN": str(path)})], feedback.textLog()
    assert open_layer(path, "marks").renderer().type() == "categorizedSymbol"
