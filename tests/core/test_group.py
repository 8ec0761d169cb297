"""Those who swim together: the slowest sets the pace, and of every limit the tightest holds."""

from __future__ import annotations

import numpy as np
import pytest
from tideleg.core.swimmer import LIMITS, NUMBERS, Swimmer, group_of, hours_of_fluid

RUNA = Swimmer(name="Runa", pace_m_s=0.75, path_factor=1.3, range_m=4000.0, max_hours=3.0, depth_limit_m=15.0)
ODD = Swimmer(name="Odd", pace_m_s=0.65, path_factor=1.05, range_m=6000.0, fluid_l=3.0, fluid_l_h=1.2, line_m=25.0)


def test_the_slowest_is_who_makes_least_way_along_the_line_not_who_fins_slowest() -> None:
    both = group_of([ODD, RUNA])
    # 0.75 / 1.3 = 0.577 m/s made good is less than 0.65 / 1.05 = 0.619.
    assert (both.pace_m_s, both.path_factor) == (0.75, 1.3)
    assert both.made_good_m_s == RUNA.made_good_m_s


def test_every_other_number_is_the_tightest_and_words_say_whose_it_is() -> None:
    both = group_of([RUNA, ODD])
    assert both.name == "Runa and Odd"
    assert (both.range_m, both.max_hours, both.depth_limit_m, both.line_m) == (4000.0, 3.0, 12.0, 25.0)
    # Odd's 3 L last 2.5 h, Runa's 2 L at 0.7 an hour last 2.9.
    assert (both.fluid_l, both.fluid_l_h) == (3.0, 1.2)
    assert both.set_by == (
        "pace 0.75 m/s and path factor 1.3 by Runa",
        "range 4000 m by Runa",
        "3 hours by Runa",
        "depth limit 12 m by Odd",
        "3 L to drink and 1.2 L an hour drunk by Odd",
        "anchor line 25 m by Odd",
    )


def test_one_swimmer_is_a_group_of_his_own_and_nobody_is_none() -> None:
    assert group_of([RUNA]) is RUNA
    with pytest.raises(ValueError, match="somebody"):
        group_of([])


def test_what_is_guessed_of_the_one_who_sets_it_stays_a_guess() -> None:
    guess = Swimmer(name="Odd", pace_m_s=0.5, path_factor=1.0, guessed=("pace 0.5 m/s", "range 5000 m"))
    own = Swimmer(name="Runa", pace_m_s=0.7, path_factor=1.0, range_m=3000.0)
    assert group_of([own, guess]).guessed == ("pace 0.5 m/s (Odd)",)


def test_three_are_named_with_commas_and_an_order_of_names_changes_nothing_else() -> None:
    third = Swimmer(name="Ivar", min_ground_speed_m_s=0.3)
    first, second = group_of([RUNA, ODD, third]), group_of([third, ODD, RUNA])
    assert first.name == "Runa, Odd and Ivar" and second.name == "Ivar, Odd and Runa"
    assert all(getattr(first, key) == getattr(second, key) for key in NUMBERS)
    assert first.min_ground_speed_m_s == 0.3


def test_nobody_in_a_random_group_is_asked_for_more_than_he_can_do() -> None:
    rng = np.random.default_rng(8)
    for _ in range(50):
        people = [
            Swimmer(name=f"s{n}", **{key: rng.uniform(low, high) for key, (low, high) in LIMITS.items()})
            for n in range(rng.integers(2, 6))
        ]
        group = group_of(people)
        assert group.members == tuple(people)
        for one in people:
            assert group.made_good_m_s <= one.made_good_m_s
            assert hours_of_fluid(group) <= hours_of_fluid(one)
            assert group.min_ground_speed_m_s >= one.min_ground_speed_m_s
            for key in ("range_m", "max_hours", "depth_limit_m", "line_m"):
                assert getattr(group, key) <= getattr(one, key)
        holders = [{one.name for one in people if getattr(one, key) == getattr(group, key)} for key in NUMBERS]
        assert all(holders), "every number is somebody's own"
