"""A mesh whose stream is given in its faces, as a finer one with the stream at nodes: continuous from face to face."""

from __future__ import annotations

import numpy as np

LEAST_WEIGHT = 0.1  # of a face round a node, on the mean, for its faces to tell how the stream changes there


def split_faces(corners: np.ndarray) -> np.ndarray:
    """Triangles (n, 3) of faces (m, 3 or more) of nodes padded with -1.

    A face of more corners is cut into a fan from its first corner, which is right where the face is convex.
    """
    corners = np.asarray(corners, dtype=np.int32)
    fans = [corners[:, [0, last - 1, last]] for last in range(2, corners.shape[1])]
    return np.concatenate([fan[fan[:, 2] >= 0] for fan in fans])


def centred_mesh(x_m: np.ndarray, y_m: np.ndarray, corners: np.ndarray) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """The nodes' x and y with those of the faces' centres behind them, and triangles that fan out from the centres."""
    corners = np.asarray(corners, dtype=np.int32)
    real = corners >= 0
    count = real.sum(axis=1)
    centre = [np.sum(np.where(real, axis[corners], 0.0), axis=1) / count for axis in (x_m, y_m)]
    face, place = np.nonzero(real)
    following = np.where(place + 1 < count[face], place + 1, 0)
    triangles = np.column_stack([corners[face, place], corners[face, following], len(x_m) + face])
    return np.concatenate([x_m, centre[0]]), np.concatenate([y_m, centre[1]]), triangles.astype(np.int32)


def drying_mesh(
    x_m: np.ndarray, y_m: np.ndarray, corners: np.ndarray, values: np.ndarray, dry: np.ndarray
) -> tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """A mesh with values (..., n_times, n_nodes), faces ``dry`` (n_times, m) at times: x, y, triangles, values.

    A face that is ever dry gets a node at its centre, the mean of its corners, not known while the face is dry: so its
    wet neighbours, which share its corners, stay known.
    """
    ever = dry.any(axis=0)
    x, y, fans = centred_mesh(x_m, y_m, corners[ever])
    real = corners[ever] >= 0
    centre = np.where(real, values[..., corners[ever]], 0.0).sum(axis=-1) / real.sum(axis=1)
    centre = np.where(dry[:, ever], np.nan, centre)
    triangles = np.concatenate([split_faces(corners[~ever]), fans])
    return x, y, triangles, np.concatenate([values, centre.astype(values.dtype)], axis=-1)


def node_vectors(x_m: np.ndarray, y_m: np.ndarray, corners: np.ndarray, vectors: np.ndarray) -> np.ndarray:
    """Vectors (n_times, n_nodes) at the nodes from those in the faces (n_times, m), by the faces round each node.

    ``x_m`` and ``y_m`` are those of the nodes with the faces' centres behind them. The weights, 1 + ax dx + ay dy, are
    such that a field linear in place comes out exactly (D. G. Holmes and S. D. Connell, AIAA paper 89-1932, 1989; cited
    from memory). None falls below 0, so a node lies among its faces; where one would, as at the coast, the field comes
    out nearly. Faces that are not known at a time have no weight then; a node whose faces are all unknown is unknown.
    """
    n_nodes = len(x_m) - len(corners)
    face, place = np.nonzero(corners >= 0)
    node = corners[face, place]
    dx, dy = x_m[n_nodes + face] - x_m[node], y_m[n_nodes + face] - y_m[node]
    found = np.empty((len(vectors), n_nodes), dtype=vectors.dtype)
    known_before = weight = None
    for step, row in enumerate(vectors):
        known = ~np.isnan(row.real)
        if known_before is None or not np.array_equal(known, known_before):
            weight, known_before = _weights(node, dx, dy, known[face], n_nodes), known
        value = np.where(known, row, 0.0)[face]
        found[step].real = np.bincount(node, weight * value.real, n_nodes)
        found[step].imag = np.bincount(node, weight * value.imag, n_nodes)
        bare = np.bincount(node, known[face], n_nodes) == 0
        found[step, bare] = complex(np.nan, np.nan)
    return found


def _weights(node: np.ndarray, dx: np.ndarray, dy: np.ndarray, known: np.ndarray, n_nodes: int) -> np.ndarray:
    """Shares (k,) of the faces round each node, summing to 1 where any is known."""

    def total(values: np.ndarray) -> np.ndarray:
        return np.bincount(node, np.where(known, values, 0.0), n_nodes)

    x, y, xx, xy, yy = total(dx), total(dy), total(dx * dx), total(dx * dy), total(dy * dy)
    determinant = xx * yy - xy * xy
    # Faces in a row round a node do not say how the stream changes across the row: they share evenly.
    sound = determinant > 1e-9 * (xx + yy) ** 2
    safe = np.where(sound, determinant, 1.0)
    ax = np.where(sound, (xy * y - yy * x) / safe, 0.0)
    ay = np.where(sound, (xy * x - xx * y) / safe, 0.0)
    # So do two faces, and others that lie to one side: their weights would be next to nothing, and noise their shares.
    weight = 1.0 + ax[node] * dx + ay[node] * dy
    count = total(np.ones(len(node)))
    even = total(weight) < LEAST_WEIGHT * count
    weight = np.where(known, np.where(even[node], 1.0, np.maximum(weight, 0.0)), 0.0)
    whole = np.bincount(node, weight, n_nodes)
    return weight / np.where(whole > 0.0, whole, 1.0)[node]
