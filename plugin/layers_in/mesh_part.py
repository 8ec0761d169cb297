"""The part of a mesh that lies around a plan."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from .model_places import ModelPlaces, box_lattice, turn_true

MARGIN_M = 500.0


@dataclass(frozen=True, kw_only=True)
class MeshPart:
    """``nodes`` and ``faces`` kept, by their numbers in the file; ``corners`` (m, width) of nodes kept, padded with -1.

    ``xy`` are the nodes in the model's own system, ``xy_m`` in the plan's frame.
    """

    places: ModelPlaces
    nodes: np.ndarray
    faces: np.ndarray
    corners: np.ndarray
    xy: np.ndarray
    xy_m: np.ndarray

    @classmethod
    def around(cls, places: ModelPlaces, xy: np.ndarray, corners: np.ndarray, box_m: np.ndarray) -> MeshPart | None:
        """The faces whose own box touches the plan's, so one that holds all of it as well; None where there is none."""
        frame = places.frame
        lon, lat = places.lonlat(*xy.T)
        _, around = box_lattice(frame, box_m, MARGIN_M)
        # Counted from the plan's own meridian: no face there has the date line within it.
        away = (lon - frame.lon + 180.0) % 360.0 - 180.0
        box_away = (around[:, 0] - frame.lon + 180.0) % 360.0 - 180.0
        sound = np.count_nonzero(corners >= 0, axis=1) >= 3
        touches = sound.copy()
        for node_value, box_value in ((away, box_away), (lat, around[:, 1])):
            low = np.where(corners >= 0, node_value[corners], np.inf).min(axis=1)
            high = np.where(corners >= 0, node_value[corners], -np.inf).max(axis=1)
            sound &= high - low < 180.0
            touches &= (low <= box_value.max()) & (high >= box_value.min())
        touches &= sound
        if not touches.any():
            return None
        # The faces round these as well: what a face passes to a corner is shared by all that meet there.
        near = np.zeros(len(xy) + 1, dtype=bool)  # the last one is what -1 points to
        near[corners[touches]] = True
        near[-1] = False
        faces = np.flatnonzero(near[corners].any(axis=1) & sound)
        nodes = np.unique(corners[faces][corners[faces] >= 0])
        number = np.full(len(xy) + 1, -1, dtype=np.int32)  # the last one is what -1 points to
        number[nodes] = np.arange(len(nodes))
        return cls(
            places=places,
            nodes=nodes,
            faces=faces,
            corners=number[corners[faces]],
            xy=xy[nodes],
            xy_m=places.frame_xy(*xy[nodes].T),
        )

    def turn_true(self, first: np.ndarray, second: np.ndarray, on_faces: bool) -> None:
        """Make components (n_times, k) along the model's axes true east and north, in place."""
        places = self.xy
        if on_faces:
            real = (self.corners >= 0)[..., None]
            places = np.where(real, self.xy[self.corners], 0.0).sum(axis=1) / real.sum(axis=1)
        turn_true(first, second, *self.places.axes(*places.T))
