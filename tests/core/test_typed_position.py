"""Positions as people type them."""

from __future__ import annotations

import numpy as np
import pytest
from tideleg.core.errors import SwimPlanError
from tideleg.core.results.card import position_text
from tideleg.core.typed_position import position_from_text

LAT, LON = 36.0 + 12.345 / 60.0, -(50.0 + 1.234 / 60.0)


@pytest.mark.parametrize(
    "text",
    [
        "36 12.345 N 050 01.234 W",
        "36°12.345'N 050°01.234'W",
        "36º 12.345′ n, 50º 1.234′ w",
        "N36 12.345 W050 01.234",
        "N 36° 12.345' / W 50° 01.234'",
        "36-12.345N 050-01.234W",
        "36 12,345 N 50 01,234 W",
        "050 01.234 W 36 12.345 N",
        "W050 01.234 N36 12.345",
        "36 12.345 -50 1.234",
        "+36 12.345, -50 1.234",
        "36 12.345; −050 01.234",
        "36:12.345N,050:01.234W",
        "36 12 20.7 N 50 01 14.04 W",
        "  36 12.345N50 1.234W ",
        "36.20575 N 50.0205666667 W",
        "36.20575,-50.0205666667",
        "36.20575-50.0205666667",
    ],
)
def test_the_usual_ways_of_writing_one_place_mean_the_same(text: str) -> None:
    assert position_from_text(text) == pytest.approx((LON, LAT), abs=1e-9)


def test_signs_and_hemispheres_turn_each_quarter_of_the_globe() -> None:
    for north, sign_lat in (("N", 1.0), ("S", -1.0)):
        for east, sign_lon in (("E", 1.0), ("W", -1.0)):
            expected = (sign_lon * 50.5, sign_lat * 36.25)
            assert position_from_text(f"36 15 {north} 50 30 {east}") == expected
            signed = f"{'-' if sign_lat < 0 else ''}36 15 {'-' if sign_lon < 0 else '+'}50 30"
            assert position_from_text(signed) == expected


def test_south_and_west_of_nought_degrees_keep_their_side() -> None:
    assert position_from_text("-0 30.0 -0 15.0") == (-0.25, -0.5)
    assert position_from_text("0 30.0 S 000 15.0 W") == (-0.25, -0.5)


def test_latitude_comes_first_without_hemispheres() -> None:
    assert position_from_text("10 30.0 20 15.0") == (20.25, 10.5)


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("", "No position was typed"),
        ("here", "no place in it"),
        ("36 60.000 N 050 01.234 W", "below 60"),
        ("36 12.345 N 050 75.1 W", "longitude are below 60"),
        ("36 12 61 N 050 01 10 W", "below 60"),
        ("91 00.0 N 050 01.234 W", "latitude is at most 90"),
        ("90 00.1 N 050 01.234 W", "latitude is at most 90"),
        ("36 12.345 N 181 00.0 W", "longitude is at most 180"),
        ("36 12.345 N 050 01.234", "both hemispheres"),
        ("36 12.345 N 050 01.234 N", "one latitude"),
        ("36 12.345 E 050 01.234 W", "one latitude"),
        ("-36 12.345 N 050 01.234 W", "either a hemisphere or one sign"),
        ("36 -12.345 50 1.0", "whole degrees"),
        ("36-12.345 50-01.234", "one sign"),
        ("36 12.345 N - 050 01.234 W", "one sign"),
        ("36 12.345 N 050 01.234 O", "west in some languages"),
        ("36.5 12.345 N 050 01.234 W", "whole degrees"),
        ("36 12 10 4 N 050 01.234 W", "whole degrees"),
        ("36 12.345 050", "a latitude and a longitude"),
        ("36 12.345 N W", "a latitude and a longitude"),
        ("1 2 3 4 5", "a latitude and a longitude"),
    ],
)
def test_what_is_not_a_position_or_may_mean_two_is_refused_with_an_example(text: str, words: str) -> None:
    with pytest.raises(SwimPlanError) as refusal:
        position_from_text(text)
    assert words in str(refusal.value)
    assert "36 12.345 N 050 01.234 W" in str(refusal.value)


def test_what_the_card_prints_is_read_back_to_half_its_last_digit() -> None:
    """0.0005 minute either way, over a seeded sweep of the globe."""
    rng = np.random.default_rng(11)
    for lon, lat in zip(rng.uniform(-179.9, 179.9, 500).tolist(), rng.uniform(-89.0, 89.0, 500).tolist()):
        assert position_from_text(position_text(lon, lat)) == pytest.approx((lon, lat), abs=0.00051 / 60.0)
