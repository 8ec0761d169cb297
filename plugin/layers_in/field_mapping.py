"""Which value of an ordinary layer goes into which field of a plan: `depth_m = "DEPTH" * 0.3048; name = OBJNAM`."""

from __future__ import annotations

from typing import Any

from qgis.core import NULL, QgsExpression, QgsExpressionContext, QgsFeature, QgsFeatureRequest, QgsFields
from qgis.PyQt.QtCore import QDate, QDateTime, Qt, QTime

from ..core.errors import BadInputError, SwimPlanError
from ..plan_package.field_spec import LayerSpec
from ..words import tr

_QUOTES = "'\""
_OPENING, _CLOSING = "([", ")]"


def mapping_from_text(text: str) -> dict[str, str]:
    """Plan field to expression, from `field = expression` parted by semicolons or new lines.

    Semicolons and line ends inside quotes or brackets belong to the expression.
    """
    mapping: dict[str, str] = {}
    for piece in _pieces(text):
        name, sign, expression = piece.partition("=")
        if not (sign and name.strip().isidentifier() and expression.strip()):
            raise SwimPlanError(
                asked=tr("FIELDS has {piece!r}").format(piece=piece),
                allowed=tr("It is a list such as depth_m = DEPTH * 0.3048; name = OBJNAM"),
                remedy=tr("Write the plan's field, an equals sign, and a QGIS expression over the layer's fields"),
            )
        if name.strip() in mapping:
            raise SwimPlanError(
                asked=tr("FIELDS gives {name} twice").format(name=name.strip()),
                allowed=tr("A field is given once"),
                remedy=tr("Drop one of the two"),
            )
        mapping[name.strip()] = expression.strip()
    return mapping


def _pieces(text: str) -> list[str]:
    pieces, piece, quote, depth = [], "", "", 0
    for letter in text:
        if quote:
            quote = "" if letter == quote else quote
        elif letter in _QUOTES:
            quote = letter
        else:
            depth += (letter in _OPENING) - (letter in _CLOSING)
        if letter in ";\n" and not quote and depth <= 0:
            pieces.append(piece)
            piece = ""
        else:
            piece += letter
    return [part.strip() for part in [*pieces, piece] if part.strip()]


class FieldMapping:
    """The mapping of one layer into one plan layer, ready to be applied feature by feature.

    A field of the same name is taken where the mapping says nothing else. BadInputError where the plan layer lacks a
    field, the layer lacks a column, an expression cannot be read, or a field that must be filled gets nothing.
    """

    def __init__(self, *, layer: str, fields: QgsFields, into: LayerSpec, mapping: dict[str, str]) -> None:
        self._layer = layer
        self._into = into
        self._expressions = {name: self._expression(name, text, fields) for name, text in mapping.items()}
        for field in into.fields:
            if field.name in self._expressions:
                continue
            if fields.lookupField(field.name) >= 0:
                self._expressions[field.name] = QgsExpression(
                    QgsExpression.quotedColumnRef(fields.at(fields.lookupField(field.name)).name())
                )
            elif field.required and field.default is None:
                self._refuse(
                    field.name, tr("The field must be filled: {allowed}").format(allowed=field.allowed_words())
                )
        self._context = QgsExpressionContext()
        self._context.setFields(fields)
        for expression in self._expressions.values():
            expression.prepare(self._context)

    def values_of(self, feature: QgsFeature) -> dict[str, Any]:
        """The plan's values of one feature; BadInputError names the feature where an expression fails on it."""
        self._context.setFeature(feature)
        return {name: self._value(name, expression, feature) for name, expression in self._expressions.items()}

    def _expression(self, name: str, text: str, fields: QgsFields) -> QgsExpression:
        if name not in {field.name for field in self._into.fields}:
            names = ", ".join(field.name for field in self._into.fields)
            self._refuse(
                name, tr("The plan's layer {layer} has the fields {names}").format(layer=self._into.name, names=names)
            )
        expression = QgsExpression(text)
        if expression.hasParserError():
            self._refuse(
                name,
                tr("The expression {text} cannot be read: {why}").format(
                    text=text, why=expression.parserErrorString().strip()
                ),
            )
        for column in expression.referencedColumns():
            if column != QgsFeatureRequest.ALL_ATTRIBUTES and fields.lookupField(column) < 0:
                self._refuse(
                    name,
                    tr("The layer has no field {column}; it has {fields}").format(
                        column=column, fields=", ".join(fields.names())
                    ),
                )
        return expression

    def _value(self, name: str, expression: QgsExpression, feature: QgsFeature) -> Any:
        value = expression.evaluate(self._context)
        if expression.hasEvalError():
            raise BadInputError(
                layer=self._layer,
                row=feature.id(),
                field=name,
                value=expression.expression(),
                allowed=tr("The expression fails here: {why}").format(why=expression.evalErrorString().strip()),
                remedy=tr("Correct the value or the expression"),
            )
        if value is None or value == NULL:
            return None
        return _as_text(value) if self._into.field(name).kind == "text" else value

    def _refuse(self, name: str, allowed: str) -> None:
        raise BadInputError(
            layer=self._layer,
            field=name,
            allowed=allowed,
            remedy=tr("Correct FIELDS, for example {name} = an expression over the layer's fields").format(name=name),
        )


def _as_text(value: Any) -> str:
    """Text of a value for a text field: dates and times in ISO form, whole numbers without a decimal point."""
    if isinstance(value, QTime):
        return value.toString("HH:mm")
    if isinstance(value, (QDate, QDateTime)):
        return value.toString(Qt.DateFormat.ISODate)
    return f"{value:g}" if isinstance(value, float) else str(value)
