"""The parameters that say what a wet card is printed on; two algorithms ask for it."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

from qgis.core import QgsProcessingContext, QgsProcessingParameterEnum, QgsProcessingParameterFile

from ..words import tr
from .plan_algorithm import PlanAlgorithm

if TYPE_CHECKING:
    from ..cards.wet_card import CardLook

PAPERS = ("", "A6", "A5", "A4")  # by the number of the choice; empty is as the swim needs
SIDES = (0, 1, 2, 4)


def add_card_look(algorithm: PlanAlgorithm) -> None:
    """PAPER, SIDES and LAYOUT."""
    papers = [tr("As the swim needs, from A5"), *PAPERS[1:]]
    sides = [tr("As many as needed"), tr("One"), tr("Two"), tr("Four (two cards)")]
    for name, words, options in (
        ("PAPER", tr("Paper of the wet card"), papers),
        ("SIDES", tr("Sides of the wet card, at most"), sides),
    ):
        algorithm.addParameter(QgsProcessingParameterEnum(name, words, options, defaultValue=0, optional=True))
    words = tr("Layout of your own for the wet card (print layout template)")
    algorithm.addParameter(QgsProcessingParameterFile("LAYOUT", words, extension="qpt", optional=True))


def layout_file(algorithm: PlanAlgorithm, parameters: dict[str, Any], context: QgsProcessingContext) -> str:
    """The template given, empty for none."""
    return algorithm.parameterAsFile(parameters, "LAYOUT", context)


def card_look(algorithm: PlanAlgorithm, parameters: dict[str, Any], context: QgsProcessingContext) -> CardLook:
    """What was asked for."""
    from ..cards.wet_card import CardLook

    layout = layout_file(algorithm, parameters, context)
    return CardLook(
        paper=PAPERS[algorithm.parameterAsEnum(parameters, "PAPER", context)],
        sides=SIDES[algorithm.parameterAsEnum(parameters, "SIDES", context)],
        template=Path(layout) if layout else None,
    )
