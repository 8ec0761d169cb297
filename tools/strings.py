"""Gather the plugin's words into plugin/i18n/tideleg_<language>.ts, and make the .qm that QGIS loads from them.

    python tools/strings.py          gather, and say how many are not translated yet; then make each .qm
    python tools/strings.py --check  only say what is wrong: words that cannot be gathered or are not translated

A translator changes nothing but the .ts; what is in the code no longer is dropped from it.
"""

from __future__ import annotations

import ast
import shutil
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from xml.etree import ElementTree
from xml.sax.saxutils import escape

ROOT = Path(__file__).resolve().parent.parent
PLUGIN = ROOT / "plugin"
FOLDER = PLUGIN / "i18n"
LANGUAGES = ("de",)
CONTEXT = "Tideleg"
ASKING = ("tr", "_tr", "marked")
# Asked for while the language is not known yet, and shown by ``spoken`` when it is.
KEPT = "marked"
SCHEMA = "plan_package/schema.py"
# Calls whose texts a user reads; a text that stands in one as it is, is not translated.
SHOWING = frozenset(
    """QPushButton QLabel QAction QCheckBox QRadioButton QGroupBox QMenu label setText setToolTip setStatusTip
    setWhatsThis setTitle setWindowTitle setPlaceholderText setAccessibleName setAccessibleDescription setSuffix
    setPrefix setSpecialValueText addAction addItem addItems addRow addTab addButton pushMessage pushInfo pushWarning
    pushSuccess pushCritical reportError setProgressText setHorizontalHeaderLabels setHeaderLabels drawText
    getOpenFileName getSaveFileName getExistingDirectory question warning information critical QTableWidgetItem
    QListWidgetItem QTreeWidgetItem QgsRendererCategory setLabel setName show_hint add_sink add_text
    add_number""".split()
)
# What a reader sees of an algorithm, as these return it.
RETURNING = frozenset("displayName shortHelpString shortDescription longName tags".split())
# The parts of a refusal, which are shown as they are.
REFUSING = frozenset("asked allowed remedy".split())
# The parts whose words are translated, but for modules that refuse only what a programmer can mend:
# docs/translating.md.
TRANSLATED = "core dock map_tools processing cards layers_in layers_out plan_package entry.py".split()
ENGLISH = ("core/results/day_strip", "core/results/route_day")
# Words for programs, not for people, as first argument: names of parameters.
NAMING = frozenset("add_sink add_text add_number".split())


def sources() -> Iterator[tuple[str, ast.Module]]:
    """Each module of the plugin that has translated words: its path below plugin/, and its tree."""
    for path in sorted(PLUGIN.rglob("*.py")):
        name = path.relative_to(PLUGIN).as_posix()
        if name.split("/")[0] in TRANSLATED and not name.startswith(ENGLISH):
            yield name, ast.parse(path.read_text(encoding="utf-8"), filename=name)


def called(call: ast.Call) -> str:
    return call.func.attr if isinstance(call.func, ast.Attribute) else getattr(call.func, "id", "")


def asked_for(call: ast.Call) -> ast.expr | None:
    """The argument that is to be translated; None for a call that asks for no translation."""
    if called(call) in ASKING and len(call.args) == 1:
        return call.args[0]
    if len(call.args) == 2 and is_text(call.args[0]) and call.args[0].value == CONTEXT:
        # By its own name QCoreApplication.translate is known whatever it is given, by another only with a text.
        return call.args[1] if called(call) == "translate" or is_text(call.args[1]) else None
    return None


def is_text(node: ast.AST) -> bool:
    return isinstance(node, ast.Constant) and isinstance(node.value, str)


def words_in(tree: ast.Module) -> list[str]:
    """Every literal that is asked for, in the order of the code."""
    wanted = (asked_for(node) for node in ast.walk(tree) if isinstance(node, ast.Call))
    found = sorted(
        (one for one in wanted if one is not None and is_text(one)), key=lambda one: (one.lineno, one.col_offset)
    )
    return [one.value for one in found]


def schema_texts() -> list[str]:
    """The titles, helps and values' words of the plan's schema, which are put together when it is loaded."""
    sys.path.insert(0, str(ROOT / ".cache" / "python"))
    from tideleg.plan_package.schema import LAYERS

    found = []
    for layer in LAYERS:
        found += [layer.title, layer.help]
        for field in layer.fields:
            found += [field.alias, field.help, field.group, *(field.choices or {}).values(), field.pattern_words]
    return [text for text in found if text]


def gathered() -> dict[str, list[str]]:
    """Every text with the modules it stands in."""
    places: dict[str, list[str]] = {}
    everywhere = [(name, words_in(tree)) for name, tree in sources()]
    for name, texts in [*everywhere, (SCHEMA, schema_texts())]:
        for text in texts:
            known = places.setdefault(text, [])
            if name not in known:
                known.append(name)
    return places


# ---------------------------------------------------------------- what cannot be gathered
def faults(name: str, tree: ast.Module) -> list[str]:
    """What of a module's words would stay English: asked for but not plain, asked for too early, not asked for."""
    found, doors = [], {id(node) for one in ast.walk(tree) if is_door(one) for node in ast.walk(one)}
    inside = {
        id(node) for one in ast.walk(tree) if isinstance(one, (ast.FunctionDef, ast.Lambda)) for node in ast.walk(one)
    }
    for node in ast.walk(tree):
        if not isinstance(node, ast.Call) or id(node) in doors:
            continue
        where = f"plugin/{name}:{node.lineno}"
        asked = asked_for(node)
        if asked is not None and not is_text(asked):
            found.append(f"{where} {ast.unparse(node)[:70]}: only a plain text can be gathered")
        elif asked is not None and called(node) != KEPT and id(node) not in inside:
            found.append(f"{where} {ast.unparse(node)[:70]}: asked for at import, before the language is known")
        plain = shown_plain(node) + refused_plain(node)
        found += [f"{where} {called(node)}: {text!r} is not translated" for text in plain]
    return found + returned_plain(name, tree)


def is_door(node: ast.AST) -> bool:
    """Whether it is what defines the asking itself: def tr(text)."""
    return isinstance(node, ast.FunctionDef) and node.name in (*ASKING, "schema_words", "spoken")


def shown_plain(call: ast.Call) -> list[str]:
    """The texts of a showing call that are words and stand in it as they are, also in parts of a formatted text."""
    defines = called(call).startswith(("QgsProcessingParameter", "QgsProcessingOutput"))
    if called(call) not in SHOWING and not defines:
        return []
    given = call.args[1:2] if defines else call.args[1:] if called(call) in NAMING else call.args
    pieces = [piece for one in given for piece in plain_pieces(one)]
    return [piece for piece in pieces if is_word(piece)]


def refused_plain(call: ast.Call) -> list[str]:
    """The plain texts of an error that says what was asked, what is allowed and what to do."""
    given = [one.value for one in call.keywords if one.arg in REFUSING and called(call).endswith("Error")]
    return [piece for one in given for piece in plain_pieces(one) if is_word(piece)]


def returned_plain(name: str, tree: ast.Module) -> list[str]:
    """What an algorithm says of itself in plain texts."""
    return [
        f"plugin/{name}:{node.lineno} {function.name}: {piece!r} is not translated"
        for function in ast.walk(tree)
        if isinstance(function, ast.FunctionDef) and function.name in RETURNING
        for node in ast.walk(function)
        if isinstance(node, ast.Return) and node.value is not None
        for piece in plain_pieces(node.value)
        if is_word(piece)
    ]


def plain_pieces(node: ast.expr) -> list[str]:
    """The plain texts that an argument is made of."""
    if is_text(node):
        return [node.value]
    if isinstance(node, ast.JoinedStr):
        return [piece.value for piece in node.values if is_text(piece)]
    if isinstance(node, (ast.List, ast.Tuple)):
        return [piece for one in node.elts for piece in plain_pieces(one)]
    if isinstance(node, ast.IfExp):
        return [*plain_pieces(node.body), *plain_pieces(node.orelse)]
    if isinstance(node, ast.Call) and called(node) in ("format", "join") and isinstance(node.func, ast.Attribute):
        return plain_pieces(node.func.value)
    if isinstance(node, ast.BinOp):
        return [*plain_pieces(node.left), *plain_pieces(node.right)]
    return []


# Symbols of units and of the compass, the plugin's own name, and formats that are the same in every language.
SAME_EVERYWHERE = frozenset(
    "m km kn s min h L N M W E S Tideleg JSON GPX PDF CSV SVG PNG json gpx pdf csv svg png".split()
)


def is_word(text: str) -> bool:
    """Whether a text has words in it that differ between languages; markup and names of icons have none."""
    bare = "".join(one if one.isalpha() else " " for one in text).split()
    return not text.startswith(("/", ":", "<")) and any(one not in SAME_EVERYWHERE for one in bare)


# ---------------------------------------------------------------- the files
def ts_file(language: str) -> Path:
    return FOLDER / f"tideleg_{language}.ts"


def read_ts(path: Path) -> dict[str, str]:
    """Source and translation of each finished message; nothing where there is no file."""
    if not path.exists():
        return {}
    messages = ElementTree.parse(path).getroot().iter("message")
    pairs = ((one.findtext("source"), one.find("translation")) for one in messages)
    return {source: one.text for source, one in pairs if one is not None and one.text and one.get("type") is None}


def write_ts(path: Path, language: str, places: dict[str, list[str]], known: dict[str, str]) -> None:
    """Write Qt's TS 2.1: one context, the messages in the order of the modules they stand in first."""
    lines = ['<?xml version="1.0" encoding="utf-8"?>', "<!DOCTYPE TS>"]
    lines += [
        f'<TS version="2.1" language="{language}" sourcelanguage="en">',
        "<context>",
        f"    <name>{CONTEXT}</name>",
    ]
    for text, modules in places.items():
        lines.append("    <message>")
        lines += [f'        <location filename="../{module}"/>' for module in modules]
        lines.append(f"        <source>{escape(text)}</source>")
        done = known.get(text)
        lines.append(f"        <translation>{escape(done)}</translation>" if done else UNFINISHED)
        lines.append("    </message>")
    path.parent.mkdir(exist_ok=True)
    path.write_text("\n".join([*lines, "</context>", "</TS>", ""]), encoding="utf-8")


UNFINISHED = '        <translation type="unfinished"></translation>'


def release(path: Path) -> bool:
    """Make the .qm beside a .ts with Qt's own tool."""
    tool = "/usr/lib/qt5/bin/lrelease"
    tool = tool if Path(tool).exists() else shutil.which("lrelease")
    if tool is None:
        print("Qt's lrelease is missing: Debian has it in qttools5-dev-tools.", file=sys.stderr)
        return False
    return (
        subprocess.run([tool, "-silent", str(path), "-qm", str(path.with_suffix(".qm"))], check=False).returncode == 0
    )


def main(arguments: list[str]) -> int:
    found = [fault for name, tree in sources() for fault in faults(name, tree)]
    print("\n".join(found) if found else "every text that is shown is asked for in the user's language")
    places = gathered()
    only_check = "--check" in arguments
    done = True
    for language in LANGUAGES:
        path = ts_file(language)
        known = read_ts(path)
        lacking = [text for text in places if text not in known]
        print(f"{language}: {len(places)} texts, {len(lacking)} not translated yet")
        if only_check:
            done = done and not lacking
        else:
            write_ts(path, language, places, known)
            done = release(path) and done
    return bool(found) or not done


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
