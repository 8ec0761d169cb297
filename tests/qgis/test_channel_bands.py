"""A channel drawn as a line is a band as wide as it is on the ground, on every map that says what its units are."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsExpressionContext,
    QgsExpressionContextUtils,
    QgsFeature,
    QgsMapRendererCustomPainterJob,
    QgsMapSettings,
    QgsProject,
    QgsRectangle,
    QgsVectorLayer,
)
from qgis.PyQt.QtCore import QSize, qInstallMessageHandler
from qgis.PyQt.QtGui import QColor, QImage, QPainter
from swims import line, moved
from tideleg.layers_out.styles.plan_symbols import plan_renderer

WIDTH_M, SIDE = 120.0, 400


@pytest.fixture()
def told() -> Iterator[list[str]]:
    """What Qt complains of."""
    found: list[str] = []
    before = qInstallMessageHandler(lambda _kind, _context, words: found.append(words))
    yield found
    qInstallMessageHandler(before)


def channel(width_m: float | None = WIDTH_M) -> QgsVectorLayer:
    layer = QgsVectorLayer("LineString?crs=EPSG:4326&field=kind:string&field=width_m:double", "Channels", "memory")
    row = QgsFeature(layer.fields())
    row.setGeometry(line(moved(0.0, -3000.0), moved(0.0, 3000.0)))
    row.setAttributes(["fairway", width_m])
    layer.dataProvider().addFeature(row)
    layer.setRenderer(plan_renderer("channels"))
    return layer


def drawn(layer: QgsVectorLayer, half_m: float, crs: str = "EPSG:4326") -> QImage:
    """A picture so many metres to each side of the channel's middle."""
    settings = QgsMapSettings()
    settings.setDestinationCrs(QgsCoordinateReferenceSystem(crs))
    settings.setOutputSize(QSize(SIDE, SIDE))
    settings.setLayers([layer])
    box = QgsRectangle(*moved(-half_m, -half_m), *moved(half_m, half_m))
    if crs:
        degrees = QgsCoordinateReferenceSystem("EPSG:4326")
        box = QgsCoordinateTransform(degrees, settings.destinationCrs(), QgsProject.instance()).transformBoundingBox(
            box
        )
    settings.setExtent(box)
    context = QgsExpressionContext()  # as a canvas and a layout have it
    context.appendScopes(
        [QgsExpressionContextUtils.globalScope(), QgsExpressionContextUtils.mapSettingsScope(settings)]
    )
    settings.setExpressionContext(context)
    image = QImage(SIDE, SIDE, QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    painter = QPainter(image)
    job = QgsMapRendererCustomPainterJob(settings, painter)
    job.start()
    job.waitForFinished()
    painter.end()
    return image


def inked(image: QImage) -> int:
    """The most pixels of a row that are not paper: the line in the middle is dashed."""
    white = QColor("white").rgb()
    return max(sum(image.pixel(x, y) != white for x in range(SIDE)) for y in range(0, SIDE, 5))


def test_the_band_is_as_wide_as_the_channel(qgis_app, told) -> None:
    image = drawn(channel(), 200.0, "EPSG:32628")
    per_m = SIDE / 400.0
    assert inked(image) == pytest.approx(WIDTH_M * per_m, abs=4.0) and not told
    assert 0 < inked(drawn(channel(None), 200.0, "EPSG:32628")) < 8


@pytest.mark.parametrize("crs", ["EPSG:4326", "EPSG:32628"])
def test_however_near_one_looks_the_band_fills_the_map_and_qt_draws_it(qgis_app, told, crs: str) -> None:
    for half_m in (30.0, 1.0, 0.1):
        assert inked(drawn(channel(), half_m, crs)) == SIDE
    assert not told


def test_on_a_map_without_a_crs_there_is_the_line_alone(qgis_app, told) -> None:
    assert 0 < inked(drawn(channel(), 2000.0, "")) < 8 and not told
