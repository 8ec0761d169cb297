"""Finds the pure-Python libraries that travel inside the plugin's zip."""

from __future__ import annotations

import sys
from importlib.util import find_spec
from pathlib import Path

from .errors import MissingLibraryError
from .words import tr

VENDOR_FOLDER = Path(__file__).resolve().parent.parent / "vendor"
NEEDED = ("pygeomag", "astral")
# astral reads time zones through zoneinfo, which falls back on tzdata where the system has no zone data (Windows).
WANTED = (*NEEDED, "tzdata")


def ensure_vendored() -> None:
    """Make pygeomag and astral importable.

    The plugin's own copies go to the END of `sys.path`, so that a copy installed on the machine wins and nothing of
    another plugin is shadowed. Cheap when called again.

    Raises MissingLibraryError when a library is neither installed nor inside the plugin.
    """
    if any(find_spec(name) is None for name in WANTED):
        add_vendor_folder()
    missing = [name for name in NEEDED if find_spec(name) is None]
    if missing:
        names = " and ".join(missing)
        raise MissingLibraryError(
            asked=tr("Tideleg needs {names}, which the plugin's zip carries but this copy does not").format(
                names=names
            ),
            remedy=tr("Install the plugin from its zip, or run: {executable} -m pip install {missing}").format(
                executable=sys.executable or "python3", missing=" ".join(missing)
            ),
        )


def add_vendor_folder() -> None:
    """Put the plugin's own copies, if it has any, at the end of `sys.path`."""
    folder = str(VENDOR_FOLDER)
    if VENDOR_FOLDER.is_dir() and folder not in sys.path:
        sys.path.append(folder)
