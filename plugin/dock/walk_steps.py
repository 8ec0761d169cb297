"""The steps of the walk through the sample: where each points, what it says, and what the user does to go on."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from ..words import tr
from .sample_plan import WALK_ROUTE, is_sample
from .section import Section
from .session import Session

Done = Callable[[Section, Session], Any]


@dataclass(frozen=True, kw_only=True)
class WalkStep:
    """``done`` gives the signal that comes when the user has done it; it counts where ``counts`` holds for the session
    and what came with the signal. Without one there is only something to read. ``holds`` says that it is so already,
    before anything is done. ``whole`` shows the whole swim on the map first."""

    section: str  # by its name, such as Legs
    words: str
    done: Done | None = None
    counts: Callable[..., bool] = lambda _session, *_what: True
    holds: Callable[[Session], bool] = lambda _session: False
    whole: bool = False


def _plan_changed(_section: Section, session: Session) -> Any:
    return session.plan_changed


def _asked_changed(_section: Section, session: Session) -> Any:
    return session.asked_changed


def _row_chosen(section: Section, _session: Session) -> Any:
    return section.table.row_chosen


def _played(section: Section, _session: Session) -> Any:
    return section.play.clicked


def _has_sample(session: Session, *_what: object) -> bool:
    return is_sample(session.path)


def _has_route(session: Session, *_what: object) -> bool:
    return session.route == WALK_ROUTE


def walk_steps() -> list[WalkStep]:
    """All steps in the order of the job; a dock without one of the sections leaves its step out.

    Each asks for one thing at most, and all are read and done in two minutes.
    """
    route = tr("Choose the route '{}'. The bold line says what the swim comes to.").format(WALK_ROUTE)
    return [
        WalkStep(
            section="Plan",
            words=tr("Press Sample: it opens an invented bay."),
            done=_plan_changed,
            counts=_has_sample,
            holds=_has_sample,
        ),
        WalkStep(section="Swim", words=route, done=_asked_changed, counts=_has_route, holds=_has_route),
        WalkStep(
            section="Water",
            words=tr("Drag the handle to another time. Where it is hatched you cannot leave."),
            done=_asked_changed,
            counts=lambda _session, changed: changed == "depart",
        ),
        WalkStep(
            section="Legs",
            words=tr("Click a leg: it flashes on the map. Hold is the heading for your compass."),
            done=_row_chosen,
        ),
        WalkStep(
            section="Time",
            words=tr("Press Play: swimmer, stream and tide move on the map."),
            done=_played,
            whole=True,
        ),
        WalkStep(
            section="Mind",
            words=tr("Click the first row, the gravest. What can be swum is not therefore safe."),
            done=_row_chosen,
        ),
        WalkStep(
            section="TurnBack",
            words=tr("Click a stop: by then you must leave it, on a bad day earlier."),
            done=_row_chosen,
        ),
        WalkStep(
            section="Take",
            words=tr("Take it along: the card, marks for a GPS, and below the sheet for the shore."),
        ),
        WalkStep(section="Plan", words=tr("That is all. For your own water press New.")),
    ]
