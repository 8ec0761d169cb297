"""Landmarks and picked transits of a plan as the core's objects."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence

import numpy as np

from ..core.chart.marks import TAKES_NAME_WITHIN_M, Mark
from ..core.geodesy import geodesic_leg
from ..core.results.report import wrapped_lon
from ..core.solve.picked_transits import PickedTransit
from ..core.solve.transits import Landmarks
from ..words import tr
from .table import Table, TableRow

MOST_LETTERS = 200  # of a list of names in a message


def landmarks_from(table: Table | None, name: str = "name") -> Landmarks:
    """The rows of a layer of landmarks whose field ``name`` is filled, in its order, longitudes within 180; none where
    there is no layer."""
    rows = [row for row in table.rows() if row.values[name]] if table else []
    places = np.array([row.rings[0][0] for row in rows]).reshape(-1, 2)
    places[:, 0] = wrapped_lon(places[:, 0])
    return Landmarks(names=tuple(row.values[name] for row in rows), lonlat=places)


def picked_from(tables: Mapping[str, Table], marks: Sequence[Mark], warnings: list[str]) -> tuple[PickedTransit, ...]:
    """The plan's transits, in the order of their layer.

    One that names a mark that is not there, or a landmark that is not there once, is left out, and ``warnings`` name
    layer, row, field and value: no number of the swim depends on it.
    """
    table = tables.get("transits")
    rows = list(table.rows()) if table else []
    if not rows:
        return ()
    landmarks = landmarks_from(tables.get("landmarks"))
    at = {name: number for number, name in enumerate(landmarks.names)}
    once = Counter(landmarks.names)
    known = {"mark": Counter({mark.name for mark in marks}), "front": once, "rear": once}
    picked = []
    for row in rows:
        wrong = next((field for field, names in known.items() if names[row.values[field]] != 1), None)
        if wrong:
            warnings.append(f"{_refusal(table, row, wrong, known[wrong])} " + tr("This transit is left out."))
            continue
        pair = [at[row.values[field]] for field in ("front", "rear")]
        names = tuple(landmarks.names[one] for one in pair)
        picked.append(
            PickedTransit(mark=row.values["mark"], pair=Landmarks(names=names, lonlat=landmarks.lonlat[pair]))
        )
        warnings.extend(_drawn_elsewhere(table, row, [mark for mark in marks if mark.name == row.values["mark"]]))
    return tuple(picked)


def _refusal(table: Table, row: TableRow, field: str, known: Counter[str]) -> str:
    """Why a name cannot be used, with what there is."""
    value, layer = row.values[field], "marks" if field == "mark" else "landmarks"
    if known[value] > 1:
        allowed, remedy = (
            tr("The layer {layer} has {count} of that name").format(layer=layer, count=known[value]),
            tr("Give each a name of its own"),
        )
    else:
        names = ", ".join(sorted(known)) or tr("no rows")
        names = names if len(names) <= MOST_LETTERS else f"{names[:MOST_LETTERS]} ..."
        allowed, remedy = (
            tr("The layer {layer} has {names}").format(layer=layer, names=names),
            tr("Correct the name, or add what it names"),
        )
    return str(table.refused(row.number, field, value, allowed, remedy))


def _drawn_elsewhere(table: Table, row: TableRow, marks: Sequence[Mark]) -> list[str]:
    """A doubt about a line that no longer begins at its mark, as when the mark was moved."""
    lon, lat = row.rings[0][0].tolist()
    away_m = min(geodesic_leg(lon, lat, mark.lon, mark.lat)[0] for mark in marks)
    if away_m <= TAKES_NAME_WITHIN_M:
        return []
    return [
        tr(
            "Layer '{name}', row {number}: the line begins {away_m:.0f} m from {mark}. Its names count: draw it anew."
        ).format(name=table.name, number=row.number, away_m=away_m, mark=marks[0].name)
    ]
