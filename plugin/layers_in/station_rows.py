"""Stream stations that a text speaks of, as rows of the plan, or as those that stand there already."""

from __future__ import annotations

from typing import Any

from qgis.core import QgsGeometry, QgsPointXY

from ..core.errors import BadInputError, SwimPlanError
from ..core.water.stream_asked import StreamReading
from ..core.water.stream_cells import coordinate_in, is_blank, number_in
from ..core.water.stream_rows import TextPlanRow
from ..plan_package.field_spec import FieldSpec
from ..plan_package.schema import LAYER_BY_NAME
from ..words import tr
from .plan_append import Fill
from .plan_rows import PlanRow
from .station_doubts import SpokenStation
from .table import Table

STATION = LAYER_BY_NAME["stream_stations"]
SAME_PLACE_DEG = 1e-5  # a metre
NOT_FIELDS = ("zone", "units", "lon", "lat", "table")


class StationRows:
    """Makes a row for a station that the plan has not; BadInputError where text and plan contradict each other.

    ``spoken`` are the stations met so far, ``fills`` the empty fields of the plan's own that the text fills.
    """

    def __init__(self, table: Table | None, name: str) -> None:
        self._name = name
        rows = list(table.rows()) if table else []
        self._known = {row.values["station"]: row.values for row in rows}
        self._places = {row.values["station"]: QgsPointXY(*row.rings[0][0]) for row in rows}
        self._new: set[str] = set()
        self.spoken: list[SpokenStation] = []
        self.fills: list[Fill] = []

    def rows_of(self, reading: StreamReading, place: QgsPointXY | None) -> list[PlanRow]:
        """The station's row where it is new, [] where the plan has it or the rows belong to none."""
        name = reading.station.get("station", "")
        if not name:
            return []
        values = self._values(reading)
        if name in self._new:
            raise self._refused(
                reading, "station", name, tr("The text has that station already"), tr("Name one otherwise")
            )
        self._new.add(name)
        if name in self._known:
            self._check_same(reading, values)
            self._check_place(reading, name, place or self._place(reading))
            known = self._known[name]
            empty = {key: value for key, value in values.items() if known[key] is None and key != "reference"}
            if empty:
                self.fills.append(Fill(layer="stream_stations", key="station", name=name, values=empty))
            self.spoken.append(SpokenStation(values={**known, **empty}))
            return []
        where = place or self._place(reading)
        if where is None:
            raise SwimPlanError(
                asked=tr("The station '{name}' is not in the plan, and nothing says where it is").format(name=name),
                allowed=tr("A stream belongs to a place"),
                remedy=tr("Give its place in POINT, or name a station of the plan"),
            )
        self.spoken.append(SpokenStation(values=values, place=where))
        return [PlanRow(layer="stream_stations", geometry=QgsGeometry.fromPointXY(where), values=values)]

    def check_named(self, rows: list[TextPlanRow]) -> None:
        """A drift's station must be there, or come with the text."""
        for row in rows:
            name = row.values.get("station")
            if name and name not in self._known and name not in self._new:
                raise BadInputError(
                    layer=self._name,
                    row=row.line,
                    field="station",
                    value=name,
                    allowed=tr("The plan has the stations {names}").format(names=", ".join(sorted(self._known)))
                    if self._known
                    else tr("The plan has no stations"),
                    remedy=tr("Correct the name, or leave it out"),
                )

    def _values(self, reading: StreamReading) -> dict[str, Any]:
        fields = {field.name: field for field in STATION.fields}
        values = {}
        for key, text in reading.station.items():
            if key in NOT_FIELDS:
                continue
            if key not in fields:
                allowed = tr("Fields of a station are {fields}").format(fields=", ".join((*fields, *NOT_FIELDS)))
                raise self._refused(reading, key, text, allowed, tr("Correct the line, or begin it with ##"))
            if not is_blank(text):
                values[key] = self._value(reading, fields[key], text)
        return values

    def _value(self, reading: StreamReading, field: FieldSpec, text: str) -> Any:
        if not field.is_number:
            return text
        try:
            return number_in(text, field.minimum, field.maximum)
        except ValueError as error:
            raise self._refused(reading, field.name, text, str(error), tr("Correct the line")) from error

    def _place(self, reading: StreamReading) -> QgsPointXY | None:
        if "lon" not in reading.station and "lat" not in reading.station:
            return None
        place = []
        for key, limit, letters in (("lon", 180.0, "EW"), ("lat", 89.0, "NS")):
            text = reading.station.get(key, "")
            try:
                place.append(coordinate_in(text, limit, letters))
            except ValueError as error:
                raise self._refused(reading, key, text, str(error), tr("Correct the line")) from error
        return QgsPointXY(*place)

    def _check_same(self, reading: StreamReading, values: dict[str, Any]) -> None:
        known = self._known[values["station"]]
        for key, value in values.items():
            if known[key] != value and known[key] is not None:
                raise self._refused(
                    reading,
                    key,
                    value,
                    tr("The plan's station '{station}' has {held!r}").format(
                        station=values["station"], held=known[key]
                    ),
                    tr("Name the station otherwise, or correct one of them"),
                )
            # A station without a reference counts from high water.
            if known[key] is None and key in ("reference", "port") and value != "HW":
                raise self._refused(
                    reading,
                    key,
                    value,
                    tr("The plan's station '{station}' has none").format(station=values["station"]),
                    tr("Fill in its {key} first").format(key=key),
                )

    def _check_place(self, reading: StreamReading, name: str, place: QgsPointXY | None) -> None:
        held = self._places[name]
        if place is not None and place.distance(held) > SAME_PLACE_DEG:
            raise self._refused(
                reading,
                "place",
                f"{place.x():.5f} {place.y():.5f}",
                tr("The plan's station '{name}' is at {lon:.5f} {lat:.5f}").format(
                    name=name, lon=held.x(), lat=held.y()
                ),
                tr("Leave the place out, or name the station otherwise"),
            )

    def _refused(self, reading: StreamReading, field: str, value: object, allowed: str, remedy: str) -> BadInputError:
        return BadInputError(
            layer=self._name, row=reading.line, field=field, value=value, allowed=allowed, remedy=remedy
        )
