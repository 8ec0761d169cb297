"""Plans made and swum through QGIS's own doors, for the tests of planswim: invented water in the open ocean."""

from __future__ import annotations

import atexit
import hashlib
import json
import math
import shutil
import tempfile
from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import datetime, timedelta, timezone
from functools import cache, lru_cache
from pathlib import Path
from typing import Any

from pyproj import Geod
from qgis.core import (
    QgsFeature,
    QgsGeometry,
    QgsPointXY,
    QgsProcessingAlgorithm,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProject,
    QgsVectorLayer,
)
from tideleg.plan_package.store import append_rows
from tideleg.processing.newplan import NewPlan
from tideleg.processing.planswim import PlanSwim
from tideleg.words import tr

GEOD = Geod(ellps="WGS84")
KNOT_M_S = 1852.0 / 3600.0
# Open ocean where WMM2025 gives 4.00 W on DAY: the variation of the worked stories.
LON, LAT = -17.56, 44.0
DAY = "2027-06-05"
SINKS = ("LEGS", "TRACK", "FLAGS", "STOPS")


class Heard(QgsProcessingFeedback):
    """Keeps what an algorithm says; ``cancel_after`` stops it when it has asked that often whether to go on."""

    def __init__(self) -> None:
        super().__init__(False)
        self.errors: list[str] = []
        self.warnings: list[str] = []

    def reportError(self, error: str, fatalError: bool = False) -> None:
        self.errors.append(error)

    def pushWarning(self, warning: str) -> None:
        self.warnings.append(warning)


@dataclass(frozen=True, kw_only=True)
class Ran:
    """What a run of an algorithm gave: its results, whether it succeeded, its words, and the report if there is one."""

    results: dict[str, Any]
    ok: bool
    errors: list[str]
    warnings: list[str] = field(default_factory=list)
    layers: dict[str, QgsVectorLayer] = field(default_factory=dict)
    report: dict[str, Any] | None = None

    @property
    def said(self) -> str:
        return " ".join(self.errors)


def run(
    algorithm: QgsProcessingAlgorithm,
    parameters: dict[str, Any],
    feedback: Heard | None = None,
    context: QgsProcessingContext | None = None,
) -> Ran:
    """Run an algorithm as QGIS does: the parameters are checked first, and errors are heard, not raised.

    Layers in memory are taken out of a context of its own, so that a test that fails keeps no context: one that
    outlives QGIS takes Python down with it.
    """
    own, context, heard = context is None, context or QgsProcessingContext(), feedback or Heard()
    context.setProject(QgsProject.instance())
    context.setFeedback(heard)
    fine, why = algorithm.checkParameterValues(parameters, context)
    if not fine:
        return Ran(results={}, ok=False, errors=[why])
    results, ok = algorithm.run(parameters, context, heard)
    report = None
    if ok and results.get("REPORT"):
        report = json.loads(Path(results["REPORT"]).read_text(encoding="utf-8"), parse_constant=_no_constant)
    layers = {name: context.takeResultLayer(results[name]) for name in SINKS if own and name in results}
    return Ran(results=results, ok=ok, errors=heard.errors, warnings=heard.warnings, layers=layers, report=report)


def _no_constant(name: str) -> None:
    raise AssertionError(f"{name} stands in the report")


def new_plan(path: Path, **parameters: object) -> Path:
    """A plan made by tideleg:newplan: once for all tests that ask for the same, which get a copy of their own."""
    return Path(shutil.copy(_made_once(tr("Marks"), tuple(sorted(parameters.items()))), path))


@cache
def _made_once(_language: str, parameters: tuple[tuple[str, object], ...]) -> Path:
    """``_language`` is a word in the language that the plan's forms are made in."""
    path = Path(tempfile.mkdtemp(dir=_folder())) / "plan.gpkg"
    made = run(NewPlan().create(), {"PLAN": str(path), **dict(parameters)})
    assert made.ok, made.said
    return Path(made.results["PLAN"])


@lru_cache(maxsize=1)
def _folder() -> str:
    kept = tempfile.TemporaryDirectory(prefix="tideleg-plans-")
    atexit.register(kept.cleanup)
    return kept.name


def swim(plan: Path | None, folder: Path, feedback: Heard | None = None, **parameters: object) -> Ran:
    """Run tideleg:planswim; the report goes to report.json in the folder unless another is asked for."""
    asked = {"PLAN": ... if plan is None else str(plan), "REPORT": str(folder / "report.json"), **parameters}
    return run(PlanSwim().create(), {key: value for key, value in asked.items() if value is not ...}, feedback)


def swum(plan: Path | None, folder: Path, **parameters: object) -> dict[str, Any]:
    """The report of a swim that must succeed."""
    ran = swim(plan, folder, **parameters)
    assert ran.ok, ran.said
    return ran.report


def offset(bearing_deg: float, metres: float, lon: float = LON, lat: float = LAT) -> tuple[float, float]:
    """The place so many metres from another on a true bearing."""
    lon, lat, _ = GEOD.fwd(lon, lat, bearing_deg, metres)
    return lon, lat


def moved(east_m: float, north_m: float, lon: float = LON, lat: float = LAT) -> tuple[float, float]:
    """The place so many metres to the east and to the north."""
    return offset(0.0, north_m, *offset(90.0, east_m, lon, lat))


def point(place: tuple[float, float]) -> QgsGeometry:
    return QgsGeometry.fromPointXY(QgsPointXY(*place))


def line(*places: tuple[float, float]) -> QgsGeometry:
    return QgsGeometry.fromPolylineXY([QgsPointXY(*place) for place in places])


def box(
    west_m: float, south_m: float, east_m: float, north_m: float, at: tuple[float, float] = (LON, LAT)
) -> QgsGeometry:
    """A rectangle in metres from a place."""
    corners = [(west_m, south_m), (east_m, south_m), (east_m, north_m), (west_m, north_m), (west_m, south_m)]
    return QgsGeometry.fromPolygonXY([[QgsPointXY(*moved(x, y, *at)) for x, y in corners]])


def utc(clock: str, day: str = DAY) -> datetime:
    """A moment in UTC."""
    return datetime.fromisoformat(f"{day}T{clock}").replace(tzinfo=timezone.utc)


def add_route(plan: Path, name: str, *places: tuple[float, float]) -> None:
    append_rows(plan, "routes", [(line(*places), {"name": name})])


def add_swimmer(plan: Path, pace_m_s: float, name: str = "Runa", **values: object) -> None:
    """A swimmer whose path is the ruler line, as the worked stories reckon."""
    append_rows(plan, "swimmers", [(None, {"name": name, "pace_m_s": pace_m_s, "path_factor": 1.0, **values})])


def add_constant_stream(
    plan: Path, rate_m_s: float, set_deg: float | None, station: str = "C", at: tuple[float, float] = (LON, LAT)
) -> None:
    append_rows(plan, "stream_stations", [(point(at), {"station": station, "form": "constant"})])
    rate = {"station": station, "hour": 0, "set_deg": set_deg, "spring_kn": rate_m_s / KNOT_M_S}
    append_rows(plan, "stream_rates", [(None, rate)])


def add_sine_stream(
    plan: Path, slack: datetime, peak_m_s: float, flood_set_deg: float, half_period_min: float = 372.0
) -> None:
    """A station whose stream is flood before the slack and ebb after it: slacks and maxima of a sine."""
    append_rows(plan, "stream_stations", [(point((LON, LAT)), {"station": "S", "form": "events"})])
    quarter = timedelta(minutes=half_period_min / 2.0)
    sets = {"flood_set_deg": flood_set_deg, "ebb_set_deg": (flood_set_deg + 180.0) % 360.0}
    rate = peak_m_s / KNOT_M_S
    moments = [(-2, "slack", 0.0), (-1, "max", rate), (0, "slack", 0.0), (1, "max", -rate), (2, "slack", 0.0)]
    append_rows(
        plan,
        "stream_events",
        [
            (None, {"station": "S", "time": slack + number * quarter, "kind": kind, "rate_kn": kn, **sets})
            for number, kind, kn in moments
        ],
    )


def edited(plan: Path, layer_name: str, changes: dict[str, object], where: str = "") -> None:
    """Change attributes of a layer as a user does: open it in QGIS, edit, save."""
    layer = QgsVectorLayer(f"{plan}|layername={layer_name}", layer_name, "ogr")
    assert layer.isValid() and layer.startEditing()
    rows: Iterable[QgsFeature] = layer.getFeatures(where) if where else layer.getFeatures()
    for row in list(rows):
        for name, value in changes.items():
            assert layer.changeAttributeValue(row.id(), layer.fields().indexOf(name), value)
    assert layer.commitChanges(), layer.commitErrors()


def flags_of(report: dict[str, Any], kind: str) -> list[dict[str, Any]]:
    return [flag for flag in report["flags"] if flag["kind"] == kind]


def clock(iso: str) -> str:
    """HH:MM to the nearest minute of an ISO time."""
    return (datetime.fromisoformat(iso) + timedelta(seconds=30)).strftime("%H:%M")


# ---------------------------------------------------------------- one plan with something in every layer

ZONE = "Europe/Lisbon"
TITLE = "INVENTED - NOT FOR NAVIGATION"
DEPART = f"{DAY}T10:00"
SLIP, LEDGE = (LON, LAT), moved(1100.0, 250.0)
TIDE_ROWS = (("02:00", 0.7, "LW"), ("08:00", 3.9, "HW"), ("14:15", 0.9, "LW"), ("20:30", 3.7, "HW"))
FILES = {"REPORT": "report.json", "GPX": "marks.gpx", "CARD": "card.pdf", "CSV": "legs.csv"}


def invented_bay(path: Path) -> Path:
    """A plan with something in every layer that planswim reads, read in a zone that has summer time: a copy."""
    return Path(shutil.copy(_bay(tr("Marks")), path))


@cache
def _bay(_language: str) -> Path:
    plan = new_plan(Path(tempfile.mkdtemp(dir=_folder())) / "bay.gpkg", ZONE=ZONE, TITLE=TITLE)
    add_route(plan, "Ledge", SLIP, LEDGE, SLIP)
    add_swimmer(plan, 0.6, path_factor=1.1)
    marks = [
        (point(SLIP), {"name": "Kettle Slip", "kind": "entry"}),
        (point(LEDGE), {"name": "Gannet Ledge", "kind": "mark", "stay_min": 20.0}),
    ]
    append_rows(plan, "marks", marks)
    centre = line(moved(500.0, -800.0), moved(500.0, 1000.0))
    append_rows(plan, "channels", [(centre, {"name": "Cut", "kind": "fairway", "width_m": 120.0, "boat_kn": 15.0})])
    closed = {"name": "Nursery", "rule": "no_spearing", "citation": "By-law 7", "checked_on": "2027-01-05"}
    append_rows(plan, "closed_areas", [(box(800.0, -100.0, 950.0, 500.0), closed)])
    append_rows(plan, "land", [(box(-400.0, -600.0, -30.0, 600.0), {"name": "Kettle Head"})])
    for depth, east in ((5.0, 1000.0), (15.0, 1200.0)):
        append_rows(plan, "depth_contours", [(line(moved(east, -300.0), moved(east, 700.0)), {"depth_m": depth})])
    append_rows(plan, "soundings", [(point(moved(1110.0, 250.0)), {"depth_m": 9.2})])
    tides = [{"port": "P", "time": utc(when), "height_m": height, "kind": kind} for when, height, kind in TIDE_ROWS]
    append_rows(plan, "tides", [(None, row) for row in tides])
    station = {"station": "A", "form": "hourly", "reference": "HW", "port": "P"}
    ranges = {"spring_range_m": 4.0, "neap_range_m": 1.8}
    append_rows(plan, "stream_stations", [(point(moved(600.0, 900.0)), {**station, **ranges})])
    append_rows(plan, "stream_rates", [(None, hour_row(hour)) for hour in range(-6, 7)])
    append_rows(plan, "ferries", [(None, {"channel": "Cut", "time": "19:00"})])
    return plan


def hour_row(hour: int) -> dict[str, object]:
    """A stream that turns at HW+1 and is strongest some three hours from it."""
    rate = abs(math.sin(math.pi * (hour - 1) / 6.0))
    towards = 20.0 if hour < 1 else 200.0
    return {"station": "A", "hour": hour, "set_deg": towards, "spring_kn": rate, "neap_kn": 0.5 * rate}


def every_output(folder: Path) -> dict[str, str]:
    """Each sink and file of planswim in the folder."""
    files = {name: str(folder / file) for name, file in FILES.items()}
    return {**files, **{name: str(folder / f"{name.lower()}.gpkg") for name in SINKS}}


def digest(path: Path) -> str:
    return hashlib.sha256(path.read_bytes()).hexdigest()


def left_in(folder: Path) -> list[str]:
    return sorted(path.name for path in folder.iterdir())
