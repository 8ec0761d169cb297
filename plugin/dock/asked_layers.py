"""What was asked for with a button, on the map: layers in memory in a group of their own, gone with the dock."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from qgis.core import QgsLayerTreeGroup, QgsMemoryProviderUtils, QgsProject, QgsVectorLayer

from ..layers_out.plan_layers import OutputLayer, output_crs
from ..words import tr
from .saved_project import PROPERTY, forget_snapping, is_result, mark_result


@dataclass(frozen=True, kw_only=True)
class Drawing:
    """What a kind of answer is drawn with: ``outputs``, the one on top first, their titles and looks by parameter.

    ``below`` puts the group under the plan's own layers, else it lies above them.
    """

    title: str
    outputs: tuple[OutputLayer, ...]
    titles: Mapping[str, str]
    styles: Mapping[str, Callable[[QgsVectorLayer, Any], None]]
    below: bool = False


class AskedLayers:
    """Shows one answer at a time in a project. The layers are marked as the dock's results and removed with them."""

    def __init__(self, project: QgsProject, drawing: Drawing) -> None:
        self._project = project
        self._drawing = drawing
        self._ids: dict[str, str] = {}

    def show(self, result: Any, group: QgsLayerTreeGroup | None) -> None:
        """Draw an answer in place of the one before it, under the plan's group; a layer that the user has taken out
        comes back with a new answer."""
        self.remove()
        if group is None:
            return
        drawing = self._drawing
        mine = group.insertGroup(-1 if drawing.below else 0, drawing.title)
        mine.setCustomProperty(PROPERTY, True)
        for output in drawing.outputs:
            title = drawing.titles[output.parameter]
            layer = QgsMemoryProviderUtils.createMemoryLayer(title, output.fields(), output.wkb_type, output_crs())
            mark_result(layer)
            layer.dataProvider().addFeatures(output.features(result))
            layer.updateExtents()
            drawing.styles[output.parameter](layer, result)
            layer.setReadOnly(True)
            self._project.addMapLayer(layer, False)
            mine.addLayer(layer)
            self._ids[output.parameter] = layer.id()

    def grow_old(self) -> None:
        """Say in the layers' names that the plan has changed since."""
        for parameter in self._ids:
            layer = self.layer(parameter)
            if layer is not None:
                layer.setName(tr("{} - before the last change").format(self._drawing.titles[parameter]))

    def layer(self, parameter: str) -> QgsVectorLayer | None:
        """One of the layers; None where there is none, or the user took it out or made it permanent."""
        layer = self._project.mapLayer(self._ids.get(parameter, ""))
        return layer if layer is not None and is_result(layer) else None

    def remove(self) -> None:
        """Take the answer off the map; a group is only removed while nobody has put anything else into it."""
        root = self._project.layerTreeRoot()
        nodes = (root.findLayer(one) for one in self._ids.values())
        groups = {id(node.parent()): node.parent() for node in nodes if node is not None}
        found = [layer for one in self._ids if (layer := self.layer(one)) is not None]
        forget_snapping(self._project, found)
        self._project.removeMapLayers([layer.id() for layer in found])
        for group in groups.values():
            if group.customProperty(PROPERTY) and not group.children():
                group.parent().removeChildNode(group)
        self._ids.clear()
