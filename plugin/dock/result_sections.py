"""The dock's sections on what came of it: legs, what to mind, turn back."""

from __future__ import annotations

from collections.abc import Callable

from qgis.PyQt.QtWidgets import QWidget

from ..words import tr
from .folding_table import FoldingTable
from .row_table import RowTable
from .rows import Row, leg_headers, leg_rows, mind_rows, turn_headers, turn_rows
from .section import Section, label
from .session import PLANNING, SETTLED, Session


class ResultSection(Section):
    """One table of the swim. While another swim is being planned it stays, greyed, since it is no longer true."""

    def __init__(self, name: str, title: str, table: RowTable, session: Session, go_to: Callable[[Row], None]) -> None:
        super().__init__(name, title)
        self._session = session
        self.table = table
        self.table.setAccessibleName(title)
        self.inside.addWidget(table)
        self.table.row_chosen.connect(go_to)
        session.swim_changed.connect(self.refresh)
        session.plan_changed.connect(self.refresh)

    def rows(self) -> list[Row]:
        """What to show of the session's swim."""
        raise NotImplementedError

    def missing(self) -> str:
        """What to say where there is nothing to show, and what to do next."""
        if self._session.path is None:
            return tr("Open a plan first.")
        if self._session.stage == PLANNING:
            return tr("Planning…")
        return tr("There is no planned swim. The section above says what to do.")

    def refresh(self) -> None:
        """Show the session's swim."""
        self.setEnabled(self._session.path is not None)
        rows = self.rows() if self._session.swim is not None else []
        self.table.show_rows(rows)
        self.show_hint("" if rows else self.missing())
        self.body.setEnabled(self._session.stage != PLANNING)


class LegsSection(ResultSection):
    """Where to point and for how long."""

    page = "dock.md#legs"

    def __init__(self, session: Session, go_to: Callable[[Row], None], parent: QWidget | None = None) -> None:
        super().__init__("Legs", tr("Legs"), RowTable(leg_headers()), session, go_to)
        self.refresh()

    def rows(self) -> list[Row]:
        """A row a leg."""
        return leg_rows(self._session.swim)


class MindSection(ResultSection):
    """What to mind, gravest first."""

    page = "dock.md#what-to-mind"

    def __init__(self, session: Session, go_to: Callable[[Row], None], parent: QWidget | None = None) -> None:
        super().__init__("Mind", tr("What to Mind"), FoldingTable(), session, go_to)
        self.inside.addWidget(
            label(tr("A prediction, not an observation. Feasible is not safe; never dive alone. Not for navigation."))
        )
        self.refresh()

    def rows(self) -> list[Row]:
        """A row a flag, then what the plan could not know."""
        return mind_rows(self._session.swim, self._session.notes)

    def missing(self) -> str:
        """A swim without flags says so, and does not call itself safe."""
        if self._session.swim is not None and self._session.stage == SETTLED:
            return tr("The plan finds nothing to mind. That is not to say that there is nothing.")
        return super().missing()


class TurnBackSection(ResultSection):
    """By when each stop must be left, whatever the fish do."""

    page = "dock.md#turn-back"

    def __init__(self, session: Session, go_to: Callable[[Row], None], parent: QWidget | None = None) -> None:
        super().__init__("TurnBack", tr("Turn Back"), RowTable(turn_headers()), session, go_to)
        self.refresh()

    def rows(self) -> list[Row]:
        """A row a stop."""
        return turn_rows(self._session.swim)

    def missing(self) -> str:
        """On its way, refused, or nowhere to stop."""
        session = self._session
        if session.swim is None or session.stage == PLANNING:
            return super().missing()
        if session.turn_problem:
            return session.turn_problem
        if session.swim.turn_back is None:
            return tr("Stopped.") if session.was_stopped else tr("Working out when to turn back…")
        return tr("The swim reaches no stop between its ends.")
