"""What may import what: read from every import statement in plugin/, the relative ones that climb out included."""

from __future__ import annotations

import ast
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

PLUGIN = Path(__file__).resolve().parent.parent / "plugin"
MOST_LINES = 400
CORE_LIBRARIES = {"numpy", "shapely", "pyproj", "pygeomag", "astral"}
QGIS_LIBRARIES = {"qgis", "osgeo", "sip"}
# Data moves one way: what each part may take from the others. A part that is not named here is not part of the plan.
# A plan keeps the styles of its layers and reads its moments back, so it may take those two modules and no more.
MAY_USE: dict[str, set[str]] = {
    "core": set(),
    "version": set(),
    "translation": {"core.words", "words"},
    "words": set(),
    "resources": set(),
    "plan_package": {"core", "layers_out.styles", "layers_in.moments", "words"},
    "layers_in": {"core", "plan_package", "version", "words"},
    "layers_out": {"core", "plan_package", "version", "words"},
    "cards": {"core", "layers_out", "version", "words"},
    "map_tools": {"core", "layers_in", "layers_out", "plan_package", "words"},
    "dock": {"core", "layers_in", "layers_out", "plan_package", "cards", "map_tools", "version", "words"},
    "processing": {"core", "layers_in", "layers_out", "plan_package", "cards", "version", "words"},
    "entry": {"processing", "dock", "map_tools", "core", "version", "translation", "words"},
    "__init__": {"entry"},
}
IFACE_PARTS = {"__init__", "entry", "dock", "map_tools"}
# Slow or absent on some machines: never while QGIS starts, only inside the function that needs them.
LAZY_LIBRARIES = {"shapely", "pyproj", "pygeomag", "astral"}
# What QGIS imports when it starts with the plugin enabled.
START_UP = {
    "__init__.py",
    "entry.py",
    "version.py",
    "translation.py",
    "words.py",
    "processing/__init__.py",
    "processing/provider.py",
}


def modules() -> list[str]:
    """Every module of the plugin, as a path below plugin/."""
    paths = (path.relative_to(PLUGIN) for path in PLUGIN.rglob("*.py"))
    return sorted(path.as_posix() for path in paths if path.parts[0] != "vendor")


def part_of(module: str) -> str:
    return module.split("/")[0].removesuffix(".py")


def imports(tree: ast.AST, module: str) -> Iterator[tuple[str, ast.stmt]]:
    """Yield each import as a dotted name: `.core.geodesy` for our own, counted from plugin/, `qgis.core` for others."""
    package = module.split("/")[:-1]
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            yield from ((alias.name, node) for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            if not node.level:
                yield node.module, node
                continue
            climbed = package[: len(package) - (node.level - 1)]
            if node.level - 1 > len(package):
                yield f"{'.' * node.level}{node.module or ''} climbs out of the plugin", node
                continue
            base = [*climbed, *(node.module.split(".") if node.module else [])]
            # `from . import x` names x itself, `from .x import y` names x
            names = [base] if node.module else [[*base, alias.name] for alias in node.names]
            yield from (("." + ".".join(name), node) for name in names)


def parsed(module: str) -> ast.Module:
    return ast.parse((PLUGIN / module).read_text(encoding="utf-8"), filename=module)


def broken_rules(tree: ast.AST, module: str) -> list[str]:
    """Return each import of a module that its part may not make."""
    part = part_of(module)
    if part not in MAY_USE:
        return [f"{module}: the part {part} has no place in the architecture"]
    outside = CORE_LIBRARIES | (set() if part == "core" else QGIS_LIBRARIES) | sys.stdlib_module_names
    found = []
    for name, node in imports(tree, module):
        where = f"{module}:{node.lineno} imports {name}"
        if "climbs out" in name:
            found.append(where)
        elif name.startswith("."):
            if not any(f"{name}.".startswith(f".{allowed}.") for allowed in {part, *MAY_USE[part]}):
                found.append(where)
        elif name.split(".")[0] not in outside:
            found.append(where)
    return found


@pytest.mark.parametrize("module", modules())
def test_imports_only_what_its_part_may_use(module: str) -> None:
    assert broken_rules(parsed(module), module) == []


def file_of(name: str) -> str | None:
    """Return the module that a dotted name of ours means, the package's own file where it names a thing in it."""
    path = name[1:].replace(".", "/")
    return next((one for one in (f"{path}.py", f"{path}/__init__.py") if (PLUGIN / one).is_file()), None)


def circle(needs: dict[str, set[str]]) -> list[str]:
    """Return the modules that need each other in a circle, and those that need them."""
    left = dict(needs)
    # Take away, again and again, what needs nothing that is left.
    while free := [module for module, needed in left.items() if not needed & (left.keys() - {module})]:
        for module in free:
            del left[module]
    return sorted(left)


def test_no_modules_need_each_other_in_a_circle() -> None:
    assert circle({m: {file_of(name) for name, _ in imports(parsed(m), m)} - {None} for m in modules()}) == []


def test_a_circle_of_modules_is_found() -> None:
    assert circle({"a": {"b"}, "b": {"c"}, "c": {"a", "d"}, "d": set()}) == ["a", "b", "c"]
    assert circle({"a": {"a", "b"}, "b": {"c"}, "c": set()}) == []


@pytest.mark.parametrize("module", modules())
def test_is_short_enough_to_read(module: str) -> None:
    lines = (PLUGIN / module).read_text(encoding="utf-8").count("\n")
    assert lines <= MOST_LINES, f"{module} has {lines} lines; split it by idea"


@pytest.mark.parametrize("module", [module for module in modules() if part_of(module) not in IFACE_PARTS])
def test_iface_stays_in_the_interactive_parts(module: str) -> None:
    names = {node.id for node in ast.walk(parsed(module)) if isinstance(node, ast.Name)}
    names |= {
        alias.name for node in ast.walk(parsed(module)) if isinstance(node, ast.ImportFrom) for alias in node.names
    }
    assert "iface" not in names


@pytest.mark.parametrize("module", modules())
def test_slow_libraries_wait_for_the_function_that_needs_them(module: str) -> None:
    """Neither start-up nor the loading of an algorithm may pay for them, nor fail where one is missing."""
    tree = parsed(module)
    inside = {
        id(node)
        for owner in ast.walk(tree)
        if isinstance(owner, (ast.FunctionDef, ast.AsyncFunctionDef)) or is_type_checking(owner)
        for node in ast.walk(owner)
    }
    eager = [name for name, node in imports(tree, module) if id(node) not in inside]
    assert {name.split(".")[0] for name in eager} & LAZY_LIBRARIES == set()


def is_type_checking(node: ast.AST) -> bool:
    """Whether it is `if TYPE_CHECKING:`, which never runs."""
    return isinstance(node, ast.If) and isinstance(node.test, ast.Name) and node.test.id == "TYPE_CHECKING"


def test_start_up_modules_are_all_there() -> None:
    assert set(modules()) >= START_UP


@pytest.mark.parametrize(
    ("module", "source"),
    [
        ("core/geodesy.py", "from qgis.core import QgsPointXY"),
        ("core/geodesy.py", "import PyQt5.QtCore"),
        ("core/geodesy.py", "import scipy"),
        ("core/geodesy.py", "from ..layers_in import marks"),
        ("core/solve/swim.py", "from ... import layers_out"),
        ("core/solve/swim.py", "def f():\n    from ...plan_package.store import open_layer"),
        ("core/geodesy.py", "import tideleg.core.errors"),
        ("layers_in/marks.py", "from tideleg.core import errors"),
        ("layers_in/marks.py", "from ..layers_out import legs"),
        ("layers_in/marks.py", "from .... import something"),
        ("processing/planswim.py", "import pandas"),
        ("processing/planswim.py", "from ..dock import panel"),
        ("helpers/marks.py", "import math"),
    ],
)
def test_a_forbidden_import_is_found(module: str, source: str) -> None:
    assert len(broken_rules(ast.parse(source), module)) == 1


@pytest.mark.parametrize(
    ("module", "source"),
    [
        ("core/geodesy.py", "import math, numpy as np\nfrom .errors import SwimPlanError\nimport pyproj"),
        ("core/solve/swim.py", "from ..water import stream\nfrom . import crossings\nfrom .. import geodesy"),
        ("layers_in/marks.py", "from qgis.core import QgsFeature\nfrom ..core.chart import marks"),
        ("processing/planswim.py", "from ..cards import card\nfrom ..layers_out import legs"),
    ],
)
def test_an_allowed_import_passes(module: str, source: str) -> None:
    assert broken_rules(ast.parse(source), module) == []
