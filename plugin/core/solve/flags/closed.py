"""Closed areas and land on the track really swum."""

from __future__ import annotations

from dataclasses import replace

from ...chart.areas import ClosedArea, Land
from ...planar import length_m, part_of
from ...results.flag import Flag
from ...words import marked, spoken, tr
from ..request import SwimRequest
from .track import LegTrack, stretch_flag

RULE_WORDS = {
    "no_entry": marked("nobody may enter"),
    "no_spearing": marked("spearing is not allowed"),
    "no_anchoring": marked("anchoring is not allowed"),
    "loaded_gun_ban": marked("no loaded gun may be carried"),
    "caution": marked("take care"),
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
    place = f"{closed.name or tr('An unnamed closed area')} ({spoken(RULE_WORDS[closed.rule])})"
    sentences = [
        tr("Leg {number} passes {metres:.0f} m through {place}.").format(number=leg.number, metres=metres, place=place)
    ]
    if not leg.dated:
        sentences = [
            tr("The straight line of leg {number} passes through {place}; the leg is not timed.").format(
                number=leg.number, place=place
            )
        ]
    if _stays(leg, stretch):
        sentences.append(tr("{end_name} lies inside it.").format(end_name=leg.end_name))
    if words := closed.in_force.words():
        sentences.append(tr("In force {words}.").format(words=words))
    sentences.append(
        tr("Rule: {citation}.").format(citation=closed.citation.rstrip(". "))
        if closed.citation
        else tr("No citation given.")
    )
    checked = (
        tr("Checked on {checked_on}").format(checked_on=closed.checked_on)
        if closed.checked_on
        else tr("Not marked as checked")
    )
    sentences.append(tr("{checked}; the local law decides.").format(checked=checked))
    flag = stretch_flag(
        request,
        leg,
        *stretch,
        kind="closed_area",
        severity=_severity(closed.rule, _stays(leg, stretch)),
        name=closed.name,
        length_m=metres,
        message=" ".join(sentences),
        brief=f"{closed.name or tr('Closed area')}: {spoken(RULE_WORDS[closed.rule])}",
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
    name = land.name or tr("land")
    message = tr(
        "Leg {number} crosses {metres:.0f} m of {name}: route it round, watching the bow of the track."
    ).format(number=leg.number, metres=metres, name=name)
    if not leg.dated:
        message = tr(
            "The straight line of leg {number} crosses {metres:.0f} m of {name}; the leg is not timed."
        ).format(number=leg.number, metres=metres, name=name)
    if beach:
        outside = (
            tr("The chart's coast runs {metres:.0f} m outside the entry.")
            if stretch[0] == 0.0
            else tr("The chart's coast runs {metres:.0f} m outside the exit.")
        )
        message = outside.format(metres=metres)
    severity = "note" if beach else "stop"
    brief = (tr("Leg {number} starts or ends on {name}") if beach else tr("Leg {number} runs on {name}")).format(
        number=leg.number, name=name
    )
    about = {"severity": severity, "name": land.name, "length_m": metres, "message": message, "brief": brief}
    return stretch_flag(request, leg, *stretch, kind="land", **about)
