"""The reach as bands for the map beside the dock: where one can be and be home again, by the minutes out.

Unlike the areas of the algorithm, which lie on top of each other and show all that is reached in so many minutes, bands
lie side by side and end where nobody would be home in time.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

import numpy as np
from qgis.core import QgsGeometry, QgsWkbTypes

from ..core.errors import StoppedError
from ..core.results.reach import Reach
from ..words import tr
from .plan_layers import OutputLayer, Row
from .reach_layers import area_geometry, stay_words

STEPS_MIN = (5.0, 10.0, 15.0, 20.0, 30.0, 60.0, 120.0, 180.0)
MOST_BANDS = 7  # more steps from light to dark are not told apart on grey paper


@dataclass(frozen=True, kw_only=True)
class ReachDrawn:
    """A reach with its shapes, made in the worker: ``bands`` beside each other, ``lines`` of equal time, the area with
    time to ``stay``; ``every_min`` minutes lie between two lines."""

    reach: Reach
    every_min: float
    bands: tuple[Row, ...]
    lines: tuple[Row, ...]
    stay: tuple[Row, ...]


def bands_of(reach: Reach, is_cancelled: Callable[[], bool] = bool) -> ReachDrawn:
    """The shapes of a reach. StoppedError when stopped."""
    home = _home_area(reach)
    every = band_minutes(_farthest_min(reach))
    bands: list[Row] = []
    lines: list[Row] = []
    within: QgsGeometry | None = None
    for number in range(1, MOST_BANDS + 1):
        if is_cancelled():
            raise StoppedError()
        first, last = every * (number - 1), every * number
        reached = area_geometry(reach, reach.out_min, last) if home is not None else None
        if reached is None:
            continue
        inside = reached.intersection(home)
        band = inside if within is None else inside.difference(within)
        within = inside
        values = {"number": number, "from_min": first, "to_min": last, "label": band_words(first, last)}
        bands += [(shape, values) for shape in _only(band, QgsWkbTypes.GeometryType.PolygonGeometry)]
        edge = QgsGeometry(reached.constGet().boundary()).intersection(home)
        words = tr("{} min").format(f"{last:.0f}")
        lines += [
            (shape, {"minutes": last, "label": words}) for shape in _only(edge, QgsWkbTypes.GeometryType.LineGeometry)
        ]
    return ReachDrawn(
        reach=reach, every_min=every, bands=tuple(bands), lines=tuple(lines), stay=tuple(_stay(reach, is_cancelled))
    )


def band_minutes(farthest_min: float) -> float:
    """Minutes between two lines, so that a few bands reach as far as one can go."""
    return next((step for step in STEPS_MIN if farthest_min <= step * MOST_BANDS), STEPS_MIN[-1])


def band_words(first_min: float, last_min: float) -> str:
    """``out in up to 15 min``, ``out in 15 to 30 min``: for the legend."""
    if first_min == 0.0:
        return tr("out in up to {} min").format(f"{last_min:.0f}")
    return tr("out in {} to {} min").format(f"{first_min:.0f}", f"{last_min:.0f}")


def _farthest_min(reach: Reach) -> float:
    """Minutes to the farthest place from which one is home in time; 0 where there is none."""
    out = reach.out_min[np.isfinite(reach.possible_stay_min)]
    return float(out.max()) if out.size else 0.0


def _home_area(reach: Reach) -> QgsGeometry | None:
    """Where one can be and be home in time; None where nowhere.

    From the differences themselves, not from the stays, which end at nothing: so its edge lies between the cells.
    """
    return area_geometry(reach, reach.out_min - reach.home_by_min, 0.0)


def _stay(reach: Reach, is_cancelled: Callable[[], bool]) -> Iterator[Row]:
    if is_cancelled():
        raise StoppedError()
    area = area_geometry(reach, reach.out_min - reach.home_by_min, -reach.stay_min)
    if area is not None:
        yield area, {"minutes": reach.stay_min, "label": stay_words(reach)}


def _only(shape: QgsGeometry, kind: QgsWkbTypes.GeometryType) -> list[QgsGeometry]:
    """The parts of one kind as one multi-part shape; none where there are none."""
    parts = [part for part in shape.asGeometryCollection() if part.type() == kind and not part.isEmpty()]
    if not parts:
        return []
    whole = QgsGeometry.collectGeometry(parts)
    whole.convertToMultiType()
    return [whole]


def _rows(name: str) -> Callable[[ReachDrawn], Iterator[Row]]:
    return lambda made: iter(getattr(made, name))


BANDS = OutputLayer(
    parameter="REACH_BANDS",
    wkb_type=QgsWkbTypes.Type.MultiPolygon,
    columns=(("number", "whole"), ("from_min", "number"), ("to_min", "number"), ("label", "text")),
    rows=_rows("bands"),
)
LINES = OutputLayer(
    parameter="REACH_LINES",
    wkb_type=QgsWkbTypes.Type.MultiLineString,
    columns=(("minutes", "number"), ("label", "text")),
    rows=_rows("lines"),
)
STAY = OutputLayer(
    parameter="REACH_STAY",
    wkb_type=QgsWkbTypes.Type.MultiPolygon,
    columns=(("minutes", "number"), ("label", "text")),
    rows=_rows("stay"),
)
