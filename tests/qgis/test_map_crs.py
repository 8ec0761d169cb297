"""What the map of a project is drawn in once a plan is in it."""

from __future__ import annotations

import math
from pathlib import Path

import pytest
from desk import desk_with_dock, flush_deletions, opened, settle
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsFeature,
    QgsGeometry,
    QgsPointXY,
    QgsProject,
    QgsVectorLayer,
)
from qgis.PyQt.QtCore import QCoreApplication
from swims import LAT, LON, add_route, invented_bay, new_plan, offset
from tideleg.layers_out.plan_layers import output_crs
from tideleg.plan_package.map_crs import map_crs
from tideleg.plan_package.project import add_plan_to_project


@pytest.fixture
def bay(qgis_app, tmp_path: Path) -> Path:
    return invented_bay(tmp_path / "bay.gpkg")


def on_map_deg(start: tuple[float, float], end: tuple[float, float]) -> float:
    """The angle from the top of the project's map at which a leg is drawn."""
    to_map = QgsCoordinateTransform(output_crs(), QgsProject.instance().crs(), QgsProject.instance())
    start, end = (to_map.transform(QgsPointXY(*place)) for place in (start, end))
    return math.degrees(math.atan2(end.x() - start.x(), end.y() - start.y())) % 360.0


@pytest.mark.parametrize("bearing_deg", [45.0, 120.0])
def test_in_an_empty_project_a_leg_is_drawn_at_the_angle_it_is_swum(bay: Path, bearing_deg: float) -> None:
    with desk_with_dock() as (_, dock):
        opened(dock, bay)
        settle(dock.session)
        QCoreApplication.processEvents()
        assert QgsProject.instance().crs().authid() == "EPSG:32628"  # 17.56 W lies in zone 28
        drawn = on_map_deg((LON, LAT), offset(bearing_deg, 1000.0))
        assert drawn == pytest.approx(bearing_deg, abs=2.1)  # the grid's north is up to 3 degrees x sin(44) off


def test_a_new_plan_without_a_place_gets_a_map_that_keeps_angles(qgis_app, tmp_path: Path) -> None:
    project = QgsProject()
    add_plan_to_project(new_plan(tmp_path / "new.gpkg"), project)
    assert project.crs().authid() == "EPSG:3857"


@pytest.mark.parametrize(
    ("lon", "lat", "code"), [(179.999, -17.0, 32760), (-179.999, 60.0, 32601), (180.0, 5.0, 32601)]
)
def test_a_plan_at_the_date_line_gets_the_zone_of_its_first_place(qgis_app, tmp_path: Path, lon, lat, code) -> None:
    plan, project = new_plan(tmp_path / "new.gpkg"), QgsProject()
    add_route(plan, "Over", (lon, lat), offset(90.0, 500.0, lon, lat))
    add_plan_to_project(plan, project)
    assert project.crs().postgisSrid() == code


def test_rows_without_a_place_or_too_far_north_choose_no_zone(qgis_app) -> None:
    def layer(*places: QgsGeometry) -> QgsVectorLayer:
        made = QgsVectorLayer("Point?crs=EPSG:4326", "marks", "memory")
        rows = [QgsFeature() for _ in places]
        for row, place in zip(rows, places):
            row.setGeometry(place)
        made.dataProvider().addFeatures(rows)
        return made

    nowhere, far = QgsGeometry(), QgsGeometry.fromWkt("POINT (10 88)")
    assert map_crs([layer(nowhere, far)]).authid() == "EPSG:3857"
    assert map_crs([layer(nowhere, far, QgsGeometry.fromWkt("POINT (10 50)"))]).authid() == "EPSG:32632"


def test_what_the_user_shows_or_has_chosen_stays(bay: Path) -> None:
    shown, chosen = QgsProject(), QgsProject()
    shown.setCrs(QgsCoordinateReferenceSystem("EPSG:4326"))
    shown.addMapLayer(QgsVectorLayer("Point?crs=EPSG:4326", "mine", "memory"))
    chosen.setCrs(QgsCoordinateReferenceSystem("EPSG:3395"))
    for project, code in ((shown, "EPSG:4326"), (chosen, "EPSG:3395")):
        add_plan_to_project(bay, project)
        QCoreApplication.processEvents()
        assert project.crs().authid() == code
    flush_deletions()
