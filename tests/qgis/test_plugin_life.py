"""The plugin comes into QGIS lightly and goes without a trace."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
import tideleg
from desk import Desk
from qgis.core import QgsApplication
from qgis.PyQt.QtCore import QCoreApplication, QEvent, QObject
from qgis.PyQt.QtWidgets import QAction, QMainWindow
from tideleg.entry import submenus
from tideleg.processing import provider as provider_module
from tideleg.processing.provider import ALGORITHMS, TidelegProvider, load_algorithm

# Slow to import, or absent on some machines: QGIS's start must not pay for them. (QGIS's own Processing has numpy.)
LATE = ("shapely", "pyproj", "pygeomag", "astral")


def provider_ids() -> list[str]:
    return sorted(provider.id() for provider in QgsApplication.processingRegistry().providers())


def flush_deletions() -> None:
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def remains(window: QMainWindow) -> tuple[list[str], int, list[str]]:
    """What a plugin could leave behind: actions, anything else owned by the window, providers."""
    flush_deletions()
    actions = [action.text() for action in window.findChildren(QAction)]
    return actions, len(window.findChildren(QObject)), provider_ids()


def test_ten_lives_leave_nothing_behind(qgis_iface) -> None:
    window = qgis_iface.mainWindow()
    before = remains(window)
    assert "tideleg" not in before[2]
    for _ in range(10):
        plugin = tideleg.classFactory(qgis_iface)
        plugin.initGui()
        during = remains(window)
        assert "tideleg" in during[2]
        shown = len(ALGORITHMS) + len(submenus()) + 2 + (plugin.help_action is not None)
        assert len(during[0]) - len(before[0]) == shown
        plugin.unload()
        assert remains(window) == before


def test_the_menu_goes_by_the_job_and_every_algorithm_stands_in_it_once(qgis_app) -> None:
    desk = Desk()
    plugin = tideleg.classFactory(desk)
    plugin.initGui()
    try:
        titles = [action.text() for action in desk.menu.actions()]
        assert titles[:2] == ["Tideleg dock", "Walk through the sample"]
        assert titles[2:6] == ["Plan", "Read Data", "Swim", "Take Along"]
        names = [action.text() for menu in plugin.menus for action in menu.actions()]
        assert sorted(names) == sorted(f"{one.displayName()}…" for one in plugin.provider.algorithms())
        assert sorted(name for _, names in submenus() for name in names) == sorted(name for name, _ in ALGORITHMS)
    finally:
        plugin.unload()
    assert desk.menu.actions() == []
    desk.window.deleteLater()
    flush_deletions()


def test_unload_before_anything_was_set_up_is_harmless(qgis_iface) -> None:
    before = remains(qgis_iface.mainWindow())
    tideleg.classFactory(qgis_iface).unload()
    assert remains(qgis_iface.mainWindow()) == before


def test_without_a_desktop_only_the_provider_comes(qgis_app) -> None:
    plugin = tideleg.classFactory(None)
    plugin.initProcessing()
    try:
        assert "tideleg" in provider_ids()
    finally:
        plugin.unload()
    assert "tideleg" not in provider_ids()


@pytest.mark.parametrize(("module", "class_name"), ALGORITHMS)
def test_each_algorithm_loads_and_is_named_after_its_module(module: str, class_name: str) -> None:
    algorithm = load_algorithm(module, class_name)
    assert algorithm.name() == module
    assert algorithm.displayName()
    assert algorithm.shortHelpString()
    assert type(algorithm.createInstance()) is type(algorithm)


def test_each_module_that_holds_an_algorithm_is_listed() -> None:
    folder = Path(provider_module.__file__).parent
    holding = {path.stem for path in folder.glob("*.py") if "    def name(self)" in path.read_text("utf-8")}
    assert holding - {"provider"} == {module for module, _ in ALGORITHMS}


@contextmanager
def registered(provider: TidelegProvider) -> Iterator[TidelegProvider]:
    QgsApplication.processingRegistry().addProvider(provider)
    try:
        yield provider
    finally:
        QgsApplication.processingRegistry().removeProvider(provider)


def test_the_provider_offers_every_listed_algorithm(qgis_app) -> None:
    with registered(TidelegProvider()) as provider:
        assert {algorithm.name() for algorithm in provider.algorithms()} == {module for module, _ in ALGORITHMS}
        assert not provider.icon().isNull()
        assert Path(provider.svgIconPath()).exists()


def test_an_algorithm_that_cannot_be_loaded_is_reported_and_spares_the_others(qgis_app, monkeypatch) -> None:
    messages: list[tuple[str, str]] = []
    log = QgsApplication.messageLog()
    receive = lambda text, tag, _level: messages.append((text, tag))  # noqa: E731  disconnected by the same object
    log.messageReceived.connect(receive)
    monkeypatch.setattr(provider_module, "ALGORITHMS", (("no_such_swim", "NoSuchSwim"), *ALGORITHMS))
    try:
        with registered(TidelegProvider()) as provider:
            assert len(provider.algorithms()) == len(ALGORITHMS)
    finally:
        log.messageReceived.disconnect(receive)
    assert [tag for text, tag in messages if "no_such_swim" in text and "ModuleNotFoundError" in text] == ["Tideleg"]


def run_here(command: list[str], **environment: str) -> subprocess.CompletedProcess[str]:
    """Run a command that sees the same packages as this process."""
    known = os.pathsep.join(path for path in sys.path if path)
    environment = {**os.environ, "PYTHONPATH": known, **environment}
    return subprocess.run(command, capture_output=True, text=True, env=environment, timeout=120, check=False)


def test_start_up_imports_nothing_slow(root: Path) -> None:
    done = run_here([sys.executable, str(root / "tools" / "start_up.py")])
    assert done.returncode == 0, done.stderr
    measured = json.loads(done.stdout.splitlines()[-1])
    assert "tideleg" in measured["loaded"]
    assert set(measured["loaded"]) & set(LATE) == set()


DESKTOP_SCRIPT = """
import json, os, sys
from qgis.core import QgsApplication
from qgis.PyQt.QtCore import QCoreApplication, QEvent, QTimer
from qgis.PyQt.QtWidgets import QAction
from qgis.utils import iface, loadPlugin, startPlugin, unloadPlugin

def texts(menu):
    return sorted(action.text().replace("&", "") for action in menu.actions() if action.text())

def menus():
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    providers = sorted(one.id() for one in QgsApplication.processingRegistry().providers())
    # What QGIS itself keeps of an emptied submenu is in no menu any more and belongs to the Plugins menu.
    window = iface.mainWindow()
    actions = sum(1 for one in window.findChildren(QAction) if one.associatedWidgets() or one.parent() is window)
    plugins, helps = texts(iface.pluginMenu()), texts(iface.pluginHelpMenu())
    return {"plugins": plugins, "help": helps, "providers": providers}, actions

def look():
    seen = {"with": [], "without": [], "actions": []}
    for _ in range(10):
        loadPlugin("tideleg") and startPlugin("tideleg")
        seen["with"].append(menus()[0])
        unloadPlugin("tideleg")
        state, actions = menus()
        seen["without"].append(state)
        seen["actions"].append(actions)
    with open(os.environ["TIDELEG_SEEN"], "w") as out:
        json.dump(seen, out)
    os._exit(0)

QTimer.singleShot(500, look)
"""


@contextmanager
def screen() -> Iterator[str]:
    """A screen of its own for the desktop; Xvfb chooses a free number and writes it."""
    readable, writable = os.pipe()
    command = ["Xvfb", "-displayfd", str(writable), "-screen", "0", "1280x900x24", "-nolisten", "tcp"]
    server = subprocess.Popen(command, pass_fds=[writable], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    os.close(writable)
    try:
        with os.fdopen(readable) as numbers:
            yield f":{numbers.readline().strip()}"
    finally:
        server.terminate()
        server.wait(timeout=10)


@pytest.mark.skipif(not shutil.which("Xvfb"), reason="needs Xvfb")
def test_ten_lives_in_the_real_desktop_leave_nothing_behind(tmp_path: Path, root: Path) -> None:
    desktop = shutil.which("qgis.bin") or shutil.which("qgis")
    if desktop is None:
        pytest.skip("QGIS's desktop is not installed")
    script, seen_file = tmp_path / "look.py", tmp_path / "seen.json"
    script.write_text(DESKTOP_SCRIPT, encoding="utf-8")
    with screen() as display:
        done = run_here(
            [desktop, "--nologo", "--noversioncheck", "--profiles-path", str(tmp_path), "--code", str(script)],
            QT_QPA_PLATFORM="xcb",
            DISPLAY=display,
            QGIS_PLUGINPATH=str(root / ".cache" / "python"),
            TIDELEG_SEEN=str(seen_file),
        )
    assert seen_file.exists(), done.stderr
    seen = json.loads(seen_file.read_text(encoding="utf-8"))
    for state in seen["with"]:
        assert "Tideleg" in state["plugins"] or not ALGORITHMS
        assert "tideleg" in state["providers"]
    assert all(state == seen["without"][0] for state in seen["without"])
    assert "Tideleg" not in seen["without"][0]["plugins"] + seen["without"][0]["help"]
    assert "tideleg" not in seen["without"][0]["providers"]
    assert len(set(seen["actions"])) == 1, "each life leaves actions behind"
