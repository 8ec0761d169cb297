"""Eddies and bights in which one station rules."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

from ..grid import EvenGrid
from ..planar import PlanarArea
from .blend import laid_over
from .stream import UNKNOWN, StreamSample
from .tide import TideTable

GRID_SIDE = 256
EDGE_M = 40.0


@dataclass(frozen=True, kw_only=True)
class RuledArea:
    """An eddy or a bight in which one station rules, on the flood (tide rising at its port), the ebb, or always.

    Its edge is a shear layer: outside it the rule fades over 40 m (common practice, no source).
    """

    area: PlanarArea
    station: str
    phase: str = "always"
    _share: EvenGrid = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        low, high = self.area.bounds[:2] - 2.0 * EDGE_M, self.area.bounds[2:] + 2.0 * EDGE_M
        cell = max(EDGE_M / 4.0, float(np.max(high - low)) / GRID_SIDE)
        x, y = EvenGrid.places(low, high, cell)
        places = np.stack(np.meshgrid(x, y), axis=-1).reshape(-1, 2)
        away = np.where(self.area.contains(places), 0.0, self.area.distance_m(places))
        share = np.clip(1.0 - away / EDGE_M, 0.0, 1.0).reshape(1, len(y), len(x))
        object.__setattr__(self, "_share", EvenGrid(low_m=low, cell_m=cell, values=share))

    def share(self, x_m: np.ndarray, y_m: np.ndarray) -> np.ndarray:
        """How much the station rules at places: 1 inside, 0 from 40 m outside."""
        return self._share.at(x_m, y_m)[0]

    def ruled(
        self, sample: StreamSample, own: StreamSample, tide: TideTable | None, share: np.ndarray, t_s: np.ndarray
    ) -> StreamSample:
        """The sample with the ruling station's stream ``own`` put in, by its share at the places.

        Where it rules and does not know, or where the tide that decides is not known, the stream is unknown.
        """
        if self.phase != "always":
            rising = tide.rising(t_s) if tide is not None else np.full(t_s.shape, np.nan)
            share = np.where(share > 0.0, share * (rising if self.phase == "flood" else 1.0 - rising), 0.0)
        ruled = laid_over(sample, np.nan_to_num(share), own)
        lost = np.isnan(share) | ((share > 0.0) & (own.status == UNKNOWN))
        return StreamSample(
            east_m_s=np.where(lost, np.nan, ruled.east_m_s),
            north_m_s=np.where(lost, np.nan, ruled.north_m_s),
            status=np.where(lost, UNKNOWN, ruled.status).astype(np.int8),
            source=np.where(lost, -1, ruled.source),
        )
