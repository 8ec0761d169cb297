"""What the shore contact must know of a swim: the plan, where a float would drift, what the swimmers typed."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from .card import leg_state
from .confidence import DriftArea
from .swim_plan import Leg, Stop, SwimPlan

MINUTE_S = 60.0


@dataclass(frozen=True, kw_only=True)
class ContactFacts:
    """What the swimmers typed for their shore contact; empty where they typed nothing, and nothing is assumed.

    ``emergency_numbers`` are texts as typed, with ``;`` between them.
    """

    float_colours: str = ""
    flag: str = ""
    emergency_numbers: str = ""
    note: str = ""

    @property
    def numbers(self) -> tuple[str, ...]:
        """The emergency numbers, one by one."""
        return tuple(part.strip() for part in self.emergency_numbers.split(";") if part.strip())


@dataclass(frozen=True, kw_only=True)
class Landing:
    """A place where the swimmers may come out: name and degrees."""

    name: str
    lon: float
    lat: float


@dataclass(frozen=True, kw_only=True)
class ShoreSheet:
    """The sheet for the shore contact. ``drift`` are areas to look in; ``wind`` says what is reckoned of the wind.

    ``members`` is how many swim as a group, None where the plan has one swimmer, who may stand for several.
    """

    swim: SwimPlan
    facts: ContactFacts
    exits: tuple[Landing, ...]
    drift: tuple[DriftArea, ...]
    wind: str
    members: int | None = None

    @property
    def stuck(self) -> Leg | None:
        """The first leg that is reached and cannot be swum, None where there is none; what follows hangs on it."""
        return next((leg for leg in self.swim.legs if leg_state(leg) == "stuck"), None)

    @property
    def late_stops(self) -> tuple[Stop, ...]:
        """The stops, as far as the legs can be swum, that the plan leaves more than a minute after their last safe one,
        or that have none."""
        reached = self.swim.stops[1:-1] if self.stuck is None else self.swim.stops[1 : self.stuck.number]
        return tuple(stop for stop in reached if self._is_late(stop))

    def _is_late(self, stop: Stop) -> bool:
        if self.swim.turn_back is None or stop.leave is None or stop.arrive is None:
            return False
        return stop.latest_leave is None or (stop.leave - stop.latest_leave).total_seconds() > MINUTE_S

    @property
    def drift_after_return(self) -> tuple[DriftArea, ...]:
        """The areas after the planned return, wherever the swimmer stopped; empty where there is no planned return."""
        return tuple(area for area in self.drift if area.start is None)

    def drift_from(self, stop: Stop) -> tuple[DriftArea, ...]:
        """The areas of a swimmer who stopped on arriving at a stop, the soonest first."""
        ours = (area for area in self.drift if area.start is not None and area.place == stop.name)
        found = [area for area in ours if stop.arrive is not None and _same(area.start, stop.arrive)]
        return tuple(sorted(found, key=lambda area: area.after_min))

    @property
    def landings(self) -> tuple[Landing, ...]:
        """Where they may come out: the route's end first, then the plan's other exits, each once."""
        ends = [Landing(name=stop.name, lon=stop.lon, lat=stop.lat) for stop in self.swim.stops[-1:]]
        found = {(one.name, round(one.lon, 5), round(one.lat, 5)): one for one in (*ends, *self.exits)}
        return tuple(found.values())


def _same(first: datetime, second: datetime) -> bool:
    return abs((first - second).total_seconds()) < 1.0
