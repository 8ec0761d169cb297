"""The stream at a place through a day as a layer of points in time, and in sentences."""

from __future__ import annotations

from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsFeature,
    QgsField,
    QgsFields,
    QgsGeometry,
    QgsPointXY,
    QgsWkbTypes,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.results.report import iso_time
from ..core.results.stream_day import StreamDay
from .plan_layers import FIELD_TYPES, output_crs, utc_qdatetime

COLUMNS = (
    ("time", "time"),
    ("time_local", "text"),
    ("set_deg", "number"),
    ("rate_kn", "number"),
    ("known", "text"),
    ("source", "text"),
    ("event", "text"),
)


def stream_fields() -> tuple[QgsWkbTypes.Type, QgsCoordinateReferenceSystem, QgsFields]:
    """Geometry type, reference system and fields of the layer."""
    fields = QgsFields()
    for name, kind in COLUMNS:
        fields.append(QgsField(name, FIELD_TYPES[kind]))
    return QgsWkbTypes.Type.Point, output_crs(), fields


def stream_features(day: StreamDay) -> list[QgsFeature]:
    """A feature for every row and for every slack and greatest rate, in order of time; NULL where not known."""
    rows = [(row.moment, row.set_deg, row.rate_kn, row.known, row.source, "") for row in day.rows]
    rows += [(event.moment, event.set_after_deg, event.rate_kn, "known", "", event.kind) for event in day.events]
    place = QgsGeometry.fromPointXY(QgsPointXY(day.lon, day.lat))
    _, _, fields = stream_fields()
    features = []
    for moment, *rest in sorted(rows, key=lambda row: row[0]):
        feature = QgsFeature(fields)
        feature.setGeometry(place)
        feature.setAttributes([utc_qdatetime(moment), iso_time(moment, where="stream"), *rest])
        features.append(feature)
    return features


def stream_sentences(day: StreamDay) -> list[str]:
    """The slacks, greatest rates and windows in words."""
    tr = QCoreApplication.translate
    words = {
        "slack": tr("Tideleg", "Slack"),
        "least": tr("Tideleg", "Least rate"),
        "greatest": tr("Tideleg", "Greatest rate"),
    }
    sentences = [f"{event.moment:%H:%M} {words[event.kind]}: {event.rate_kn:.1f} kn" for event in day.events]
    window = tr("Tideleg", "{} to {}: {} min at or below {} kn")
    return sentences + [
        window.format(f"{one.start:%H:%M}", f"{one.end:%H:%M}", f"{one.minutes:.0f}", f"{day.below_kn:g}")
        for one in day.windows
    ]
