"""The fastest path as a line with the fields of a plan's routes, to edit and plan with, and in sentences."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
from qgis.core import QgsWkbTypes
from qgis.PyQt.QtCore import QCoreApplication

from ..core.results.fastest_path import FastestPath
from .plan_layers import OutputLayer, Row, both_times, line_over

PATH_COLUMNS = (
    ("name", "text"),
    ("note", "text"),
    ("minutes", "number"),
    ("straight_min", "number"),
    ("optimum_min", "number"),
    ("length_m", "number"),
    ("depart", "time"),
    ("arrive", "time"),
    ("depart_local", "text"),
    ("arrive_local", "text"),
)


def _path_rows(path: FastestPath) -> Iterator[Row]:
    plan = path.plan
    note = QCoreApplication.translate("Tideleg", "Leave {}, {} min.")
    values = {
        "name": plan.route,
        "note": note.format(f"{plan.depart:%Y-%m-%d %H:%M}", f"{np.ceil(plan.total_min):.0f}"),
        "minutes": plan.total_min,
        "straight_min": path.straight.minutes,
        "optimum_min": path.optimum_min,
        "length_m": plan.total_m,
        **both_times(depart=plan.depart, arrive=plan.arrive),
    }
    yield line_over([tuple(place) for place in path.lonlat.tolist()]), values


PATH = OutputLayer(parameter="ROUTE", wkb_type=QgsWkbTypes.Type.LineString, columns=PATH_COLUMNS, rows=_path_rows)


def path_sentences(path: FastestPath) -> list[str]:
    """The route beside the straight line and the optimum, and where it crosses channels."""
    tr = QCoreApplication.translate
    whole = tr("Tideleg", "{} legs, {} m, {} min; straight: {}; steering anew all the time: {} min")
    straight = path.straight
    words = tr("Tideleg", "not swimmable") if straight.minutes is None else f"{straight.minutes:.1f} min"
    words += f" ({straight.reason})" if straight.reason else ""
    plan = path.plan
    lines = [
        whole.format(len(plan.legs), f"{plan.total_m:.0f}", f"{plan.total_min:.1f}", words, f"{path.optimum_min:.1f}")
    ]
    return lines + [flag.message for flag in plan.flags if flag.kind in ("channel", "closed_area", "land")]
