"""The tool that measures a leg: the ruler line, and the heading that leads there at the chosen departure."""

from __future__ import annotations

from ..core.results.swim_plan import Leg
from ..words import tr
from .places import Place
from .plan_tool import PlanTool
from .readings import leg_lines, leg_measured, position_line, ruler_words, variation_for


class MeasureLeg(PlanTool):
    """Press at the start, move, and press at the end: what is said there stays until the next start.

    ``said`` are the lines of the last leg that was looked at, ``leg`` is it where it could be swum or not.
    """

    start: Place | None = None
    end: Place | None = None
    leg: Leg | str | None = None
    said: tuple[str, ...] = ()

    @property
    def hint(self) -> str:
        """What to do next."""
        if self.start is None or self.end is not None:
            return tr("Click where the leg starts. Nothing is drawn into the plan. Esc ends.")
        return tr("Click where the leg ends. Esc drops it.")

    @property
    def position_words(self) -> str:
        """A typed position is the start or the end."""
        return tr("Start There") if self.start is None or self.end is not None else tr("End There")

    @property
    def report(self) -> tuple[str, ...]:
        """What was measured, once the leg has an end."""
        return self.said if self.end is not None else ()

    def point(self, place: Place) -> None:
        """Start, or end."""
        if self.start is None or self.end is not None:
            self.drop()
            self.start = place
        elif place.lonlat != self.start.lonlat:
            self._measure(place)
            self.end = place
        self.lines.show("spots", [one.lonlat for one in (self.start, self.end) if one is not None])

    def look(self, place: Place) -> list[str]:
        """The leg to the cursor."""
        if self.start is None or self.end is not None:
            return [position_line(place)] if place.mark is not None else []
        if place.lonlat == self.start.lonlat:
            return [position_line(place)]
        return self._measure(place)

    def look_again(self) -> None:
        """Another hour, another leg: also one that has its end."""
        if self.end is not None:
            lines = self._measure(self.end)
            if not self.tip.isHidden():
                self.say(lines)
            self.changed.emit()
            return
        super().look_again()

    def _measure(self, place: Place) -> list[str]:
        """Measure the leg from the start, draw it and keep what is to be said of it."""
        variation = variation_for(self.start.lonlat, self.plan.entry(), self.plan.depart())
        self.leg = leg_measured(self.start, place, self.plan.water_around(*self.start.lonlat))
        ends = [self.start.lonlat, place.lonlat]
        self.lines.show("loose", ends)
        track = () if isinstance(self.leg, str) else self.leg.track
        self.lines.show("fixed", [(point.lon, point.lat) for point in track])
        to = [tr("To {}").format(place.mark.name)] if place.mark is not None and place.mark.name else []
        self.said = (*to, ruler_words(*ends, variation), *leg_lines(self.leg))
        return list(self.said)

    def finish(self) -> None:
        """Right click or Enter: done with this leg."""
        self.drop()
        self.tip.hide()

    def take_back(self) -> None:
        """The end, then the start."""
        if self.end is not None:
            self.end = None
            self.lines.show("spots", [self.start.lonlat])
        else:
            self.drop()
            self.tip.hide()

    def drop(self) -> bool:
        """Forget the leg."""
        begun = self.start is not None
        self.start = self.end = self.leg = None
        self.said = ()
        self.lines.hide("spots", "loose", "fixed")
        return begun
