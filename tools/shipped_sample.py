"""The sample plan for the zip: made from a commit's own scripts, and the same bytes at every making.

What differs from making to making is neither data nor look: when styles were stored, QGIS's ids within them, and the
order of attributes in XML, which Qt draws anew in each process unless told not to. Another QGIS makes another file.
"""

from __future__ import annotations

import os
import re
import shutil
import sqlite3
import subprocess
import sys
from pathlib import Path

NAME = "invented_bay.gpkg"
MOMENT = "2020-01-01T00:00:00.000Z"
STEADY = {"QT_HASH_SEED": "0", "PYTHONHASHSEED": "0", "OGR_CURRENT_DATE": MOMENT}
# Made anew at each making, in small letters. QGIS's own constant codes, such as that for "no value" in a list of
# values, have capitals: they mean something and stay.
ID = re.compile(r"\{[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}\}")


def make_sample(checkout: Path, target: Path) -> Path:
    """Make the sample with the scripts and the plugin below `checkout`; raises CalledProcessError where that fails."""
    script = checkout / "sample_layers" / "make_bay.py"
    done = subprocess.run([sys.executable, str(script)], env={**os.environ, **STEADY}, capture_output=True, text=True)
    if done.returncode:
        print(done.stderr[-3000:], file=sys.stderr)
    done.check_returncode()
    target.parent.mkdir(parents=True, exist_ok=True)
    shutil.copyfile(script.parent / NAME, target)
    make_steady(target)
    return target


def make_steady(plan: Path) -> None:
    """Number the ids in the stored styles and give them one date."""
    numbers: dict[str, str] = {}

    def numbered(found: re.Match[str]) -> str:
        return numbers.setdefault(found.group(), f"{{00000000-0000-0000-0000-{len(numbers) + 1:012d}}}")

    package = sqlite3.connect(plan)
    for row, style in package.execute("SELECT id, styleQML FROM layer_styles ORDER BY id").fetchall():
        steady = ID.sub(numbered, style)
        package.execute("UPDATE layer_styles SET styleQML = ?, update_time = ? WHERE id = ?", (steady, MOMENT, row))
    package.commit()
    package.execute("VACUUM")
    package.close()
