"""The picture of a day on real painters: what is inked where, words that neither overlap nor are cut, files."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta
from itertools import combinations
from pathlib import Path

import numpy as np
import pytest
from invented_days import make_strip, make_window
from osgeo import gdal
from qgis.PyQt.QtCore import QRectF, Qt
from qgis.PyQt.QtGui import QColor, QGuiApplication, QImage, QPainter, QPalette
from tideleg.cards import day_labels
from tideleg.cards.day_axis import DayAxis
from tideleg.cards.day_export import PAGE_HEIGHT, PAGE_WIDTH, _pages, write_day_pictures
from tideleg.cards.day_ink import READS, Ink, contrast
from tideleg.cards.day_page import is_whole, page_height, paint_days
from tideleg.cards.day_picture import LEAST_HEIGHT, LEAST_WIDTH, paint_day
from tideleg.core.errors import SwimPlanError
from tideleg.core.results.day_strip import FEASIBLE, STATES

SIZES = [(LEAST_WIDTH, LEAST_HEIGHT), (480, 240), (720, 320), (1100, 500)]
DAYS = {
    "a day in June": {},
    "clocks go on": {"day": "2027-03-28"},
    "clocks go back": {"day": "2027-10-31"},
    "far north in June": {"lat": 70.0, "day": "2027-06-21"},
    "far north in December": {"lat": 80.0, "day": "2027-12-21"},
    "far south": {"lat": -47.0, "lon": 170.0, "zone": "Pacific/Auckland"},
    "a gap": {"gap_h": (9.0, 15.0)},
    "long names": {"route": "Round the outermost of the sunken tables and back by the slip " * 4, "datum": "d" * 80},
    "nothing known": {
        "tide_times_s": (),
        "tide_heights_m": (),
        "tides": (),
        "stream_times_s": (),
        "stream_least_kn": (),
        "stream_most_kn": (),
        "pace_kn": None,
        "departures_s": (),
        "states": (),
        "daylight": (),
    },
    "every limit": {"states": tuple(STATES[(row // 24) % len(STATES)] for row in range(288))},
}


def painted(strip, size=(720, 320), *, ink: Ink | None = None, scale: int = 1):
    """The picture's grey levels (height, width) and the words that were drawn."""
    width, height = size
    image = QImage(width * scale, height * scale, QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    image.setDevicePixelRatio(scale)
    painter = QPainter(image)
    words = paint_day(painter, QRectF(0.0, 0.0, width, height), strip, ink=ink or Ink.on_paper())
    painter.end()
    return pixels(image), words


def pixels(image: QImage) -> np.ndarray:
    image = image.convertToFormat(QImage.Format.Format_RGB32)
    raw = image.constBits().asarray(image.sizeInBytes())
    return np.array(raw, dtype=np.uint8).reshape(image.height(), image.width(), 4)[:, :, :3].mean(axis=2)


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("name", DAYS)
def test_words_keep_inside_and_do_not_cover_each_other(qgis_app, name: str, size) -> None:
    grey, words = painted(make_strip(**DAYS[name]), size)
    inside = QRectF(-0.1, -0.1, size[0] + 0.2, size[1] + 0.2)
    assert all(inside.contains(one.rect) for one in words), [one.text for one in words]
    for first, second in combinations(words, 2):
        assert not first.rect.adjusted(0.1, 0.1, -0.1, -0.1).intersects(second.rect), (first.text, second.text)
    assert words
    assert (grey < 128).mean() > 0.002


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("name", ["a day in June", "long names", "every limit"])
def test_letters_keep_to_the_rectangles_told(qgis_app, monkeypatch, name: str, size) -> None:
    strip = make_strip(**DAYS[name], now=make_strip().moment(3e4), planned=make_strip().moment(5e4))
    whole, words = painted(strip, size, scale=2)
    monkeypatch.setattr(day_labels, "_draw_words", lambda *nothing: None)
    without, _ = painted(strip, size, scale=2)
    lettered = np.abs(whole - without) > 8.0
    told = np.zeros_like(lettered)
    for one in words:
        rect = one.rect
        rows = slice(int(2 * rect.top()), int(np.ceil(2 * rect.bottom())) + 1)
        columns = slice(max(int(2 * rect.left()) - 1, 0), int(np.ceil(2 * rect.right())) + 1)
        assert lettered[rows, columns].any(), one.text
        told[rows, columns] = True
    # The dots of high and low waters lie over the words about them.
    assert not (lettered & ~told).any()


def test_small_picture_tells_what_a_swimmer_asks_first(qgis_app) -> None:
    strip = make_strip()
    texts = [one.text for one in painted(strip, (LEAST_WIDTH, LEAST_HEIGHT))[1]]
    for asked in ("2027-06-05", "Europe/Lisbon", "09:50\u201311:30, best 10:40", "16:00\u201317:45, best 16:50"):
        assert any(asked in text for text in texts), (asked, texts)
    for asked in ("HW 03:12 4.5 m", "LW 21:50 0.7 m", "dawn 06:44", "dusk 23:01", "you make 1.1 kn", "12"):
        assert asked in texts


def test_planned_departure_has_its_handle_and_line_at_its_time(qgis_app) -> None:
    bare = make_strip()
    moment = bare.moment(13.4 * 3600.0)
    strip = make_strip(planned=moment, planned_home=moment + timedelta(minutes=96), windows=())
    grey, words = painted(strip, (1100, 500))
    axis = DayAxis(QRectF(0.0, 0.0, 1100.0, 500.0), strip)
    x, lane = int(axis.x_of(moment)), axis.lanes["departures"]
    line = grey[int(axis.lanes["stream"].top()) + 30 : int(axis.lanes["tide"].bottom()), x - 2 : x + 3]
    assert (line.min(axis=1) < 90).all()
    handle = grey[int(lane.top()) + 1 : int(lane.top()) + 6, x - 2 : x + 3]
    assert (handle < 60).mean() > 0.8
    assert any(one.text == "planned 13:24" for one in words)
    assert any(one.text == "96 min, home 15:00" for one in words)


def test_lanes_stay_where_they_are_while_a_departure_is_dragged(qgis_app) -> None:
    bare = make_strip()
    rect = QRectF(0.0, 0.0, 460.0, 300.0)
    for states in (bare.states, ("stream",) * len(bare.states)):
        found = []
        for hour in (3.0, 10.0, 13.4, 23.0):
            planned = bare.moment(3600.0 * hour)
            home = None if hour == 3.0 else planned + timedelta(minutes=70)
            windows = bare.windows if states is bare.states else ()
            strip = make_strip(states=states, windows=windows, planned=planned, planned_home=home)
            found.append(DayAxis(rect, strip).lanes)
        assert all(lanes == found[0] for lanes in found)


def test_stream_faster_than_the_swimmer_is_darker(qgis_app) -> None:
    strip = make_strip(daylight=(), windows=(), tides=())
    grey, _ = painted(strip, (1100, 500))
    axis = DayAxis(QRectF(0.0, 0.0, 1100.0, 500.0), strip)
    row = int(np.argmax(strip.stream_most_kn))
    x = int(axis.x_of_s(strip.stream_times_s[row]))
    column = grey[int(axis.lanes["stream"].top()) + 1 : int(axis.lanes["stream"].bottom()) - 1, x]
    ink = Ink.on_paper()
    for color in (ink.band, ink.beyond):
        assert (np.abs(column - color.red()) < 2.0).sum() >= 5
    # The darker part lies above.
    assert (
        np.flatnonzero(np.abs(column - ink.beyond.red()) < 2.0)[0]
        < np.flatnonzero(np.abs(column - ink.band.red()) < 2.0)[0]
    )


def test_windows_that_begin_or_end_on_another_day_say_so(qgis_app) -> None:
    bare = make_strip()
    night = make_window(bare.moment(-3600.0), bare.moment(7200.0), bare.moment(3600.0))
    late = make_window(bare.moment(80000.0), bare.moment(90000.0), bare.moment(85000.0))
    _, words = painted(make_strip(windows=(night, late)), (1100, 500))
    texts = [one.text for one in words]
    assert "until 02:00, best 01:00" in texts
    assert "from 22:14, best 23:37" in texts


def test_a_time_that_comes_twice_carries_its_offset(qgis_app) -> None:
    zone = make_strip().start.tzinfo
    first, last = (datetime(2027, 10, 31, 1, 30, tzinfo=zone, fold=fold) for fold in (0, 1))
    _, words = painted(make_strip("2027-10-31", windows=(make_window(first, last, first),)), (1100, 500))
    assert any("01:30 UTC+1\u201301:30 UTC" in one.text for one in words)


@pytest.mark.parametrize("seed", range(12))
def test_any_size_and_any_day_keep_words_apart(qgis_app, seed: int) -> None:
    chance = np.random.default_rng(seed)
    for _ in range(4):
        size = int(chance.integers(60, 1300)), int(chance.integers(40, 900))
        first_h = float(chance.uniform(0.0, 20.0))
        strip = make_strip(
            str(chance.choice(["2027-06-05", "2027-03-28", "2027-10-31", "2027-12-21"])),
            lat=float(chance.uniform(-75.0, 75.0)),
            high_water_h=float(chance.uniform(0.0, 12.4)),
            greatest_kn=float(chance.uniform(0.0, 6.0)),
            pace_kn=float(chance.uniform(0.4, 2.5)),
            gap_h=(first_h, first_h + float(chance.uniform(0.0, 8.0))),
        )
        planned = strip.moment(float(chance.uniform(0.0, strip.length_s)))
        strip = replace(strip, planned=planned, planned_home=planned + timedelta(hours=2), now=strip.moment(4e4))
        _, words = painted(strip, size)
        inside = QRectF(-0.1, -0.1, size[0] + 0.2, size[1] + 0.2)
        assert all(inside.contains(one.rect) for one in words), size
        for one, other in combinations(words, 2):
            assert not one.rect.adjusted(0.1, 0.1, -0.1, -0.1).intersects(other.rect), (size, one.text, other.text)


def ink_of(grey: np.ndarray, area: QRectF) -> np.ndarray:
    """Which pixels (h, w) of an area are dark."""
    return grey[int(area.top()) : int(area.bottom()), int(area.left()) : int(area.right())] < 100


def test_curve_has_no_ink_where_the_tide_is_not_known(qgis_app) -> None:
    strip = make_strip(gap_h=(9.0, 15.0), tides=(), windows=())
    grey, words = painted(strip, (1100, 500))
    axis = DayAxis(QRectF(0.0, 0.0, 1100.0, 500.0), strip)
    lane = axis.lanes["tide"]
    low, high = axis.x_of_s(9.3 * 3600.0), axis.x_of_s(14.7 * 3600.0)
    gap = QRectF(low, lane.top() + 1.0, high - low, lane.height() - 2.0)
    told = [one for one in words if one.text == "tide not known" and gap.intersects(one.rect)]
    assert told
    inside = ink_of(grey, gap)
    for one in told:
        left, right = (int(x - gap.left()) for x in (one.rect.left(), one.rect.right()))
        inside[:, max(left - 2, 0) : right + 2] = False
    assert not inside.any()
    known = QRectF(axis.x_of_s(2.0 * 3600.0), lane.top() + 1.0, 60.0, lane.height() - 2.0)
    assert ink_of(grey, known).any(axis=0).all()


def test_feasible_stretch_is_clear_and_framed_where_its_times_are(qgis_app) -> None:
    states = tuple(FEASIBLE if 100 <= row < 160 else "stream" for row in range(288))
    strip = make_strip(states=states, windows=())
    grey, words = painted(strip, (1100, 500))
    axis = DayAxis(QRectF(0.0, 0.0, 1100.0, 500.0), strip)
    lane = axis.lanes["departures"]
    (first_s, last_s) = next((a, b) for state, a, b in strip.state_runs() if state == FEASIBLE)
    left, right = axis.x_of_s(first_s), axis.x_of_s(last_s)
    quiet = QRectF(left + 4.0, lane.top() + 4.0, 0.2 * (right - left), lane.height() - 8.0)
    hatched = QRectF(left - 60.0, lane.top() + 2.0, 40.0, lane.height() - 4.0)
    assert not ink_of(grey, quiet).any()
    assert ink_of(grey, hatched).any()
    frame = grey[int(lane.center().y()), int(left) - 3 : int(left) + 4]
    assert frame.min() < 60
    assert any(one.text == "feasible" and left < one.rect.center().x() < right for one in words)


def test_no_two_hatches_look_alike(qgis_app) -> None:
    shares = {}
    for state in STATES:
        strip = make_strip(states=(state,) * 288, windows=(), daylight=())
        grey, _ = painted(strip, (1100, 500))
        axis = DayAxis(QRectF(0.0, 0.0, 1100.0, 500.0), strip)
        lane = axis.lanes["departures"]
        shares[state] = grey[
            int(lane.top()) + 3 : int(lane.bottom()) - 3, int(lane.left()) + 20 : int(lane.left()) + 120
        ]
    for first, second in combinations(STATES, 2):
        assert np.abs(shares[first] - shares[second]).mean() > 2.0, (first, second)


@pytest.mark.parametrize("name", ["a day in June", "clocks go on", "clocks go back", "far south"])
def test_places_and_times_are_each_others_inverse(qgis_app, name: str) -> None:
    strip = make_strip(**DAYS[name])
    axis = DayAxis(QRectF(10.0, 20.0, 900.0, 400.0), strip)
    lane = axis.lanes["departures"]
    for share in np.linspace(0.0, 1.0, 23):
        moment = strip.moment(float(share) * strip.length_s)
        x = axis.x_of(moment)
        assert lane.left() - 1e-6 <= x <= lane.right() + 1e-6
        assert abs((axis.moment_at(x) - moment).total_seconds()) < 1e-3


def test_an_hour_that_comes_twice_is_as_wide_as_any_other_and_told(qgis_app) -> None:
    strip = make_strip("2027-10-31")
    axis = DayAxis(QRectF(0.0, 0.0, 1000.0, 400.0), strip)
    zone = strip.start.tzinfo
    twice = [axis.x_of(datetime(2027, 10, 31, 1, 30, tzinfo=zone, fold=fold)) for fold in (0, 1)]
    assert twice[1] - twice[0] == pytest.approx(axis.x_of_s(3600.0) - axis.x_of_s(0.0))
    _, words = painted(strip, (1100, 500))
    assert any("clocks go back 60 min" in one.text for one in words)


def test_window_times_are_rounded_to_the_safe_side(qgis_app) -> None:
    strip = make_strip()
    zone = strip.start.tzinfo
    first, last = datetime(2027, 6, 5, 9, 10, 31, tzinfo=zone), datetime(2027, 6, 5, 11, 49, 50, tzinfo=zone)
    window = make_window(first, last, first + timedelta(minutes=60))
    _, words = painted(make_strip(windows=(window,)), (1100, 500))
    assert any("09:11\u201311:49" in one.text for one in words)


@pytest.mark.parametrize("dark", [False, True])
def test_widget_inks_have_contrast(qgis_app, dark: bool) -> None:
    palette = QPalette(QGuiApplication.palette())
    paper, text = (QColor("#202326"), QColor("#e8e8e8")) if dark else (QColor("white"), QColor("#232629"))
    palette.setColor(QPalette.ColorRole.Base, paper)
    palette.setColor(QPalette.ColorRole.Text, text)
    ink = Ink.of_palette(palette)
    assert contrast(ink.paper, ink.ink) >= READS and contrast(ink.paper, ink.soft) >= READS
    grey, _ = painted(make_strip(), ink=ink)
    assert abs(np.median(grey) - np.mean(paper.getRgb()[:3])) < 40.0


def test_twice_the_device_pixels_is_the_same_picture(qgis_app) -> None:
    once, words = painted(make_strip())
    twice, same = painted(make_strip(), scale=2)
    assert [one.text for one in words] == [one.text for one in same]
    small = twice.reshape(320, 2, 720, 2).mean(axis=(1, 3))
    assert np.abs(small - once).mean() < 6.0


def test_right_to_left_desktops_keep_time_running_to_the_right(qgis_app) -> None:
    plain, _ = painted(make_strip())
    QGuiApplication.setLayoutDirection(Qt.LayoutDirection.RightToLeft)
    try:
        turned, _ = painted(make_strip())
    finally:
        QGuiApplication.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
    assert np.array_equal(plain, turned)


def several(count: int):
    start = datetime(2027, 6, 1)  # noqa: DTZ001  only its date is used
    return tuple(
        make_strip((start + timedelta(days=day)).strftime("%Y-%m-%d"), high_water_h=3.0 + 0.8 * day)
        for day in range(count)
    )


@pytest.mark.parametrize("ending", ["png", "pdf", "svg"])
@pytest.mark.parametrize("count", [1, 3, 16])
def test_files_can_be_read_back_and_are_not_blank(qgis_app, tmp_path: Path, ending: str, count: int) -> None:
    path = tmp_path / f"days.{ending}"
    write_day_pictures(several(count), path)
    if ending == "svg":
        text = path.read_text(encoding="utf-8")
        assert text.rstrip().endswith("</svg>") and text.count("<text") > 10 * count
        return
    if ending == "pdf":
        assert path.read_bytes().startswith(b"%PDF")
        source = gdal.OpenEx(str(path), open_options=["DPI=60"])
    else:
        source = gdal.Open(str(path))
    grey = source.ReadAsArray()[:3].mean(axis=0)
    assert 0.003 < (grey < 128).mean() < 0.5
    assert [one.name for one in tmp_path.iterdir() if not one.name.endswith(".xml")] == [path.name]


def test_a_fortnight_and_more_goes_on_over_pages(qgis_app, tmp_path: Path) -> None:
    path = tmp_path / "season.pdf"
    write_day_pictures(several(40), path)
    source = gdal.OpenEx(str(path))
    assert len(source.GetMetadata("SUBDATASETS")) == 2 * 3


@pytest.mark.parametrize("count", [1, 3, 4, 14, 15, 31])
def test_pages_hold_all_days_in_order_and_none_is_nearly_empty(count: int) -> None:
    days = several(count)
    pages = _pages(days)
    assert tuple(day for page in pages for day in page) == days
    assert max(len(page) for page in pages) - min(len(page) for page in pages) <= 1
    assert {is_whole(page) for page in pages} == {is_whole(days)}
    assert len(pages) == -(-count // 14)
    assert all(page_height(page, PAGE_WIDTH) <= PAGE_HEIGHT for page in pages)


def test_a_day_alone_is_a_page_of_a5(qgis_app, tmp_path: Path) -> None:
    write_day_pictures(several(1), tmp_path / "day.pdf")
    source = gdal.OpenEx(str(tmp_path / "day.pdf"), open_options=["DPI=254"])
    assert (source.RasterXSize / 10.0, source.RasterYSize / 10.0) == pytest.approx((210.0, 148.0), abs=0.5)
    write_day_pictures(several(1), tmp_path / "day.png")
    image = QImage(str(tmp_path / "day.png"))
    assert image.width() / image.dotsPerMeterX() == pytest.approx(0.210, abs=5e-4)


def test_words_of_a_page_of_days_do_not_cover_each_other(qgis_app) -> None:
    days = several(14)
    image = QImage(794, 1200, QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    painter = QPainter(image)
    words = paint_days(painter, QRectF(0.0, 0.0, 794.0, page_height(days, 794.0)), days, ink=Ink.on_paper())
    painter.end()
    for first, second in combinations(words, 2):
        assert not first.rect.adjusted(0.1, 0.1, -0.1, -0.1).intersects(second.rect), (first.text, second.text)


@pytest.mark.parametrize(("name", "days", "words"), [("days.gif", 1, ".gif"), ("days.png", 0, "no days")])
def test_what_cannot_be_drawn_is_refused_and_leaves_nothing(qgis_app, tmp_path, name, days, words) -> None:
    with pytest.raises(SwimPlanError, match=words):
        write_day_pictures(several(days), tmp_path / name)
    assert list(tmp_path.iterdir()) == []


def test_a_folder_that_cannot_be_written_to_is_refused(qgis_app, tmp_path: Path) -> None:
    blocked = tmp_path / "file"
    blocked.write_text("a file, no folder", encoding="utf-8")
    for ending in ("png", "pdf", "svg"):
        with pytest.raises(SwimPlanError):
            write_day_pictures(several(1), blocked / f"days.{ending}")
