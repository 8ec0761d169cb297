"""How far work in the background is, in words."""

from __future__ import annotations

from collections.abc import Callable

from ..words import tr


class HowFar(str):
    """Words on how far the work is, with the percent that they say."""

    percent: int

    def __new__(cls, stage: str, percent: int) -> HowFar:
        """Of a stage and the percent of the whole, 0 to 100."""
        made = super().__new__(cls, tr("{}… {} %").format(stage, percent))
        made.percent = percent
        return made


def by_percent(tell: Callable[[str], None], stage: Callable[[float], str]) -> Callable[[float], None]:
    """A function of the share done that tells the stage and the percent, once for each percent."""
    told = [-1]

    def progress(share: float) -> None:
        percent = int(100.0 * share)
        if percent != told[0]:
            told[0] = percent
            tell(HowFar(stage(share), percent))

    return progress
