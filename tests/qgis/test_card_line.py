"""The small print: line to let out by the depth, and clocks that change on the way."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime
from zoneinfo import ZoneInfo

import pytest
from plans import make_plan
from tideleg.cards.card_foot import small_print

LISBON = ZoneInfo("Europe/Lisbon")


def test_line_is_told_by_the_greatest_depth_of_the_stay() -> None:
    """3 to 5 x depth on flat ground, 1.3 to 2 x in rock; common practice, no source."""
    plan = make_plan(legs=3)
    deep = tuple(replace(stop, deepest_m=10.0 if stop.kind == "mark" else None) for stop in plan.stops)
    told = " ".join(small_print(replace(plan, stops=deep, line_m=30.0)))
    assert "30-50 m, in rock 13-20 m" in told and "You carry 30 m." in told
    assert "Let out up to" not in told
    unknown = tuple(replace(stop, deepest_m=None) for stop in plan.stops)
    assert "Let out up to 30 m of line." in " ".join(small_print(replace(plan, stops=unknown, line_m=30.0)))


@pytest.mark.parametrize(("day", "changes"), [(31, True), (30, False)])
def test_clocks_that_change_during_the_swim_are_told(day: int, changes: bool) -> None:
    """Portugal's clocks go back on 2027-10-31 at 02:00; the European Union's rule, from memory."""
    plan = make_plan(legs=3)
    depart = datetime(2027, 10, day, 0, 30, tzinfo=LISBON)
    home = datetime(2027, 10, day, 4, 0, tzinfo=LISBON)
    stops = (*plan.stops[:-1], replace(plan.stops[-1], arrive=home))
    told = " ".join(small_print(replace(plan, depart=depart, stops=stops)))
    assert ("CLOCKS CHANGE during this swim: times are UTC+1 first, UTC at its end." in told) == changes
