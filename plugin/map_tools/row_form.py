"""A small form for a row that has just been drawn: some of the layer's fields, with its own widgets and defaults."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field

from qgis.core import QgsApplication, QgsFeature, QgsGeometry, QgsVectorLayer, QgsVectorLayerUtils
from qgis.gui import QgsEditorWidgetWrapper, QgsFilterLineEdit, QgsGui
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtWidgets import (
    QComboBox,
    QCompleter,
    QDialog,
    QDialogButtonBox,
    QDoubleSpinBox,
    QFormLayout,
    QLabel,
    QPlainTextEdit,
    QVBoxLayout,
    QWidget,
)

from ..core.errors import BadInputError, SwimPlanError
from ..plan_package.field_spec import FieldSpec, LayerSpec
from ..plan_package.row_check import checked_value
from ..plan_package.schema import LAYER_BY_NAME
from ..plan_package.words import schema_words
from ..words import tr

FEWEST_DECIMALS = 1  # minutes, metres and knots of what is drawn: more than that nobody means by hand


@dataclass(frozen=True, kw_only=True)
class RowAsked:
    """What a form asks for: the plan's layer by its name, the fields to fill, values to begin with, fields that must be
    filled besides those of the schema, and names that are taken. ``words`` names the step of undo.

    ``named`` is the field that names the row. ``choices`` are names of which a field takes one, ``suggested`` those it
    may take. ``only_for`` says for which values of the field ``switch`` a field is asked for: else it stays empty.
    ``check`` raises SwimPlanError for values that do not go together. ``decimals`` are those of knots, metres and
    ratios.
    """

    layer: str
    title: str
    words: str
    fields: tuple[str, ...]
    values: Mapping[str, object] = field(default_factory=dict)
    needed: tuple[str, ...] = ()
    taken: frozenset[str] = frozenset()
    named: str = "name"
    choices: Mapping[str, Sequence[str]] = field(default_factory=dict)
    suggested: Mapping[str, Sequence[str]] = field(default_factory=dict)
    switch: str = ""
    only_for: Mapping[str, frozenset[str]] = field(default_factory=dict)
    decimals: int = FEWEST_DECIMALS
    check: Callable[[Mapping[str, object]], None] = lambda _values: None

    @property
    def spec(self) -> LayerSpec:
        """The schema of the layer."""
        return LAYER_BY_NAME[self.layer]


def names_in(layer: QgsVectorLayer, named: str = "name") -> frozenset[str]:
    """The names that stand in a field of a layer, saved or not."""
    index = layer.fields().indexOf(named)
    return frozenset(name for row in layer.getFeatures() if isinstance(name := row.attribute(index), str))


def free_name(word: str, taken: frozenset[str]) -> str:
    """The word with the first number that no row has yet."""
    return next(name for name in (f"{word} {number}" for number in range(1, len(taken) + 2)) if name not in taken)


class RowForm(QDialog):
    """``feature`` is the row with what was filled in, once the form is accepted."""

    def __init__(
        self, layer: QgsVectorLayer, geometry: QgsGeometry, asked: RowAsked, about: Sequence[str], parent: QWidget
    ) -> None:
        super().__init__(parent)
        self.setObjectName("TidelegRowForm")
        self.setWindowTitle(asked.title)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.asked = asked
        self.feature = self._begun(layer, geometry)
        self.wrappers: dict[str, QgsEditorWidgetWrapper] = {}
        self.labels: dict[str, QLabel] = {}
        self.problem = _plain_label("")
        self.buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel)
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        whole = QVBoxLayout(self)
        if about:
            whole.addWidget(_plain_label("\n".join(about)))
        self.form = QFormLayout()
        whole.addLayout(self.form)
        for name in asked.fields:
            self._add_field(layer, name)
        whole.addWidget(self.problem)
        whole.addWidget(self.buttons)
        self.problem.hide()
        if asked.switch:
            self.wrappers[asked.switch].valuesChanged.connect(self.show_asked)
            self.show_asked()
        self.wrappers[asked.fields[0]].widget().setFocus()

    def _begun(self, layer: QgsVectorLayer, geometry: QgsGeometry) -> QgsFeature:
        """A row with the layer's own defaults, under the values asked for."""
        given = {layer.fields().indexOf(name): value for name, value in self.asked.values.items()}
        return QgsVectorLayerUtils.createFeature(layer, geometry, given)

    def _add_field(self, layer: QgsVectorLayer, name: str) -> None:
        index = layer.fields().indexOf(name)
        spec = self.asked.spec.field(name)
        wrapper = self._wrapper(layer, index, name)
        widget = wrapper.widget()
        title = layer.attributeDisplayName(index)
        label = QLabel(title)
        label.setBuddy(widget)
        for one in (label, widget):
            one.setToolTip(schema_words(spec.help))
        widget.setAccessibleName(title)
        if isinstance(widget, QDoubleSpinBox):
            coarse = spec.unit in ("min", "deg", "deg true")
            _few_decimals(widget, spec, FEWEST_DECIMALS if coarse else self.asked.decimals)
        wrapper.setValues(self.feature.attribute(index), [])
        _say_empty(widget, schema_words(spec.pattern_words))
        self.form.addRow(label, widget)
        self.wrappers[name], self.labels[name] = wrapper, label

    def _wrapper(self, layer: QgsVectorLayer, index: int, name: str) -> QgsEditorWidgetWrapper:
        """The layer's own widget for a field, or a list of the names that it takes one of."""
        registry = QgsGui.editorWidgetRegistry()
        if name in self.asked.choices:
            names = [{one: one} for one in self.asked.choices[name]]
            wrapper = registry.create("ValueMap", layer, index, {"map": names}, None, self)
        else:
            wrapper = registry.create(layer, index, None, self)
        widget = wrapper.widget()
        if name in self.asked.suggested and isinstance(widget, QgsFilterLineEdit):
            widget.setCompleter(_completer(self.asked.suggested[name], widget))
        return wrapper

    def asks(self, name: str) -> bool:
        """Whether a field is asked for, as the form is filled in now."""
        only_for = self.asked.only_for.get(name)
        return only_for is None or self.wrappers[self.asked.switch].value() in only_for

    def show_asked(self, *_: object) -> None:
        """Show the fields that are asked for; those of another choice are none of this one."""
        while self.form.rowCount():
            self.form.takeRow(0)  # hidden rows would leave their gaps
        for name, wrapper in self.wrappers.items():
            row = (self.labels[name], wrapper.widget())
            if self.asks(name):
                self.form.addRow(*row)
            for one in row:
                one.setVisible(self.asks(name))
        self.problem.hide()
        self.adjustSize()

    def accept(self) -> None:
        """Take the values if the plan allows them; else say which one is wrong and stay."""
        try:
            values = {
                name: self._value(name, wrapper) if self.asks(name) else None for name, wrapper in self.wrappers.items()
            }
            self.asked.check(values)
        except SwimPlanError as error:
            self.problem.setText(str(error))
            self.problem.show()
            return
        for name, value in values.items():
            self.feature.setAttribute(self.feature.fieldNameIndex(name), value)
        super().accept()

    def _value(self, name: str, wrapper: QgsEditorWidgetWrapper) -> object:
        title = wrapper.widget().accessibleName()
        try:
            value = checked_value(self.asked.spec, 0, self.asked.spec.field(name), _stripped(wrapper.value()))
        except BadInputError as error:  # which names a row; this one has no number yet
            spec = self.asked.spec.field(name)
            raise SwimPlanError(asked=f"'{title}'", allowed=_allowed(spec, error), remedy=error.remedy) from error
        if value is None and name in self.asked.needed:
            raise SwimPlanError(asked=tr("'{}' is empty").format(title), remedy=tr("Fill it in"))
        if name == self.asked.named and value in self.asked.taken:
            raise SwimPlanError(asked=tr("'{}' is there already").format(value), remedy=tr("Give it another name"))
        return value


def _allowed(spec: FieldSpec, error: BadInputError) -> str:
    """What a field may hold, in the words that its list shows."""
    if not spec.choices:
        return error.allowed
    return tr("Choose one of: {}").format(", ".join(map(schema_words, spec.choices.values())))


def _few_decimals(widget: QDoubleSpinBox, spec: FieldSpec, decimals: int) -> None:
    """QGIS has the value below the least stand for empty, a thousandth below: rounded, a stay of 0 would be empty."""
    widget.setDecimals(decimals)
    if widget.specialValueText():
        widget.setSpecialValueText(tr("not given"))
        if spec.minimum is not None:
            widget.setMinimum(spec.minimum - 10.0**-decimals)


def _say_empty(widget: QWidget, form_words: str) -> None:
    """An empty field in plain words: QGIS's widgets show their own sign for it, which is NULL. What a text must look
    like stands in the empty field."""
    null = QgsApplication.nullRepresentation()
    if isinstance(widget, QComboBox):
        empty = widget.findText(f"({null})")
        if empty >= 0:
            widget.setItemText(empty, tr("(choose)"))
    elif isinstance(widget, QPlainTextEdit) and widget.toPlainText() == null:
        widget.clear()
    elif isinstance(widget, QgsFilterLineEdit):
        widget.setNullValue("")
        if widget.text() == null:
            widget.clear()
        widget.setPlaceholderText(form_words)


def _completer(names: Sequence[str], parent: QWidget) -> QCompleter:
    """Offers names of the plan while one types; another may be typed as well."""
    completer = QCompleter(list(names), parent)
    completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
    completer.setFilterMode(Qt.MatchFlag.MatchContains)
    return completer


def _stripped(value: object) -> object:
    return value.strip() if isinstance(value, str) else value


def _plain_label(text: str) -> QLabel:
    made = QLabel(text)
    made.setTextFormat(Qt.TextFormat.PlainText)
    made.setWordWrap(True)
    return made
