"""Results written to an algorithm's sinks."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from qgis.core import (
    QgsFeatureSink,
    QgsProcessingAlgorithm,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingLayerPostProcessorInterface,
)
from qgis.PyQt import sip

from ..layers_out.plan_layers import OutputLayer, output_crs

_stylers: list[QgsProcessingLayerPostProcessorInterface] = []


def write_sinks(
    algorithm: QgsProcessingAlgorithm,
    outputs: Iterable[tuple[OutputLayer, Any]],
    parameters: dict[str, Any],
    context: QgsProcessingContext,
    *,
    styled: bool = False,
) -> dict[str, Any]:
    """Write each result to its layer's sink, if there is one; the layers' ids by parameter come back.

    ``styled`` gives a layer that QGIS will load its style. Raises QgsProcessingException for what cannot be written.
    """
    results = {}
    for output, result in outputs:
        name = output.parameter
        sink, layer = algorithm.parameterAsSink(
            parameters, name, context, output.fields(), output.wkb_type, output_crs()
        )
        if sink is None:
            continue
        if not sink.addFeatures(output.features(result), QgsFeatureSink.Flag.FastInsert):
            raise QgsProcessingException(algorithm.writeFeatureError(sink, parameters, name))
        sink.flushBuffer()
        results[name] = layer
        if styled and context.willLoadLayerOnCompletion(layer):
            _style(name, layer, context)
    return results


def _style(name: str, layer: str, context: QgsProcessingContext) -> None:
    from ..layers_out.styling import ResultStyler

    styler = ResultStyler(name)
    context.layerToLoadOnCompletionDetails(layer).setPostProcessor(styler)
    # The context deletes it when it is done; until then somebody has to keep Python's half, and the algorithm is gone.
    _stylers[:] = [kept for kept in _stylers if not sip.isdeleted(kept)] + [styler]
