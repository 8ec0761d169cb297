"""The swim as GeoJSON: places, straight legs, tracks of the legs swum with the time of every point, flags.

Source: RFC 7946, The GeoJSON Format: WGS 84, longitude first, lines cut at the 180th meridian (section 3.1.9).
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator

from ..core.results.date_line import LonLat, cut_at_180
from ..core.results.file_contents import contents_words, shown_legs, shown_places, swum_legs
from ..core.results.plain_values import iso_time
from ..core.results.report import report_dict, wrapped_lon
from ..core.results.shared import without_marks
from ..core.results.swim_plan import Leg, SwimPlan
from ..version import tideleg_version
from .xml_text import clean

DECIMALS = 7  # of a degree: about a centimetre


def geojson_text(plan: SwimPlan, *, private: bool = False) -> str:
    """The GeoJSON file as text; ``what`` of each feature's properties is place, leg, track or flag.

    Legs and flags have the report's names and numbers, a track the time of each of its points: ``times``, ISO 8601
    with offset. With ``private`` the marks are left out.
    """
    plan = without_marks(plan) if private else plan
    told = {
        "type": "FeatureCollection",
        "name": clean(plan.route),
        "description": contents_words(plan, flags=True),
        "features": [*_places(plan), *_legs_and_flags(plan), *map(_track, swum_legs(plan))],
    }
    return json.dumps(_plain(told), indent=1, ensure_ascii=False, allow_nan=False) + "\n"


def _places(plan: SwimPlan) -> Iterator[dict[str, object]]:
    for place in shown_places(plan):
        stop = place.stop
        known = {} if stop is None else {"kind": stop.kind, "note": stop.note, "depth_now_m": stop.depth_now_m}
        yield _feature("place", _point(place.lon, place.lat), {"name": place.name, **known})


def _legs_and_flags(plan: SwimPlan) -> Iterator[dict[str, object]]:
    if plan.marks_left_out:
        return
    told = report_dict(plan, version=tideleg_version())
    for leg, values in zip(shown_legs(plan), told["legs"]):
        line = _line([(leg.start_lon, leg.start_lat), (leg.end_lon, leg.end_lat)])
        yield _feature("leg", line, values)
    for flag, values in zip(plan.flags, told["flags"]):
        places = list(dict.fromkeys(flag.points))
        shape = _line(places) if len(places) > 1 else _point(*places[0])
        yield _feature("flag", shape, {name: value for name, value in values.items() if name not in ("lon", "lat")})


def _track(leg: Leg) -> dict[str, object]:
    """The times are those of the track's own points; a point that a cut at 180 degrees adds has none."""
    times = [iso_time(point.moment, where=f"track of leg {leg.number}") for point in leg.track]
    about = {"number": leg.number, "from": leg.start_name, "to": leg.end_name, "depart": times[0], "arrive": times[-1]}
    return _feature("track", _line((point.lon, point.lat) for point in leg.track), {**about, "times": times})


def _feature(what: str, geometry: dict[str, object], properties: dict[str, object]) -> dict[str, object]:
    return {"type": "Feature", "properties": {"what": what, **properties}, "geometry": geometry}


def _point(lon: float, lat: float) -> dict[str, object]:
    return {"type": "Point", "coordinates": _pair((wrapped_lon(lon), lat))}


def _line(points: Iterable[LonLat]) -> dict[str, object]:
    pieces = [[_pair(point) for point in piece] for piece in cut_at_180(points)]
    if len(pieces) == 1:
        return {"type": "LineString", "coordinates": pieces[0]}
    return {"type": "MultiLineString", "coordinates": pieces}


def _pair(lonlat: LonLat) -> list[float]:
    return [round(lonlat[0], DECIMALS), round(lonlat[1], DECIMALS)]


def _plain(value: object) -> object:
    """The value with its texts free of what is no text: control characters, halves of letters."""
    if isinstance(value, dict):
        return {name: _plain(one) for name, one in value.items()}
    if isinstance(value, list):
        return [_plain(one) for one in value]
    return clean(value) if isinstance(value, str) else value
