"""The card as plain text says what the printed card says, in the same figures."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest
from plans import make_plan, with_turn_backs
from qgis.core import QgsLayoutItemLabel
from tideleg.cards.card_foot import caution_words
from tideleg.cards.card_text import card_text
from tideleg.cards.wet_card import card_layout
from tideleg.core.results.card import clock_down, clock_up, position_text, whole_minutes


def printed_words(plan) -> set[str]:
    """The words of the printed card's labels, numbers of legs left out."""
    layout = card_layout(plan).layout
    texts = [item.text() for item in layout.items() if isinstance(item, QgsLayoutItemLabel)]
    return {word for text in texts for word in re.findall(r"[\w°.:'-]{3,}", text)}


@pytest.mark.parametrize("legs", [2, 5])
def test_each_leg_has_heading_times_minutes_and_position(qgis_app, legs: int) -> None:
    plan = make_plan(legs=legs)
    text = card_text(plan)
    for leg in plan.legs:
        start = text.index(f"{leg.number}  {leg.end_name}: HEADING {leg.card_heading}, ")
        row = text[start : text.index("\n", start)]
        assert f"leave {clock_up(leg.depart)}, arrive {clock_up(leg.arrive)}, {whole_minutes(leg.minutes)} min" in row
        below = text[text.index("\n", start) + 1 :].partition("\n")[0]
        assert position_text(leg.end_lon, leg.end_lat) in below and f"{leg.stream_kn:.1f} kn" in below


def test_times_headings_positions_and_depths_of_the_printed_card_stand_in_the_text(qgis_app) -> None:
    plan = make_plan(legs=4)
    text = card_text(plan)
    figures = {word for word in printed_words(plan) if re.search(r"\d", word)}
    assert len(figures) > 30
    missing = {word for word in figures if word.rstrip(".") not in text}
    # On paper the foot has its depths in a table, and the sketch its scale bar.
    assert not {word for word in missing if re.fullmatch(r"\d\d:\d\d|\d{3}M|.*°.*", word)}, missing


def test_the_turn_back_and_the_alarm_are_there(qgis_app) -> None:
    plan = with_turn_backs(make_plan(legs=3))
    text = card_text(plan)
    assert f"ALARM (shore contact) {clock_down(plan.alarm)}" in text
    for stop in plan.turn_back.stops:
        good, bad = stop.latest_planned_exit, stop.latest_planned_exit_pessimistic
        words = f"{stop.name}: TURN BACK BY {bad:%H:%M} to Kettle Slip, on a bad day; as predicted {good:%H:%M}; ELSE"
        assert words in text
    none = with_turn_backs(make_plan(legs=3), latest_leave=None, latest_planned_exit=None, exit=None)
    assert "TURN BACK BY --:-- no exit is reached in time; do not plan to be here" in card_text(none)
    assert "TURN BACK" not in card_text(make_plan(legs=3))  # on paper there are boxes to fill in


def test_a_leg_that_cannot_be_swum_says_why_and_those_behind_it_that_they_hang_on_it(qgis_app) -> None:
    plan = make_plan(legs=4, unswimmable=(2,))
    text = card_text(plan)
    assert "NOT FEASIBLE, PREDICTED" in text.split("\n")[0]
    row = next(line for line in text.split("\n") if line.startswith("2  "))
    assert "NOT SWIMMABLE. " in row and plan.legs[1].reason[1:] in row
    assert text.count("NOT SWIMMABLE") == 1


def test_what_is_not_known_is_said_and_never_nought(qgis_app) -> None:
    plan = make_plan(legs=2, bare=True)
    legs = tuple(replace(leg, stream_kn=None, stream_set_deg=None) for leg in plan.legs)
    text = card_text(replace(plan, legs=legs))
    assert text.count("stream not known") == 2 and "0.0 kn" not in text
    assert "Tide not known." in text and "Depths not known." in text
    assert "nan" not in text.lower().replace(plan.route.lower(), "") and "None" not in text


def test_new_headings_on_a_leg_are_listed_with_their_times(qgis_app) -> None:
    plan = make_plan(legs=2, headings_per_leg=3)
    lines = card_text(plan).split("\n")
    assert any(re.fullmatch(r"   \d\d:\d\d \d{3}M(, \d\d:\d\d \d{3}M)*", line) for line in lines)


def test_it_ends_with_the_caution_and_the_zone_is_said_once(qgis_app) -> None:
    plan = make_plan(legs=3)
    text = card_text(plan)
    assert text.endswith(f"\n\n{caution_words()}\n")
    assert text.count(plan.zone) == 1 and "set arrows" not in text.lower()
