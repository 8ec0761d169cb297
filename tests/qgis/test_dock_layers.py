"""What the map shows of a swim: where arrows point in any projection, what is written where, and whose result it is."""

from __future__ import annotations

import os
from collections.abc import Iterator
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import numpy as np
import pytest
from desk import Desk, desk_with_dock, group_names, layer_of, opened, settle, wait_for
from plans import make_plan
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsExpression,
    QgsExpressionContext,
    QgsExpressionContextUtils,
    QgsGeometry,
    QgsMapRendererParallelJob,
    QgsMapSettings,
    QgsPointXY,
    QgsProject,
    QgsRectangle,
    QgsVectorLayer,
)
from qgis.PyQt.QtCore import QSize
from qgis.PyQt.QtGui import QColor, QImage
from swims import DAY, invented_bay, moved, offset
from tideleg.core.results.swim_in_time import StreamHere, SwimInTime, SwimMoment
from tideleg.dock.dock import TidelegDock
from tideleg.dock.result_layers import SHOWN, _fill_one, _made
from tideleg.layers_out.plan_layers import FLAGS, LEGS, TRACK, output_crs, utc_qdatetime
from tideleg.layers_out.time_layers import STREAM_ALONG, SWIMMER

PLAN = make_plan(legs=4)
UNTIL = PLAN.depart + timedelta(minutes=1)
PIXELS = 400
PLACE = (-28.5, 60.0)


def reading(*, set_deg: float | None, rate_kn: float | None, place: tuple[float, float] = PLACE) -> StreamHere:
    known = "unknown" if rate_kn is None else "known"
    about = {"moment": PLAN.depart, "begin": PLAN.depart, "end": UNTIL, "known": known, "leg": 1}
    return StreamHere(lon=place[0], lat=place[1], set_deg=set_deg, rate_kn=rate_kn, **about)


def in_time(*along: StreamHere) -> SwimInTime:
    minute = SwimMoment(
        moment=PLAN.depart,
        end=UNTIL,
        lon=along[0].lon,
        lat=along[0].lat,
        leg=1,
        place="Ledge",
        is_stay=False,
        can_be_swum=True,
        heading_mag_deg=45.0,
        stream=along[0],
        tide_m=1.24,
        tide_rises=True,
        depth_m=None,
    )
    about = {"zone": "UTC", "datum": "datum", "heading_step_deg": 5.0}
    return SwimInTime(minutes=(minute,), along=along, around=(), **about)


def drawn(layer: QgsVectorLayer, crs: str = "EPSG:4326", turned_deg: float = 0.0) -> np.ndarray:
    """Grey values (rows, columns) of the layer drawn round the place in any reference system."""
    settings = QgsMapSettings()
    settings.setLayers([layer])
    settings.setDestinationCrs(QgsCoordinateReferenceSystem(crs))
    settings.setBackgroundColor(QColor("white"))
    settings.setOutputSize(QSize(PIXELS, PIXELS))
    corners = [QgsPointXY(*offset(bearing, 400.0, *PLACE)) for bearing in (0.0, 90.0, 180.0, 270.0)]
    box = QgsGeometry.fromMultiPointXY(corners)
    box.transform(QgsCoordinateTransform(output_crs(), settings.destinationCrs(), QgsProject.instance()))
    settings.setExtent(box.boundingBox())
    settings.setRotation(turned_deg)
    context = QgsExpressionContext()
    context.appendScope(QgsExpressionContextUtils.mapSettingsScope(settings))
    settings.setExpressionContext(context)
    job = QgsMapRendererParallelJob(settings)
    job.start()
    job.waitForFinished()
    return grey(job.renderedImage())


def grey(image: QImage) -> np.ndarray:
    image = image.convertToFormat(QImage.Format.Format_Grayscale8)
    raw = np.frombuffer(image.constBits().asarray(image.sizeInBytes()), dtype=np.uint8)
    return raw.reshape(image.height(), image.bytesPerLine())[:, : image.width()].astype(int)


def arrow_layer(*along: StreamHere) -> QgsVectorLayer:
    layer = _made(STREAM_ALONG)
    _fill_one(layer, STREAM_ALONG, in_time(*along))
    layer.setLabelsEnabled(False)
    return layer


def points_to_deg(image: np.ndarray) -> float:
    """Where an arrow whose tail is in the middle points, clockwise from up, by the middle of its ink."""
    rows, columns = np.nonzero(image < 128)
    middle = (PIXELS - 1) / 2.0
    return float(np.degrees(np.arctan2(columns.mean() - middle, middle - rows.mean())) % 360.0)


def way_on_map_deg(crs: str, set_deg: float, turned_deg: float) -> float:
    """Where a swimmer who drifts that way goes on the map, clockwise from up: by transforming two places."""
    to_map = QgsCoordinateTransform(output_crs(), QgsCoordinateReferenceSystem(crs), QgsProject.instance())
    here, there = (to_map.transform(QgsPointXY(*place)) for place in (PLACE, offset(set_deg, 100.0, *PLACE)))
    return (here.azimuth(there) + turned_deg) % 360.0


@pytest.mark.parametrize("turned_deg", [0.0, 35.0])
@pytest.mark.parametrize("crs", ["EPSG:4326", "EPSG:3857", "EPSG:3995"])
@pytest.mark.parametrize("set_deg", [0.0, 50.0, 200.0])
def test_an_arrow_points_where_the_water_carries_one_on_any_map(qgis_app, crs, set_deg, turned_deg) -> None:
    image = drawn(arrow_layer(reading(set_deg=set_deg, rate_kn=1.5)), crs, turned_deg)
    away = points_to_deg(image) - way_on_map_deg(crs, set_deg, turned_deg)
    assert abs((away + 180.0) % 360.0 - 180.0) < 4.0


def test_a_faster_stream_has_a_longer_arrow_and_slack_a_ring_without_direction(qgis_app) -> None:
    reach = []
    for rate_kn in (0.3, 1.0, 2.0):
        rows, columns = np.nonzero(drawn(arrow_layer(reading(set_deg=90.0, rate_kn=rate_kn))) < 128)
        reach.append(columns.max() - PIXELS // 2)
    assert reach[0] * 1.3 < reach[1] < reach[2] / 1.2
    ring = drawn(arrow_layer(reading(set_deg=90.0, rate_kn=0.02)))
    rows, columns = np.nonzero(ring < 128)
    assert len(rows) > 10 and abs(columns.mean() - PIXELS / 2) < 1.5 and abs(rows.mean() - PIXELS / 2) < 1.5
    assert ring[PIXELS // 2, PIXELS // 2] > 200  # open in the middle


def test_unknown_stream_is_a_mark_of_its_own_in_shape_and_never_nothing(qgis_app) -> None:
    shapes = {
        name: drawn(arrow_layer(reading(set_deg=set_deg, rate_kn=rate_kn))) < 128
        for name, set_deg, rate_kn in (("unknown", None, None), ("slack", 90.0, 0.0), ("runs", 90.0, 0.4))
    }
    assert shapes["unknown"].sum() > 2 * shapes["slack"].sum() > 20
    assert not any((shapes["unknown"] == shapes[other]).all() for other in ("slack", "runs"))
    middle = slice(PIXELS // 2 - 6, PIXELS // 2 + 7)
    assert shapes["unknown"][middle, middle].any() and not shapes["slack"][middle, middle][5:8, 5:8].any()


def test_arrows_are_not_cut_at_the_edge_to_begin_anew_there(qgis_app) -> None:
    """The place lies beyond the edge: nothing of its arrow is moved onto the map."""
    beyond = offset(270.0, 900.0, *PLACE)
    assert not (drawn(arrow_layer(reading(set_deg=90.0, rate_kn=0.5, place=beyond))) < 128).any()


def test_without_a_time_dots_stand_for_the_swimmer_and_with_one_the_swimmer(qgis_app) -> None:
    layer = _made(SWIMMER)
    _fill_one(layer, SWIMMER, in_time(reading(set_deg=90.0, rate_kn=0.5)))
    rules = layer.renderer().rootRule().children()
    context = QgsExpressionContext()
    context.setFields(layer.fields())
    context.setFeature(next(layer.getFeatures()))

    def drawn_rules() -> list[bool]:
        return [bool(QgsExpression(rule.filterExpression()).evaluate(context)) for rule in rules]

    assert drawn_rules() == [False, True]
    context.lastScope().setVariable("map_start_time", utc_qdatetime(PLAN.depart))
    assert drawn_rules() == [True, False]
    label = QgsExpression(layer.labeling().settings().fieldName)
    assert label.evaluate(context).split("\n") == ["09:40", "tide 1.2 m, rising"]


def test_the_track_swum_is_far_stronger_than_the_ruler_line_also_in_grey(qgis_app) -> None:
    ink = {}
    for output in (TRACK, LEGS):
        layer = _made(output)
        _fill_one(layer, output, PLAN)
        layer.setLabelsEnabled(False)
        settings = QgsMapSettings()
        settings.setLayers([layer])
        settings.setDestinationCrs(layer.crs())
        settings.setOutputSize(QSize(600, 600))
        box = QgsRectangle(layer.extent())
        box.grow(0.003)
        settings.setExtent(box)
        job = QgsMapRendererParallelJob(settings)
        job.start()
        job.waitForFinished()
        ink[output.parameter] = int((255 - grey(job.renderedImage())).sum())
    assert ink["TRACK"] > 2 * ink["LEGS"] > 0


@pytest.mark.parametrize("output", SHOWN, ids=lambda output: output.parameter)
def test_every_result_layer_says_what_it_is_to_the_mouse_and_writes_on_an_edge_of_paper(qgis_app, output) -> None:
    layer = _made(output)
    assert layer.mapTipTemplate() and layer.customProperty("tideleg/result")
    if layer.labelsEnabled():
        look = layer.labeling().settings().format()  # kept: its edge goes with it
        edge = look.buffer()
        assert edge.enabled() and edge.size() >= 0.8 and edge.color() == QColor("#ffffff")
    words = [one.label() for one in layer.renderer().legendSymbolItems()]
    assert words and all(word and "_" not in word and '"' not in word for word in words)


def test_a_flag_says_few_words_on_the_map_and_all_of_them_in_its_tip(qgis_app) -> None:
    layer = _made(FLAGS)
    _fill_one(layer, FLAGS, make_plan(legs=4, unswimmable=(3,)))
    said = []
    label = QgsExpression(layer.labeling().settings().fieldName)
    for row in layer.getFeatures():
        context = QgsExpressionContext()
        context.setFields(layer.fields())
        context.setFeature(row)
        said.append((row["severity"], label.evaluate(context)))
        tip = QgsExpression.replaceExpressionText(layer.mapTipTemplate(), context)
        assert row["message"] in tip
    assert label.evalErrorString() == "" and any(words for _, words in said)
    assert all(len(words) <= 28 for _, words in said)
    assert all(not words for severity, words in said if severity == "note")


# ------------------------------------------------------------------------------------------------- on the canvas


@pytest.fixture()
def at_desk(qgis_app: object) -> Iterator[tuple[Desk, TidelegDock]]:
    with desk_with_dock() as both:
        yield both


@pytest.fixture()
def dock(at_desk: tuple[Desk, TidelegDock], tmp_path: Path) -> TidelegDock:
    opened(at_desk[1], invented_bay(tmp_path / "bay.gpkg"), depart=f"{DAY} 10:00")
    wait_for(lambda: at_desk[1].time.swim is not None, "the swim in time")
    return at_desk[1]


def written(desk: Desk, layer: QgsVectorLayer) -> list[str]:
    """What the canvas has written for a layer once it is drawn."""
    desk.canvas.refreshAllLayers()
    desk.canvas.waitWhileRendering()
    wait_for(lambda: not desk.canvas.isDrawing(), "the map")
    labels = desk.canvas.labelingResults().labelsWithinRect(desk.canvas.extent())
    return sorted(one.labelText for one in labels if one.layerID == layer.id())


@pytest.mark.parametrize("scale", [12_000, 40_000, 80_000])
def test_every_leg_is_labelled_at_small_scales_too(at_desk, dock, scale) -> None:
    desk, _ = at_desk
    desk.canvas.setCenter(QgsPointXY(*moved(550.0, 125.0)))
    desk.canvas.zoomScale(scale)
    legs = [f"{leg.number}: {leg.card_heading}  {int(np.ceil(leg.minutes))} min" for leg in dock.session.swim.legs]
    assert written(desk, dock.results.layer("LEGS")) == legs


def own_results(dock: TidelegDock) -> list[str]:
    return [group for group in group_names(dock.session.layers.group()) if "result" in group]


def test_of_two_plans_each_keeps_its_group_and_the_results_stand_in_that_of_the_plan_at_work(dock, tmp_path) -> None:
    first = dock.session.layers.group()
    assert len(own_results(dock)) == 1
    second = invented_bay(tmp_path / "second.gpkg")
    opened(dock, second, depart=f"{DAY} 11:00")
    wait_for(lambda: dock.time.swim is not None, "the swim in time")
    assert dock.session.layers.group() is not first and len(own_results(dock)) == 1
    assert not [group for group in group_names(first) if "result" in group]
    assert {row["depart_local"][11:16] for row in dock.results.layer("LEGS").getFeatures()} >= {"11:00"}
    assert next(dock.results.layer("SWIMMER").getFeatures())["clock"] == "11:00"
    plan_layers = [node.layer() for node in first.findLayers()]
    assert plan_layers and all(str(dock.session.path) not in layer.source() for layer in plan_layers)
    opened(dock, tmp_path / "bay.gpkg", depart=f"{DAY} 10:00")
    assert dock.session.layers.group() == first and len(own_results(dock)) == 1


def test_a_played_layer_taken_out_by_the_user_stays_out_and_the_rest_plays_on(at_desk, dock) -> None:
    desk, _ = at_desk
    QgsProject.instance().removeMapLayer(dock.results.layer("STREAM_AROUND").id())
    dock.time.slider.setValue(12)
    first = dock.time.swim
    dock.session.step_departure(1)
    settle(dock.session)
    wait_for(lambda: dock.time.swim is not first, "the other swim in time")
    assert dock.results.layer("STREAM_AROUND") is None
    assert dock.results.layer("SWIMMER").featureCount() == len(dock.time.swim.minutes)
    assert not desk.canvas.temporalRange().isInfinite()


def test_the_whole_result_group_taken_out_leaves_the_dock_at_work(dock) -> None:
    group = next(one for one in dock.session.layers.group().findGroups() if "result" in one.name())
    QgsProject.instance().layerTreeRoot()
    group.parent().removeChildNode(group)
    QgsProject.instance().removeMapLayers([dock.results._ids[output.parameter] for output in SHOWN])
    dock.time.slider.setValue(5)
    dock.session.step_departure(1)
    settle(dock.session)
    assert dock.session.swim is not None and all(dock.results.layer(output.parameter) is None for output in SHOWN)


def test_a_plan_file_locked_by_another_program_is_planned_or_refused_in_words(dock) -> None:
    import sqlite3
    from contextlib import closing

    with closing(sqlite3.connect(dock.session.path, isolation_level=None)) as other:
        other.execute("BEGIN EXCLUSIVE")
        dock.session.layers._copies.clear()
        dock.session.step_departure(1)
        settle(dock.session)
        assert (dock.session.swim is not None) != bool(dock.session.problem)
        other.execute("ROLLBACK")
    dock.session.plan_again()
    settle(dock.session)
    assert dock.session.swim is not None


def test_a_project_saved_while_the_swim_is_played_opens_without_its_time(at_desk, dock, tmp_path) -> None:
    desk, _ = at_desk
    dock.time.slider.setValue(12)
    path = os.fspath(tmp_path / "saved.qgz")
    assert QgsProject.instance().write(path)
    desk.canvas.stopRendering()
    QgsProject.instance().clear()
    assert desk.canvas.temporalRange().isInfinite()
    assert QgsProject.instance().read(path)
    settle(dock.session)
    wait_for(lambda: dock.time.swim is not None, "the swim in time")
    assert desk.canvas.temporalRange().isInfinite() and group_names().count("Planned swim (result)") == 1


@pytest.mark.parametrize("crs", ["EPSG:3857", "EPSG:3995"])
def test_the_swimmer_is_drawn_on_the_track_in_other_reference_systems(at_desk, dock, crs) -> None:
    desk, _ = at_desk
    system = QgsCoordinateReferenceSystem(crs)
    QgsProject.instance().setCrs(system)
    desk.canvas.setDestinationCrs(system)
    dock.time.slider.setValue(10)
    minute = dock.time.swim.minutes[10]
    to_map = QgsCoordinateTransform(output_crs(), system, QgsProject.instance())
    place = to_map.transform(QgsPointXY(minute.lon, minute.lat))
    row = next(one for one in dock.results.layer("SWIMMER").getFeatures() if one["minute"] == 10)
    shape = QgsGeometry(row.geometry())
    shape.transform(to_map)
    track = next(dock.results.layer("TRACK").getFeatures()).geometry()
    track.transform(to_map)
    assert shape.distance(QgsGeometry.fromPointXY(place)) < 0.01
    assert track.distance(shape) < 2.0 * desk.canvas.mapUnitsPerPixel() + 5.0


def test_the_routes_of_a_plan_are_thin_beside_the_track(dock) -> None:
    routes = layer_of(dock, "routes").renderer().symbol()
    kinds = dock.results.layer("TRACK").renderer().categories()  # kept: their symbols go with them
    edge, core = (kinds[0].symbol().symbolLayer(number).width() for number in (0, 1))
    assert routes.symbolLayer(0).width() < 0.5 < core < edge


def test_marks_and_areas_of_a_plan_tell_the_mouse_what_they_are(dock) -> None:
    for name in ("marks", "closed_areas", "channels", "stream_stations"):
        assert "[%" in layer_of(dock, name).mapTipTemplate(), name


def test_a_swim_over_the_date_line_is_drawn_on_both_of_its_sides(qgis_app) -> None:
    """A projected map asks a layer for no place beyond 180 degrees, so none may lie there."""
    west, east = (-179.999, 60.0), (180.001, 60.0)
    along = (reading(set_deg=90.0, rate_kn=0.5, place=east), reading(set_deg=90.0, rate_kn=0.5, place=west))
    swim = in_time(*along)
    later_on = replace(swim.minutes[0], lon=west[0])
    rows = SWIMMER.features(replace(swim, minutes=(*swim.minutes, later_on)))
    places = [row.geometry().asPoint().x() for row in [*rows, *STREAM_ALONG.features(swim)]]
    assert places == pytest.approx([-179.999] * 4)
