"""Names beside their places: none over another, none over a place, none outside."""

from itertools import combinations

import numpy as np
import pytest
from tideleg.cards.name_places import MARKER_MM, NameBox, place_names

PAGE = (80.0, 60.0)
NOWHERE = np.empty((0, 2))


def check(places, widths, boxes):
    assert len(boxes) == len(places)
    for one, other in combinations(boxes, 2):
        assert not one.touches(other)
    for number, box in enumerate(boxes):
        assert 0.0 < box.left and box.left + box.width < PAGE[0] and 0.0 < box.top and box.top + box.height < PAGE[1]
        assert box.width == widths[number]
        for other, (x, y) in enumerate(places):
            marker = NameBox(left=x - MARKER_MM, top=y - MARKER_MM, width=2 * MARKER_MM, height=2 * MARKER_MM)
            assert other == number or not box.touches(marker)
        middle = np.array([box.left + box.width / 2, box.top + box.height / 2])
        reach = np.hypot(box.width, box.height) / 2 + 2 * MARKER_MM
        assert np.hypot(*(middle - places[number])) < reach


@pytest.mark.parametrize("seed", range(30))
def test_names_never_touch_anything(seed):
    chance = np.random.default_rng(seed)
    places = chance.uniform((12.0, 12.0), (68.0, 48.0), (5, 2))
    widths = list(chance.uniform(4.0, 20.0, 5))
    boxes = place_names(places, widths, 6.0, PAGE, NOWHERE)
    if boxes is not None:
        check(places, widths, boxes)
    else:
        assert min(np.hypot(*(a - b)) for a, b in combinations(places, 2)) < 12.0  # only for a crowd


def test_a_pair_of_neighbours_finds_room_by_going_back():
    places = np.array([[40.0, 30.0], [46.0, 30.0], [40.0, 38.0], [46.0, 38.0]])
    widths = [20.0] * 4
    check(places, widths, place_names(places, widths, 6.0, PAGE, NOWHERE))


def test_a_crowd_that_cannot_be_named_is_refused():
    places = np.array([[40.0 + 5.0 * i, 30.0 + 5.0 * j] for i in range(4) for j in range(4)])
    assert place_names(places, [30.0] * 16, 6.0, PAGE, NOWHERE) is None


def test_a_name_stands_off_the_track_where_it_can():
    line = np.column_stack([np.linspace(40.0, 79.0, 40), np.full(40, 30.0)])
    (box,) = place_names(np.array([[40.0, 30.0]]), [20.0], 6.0, PAGE, line)
    assert box.ink == 0


def test_a_name_that_would_cover_too_much_is_refused():
    across, down = np.meshgrid(np.arange(0.0, 80.0), np.arange(0.0, 60.0))
    everywhere = np.column_stack([across.ravel(), down.ravel()])
    place = np.array([[40.0, 30.0]])
    assert place_names(place, [20.0], 6.0, PAGE, everywhere, most_ink=10) is None
    assert place_names(place, [20.0], 6.0, PAGE, everywhere)[0].ink > 10
