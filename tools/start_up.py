"""Measure what the plugin adds to the start of QGIS, in a fresh process: prints one line of JSON.

`ms`: milliseconds from `import tideleg` to the end of initGui, loading every algorithm; `qgis_ms`: the same process's
start of QGIS itself with numpy and GDAL, which QGIS's own Processing imports before any plugin; `loaded`: the top-level
modules that came in with the plugin.
"""

from __future__ import annotations

import json
import sys
import time


def milliseconds_since(start: float) -> float:
    return round(1000 * (time.perf_counter() - start), 1)


def measure() -> dict[str, object]:
    start = time.perf_counter()
    import numpy  # noqa: F401
    from osgeo import gdal  # noqa: F401
    from qgis.core import QgsApplication
    from qgis.PyQt.QtWidgets import QMainWindow, QMenu

    application = QgsApplication([], True)
    application.initQgis()
    window = QMainWindow()
    qgis_ms = milliseconds_since(start)

    class Desktop:
        """The calls of QGIS's interface that initGui makes, on a real window and menus."""

        menu, help_menu = QMenu(window), QMenu(window)
        mainWindow = staticmethod(lambda: window)
        pluginHelpMenu = staticmethod(lambda: Desktop.help_menu)
        addPluginToMenu = staticmethod(lambda _name, action: Desktop.menu.addAction(action))
        addToolBarIcon = staticmethod(lambda action: window.addAction(action))
        removeToolBarIcon = staticmethod(lambda action: window.removeAction(action))
        removePluginMenu = staticmethod(lambda _name, action: Desktop.menu.removeAction(action))

    before = set(sys.modules)
    start = time.perf_counter()
    import tideleg

    plugin = tideleg.classFactory(Desktop)
    plugin.initGui()
    ms = milliseconds_since(start)
    loaded = sorted({name.split(".")[0] for name in set(sys.modules) - before})
    plugin.unload()
    application.exitQgis()
    return {"ms": ms, "qgis_ms": qgis_ms, "loaded": loaded}


if __name__ == "__main__":
    print(json.dumps(measure()))
