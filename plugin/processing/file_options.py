"""The parameters that say how a swim's files are written; several algorithms ask for them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import TYPE_CHECKING, Any

from qgis.core import QgsProcessingContext, QgsProcessingParameterBoolean

from ..words import tr
from .plan_algorithm import INTEGER, PlanAlgorithm

if TYPE_CHECKING:
    from ..cards.gps_options import GpsOptions


def add_private(algorithm: PlanAlgorithm, words: str) -> None:
    """PRIVATE: whether marks are left out of what is written."""
    algorithm.addParameter(QgsProcessingParameterBoolean("PRIVATE", words, defaultValue=False, optional=True))


def is_private(algorithm: PlanAlgorithm, parameters: dict[str, Any], context: QgsProcessingContext) -> bool:
    """Whether they are to be left out."""
    return algorithm.parameterAsBoolean(parameters, "PRIVATE", context)


def add_gps_options(algorithm: PlanAlgorithm) -> None:
    """NAME_LENGTH, UPPER_CASE and EVERY_M."""
    algorithm.add_number("NAME_LENGTH", tr("Letters of a name (6 to 10)"), None, 6, 10, kind=INTEGER)
    algorithm.addParameter(QgsProcessingParameterBoolean("UPPER_CASE", tr("Names in capitals"), defaultValue=False))
    algorithm.add_number("EVERY_M", tr("Points on the way every (m)"), None, 25, 100_000)


def gps_options(
    algorithm: PlanAlgorithm, parameters: dict[str, Any], context: QgsProcessingContext, settings: Mapping[str, str]
) -> GpsOptions:
    """What is asked for, else what the plan's settings say; capitals where either does, since a box that is not
    ticked cannot say no. SwimPlanError for settings that cannot be meant."""
    from ..cards.gps_options import options_of

    kept = options_of(settings, private=is_private(algorithm, parameters, context))
    length, every_m = (algorithm.number(parameters, name, context) for name in ("NAME_LENGTH", "EVERY_M"))
    upper_case = kept.upper_case or algorithm.parameterAsBoolean(parameters, "UPPER_CASE", context)
    return replace(
        kept,
        name_length=kept.name_length if length is None else int(length),
        upper_case=upper_case,
        every_m=kept.every_m if every_m is None else every_m,
    )
