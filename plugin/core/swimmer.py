"""Who swims: pace, range, hours and what they carry."""

from __future__ import annotations

from dataclasses import dataclass, fields

from .errors import SwimPlanError


@dataclass(frozen=True, kw_only=True)
class Swimmer:
    """A swimmer's own numbers; the defaults are guesses until own data replace them (common practice, no source).

    ``pace_m_s`` through the water; ``path_factor`` is swum path over ruler line, so that the way made good through the
    water is ``pace_m_s / path_factor``; ``range_m`` and ``max_hours`` for the whole swim; ``depth_limit_m`` the deepest
    bottom worked; ``min_ground_speed_m_s`` the least mean speed made good on a leg; ``fluid_l`` carried, ``fluid_l_h``
    drunk; ``line_m`` the anchor line.
    """

    name: str = "default swimmer"
    pace_m_s: float = 0.5
    path_factor: float = 1.10
    range_m: float = 5000.0
    max_hours: float = 4.0
    depth_limit_m: float = 12.0
    min_ground_speed_m_s: float = 0.15
    fluid_l: float = 2.0
    fluid_l_h: float = 0.7
    line_m: float = 30.0
    guessed: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        for key, (low, high) in LIMITS.items():
            value = getattr(self, key)
            if not low <= value <= high:
                raise SwimPlanError(
                    asked=f"Swimmer '{self.name}' has {key} = {value}",
                    allowed=f"{key} lies from {low:g} to {high:g}",
                    remedy="Correct the swimmers table",
                )

    @property
    def made_good_m_s(self) -> float:
        """Speed along the ruler line in still water, m/s."""
        return self.pace_m_s / self.path_factor


LIMITS = {
    "pace_m_s": (0.1, 2.5),
    "path_factor": (1.0, 2.0),
    "range_m": (1.0, 100_000.0),
    "max_hours": (0.1, 24.0),
    "depth_limit_m": (0.0, 100.0),
    "min_ground_speed_m_s": (0.0, 2.5),
    "fluid_l": (0.0, 50.0),
    "fluid_l_h": (0.0, 5.0),
    "line_m": (0.0, 300.0),
}
NUMBERS = tuple(field.name for field in fields(Swimmer) if field.name not in ("name", "guessed"))
