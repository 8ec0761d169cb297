"""The words of a day's picture where room is scarce: what stands together, what stands apart, what is told once."""

from __future__ import annotations

from datetime import datetime, timedelta

import pytest
from invented_days import make_strip, make_window
from qgis.PyQt.QtCore import QRectF
from qgis.PyQt.QtGui import QImage, QPainter
from tideleg.cards.day_axis import DayAxis
from tideleg.cards.day_ink import Ink
from tideleg.cards.day_page import paint_days
from tideleg.cards.day_picture import paint_day
from tideleg.cards.day_words import clock_text


def painted_words(width: float, height: float, paint):
    """The words that a painting function draws into an image of a size."""
    image = QImage(int(width), int(height), QImage.Format.Format_RGB32)
    painter = QPainter(image)
    words = paint(painter, QRectF(0.0, 0.0, width, height))
    painter.end()
    return words


def day_words(strip, width: float = 794.0, height: float = 420.0):
    return painted_words(width, height, lambda painter, rect: paint_day(painter, rect, strip, ink=Ink.on_paper()))


def texts_of(words) -> list[str]:
    return [one.text for one in words]


def test_sunset_is_told_where_dusk_has_little_night_behind_it(qgis_app) -> None:
    strip = make_strip()
    sun = next(day for day in strip.daylight if 0.0 < strip.seconds(day.civil_dusk) < strip.length_s)
    assert strip.length_s - strip.seconds(sun.civil_dusk) < 3600.0
    axis = DayAxis(QRectF(0.0, 0.0, 794.0, 420.0), strip)
    words = day_words(strip, 794.0, 420.0)
    sunset, dusk = clock_text(strip, sun.sunset, "down"), clock_text(strip, sun.civil_dusk, "down")
    told = next(one for one in words if one.text == f"sunset {sunset}, dusk {dusk}")
    assert told.rect.right() < axis.x_of(sun.sunset)


@pytest.mark.parametrize(("lat", "day", "is_there"), [(42.4, "2027-06-05", True), (75.0, "2027-12-20", False)])
def test_legend_has_twilight_only_where_it_is_drawn(qgis_app, lat: float, day: str, is_there: bool) -> None:
    words = day_words(make_strip(day, lat=lat), 794.0, 420.0)
    assert "dark" in texts_of(words)
    assert ("twilight" in texts_of(words)) is is_there


def test_now_stands_apart_from_the_times_of_a_window(qgis_app) -> None:
    strip = make_strip()
    first = strip.windows[0].first
    for minutes in range(-180, 181, 15):
        now = first + timedelta(minutes=minutes)
        words = day_words(make_strip(now=now), 520.0, 320.0)
        told = next((one.rect for one in words if one.text == "now"), None)
        beside = [one.rect for one in words if told is not None and one.rect.top() == told.top() and one.rect != told]
        gaps = [max(told.left() - rect.right(), rect.left() - told.right()) for rect in beside]
        assert all(gap >= 8.0 for gap in gaps), minutes


def test_one_departure_is_told_once(qgis_app) -> None:
    moment = datetime(2027, 6, 5, 9, 10, tzinfo=make_strip().start.tzinfo)
    words = day_words(make_strip(windows=(make_window(moment, moment, moment),)), 1100.0, 500.0)
    assert "09:10" in texts_of(words)
    assert not any("best" in one and "swim" not in one for one in texts_of(words))


def test_low_strips_leave_the_stream_clear_and_say_once_what_is_dashed(qgis_app) -> None:
    days = [make_strip(f"2027-06-{day:02d}", high_water_h=3.0 + 0.8 * day) for day in range(1, 15)]
    placed = painted_words(794.0, 1200.0, lambda painter, rect: paint_days(painter, rect, days, ink=Ink.on_paper()))
    words = texts_of(placed)
    assert sum("what you make" in one for one in words) == 1
    assert not any("you make 1.1" in one or one == "twilight" for one in words)
    assert words.count("1.1") == 14
