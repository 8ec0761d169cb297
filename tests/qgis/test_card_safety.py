"""What a wet card must never hide: heads, the last safe row, grave flags, the safe time, and what is not on it."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest
from plans import make_plan, with_turn_backs, with_ways_home
from qgis.core import QgsLayoutItemLabel, QgsReadWriteContext
from tideleg.cards.card_flags import kind_words
from tideleg.cards.card_templates import open_template, shipped
from tideleg.cards.card_text import card_text
from tideleg.cards.turn_back_block import turn_back_words
from tideleg.cards.ways_home import home_tables, late_tables
from tideleg.cards.wet_card import CardLook, card_layout, write_card
from tideleg.core.results.card import clock_up, isolated
from tideleg.core.results.flag import FLAG_KINDS, Flag
from tideleg.core.results.shared import without_marks

HEBREW = "\u05e8\u05d9\u05e3"
HEADING = re.compile(r"\d{3}M")
OTHER_PARTS = ("home by departure", "transits", "if late", "foot", "positions", "sketch", "flags")


def sides_of(plan, look) -> list[list[str]]:
    """The words of each side in the order they are read."""
    card = card_layout(plan, look)
    labels = [item for item in card.layout.items() if isinstance(item, QgsLayoutItemLabel)]
    labels.sort(key=lambda label: (label.page(), label.pagePos().y(), label.pagePos().x()))
    return [[label.currentText() for label in labels if label.page() == side] for side in range(card.sides)]


def joined(plan, look) -> str:
    return " ".join(word for side in sides_of(plan, look) for word in side)


def with_many_ways(plan, rows=24):
    """Ways if late every ten minutes: safe to the last but one, which is off the ten minutes."""
    stops = []
    for stop in plan.turn_back.stops:
        like = stop.if_late[0]
        ways = [
            replace(like, leave=stop.leave + timedelta(minutes=10 * number), safe=True, safe_pessimistic=number < 5)
            for number in range(rows - 2)
        ]
        last = ways[-1].leave + timedelta(minutes=4)
        ways += [replace(ways[-1], leave=last), replace(ways[-1], leave=last + timedelta(minutes=6), safe=False)]
        stops.append(replace(stop, if_late=tuple(ways)))
    return replace(plan, turn_back=replace(plan.turn_back, stops=tuple(stops)))


LATE_PLAN = with_many_ways(with_ways_home(with_turn_backs(make_plan(legs=4))))


def flag_of(severity: str, words: str, kind: str = "channel") -> Flag:
    return Flag(kind=kind, severity=severity, message=words, brief=words, points=((0.0, 0.0),))


@pytest.mark.parametrize("paper", ["A6", "A5", "A4"])
def test_no_side_begins_with_a_heading_without_where_from_and_where_to(qgis_app, paper) -> None:
    sides = sides_of(LATE_PLAN, CardLook(paper=paper))
    assert len(sides) > 1
    for words in sides[1:]:
        first = next((number for number, word in enumerate(words) if HEADING.fullmatch(word)), None)
        if first is not None:
            head = " ".join(words[:first])
            assert re.search(r"LATE at .+ to .+|HOME from .+ to .+|HEADING", head), head


def test_a_table_that_goes_on_says_its_head_again(qgis_app) -> None:
    words = joined(LATE_PLAN, CardLook(paper="A5"))
    assert re.search(r"(LATE at .{3,40}: to|HOME from .{3,40} to) .{3,40}, leave at \(goes on\)", words)


def test_the_black_block_that_goes_on_says_its_head_again(qgis_app) -> None:
    again = 0
    for words in sides_of(with_turn_backs(make_plan(legs=12)), CardLook(paper="A5"))[1:]:
        if any(word.startswith("as predicted") or "as predicted" in word for word in words):
            assert any(word.startswith("TURN BACK BY, to Kettle Slip") for word in words)
            again += "TURN BACK BY, to Kettle Slip, on a bad day (goes on)" in " ".join(words)
    assert again


@pytest.mark.parametrize("most", [2, 3, 5, 9, None])
def test_rows_if_late_are_thinned_and_the_last_safe_one_always_stays(most) -> None:
    stop = LATE_PLAN.turn_back.stops[0]
    table = late_tables(LATE_PLAN, most)[0]
    last = f"{stop.if_late[-2].leave:%H:%M}"
    times = [line.leave for line in table.lines]
    assert times[0] == f"{stop.if_late[0].leave:%H:%M}" and last in times
    assert len(times) <= (most or 99)
    left_out = len(stop.if_late) - 1 - len(times)  # one is too late
    count = {0: "", 1: ". 1 row is left out."}.get(left_out, f". {left_out} rows are left out.")
    assert table.ending == (f"TOO LATE after {last}{count}" if most else "")
    assert most or "TOO LATE" in table.lines[-1].whole


def test_rows_that_end_before_it_is_too_late_say_so() -> None:
    stops = tuple(replace(stop, if_late=stop.if_late[:3]) for stop in LATE_PLAN.turn_back.stops)
    plan = replace(LATE_PLAN, turn_back=replace(LATE_PLAN.turn_back, stops=stops))
    last = f"{stops[0].if_late[-1].leave:%H:%M}"
    said = f"Later rows are not on this card: it covers leaving until {last}."
    assert late_tables(plan)[0].ending == said and said in card_text(plan)


def test_headings_home_do_not_repeat_the_ways_if_late() -> None:
    stop = LATE_PLAN.turn_back.stops[0]
    ways = tuple(replace(way, exit=stop.planned_exit) for way in stop.if_late)
    plan = replace(LATE_PLAN, turn_back=replace(LATE_PLAN.turn_back, stops=(replace(stop, if_late=ways),)))
    (table,) = home_tables(plan)
    assert all(line.leave < f"{stop.leave:%H:%M}" for line in table.lines) and "see LATE" in table.ending
    assert len(home_tables(plan, with_late=False)[0].lines) > len(table.lines)


def test_tables_that_are_left_out_are_named(qgis_app) -> None:
    look = CardLook(paper="A6")
    words = joined(with_ways_home(with_turn_backs(make_plan(legs=5))), look)
    for head, name in (("HOME from", "headings home"), ("LATE at", "ways if late")):
        assert (head in words) or re.search(f"Not on this card: [^.]*({name}|ways home)", words), name


def test_the_time_read_first_is_that_of_a_bad_day_and_no_statement_shares_a_line_with_it() -> None:
    stop = with_turn_backs(make_plan(legs=3), else_exit=None).turn_back.stops[0]
    said = turn_back_words(stop)
    assert said.clock == f"{stop.latest_planned_exit_pessimistic:%H:%M}"
    assert said.lines == (
        "to Kettle Slip, on a bad day",
        f"as predicted {stop.latest_planned_exit:%H:%M}",
        "later no exit in time",
    )
    soon = replace(stop, else_exit="Boat Steps", else_not_before=stop.leave)
    assert turn_back_words(soon).lines[-1] == f"ELSE EXIT Boat Steps, from {clock_up(stop.leave)} on"


def test_a_plan_that_leaves_too_late_says_so_first_and_keeps_the_bad_days_time(qgis_app) -> None:
    plan = make_plan(legs=3)
    first = plan.stops[1].arrive
    late = with_turn_backs(
        plan, latest_planned_exit=first, latest_planned_exit_pessimistic=first - timedelta(minutes=9)
    )
    for paper in ("A6", "A5", "A4"):
        words = joined(late, CardLook(paper=paper)).replace("\u00a0", " ")
        assert words.index("THE PLAN LEAVES") < words.index("TURN BACK BY")
        assert f"{first - timedelta(minutes=9):%H:%M}" in words and "on a bad day" in words
    assert "THE PLAN LEAVES TOO LATE" in card_text(late)


def test_every_stop_and_warning_stands_in_words_before_a_sketch_does(qgis_app) -> None:
    grave = [flag_of("warn", f"Gut {number} is deep, mind the boats that run there") for number in range(9)]
    plan = make_plan(legs=8, flags=tuple(grave))
    for paper in ("A5", "A4"):
        words = joined(plan, CardLook(paper=paper))
        assert all(flag.brief in words for flag in grave) and "more flag" not in words


def test_flags_that_are_left_out_are_counted_with_their_gravity(qgis_app) -> None:
    grave = [flag_of("warn", f"Gut {number}: " + "it is deep there. " * 12) for number in range(40)]
    words = joined(make_plan(flags=tuple(grave)), CardLook(paper="A6", sides=2))
    shown = len(re.findall(r"WARNING: Gut", words))
    hidden = 40 - shown
    assert shown >= 1 and f"{hidden} more flags, {hidden} of them stops or warnings" in words


@pytest.mark.parametrize("part", OTHER_PARTS)
def test_a_part_taken_out_of_a_layout_costs_no_other_part(qgis_app, tmp_path: Path, part) -> None:
    layout = open_template(shipped("A5", 4))
    for item in layout.items():
        if isinstance(item, QgsLayoutItemLabel):
            item.setText("\n".join(line for line in item.text().splitlines() if line != part))
    own = tmp_path / "own.qpt"
    assert layout.saveAsTemplate(str(own), QgsReadWriteContext())
    plan = with_ways_home(with_turn_backs(make_plan(legs=3)))
    words = joined(plan, CardLook(template=own))
    signs = {"home by departure": "HOME from", "if late": "LATE at", "foot": "ALARM", "flags": "STOP:"}
    for name, sign in signs.items():
        assert (sign in words) == (name != part), name
    assert (card_layout(plan, CardLook(template=own)).sketch is None) == (part == "sketch")
    # Transits this plan has none, and a row as high as these holds its position.
    assert ("Not on this card:" in words) == (part not in ("transits", "positions"))


@pytest.mark.parametrize("width", ["A6", "A5", "A4"])
def test_the_predicted_stream_has_a_head_of_its_own(qgis_app, width) -> None:
    assert "set, kn" in joined(make_plan(legs=2), CardLook(paper=width))


def test_a_name_from_right_to_left_is_isolated_from_the_figures_beside_it(qgis_app) -> None:
    assert isolated("Reef 7") == "Reef 7" and isolated(HEBREW) == f"\u2068{HEBREW}\u2069"
    plan = make_plan(legs=3)
    stops = tuple(
        replace(stop, name=HEBREW if number == 1 else stop.name, swing_m=27.0) for number, stop in enumerate(plan.stops)
    )
    text = card_text(replace(plan, stops=stops))
    assert f"\u2068{HEBREW}\u2069 27 m, " in text
    late = with_ways_home(with_turn_backs(make_plan(legs=3, names=("Slip", HEBREW))))
    heads = [table.words for table in late_tables(late)]
    assert any(head.startswith(f"LATE at \u2068{HEBREW}\u2069: to Boat Steps") for head in heads)


def test_a_card_to_share_has_no_heads_nor_sentences_of_what_is_not_on_it(qgis_app) -> None:
    plan = without_marks(with_turn_backs(make_plan(legs=3)))
    plan = replace(plan, stream_turns=())
    words = [word for side in sides_of(plan, CardLook(paper="A5")) for word in side]
    for gone in ("HEADING", "bearing", "distance", "position", "set, kn"):
        assert gone not in words, gone
    words = " ".join(words)
    assert "Set arrows" not in words and "M is magnetic" not in words
    assert "M is magnetic" not in card_text(plan)
    assert "touches an area with rules" in words and "closed_area" not in words


def test_every_kind_of_flag_has_words_to_share() -> None:
    assert all(kind_words(kind) and "_" not in kind_words(kind) for kind in FLAG_KINDS)


def test_no_login_name_stands_in_the_pdf(qgis_app, tmp_path: Path, monkeypatch) -> None:
    card = card_layout(make_plan())
    assert card.layout.project().metadata().author() == "Tideleg"
    write_card(make_plan(), tmp_path / "card.pdf")
    raw = (tmp_path / "card.pdf").read_bytes()
    assert b"/Author (root)" not in raw and b"/Author" not in raw.replace(b"/Author (Tideleg)", b"")
