"""Where the track crosses boat channels, at what angle, for how long, and between which sailings."""

from __future__ import annotations

from datetime import timedelta

import numpy as np

from ...chart.areas import Channel
from ...chart.hours import sailings_between
from ...planar import distance_to_segments, length_m, part_of
from ...quantities import knots_from_m_s
from ...results.flag import Flag
from ...words import marked, spoken, tr
from ..request import SwimRequest
from .crossing import Crossing
from .track import LegTrack, clock_words, stretch_flag

KIND_WORDS = {
    "fairway": marked("fairway"),
    "ferry": marked("ferry's track"),
    "lane": marked("traffic lane"),
    "small_craft": marked("boat channel"),
}


PARALLEL_RAD = np.radians(30.0)  # two sides that differ more do not show which way the boats go


def channel_flags(request: SwimRequest, legs: tuple[LegTrack, ...]) -> list[Flag]:
    """A flag for every stretch of the track inside a channel."""
    return [
        _flag(request, leg, channel, (start, end))
        for leg in legs
        for channel, start, end in request.chart.stretches("channels", leg.xy_m)
    ]


def _flag(request: SwimRequest, leg: LegTrack, channel: Channel, stretch: tuple[float, float]) -> Flag:
    start, end = stretch
    part = part_of(leg.xy_m, start, end)
    about = {"kind": "channel", "name": channel.name, "length_m": length_m(part)}
    if not leg.dated:
        message = tr("The straight line of leg {number} crosses the {channel}; the leg is not timed.").format(
            number=leg.number, channel=_words(channel)
        )
        return stretch_flag(request, leg, start, end, severity="warn", message=message, **about)
    crossing = _crossing(request, leg, channel, stretch, part)
    stays = end == len(leg.xy_m) - 1.0 and leg.stay_until_s > leg.t_s[-1]
    until_s = leg.stay_until_s if stays else leg.time_at(end)
    severity, sentences, brief = _judged(request, channel, crossing, leg.time_at(start), leg.time_at(end), until_s)
    if stays:
        minutes = (leg.stay_until_s - leg.t_s[-1]) / 60.0
        sentences.append(
            tr("{end_name} lies in it: you would stay {minutes:.0f} min among the boats.").format(
                end_name=leg.end_name, minutes=minutes
            )
        )
        severity = "stop" if severity == "stop" else "warn"
    angle = crossing.heading_angle_deg
    return stretch_flag(
        request,
        leg,
        start,
        end,
        severity=severity,
        message=" ".join(sentences),
        brief=brief,
        crossing_angle_deg=None if np.isnan(angle) else angle,
        **about,
    )


def _crossing(
    request: SwimRequest, leg: LegTrack, channel: Channel, stretch: tuple[float, float], part: np.ndarray
) -> Crossing:
    start, end = stretch
    heading = part_of(np.unwrap(leg.heading_rad), start, end)
    return Crossing(
        part_m=part,
        seconds=leg.time_at(end) - leg.time_at(start),
        heading_rad=float(np.arctan2(np.sin(heading).mean(), np.cos(heading).mean())),
        stream_m_s=part_of(leg.stream_m_s, start, end).mean(axis=0),
        flow_rad=flow_rad(request, channel, part),
        pace_m_s=request.swimmer.made_good_m_s,
    )


def flow_rad(request: SwimRequest, channel: Channel, part_m: np.ndarray) -> float:
    """Direction of the traffic in the grid where a track (k, 2) crosses it: given, else of the centre line, else of the
    sides that are crossed; NaN where none of them tells."""
    place = part_m[len(part_m) // 2]
    if np.isfinite(channel.flow_deg):
        return float(np.radians(channel.flow_deg - request.frame.convergence_at(place[0])))
    if channel.centre is not None:
        return _directions(np.hstack([channel.centre[:-1], channel.centre[1:]]), place[None, :])[0]
    sides = _directions(channel.area.edges, part_m[[0, -1]], within_m=1.0)
    if not sides or abs(np.sin(sides[0] - sides[-1])) > np.sin(PARALLEL_RAD):
        return float("nan")
    # Sides run either way: doubled angles make opposite ways one before the mean is taken.
    return float(np.angle(np.sum(np.exp(2j * np.array(sides)))) / 2.0)


def _directions(pieces: np.ndarray, places: np.ndarray, within_m: float = np.inf) -> list[float]:
    """Directions in the grid of the pieces (m, 4) nearest to places (n, 2), those farther off left out."""
    away = distance_to_segments(places, pieces)[0]
    nearest = [pieces[row] for row, least in zip(away.argmin(axis=1), away.min(axis=1)) if least <= within_m]
    return [float(np.arctan2(piece[2] - piece[0], piece[3] - piece[1])) for piece in nearest]


def _judged(
    request: SwimRequest, channel: Channel, crossing: Crossing, enter_s: float, leave_s: float, until_s: float
) -> tuple[str, list[str], str]:
    """Severity, sentences, and the few words for the card; ``until_s`` ends the stay at a mark inside."""
    minutes = crossing.seconds / 60.0
    sentences = [
        tr("You are in the {channel} from {first} to {last}: {minutes:.1f} min over {metres:.0f} m.").format(
            channel=_words(channel),
            first=clock_words(request, enter_s),
            last=clock_words(request, leave_s),
            minutes=minutes,
            metres=length_m(crossing.part_m),
        )
    ]
    times = f"{clock_words(request, enter_s)}-{clock_words(request, leave_s)}"
    brief = f"{_words(channel)} {times}"
    if np.isnan(crossing.heading_angle_deg):
        sentences.append(tr("The direction of its traffic is not known, so the crossing angle is not checked."))
        severity = "warn"
    else:
        square = crossing.heading_angle_deg >= 90.0 - request.settings.square_within_deg
        severity = "note" if square else "warn"
        brief += "" if square else tr(", cross square")
        sentences.append(_angle_words(crossing, square))
        if np.isnan(channel.flow_deg):
            sentences.append(tr("The way of its traffic is taken from its shape."))
        sentences += crossing.square_words(request.frame)
    if np.isfinite(channel.boat_m_s):
        sentences.append(
            tr("A boat at {boat_kn:.0f} kn runs {distance} in that time: enter only when none is nearer.").format(
                boat_kn=knots_from_m_s(channel.boat_m_s),
                distance=_distance_words(channel.boat_m_s * crossing.seconds),
            )
        )
    conflict, words = _sailing_words(request, channel, crossing, enter_s, until_s)
    if words:
        brief += f". {' '.join(words[:-1])}"
    return ("stop" if conflict else severity), sentences + words, brief


def _angle_words(crossing: Crossing, square: bool) -> str:
    angles = tr(
        "you point {heading_angle_deg:.0f}° off the line of its traffic and move {track_angle_deg:.0f}° off it"
    ).format(heading_angle_deg=crossing.heading_angle_deg, track_angle_deg=crossing.track_angle_deg)
    return (
        tr("Near square: {angles}.").format(angles=angles)
        if square
        else tr("Not near a right angle: {angles}; cross square.").format(angles=angles)
    )


def _sailing_words(
    request: SwimRequest, channel: Channel, crossing: Crossing, enter_s: float, leave_s: float
) -> tuple[bool, list[str]]:
    """Whether a sailing falls into the crossing, and between which times to enter."""
    blocked = blocked_times_s(request, channel, enter_s, leave_s)
    if not blocked:
        return False, []
    conflict = [span for span in blocked if span[0] < leave_s and span[1] > enter_s]
    need_s = crossing.square_seconds if np.isfinite(crossing.square_seconds) else crossing.seconds
    slot = _slot(blocked, enter_s, need_s)
    words = []
    if conflict:
        words.append(tr("The ferry of {when} is too near.").format(when=clock_words(request, conflict[0][2])))
    if slot is None:
        words.append(tr("No gap in the timetable is long enough to cross in."))
    else:
        words.append(_slot_words(request, slot))
    return bool(conflict), words + [tr("A timetable is not the traffic.")]


def _slot_words(request: SwimRequest, slot: tuple[float, float]) -> str:
    # The first whole minute not too early and the last one not too late.
    first, last = np.ceil(slot[0] / 60.0 - 1e-6) * 60.0, np.floor(slot[1] / 60.0 + 1e-6) * 60.0
    if not np.isfinite(last):
        return tr("Enter from {first} on.").format(first=clock_words(request, first))
    if not np.isfinite(first):
        return tr("Enter by {last}.").format(last=clock_words(request, last))
    return tr("Enter between {first} and {last}.").format(
        first=clock_words(request, first), last=clock_words(request, last)
    )


def blocked_times_s(
    request: SwimRequest, channel: Channel, enter_s: float, leave_s: float
) -> list[tuple[float, float, float]]:
    """Times not to be in the channel, within half a day before and after: from, to, and the sailing itself, seconds."""
    first = request.clock.moment(enter_s) - timedelta(hours=12)
    last = request.clock.moment(leave_s) + timedelta(hours=12)
    blocked = []
    for sailing in channel.sailings:
        for moment in sailings_between(sailing.when, first, last, request.clock.zone):
            at = request.clock.seconds(moment)
            blocked.append((at - 60.0 * sailing.clear_before_min, at + 60.0 * sailing.clear_after_min, at))
    return sorted(blocked)


def _slot(blocked: list[tuple[float, float, float]], enter_s: float, need_s: float) -> tuple[float, float] | None:
    """The gap to enter in, (first, last), that is nearest to the planned entry and long enough; None where none is."""
    slots, free_from = [], -np.inf
    for start, end, _ in blocked:
        if start - need_s >= free_from:
            slots.append((free_from, start - need_s))
        free_from = max(free_from, end)
    slots.append((free_from, np.inf))
    return min(slots, key=lambda slot: max(slot[0] - enter_s, enter_s - slot[1], 0.0), default=None)


def _words(channel: Channel) -> str:
    kind = spoken(KIND_WORDS[channel.kind])
    return f"{kind} {channel.name}" if channel.name else tr("unnamed {kind}").format(kind=kind)


def _distance_words(metres: float) -> str:
    return f"{metres:.0f} m" if metres < 1000.0 else f"{metres / 1000.0:.1f} km"
