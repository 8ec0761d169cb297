"""What the dock says of one minute of a swim; what is not known is said so and never 0."""

from __future__ import annotations

from ..core.clock import elapsed
from ..core.results.card import clock_up, offset_text, whole_minutes
from ..core.results.swim_in_time import SwimInTime, SwimMoment
from ..layers_out.time_layers import hold_words, stream_words, tide_words
from ..words import tr


def time_headline(swim: SwimInTime, minute: SwimMoment) -> str:
    """``11:25 UTC-3, 85 min after leaving``."""
    since = elapsed(swim.minutes[0].moment, minute.moment).total_seconds() / 60.0
    return tr("{} {}, {} min after leaving").format(
        clock_up(minute.moment), offset_text(minute.moment), whole_minutes(since)
    )


def time_lines(swim: SwimInTime, minute: SwimMoment) -> list[str]:
    """Where the swimmer is and what to hold, then stream, tide and depth, a line each."""
    tide = tide_words(minute)
    if minute.tide_m is not None and swim.datum:
        tide = tr("{} (above {})").format(tide, swim.datum)
    depth = tr("not known") if minute.depth_m is None else tr("about {} m").format(f"{minute.depth_m:.0f}")
    return [
        _doing(swim, minute),
        tr("Stream: {}").format(stream_words(minute.stream)),
        tr("Tide: {}").format(tide),
        tr("Depth here: {}").format(depth),
    ]


def _doing(swim: SwimInTime, minute: SwimMoment) -> str:
    if minute.is_stay:
        return tr("At {}").format(minute.place)
    if not minute.can_be_swum:
        return tr("Leg {} to {}: cannot be swum").format(minute.leg, minute.place)
    hold = hold_words(minute, swim.heading_step_deg) or tr("not known")
    return tr("Leg {} to {}: hold {}").format(minute.leg, minute.place, hold)
