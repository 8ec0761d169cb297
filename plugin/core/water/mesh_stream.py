"""Stream from a model on a mesh of triangles: vectors at its nodes or in its faces, step by step in time."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
from numpy.typing import ArrayLike

from ..errors import SwimPlanError
from ..words import tr
from .mesh_faces import centred_mesh, node_vectors
from .stream import StreamSample
from .time_steps import around, as_vectors, between, checked_steps, sampled
from .triangles import EDGE, TriangleFinder


@dataclass(frozen=True, kw_only=True)
class MeshStream:
    """Stream at the nodes of a mesh. ``x_m``, ``y_m`` (n_nodes,) in the plan's frame; ``triangles`` (n, 3) of nodes.

    ``times_s`` (n_times,) rise; ``east_m_s`` and ``north_m_s`` (n_times, n_nodes) are TOWARDS true, NaN where dry or
    masked. Within a triangle the vector is shared by barycentric weights, between two steps it is linear on its
    components. Outside every triangle, in a triangle with a corner that is not known, and before the first or after
    the last step the stream is unknown: land is never bridged and the edge's value goes nowhere.
    """

    x_m: np.ndarray
    y_m: np.ndarray
    triangles: np.ndarray
    times_s: np.ndarray
    east_m_s: np.ndarray
    north_m_s: np.ndarray
    name: str = "mesh"
    _finder: TriangleFinder = field(init=False, repr=False, compare=False)
    _vectors: np.ndarray = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        x, y = np.array(self.x_m, dtype=float), np.array(self.y_m, dtype=float)
        triangles = np.array(self.triangles, dtype=np.int32).reshape(-1, 3)
        times = checked_steps(self.times_s, self.name)
        _check(self.name, (len(times), len(x)), triangles, np.shape(self.east_m_s), np.shape(self.north_m_s))
        vectors = as_vectors(self.east_m_s, self.north_m_s)
        for array in (x, y, triangles):
            array.setflags(write=False)
        made = {"x_m": x, "y_m": y, "triangles": triangles, "times_s": times}
        # The components are views of the vectors: one copy of what may be large.
        made |= {"east_m_s": vectors.real, "north_m_s": vectors.imag, "_vectors": vectors}
        for key, value in made.items():
            object.__setattr__(self, key, value)
        object.__setattr__(self, "_finder", TriangleFinder(x, y, triangles))

    @classmethod
    def of_faces(
        cls,
        *,
        x_m: np.ndarray,
        y_m: np.ndarray,
        corners: np.ndarray,
        times_s: np.ndarray,
        east_m_s: np.ndarray,
        north_m_s: np.ndarray,
        name: str = "mesh",
    ) -> MeshStream:
        """A mesh whose stream is given in faces: ``corners`` (m, 3 or more) padded with -1, components (n_times, m).

        At its centre a face has its own vector; from there it passes linearly to its corners, which have those of the
        faces round them (see ``node_vectors``), so that the stream is continuous and a solver finds one heading. A
        face that is not known is unknown all over. A field linear in place comes out exactly, but beside the coast.
        """
        corners = np.asarray(corners, dtype=np.int32)
        _check(name, (len(times_s), len(corners)), corners, np.shape(east_m_s), np.shape(north_m_s), len(x_m))
        x, y = np.asarray(x_m, dtype=float), np.asarray(y_m, dtype=float)
        x, y, triangles = centred_mesh(x, y, corners)
        own = as_vectors(east_m_s, north_m_s)
        vectors = np.concatenate([node_vectors(x, y, corners, own), own], axis=1)
        return cls(
            x_m=x,
            y_m=y,
            triangles=triangles,
            times_s=times_s,
            east_m_s=vectors.real,
            north_m_s=vectors.imag,
            name=name,
        )

    def at(self, x_m: ArrayLike, y_m: ArrayLike, t_s: ArrayLike) -> StreamSample:
        """Stream at places (metres) and times (seconds from the plan's start); arguments broadcast."""
        x, y, t = (np.asarray(value, dtype=float) for value in (x_m, y_m, t_s))
        # Places are located in their own shape, once for all the times asked there.
        located = self._finder.locate(x, y)
        return sampled(self._block, np.broadcast_shapes(x.shape, y.shape, t.shape), *located, t)

    def _block(
        self, triangle: np.ndarray, second: np.ndarray, third: np.ndarray, t: np.ndarray
    ) -> tuple[np.ndarray, bool]:
        """Vectors (m,) at located places, NaN where unknown; none is extrapolated."""
        vectors = np.full(len(t), complex(np.nan, np.nan))
        before, share, within = around(self.times_s, t)
        here = np.flatnonzero(within & (triangle >= 0))
        if len(here):
            nodes = self.triangles[triangle[here]]
            corners = [self._in_time(before[here], share[here], nodes[:, corner]) for corner in range(3)]
            one, two = second[here], third[here]
            vectors[here] = _weighed((1.0 - one - two, one, two), corners)
        return vectors, False

    def _in_time(self, before: np.ndarray, share: np.ndarray, node: np.ndarray) -> np.ndarray:
        values, count = self._vectors.reshape(-1), self._vectors.shape[1]
        first = before * count + node
        return between(values[first], values[first + count], share)


def _weighed(weights: tuple[np.ndarray, ...], corners: list[np.ndarray]) -> np.ndarray:
    """The corners' vectors by their weights; a corner that has no weight need not be known."""
    total = sum(weight * corner for weight, corner in zip(weights, corners))
    lost = np.flatnonzero(np.isnan(total))
    if len(lost):
        # On the edge of a dry triangle its dry corner weighs nothing: the wet neighbour says the same there.
        pairs = [(weight[lost], corner[lost]) for weight, corner in zip(weights, corners)]
        total[lost] = sum(np.where(np.abs(weight) > EDGE, weight * corner, 0.0) for weight, corner in pairs)
    return total


def _check(
    name: str,
    expected: tuple[int, int],
    corners: np.ndarray,
    east: tuple[int, ...],
    north: tuple[int, ...],
    nodes: int | None = None,
) -> None:
    """SwimPlanError unless the components have the expected shape and the corners are nodes of the mesh."""
    nodes = expected[1] if nodes is None else nodes
    numbers = np.asarray(corners)
    lowest = 0 if nodes == expected[1] else -1
    good = east == expected and north == expected
    if not good or (numbers.size and not (numbers.min() >= lowest and numbers.max() < nodes)):
        raise SwimPlanError(
            asked=tr(
                "The model '{name}' has components of shape {east} and {north}, and corners numbered up to "
                "{numbers} of {nodes} nodes"
            ).format(name=name, east=east, north=north, numbers=numbers.max() if numbers.size else "none", nodes=nodes),
            allowed=tr(
                "Its times and places make the shape {expected}, and every corner is a node that is there"
            ).format(expected=expected),
            remedy=tr("Check how the mesh was read"),
        )
