"""The dock itself: the sections from top to bottom, and what ties them to the map."""

from __future__ import annotations

from collections.abc import Callable

from qgis.core import QgsProject
from qgis.gui import QgsDockWidget, QgsMapCanvas, QgsScrollArea
from qgis.PyQt.QtCore import QTimer
from qgis.PyQt.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from ..core.errors import SwimPlanError
from ..map_tools.map_look import MapLook
from ..words import tr
from .draw_section import DrawSection
from .order_section import OrderSection
from .plan_section import PlanSection
from .reach_section import ReachSection
from .result_layers import ResultLayers
from .result_sections import LegsSection, MindSection, TurnBackSection
from .rows import Row
from .section import Section, SectionFrame
from .session import PLANNING, Session
from .sheet_section import SheetSection
from .still_wheel import StillWheel
from .swim_section import SwimSection
from .tables_section import TablesSection
from .take_section import TakeSection
from .time_section import TimeSection
from .transits_section import TransitsSection
from .walk import Walk
from .water_section import WaterSection
from .windows_section import WindowsSection
from .work_section import WorkSection

# So many that nothing is cut off at the side, in any size of letters; a test holds the sections to it.
LEAST_CHARACTERS = 62


class TidelegDock(QgsDockWidget):
    """Open it from the entry, which gives the canvas and what shows a page of the documentation, ``dock.md#legs``."""

    def __init__(self, canvas: QgsMapCanvas, show_help: Callable[[str], None], parent: QWidget | None = None) -> None:
        super().__init__("Tideleg", parent)
        self.setObjectName("TidelegDock")
        self.session = Session(QgsProject.instance(), self)
        self.look = MapLook(canvas)
        self.results = ResultLayers(QgsProject.instance())
        self.plan = PlanSection(self.session)
        self.drawing = DrawSection(self.session, canvas)
        self.tables = TablesSection(self.session, show_help)
        self.water = WaterSection(self.session)
        self.swim = SwimSection(self.session)
        self.legs = LegsSection(self.session, self.go_to)
        self.time = TimeSection(self.session, canvas)
        self.mind = MindSection(self.session, self.go_to)
        self.turn_back = TurnBackSection(self.session, self.go_to)
        self.when = WindowsSection(self.session)
        self.reach = ReachSection(self.session, self.go_to)
        self.order = OrderSection(self.session, self.go_to)
        self.transits = TransitsSection(self.session, self.drawing.plan, self.go_to)
        self.take = TakeSection(self.session)
        self.sheet = SheetSection(self.session)
        self.help = QPushButton(tr("Help"))
        self.help.setToolTip(tr("Open the page on this dock"))
        self.help.setAutoDefault(False)
        self.help.clicked.connect(lambda: show_help("dock.md"))
        self._show_help = show_help
        self.frames: dict[Section, SectionFrame] = {}
        self._lay_out()
        self._look_soon = QTimer(self)
        self._look_soon.setSingleShot(True)
        self._look_soon.timeout.connect(self._look_at_plan)
        self._show_what_can_be_done()
        self.session.swim_changed.connect(self.draw)
        self.session.plan_changed.connect(self._plan_changed)
        self.session.choices_changed.connect(self._show_what_can_be_done)
        self.time.looked_at.connect(self.results.show_in_time)
        self.drawing.rates.asked.connect(self.tables.fill_in)
        self.transits.place_asked.connect(self._place_landmarks)
        self.transits.read_asked.connect(self._read_chart)
        self.swim.whole.clicked.connect(self.show_whole_swim)
        self.walk.whole_asked.connect(self.show_whole_swim)
        self.closed.connect(self._closed)
        self.opened.connect(self._opened)
        QgsProject.instance().readProject.connect(self._project_read)
        self._project_read()

    def _lay_out(self) -> None:
        inside = QWidget()
        column = QVBoxLayout(inside)
        for section in (
            self.plan,
            self.drawing,
            self.tables,
            self.water,
            self.swim,
            self.legs,
            self.time,
            self.mind,
            self.turn_back,
            self.when,
            self.reach,
            self.order,
            self.transits,
            self.take,
            self.sheet,
        ):
            self.frames[section] = SectionFrame(section, self._show_help)
            column.addWidget(self.frames[section])
        last = QHBoxLayout()
        last.addStretch()
        last.addWidget(self.help)
        column.addLayout(last)
        column.addStretch()
        self.area = QgsScrollArea()
        self.area.setWidgetResizable(True)
        self.area.setFrameShape(QFrame.Shape.NoFrame)
        self.area.setWidget(inside)
        self._still_wheel = StillWheel(inside)
        self.area.setMinimumWidth(LEAST_CHARACTERS * self.fontMetrics().averageCharWidth())
        whole = QWidget()
        self.rows = QVBoxLayout(whole)
        self.rows.setContentsMargins(0, 0, 0, 0)
        self.walk = Walk(self.session, self.frames.values(), self.area)
        self.rows.addWidget(self.walk)
        self.rows.addWidget(self.area)
        self.setWidget(whole)

    def _show_what_can_be_done(self) -> None:
        """Without a plan only the first section, without a route only what needs none: one thing after the other."""
        has_plan, has_route = self.session.path is not None, bool(self.session.routes)
        without_route = (self.drawing, self.tables, self.water, self.swim, self.reach, self.order)
        for section, frame in self.frames.items():
            frame.setVisible(section is self.plan or (has_plan and (has_route or section in without_route)))

    def draw(self) -> None:
        """Draw the session's swim on the map; while another is planned the one before it stays."""
        layers = self.session.layers
        if self.session.stage != PLANNING and not self.isHidden():
            self.results.show(self.session.swim, layers.group() if layers is not None else None)

    def go_to(self, row: Row) -> None:
        """Show the place of a row on the map; one without a place moves nothing."""
        if row.points:
            self.look.go_to(row.points, spots=row.spots)

    def _place_landmarks(self) -> None:
        """Take the tool; what it says to do next stands in its section."""
        self.drawing.take("landmark")
        self.frames[self.drawing].section.setCollapsed(False)
        self.area.ensureWidgetVisible(self.drawing.next)

    def _read_chart(self) -> None:
        from qgis import processing  # slow to import, so only when asked

        processing.execAlgorithmDialog("tideleg:readchart", {"PLAN": str(self.session.path)})

    def show_whole_swim(self) -> None:
        """Show the planned swim on the map, all of its legs."""
        swim = self.session.swim
        if swim is not None and swim.legs:
            ends = [(leg.start_lon, leg.start_lat) for leg in swim.legs[:1]]
            self.look.go_to([*ends, *((leg.end_lon, leg.end_lat) for leg in swim.legs)], flash=False)

    def release(self) -> None:
        """Before the dock goes: stop planning, take the results off the map, let go of the project."""
        QgsProject.instance().readProject.disconnect(self._project_read)
        self.session.swim_changed.disconnect(self.draw)
        self.session.plan_changed.disconnect(self._plan_changed)
        self.session.choices_changed.disconnect(self._show_what_can_be_done)
        self.session.close_plan()
        self.drawing.release()
        self.time.release()
        self.results.remove()

    def _closed(self) -> None:
        """Out of sight: nothing is planned that nobody sees, and the results go."""
        self.session.rest(True)
        for section in self.findChildren(WorkSection):
            section.put_away()
        self.drawing.put_away()
        self.time.rest()
        self.results.remove()

    def _opened(self) -> None:
        self.session.rest(False)

    def _plan_changed(self) -> None:
        """Another plan: the map shows where it is, the results of the one before it go."""
        self._show_what_can_be_done()
        if self._path == self.session.path:
            return
        self._path = self.session.path
        self.results.remove()
        self._look_soon.start(0)

    def _look_at_plan(self) -> None:
        """Once QGIS has seen the plan's layers: the first ones in a project it shows whole, and in their own system."""
        if self._path is None or self._path != self.session.path:
            return
        try:
            routes = self.session.layers.copies().get("routes")
        except SwimPlanError:
            return  # planning says what is wrong
        places = [vertex for row in (routes.getFeatures() if routes else ()) for vertex in row.geometry().vertices()]
        if places:
            self.look.go_to([(place.x(), place.y()) for place in places], flash=False)

    def _project_read(self, *_: object) -> None:
        """A project that holds a plan is worked on at once."""
        self.results.remove()
        self.session.adopt_plan()

    _path = None
