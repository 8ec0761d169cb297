"""A leg measured on the map is planswim's leg, and what cannot be known or swum is said in words."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from desk import Desk, desk_with_dock, leave, opened, settle, wait_for
from map_hand import RIGHT, Hand
from qgis.PyQt.QtCore import Qt
from swims import DAY, LEDGE, SLIP, invented_bay, line, moved, point, swum
from tideleg.core.results.card import card_angle, whole_minutes
from tideleg.dock.dock import TidelegDock
from tideleg.map_tools.measure_leg import MeasureLeg
from tideleg.plan_package.store import append_rows, create_plan


@pytest.fixture()
def at_desk(qgis_app: object) -> Iterator[tuple[Desk, TidelegDock]]:
    with desk_with_dock() as both:
        yield both


@pytest.fixture()
def bay(tmp_path: Path) -> Path:
    return invented_bay(tmp_path / "bay.gpkg")


@pytest.fixture()
def hand(at_desk: tuple[Desk, TidelegDock], bay: Path) -> Hand:
    """A hand over the invented bay, swum at ten."""
    opened(at_desk[1], bay, depart=f"{DAY} 10:00")
    made = Hand(*at_desk)
    made.show()
    return made


def measuring(hand: Hand) -> MeasureLeg:
    used = hand.section.tools.used
    assert isinstance(used, MeasureLeg)
    return used


@pytest.mark.parametrize("clock", ["10:00", "12:30"])
@pytest.mark.parametrize("crs", ["EPSG:4326", "EPSG:3857", "EPSG:32628"])
def test_the_leg_under_the_cursor_is_the_algorithms_leg(hand: Hand, bay: Path, tmp_path: Path, crs, clock) -> None:
    """From mark to mark, so that both begin and end at the same places to the last digit, in any system of the map."""
    hand.show(crs)
    leave(hand.dock, f"{DAY} {clock}")
    settle(hand.dock.session)
    expected = swum(bay, tmp_path, DEPART=f"{DAY}T{clock}", SWIMMER=hand.dock.session.ticked[0])["legs"][0]
    hand.take("measure_leg")
    hand.click(SLIP)
    said = hand.move(LEDGE)
    leg = measuring(hand).leg
    assert leg.heading_mag_deg == pytest.approx(expected["heading_mag_deg"], abs=0.01)
    assert leg.minutes == pytest.approx(expected["minutes"], abs=0.01)
    magnetic, true = card_angle(expected["heading_mag_deg"]), card_angle(expected["heading_true_deg"])
    assert f"Hold {expected['card_heading']} ({magnetic}° magnetic, {true}° true)" in said
    ruler = f"{expected['distance_m']:.0f} m, {card_angle(expected['bearing_true_deg'])}° true, "
    assert ruler + f"{card_angle(expected['bearing_mag_deg'])}° magnetic" in said
    assert any(line.startswith(f"{whole_minutes(expected['minutes'])} min, leave {clock}, arrive ") for line in said)
    assert f"{expected['ground_speed_m_s']:.2f} m/s over the ground" in said
    assert "To Gannet Ledge" in said


def test_a_leg_that_has_its_end_stays_and_follows_the_hour(hand: Hand) -> None:
    hand.take("measure_leg")
    hand.click(SLIP)
    hand.click(LEDGE)
    first = hand.section.done.text()
    assert "leave 10:00" in first and measuring(hand).end is not None
    hand.move(moved(300.0, -300.0))
    assert hand.section.done.text() == first
    hand.dock.session.step_departure(9)
    settle(hand.dock.session)
    assert "leave 11:30" in hand.section.done.text()
    hand.click(moved(200.0, 200.0))  # a new start
    assert measuring(hand).end is None
    hand.click(SLIP, RIGHT)
    assert measuring(hand).start is None


def test_measuring_draws_nothing_into_the_plan(hand: Hand) -> None:
    hand.take("measure_leg")
    hand.click(SLIP)
    hand.click(LEDGE)
    layers = hand.dock.session.project.mapLayers().values()
    assert not any(layer.isEditable() for layer in layers if hasattr(layer, "isEditable"))


def test_while_the_swim_is_planned_anew_no_heading_of_before_is_shown(hand: Hand) -> None:
    hand.take("measure_leg")
    hand.click(SLIP)
    assert any(one.startswith("Hold ") for one in hand.move(LEDGE))
    hand.dock.session.step_departure(1)
    measuring(hand).look_again()
    assert "Heading not known: the swim is being planned anew" in hand.tip()
    assert any("° magnetic" in one for one in hand.tip())  # the ruler line stands
    settle(hand.dock.session)
    assert any("leave 10:10" in one for one in hand.tip())


def test_a_leg_that_cannot_be_swum_says_why(hand: Hand) -> None:
    hand.dock.swim.pace.setValue(0.1)
    settle(hand.dock.session)
    hand.take("measure_leg")
    hand.click(SLIP)
    said = hand.move(LEDGE)
    reason = next(one for one in said if one.startswith("Cannot be swum: "))
    assert len(reason) > len("Cannot be swum: ") + 10
    assert not any("min, leave" in one for one in said)


def test_water_without_a_stream_is_unknown_and_never_nought(at_desk, tmp_path: Path) -> None:
    plan = create_plan(tmp_path / "dry.gpkg", zone="UTC")
    append_rows(plan, "routes", [(line(SLIP, LEDGE, SLIP), {"name": "Out"})])
    opened(at_desk[1], plan, depart=f"{DAY} 10:00")
    hand = Hand(*at_desk)
    hand.show()
    hand.take("measure_leg")
    hand.click(SLIP)
    said = " ".join(hand.move(LEDGE))
    assert "the stream is not known" in said
    assert "0.0 kn" not in said and "0.00 m/s" not in said


def test_a_plan_without_a_route_is_read_around_the_cursor(at_desk, tmp_path: Path) -> None:
    """Depth and heading are there before anything is drawn."""
    from swims import add_constant_stream, add_swimmer

    plan = create_plan(tmp_path / "bare.gpkg", zone="UTC")
    add_constant_stream(plan, 0.2, 180.0)
    add_swimmer(plan, 0.6)
    append_rows(plan, "soundings", [(point(LEDGE), {"depth_m": 7.5})])
    opened(at_desk[1], plan, depart=f"{DAY} 10:00")
    hand = Hand(*at_desk)
    hand.show()
    hand.take("place_mark")
    hand.move(LEDGE)
    if not any(one.startswith("Charted depth 7.5 m") for one in hand.tip()):
        assert "the plan is being read" in hand.tip()
    wait_for(lambda: any(one.startswith("Charted depth 7.5 m") for one in hand.tip()), "the depth")
    hand.take("measure_leg")
    hand.click(SLIP)
    wait_for(lambda: any(one.startswith("Hold ") for one in hand.move(LEDGE) or hand.tip()), "the heading")
    leg = measuring(hand).leg
    assert leg.heading_true_deg < leg.bearing_true_deg  # up-stream, the stream runs to the south
    assert leg.stream_set_deg == pytest.approx(180.0, abs=0.1)


def test_far_from_the_route_the_water_is_read_there(hand: Hand) -> None:
    far = moved(9000.0, 0.0)
    hand.show(middle=far)
    hand.take("measure_leg")
    hand.click(far)
    end = moved(9800.0, 300.0)
    wait_for(lambda: any(one.startswith("Hold ") for one in hand.move(end) or hand.tip()), "the heading")
    assert any("Stream" in one and "kn towards" in one for one in hand.tip())


def test_beyond_the_years_of_the_magnetic_model_only_the_magnetic_numbers_are_missing(hand: Hand) -> None:
    leave(hand.dock, "2031-06-05 10:00")
    wait_for(lambda: hand.dock.session.stage == "settled", "the refusal")
    hand.take("measure_leg")
    hand.click(SLIP)
    said = hand.move(LEDGE)
    assert any("° true, magnetic not known: " in one and "2029" in one for one in said)
    assert any(one.startswith("Heading not known: ") for one in said)


def test_esc_drops_the_leg_then_ends(hand: Hand) -> None:
    hand.take("measure_leg")
    hand.click(SLIP)
    hand.key(Qt.Key.Key_Escape)
    assert measuring(hand).start is None
    hand.key(Qt.Key.Key_Escape)
    assert hand.section.tools.used is None
