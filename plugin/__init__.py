"""Tideleg: plans swims from the beach to offshore marks and home again in moving water."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from qgis.gui import QgisInterface

    from .entry import TidelegPlugin


def classFactory(iface: QgisInterface) -> TidelegPlugin:
    """Return the plugin to QGIS; everything else is imported only now."""
    from .entry import TidelegPlugin

    return TidelegPlugin(iface)
