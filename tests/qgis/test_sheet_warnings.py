"""The shore contact's sheet says in plain words what is wrong with a plan, and what to look at first is biggest."""

from __future__ import annotations

import re
import subprocess
from pathlib import Path

import pytest
from made_sample import sample_at
from swims import DAY, add_constant_stream, add_route, add_swimmer, moved, new_plan, point, run
from tideleg.cards.sheet_files import _language
from tideleg.plan_package.store import append_rows
from tideleg.processing.swimcard import SwimCard


def sheet_of(folder: Path, **swim: str) -> tuple[str, Path]:
    """The HTML as text without its tags, and the PDF."""
    html, pdf = folder / "s.html", folder / "s.pdf"
    ran = run(
        SwimCard().create(),
        {"PLAN": str(sample_at(folder / "bay.gpkg")), **swim, "SHEET": str(pdf), "SHEET_HTML": str(html)},
    )
    assert ran.ok, ran.said
    return re.sub(r"\s+", " ", re.sub("<[^>]+>", " ", html.read_text(encoding="utf-8"))), pdf


@pytest.fixture(scope="module")
def stuck(qgis_app, tmp_path_factory) -> tuple[str, Path]:
    about = {"ROUTE": "Round by the Spindle", "SWIMMER": "Steady", "DEPART": "2027-06-26T10:00"}
    return sheet_of(tmp_path_factory.mktemp("stuck"), **about)


@pytest.fixture(scope="module")
def late(qgis_app, tmp_path_factory) -> tuple[str, Path]:
    about = {"ROUTE": "Slantwise from the slip", "SWIMMER": "Steady;Brisk", "DEPART": "2027-06-20T11:30"}
    return sheet_of(tmp_path_factory.mktemp("late"), **about)


def words_with_heights(pdf: Path) -> list[tuple[str, float]]:
    """The words of the first page and how high each stands on it, by poppler."""
    asked = ["pdftotext", "-bbox", "-l", "1", str(pdf), "-"]
    told = subprocess.run(asked, capture_output=True, text=True, check=True).stdout
    found = re.findall(r'yMin="([\d.]+)" xMax="[\d.]+" yMax="([\d.]+)">([^<]*)<', told)
    return [(word, float(bottom) - float(top)) for top, bottom, word in found]


def test_a_leg_that_cannot_be_swum_is_told_at_the_top_and_beside_return_alarm_and_timeline(stuck) -> None:
    words, pdf = stuck
    assert words.index("DO NOT ACCEPT THIS PLAN") < words.index("If they are not back")
    assert "LEG 3, FROM The Spindle TO Elbow North, CANNOT BE SWUM" in words
    assert re.search(r"as planned: \d\d:\d\d , only if leg 3 could be swum", words)
    assert re.search(r"ALARM at \d\d:\d\d , only if leg 3 could be swum", words)
    assert "arrive at Head Steps, only if leg 3 could be swum" in words
    assert "arrive at East Shoulder, only if" not in words
    printed = subprocess.run(["pdftotext", str(pdf), "-"], capture_output=True, text=True, check=True).stdout
    assert "DO NOT ACCEPT THIS PLAN" in printed


def test_a_plan_that_leaves_after_its_own_last_safe_minute_is_not_to_be_accepted(late) -> None:
    words, _ = late
    found = re.search(
        r"THE PLAN LEAVES Kelp Step AT (\d\d:\d\d) , WHICH IS TOO LATE: its last safe minute is (\d\d:\d\d)", words
    )
    assert found and found[1] > found[2]
    assert f"{found[1]} leave Kelp Step: TOO LATE" in words and "CANNOT BE SWUM" not in words


def test_the_alarm_is_the_biggest_thing_on_the_first_page(stuck, late) -> None:
    for words, pdf in (stuck, late):
        alarm = re.search(r"ALARM (\d\d:\d\d)", words)[1]
        heights = words_with_heights(pdf)
        tallest = max(height for _, height in heights)
        assert {word for word, height in heights if height > 0.7 * tallest} == {"ALARM", alarm}


def test_a_group_is_counted_and_of_one_name_it_is_asked_how_many(stuck, late) -> None:
    assert "How many 2" in late[0] and "How many not stated: ask before they leave" in stuck[0]


def test_what_to_mind_is_told_in_few_words(stuck) -> None:
    minded = re.findall(r"To mind: (.*?)(?= To mind:| Timeline)", stuck[0])
    assert minded and max(map(len, minded)) < 100


def test_clock_times_are_never_broken_and_a_places_name_stands_once_on_a_map(late) -> None:
    html = (late[1].with_name("s.html")).read_text(encoding="utf-8")
    assert "anywhere{" not in html and "overflow-wrap:anywhere" not in html and ".clock{white-space:nowrap}" in html
    body = html.split("<body>")[1]
    told = re.sub(r"<svg.*?</svg>", "", body)
    assert re.findall(r"\d\d:\d\d", told) == re.findall(r'<span class="clock">(\d\d:\d\d)</span>', told)
    first = re.search(r"<svg.*?</svg>", body)[0]
    names = re.findall(r'fill="#000000">([^<]*)</text>', first)
    assert len(names) == len(set(names)) and "Boathouse Slip" in names


def test_the_names_of_drift_areas_do_not_cover_each_other(late) -> None:
    html = (late[1].with_name("s.html")).read_text(encoding="utf-8")
    drift = re.findall(r"<svg.*?</svg>", html)[1]
    places = re.findall(r'<text x="([\d.]+)" y="([\d.]+)"[^>]*fill="#000000">\d+ min<', drift)
    boxes = [(float(x), float(y)) for x, y in places]
    assert len(boxes) == 3
    for number, (x, y) in enumerate(boxes):
        assert all(abs(x - u) > 40.0 or abs(y - v) >= 12.0 for u, v in boxes[number + 1 :])


@pytest.mark.parametrize(("name", "code"), [("C", "en"), ("", "en"), ("de_AT", "de"), ("en_GB", "en"), ("POSIX", "en")])
def test_the_language_is_one_that_there_is(name: str, code: str) -> None:
    assert _language(name) == code


def test_the_head_of_the_drift_table_stands_on_every_page_of_it(qgis_app, tmp_path: Path) -> None:
    plan = new_plan(tmp_path / "plan.gpkg", ZONE="UTC")
    places = [moved(0.0, 200.0 * number) for number in range(30)]
    add_route(plan, "Many", *places)
    add_swimmer(plan, 2.0)
    add_constant_stream(plan, 0.1, 90.0)
    marks = [(point(place), {"name": f"Stone {number}", "kind": "mark"}) for number, place in enumerate(places)]
    append_rows(plan, "marks", marks)
    pdf = tmp_path / "s.pdf"
    ran = run(SwimCard().create(), {"PLAN": str(plan), "DEPART": f"{DAY}T06:00", "SHEET": str(pdf)})
    assert ran.ok, ran.said
    asked = ["pdftotext", "-layout", str(pdf), "-"]
    pages = subprocess.run(asked, capture_output=True, text=True, check=True).stdout.split("\f")[:-1]
    held = [page for page in pages if page.count("within") > 3]
    assert len(held) > 1 and all("30 min later" in page for page in held)
