"""The dock comes when it is wanted and goes with all that it brought."""

from __future__ import annotations

from pathlib import Path

import tideleg
from desk import Desk, flush_deletions, layer_of, opened, settle, wait_for
from qgis.core import QgsApplication, QgsProject, QgsSettings
from qgis.PyQt.QtCore import QObject
from qgis.PyQt.QtWidgets import QAction, QDockWidget
from swims import DAY, invented_bay, moved
from tideleg.dock.result_layers import SHOWN
from tideleg.dock.session import SETTLED

SIGNALS = ("layersAdded", "layersRemoved", "readProject")


def remains(desk: Desk) -> dict[str, object]:
    """What a life could leave behind."""
    flush_deletions()
    project = QgsProject.instance()
    return {
        "actions": [action.text() for action in desk.window.findChildren(QAction)],
        "toolbar": [action.text() for action in desk.toolbar.actions()],
        "docks": len(desk.window.findChildren(QDockWidget)),
        "objects": len(desk.window.findChildren(QObject)),
        "listeners": {name: project.receivers(getattr(project, name)) for name in SIGNALS},
        "map_time": (
            desk.canvas.receivers(desk.canvas.temporalRangeChanged),
            desk.canvas.temporalRange().isInfinite(),
        ),
        "results": [one.name() for one in project.mapLayers().values() if one.customProperty("tideleg/result")],
        "groups": [one.name() for one in project.layerTreeRoot().findGroups(True) if "result" in one.name()],
        "plan_listeners": [
            layer.receivers(layer.layerModified) for layer in project.mapLayers().values() if layer.isSpatial()
        ],
    }


def test_ten_lives_with_a_planned_swim_leave_nothing_but_the_plans_layers(qgis_app, tmp_path: Path) -> None:
    plan, desk = invented_bay(tmp_path / "bay.gpkg"), Desk()
    QgsProject.instance().clear()
    desk.window.show()
    seen = []
    for life in range(10):
        plugin = tideleg.classFactory(desk)
        plugin.initGui()
        plugin.dock_action.trigger()
        assert plugin.dock.isVisible() and plugin.dock_action.isChecked()
        if life == 0:
            opened(plugin.dock, plan, depart=f"{DAY} 10:00")
        else:
            settle(plugin.dock.session)
        assert plugin.dock.session.path == plan  # found in the project
        if life % 3 == 0:
            wait_for(lambda dock=plugin.dock: dock.time.swim is not None, "the swim in time")
            plugin.dock.time.play.click()  # unloaded while it plays
        if life % 2:
            plugin.dock.session.step_departure(1)  # unloaded while a swim is on its way
        plugin.unload()
        wait_for(lambda: QgsApplication.taskManager().countActiveTasks() == 0, "the tasks' end")
        seen.append(remains(desk))
    assert all(one == seen[0] for one in seen[1:])
    assert seen[0]["docks"] == 0 and seen[0]["toolbar"] == []
    assert seen[0]["map_time"][1]
    assert seen[0]["results"] == [] and seen[0]["groups"] == []
    QgsProject.instance().clear()
    desk.canvas.stopRendering()
    desk.window.deleteLater()
    flush_deletions()


def test_the_action_hides_and_shows_the_dock_and_follows_its_own_cross(qgis_app) -> None:
    desk = Desk()
    desk.window.show()
    plugin = tideleg.classFactory(desk)
    plugin.initGui()
    assert plugin.dock is None and not plugin.dock_action.isChecked()  # nothing is made before it is wanted
    plugin.dock_action.trigger()
    dock = plugin.dock
    plugin.dock_action.trigger()
    assert dock.isHidden() and not plugin.dock_action.isChecked()
    plugin.dock_action.trigger()
    assert dock.isVisible() and plugin.dock is dock
    dock.close()
    assert not plugin.dock_action.isChecked()
    plugin.unload()
    desk.window.deleteLater()
    flush_deletions()


def test_closing_the_dock_takes_the_results_off_the_map_and_opening_it_brings_them_back(
    qgis_app, tmp_path: Path
) -> None:
    QgsProject.instance().clear()
    QgsSettings().remove("tideleg/recent_plans")
    desk = Desk()
    desk.window.show()
    plugin = tideleg.classFactory(desk)
    plugin.initGui()
    plugin.dock_action.trigger()
    opened(plugin.dock, invented_bay(tmp_path / "bay.gpkg"), depart=f"{DAY} 10:00")
    assert len(remains(desk)["results"]) == len(SHOWN)
    plugin.dock_action.trigger()
    assert plugin.dock.isHidden() and remains(desk)["results"] == []
    routes = layer_of(plugin.dock, "routes")
    assert routes.startEditing() and routes.moveVertex(*moved(1500.0, 250.0), next(routes.getFeatures()).id(), 1)
    assert plugin.dock.session.stage == SETTLED  # nobody looks, nothing is planned
    plugin.dock_action.trigger()
    settle(plugin.dock.session)
    assert plugin.dock.session.swim.legs[0].distance_m > 1400.0  # what was edited meanwhile counts
    assert routes.rollBack()
    assert len(remains(desk)["results"]) == len(SHOWN)
    plugin.unload()
    QgsProject.instance().clear()
    desk.canvas.stopRendering()
    desk.window.deleteLater()
    flush_deletions()
