"""Asks for a drawn row's values in a form that leaves the window free, and adds the row once it is filled in."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from qgis.core import QgsGeometry, QgsVectorLayer
from qgis.gui import QgsMapCanvas
from qgis.PyQt import sip
from qgis.PyQt.QtCore import Qt

from .edits import add_row
from .row_form import RowAsked, RowForm


class RowAdding:
    """One form at a time. ``added`` is called with the row's name, ``given_up`` where the form is cancelled.

    What QGIS refuses raises SwimPlanError within ``guard``.
    """

    def __init__(self, canvas: QgsMapCanvas, guard: Callable[[Callable[[], None]], None]) -> None:
        self._canvas = canvas
        self._guard = guard
        self._form: RowForm | None = None

    @property
    def form(self) -> RowForm | None:
        """The form that is open."""
        return None if self._form is None or sip.isdeleted(self._form) else self._form

    def ask(
        self,
        layer: QgsVectorLayer,
        geometry: QgsGeometry,
        asked: RowAsked,
        about: Sequence[str],
        added: Callable[[str], None],
        given_up: Callable[[], None],
    ) -> None:
        """Open the form for a row of this layer."""
        form = self._form = RowForm(layer, geometry, asked, about, self._canvas.window())
        layer_gone = lambda: form.reject()  # noqa: E731  the same object is disconnected
        layer.willBeDeleted.connect(layer_gone)

        def closed(code: int) -> None:
            self._form = None
            self._canvas.setFocus()  # the tool's keys go on, Esc among them
            if not sip.isdeleted(layer):
                layer.willBeDeleted.disconnect(layer_gone)
            if code != RowForm.DialogCode.Accepted:
                given_up()
                return

            def add() -> None:
                add_row(layer, form.feature, asked.words)
                name = form.feature[asked.named]
                added(name if isinstance(name, str) else "")

            self._guard(add)

        form.finished.connect(closed)
        form.setWindowModality(Qt.WindowModality.WindowModal)
        form.open()

    def close(self) -> None:
        """Close the form; nothing is added."""
        if self.form is not None:
            self.form.reject()
