"""Find QGIS and Qt enum members that are written without their enum's name.

`QgsWkbTypes.Point` works today, only `QgsWkbTypes.Type.Point` works with Qt 6 too. The check follows each dotted name
of a file through the real modules, so it knows aliases, modules imported whole, and `self` in a subclass.

    enum_scopes.py FOLDER...    prints file:line:column and the spelling wanted; exit code 1 when there is any
"""

from __future__ import annotations

import ast
import enum
import sys
from collections.abc import Iterator
from importlib import import_module
from pathlib import Path

ROOTS = ("qgis",)
UNKNOWN = object()


def imported_names(tree: ast.AST) -> dict[str, object]:
    """Return what each name that the file takes from QGIS or Qt stands for."""
    names: dict[str, object] = {}
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            for alias in node.names:
                if alias.name.split(".")[0] in ROOTS:
                    module = import_module(alias.name)
                    top = import_module(alias.name.split(".")[0])
                    names[alias.asname or alias.name.split(".")[0]] = module if alias.asname else top
        elif isinstance(node, ast.ImportFrom) and not node.level and (node.module or "").split(".")[0] in ROOTS:
            module = import_module(node.module)
            for alias in node.names:
                names[alias.asname or alias.name] = getattr(module, alias.name, UNKNOWN)
    return names


def meaning(node: ast.expr, names: dict[str, object]) -> object:
    """Return the object that a dotted name stands for, UNKNOWN where only running the code would tell."""
    if isinstance(node, ast.Name):
        return names.get(node.id, UNKNOWN)
    if isinstance(node, ast.Attribute):
        owner = meaning(node.value, names)
        return UNKNOWN if owner is UNKNOWN else getattr(owner, node.attr, UNKNOWN)
    return UNKNOWN


def enum_of(owner: object, member: str) -> str | None:
    """Return the name that `owner` has for the enum of `owner.member`, None unless the member is reached past it."""
    if not isinstance(owner, type):
        return None
    value = getattr(owner, member, None)
    kind = type(value)
    if kind is owner or kind in (int, bool) or not issubclass(kind, (int, enum.Enum)):
        return None
    # The enum's own name changed between versions (Type became WkbType); the owner keeps the old one as well.
    return next((name for name in dir(owner) if getattr(owner, name, None) is kind), kind.__name__)


def unscoped(node: ast.AST, names: dict[str, object]) -> Iterator[tuple[ast.Attribute, str]]:
    """Yield each unscoped member below `node`, with the spelling wanted."""
    if isinstance(node, ast.ClassDef):
        bases = [base for base in (meaning(base, names) for base in node.bases) if isinstance(base, type)]
        if bases:
            names = {**names, "self": bases[0], "cls": bases[0], node.name: bases[0]}
    if isinstance(node, ast.Attribute):
        enum_name = enum_of(meaning(node.value, names), node.attr)
        if enum_name:
            yield node, f"{ast.unparse(node.value)}.{enum_name}.{node.attr}"
    for child in ast.iter_child_nodes(node):
        yield from unscoped(child, names)


def findings(path: Path) -> list[str]:
    """Return one line for each unscoped member in a file."""
    tree = ast.parse(path.read_text(encoding="utf-8"), filename=str(path))
    return [
        f"{path}:{node.lineno}:{node.col_offset + 1} write {wanted}"
        for node, wanted in unscoped(tree, imported_names(tree))
    ]


def main(folders: list[str]) -> int:
    lines = [line for folder in folders for path in sorted(Path(folder).rglob("*.py")) for line in findings(path)]
    print("\n".join(lines) if lines else "enum scopes: nothing found")
    return bool(lines)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
