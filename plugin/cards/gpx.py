"""The swim as GPX 1.1 for a handheld receiver: stops as waypoints, the legs as one route.

Source of the element order: the GPX 1.1 schema, https://www.topografix.com/GPX/1/1/gpx.xsd.
"""

from __future__ import annotations

import re
from datetime import datetime, timezone
from html import escape

from ..core.results.card import Place, clock_up, leg_comment, route_places
from ..core.results.plain_values import nearest_second
from ..core.results.swim_plan import Stop, SwimPlan
from ..version import tideleg_version

NAMESPACE = "http://www.topografix.com/GPX/1/1"
SCHEMA = "http://www.w3.org/2001/XMLSchema-instance"
CAUTION = "PREDICTED, not for navigation"
# What XML 1.0 has no way to carry: control characters, surrogates, two non-characters.
UNWRITABLE = re.compile("[\x00-\x1f\x7f-\x9f\ud800-\udfff\ufffe\uffff]+")


def gpx_text(plan: SwimPlan) -> str:
    """The GPX file as text: every place once as ``wpt`` with a name of its own, then the ``rte`` with the legs.

    A route point's ``cmt`` is how to get there: heading, minutes, leave and arrive in the plan's zone.
    """
    places = route_places(plan)
    names = unique_names(places)
    lines = [
        '<?xml version="1.0" encoding="UTF-8"?>',
        f'<gpx version="1.1" creator="{escape("Tideleg " + tideleg_version())}" xmlns="{NAMESPACE}" '
        f'xmlns:xsi="{SCHEMA}" xsi:schemaLocation="{NAMESPACE} {NAMESPACE}/gpx.xsd">',
        *_metadata(plan),
        *_waypoints(places, names),
        *_route(plan, places, names),
        "</gpx>",
    ]
    return "\n".join(lines) + "\n"


def unique_names(places: list[Place]) -> list[str]:
    """A name a place: the same place keeps one name, different places of the same name are counted apart."""
    names: dict[tuple[str, float, float], str] = {}
    taken: set[str] = set()
    for place in places:
        if place.key in names:
            continue
        name, count = clean(place.name) or "stop", 1
        wanted = name
        while wanted in taken:
            count += 1
            wanted = f"{name} {count}"
        taken.add(wanted)
        names[place.key] = wanted
    return [names[place.key] for place in places]


def clean(text: str) -> str:
    """The text without what XML cannot carry, runs of it become one space."""
    return UNWRITABLE.sub(" ", text).strip()


def _metadata(plan: SwimPlan) -> list[str]:
    described = f"{CAUTION}. {plan.title}. Times in {plan.zone}." if plan.title else f"{CAUTION}. Times in {plan.zone}."
    return [
        "<metadata>",
        _element("name", plan.route),
        _element("desc", described),
        _element("time", _utc(plan.depart)),
        "</metadata>",
    ]


def _waypoints(places: list[Place], names: list[str]) -> list[str]:
    lines: list[str] = []
    for name, place in dict(zip(names, places)).items():
        stop = place.stop
        known = {} if stop is None else {"cmt": _depth(stop), "desc": stop.note, "type": stop.kind}
        lines += _point("wpt", place, name=name, **known)
    return lines


def _route(plan: SwimPlan, places: list[Place], names: list[str]) -> list[str]:
    lines = ["<rte>", _element("name", plan.route), _element("desc", CAUTION)]
    comments = [f"leave {clock_up(plan.depart)}", *(leg_comment(leg, plan.heading_step_deg) for leg in plan.legs)]
    for place, name, comment in zip(places, names, comments):
        lines += _point("rtept", place, name=name, cmt=comment)
    return [*lines, "</rte>"]


def _point(tag: str, place: Place, **children: str) -> list[str]:
    """A point with its children in the given order, which must be the schema's; empty ones are left out."""
    lon = (round(place.lon, 7) + 180.0) % 360.0 - 180.0  # the schema allows [-180, 180)
    lines = [f'<{tag} lat="{place.lat:.7f}" lon="{lon:.7f}">']
    lines += [_element(name, text) for name, text in children.items() if clean(text)]
    return [*lines, f"</{tag}>"]


def _depth(stop: Stop) -> str:
    return "" if stop.depth_now_m is None else f"{stop.depth_now_m:.1f} m deep on arrival"


def _element(tag: str, text: str) -> str:
    return f"<{tag}>{escape(clean(text))}</{tag}>"


def _utc(moment: datetime) -> str:
    return nearest_second(moment.astimezone(timezone.utc)).strftime("%Y-%m-%dT%H:%M:%SZ")
