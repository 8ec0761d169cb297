"""The result layers in real files, whatever zone the machine is in, and as drawn."""

import os
import re
import subprocess
import sys
from dataclasses import replace
from datetime import datetime, timedelta, timezone

import numpy as np
import pytest
from plans import make_plan
from qgis.core import (
    NULL,
    QgsCoordinateTransformContext,
    QgsDateTimeRange,
    QgsFeatureRequest,
    QgsGeometry,
    QgsMapRendererParallelJob,
    QgsMapSettings,
    QgsProject,
    QgsRectangle,
    QgsVectorFileWriter,
    QgsVectorLayer,
    QgsVectorLayerTemporalContext,
    QgsWkbTypes,
)
from qgis.PyQt.QtCore import QSize, Qt
from qgis.PyQt.QtGui import QColor, QImage
from tideleg.core.results.flag import Flag
from tideleg.layers_out.plan_layers import FLAGS, LEGS, OUTPUT_LAYERS, STOPS, TRACK, output_crs, utc_qdatetime
from tideleg.layers_out.styling import STYLES, ResultStyler

AWKWARD = make_plan(legs=4, unswimmable=(3,))


def written(plan, output, path, driver="GPKG"):
    options = QgsVectorFileWriter.SaveVectorOptions()
    options.driverName = driver
    writer = QgsVectorFileWriter.create(
        str(path), output.fields(), output.wkb_type, output_crs(), QgsCoordinateTransformContext(), options
    )
    for feature in output.features(plan):
        assert writer.addFeature(feature), writer.errorMessage()
    del writer
    layer = QgsVectorLayer(str(path), output.parameter, "ogr")
    assert layer.isValid()
    return layer


def known(value):
    """The value, None for QGIS's NULL."""
    return None if value == NULL else value


def in_memory(plan, output):
    kind = QgsWkbTypes.displayString(output.wkb_type)
    layer = QgsVectorLayer(f"{kind}?crs=EPSG:4326", output.parameter, "memory")
    layer.dataProvider().addAttributes(list(output.fields()))
    layer.updateFields()
    assert layer.dataProvider().addFeatures(output.features(plan))[0]
    layer.updateExtents()
    return layer


@pytest.mark.parametrize("output", OUTPUT_LAYERS, ids=lambda output: output.parameter)
def test_a_layer_survives_a_geopackage_whole(output, tmp_path):
    layer = written(AWKWARD, output, tmp_path / "out.gpkg")
    made = output.features(AWKWARD)
    read = list(layer.getFeatures())
    assert layer.wkbType() == output.wkb_type and len(read) == len(made) > 0
    for before, after in zip(made, read):
        assert after.geometry().asWkt(7) == before.geometry().asWkt(7)
        for name, kind in output.columns:
            if kind != "time":
                assert known(after[name]) == known(before[name]), name


def test_every_field_of_every_layer_is_filled_from_the_plan():
    leg = AWKWARD.legs[0]
    feature = LEGS.features(AWKWARD)[0]
    for name in ("number", "end_name", "distance_m", "heading_mag_deg", "card_heading", "minutes", "stream_kn"):
        assert feature[name] == getattr(leg, name)
    assert feature["feasible"] == 1 and feature["depart_local"] == "2027-06-05T09:40:00+00:00"
    assert LEGS.features(AWKWARD)[2]["feasible"] == 0 and "Across" in LEGS.features(AWKWARD)[2]["reason"]
    assert known(LEGS.features(AWKWARD)[2]["minutes"]) is None


def test_the_track_is_the_path_swum_and_carries_its_times():
    features = TRACK.features(AWKWARD)
    assert [feature["leg"] for feature in features] == [1, 2]  # the third leg cannot be swum, the fourth is not reached
    leg = AWKWARD.legs[0]
    line = features[0].geometry().constGet()
    assert line.numPoints() == len(leg.track)
    assert line.pointN(20).m() == pytest.approx(leg.arrive.timestamp(), abs=1e-3)
    assert (line.pointN(10).x(), line.pointN(10).y()) == (leg.track[10].lon, leg.track[10].lat)


def test_flags_are_points_half_way_with_their_stretch_beside_them():
    features = FLAGS.features(AWKWARD)
    assert [feature["kind"] for feature in features] == ["channel", "uncalibrated", "closed_area"]
    stretch = QgsGeometry.fromWkt(features[0]["stretch_wkt"])
    assert stretch.distance(features[0].geometry()) < 1e-7
    assert known(features[1]["stretch_wkt"]) is None


def test_a_swim_over_the_date_line_is_not_drawn_round_the_world():
    plan = make_plan(lon=179.999, lat=-19.0, zone="Pacific/Auckland")
    for output in (LEGS, TRACK):
        for feature in output.features(plan):
            assert feature.geometry().boundingBox().width() < 0.02


def test_a_flag_that_is_one_place_twice_has_no_stretch():
    flag = Flag(kind="shallow", severity="warn", message="Shoal.", points=((1.0, 2.0), (1.0, 2.0)))
    feature = FLAGS.features(make_plan(flags=(flag,)))[0]
    assert known(feature["stretch_wkt"]) is None and feature.geometry().asPoint().x() == 1.0


def test_stops_are_numbered_from_the_entry():
    features = STOPS.features(AWKWARD)
    assert [feature["number"] for feature in features] == [0, 1, 2, 3, 4]
    assert features[0]["kind"] == "entry" and features[-1]["kind"] == "exit"
    assert known(features[0]["arrive"]) is None and features[1]["depth_now_m"] == 10.2


def test_a_moment_becomes_the_same_moment_in_utc():
    moment = datetime.fromisoformat("2027-06-05T09:40:00.600+12:00")
    there = utc_qdatetime(moment)
    assert there.timeSpec() == Qt.TimeSpec.UTC
    assert there.toSecsSinceEpoch() == round(moment.timestamp())
    assert utc_qdatetime(None) is None


SCRIPT = """
import sys
sys.path[:0] = sys.argv[2:]
from qgis.core import QgsApplication
application = QgsApplication([], False)
application.initQgis()
from pathlib import Path
from plans import make_plan
from test_plan_layers import written
from tideleg.layers_out.plan_layers import LEGS
written(make_plan(zone="Pacific/Auckland"), LEGS, Path(sys.argv[1]))
"""


@pytest.mark.parametrize("zone", ["UTC", "Pacific/Auckland", "America/St_Johns"])
def test_times_do_not_shift_with_the_zone_of_the_machine(zone, tmp_path):
    ogr = pytest.importorskip("osgeo.ogr")
    path = tmp_path / "legs.gpkg"
    here = os.path.dirname(__file__)
    folders = [os.path.join(here, "..", "..", ".cache", "python"), os.path.join(here, ".."), here]
    environment = {**os.environ, "TZ": zone, "QT_QPA_PLATFORM": "offscreen"}
    done = subprocess.run([sys.executable, "-c", SCRIPT, str(path), *folders], env=environment, capture_output=True)
    assert done.returncode == 0, done.stderr.decode()
    source = ogr.Open(str(path))
    feature = source.GetLayer(0).GetNextFeature()
    year, month, day, hour, minute, second, flag = feature.GetFieldAsDateTime("depart")
    assert (year, month, day, hour, minute, second) == (2027, 6, 4, 21, 40, 0.0)
    assert flag in (0, 100)  # GDAL: unknown, or UTC; never a local zone
    assert feature.GetField("depart_local") == "2027-06-05T09:40:00+12:00"
    arrive = make_plan(zone="Pacific/Auckland").legs[0].arrive.astimezone(timezone.utc)
    assert abs(feature.GetFieldAsDateTime("arrive")[4] - arrive.minute) <= 1


def test_long_texts_are_not_cut_in_a_geopackage(tmp_path):
    message = "Mind " + "the gap, " * 100
    flag = Flag(kind="channel", severity="warn", message=message, points=tuple((i / 1e4, 0.0) for i in range(200)))
    feature = next(written(make_plan(flags=(flag,)), FLAGS, tmp_path / "flags.gpkg").getFeatures())
    assert feature["message"] == message
    assert QgsGeometry.fromWkt(feature["stretch_wkt"]).constGet().numPoints() == 200


def drawn(layer, extent=None):
    settings = QgsMapSettings()
    settings.setLayers([layer])
    settings.setDestinationCrs(layer.crs())
    settings.setBackgroundColor(QColor("white"))
    settings.setOutputSize(QSize(500, 500))
    box = QgsRectangle(extent or layer.extent())
    box.grow(0.002)
    settings.setExtent(box)
    job = QgsMapRendererParallelJob(settings)
    job.start()
    job.waitForFinished()
    image = job.renderedImage().convertToFormat(QImage.Format.Format_RGB32)
    raw = image.constBits().asarray(image.sizeInBytes())
    return np.array(raw, dtype=np.uint8).reshape(image.height(), image.width(), 4)[:, :, :3].astype(int)


@pytest.mark.parametrize("output", OUTPUT_LAYERS, ids=lambda output: output.parameter)
def test_a_styled_layer_draws_something(output, qgis_app):
    layer = in_memory(AWKWARD, output)
    ResultStyler(output.parameter).postProcessLayer(layer, None, None)
    assert (drawn(layer) < 128).any(axis=2).sum() > 100


def test_severities_differ_in_shape_even_in_grey(qgis_app):
    ink, centre = [], []
    for severity in ("stop", "warn", "note"):
        flag = Flag(kind="land", severity=severity, message="x", points=((0.0, 0.0),))
        layer = in_memory(make_plan(flags=(flag,)), FLAGS)
        STYLES["FLAGS"](layer)
        grey = drawn(layer).mean(axis=2)
        ink.append((grey < 200).sum())
        centre.append(grey[250, 250])
    assert ink[0] > 1.2 * ink[1] > 1.2 * ink[2] > 0
    assert centre[0] < 128 and centre[1] > 250 and centre[2] > 250


def test_the_stretch_of_a_flag_is_drawn(qgis_app):
    points = ((0.0, 0.0), (0.004, 0.0))
    ink = []
    for chosen in (points, points[:1] * 2):
        flag = Flag(kind="channel", severity="stop", message="x", points=chosen)
        layer = in_memory(make_plan(flags=(flag,)), FLAGS)
        STYLES["FLAGS"](layer)
        ink.append((drawn(layer, QgsRectangle(-0.001, -0.003, 0.005, 0.003)).mean(axis=2) < 200).sum())
    assert ink[0] > ink[1] * 2


@pytest.mark.parametrize(("size", "all_of_them"), [(150, False), (500, True)])
def test_labels_of_legs_never_lie_over_each_other(qgis_app, size, all_of_them):
    layer = in_memory(make_plan(legs=20), LEGS)
    STYLES["LEGS"](layer)
    settings = QgsMapSettings()
    settings.setLayers([layer])
    settings.setDestinationCrs(layer.crs())
    settings.setExtent(layer.extent())
    settings.setOutputSize(QSize(size, size))
    job = QgsMapRendererParallelJob(settings)
    job.start()
    job.waitForFinished()
    shown = job.takeLabelingResults().allLabels()
    assert shown and (len(shown) == 20) == all_of_them
    boxes = [label.labelRect for label in shown]
    assert not any(one.intersects(other) for number, one in enumerate(boxes) for other in boxes[:number])


def test_legs_are_labelled_with_heading_and_minutes(qgis_app):
    from qgis.core import QgsExpression, QgsExpressionContext

    layer = in_memory(AWKWARD, LEGS)
    STYLES["LEGS"](layer)
    expression = QgsExpression(layer.labeling().settings().fieldName)
    labels = []
    for feature in layer.getFeatures():
        context = QgsExpressionContext()
        context.setFeature(feature)
        context.setFields(layer.fields())
        labels.append(expression.evaluate(context))
    first = AWKWARD.legs[0]
    assert labels[0] == f"1: {first.card_heading}  {int(np.ceil(first.minutes))} min"
    assert labels[2] == "3: not swimmable"


@pytest.mark.parametrize("output", OUTPUT_LAYERS, ids=lambda output: output.parameter)
def test_the_style_of_a_result_names_its_letters(output, qgis_app):
    from qgis.PyQt.QtXml import QDomDocument

    layer = in_memory(AWKWARD, output)
    STYLES[output.parameter](layer)
    document = QDomDocument("qgis")
    assert not layer.exportNamedStyle(document)
    families = re.findall(r'fontFamily="([^"]*)"', document.toString(), re.IGNORECASE)
    assert set(families) == ({"Sans Serif"} if layer.labelsEnabled() else set())


def test_a_leg_that_cannot_be_swum_is_not_labelled_with_the_heading_it_would_need(qgis_app):
    from qgis.core import QgsExpression, QgsExpressionContext

    slow = replace(AWKWARD.legs[1], feasible=False, reason="the stream is faster")
    layer = in_memory(replace(AWKWARD, legs=(AWKWARD.legs[0], slow)), LEGS)
    STYLES["LEGS"](layer)
    context = QgsExpressionContext()
    context.setFields(layer.fields())
    context.setFeature(list(layer.getFeatures())[1])
    assert slow.card_heading and slow.minutes
    assert QgsExpression(layer.labeling().settings().fieldName).evaluate(context) == "2: not swimmable"


def test_the_track_of_a_leg_that_cannot_be_swum_is_thin_dots(qgis_app):
    slow = replace(AWKWARD.legs[0], feasible=False, reason="the stream is faster")
    ink = []
    for leg in (AWKWARD.legs[0], slow):
        layer = in_memory(replace(AWKWARD, legs=(leg,)), TRACK)
        STYLES["TRACK"](layer)
        ink.append((drawn(layer).mean(axis=2) < 128).sum())
    assert ink[0] > 3 * ink[1] > 0


def test_the_track_follows_the_temporal_controller(qgis_app):
    layer = in_memory(AWKWARD, TRACK)
    STYLES["TRACK"](layer)
    times = layer.temporalProperties()
    assert times.isActive() and (times.startField(), times.endField()) == ("begin", "end")
    context = QgsVectorLayerTemporalContext()
    context.setLayer(layer)
    inside = AWKWARD.legs[1].depart.replace(tzinfo=timezone.utc)  # the Azores keep UTC in June
    span = QgsDateTimeRange(utc_qdatetime(inside), utc_qdatetime(inside + timedelta(minutes=1)))
    seen = layer.getFeatures(QgsFeatureRequest().setFilterExpression(times.createFilterString(context, span)))
    assert [feature["leg"] for feature in seen] == [2]


def test_a_style_survives_the_project(tmp_path, qgis_app):
    layer = written(AWKWARD, FLAGS, tmp_path / "flags.gpkg")
    STYLES["FLAGS"](layer)
    project = QgsProject()
    project.addMapLayer(layer)
    assert project.write(str(tmp_path / "p.qgz"))
    again = QgsProject()
    assert again.read(str(tmp_path / "p.qgz"))
    renderer = list(again.mapLayers().values())[0].renderer()
    assert renderer.classAttribute() == "severity" and len(renderer.categories()) == 3
