"""A swim in time as layers: the swimmer minute by minute, the stream along the track and round it.

Every row has ``begin`` and ``end`` in UTC, which QGIS compares by their digits, so the zones of machine and project do
not matter. Arrows have no angle: they point from the row's place to ``to_lon``, ``to_lat``, wherever that is on a map.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import cos, radians, sin

from qgis.core import QgsGeometry, QgsPointXY, QgsWkbTypes

from ..core.results.card import card_angle, clock_up
from ..core.results.report import wrapped_lon
from ..core.results.swim_in_time import StreamHere, SwimInTime, SwimMoment
from ..words import tr
from .plan_layers import OutputLayer, Row, both_times

# Weaker than this is drawn as slack; the rates of charts and cards have one decimal; common practice, no source.
SLACK_BELOW_KN = 0.1
LEAST_ROOM_DEG = 1e-6  # a tenth of a metre; on the date line itself an arrow may reach so far over it
POINTS_AHEAD_DEG = 0.005  # of latitude, some 550 m: long enough to have a direction at any scale a swim is seen at


def stream_state(here: StreamHere) -> str:
    """``unknown``, ``slack`` or ``runs``: what is drawn."""
    if here.rate_kn is None:
        return "unknown"
    return "slack" if here.rate_kn < SLACK_BELOW_KN or here.set_deg is None else "runs"


def stream_words(here: StreamHere) -> str:
    """``to 085°, 0.3 kn``; slack and what is not known in words."""
    state = stream_state(here)
    if state == "unknown":
        return tr("not known")
    if state == "slack":
        return tr("slack, below {} kn").format(SLACK_BELOW_KN)
    words = tr("to {}°, {} kn").format(card_angle(here.set_deg), f"{here.rate_kn:.1f}")
    return tr("{}, extrapolated").format(words) if here.known == "extrapolated" else words


def tide_words(minute: SwimMoment) -> str:
    """``1.2 m, rising``, or that it is not known."""
    if minute.tide_m is None:
        return tr("not known")
    way = {True: tr(", rising"), False: tr(", falling"), None: ""}[minute.tide_rises]
    return f"{minute.tide_m:.1f} m{way}"


STREAM_COLUMNS = (
    ("begin", "time"),
    ("end", "time"),
    ("begin_local", "text"),
    ("end_local", "text"),
    ("clock", "text"),
    ("leg", "whole"),
    ("stay", "whole"),
    ("state", "text"),
    ("known", "text"),
    ("set_deg", "number"),
    ("rate_kn", "number"),
    ("words", "text"),
    ("to_lon", "number"),
    ("to_lat", "number"),
)


def _stream_rows(places: Sequence[StreamHere]) -> Iterator[Row]:
    """Where the stream is not known rate and set are NULL and ``words`` says so."""
    for here, (lon, lat) in zip(places, _placed(places)):
        yield (
            QgsGeometry.fromPointXY(QgsPointXY(lon, lat)),
            {
                "clock": tr("time not known") if here.moment is None else clock_up(here.moment),
                "leg": here.leg,
                "stay": int(here.is_stay),
                "state": stream_state(here),
                "known": here.known,
                "set_deg": here.set_deg,
                "rate_kn": here.rate_kn,
                "words": stream_words(here),
                **_ahead(lon, lat, here.set_deg),
                **both_times(begin=here.begin, end=here.end),
            },
        )


def _placed(places: Sequence[StreamHere | SwimMoment]) -> list[tuple[float, float]]:
    """The places as (lon, lat) within 180 degrees: on a projected map QGIS asks a layer for no others."""
    return [(wrapped_lon(place.lon), place.lat) for place in places]


def _ahead(lon: float, lat: float, set_deg: float | None) -> dict[str, float | None]:
    """A place that lies towards the set; only its direction counts.

    It stays on this side of the date line, nearer where it must: beyond it a map would draw round the world.
    """
    if set_deg is None:
        return {"to_lon": None, "to_lat": None}
    east, north = sin(radians(set_deg)), cos(radians(set_deg))
    across = POINTS_AHEAD_DEG * east / max(cos(radians(lat)), 0.01)
    room = 180.0 - lon if across > 0.0 else lon + 180.0
    nearer = min(1.0, max(room, LEAST_ROOM_DEG) / abs(across)) if across else 1.0
    return {"to_lon": lon + nearer * across, "to_lat": lat + nearer * POINTS_AHEAD_DEG * north}


SWIMMER_COLUMNS = (
    ("begin", "time"),
    ("end", "time"),
    ("begin_local", "text"),
    ("end_local", "text"),
    ("clock", "text"),
    ("minute", "whole"),
    ("leg", "whole"),
    ("place", "text"),
    ("stay", "whole"),
    ("hold", "text"),
    ("stream", "text"),
    ("tide_m", "number"),
    ("tide", "text"),
    ("depth_m", "number"),
)


def hold_words(minute: SwimMoment, step_deg: float) -> str | None:
    """The heading as on the card, ``045M``; None where none is held."""
    heading = minute.heading_mag_deg
    return None if heading is None else f"{card_angle(heading, step_deg)}M"


def _swimmer_rows(swim: SwimInTime) -> Iterator[Row]:
    """A point a minute; ``minute`` counts from the departure."""
    for number, (minute, (lon, lat)) in enumerate(zip(swim.minutes, _placed(swim.minutes))):
        yield (
            QgsGeometry.fromPointXY(QgsPointXY(lon, lat)),
            {
                "clock": clock_up(minute.moment),
                "minute": number,
                "leg": minute.leg,
                "place": minute.place,
                "stay": int(minute.is_stay),
                "hold": hold_words(minute, swim.heading_step_deg) if minute.can_be_swum else tr("cannot be swum"),
                "stream": stream_words(minute.stream),
                "tide_m": minute.tide_m,
                "tide": tide_words(minute),
                "depth_m": minute.depth_m,
                **both_times(begin=minute.moment, end=minute.end),
            },
        )


POINT = QgsWkbTypes.Type.Point
SWIMMER = OutputLayer(parameter="SWIMMER", wkb_type=POINT, columns=SWIMMER_COLUMNS, rows=_swimmer_rows)
STREAM_ALONG = OutputLayer(
    parameter="STREAM_ALONG", wkb_type=POINT, columns=STREAM_COLUMNS, rows=lambda swim: _stream_rows(swim.along)
)
STREAM_AROUND = OutputLayer(
    parameter="STREAM_AROUND", wkb_type=POINT, columns=STREAM_COLUMNS, rows=lambda swim: _stream_rows(swim.around)
)
