"""What the swimmer, the daylight and the knowledge of the water allow."""

from __future__ import annotations

import numpy as np

from ...daylight import Daylight
from ...planar import length_m
from ...results.flag import Flag
from ...water.stream import EXTRAPOLATED
from ...words import tr
from ..request import SwimRequest
from ..swum import ARRIVED, NOT_REACHED, STREAM_UNKNOWN
from .track import LegTrack, clock_words, stretch_flag


def leg_flags(request: SwimRequest, legs: tuple[LegTrack, ...], endings: list[int], reasons: list[str]) -> list[Flag]:
    """Legs that cannot be swum, or whose stream is not known or is extrapolated."""
    flags = []
    for leg, ending, reason in zip(legs, endings, reasons):
        if reason and ending != NOT_REACHED:
            kind = "stream_unknown" if ending == STREAM_UNKNOWN else "not_swimmable"
            message = tr("Leg {number} to {end_name} cannot be swum as planned: {reason}.").format(
                number=leg.number, end_name=leg.end_name, reason=reason
            )
            flags.append(
                _whole_leg(
                    request, leg, kind, "stop", message, tr("Leg {number} cannot be swum").format(number=leg.number)
                )
            )
        if ending == ARRIVED and np.any(leg.status == EXTRAPOLATED):
            message = tr(
                "The stream on leg {number} is extrapolated: the range of the day is outside neaps and "
                "springs or unknown, or no station is near or in sight over water. Allow for more stream "
                "than shown."
            ).format(number=leg.number)
            brief = tr("Leg {number}: stream extrapolated").format(number=leg.number)
            flags.append(_whole_leg(request, leg, "stream_extrapolated", "warn", message, brief))
    return flags


def _whole_leg(request: SwimRequest, leg: LegTrack, kind: str, severity: str, message: str, brief: str) -> Flag:
    last = len(leg.xy_m) - 1.0
    about = {"kind": kind, "severity": severity, "message": message, "brief": brief}
    return stretch_flag(request, leg, 0.0, last, length_m=length_m(leg.xy_m), **about)


def swimmer_flags(request: SwimRequest, total_m: float, total_min: float) -> list[Flag]:
    """Over range, over hours, fluid short, and a swimmer whose numbers are guesses; ``total_min`` may be NaN."""
    swimmer = request.swimmer
    place = ((request.stops[0].lon, request.stops[0].lat),)  # what concerns the whole swim stands at its entry
    flags = []
    if total_m > swimmer.range_m:
        message = tr("The route is {length_km:.1f} km, over the {range_km:.1f} km of {name}.").format(
            length_km=total_m / 1000.0, range_km=swimmer.range_m / 1000.0, name=swimmer.name
        )
        brief = tr("Over range: {length_km:.1f} km").format(length_km=total_m / 1000.0)
        flags.append(
            Flag(kind="over_range", severity="stop", message=message, brief=brief, points=place, length_m=total_m)
        )
    if total_min > 60.0 * swimmer.max_hours:
        message = tr("The swim takes {hours:.1f} h, over the {max_hours:g} h of {name}.").format(
            hours=total_min / 60.0, max_hours=swimmer.max_hours, name=swimmer.name
        )
        brief = tr("Over time: {hours:.1f} h").format(hours=total_min / 60.0)
        flags.append(Flag(kind="over_time", severity="stop", message=message, brief=brief, points=place))
    need_l = swimmer.fluid_l_h * total_min / 60.0
    if need_l > swimmer.fluid_l:
        message = tr("You need {need_l:.1f} L to drink and carry {fluid_l:.1f} L.").format(
            need_l=need_l, fluid_l=swimmer.fluid_l
        )
        brief = tr("Carry {need_l:.1f} L to drink").format(need_l=need_l)
        flags.append(Flag(kind="fluid", severity="warn", message=message, brief=brief, points=place))
    if swimmer.guessed:
        message = tr(
            "Guessed for {name}: {guessed}. Time yourself over a known distance before you trust the minutes."
        ).format(name=swimmer.name, guessed=", ".join(swimmer.guessed))
        brief = tr("Pace and limits are guesses")
        flags.append(Flag(kind="uncalibrated", severity="note", message=message, brief=brief, points=place))
    return flags


def dark_flags(request: SwimRequest, legs: tuple[LegTrack, ...], daylight: Daylight) -> list[Flag]:
    """The part of each leg that is swum in the dark: before civil dawn or after civil dusk."""
    if daylight.always_light:
        return []
    dusk_s, dawn_s = np.inf, -np.inf
    words = tr("the sun does not come near the horizon that day")
    if daylight.civil_dusk is not None and daylight.civil_dawn is not None:
        dusk_s, dawn_s = request.clock.seconds(daylight.civil_dusk), request.clock.seconds(daylight.civil_dawn)
        words = tr("civil dawn is at {dawn}, civil dusk at {dusk}").format(
            dawn=clock_words(request, dawn_s), dusk=clock_words(request, dusk_s)
        )
    else:
        dusk_s = -np.inf
    return [flag for leg in legs if leg.dated for flag in _dark_parts(request, leg, dawn_s, dusk_s, words)]


def _dark_parts(request: SwimRequest, leg: LegTrack, dawn_s: float, dusk_s: float, words: str) -> list[Flag]:
    nodes = np.arange(len(leg.t_s))
    last, flags = len(leg.t_s) - 1.0, []
    if leg.t_s[-1] > dusk_s:
        flags.append((float(np.interp(dusk_s, leg.t_s, nodes)), last))
    if leg.t_s[0] < dawn_s:
        flags.append((0.0, float(np.interp(dawn_s, leg.t_s, nodes))))
    message = tr("Leg {number} to {end_name} is swum in the dark: {words}.").format(
        number=leg.number, end_name=leg.end_name, words=words
    )
    about = {
        "kind": "after_dark",
        "severity": "stop",
        "message": message,
        "brief": tr("Leg {number} is in the dark").format(number=leg.number),
    }
    return [stretch_flag(request, leg, start, end, **about) for start, end in flags if end > start]
