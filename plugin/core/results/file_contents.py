"""What a file of the swim holds, whatever its format: places, the tracks of legs swum, and that in words."""

from __future__ import annotations

import math
from datetime import datetime, timezone

from ..words import marked, spoken, tr
from .card import Place, distinct_places, leg_state
from .flag import Flag
from .plain_values import nearest_second
from .shared import MARKS_LEFT_OUT
from .swim_plan import Leg, SwimPlan

CAUTION = marked("PREDICTED, not for navigation")


def shown_places(plan: SwimPlan) -> list[Place]:
    """The places whose position may be told, each once, in swimming order."""
    return [place for place in distinct_places(plan) if math.isfinite(place.lon) and math.isfinite(place.lat)]


def shown_legs(plan: SwimPlan) -> tuple[Leg, ...]:
    """The straight legs; none where the marks are left out."""
    return () if plan.marks_left_out else plan.legs


def shown_flags(plan: SwimPlan) -> tuple[Flag, ...]:
    """The flags that say where; none where the marks are left out."""
    return () if plan.marks_left_out else plan.flags


def swum_legs(plan: SwimPlan) -> list[Leg]:
    """The legs that can be swum and have a track."""
    return [leg for leg in plan.legs if leg_state(leg) == "swim" and len(leg.track) > 1]


def contents_words(plan: SwimPlan, *, track: bool = True, flags: bool = False, way_points: int = 0) -> str:
    """What the file is and holds, in sentences: caution, title, counts, zone, and what is not in it.

    ``track`` and ``flags`` say whether the format has them.
    """
    counts = [
        (len(shown_places(plan)), "place", "places"),
        (len(shown_legs(plan)), "leg", "legs"),
        (len(swum_legs(plan)) if track else 0, tr("track of a leg"), tr("tracks of legs")),
        (way_points, tr("point on the way"), tr("points on the way")),
        (len(shown_flags(plan)) if flags else 0, "flag", "flags"),
    ]
    held = ", ".join(f"{count} {one if count == 1 else many}" for count, one, many in counts if count)
    sentences = [
        spoken(CAUTION),
        plan.title,
        tr("{held}; times in {zone}").format(held=held or tr("No places"), zone=plan.zone),
        _stuck(plan),
    ]
    left_out = [spoken(MARKS_LEFT_OUT)] if plan.marks_left_out else []
    return " ".join([*(f"{words.rstrip('.')}." for words in sentences if words.strip()), *left_out])


def _stuck(plan: SwimPlan) -> str:
    """That a leg cannot be swum, and that what comes after it hangs on it."""
    stuck = [leg.number for leg in plan.legs if leg_state(leg) == "stuck"]
    return tr("Leg {stuck} CANNOT BE SWUM; later times hold only if it could").format(stuck=stuck[0]) if stuck else ""


def utc_text(moment: datetime) -> str:
    """``2027-06-05T09:40:00Z``, to the nearest second."""
    return nearest_second(moment.astimezone(timezone.utc)).strftime("%Y-%m-%dT%H:%M:%SZ")
