"""tideleg:readstreams: tables of text into a plan and out again, all or nothing."""

from __future__ import annotations

import json
import re
import shutil
from pathlib import Path
from typing import Any

import pytest
from swims import (
    DAY,
    KNOT_M_S,
    LAT,
    LON,
    Heard,
    Ran,
    add_route,
    add_swimmer,
    moved,
    new_plan,
    offset,
    point,
    run,
    swum,
    utc,
)
from tideleg.core.water import stream_text
from tideleg.layers_in.streams_text import streams_text
from tideleg.layers_in.table import Table
from tideleg.plan_package.schema import LAYER_BY_NAME
from tideleg.plan_package.store import append_rows, open_layer
from tideleg.processing import readstreams
from tideleg.processing.readstreams import ReadStreams

PLACE = f"{LON},{LAT} [EPSG:4326]"
TABLES = (
    "stream_stations",
    "stream_rates",
    "stream_events",
    "stream_series",
    "stream_constants",
    "winds",
    "drifts",
    "tide_coefficients",
)
HOURLY = "hour,set,spring kn,neap kn\n" + "".join(f"{hour},70,0.8,0.4\n" for hour in range(-6, 7))
EVENTS = (
    "date,time,event,speed (knots),flood set,ebb set\n"
    f"{DAY},7:10 AM,slack,-,70,250\n{DAY},10:15 AM,flood,0.6,,\n{DAY},1:20 PM,slack,-,,\n{DAY},4:25 PM,ebb,0.7,,\n"
)
TSP = (
    "63230,Darwin,HW,124,2.2,128,2.1,125,2.9,116,2.8,110,2.0,095,0.6,020,0.2,320,1.9,315,2.1,300,2.8,268,2.6,200,2.4,,"
)


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = new_plan(tmp_path_factory.mktemp("read") / "plan.gpkg", ZONE="Europe/Lisbon")
    add_route(path, "R", (LON, LAT), moved(0.0, 800.0))
    add_swimmer(path, 0.6)
    tides = (("03:50", 0.5, "LW"), ("10:00", 4.5, "HW"), ("16:10", 0.5, "LW"), ("22:20", 4.5, "HW"))
    rows = [{"port": "P", "time": utc(when), "height_m": height, "kind": kind} for when, height, kind in tides]
    append_rows(path, "tides", [(None, row) for row in rows])
    return path


@pytest.fixture
def plan(made: Path, tmp_path: Path) -> Path:
    return Path(shutil.copy(made, tmp_path / "plan.gpkg"))


def read(plan: Path, text: str = "", **parameters: Any) -> Ran:
    asked = {"PLAN": str(plan), "REPORT": str(plan.with_name("report.json")), **parameters}
    if text:
        asked["TEXT"] = text
    return run(ReadStreams().create(), asked, Heard())


def rows(plan: Path, name: str) -> list[dict[str, Any]]:
    return [row.values for row in Table(open_layer(plan, name), LAYER_BY_NAME[name], []).rows()]


def everything(plan: Path) -> dict[str, list[dict[str, Any]]]:
    return {name: rows(plan, name) for name in TABLES}


def refused(plan: Path, *words: str, **parameters: Any) -> None:
    """The run fails with these words, and neither plan nor report is there afterwards but as before."""
    before = everything(plan)
    ran = read(plan, **parameters)
    assert not ran.ok
    for word in words:
        assert word in ran.said
    assert everything(plan) == before
    assert not plan.with_name("report.json").exists()


def test_choices_are_those_of_the_reader() -> None:
    assert readstreams.FORMS == stream_text.FORMS


def test_hourly_table_to_a_planned_swim(plan: Path, tmp_path: Path) -> None:
    ran = read(plan, HOURLY, STATION="A", POINT=PLACE, REFERENCE="HW", PORT="P")
    assert ran.ok, ran.said
    assert ran.results["WRITTEN"] == 14
    (station,) = rows(plan, "stream_stations")
    assert (station["form"], station["reference"], station["port"], station["reach_m"]) == ("hourly", "HW", "P", 3000.0)
    leg = swum(plan, tmp_path, ROUTE="R", DEPART=f"{DAY}T10:00")["legs"][0]
    assert leg["stream_set_deg"] == pytest.approx(70.0, abs=0.6)


def test_events_in_local_summer_time_to_a_planned_swim(plan: Path, tmp_path: Path) -> None:
    """10:15 by the clocks of Lisbon in June is 09:15 UTC."""
    ran = read(plan, EVENTS, STATION="A", POINT=PLACE, ZONE="Europe/Lisbon")
    assert ran.ok, ran.said
    assert rows(plan, "stream_events")[1]["time"] == utc("09:15")
    leg = swum(plan, tmp_path, ROUTE="R", DEPART=f"{DAY}T10:00")["legs"][0]
    assert leg["stream_kn"] == pytest.approx(0.6, abs=0.006)


def test_reading_twice_changes_nothing(plan: Path) -> None:
    assert read(plan, HOURLY, STATION="A", POINT=PLACE, REFERENCE="HW").ok
    before = everything(plan)
    ran = read(plan, HOURLY, STATION="A", REFERENCE="HW")
    assert ran.ok, ran.said
    assert (ran.results["WRITTEN"], ran.results["ALREADY_THERE"]) == (0, 13)
    assert everything(plan) == before


def test_other_figures_for_the_same_hour_are_refused(plan: Path) -> None:
    assert read(plan, HOURLY, STATION="A", POINT=PLACE, REFERENCE="HW").ok
    plan.with_name("report.json").unlink()
    changed = HOURLY.replace("3,70,0.8", "3,70,0.9")
    refused(plan, "row 5", "other figures", TEXT=changed, STATION="A", REFERENCE="HW")
    refused(plan, "'LW'", "'HW'", TEXT=HOURLY, STATION="A", REFERENCE="LW")
    refused(plan, "'form'", "'events'", TEXT=EVENTS, STATION="A", ZONE="UTC")
    elsewhere = f"{LON + 0.001},{LAT} [EPSG:4326]"
    refused(plan, "'place'", f"{LON:.5f}", TEXT=HOURLY, STATION="A", REFERENCE="HW", POINT=elsewhere)


def test_preview_says_what_the_columns_are_and_writes_nothing(plan: Path) -> None:
    before = everything(plan)
    ran = read(plan, EVENTS, STATION="A", POINT=PLACE, ZONE="Europe/Lisbon", PREVIEW=True)
    assert ran.ok, ran.said
    assert ran.results["WRITTEN"] == 0
    assert everything(plan) == before
    (table,) = ran.report["tables"]
    taken = {column["column"]: column["taken_for"] for column in table["columns"]}
    assert taken == {
        "date": "date",
        "time": "clock",
        "event": "kind",
        "speed (knots)": "rate",
        "flood set": "flood_set",
        "ebb set": "ebb_set",
    }
    assert table["first_rows"][0]["time"] == f"{DAY}T06:10:00+00:00"
    assert (ran.report["preview"], ran.report["zone"], ran.report["layers"]) == (True, "Europe/Lisbon", {})


def test_report_counts_what_was_skipped_by_reason_with_its_rows(plan: Path) -> None:
    text = HOURLY.replace("1,70,0.8,0.4", "1,70,-,-")
    ran = read(plan, text, STATION="A", POINT=PLACE, REFERENCE="HW")
    assert ran.ok, ran.said
    (table,) = ran.report["tables"]
    assert table["skipped"] == [{"reason": "no rate: the hour is unknown, not slack", "rows": [7, 9]}]
    assert ran.report["layers"]["stream_rates"] == {"written": 11, "already_there": 0}


def test_ts_tsp_text_with_a_blank_last_pair(plan: Path) -> None:
    ran = read(plan, TSP, POINT=PLACE)
    assert ran.ok, ran.said
    (station,) = rows(plan, "stream_stations")
    assert (station["station"], station["port"], station["reference"]) == ("Darwin", "Darwin", "HW")
    assert [row["hour"] for row in rows(plan, "stream_rates")] == list(range(-6, 6))


def test_ts_tsv_text(plan: Path) -> None:
    text = {"TEXT": "135,1.5,156,1.9,301,1.1,342,0.9", "FORM": "ts_tsv", "STATION": "A", "POINT": PLACE}
    refused(plan, "START", **text)
    ran = read(plan, **text, START=f"{DAY}T09:00Z", STEP=60)
    assert ran.ok, ran.said
    assert [row["rate_kn"] for row in rows(plan, "stream_series")] == [1.5, 1.9, 1.1, 0.9]


def test_file_with_a_mark_of_order_and_windows_line_ends(plan: Path, tmp_path: Path) -> None:
    for encoding in ("utf-8-sig", "utf-16", "latin-1"):
        path = tmp_path / f"{encoding}.csv"
        path.write_bytes(HOURLY.replace("set", "set (\u00b0)").replace("\n", "\r\n").encode(encoding))
        ran = read(plan, FILE=str(path), STATION=encoding, POINT=PLACE, REFERENCE="HW")
        assert ran.ok, ran.said
    assert len(rows(plan, "stream_rates")) == 39
    assert "Latin 1" in ran.report["warnings"][0]
    binary = tmp_path / "picture.csv"
    binary.write_bytes(b"\x89PNG\x00\xff\x00")
    refused_after = read(plan, FILE=str(binary), STATION="B", POINT=PLACE)
    assert not refused_after.ok and "is no text" in refused_after.said


@pytest.mark.parametrize(
    ("words", "parameters"),
    [
        (("POINT",), {"TEXT": HOURLY, "STATION": "A", "REFERENCE": "HW"}),
        (("STATION",), {"TEXT": HOURLY, "POINT": PLACE, "REFERENCE": "HW"}),
        (("REFERENCE",), {"TEXT": HOURLY, "POINT": PLACE, "STATION": "A"}),
        (("UNITS",), {"TEXT": HOURLY.replace(" kn", ""), "POINT": PLACE, "STATION": "A", "REFERENCE": "HW"}),
        (("zone", "row 2"), {"TEXT": EVENTS, "STATION": "A", "POINT": PLACE}),
        (("Europe/Nowhere",), {"TEXT": EVENTS, "STATION": "A", "POINT": PLACE, "ZONE": "Europe/Nowhere"}),
        (("row 4", "set"), {"TEXT": HOURLY.replace("-4,70", "-4,700"), "STATION": "A", "POINT": PLACE}),
        (("both",), {"TEXT": "# station: A\n# wind_percent: 3\nhour,set,set deg,kn\n0,0,0,0", "POINT": PLACE}),
        (("row 1", "colour"), {"TEXT": "# station: A\n# form: wind\n# colour: red", "POINT": PLACE}),
        (("wind_percent", "99"), {"TEXT": "# station: A\n# form: wind\n# wind_percent: 99", "POINT": PLACE}),
    ],
)
def test_what_is_missing_or_wrong_is_named_and_nothing_is_written(
    plan: Path, words: tuple[str, ...], parameters: dict[str, Any]
) -> None:
    refused(plan, *words, **parameters)


def test_a_bad_row_in_the_last_table_leaves_out_the_first_as_well(plan: Path) -> None:
    head = f"# station: One\n# lon: {LON}\n# lat: {LAT}\n# reference: HW\n"
    text = f"{head}{HOURLY}# table: winds\ntime,from,wind kn\nnever,1,2\n"
    refused(plan, "row 21", "never", TEXT=text)


def test_report_that_cannot_be_written_leaves_the_plan_as_it_was(plan: Path, tmp_path: Path) -> None:
    before = everything(plan)
    (tmp_path / "taken").mkdir()
    ran = read(plan, HOURLY, STATION="A", POINT=PLACE, REFERENCE="HW", REPORT=str(tmp_path / "taken"))
    assert not ran.ok
    assert everything(plan) == before


def drift_text(towards: float, rate_kn: float) -> str:
    end = offset(towards, rate_kn * KNOT_M_S * 1200.0)
    return f"time,lon,lat,minutes,end lon,end lat\n{DAY}T08:00Z,{LON},{LAT},20,{end[0]:.7f},{end[1]:.7f}\n"


def test_drift_gives_set_and_rate_and_corrects_its_station(plan: Path, tmp_path: Path) -> None:
    assert read(plan, HOURLY.replace("0.4", "0.8"), STATION="A", POINT=PLACE, REFERENCE="HW", PORT="P").ok
    ran = read(plan, drift_text(70.0, 1.0), STATION="A")
    assert ran.ok, ran.said
    drift, correction = ran.report["drifts"]
    assert (drift["set_deg"], drift["rate_kn"]) == (pytest.approx(70.0, abs=0.1), pytest.approx(1.0, abs=0.002))
    assert (correction["rate_factor"], correction["shift_min"]) == (pytest.approx(1.25, abs=0.01), None)
    leg = swum(plan, tmp_path, ROUTE="R", DEPART=f"{DAY}T10:00")["legs"][0]
    assert leg["stream_kn"] == pytest.approx(1.0, abs=0.02)


def test_drift_of_no_station_and_of_one_that_is_not_there(plan: Path) -> None:
    ran = read(plan, drift_text(70.0, 1.0))
    assert ran.ok, ran.said
    assert len(ran.report["drifts"]) == 1
    plan.with_name("report.json").unlink()
    refused(plan, "row 2", "Nowhere", TEXT=drift_text(70.0, 1.0), STATION="Nowhere")


WHOLE = (
    f"# station: Hourly one\n# lon: {LON}\n# lat: {LAT}\n# reference: LW\n# port: P\n# spring_range_m: 4.1\n"
    + HOURLY
    + f"\n# station: Events, one\n# lon: {LON}\n# lat: {LAT}\n# zone: Europe/Lisbon\n# confidence: official\n"
    + EVENTS
    + f"\n# station: Coefficients\n# lon: {LON}\n# lat: {LAT}\n# reference: HW\n"
    "hour,set,rate at 45 (kn),rate at 95 (kn)\n0,090,0.81,1.63\n1,95,,1.1\n"
    f"\n# station: Series\n# lon: {LON}\n# lat: {LAT}\ntime,set,rate m/s\n{DAY}T09:00Z,10,0.333\n{DAY}T09:30Z,,\n"
    f"\n# station: Constants\n# lon: {LON}\n# lat: {LAT}\n"
    "constituent,u amp (m/s),u phase,v amp (m/s),v phase\nM2,0.1234567,12.34,0.2,300\nZ0,-0.03,0,0.01,0\n"
    f"\n# station: Offset\n# form: slack_offset\n# lon: {LON}\n# lat: {LAT}\n"
    "# slack_offset_min: -75\n# spring_kn: 1.25\n# flood_set_deg: 60\n# ebb_set_deg: 240\n# shift_min: 7.5\n"
    f"\n# station: Steady\n# form: constant\n# lon: {LON}\n# lat: {LAT}\nhour,set,spring kn\n0,200,0.4\n"
    f"\n# table: winds\ntime,wind from,wind speed kn\n{DAY}T06:00Z,225,12.5\n{DAY}T09:00Z,,\n"
    f"\n# table: tide_coefficients\n# port: P\ntime,coefficient\n{DAY}T10:00Z,87\n"
    f"\n# table: drift\n# station: Steady\ntime,lon,lat,minutes,end lon,end lat,note\n"
    f"{DAY}T08:00Z,{LON},{LAT},20,{LON + 0.002},{LAT},off the point\n"
)


def test_export_can_be_read_into_an_empty_plan_and_gives_the_same(plan: Path, made: Path, tmp_path: Path) -> None:
    ran = read(plan, WHOLE, EXPORT=str(tmp_path / "streams.csv"))
    assert ran.ok, ran.said
    first = everything(plan)
    assert {name: len(first[name]) for name in TABLES} == {
        "stream_stations": 7,
        "stream_rates": 16,
        "stream_events": 4,
        "stream_series": 2,
        "stream_constants": 2,
        "winds": 2,
        "drifts": 1,
        "tide_coefficients": 1,
    }
    other = Path(shutil.copy(made, tmp_path / "other.gpkg"))
    again = read(other, FILE=str(tmp_path / "streams.csv"), EXPORT=str(tmp_path / "again.csv"))
    assert again.ok, again.said
    assert everything(other) == first
    assert (tmp_path / "again.csv").read_bytes() == (tmp_path / "streams.csv").read_bytes()


def test_export_alone_and_of_one_station(plan: Path, tmp_path: Path) -> None:
    assert read(plan, WHOLE).ok
    ran = read(plan, EXPORT=str(tmp_path / "one.csv"), STATION="Steady", REPORT=None)
    assert ran.ok, ran.said
    text = (tmp_path / "one.csv").read_text(encoding="utf-8")
    assert text.count("# station:") == 2 and "hour,set_deg,spring_kn,neap_kn\n0,200,0.4,\n" in text
    assert "winds" not in text
    ran = read(plan, EXPORT=str(tmp_path / "none.csv"), STATION="Nobody")
    assert not ran.ok and "Hourly one" in ran.said and not (tmp_path / "none.csv").exists()


def test_nothing_to_read_and_two_things_to_read_are_refused_beforehand(plan: Path, tmp_path: Path) -> None:
    assert "nothing to read" in read(plan).said
    file = tmp_path / "a.csv"
    file.write_text(HOURLY)
    assert "not both" in read(plan, HOURLY, FILE=str(file)).said


def test_report_is_json_without_surprises(plan: Path) -> None:
    assert read(plan, WHOLE).ok
    content = json.loads(plan.with_name("report.json").read_text(encoding="utf-8"))
    assert list(content) == [
        "tideleg",
        "plan",
        "source",
        "preview",
        "zone",
        "tables",
        "drifts",
        "warnings",
        "layers",
    ]


def test_fields_that_a_known_station_had_empty_are_filled(plan: Path) -> None:
    first = read(plan, HOURLY, STATION="A", POINT=PLACE, REFERENCE="HW")
    assert any("'A' has no spring range: every rate will be extrapolated" in one for one in first.warnings)
    text = "# spring_range_m: 3.3\n# neap_range_m: 1.4\n# source: Bight Pilot\n" + HOURLY
    preview = read(plan, text, STATION="A", REFERENCE="HW", PREVIEW=True)
    assert preview.report["tables"][0]["filled"] == {
        "spring_range_m": 3.3,
        "neap_range_m": 1.4,
        "source": "Bight Pilot",
    }
    assert rows(plan, "stream_stations")[0]["spring_range_m"] is None
    assert preview.warnings == []
    ran = read(plan, text, STATION="A", REFERENCE="HW")
    assert ran.ok, ran.said
    (station,) = rows(plan, "stream_stations")
    assert (station["spring_range_m"], station["neap_range_m"], station["source"]) == (3.3, 1.4, "Bight Pilot")
    assert station["form"] == "hourly"
    assert (ran.results["WRITTEN"], ran.results["ALREADY_THERE"]) == (0, 13)
    again = read(plan, text, STATION="A", REFERENCE="HW")
    assert again.report["tables"][0]["filled"] == {}
    plan.with_name("report.json").unlink()
    refused(plan, "spring_range_m", "3.3", TEXT=text.replace("3.3", "4.4"), STATION="A", REFERENCE="HW")


def test_fields_are_filled_with_the_rows_or_not_at_all(plan: Path, tmp_path: Path) -> None:
    assert read(plan, HOURLY, STATION="A", POINT=PLACE, REFERENCE="HW", REPORT=None).ok
    (tmp_path / "taken").mkdir()
    text = "# spring_range_m: 3.3\n" + HOURLY
    assert not read(plan, text, STATION="A", REFERENCE="HW", REPORT=str(tmp_path / "taken")).ok
    assert rows(plan, "stream_stations")[0]["spring_range_m"] is None
    refused(plan, "spring_range_m", "-3", TEXT=text.replace("3.3", "-3"), STATION="A", REFERENCE="HW")


def test_neap_rates_without_a_neap_range_are_doubted(plan: Path) -> None:
    ran = read(plan, "# spring_range_m: 3.3\n" + HOURLY, STATION="A", POINT=PLACE, REFERENCE="HW")
    assert any("no neap range" in one for one in ran.warnings)
    assert not any("no spring range" in one for one in ran.warnings)
    springs = "hour,set,spring kn\n0,70,0.8\n"
    ran = read(plan, "# spring_range_m: 3.3\n" + springs, STATION="B", POINT=PLACE, REFERENCE="HW")
    assert ran.warnings == []


def test_place_with_longitude_and_latitude_exchanged_is_doubted(plan: Path) -> None:
    ran = read(plan, EVENTS, STATION="A", POINT=f"{LAT},{LON} [EPSG:4326]", ZONE="UTC", PREVIEW=True)
    assert ran.ok, ran.said
    (warning,) = ran.warnings
    assert re.search(r"'A' at longitude .* lies \d{4,5} km from everything else in the plan", warning)
    assert "exchanged it would be 0 km" in warning
    assert ran.report["warnings"] == [warning]
    near = read(plan, EVENTS, STATION="A", POINT=f"{LON},{LAT + 1.7} [EPSG:4326]", ZONE="UTC", PREVIEW=True)
    far = read(plan, EVENTS, STATION="A", POINT=f"{LON},{LAT + 1.9} [EPSG:4326]", ZONE="UTC", PREVIEW=True)
    # A degree of latitude is 111 km; the route's own 0.8 km are the last of the plan to the north.
    assert (near.warnings, len(far.warnings)) == ([], 1)
    assert "exchanged" not in far.warnings[0]


def test_port_without_tides_in_the_plan_is_doubted(plan: Path) -> None:
    ran = read(plan, HOURLY, STATION="A", POINT=PLACE, REFERENCE="HW", PORT="Q", PREVIEW=True)
    assert any("'A': the plan has no tides for the port 'Q' (it has those of P)" in one for one in ran.warnings)
    ran = read(plan, HOURLY, STATION="A", POINT=PLACE, REFERENCE="HW", PORT="P", PREVIEW=True)
    assert not any("no tides" in one for one in ran.warnings)
    ran = read(plan, f"time,coefficient\n{DAY}T10:00Z,87\n", PORT="Q", PREVIEW=True)
    assert any("no tides for the port 'Q'" in one for one in ran.warnings)


def test_choices_may_be_given_by_their_number(plan: Path) -> None:
    ran = read(plan, HOURLY, STATION="A", POINT=PLACE, REFERENCE=2, FORM="1")
    assert ran.ok, ran.said
    assert rows(plan, "stream_stations")[0]["reference"] == "LW"
    refused_number = read(plan, HOURLY, STATION="B", POINT=PLACE, REFERENCE=3)
    assert not refused_number.ok and "REFERENCE" in refused_number.said


def test_export_in_the_place_of_what_is_read_is_refused(plan: Path, tmp_path: Path) -> None:
    file = tmp_path / "streams.csv"
    file.write_text(HOURLY, encoding="utf-8")
    for taken in (plan, file):
        refused(plan, "reads from", FILE=str(file), STATION="A", POINT=PLACE, REFERENCE="HW", EXPORT=str(taken))
    assert file.read_text(encoding="utf-8") == HOURLY


def test_clock_of_a_heading_is_shown_and_not_gone_against(plan: Path) -> None:
    text = f"time (EST),kind,rate kn\n{DAY} 09:40,slack,0\n"
    said = ("row 2", "'time (EST)' says EST", "EDT (-04:00)", "fixed offset -05:00")
    refused(plan, *said, TEXT=text, STATION="A", POINT=PLACE, ZONE="America/New_York")
    refused(plan, "names no one zone", TEXT=text, STATION="A", POINT=PLACE)
    ran = read(plan, text, STATION="A", POINT=PLACE, ZONE="-05:00")
    assert ran.ok, ran.said
    assert ran.report["tables"][0]["clock"] == "UTC-05:00, as given; the heading 'time (EST)' says EST"
    assert rows(plan, "stream_events")[0]["time"] == utc("14:40")


def test_figures_of_progress_end_before_the_last_words(plan: Path) -> None:
    class Console(Heard):
        def __init__(self) -> None:
            super().__init__()
            self.at: list[float] = []

        def pushInfo(self, info: str) -> None:
            self.at.append(self.progress())

    heard = Console()
    asked = {"PLAN": str(plan), "TEXT": HOURLY, "STATION": "A", "POINT": PLACE, "REFERENCE": "HW"}
    assert run(ReadStreams().create(), asked, heard).ok
    assert set(heard.at) == {0.0, 100.0}


def test_a_stream_that_runs_one_way_only_is_exported_so_that_it_can_be_read_again(tmp_path: Path) -> None:
    rows = [("06:00", "slack", 0.0), ("09:00", "max", 2.0), ("12:00", "slack", 0.0), ("15:00", "max", 1.5)]
    plan = new_plan(tmp_path / "one.gpkg")
    append_rows(plan, "stream_stations", [(point((LON, LAT)), {"station": "River mouth", "form": "events"})])
    append_rows(
        plan,
        "stream_events",
        [
            (None, {"station": "River mouth", "time": utc(when), "kind": kind, "rate_kn": rate, "flood_set_deg": 90.0})
            for when, kind, rate in rows
        ],
    )
    text = streams_text(plan)
    other = new_plan(tmp_path / "two.gpkg")
    (tmp_path / "streams.csv").write_text(text, encoding="utf-8")
    ran = run(ReadStreams().create(), {"PLAN": str(other), "FILE": str(tmp_path / "streams.csv")})
    assert ran.ok, ran.said
    assert streams_text(other) == text
