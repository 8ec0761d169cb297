"""Every algorithm as QGIS's toolbox runs it: in a task, in a worker, one after another in the same workers."""

from __future__ import annotations

import shutil
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from desk import wait_for
from model_files import geotiff
from pyproj import Transformer
from qgis.core import QgsApplication, QgsProcessingAlgRunnerTask, QgsProcessingContext, QgsProject
from swims import DAY, LAT, LON, Heard, add_route, add_swimmer, moved, new_plan, point
from tideleg.core.geodesy import LocalFrame
from tideleg.plan_package.store import append_rows
from tideleg.processing.provider import ALGORITHMS, load_algorithm

ENTRY = f"{LON},{LAT} [EPSG:4326]"
BUOY = "{},{} [EPSG:4326]".format(*moved(0.0, 600.0))
DEPART = f"{DAY}T10:00"
SWIM = {"ROUTE": "R", "DEPART": DEPART}
SPAN = {"FROM": f"{DAY}T10:00", "TO": f"{DAY}T11:00", "STEP": 30}
HOURLY = "hour,set,spring kn,neap kn\n" + "".join(f"{hour},70,0.8,0.4\n" for hour in range(-6, 7))
TO_NOWHERE = "TEMPORARY_OUTPUT"
# What each reads beside the plan, and the layers that it writes.
ASKED: dict[str, dict[str, Any]] = {
    "newplan": {},
    "readchart": {"INTO": "soundings"},
    "readtides": {
        "TEXT": f"{DAY} 02:00 0.7 m L\n{DAY} 08:00 3.9 m H\n{DAY} 14:15 0.9 m L\n",
        "PORT": "P",
        "ZONE": "UTC",
    },
    "readstreams": {"TEXT": HOURLY, "PORT": "P", "REFERENCE": 1, "STATION": "T", "POINT": ENTRY},
    "planswim": {**SWIM, "LEGS": TO_NOWHERE, "TRACK": TO_NOWHERE, "STOPS": TO_NOWHERE},
    "swimcard": {**SWIM, "CARD": TO_NOWHERE, "SHEET": TO_NOWHERE, "SHEET_HTML": TO_NOWHERE},
    "swimfiles": {**SWIM, "GPX": TO_NOWHERE, "KML": TO_NOWHERE, "GEOJSON": TO_NOWHERE, "CSV": TO_NOWHERE},
    "seasoncards": {"ROUTE": "R", **SPAN, "MOST": 1, "CARDS": TO_NOWHERE},
    "departurewindows": {"ROUTE": "R", **SPAN, "WINDOWS": TO_NOWHERE},
    "turnback": {**SWIM, "WAYS": TO_NOWHERE, "BANDS": TO_NOWHERE, "NO_RETURN": TO_NOWHERE},
    "bestorder": {**SPAN, "ENTRY": "Slip", "ORDERS": TO_NOWHERE, "ROUTE": TO_NOWHERE},
    "streamat": {"POINT": ENTRY, "DAY": DAY, "TABLE": TO_NOWHERE},
    "confidence": {**SWIM, "MEMBERS": 20, "ARRIVALS": TO_NOWHERE, "ELLIPSES": TO_NOWHERE, "DRIFT": TO_NOWHERE},
    "reach": {"ENTRY": ENTRY, "DEPART": DEPART, "BACK_BY": f"{DAY}T12:00", "CELL": 50.0, "REACH": TO_NOWHERE},
    "transits": {"TRANSITS": TO_NOWHERE, "DATE": DAY},
    "fastestpath": {"START": ENTRY, "END": BUOY, "DEPART": DEPART, "ROUTE": TO_NOWHERE},
}
TIMES = 8


def add_model(plan: Path) -> None:
    """A steady stream of 0.1 m/s to the north, in a raster of UTM zone 28."""
    east, north = Transformer.from_crs("EPSG:4326", "EPSG:32628", always_xy=True).transform(LON, LAT)
    bands = np.tile(np.array([0.0, 0.1]), 3)[:, None, None] * np.ones((6, 40, 40))
    names = [f"{part} {step}" for step in range(3) for part in ("u", "v")]
    geotiff(plan.with_name("stream.tif"), bands, (east - 4e3, 200.0, 0.0, north + 4e3, 0.0, -200.0), 32628, names=names)
    row = {"model": "M", "path": "stream.tif", "kind": "raster", "group": "u", "v_group": "v", "step_min": 720.0}
    append_rows(plan, "stream_models", [(None, {**row, "start": f"{DAY}T00:00:00Z"})])


@pytest.fixture(scope="module")
def made(qgis_app, tmp_path_factory) -> Path:
    plan = new_plan(tmp_path_factory.mktemp("tasks") / "plan.gpkg", ZONE="UTC")
    slip, buoy = (LON, LAT), moved(0.0, 600.0)
    add_route(plan, "R", slip, buoy, slip)
    add_swimmer(plan, 0.7)
    marks = [(slip, "Slip", "entry"), (buoy, "Buoy", "mark"), (moved(300.0, 400.0), "Stone", "mark")]
    append_rows(plan, "marks", [(point(place), {"name": name, "kind": kind}) for place, name, kind in marks])
    append_rows(plan, "soundings", [(point(buoy), {"depth_m": 7.0})])
    add_model(plan)
    return plan


def run_in_task(name: str, parameters: dict[str, Any]) -> tuple[bool, Heard, dict[str, Any]]:
    """Run an algorithm as the toolbox does."""
    algorithm = load_algorithm(name, dict(ALGORITHMS)[name]).create()
    context, heard, ended = QgsProcessingContext(), Heard(), []
    context.setProject(QgsProject.instance())
    context.setFeedback(heard)
    fine, why = algorithm.checkParameterValues(parameters, context)
    assert fine, why
    task = QgsProcessingAlgRunnerTask(algorithm, parameters, context, heard)
    task.executed.connect(lambda ok, results: ended.append((ok, results)))
    QgsApplication.taskManager().addTask(task)
    wait_for(lambda: bool(ended), f"the task of {name}")
    ok, results = ended[0]
    return ok, heard, dict(results)


def test_every_algorithm_is_run_here() -> None:
    assert sorted(ASKED) == sorted(module for module, _ in ALGORITHMS)


@pytest.mark.parametrize("name", sorted(ASKED))
def test_an_algorithm_runs_in_tasks_again_and_again(made: Path, tmp_path: Path, name: str) -> None:
    plan = Path(shutil.copy(made, tmp_path / "plan.gpkg"))
    shutil.copy(made.with_name("stream.tif"), tmp_path)
    asked = {"PLAN": str(plan), **ASKED[name]}
    if name == "readchart":
        asked["LAYER"] = f"{made}|layername=soundings"
    for number in range(TIMES):
        if name == "newplan":
            asked["PLAN"] = str(tmp_path / f"new{number}.gpkg")
        ok, heard, results = run_in_task(name, asked)
        assert ok, heard.errors
        written = [key for key, value in ASKED[name].items() if value == TO_NOWHERE]
        assert all(results[key] for key in written or ["PLAN"]), results


def test_a_frame_projects_alike_in_every_thread_and_after_a_thread_is_gone() -> None:
    """The threads of a pool that QGIS keeps are tried above; here Python's own, many at once."""
    from concurrent.futures import ThreadPoolExecutor

    frame, places = LocalFrame(lon=LON, lat=LAT), np.array([[LON + 0.01, LAT - 0.02], [LON - 0.03, LAT]])
    here = frame.to_xy(places)
    for _ in range(3):
        with ThreadPoolExecutor(max_workers=8) as pool:
            there = list(pool.map(lambda _: LocalFrame(lon=LON, lat=LAT).to_xy(places), range(40)))
        assert all(np.array_equal(here, one) for one in there)
