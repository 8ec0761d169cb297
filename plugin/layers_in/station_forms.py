"""What each form of stream station is made of, from its row and the rows of its tables."""

from __future__ import annotations

from collections.abc import Callable, Mapping

import numpy as np

from ..core.errors import BadInputError, SwimPlanError
from ..core.quantities import SECONDS_PER_MINUTE, m_s_from_knots
from ..core.water.events import EventStream
from ..core.water.harmonic_stream import CONSTANTS, HarmonicStream
from ..core.water.hourly import HOURS, HourlyStream, HourlyTable
from ..core.water.series_stream import SeriesStream
from ..core.water.slack_offset import SlackOffsetStream
from ..core.water.stream import ConstantStream, StationStream
from ..core.water.subordinate import StreamDifferences, subordinate_stream
from ..core.water.tide import HW, TideTable
from ..core.water.wind_drift import WindDrivenStream
from ..words import tr
from .station_tables import NOTHING, StationTables, or_nan
from .table import TableRow

SUBORDINATE = "subordinate"
NEEDS_TIDE = ("hourly", "coefficients", "slack_offset")
SETS = ("flood_set_deg", "ebb_set_deg")


def stream_of(tables: StationTables, row: TableRow, tide: TideTable | None) -> StationStream:
    """The stream of a station of any form but a subordinate one; without its tide only the rows are checked."""
    make = _MAKERS[row.values["form"]]
    try:
        return make(tables, row, tide)
    except BadInputError:
        raise
    except SwimPlanError as error:
        raise tables.refused(row, "station", f"{error.asked}. {error.allowed}".rstrip(". "), error.remedy) from error


def subordinate_of(tables: StationTables, row: TableRow, plain: Mapping[str, StationStream]) -> StationStream:
    """The stream of a subordinate place, from the slacks and maxima of its reference station."""
    reference = plain.get(row.values["reference_station"] or "")
    if not isinstance(reference, EventStream):
        raise tables.refused(
            row,
            "reference_station",
            tr("It names a station of the form 'events' in stream_stations"),
            tr("Name the station whose slacks and maxima the differences belong to"),
        )
    minutes = tables.need(row, "slack_before_flood_min", "flood_minutes", "slack_before_ebb_min", "ebb_minutes")
    ratios = tables.need(row, "flood_speed_ratio", "ebb_speed_ratio")
    sets = dict(zip(SETS, tables.need(row, *SETS)))
    seconds = [SECONDS_PER_MINUTE * value for value in minutes]
    names = ("slack_before_flood_s", "flood_s", "slack_before_ebb_s", "ebb_s")
    differences = StreamDifferences(**dict(zip(names, seconds)), flood_ratio=ratios[0], ebb_ratio=ratios[1])
    try:
        return subordinate_stream(reference, differences, station=row.values["station"], **sets)
    except SwimPlanError as error:
        raise tables.refused(row, "station", f"{error.asked}. {error.allowed}", error.remedy) from error


def _constant(tables: StationTables, row: TableRow, _tide: TideTable | None) -> StationStream:
    rates = tables.of("stream_rates", row.values["station"])
    if len(rates) != 1 or rates[0].values["hour"] != 0:
        raise tables.refused(
            row,
            "form",
            tr("A constant station has one row in stream_rates, hour 0"),
            tr("It has {count}; correct stream_rates").format(count=len(rates)),
        )
    rate, towards = rates[0].values["spring_kn"], rates[0].values["set_deg"]
    if rate is None or (towards is None and rate > 0.0):
        return ConstantStream(east_m_s=NOTHING, north_m_s=NOTHING)
    return ConstantStream.from_set(towards or 0.0, m_s_from_knots(rate))


def _hourly(tables: StationTables, row: TableRow, tide: TideTable | None) -> StationStream | None:
    table = _hourly_table(tables, row)
    return None if tide is None else HourlyStream(table, tide)


def _by_coefficient(tables: StationTables, row: TableRow, tide: TideTable | None) -> StationStream | None:
    table, coefficients = _hourly_table(tables, row), tables.coefficients(row.values["port"] or "")
    if not len(coefficients.times_s):
        tables.warnings.append(
            tr(
                "Stream station '{station}' goes by tide coefficients, and tide_coefficients has none for "
                "its port: its rates are those at 95."
            ).format(station=row.values["station"])
        )
    return None if tide is None else HourlyStream(table, tide, coefficients)


def _hourly_table(tables: StationTables, row: TableRow) -> HourlyTable:
    values = {name: np.full(len(HOURS), NOTHING) for name in ("set_deg", "spring_kn", "neap_kn")}
    taken = set()
    for rate in tables.of("stream_rates", row.values["station"]):
        hour = rate.values["hour"]
        if hour in taken:
            station = row.values["station"]
            raise tables.tables["stream_rates"].refused(
                rate.number,
                "hour",
                hour,
                tr("Station '{station}' has every hour once").format(station=station),
                tr("Delete one of the rows given twice"),
            )
        taken.add(hour)
        for name, array in values.items():
            array[hour + 6] = or_nan(rate.values[name])
    spring_range_m, neap_range_m = or_nan(row.values["spring_range_m"]), or_nan(row.values["neap_range_m"])
    if neap_range_m >= spring_range_m:
        raise tables.refused(row, "neap_range_m", tr("The spring range is the larger"), tr("Correct the ranges"))
    return HourlyTable(
        station=row.values["station"],
        reference=row.values["reference"] or HW,
        set_deg=values["set_deg"],
        spring_m_s=m_s_from_knots(values["spring_kn"]),
        neap_m_s=m_s_from_knots(values["neap_kn"]),
        spring_range_m=spring_range_m,
        neap_range_m=neap_range_m,
    )


def _events(tables: StationTables, row: TableRow, _tide: TideTable | None) -> StationStream:
    events = tables.of("stream_events", row.values["station"])
    rates = [_event_rate(event) for event in events]
    return EventStream(
        station=row.values["station"],
        times_s=tables.clock.seconds_of([event.values["time"] for event in events]),
        rates_m_s=m_s_from_knots(np.array(rates, dtype=float)),
        **{field: _sets_of_events(field, row, events) for field in SETS},
    )


def _event_rate(event: TableRow) -> float:
    """A slack without a rate is none; with one it is the least rate of a stream that has no slack."""
    rate = event.values["rate_kn"]
    return 0.0 if rate is None and event.values["kind"] == "slack" else or_nan(rate)


def _sets_of_events(field: str, row: TableRow, events: list[TableRow]) -> np.ndarray:
    """Each event's own set; where it has none the station's, or the first that any event has."""
    usual = _first_given(field, [row, *events])
    return np.array([usual if event.values[field] is None else event.values[field] for event in events], dtype=float)


def _first_given(field: str, rows: list[TableRow]) -> float:
    return next((float(row.values[field]) for row in rows if row.values[field] is not None), NOTHING)


def _slack_offset(tables: StationTables, row: TableRow, tide: TideTable | None) -> StationStream | None:
    offset_min, spring_kn, flood_set_deg, ebb_set_deg = tables.need(row, "slack_offset_min", "spring_kn", *SETS)
    if tide is None:
        return None
    return SlackOffsetStream(
        tide,
        station=row.values["station"],
        offset_s=SECONDS_PER_MINUTE * offset_min,
        spring_m_s=m_s_from_knots(spring_kn),
        neap_m_s=m_s_from_knots(or_nan(row.values["neap_kn"])),
        spring_range_m=or_nan(row.values["spring_range_m"]),
        neap_range_m=or_nan(row.values["neap_range_m"]),
        flood_set_deg=flood_set_deg,
        ebb_set_deg=ebb_set_deg,
    )


def _series(tables: StationTables, row: TableRow, _tide: TideTable | None) -> StationStream:
    rows = tables.of("stream_series", row.values["station"])
    return SeriesStream(
        station=row.values["station"],
        times_s=tables.clock.seconds_of([one.values["time"] for one in rows]),
        set_deg=np.array([or_nan(one.values["set_deg"]) for one in rows], dtype=float),
        rate_m_s=m_s_from_knots(np.array([or_nan(one.values["rate_kn"]) for one in rows], dtype=float)),
    )


def _harmonic(tables: StationTables, row: TableRow, _tide: TideTable | None) -> StationStream:
    rows = tables.of("stream_constants", row.values["station"])
    if not rows:
        return ConstantStream(east_m_s=NOTHING, north_m_s=NOTHING)
    return HarmonicStream(
        station=row.values["station"],
        constituents=tuple(one.values["constituent"] for one in rows),
        **{name: np.array([or_nan(one.values[name]) for one in rows], dtype=float) for name in CONSTANTS},
        start=tables.clock.start,
        lat_deg=float(row.rings[0][0][1]),
    )


def _wind(tables: StationTables, row: TableRow, _tide: TideTable | None) -> StationStream:
    (percent,) = tables.need(row, "wind_percent")
    winds = tables.winds()
    if not len(winds.times_s):
        tables.warnings.append(
            tr(
                "Stream station '{station}' is driven by the wind, and the winds table is empty: its stream is unknown."
            ).format(station=row.values["station"])
        )
    return WindDrivenStream(winds, percent=percent, turn_deg=row.values["wind_turn_deg"] or 0.0)


_MAKERS: dict[str, Callable[[StationTables, TableRow, TideTable | None], StationStream | None]] = {
    "hourly": _hourly,
    "coefficients": _by_coefficient,
    "constant": _constant,
    "events": _events,
    "slack_offset": _slack_offset,
    "series": _series,
    "harmonic": _harmonic,
    "wind": _wind,
}
