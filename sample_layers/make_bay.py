#!/usr/bin/env python3
"""Make the sample plan: an invented bay in the open ocean, with everything a plan can hold.

INVENTED - NOT FOR NAVIGATION. Run it with the Python that QGIS uses; `./run demo` does so when the plan is missing. Two
runs give the same rows.
"""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterable
from pathlib import Path

import bay_chart
import bay_plan
import bay_water
import numpy as np
from bay_frame import NOTICE, ZONE, lon_lat
from bay_shape import SEED, Seabed
from osgeo import ogr
from qgis.core import QgsGeometry, QgsPointXY

HERE = Path(__file__).resolve().parent
PLUGIN_FOLDER = HERE.parent / ".cache" / "python"
SAMPLE = HERE / "invented_bay.gpkg"
TITLE = f"Ostrel Bay - {NOTICE}"
LAND_NAMES = ("Ostrel shore", "Tam Islet")

Row = tuple[QgsGeometry | None, dict[str, object]]
Rows = dict[str, list[Row]]
Progress = Callable[[str], None]


def point(place: bay_plan.Place) -> QgsGeometry:
    return QgsGeometry.fromPointXY(QgsPointXY(*lon_lat([place])[0]))


def line(places: Iterable[bay_plan.Place]) -> QgsGeometry:
    return QgsGeometry.fromPolylineXY([QgsPointXY(*pair) for pair in lon_lat(places)])


def polygon(ring: Iterable[bay_plan.Place]) -> QgsGeometry:
    return QgsGeometry.fromPolygonXY([[QgsPointXY(*pair) for pair in lon_lat(ring)]])


def _degrees_of(shape: QgsGeometry) -> QgsGeometry:
    """A line or polygon in metres of the bay, as longitude and latitude."""
    if not shape.isMultipart() and shape.asWkb().isEmpty():
        raise ValueError("An empty shape cannot be placed on the chart.")
    if "Polygon" in shape.asWkt(0):
        rings = shape.asPolygon()
        return QgsGeometry.fromPolygonXY([[QgsPointXY(*p) for p in lon_lat((v.x(), v.y()) for v in r)] for r in rings])
    return line((vertex.x(), vertex.y()) for vertex in shape.asPolyline())


def chart_rows(seabed: Seabed) -> Rows:
    """Land, contours and soundings; a sounding stands at every mark, as if the marks had been surveyed."""
    lands = bay_chart.land_areas(seabed)
    names = [*LAND_NAMES, *(f"Rock {number}" for number in range(1, len(lands) + 1))]
    generator = np.random.default_rng(SEED + 1)
    depths = bay_chart.soundings(seabed, generator)
    depths += [(*place, charted_depth_m(seabed, place)) for place, *_ in bay_plan.MARKS.values()]
    contours = bay_chart.depth_contours(seabed)
    return {
        "land": [(_degrees_of(land), {"name": f"{name} (invented)"}) for land, name in zip(lands, names)],
        "depth_contours": [(_degrees_of(shape), {"depth_m": depth}) for depth, shape in contours],
        "soundings": [(point((x, y)), {"depth_m": depth}) for x, y, depth in depths],
    }


def charted_depth_m(seabed: Seabed, place: bay_plan.Place) -> float:
    return round(float(seabed.depth_m(*place)), 1)


def mark_rows(seabed: Seabed) -> Rows:
    marks = []
    for name, (place, kind, stay_min, bottom, note) in bay_plan.MARKS.items():
        fields = {"name": name, "kind": kind, "stay_min": stay_min, "charted_depth_m": charted_depth_m(seabed, place)}
        marks.append((point(place), {**fields, "bottom": bottom, "note": f"{note} {bay_plan.INVENTED}"}))
    routes = []
    for name, (stops, note) in bay_plan.ROUTES.items():
        track = line(bay_plan.MARKS[stop][0] for stop in stops)
        hour = f"Tried with departure {bay_plan.DEPART} in the plan's zone."
        routes.append((track, {"name": name, "note": f"{note} {hour} {bay_plan.INVENTED}"}))
    return {"marks": marks, "routes": routes}


def transit_rows() -> Rows:
    """Landmarks ashore, and the ones held in line from two of the marks."""
    landmarks = []
    for name, (place, kind, height_m, note) in bay_plan.LANDMARKS.items():
        fields = {"name": name, "kind": kind, "height_m": height_m, "note": f"{note} {bay_plan.INVENTED}".strip()}
        landmarks.append((point(place), fields))
    transits = []
    for mark, front, rear in bay_plan.TRANSITS:
        seen = line((bay_plan.MARKS[mark][0], *(bay_plan.LANDMARKS[name][0] for name in (front, rear))))
        transits.append((seen, {"mark": mark, "front": front, "rear": rear, "note": bay_plan.INVENTED}))
    return {"landmarks": landmarks, "transits": transits}


def traffic_rows() -> Rows:
    channels: list[Row] = []
    for name, flow_deg, ring in bay_plan.fairway_reaches():
        channels.append((polygon(ring), {"name": name, "kind": "fairway", "flow_deg": flow_deg, "boat_kn": 20.0}))
    ferry = {"name": bay_plan.FERRY, "kind": "ferry", "width_m": 120.0, "boat_kn": 16.0}
    channels.append((line(bay_plan.FERRY_LINE), ferry))
    lane = {"name": "Slip lane", "kind": "small_craft", "width_m": 60.0, "boat_kn": 8.0}
    channels.append((line(bay_plan.SMALL_CRAFT_LINE), lane))
    times = [
        (None, {"channel": bay_plan.FERRY, "time": time, "clear_before_min": 10.0, "clear_after_min": 10.0})
        for time in bay_plan.FERRY_TIMES
    ]
    return {"channels": channels, "ferries": times}


def area_rows() -> Rows:
    areas = []
    for name, (corners, rule, start, end, citation, checked_on) in bay_plan.CLOSED_AREAS.items():
        fields = {"name": name, "rule": rule, "from_time": start, "to_time": end}
        fields |= {"citation": f"{citation}. {bay_plan.INVENTED}", "checked_on": checked_on}
        areas.append((polygon(bay_plan.closed(corners)), fields))
    return {"closed_areas": areas}


def water_rows() -> Rows:
    stations = []
    for name, (place, form, confidence) in bay_plan.STATIONS.items():
        fields: dict[str, object] = {"station": name, "form": form, "source": NOTICE, "confidence": confidence}
        fields["port"] = bay_water.PORT
        if form == "hourly":
            fields["reference"] = "HW"
            fields |= {"spring_range_m": bay_water.SPRING_RANGE_M, "neap_range_m": bay_water.NEAP_RANGE_M}
        stations.append((point(place), fields))
    eddy = polygon(bay_plan.rounded(bay_plan.EDDY_CORNERS))
    return {
        "tides": [(None, row) for row in bay_water.tide_rows()],
        "stream_stations": stations,
        "stream_rates": [(None, row) for row in bay_water.stream_rate_rows()],
        "stream_areas": [(eddy, {"station": bay_water.EDDY, "phase": bay_plan.EDDY_PHASE})],
    }


def swimmer_rows() -> Rows:
    keys = ("pace_m_s", "path_factor", "range_m", "max_hours", "depth_limit_m", "fluid_l", "fluid_l_h", "line_m")
    rows = []
    for name, values in bay_plan.SWIMMERS.items():
        rows.append((None, {"name": name, **dict(zip(keys, values)), "min_ground_speed_m_s": 0.15}))
    return {"swimmers": rows}


def all_rows(say: Progress = lambda _words: None) -> Rows:
    """Every row of the sample, by layer: the geometry in degrees (or None) and the fields."""
    seabed = Seabed()
    say("coast, contours and soundings")
    rows = chart_rows(seabed)
    say("marks, routes, channels, areas, streams, tides")
    for part in (mark_rows(seabed), transit_rows(), traffic_rows(), area_rows(), water_rows(), swimmer_rows()):
        rows |= part
    return rows


def plugin_on_path() -> None:
    """Let Python find the plugin of this checkout as `tideleg`; makes the link if missing."""
    link = PLUGIN_FOLDER / "tideleg"
    if not link.exists():
        PLUGIN_FOLDER.mkdir(parents=True, exist_ok=True)
        link.symlink_to(Path("..") / ".." / "plugin", target_is_directory=True)
    if str(PLUGIN_FOLDER) not in sys.path:
        sys.path.insert(0, str(PLUGIN_FOLDER))


def _describe(path: Path) -> None:
    """Write the notice into the GeoPackage's own table of contents, where any program shows it."""
    package = ogr.Open(str(path), 1)
    for number in range(package.GetLayerCount()):
        layer = package.GetLayer(number)
        layer.SetMetadataItem("DESCRIPTION", f"{NOTICE}. Part of an invented bay made to try Tideleg on.")
    package = None


def make(path: Path = SAMPLE, say: Progress = lambda _words: None) -> Path:
    """Write the sample plan to `path`, replacing an older one only when the new one is whole."""
    plugin_on_path()
    from tideleg.plan_package import store

    unfinished = path.with_name(f"{path.stem}.unfinished.gpkg")
    unfinished.unlink(missing_ok=True)
    datum = "chart datum of the invented bay"
    store.create_plan(unfinished, zone=ZONE, datum=datum, title=TITLE, overwrite=True)
    for layer, rows in all_rows(say).items():
        store.append_rows(unfinished, layer, rows)
        say(f"{layer}: {len(rows)} rows")
    _describe(unfinished)
    unfinished.replace(path)
    return path


def is_stale(path: Path = SAMPLE) -> bool:
    """Whether the sample plan is missing or older than its makers: the scripts here, the plan's schema and styles."""
    plugin = HERE.parent / "plugin"
    makers = [*HERE.glob("*bay*.py"), *plugin.glob("plan_package/*.py"), *plugin.glob("layers_out/styles/*.py")]
    return not path.exists() or path.stat().st_mtime < max(maker.stat().st_mtime for maker in makers)


if __name__ == "__main__":
    print(make(say=lambda words: print("  ", words, flush=True)))
