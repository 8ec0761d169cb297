"""Orders of marks found, and the swims they are."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

import numpy as np

from .plain_values import iso_time, rounded


@dataclass(frozen=True, kw_only=True)
class OrderStop:
    """A place of the swim as planned: when it is reached and left, None where not known; ``turn`` is only passed.

    ``longer_min`` of the stay are waited for the stream, beyond the stay asked for.
    """

    name: str
    lon: float
    lat: float
    arrive: datetime | None
    leave: datetime | None
    stay_min: float
    longer_min: float = 0.0
    turn: bool = False


@dataclass(frozen=True, kw_only=True)
class OrderPlan:
    """One order at its best departure; ``rank`` 1 takes the fewest minutes.

    Minutes are None where the swim does not get home; ``reason`` says what stops one that is not feasible.
    """

    rank: int
    stops: tuple[OrderStop, ...]
    depart: datetime
    arrive: datetime | None
    minutes: float | None
    swim_min: float | None
    length_m: float
    feasible: bool
    reason: str
    notes: tuple[str, ...]

    @property
    def names(self) -> tuple[str, ...]:
        """The places in swimming order, turns left out."""
        return tuple(stop.name for stop in self.stops if not stop.turn)

    @property
    def lonlat(self) -> np.ndarray:
        """All places (n, 2) in degrees."""
        return np.array([[stop.lon, stop.lat] for stop in self.stops])


@dataclass(frozen=True, kw_only=True)
class OrdersFound:
    """The best orders at departures from ``start`` to ``end``, every ``step_min``.

    Where no order is feasible ``plans`` hold the shortest one, with what stops it, and ``stopped_by`` counts what stops
    it at each departure; it is empty otherwise.
    """

    plans: tuple[OrderPlan, ...]
    marks: int
    departures: int
    start: datetime
    end: datetime
    step_min: float
    table_step_min: float
    swimmer: str
    zone: str
    stopped_by: dict[str, int]
    warnings: tuple[str, ...] = ()


def orders_dict(found: OrdersFound, *, version: str) -> dict[str, object]:
    """The orders as JSON's own kinds of value; None where something is not known."""
    return {
        "tideleg": version,
        "swimmer": found.swimmer,
        "zone": found.zone,
        "from": iso_time(found.start, where="from"),
        "to": iso_time(found.end, where="to"),
        "step_min": found.step_min,
        "departures": found.departures,
        "marks": found.marks,
        "table_step_min": rounded(found.table_step_min),
        "feasible": bool(found.plans) and found.plans[0].feasible,
        "stopped_by": dict(found.stopped_by),
        "orders": [_plan(plan) for plan in found.plans],
        "warnings": list(found.warnings),
    }


def _plan(plan: OrderPlan) -> dict[str, object]:
    return {
        "rank": plan.rank,
        "order": list(plan.names),
        "depart": iso_time(plan.depart, where="depart"),
        "arrive": iso_time(plan.arrive, where="arrive"),
        "minutes": rounded(plan.minutes),
        "swim_min": rounded(plan.swim_min),
        "length_m": rounded(plan.length_m),
        "feasible": plan.feasible,
        "reason": plan.reason,
        "notes": list(plan.notes),
        "stops": [_stop(stop) for stop in plan.stops],
    }


def _stop(stop: OrderStop) -> dict[str, object]:
    return {
        "name": stop.name,
        "lon": round(stop.lon, 7),
        "lat": round(stop.lat, 7),
        "arrive": iso_time(stop.arrive, where="arrive"),
        "leave": iso_time(stop.leave, where="leave"),
        "stay_min": rounded(stop.stay_min),
        "longer_min": rounded(stop.longer_min),
        "turn": stop.turn,
    }
