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
    and what came with the signal. Without one only Next goes on. ``whole`` shows the whole swim on the map first."""

    section: str  # by its name, such as Legs
    words: str
    done: Done | None = None
    counts: Callable[..., bool] = lambda _session, *_what: True
    whole: bool = False


def _plan_changed(_section: Section, session: Session) -> Any:
    return session.plan_changed


def _asked_changed(_section: Section, session: Session) -> Any:
    return session.asked_changed


def _row_chosen(section: Section, _session: Session) -> Any:
    return section.table.row_chosen


def walk_steps() -> list[WalkStep]:
    """All steps in the order of the job; a dock without one of the sections leaves its step out."""
    route = tr("Choose the route '{}'. The swim is planned at once; what it comes to stands in the bold line.")
    return [
        WalkStep(
            section="Plan",
            words=tr("Press Sample. It opens a bay that is invented, with chart, tides, streams, marks and swimmers."),
            done=_plan_changed,
            counts=lambda session, *_: is_sample(session.path),
        ),
        WalkStep(
            section="Swim",
            words=route.format(WALK_ROUTE),
            done=_asked_changed,
            counts=lambda _session, changed: changed == "route",
        ),
        WalkStep(
            section="Water",
            words=tr(
                "The day as a picture: hatched is when one cannot leave, and why. Drag the handle, then press Next."
            ),
        ),
        WalkStep(
            section="Swim",
            words=tr("Leave later: press the button of ten minutes, or type a time. All numbers follow the stream."),
            done=_asked_changed,
            counts=lambda _session, changed: changed == "depart",
        ),
        WalkStep(
            section="Legs",
            words=tr(
                "Click a leg: it flashes on the map. Hold is the heading for your compass, Min how long it takes."
            ),
            done=_row_chosen,
        ),
        WalkStep(
            section="Time",
            words=tr(
                "Press Play: swimmer, stream and tide move together; the arrow keys go by minutes. Then press Next."
            ),
            whole=True,
        ),
        WalkStep(
            section="Mind",
            words=tr(
                "Click the gravest row: it flashes where it is met. Can be swum does not mean safe; this says why."
            ),
            done=_row_chosen,
        ),
        WalkStep(
            section="TurnBack",
            words=tr("Click a stop and read by when you must leave it, also on a bad day, and for which exit."),
            done=_row_chosen,
        ),
        WalkStep(
            section="Take",
            words=tr("Take the swim along as a card, a table or marks for a GPS; below is the sheet for the shore."),
        ),
        WalkStep(
            section="Plan",
            words=tr("That is the whole way. For your own water press New, or read the user guide behind Help."),
        ),
    ]
