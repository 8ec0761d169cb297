"""A file that is not what the plan holds is found when it is read again, and nothing is left of it."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from plans import make_plan
from tideleg.cards import read_back, swim_files
from tideleg.cards.gps_options import GpsOptions
from tideleg.cards.read_back import unread_words
from tideleg.cards.whole_files import write_whole
from tideleg.core.errors import SwimPlanError

PLANS = {
    "as usual": make_plan(legs=3),
    "south and over the date line": make_plan(legs=3, lon=179.999, lat=-19.0, zone="Pacific/Auckland", flags=()),
    "new headings": make_plan(legs=3, headings_per_leg=4),
    "a leg cannot be swum": make_plan(legs=4, unswimmable=(2,)),
    "no leg can be swum": make_plan(legs=2, unswimmable=(1,)),
}
READ = ("GPX", "KML", "GEOJSON", "CSV")
OPTIONS = (GpsOptions(), GpsOptions(private=True), GpsOptions(name_length=6, upper_case=True, every_m=60.0))


def broken(kind: str, change, monkeypatch, folder: Path, plan=PLANS["as usual"]) -> str:
    """What is said when a file was written otherwise than it should be; nothing is left."""
    make = swim_files.text_writer
    changed: list[bool] = []

    def writer(text: str):
        other = change(text)
        changed.append(other != text)
        return make(other)

    monkeypatch.setattr(swim_files, "text_writer", writer)
    with pytest.raises(SwimPlanError) as refused:
        write_whole({folder / f"swim.{kind.lower()}": swim_files.WRITERS[kind](plan, GpsOptions())})
    assert changed == [True] and not list(folder.iterdir())
    return str(refused.value)


def without_first(pattern: str):
    return lambda text: re.sub(pattern, "", text, count=1, flags=re.S)


@pytest.mark.parametrize("options", OPTIONS, ids=("plain", "private", "small"))
@pytest.mark.parametrize("plan", PLANS.values(), ids=PLANS.keys())
def test_what_is_written_is_what_the_plan_holds(qgis_app, tmp_path: Path, plan, options: GpsOptions) -> None:
    write_whole({tmp_path / f"swim.{kind.lower()}": make(plan, options) for kind, make in swim_files.WRITERS.items()})
    assert len(list(tmp_path.iterdir())) == len(swim_files.WRITERS)


@pytest.mark.parametrize("kind", READ)
@pytest.mark.parametrize("share", [0.0, 0.3, 0.6, 0.98])
def test_a_file_that_breaks_off_is_found(qgis_app, kind: str, share: float, monkeypatch, tmp_path: Path) -> None:
    said = broken(kind, lambda text: text[: int(share * len(text))], monkeypatch, tmp_path)
    assert "read again" in said and "was not kept" in said


@pytest.mark.parametrize(
    ("kind", "change", "words"),
    [
        ("GPX", without_first(r"<wpt.*?</wpt>"), "waypoints, 2 where the plan has 3"),
        ("GPX", without_first(r"<rtept.*?</rtept>"), "points of the route, 3 where"),
        ("GPX", without_first(r"<trkpt.*?</trkpt>"), "points of the track, 62 where the plan has 63"),
        ("GPX", lambda text: text.replace("</trkseg>\n<trkseg>\n", "", 1), "segments of the track"),
        ("GPX", lambda text: text.replace("T09:41:12Z", "T09:41:13Z"), "times"),
        (
            "GPX",
            lambda text: re.sub(r"<time>[^<]*</time></trkpt>|\n<time>[^<]*</time>\n</trkpt>", "</trkpt>", text),
            "times",
        ),
        ("GPX", lambda text: text.replace('lat="42.4000000"', 'lat="42.4000020"', 1), "waypoints"),
        ("KML", without_first(r"<Placemark>.*?</Placemark>"), "places, 2 where the plan has 3"),
        ("KML", lambda text: text.replace("-28.5000000,42.4", "-28.5000020,42.4", 1), "places"),
        ("KML", lambda text: text.replace("<begin>2027-06-05T09:40:00Z", "<begin>2027-06-05T09:40:01Z", 1), "times"),
        (
            "KML",
            lambda text: re.sub(r"(<name>Track.*?<coordinates>\S+) \S+", r"\1", text, flags=re.S),
            "leg 1, 20 where",
        ),
        ("KML", without_first(r"<Folder>\n<name>Flags</name>.*?</Folder>"), "flags, 0 where the plan has 3"),
        ("GEOJSON", lambda text: text.replace('"what": "flag"', '"what": "leg"', 1), "legs, 4 where the plan has 3"),
        ("GEOJSON", lambda text: text.replace("09:41:12+", "09:41:13+"), "times"),
        ("GEOJSON", lambda text: text.replace("2027-06-05T09:41:12+", "x"), "times"),
        ("GEOJSON", lambda text: text.replace('"times"', '"moments"'), "times, 0 where the plan has 63"),
        ("GEOJSON", lambda text: text.replace('"what"', '"which"'), "places, 0 where"),
        ("GEOJSON", lambda text: text.replace("-28.5,", "-28.500002,", 1), "places"),
        ("CSV", lambda text: text.replace("Gannet Heads", "Gannet Head", 1), "end_name"),
        ("CSV", lambda text: text.replace("42.4000000", "42,4000000", 1), "CSV"),
        ("CSV", lambda text: "".join(text.splitlines(keepends=True)[:-1]), "rows, 2 where the plan has 3"),
        ("CSV", lambda text: text.replace("2027-06-05T09:40:00+00:00", "soon", 1), "depart"),
        ("CSV", lambda text: text.replace(",700.0,", ",long,", 1), "distance_m"),
        ("CSV", lambda text: text.rstrip() + ",more\r\n", "cells of row 3, 24 where the plan has 23"),
        ("CSV", lambda text: text.replace(",700.0,", ",700.1,", 1), "distance_m"),
    ],
)
def test_what_differs_from_the_plan_is_named(qgis_app, kind, change, words, monkeypatch, tmp_path: Path) -> None:
    assert words in broken(kind, change, monkeypatch, tmp_path)


@pytest.mark.parametrize("kind", READ)
def test_a_file_that_was_there_stays_when_the_new_one_is_not_kept(qgis_app, kind: str, monkeypatch, tmp_path) -> None:
    mine = tmp_path / "mine"
    mine.write_text("mine", encoding="utf-8")
    make = swim_files.text_writer
    monkeypatch.setattr(swim_files, "text_writer", lambda text: make(text[:100]))
    with pytest.raises(SwimPlanError):
        write_whole({mine: swim_files.WRITERS[kind](PLANS["as usual"], GpsOptions())})
    assert [path.read_text(encoding="utf-8") for path in tmp_path.iterdir()] == ["mine"]


def test_this_gdal_reads_all_of_them() -> None:
    assert unread_words(read_back.DRIVERS) == []


@pytest.mark.parametrize(
    ("kind", "drivers", "words"),
    [
        ("GPX", ("absent",), "GPX file is not read again"),
        ("KML", ("absent", "KML"), "Times in the KML file"),
        ("KML", ("absent",), "KML file is not read again"),
        ("GEOJSON", ("absent",), "has no driver"),
    ],
)
def test_a_driver_that_is_missing_is_said_and_the_file_is_written_all_the_same(
    qgis_app, kind: str, drivers: tuple[str, ...], words: str, monkeypatch, tmp_path: Path
) -> None:
    # Another name asked for: a driver taken out of GDAL itself is missed by all of QGIS, to the end of the process.
    monkeypatch.setitem(read_back.DRIVERS, kind, drivers)
    assert [one for one in unread_words(read_back.DRIVERS) if words in one] and len(unread_words([kind])) == 1
    write_whole({tmp_path / "swim": swim_files.WRITERS[kind](PLANS["as usual"], GpsOptions())})
    assert (tmp_path / "swim").stat().st_size > 500
