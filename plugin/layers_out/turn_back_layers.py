"""The turn back as layers: ways home by leaving time, bands of leaving times, and points of no return."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from qgis.core import QgsGeometry, QgsPointXY, QgsWkbTypes

from ..core.results.card import card_angle
from ..core.results.turn_back import StopTurnBack, TurnBack, WayHome
from .plan_layers import OutputLayer, Row, both_times


@dataclass(frozen=True, kw_only=True)
class TurnBackOf:
    """A turn back and the step that headings are rounded to, degrees."""

    found: TurnBack
    heading_step_deg: float


WAY_COLUMNS = (
    ("stop", "text"),
    ("table", "text"),
    ("leave", "time"),
    ("leave_local", "text"),
    ("exit", "text"),
    ("headings", "text"),
    ("minutes", "number"),
    ("arrive", "time"),
    ("arrive_local", "text"),
    ("minutes_pessimistic", "number"),
    ("safe", "whole"),
    ("safe_pessimistic", "whole"),
)


def _way_rows(made: TurnBackOf) -> Iterator[Row]:
    """At every stop the ways by the quickest exit if late, then those to the planned exit by the quarter of an hour."""
    for stop in made.found.stops:
        place = _point(stop.lon, stop.lat)
        for table, ways in (("if late", stop.if_late), ("by departure", stop.by_departure)):
            for way in ways:
                yield place, {"stop": stop.name, "table": table, **_way_values(way, made.heading_step_deg)}


def _way_values(way: WayHome, step_deg: float) -> dict[str, object]:
    return {
        "exit": way.exit,
        "headings": " ".join(f"{card_angle(heading, step_deg)}M" for heading in way.headings_mag_deg),
        "minutes": way.minutes,
        "minutes_pessimistic": way.minutes_pessimistic,
        "safe": int(way.safe),
        "safe_pessimistic": int(way.safe_pessimistic),
        **both_times(leave=way.leave, arrive=way.arrive),
    }


BAND_COLUMNS = (
    ("stop", "text"),
    ("day", "text"),
    ("first", "time"),
    ("last", "time"),
    ("first_local", "text"),
    ("last_local", "text"),
    ("exit", "text"),
    ("ends_by", "text"),
)


def _band_rows(made: TurnBackOf) -> Iterator[Row]:
    """The bands of safe leaving times of every stop, on the day expected and on a bad one."""
    for stop in made.found.stops:
        for day, bands in (("expected", stop.bands), ("bad day", stop.bands_pessimistic)):
            for band in bands:
                values = {"stop": stop.name, "day": day, "exit": band.exit, "ends_by": band.ends_by}
                yield _point(stop.lon, stop.lat), {**values, **both_times(first=band.first, last=band.last)}


NO_RETURN_COLUMNS = (
    ("leg", "whole"),
    ("to", "text"),
    ("day", "text"),
    ("time", "time"),
    ("time_local", "text"),
    ("way_m", "number"),
)


def _no_return_rows(made: TurnBackOf) -> Iterator[Row]:
    """The points of no return; a leg from all of which one may turn back has none."""
    for one in made.found.no_return:
        if not one.whole_leg:
            values = {"leg": one.leg, "to": one.name, "day": "bad day" if one.pessimistic else "expected"}
            yield _point(one.lon, one.lat), {**values, "way_m": one.way_m, **both_times(time=one.moment)}


def _point(lon: float, lat: float) -> QgsGeometry:
    return QgsGeometry.fromPointXY(QgsPointXY(lon, lat))


POINT = QgsWkbTypes.Type.Point
WAYS = OutputLayer(parameter="WAYS", wkb_type=POINT, columns=WAY_COLUMNS, rows=_way_rows)
BANDS = OutputLayer(parameter="BANDS", wkb_type=POINT, columns=BAND_COLUMNS, rows=_band_rows)
NO_RETURN = OutputLayer(parameter="NO_RETURN", wkb_type=POINT, columns=NO_RETURN_COLUMNS, rows=_no_return_rows)


def turn_back_sentences(found: TurnBack, heading_step_deg: float) -> list[str]:
    """What to know of every stop, in words: bands, latest leaving times, and what to do if late."""
    from qgis.PyQt.QtCore import QCoreApplication

    tr = QCoreApplication.translate
    lines = [
        tr("Tideleg", "Ashore before: {}").format(
            ", ".join(f"{stop.words} {stop.moment:%H:%M}" for stop in found.hard_stops)
        )
    ]
    band = tr("Tideleg", "{}: leave between {} and {} (to {}); then {}")
    late = tr("Tideleg", "{}: leave at {}: exit {}, heading {}, {} min{}")
    too_late = tr("Tideleg", " - too late")
    for stop in found.stops:
        lines.append(_latest(stop))
        lines += [
            band.format(stop.name, f"{one.first:%H:%M}", f"{one.last:%H:%M}", one.exit, one.ends_by)
            for one in stop.bands
        ]
        for way in stop.if_late:
            headings = " ".join(f"{card_angle(heading, heading_step_deg)}M" for heading in way.headings_mag_deg)
            end = "" if way.safe else too_late
            lines.append(late.format(stop.name, f"{way.leave:%H:%M}", way.exit, headings, f"{way.minutes:.0f}", end))
    return lines


def _latest(stop: StopTurnBack) -> str:
    from qgis.PyQt.QtCore import QCoreApplication

    tr = QCoreApplication.translate
    if stop.latest_leave is None:
        return tr("Tideleg", "{}: no exit is reached with the reserve kept.").format(stop.name)
    bad = stop.latest_leave_pessimistic
    words = tr("Tideleg", "{}: turn back by {} at the latest, to {}; on a bad day by {}")
    bad_words = tr("Tideleg", "never") if bad is None else f"{bad:%H:%M}"
    return words.format(stop.name, f"{stop.latest_leave:%H:%M}", stop.exit, bad_words)
