"""A plan's transits and landmarks, as a swim reads them: names that lead nowhere are named, the swim stays."""

from __future__ import annotations

from pathlib import Path

import pytest
from osgeo import gdal
from qgis.core import QgsGeometry, QgsPointXY
from swims import DAY, LAT, LON, new_plan, offset, swum
from tideleg.core.solve.plan_swim import plan_swim
from tideleg.layers_in.swim_in import SwimAsked, request_from
from tideleg.plan_package.store import append_rows

ASKED = SwimAsked(depart=f"{DAY}T10:00")
PLACES = {"Post": offset(0.0, 1600.0), "Mill": offset(0.0, 2600.0)}
SILL = offset(0.0, 1000.0)


def point(place: tuple[float, float]) -> QgsGeometry:
    return QgsGeometry.fromPointXY(QgsPointXY(*place))


def line(*places: tuple[float, float]) -> QgsGeometry:
    return QgsGeometry.fromPolylineXY([QgsPointXY(*place) for place in places])


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    """A beach, a mark a kilometre north, two landmarks behind it, and slack water."""
    path = new_plan(tmp_path / "plan.gpkg")
    append_rows(path, "marks", [(point((LON, LAT)), {"name": "Beach", "kind": "entry"})])
    append_rows(path, "marks", [(point(SILL), {"name": "Sill"})])
    append_rows(path, "routes", [(line((LON, LAT), SILL, (LON, LAT)), {"name": "Out"})])
    append_rows(path, "landmarks", [(point(place), {"name": name}) for name, place in PLACES.items()])
    append_rows(path, "stream_stations", [(point((LON, LAT)), {"station": "S", "form": "constant"})])
    rates = {"station": "S", "hour": 0, "set_deg": 90.0, "spring_kn": 0.0, "neap_kn": 0.0}
    append_rows(path, "stream_rates", [(None, rates)])
    return path


def pick(plan: Path, begin: tuple[float, float] = SILL, **names: str) -> None:
    given = {"mark": "Sill", "front": "Post", "rear": "Mill", **names}
    append_rows(plan, "transits", [(line(begin, PLACES["Post"], PLACES["Mill"]), given)])


def warnings_of(plan: Path) -> list[str]:
    return [words for words in request_from(plan, {}, ASKED).warnings if "ransit" in words]


def test_picked_transit_is_at_its_stop(plan: Path) -> None:
    pick(plan)
    swim = plan_swim(request_from(plan, {}, ASKED))
    [transit] = swim.stops[1].transits
    assert (transit.front, transit.rear) == ("Post", "Mill")
    assert transit.bearing_true_deg % 360.0 == pytest.approx(0.0, abs=0.01) or transit.bearing_true_deg > 359.99
    assert transit.front_m == pytest.approx(600.0, abs=0.1)
    assert warnings_of(plan) == []


@pytest.mark.parametrize(
    ("field", "value", "there"),
    [("mark", "Sil", "Beach, Sill"), ("front", "Pole", "Mill, Post"), ("rear", "Tower", "Mill, Post")],
)
def test_name_that_nothing_bears_is_told_with_layer_row_field_value_and_remedy(plan, field, value, there) -> None:
    pick(plan)
    pick(plan, **{field: value})
    [words] = warnings_of(plan)
    assert f"Layer 'transits', row 2, field '{field}': got '{value}'" in words
    assert there in words and "Correct the name" in words and "left out" in words
    assert len(plan_swim(request_from(plan, {}, ASKED)).stops[1].transits) == 1


def test_landmark_whose_name_stands_twice_is_not_guessed(plan: Path) -> None:
    append_rows(plan, "landmarks", [(point(offset(90.0, 900.0)), {"name": "Mill"})])
    pick(plan)
    [words] = warnings_of(plan)
    assert "'rear': got 'Mill'" in words and "2 of that name" in words


def test_line_that_begins_away_from_its_mark_is_doubted_and_still_counts(plan: Path) -> None:
    pick(plan, begin=offset(90.0, 300.0))
    [words] = warnings_of(plan)
    assert "row 1" in words and "from Sill" in words
    assert len(request_from(plan, {}, ASKED).transits) == 1


def test_plan_made_before_these_layers_swims_as_ever(plan: Path, tmp_path: Path) -> None:
    before = swum(plan, tmp_path, DEPART=f"{DAY}T10:00")
    pick(plan)
    with_them = swum(plan, tmp_path, DEPART=f"{DAY}T10:00")
    dataset = gdal.OpenEx(str(plan), gdal.OF_VECTOR | gdal.OF_UPDATE)
    for name in ("landmarks", "transits"):
        dataset.ExecuteSQL(f"DROP TABLE {name}")
    dataset = None
    assert request_from(plan, {}, ASKED).transits == ()
    assert swum(plan, tmp_path, DEPART=f"{DAY}T10:00") == before == with_them
