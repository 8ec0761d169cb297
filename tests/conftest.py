"""Makes `tideleg` importable from a checkout, and lets tests/core run where there is no QGIS."""

from __future__ import annotations

import gc
import os
import sys
import traceback
from collections.abc import Iterator
from importlib import invalidate_caches
from importlib.util import find_spec
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
LINK_FOLDER = ROOT / ".cache" / "python"


def _make_importable() -> None:
    """Make the two links that git does not keep, as `./run` does, so that plain pytest works as well."""
    metadata = ROOT / "plugin" / "metadata.txt"
    if not metadata.exists():
        metadata.symlink_to(Path("..", "metadata.txt"))  # without it QGIS does not see a plugin there
    link = LINK_FOLDER / "tideleg"
    if not link.exists():
        LINK_FOLDER.mkdir(parents=True, exist_ok=True)
        link.symlink_to(Path("..", "..", "plugin"), target_is_directory=True)
        invalidate_caches()  # python remembers that a folder on PYTHONPATH was not there when it started
    if str(LINK_FOLDER) not in sys.path:
        sys.path.insert(0, str(LINK_FOLDER))


_make_importable()

# The folder tests/qgis looks like a package `qgis` too, but one without a file of its own.
_found = find_spec("qgis")
HAS_QGIS = _found is not None and _found.origin is not None
# Without QGIS there is nothing for these to test; everything else still runs.
collect_ignore = [] if HAS_QGIS else ["qgis"]


def pytest_report_header() -> str:
    """Say what the run was made with, so that a log of it can be read later."""
    if not HAS_QGIS:
        return "QGIS: none"
    import shapely
    from qgis.core import Qgis

    return f"QGIS: {Qgis.QGIS_VERSION}, shapely {shapely.__version__}"


if HAS_QGIS:

    @pytest.fixture(autouse=True, scope="session")
    def _no_layer_outlives_qgis(qgis_app: object) -> Iterator[None]:
        """Empty the exceptions of runs that failed, before QGIS ends.

        QGIS never lets go of an exception that a Python algorithm raised, and so of the frames it went through, which
        keep the run's context and layers. What is still there of them when Python exits, after QGIS, crashes Python:
        all tests pass and the run fails.
        """
        yield
        from qgis.core import QgsProcessingException

        for kept in [one for one in gc.get_objects() if isinstance(one, QgsProcessingException)]:
            kept.__traceback__ = kept.__context__ = kept.__cause__ = None
        gc.collect()


@pytest.fixture(autouse=True)
def _what_a_slot_raises_fails_its_test(monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    """With Python's own hook PyQt ends the whole run where a slot raises, and nobody sees why."""
    raised: list[str] = []
    monkeypatch.setattr(sys, "excepthook", lambda *error: raised.append("".join(traceback.format_exception(*error))))
    yield
    assert not raised, "\n".join(raised)


@pytest.fixture(scope="session")
def root() -> Path:
    """The checkout."""
    return ROOT


@pytest.fixture(scope="session")
def real_data() -> Path:
    """The folder of real charts and tables; tests that need it are skipped where it is absent."""
    folder = Path(os.environ.get("TIDELEG_REAL_DATA") or ROOT.parent / "shared" / "data")
    if not folder.is_dir():
        pytest.skip(f"no real data in {folder}")
    return folder
