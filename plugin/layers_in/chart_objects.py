"""Which reader takes which class of chart object, and the objects of a cell read one after another."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from qgis.core import QgsGeometry, QgsRectangle

from ..core.chart import object_classes as classes
from ..core.chart.landmark_classes import LANDMARKS
from ..words import tr
from .chart_areas import area_reading, land_reading
from .chart_cell import CellFacts, ChartCell, ChartObject
from .chart_channels import KnownChannels, channel_reading
from .chart_depths import contour_reading, hazard_reading, sounding_reading
from .chart_landmarks import KnownLandmarks, Place, landmark_reading
from .chart_streams import constants_reading, panel_reading, series_reading, tide_reading
from .plan_rows import PlanRow, Reading
from .read_tally import ReadTally
from .whole_shapes import Shapes, whole_shapes

Reader = Callable[[ChartObject, Shapes, CellFacts], Reading]

READERS: dict[str, Reader] = {
    **dict.fromkeys(classes.CHANNELS, channel_reading),
    **dict.fromkeys(classes.AREAS, area_reading),
    **dict.fromkeys(classes.HAZARDS, hazard_reading),
    **dict.fromkeys(LANDMARKS, landmark_reading),
    **dict.fromkeys(classes.STREAM_WORDS_ONLY, constants_reading),
    classes.LAND: land_reading,
    classes.CONTOURS: contour_reading,
    classes.SOUNDINGS: sounding_reading,
    classes.STREAM_PANEL: panel_reading,
    classes.STREAM_SERIES: series_reading,
    classes.TIDE_SERIES: tide_reading,
}
# The station that rules a swim is often off its chart: streams and tides are taken from the whole cell.
NEVER_CLIPPED = (classes.STREAM_PANEL, classes.STREAM_SERIES, classes.TIDE_SERIES, *classes.STREAM_WORDS_ONLY)
_LINKS_ONLY = ("DSID",)


class ChartReader:
    """Reads the objects of one cell into rows of a plan, counting in ``tally`` what became of each.

    ``floats`` are the places of what floats, of which the lights are no landmarks.
    """

    def __init__(
        self,
        facts: CellFacts,
        extent: QgsRectangle | None,
        tally: ReadTally,
        floats: frozenset[Place] = frozenset(),
    ) -> None:
        self._facts = facts
        self._extent = extent
        self._tally = tally
        self._channels = KnownChannels()
        self._landmarks = KnownLandmarks(floats)

    def rows_of(self, thing: ChartObject) -> tuple[PlanRow, ...]:
        """The object's rows, none where it is outside or of no use; the tally says which."""
        counted = self._tally.of(thing.object_class)
        counted.read += 1
        extent = None if thing.object_class in NEVER_CLIPPED else self._extent
        shapes = whole_shapes(thing.geometry, extent)
        counted.repaired += shapes.repaired
        if shapes.reason == "clipped":
            counted.clipped_away += 1
            return ()
        reading = Reading(reason=shapes.reason) if shapes.reason else self._reading(thing, shapes)
        counted.notes.update(reading.notes)
        if reading.hazard:
            self._tally.add_hazard(thing, shapes.parts[0].pointOnSurface().asPoint(), reading.hazard)
        if not reading.rows:
            counted.skipped[reading.reason] += 1
            return ()
        counted.used += 1
        return reading.rows

    def _reading(self, thing: ChartObject, shapes: Shapes) -> Reading:
        if thing.object_class == "DRGARE" and self._channels.cover(shapes.parts):
            return Reading(reason=tr("dredged bottom of a fairway already read"))
        if thing.object_class == "FAIRWY" and shapes.kind == "Polygon":
            self._channels.add(shapes.parts)
        if thing.object_class in LANDMARKS:
            return self._landmark(thing, shapes)
        return READERS[thing.object_class](thing, shapes, self._facts)

    def _landmark(self, thing: ChartObject, shapes: Shapes) -> Reading:
        reason = self._landmarks.why_not(thing)
        if reason:
            return Reading(reason=reason)
        reading = landmark_reading(thing, shapes, self._facts)
        if reading.rows:
            self._landmarks.add(thing)
        return reading


def objects_to_read(cell: ChartCell) -> Iterator[ChartObject]:
    """Every object of the cell of a class that a plan can use, fairways first."""
    for object_class in classes.READ_ORDER:
        yield from cell.objects(object_class)


def count_to_read(cell: ChartCell) -> int:
    """How many objects ``objects_to_read`` gives."""
    return sum(cell.count(object_class) for object_class in classes.READ_ORDER)


def unread_classes(cell: ChartCell) -> dict[str, int]:
    """The classes of the cell that no reader takes, with their counts."""
    left = (name for name in cell.object_classes if name not in READERS and name not in _LINKS_ONLY)
    return {name: cell.count(name) for name in sorted(left)}


def uncovered_share(cell: ChartCell, extent: QgsRectangle | None) -> float:
    """The share of the extent, 0 to 1, without chart data (M_COVR, CATCOV 1 is data); 0 without an extent."""
    if extent is None:
        return 0.0
    wanted = QgsGeometry.fromRect(extent)
    covers = [
        thing.geometry
        for thing in cell.objects(classes.COVERAGE)
        if thing.geometry is not None and 1 in thing.codes("CATCOV")
    ]
    if not covers:
        return 1.0
    return max(0.0, 1.0 - wanted.intersection(QgsGeometry.unaryUnion(covers)).area() / wanted.area())
