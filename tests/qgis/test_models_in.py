"""Stream models read from files QGIS opens: places, directions, clocks, units, gaps, and what is refused and how."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from datetime import datetime, timedelta, timezone
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory

import numpy as np
import pytest
from model_files import dat, geotiff, grib, netcdf_raster, two_dm, ugrid
from pyproj import Proj, Transformer
from tideleg.core.clock import PlanClock
from tideleg.core.errors import BadInputError
from tideleg.core.geodesy import LocalFrame
from tideleg.core.water.model_stream import ModelStream
from tideleg.core.water.stream import EXTRAPOLATED, KNOWN, UNKNOWN
from tideleg.layers_in.models_in import models_from
from tideleg.layers_in.table import Table
from tideleg.plan_package.schema import LAYER_BY_NAME
from tideleg.plan_package.store import append_rows, create_plan, open_layer

LON, LAT = -17.56, 44.0
FRAME = LocalFrame(lon=LON, lat=LAT)
START = datetime(2027, 6, 5, 6, tzinfo=timezone.utc)
CLOCK = PlanClock(start=START, zone_name="Europe/Lisbon")
BOX_M = np.array([[-2000.0, -2000.0], [2000.0, 2000.0]])
HOUR = 3600.0
UTM = "EPSG:32628"  # central meridian 15 W: its grid north is 1.8 degrees off true here


@cache
def _blank_plan() -> bytes:
    with TemporaryDirectory() as folder:
        return create_plan(Path(folder) / "plan.gpkg").read_bytes()


def read(
    folder: Path, rows: list[dict], *, frame: LocalFrame = FRAME, clock: PlanClock = CLOCK, box_m: np.ndarray = BOX_M
) -> tuple[tuple[ModelStream, ...], list[str]]:
    """The models of a new plan in the folder with these rows, and the warnings."""
    plan = folder / "plan.gpkg"
    plan.write_bytes(_blank_plan())
    append_rows(plan, "stream_models", [(None, {"model": "M", **row}) for row in rows])
    warnings: list[str] = []
    table = Table(open_layer(plan, "stream_models"), LAYER_BY_NAME["stream_models"], warnings)
    return models_from({"stream_models": table}, frame, clock, folder, box_m, warnings), warnings


def grid_mesh(n: int = 9, half: float = 0.05, lon: float = LON, lat: float = LAT):
    """Nodes on an even grid of degrees round a place; quads in the west, triangles in the east."""
    x, y = (axis.ravel() for axis in np.meshgrid(*(np.linspace(c - half, c + half, n) for c in (lon, lat))))
    node = np.arange(n * n).reshape(n, n)
    a, b, c, d = (part.ravel() for part in (node[:-1, :-1], node[:-1, 1:], node[1:, 1:], node[1:, :-1]))
    west = x[a] < lon
    quads = np.column_stack([a, b, c, d])[west]
    ones = np.full(np.count_nonzero(~west), -1)
    first = np.column_stack([a[~west], b[~west], c[~west], ones])
    second = np.column_stack([a[~west], c[~west], d[~west], ones])
    return x, y, np.concatenate([quads, first, second])


def degrees_field(x: np.ndarray, y: np.ndarray, hours: float) -> tuple[np.ndarray, np.ndarray]:
    """Linear in degrees and in time."""
    return 0.2 + 4.0 * (x - LON) + 0.1 * hours, -0.1 + 3.0 * (y - LAT) - 0.05 * hours


def places(n: int = 50) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Places in the frame, and their degrees."""
    xy = np.random.default_rng(4).uniform(-1900.0, 1900.0, (n, 2))
    return xy[:, 0], xy[:, 1], FRAME.to_lonlat(xy)


@pytest.mark.parametrize("on_faces", [False, True])
def test_a_ugrid_file_of_quads_and_triangles_gives_its_field_at_places_and_times(tmp_path: Path, on_faces) -> None:
    x, y, faces = grid_mesh()
    ugrid(tmp_path / "m.nc", x, y, faces, [0.0, 1.0, 3.0], degrees_field, on_faces=on_faces)
    (model,), warnings = read(tmp_path, [{"path": "m.nc"}])
    px, py, lonlat = places()
    for hours in (0.0, 0.4, 2.0, 3.0):
        sample = model.at(px, py, hours * HOUR)
        assert (sample.status == KNOWN).all()
        expected = degrees_field(*lonlat.T, hours)
        # A triangle is straight in the plan's frame where the field is straight in degrees: a tenth of a mm/s here.
        np.testing.assert_allclose(sample.east_m_s, expected[0], atol=2e-4)
        np.testing.assert_allclose(sample.north_m_s, expected[1], atol=2e-4)
    assert model.at(0.0, 0.0, np.array([-1.0, 3.0 * HOUR + 1.0])).status.tolist() == [UNKNOWN, UNKNOWN]
    assert any("longitude and latitude" in warning for warning in warnings)


def test_nothing_is_known_where_the_file_has_no_value_and_between_parts_of_the_mesh(tmp_path: Path) -> None:
    x, y, faces = grid_mesh(n=9)
    middle = 40
    assert (x[middle], y[middle]) == pytest.approx((LON, LAT))
    ugrid(tmp_path / "m.nc", x, y, faces, [0.0, 1.0], degrees_field, masked=(middle,))
    (model,), _ = read(tmp_path, [{"path": "m.nc"}])
    assert model.at(10.0, 10.0, 0.0).status == UNKNOWN
    assert model.at(1500.0, 1600.0, 0.0).status == KNOWN
    without = faces[~np.any(faces == middle, axis=1)]
    ugrid(tmp_path / "hole.nc", x, y, without, [0.0, 1.0], degrees_field)
    (model,), _ = read(tmp_path, [{"path": "hole.nc"}])
    assert model.at(10.0, 10.0, 0.0).status == UNKNOWN and np.isnan(model.at(10.0, 10.0, 0.0).east_m_s)


def test_vectors_of_a_projected_mesh_are_turned_from_its_grid_north_to_true_north(tmp_path: Path) -> None:
    to_utm = Transformer.from_crs("EPSG:4326", UTM, always_xy=True)
    lon, lat, faces = grid_mesh()
    x, y = to_utm.transform(lon, lat)
    two_dm(tmp_path / "m.2dm", x, y, faces)
    north = np.zeros((2, len(x), 2))
    north[..., 1] = 1.0
    dat(tmp_path / "m.dat", "stream", [0.0, 2.0], north, len(faces))
    row = {"path": "m.2dm", "v_path": "m.dat", "crs": UTM, "start": START}
    (model,), warnings = read(tmp_path, [row])
    # Grid north is east of true north by the convergence that PROJ gives for the place.
    convergence = Proj(UTM).get_factors(LON, LAT).meridian_convergence
    assert convergence == pytest.approx(-1.78, abs=0.01)
    sample = model.at(0.0, 0.0, HOUR)
    assert sample.set_deg % 360.0 == pytest.approx(convergence % 360.0, abs=1e-3)
    assert sample.rate_m_s == pytest.approx(1.0, abs=1e-6)
    assert any("no unit" in warning for warning in warnings)


def test_a_mesh_that_names_its_system_is_placed_and_turned_by_it(tmp_path: Path) -> None:
    lon, lat, faces = grid_mesh()
    x, y = Transformer.from_crs("EPSG:4326", UTM, always_xy=True).transform(lon, lat)
    ugrid(tmp_path / "m.nc", x, y, faces, [0.0, 1.0], lambda x, y, t: (0.0 * x, 0.0 * x + 0.7), epsg=32628)
    (model,), warnings = read(tmp_path, [{"path": "m.nc"}])
    sample = model.at(0.0, 0.0, 600.0)
    assert sample.rate_m_s == pytest.approx(0.7, abs=1e-6)
    convergence = Proj(UTM).get_factors(LON, LAT).meridian_convergence
    assert sample.set_deg == pytest.approx(convergence % 360.0, abs=1e-3)
    assert not warnings


def test_the_same_model_in_another_projection_gives_the_same_stream(tmp_path: Path) -> None:
    lon, lat, faces = grid_mesh()
    u, v = degrees_field(lon, lat, 0.0)
    samples = []
    # A national grid whose axes point west and south, and one that is turned by half a right angle.
    turned = f"+proj=omerc +lat_0={LAT} +lonc={LON} +alpha=45 +k=1 +ellps=WGS84 +units=m +type=crs"
    for number, crs in enumerate((UTM, turned, f"+proj=laea +lat_0={LAT + 3} +lon_0={LON - 9} +axis=wsu +type=crs")):
        transformer = Transformer.from_crs("EPSG:4326", crs, always_xy=True)
        x, y = transformer.transform(lon, lat)
        # Components along the projection's axes, from a metre's way along the stream.
        scale = 1.0 / (111_195.0 * np.cos(np.radians(lat))), 1.0 / 111_195.0
        ahead = np.array(transformer.transform(lon + u * scale[0], lat + v * scale[1])) - [x, y]
        own = ahead / np.hypot(*ahead) * np.hypot(u, v)
        two_dm(tmp_path / f"{number}.2dm", x, y, faces)
        dat(tmp_path / f"{number}.dat", "stream", [0.0, 1.0], np.stack([own.T, own.T]), len(faces))
        row = {"path": f"{number}.2dm", "v_path": f"{number}.dat", "crs": crs, "start": START}
        (model,), _ = read(tmp_path, [row])
        samples.append(model.at(*places()[:2], 0.0))
    expected = degrees_field(*places()[2].T, 0.0)
    for sample in samples:
        assert (sample.status == KNOWN).all()
        np.testing.assert_allclose(sample.east_m_s, expected[0], atol=2e-3)
        np.testing.assert_allclose(sample.north_m_s, expected[1], atol=2e-3)


def test_faces_switched_off_are_dry_and_their_neighbours_stay_wet(tmp_path: Path) -> None:
    lon, lat, faces = grid_mesh()
    two_dm(tmp_path / "m.2dm", lon, lat, faces)
    active = np.ones((3, len(faces)), dtype=bool)
    dry = 30
    active[1, dry] = False
    dat(tmp_path / "m.dat", "stream", [0.0, 1.0, 2.0], np.ones((3, len(lon), 2)), len(faces), active)
    (model,), _ = read(tmp_path, [{"path": "m.2dm", "v_path": "m.dat", "start": START}], box_m=3.0 * BOX_M)
    corners = faces[:, :][faces[:, -1] >= 0] if faces[dry, -1] >= 0 else faces[:, :3]
    centre = FRAME.to_xy([[lon[corners[dry]].mean(), lat[corners[dry]].mean()]])[0]
    assert model.at(*centre, np.array([0.0, 1800.0, HOUR, 2.0 * HOUR])).status.tolist() == [KNOWN, 0, 0, KNOWN]
    others = [face for face in range(len(faces)) if face != dry]
    middles = [[lon[faces[f][faces[f] >= 0]].mean(), lat[faces[f][faces[f] >= 0]].mean()] for f in others]
    assert (model.at(*FRAME.to_xy(middles).T, HOUR).status == KNOWN).all()


def test_times_are_utc_whatever_zone_the_machine_is_in(tmp_path: Path) -> None:
    x, y, faces = grid_mesh()
    ugrid(tmp_path / "m.nc", x, y, faces, [0.0, 1.0, 3.0], degrees_field)
    x0, y0 = np.linspace(LON - 0.05, LON + 0.05, 11), np.linspace(LAT - 0.05, LAT + 0.05, 11)
    field = np.array([np.full((11, 11), 0.1 * hours) for hours in (0.0, 1.0, 3.0)])
    netcdf_raster(tmp_path / "r.nc", x0, y0, [0.0, 1.0, 3.0], field, field)
    plan = create_plan(tmp_path / "plan.gpkg")
    rows = [{"model": "A", "path": "m.nc"}, {"model": "B", "path": "r.nc", "kind": "raster"}]
    rows.append({"model": "C", "path": "m.nc", "start": START + timedelta(hours=1)})
    append_rows(plan, "stream_models", [(None, row) for row in rows])
    script = (
        "import json, sys, numpy as np\n"
        "from datetime import datetime, timezone\n"
        "from qgis.core import QgsApplication\n"
        "app = QgsApplication([], False); app.initQgis()\n"
        "from tideleg.core.clock import PlanClock\n"
        "from tideleg.core.geodesy import LocalFrame\n"
        "from tideleg.layers_in.models_in import models_from\n"
        "from tideleg.layers_in.table import Table\n"
        "from tideleg.plan_package.schema import LAYER_BY_NAME\n"
        "from tideleg.plan_package.store import open_layer\n"
        "table = Table(open_layer(sys.argv[1], 'stream_models'), LAYER_BY_NAME['stream_models'], [])\n"
        "clock = PlanClock(start=datetime(2027, 6, 5, 6, tzinfo=timezone.utc), zone_name='UTC')\n"
        f"frame = LocalFrame(lon={LON}, lat={LAT})\n"
        "models = models_from({'stream_models': table}, frame, clock, sys.argv[2], np.array([-9, -9, 9, 9]), [])\n"
        "print('times', json.dumps([model.stream.times_s.tolist() for model in models]), flush=True)\n"
        "del table, models\n"
        "app.exitQgis()\n"
    )
    found = {}
    for zone in ("UTC", "America/Los_Angeles", "Pacific/Auckland"):
        ran = subprocess.run(
            [sys.executable, "-c", script, str(plan), str(tmp_path)],
            env={**os.environ, "TZ": zone, "PYTHONPATH": os.pathsep.join(sys.path)},
            capture_output=True,
            text=True,
            check=False,
        )
        lines = [line for line in ran.stdout.splitlines() if line.startswith("times ")]
        assert lines, ran.stderr
        found[zone] = json.loads(lines[0].removeprefix("times "))
    own = [0.0, HOUR, 3.0 * HOUR]
    assert found == dict.fromkeys(found, [own, own, [time + HOUR for time in own]])


def test_the_plans_start_takes_the_place_of_the_files_own_and_is_said(tmp_path: Path) -> None:
    x, y, faces = grid_mesh()
    ugrid(tmp_path / "m.nc", x, y, faces, [2.0, 3.0, 5.0], degrees_field, units="hours since 2024-05-23 00:00:00")
    (model,), warnings = read(tmp_path, [{"path": "m.nc", "start": START + timedelta(minutes=30)}])
    assert model.stream.times_s.tolist() == [0.5 * HOUR, 1.5 * HOUR, 3.5 * HOUR]
    assert any("2024-05-23 02:00 UTC" in w and "2027-06-05 06:30 UTC" in w for w in warnings)


def test_a_model_of_another_day_or_place_is_left_out_and_said(tmp_path: Path) -> None:
    x, y, faces = grid_mesh()
    ugrid(tmp_path / "m.nc", x, y, faces, [0.0, 1.0], degrees_field, units="hours since 2024-05-23 00:00:00")
    models, warnings = read(tmp_path, [{"path": "m.nc"}])
    assert models == () and any("2024-05-23 01:00 UTC" in warning for warning in warnings)
    ugrid(tmp_path / "far.nc", x, y, faces, [0.0, 1.0], degrees_field)
    models, warnings = read(tmp_path, [{"path": "far.nc"}], frame=LocalFrame(lon=LON + 0.6, lat=LAT))
    assert models == () and any("no mesh around the plan" in warning for warning in warnings)


def test_the_rows_uncertainty_factor_and_shift_reach_the_model(tmp_path: Path) -> None:
    x, y, faces = grid_mesh()
    ugrid(tmp_path / "m.nc", x, y, faces, [0.0, 1.0, 3.0], degrees_field)
    trust = {"rate_uncertainty": 0.2, "phase_uncertainty_min": 15.0, "rate_factor": 1.5, "shift_min": 20.0}
    (model,), _ = read(tmp_path, [{"path": "m.nc", "source": "invented", **trust}])
    assert (model.name, model.source) == ("M", "invented")
    assert (model.rate_uncertainty, model.phase_uncertainty_s) == (0.2, 900.0)
    plain = degrees_field(np.array(LON), np.array(LAT), 1.0)
    assert model.at(0.0, 0.0, HOUR + 1200.0).east_m_s == pytest.approx(1.5 * plain[0], abs=1e-4)
    assert model.at(0.0, 0.0, 600.0).status == UNKNOWN


@pytest.mark.parametrize(("unit", "factor"), [("m/s", 1.0), ("cm s-1", 0.01), ("knots", 1852.0 / 3600.0)])
def test_speeds_are_converted_to_metres_a_second(tmp_path: Path, unit: str, factor: float) -> None:
    x, y, faces = grid_mesh()
    ugrid(tmp_path / "m.nc", x, y, faces, [0.0, 1.0], degrees_field, speed_unit=unit)
    (model,), warnings = read(tmp_path, [{"path": "m.nc"}])
    assert model.at(0.0, 0.0, 0.0).east_m_s == pytest.approx(0.2 * factor, abs=1e-5)
    assert any("converted" in warning for warning in warnings) is (factor != 1.0)


def test_only_the_part_around_the_plan_is_kept_and_a_face_that_holds_the_whole_plan_is(tmp_path: Path) -> None:
    x, y, faces = grid_mesh(n=61, half=1.5)
    ugrid(tmp_path / "m.nc", x, y, faces, [0.0, 1.0], degrees_field)
    (model,), _ = read(tmp_path, [{"path": "m.nc"}])
    assert 4 <= len(model.stream.x_m) < 100 < len(x)
    assert (model.at(*places()[:2], 0.0).status == KNOWN).all()
    huge = np.array([LON - 4.0, LON + 5.0, LON]), np.array([LAT - 3.0, LAT - 3.0, LAT + 6.0])
    ugrid(tmp_path / "one.nc", *huge, np.array([[0, 1, 2]]), [0.0, 1.0], lambda x, y, t: (0.0 * x + 0.4, 0.0 * y))
    (model,), _ = read(tmp_path, [{"path": "one.nc"}])
    assert model.at(*places()[:2], 0.0).east_m_s == pytest.approx(0.4, abs=1e-6)


# ---------------------------------------------------------------- rasters


def degree_axes(half: float = 0.05, n: int = 21) -> tuple[np.ndarray, np.ndarray]:
    return np.linspace(LON - half, LON + half, n), np.linspace(LAT - half, LAT + half, n)


@pytest.mark.parametrize("east_of_greenwich", [0.0, 360.0])
def test_a_packed_netcdf_gives_its_field_wherever_its_longitudes_are_counted_from(
    tmp_path: Path, east_of_greenwich: float
) -> None:
    lon, lat = degree_axes()
    parts = np.array([degrees_field(*np.meshgrid(lon, lat), hours) for hours in (0.0, 1.0, 2.0)])
    netcdf_raster(tmp_path / "r.nc", lon + east_of_greenwich, lat, [0.0, 1.0, 2.0], parts[:, 0], parts[:, 1])
    (model,), _ = read(tmp_path, [{"path": "r.nc", "kind": "raster"}])
    px, py, lonlat = places()
    sample = model.at(px, py, 1.5 * HOUR)
    assert (sample.status == KNOWN).all()
    expected = degrees_field(*lonlat.T, 1.5)
    # Packed to a mm/s.
    np.testing.assert_allclose(sample.east_m_s, expected[0], atol=1e-3)
    np.testing.assert_allclose(sample.north_m_s, expected[1], atol=1e-3)
    assert model.at(0.0, 0.0, np.array([-1.0, 2.0 * HOUR + 1.0])).status.tolist() == [UNKNOWN, UNKNOWN]


def test_a_filler_is_land_and_its_neighbours_keep_to_their_own_cells(tmp_path: Path) -> None:
    lon, lat = degree_axes()
    east = np.full((2, 21, 21), 0.5)
    east[:, :, 10] = np.nan
    netcdf_raster(tmp_path / "r.nc", lon, lat, [0.0, 1.0], east, 0.0 * east)
    (model,), _ = read(tmp_path, [{"path": "r.nc", "kind": "raster"}])
    cell_m = FRAME.to_xy([[LON + 0.005, LAT]])[0, 0]
    sample = model.at(cell_m * np.array([0.0, 0.4, 0.7, 1.1, -0.7]), 0.0, 0.0)
    assert sample.status.tolist() == [UNKNOWN, UNKNOWN, EXTRAPOLATED, KNOWN, EXTRAPOLATED]
    np.testing.assert_allclose(sample.east_m_s[2:], 0.5, atol=1e-6)


def test_of_several_levels_the_one_at_the_surface_is_read(tmp_path: Path) -> None:
    lon, lat = degree_axes()
    levels = np.stack([np.full((2, 21, 21), value) for value in (0.1, 0.9, 0.2)], axis=1)
    netcdf_raster(tmp_path / "r.nc", lon, lat, [0.0, 1.0], levels, levels, levels=[10.0, 0.5, 30.0])
    (model,), _ = read(tmp_path, [{"path": "r.nc", "kind": "raster"}])
    assert model.at(0.0, 0.0, 1800.0).east_m_s == pytest.approx(0.9, abs=1e-6)


def test_a_grib_of_currents_is_read_by_its_own_names_and_times(tmp_path: Path) -> None:
    lon, lat = degree_axes()
    moments = [int(START.timestamp()) + step * 3600 for step in (0, 1, 3)]
    parts = np.array([degrees_field(*np.meshgrid(lon, lat), hours) for hours in (0.0, 1.0, 3.0)])
    grib(tmp_path / "c.grb2", lon, lat, moments, parts)
    (model,), _ = read(tmp_path, [{"path": "c.grb2", "kind": "raster"}])
    px, py, lonlat = places()
    sample = model.at(px, py, 2.0 * HOUR)
    assert (sample.status == KNOWN).all()
    expected = degrees_field(*lonlat.T, 2.0)
    # Corners are kept to a millionth of a degree in the file.
    np.testing.assert_allclose(sample.east_m_s, expected[0], atol=1e-4)
    np.testing.assert_allclose(sample.north_m_s, expected[1], atol=1e-4)


def test_a_global_raster_is_read_across_its_seam(tmp_path: Path) -> None:
    lon, lat = np.arange(-180.0, 180.0, 0.5), np.arange(-2.0, 2.01, 0.5)
    column = np.broadcast_to(np.cos(np.radians(lon)), (2, len(lat), len(lon)))
    netcdf_raster(tmp_path / "r.nc", lon, lat, [0.0, 1.0], column, 0.0 * column)
    frame = LocalFrame(lon=179.9, lat=0.2)
    (model,), _ = read(tmp_path, [{"path": "r.nc", "kind": "raster"}], frame=frame)
    x = np.linspace(-2000.0, 2000.0, 9)
    sample = model.at(x, 0.0, 0.0)
    assert (sample.status == KNOWN).all()
    expected = np.cos(np.radians(frame.to_lonlat(np.column_stack([x, 0.0 * x]))[:, 0]))
    np.testing.assert_allclose(sample.east_m_s, expected, atol=1.1e-3)


def test_places_where_a_raster_never_moves_are_land_and_said_so(tmp_path: Path) -> None:
    lon, lat = np.arange(-0.1, 0.101, 0.01), np.arange(-0.1, 0.101, 0.01)
    east = np.broadcast_to(np.where(lon < 0.0, 0.0, 0.5), (2, len(lat), len(lon)))
    netcdf_raster(tmp_path / "r.nc", lon, lat, [0.0, 1.0], east, 0.0 * east)
    (model,), warnings = read(tmp_path, [{"path": "r.nc", "kind": "raster"}], frame=LocalFrame(lon=0.0, lat=0.0))
    sample = model.at(np.array([-2000.0, 1800.0]), 0.0, 0.0)
    assert np.isnan(sample.east_m_s[0]) and sample.east_m_s[1] == pytest.approx(0.5, abs=1e-3)
    assert any("taken as land" in warning for warning in warnings)


def utm_bands() -> tuple[np.ndarray, tuple[float, ...]]:
    """Four bands, u and v at two times: a stream of 1 m/s along the grid's north, twice that an hour later."""
    x, y = Transformer.from_crs("EPSG:4326", UTM, always_xy=True).transform(LON, LAT)
    u, v = np.zeros((40, 40)), np.ones((40, 40))
    return np.stack([u, v, 2.0 * u, 2.0 * v]), (x - 4000.0, 200.0, 0.0, y + 4000.0, 0.0, -200.0)


def test_bands_of_a_projected_geotiff_are_named_by_their_letters_turned_and_timed_by_start_and_step(tmp_path) -> None:
    bands, geotransform = utm_bands()
    geotiff(tmp_path / "r.tif", bands, geotransform, 32628, names=["u 0", "v 0", "u 1", "v 1"])
    row = {"path": "r.tif", "kind": "raster", "group": "u", "v_group": "v", "start": START, "step_min": 60.0}
    (model,), _ = read(tmp_path, [row])
    assert model.stream.times_s.tolist() == [0.0, HOUR]
    convergence = Proj(UTM).get_factors(LON, LAT).meridian_convergence
    sample = model.at(0.0, 0.0, 0.5 * HOUR)
    assert sample.set_deg == pytest.approx(convergence % 360.0, abs=1e-3)
    assert sample.rate_m_s == pytest.approx(1.5, abs=1e-6)


def test_two_files_one_for_each_part_with_scale_offset_and_nodata(tmp_path: Path) -> None:
    _, geotransform = utm_bands()
    stored = np.full((2, 40, 40), 100, dtype=np.int16)
    stored[:, :, :10] = -9
    packing = {"nodata": -9.0, "scale": 0.01, "offset": -0.5}
    geotiff(tmp_path / "u.tif", stored, geotransform, 32628, **packing)
    geotiff(tmp_path / "v.tif", stored, geotransform, 32628, **packing)
    row = {"path": "u.tif", "v_path": "v.tif", "kind": "raster", "start": START, "step_min": 30.0}
    (model,), _ = read(tmp_path, [row])
    assert model.at(0.0, 0.0, 900.0).rate_m_s == pytest.approx(0.5 * np.sqrt(2.0), abs=1e-6)
    assert model.at(-2300.0, 0.0, 900.0).status == UNKNOWN


# ---------------------------------------------------------------- what is refused


def refused(folder: Path, **row: object) -> BadInputError:
    with pytest.raises(BadInputError) as caught:
        read(folder, [row])
    error = caught.value
    assert error.layer == "stream_models" and error.row == 1
    return error


@pytest.fixture
def files(tmp_path: Path) -> Path:
    x, y, faces = grid_mesh()
    ugrid(tmp_path / "m.nc", x, y, faces, [0.0, 1.0], degrees_field)
    ugrid(tmp_path / "odd.nc", x, y, faces, [0.0, 1.0], degrees_field, speed_unit="kg m-3")
    two_dm(tmp_path / "bare.2dm", x, y, faces)
    utm = Transformer.from_crs("EPSG:4326", UTM, always_xy=True).transform(x, y)
    two_dm(tmp_path / "utm.2dm", *utm, faces)
    dat(tmp_path / "m.dat", "stream", [0.0, 1.0], np.ones((2, len(x), 2)), len(faces))
    dat(tmp_path / "wind.dat", "wind at 10 m", [0.0, 1.0], np.ones((2, len(x), 2)), len(faces))
    bands, geotransform = utm_bands()
    geotiff(tmp_path / "r.tif", bands, geotransform, 32628, names=["u 0", "v 0", "u 1", "v 1"])
    geotiff(tmp_path / "nowhere.tif", bands, geotransform, None, names=["u 0", "v 0", "u 1", "v 1"])
    geotiff(tmp_path / "wind.tif", bands, geotransform, 32628, names=["u10", "v10", "u10", "v10"])
    geotiff(tmp_path / "small.tif", bands[:, :20], geotransform, 32628)
    (tmp_path / "words.txt").write_text("slack at noon, they say\n", encoding="utf-8")
    return tmp_path


def test_a_file_that_is_not_there_is_named_with_where_it_was_looked_for(files: Path) -> None:
    error = refused(files, path="lost.nc")
    assert (error.field, error.value) == ("path", "lost.nc") and str(files / "lost.nc") in str(error)


@pytest.mark.parametrize(
    ("row", "field", "words"),
    [
        ({"path": "words.txt"}, "path", "mesh"),
        ({"path": "words.txt", "kind": "raster"}, "path", "raster"),
        ({"path": "r.tif"}, "path", "kind 'raster'"),
        ({"path": "m.nc", "group": "foam"}, "group", "'stream'"),
        ({"path": "odd.nc"}, "group", "m/s"),
        ({"path": "bare.2dm"}, "group", "direction"),
        ({"path": "bare.2dm", "v_path": "words.txt"}, "v_path", "dataset groups"),
        ({"path": "bare.2dm", "v_path": "m.dat"}, "start", "first step"),
        ({"path": "bare.2dm", "v_path": "wind.dat", "start": START}, "group", "wind"),
        ({"path": "utm.2dm", "v_path": "m.dat", "start": START}, "path", "coordinate reference system"),
        ({"path": "utm.2dm", "v_path": "m.dat", "start": START, "crs": "Atlantis"}, "crs", "EPSG:32610"),
        ({"path": "r.tif", "kind": "raster", "group": "q", "v_group": "v"}, "group", "'u 0', 'v 0'"),
        ({"path": "r.tif", "kind": "raster"}, "group", "bands"),
        ({"path": "r.tif", "kind": "raster", "group": "u", "v_group": "v"}, "start", "first step"),
        ({"path": "r.tif", "kind": "raster", "group": "u", "v_group": "v", "start": START}, "step_min", "step to step"),
        ({"path": "r.tif", "kind": "raster", "group": "u", "v_group": "u", "start": START}, "v_group", "differ"),
        ({"path": "wind.tif", "kind": "raster", "group": "u", "v_group": "v", "start": START}, "group", "wind"),
        (
            {"path": "r.tif", "v_path": "small.tif", "kind": "raster", "group": "u", "start": START, "step_min": 60.0},
            "v_group",
            "40 x 20",
        ),
        (
            {
                "path": "nowhere.tif",
                "kind": "raster",
                "group": "u",
                "v_group": "v",
                "start": START,
                "step_min": 60.0,
            },
            "path",
            "coordinate reference system",
        ),
    ],
)
def test_what_cannot_be_read_is_refused_by_field_with_the_remedy(
    files: Path, row: dict, field: str, words: str
) -> None:
    error = refused(files, **row)
    assert error.field == field and words in str(error), str(error)


def test_a_name_given_twice_is_refused(files: Path) -> None:
    with pytest.raises(BadInputError, match="stands once"):
        read(files, [{"path": "m.nc"}, {"path": "m.nc"}])
