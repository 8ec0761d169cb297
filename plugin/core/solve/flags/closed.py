"""Closed areas and land on the track really swum."""

from __future__ import annotations

from dataclasses import replace

from ...chart.areas import ClosedArea, Land
from ...planar import length_m, part_of
from ...results.swim_plan import Flag
from ..request import SwimRequest
from .track import LegTrack, stretch_flag

RULE_WORDS = {
    "no_entry": "nobody may enter",
    "no_spearing": "spearing is not allowed",
    "no_anchoring": "anchoring is not allowed",
    "loaded_gun_ban": "no loaded gun may be carried",
    "caution": "take care",
}
BEACH_M = (
    50.0  # charted coasts are generalised, so a beach may seem to start a little inland; common practice, no source
)


def closed_area_flags(request: SwimRequest, legs: tuple[LegTrack, ...]) -> list[Flag]:
    """A flag for every stretch inside a closed area at a time when its rule is in force."""
    return [
        _closed_flag(request, leg, closed, (start, end))
        for leg in legs
        for closed, start, end in request.chart.stretches("closed_areas", leg.xy_m)
        if _in_force(request, leg, closed, (start, end))
    ]


def _in_force(request: SwimRequest, leg: LegTrack, closed: ClosedArea, stretch: tuple[float, float]) -> bool:
    """Whether the rule holds at any time of the stretch, the stay at its end included; a leg not dated counts."""
    if not leg.dated:
        return True
    first = request.clock.moment(leg.time_at(stretch[0]))
    last = request.clock.moment(leg.stay_until_s if _stays(leg, stretch) else leg.time_at(stretch[1]))
    return closed.in_force.overlaps(first, last, request.clock.zone)


def _stays(leg: LegTrack, stretch: tuple[float, float]) -> bool:
    return stretch[1] == len(leg.xy_m) - 1.0 and leg.stay_until_s > leg.t_s[-1]


def _closed_flag(request: SwimRequest, leg: LegTrack, closed: ClosedArea, stretch: tuple[float, float]) -> Flag:
    metres = length_m(part_of(leg.xy_m, *stretch))
    place = f"{closed.name or 'An unnamed closed area'} ({RULE_WORDS[closed.rule]})"
    sentences = [f"Leg {leg.number} passes {metres:.0f} m through {place}."]
    if not leg.dated:
        sentences = [f"The straight line of leg {leg.number} passes through {place}; the leg is not timed."]
    if _stays(leg, stretch):
        sentences.append(f"{leg.end_name} lies inside it.")
    if words := closed.in_force.words():
        sentences.append(f"In force {words}.")
    sentences.append(f"Rule: {closed.citation.rstrip('. ')}." if closed.citation else "No citation given.")
    checked = f"Checked on {closed.checked_on}" if closed.checked_on else "Not marked as checked"
    sentences.append(f"{checked}; the local law decides.")
    flag = stretch_flag(
        request,
        leg,
        *stretch,
        kind="closed_area",
        severity=_severity(closed.rule, _stays(leg, stretch)),
        name=closed.name,
        length_m=metres,
        message=" ".join(sentences),
        brief=f"{closed.name or 'Closed area'}: {RULE_WORDS[closed.rule]}",
    )
    return replace(flag, end=request.clock.moment(leg.stay_until_s)) if _stays(leg, stretch) else flag


def _severity(rule: str, stays: bool) -> str:
    if rule == "no_entry":
        return "stop"
    if rule == "caution":
        return "note"
    if rule == "loaded_gun_ban":
        return "warn"
    return "warn" if stays else "note"


def land_flags(request: SwimRequest, legs: tuple[LegTrack, ...]) -> list[Flag]:
    """A flag for every stretch of the track over land; a few metres at the entry and the exit are only noted."""
    return [
        _land_flag(request, leg, land, (start, end), number in _ends(leg, (start, end), legs))
        for number, leg in enumerate(legs)
        for land, start, end in request.chart.stretches("land", leg.xy_m)
    ]


def _ends(leg: LegTrack, stretch: tuple[float, float], legs: tuple[LegTrack, ...]) -> set[int]:
    """The numbers of the legs on which the stretch would be the beach of the entry or of the exit."""
    beach = set()
    if length_m(part_of(leg.xy_m, *stretch)) <= BEACH_M:
        beach |= {0} if stretch[0] == 0.0 else set()
        beach |= {len(legs) - 1} if stretch[1] == len(leg.xy_m) - 1.0 else set()
    return beach


def _land_flag(request: SwimRequest, leg: LegTrack, land: Land, stretch: tuple[float, float], beach: bool) -> Flag:
    metres = length_m(part_of(leg.xy_m, *stretch))
    name = land.name or "land"
    message = f"Leg {leg.number} crosses {metres:.0f} m of {name}: route it round, watching the bow of the track."
    if not leg.dated:
        message = f"The straight line of leg {leg.number} crosses {metres:.0f} m of {name}; the leg is not timed."
    if beach:
        message = f"The chart's coast runs {metres:.0f} m outside the {'entry' if stretch[0] == 0.0 else 'exit'}."
    severity = "note" if beach else "stop"
    brief = f"Leg {leg.number} {'starts or ends' if beach else 'runs'} on {name}"
    about = {"severity": severity, "name": land.name, "length_m": metres, "message": message, "brief": brief}
    return stretch_flag(request, leg, *stretch, kind="land", **about)
