"""Reads a table of tides given as text into a plan, all or nothing, and reports what became of every row."""

from __future__ import annotations

import gzip
from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta, timezone
from pathlib import Path
from typing import Any

import numpy as np

from ..core.errors import BadInputError, SwimPlanError
from ..core.water.tide import HW, LONGEST_GAP_S, LW
from ..core.water.tide_reading import CONSTANTS, EVENTS, SECONDARY, SERIES, HeightRow, Skipped, TideReading, TidesAsked
from ..core.water.tide_series import waters_of_series
from ..core.water.tide_text import read_tides
from ..core.words import marked
from ..plan_package.settings import require_readable
from ..version import tideleg_version
from ..words import tr
from .chart_reading import Told
from .plan_append import Added, append_to_plan
from .plan_rows import PlanRow
from .plan_tables import tables_of
from .read_report import write_report
from .second_reading import check_second_reading
from .tide_sentences import row_sentence, taken_sentences

MOST_BYTES = 60_000_000
KEEP_CURVE, KEEP_WATERS = "curve", "waters"
PORT_FORM = {EVENTS: "events", SERIES: "series", CONSTANTS: "harmonic", SECONDARY: "secondary"}
KEYS = {"tides": ("port", "time"), "tide_series": ("port", "time"), "tide_constants": ("port", "constituent")}
BESIDE_A_GAP = marked("a water beside a gap, after which comes another of its kind")


@dataclass(frozen=True, kw_only=True)
class TidesReadAsked:
    """What to read into which plan.

    ``port`` "" for tides without one. ``datum_offset_m`` is how far the table's datum lies above the plan's, None for
    not said. ``keep`` says what a series leaves in the plan: its curve, or the waters found on it. ``preview`` writes
    nothing but the report.
    """

    plan: Path
    text: str
    asked: TidesAsked
    port: str = ""
    datum_offset_m: float | None = None
    latitude_deg: float | None = None
    keep: str = KEEP_CURVE
    preview: bool = False
    report: Path | None = None


def read_tides_into_plan(asked: TidesReadAsked, told: Told) -> Added:
    """Read the text, check it against the plan, and add its rows; nothing but the report where it is a preview.

    SwimPlanError and StoppedError leave the plan as it was.
    """
    require_readable(asked.plan)
    reading = read_tides(asked.text, asked.asked)
    if reading.form == SERIES and asked.keep == KEEP_WATERS:
        reading = waters_only(reading, asked.asked.name)
    rows = _port_rows(reading, asked) + _data_rows(reading, asked)
    rows = _check_against_plan(rows, asked)
    _check_second_reading(rows, reading, asked)
    _tell(told, reading)
    told.progress(30.0)  # after what was said: on a console the figures share a line with what follows

    def report(added: Added) -> None:
        if asked.report is not None:
            write_report(asked.report, _report(reading, asked, added))

    if asked.preview:
        nothing = Added(written=Counter(), already_there=Counter())
        report(nothing)
        told.progress(100.0)
        told.say(tr("Preview: {count} rows understood, nothing written").format(count=reading.count))
        return nothing
    added = append_to_plan(
        asked.plan, rows, is_cancelled=told.is_cancelled, progress=told.between(50.0, 100.0), before_commit=report
    )
    told.progress(100.0)  # which ends the line of figures
    told.say(
        tr("{written} rows written, {there} were there already").format(
            written=sum(added.written.values()), there=sum(added.already_there.values())
        )
    )
    return added


def text_of_file(path: Path) -> str:
    """The text of a file, unpacked where it is gzipped; SwimPlanError where it is none in UTF-8 or UTF-16."""
    try:
        with path.open("rb") as file:
            packed = file.read(2) == b"\x1f\x8b"
        with gzip.open(path) if packed else path.open("rb") as file:
            data = file.read(MOST_BYTES + 1)
    except (OSError, EOFError) as error:
        raise SwimPlanError(
            asked=tr("The file {path} cannot be read ({error})").format(path=path, error=error),
            remedy=tr("Choose another file"),
        ) from error
    if len(data) > MOST_BYTES:
        raise SwimPlanError(
            asked=tr("The file {path} is large").format(path=path),
            allowed=tr("Up to {most} bytes are read").format(most=MOST_BYTES),
            remedy=tr("Read it in parts"),
        )
    try:
        return data.decode("utf-16" if data[:2] in (b"\xff\xfe", b"\xfe\xff") else "utf-8-sig")
    except UnicodeDecodeError as error:
        raise SwimPlanError(
            asked=tr("The file {path} is no text in UTF-8").format(path=path),
            allowed=tr("Text, CSV and JSON are read"),
            remedy=tr("Save it as UTF-8"),
        ) from error


def waters_only(reading: TideReading, name: str) -> TideReading:
    """The high and low waters found on a series, to whole seconds, in place of the series."""
    start = reading.heights[0].time
    times = np.array([(row.time - start).total_seconds() for row in reading.heights])
    waters = waters_of_series(times, np.array([row.height_m for row in reading.heights]))
    places = np.searchsorted(times, waters.times_s).clip(0, len(times) - 1)
    found = [
        HeightRow(
            row=reading.heights[int(place)].row,
            time=start + timedelta(seconds=round(float(seconds))),
            height_m=round(float(height), 4),
            is_high=bool(is_high),
        )
        for place, seconds, height, is_high in zip(places, waters.times_s, waters.heights_m, waters.is_high)
    ]
    kept, lost = _without_pairs(found)
    if not kept:
        raise BadInputError(
            layer=name,
            allowed=tr("Its heights never turn"),
            remedy=tr("Read a longer series, or keep the curve itself"),
        )
    taken = {
        **reading.taken,
        "kept": tr("{count} high and low waters found on {heights} heights").format(
            count=len(kept), heights=len(reading.heights)
        ),
    }
    return replace(reading, form=EVENTS, heights=tuple(kept), taken=taken, skipped=(*reading.skipped, *lost))


def _without_pairs(found: Sequence[HeightRow]) -> tuple[list[HeightRow], list[Skipped]]:
    """A gap may hide a water; of the two of a kind on its sides the first is left out, so that the gap shows."""
    kept, lost = [], []
    for row, after in zip(found, [*found[1:], None]):
        near = after is not None and (after.time - row.time).total_seconds() <= LONGEST_GAP_S
        if near and after.is_high == row.is_high:
            lost.append(Skipped(row=row.row, reason=BESIDE_A_GAP))
        else:
            kept.append(row)
    return kept, lost


def _port_rows(reading: TideReading, asked: TidesReadAsked) -> list[PlanRow]:
    """Rows of tide_ports: none for waters, which need none."""
    source = asked.asked.name
    if reading.form == EVENTS:
        return []
    if reading.form == SECONDARY:
        _refuse_offset(asked)
        return [_row("tide_ports", {**one, "port": _port_of(one, asked), "form": "secondary", "source": source})
                for one in reading.secondary]  # fmt: skip
    values: dict[str, Any] = {"port": _named(asked.port), "form": PORT_FORM[reading.form], "source": source}
    if reading.form == CONSTANTS:
        given = [one for one in (reading.mean_level_m, asked.datum_offset_m) if one is not None]
        values |= {"datum_offset_m": sum(given) if given else None, "latitude_deg": asked.latitude_deg}
    return [_row("tide_ports", values)]


def _data_rows(reading: TideReading, asked: TidesReadAsked) -> list[PlanRow]:
    offset_m = asked.datum_offset_m or 0.0
    if reading.form == CONSTANTS:
        return [
            _row(
                "tide_constants",
                {
                    "port": asked.port,
                    "constituent": one.constituent,
                    "amplitude_m": one.amplitude_m,
                    "phase_deg": one.phase_deg,
                },
            )
            for one in reading.constants
        ]
    heights = [
        {"port": asked.port, "time": row.time, "height_m": round(row.height_m + offset_m, 4)} for row in reading.heights
    ]
    if reading.form == SERIES:
        return [_row("tide_series", values) for values in heights]
    return [
        _row("tides", {**values, "kind": HW if row.is_high else LW}) for values, row in zip(heights, reading.heights)
    ]


def _row(layer: str, values: dict[str, Any]) -> PlanRow:
    return PlanRow(layer=layer, values=values)


def _named(port: str) -> str:
    if not port:
        raise SwimPlanError(
            asked=tr("No port was named"),
            allowed=tr("This form of tide belongs to a named port"),
            remedy=tr("Give PORT"),
        )
    return port


def _port_of(record: dict[str, Any], asked: TidesReadAsked) -> str:
    if asked.port and record.get("port", asked.port) != asked.port:
        raise SwimPlanError(
            asked=tr("The table names the port '{named}', PORT says '{asked}'").format(
                named=record["port"], asked=asked.port
            ),
            allowed=tr("They are one and the same"),
            remedy=tr("Correct PORT or leave it empty"),
        )
    return _named(record.get("port", asked.port))


def _refuse_offset(asked: TidesReadAsked) -> None:
    if asked.datum_offset_m:
        raise SwimPlanError(
            asked=tr("Got DATUM_OFFSET {offset_m}").format(offset_m=asked.datum_offset_m),
            allowed=tr("A secondary port's heights are the reference port's with differences added"),
            remedy=tr("Leave DATUM_OFFSET empty and add it to the height differences"),
        )


def _check_against_plan(rows: list[PlanRow], asked: TidesReadAsked) -> list[PlanRow]:
    """The rows without ports that the plan has; BadInputError where the plan says something else."""
    tables = tables_of(asked.plan, {}, [])
    for name in {row.layer for row in rows} - set(tables):
        raise SwimPlanError(
            asked=tr("The plan {plan} has no table {name}").format(plan=asked.plan, name=name),
            allowed=tr("Plans of this version have it"),
            remedy=tr("Make a new plan and read into that"),
        )
    ports = {row.values["port"]: row.values for row in tables["tide_ports"].rows()} if "tide_ports" in tables else {}
    kept = [row for row in rows if row.layer != "tide_ports" or _is_new_port(row.values, ports, asked)]
    if any(row.layer == "tides" for row in rows) and ports.get(asked.port, {}).get("form") in ("harmonic", "secondary"):
        raise _other_form(asked.port, ports[asked.port]["form"], "events")
    for layer, fields in KEYS.items():
        mine = [row for row in kept if row.layer == layer]
        if mine:
            _check_keys(layer, fields, mine, tables[layer].rows(), asked)
    return kept


def _check_second_reading(rows: Sequence[PlanRow], reading: TideReading, asked: TidesReadAsked) -> None:
    """Rows of heights stand in the order of the reading's, which know their lines."""
    tables = tables_of(asked.plan, {}, [])
    for layer in ("tides", "tide_series"):
        mine = [row.values for row in rows if row.layer == layer]
        if mine and layer in tables:
            given = [(one.row, values) for one, values in zip(reading.heights, mine)]
            check_second_reading(layer, (row.values for row in tables[layer].rows()), given, asked.asked.name)


def _is_new_port(values: dict[str, Any], ports: dict[str, dict[str, Any]], asked: TidesReadAsked) -> bool:
    held = ports.get(values["port"])
    if held is None:
        return True
    if held["form"] != values["form"]:
        raise _other_form(values["port"], held["form"], values["form"])
    for name, value in values.items():
        if name != "source" and value is not None and held[name] != value:
            raise BadInputError(
                layer="tide_ports",
                field=name,
                value=held[name],
                allowed=tr("{name} says {value} for port '{port}'").format(
                    name=asked.asked.name, value=value, port=values["port"]
                ),
                remedy=tr("Delete the plan's row of that port, or name the port otherwise"),
            )
    return False


def _other_form(port: str, held: str, given: str) -> BadInputError:
    return BadInputError(
        layer="tide_ports",
        field="form",
        value=held,
        allowed=tr(
            "Port '{port}' is given so in the plan; this table gives it as {given}, which would not be used"
        ).format(port=port, given=given),
        remedy=tr("Delete the plan's row of that port, or name the port otherwise"),
    )


def _check_keys(
    layer: str, fields: tuple[str, ...], mine: list[PlanRow], held_rows: Iterable[Any], asked: TidesReadAsked
) -> None:
    """One port says one thing at one time, or of one constituent."""
    held = {
        (row.values[fields[0]] or "", row.values[fields[1]]): row.values
        for row in held_rows
        if (row.values[fields[0]] or "") == asked.port
    }
    for row in mine:
        other = held.get((row.values[fields[0]] or "", row.values[fields[1]]))
        differing = [name for name, value in row.values.items() if other and (other[name] or "") != (value or "")]
        if differing:
            raise BadInputError(
                layer=asked.asked.name,
                field=differing[0],
                value=row.values[differing[0]],
                allowed=tr("The plan's {layer} has {value} for {key}").format(
                    layer=layer, value=other[differing[0]], key=_words(row.values[fields[1]])
                ),
                remedy=tr("Delete the plan's row, or name the port otherwise"),
            )


def _words(key: object) -> str:
    return f"{key.astimezone(timezone.utc):%Y-%m-%d %H:%M:%S} UTC" if isinstance(key, datetime) else str(key)


def _tell(told: Told, reading: TideReading) -> None:
    shown = reading.preview()
    for sentence in taken_sentences(shown["taken"]):
        told.say(sentence)
    for row in shown["first_rows"]:
        told.say(row_sentence(row))
    for one in shown["skipped"]:
        told.say(
            tr("{count} skipped ({reason}): rows {rows}").format(
                count=one["count"], reason=one["reason"], rows=one["rows"]
            )
        )
    for warning in reading.warnings:
        told.warn(warning)


def _report(reading: TideReading, asked: TidesReadAsked, added: Added) -> dict[str, Any]:
    layers = sorted({*added.written, *added.already_there})
    return {
        "tideleg": tideleg_version(),
        "plan": str(asked.plan),
        "source": asked.asked.name,
        "port": asked.port,
        "preview": asked.preview,
        **{("read" if name == "rows" else name): value for name, value in reading.preview().items()},
        "layers": {
            name: {"written": added.written[name], "already_there": added.already_there[name]} for name in layers
        },
    }
