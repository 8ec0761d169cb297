"""The swim as KML 2.2: places, straight legs, tracks of the legs swum with their times, flags; nothing from outside.

Source of the element order: OGC 07-147r2, OGC KML 2.2, and its schema ogckml22.xsd.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from datetime import datetime
from html import escape

from ..core.results.card import leg_comment, position_text
from ..core.results.date_line import LonLat, cut_at_180
from ..core.results.file_contents import (
    contents_words,
    shown_flags,
    shown_legs,
    shown_places,
    swum_legs,
    utc_text,
)
from ..core.results.flag import Flag
from ..core.results.report import wrapped_lon
from ..core.results.shared import without_marks
from ..core.results.swim_plan import Leg, SwimPlan
from .xml_text import clean, element

NAMESPACE = "http://www.opengis.net/kml/2.2"
# Lines by width first, so that a grey picture loses nothing: colour as aabbggrr, width in pixels.
STYLES = {"leg": ("ff606060", 1.5), "track": ("ff5b3512", 4.0), "flag": ("ff0047b3", 7.0)}


def kml_text(plan: SwimPlan, *, private: bool = False) -> str:
    """The KML file as text: a folder each of places, legs, track and flags, those that are empty left out.

    Times are UTC. A line over the 180th meridian is cut there. With ``private`` the marks are left out.
    """
    plan = without_marks(plan) if private else plan
    folders = {
        "Places": _places(plan),
        "Legs": _legs(plan),
        "Track": _tracks(plan),
        "Flags": _flags(plan),
    }
    lines = ['<?xml version="1.0" encoding="UTF-8"?>', f'<kml xmlns="{NAMESPACE}">', "<Document>"]
    lines += [element("name", plan.route), _words(contents_words(plan, flags=True)), *_styles()]
    for name, placemarks in folders.items():
        inside = list(placemarks)
        lines += ["<Folder>", element("name", name), *inside, "</Folder>"] if inside else []
    return "\n".join([*lines, "</Document>", "</kml>"]) + "\n"


def _styles() -> Iterator[str]:
    for name, (colour, width) in STYLES.items():
        line = f"<LineStyle><color>{colour}</color><width>{width}</width></LineStyle>"
        yield f'<Style id="{name}">{line}</Style>'


def _places(plan: SwimPlan) -> Iterator[str]:
    for place in shown_places(plan):
        kind = "" if place.stop is None else f"{place.stop.kind}. "
        note = "" if place.stop is None else f" {place.stop.note}"
        words = f"{kind}{position_text(place.lon, place.lat)}.{note}"
        yield from _placemark(clean(place.name) or "stop", words, _point(place.lon, place.lat))


def _legs(plan: SwimPlan) -> Iterator[str]:
    for leg in shown_legs(plan):
        line = _line([(leg.start_lon, leg.start_lat), (leg.end_lon, leg.end_lat)])
        yield from _placemark(_leg_name(leg), leg_comment(leg, plan.heading_step_deg), line, style="leg")


def _tracks(plan: SwimPlan) -> Iterator[str]:
    """A track a leg, with the time it takes; between the ends of that time KML has none of its own."""
    for leg in swum_legs(plan):
        line = _line((point.lon, point.lat) for point in leg.track)
        words = f"The track swum: {leg_comment(leg, plan.heading_step_deg)}"
        span = (leg.track[0].moment, leg.track[-1].moment)
        yield from _placemark(_leg_name(leg), words, line, style="track", span=span)


def _flags(plan: SwimPlan) -> Iterator[str]:
    for flag in shown_flags(plan):
        places = list(dict.fromkeys(flag.points))
        shape = _line(places) if len(places) > 1 else _point(*places[0])
        yield from _placemark(_flag_name(flag), flag.message, shape, style="flag", span=(flag.start, flag.end))


def _leg_name(leg: Leg) -> str:
    return f"Leg {leg.number}: {leg.start_name} to {leg.end_name}"


def _flag_name(flag: Flag) -> str:
    return f"{flag.severity}: {flag.name or flag.kind.replace('_', ' ')}"


def _placemark(
    name: str, words: str, shape: str, *, style: str = "", span: tuple[datetime | None, datetime | None] = (None, None)
) -> Iterator[str]:
    """One placemark with its children in the schema's order."""
    ends = "".join(element(tag, utc_text(one)) for tag, one in zip(("begin", "end"), span) if one is not None)
    yield "<Placemark>"
    yield element("name", name)
    yield _words(words)
    if ends:
        yield f"<TimeSpan>{ends}</TimeSpan>"
    if style:
        yield f"<styleUrl>#{style}</styleUrl>"
    yield f"{shape}</Placemark>"


def _words(text: str) -> str:
    """A description; what shows it takes it for HTML, so that it is escaped once more."""
    return element("description", escape(clean(text), quote=False))


def _point(lon: float, lat: float) -> str:
    return f"<Point><coordinates>{_pair((wrapped_lon(lon), lat))}</coordinates></Point>"


def _line(points: Iterable[LonLat]) -> str:
    pieces = [
        f"<LineString><tessellate>1</tessellate><coordinates>{' '.join(map(_pair, piece))}</coordinates></LineString>"
        for piece in cut_at_180(points)
    ]
    return pieces[0] if len(pieces) == 1 else f"<MultiGeometry>{''.join(pieces)}</MultiGeometry>"


def _pair(lonlat: LonLat) -> str:
    return f"{lonlat[0]:.7f},{lonlat[1]:.7f}"
