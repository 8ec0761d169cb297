"""What a read counted: objects read, used, clipped away and skipped with the reason, and rows written."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field
from typing import Any

from qgis.core import QgsPointXY

from ..words import tr
from .chart_cell import ChartObject


@dataclass(kw_only=True)
class Counted:
    """Counts of one class of objects; read = used + clipped_away + all skipped."""

    read: int = 0
    used: int = 0
    clipped_away: int = 0
    repaired: int = 0
    skipped: Counter = field(default_factory=Counter)
    notes: Counter = field(default_factory=Counter)

    def as_dict(self) -> dict[str, Any]:
        """The counts for the report."""
        return {
            "read": self.read,
            "used": self.used,
            "clipped_away": self.clipped_away,
            "repaired": self.repaired,
            "skipped": dict(self.skipped),
            "notes": dict(self.notes),
        }


class ReadTally:
    """Counts by class, and the hazards whose depth is not charted, by place."""

    def __init__(self) -> None:
        self._classes: dict[str, Counted] = {}
        self._hazards: list[dict[str, Any]] = []

    def of(self, name: str) -> Counted:
        """The counts of one class, to be added to."""
        return self._classes.setdefault(name, Counted())

    def add_hazard(self, thing: ChartObject, place: QgsPointXY, words: str) -> None:
        """Remember a hazard without a depth."""
        self._hazards.append(
            {
                "class": thing.object_class,
                "what": words,
                "lon": round(place.x(), 6),
                "lat": round(place.y(), 6),
                "text": thing.text("INFORM"),
            }
        )

    def as_dict(self) -> dict[str, Any]:
        """Counts by class and the list of hazards, for the report."""
        return {
            "classes": {name: counted.as_dict() for name, counted in self._classes.items()},
            "hazards_without_depth": self._hazards,
        }

    def sentences(self) -> list[str]:
        """One line for each class, for the log of the run."""
        return [_sentence(name, counted) for name, counted in self._classes.items()]


def _sentence(name: str, counted: Counted) -> str:
    parts = [tr("{name}: {read} read, {used} used").format(name=name, read=counted.read, used=counted.used)]
    if counted.clipped_away:
        parts.append(tr("{count} outside the extent").format(count=counted.clipped_away))
    parts += [
        tr("{count} skipped ({reason})").format(count=count, reason=reason) for reason, count in counted.skipped.items()
    ]
    if counted.repaired:
        parts.append(tr("{count} repaired").format(count=counted.repaired))
    parts += [f"{count} x {note}" for note, count in counted.notes.items()]
    return ", ".join(parts)
