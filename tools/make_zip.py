"""Build dist/tideleg-x.y.z.zip from the last commit, and search it as the plugin site does.

One top folder `tideleg`: plugin/, metadata.txt, LICENSE, docs/, the pinned pure-Python libraries in vendor/ and the
sample plan in sample/.
"""

from __future__ import annotations

import shutil
import subprocess
import sys
import tempfile
import zipfile
from configparser import ConfigParser
from pathlib import Path

from pins import pins
from scan import scan
from shipped_sample import make_sample

ROOT = Path(__file__).resolve().parent.parent
TOP = "tideleg"
MOST_BYTES = 25_000_000
UNWANTED = ("__pycache__", "tests", "test", "bin", "INSTALLER", "REQUESTED", "RECORD")
TEXTS = ("metadata.txt", "LICENSE", "docs")
FOR_SAMPLE = ("plugin", "sample_layers", "metadata.txt")
SAMPLE = "sample/invented_bay.gpkg"
NEEDED = ("__init__.py", "metadata.txt", "LICENSE", "resources/icon.png", "docs/dock.md", SAMPLE, "i18n/tideleg_de.qm")


def from_commit(tree: str, paths: tuple[str, ...], target: Path) -> None:
    """Unpack paths of a committed tree below `target`."""
    packed = subprocess.run(["git", "archive", tree, *paths], cwd=ROOT, capture_output=True, check=True).stdout
    target.mkdir(parents=True, exist_ok=True)
    subprocess.run(["tar", "-xf", "-", "-C", str(target)], input=packed, check=True)


def committed(paths: tuple[str, ...]) -> tuple[str, ...]:
    """Return those of `paths` that the last commit has."""
    command = ["git", "ls-tree", "--name-only", "HEAD", *paths]
    return tuple(subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=True).stdout.split())


def add_vendored(target: Path) -> None:
    """Fetch the pinned libraries, without their tests; their licence texts stay beside them."""
    pip = [sys.executable, "-m", "pip", "install", "--quiet", "--disable-pip-version-check"]
    wheels_only = ["--no-deps", "--no-compile", "--only-binary=:all:"]
    subprocess.run([*pip, *wheels_only, "--target", str(target), *pins("vendor")], check=True)
    for path in sorted(target.rglob("*"), reverse=True):
        if path.name in UNWANTED:
            shutil.rmtree(path) if path.is_dir() else path.unlink()


def add_sample(target: Path) -> None:
    """Make the sample plan with the commit's own scripts."""
    with tempfile.TemporaryDirectory() as scratch:
        from_commit("HEAD", FOR_SAMPLE, Path(scratch))
        make_sample(Path(scratch), target)


def drop_sources(folder: Path) -> None:
    """Take out what only translators need; QGIS loads the .qm beside it."""
    for path in folder.glob("i18n/*.ts"):
        path.unlink()


def write_zip(folder: Path, target: Path) -> None:
    """Pack `folder`, in order of names and with one date, so that the same commit gives the same file."""
    with zipfile.ZipFile(target, "w", zipfile.ZIP_DEFLATED, compresslevel=9) as archive:
        for path in sorted(folder.rglob("*")):
            if path.is_file():
                info = zipfile.ZipInfo(path.relative_to(folder).as_posix(), (2020, 1, 1, 0, 0, 0))
                info.external_attr = 0o644 << 16
                archive.writestr(info, path.read_bytes(), zipfile.ZIP_DEFLATED, 9)


def faults(target: Path) -> list[str]:
    """Return what the plugin site would refuse in the shape of the zip."""
    with zipfile.ZipFile(target) as archive:
        names = archive.namelist()
    wanted = [f"{TOP}/{name}" for name in NEEDED]
    wanted += [f"{TOP}/vendor/{name}/__init__.py" for name in ("astral", "pygeomag", "tzdata")]
    found = [f"{name} is missing" for name in wanted if name not in names]
    found += [f"{name} lies outside {TOP}/" for name in names if not name.startswith(f"{TOP}/")]
    found += [f"{name} does not belong" for name in names if "__pycache__" in name or name.endswith((".pyc", ".so"))]
    if target.stat().st_size > MOST_BYTES:
        found.append(f"{target.stat().st_size} bytes, at most {MOST_BYTES} are allowed")
    return found


def version() -> str:
    parser = ConfigParser(interpolation=None)
    parser.read(ROOT / "metadata.txt", encoding="utf-8")
    return parser["general"]["version"]


def build(target: Path) -> None:
    """Write the zip of the last commit to `target`."""
    with tempfile.TemporaryDirectory() as scratch:
        top = Path(scratch) / TOP
        from_commit("HEAD:plugin", (), top)
        from_commit("HEAD", committed(TEXTS), top)
        drop_sources(top)
        add_sample(top / SAMPLE)
        add_vendored(top / "vendor")
        target.parent.mkdir(parents=True, exist_ok=True)
        write_zip(Path(scratch), target)


def main() -> int:
    target = ROOT / "dist" / f"{TOP}-{version()}.zip"
    build(target)
    found = faults(target)
    print("\n".join(found) if found else f"shape: one folder, {target.stat().st_size / 1e6:.1f} MB")
    with tempfile.TemporaryDirectory() as scratch:
        with zipfile.ZipFile(target) as archive:
            archive.extractall(scratch)
        count = len(found) + scan(Path(scratch))
    print(f"{target.relative_to(ROOT)}: {f'{count} FINDINGS, not fit to publish' if count else 'fit to publish'}")
    return bool(count)


if __name__ == "__main__":
    sys.exit(main())
