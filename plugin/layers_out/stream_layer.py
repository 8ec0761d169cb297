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

from ..core.results.card import clock_down, clock_nearest, clock_up
from ..core.results.plain_values import iso_time
from ..core.results.stream_day import StreamDay, StreamEvent
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
    """What is not known, then the slacks, greatest rates and windows, in words."""
    tr = QCoreApplication.translate
    words = {
        "slack": tr("Tideleg", "Slack"),
        "least": tr("Tideleg", "Least rate"),
        "greatest": tr("Tideleg", "Greatest rate"),
    }
    window = tr("Tideleg", "{} to {}: {} min at or below {} kn")
    return [
        *_doubts(day),
        *(
            f"{clock_nearest(event.moment)} {words[event.kind]}: {event.rate_kn:.1f} kn{_towards(event)}"
            for event in day.events
        ),
        *(
            window.format(clock_up(one.start), clock_down(one.end), f"{one.minutes:.0f}", f"{day.below_kn:g}")
            for one in day.windows
        ),
    ]


def _doubts(day: StreamDay) -> list[str]:
    """How much of the day is unknown or extrapolated."""
    tr = QCoreApplication.translate
    found = {word: sum(row.known == word for row in day.rows) for word in ("unknown", "extrapolated")}
    if found["unknown"] == len(day.rows):
        return [tr("Tideleg", "The stream is not known here on that day: look at stations, tides and their dates.")]
    doubts = []
    if found["unknown"]:
        doubts.append(tr("Tideleg", "Not known at {} of {} times.").format(found["unknown"], len(day.rows)))
    if found["extrapolated"]:
        words = tr("Tideleg", "Extrapolated at {} of {} times: allow for more stream.")
        doubts.append(words.format(found["extrapolated"], len(day.rows)))
    return doubts


def _towards(event: StreamEvent) -> str:
    """Where the stream sets afterwards, or at its greatest, true."""
    return "" if event.set_after_deg is None else f", sets {event.set_after_deg:03.0f}"
