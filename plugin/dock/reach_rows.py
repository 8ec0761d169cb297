"""What the dock says of a reach: each mark's times, and how sure they are."""

from __future__ import annotations

import math
from collections.abc import Mapping

from ..core.results.card import clock_down, clock_up
from ..core.results.reach import MarkReach, Numbers, Reach
from ..layers_out.reach_bands import ReachDrawn
from ..words import tr
from .flag_shapes import severity_word
from .plan_marks import Place, place_of
from .rows import Row


def reach_headers() -> list[tuple[str, str]]:
    """Title and tooltip of the columns."""
    return [
        (tr("Mark"), tr("For a swimmer who steers anew all the time; what differs on one heading a leg stands below")),
        (tr("There\nat"), tr("Earliest arrival, clock time in the plan's zone, rounded up")),
        (tr("Leave\nby"), tr("Latest leaving that is still home in time, rounded down; no reserve is in it")),
        (tr("Longest\nstay"), tr("Time between the two, rounded down")),
        (tr("Home at"), tr("Where one lands when leaving as late as that")),
    ]


def reach_rows(reach: Reach, labels: Mapping[Place, str]) -> list[Row]:
    """A row a mark, a second one where it is otherwise on one heading a leg, then what the reach could not know."""
    rows: list[Row] = []
    for one in reach.marks:
        rows += _mark_rows(reach, one, labels.get(place_of(one.mark), one.mark.name))
    said = list(dict.fromkeys(reach.warnings))
    return rows + [Row(cells=(f"{severity_word('note')}. {words}",), severity="note") for words in said]


def _mark_rows(reach: Reach, one: MarkReach, name: str) -> list[Row]:
    point = (place_of(one.mark),)
    first = _numbers_row(reach, one.solver, name, point)
    if one.solver.stay_min is None and one.one_heading.stay_min is None:
        return [first]
    second = _numbers_row(reach, one.one_heading, "   " + tr("one heading"), point)
    return [first] if first.cells[1:] == second.cells[1:] else [first, second]


def _numbers_row(reach: Reach, numbers: Numbers, name: str, point: tuple[Place, ...]) -> Row:
    there, leave = reach.moment(numbers.out_min), reach.moment(numbers.latest_min)
    if there is None or leave is None:
        known = [] if there is None else [tr("there at {}").format(clock_up(there))]
        known += [] if leave is None else [tr("to be left by {}").format(clock_down(leave))]
        why = numbers.reason or tr("not known")
        return Row(cells=(name, "; ".join([*known, why])), points=point)
    if numbers.stay_min is None:
        words = tr("not in time: there at {}, but to be left by {}")
        return Row(cells=(name, words.format(clock_up(there), clock_down(leave))), points=point)
    return Row(
        cells=(name, clock_up(there), clock_down(leave), stay_text(numbers.stay_min), numbers.exit), points=point
    )


def stay_text(minutes: float) -> str:
    """``45 min``, ``4 h 05 min``: whole minutes, rounded down."""
    whole = math.floor(minutes + 1e-3)
    return tr("{} min").format(whole) if whole < 60 else tr("{} h {:02d} min").format(*divmod(whole, 60))


def reach_headline(reach: Reach) -> str:
    """From where, between which hours, with which stay: what the answer is of."""
    words = tr("From {}: leave {}, back by {}, stay {} min. Time for that in {} square kilometres.")
    leave, back = f"{reach.depart:%Y-%m-%d %H:%M}", f"{reach.back_by:%H:%M}"
    if reach.depart.date() != reach.back_by.date():
        back = f"{reach.back_by:%Y-%m-%d %H:%M}"
    return words.format(reach.entry.name, leave, back, f"{reach.stay_min:.0f}", f"{reach.stay_area_km2:.2f}")


def map_words(made: ReachDrawn) -> str:
    """What the map shows, for those who do not look into the legend."""
    if not made.bands:
        return tr("There is no place from which one would be home in time.")
    words = tr(
        "On the map: where one can be and be home in time, the lighter the sooner, a line every {} min; slanting lines "
        "and a dark edge where there is time for the stay."
    )
    return words.format(f"{made.every_min:.0f}")


def grid_words(reach: Reach) -> str:
    """The grid's cells, how much the minutes hang on them, and what the times do not hold."""
    cells = tr("Cells of {} m: what is narrower than {} m counts as closed.")
    told = [cells.format(f"{reach.cell_m:g}", f"{2.0 * reach.cell_m:g}")]
    if reach.error_mean_min is None or reach.error_most_min is None:
        told.append(tr("How much the minutes hang on the cells is not known."))
    else:
        differ = tr("On cells twice as large they differ by {} min on average, by {} min at most in 99 of 100 cells.")
        told.append(differ.format(f"{reach.error_mean_min:.1f}", f"{reach.error_most_min:.1f}"))
    told.append(tr("The map shows a swimmer who steers anew all the time. No reserve is in these times."))
    return " ".join(told)
