"""Gives a layer of a plan its form: titles, widgets, value lists, checks and first values, all from the schema."""

from __future__ import annotations

from typing import Any

from qgis.core import (
    QgsAttributeEditorContainer,
    QgsAttributeEditorField,
    QgsAttributeTableConfig,
    QgsDefaultValue,
    QgsEditFormConfig,
    QgsEditorWidgetSetup,
    QgsExpression,
    QgsFieldConstraints,
    QgsVectorLayer,
)

from ..words import tr
from .field_spec import FieldSpec, LayerSpec
from .words import schema_words

FID = "fid"
# QGIS's own code for "no value" in a value map (QgsValueMapFieldFormatter.NULL_VALUE).
_NO_VALUE = "{2839923C-8B7D-419E-B84B-CA2FE9B80EC7}"
# A widget keeps the zone of the value it starts from. Started empty, newer QGIS (3.40) takes what is typed for the
# machine's local time and stores another instant than the one read on the screen; started in UTC it stays in UTC.
_TODAY_NOON_UTC = "to_datetime(format_date(now(), 'yyyy-MM-dd') || 'T12:00:00Z')"
_STEPS = {"deg true": 5.0, "m": 1.0, "min": 5.0, "m/s": 0.05, "kn": 0.1, "h": 0.5, "L": 0.1, "L/h": 0.1}


def give_form(layer: QgsVectorLayer, spec: LayerSpec) -> None:
    """Set up the layer's fields, form and attribute table as `spec` says."""
    for field in spec.fields:
        index = layer.fields().lookupField(field.name)
        layer.setFieldAlias(index, schema_words(field.alias))
        layer.setEditorWidgetSetup(index, _widget(field))
        _constrain(layer, index, field)
        default = default_expression(field)
        if default:
            layer.setDefaultValueDefinition(index, QgsDefaultValue(default))
    layer.setEditorWidgetSetup(layer.fields().lookupField(FID), QgsEditorWidgetSetup("Hidden", {}))
    layer.setDisplayExpression(f'"{spec.fields[0].name}"')
    _lay_out(layer, spec)
    _hide_fid_in_table(layer)


def default_expression(field: FieldSpec) -> str:
    """The QGIS expression a new row's field starts from; empty for none."""
    if field.kind == "datetime":
        return _TODAY_NOON_UTC
    if field.default is None:
        return ""
    return QgsExpression.quotedValue(field.default)


def constraint_expression(field: FieldSpec) -> str:
    """The QGIS expression that holds for every value the field may have; empty when any value will do."""
    column = QgsExpression.quotedColumnRef(field.name)
    if field.choices is not None and not field.open_list:
        test = f"{column} IN ({', '.join(QgsExpression.quotedString(value) for value in field.allowed)})"
    elif field.pattern:
        test = f"regexp_match({column}, {QgsExpression.quotedString(field.pattern)}) > 0"
    else:
        test = " AND ".join(_bounds(field, column))
    return f"{column} IS NULL OR ({test})" if test else ""


def _bounds(field: FieldSpec, column: str) -> list[str]:
    bounds = []
    if field.minimum is not None:
        bounds.append(f"{column} {'>' if field.above_minimum else '>='} {field.minimum!r}")
    if field.maximum is not None:
        bounds.append(f"{column} <= {field.maximum!r}")
    return bounds


def _constrain(layer: QgsVectorLayer, index: int, field: FieldSpec) -> None:
    hard = QgsFieldConstraints.ConstraintStrength.ConstraintStrengthHard
    if field.required:
        layer.setFieldConstraint(index, QgsFieldConstraints.Constraint.ConstraintNotNull, hard)
    expression = constraint_expression(field)
    if expression:
        words = f"{schema_words(field.help)} {tr('Allowed:')} {field.allowed_words()}."
        layer.setConstraintExpression(index, expression, words)
        layer.setFieldConstraint(index, QgsFieldConstraints.Constraint.ConstraintExpression, hard)


def _widget(field: FieldSpec) -> QgsEditorWidgetSetup:
    if field.choices is not None:
        choices: list[dict[str, str]] = [{schema_words(label): value} for value, label in field.choices.items()]
        if not field.required:
            choices.insert(0, {tr("(not given)"): _NO_VALUE})
        return QgsEditorWidgetSetup("ValueMap", {"map": choices})
    if field.is_number:
        return QgsEditorWidgetSetup("Range", _range(field))
    if field.kind == "datetime":
        return QgsEditorWidgetSetup(
            "DateTime",
            {
                "field_format": "yyyy-MM-dd HH:mm:ss",
                "display_format": "yyyy-MM-dd HH:mm",
                "calendar_popup": True,
                "allow_null": not field.required,
                "field_iso_format": False,
            },
        )
    return QgsEditorWidgetSetup("TextEdit", {"IsMultiline": field.long_text, "UseHtml": False})


def _range(field: FieldSpec) -> dict[str, Any]:
    whole = field.kind == "integer"
    return {
        "Min": int(field.minimum) if whole else float(field.minimum),
        "Max": int(field.maximum) if whole else float(field.maximum),
        "Step": 1 if whole else _STEPS.get(field.unit, 0.1),
        "Precision": 0 if whole else 3,
        "AllowNull": not field.required,
        "Style": "SpinBox",
    }


def _lay_out(layer: QgsVectorLayer, spec: LayerSpec) -> None:
    """Fields of a group share a box, in the schema's order; the others stand alone above."""
    config = layer.editFormConfig()
    config.setLayout(QgsEditFormConfig.EditorLayout.TabLayout)
    config.clearTabs()
    root = config.invisibleRootContainer()
    boxes: dict[str, QgsAttributeEditorContainer] = {}
    for field in spec.fields:
        parent = root
        if field.group:
            if field.group not in boxes:
                boxes[field.group] = QgsAttributeEditorContainer(schema_words(field.group), root)
                root.addChildElement(boxes[field.group])
            parent = boxes[field.group]
        index = layer.fields().lookupField(field.name)
        parent.addChildElement(QgsAttributeEditorField(field.name, index, parent))
    layer.setEditFormConfig(config)


def _hide_fid_in_table(layer: QgsVectorLayer) -> None:
    config = QgsAttributeTableConfig()
    config.update(layer.fields())
    columns = config.columns()
    for column in columns:
        column.hidden = column.name == FID
    config.setColumns(columns)
    layer.setAttributeTableConfig(config)
