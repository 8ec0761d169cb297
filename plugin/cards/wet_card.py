"""The wet card: one page, black on white, to be read at arm's length with water on the mask.

Headings and times are 7 mm high, everything else 4 mm; the page grows before a letter shrinks: A4, then A3 laid out as
two A4 halves to fold in the middle.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from qgis.core import Qgis, QgsLayoutExporter, QgsLayoutItemMap, QgsPrintLayout, QgsProject

from ..core.errors import SwimPlanError
from ..core.results.swim_plan import SwimPlan
from ..words import tr
from . import card_foot
from .block import Block, ruled, space, stacked
from .leg_rows import ROW_WIDTH_MM, column_heads, leg_rows
from .paper import BIG_BOLD, Paper
from .sketch import draw_sketch
from .turn_back_block import turn_back
from .whole_files import write_whole

MARGIN_MM = 8.0
COLUMN_MM = 210.0  # a column is an upright A4 page with its margins
HEADING_LINES = (3, 1)  # of later headings in a row: rather a larger page than fewer headings
BESIDE_WIDTH_MM, BESIDE_LEAST_MM = 78.0, 66.0  # a sketch to the right of the foot
ACROSS_LEAST_MM = 74.0  # a sketch as wide as the rows
GAP_MM = 4.0
PNG_DPI = 150


class CardError(SwimPlanError):
    """The card could not be laid out or written where asked."""


@dataclass(frozen=True, kw_only=True)
class Page:
    """A sheet of so many columns."""

    width_mm: float
    height_mm: float
    columns: int

    @property
    def room_mm(self) -> float:
        """Height between the margins."""
        return self.height_mm - 2.0 * MARGIN_MM


A4_UPRIGHT = Page(width_mm=COLUMN_MM, height_mm=297.0, columns=1)
A3_ACROSS = Page(width_mm=2.0 * COLUMN_MM, height_mm=297.0, columns=2)
PAGES = (A4_UPRIGHT, A3_ACROSS)


@dataclass(frozen=True, kw_only=True)
class Detail:
    """How much is said below the legs: lines of flags, and marks whose depths are given."""

    flag_lines: int
    depth_rows: int


DETAILS = (Detail(flag_lines=12, depth_rows=8), Detail(flag_lines=6, depth_rows=4), Detail(flag_lines=4, depth_rows=2))


@dataclass(frozen=True, kw_only=True)
class CardPlan:
    """What goes where: blocks of every column from the top down, and the height left for the sketch."""

    width_mm: float
    height_mm: float
    columns: tuple[tuple[Block, ...], ...]


def write_card(plan: SwimPlan, path_pdf: str | Path, *, png_path: str | Path | None = None) -> None:
    """Write the card as PDF and, if asked, as PNG; each file is written whole or not at all.

    Must run in the main thread: print layouts live there. Raises ``CardError`` with the place and the cause.
    """
    write_whole(card_writers(plan, path_pdf, png_path=png_path))


def card_writers(
    plan: SwimPlan, path_pdf: str | Path | None, *, png_path: str | Path | None = None
) -> dict[Path, Callable[[Path], None]]:
    """What writes the card's files, by their paths, for ``write_whole``; as ``write_card`` in all else."""
    layout, _ = card_layout(plan)
    exporter = QgsLayoutExporter(layout)
    exporter.kept = layout  # the exporter does not keep its layout alive
    writers: dict[Path, Callable[[Path], None]] = {}
    if path_pdf is not None:
        writers[Path(path_pdf)] = lambda path: _checked(path, exporter.exportToPdf(str(path), _pdf_settings()))
    if png_path is not None:
        writers[Path(png_path)] = lambda path: _save_picture(layout, path)
    return writers


def card_layout(plan: SwimPlan) -> tuple[QgsPrintLayout, QgsLayoutItemMap]:
    """The card as a print layout of a project of its own, and the sketch's map item in it."""
    project = QgsProject()
    layout = QgsPrintLayout(project)
    project.setParent(layout)  # the layout needs its project for as long as it lives
    layout.setName(tr("Wet card"))
    maps: list[QgsLayoutItemMap] = []
    chosen = choose_page(plan, maps)
    paper = Paper(layout, chosen.width_mm, chosen.height_mm)
    for number, blocks in enumerate(chosen.columns):
        stacked(list(blocks)).draw(paper, MARGIN_MM + number * COLUMN_MM, MARGIN_MM)
    return layout, maps[0]


def choose_page(plan: SwimPlan, maps: list[QgsLayoutItemMap] | None = None) -> CardPlan:
    """The smallest page that takes every leg; where even the largest does not, the legs left out are named on it."""
    kept = [] if maps is None else maps
    for heading_lines in HEADING_LINES:
        rows = leg_rows(plan, heading_lines)
        for page in PAGES:
            for detail in DETAILS:
                found = _arranged(plan, rows, page, detail, kept)
                if found is not None:
                    return found
    for count in range(len(rows) - 1, 0, -1):
        shortened = [*rows[:count], _left_out(count + 1, len(rows))]
        found = _arranged(plan, shortened, PAGES[-1], DETAILS[-1], kept)
        if found is not None:
            return found
    raise CardError(asked=tr("Not even the first leg of '{}' fits on the largest page").format(plan.route))


def _arranged(
    plan: SwimPlan, rows: list[Block], page: Page, detail: Detail, maps: list[QgsLayoutItemMap]
) -> CardPlan | None:
    """Blocks of each column, filled from the left; None where they do not fit."""
    notes = stacked([turn_back(plan), card_foot.flags(plan, detail.flag_lines), ruled(ROW_WIDTH_MM)])
    foot, caution = card_foot.foot(plan, ROW_WIDTH_MM, detail.depth_rows), card_foot.caution()
    # First with the foot as one more block of the stream and the sketch below it; then with both side by side.
    for tail, ending in (([notes, foot], _sketch_below), ([notes], _foot_beside_sketch)):
        columns = _filled(plan, rows, tail, page)
        if columns is None:
            continue
        left_mm = page.room_mm - _height(columns[-1]) - caution.height_mm
        end = ending(plan, left_mm, detail, maps)
        if end is not None:
            columns[-1] += [end, caution]
            columns = tuple(tuple(blocks) for blocks in columns)
            return CardPlan(width_mm=page.width_mm, height_mm=page.height_mm, columns=columns)
    return None


def _filled(plan: SwimPlan, rows: list[Block], tail: list[Block], page: Page) -> list[list[Block]] | None:
    """Title, rows and tail in the page's columns from the left; a column that begins with a row has the heads again."""
    heads = column_heads()
    columns: list[list[Block]] = [[card_foot.title(plan), heads]]
    for number, block in enumerate(rows + tail):
        if _height(columns[-1]) + block.height_mm > page.room_mm:
            if len(columns) == page.columns:
                return None
            columns.append([heads] if number < len(rows) else [])
        columns[-1].append(block)
    if len(columns) < page.columns:
        columns.append([])
    return columns


def _sketch_below(plan: SwimPlan, room_mm: float, detail: Detail, maps: list[QgsLayoutItemMap]) -> Block | None:
    """The sketch in what is left of a column; None where that is too little."""
    sketch_mm = room_mm - GAP_MM
    if sketch_mm < ACROSS_LEAST_MM:
        return None
    return stacked([space(GAP_MM / 2.0), _sketch(plan, 0.0, ROW_WIDTH_MM, sketch_mm, maps), space(GAP_MM / 2.0)])


def _foot_beside_sketch(plan: SwimPlan, room_mm: float, detail: Detail, maps: list[QgsLayoutItemMap]) -> Block | None:
    """Foot at the left, sketch at the right; None where they do not fit."""
    foot = card_foot.foot(plan, ROW_WIDTH_MM - BESIDE_WIDTH_MM - GAP_MM, detail.depth_rows)
    if max(foot.height_mm, BESIDE_LEAST_MM) + GAP_MM > room_mm:
        return None
    sketch = _sketch(plan, ROW_WIDTH_MM - BESIDE_WIDTH_MM, BESIDE_WIDTH_MM, room_mm - GAP_MM, maps)

    def draw(paper: Paper, x: float, y: float) -> None:
        foot.draw(paper, x, y)
        sketch.draw(paper, x, y + GAP_MM / 2.0)

    return Block(height_mm=room_mm, draw=draw)


def _sketch(plan: SwimPlan, left: float, width: float, height: float, maps: list[QgsLayoutItemMap]) -> Block:
    def draw(paper: Paper, x: float, y: float) -> None:
        maps.append(draw_sketch(paper, plan, x + left, y, width, height))

    return Block(height_mm=height, draw=draw)


def _left_out(first: int, last: int) -> Block:
    words = tr("LEGS {first}-{last} ARE NOT ON THIS CARD").format(first=first, last=last)

    def draw(paper: Paper, x: float, y: float) -> None:
        paper.box(x, y + 0.5, ROW_WIDTH_MM, 11.0, fill="black")
        paper.text(words, x + 3.0, y + 9.5, BIG_BOLD, inverted=True, width=ROW_WIDTH_MM - 6.0)

    return Block(height_mm=12.0, draw=draw)


def _height(blocks: list[Block]) -> float:
    return sum(block.height_mm for block in blocks)


def _pdf_settings() -> QgsLayoutExporter.PdfExportSettings:
    settings = QgsLayoutExporter.PdfExportSettings()
    settings.forceVectorOutput = True
    settings.appendGeoreference = False
    settings.simplifyGeometries = False
    settings.textRenderFormat = Qgis.TextRenderFormat.AlwaysText
    return settings


def _save_picture(layout: QgsPrintLayout, path: Path) -> None:
    # Drawn page by page: the exporter's own picture export tries to georeference it, which PNG cannot carry.
    if not QgsLayoutExporter(layout).renderPageToImage(0, dpi=PNG_DPI).save(str(path), "PNG"):
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
