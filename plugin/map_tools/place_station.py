"""The tool that places a stream station: position, distance and bearing beside the cursor, then a small form."""

from __future__ import annotations

from qgis.core import QgsGeometry, QgsPointXY
from qgis.gui import QgsMapCanvas

from ..words import tr
from .at_hand import GeometryType, PlanAtHand
from .mark_lines import mark_lines
from .place_mark import PlaceMark
from .places import Place
from .row_form import RowAsked, free_name, names_in

FIELDS = ("station", "form", "reference", "port", "spring_range_m", "neap_range_m", "source", "confidence")


class PlaceStation(PlaceMark):
    """A click asks for the station's name, form, tide and source; its stream is filled into the tables afterwards."""

    def __init__(self, canvas: QgsMapCanvas, plan: PlanAtHand) -> None:
        super().__init__(canvas, plan)
        self.aside = tr("It has no stream yet, and that is not slack water: fill in its table under Tables, Streams.")

    @property
    def needs(self) -> tuple[str, GeometryType]:
        """The stream stations."""
        return ("stream_stations", GeometryType.PointGeometry)

    @property
    def hint(self) -> str:
        """What to do next."""
        return tr("Click where the stream is known, or type the position. Esc ends.")

    @property
    def position_words(self) -> str:
        """A typed position places a station."""
        return tr("Place Station There")

    def point(self, place: Place) -> None:
        """Ask for the station's values."""
        layer = self.layer()
        taken = names_in(layer, "station")
        asked = RowAsked(
            layer="stream_stations",
            title=tr("New Stream Station"),
            words=tr("Place stream station"),
            fields=FIELDS,
            values={"station": free_name(tr("Station"), taken)},
            taken=taken,
            key="station",
        )
        lon = (place.lon + 180.0) % 360.0 - 180.0
        self.lines.show("spots", [place.lonlat])
        self.tip.hide()
        geometry = QgsGeometry.fromPointXY(QgsPointXY(lon, place.lat))
        self.adding.ask(layer, geometry, asked, mark_lines(self.plan, place), self._added, self.drop)

    def _added(self, name: str) -> None:
        self.lines.hide("spots")
        self.drawn.emit("stream_stations", name)
