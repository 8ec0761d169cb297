"""The planned swim as features for the four layers that planswim writes: legs, track, flags and stops.

All are in EPSG:4326, and a swim over the date line is drawn on beyond 180 degrees rather than round the world.
Every time stands twice: as a date-time in UTC, for the temporal controller and for sorting, and as text with its
offset in the plan's zone, for people; no format and no machine's own zone can shift the text.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import datetime, timezone
from typing import Any

from qgis.core import (
    Qgis,
    QgsCoordinateReferenceSystem,
    QgsFeature,
    QgsField,
    QgsFields,
    QgsGeometry,
    QgsLineString,
    QgsPoint,
    QgsPointXY,
    QgsWkbTypes,
)
from qgis.PyQt.QtCore import QDateTime, QMetaType, Qt, QVariant

from ..core.results.plain_values import iso_time, nearest_second
from ..core.results.report import middle_of, unwrapped
from ..core.results.swim_plan import SwimPlan

# Field types have had other names since 3.38; the old ones are still needed for 3.22.
_NEW = Qgis.QGIS_VERSION_INT >= 33800
FIELD_TYPES = {
    "whole": QMetaType.Type.Int if _NEW else QVariant.Type.Int,
    "number": QMetaType.Type.Double if _NEW else QVariant.Type.Double,
    "text": QMetaType.Type.QString if _NEW else QVariant.Type.String,
    "time": QMetaType.Type.QDateTime if _NEW else QVariant.Type.DateTime,
}
Row = tuple[QgsGeometry | None, dict[str, object]]


@dataclass(frozen=True, kw_only=True)
class OutputLayer:
    """One layer of results: the algorithm's parameter, the geometry, the fields, and what fills them from a result."""

    parameter: str
    wkb_type: QgsWkbTypes.Type
    columns: tuple[tuple[str, str], ...]
    rows: Callable[[Any], Iterator[Row]]

    def fields(self) -> QgsFields:
        """The fields, in order."""
        fields = QgsFields()
        for name, kind in self.columns:
            fields.append(QgsField(name, FIELD_TYPES[kind]))
        return fields

    def features(self, result: Any) -> list[QgsFeature]:
        """A feature for every row; a value that is not known is NULL."""
        fields = self.fields()
        features = []
        for geometry, values in self.rows(result):
            feature = QgsFeature(fields)
            if geometry is not None:
                feature.setGeometry(geometry)
            for name, kind in self.columns:
                value = values[name]
                feature.setAttribute(name, utc_qdatetime(value) if kind == "time" else value)
            features.append(feature)
        return features


def output_crs() -> QgsCoordinateReferenceSystem:
    """EPSG:4326, which all layers of results are in."""
    return QgsCoordinateReferenceSystem("EPSG:4326")


def utc_qdatetime(moment: datetime | None) -> QDateTime | None:
    """The moment as a Qt date-time in UTC, to the nearest second; None stays None."""
    if moment is None:
        return None
    text = nearest_second(moment.astimezone(timezone.utc)).strftime("%Y-%m-%dT%H:%M:%SZ")
    return QDateTime.fromString(text, Qt.DateFormat.ISODate)


def both_times(**moments: datetime | None) -> dict[str, object]:
    """Each time under its name, and under ``<name>_local`` as text."""
    local = {f"{name}_local": iso_time(moment, where=name) for name, moment in moments.items()}
    return {**moments, **local}


def line_over(points: list[tuple[float, float]]) -> QgsGeometry:
    """A line of (lon, lat) pairs, drawn on beyond 180 degrees where it crosses the date line."""
    return QgsGeometry.fromPolylineXY([QgsPointXY(lon, lat) for lon, lat in unwrapped(points)])


LEG_COLUMNS = (
    ("number", "whole"),
    ("start_name", "text"),
    ("end_name", "text"),
    ("distance_m", "number"),
    ("bearing_true_deg", "number"),
    ("bearing_mag_deg", "number"),
    ("heading_true_deg", "number"),
    ("heading_mag_deg", "number"),
    ("card_heading", "text"),
    ("ground_speed_m_s", "number"),
    ("minutes", "number"),
    ("depart", "time"),
    ("arrive", "time"),
    ("depart_local", "text"),
    ("arrive_local", "text"),
    ("stream_set_deg", "number"),
    ("stream_kn", "number"),
    ("off_line_m", "number"),
    ("feasible", "whole"),
    ("reason", "text"),
)
LEG_COPIED = [name for name, kind in LEG_COLUMNS if kind != "time" and not name.endswith("_local")]


def _leg_rows(plan: SwimPlan) -> Iterator[Row]:
    """The straight legs as ruled on the chart, with every number of the leg."""
    for leg in plan.legs:
        values = {name: getattr(leg, name) for name in LEG_COPIED}
        values["feasible"] = int(leg.feasible)
        line = line_over([(leg.start_lon, leg.start_lat), (leg.end_lon, leg.end_lat)])
        yield line, {**values, **both_times(depart=leg.depart, arrive=leg.arrive)}


TRACK_COLUMNS = (
    ("leg", "whole"),
    ("start_name", "text"),
    ("end_name", "text"),
    ("begin", "time"),
    ("end", "time"),
    ("begin_local", "text"),
    ("end_local", "text"),
    ("minutes", "number"),
    ("off_line_m", "number"),
    ("feasible", "whole"),
)


def _track_rows(plan: SwimPlan) -> Iterator[Row]:
    """The path over the ground, one line a leg, M = seconds since 1970 UTC; legs without a track have no feature."""
    for leg in plan.legs:
        if len(leg.track) < 2:
            continue
        lonlat = unwrapped((point.lon, point.lat) for point in leg.track)
        vertices = [
            QgsPoint(lon, lat, m=point.moment.timestamp(), wkbType=QgsWkbTypes.Type.PointM)
            for (lon, lat), point in zip(lonlat, leg.track)
        ]
        yield (
            # A copy is C++'s own: of a line made here, drawing would ask Python, and wait where Python works.
            QgsGeometry(QgsLineString(vertices).clone()),
            {
                "leg": leg.number,
                "start_name": leg.start_name,
                "end_name": leg.end_name,
                "minutes": leg.minutes,
                "off_line_m": leg.off_line_m,
                "feasible": int(leg.feasible),
                **both_times(begin=leg.track[0].moment, end=leg.track[-1].moment),
            },
        )


FLAG_COLUMNS = (
    ("kind", "text"),
    ("severity", "text"),
    ("leg", "whole"),
    ("name", "text"),
    ("message", "text"),
    ("begin", "time"),
    ("end", "time"),
    ("begin_local", "text"),
    ("end_local", "text"),
    ("length_m", "number"),
    ("crossing_angle_deg", "number"),
    ("stretch_wkt", "text"),
)


def _flag_rows(plan: SwimPlan) -> Iterator[Row]:
    """A point a flag, half-way along its stretch; the stretch itself is WKT in ``stretch_wkt``, NULL for a place.

    One sink holds one kind of geometry, and most flags are places: a point every flag has, a line only some. The style
    draws the stretch from the text.
    """
    for flag in plan.flags:
        stretch = unwrapped(flag.points)
        drawn = len(set(stretch)) > 1
        values = {
            "kind": flag.kind,
            "severity": flag.severity,
            "leg": flag.leg,
            "name": flag.name,
            "message": flag.message,
            "length_m": flag.length_m,
            "crossing_angle_deg": flag.crossing_angle_deg,
            "stretch_wkt": line_over(stretch).asWkt(7) if drawn else None,
        }
        yield _point(*middle_of(flag.points)), {**values, **both_times(begin=flag.start, end=flag.end)}


STOP_COLUMNS = (
    ("number", "whole"),
    ("name", "text"),
    ("kind", "text"),
    ("arrive", "time"),
    ("leave", "time"),
    ("arrive_local", "text"),
    ("leave_local", "text"),
    ("charted_depth_m", "number"),
    ("depth_now_m", "number"),
    ("swing_m", "number"),
    ("latest_leave", "time"),
    ("latest_leave_pessimistic", "time"),
    ("latest_leave_local", "text"),
    ("latest_leave_pessimistic_local", "text"),
    ("exit", "text"),
    ("note", "text"),
)


def _stop_rows(plan: SwimPlan) -> Iterator[Row]:
    """The stops in swimming order, numbered from 0, the entry."""
    for number, stop in enumerate(plan.stops):
        times = both_times(
            arrive=stop.arrive,
            leave=stop.leave,
            latest_leave=stop.latest_leave,
            latest_leave_pessimistic=stop.latest_leave_pessimistic,
        )
        names = ("name", "kind", "charted_depth_m", "depth_now_m", "swing_m", "exit", "note")
        yield (
            _point(stop.lon, stop.lat),
            {"number": number, **{name: getattr(stop, name) for name in names}, **times},
        )


def _point(lon: float, lat: float) -> QgsGeometry:
    return QgsGeometry.fromPointXY(QgsPointXY(lon, lat))


LEGS = OutputLayer(parameter="LEGS", wkb_type=QgsWkbTypes.Type.LineString, columns=LEG_COLUMNS, rows=_leg_rows)
TRACK = OutputLayer(parameter="TRACK", wkb_type=QgsWkbTypes.Type.LineStringM, columns=TRACK_COLUMNS, rows=_track_rows)
FLAGS = OutputLayer(parameter="FLAGS", wkb_type=QgsWkbTypes.Type.Point, columns=FLAG_COLUMNS, rows=_flag_rows)
STOPS = OutputLayer(parameter="STOPS", wkb_type=QgsWkbTypes.Type.Point, columns=STOP_COLUMNS, rows=_stop_rows)
OUTPUT_LAYERS = (LEGS, TRACK, FLAGS, STOPS)
