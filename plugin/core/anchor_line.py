"""How much anchor line a float needs: common practice, no source."""

from __future__ import annotations

# Times the greatest depth of the stay: on flat ground an anchor holds only at a low angle.
FLAT_TIMES, ROCK_TIMES = (3.0, 5.0), (1.3, 2.0)


def line_on_flat_m(depth_m: float) -> tuple[float, float]:
    """Least and most line in metres for an anchor on flat ground, by the greatest depth of the stay in metres."""
    return FLAT_TIMES[0] * depth_m, FLAT_TIMES[1] * depth_m


def line_in_rock_m(depth_m: float) -> tuple[float, float]:
    """The same for an anchor hooked in rock or kelp."""
    return ROCK_TIMES[0] * depth_m, ROCK_TIMES[1] * depth_m
