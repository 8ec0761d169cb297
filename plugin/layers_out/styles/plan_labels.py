"""What is written on the chart beside the features of a plan: labels by layer name."""

from __future__ import annotations

from dataclasses import dataclass

from qgis.core import QgsPalLayerSettings, QgsTextBufferSettings, QgsTextFormat, QgsVectorLayerSimpleLabeling
from qgis.PyQt.QtGui import QColor

from .lettering import plain_letters
from .plan_symbols import CHANNEL_SLATE, CONTOUR_GREY, INK, ROUTE_GREY, RULE_BROWN, STREAM_GREEN

# Scale denominators: beyond them labels would cover the chart.
SOUNDINGS_TO_SCALE = 25_000.0
CONTOURS_TO_SCALE = 50_000.0
LANDMARKS_TO_SCALE = 50_000.0
POINT_GAP_MM = 1.2


@dataclass(frozen=True, kw_only=True)
class _Label:
    """One layer's label: QGIS expression, colour, size in points, placement and the widest scale it is shown at.

    `priority` (0 to 10) decides which of two labels stays where both have no room; `keep_clear` (0 to 2) is how much
    labels avoid the layer's features.
    """

    expression: str
    color: str
    size_pt: float = 8.0
    placement: str = "AroundPoint"
    to_scale: float = 0.0
    priority: int = 5
    keep_clear: float = 0.0


_LABELS = {
    "marks": _Label(expression='"name"', color=INK, size_pt=9.0, priority=10, keep_clear=2.0),
    "routes": _Label(expression='"name"', color=ROUTE_GREY, placement="Line", to_scale=CONTOURS_TO_SCALE, priority=3),
    "channels": _Label(expression='"name"', color=CHANNEL_SLATE, placement="Horizontal"),
    "closed_areas": _Label(expression='"name"', color=RULE_BROWN, placement="Horizontal"),
    "land": _Label(expression='"name"', color=INK, placement="Horizontal"),
    "depth_contours": _Label(
        expression='"depth_m"',
        color=CONTOUR_GREY,
        size_pt=7.0,
        placement="Line",
        to_scale=CONTOURS_TO_SCALE,
        priority=2,
    ),
    "soundings": _Label(
        expression='round("depth_m", 1)', color=CONTOUR_GREY, size_pt=7.0, to_scale=SOUNDINGS_TO_SCALE, priority=0
    ),
    "landmarks": _Label(expression='"name"', color=INK, to_scale=LANDMARKS_TO_SCALE, priority=4, keep_clear=1.0),
    "transits": _Label(
        expression='"front" || \' / \' || "rear"',
        color=ROUTE_GREY,
        size_pt=7.0,
        placement="Line",
        to_scale=CONTOURS_TO_SCALE,
        priority=3,
    ),
    "stream_stations": _Label(expression='"station"', color=STREAM_GREEN, priority=6, keep_clear=2.0),
    "stream_areas": _Label(expression='"station"', color=STREAM_GREEN, placement="Horizontal"),
}


def plan_labeling(layer_name: str) -> QgsVectorLayerSimpleLabeling | None:
    """New labels for a layer of the plan; None for a layer without and for a table."""
    label = _LABELS.get(layer_name)
    if label is None:
        return None
    settings = QgsPalLayerSettings()
    settings.fieldName = label.expression
    settings.isExpression = True
    settings.placement = getattr(QgsPalLayerSettings.Placement, label.placement)
    settings.setFormat(_format(label))
    settings.dist = POINT_GAP_MM if label.placement == "AroundPoint" else 0.0
    settings.priority = label.priority
    obstacle = settings.obstacleSettings()
    obstacle.setIsObstacle(label.keep_clear > 0.0)
    obstacle.setFactor(label.keep_clear)
    settings.setObstacleSettings(obstacle)
    if label.to_scale:
        settings.scaleVisibility = True
        settings.minimumScale = label.to_scale
        settings.maximumScale = 0.0
    return QgsVectorLayerSimpleLabeling(settings)


def _format(label: _Label) -> QgsTextFormat:
    text = plain_letters(label.size_pt, label.color)
    halo = QgsTextBufferSettings()
    halo.setEnabled(True)
    halo.setSize(0.8)
    halo.setColor(QColor("#ffffff"))
    text.setBuffer(halo)
    return text
