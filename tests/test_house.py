"""The gates themselves: what they must find they find, and the files around the code agree with each other."""

from __future__ import annotations

import ast
import os
import re
import sqlite3
import subprocess
import sys
import zipfile
from configparser import ConfigParser
from importlib.util import find_spec
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT / "tools"))

import make_zip  # noqa: E402
import pins  # noqa: E402
import scan  # noqa: E402
import shipped_sample  # noqa: E402
from tideleg.core import vendored  # noqa: E402
from tideleg.version import tideleg_version  # noqa: E402

# What the plugin site asks of metadata.txt; it refuses an upload without one of them.
NEEDED_KEYS = (
    "name description about version qgisMinimumVersion author email homepage repository tracker icon "
    "hasProcessingProvider"
).split()


@pytest.fixture(scope="module")
def metadata() -> dict[str, str]:
    parser = ConfigParser(interpolation=None)
    parser.optionxform = str
    parser.read(ROOT / "metadata.txt", encoding="utf-8")
    return dict(parser["general"])


def test_metadata_has_what_the_plugin_site_asks(metadata) -> None:
    assert [key for key in NEEDED_KEYS if not metadata.get(key, "").strip()] == []
    assert re.fullmatch(r"\d+\.\d+\.\d+", metadata["version"])
    assert (metadata["qgisMinimumVersion"], metadata["qgisMaximumVersion"]) == ("3.22", "4.99")
    assert (ROOT / "plugin" / metadata["icon"]).is_file()
    assert "supportsQt6" not in metadata


def test_one_version_everywhere(metadata) -> None:
    project = pins.tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    assert project["version"] == metadata["version"] == tideleg_version()


def test_every_pinned_tool_has_one_exact_version() -> None:
    found = pins.pins("dev")
    assert [pin for pin in found if not re.match(r"[\w-]+==[\d.]+(;|$)", pin)] == []
    names = [pin.split("==")[0] for pin in found]
    assert len(names) == len(set(names))
    assert {"pygeomag", "astral", "pytest", "ruff"} <= set(names)


def test_licence_is_the_text_that_metadata_names(metadata) -> None:
    text = (ROOT / "LICENSE").read_text(encoding="utf-8")
    assert metadata["license"] == "GPL-2.0-or-later"
    assert "Version 2, June 1991" in text
    assert "either version 2 of the License, or" in text


def test_run_help_names_every_command() -> None:
    done = subprocess.run([ROOT / "run", "help"], capture_output=True, text=True, check=True)
    named = [line.split()[0] for line in done.stdout.splitlines()[1:]]
    assert {"demo", "test", "qgis", "bench", "check", "zip", "help"} <= set(named)
    assert all(len(line.split()) > 2 for line in done.stdout.splitlines()[1:])


def test_run_refuses_a_command_it_does_not_have() -> None:
    done = subprocess.run([ROOT / "run", "sail"], capture_output=True, text=True, check=False)
    assert done.returncode == 1
    assert "no command 'sail'" in done.stderr


# ---------------------------------------------------------------- enum scopes
@pytest.mark.parametrize(
    ("source", "wanted"),
    [
        ("from qgis.core import QgsWkbTypes\nx = QgsWkbTypes.Point", ["QgsWkbTypes.Type.Point"]),
        ("from qgis.core import QgsWkbTypes as W\nx = W.Point", ["W.Type.Point"]),
        ("import qgis.core\nx = qgis.core.QgsWkbTypes.Point", ["qgis.core.QgsWkbTypes.Type.Point"]),
        ("from qgis.PyQt import QtCore\nx = QtCore.Qt.AlignLeft", ["QtCore.Qt.AlignmentFlag.AlignLeft"]),
        ("from qgis.PyQt.QtCore import QVariant\nx = QVariant.Double", ["QVariant.Type.Double"]),
        (
            "from qgis.core import QgsProcessingAlgorithm\n"
            "class A(QgsProcessingAlgorithm):\n    def flags(self):\n        return self.FlagNoThreading",
            ["self.Flag.FlagNoThreading"],
        ),
        ("from qgis.core import QgsWkbTypes\nx = QgsWkbTypes.Type.Point", []),
        ("from qgis.core import Qgis\nx = Qgis.MessageLevel.Warning", []),
        ("from qgis.core import Qgis\nx = Qgis.QGIS_VERSION_INT", []),
        ("from qgis.core import QgsTask\nx = QgsTask.Flag.CanCancel", []),
        ("from enum import Enum\nclass A(Enum):\n    B = 1\nx = A.B", []),
    ],
)
def test_enum_members_are_found_when_their_enum_is_left_out(tmp_path, source: str, wanted: list[str]) -> None:
    pytest.importorskip("qgis.core")
    import enum_scopes

    path = tmp_path / "some.py"
    path.write_text(source, encoding="utf-8")
    assert [line.split(" write ")[1] for line in enum_scopes.findings(path)] == wanted
    assert enum_scopes.main([str(tmp_path)]) == bool(wanted)


# ---------------------------------------------------------------- what the plugin site searches for
@pytest.mark.skipif(find_spec("bandit") is None, reason="the lint tools are not installed here")
def test_bandit_runs_with_the_sites_rules(tmp_path) -> None:
    (tmp_path / "fine.py").write_text("x = 1\n", encoding="utf-8")
    assert scan.bandit_findings(tmp_path) == []
    (tmp_path / "poor.py").write_text("import subprocess, random\nassert random.random() < 1\n", encoding="utf-8")
    assert {line.split()[1] for line in scan.bandit_findings(tmp_path)} == {"B101", "B311"}


@pytest.mark.skipif(find_spec("detect_secrets") is None, reason="the lint tools are not installed here")
def test_a_key_in_the_code_is_found(tmp_path) -> None:
    (tmp_path / "fine.py").write_text("key = input()\n", encoding="utf-8")
    assert scan.secrets_findings(tmp_path) == []
    invented_key = "AKIA" + "QX7ZP2LMN4RT6VWY"  # in two parts, so that this file passes the same search
    (tmp_path / "poor.py").write_text(f'key = "{invented_key}"\n', encoding="utf-8")
    assert any("AWS" in line for line in scan.secrets_findings(tmp_path))


# ---------------------------------------------------------------- the zip
def good_tree(folder: Path) -> Path:
    names = [*make_zip.NEEDED]
    names += [f"vendor/{name}/__init__.py" for name in ("astral", "pygeomag", "tzdata")]
    for name in names:
        (folder / "tideleg" / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / "tideleg" / name).write_text(name, encoding="utf-8")
    return folder


def packed(folder: Path, target: Path) -> Path:
    make_zip.write_zip(folder, target)
    return target


def test_the_zip_of_one_tree_is_always_the_same_file(tmp_path) -> None:
    tree = good_tree(tmp_path / "tree")
    first = packed(tree, tmp_path / "1.zip")
    os.utime(tree / "tideleg" / "LICENSE", (1, 1))
    assert first.read_bytes() == packed(tree, tmp_path / "2.zip").read_bytes()
    assert make_zip.faults(first) == []
    with zipfile.ZipFile(first) as archive:
        assert archive.read("tideleg/LICENSE") == b"LICENSE"


@pytest.mark.parametrize(
    ("change", "fault"),
    [
        (lambda tree: (tree / "tideleg/LICENSE").unlink(), "tideleg/LICENSE is missing"),
        (lambda tree: (tree / "tideleg/vendor/astral/__init__.py").unlink(), "astral/__init__.py is missing"),
        (lambda tree: (tree / "notes.txt").write_text("x"), "notes.txt lies outside tideleg/"),
        (lambda tree: (tree / "tideleg/old.pyc").write_text("x"), "tideleg/old.pyc does not belong"),
    ],
)
def test_a_zip_of_the_wrong_shape_is_refused(tmp_path, change, fault: str) -> None:
    tree = good_tree(tmp_path / "tree")
    change(tree)
    found = make_zip.faults(packed(tree, tmp_path / "bad.zip"))
    assert len(found) == 1
    assert fault in found[0]


def test_translators_sources_stay_out_of_the_zip_and_what_qgis_loads_goes_in(tmp_path) -> None:
    for name in ("tideleg_de.ts", "tideleg_de.qm"):
        (tmp_path / "i18n" / name).parent.mkdir(exist_ok=True)
        (tmp_path / "i18n" / name).touch()
    make_zip.drop_sources(tmp_path)
    assert [path.name for path in (tmp_path / "i18n").iterdir()] == ["tideleg_de.qm"]


def test_the_sample_for_the_zip_keeps_nothing_of_when_it_was_made(tmp_path) -> None:
    no_value = "{2839923C-8B7D-419E-B84B-CA2FE9B80EC7}"  # qgsvaluemapfieldformatter.cpp, NULL_VALUE
    made = []
    for number in (1, 2):
        plan = tmp_path / f"{number}.gpkg"
        package = sqlite3.connect(plan)
        package.execute("CREATE TABLE layer_styles (id INTEGER PRIMARY KEY, styleQML TEXT, update_time TEXT)")
        rule, other = f"{{{number}0000000-0000-4000-8000-000000000000}}", "{aaaaaaaa-0000-4000-8000-000000000000}"
        style = f'<rule key="{rule}"/><value v="{no_value}"/><rule key="{other}" same="{rule}"/>'
        package.execute("INSERT INTO layer_styles VALUES (1, ?, ?)", (style, f"2027-01-0{number}T00:00:00Z"))
        package.commit()
        package.close()
        shipped_sample.make_steady(plan)
        made.append(plan.read_bytes())
    assert made[0] == made[1]
    package = sqlite3.connect(tmp_path / "1.gpkg")
    (kept,) = package.execute("SELECT styleQML FROM layer_styles").fetchone()
    package.close()
    first, second, third = re.findall(r'(?:key|same)="([^"]+)"', kept)
    assert first == third != second and no_value in kept


def test_a_zip_over_the_sites_limit_is_refused(tmp_path, monkeypatch) -> None:
    target = packed(good_tree(tmp_path / "tree"), tmp_path / "big.zip")
    monkeypatch.setattr(make_zip, "MOST_BYTES", target.stat().st_size - 1)
    assert "are allowed" in make_zip.faults(target)[0]


# ---------------------------------------------------------------- libraries inside the zip
def without_installed(monkeypatch, *names: str) -> None:
    """Make the machine look as if these libraries were installed nowhere but on the rest of sys.path."""
    for name in [*sys.modules]:
        if name.split(".")[0] in names:
            monkeypatch.delitem(sys.modules, name)
    kept = [path for path in sys.path if not any((Path(path or ".") / name).exists() for name in names)]
    monkeypatch.setattr(sys, "path", kept)


def test_libraries_inside_the_plugin_are_used_when_none_are_installed(tmp_path, monkeypatch) -> None:
    without_installed(monkeypatch, "astral", "pygeomag", "tzdata")
    for name in vendored.NEEDED:
        (tmp_path / name).mkdir()
        (tmp_path / name / "__init__.py").write_text("carried = True\n", encoding="utf-8")
    monkeypatch.setattr(vendored, "VENDOR_FOLDER", tmp_path)
    vendored.ensure_vendored()
    vendored.ensure_vendored()
    assert sys.path[-1] == str(tmp_path)
    assert sys.path.count(str(tmp_path)) == 1
    assert Path(find_spec("astral").origin).parent.parent == tmp_path


def test_libraries_on_the_machine_win_over_those_inside_the_plugin(tmp_path, monkeypatch) -> None:
    (tmp_path / "astral").mkdir()
    (tmp_path / "astral" / "__init__.py").write_text("carried = True\n", encoding="utf-8")
    monkeypatch.setattr(sys, "path", [*sys.path])
    monkeypatch.setattr(vendored, "VENDOR_FOLDER", tmp_path)
    vendored.ensure_vendored()
    assert Path(find_spec("astral").origin).parent.parent != tmp_path


def test_a_library_that_is_nowhere_is_named_with_the_remedy(tmp_path, monkeypatch) -> None:
    without_installed(monkeypatch, "astral", "pygeomag", "tzdata")
    (tmp_path / "astral").mkdir()
    (tmp_path / "astral" / "__init__.py").touch()
    monkeypatch.setattr(vendored, "VENDOR_FOLDER", tmp_path)
    with pytest.raises(ImportError, match=r"needs pygeomag, .*Install the plugin from its zip"):
        vendored.ensure_vendored()


# ---------------------------------------------------------------- rules of the house
def test_imports_of_qgis_stay_out_of_the_tests_of_the_core() -> None:
    """So that tests/core can run where there is no QGIS."""
    found = []
    for path in sorted((ROOT / "tests" / "core").rglob("*.py")):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            names = [alias.name for alias in node.names] if isinstance(node, ast.Import) else []
            names += [node.module or ""] if isinstance(node, ast.ImportFrom) else []
            found += [f"{path.name}:{node.lineno} {name}" for name in names if name.split(".")[0] == "qgis"]
    assert found == []
