"""An order as it is looked at beside the dock: the way with arrows on it, and the stops with their numbers."""

from __future__ import annotations

from collections.abc import Iterator

from qgis.core import (
    QgsGeometry,
    QgsLineSymbol,
    QgsMarkerLineSymbolLayer,
    QgsMarkerSymbol,
    QgsPalLayerSettings,
    QgsPointXY,
    QgsSingleSymbolRenderer,
    QgsVectorLayer,
    QgsWkbTypes,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.results.best_order import OrdersFound
from ..core.results.card import clock_up
from .order_layer import ORDERS
from .plan_layers import OutputLayer, Row
from .styling import INK, MOST_WANTED, PAPER, put_label


def _stop_rows(found: OrdersFound) -> Iterator[Row]:
    """The stops of the orders, numbered from 0, the entry; the last one is where one lands."""
    for plan in found.plans:
        stops = [stop for stop in plan.stops if not stop.turn]
        for number, stop in enumerate(stops):
            clock = "" if stop.arrive is None else clock_up(stop.arrive)
            place = QgsGeometry.fromPointXY(QgsPointXY(stop.lon, stop.lat))
            yield place, {"rank": plan.rank, "number": number, "name": stop.name, "arrive_clock": clock}


ORDER_STOPS = OutputLayer(
    parameter="ORDER_STOPS",
    wkb_type=QgsWkbTypes.Type.Point,
    columns=(("rank", "whole"), ("number", "whole"), ("name", "text"), ("arrive_clock", "text")),
    rows=_stop_rows,
)


def style_order(layer: QgsVectorLayer, _found: OrdersFound) -> None:
    """A dotted line on paper with open arrows: unlike the legs of the planned swim, which are dashed."""
    symbol = QgsLineSymbol.createSimple({"line_color": PAPER, "line_width": "1.6", "capstyle": "round"})
    dots = {"line_color": INK, "line_width": "0.6", "customdash": "0.8;1.4", "use_custom_dash": "1"}
    core = QgsLineSymbol.createSimple(dots)  # must outlive the clone
    symbol.appendSymbolLayer(core.symbolLayer(0).clone())
    along = QgsMarkerLineSymbolLayer.create({"placement": "interval", "interval": "18"})
    along.setRotateSymbols(True)
    arrow = {"name": "arrowhead", "size": "3.4", "outline_color": INK, "outline_width": "0.6"}
    along.setSubSymbol(QgsMarkerSymbol.createSimple(arrow))
    symbol.appendSymbolLayer(along)
    layer.setRenderer(QgsSingleSymbolRenderer(symbol))
    layer.setMapTipTemplate("[% order_text %]")


def style_order_stops(layer: QgsVectorLayer, _found: OrdersFound) -> None:
    """A small square with the number in the order and the clock time of arriving."""
    square = {"name": "square", "size": "2.4", "color": PAPER, "outline_color": INK, "outline_width": "0.6"}
    layer.setRenderer(QgsSingleSymbolRenderer(QgsMarkerSymbol.createSimple(square)))
    words = '"number" || \'.  \' || "arrive_clock"'
    put_label(layer, words, QgsPalLayerSettings.Placement.AroundPoint, priority=MOST_WANTED)


def order_titles() -> dict[str, str]:
    """What the layers are called, by their parameters."""
    translate = QCoreApplication.translate
    return {"ORDERS": translate("Tideleg", "Order shown"), "ORDER_STOPS": translate("Tideleg", "Stops in this order")}


ORDER_OUTPUTS = (ORDER_STOPS, ORDERS)
ORDER_STYLES = {"ORDERS": style_order, "ORDER_STOPS": style_order_stops}
