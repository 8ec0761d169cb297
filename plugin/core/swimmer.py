"""Who swims: pace, range, hours and what they carry; and a group of them, which can do what all of them can."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from .errors import SwimPlanError
from .words import marked, spoken, tr


@dataclass(frozen=True, kw_only=True)
class Swimmer:
    """A swimmer's own numbers; the defaults are guesses until own data replace them (common practice, no source).

    ``pace_m_s`` through the water; ``path_factor`` is swum path over ruler line, so that the way made good through the
    water is ``pace_m_s / path_factor``; ``range_m`` and ``max_hours`` for the whole swim; ``depth_limit_m`` the deepest
    bottom worked; ``min_ground_speed_m_s`` the least mean speed made good on a leg; ``fluid_l`` carried, ``fluid_l_h``
    drunk; ``line_m`` the anchor line. ``guessed`` says in words what is a guess. A group has ``members`` and, in
    ``set_by``, words for each number that one of them sets.
    """

    name: str = "default swimmer"
    pace_m_s: float = 0.5
    path_factor: float = 1.10
    range_m: float = 5000.0
    max_hours: float = 4.0
    depth_limit_m: float = 12.0
    min_ground_speed_m_s: float = 0.15
    fluid_l: float = 2.0
    fluid_l_h: float = 0.7
    line_m: float = 30.0
    guessed: tuple[str, ...] = ()
    members: tuple[Swimmer, ...] = ()
    set_by: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        for key, (low, high) in LIMITS.items():
            value = getattr(self, key)
            if not low <= value <= high:
                raise SwimPlanError(
                    asked=tr("Swimmer '{name}' has {key} = {value}").format(name=self.name, key=key, value=value),
                    allowed=tr("{key} lies from {low:g} to {high:g}").format(key=key, low=low, high=high),
                    remedy=tr("Correct the swimmers table"),
                )

    @property
    def made_good_m_s(self) -> float:
        """Speed along the ruler line in still water, m/s."""
        return self.pace_m_s / self.path_factor


LIMITS = {
    "pace_m_s": (0.1, 2.5),
    "path_factor": (1.0, 2.0),
    "range_m": (1.0, 100_000.0),
    "max_hours": (0.1, 24.0),
    "depth_limit_m": (0.0, 100.0),
    "min_ground_speed_m_s": (0.0, 2.5),
    "fluid_l": (0.0, 50.0),
    "fluid_l_h": (0.0, 5.0),
    "line_m": (0.0, 300.0),
}
NUMBERS = tuple(LIMITS)
IN_WORDS = {
    "pace_m_s": marked("pace {value:g} m/s"),
    "path_factor": marked("path factor {value:g}"),
    "range_m": marked("range {value:g} m"),
    "max_hours": marked("{value:g} hours"),
    "depth_limit_m": marked("depth limit {value:g} m"),
    "min_ground_speed_m_s": marked("least ground speed {value:g} m/s"),
    "fluid_l": marked("{value:g} L to drink"),
    "fluid_l_h": marked("{value:g} L an hour drunk"),
    "line_m": marked("anchor line {value:g} m"),
}


def in_words(swimmer: Swimmer, key: str) -> str:
    """One of the swimmer's numbers in words."""
    return spoken(IN_WORDS[key]).format(value=getattr(swimmer, key))


def hours_of_fluid(swimmer: Swimmer) -> float:
    """How long what is carried lasts, hours; infinite where nothing is drunk."""
    return swimmer.fluid_l / swimmer.fluid_l_h if swimmer.fluid_l_h > 0.0 else float("inf")


# Numbers that go together, and the measure of which the least is the tightest.
_TIGHTEST: tuple[tuple[tuple[str, ...], Callable[[Swimmer], float]], ...] = (
    (("pace_m_s", "path_factor"), lambda one: one.made_good_m_s),
    (("range_m",), lambda one: one.range_m),
    (("max_hours",), lambda one: one.max_hours),
    (("depth_limit_m",), lambda one: one.depth_limit_m),
    (("min_ground_speed_m_s",), lambda one: -one.min_ground_speed_m_s),
    (("fluid_l", "fluid_l_h"), hours_of_fluid),
    (("line_m",), lambda one: one.line_m),
)


def group_of(swimmers: Sequence[Swimmer]) -> Swimmer:
    """Those who swim together as one swimmer, named "A and B".

    The slowest sets the pace, with his own path factor; of every other limit the tightest holds, of what is drunk that
    of whoever runs dry first. One swimmer is a group of his own. Source: common practice, no source.
    """
    if not swimmers:
        raise ValueError("a group has somebody in it")
    if len(swimmers) == 1:
        return swimmers[0]
    values, guessed, set_by = {}, [], []
    for keys, measure in _TIGHTEST:
        setter = min(swimmers, key=measure)
        values |= {key: getattr(setter, key) for key in keys}
        words = [in_words(setter, key) for key in keys]
        guessed += [f"{one} ({setter.name})" for one in words if one in setter.guessed]
        if max(map(measure, swimmers)) > measure(setter):
            set_by.append(tr("{words} by {name}").format(words=tr(" and ").join(words), name=setter.name))
    *before, last = (one.name for one in swimmers)
    return Swimmer(
        name=tr("{before} and {last}").format(before=", ".join(before), last=last),
        guessed=tuple(guessed),
        members=tuple(swimmers),
        set_by=tuple(set_by),
        **values,
    )
