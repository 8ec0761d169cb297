"""How far work in the background is, in words."""

from __future__ import annotations

from collections.abc import Callable

from ..words import tr


def by_percent(tell: Callable[[str], None], stage: Callable[[float], str]) -> Callable[[float], None]:
    """A function of the share done that tells the stage and the percent, once for each percent."""
    told = [-1]

    def progress(share: float) -> None:
        percent = int(100.0 * share)
        if percent != told[0]:
            told[0] = percent
            tell(tr("{}… {} %").format(stage(share), percent))

    return progress
