"""Run every gate of `./run check`, all of them even when one fails; `--fix` lets ruff mend and format first."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
CODE = ["plugin", "tests", "tools", "sample_layers"]
# QGS105: iface outside the entry (tests/test_architecture.py knows better); QGS201, 202, 402: not for this tree.
FLAKE8 = ["--isolated", "--select=QGS", "--extend-ignore=QGS105,QGS201,QGS202,QGS402", "--exclude=vendor"]


def gates() -> list[tuple[str, list[str]]]:
    """Return each gate's name and the arguments for this python."""
    return [
        ("ruff", ["-m", "ruff", "check", "--output-format=concise", *CODE]),
        ("ruff format", ["-m", "ruff", "format", "--check", "--output-format=concise", *CODE]),
        ("flake8-qgis", ["-m", "flake8", *FLAKE8, "plugin"]),
        ("enum scopes", ["tools/enum_scopes.py", "plugin"]),
        ("words", ["tools/strings.py", "--check"]),
        ("plugin site", ["tools/scan.py", "plugin"]),
        ("architecture", ["-m", "pytest", "-q", "tests/test_architecture.py"]),
    ]


def run(arguments: list[str]) -> bool:
    return subprocess.run([sys.executable, *arguments], cwd=ROOT, check=False).returncode == 0


def main(arguments: list[str]) -> int:
    if "--fix" in arguments:
        run(["-m", "ruff", "check", "--fix", "--quiet", *CODE])
        run(["-m", "ruff", "format", "--quiet", *CODE])
    failed = []
    for name, command in gates():
        print(f"-- {name}", flush=True)
        if not run(command):
            failed.append(name)
    print(f"check: {'FAILED: ' + ', '.join(failed) if failed else 'all clean'}")
    return bool(failed)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
