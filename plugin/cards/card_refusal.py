"""What is said of a swim that a card does not hold: what has no room, how many legs have, and which card takes all."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from ..core.results.swim_plan import SwimPlan
from ..words import tr
from .card_frames import Shortfall
from .card_templates import PAPERS, SIDES, CardError, shipped

Holds = Callable[[SwimPlan, Path], bool]


def does_not_fit(
    plan: SwimPlan, paper: str, sides: int, template: Path | None, short: Shortfall, holds: Holds
) -> CardError:
    """The refusal of a paper of ours with so many sides (0: as many as there are), or of a template of the user's.

    ``holds(plan, template)`` says whether a template has room for what no card of the plan may be without.
    """
    if template is not None:
        what, remedy = template.name, tr("Choose larger paper or more sides, or make the frames of your layout larger")
    else:
        what = f"{paper}, {_sides_words(sides or SIDES[-1])}"
        remedy = _choices(plan, paper, sides, holds)
    tried = template or shipped(paper, sides or SIDES[-1])
    legs = _legs_held(plan, lambda some: holds(some, tried))
    return CardError(
        asked=tr("The card of '{route}' ({legs} legs) does not fit {what}: no room for '{part}', {where}").format(
            route=plan.route,
            legs=len(plan.legs),
            what=what,
            part=short.part,
            where=tr("the last frame for it is '{frame}'").format(frame=short.frame or tr("none")),
        ),
        allowed=tr("letters of 4 mm, headings and times of 7 mm; they are never made smaller")
        + f"; {_room_words(legs)}",
        remedy=remedy,
    )


def _legs_held(plan: SwimPlan, holds: Callable[[SwimPlan], bool]) -> int:
    """How many of the first legs have room, by halving: a swim may have hundreds."""
    held, too_many = 0, len(plan.legs)
    while too_many - held > 1:
        middle = (held + too_many) // 2
        if holds(first_legs(plan, middle)):
            held = middle
        else:
            too_many = middle
    return held


def _room_words(legs: int) -> str:
    if not legs:
        return tr("there is no room for a single leg of this swim beside what every card must say")
    return tr("legs of this swim that there is room for: {legs}").format(legs=legs)


def first_legs(plan: SwimPlan, count: int) -> SwimPlan:
    """The plan's first so many legs, with the stops, turn backs and flags that go with them."""
    turn_back = plan.turn_back
    if turn_back is not None:
        stops = tuple(stop for stop in turn_back.stops if stop.number < count)
        turn_back = replace(turn_back, stops=stops)
    return replace(
        plan,
        legs=plan.legs[:count],
        stops=plan.stops[: count + 1],
        turn_back=turn_back,
        flags=tuple(flag for flag in plan.flags if flag.leg is None or flag.leg <= count),
    )


def _choices(plan: SwimPlan, paper: str, sides: int, holds: Holds) -> str:
    """Of the same paper, and of the next larger one that can, so many sides as take the swim."""
    more = [(paper, count) for count in SIDES if sides and count > sides]
    larger = [(name, count) for name in PAPERS[PAPERS.index(paper) + 1 :] for count in SIDES]
    first = (next((pair for pair in pairs if holds(plan, shipped(*pair))), None) for pairs in (more, larger))
    found = [f"{name}, {_sides_words(count)}" for name, count in filter(None, first)]
    if not found:
        return tr("Choose a shorter route: larger paper and more sides do not take all of this swim either")
    words = tr("Choose larger paper or more sides; what takes this swim: {choices}")
    return words.format(choices=tr(" or ").join(found))


def _sides_words(count: int) -> str:
    return {1: tr("1 side"), 2: tr("2 sides"), 4: tr("4 sides")}[count]
