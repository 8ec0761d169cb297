"""The times above the windows of a day's picture, and what is said of departures that come home in the dark."""

from __future__ import annotations

from itertools import combinations

import numpy as np
import pytest
from invented_days import make_strip, make_window
from qgis.PyQt.QtCore import QRectF
from qgis.PyQt.QtGui import QColor, QImage, QPainter
from tideleg.cards.day_hatch import HATCHES
from tideleg.cards.day_ink import Ink
from tideleg.cards.day_picture import paint_day
from tideleg.cards.day_words import legend_hatches, state_meaning, state_word
from tideleg.core.results.day_strip import ENDS_DARK, FEASIBLE
from tideleg.core.solve.windows.day_strips import states_of

SIZES = [(360, 300), (720, 320)]


def day_of(*spans_h: tuple[float, float]):
    """A day with these windows, in hours; what is stopped is stopped by the stream."""
    plain = make_strip()
    at = [[plain.moment(3600.0 * hour) for hour in (low, high, (low + high) / 2.0)] for low, high in spans_h]
    inside = [any(low <= t / 3600.0 <= high for low, high in spans_h) for t in plain.departures_s]
    states = tuple(FEASIBLE if one else "stream" for one in inside)
    return make_strip(windows=tuple(make_window(*moments) for moments in at), states=states)


def painted(strip, size):
    image = QImage(*size, QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    painter = QPainter(image)
    words = paint_day(painter, QRectF(0.0, 0.0, *size), strip, ink=Ink.on_paper())
    painter.end()
    return words


def hour_under(x: float, words) -> float:
    """The hour of the day below a place, by the numbers of the hours."""
    marks = [(float(one.text), one.rect.center().x()) for one in words if one.text.isdigit() and len(one.text) == 2]
    hours, places = zip(*marks)
    slope, offset = np.polyfit(places, hours, 1)
    return slope * x + offset


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("count", [1, 2, 3, 5, 9])
def test_times_stand_above_their_window_and_those_left_out_are_counted(qgis_app, count: int, size) -> None:
    spans = [(4.0 + 16.0 * n / count, 4.6 + 16.0 * n / count) for n in range(count)]
    words = painted(day_of(*spans), size)
    times = [one for one in words if "\u2013" in one.text and one.text[:2].isdigit() and len(one.text) <= 24]
    assert times
    for one in times:
        low, high = (int(clock[:2]) + int(clock[3:5]) / 60.0 for clock in one.text.split(",")[0].split("\u2013"))
        left, right = (hour_under(x, words) for x in (one.rect.left(), one.rect.right()))
        assert left - 0.2 <= (low + high) / 2.0 <= right + 0.2, one.text
    told = [one.text for one in words if one.text.startswith("+")]
    assert told == ([f"+{count - len(times)} more"] if len(times) < count else [])
    for first, second in combinations([one for one in words], 2):
        assert not first.rect.adjusted(0.1, 0.1, -0.1, -0.1).intersects(second.rect), (first.text, second.text)


def test_nine_windows_do_not_all_find_room_in_the_dock(qgis_app) -> None:
    words = painted(day_of(*((4.0 + 2.0 * n, 4.6 + 2.0 * n) for n in range(9))), SIZES[0])
    assert any(one.text.startswith("+") and one.text.endswith("more") for one in words)


@pytest.mark.parametrize("span", [(23.9, 23.95), (0.05, 0.1)])
@pytest.mark.parametrize("size", SIZES)
def test_the_only_window_keeps_its_times_at_the_ends_of_the_day(qgis_app, size, span) -> None:
    said = [one.text for one in painted(day_of(span), size)]
    assert any("\u2013" in text and text[:2].isdigit() for text in said) and not any("more" in text for text in said)


def test_a_departure_by_day_that_comes_home_in_the_dark_is_not_called_night(qgis_app) -> None:
    departures_s = 3600.0 * np.array([3.0, 12.0, 20.0, 23.0])
    nights = ((0.0, 3600.0 * 5.0), (3600.0 * 22.0, 3600.0 * 24.0))
    assert states_of(["dark", "", "dark", "dark"], departures_s, nights) == ("dark", FEASIBLE, ENDS_DARK, "dark")
    strip = make_strip()
    late = make_strip(windows=(), states=(ENDS_DARK,) * len(strip.departures_s))
    assert ENDS_DARK in legend_hatches(late) and "dark" in legend_hatches(
        late
    )  # the night itself, in the lane of light
    assert state_word(ENDS_DARK) != state_word("dark") and state_meaning(ENDS_DARK) != state_meaning("dark")
    assert HATCHES[ENDS_DARK] is not HATCHES["dark"]
