"""The layers of one plan in a project: found by what they read, kept by id, watched for every edit."""

from __future__ import annotations

from pathlib import Path

from qgis.core import QgsLayerTreeGroup, QgsProject, QgsProviderRegistry, QgsVectorLayer
from qgis.PyQt.QtCore import QMetaObject, QObject, pyqtSignal

from ..core.errors import SwimPlanError
from ..layers_in.copied_source import CopiedSource, RowsMissingError
from ..plan_package.database import patience, row_count
from ..plan_package.schema import LAYER_BY_NAME
from ..plan_package.store import open_layer
from ..words import tr
from .stray_rows import stray_rows

WATCHED = ("layerModified", "afterRollBack", "afterCommitChanges", "dataSourceChanged", "subsetStringChanged")
PATIENCE_S = 0.3  # that the window waits for another program which writes to the file
TRIES = 3  # to read a layer whose file was taken from under it


def read_by(layer: object) -> tuple[Path, str, str] | None:
    """The plan's file, the name of its layer and the kind of geometry asked for, where a layer reads a plan."""
    if not isinstance(layer, QgsVectorLayer) or layer.providerType() != "ogr":
        return None
    parts = QgsProviderRegistry.instance().decodeUri("ogr", layer.source())
    path, name = parts.get("path") or "", parts.get("layerName") or ""
    if not path.lower().endswith(".gpkg") or name not in LAYER_BY_NAME:
        return None
    return Path(path).resolve(), name, parts.get("geometryType") or ""


def plans_in(project: QgsProject) -> list[Path]:
    """The files whose routes are in the project, in the order of the layer tree."""
    found = [read_by(node.layer()) for node in project.layerTreeRoot().findLayers()]
    return list(dict.fromkeys(one[0] for one in found if one and one[1] == "routes"))


def _stamp(path: Path) -> tuple:
    """Changes whenever something is written to the file or to its journal."""
    files = [one for one in (path, path.with_name(f"{path.name}-wal")) if one.exists()]
    return tuple((one.name, one.stat().st_ino, one.stat().st_mtime_ns, one.stat().st_size) for one in files)


def _file_id(path: Path) -> int:
    """Tells one file from another that has taken its name; 0 where there is none, or nothing to tell it by."""
    return path.stat().st_ino if path.exists() else 0


class PlanInProject(QObject):
    """One plan's layers in a project. ``changed`` names the plan's layer; ``gone`` says that the last was removed.

    ``stamp`` is another whenever the file was written to before the last copies, ``times_replaced`` counts how often
    another file has taken its name.
    """

    changed = pyqtSignal(str)
    gone = pyqtSignal()

    def __init__(self, path: Path, project: QgsProject, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.path = path.resolve()
        self._project = project
        self._copies: dict[str, CopiedSource] = {}
        self._stored: dict[str, int] = {}  # rows in the file as it stood at the last copies
        self.stamp: tuple = ()
        self.times_replaced = 0
        self._file_id = _file_id(self.path)
        self._names: dict[str, tuple[str, str]] = {}
        self._connections: list[tuple[str, QMetaObject.Connection]] = []
        for layer in project.mapLayers().values():
            self._take(layer)
        project.layersAdded.connect(self._added)
        project.layersRemoved.connect(self._removed)

    def close(self) -> None:
        """Stop watching; layers and edits are left as they are."""
        self._project.layersAdded.disconnect(self._added)
        self._project.layersRemoved.disconnect(self._removed)
        for layer_id, connection in self._connections:
            layer = self._project.mapLayer(layer_id)
            if layer is not None:
                layer.disconnect(connection)
        self._connections.clear()
        self._copies.clear()

    @property
    def is_there(self) -> bool:
        """Whether any of the plan's layers is in the project."""
        return bool(self._names)

    def layer(self, name: str) -> QgsVectorLayer | None:
        """The first layer that shows this one of the plan's; None where the user has taken it out."""
        return next(iter(self._layers(name)), None)

    def group(self) -> QgsLayerTreeGroup | None:
        """The group that holds the plan's routes or, without them, the first of its layers."""
        root = self._project.layerTreeRoot()
        routes = self.layer("routes")
        ids = ([routes.id()] if routes is not None else []) + list(self._names)
        nodes = (root.findLayer(one) for one in ids)
        node = next((node for node in nodes if node is not None), None)
        return node.parent() if node is not None else None

    def copies(self) -> dict[str, CopiedSource]:
        """A copy of each of the plan's layers that is in the project; only what has changed is copied again, and the
        same object comes as long as the rows are the same.

        SwimPlanError where the file is gone, another program holds it, or a layer does not give all of its rows.
        """
        with patience(PATIENCE_S):
            for _ in range(TRIES - 1):
                try:
                    return self._copies_now()
                except RowsMissingError:
                    # A journal goes with the last reader of a file that had this name before: what was opened
                    # meanwhile reads nothing until it is opened once more.
                    if any(layer.isModified() for layer in self._known()):
                        raise
                    self._open_anew()
            return self._copies_now()

    def _copies_now(self) -> dict[str, CopiedSource]:
        stamp, before = _stamp(self.path), {}
        self._follow_file()
        if stamp != self.stamp:
            # Written to beside the layers, as by the algorithms that read tables into a plan; or an edit was begun,
            # which stamps the file too.
            self._copies, self._stored, before = {}, {}, self._copies
        for name in {name for name, _ in self._names.values()} - self._copies.keys():
            layers = self._whole(name)
            strays = stray_rows(self.path, name, layers)
            copy = CopiedSource(layers, self._least(name, layers), strays)
            self._copies[name] = before[name] if name in before and copy.holds_the_same(before[name]) else copy
        self.stamp = stamp
        return dict(self._copies)

    def _follow_file(self) -> None:
        """Another file has taken the plan's name: the layers still read the one before, so they are opened anew."""
        now = _file_id(self.path)
        if not now or now == self._file_id:
            return
        edited = [layer.name() for layer in self._known() if layer.isModified()]
        if edited:
            raise SwimPlanError(
                asked=tr("Another file has taken the plan's place, and edits are not saved: {}").format(
                    ", ".join(edited)
                ),
                allowed=tr("They belong to the file before, and saving them would lose them with it"),
                remedy=tr("Copy the rows that you need, roll the edits back in QGIS, and paste them into the new file"),
            )
        self._open_anew()
        self._file_id = now
        self.times_replaced += 1

    def _open_anew(self) -> None:
        for layer in self._known():
            layer.dataProvider().reloadData()
            layer.triggerRepaint()

    def _known(self) -> list[QgsVectorLayer]:
        return [layer for layer in map(self._project.mapLayer, self._names) if layer is not None]

    def _least(self, name: str, layers: list[QgsVectorLayer]) -> int:
        """How many rows there must be: those stored, with what the user has drawn and deleted since."""
        if any(layer.subsetString() for layer in layers):
            return 0
        buffers = [layer.editBuffer() for layer in layers if layer.editBuffer() is not None]
        drawn = sum(len(buffer.addedFeatures()) - len(buffer.deletedFeatureIds()) for buffer in buffers)
        if name not in self._stored:
            self._stored[name] = row_count(self.path, name)
        return self._stored[name] + drawn

    def filtered(self) -> list[str]:
        """Names of the layers whose filter hides rows from the map, and so from the plan."""
        return [layer.name() for layer in self._known() if layer.subsetString()]

    def _whole(self, name: str) -> list[QgsVectorLayer]:
        """The layers that hold all of one of the plan's: a part that the user took out is read from the file."""
        layers = self._layers(name)
        parts = {part for _, part in (self._names[layer.id()] for layer in layers)}
        if "" in parts:
            return [layer for layer in layers if not self._names[layer.id()][1]][:1]
        missing = set(LAYER_BY_NAME[name].geometry_types) - parts
        shown = {self._names[layer.id()][1]: layer for layer in reversed(layers)}
        return [*shown.values(), *(open_layer(self.path, name, geometry_type=part) for part in sorted(missing))]

    def _layers(self, name: str) -> list[QgsVectorLayer]:
        ids = [layer_id for layer_id, (known, _) in self._names.items() if known == name]
        layers = [self._project.mapLayer(layer_id) for layer_id in ids]
        return [layer for layer in layers if layer is not None and layer.isValid()]

    def _take(self, layer: object) -> bool:
        read = read_by(layer)
        if read is None or read[0] != self.path:
            return False
        self._names[layer.id()] = read[1:]
        for signal in WATCHED:
            changed = getattr(layer, signal).connect(lambda *_, name=read[1]: self._edited(name))
            self._connections.append((layer.id(), changed))
        self._copies.pop(read[1], None)
        return True

    def _edited(self, name: str) -> None:
        self._copies.pop(name, None)
        self.changed.emit(name)

    def _added(self, layers: list) -> None:
        for layer in layers:
            if layer.id() not in self._names and self._take(layer):
                self.changed.emit(read_by(layer)[1])

    def _removed(self, ids: list[str]) -> None:
        ours = [self._names.pop(one)[0] for one in ids if one in self._names]
        self._connections = [kept for kept in self._connections if kept[0] not in ids]
        for name in ours:
            self._copies.pop(name, None)
        if ours and not self._names:
            self.gone.emit()
        elif ours:
            self.changed.emit(ours[0])
