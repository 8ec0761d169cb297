"""Stores in a plan the form and the look of each of its layers, so that QGIS brings both up when it opens one."""

from __future__ import annotations

import re
from collections.abc import Iterable
from pathlib import Path

from qgis.core import QgsVectorLayer

from ..core.errors import SwimPlanError
from ..layers_out.styles.map_tips import plan_tip
from ..layers_out.styles.plan_labels import SOUNDINGS_TO_SCALE, plan_labeling
from ..layers_out.styles.plan_symbols import plan_renderer
from ..words import tr
from . import database
from .field_spec import LayerSpec
from .forms import give_form

# QGIS refuses a stored style whose geometry type is not the layer's; without the mark it takes the style for any.
_GEOMETRY_MARK = re.compile(r"<layerGeometryType>[^<]*</layerGeometryType>")
DOTS_TO_SCALE = 2.0 * SOUNDINGS_TO_SCALE


def store_styles(path: Path, specs: Iterable[LayerSpec]) -> None:
    """Make and store the default style of each layer in the file; raises SwimPlanError when QGIS cannot."""
    for spec in specs:
        _store_one(path, spec)
    database.edit_styles(path, lambda qml: _GEOMETRY_MARK.sub("", qml))


def _store_one(path: Path, spec: LayerSpec) -> None:
    part = f"|geometrytype={spec.geometry_types[0]}" if len(spec.geometry_types) > 1 else ""
    layer = QgsVectorLayer(f"{path}|layername={spec.name}{part}", spec.name, "ogr")
    give_form(layer, spec)
    _dress(layer, spec)
    refusal = layer.saveStyleToDatabase(spec.name, spec.help, True, "")
    if refusal:
        raise SwimPlanError(
            asked=tr("The style of layer {name} could not be stored in {path} ({refusal})").format(
                name=spec.name, path=path, refusal=refusal
            ),
            remedy=tr("Check free space on the disk and try again"),
        )


def _dress(layer: QgsVectorLayer, spec: LayerSpec) -> None:
    renderer = plan_renderer(spec.name)
    if renderer is not None:
        layer.setRenderer(renderer)
    labeling = plan_labeling(spec.name)
    layer.setLabelsEnabled(labeling is not None)
    if labeling is not None:
        layer.setLabeling(labeling)
    if spec.has_geometry:
        layer.setMapTipTemplate(plan_tip(spec))
    if spec.name == "soundings":
        layer.setScaleBasedVisibility(True)
        layer.setMinimumScale(DOTS_TO_SCALE)
