"""The two searches on which the QGIS plugin site blocks an upload: bandit with its rule ids, and detect-secrets."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

PYPROJECT = Path(__file__).resolve().parent.parent / "pyproject.toml"


def bandit_findings(folder: Path) -> list[str]:
    """Return one line for each finding of bandit; a file that it could not read counts as one."""
    command = [sys.executable, "-m", "bandit", "-q", "-c", str(PYPROJECT), "-f", "json", "-r", str(folder)]
    report = json.loads(subprocess.run(command, capture_output=True, text=True, check=False).stdout)
    lines = [f"{r['filename']}:{r['line_number']} {r['test_id']} {r['issue_text']}" for r in report["results"]]
    return lines + [f"{error['filename']} unread: {error['reason']}" for error in report["errors"]]


def secrets_findings(folder: Path) -> list[str]:
    """Return one line for each thing that looks like a password or a key; nothing is asked over the network."""
    command = [sys.executable, "-m", "detect_secrets", "scan", "--no-verify", "--all-files", "."]
    # It searches below its working folder only, and finds nothing anywhere else without saying so.
    report = json.loads(subprocess.run(command, cwd=folder, capture_output=True, text=True, check=True).stdout)
    return [
        f"{path}:{found['line_number']} {found['type']}" for path, rows in report["results"].items() for found in rows
    ]


def scan(folder: Path) -> int:
    """Search `folder`, print what was found; return how much that was."""
    found = 0
    for name, search in (("bandit", bandit_findings), ("detect-secrets", secrets_findings)):
        lines = search(folder)
        print("\n".join(lines) if lines else f"{name}: nothing found")
        found += len(lines)
    return found


if __name__ == "__main__":
    sys.exit(scan(Path(sys.argv[1])) > 0)
