"""Runs inside QGIS's desktop: adds the sample plan to the project, as the plugin itself does, and shows its marks."""

from __future__ import annotations

from pathlib import Path

from qgis.core import QgsProject
from qgis.utils import iface
from tideleg.plan_package.project import add_plan_to_project

NEAR_DEG = 0.005


def find_sample() -> Path:
    """Return the sample plan; `--code` runs this text without a __file__, from the checkout's root."""
    return sorted(Path("sample_layers").resolve().glob("*.gpkg"))[0]


def show() -> None:
    """Add the plan and look at its marks."""
    group = add_plan_to_project(find_sample(), QgsProject.instance())
    marks = next(node.layer() for node in group.findLayers() if node.layer().source().endswith("layername=marks"))
    extent = marks.extent()
    extent.grow(NEAR_DEG)
    iface.mapCanvas().setExtent(extent)
    iface.mapCanvas().refresh()


show()
