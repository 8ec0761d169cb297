"""The instant of a UTC column never shifts, whatever zone the machine is set to and whichever version of QGIS reads."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from datetime import datetime, timedelta, timezone

import pytest
from qgis.PyQt.QtCore import QDate, QDateTime, Qt, QTime, QVariant
from tideleg.core.errors import BadInputError
from tideleg.layers_in.moments import utc_moment

UTC = timezone.utc
# An hour that New York's clocks skip, one that Auckland's skip, one that New York's show twice, and plain summer.
INSTANTS = ["2027-03-14T02:30:00", "2027-09-26T02:30:00", "2027-11-07T01:30:00", "2027-06-05T10:05:00"]
ZONES = ["UTC", "America/New_York", "Pacific/Auckland"]

READ_IN_A_ZONE = """
import json, sys, tempfile
from datetime import datetime, timezone
from pathlib import Path
from osgeo import gdal
from qgis.core import QgsApplication, QgsFeature, QgsFeatureRequest, QgsGeometry, QgsVectorLayerUtils
from qgis.gui import QgsGui
from qgis.PyQt.QtCore import QDateTime, QDate, QTime, Qt
from qgis.PyQt.QtWidgets import QWidget
application = QgsApplication([], True)
application.initQgis()
from tideleg.layers_in.moments import utc_moment
from tideleg.plan_package.store import append_rows, create_plan, open_layer

moments = [datetime.fromisoformat(text).replace(tzinfo=timezone.utc) for text in json.loads(sys.argv[1])]
plan = create_plan(Path(tempfile.mkdtemp()) / "plan.gpkg")
append_rows(plan, "tides", [(None, {"time": m, "height_m": 1, "kind": "HW"}) for m in moments])

def read(value):
    return utc_moment(value, layer="tides", row=1, field="time").strftime("%Y-%m-%dT%H:%M:%S")

def through_qgis(layer):
    return [read(feature["time"]) for feature in layer.getFeatures()]

out = {"layer": through_qgis(open_layer(plan, "tides"))}
out["memory copy"] = through_qgis(open_layer(plan, "tides").materialize(QgsFeatureRequest()))
dataset = gdal.OpenEx(str(plan))
out["ogr text"] = [read(feature.GetField("time")) for feature in dataset.GetLayerByName("tides")]
dataset = None

# Typed into the form of a new row, then stored by QGIS.
layer = open_layer(plan, "tides")
QgsGui.editorWidgetRegistry().initEditors()
row = QgsVectorLayerUtils.createFeature(layer, QgsGeometry(), {}, layer.createExpressionContext())
out["noon by default"] = read(row["time"])[11:]
index = layer.fields().lookupField("time")
parent = QWidget()
setup = layer.editorWidgetSetup(index)
wrapper = QgsGui.editorWidgetRegistry().create(setup.type(), layer, index, setup.config(), None, parent)
editor = wrapper.widget()
layer.startEditing()
wrapper.setFeature(row)
editor.setDateTime(QDateTime(QDate(2027, 6, 5), QTime(11, 0), editor.dateTime().timeSpec()))
row["time"], row["height_m"], row["kind"] = wrapper.value(), 2.0, "LW"
out["shown in the form"] = editor.text()
layer.addFeature(row)
assert layer.commitChanges(), layer.commitErrors()
out["typed"] = through_qgis(open_layer(plan, "tides"))[-1]
print(json.dumps(out))
"""


def answers(zone: str) -> dict:
    environment = {**os.environ, "TZ": zone, "QT_QPA_PLATFORM": "offscreen", "PYTHONPATH": os.pathsep.join(sys.path)}
    command = [sys.executable, "-W", "ignore", "-c", READ_IN_A_ZONE, json.dumps(INSTANTS)]
    done = subprocess.run(command, env=environment, capture_output=True, text=True, timeout=120)
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout.strip().splitlines()[-1])


@pytest.fixture(scope="module", params=ZONES)
def read_in_zone(request: pytest.FixtureRequest) -> dict:
    return answers(request.param)


@pytest.mark.parametrize("way", ["layer", "memory copy", "ogr text"])
def test_stored_instants_come_back_in_any_zone(read_in_zone: dict, way: str) -> None:
    assert read_in_zone[way] == INSTANTS


def test_time_typed_into_the_form_is_utc_in_any_zone(read_in_zone: dict) -> None:
    assert read_in_zone["noon by default"] == "12:00:00"
    assert read_in_zone["shown in the form"] == "2027-06-05 11:00"
    assert read_in_zone["typed"] == "2027-06-05T11:00:00"


def moment(value: object) -> datetime:
    return utc_moment(value, layer="tides", row=3, field="time")


TEN_FIVE = datetime(2027, 6, 5, 10, 5, tzinfo=UTC)
DAY, CLOCK = QDate(2027, 6, 5), QTime(10, 5)


@pytest.mark.parametrize(
    "value",
    [
        "2027-06-05T10:05:00Z",
        "2027-06-05T10:05",
        "2027-06-05 10:05:00",
        "2027/06/05 10:05:00+00",
        "2027/06/05 10:05:00",
        "2027-06-05T10:05:00.000Z",
        "2027-06-05T10:05:00.000",
        "2027-06-05T12:05:00+02:00",
        "2027-06-05T06:35:00-0330",
        "2027-06-04T22:05-12",
        " 2027-06-05T10:05:00z ",
        QDateTime(DAY, CLOCK),
        QDateTime(DAY, CLOCK, Qt.TimeSpec.UTC),
        QDateTime(DAY, QTime(12, 5), Qt.TimeSpec.OffsetFromUTC, 7200),
        datetime(2027, 6, 5, 12, 5, tzinfo=timezone(timedelta(hours=2))),
    ],
)
def test_every_form_of_one_instant_reads_the_same(value: object) -> None:
    read = moment(value)
    assert read == TEN_FIVE
    assert read.utcoffset() == timedelta(0)


def test_fractions_of_a_second_are_kept() -> None:
    assert moment("2027-06-05T10:05:00.25Z") == TEN_FIVE + timedelta(milliseconds=250)
    assert moment(QDateTime(DAY, QTime(10, 5, 0, 250), Qt.TimeSpec.UTC)) == TEN_FIVE + timedelta(milliseconds=250)


@pytest.mark.parametrize(
    "value",
    [
        None,
        QDateTime(),
        QVariant(),
        "",
        "10:05",
        "2027-06-05",
        "2027-02-30T10:05",
        "2027-06-05T25:05",
        "2027-06-05T10:05+25:00",
        "05/06/2027 10:05",
        "2027-06-05T10:05 EST",
        20270605,
        datetime(2027, 6, 5, 10, 5),  # noqa: DTZ001  (a naive time is what is tried)
        DAY,
    ],
)
def test_what_cannot_be_read_is_refused_by_layer_row_and_field(value: object) -> None:
    with pytest.raises(BadInputError, match=r"Layer 'tides', row 3, field 'time'.*UTC.*2027-06-05T09:40:00Z"):
        moment(value)
