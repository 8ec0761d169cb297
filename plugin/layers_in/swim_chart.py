"""Channels, closed areas, land and depths of a plan as the core's objects in the plan's frame."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from datetime import tzinfo

import numpy as np

from ..core.chart.areas import Channel, Chart, ClosedArea, Land, Sailing
from ..core.chart.depths import DepthSurvey
from ..core.chart.hours import in_force_from_text, sailing_from_text
from ..core.errors import BadInputError, SwimPlanError
from ..core.geodesy import LocalFrame
from ..core.planar import PlanarArea
from ..core.quantities import m_s_from_knots
from ..words import tr
from .flat_rings import NEAR_DEG, flat_line, flat_rings, near_lon_deg
from .table import Table, TableRow


def chart_from(tables: dict[str, Table], frame: LocalFrame, zone: tzinfo, warnings: list[str]) -> Chart:
    """The chart that tracks are checked against, from the tables that are there."""
    sailings = _sailings(tables.get("ferries"), zone)
    channels = tuple(_channels(tables.get("channels"), frame, sailings))
    names = {channel.name for channel in channels}
    for name in sailings:
        if name not in names:
            warnings.append(
                tr("The ferries table names the channel '{name}', which is not among the channels.").format(name=name)
            )
    return Chart(
        channels=channels,
        closed_areas=tuple(_closed_areas(tables.get("closed_areas"), frame, zone)),
        land=tuple(
            Land(name=row.values["name"] or "", area=area)
            for row in _near(tables.get("land"), frame)
            if (area := _area(row, frame)) is not None
        ),
    )


def depths_from(tables: dict[str, Table], frame: LocalFrame) -> DepthSurvey:
    """Soundings and contour pieces near the plan."""
    soundings = [
        np.append(frame.to_xy(row.rings[0])[0], row.values["depth_m"]) for row in _near(tables.get("soundings"), frame)
    ]
    pieces = [_pieces(row, frame) for row in _near(tables.get("depth_contours"), frame)]
    return DepthSurvey(
        soundings=np.array(soundings).reshape(-1, 3),
        contours=np.concatenate(pieces) if pieces else np.empty((0, 5)),
    )


def _near(table: Table | None, frame: LocalFrame) -> Iterator[TableRow]:
    """The rows that reach within a degree of the plan's centre; the rest of a big layer is left aside."""
    for row in table.rows() if table else ():
        lon = (row.rings[0][:, 0] - frame.lon + 180.0) % 360.0 - 180.0
        lat = row.rings[0][:, 1] - frame.lat
        wide = near_lon_deg(frame)
        if lon.min() <= wide and lon.max() >= -wide and lat.min() <= NEAR_DEG and lat.max() >= -NEAR_DEG:
            yield row


def _area(row: TableRow, frame: LocalFrame) -> PlanarArea | None:
    """The row's polygon near the plan; None where only its box reaches there."""
    rings = flat_rings(row.rings, frame)
    return PlanarArea(rings=rings) if rings else None


def _pieces(row: TableRow, frame: LocalFrame) -> np.ndarray:
    """A contour as straight pieces (m, 5): two ends and the depth."""
    line = flat_line(row.rings[0], frame)
    return np.hstack([line[:-1], line[1:], np.full((len(line) - 1, 1), row.values["depth_m"])])


def _channels(table: Table | None, frame: LocalFrame, sailings: dict[str, list[Sailing]]) -> Iterator[Channel]:
    for row in _near(table, frame):
        values, centre = row.values, None
        if row.kind == "LineString":
            if values["width_m"] is None:
                raise table.refused(
                    row.number,
                    "width_m",
                    None,
                    tr("A channel drawn as a line needs its width in metres"),
                    tr("Fill it in"),
                )
            centre = flat_line(row.rings[0], frame)
            area = _widened(centre, values["width_m"])
        else:
            area = _area(row, frame)
        if area is None:
            continue
        name = values["name"] or ""
        yield Channel(
            name=name,
            kind=values["kind"],
            area=area,
            flow_deg=_or_nan(values["flow_deg"]),
            boat_m_s=m_s_from_knots(_or_nan(values["boat_kn"])),
            centre=centre,
            sailings=tuple(sailings.get(name, ())),
        )


def _widened(line: np.ndarray, width_m: float) -> PlanarArea:
    """The strip of a channel drawn as a line, square at its ends."""
    from shapely.geometry import LineString

    flat_ends = 2
    strip = LineString(line).buffer(width_m / 2.0, cap_style=flat_ends)
    parts = getattr(strip, "geoms", [strip])
    rings = [ring for part in parts for ring in (part.exterior, *part.interiors)]
    return PlanarArea(rings=tuple(np.array(ring.coords) for ring in rings))


def _sailings(table: Table | None, zone: tzinfo) -> dict[str, list[Sailing]]:
    found = defaultdict(list)
    for row in table.rows() if table else ():
        try:
            when = sailing_from_text(row.values["time"], zone)
        except SwimPlanError as error:
            raise _retold(table, row, "time", row.values["time"], error) from error
        found[row.values["channel"]].append(
            Sailing(
                when=when,
                clear_before_min=row.values["clear_before_min"],
                clear_after_min=row.values["clear_after_min"],
            )
        )
    return dict(found)


def _closed_areas(table: Table | None, frame: LocalFrame, zone: tzinfo) -> Iterator[ClosedArea]:
    for row in _near(table, frame):
        values = row.values
        try:
            in_force = in_force_from_text(values["from_time"], values["to_time"], zone)
        except SwimPlanError as error:
            times = f"{values['from_time']} - {values['to_time']}"
            raise _retold(table, row, "from_time", times, error) from error
        area = _area(row, frame)
        if area is None:
            continue
        yield ClosedArea(
            name=values["name"] or "",
            rule=values["rule"],
            area=area,
            in_force=in_force,
            citation=values["citation"] or "",
            checked_on=values["checked_on"] or "",
        )


def _retold(table: Table, row: TableRow, field: str, value: object, error: SwimPlanError) -> BadInputError:
    """An error of the core with its place in the user's layer."""
    return table.refused(row.number, field, value, error.allowed, error.remedy)


def _or_nan(value: float | None) -> float:
    return float("nan") if value is None else float(value)
