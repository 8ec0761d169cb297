"""Streams in the texts of electronic charts, pasted: TS_TSP tables by the hour and TS_TSV series."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta
from math import isnan

from ..errors import BadInputError, SwimPlanError
from ..words import tr
from .chart_strings import PANEL_HOURS, parse_ts_tsp, parse_ts_tsv
from .stream_asked import StreamAsked, StreamReading
from .stream_blocks import Block
from .stream_rows import TextPlanRow


def panel_readings(block: Block, asked: StreamAsked) -> Iterator[StreamReading]:
    """One hourly station for each line of TS_TSP text."""
    many = len(block.lines) > 1
    for number, line in block.lines.items():
        try:
            panel = parse_ts_tsp(line.strip().strip('"'))
        except SwimPlanError as error:
            raise _line_refused(asked, number, error) from error
        name = panel.name or panel.station_id
        if asked.reference and asked.reference != panel.reference:
            raise _line_refused(
                asked, number, SwimPlanError(asked=tr("It counts from {reference}").format(reference=panel.reference))
            )
        station = f"{asked.station} {panel.station_id}".strip() if many and asked.station else asked.station or name
        rows = tuple(
            TextPlanRow(
                layer="stream_rates",
                values={
                    "station": station,
                    "hour": hour,
                    "set_deg": 0.0 if isnan(towards) else towards,
                    "spring_kn": rate,
                    "neap_kn": None,
                },
                line=number,
            )
            for hour, (towards, rate) in zip(PANEL_HOURS, panel.pairs)
            if not isnan(rate)
        )
        blanks = tuple(
            (number, tr("hour {hour:+d} blank: unknown, not slack").format(hour=hour)) for hour in panel.missing_hours
        )
        yield StreamReading(
            form="ts_tsp",
            station={
                **block.notes,
                "station": station,
                "form": "hourly",
                "reference": panel.reference,
                "port": asked.port or name,
            },
            rows=rows,
            columns=(
                {"column": tr("the line"), "taken_for": tr("station, port, HW or LW, 13 pairs of set and spring rate")},
            ),
            separator="comma",
            skipped=blanks,
            notes=(tr("Spring rates only: neap rates are unknown"), tr("Rates are in knots, as the standard has them")),
            line=number,
        )


def series_reading(block: Block, asked: StreamAsked) -> StreamReading:
    """A station's streams at even times from TS_TSV text, which carries neither its start nor its step."""
    if asked.start is None or not asked.step_min or asked.step_min <= 0.0 or not asked.station:
        raise SwimPlanError(
            asked=tr("A TS_TSV text carries no times and no station"),
            allowed=tr("Its first moment, the minutes from one pair to the next, and its station are given beside it"),
            remedy=tr("Fill in START, STEP and STATION"),
        )
    rows, skipped, count = [], [], 0
    for number, line in block.lines.items():
        try:
            pairs = parse_ts_tsv(line.strip().strip('"'))
        except SwimPlanError as error:
            raise _line_refused(asked, number, error) from error
        for towards, rate in pairs:
            blank = isnan(rate)
            moment = asked.start + timedelta(minutes=asked.step_min * count)
            count += 1
            values = {"set_deg": None if isnan(towards) else towards, "rate_kn": None if blank else rate}
            rows.append(
                TextPlanRow(
                    layer="stream_series", values={"station": asked.station, "time": moment, **values}, line=number
                )
            )
            if blank:
                skipped.append((number, tr("pair {count} blank: unknown, not slack").format(count=count)))
    return StreamReading(
        form="ts_tsv",
        station={**block.notes, "station": asked.station, "form": "series", "port": asked.port},
        rows=tuple(rows),
        columns=({"column": tr("the line"), "taken_for": tr("pairs of set and rate (kn) at equal steps of time")},),
        separator="comma",
        skipped=tuple(skipped),
        line=block.first,
    )


def _line_refused(asked: StreamAsked, number: int, error: SwimPlanError) -> BadInputError:
    allowed = f"{error.asked}. {error.allowed}".rstrip(". ")
    return BadInputError(layer=asked.name, row=number, allowed=allowed, remedy=error.remedy or tr("Correct the line"))
