"""Print the pinned requirements of extras of pyproject.toml, one per line: `pins.py dev`, `pins.py vendor test`."""

from __future__ import annotations

import re
import sys
from pathlib import Path

try:
    import tomllib
except ModuleNotFoundError:  # Python 3.10: pip carries the same parser
    from pip._vendor import tomli as tomllib

PYPROJECT = Path(__file__).resolve().parent.parent / "pyproject.toml"


def pins(extra: str) -> list[str]:
    """Return the requirements of `extra`, with references to our own extras expanded."""
    extras = tomllib.loads(PYPROJECT.read_text(encoding="utf-8"))["project"]["optional-dependencies"]
    found: list[str] = []
    for requirement in extras[extra]:
        own = re.fullmatch(r"tideleg\[(.+)\]", requirement)
        for name in own.group(1).split(",") if own else []:
            found += pins(name.strip())
        if not own:
            found.append(requirement)
    return found


if __name__ == "__main__":
    print("\n".join(pin for extra in sys.argv[1:] for pin in pins(extra)))
