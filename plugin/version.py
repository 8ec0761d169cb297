"""The plugin's version, as metadata.txt states it."""

from __future__ import annotations

from configparser import ConfigParser
from functools import lru_cache
from pathlib import Path

HERE = Path(__file__).resolve().parent


@lru_cache(maxsize=1)
def tideleg_version() -> str:
    """Return the version `x.y.z`; metadata.txt lies beside the code when installed, one folder up in a checkout."""
    beside = HERE / "metadata.txt"
    parser = ConfigParser(interpolation=None)
    parser.read_string((beside if beside.exists() else HERE.parent / "metadata.txt").read_text(encoding="utf-8"))
    return parser["general"]["version"]
