"""The dock's results and the project's file: they are never saved with it, and those of older files go when it is read.

They live in memory and are made anew from the plan. Saved, they would come back as empty layers in an empty group,
also where the dock is closed. Needs nothing of the dock, so that it costs nothing to load while that is closed.
"""

from __future__ import annotations

from collections.abc import Sequence

from qgis.core import QgsMapLayer, QgsProject
from qgis.PyQt.QtXml import QDomDocument, QDomElement

PROPERTY = "tideleg/result"
OLD_MARKS = (True, "true")  # of results in projects that were saved with them
UNCHECKED = "skipMemoryLayersCheck"  # QGIS need not warn that they will be lost
LEFT_OUT = "tideleg-result"  # what stands in a project's file in the place of a layer; QGIS reads no such element


class SavedProject:
    """Keeps results out of a project's file, from now until ``release``."""

    def __init__(self, project: QgsProject) -> None:
        self._project = project
        project.writeProject.connect(self._write_project)
        project.writeMapLayer.connect(self._write_layer)
        project.readProject.connect(self._read)
        project.layersAdded.connect(self._added)

    def release(self) -> None:
        """Let go of the project."""
        self._project.writeProject.disconnect(self._write_project)
        self._project.writeMapLayer.disconnect(self._write_layer)
        self._project.readProject.disconnect(self._read)
        self._project.layersAdded.disconnect(self._added)

    def _write_project(self, document: QDomDocument) -> None:
        """The tree of the layers stands in the document by now, the layers come later."""
        ids = {one.id() for one in self._project.mapLayers().values() if is_result(one)}
        if ids:
            _without(document.documentElement(), ids)

    def _write_layer(self, layer: QgsMapLayer, element: QDomElement, _document: QDomDocument) -> None:
        if is_result(layer):
            while element.hasChildNodes():
                element.removeChild(element.firstChild())
            element.setTagName(LEFT_OUT)

    def _read(self, *_: object) -> None:
        remove_results(self._project)

    def _added(self, layers: list[QgsMapLayer]) -> None:
        """A copy of a result is the user's: QGIS warns before it is lost, and it may be edited."""
        for layer in layers:
            if layer.customProperty(PROPERTY) and layer.providerType() == "memory" and not is_result(layer):
                layer.removeCustomProperty(PROPERTY)
                layer.removeCustomProperty(UNCHECKED)
                layer.setReadOnly(False)


def mark_result(layer: QgsMapLayer) -> None:
    """A result from now on. The mark is the layer's own id, which a copy of it does not have."""
    layer.setCustomProperty(PROPERTY, layer.id())
    layer.setCustomProperty(UNCHECKED, True)


def is_result(layer: QgsMapLayer) -> bool:
    """Whether a layer is one of the dock's results; one that the user has copied or made permanent is the user's."""
    return layer.customProperty(PROPERTY) in (layer.id(), *OLD_MARKS) and layer.providerType() == "memory"


def remove_results(project: QgsProject) -> None:
    """Take all results out of a project, and their groups where nobody has put anything else into them."""
    found = [one for one in project.mapLayers().values() if is_result(one)]
    forget_snapping(project, found)
    project.removeMapLayers([one.id() for one in found])
    groups = [one for one in project.layerTreeRoot().findGroups(True) if one.customProperty(PROPERTY)]
    for group in groups:
        if not group.children():
            group.parent().removeChildNode(group)


def forget_snapping(project: QgsProject, layers: Sequence[QgsMapLayer]) -> None:
    """Take layers out of the project's snapping before they go: of those taken out while a project is being read QGIS
    keeps the pointer, and crashes when it saves the project (tried in 3.22)."""
    config = project.snappingConfig()
    if layers and config.removeLayers(list(layers)):
        project.setSnappingConfig(config)


def _without(element: QDomElement, ids: set[str]) -> None:
    """Take what stands for these layers out of an element, all the way down, and groups of results that it empties."""
    child = element.firstChildElement()
    while not child.isNull():
        following = child.nextSiblingElement()
        _without(child, ids)
        names_one = child.attribute("id") in ids or (child.tagName() == "item" and child.text() in ids)
        if names_one or _is_empty_group(child):
            element.removeChild(child)
        child = following


def _is_empty_group(element: QDomElement) -> bool:
    """Whether it is a group of results in the tree with nothing in it."""
    if element.tagName() != "layer-tree-group":
        return False
    names = ("layer-tree-layer", "layer-tree-group")
    return _is_marked(element) and all(element.firstChildElement(name).isNull() for name in names)


def _is_marked(group: QDomElement) -> bool:
    """Whether a group of the tree carries the mark of results."""
    properties = group.firstChildElement("customproperties")
    option = properties.firstChildElement("Option").firstChildElement("Option")
    while not option.isNull():
        if option.attribute("name") == PROPERTY:
            return True
        option = option.nextSiblingElement("Option")
    return False
