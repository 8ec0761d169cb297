"""The rows of a stream table as rows of a plan, form by form."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from datetime import datetime, timedelta, tzinfo
from typing import Any

from ..clock_labels import LabelledPlace, labels_in_heading
from ..errors import BadInputError, SwimPlanError
from ..quantities import M_S_PER_KNOT
from ..text_table import TextRow, TextTable
from ..words import tr
from .constituents import standard_name
from .event_signs import SignedEvent, unturned
from .heading_words import tide_in
from .stream_cells import coordinate_in, direction_in, hour_in, is_blank, number_in
from .stream_columns import KNOTS_PER, Columns
from .stream_times import TimeCell, times_in

FASTEST_KN = 15.0  # as in the plan
NEAR_SLACK_KN = 0.1
_SLACK = ("slack", "slk", "slack water")


@dataclass(frozen=True, kw_only=True)
class TextPlanRow:
    """One row for a table of the plan, and the line of the text it comes from. ``values`` are in the plan's units."""

    layer: str
    values: dict[str, Any]
    line: int


@dataclass(kw_only=True)
class RowReader:
    """What the readers of the forms share: the table, what its columns are, and what the user said about it.

    ``clocks`` is what comments and notes say of the clock; ``clock`` says, after `times`, which was read.
    """

    name: str
    table: TextTable
    columns: Columns
    station: str = ""
    reference: str = ""
    unit: str = ""
    zone: tzinfo | None = None
    date_order: str = ""
    clocks: tuple[LabelledPlace, ...] = ()
    clock: str = ""
    skipped: list[tuple[int, str]] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)

    @property
    def rows(self) -> tuple[TextRow, ...]:
        """The rows of figures."""
        return self.table.rows[self.columns.first :]

    def has(self, role: str) -> bool:
        """Whether a column is there for the role."""
        return role in self.columns.places

    def cell(self, row: TextRow, role: str) -> str:
        """The row's text for a role, "" for none."""
        return row.cell(self.columns.places[role]) if self.has(role) else ""

    def value(self, row: TextRow, role: str, read: Callable[[str], Any]) -> Any:
        """The row's value for a role, None for a blank; BadInputError naming the row where it cannot be read."""
        text = self.cell(row, role)
        if is_blank(text):
            return None
        try:
            return read(text)
        except ValueError as error:
            raise self.refused(row, role, str(error)) from error

    def number(self, row: TextRow, role: str, low: float, high: float) -> float | None:
        """A number of the row, None for a blank."""
        return self.value(row, role, lambda text: number_in(text, low, high))

    def rate_kn(self, row: TextRow, role: str, low: float = 0.0) -> float | None:
        """A rate of the row in knots, None for a blank; the word slack is nothing."""
        per = self.knots_per(role)
        limit = FASTEST_KN / per

        def read(text: str) -> float:
            return 0.0 if text.strip().lower() in _SLACK else number_in(text, low / per, limit) * per

        value = self.value(row, role, read)
        return None if value is None else round(value, 6)

    def knots_per(self, role: str) -> float:
        """Knots for one of the table's unit of rates; BadInputError where nothing says the unit, or two things do."""
        said = self.columns.unit
        if said and self.unit and said != self.unit:
            raise self.refused(
                None,
                role,
                tr("The heading says {said}, and {asked} was asked for").format(said=said, asked=self.unit),
                tr("Correct UNITS or the heading"),
            )
        if not said and not self.unit:
            raise self.refused(
                None, role, tr("Nothing says whether the rates are in knots or metres a second"), tr("Choose UNITS")
            )
        return KNOTS_PER[said or self.unit]

    def times(self, role: str = "time", *, strict: bool = True) -> dict[int, datetime]:
        """Moments in UTC by row number.

        A row whose clock time comes twice that night, while it stands in the table once, is refused by its number;
        where it need not be ``strict``, it is skipped, and has no moment.
        """
        main = "date" if role == "time" and not self.has("time") else role
        clock = "clock" if main == "date" else ""
        cells = [
            TimeCell(row=row.number, text=self.cell(row, main), clock=self.cell(row, clock) if clock else "")
            for row in self.rows
        ]
        heading = self.columns.heading(main)
        headings = [self.columns.heading(one) for one in (main, "clock") if self.has(one)]
        headed = [labels_in_heading(one) for one in headings if self.columns.headings]
        clocks = [*(place for place in headed if place is not None), *self.clocks]
        read = times_in(cells, self.zone, self.date_order, self.name, heading, clocks)
        self.clock = read.clock
        why = tr("That time comes twice that night, as clocks go back, and stands in the table once")
        for cell in cells:
            if cell.row in read.unsure and strict:
                raise BadInputError(
                    layer=self.name,
                    row=cell.row,
                    field=heading,
                    value=f"{cell.text} {cell.clock}".strip(),
                    allowed=why,
                    remedy=tr("Write its offset, or take the table in UTC"),
                )
        self.skipped += [(number, why) for number in read.unsure]
        return read.moments

    def refused(self, row: TextRow | None, role: str, allowed: str, remedy: str = "") -> BadInputError:
        """The error for a cell, or for a whole column where ``row`` is None."""
        return BadInputError(
            layer=self.name,
            row=None if row is None else row.number,
            field=self.columns.heading(role),
            value=None if row is None else self.cell(row, role),
            allowed=allowed,
            remedy=remedy or tr("Correct the text"),
        )

    def skip(self, row: TextRow, reason: str) -> None:
        """Remember that a row gave nothing."""
        self.skipped.append((row.number, reason))


def hourly_rows(reader: RowReader) -> Iterator[TextPlanRow]:
    """Hours with set and rates at springs and neaps, or at the coefficients 95 and 45."""
    spring = next((role for role in ("spring", "at_95", "rate") if reader.has(role)), "")
    neap = next((role for role in ("neap", "at_45") if reader.has(role)), "")
    taken: dict[int, int] = {}
    _note_reference(reader, None, tide_in(reader.columns.heading("hour")))
    for row in reader.rows:
        hour = reader.value(row, "hour", hour_in)
        if hour is None:
            raise reader.refused(row, "hour", tr("Every row has its hour"))
        _note_reference(reader, row, hour[1])
        if hour[0] in taken:
            raise reader.refused(row, "hour", tr("Row {number} has that hour already").format(number=taken[hour[0]]))
        taken[hour[0]] = row.number
        rates = [reader.rate_kn(row, role) if role else None for role in (spring, neap)]
        towards = reader.value(row, "set", direction_in)
        if rates == [None, None]:
            reader.skip(row, tr("no rate: the hour is unknown, not slack"))
            continue
        if towards is None and any(rates):
            raise reader.refused(row, "set", tr("A rate has a set"))
        values = {"station": reader.station, "hour": hour[0], "set_deg": towards or 0.0}
        yield TextPlanRow(
            layer="stream_rates", values={**values, "spring_kn": rates[0], "neap_kn": rates[1]}, line=row.number
        )
    missing = sorted(set(range(-6, 7)) - set(taken))
    if missing and len(taken) > 1:
        reader.notes.append(tr("No row for hour {hours}: unknown then").format(hours=", ".join(map(str, missing))))


def event_rows(reader: RowReader) -> Iterator[TextPlanRow]:
    """Slacks and maxima: rates signed, flood positive, or with the word flood or ebb, or F or E, beside them."""
    times = reader.times()
    signed: list[SignedEvent] = []
    rows: list[TextPlanRow] = []
    for row in reader.rows:
        word = reader.cell(row, "kind").strip().lower()
        text = reader.cell(row, "rate").strip()
        letter = re.search(r"(?<=[\d.,\s])\s*(f|e|flood|ebb)$", text, re.IGNORECASE)
        way = _way(word) or (letter.group(1)[0].lower() if letter else "")
        bare = text[: letter.start()].strip() if letter else text
        rate = _event_rate(reader, row, bare, way)
        slack = _is_slack(reader, row, word, rate)
        sets = {f"{role}_deg": reader.value(row, role, direction_in) for role in ("flood_set", "ebb_set")}
        values = {"station": reader.station, "time": times[row.number], "kind": "slack" if slack else "max"}
        values["rate_kn"] = 0.0 if slack else rate
        signed.append(SignedEvent(row=row.number, time=values["time"], rate_kn=values["rate_kn"], is_said=bool(way)))
        rows.append(TextPlanRow(layer="stream_events", values={**values, **sets}, line=row.number))
    _refuse_unsigned(reader, signed)
    yield from rows


def _refuse_unsigned(reader: RowReader, signed: list[SignedEvent]) -> None:
    both = unturned(signed)
    if both is not None:
        row = next(row for row in reader.rows if row.number == both[1])
        raise reader.refused(
            row,
            "rate",
            tr("Row {number} before the slack has a rate of the same sign, and a stream turns at slack").format(
                number=both[0]
            ),
            tr("Write ebb rates negative, or say flood or ebb in each row"),
        )


def series_rows(reader: RowReader) -> Iterator[TextPlanRow]:
    """Sets and rates at moments; a blank stays as a row, so that nothing is drawn across it."""
    times = reader.times(strict=False)
    for row in (row for row in reader.rows if row.number in times):
        towards, rate = reader.value(row, "set", direction_in), reader.rate_kn(row, "rate")
        if towards is None and rate:
            raise reader.refused(row, "set", tr("A rate has a set"))
        values = {"station": reader.station, "time": times[row.number], "set_deg": towards, "rate_kn": rate}
        yield TextPlanRow(layer="stream_series", values=values, line=row.number)


def constant_rows(reader: RowReader) -> Iterator[TextPlanRow]:
    """Harmonic constants of the east and north parts."""
    taken: dict[str, int] = {}
    per = reader.knots_per("u_amplitude")
    for row in reader.rows:
        text = reader.cell(row, "constituent").strip()
        name = "Z0" if text.upper() == "Z0" else standard_name(text)
        if not name:
            raise reader.refused(row, "constituent", tr("It is no standard name of a constituent, such as M2"))
        if name in taken:
            raise reader.refused(
                row, "constituent", tr("Row {number} has that constituent already").format(number=taken[name])
            )
        taken[name] = row.number
        values: dict[str, Any] = {"station": reader.station, "constituent": name}
        for part in ("u", "v"):
            amplitude = reader.number(row, f"{part}_amplitude", -FASTEST_KN / per, FASTEST_KN / per)
            phase = reader.number(row, f"{part}_phase", -360.0, 360.0)
            if amplitude is None or phase is None:
                raise reader.refused(
                    row, f"{part}_amplitude", tr("Every constituent has amplitude and phase of both parts")
                )
            values[f"{part}_amplitude_m_s"] = round(amplitude * per * M_S_PER_KNOT, 7)
            values[f"{part}_phase_deg"] = phase % 360.0
        yield TextPlanRow(layer="stream_constants", values=values, line=row.number)


def drift_rows(reader: RowReader) -> Iterator[TextPlanRow]:
    """Timed drifts from place to place."""
    times = reader.times()
    ends = reader.times("end_time") if reader.has("end_time") else {}
    for row in reader.rows:
        start = times[row.number]
        minutes = reader.number(row, "minutes", 0.0, 1440.0) if not ends else None
        if not ends and minutes is None:
            raise reader.refused(row, "minutes", tr("A drift has an end or its minutes"))
        values = {"station": reader.station or None, "note": reader.cell(row, "note") or None, "time": start}
        values["end_time"] = ends[row.number] if ends else start + timedelta(minutes=minutes)
        for role, limit, letters in (("lon", 180.0, "EW"), ("lat", 89.0, "NS")):
            for prefix in ("", "end_"):
                place = reader.value(
                    row, prefix + role, lambda text, limit=limit, letters=letters: coordinate_in(text, limit, letters)
                )
                if place is None:
                    raise reader.refused(row, prefix + role, tr("A drift has both its places"))
                values[prefix + role] = place
        _check_drift(reader, row, values)
        yield TextPlanRow(layer="drifts", values=values, line=row.number)


def wind_rows(reader: RowReader) -> Iterator[TextPlanRow]:
    """Winds at moments; a blank stays as a row, so that nothing is drawn across it."""
    times = reader.times(strict=False)
    for row in (row for row in reader.rows if row.number in times):
        per = reader.knots_per("wind_speed")
        speed = reader.number(row, "wind_speed", 0.0, 100.0 / per)
        blows_from = reader.value(row, "from", direction_in)
        if speed and blows_from is None:
            raise reader.refused(row, "from", tr("A wind has a direction it comes from"))
        speed_kn = None if speed is None else round(speed * per, 6)
        values = {"time": times[row.number], "from_deg": blows_from, "speed_kn": speed_kn}
        yield TextPlanRow(layer="winds", values=values, line=row.number)


def _check_drift(reader: RowReader, row: TextRow, values: dict[str, Any]) -> None:
    from .timed_drift import TimedDrift

    end_s = (values["end_time"] - values["time"]).total_seconds()
    try:
        TimedDrift(start_s=0.0, end_s=end_s, **{name: values[name] for name in ("lon", "lat", "end_lon", "end_lat")})
    except SwimPlanError as error:
        raise reader.refused(row, "end_lon", f"{error.asked}. {error.allowed}", error.remedy) from error


def _note_reference(reader: RowReader, row: TextRow | None, named: str) -> None:
    if named and reader.reference and named != reader.reference:
        raise reader.refused(
            row,
            "hour",
            tr("The table counts its hours from {reference}").format(reference=reader.reference),
            tr("Correct REFERENCE"),
        )
    reader.reference = reader.reference or named


def _way(word: str) -> str:
    """f or e of a word that says flood or ebb."""
    found = re.search(r"\b(flood|ebb)\b", word)
    # A slack or a minimum before the flood is no part of it.
    return found.group(1)[0] if found and not re.search(r"slack|slk|\bbefore\b|\bafter\b", word) else ""


def _event_rate(reader: RowReader, row: TextRow, text: str, way: str) -> float | None:
    if is_blank(text):
        return None
    per = reader.knots_per("rate")
    try:
        value = 0.0 if text.lower() in _SLACK else number_in(text, -FASTEST_KN / per, FASTEST_KN / per) * per
    except ValueError as error:
        raise reader.refused(row, "rate", str(error)) from error
    value = round(value, 6)
    word = reader.cell(row, "kind").lower()
    if value > 0.0 and not text.startswith("+") and re.search(r"\b(before|after)\b", word) and "sl" not in word:
        raise reader.refused(
            row, "rate", tr("Before or after does not say its way"), tr("Write + for flood, - for ebb")
        )
    if way == "f" and value < 0.0:
        raise reader.refused(row, "rate", tr("A flood has a positive rate"))
    return -abs(value) if way == "e" else value


def _is_slack(reader: RowReader, row: TextRow, word: str, rate: float | None) -> bool:
    """Whether the row is a slack; refused where word and rate contradict each other or neither says."""
    if "slack" in word or word in ("slk", "s"):
        if rate and abs(rate) > NEAR_SLACK_KN:
            raise reader.refused(row, "rate", tr("A slack has no rate"))
        return True
    if word and not re.search(r"\b(max|maximum|flood|ebb)\b", word):
        raise reader.refused(row, "kind", tr("It is slack, max, flood or ebb"))
    if rate is None and not word:
        raise reader.refused(row, "rate", tr("A row without a word for it has a rate: 0 for slack, flood +, ebb -"))
    return not word and rate == 0.0
