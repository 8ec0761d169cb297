"""A project that holds a plan and its results is saved, read with the dock open, and saved again."""

from __future__ import annotations

from pathlib import Path

from desk import desk_with_dock, flush_deletions, opened, settle
from made_sample import sample_at
from qgis.core import QgsProject
from tideleg.dock.result_layers import PROPERTY


def test_a_project_read_with_the_dock_open_is_saved_again(qgis_app, tmp_path: Path) -> None:
    """QGIS kept pointers to the results that were taken out while it read the project, and crashed on saving it."""
    project, file = QgsProject.instance(), str(tmp_path / "project.qgz")
    with desk_with_dock() as (_, dock):
        opened(dock, sample_at(tmp_path / "bay.gpkg"), depart="2027-06-26 10:00")
        settle(dock.session)
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
