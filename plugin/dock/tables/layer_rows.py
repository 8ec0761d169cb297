"""The rows of a plan's table as its layer's edit buffer holds them, and changes to them as single steps to undo.

Nothing here saves or throws away an edit session. A change begins one, as QGIS's pencil does; who changes what is told
by the layer's own signals, whoever did it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from datetime import datetime
from pathlib import Path
from typing import Any

from qgis.core import NULL, QgsFeature, QgsFeatureRequest, QgsProject, QgsVectorLayer
from qgis.PyQt.QtCore import QDate, QDateTime, QObject, Qt, QTime, QVariant, pyqtSignal

from ...core.clock import UTC
from ...core.errors import BadInputError, SwimPlanError
from ...layers_in.moments import utc_moment
from ...plan_package.field_spec import FieldSpec, LayerSpec
from ...words import tr

Values = dict[str, Any]


def stored_order(fid: int) -> tuple[bool, int]:
    """Sorts ids as the plan reads its rows: those of the file, then those not saved yet, the first made first."""
    return (fid < 0, abs(fid))


class LayerRows(QObject):
    """``changed`` gives the ids of rows that were changed, added or deleted; none of them where all must be read anew.
    ``state_changed``: what can be undone or must be saved; ``gone``: the layer leaves the project."""

    changed = pyqtSignal(object)
    state_changed = pyqtSignal()
    gone = pyqtSignal()

    def __init__(self, layer: QgsVectorLayer, spec: LayerSpec, project: QgsProject, parent: QObject) -> None:
        super().__init__(parent)
        self.spec = spec
        self.began_editing = False
        self._project = project
        self._layer_id = layer.id()
        self._places = {field.name: layer.fields().lookupField(field.name) for field in spec.fields}
        self._connections = [
            (layer, layer.attributeValueChanged.connect(lambda fid, *_: self.changed.emit([fid]))),
            (layer, layer.featureAdded.connect(lambda fid: self.changed.emit([fid]))),
            (layer, layer.featureDeleted.connect(lambda fid: self.changed.emit([fid]))),
            *((layer, signal.connect(self._state)) for signal in (layer.layerModified, layer.editingStarted)),
            (layer, layer.editingStopped.connect(self._stopped)),
            *(
                (layer, signal.connect(lambda *_: self.changed.emit(None)))
                for signal in (layer.afterCommitChanges, layer.afterRollBack, layer.dataSourceChanged)
            ),
            (layer, layer.subsetStringChanged.connect(lambda *_: self.changed.emit(None))),
            (layer.undoStack(), layer.undoStack().indexChanged.connect(self._state)),
        ]
        project.layersWillBeRemoved.connect(self._removed)

    def release(self) -> None:
        """Let go of the layer; what was edited stays in its buffer."""
        self._project.layersWillBeRemoved.disconnect(self._removed)
        if self.layer is not None:
            for source, connection in self._connections:
                source.disconnect(connection)
        self._connections.clear()

    @property
    def layer(self) -> QgsVectorLayer | None:
        """The layer, looked up each time; None where it is gone."""
        return self._project.mapLayer(self._layer_id)

    @property
    def missing_fields(self) -> list[str]:
        """Fields of the schema that the layer lacks, as plans of older versions may."""
        return [name for name, place in self._places.items() if place < 0]

    @property
    def path(self) -> str:
        """The plan's file."""
        return self.layer.source().split("|")[0]

    def stamp(self) -> tuple:
        """Changes whenever something is written to the file, by whom ever."""
        files = (Path(self.path), Path(f"{self.path}-wal"))
        return tuple((one.stat().st_mtime_ns, one.stat().st_size) for one in files if one.exists())

    def read(self, fids: Iterable[int] | None = None) -> dict[int, Values]:
        """The values of these rows, or of all, by id and field: str, int, float, aware moments, None.

        A moment that cannot be read stays as its text.
        """
        request = QgsFeatureRequest()
        if fids is not None:
            request.setFilterFids(list(fids))
        request.setFlags(QgsFeatureRequest.Flag.NoGeometry)
        fields = [(field, self._places[field.name]) for field in self.spec.fields]
        found = {}
        for feature in self.layer.getFeatures(request):
            raw = feature.attributes()
            found[feature.id()] = {
                field.name: _value(field, raw[place]) if place >= 0 else None for field, place in fields
            }
        return dict(sorted(found.items(), key=lambda one: stored_order(one[0])))

    def write(self, words: str, changes: Mapping[int, Values], added: Iterable[Values] = ()) -> list[int]:
        """Change and add rows as one step to undo, all or nothing; returns the ids of what was added. SwimPlanError."""
        made: list[int] = []

        def change(layer: QgsVectorLayer) -> bool:
            for fid, values in changes.items():
                for name, value in values.items():
                    if not layer.changeAttributeValue(fid, self._places[name], _stored(value)):
                        return False
            for values in added:
                feature = QgsFeature(layer.fields())
                for name, value in values.items():
                    feature.setAttribute(self._places[name], _stored(value))
                if not layer.addFeature(feature):
                    return False
                made.append(feature.id())
            return True

        self._as_one_step(words, change)
        return made

    def delete(self, words: str, fids: Iterable[int]) -> None:
        """Delete rows as one step to undo. SwimPlanError."""
        self._as_one_step(words, lambda layer: layer.deleteFeatures(list(fids)))

    def _as_one_step(self, words: str, change: Callable[[QgsVectorLayer], bool]) -> None:
        layer = self.layer
        if not layer.isEditable():
            self.began_editing = not layer.readOnly() and layer.startEditing()
        done = layer.isEditable()
        if done:
            layer.beginEditCommand(words)
            done = change(layer)
            layer.endEditCommand() if done else layer.destroyEditCommand()
        if not done:
            raise SwimPlanError(
                asked=tr("The layer '{}' does not let itself be edited").format(layer.name()),
                allowed=tr("Its file must be writable, and the layer not read-only"),
                remedy=tr("Check the file's permissions and the layer's properties"),
            )

    def save(self) -> list[str]:
        """Save the edits of this layer; what went wrong, in QGIS's words, with the edits kept. An edit session that
        began here ends with it, one that the user began goes on."""
        layer = self.layer
        if layer.commitChanges(self.began_editing):
            self.began_editing = self.began_editing and layer.isEditable()
            return []
        return layer.commitErrors() or [tr("QGIS gave no reason.")]

    def _stopped(self) -> None:
        self.began_editing = False
        self._state()

    def _state(self, *_: object) -> None:
        self.state_changed.emit()

    def _removed(self, ids: list[str]) -> None:
        if self._layer_id in ids:
            self.gone.emit()


def _value(field: FieldSpec, raw: object) -> object:
    if raw is None or (isinstance(raw, (QVariant, QDateTime)) and raw.isNull()):
        return None
    if field.kind != "datetime":
        return raw
    try:
        return utc_moment(raw, layer=field.name, row=None, field=field.name)
    except BadInputError:
        return raw.toString(Qt.DateFormat.ISODate) if isinstance(raw, QDateTime) else str(raw)


def _stored(value: object) -> object:
    """A value as the layer takes it; moments in UTC, so that no zone of this machine moves them."""
    if value is None:
        return NULL
    if not isinstance(value, datetime):
        return value
    utc = value.astimezone(UTC)
    clock = QTime(utc.hour, utc.minute, utc.second, utc.microsecond // 1000)
    return QDateTime(QDate(utc.year, utc.month, utc.day), clock, Qt.TimeSpec.UTC)
