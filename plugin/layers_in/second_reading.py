"""Refuses rows of a text that do not fit among those of the same port or station in the plan; nothing is written."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable, Sequence
from typing import Any

from ..core.errors import BadInputError
from ..core.water.second_reading import Clash, Moment, clash_of_events, clash_of_series, clash_of_waters
from ..words import tr

_CHECKS: dict[str, Callable[[Iterable[Moment], Iterable[Moment]], Clash | None]] = {
    "tides": clash_of_waters,
    "tide_series": clash_of_series,
    "stream_series": clash_of_series,
    "stream_events": clash_of_events,
}


def check_second_reading(
    layer: str, held: Iterable[dict[str, Any]], given: Sequence[tuple[int, dict[str, Any]]], name: str
) -> None:
    """``held`` are values of the plan's rows, ``given`` line and values of those read; layers not known here pass.

    BadInputError names the first line that clashes with the plan.
    """
    clash_of = _CHECKS.get(layer)
    if clash_of is None:
        return
    whose = "port" if "tide" in layer else "station"
    theirs: dict[str, list[Moment]] = defaultdict(list)
    mine: dict[str, list[Moment]] = defaultdict(list)
    for values in held:
        theirs[values[whose] or ""].append(_moment(None, values))
    for row, values in given:
        mine[values[whose] or ""].append(_moment(row, values))
    for who, moments in mine.items():
        clash = clash_of(theirs.get(who, []), moments)
        if clash is not None:
            of_port = whose == "port"
            raise BadInputError(
                layer=name,
                row=clash.row,
                field="time",
                value=f"{clash.time:%Y-%m-%d %H:%M} UTC",
                allowed=tr("{why}. Was the same table read before in another zone ({layer}, port '{who}')?").format(
                    why=clash.why, layer=layer, who=who
                )
                if of_port
                else tr("{why}. Was the same table read before in another zone ({layer}, station '{who}')?").format(
                    why=clash.why, layer=layer, who=who
                ),
                remedy=tr("Correct ZONE, delete the plan's rows of that port, or name the port otherwise")
                if of_port
                else tr("Correct ZONE, delete the plan's rows of that station, or name the station otherwise"),
            )


def _moment(row: int | None, values: dict[str, Any]) -> Moment:
    return Moment(time=values["time"], row=row, kind=values.get("kind") or "", height_m=values.get("height_m"))
