"""The swim as GPX 1.1 for a handheld receiver: places as waypoints, the legs as one route, what is swum as a track.

Source of the element order: the GPX 1.1 schema, https://www.topografix.com/GPX/1/1/gpx.xsd.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timezone
from html import escape

from ..core.errors import SwimPlanError
from ..core.results.card import Place, clock_nearest, clock_up, leg_comment, route_places
from ..core.results.file_contents import CAUTION, contents_words, shown_places, swum_legs, utc_text
from ..core.results.on_the_way import WayPoint, points_on_the_way
from ..core.results.report import wrapped_lon
from ..core.results.shared import without_marks
from ..core.results.swim_plan import Leg, Stop, SwimPlan, TrackPoint
from ..core.words import spoken
from ..version import tideleg_version
from ..words import tr
from .gps_options import GpsOptions
from .short_names import names_of, short_text
from .xml_text import clean, element

NAMESPACE = "http://www.topografix.com/GPX/1/1"
SCHEMA = "http://www.w3.org/2001/XMLSchema-instance"
MOST_WAYPOINTS = 500  # that many small handhelds keep; common practice, no source


def gpx_text(plan: SwimPlan, options: GpsOptions | None = None) -> str:
    """The GPX file as text: every place once as ``wpt`` with a name of its own, ``rte`` with the legs, ``trk``.

    A route point's ``cmt`` is how to get there: heading, minutes, leave and arrive in the plan's zone. The track has
    a segment for every leg that can be swum, with times in UTC. SwimPlanError for too many waypoints.
    """
    options = options or GpsOptions()
    plan = without_marks(plan) if options.private else plan
    on_the_way = way_points(plan, options)
    way_names = [way_name(point) for point in on_the_way]
    places = shown_places(plan) if plan.marks_left_out else route_places(plan)
    names = names_of(places, options, taken=way_names)
    title = short_text(plan.route, options, "SWIM")
    lines = [
        '<?xml version="1.0" encoding="UTF-8"?>',
        f'<gpx version="1.1" creator="{escape("Tideleg " + tideleg_version())}" xmlns="{NAMESPACE}" '
        f'xmlns:xsi="{SCHEMA}" xsi:schemaLocation="{NAMESPACE} {NAMESPACE}/gpx.xsd">',
        *_metadata(plan, len(on_the_way)),
        *_waypoints(places, names),
        *_ways(on_the_way, way_names),
        *([] if plan.marks_left_out else _route(plan, title, places, names)),
        *_track(swum_legs(plan), title),
        "</gpx>",
    ]
    return "\n".join(lines) + "\n"


def way_points(plan: SwimPlan, options: GpsOptions) -> list[WayPoint]:
    """The points on the way asked for; SwimPlanError where a small receiver has no room for them or their names."""
    if options.every_m is None:
        return []
    found = points_on_the_way(plan, options.every_m)
    total = len(found) + len(shown_places(plan))
    longest = max((len(way_name(point)) for point in found), default=0)
    if total <= MOST_WAYPOINTS and longest <= (options.name_length or longest):
        return found
    asked = tr("Points every {} m make {} waypoints, with names of up to {} letters")
    raise SwimPlanError(
        asked=asked.format(f"{options.every_m:g}", total, longest),
        allowed=tr("{} waypoints are the most that small receivers keep, and names have the letters asked for").format(
            MOST_WAYPOINTS
        ),
        remedy=tr("Put the points further apart"),
    )


def way_name(point: WayPoint) -> str:
    """``L2P3``: the third point of leg 2, in letters and figures that every receiver has."""
    return f"L{point.leg}P{point.number}"


def _metadata(plan: SwimPlan, way_count: int) -> list[str]:
    departs = tr("Departure {when}.").format(when=f"{plan.depart:%Y-%m-%d %H:%M}")
    return [
        "<metadata>",
        element("name", plan.route),
        element("desc", f"{contents_words(plan, way_points=way_count)} {departs}"),
        element("time", utc_text(datetime.now(timezone.utc))),  # the schema's: when the file was made
        "</metadata>",
    ]


def _waypoints(places: list[Place], names: list[str]) -> list[str]:
    lines: list[str] = []
    for name, place in dict(zip(names, places)).items():
        stop = place.stop
        known = {} if stop is None else {"cmt": _depth(stop), "desc": stop.note, "type": stop.kind}
        lines += _point("wpt", place, name=name, **known)
    return lines


def _ways(points: Sequence[WayPoint], names: Sequence[str]) -> list[str]:
    """What to look at the clock by: when one should be at each."""
    lines: list[str] = []
    for point, name in zip(points, names):
        lines += _point("wpt", point, name=name, cmt=f"there at {clock_nearest(point.moment)}")
    return lines


def _track(legs: Sequence[Leg], title: str) -> list[str]:
    """One segment a leg; no track where none is swum."""
    if not legs:
        return []
    lines = ["<trk>", element("name", title), element("desc", spoken(CAUTION))]
    for leg in legs:
        points = (line for point in leg.track for line in _point("trkpt", point, time=utc_text(point.moment)))
        lines += ["<trkseg>", *points, "</trkseg>"]
    return [*lines, "</trk>"]


def _route(plan: SwimPlan, title: str, places: list[Place], names: list[str]) -> list[str]:
    lines = ["<rte>", element("name", title), element("desc", spoken(CAUTION))]
    comments = [f"leave {clock_up(plan.depart)}", *(leg_comment(leg, plan.heading_step_deg) for leg in plan.legs)]
    for place, name, comment in zip(places, names, comments):
        lines += _point("rtept", place, name=name, cmt=comment)
    return [*lines, "</rte>"]


def _point(tag: str, place: Place | WayPoint | TrackPoint, **children: str) -> list[str]:
    """A point with its children in the given order, which must be the schema's; empty ones are left out."""
    lon = wrapped_lon(round(place.lon, 7))  # the schema allows [-180, 180)
    lines = [f'<{tag} lat="{place.lat:.7f}" lon="{lon:.7f}">']
    lines += [element(name, text) for name, text in children.items() if clean(text)]
    return [*lines, f"</{tag}>"]


def _depth(stop: Stop) -> str:
    return "" if stop.depth_now_m is None else f"{stop.depth_now_m:.1f} m deep on arrival"
