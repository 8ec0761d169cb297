"""The layouts a card is printed on: print layout templates of ours or of the user's, and the frames in them.

A frame is a label of the layout whose id begins with ``tideleg``; its text names the parts that go there, one a line.
Frames are filled in the order of their ids. Everything else in the layout is the user's and stays as it is.
"""

from __future__ import annotations

import re
from pathlib import Path

from qgis.core import QgsLayoutItemLabel, QgsLayoutSize, QgsPrintLayout, QgsProject, QgsReadWriteContext
from qgis.PyQt.QtXml import QDomDocument

from ..core.errors import SwimPlanError
from ..words import tr
from .card_frames import Frame
from .card_parts import NEEDED, PARTS
from .paper import MM
from .vector_pdf import MAKER

FOLDER = Path(__file__).parent / "templates"
PAPERS = ("A6", "A5", "A4")
SIDES = (1, 2, 4)  # one side, one card of two sides, two cards of two sides
EDGE_MM = 0.1  # what rounding in the designer may do
FRAME_ID = re.compile(r"tideleg\b", re.IGNORECASE)


class CardError(SwimPlanError):
    """The card could not be laid out or written where asked."""


def shipped(paper: str, sides: int) -> Path:
    """The template of ours for that paper and so many sides."""
    return FOLDER / f"card_{paper.lower()}_{sides}.qpt"


def open_template(path: Path, project: QgsProject | None = None) -> QgsPrintLayout:
    """The layout in a file, in a project of its own where none is given. CardError where it is none."""
    own = QgsProject() if project is None else None
    layout = QgsPrintLayout(own or project)
    if own is not None:
        own.setParent(layout)  # the layout needs its project for as long as it lives
        about = own.metadata()  # QGIS writes the login name there, and from there into every PDF
        about.setAuthor(MAKER)
        own.setMetadata(about)
    layout.setName(tr("Wet card"))
    try:
        content = path.read_text(encoding="utf-8")
    except (OSError, UnicodeDecodeError) as error:
        raise _no_template(path, str(error)) from error
    document = QDomDocument()
    if not document.setContent(content)[0]:
        raise _no_template(path, tr("it is not XML"))
    _, read = layout.loadFromTemplate(document, QgsReadWriteContext(), True)
    if not read or layout.pageCollection().pageCount() == 0:
        raise _no_template(path, tr("QGIS finds no layout in it"))
    return layout


def take_frames(layout: QgsPrintLayout, path: Path) -> list[Frame]:
    """The frames of a layout in their order; their labels are taken out of it. CardError for what is no frame."""
    labels = [item for item in layout.items() if isinstance(item, QgsLayoutItemLabel) and FRAME_ID.match(item.id())]
    labels.sort(key=lambda item: [int(word) if word.isdigit() else 0 for word in re.findall(r"\d+|\D+", item.id())])
    frames = [_frame(label, path) for label in labels]
    named = {part for frame in frames for part in frame.parts}
    missing = [part for part in NEEDED if part not in named]
    if missing:
        raise CardError(
            asked=tr("The layout {file} has no frame for: {parts}").format(file=path.name, parts=", ".join(missing)),
            allowed=tr("A label whose id begins with 'tideleg' is a frame; its text names the parts, one a line"),
            remedy=tr("Add the parts to a frame, or begin again with one of the layouts that come with Tideleg"),
        )
    _check_places(frames, [label.itemRotation() for label in labels], layout, path)
    for label in labels:
        layout.removeLayoutItem(label)
    return frames


def _check_places(frames: list[Frame], turned_deg: list[float], layout: QgsPrintLayout, path: Path) -> None:
    """CardError for a frame that is turned, reaches over its page or over another: figures would be cut or printed
    over others, and a heading of 060 would read 60."""
    pages = layout.pageCollection()
    for number, frame in enumerate(frames):
        page = pages.page(frame.page) if 0 <= frame.page < pages.pageCount() else None
        why = ""
        if page is None or not _within(frame, page.pageSize(), layout):
            why = tr("reaches over the edge of its page")
        elif abs(turned_deg[number]) > 1e-6:
            why = tr("is turned")
        elif over := next((one for one in frames[:number] if _overlap(one, frame)), None):
            why = tr("lies over '{other}'").format(other=over.name)
        if why:
            raise CardError(
                asked=tr("The frame '{id}' of the layout {file} {why}").format(id=frame.name, file=path.name, why=why),
                allowed=tr("Frames lie within their page, upright, and beside each other"),
                remedy=tr("Move it in the layout designer, and save the template again"),
            )


def _within(frame: Frame, size: QgsLayoutSize, layout: QgsPrintLayout) -> bool:
    page = layout.convertToLayoutUnits(size)
    wide, high = (layout.convertFromLayoutUnits(one, MM).length() for one in (page.width(), page.height()))
    right, below = frame.x_mm + frame.width_mm, frame.y_mm + frame.height_mm
    return min(frame.x_mm, frame.y_mm) >= -EDGE_MM and right <= wide + EDGE_MM and below <= high + EDGE_MM


def _overlap(one: Frame, other: Frame) -> bool:
    across = min(one.x_mm + one.width_mm, other.x_mm + other.width_mm) - max(one.x_mm, other.x_mm)
    down = min(one.y_mm + one.height_mm, other.y_mm + other.height_mm) - max(one.y_mm, other.y_mm)
    return one.page == other.page and min(across, down) > EDGE_MM


def _frame(label: QgsLayoutItemLabel, path: Path) -> Frame:
    parts = tuple(" ".join(line.lower().split()) for line in label.text().splitlines() if line.strip())
    wrong = [part for part in parts if part not in PARTS]
    if wrong:
        raise CardError(
            asked=tr("The frame '{id}' of the layout {file} names '{part}'").format(
                id=label.id(), file=path.name, part=wrong[0]
            ),
            allowed=tr("one part a line, of: {parts}").format(parts=", ".join(PARTS)),
            remedy=tr("Correct the text of the frame"),
        )
    place, size = label.pagePos(), label.rect()

    def mm(length: float) -> float:
        return label.layout().convertFromLayoutUnits(length, MM).length()

    return Frame(
        name=label.id(),
        page=label.page(),
        x_mm=mm(place.x()),
        y_mm=mm(place.y()),
        width_mm=mm(size.width()),
        height_mm=mm(size.height()),
        parts=parts,
    )


def _no_template(path: Path, why: str) -> CardError:
    return CardError(
        asked=tr("The layout {file} cannot be read: {why}").format(file=path, why=why),
        allowed=tr("a print layout template (.qpt)"),
        remedy=tr("Save the layout as a template in QGIS's layout designer, and choose that file"),
    )
