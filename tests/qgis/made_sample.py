"""The sample bay as its script makes it, once for all tests: git does not keep the file."""

from __future__ import annotations

import shutil
import sys
import tempfile
from functools import lru_cache
from pathlib import Path

FOLDER = Path(__file__).resolve().parents[2] / "sample_layers"


@lru_cache(maxsize=1)
def _made() -> tuple[tempfile.TemporaryDirectory, Path]:
    if str(FOLDER) not in sys.path:
        sys.path.append(str(FOLDER))
    import make_bay

    kept = tempfile.TemporaryDirectory(prefix="tideleg-sample-")  # goes when Python ends
    return kept, make_bay.make(Path(kept.name) / "bay.gpkg")


def sample_at(path: Path) -> Path:
    """A copy of the sample of the test's own."""
    return Path(shutil.copy(_made()[1], path))
