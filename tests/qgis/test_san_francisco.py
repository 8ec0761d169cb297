"""A swim in San Francisco Bay on a published current model, coast and tide; skipped where they are absent.

The current is that of sfbofs_surface_ugrid_derived.nc (NOAA's SFBOFS, ten hourly steps of 2024-05-23), the tide that of
NOAA's predictions for station 9414290 for 2026, the coast CA-SFBay.geojson; all public, none for navigation. The two do
not share a day, and declination is known from 2025 on. So the model's hours are laid on those of 2026 whose predicted
heights rise and fall as the model's own water level does: its start is given in the plan, as a user gives one.
Everything expected here is worked out again from the files, without the plugin.
"""

from __future__ import annotations

import gzip
import json
import math
from dataclasses import dataclass
from datetime import datetime, timedelta, timezone
from pathlib import Path
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from osgeo import gdal
from pyproj import Geod
from qgis.core import QgsGeometry
from swims import add_route, add_swimmer, flags_of, new_plan, point, swim, swum
from tideleg.core.clock import PlanClock
from tideleg.core.geodesy import LocalFrame
from tideleg.core.water.stream import KNOWN, UNKNOWN
from tideleg.layers_in.models_in import models_from
from tideleg.layers_in.table import Table
from tideleg.plan_package.schema import LAYER_BY_NAME
from tideleg.plan_package.store import append_rows, open_layer

GEOD = Geod(ellps="WGS84")
ZONE = ZoneInfo("America/Los_Angeles")
COVE, SHOAL = (-122.4935, 37.8690), (-122.4700, 37.8640)
PACE_M_S, STAY_MIN = 0.6, 15.0
FOOT_M = 0.3048


@dataclass(frozen=True)
class Current:
    """The model as the file has it: nodes in degrees, faces, and by the hour vectors in faces, water level at nodes."""

    lon: np.ndarray
    lat: np.ndarray
    faces: np.ndarray
    east: np.ndarray
    north: np.ndarray
    level: np.ndarray

    def metres(self) -> tuple[np.ndarray, np.ndarray]:
        """Nodes on a plane that touches WGS84 in the middle, by its radii of curvature there."""
        return plane(self.lon, self.lat)

    def at_nodes(self, hour: int, part: str) -> np.ndarray:
        """Each node's value by the faces round it: the weights next to even ones that make a plane come out right."""
        x, y = self.metres()
        values = getattr(self, part)[hour]
        found = np.empty(len(x))
        for node in range(len(x)):
            around = np.flatnonzero((self.faces == node).any(axis=1))
            dx = x[self.faces[around]].mean(axis=1) - x[node]
            dy = y[self.faces[around]].mean(axis=1) - y[node]
            weights = np.ones(len(around))
            moments = np.stack([dx, dy])
            square = moments @ moments.T
            if np.linalg.det(square) > 1e-9 * np.trace(square) ** 2:
                weights -= np.linalg.pinv(moments) @ moments.sum(axis=1)
            # Two faces, or all to one side, tell nothing of how the stream changes: they share evenly.
            weights = np.maximum(weights, 0.0) if weights.mean() >= 0.1 else np.ones(len(around))
            found[node] = weights @ values[around] / weights.sum()
        return found


def plane(lon: np.ndarray, lat: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    lat0 = math.radians(37.88)
    squeeze = 1.0 - 0.00669437999014 * math.sin(lat0) ** 2
    prime, meridian = 6378137.0 / math.sqrt(squeeze), 6378137.0 * (1.0 - 0.00669437999014) / squeeze**1.5
    return np.radians(lon + 122.49) * prime * math.cos(lat0), np.radians(lat - 37.88) * meridian


class ByHand:
    """The stream at a place and hour by going through the triangles one by one."""

    def __init__(self, current: Current) -> None:
        self.x, self.y = current.metres()
        self.faces = current.faces
        self.own = [np.stack([current.east[h], current.north[h]]) for h in range(len(current.east))]
        hours = range(len(current.east))
        self.nodes = [np.stack([current.at_nodes(h, "east"), current.at_nodes(h, "north")]) for h in hours]

    def at(self, lon: float, lat: float, hour: float) -> np.ndarray | None:
        x, y = plane(np.array(lon), np.array(lat))
        ax, ay = self.x[self.faces], self.y[self.faces]
        whole = cross(ax[:, 1] - ax[:, 0], ay[:, 1] - ay[:, 0], ax[:, 2] - ax[:, 0], ay[:, 2] - ay[:, 0])
        parts = [
            cross(ax[:, j] - x, ay[:, j] - y, ax[:, k] - x, ay[:, k] - y) / whole for j, k in ((1, 2), (2, 0), (0, 1))
        ]
        inside = np.flatnonzero(np.min(parts, axis=0) >= 0.0)
        if len(inside) == 0 or not 0.0 <= hour <= len(self.own) - 1:
            return None
        face = inside[0]
        weights = np.array([part[face] for part in parts])
        first = min(int(hour), len(self.own) - 2)
        late = hour - first
        return (1.0 - late) * self._in_face(face, weights, first) + late * self._in_face(face, weights, first + 1)

    def _in_face(self, face: int, weights: np.ndarray, hour: int) -> np.ndarray:
        """Straight from the face's own vector at its centre to those of its corners."""
        least = weights.min()
        return self.nodes[hour][:, self.faces[face]] @ (weights - least) + 3.0 * least * self.own[hour][:, face]


def cross(ax: np.ndarray, ay: np.ndarray, bx: np.ndarray, by: np.ndarray) -> np.ndarray:
    return ax * by - ay * bx


def needed(real_data: Path, name: str) -> Path:
    path = real_data / "sf-bay" / name
    if not path.exists():
        pytest.skip(f"no {path}")
    return path


@pytest.fixture(scope="module")
def model_file(real_data: Path) -> Path:
    return needed(real_data, "sfbofs_surface_ugrid_derived.nc")


@pytest.fixture(scope="module")
def current(model_file: Path) -> Current:
    root = gdal.OpenEx(str(model_file), gdal.OF_MULTIDIM_RASTER).GetRootGroup()
    names = ("node_x", "node_y", "face_nodes", "ucx", "ucy", "s1")
    lon, lat, faces, east, north, level = (root.OpenMDArray(f"mesh2d_{name}").ReadAsArray() for name in names)
    return Current(lon=lon, lat=lat, faces=faces - 1, east=east, north=north, level=level)


@pytest.fixture(scope="module")
def heights(real_data: Path) -> tuple[np.ndarray, np.ndarray]:
    """Moments (seconds since 1970) and heights (m above MLLW) of 2026; the hour that comes twice is left out."""
    packed = needed(real_data, "predictions6min_9414290_2026.json.gz")
    rows = json.loads(gzip.decompress(packed.read_bytes()))["predictions"]
    naive = [datetime.fromisoformat(row["t"]) for row in rows]
    sure = [n.replace(tzinfo=ZONE).utcoffset() == n.replace(tzinfo=ZONE, fold=1).utcoffset() for n in naive]
    moments = np.array([n.replace(tzinfo=ZONE).timestamp() for n, one in zip(naive, sure) if one])
    return moments, np.array([float(row["v"]) * FOOT_M for row, one in zip(rows, sure) if one])


@pytest.fixture(scope="module")
def start(current: Current, heights: tuple[np.ndarray, np.ndarray]) -> datetime:
    """When, in 2026, the predicted tide runs as in the model, most nearly."""
    moments, height = heights
    level = current.level.mean(axis=1)
    hourly = np.arange(len(height) - 90)[:, None] + 10 * np.arange(10)
    off = np.std(height[hourly] - level, axis=1)
    off[moments[hourly[:, -1]] - moments[hourly[:, 0]] != 9 * 3600.0] = np.inf
    best = int(np.argmin(off))
    assert off[best] < 0.02, "the model's tide is one of San Francisco's: to 2 cm of 1 m"
    return datetime.fromtimestamp(moments[best], timezone.utc)


@pytest.fixture(scope="module")
def plan(real_data: Path, model_file: Path, heights, start: datetime, tmp_path_factory) -> Path:
    made = new_plan(tmp_path_factory.mktemp("bay") / "plan.gpkg", ZONE=ZONE.key, DATUM="MLLW")
    add_route(made, "Shoal", COVE, SHOAL, COVE)
    add_swimmer(made, PACE_M_S)
    marks = [(point(COVE), {"name": "Cove", "kind": "entry"})]
    shoal = {"name": "Shoal", "kind": "mark", "stay_min": STAY_MIN, "charted_depth_m": 6.0}
    append_rows(made, "marks", [*marks, (point(SHOAL), shoal)])
    coast = json.loads(needed(real_data, "CA-SFBay.geojson").read_text(encoding="utf-8"))
    # One of its polygons is the frame of the map.
    land = [one for one in coast["features"] if one["properties"]["name"] != "Map Bounds"]
    append_rows(made, "land", [(polygon(one), {"name": one["properties"]["name"]}) for one in land])
    append_rows(made, "tides", [(None, row) for row in waters(*heights, start)])
    row = {"model": "SFBOFS", "kind": "mesh", "path": str(model_file), "start": start, "source": "NOAA, surface"}
    append_rows(made, "stream_models", [(None, row)])
    return made


def polygon(feature: dict) -> QgsGeometry:
    from osgeo import ogr

    geometry = QgsGeometry()
    geometry.fromWkb(bytes(ogr.CreateGeometryFromJson(json.dumps(feature["geometry"])).ExportToWkb()))
    return geometry


def waters(moments: np.ndarray, height: np.ndarray, near: datetime) -> list[dict]:
    """The turns of the six-minute heights within three days."""
    rows = []
    for k in np.flatnonzero(np.abs(moments - near.timestamp()) < 3 * 86_400.0)[1:-1].tolist():
        around = height[k - 5 : k + 6]
        kind = "HW" if height[k] == around.max() else "LW" if height[k] == around.min() else ""
        if kind and not (rows and moments[k] - rows[-1]["time"].timestamp() < 3600.0):
            moment = datetime.fromtimestamp(moments[k], timezone.utc)
            rows.append({"port": "San Francisco", "time": moment, "height_m": float(height[k]), "kind": kind})
    return rows


@pytest.fixture(scope="module")
def depart(start: datetime) -> datetime:
    return start.astimezone(ZONE) + timedelta(minutes=100)


@pytest.fixture(scope="module")
def report(plan: Path, depart: datetime) -> dict:
    return swum(plan, plan.parent, ROUTE="Shoal", DEPART=depart.isoformat())


@pytest.fixture(scope="module")
def by_hand(current: Current) -> ByHand:
    return ByHand(current)


def test_the_models_stream_is_that_of_its_triangles_taken_one_by_one(plan: Path, start, by_hand: ByHand) -> None:
    frame = LocalFrame(lon=-122.48, lat=37.87)
    table = Table(open_layer(plan, "stream_models"), LAYER_BY_NAME["stream_models"], [])
    clock = PlanClock(start=start, zone_name="UTC")
    (model,) = models_from({"stream_models": table}, frame, clock, None, np.array([-6e3, -6e3, 6e3, 6e3]), [])
    rng = np.random.default_rng(12)
    lon, lat, hour = rng.uniform(-122.52, -122.455, 400), rng.uniform(37.853, 37.90, 400), rng.uniform(-0.5, 9.5, 400)
    sample = model.at(*frame.to_xy(np.column_stack([lon, lat])).T, hour * 3600.0)
    expected = [by_hand.at(*where) for where in zip(lon, lat, hour)]
    known = np.array([value is not None for value in expected])
    assert 100 < known.sum() < 300
    np.testing.assert_array_equal(sample.status, np.where(known, KNOWN, UNKNOWN))
    pairs = np.array([value for value in expected if value is not None])
    # The two planes differ by some centimetres here; the stream changes by 1 mm/s in a metre at the most.
    np.testing.assert_allclose(sample.east_m_s[known], pairs[:, 0], atol=5e-4)
    np.testing.assert_allclose(sample.north_m_s[known], pairs[:, 1], atol=5e-4)


def test_each_leg_swum_again_by_hand_on_the_reports_heading_ends_at_its_mark(report, start, by_hand: ByHand) -> None:
    assert [leg["feasible"] for leg in report["legs"]] == [True, True]
    for leg, (begin, end) in zip(report["legs"], ((COVE, SHOAL), (SHOAL, COVE))):
        heading = math.radians(leg["heading_true_deg"])
        hour = (datetime.fromisoformat(leg["depart"]) - start).total_seconds() / 3600.0
        lon, lat, left, step = *begin, leg["minutes"] * 60.0, 10.0
        run = []
        while left > 0.0:
            step = min(step, left)
            stream = by_hand.at(lon, lat, hour)
            run.append(stream)
            east = PACE_M_S * math.sin(heading) + stream[0]
            north = PACE_M_S * math.cos(heading) + stream[1]
            turn = math.degrees(math.atan2(east, north))
            lon, lat, _ = GEOD.fwd(lon, lat, turn, math.hypot(east, north) * step)
            hour, left = hour + step / 3600.0, left - step
        # Straight steps of 10 s, against the solver's of 30 s by the trapezoid rule.
        assert GEOD.inv(lon, lat, *end)[2] < 8.0, leg
        east, north = np.mean(run, axis=0)
        assert leg["stream_kn"] == pytest.approx(math.hypot(east, north) * 3600.0 / 1852.0, abs=0.02)


def test_the_stream_matters_on_this_swim_and_no_leg_crosses_land(report: dict) -> None:
    slack_min = [GEOD.inv(*COVE, *SHOAL)[2] / PACE_M_S / 60.0] * 2
    assert any(abs(leg["minutes"] - still) > 2.0 for leg, still in zip(report["legs"], slack_min))
    assert not flags_of(report, "land") and not flags_of(report, "stream_unknown")


def test_depth_at_the_mark_is_charted_depth_and_the_predicted_height(report: dict, heights) -> None:
    moments, height = heights
    stop = next(stop for stop in report["stops"] if stop["name"] == "Shoal")
    predicted = np.interp(datetime.fromisoformat(stop["arrive"]).timestamp(), moments, height)
    # A cosine between the waters stands in for the curve: within 0.2 m of it in this harbour.
    assert stop["depth_now_m"] == pytest.approx(6.0 + predicted, abs=0.2)


def test_the_report_says_whose_day_the_model_stands_on(report: dict, start: datetime) -> None:
    said = " ".join(report["warnings"])
    assert "2024-05-23 00:00 UTC" in said and f"{start:%Y-%m-%d %H:%M} UTC" in said


def test_beyond_the_models_last_hour_the_stream_is_unknown_and_nothing_is_timed(plan, start, tmp_path) -> None:
    late = (start + timedelta(hours=8, minutes=45)).isoformat()
    ran = swim(plan, tmp_path, ROUTE="Shoal", DEPART=late)
    assert ran.ok, ran.said
    assert flags_of(ran.report, "stream_unknown") and not ran.report["feasible"]
    assert ran.report["total_min"] is None
