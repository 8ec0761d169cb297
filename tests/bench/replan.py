"""Replanning a 20-leg route against 5 000 polygons, beside the same overlay done with QGIS's native algorithms."""

from __future__ import annotations

import time
from collections.abc import Callable
from datetime import datetime, timezone

import numpy as np
from qgis.core import QgsFeature, QgsGeometry, QgsPointXY, QgsVectorLayer
from tideleg.core.chart.areas import Channel, Chart, ClosedArea, Land
from tideleg.core.chart.depths import DepthSurvey
from tideleg.core.chart.marks import Route, marks_at_stops
from tideleg.core.clock import PlanClock
from tideleg.core.geodesy import LocalFrame
from tideleg.core.planar import PlanarArea
from tideleg.core.quantities import m_s_from_knots
from tideleg.core.solve.plan_swim import plan_swim
from tideleg.core.solve.request import SwimRequest
from tideleg.core.solve.swim import SwimWay
from tideleg.core.swimmer import Swimmer
from tideleg.core.water.field import Station, StreamField
from tideleg.core.water.hourly import HourlyStream, HourlyTable
from tideleg.core.water.tide import TideTable

LEGS, POLYGONS, VERTICES = 20, 5000, 10
SIDE_M = 6000.0
DEPART = datetime(2027, 6, 5, 10, tzinfo=timezone.utc)


def request(seed: int = 7) -> SwimRequest:
    """A swim of 20 legs in an area of 6 km by 6 km strewn with polygons of ten vertices, two hourly stations."""
    rng = np.random.default_rng(seed)
    frame = LocalFrame(lon=-40.0, lat=35.0)
    turn = np.linspace(0.0, 2.0 * np.pi, LEGS + 1)
    radius = 800.0 * (1.0 + 0.2 * np.sin(5.0 * turn))
    stops = np.column_stack([radius * np.sin(turn) + 300.0, radius * np.cos(turn) - 200.0])
    route = Route(name="bench", lonlat=frame.to_lonlat(stops))
    clock = PlanClock(start=DEPART, zone_name="UTC")
    areas = [_polygon(rng) for _ in range(POLYGONS)]
    third = POLYGONS // 3
    chart = Chart(
        channels=tuple(
            Channel(name=f"c{n}", kind="fairway", area=a, flow_deg=30.0) for n, a in enumerate(areas[:third])
        ),
        closed_areas=tuple(
            ClosedArea(name=f"r{n}", rule="caution", area=a) for n, a in enumerate(areas[third : 2 * third])
        ),
        land=tuple(Land(name=f"l{n}", area=a) for n, a in enumerate(areas[2 * third :])),
    )
    return SwimRequest(
        route=route,
        stops=tuple(marks_at_stops(route, [])),
        depart=DEPART,
        swimmer=Swimmer(name="bench", pace_m_s=0.6, path_factor=1.1, range_m=20_000.0, max_hours=12.0),
        way=SwimWay(),
        frame=frame,
        clock=clock,
        stream=_stream(),
        tide=_tide(),
        chart=chart,
        depths=DepthSurvey(),
    )


def _polygon(rng: np.random.Generator) -> PlanarArea:
    centre = rng.uniform(-SIDE_M / 2.0, SIDE_M / 2.0, 2)
    turn = np.sort(rng.uniform(0.0, 2.0 * np.pi, VERTICES))
    size = rng.uniform(10.0, 60.0)
    return PlanarArea(rings=(centre + size * np.column_stack([np.sin(turn), np.cos(turn)]),))


def _tide() -> TideTable:
    times = np.arange(-10, 11) * 6.2 * 3600.0
    high = np.arange(21) % 2 == 0
    return TideTable(port="bench", times_s=times, heights_m=np.where(high, 4.0, 0.8), is_high=high)


def _stream() -> StreamField:
    hours = np.arange(-6, 7)
    stations = []
    for number, (x, y, towards) in enumerate(((-1500.0, 0.0, 60.0), (1800.0, 900.0, 80.0))):
        rate = m_s_from_knots(0.7 * np.abs(np.sin((hours + number) * np.pi / 6.2)))
        sets = np.where(np.sin((hours + number) * np.pi / 6.2) >= 0.0, towards, towards + 180.0)
        table = HourlyTable(
            station=f"s{number}",
            reference="HW",
            set_deg=sets,
            spring_m_s=rate,
            neap_m_s=rate / 2.0,
            spring_range_m=4.5,
            neap_range_m=2.0,
        )
        stations.append(Station(name=f"s{number}", x_m=x, y_m=y, stream=HourlyStream(table, _tide())))
    return StreamField(stations=tuple(stations))


def seconds_of(work, times: int) -> float:
    """The least time of several runs, after one to warm up."""
    work()
    taken = []
    for _ in range(times):
        start = time.perf_counter()
        work()
        taken.append(time.perf_counter() - start)
    return min(taken)


def native_overlay(swim: SwimRequest):
    """The overlay alone in QGIS's own algorithms: each track cut with three layers, and the lengths."""
    import processing

    plan = plan_swim(swim)
    tracks = _layer(
        "LineString", [QgsGeometry.fromPolylineXY([QgsPointXY(p.lon, p.lat) for p in leg.track]) for leg in plan.legs]
    )
    layers = [
        _layer("Polygon", [_geometry(swim.frame, item.area) for item in getattr(swim.chart, name)])
        for name in ("channels", "closed_areas", "land")
    ]

    def work() -> None:
        for layer in layers:
            cut = processing.run(
                "native:intersection", {"INPUT": tracks, "OVERLAY": layer, "OUTPUT": "TEMPORARY_OUTPUT"}
            )
            processing.run(
                "native:fieldcalculator",
                {"INPUT": cut["OUTPUT"], "FIELD_NAME": "length_m", "FORMULA": "$length", "OUTPUT": "TEMPORARY_OUTPUT"},
            )

    return work


def _geometry(frame: LocalFrame, area: PlanarArea) -> QgsGeometry:
    return QgsGeometry.fromPolygonXY([[QgsPointXY(*place) for place in frame.to_lonlat(ring)] for ring in area.rings])


def _layer(kind: str, geometries: list[QgsGeometry]) -> QgsVectorLayer:
    layer = QgsVectorLayer(f"{kind}?crs=EPSG:4326", kind, "memory")
    features = []
    for geometry in geometries:
        feature = QgsFeature()
        feature.setGeometry(geometry)
        features.append(feature)
    layer.dataProvider().addFeatures(features)
    return layer


def own_overlay(swim: SwimRequest) -> Callable[[], None]:
    """The same overlay by our own code: the stretches of every track inside the three kinds of area."""
    tracks = [
        swim.frame.to_xy(np.array([[point.lon, point.lat] for point in leg.track])) for leg in plan_swim(swim).legs
    ]

    def work() -> None:
        for track in tracks:
            for name in ("channels", "closed_areas", "land"):
                swim.chart.stretches(name, track)

    return work


def report() -> None:
    """Print the row of the speed table."""
    swim = request()
    whole, native = seconds_of(lambda: plan_swim(swim), 15), seconds_of(native_overlay(swim), 5)
    own = seconds_of(own_overlay(swim), 9)
    flags = len(plan_swim(swim).flags)
    print(
        f"replan, {LEGS} legs against {POLYGONS} polygons ({POLYGONS * VERTICES} vertices): {1000.0 * whole:.1f} ms "
        f"(headings, track, {flags} flags in sentences; target 50 ms). Its overlay alone: {1000.0 * own:.1f} ms; "
        f"QGIS's native algorithms chained for that overlay: {1000.0 * native:.1f} ms, ratio {native / own:.1f}; they "
        "have none for the rest."
    )
