"""Runs inside QGIS's desktop: adds every layer of the sample plan, its own styles included, and shows them."""

from __future__ import annotations

from pathlib import Path

from qgis.core import QgsProject, QgsProviderRegistry, QgsVectorLayer
from qgis.utils import iface

NOTICE = "INVENTED - NOT FOR NAVIGATION"


def find_sample() -> Path:
    """Return the sample plan; `--code` runs this text without a __file__, from the checkout's root."""
    return sorted(Path("sample_layers").resolve().glob("*.gpkg"))[0]


def layers_of(package: Path) -> list[QgsVectorLayer]:
    """Return the package's layers, the ones with places first."""
    found = QgsProviderRegistry.instance().providerMetadata("ogr").querySublayers(str(package))
    layers = [QgsVectorLayer(one.uri(), one.name(), "ogr") for one in found]
    return sorted((layer for layer in layers if layer.isValid()), key=lambda layer: not layer.isSpatial())


def show() -> None:
    package = find_sample()
    group = QgsProject.instance().layerTreeRoot().addGroup(f"{package.stem} ({NOTICE})")
    for layer in layers_of(package):
        QgsProject.instance().addMapLayer(layer, False)
        group.addLayer(layer)
        if layer.name() == "marks" and layer.featureCount():
            extent = layer.extent()
            extent.grow(0.005)
            iface.mapCanvas().setExtent(extent)
    iface.mapCanvas().refresh()


show()
