"""What stands beside the cursor: depth, distance and bearing, and the heading to hold. Unknown is said in words."""

from __future__ import annotations

import math
from datetime import datetime

import numpy as np

from ..core.chart.marks import Mark
from ..core.errors import SwimPlanError
from ..core.geodesy import geodesic_leg
from ..core.magnetism import Variation, variation_at
from ..core.results.card import card_angle, clock_up, leg_state, position_text, whole_minutes
from ..core.results.swim_plan import Leg
from ..core.solve.measured_leg import measured_leg
from ..words import tr
from .at_hand import Surroundings
from .places import Place

KILOMETRES_FROM_M = 10_000.0


def position_line(place: Place) -> str:
    """The place in degrees and decimal minutes, after the mark's name where it is a mark's."""
    words = position_text(place.lon, place.lat)
    return f"{place.mark.name}: {words}" if place.mark is not None else words


def depth_lines(place: Place, around: Surroundings) -> list[str]:
    """The charted depth and, below it, what it rests on; on land, or not known, in words."""
    request = around.request
    if request is None:
        return [tr("Charted depth not known:"), around.words]
    (x_m, y_m), *_ = request.frame.to_xy(np.array([place.lonlat])).tolist()
    spot = np.array([[x_m, y_m]])
    if any(land.area.contains(spot)[0] for land in request.chart.near("land", np.hstack([spot[0], spot[0]]))):
        return [tr("On land")]
    charted = request.depths.depth_at(x_m, y_m)
    if math.isnan(charted.depth_m):
        return [tr("Charted depth not known:"), charted.basis]
    return [tr("Charted depth {:.1f} m").format(charted.depth_m), f"({charted.basis})"]


def from_lines(start: tuple[float, float], name: str, place: Place, variation: Variation | str) -> list[str]:
    """Distance and, below it, bearings from a named place."""
    if start == place.lonlat:
        return [tr("At {}").format(name)]
    distance_m, bearings = _ruler(start, place.lonlat, variation)
    return [tr("From {}: {}").format(name, distance_words(distance_m)), bearings]


def ruler_words(start: tuple[float, float], end: tuple[float, float], variation: Variation | str) -> str:
    """``1128 m, 077° true, 081° magnetic``: the ruler line; why there is no magnetic bearing where there is none."""
    distance_m, bearings = _ruler(start, end, variation)
    return f"{distance_words(distance_m)}, {bearings}"


def _ruler(start: tuple[float, float], end: tuple[float, float], variation: Variation | str) -> tuple[float, str]:
    distance_m, true_deg = geodesic_leg(*start, *end)
    words = tr("{}° true").format(card_angle(true_deg))
    if isinstance(variation, str):
        return distance_m, f"{words}, {tr('magnetic not known: {}').format(variation)}"
    magnetic = tr("{}° magnetic").format(card_angle(variation.magnetic(true_deg)))
    return distance_m, f"{words}, {magnetic}"


def distance_words(distance_m: float) -> str:
    """Whole metres up to ten kilometres, then kilometres with one decimal."""
    if distance_m < KILOMETRES_FROM_M:
        return f"{distance_m:.0f} m"
    return f"{distance_m / 1000.0:.1f} km"


def variation_for(place: tuple[float, float], entry: Mark | None, depart: datetime | None) -> Variation | str:
    """The variation at the entry, as the card has it, or at the place without one; in words why it is not known."""
    if depart is None:
        return tr("no departure is chosen")
    lon, lat = (entry.lon, entry.lat) if entry is not None else place
    try:
        return variation_at((lon + 180.0) % 360.0 - 180.0, lat, depart)
    except SwimPlanError as error:
        return str(error)


def leg_measured(start: Place, end: Place, around: Surroundings) -> Leg | str:
    """The leg in the water at the chosen departure, or in words why there is none."""
    if around.request is None:
        return around.words
    if around.is_old:
        return tr("the swim is being planned anew")
    try:
        return measured_leg(around.request, _stop(start, tr("start")), _stop(end, tr("end")))
    except SwimPlanError as error:
        return str(error)


def leg_lines(leg: Leg | str) -> list[str]:
    """Heading to hold, minutes, ground speed and stream of a leg, or why it cannot be swum."""
    if isinstance(leg, str):
        return [tr("Heading not known: {}").format(leg)]
    if leg_state(leg) != "swim":
        return [tr("Cannot be swum: {}").format(leg.reason)]
    magnetic, true = card_angle(leg.heading_mag_deg), card_angle(leg.heading_true_deg)
    lines = [tr("Hold {} ({}° magnetic, {}° true)").format(leg.card_heading, magnetic, true)]
    if len(leg.headings) > 1:
        lines.append(tr("The first of {} headings").format(len(leg.headings)))
    minutes, hour, arrive = whole_minutes(leg.minutes), clock_up(leg.depart), clock_up(leg.arrive)
    lines.append(tr("{} min, leave {}, arrive {}").format(minutes, hour, arrive))
    lines.append(tr("{:.2f} m/s over the ground").format(leg.ground_speed_m_s))
    if leg.stream_kn is None or leg.stream_set_deg is None:
        lines.append(tr("Stream not known"))
    else:
        lines.append(tr("Stream {:.1f} kn towards {}° true").format(leg.stream_kn, card_angle(leg.stream_set_deg)))
    return lines


def _stop(place: Place, name: str) -> Mark:
    named = place.mark.name if place.mark is not None else name
    return Mark(name=named, kind="waypoint", lon=(place.lon + 180.0) % 360.0 - 180.0, lat=place.lat)
