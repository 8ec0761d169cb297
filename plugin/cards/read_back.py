"""What was written is read again by GDAL, which knows nothing of how it was written, and held against the plan."""

from __future__ import annotations

import csv
import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta, timezone
from pathlib import Path

from osgeo import gdal, ogr

from ..core.errors import SwimPlanError
from ..core.results.card import route_places
from ..core.results.file_contents import shown_flags, shown_legs, shown_places, swum_legs
from ..core.results.plain_values import nearest_second
from ..core.results.shared import without_marks
from ..core.results.swim_plan import Leg, SwimPlan
from ..words import tr
from .csv_legs import COLUMNS, harmless, leg_value, row_note
from .gps_options import GpsOptions
from .gpx import way_points

NEAR_DEG = 1e-6
LonLat = tuple[float, float]
# The drivers that read each format, the one that reads all of it first.
DRIVERS = {"GPX": ("GPX",), "KML": ("LIBKML", "KML"), "GEOJSON": ("GeoJSON",)}


@dataclass(frozen=True, kw_only=True)
class _Row:
    """A feature as read: its points in order, and its fields, moments aware."""

    points: list[LonLat]
    values: dict[str, object]


def unread_words(kinds: Iterable[str]) -> list[str]:
    """A sentence for each of GPX, KML, GEOJSON that this GDAL cannot read again, or not all of it."""
    words = []
    for kind in kinds:
        found = _drivers(kind)
        if not found:
            words.append(tr("The {} file is not read again: this GDAL has no driver for it.").format(kind))
        elif found[0] != DRIVERS[kind][0]:
            words.append(tr("Times in the {} file are not read again: this GDAL lacks a driver.").format(kind))
    return words


def check_gpx(path: Path, plan: SwimPlan, options: GpsOptions) -> None:
    """SwimPlanError unless the file holds the plan's places, points on the way, route, and tracks with their times."""
    if not _drivers("GPX"):
        return
    plan = without_marks(plan) if options.private else plan
    layers = _read(path, "GPX")
    wanted = [_at(place) for place in (*shown_places(plan), *way_points(plan, options))]
    _same_places("GPX", tr("waypoints"), _all_points(layers["waypoints"]), wanted)
    route = [] if plan.marks_left_out else [_at(place) for place in route_places(plan)]
    _same_places("GPX", tr("points of the route"), _all_points(layers["route_points"]), route)
    track = [point for leg in swum_legs(plan) for point in leg.track]
    rows = layers["track_points"]
    _same_places("GPX", tr("points of the track"), _all_points(rows), [_at(point) for point in track])
    _same_times("GPX", [row.values["time"] for row in rows], [point.moment for point in track])
    lengths = [len(leg.track) for leg in swum_legs(plan)]
    segments = [row.values["track_seg_id"] for row in rows]
    found = [segments.count(segment) for segment in dict.fromkeys(segments)]
    if found != lengths:
        raise _differs("GPX", tr("segments of the track"), found, lengths)


def check_kml(path: Path, plan: SwimPlan, private: bool) -> None:
    """SwimPlanError unless the file holds the plan's places, legs, tracks with their first and last time, flags."""
    if not _drivers("KML"):
        return
    plan = without_marks(plan) if private else plan
    layers = _read(path, "KML")
    tracks = layers.get("Track", [])
    _same_shapes("KML", plan, layers.get("Places", []), layers.get("Legs", []), tracks)
    if "LIBKML" in _drivers("KML"):
        ends = [point.moment for leg in swum_legs(plan) for point in (leg.track[0], leg.track[-1])]
        _same_times("KML", [row.values.get(end) for row in tracks for end in ("begin", "end")], ends)
    flags = shown_flags(plan)
    if len(layers.get("Flags", [])) != len(flags):
        raise _differs("KML", tr("flags"), len(layers.get("Flags", [])), len(flags))


def check_geojson(path: Path, plan: SwimPlan, private: bool) -> None:
    """SwimPlanError unless the file holds the plan's places, legs, tracks with all their times, flags."""
    if not _drivers("GEOJSON"):
        return
    plan = without_marks(plan) if private else plan
    rows = [row for layer in _read(path, "GEOJSON").values() for row in layer]
    kinds = {
        what: [row for row in rows if row.values.get("what") == what] for what in ("place", "leg", "track", "flag")
    }
    _same_shapes("GeoJSON", plan, kinds["place"], kinds["leg"], kinds["track"])
    times = [_from_iso(text) for row in kinds["track"] for text in row.values.get("times") or ()]
    _same_times("GeoJSON", times, [point.moment for leg in swum_legs(plan) for point in leg.track])
    flags = shown_flags(plan)
    if len(kinds["flag"]) != len(flags):
        raise _differs("GeoJSON", tr("flags"), len(kinds["flag"]), len(flags))


def check_csv(path: Path, plan: SwimPlan, private: bool) -> None:
    """SwimPlanError unless the table holds the plan's legs with their texts and numbers."""
    plan = without_marks(plan) if private else plan
    try:
        with path.open(encoding="utf-8", newline="") as file:
            rows = list(csv.reader(file, strict=True))[1:]
    except (csv.Error, UnicodeDecodeError) as error:
        raise _unreadable("CSV") from error
    if len(rows) != len(plan.legs):
        raise _differs("CSV", tr("rows"), len(rows), len(plan.legs))
    for leg, row in zip(plan.legs, rows):
        columns = len(COLUMNS) + 1  # and a note
        if len(row) != columns:
            raise _differs("CSV", tr("cells of row {}").format(leg.number), len(row), columns)
        told = [(name, leg_value(leg, name), decimals) for name, decimals in COLUMNS]
        for (name, value, decimals), cell in zip([*told, ("note", row_note(leg, plan), None)], row):
            if not _same_cell(cell, value, decimals):
                raise _differs("CSV", f"{name} ({leg.number})", cell, value)


def _same_cell(cell: str, value: object, decimals: int | None) -> bool:
    if value is None or (isinstance(value, float) and math.isnan(value)):
        return cell == ""
    if isinstance(value, bool):
        return cell == ("yes" if value else "no")
    if isinstance(value, datetime):
        moment = _from_iso(cell)
        return moment is not None and _same_moment(moment, value)
    if decimals is None:
        return cell == harmless(str(value))
    try:
        return abs(float(cell) - value) <= 0.5001 * 10.0**-decimals
    except ValueError:
        return False


def _from_iso(text: str) -> datetime | None:
    """The aware moment that a text says; None where it says none."""
    try:
        moment = datetime.fromisoformat(text)
    except ValueError:
        return None
    return moment if moment.tzinfo is not None else None


def _same_shapes(
    kind: str, plan: SwimPlan, places: Sequence[_Row], legs: Sequence[_Row], tracks: Sequence[_Row]
) -> None:
    """Places, legs and tracks as the plan has them; cuts at 180 degrees are not the plan's and may be there."""
    _same_places(kind, tr("places"), _all_points(places), [_at(place) for place in shown_places(plan)])
    wanted_legs = shown_legs(plan)
    for what, rows, wanted in ((tr("legs"), legs, wanted_legs), (tr("tracks"), tracks, swum_legs(plan))):
        if len(rows) != len(wanted):
            raise _differs(kind, what, len(rows), len(wanted))
    for row, leg in zip(legs, wanted_legs):
        ends = [(leg.start_lon, leg.start_lat), (leg.end_lon, leg.end_lat)]
        _same_places(kind, _of_leg(tr("ends of leg {}"), leg), _without_cuts(row.points, ends), ends)
    for row, leg in zip(tracks, swum_legs(plan)):
        track = [_at(point) for point in leg.track]
        _same_places(kind, _of_leg(tr("track points of leg {}"), leg), _without_cuts(row.points, track), track)


def _of_leg(words: str, leg: Leg) -> str:
    return words.format(leg.number)


def _without_cuts(found: Sequence[LonLat], wanted: Sequence[LonLat]) -> list[LonLat]:
    """The points found without those that a cut has put on the 180th meridian."""
    kept: list[LonLat] = []
    for point in found:
        expected = wanted[len(kept)] if len(kept) < len(wanted) else None
        is_cut = abs(point[0]) == 180.0 and (expected is None or not _near(point, expected))
        if not is_cut:
            kept.append(point)
    return kept


def _same_places(kind: str, what: str, found: Sequence[LonLat], wanted: Sequence[LonLat]) -> None:
    if len(found) != len(wanted):
        raise _differs(kind, what, len(found), len(wanted))
    for one, other in zip(found, wanted):
        if not _near(one, other):
            raise _differs(kind, what, one, other)


def _near(one: LonLat, other: LonLat) -> bool:
    """Whether two places are the same to a millionth of a degree, round the globe as well."""
    apart = abs(one[0] - other[0]) % 360.0
    return min(apart, 360.0 - apart) <= NEAR_DEG and abs(one[1] - other[1]) <= NEAR_DEG


def _same_times(kind: str, found: Sequence[object], wanted: Sequence[datetime]) -> None:
    for one, other in zip(found, wanted):
        if not isinstance(one, datetime) or not _same_moment(one, other):
            raise _differs(kind, tr("times"), one, other)
    if len(found) != len(wanted):
        raise _differs(kind, tr("times"), len(found), len(wanted))


def _same_moment(one: datetime, other: datetime) -> bool:
    return one.astimezone(timezone.utc) == nearest_second(other.astimezone(timezone.utc))


def _at(place: object) -> LonLat:
    return place.lon, place.lat


def _all_points(rows: Sequence[_Row]) -> list[LonLat]:
    return [point for row in rows for point in row.points]


def _drivers(kind: str) -> list[str]:
    return [name for name in DRIVERS[kind] if gdal.GetDriverByName(name) is not None]


def _read(path: Path, kind: str) -> dict[str, list[_Row]]:
    """Every layer of the file by name."""
    gdal.PushErrorHandler("CPLQuietErrorHandler")
    try:
        source = gdal.OpenEx(str(path), gdal.OF_VECTOR, allowed_drivers=_drivers(kind))
        if source is None:
            raise _unreadable(kind)
        gdal.ErrorReset()
        layers = {}
        for number in range(source.GetLayerCount()):
            layer = source.GetLayer(number)
            layers[layer.GetName()] = [_row(feature) for feature in layer]
        # A file that breaks off within is read as far as it goes, and GDAL only complains.
        if gdal.GetLastErrorType() >= gdal.CE_Failure:
            raise _unreadable(kind)
    except RuntimeError as error:  # GDAL's own, where something has switched its exceptions on
        raise _unreadable(kind) from error
    finally:
        gdal.PopErrorHandler()
    return layers


def _row(feature: ogr.Feature) -> _Row:
    shape = feature.GetGeometryRef()
    values = {}
    for number in range(feature.GetFieldCount()):
        name, kind = feature.GetFieldDefnRef(number).GetName(), feature.GetFieldDefnRef(number).GetType()
        if not feature.IsFieldSetAndNotNull(number):
            values[name] = None
        elif kind == ogr.OFTDateTime:
            values[name] = _moment(feature.GetFieldAsDateTime(number))
        else:
            values[name] = feature.GetField(number)
    return _Row(points=[] if shape is None else _points(shape), values=values)


def _points(shape: ogr.Geometry) -> list[LonLat]:
    parts = [shape.GetGeometryRef(number) for number in range(shape.GetGeometryCount())]
    if parts:
        return [point for part in parts for point in _points(part)]
    return [shape.GetPoint_2D(number) for number in range(shape.GetPointCount())]


def _moment(read: Sequence[float]) -> datetime | None:
    """GDAL's date and time; its last number is 100 for UTC and one more for every quarter of an hour east of it."""
    *day_and_clock, second, zone = read
    if zone < 2:  # unknown, or local to this machine
        return None
    offset = timezone(timedelta(minutes=15 * (zone - 100)))
    return datetime(*day_and_clock, tzinfo=offset) + timedelta(seconds=round(second))


def _unreadable(kind: str) -> SwimPlanError:
    return SwimPlanError(
        asked=tr("The {} file could not be read again after it was written").format(kind),
        remedy=tr("It was not kept. See whether the disk is full, or choose another folder"),
    )


def _differs(kind: str, what: str, found: object, wanted: object) -> SwimPlanError:
    return SwimPlanError(
        asked=tr("The {} file was read again and differs from the plan: {}, {} where the plan has {}").format(
            kind, what, found, wanted
        ),
        remedy=tr("It was not kept. See whether the disk is full, or choose another folder"),
    )
