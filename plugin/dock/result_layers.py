"""The planned swim on the map: legs, track, flags and what can be played, in a group of their own under the plan's.

They are marked as results, live in memory and go with the dock. A layer that the user takes out stays out until the
plan is opened again.
"""

from __future__ import annotations

from collections.abc import Callable

from qgis.core import QgsLayerTreeGroup, QgsMemoryProviderUtils, QgsProject, QgsVectorLayer

from ..core.results.swim_in_time import SwimInTime
from ..core.results.swim_plan import SwimPlan
from ..layers_out.plan_layers import FLAGS, LEGS, TRACK, OutputLayer, output_crs
from ..layers_out.styling import STYLES
from ..layers_out.time_layers import STREAM_ALONG, STREAM_AROUND, SWIMMER
from ..layers_out.time_styles import TIME_STYLES
from ..words import tr
from .saved_project import PROPERTY, is_result, mark_result, remove_results

PLANNED: tuple[OutputLayer, ...] = (FLAGS, LEGS, TRACK)
IN_TIME: tuple[OutputLayer, ...] = (SWIMMER, STREAM_ALONG, STREAM_AROUND)
# The layer drawn on top first.
SHOWN: tuple[OutputLayer, ...] = (FLAGS, SWIMMER, STREAM_ALONG, LEGS, TRACK, STREAM_AROUND)


class ResultLayers:
    """Shows one swim at a time in a project."""

    def __init__(self, project: QgsProject) -> None:
        self._project = project
        self._ids: dict[str, str] = {}
        self._shown: SwimPlan | None = None
        self._in_time: SwimInTime | None = None
        self.remove()

    def show(self, swim: SwimPlan | None, group: QgsLayerTreeGroup | None) -> None:
        """Draw this swim in place of the one before it; None draws nothing. Layers are made with the first swim."""
        is_new = not self._ids and swim is not None and group is not None
        before, self._shown = self._shown, swim
        if is_new:
            self._make(group)
            self._fill(IN_TIME, self._in_time)  # which may have come before there was anything to draw it in
        elif swim is before or (swim is not None and before is not None and swim.legs is before.legs):
            return
        self._fill(PLANNED, swim)

    def show_in_time(self, swim: SwimInTime | None) -> None:
        """Give the layers that are played this swim, also those made later; None empties them."""
        self._in_time = swim
        self._fill(IN_TIME, swim)

    def layer(self, parameter: str) -> QgsVectorLayer | None:
        """The layer of one of ``SHOWN`` by its parameter; None where there is none, or the user took it out or made it
        permanent: then it is the user's, and nothing is written to it any more."""
        layer = self._project.mapLayer(self._ids.get(parameter, ""))
        return layer if layer is not None and is_result(layer) else None

    def remove(self) -> None:
        """Take the results out of the project, those too that a project saved with them has brought back empty."""
        remove_results(self._project)
        self._ids.clear()
        self._shown = None

    def _make(self, group: QgsLayerTreeGroup) -> None:
        results = group.insertGroup(0, tr("Planned swim (result)"))
        results.setCustomProperty(PROPERTY, True)
        for output in SHOWN:
            layer = _made(output)
            self._project.addMapLayer(layer, False)
            results.addLayer(layer).setExpanded(False)
            self._ids[output.parameter] = layer.id()

    def _fill(self, outputs: tuple[OutputLayer, ...], result: SwimPlan | SwimInTime | None) -> None:
        for output in outputs:
            layer = self.layer(output.parameter)
            if layer is not None:
                _fill_one(layer, output, result)


def _title(output: OutputLayer) -> str:
    return {
        "FLAGS": tr("What to mind"),
        "SWIMMER": tr("Swimmer"),
        "STREAM_ALONG": tr("Stream on the way"),
        "LEGS": tr("Legs (ruler lines)"),
        "TRACK": tr("Track swum"),
        "STREAM_AROUND": tr("Stream around"),
    }[output.parameter]


def _made(output: OutputLayer) -> QgsVectorLayer:
    layer = QgsMemoryProviderUtils.createMemoryLayer(_title(output), output.fields(), output.wkb_type, output_crs())
    mark_result(layer)
    styles: dict[str, Callable[[QgsVectorLayer], None]] = {**STYLES, **TIME_STYLES}
    styles[output.parameter](layer)
    if output is TRACK:
        layer.temporalProperties().setIsActive(False)  # the whole track stays in sight while the swimmer goes along it
    layer.setReadOnly(True)
    return layer


def _fill_one(layer: QgsVectorLayer, output: OutputLayer, result: SwimPlan | SwimInTime | None) -> None:
    provider = layer.dataProvider()
    provider.truncate()
    if result is not None:
        provider.addFeatures(output.features(result))
    layer.updateExtents()
    layer.triggerRepaint()
