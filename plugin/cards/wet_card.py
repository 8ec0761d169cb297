"""The wet card: black on white, to be read at arm's length with water on the mask.

Headings and times are 7 mm high, everything else 4 mm. What does not fit goes on the next side; a card never shrinks a
letter, and says what it leaves out.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from functools import partial
from pathlib import Path

from qgis.core import QgsLayoutExporter, QgsLayoutItemMap, QgsLayoutItemPage, QgsPrintLayout
from qgis.PyQt.QtGui import QImage, QPainter

from ..core.results.swim_plan import SwimPlan
from ..words import tr
from .card_detail import ALL, BARE, DETAILS, FEWER, MORE, SKETCH, Detail, more_of
from .card_frames import Filled, Frame, Shortfall, fill
from .card_parts import PARTS, left_out_parts, part_blocks
from .card_refusal import does_not_fit
from .card_templates import SIDES, CardError, open_template, shipped, take_frames
from .card_title import Sides, running_title
from .paper import Paper
from .sketch import draw_sketch
from .vector_pdf import pdf_settings
from .whole_files import write_whole

PNG_DPI = 150
ANY_PAPER = ("A5", "A4")  # from which one is chosen as the swim needs
GAP_PX, GREY = 12, 0xFF808080  # between the sides of a card in one picture


@dataclass(frozen=True, kw_only=True)
class CardLook:
    """What a card is printed on: a paper of ours (empty: as small as the swim allows, from A5), so many sides at most
    (0: as many as are needed), or a template of the user's."""

    paper: str = ""
    sides: int = 0
    template: Path | None = None


ANY_LOOK = CardLook()


@dataclass(frozen=True, kw_only=True)
class Candidate:
    """A template with what is said on it."""

    template: Path
    detail: Detail
    legs: int
    sides: int | None = None  # at most, where the template has more


@dataclass(kw_only=True)
class Card:
    """A card laid out: the layout, and the sketch's map item where there is one."""

    layout: QgsPrintLayout
    sketch: QgsLayoutItemMap | None
    template: Path
    leaves_out: tuple[str, ...]

    @property
    def sides(self) -> int:
        """Pages of the layout."""
        return self.layout.pageCollection().pageCount()


def write_card(
    plan: SwimPlan, path_pdf: str | Path, *, png_path: str | Path | None = None, look: CardLook = ANY_LOOK
) -> None:
    """Write the card as PDF and, if asked, as PNG; each file is written whole or not at all.

    Must run in the main thread: print layouts live there. Raises ``CardError`` with the place and the cause.
    """
    write_whole(card_writers(plan, path_pdf, png_path=png_path, look=look))


def card_writers(
    plan: SwimPlan, path_pdf: str | Path | None, *, png_path: str | Path | None = None, look: CardLook = ANY_LOOK
) -> dict[Path, Callable[[Path], None]]:
    """What writes the card's files, by their paths, for ``write_whole``; as ``write_card`` in all else."""
    layout = card_layout(plan, look).layout
    exporter = QgsLayoutExporter(layout)
    exporter.kept = layout  # the exporter does not keep its layout alive
    writers: dict[Path, Callable[[Path], None]] = {}
    if path_pdf is not None:
        writers[Path(path_pdf)] = lambda path: _checked(path, exporter.exportToPdf(str(path), pdf_settings()))
    if png_path is not None:
        writers[Path(png_path)] = lambda path: _save_picture(layout, path)
    return writers


def card_layout(plan: SwimPlan, look: CardLook = ANY_LOOK) -> Card:
    """The card as a print layout of a project of its own. CardError where the swim does not fit what was asked for."""
    opened: dict[Path, tuple[QgsPrintLayout, list[Frame]]] = {}
    short: Shortfall | None = None
    for candidate in _candidates(plan, look):
        if candidate.template not in opened:
            layout = open_template(candidate.template)
            opened[candidate.template] = (layout, take_frames(layout, candidate.template))
        layout, frames = opened[candidate.template]
        sides = Sides()
        found = _filled(plan, frames, candidate, sides)
        if isinstance(found, Shortfall):
            short = found
            continue
        candidate, found = _with_more(plan, frames, candidate, found, sides)
        return Card(
            layout=layout,
            sketch=_draw(plan, layout, found, sides),
            template=candidate.template,
            leaves_out=left_out_parts(plan, candidate.detail, _width_mm(frames), _taken_out(frames)),
        )
    raise does_not_fit(plan, look.paper or ANY_PAPER[-1], look.sides, look.template, short, _holds)


def _candidates(plan: SwimPlan, look: CardLook) -> Iterator[Candidate]:
    """What to try, the best first: all of it on few sides, less of it, then more sides; parts are left out last."""
    make = partial(Candidate, legs=len(plan.legs))
    if look.template is not None:
        yield from (make(template=look.template, detail=detail) for detail in DETAILS)
        return
    if look.paper and look.sides:
        yield from (make(template=shipped(look.paper, look.sides), detail=detail) for detail in _details(look))
        return
    if look.sides:
        for detail in _details(look):
            yield from (make(template=shipped(paper, look.sides), detail=detail) for paper in ANY_PAPER)
    else:
        for paper in (look.paper,) if look.paper else ANY_PAPER:
            one, two, four = (shipped(paper, sides) for sides in SIDES)
            yield from (make(template=template, detail=ALL) for template in (one, two))
            yield make(template=two, detail=FEWER)
            yield from (make(template=four, detail=detail, sides=3) for detail in (ALL, FEWER))
            yield from (make(template=four, detail=detail) for detail in (ALL, FEWER))
        # Where something must be left out, it is as little as the largest paper allows.
        largest = shipped(look.paper or ANY_PAPER[-1], SIDES[-1])
        yield from (make(template=largest, detail=detail) for detail in DETAILS[2:])
    if not look.paper:  # a swim of so many legs gets what there is room for, and the rest is named
        for legs in range(len(plan.legs) - 1, 0, -1):
            yield Candidate(template=shipped("A4", look.sides or SIDES[-1]), detail=BARE, legs=legs)


def _details(look: CardLook) -> tuple[Detail, ...]:
    """How much to say, the most first: on one side rows are low from the beginning."""
    return tuple(replace(detail, low=True) for detail in DETAILS) if look.sides == 1 else DETAILS


def _taken_out(frames: list[Frame]) -> tuple[str, ...]:
    """The parts for which a layout has no frame."""
    named = {part for frame in frames for part in frame.parts}
    return tuple(part for part in PARTS if part not in named)


def _with_more(
    plan: SwimPlan, frames: list[Frame], candidate: Candidate, found: list[Filled], sides: Sides
) -> tuple[Candidate, list[Filled]]:
    """The same with what else there is room for: parts that were left out, then more rows of those that are there."""
    for part, field, values in MORE:
        for detail in more_of(candidate.detail, part, field, values):
            richer = replace(candidate, detail=detail)
            fuller = _filled(plan, frames, richer, sides)
            if not isinstance(fuller, Shortfall):
                candidate, found = richer, fuller
                break
    return candidate, found


def _width_mm(frames: list[Frame]) -> float:
    """Width of all parts: that of the narrowest frame."""
    return min(frame.width_mm for frame in frames)


def _filled(plan: SwimPlan, frames: list[Frame], candidate: Candidate, sides: Sides) -> list[Filled] | Shortfall:
    width_mm = _width_mm(frames)
    taken_out = _taken_out(frames)
    parts = part_blocks(plan, width_mm, candidate.detail, sides, candidate.legs, taken_out)
    with_sketch = SKETCH not in candidate.detail.leaves_out + taken_out and not plan.marks_left_out
    if candidate.sides is not None:
        frames = [frame for frame in frames if frame.page < candidate.sides]
    return fill(
        frames,
        parts,
        with_sketch=with_sketch,
        running_title=lambda page: running_title(plan, width_mm, sides, page + 1),
    )


def _draw(plan: SwimPlan, layout: QgsPrintLayout, found: list[Filled], sides: Sides) -> QgsLayoutItemMap | None:
    """Draw what the frames hold on their pages; pages of ours on which nothing would stand are taken away."""
    used = {filled.frame.page for filled in found if filled.blocks}
    pages = layout.pageCollection()
    for page in range(pages.pageCount() - 1, 0, -1):
        if page not in used and not _holds_anything(layout, page):
            pages.deletePage(page)
    sides.count = pages.pageCount()
    sketch = None
    for filled in found:
        if not filled.blocks:
            continue
        paper, frame, y = Paper(layout, filled.frame.page), filled.frame, filled.frame.y_mm
        for number, block in enumerate(filled.blocks):
            if number == filled.sketch_at:
                sketch = draw_sketch(paper, plan, frame.x_mm, y + 1.0, frame.width_mm, block.height_mm - 2.0)
            block.draw(paper, frame.x_mm, y)
            y += block.height_mm
    return sketch


def _holds_anything(layout: QgsPrintLayout, page: int) -> bool:
    items = layout.pageCollection().itemsOnPage(page)
    return any(not isinstance(item, QgsLayoutItemPage) for item in items)


def _holds(plan: SwimPlan, template: Path) -> bool:
    """Whether a template has room for what no card may be without."""
    frames = take_frames(open_template(template), template)
    detail = replace(BARE, low=True)
    candidate = Candidate(template=template, detail=detail, legs=len(plan.legs))
    return not isinstance(_filled(plan, frames, candidate, Sides()), Shortfall)


def _save_picture(layout: QgsPrintLayout, path: Path) -> None:
    """The sides in rows of two, as the two faces of a card.

    Drawn page by page: the exporter's own picture export tries to georeference it, which PNG cannot carry.
    """
    exporter = QgsLayoutExporter(layout)
    pages = [exporter.renderPageToImage(page, dpi=PNG_DPI) for page in range(layout.pageCollection().pageCount())]
    wide, high = max(page.width() for page in pages) + GAP_PX, max(page.height() for page in pages) + GAP_PX
    columns = min(len(pages), 2)
    size = (columns * wide - GAP_PX, -(-len(pages) // columns) * high - GAP_PX)
    whole = QImage(*size, QImage.Format.Format_RGB32)
    whole.fill(GREY)
    whole.setDotsPerMeterX(pages[0].dotsPerMeterX())
    whole.setDotsPerMeterY(pages[0].dotsPerMeterY())
    painter = QPainter(whole)
    for number, page in enumerate(pages):
        row, column = divmod(number, columns)
        painter.drawImage(column * wide, row * high, page)
    painter.end()
    if not whole.save(str(path), "PNG"):
        raise CardError(
            asked=tr("The card's picture could not be written to {}").format(path.parent),
            remedy=tr("Choose another folder or make room on the disk"),
        )


def _checked(path: Path, result: QgsLayoutExporter.ExportResult) -> None:
    if result != QgsLayoutExporter.ExportResult.Success or not path.exists():
        raise CardError(
            asked=tr("The card could not be written to {}: the exporter's answer was {}").format(
                path.parent, int(result)
            ),
            remedy=tr("Choose another folder or make room on the disk"),
        )
