"""The reach as layers: areas reached in time, the area with time to stay, and the marks' numbers."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

import numpy as np
from qgis.core import QgsGeometry, QgsPointXY, QgsWkbTypes
from qgis.PyQt.QtCore import QCoreApplication

from ..core.errors import StoppedError
from ..core.results.reach import MarkReach, Numbers, Reach
from .plan_layers import OutputLayer, Row, both_times
from .reach_polygons import area_below, rings_lonlat

SHORT_HORIZON_MIN = 180.0

REACH_COLUMNS = (("kind", "text"), ("minutes", "number"), ("label", "text"))
NUMBER_COLUMNS = (
    ("out_min", "number"),
    ("latest_leave_min", "number"),
    ("stay_min", "number"),
    ("out_min_one_heading", "number"),
    ("latest_leave_min_one_heading", "number"),
    ("stay_min_one_heading", "number"),
)
MARK_COLUMNS = (
    ("name", "text"),
    ("kind", "text"),
    *NUMBER_COLUMNS,
    ("arrive", "time"),
    ("latest_leave", "time"),
    ("arrive_local", "text"),
    ("latest_leave_local", "text"),
    ("exit", "text"),
    ("note", "text"),
)


@dataclass(frozen=True, kw_only=True)
class ReachOf:
    """A reach with its areas drawn: that is slow, and no file is touched before it is done."""

    reach: Reach
    areas: tuple[Row, ...]


def drawn(reach: Reach, is_cancelled: Callable[[], bool] = bool) -> ReachOf:
    """The reach with its areas. StoppedError when stopped."""
    return ReachOf(reach=reach, areas=tuple(_areas(reach, is_cancelled)))


def every_min(reach: Reach) -> float:
    """Minutes between the lines of equal time: a quarter or half an hour."""
    return 15.0 if reach.horizon_min <= SHORT_HORIZON_MIN else 30.0


def _areas(reach: Reach, is_cancelled: Callable[[], bool]) -> Iterator[Row]:
    """The areas reached in so many minutes, the largest first, so that the smaller ones lie on top of it; last the
    area in which there is time to stay."""
    tr = QCoreApplication.translate
    step = every_min(reach)
    reached = float(np.nanmax(reach.out_min)) if np.isfinite(reach.out_min).any() else 0.0
    out_words = tr("Tideleg", "out in {} min")
    for number in range(int(np.ceil(min(reached, reach.horizon_min) / step)), 0, -1):
        minutes = step * number
        values = {"kind": "out", "minutes": minutes, "label": out_words.format(f"{minutes:.0f}")}
        yield from _area_row(reach, reach.out_min, minutes, values, is_cancelled)
    values = {"kind": "stay", "minutes": reach.stay_min, "label": stay_words(reach)}
    yield from _area_row(reach, -reach.possible_stay_min, -reach.stay_min, values, is_cancelled)


def _area_row(
    reach: Reach, values: np.ndarray, level: float, attributes: dict[str, object], is_cancelled: Callable[[], bool]
) -> Iterator[Row]:
    if is_cancelled():
        raise StoppedError()
    geometry = area_geometry(reach, values, level)
    if geometry is not None:
        yield geometry, attributes


def stay_words(reach: Reach) -> str:
    """``time to stay 30 min and be home by 20:15``."""
    words = QCoreApplication.translate("Tideleg", "time to stay {} min and be home by {}")
    return words.format(f"{reach.stay_min:.0f}", f"{reach.back_by:%H:%M}")


def area_geometry(reach: Reach, values: np.ndarray, level: float) -> QgsGeometry | None:
    """Where values over the reach's grid lie at or below a level, in degrees; None where nowhere."""
    area = area_below(values, level, reach.low_m, reach.cell_m)
    if area is None:
        return None
    polygons = [
        [[QgsPointXY(*place) for place in ring] for ring in polygon] for polygon in rings_lonlat(area, reach.frame)
    ]
    geometry = QgsGeometry.fromMultiPolygonXY(polygons)
    return geometry if geometry.isGeosValid() else _mended(geometry)


def _mended(geometry: QgsGeometry) -> QgsGeometry:
    """Rounding to degrees can make thin necks of an area touch."""
    whole = geometry.makeValid()
    whole.convertToMultiType()
    return whole


def _area_rows(made: ReachOf) -> Iterator[Row]:
    yield from made.areas


def _mark_rows(made: ReachOf) -> Iterator[Row]:
    """Each mark with its minutes by the solver and on one heading a leg."""
    for one in made.reach.marks:
        yield QgsGeometry.fromPointXY(QgsPointXY(one.mark.lon, one.mark.lat)), _mark_values(made.reach, one)


def _mark_values(reach: Reach, one: MarkReach) -> dict[str, object]:
    solver = one.solver
    times = {"arrive": reach.moment(solver.out_min), "latest_leave": reach.moment(solver.latest_min)}
    return {
        "name": one.mark.name,
        "kind": one.mark.kind,
        **_minutes(solver, ""),
        **_minutes(one.one_heading, "_one_heading"),
        "exit": solver.exit,
        "note": "; ".join(filter(None, (solver.reason, one.one_heading.reason))),
        **both_times(**times),
    }


def _minutes(numbers: Numbers, ending: str) -> dict[str, object]:
    return {
        f"out_min{ending}": numbers.out_min,
        f"latest_leave_min{ending}": numbers.latest_min,
        f"stay_min{ending}": numbers.stay_min,
    }


REACH = OutputLayer(parameter="REACH", wkb_type=QgsWkbTypes.Type.MultiPolygon, columns=REACH_COLUMNS, rows=_area_rows)
MARKS_REACH = OutputLayer(
    parameter="MARKS_REACH", wkb_type=QgsWkbTypes.Type.Point, columns=MARK_COLUMNS, rows=_mark_rows
)


def reach_sentences(reach: Reach) -> list[str]:
    """The reach in words: how much water, and every mark's numbers."""
    tr = QCoreApplication.translate
    area = tr("Tideleg", "Time to stay {} min and be home by {}: {} square kilometres")
    lines = [area.format(f"{reach.stay_min:.0f}", f"{reach.back_by:%H:%M}", f"{reach.stay_area_km2:.2f}")]
    both = tr("Tideleg", "{}: there in {} min (one heading {}), leave by {} (one heading {}), to {}")
    for one in reach.marks:
        solver, held = one.solver, one.one_heading
        if solver.out_min is None or solver.latest_min is None:
            lines.append(f"{one.mark.name}: {solver.reason}")
            continue
        leave = [reach.moment(numbers.latest_min) for numbers in (solver, held)]
        clocks = ["-" if moment is None else f"{moment:%H:%M}" for moment in leave]
        held_out = "-" if held.out_min is None else f"{np.ceil(held.out_min):.0f}"
        lines.append(
            both.format(one.mark.name, f"{np.ceil(solver.out_min):.0f}", held_out, clocks[0], clocks[1], solver.exit)
        )
    return lines
