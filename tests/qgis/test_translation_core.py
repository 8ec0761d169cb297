"""What the computing and the readers of tables and charts say is in the user's language; the numbers stay the same."""

from __future__ import annotations

import json
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest
from invented_cell import InventedCell
from osgeo import gdal
from swims import DAY, Heard, Ran, add_route, invented_bay, moved, new_plan, run, swim, swum
from tideleg import translation
from tideleg.core.errors import NaiveTimeError, SwimPlanError
from tideleg.core.results.card import names_a_leg
from tideleg.core.swimmer import Swimmer, group_of, in_words
from tideleg.core.water.stream_asked import StreamAsked
from tideleg.core.water.stream_text import read_streams
from tideleg.core.water.tide_reading import TideReading, TidesAsked
from tideleg.core.water.tide_text import read_tides
from tideleg.processing.readchart import ReadChart
from tideleg.processing.readstreams import ReadStreams
from tideleg.processing.readtides import ReadTides

# English words that stand in none of the German sentences.
ENGLISH = {"the", "is", "you", "not", "known", "leg", "stream", "with", "cannot", "swum", "while", "there"}


@contextmanager
def german() -> Iterator[None]:
    translator = translation.install_translator("de")
    try:
        yield
    finally:
        translation.remove_translator(translator)


@pytest.fixture()
def in_german(qgis_app: object) -> Iterator[None]:
    with german():
        yield


def sentences(report: dict[str, Any]) -> list[str]:
    flags = [flag[key] for flag in report["flags"] for key in ("message", "brief") if flag.get(key)]
    return [*flags, *report["warnings"], *(leg["reason"] for leg in report["legs"] if leg["reason"])]


def numbers(report: dict[str, Any]) -> str:
    legs = [{key: value for key, value in leg.items() if not isinstance(value, str)} for leg in report["legs"]]
    kinds = [(flag["kind"], flag["severity"], flag["leg"]) for flag in report["flags"]]
    return json.dumps([legs, kinds, report["feasible"]])


@pytest.mark.parametrize("depart", [f"{DAY}T10:00", f"{DAY}T20:30", "2027-09-26T10:00"])
def test_a_swim_is_told_in_german_with_the_same_numbers(qgis_app, tmp_path: Path, depart: str) -> None:
    plan = invented_bay(tmp_path / "bay.gpkg")
    add_route(plan, "Far", moved(0, 0), moved(3000, 900), moved(0, 0))
    asked = {"ROUTE": "Far", "DEPART": depart}
    for name in ("english", "german"):
        (tmp_path / name).mkdir()
    english = swum(plan, tmp_path / "english", **asked)
    with german():
        told = swum(plan, tmp_path / "german", **asked)
    assert numbers(told) == numbers(english)
    assert sentences(english) and len(sentences(told)) == len(sentences(english))
    left = [one for one in sentences(told) if ENGLISH & set(one.lower().replace(".", " ").replace(",", " ").split())]
    assert left == []


def test_a_refusal_names_layer_and_value_in_german(in_german, tmp_path: Path) -> None:
    plan = invented_bay(tmp_path / "bay.gpkg")
    ran = swim(plan, tmp_path, ROUTE="Nirgends", DEPART=f"{DAY}T10:00")
    assert not ran.ok
    assert "Verlangt ist die Route „Nirgends“" in ran.said


def test_a_time_without_a_zone_and_a_wrong_pace_are_refused_in_german(in_german) -> None:
    assert str(NaiveTimeError(value="10:00")).startswith("Die Zeit 10:00 hat keine Zeitzone.")
    with pytest.raises(SwimPlanError, match="Schwimmer „Runa“ hat pace_m_s = 9"):
        Swimmer(name="Runa", pace_m_s=9.0)


def test_a_group_is_named_and_measured_in_german(in_german) -> None:
    both = group_of([Swimmer(name="Runa"), Swimmer(name="Ivo", pace_m_s=0.4)])
    assert both.name == "Runa und Ivo"
    assert both.set_by == ("Tempo 0.4 m/s und Wegfaktor 1.1 durch Ivo",)
    assert in_words(both, "max_hours") == "4 Stunden"


def test_a_sentence_that_names_its_leg_is_known_in_german(in_german) -> None:
    assert names_a_leg("Abschnitt 2: Strom hochgerechnet") and not names_a_leg("Tempo und Grenzen sind geschätzt")


def test_english_is_back_when_the_plugin_goes(qgis_app) -> None:
    with german():
        pass
    assert in_words(Swimmer(), "max_hours") == "4 hours" and names_a_leg("Leg 2: stream extrapolated")


# Four digits beside a date, a note below, a date carried down; a series with a gap; constants; differences.
TABLES = {
    "waters": f"Made ashore\nDate,,Height m\n{DAY},0200,0.7\n,0810,3.9\n,1415,0.9\n,2030,3.7\nend of it\n",
    "series": "Time (UTC),Level (m)\n"
    + "".join(f"{DAY} {n // 6:02}:{n % 6}0,{2.0 + 0.1 * abs(n - 50):.1f}\n" for n in range(120) if not 20 < n < 40),
    "constants": "Constituent,Amplitude (m),Phase (GMT)\nM2,1.2,100\nK1,0.1,20\nO1,0.1,4\nS2,,14\nX9,0.0,3\nZ0,2.1,\n",
    "secondary": "port,reference_port,hw_minutes,lw_minutes,hw_height_m\nCove,Kettle,12,20,-0.3\n",
}


def words_and_rest(reading: TideReading) -> tuple[set[str], object]:
    """The sentences of a reading, and what may not differ between languages."""
    shown = reading.preview()
    columns = shown["taken"]["columns"]
    roles = columns if isinstance(columns, dict) else [one["taken_for"] for one in columns]
    skipped = [(one["count"], one["rows"]) for one in shown["skipped"]]
    said = {one["reason"] for one in shown["skipped"]} | set(shown["warnings"])
    said |= {one["why"] for one in columns if "why" in one}
    return said, (reading.heights, reading.constants, reading.secondary, roles, skipped, shown["first_rows"])


@pytest.mark.parametrize("name", TABLES)
def test_a_table_of_tides_is_read_alike_in_german_and_told_in_german(qgis_app, name: str) -> None:
    asked = TidesAsked(zone="UTC", name="tides.csv")
    english, rest = words_and_rest(read_tides(TABLES[name], asked))
    with german():
        told, same = words_and_rest(read_tides(TABLES[name], asked))
    assert same == rest
    assert len(told) == len(english) and not told & english


def test_a_broken_tide_table_is_refused_in_german_by_row_and_value(in_german, tmp_path: Path) -> None:
    clocks = ("02:00 0.7 L", "08:00 3.9 H", "14:15 0.9 L", "20:30 3.7 H", "25:00 0.9 L")
    text = "".join(f"{DAY} {clock}\n" for clock in clocks)
    plan = new_plan(tmp_path / "bay.gpkg", ZONE="Europe/Lisbon")
    ran = read_into(ReadTides(), plan, TEXT=text, ZONE="UTC", UNITS="m")
    assert not ran.ok
    assert "Layer „der eingefügte Text“, Zeile 5, Feld „time“: dort steht '25:00'. Das ist keine Uhrzeit." in ran.said


def test_a_preview_of_tides_is_told_in_german(in_german, tmp_path: Path) -> None:
    plan = new_plan(tmp_path / "bay.gpkg", ZONE="Europe/Lisbon")
    lines = log_of(ReadTides(), plan, TEXT=TABLES["waters"], ZONE="UTC", PREVIEW=True).splitlines()
    assert "Zellen getrennt durch: Komma" in lines
    assert "Spalte 2 „“: genommen für time (vier Ziffern neben einem Datum)" in lines
    assert "Uhr der Zeiten: UTC, wie angegeben" in lines
    assert "1 übergangen (unter der Tabelle): Zeilen 7" in lines
    assert "Vorschau: 4 Zeilen verstanden, nichts geschrieben" in lines


def test_a_broken_stream_table_is_refused_in_german_and_its_columns_stay_the_same(in_german, tmp_path: Path) -> None:
    head = "hour,set_deg,spring_kn,what\n"
    (reading,) = read_streams(head + "-1,40,1.2,x\n0,,,\n", StreamAsked(station="A", reference="HW"))
    assert [one["taken_for"] for one in reading.columns] == ["hour", "set", "spring", "nichts"]
    assert reading.skipped == ((3, "keine Stärke: Die Stunde ist nicht bekannt, kein Stauwasser"),)
    plan = new_plan(tmp_path / "bay.gpkg", ZONE="Europe/Lisbon")
    ran = read_into(ReadStreams(), plan, TEXT=head + "-1,,1.2,x\n", STATION="A", POINT="-9,38", REFERENCE="HW")
    assert not ran.ok
    assert "Zeile 2, Feld „set_deg“" in ran.said and "Zu einer Stärke gehört eine Stromrichtung" in ran.said


def test_what_a_chart_leaves_without_a_name_is_named_in_german_and_its_rules_stay(qgis_app, tmp_path: Path) -> None:
    chart = tmp_path / "IX4INVEN.000"
    with InventedCell(chart) as sea:  # invented, not for navigation
        sea.box("M_COVR", -30.1, 29.9, -29.9, 30.1, CATCOV=1)
        sea.box("RESARE", -30.03, 30.02, -30.01, 30.03, RESTRN=["2", "8"], CATREA=["4"])
        sea.point("WRECKS", -30.03, 30.008, WATLEV=3)
        sea.point("LNDARE", -30.04, 29.95)
        sea.point("LIGHTS", -30.05, 29.95)
    english, said = chart_read(chart, tmp_path / "english.gpkg")
    with german():
        told, german_said = chart_read(chart, tmp_path / "german.gpkg")
    assert "no_entry" in told["closed_areas"][0] and "restricted area" in english["closed_areas"][0]
    assert "Gebiet mit Beschränkungen" in told["closed_areas"][0]
    assert any("Einfahrt beschränkt, Naturschutzgebiet" in str(one) for one in told["closed_areas"][0])
    assert "Wrack unbekannter Tiefe" in told["closed_areas"][1]
    assert told["landmarks"][0][0].startswith("Feuer ") and english["landmarks"][0][0].startswith("light ")
    assert [one for row in told["closed_areas"] for one in row if one in RULES] == ["no_entry", "caution"]
    assert "LNDARE: 1 gelesen, 0 verwendet, 1 übergangen (Land als Punkt in der Karte, ohne Ufer)" in german_said
    assert "LNDARE: 1 read, 0 used, 1 skipped (land charted as a point, without a shore)" in said


RULES = ("no_entry", "no_spearing", "loaded_gun_ban", "no_anchoring", "caution")


def read_into(algorithm: Any, plan: Path, heard: Heard | None = None, **parameters: object) -> Ran:
    return run(algorithm.create(), {"PLAN": str(plan), "REPORT": str(plan.with_suffix(".json")), **parameters}, heard)


def log_of(algorithm: Any, plan: Path, **parameters: object) -> str:
    """What a run that succeeds tells the one who started it."""
    heard = Heard()
    ran = read_into(algorithm, plan, heard, **parameters)
    assert ran.ok, ran.said
    return heard.textLog()


def chart_read(chart: Path, plan: Path) -> tuple[dict[str, list[list[object]]], str]:
    """The values of the closed areas and landmarks that a chart gives a new plan, and what was said."""
    log = log_of(ReadChart(), new_plan(plan, ZONE="Atlantic/Azores"), CHART=str(chart))
    dataset = gdal.OpenEx(str(plan), gdal.OF_VECTOR)
    names = ("closed_areas", "landmarks")
    return {name: [list(row.items().values()) for row in dataset.GetLayerByName(name)] for name in names}, log
