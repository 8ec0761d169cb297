"""Opened in QGIS, a layer of a plan brings its form, its checks and a look that needs no colour."""

from __future__ import annotations

import itertools
import re
import shutil
import sqlite3
from collections.abc import Iterator
from pathlib import Path

import pytest
from qgis.core import (
    QgsExpression,
    QgsExpressionContext,
    QgsExpressionContextUtils,
    QgsFeature,
    QgsFieldConstraints,
    QgsGeometry,
    QgsMapRendererCustomPainterJob,
    QgsMapSettings,
    QgsRectangle,
    QgsVectorLayer,
    QgsVectorLayerUtils,
)
from qgis.PyQt.QtCore import QSize
from qgis.PyQt.QtGui import QColor, QImage, QPainter
from tideleg.plan_package.field_spec import FieldSpec, LayerSpec
from tideleg.plan_package.schema import LAYER_BY_NAME, LAYERS
from tideleg.plan_package.store import append_rows, create_plan

POINT = "Point (0.5 0.5)"
LINE = "LineString (0.1 0.2, 0.9 0.8)"
AREA = "Polygon ((0.1 0.1, 0.9 0.1, 0.9 0.9, 0.1 0.9, 0.1 0.1))"
HARD = QgsFieldConstraints.ConstraintStrength.ConstraintStrengthHard
NOT_NULL = QgsFieldConstraints.Constraint.ConstraintNotNull
EXPRESSION = QgsFieldConstraints.Constraint.ConstraintExpression
WIDE = {"LineString": LINE, "Polygon": AREA, "Point": POINT}


@pytest.fixture(scope="module")
def plan(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return create_plan(tmp_path_factory.mktemp("forms") / "bay.gpkg")


def fresh(plan: Path, spec: LayerSpec, geometry_type: str = "") -> QgsVectorLayer:
    """The layer as QGIS opens it from the browser: no help from the plugin."""
    part = f"|geometrytype={geometry_type}" if geometry_type else ""
    layer = QgsVectorLayer(f"{plan}|layername={spec.name}{part}", "fresh", "ogr")
    assert layer.isValid()
    return layer


def hard(layer: QgsVectorLayer, field: FieldSpec, constraint: QgsFieldConstraints.Constraint) -> bool:
    held = layer.fields().field(field.name).constraints()
    return bool(held.constraints() & constraint) and held.constraintStrength(constraint) == HARD


def every_field() -> Iterator[tuple[LayerSpec, FieldSpec]]:
    for spec in LAYERS:
        for field in spec.fields:
            yield spec, field


def ways_to_open() -> list[tuple[str, str]]:
    opened = [(spec.name, "") for spec in LAYERS]
    return [*opened, ("channels", "LineString"), ("channels", "Polygon")]


@pytest.mark.parametrize(("name", "geometry_type"), ways_to_open())
def test_form_comes_with_the_layer(plan: Path, name: str, geometry_type: str) -> None:
    spec = LAYER_BY_NAME[name]
    layer = fresh(plan, spec, geometry_type)
    kinds = {"text": "TextEdit", "integer": "Range", "real": "Range", "datetime": "DateTime"}
    for field in spec.fields:
        index = layer.fields().lookupField(field.name)
        assert layer.attributeAlias(index) == field.alias
        setup = layer.editorWidgetSetup(index)
        assert setup.type() == ("ValueMap" if field.choices else kinds[field.kind])
        assert hard(layer, field, NOT_NULL) == field.required, field.name
        if field.is_number:
            assert (setup.config()["Min"], setup.config()["Max"]) == (field.minimum, field.maximum)
    assert layer.editorWidgetSetup(layer.fields().lookupField("fid")).type() == "Hidden"


def test_value_map_offers_each_value_by_its_words(plan: Path) -> None:
    layer = fresh(plan, LAYER_BY_NAME["closed_areas"])
    choices = layer.editorWidgetSetup(layer.fields().lookupField("rule")).config()["map"]
    assert [next(iter(choice.items())) for choice in choices] == [
        ("No entry", "no_entry"),
        ("No spearing", "no_spearing"),
        ("No anchoring", "no_anchoring"),
        ("No loaded gun", "loaded_gun_ban"),
        ("Caution", "caution"),
    ]


def test_form_shows_every_field_once_and_groups_the_long_ones(plan: Path) -> None:
    for spec in LAYERS:
        config = fresh(plan, spec).editFormConfig()  # kept: QGIS frees the elements with it
        root = config.invisibleRootContainer()
        shown, boxes = [], []
        for child in root.children():
            inside = child.children() if hasattr(child, "children") else [child]
            boxes += [child.name()] if hasattr(child, "children") else []
            shown += [element.name() for element in inside]
        assert sorted(shown) == sorted(field.name for field in spec.fields)
        assert boxes == list(dict.fromkeys(field.group for field in spec.fields if field.group))


def test_new_row_in_the_form_starts_from_the_defaults(plan: Path) -> None:
    layer = fresh(plan, LAYER_BY_NAME["swimmers"])
    feature = QgsVectorLayerUtils.createFeature(layer, QgsGeometry(), {}, layer.createExpressionContext())
    assert (feature["pace_m_s"], feature["path_factor"], feature["line_m"]) == (0.5, 1.1, 30.0)
    marks = fresh(plan, LAYER_BY_NAME["marks"])
    mark = QgsVectorLayerUtils.createFeature(marks, QgsGeometry(), {}, marks.createExpressionContext())
    assert mark["kind"] == "mark"


def passes(layer: QgsVectorLayer, field: FieldSpec, value: object) -> bool:
    index = layer.fields().lookupField(field.name)
    feature = QgsFeature(layer.fields())
    feature[field.name] = value
    context = QgsExpressionContext(QgsExpressionContextUtils.globalProjectLayerScopes(layer))
    context.setFeature(feature)
    expression = QgsExpression(layer.constraintExpression(index))
    verdict = bool(expression.evaluate(context))
    assert not expression.hasEvalError(), expression.evalErrorString()
    return verdict


def test_form_refuses_what_the_schema_refuses(plan: Path) -> None:
    checked = 0
    for spec, field in every_field():
        if not field.is_number:
            continue
        layer = fresh(plan, spec)
        index = layer.fields().lookupField(field.name)
        assert hard(layer, field, EXPRESSION)
        assert field.allowed_words() in layer.constraintDescription(index)
        assert passes(layer, field, field.maximum)
        assert passes(layer, field, field.minimum) is not field.above_minimum
        assert not passes(layer, field, field.minimum - 1)
        assert not passes(layer, field, field.maximum + 1)
        checked += 1
    assert checked > 30


@pytest.mark.parametrize(
    ("layer_name", "field_name", "good", "bad"),
    [
        ("marks", "kind", ["entry", "waypoint"], ["Entry", "beach"]),
        ("closed_areas", "from_time", ["06:30", "2027-06-05", "--1031", "2027-06-05T06:30+01:00"], ["6:30", "--1332"]),
        ("closed_areas", "checked_on", ["2027-06-05"], ["05.06.2027", "2027-06-05T10:00"]),
        ("ferries", "time", ["10:05", "2027-06-05 10:05"], ["2027-06-05", "24:00"]),
    ],
)
def test_form_checks_texts_with_a_form(
    plan: Path, layer_name: str, field_name: str, good: list[str], bad: list[str]
) -> None:
    spec = LAYER_BY_NAME[layer_name]
    layer = fresh(plan, spec)
    field = spec.field(field_name)
    assert [value for value in good if not passes(layer, field, value)] == []
    assert [value for value in bad if passes(layer, field, value)] == []


def grey_symbol(symbol) -> bytes:
    image = QImage(QSize(96, 96), QImage.Format.Format_ARGB32_Premultiplied)
    image.fill(QColor("white"))
    painter = QPainter(image)
    painter.drawImage(0, 0, symbol.asImage(QSize(96, 96)))
    painter.end()
    grey = image.convertToFormat(QImage.Format.Format_Grayscale8)
    bits = grey.constBits()
    bits.setsize(grey.sizeInBytes())
    return bytes(bits)


def different_share(one: bytes, other: bytes) -> float:
    return sum(abs(a - b) > 60 for a, b in zip(one, other)) / len(one)


@pytest.mark.parametrize(("layer_name", "field_name"), [("closed_areas", "rule"), ("marks", "kind")])
def test_kinds_are_told_apart_without_colour(plan: Path, layer_name: str, field_name: str) -> None:
    layer = fresh(plan, LAYER_BY_NAME[layer_name])  # kept: QGIS frees the renderer with its layer
    renderer = layer.renderer()
    assert renderer.classAttribute() == field_name
    symbols = {category.value(): grey_symbol(category.symbol()) for category in renderer.categories()}
    allowed = LAYER_BY_NAME[layer_name].field(field_name).allowed
    assert set(allowed) <= set(symbols)
    for one, other in itertools.combinations(allowed, 2):
        assert different_share(symbols[one], symbols[other]) > 0.002, (one, other)


def drawn_pixels(layer: QgsVectorLayer) -> int:
    settings = QgsMapSettings()
    settings.setLayers([layer])
    settings.setDestinationCrs(layer.crs())
    settings.setExtent(QgsRectangle(0, 0, 1, 1))
    settings.setOutputSize(QSize(200, 200))
    settings.setFlag(QgsMapSettings.Flag.DrawLabeling, False)
    image = QImage(QSize(200, 200), QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    painter = QPainter(image)
    job = QgsMapRendererCustomPainterJob(settings, painter)
    job.start()
    job.waitForFinished()
    painter.end()
    white = QColor("white").rgb()
    return sum(image.pixel(x, y) != white for x in range(200) for y in range(200))


MAP_ROWS = [("marks", POINT, {"name": "A", "kind": kind}) for kind in LAYER_BY_NAME["marks"].field("kind").allowed] + [
    ("routes", LINE, {"name": "A"}),
    ("land", AREA, {}),
    ("depth_contours", LINE, {"depth_m": 5}),
    ("stream_stations", POINT, {"station": "A"}),
    ("stream_areas", AREA, {"station": "A"}),
    ("sessions", POINT, {"name": "A", "started": "2027-06-05T12:00Z"}),
]
MAP_ROWS += [("closed_areas", AREA, {"rule": rule}) for rule in LAYER_BY_NAME["closed_areas"].field("rule").allowed]
MAP_ROWS += [
    ("channels", wkt, {"kind": kind})
    for kind in LAYER_BY_NAME["channels"].field("kind").allowed
    for wkt in (LINE, AREA)
]


@pytest.mark.parametrize(("name", "wkt", "values"), MAP_ROWS)
def test_every_kind_of_feature_is_seen_on_the_map(
    plan: Path, tmp_path: Path, name: str, wkt: str, values: dict
) -> None:
    plan = Path(shutil.copy(plan, tmp_path / "bay.gpkg"))
    append_rows(plan, name, [(QgsGeometry.fromWkt(wkt), values)])
    assert drawn_pixels(fresh(plan, LAYER_BY_NAME[name])) > 20


@pytest.mark.parametrize(
    ("name", "field", "wkt"), [("marks", "kind", POINT), ("closed_areas", "rule", AREA), ("channels", "kind", LINE)]
)
def test_feature_of_a_foreign_kind_is_still_seen(plan: Path, tmp_path: Path, name: str, field: str, wkt: str) -> None:
    plan = Path(shutil.copy(plan, tmp_path / "bay.gpkg"))
    geometry_type = "LineString" if name == "channels" else ""
    layer = fresh(plan, LAYER_BY_NAME[name], geometry_type)
    feature = QgsFeature(layer.fields())
    feature.setGeometry(QgsGeometry.fromWkt(wkt))
    for text, value in (("name", "A"), (field, "something else")):
        feature[text] = value
    stored, _features = layer.dataProvider().addFeatures([feature])
    assert stored
    assert drawn_pixels(fresh(plan, LAYER_BY_NAME[name], geometry_type)) > 5


def test_channel_kinds_have_dashes_of_their_own(plan: Path) -> None:
    for geometry_type in ("LineString", "Polygon"):
        layer = fresh(plan, LAYER_BY_NAME["channels"], geometry_type)
        rules = layer.renderer().rootRule().children()
        for shape in ("Line", "Polygon"):
            dashes = [
                tuple(rule.symbol().symbolLayer(rule.symbol().symbolLayerCount() - 1).customDashVector())
                for rule in rules
                if f"= '{shape}'" in rule.filterExpression()
            ]
            assert len(dashes) == len(set(dashes)) == 5


def test_channel_drawn_as_a_line_shows_its_width(plan: Path, tmp_path: Path) -> None:
    inked = []
    for width_m in (None, 2_000.0, 10_000.0):
        copy = Path(shutil.copy(plan, tmp_path / "bay.gpkg"))
        append_rows(copy, "channels", [(QgsGeometry.fromWkt(LINE), {"kind": "lane", "width_m": width_m})])
        inked.append(drawn_pixels(fresh(copy, LAYER_BY_NAME["channels"], "LineString")))
    # The picture is a degree (about 111 km) over 200 pixels: 10 km are 18 pixels across a line 198 pixels long.
    assert inked[0] < inked[1] < inked[2]
    assert 198 * 18 * 0.9 < inked[2] < 198 * 18 * 1.15


def test_every_stored_label_names_its_letters(plan: Path) -> None:
    with sqlite3.connect(plan) as package:
        styles = dict(package.execute("SELECT f_table_name || ' ' || styleName, styleQML FROM layer_styles"))
    families = {name: re.findall(r'fontFamily="([^"]*)"', qml, re.IGNORECASE) for name, qml in styles.items()}
    assert sum(len(found) for found in families.values()) >= 9
    # Neither nothing, which some machines read as symbols, nor a family that only the maker's machine has.
    assert {family for found in families.values() for family in found} == {"Sans Serif"}


def test_names_are_written_and_soundings_only_close_up(plan: Path) -> None:
    labelled = {spec.name for spec in LAYERS if spec.has_geometry and spec.name != "sessions"}
    for name in labelled:
        geometry_type = "LineString" if name == "channels" else ""
        assert fresh(plan, LAYER_BY_NAME[name], geometry_type).labelsEnabled(), name
    soundings = fresh(plan, LAYER_BY_NAME["soundings"])
    settings = soundings.labeling().settings()
    assert (settings.scaleVisibility, settings.minimumScale) == (True, 25_000.0)
    assert soundings.isInScaleRange(10_000.0)
    assert not soundings.isInScaleRange(200_000.0)


def test_name_of_a_mark_wins_the_room_over_a_sounding(plan: Path) -> None:
    marks, soundings = fresh(plan, LAYER_BY_NAME["marks"]), fresh(plan, LAYER_BY_NAME["soundings"])
    assert marks.labeling().settings().priority == 10
    assert soundings.labeling().settings().priority == 0
    assert marks.labeling().settings().obstacleSettings().factor() == 2.0
    assert not soundings.labeling().settings().obstacleSettings().isObstacle()
