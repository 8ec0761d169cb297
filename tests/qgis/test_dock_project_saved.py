"""A project that holds a plan and its results is saved and read, with the dock open and closed: results are not in it,
and are made anew."""

from __future__ import annotations

import re
import zipfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import tideleg
from desk import Desk, desk_with_dock, flush_deletions, group_names, layer_of, opened, settle, wait_for
from made_sample import sample_at
from qgis.core import (
    QgsCoordinateTransformContext,
    QgsMemoryProviderUtils,
    QgsProject,
    QgsVectorFileWriter,
    QgsVectorLayer,
)
from tideleg.dock.dock import TidelegDock
from tideleg.dock.result_layers import SHOWN, ResultLayers
from tideleg.dock.saved_project import LEFT_OUT, PROPERTY, is_result

GROUP = "Planned swim (result)"


def results() -> list[str]:
    """Names of the results that are in the project."""
    return sorted(one.name() for one in QgsProject.instance().mapLayers().values() if is_result(one))


def counts(dock: TidelegDock) -> dict[str, int]:
    """How many rows each result layer has."""
    return {one.parameter: dock.results.layer(one.parameter).featureCount() for one in SHOWN}


def swum_in(dock: TidelegDock, folder: Path) -> dict[str, int]:
    """The sample opened and its swim drawn, in time too."""
    opened(dock, sample_at(folder / "bay.gpkg"), depart="2027-06-26 10:00")
    return drawn(dock)


def drawn(dock: TidelegDock) -> dict[str, int]:
    settle(dock.session)
    wait_for(lambda: dock.time.swim is not None, "the swim in time")
    return counts(dock)


def saved(file: Path) -> str:
    """What the project's file says."""
    assert QgsProject.instance().write(str(file))
    with zipfile.ZipFile(file) as parts:
        return parts.read(next(one for one in parts.namelist() if one.endswith(".qgs"))).decode("utf-8")


@contextmanager
def desk_without_dock() -> Iterator[Desk]:
    """The plugin with its dock never opened, in an empty project."""
    QgsProject.instance().clear()
    desk = Desk()
    desk.window.show()
    plugin = tideleg.classFactory(desk)
    plugin.initGui()
    try:
        yield desk
    finally:
        plugin.unload()
        QgsProject.instance().clear()
        desk.window.deleteLater()
        flush_deletions()


def test_a_project_read_with_the_dock_open_is_saved_again(qgis_app, tmp_path: Path) -> None:
    """QGIS kept pointers to the results that were taken out while it read the project, and crashed on saving it."""
    project, file = QgsProject.instance(), str(tmp_path / "project.qgz")
    with desk_with_dock() as (_, dock):
        swum_in(dock, tmp_path)
        assert project.write(file)
        kept = [layer for layer in project.snappingConfig().individualLayerSettings() if layer.customProperty(PROPERTY)]
        assert kept, "the results are no longer in the project's snapping: what this tests is gone"
        project.clear()
        flush_deletions()
        assert project.read(file)
        flush_deletions()
        settle(dock.session)
        there = set(project.mapLayers())
        assert {layer.id() for layer in project.snappingConfig().individualLayerSettings()} <= there
        assert project.write(file)


def test_a_saved_project_has_the_plan_and_nothing_of_the_results(qgis_app, tmp_path: Path) -> None:
    with desk_with_dock() as (_, dock):
        before = swum_in(dock, tmp_path)
        ids = [dock.results.layer(one.parameter).id() for one in SHOWN]
        routes = layer_of(dock, "routes").id()
        text = saved(tmp_path / "project.qgz")
        assert routes in text and text.count(f"<{LEFT_OUT}") == len(SHOWN)
        assert GROUP not in text and PROPERTY not in text
        # QGIS lists the order of all layers after the layers themselves, and passes over those that are not there.
        order = re.compile("<layerorder>.*</layerorder>", re.DOTALL)
        assert order.search(text) and not any(one in order.sub("", text) for one in ids)
        assert counts(dock) == before and GROUP in group_names()  # saving takes nothing off the map


def test_a_group_of_results_with_something_of_the_users_in_it_is_saved_with_that(qgis_app, tmp_path: Path) -> None:
    project, file = QgsProject.instance(), tmp_path / "project.qgz"
    with desk_with_dock() as (_, dock):
        swum_in(dock, tmp_path)
        mine = QgsMemoryProviderUtils.createMemoryLayer("Mine", layer_of(dock, "marks").fields())
        project.addMapLayer(mine, False)
        node = project.layerTreeRoot().findLayer(dock.results.layer("LEGS").id())
        node.parent().addLayer(mine)
        assert GROUP in saved(file)
    with desk_without_dock():
        assert project.read(str(file))
        assert GROUP in group_names() and results() == []
        assert [one.name() for one in project.mapLayers().values()].count("Mine") == 1


def test_a_project_read_while_the_dock_is_closed_has_no_group_and_no_layers_of_results(
    qgis_app, tmp_path: Path
) -> None:
    project, file = QgsProject.instance(), tmp_path / "project.qgz"
    with desk_with_dock() as (_, dock):
        swum_in(dock, tmp_path)
        saved(file)
    with desk_without_dock():
        assert project.read(str(file))
        assert len(group_names()) == 1 and GROUP not in group_names() and results() == []
    with desk_with_dock() as (_, dock):
        dock.close()
        assert project.read(str(file))
        assert GROUP not in group_names() and results() == []


def test_results_in_a_project_of_before_go_when_it_is_read(qgis_app, tmp_path: Path) -> None:
    """Projects were saved with them once."""
    project, file = QgsProject.instance(), tmp_path / "project.qgz"
    project.clear()
    group = project.layerTreeRoot().insertGroup(0, GROUP)
    group.setCustomProperty(PROPERTY, True)
    layer = QgsVectorLayer("Point?crs=EPSG:4326", "Swimmer", "memory")
    layer.setCustomProperty(PROPERTY, True)
    project.addMapLayer(layer, False)
    group.addLayer(layer)
    assert GROUP in saved(file)  # without the plugin nothing keeps them out
    project.clear()
    assert project.read(str(file)) and results() == ["Swimmer"]
    with desk_without_dock():
        assert project.read(str(file))
        assert results() == [] and GROUP not in group_names()


def test_results_are_made_anew_and_whole_each_time_a_project_is_read(qgis_app, tmp_path: Path) -> None:
    project, file = QgsProject.instance(), tmp_path / "project.qgz"
    with desk_with_dock() as (_, dock):
        before = swum_in(dock, tmp_path)
        assert all(before.values())
        for _ in range(2):
            saved(file)
            assert project.read(str(file))
            flush_deletions()
            dock.session.choose_moment(dock.session.depart.replace(year=2027, month=6, day=26, hour=10, minute=0))
            assert drawn(dock) == before
            assert len(results()) == len(SHOWN) and group_names().count(GROUP) == 1


def test_what_is_played_is_drawn_also_where_it_was_there_before_the_layers(qgis_app, tmp_path: Path) -> None:
    """The stream's arrows were missing after a project was opened."""
    with desk_with_dock() as (_, dock):
        swum_in(dock, tmp_path)
        project, group = QgsProject.instance(), dock.session.layers.group()
        late = ResultLayers(project)
        late.show(dock.session.swim, None)  # the plan has no place in the tree yet
        late.show_in_time(dock.time.swim)
        assert late.layer("STREAM_AROUND") is None
        late.show(dock.session.swim, group)
        assert all(late.layer(one.parameter).featureCount() for one in SHOWN)
        late.remove()


def test_a_result_made_permanent_is_the_users_and_nothing_is_written_to_it(qgis_app, tmp_path: Path) -> None:
    file = tmp_path / "project.qgz"
    with desk_with_dock() as (_, dock):
        swum_in(dock, tmp_path)
        legs = dock.results.layer("LEGS")
        options = QgsVectorFileWriter.SaveVectorOptions()
        options.layerName = "legs"
        context = QgsCoordinateTransformContext()
        QgsVectorFileWriter.writeAsVectorFormatV3(legs, str(tmp_path / "legs.gpkg"), context, options)
        legs.setDataSource(f"{tmp_path / 'legs.gpkg'}|layername=legs", "Legs kept", "ogr")
        rows = legs.featureCount()
        assert rows > 0
        dock.session.choose_pace(0.9)
        settle(dock.session)
        assert legs.featureCount() == rows and dock.results.layer("LEGS") is None
        assert "Legs kept" in saved(file)
    assert "Legs kept" not in results()


def test_a_copy_of_a_result_is_the_users_and_stays(qgis_app, tmp_path: Path) -> None:
    project = QgsProject.instance()
    with desk_with_dock() as (_, dock):
        rows = swum_in(dock, tmp_path)["LEGS"]
        copy = dock.results.layer("LEGS").clone()
        copy.setName("My legs")
        project.addMapLayer(copy)
        assert not is_result(copy) and not copy.readOnly() and not copy.customProperty("skipMemoryLayersCheck")
        assert "My legs" in saved(tmp_path / "copied.qgz")
        dock.session.close_plan()
        dock.results.remove()
        assert [one.featureCount() for one in project.mapLayers().values() if one.name() == "My legs"] == [rows]
