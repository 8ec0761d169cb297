"""tideleg:swimcard: the shore contact's sheet says what the plan says, on paper and on a telephone without network."""

from __future__ import annotations

import re
import shutil
import subprocess
from collections.abc import Iterator
from datetime import datetime, timedelta
from html.parser import HTMLParser
from pathlib import Path

import pytest
from swims import DAY, LAT, LON, add_constant_stream, add_route, add_swimmer, moved, new_plan, point, run, swum
from tideleg.plan_package.store import append_rows, write_settings
from tideleg.processing.swimcard import SwimCard

HOSTILE = "<script>alert(\"x\")</script> & 'Ness' \N{SWIMMER}"
BUOY = moved(0.0, 900.0)
SLIP = (LON, LAT)
PHONE_PX = 360


@pytest.fixture(scope="module")
def made(qgis_app, tmp_path_factory) -> Path:
    plan = new_plan(tmp_path_factory.mktemp("sheet") / "plan.gpkg", ZONE="Atlantic/Azores")
    add_route(plan, "Out & home", SLIP, BUOY, SLIP)
    add_swimmer(plan, 0.6)
    add_constant_stream(plan, 0.1, 90.0)
    marks = [(SLIP, "Slip", "entry", 0.0), (BUOY, HOSTILE, "mark", 20.0), (moved(400.0, 0.0), "Cove", "exit", 0.0)]
    append_rows(
        plan, "marks", [(point(at), {"name": name, "kind": kind, "stay_min": stay}) for at, name, kind, stay in marks]
    )
    return plan


@pytest.fixture
def plan(made: Path, tmp_path: Path) -> Path:
    return Path(shutil.copy(made, tmp_path / "plan.gpkg"))


def sheet(plan: Path, **parameters: object) -> tuple[str, Path]:
    """The HTML text and the PDF of a sheet."""
    html, pdf = plan.with_name("sheet.html"), plan.with_name("sheet.pdf")
    asked = {"PLAN": str(plan), "DEPART": f"{DAY}T10:00", "SHEET_HTML": str(html), "SHEET": str(pdf), **parameters}
    ran = run(SwimCard().create(), asked)
    assert ran.ok, ran.said
    return html.read_text(encoding="utf-8"), pdf


class Read(HTMLParser):
    """What a reader of HTML makes of it: tags with their attributes, and the text."""

    def __init__(self, text: str) -> None:
        super().__init__()
        self.tags: list[tuple[str, dict[str, str | None]]] = []
        self.words: list[str] = []
        self.feed(text)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append((tag, dict(attrs)))

    def handle_data(self, data: str) -> None:
        self.words.append(data)

    @property
    def text(self) -> str:
        return " ".join(self.words)


def paper(pdf: Path) -> str:
    """The words of a PDF, by an independent reader."""
    return subprocess.run(["pdftotext", "-layout", str(pdf), "-"], capture_output=True, text=True, check=True).stdout


def up(iso: str) -> str:
    """The clock time of the report, rounded up to the minute."""
    moment = datetime.fromisoformat(iso) + timedelta(seconds=59)
    return f"{moment:%H:%M}"


def flat(text: str) -> str:
    return re.sub(r"\s+", " ", text)


def test_times_and_alarm_are_those_of_the_plan(plan: Path) -> None:
    text, pdf = sheet(plan, EMERGENCY="Rescue +00 12 34; 998")
    report = swum(plan, plan.parent, DEPART=f"{DAY}T10:00")
    words, printed = flat(Read(text).text), flat(paper(pdf))
    home = up(report["arrive"])
    for one in (words, printed):
        assert f"Back on shore, as planned: {home}" in one
        assert "PREDICTED" in one and "Atlantic/Azores" in one
        assert "44°00.000'N 017°33.600'W" in one
        for stop in report["stops"][1:]:
            assert up(stop["arrive"]) in one
    alarm = re.search(r"ALARM at (\d\d):(\d\d)", words)
    hours, minutes = (int(part) for part in home.split(":"))
    # Half an hour after the planned return, the plan's setting; the return is rounded up and the alarm down.
    assert 60 * hours + minutes + 29 <= 60 * int(alarm[1]) + int(alarm[2]) <= 60 * hours + minutes + 30


def test_names_are_text_whatever_they_hold_and_nothing_is_fetched(plan: Path) -> None:
    text, _ = sheet(plan, FLOAT='red "<img src=http://example.invalid/x>"', NOTE="<b>call</b> Ann")
    read = Read(text)
    assert HOSTILE in flat(read.text) and "<b>call</b> Ann" in read.text
    assert {tag for tag, _ in read.tags}.isdisjoint({"script", "img", "link", "iframe", "object", "b", "base"})
    for tag, attributes in read.tags:
        assert not any(name.startswith("on") or name in ("src", "style") for name in attributes), tag
        assert (attributes.get("href") or "tel:").startswith("tel:")
    assert "url(" not in text and "@import" not in text
    assert "default-src 'none'" in text


def test_without_numbers_none_is_assumed_and_the_sheet_asks_for_them(plan: Path) -> None:
    text, pdf = sheet(plan)
    assert "tel:" not in text
    for words in (flat(Read(text).text), flat(paper(pdf))):
        assert "No emergency number was typed" in words and "not stated: ask before they leave" in words


def test_what_the_plan_holds_is_used_unless_another_is_typed(plan: Path) -> None:
    write_settings(plan, {"emergency_numbers": "Coast +00 1", "float_colours": "orange", "flag": "blue and white"})
    words = flat(Read(sheet(plan)[0]).text)
    assert "Coast +00 1" in words and "orange" in words and "blue and white" in words
    other = flat(Read(sheet(plan, FLOAT="yellow")[0]).text)
    assert "yellow" in other and "orange" not in other


def test_a_swim_that_cannot_be_done_has_no_alarm_and_says_so(plan: Path) -> None:
    text, pdf = sheet(plan, PACE=0.1)
    for words in (flat(Read(text).text), flat(paper(pdf))):
        assert "no time of return" in words and "ALARM at" not in words and "NOT FEASIBLE" in words


def test_drift_goes_with_the_stream_and_the_wind_and_is_told_from_each_stop(plan: Path) -> None:
    rows = re.findall(r"within ([\d.]+) km of 44°\d\d\.\d{3}'[NS] 017°(\d\d\.\d{3})'W", flat(Read(sheet(plan)[0]).text))
    assert len(rows) == 4 * 3  # anywhere, and from each of three stops: 30, 60 and 120 minutes
    slip = [float(minutes) for _, minutes in rows[3:6]]
    assert slip[0] > slip[1] > slip[2]  # eastward, so less and less west
    # 0.1 m/s for 120 min are 720 m or 0.54 minutes of longitude at 44 N.
    assert 33.6 - slip[2] == pytest.approx(0.54, abs=0.1)
    windy = flat(Read(sheet(plan, WIND_FROM=90.0, WIND_KN=20.0)[0]).text)
    assert "Wind from 090 true, 20 kn" in windy
    pushed = [float(west) for _, west in re.findall(r"within ([\d.]+) km of 44°\S+ 017°(\d\d\.\d{3})'W", windy)]
    assert pushed[5] > slip[2]  # pushed to the west


def test_fonts_are_in_the_pdf_and_no_page_is_blank(plan: Path) -> None:
    _, pdf = sheet(plan)
    fonts = subprocess.run(["pdffonts", str(pdf)], capture_output=True, text=True, check=True).stdout.splitlines()[2:]
    assert fonts and all(" yes " in line for line in fonts)
    pages = paper(pdf).split("\f")[:-1]
    assert 2 <= len(pages) <= 4 and all(len(page.split()) > 20 for page in pages)


def test_nothing_is_written_where_one_file_cannot_be(plan: Path) -> None:
    html = plan.with_name("sheet.html")
    asked = {"PLAN": str(plan), "DEPART": f"{DAY}T10:00", "SHEET_HTML": str(html), "SHEET": str(plan)}
    ran = run(SwimCard().create(), asked)
    assert not ran.ok and "reads from" in ran.said and not html.exists()
    ran = run(SwimCard().create(), {**asked, "SHEET": str(html)})
    assert not ran.ok and not html.exists()


@pytest.fixture(scope="module")
def browser() -> Iterator[str]:
    found = shutil.which("chromium") or shutil.which("chromium-browser")
    if found is None:
        pytest.skip("no chromium here")
    yield found


def test_no_clock_time_is_broken_over_two_lines_on_any_screen(plan: Path, browser: str) -> None:
    sheet(plan, WIND_FROM=90.0, WIND_KN=20.0)
    frames = "".join(
        f'<iframe src="sheet.html" width="{wide}" height="700"></iframe>' for wide in (320, 400, 500, 600, 800)
    )
    around = plan.with_name("around.html")
    around.write_text(
        f"<body>{frames}<script>onload=()=>{{let all=[...document.querySelectorAll('iframe')].map(f=>"
        "[...f.contentDocument.querySelectorAll('.clock')].map(c=>c.getClientRects().length));"
        "document.title=all.map(a=>a.length+':'+Math.max(...a)).join(' ')}</script>",
        encoding="utf-8",
    )
    title = re.search(r"<title>([^<]*)</title>", dumped(browser, around))[1].split()
    assert len(title) == 5 and all(int(one.split(":")[0]) > 20 and one.endswith(":1") for one in title), title


def dumped(browser: str, page: Path) -> str:
    """The page as the browser has it in the end."""
    flags = ["--headless", "--no-sandbox", "--disable-gpu", "--allow-file-access-from-files"]
    flags += ["--virtual-time-budget=4000", f"--user-data-dir={page.parent / 'browser'}"]
    command = [browser, *flags, "--dump-dom", page.as_uri()]
    return subprocess.run(command, capture_output=True, text=True, timeout=120, check=True).stdout


def test_on_a_telephone_nothing_is_wider_than_the_screen(plan: Path, browser: str) -> None:
    sheet(plan, EMERGENCY="Rescue +00 12 34", NOTE="W" * 80)
    # A page around it asks how wide the sheet wants to be in a frame as wide as a telephone.
    around = plan.with_name("around.html")
    around.write_text(
        f'<body style="margin:0"><iframe id="f" src="sheet.html" width="{PHONE_PX}" height="700" style="border:0">'
        "</iframe>"
        "<script>f.onload=()=>{let d=f.contentDocument.documentElement;"
        "document.title=d.scrollWidth+' '+d.clientWidth}</script>",
        encoding="utf-8",
    )
    title = re.search(r"<title>(\d+) (\d+)</title>", dumped(browser, around))
    wanted, shown = (int(part) for part in title.groups())
    assert PHONE_PX - 20 <= shown <= PHONE_PX and wanted <= shown
