"""Each section of the dock is seen in the real desktop of this QGIS, and none of its pictures is blank or alike."""

from __future__ import annotations

import hashlib
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]


@pytest.mark.skipif(not shutil.which("Xvfb") or not shutil.which("qgis"), reason="no desktop or no screen for it here")
def test_every_section_is_seen_in_the_desktop(qgis_app: object, tmp_path: Path, monkeypatch) -> None:
    from qgis.PyQt.QtGui import QImage

    monkeypatch.syspath_prepend(str(ROOT / "sample_layers"))
    import make_bay

    sample, folder = make_bay.make(tmp_path / "invented_bay.gpkg"), tmp_path / "pictures"
    command = [sys.executable, str(ROOT / "tools" / "dock_pictures.py"), str(folder), "--sample", str(sample)]
    ran = subprocess.run([*command, "--scales", "1"], capture_output=True, text=True, timeout=400, check=False)
    assert ran.returncode == 0, ran.stdout + ran.stderr
    pictures = sorted(folder.glob("*.png"))
    assert len(pictures) == 17
    assert len({hashlib.sha256(path.read_bytes()).hexdigest() for path in pictures}) >= 15
    for path in pictures:
        picture = QImage(str(path))
        assert picture.width() >= 600 and picture.height() >= 300
