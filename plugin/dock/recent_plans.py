"""The plans opened of late, kept in the user's QGIS settings; nothing of what is in them."""

from __future__ import annotations

from pathlib import Path

from qgis.core import QgsSettings

KEY = "tideleg/recent_plans"
MOST = 8


def recent_plans() -> list[Path]:
    """The plans opened of late, the last first; one whose file is gone stays, since its drive may come back."""
    stored = QgsSettings().value(KEY, [])
    return [Path(one) for one in ([stored] if isinstance(stored, str) else stored or [])]


def remember_plan(path: Path) -> None:
    """Put a plan first."""
    kept = [path, *(one for one in recent_plans() if one != path)][:MOST]
    QgsSettings().setValue(KEY, [str(one) for one in kept])


def forget_plan(path: Path) -> None:
    """Take a plan off the list."""
    QgsSettings().setValue(KEY, [str(one) for one in recent_plans() if one != path])
