"""What is doubtful about stream stations that a text brings: far from all else, no tide for the port, no range."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import cos, hypot, radians
from pathlib import Path
from typing import Any

from qgis.core import QgsFeatureRequest, QgsPointXY

from ..core.geodesy import geodesic_leg
from ..core.water.stream_rows import TextPlanRow
from ..plan_package.store import open_layer
from ..words import tr
from .station_forms import NEEDS_TIDE

FAR_M = 200_000.0  # a swim is in reach of its stations: beyond that a place is a slip (common practice, no source)
AROUND = ("routes", "marks", "land", "stream_stations")
TIDES = ("tides", "tide_ports", "tide_series", "tide_constants")

Box = tuple[float, float, float, float]  # west, south, east, north in degrees


@dataclass(frozen=True, kw_only=True)
class SpokenStation:
    """A station that a text speaks of: its fields as the plan will have them, and its place where it is new."""

    values: Mapping[str, Any]
    place: QgsPointXY | None = None


def station_doubts(
    plan: Path, present: Sequence[str], stations: Sequence[SpokenStation], rows: Sequence[TextPlanRow]
) -> list[str]:
    """Warnings, in the order of the stations; ``present`` names the tables that the plan has."""
    words = []
    new = [one for one in stations if one.place is not None]
    boxes = _boxes(plan, [name for name in AROUND if name in present]) if new else []
    for station in new:
        others = [*boxes, *(_box(one.place) for one in new if one is not station)]
        words += _far_words(station, others)
    with_neaps = {row.values["station"] for row in rows if row.values.get("neap_kn") is not None}
    for station in stations:
        words += _range_words(station.values, station.values["station"] in with_neaps)
    needed = [
        (tr("Station '{station}'").format(station=one.values["station"]), one.values.get("port"))
        for one in stations
        if _needs_tide(one)
    ]
    needed += [(tr("The tide coefficients"), row.values["port"]) for row in rows if row.layer == "tide_coefficients"]
    return words + _port_words(plan, present, list(dict.fromkeys((who, port) for who, port in needed if port)))


def _needs_tide(station: SpokenStation) -> bool:
    return station.values.get("form") in NEEDS_TIDE


def _far_words(station: SpokenStation, boxes: Sequence[Box]) -> list[str]:
    place = station.place
    distance_m = _distance_m(place, boxes)
    if distance_m is None or distance_m <= FAR_M:
        return []
    words = tr(
        "Station '{station}' at longitude {lon:.5f}, latitude {lat:.5f} lies {away_km:.0f} km from "
        "everything else in the plan: check its place."
    ).format(station=station.values["station"], lon=place.x(), lat=place.y(), away_km=distance_m / 1000.0)
    turned_m = _distance_m(QgsPointXY(place.y(), place.x()), boxes) if abs(place.x()) <= 90.0 else None
    if turned_m is not None and turned_m <= FAR_M:
        words += tr(
            " With longitude and latitude exchanged it would be {away_km:.0f} km: longitude comes first."
        ).format(away_km=turned_m / 1000.0)
    return [words]


def _range_words(values: Mapping[str, Any], has_neaps: bool) -> list[str]:
    if values.get("form") != "hourly":
        return []
    station = values["station"]
    if values.get("spring_range_m") is None:
        return [
            tr(
                "Station '{station}' has no spring range: every rate will be extrapolated, the spring rate "
                "on every day. Fill in spring_range_m."
            ).format(station=station)
        ]
    if has_neaps and values.get("neap_range_m") is None:
        return [
            tr(
                "Station '{station}' has rates at neaps and no neap range: they will not be used. Fill in neap_range_m."
            ).format(station=station)
        ]
    return []


def _port_words(plan: Path, present: Sequence[str], needed: Sequence[tuple[str, str]]) -> list[str]:
    if not needed:
        return []
    known: set[str] = set()
    for name in (name for name in TIDES if name in present):
        layer = open_layer(plan, name)
        known |= {str(value) for value in layer.uniqueValues(layer.fields().indexOf("port")) if value}
    has = (
        tr("it has those of {known}").format(known=", ".join(sorted(known))) if known else tr("it has none with a port")
    )
    return [
        tr("{who}: the plan has no tides for the port '{port}' ({has}). Read them in, or correct PORT.").format(
            who=who, port=port, has=has
        )
        for who, port in needed
        if port not in known
    ]


def _boxes(plan: Path, names: Sequence[str]) -> list[Box]:
    """What surrounds each thing of the layers."""
    found = []
    for name in names:
        for feature in open_layer(plan, name).getFeatures(QgsFeatureRequest().setNoAttributes()):
            if not feature.geometry().isEmpty():
                box = feature.geometry().boundingBox()
                found.append((box.xMinimum(), box.yMinimum(), box.xMaximum(), box.yMaximum()))
    return found


def _box(place: QgsPointXY) -> Box:
    return place.x(), place.y(), place.x(), place.y()


def _distance_m(place: QgsPointXY, boxes: Sequence[Box]) -> float | None:
    """Metres to the nearest box, None where there is none."""
    if not boxes:
        return None
    shrink = cos(radians(place.y()))
    nearest = [_nearest(place, box, turn) for box in boxes for turn in (-360.0, 0.0, 360.0)]
    turn, lon, lat = min(nearest, key=lambda one: hypot((one[1] - place.x() - one[0]) * shrink, one[2] - place.y()))
    return geodesic_leg(place.x(), place.y(), lon - turn, lat)[0]


def _nearest(place: QgsPointXY, box: Box, turn: float) -> tuple[float, float, float]:
    """The turn of longitude tried, and the place in the box that is nearest then."""
    return turn, min(max(place.x() + turn, box[0]), box[2]), min(max(place.y(), box[1]), box[3])
