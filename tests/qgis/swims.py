"""Plans made and swum through QGIS's own doors, for the tests of planswim: invented water in the open ocean."""

from __future__ import annotations

import json
from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import datetime, timedelta, timezone
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

GEOD = Geod(ellps="WGS84")
KNOT_M_S = 1852.0 / 3600.0
# Open ocean where WMM2025 gives 4.00 W on DAY: the variation of the worked stories.
LON, LAT = -17.56, 44.0
DAY = "2027-06-05"


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
    context: QgsProcessingContext | None = None
    report: dict[str, Any] | None = None

    @property
    def said(self) -> str:
        return " ".join(self.errors)

    def layer(self, name: str) -> QgsVectorLayer:
        """The layer of a sink, wherever it was written."""
        found = self.context.getMapLayer(self.results[name])
        return found if found is not None else QgsVectorLayer(self.results[name], name, "ogr")


def run(algorithm: QgsProcessingAlgorithm, parameters: dict[str, Any], feedback: Heard | None = None) -> Ran:
    """Run an algorithm as QGIS does: the parameters are checked first, and errors are heard, not raised."""
    context, heard = QgsProcessingContext(), feedback or Heard()
    context.setProject(QgsProject.instance())
    context.setFeedback(heard)
    fine, why = algorithm.checkParameterValues(parameters, context)
    if not fine:
        return Ran(results={}, ok=False, errors=[why])
    results, ok = algorithm.run(parameters, context, heard)
    report = None
    if ok and results.get("REPORT"):
        report = json.loads(Path(results["REPORT"]).read_text(encoding="utf-8"), parse_constant=_no_constant)
    # A context that outlives QGIS takes Python down with it, so a failed run does not keep one.
    kept = context if ok else None
    return Ran(results=results, ok=ok, errors=heard.errors, warnings=heard.warnings, context=kept, report=report)


def _no_constant(name: str) -> None:
    raise AssertionError(f"{name} stands in the report")


def new_plan(path: Path, **parameters: object) -> Path:
    """A plan made by tideleg:newplan."""
    made = run(NewPlan().create(), {"PLAN": str(path), **parameters})
    assert made.ok, made.said
    return Path(made.results["PLAN"])


def swim(plan: Path | None, folder: Path, feedback: Heard | None = None, **parameters: object) -> Ran:
    """Run tideleg:planswim; the report goes to report.json in the folder unless another is asked for."""
    asked = {"REPORT": str(folder / "report.json"), **parameters}
    if plan is not None:
        asked["PLAN"] = str(plan)
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
