"""Undo, redo and save for the layers that a section of the dock has edited, through QGIS's own edit buffers."""

from __future__ import annotations

from qgis.core import QgsProject, QgsVectorLayer
from qgis.PyQt.QtCore import QObject, pyqtSignal
from qgis.PyQt.QtWidgets import QPushButton

from ..words import tr


class EditSteps(QObject):
    """Undo and redo work on the layer edited last, saving on all of them. Who owns it lays the buttons out.

    ``said``: words on what was done; ``refused``: why something was not saved; ``stepped``: after each of the three.
    """

    said = pyqtSignal(str)
    refused = pyqtSignal(str)
    stepped = pyqtSignal()

    def __init__(self, project: QgsProject, save_words: str, parent: QObject) -> None:
        super().__init__(parent)
        self._project = project
        self._last = ""  # the layer that was edited last, by its id
        self._edited: list[str] = []
        self.undo, self.redo = QPushButton(tr("Undo")), QPushButton(tr("Redo"))
        self.save = QPushButton(save_words)
        for button in (self.undo, self.redo, self.save):
            button.setAutoDefault(False)
        self.undo.clicked.connect(lambda: self.step(False))
        self.redo.clicked.connect(lambda: self.step(True))
        self.save.clicked.connect(self._save)

    def drawn(self, layer: QgsVectorLayer | None) -> None:
        """A layer was edited."""
        self._last = layer.id() if layer is not None else ""
        self._edited = list(dict.fromkeys([*self._edited, *filter(None, [self._last])]))

    def forget(self) -> None:
        """Another plan: nothing of it was edited yet."""
        self._last, self._edited = "", []

    def show(self) -> None:
        """Show what can be undone, redone and saved."""
        unsaved = [layer.name() for layer in self._unsaved()]
        self.save.setVisible(bool(unsaved))
        self.save.setToolTip(tr("Save the edits of: {}").format(", ".join(unsaved)) if unsaved else "")
        layer = self._layer()
        stack = layer.undoStack() if layer is not None else None
        for button, can, words, tip in (
            (self.undo, stack is not None and stack.canUndo(), stack and stack.undoText(), tr("Undo in '{}': {}")),
            (self.redo, stack is not None and stack.canRedo(), stack and stack.redoText(), tr("Redo in '{}': {}")),
        ):
            button.setVisible(stack is not None)
            button.setEnabled(can)
            button.setToolTip(tip.format(layer.name(), words) if can else "")

    def step(self, again: bool) -> None:
        """Undo, or redo, in the layer that was edited last."""
        layer = self._layer()
        if layer is not None:
            stack = layer.undoStack()
            stack.redo() if again else stack.undo()
            layer.triggerRepaint()
            self.said.emit("")
        self.stepped.emit()

    def _layer(self) -> QgsVectorLayer | None:
        layer = self._project.mapLayer(self._last) if self._last else None
        return layer if layer is not None and layer.isEditable() else None

    def _unsaved(self) -> list[QgsVectorLayer]:
        """The layers edited whose edits are not saved."""
        layers = map(self._project.mapLayer, self._edited)
        return [layer for layer in layers if layer is not None and layer.isModified()]

    def _save(self) -> None:
        """Save the edits of the layers that were edited, as QGIS does; one goes on editing."""
        saved, refused = [], []
        for layer in self._unsaved():
            if layer.commitChanges(False):
                saved.append(layer.name())
            else:
                refused.append(tr("'{}' was not saved: {}").format(layer.name(), " ".join(layer.commitErrors())))
        self.said.emit(tr("Saved: {}.").format(", ".join(saved)) if saved else "")
        self.refused.emit(" ".join(refused))
        self.stepped.emit()
