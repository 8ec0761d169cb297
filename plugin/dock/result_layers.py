"""The planned swim on the map: legs, track and flags in a group of their own under the plan's, marked as results.

They live in memory and go with the dock. A layer that the user takes out stays out until the plan is opened again.
"""

from __future__ import annotations

from qgis.core import (
    QgsLayerTreeGroup,
    QgsMemoryProviderUtils,
    QgsProject,
    QgsUnitTypes,
    QgsVectorLayer,
    QgsVectorLayerSimpleLabeling,
)

from ..core.results.swim_plan import SwimPlan
from ..layers_out.plan_layers import FLAGS, LEGS, TRACK, OutputLayer, output_crs
from ..layers_out.styling import STYLES
from .words import tr

PROPERTY = "tideleg/result"
MOST_WANTED = 10  # of the priorities of labels, 0 to 10
OVERRUN_MM = 20.0  # a label may be longer than its leg by this much
# The layer drawn on top first.
SHOWN: tuple[OutputLayer, ...] = (FLAGS, LEGS, TRACK)


class ResultLayers:
    """Shows one swim at a time in a project."""

    def __init__(self, project: QgsProject) -> None:
        self._project = project
        self._ids: dict[str, str] = {}
        self._shown: SwimPlan | None = None
        self.remove()

    def show(self, swim: SwimPlan | None, group: QgsLayerTreeGroup | None) -> None:
        """Draw this swim in place of the one before it; None draws nothing. Layers are made with the first swim."""
        if swim is self._shown or (swim is not None and self._shown is not None and swim.legs is self._shown.legs):
            self._shown = swim
            return
        if swim is not None and not self._ids and group is not None:
            self._make(group)
        for output in SHOWN:
            layer = self.layer(output.parameter)
            if layer is not None:
                _fill(layer, output, swim)
        self._shown = swim

    def layer(self, parameter: str) -> QgsVectorLayer | None:
        """The layer of ``LEGS``, ``TRACK`` or ``FLAGS``; None where there is none or the user took it out."""
        return self._project.mapLayer(self._ids.get(parameter, ""))

    def remove(self) -> None:
        """Take the results out of the project, those too that a project saved with them has brought back empty."""
        root = self._project.layerTreeRoot()
        ids = [one.id() for one in self._project.mapLayers().values() if one.customProperty(PROPERTY)]
        self._project.removeMapLayers(ids)
        for group in [one for one in root.findGroups(True) if one.customProperty(PROPERTY) and not one.children()]:
            group.parent().removeChildNode(group)
        self._ids.clear()
        self._shown = None

    def _make(self, group: QgsLayerTreeGroup) -> None:
        results = group.insertGroup(0, tr("Planned swim (result)"))
        results.setCustomProperty(PROPERTY, True)
        titles = {"FLAGS": tr("What to mind"), "LEGS": tr("Legs"), "TRACK": tr("Track swum")}
        for output in SHOWN:
            layer = QgsMemoryProviderUtils.createMemoryLayer(
                titles[output.parameter], output.fields(), output.wkb_type, output_crs()
            )
            layer.setCustomProperty(PROPERTY, True)
            layer.setCustomProperty("skipMemoryLayersCheck", True)  # QGIS need not warn that they will be lost
            STYLES[output.parameter](layer)
            _put_words_first(layer)
            layer.setReadOnly(True)
            self._project.addMapLayer(layer, False)
            results.addLayer(layer).setExpanded(False)
            self._ids[output.parameter] = layer.id()


def _put_words_first(layer: QgsVectorLayer) -> None:
    """Heading and minutes of a leg are what the map is looked at for: they go before the names of the chart."""
    if layer.labeling() is None:
        return
    settings = layer.labeling().settings()
    settings.priority = MOST_WANTED
    along = settings.lineSettings()
    along.setOverrunDistance(OVERRUN_MM)
    along.setOverrunDistanceUnit(QgsUnitTypes.RenderUnit.RenderMillimeters)
    settings.setLineSettings(along)
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))


def _fill(layer: QgsVectorLayer, output: OutputLayer, swim: SwimPlan | None) -> None:
    provider = layer.dataProvider()
    provider.truncate()
    if swim is not None:
        provider.addFeatures(output.features(swim))
    layer.updateExtents()
    layer.triggerRepaint()
