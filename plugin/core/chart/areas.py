"""Channels, closed areas and land, as areas of the plan's frame that a track is checked against."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime, time

import numpy as np

from ..planar import PlanarArea, bounds_of, boxes_touch, stretches_inside
from .hours import InForce

RULES = ("no_entry", "no_spearing", "no_anchoring", "loaded_gun_ban", "caution")


@dataclass(frozen=True, kw_only=True)
class Sailing:
    """A ferry's time in a channel: a clock time (daily) or a moment, and the minutes to be clear before and after."""

    when: time | datetime
    clear_before_min: float
    clear_after_min: float


@dataclass(frozen=True, kw_only=True)
class Channel:
    """A boat channel. ``flow_deg`` is the true direction of its traffic (either way), NaN where it has none.

    ``boat_m_s`` is the speed of its boats, NaN where unknown; ``centre`` (k, 2) the line it was drawn as, if it was.
    """

    name: str
    kind: str
    area: PlanarArea
    flow_deg: float = float("nan")
    boat_m_s: float = float("nan")
    centre: np.ndarray | None = None
    sailings: tuple[Sailing, ...] = ()


@dataclass(frozen=True, kw_only=True)
class ClosedArea:
    """Water under a rule, with the time it is in force, where the rule is written and when that was checked."""

    name: str
    rule: str
    area: PlanarArea
    in_force: InForce = InForce()
    citation: str = ""
    checked_on: str = ""


@dataclass(frozen=True, kw_only=True)
class Land:
    """A piece of land."""

    name: str
    area: PlanarArea


@dataclass(frozen=True, kw_only=True)
class Chart:
    """Everything of the chart that a track is checked against, with the boxes that make the search quick."""

    channels: tuple[Channel, ...] = ()
    closed_areas: tuple[ClosedArea, ...] = ()
    land: tuple[Land, ...] = ()
    _boxes: dict[str, np.ndarray] = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        boxes = {}
        for name in ("channels", "closed_areas", "land"):
            items = getattr(self, name)
            boxes[name] = np.array([item.area.bounds for item in items]).reshape(-1, 4)
        object.__setattr__(self, "_boxes", boxes)

    def near(self, what: str, box: np.ndarray) -> list:
        """The channels, closed_areas or land whose box touches the box (4,)."""
        items = getattr(self, what)
        return [items[row] for row in np.flatnonzero(boxes_touch(self._boxes[what], box))]

    def stretches(self, what: str, track_xy_m: np.ndarray) -> list[tuple[Channel | ClosedArea | Land, float, float]]:
        """Stretches of a track (n, 2) inside channels, closed_areas or land: the item, and its start and end in
        fractional vertex numbers."""
        near = self.near(what, bounds_of(track_xy_m))
        found = stretches_inside([item.area for item in near], track_xy_m)
        return [(near[number], start, end) for number, start, end in found]
