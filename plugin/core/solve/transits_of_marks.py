"""Transits for several marks out of one lot of landmarks."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import datetime

from ..chart.marks import Mark
from ..errors import StoppedError
from ..magnetism import MODEL_NAME, variation_at
from ..results.transits import TransitsFound
from ..words import marked, spoken
from .transit_lines import TransitLimits
from .transits import Landmarks, find_transits

HIDDEN = marked(
    "Whether a landmark can be seen from the water is not known: higher land, trees and houses may hide it, and "
    "the tide a low one. Look from the beach and from the water before you rely on a transit."
)


def transits_of_marks(
    marks: Sequence[Mark],
    landmarks: Landmarks,
    date: datetime,
    *,
    limits: TransitLimits,
    warnings: tuple[str, ...] = (),
    progress: Callable[[float], None] = lambda _share: None,
    is_cancelled: Callable[[], bool] = bool,
) -> TransitsFound:
    """The best pairs of each mark, magnetic by the variation there on an aware date.

    ``progress`` gets a share from 0 to 1. StoppedError where the user stopped, OutsideModelError where the model of the
    variation does not reach.
    """
    found = []
    for number, mark in enumerate(marks):
        if is_cancelled():
            raise StoppedError
        variation = variation_at(mark.lon, mark.lat, date)
        found.append(find_transits(mark.name, mark.lon, mark.lat, landmarks, variation, limits=limits))
        progress((number + 1) / len(marks))
    reasons = tuple(one.reason for one in found if one.reason)
    seen = any(one.fixes or one.singles for one in found)
    return TransitsFound(
        marks=tuple(found),
        landmarks=len(landmarks.names),
        offset_limit_m=limits.offset_m,
        variation_model=MODEL_NAME,
        date=date,
        warnings=(*warnings, *reasons, *((spoken(HIDDEN),) if seen else ())),
    )
