"""The first pages of a season's cards: which window is on which page, and the days that have none."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime

from qgis.core import QgsLayoutItemPage, QgsLayoutSize, QgsPrintLayout, QgsProject

from ..core.results.card import day_text, isolated, whole_minutes
from ..core.results.season import SeasonSwim, days_of, days_without_words, grave_flags
from ..core.results.windows import WindowsFound
from ..words import tr
from .day_words import certain_clock
from .paper import SMALL, SMALL_BOLD, Lettering, Paper

MARGIN_MM, LEADING_MM, GAP_MM = 5.0, 6.2, 2.5

Line = tuple[str, str, Lettering]  # to the left, to the right, how


def contents_layout(
    found: WindowsFound, season: Sequence[SeasonSwim], sides: Sequence[int], size: QgsLayoutSize
) -> QgsPrintLayout:
    """A print layout of the contents, on pages of the cards' size; ``sides`` are the pages that each card takes."""
    blocks = [_head(found, season), *(_window(one) for one in season), _foot(found)]
    pages = _pages(_wrapped(blocks, size.width() - 2.0 * MARGIN_MM), size.height() - 2.0 * MARGIN_MM)
    numbers = _page_numbers(len(pages), sides)
    project = QgsProject()
    layout = QgsPrintLayout(project)
    project.setParent(layout)  # the layout needs its project for as long as it lives
    for number, page in enumerate(pages):
        item = QgsLayoutItemPage(layout)
        item.setPageSize(size)
        layout.pageCollection().addPage(item)
        _draw(Paper(layout, number), page, numbers, size.width() - 2.0 * MARGIN_MM)
    return layout


def _head(found: WindowsFound, season: Sequence[SeasonSwim]) -> list[Line]:
    first, last = days_of(found)
    span = tr("{first} to {last}, times in {zone}, swimmer {swimmer}").format(
        first=first.isoformat(), last=last.isoformat(), zone=found.zone, swimmer=isolated(found.swimmer)
    )
    count = tr("{cards} cards of {windows} windows on {days} days. PREDICTED: look at the sea before you go.").format(
        cards=len(season), windows=len(found.windows), days=len(found.days)
    )
    return [(season[0].swim.route, "", SMALL_BOLD), (span, "", SMALL), (count, "", SMALL)]


def _window(one: SeasonSwim) -> list[Line]:
    window, swim = one.window, one.swim
    times = tr("leave {first} to {last}; planned {depart}, home {home}, {minutes} min").format(
        first=_clock(window.first, swim.depart.date(), "up"),
        last=_clock(window.last, swim.depart.date(), "down"),
        depart=_clock(swim.depart, swim.depart.date(), "up"),
        home=_clock(swim.arrive, swim.depart.date(), "up") if swim.arrive is not None else tr("not known"),
        minutes=whole_minutes(swim.total_min) if swim.total_min is not None else tr("not known"),
    )
    lines = [(day_text(swim.depart.date()), "#", SMALL_BOLD), (times, "", SMALL)]
    grave = grave_flags(swim)
    if grave and all(flag.kind == "over_time" for flag in grave):
        words = tr("LATE: no departure tried in this window leaves every stop in time. Read the card's turn back.")
        lines.append((words, "", SMALL_BOLD))
    elif grave:
        flag = next(flag for flag in grave if flag.kind != "over_time")
        lines.append((tr("STOP: {flag}").format(flag=flag.brief or flag.message), "", SMALL_BOLD))
    return lines


def _clock(moment: datetime, day: date, rounding: str) -> str:
    """``08:50``, with its date where it is another day's, and its offset in an hour that comes twice."""
    clock = certain_clock(moment, rounding)
    return clock if moment.date() == day else f"{day_text(moment.date())} {clock}"


def _foot(found: WindowsFound) -> list[Line]:
    return [(days_without_words(found) or tr("Every day of the span has a window."), "", SMALL)]


def _wrapped(blocks: list[list[Line]], width: float) -> list[list[Line]]:
    """The same in lines that fit, the number of the page on a block's first one."""
    found = []
    for block in blocks:
        lines: list[Line] = []
        for left, right, letters in block:
            room = width - (letters.width("0000") if right else 0.0)
            # However many lines it takes: never more than there are letters.
            texts = letters.wrap(left, room, max(1, len(left)))
            lines += [(text, right if n == 0 else "", letters) for n, text in enumerate(texts)]
        found.append(lines)
    return found


def _pages(blocks: list[list[Line]], height: float) -> list[list[list[Line]]]:
    """Blocks on pages; one is parted only where it is taller than a page."""
    most = max(1, int((height - GAP_MM) / LEADING_MM))
    parted = [block[at : at + most] for block in blocks for at in range(0, len(block), most)]
    pages, used = [[]], 0.0
    for block in parted:
        tall = len(block) * LEADING_MM + GAP_MM
        if pages[-1] and used + tall > height:
            pages.append([])
            used = 0.0
        pages[-1].append(block)
        used += tall
    return pages


def _page_numbers(contents: int, sides: Sequence[int]) -> list[int]:
    """The page on which each card begins, the contents counted."""
    return [1 + contents + sum(sides[:number]) for number in range(len(sides))]


def _draw(paper: Paper, blocks: list[list[Line]], numbers: list[int], width: float) -> None:
    """Draw one page; ``numbers`` are taken from, one a window."""
    y = MARGIN_MM
    for block in blocks:
        for left, right, letters in block:
            y += LEADING_MM
            paper.text(left, MARGIN_MM, y - 1.5, letters)
            if right:
                paper.text(str(numbers.pop(0)), MARGIN_MM, y - 1.5, letters, width=width, right=True)
        y += GAP_MM
        paper.rule(MARGIN_MM, y - GAP_MM / 2.0, width)
