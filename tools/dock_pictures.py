"""Opens the real QGIS under Xvfb on the sample plan and takes a picture of the dock in each of its states.

    python tools/dock_pictures.py [folder]        (out/dock unless named; each at two scalings of the screen)

The same file runs outside, where it starts the screen and QGIS, and inside QGIS through `--code`. Every picture is
looked at: a blank one ends the run with an error.
"""

from __future__ import annotations

import argparse
import os
import shutil
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

SIZE = (1280, 800)
LIMIT_S = 300


def checkout() -> Path:
    """The checkout; inside QGIS, which runs this text and not the file, nobody asks."""
    return Path(__file__).resolve().parents[1]


def main(folder: Path, sample: Path, scales: list[str]) -> int:
    """Take all pictures; 0 when each is there and none is blank."""
    folder.mkdir(parents=True, exist_ok=True)
    for old in folder.glob("*.png"):
        old.unlink()
    desktop = shutil.which("qgis.bin") or shutil.which("qgis")
    if not desktop or not shutil.which("Xvfb"):
        print("This needs QGIS's desktop and Xvfb.", file=sys.stderr)
        return 1
    if not sample.exists():
        print(f"There is no {sample}: sample_layers/make_bay.py makes it.", file=sys.stderr)
        return 1
    for scale in scales:
        code = run_qgis(desktop, folder, sample, scale)
        if code:
            return code
    pictures = sorted(folder.glob("*.png"))
    print("\n".join(map(str, pictures)))
    return 0 if pictures else 1


def run_qgis(desktop: str, folder: Path, sample: Path, scale: str) -> int:
    """One QGIS at one scaling of the screen; at 2 the screen is twice as large in pixels."""
    profile = checkout() / ".cache" / "pictures-profile"
    shutil.rmtree(profile, ignore_errors=True)
    settings = profile / "profiles" / "default" / "QGIS" / "QGIS3.ini"
    settings.parent.mkdir(parents=True)
    settings.write_text("[PythonPlugins]\ntideleg=true\n[qgis]\ncheckVersion=false\n", encoding="utf-8")
    with screen(int(scale)) as display:
        environment = {
            **os.environ,
            "QT_QPA_PLATFORM": "xcb",
            "DISPLAY": display,
            "QT_SCALE_FACTOR": scale,
            "QGIS_PLUGINPATH": str(checkout() / ".cache" / "python"),
            "PYTHONPATH": os.pathsep.join(path for path in sys.path if path),
            "TIDELEG_PICTURES": str(folder.resolve()),
            "TIDELEG_SAMPLE": str(sample.resolve()),
        }
        command = [desktop, "--nologo", "--noversioncheck", "--profiles-path", str(profile), "--profile", "default"]
        done = subprocess.run(
            [*command, "--code", str(Path(__file__).resolve())],
            env=environment,
            timeout=LIMIT_S,
            check=False,
            capture_output=True,
            text=True,
        )
    if done.returncode:
        print(done.stdout[-3000:], done.stderr[-3000:], file=sys.stderr)
    return done.returncode


@contextmanager
def screen(scale: int) -> Iterator[str]:
    """A screen of its own; Xvfb chooses a free number and writes it."""
    readable, writable = os.pipe()
    size = f"{SIZE[0] * scale}x{SIZE[1] * scale}x24"
    command = ["Xvfb", "-displayfd", str(writable), "-screen", "0", size, "-nolisten", "tcp"]
    server = subprocess.Popen(command, pass_fds=[writable], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    os.close(writable)
    try:
        with os.fdopen(readable) as numbers:
            yield f":{numbers.readline().strip()}"
    finally:
        server.terminate()
        server.wait(timeout=10)


def inside() -> None:
    """In QGIS: walk through the states, one picture each."""
    import traceback

    from qgis.PyQt.QtCore import QTimer

    def walk() -> None:
        code = 0
        try:
            take_all()
        except Exception:
            traceback.print_exc()
            code = 1
        os._exit(code)  # without the question whether to save

    QTimer.singleShot(1500, walk)


def take_all() -> None:
    """Every state at this scaling."""
    from qgis.core import QgsApplication, QgsProject
    from qgis.PyQt.QtCore import QEventLoop, QTimer
    from qgis.utils import iface, plugins

    scale = os.environ["QT_SCALE_FACTOR"]
    window = iface.mainWindow()
    window.showNormal()
    window.setGeometry(0, 0, *SIZE)
    plugin = plugins["tideleg"]
    plugin.show_dock(True)
    dock = plugin.dock

    def settle() -> None:
        loop, look = QEventLoop(), QTimer()
        look.timeout.connect(lambda: dock.session.stage == "settled" and loop.quit())
        look.start(50)
        loop.exec()
        look.stop()
        canvas = iface.mapCanvas()
        canvas.waitWhileRendering()
        QTimer.singleShot(700, loop.quit)
        loop.exec()

    def take(name: str, section: object | None = None, of: object = window, *, scrolled: bool = False) -> None:
        settle()
        if not scrolled:
            dock.area.verticalScrollBar().setValue(dock.frames[section].y() if section is not None else 0)
            settle()
        picture = of.grab().toImage()
        colours = {picture.pixel(x, y) for x in range(0, picture.width(), 7) for y in range(0, picture.height(), 7)}
        if len(colours) < 10:
            raise RuntimeError(f"{name} is blank")
        picture.save(str(Path(os.environ["TIDELEG_PICTURES"]) / f"{name}{'' if scale == '1' else '-x2'}.png"))

    def ask(section: object) -> None:
        section.start()
        while section.ask.isHidden():
            settle()

    def depart(text: str) -> None:
        editor = dock.swim.depart
        editor.setDateTime(editor.dateTimeFromText(text))

    take("01-start")
    dock.session.open_plan(os.environ["TIDELEG_SAMPLE"])
    dock.walk.begin()
    dock.walk.go_to(3)
    take("02-walk", scrolled=True)
    dock.walk.finish()
    dock.session.choose_route("Inner reef and home")
    depart("2027-06-26  10:00")
    take("03-plan-and-draw")
    take("04-water", dock.water)
    take("05-swim-and-legs", dock.swim)
    dock.time.slider.setValue(dock.time.slider.maximum() // 3)
    take("06-play", dock.time)
    dock.mind.table.open(0)
    take("07-mind-and-turn-back", dock.mind)
    ask(dock.when)
    take("08-when", dock.when)
    ask(dock.reach)
    take("09-how-far", dock.reach)
    ask(dock.order)
    take("10-order", dock.order)
    take("11-take-along", dock.take)
    take("12-transits", dock.transits)
    take("13-shore-contact", dock.sheet)
    tides = dock.tables.windows.open("tides")
    take("14-table", dock.tables, tides)
    tides.close()
    dock.session.choose_route("Round by the Spindle")
    take("15-cannot-be-swum", dock.swim)
    QgsApplication.setUITheme("Night Mapping")
    take("16-dark-water", dock.water)
    take("17-dark-legs", dock.legs)
    QgsProject.instance().setDirty(False)


if "TIDELEG_PICTURES" in os.environ:
    inside()
elif __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("folder", nargs="?", type=Path, default=Path("out/dock"))
    parser.add_argument("--sample", type=Path, default=checkout() / "sample_layers" / "invented_bay.gpkg")
    parser.add_argument("--scales", nargs="+", default=["1", "2"], help="of the screen")
    asked = parser.parse_args()
    sys.exit(main(asked.folder, asked.sample, asked.scales))
