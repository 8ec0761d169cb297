"""Make the print layout templates of the wet card in plugin/cards/templates.

A page has one frame within its margins that takes all parts in the order they are read. The labels' texts are what a
user sees and changes in QGIS's layout designer.

    .cache/venv/bin/python tools/card_templates.py [folder]
"""

from __future__ import annotations

import os
import re
import sys
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from qgis.core import (
    QgsApplication,
    QgsLayoutItemLabel,
    QgsLayoutItemPage,
    QgsLayoutPoint,
    QgsLayoutSize,
    QgsPrintLayout,
    QgsProject,
    QgsReadWriteContext,
    QgsUnitTypes,
)
from qgis.PyQt.QtXml import QDomDocument

ROOT = Path(__file__).resolve().parent.parent
MM = QgsUnitTypes.LayoutUnit.LayoutMillimeters
SIZES_MM = {"A6": (105.0, 148.0, 5.0), "A5": (148.0, 210.0, 6.0), "A4": (210.0, 297.0, 8.0)}  # width, height, margin


def main() -> None:
    """Write every paper with every number of sides."""
    sys.path.insert(0, str(ROOT / ".cache" / "python"))
    app = QgsApplication([], True)
    app.initQgis()
    from tideleg.cards.card_templates import FOLDER, PAPERS, SIDES

    folder = Path(sys.argv[1]) if len(sys.argv) > 1 else FOLDER
    folder.mkdir(parents=True, exist_ok=True)
    for paper in PAPERS:
        for sides in SIDES:
            path = folder / f"card_{paper.lower()}_{sides}.qpt"
            path.write_text(template(paper, sides), encoding="utf-8")
            print(path)


def template(paper: str, sides: int) -> str:
    """The template as the text of its file."""
    from tideleg.cards.card_parts import PARTS

    width, height, margin = SIZES_MM[paper]
    layout = QgsPrintLayout(QgsProject.instance())
    for side in range(sides):
        page = QgsLayoutItemPage(layout)
        page.setPageSize(QgsLayoutSize(width, height, MM))
        layout.pageCollection().addPage(page)
        frame = QgsLayoutItemLabel(layout)
        frame.setId(f"tideleg {side + 1}")
        frame.setText("\n".join(PARTS))
        frame.setFrameEnabled(True)
        layout.addLayoutItem(frame)
        frame.attemptMove(QgsLayoutPoint(margin, margin, MM), page=side)
        frame.attemptResize(QgsLayoutSize(width - 2 * margin, height - 2 * margin, MM))
    document = QDomDocument()
    document.appendChild(layout.writeXml(document, QgsReadWriteContext()))
    # Names that QGIS makes anew each time would make every run of this script a change.
    named: dict[str, str] = {}
    return re.sub(
        r"\{[0-9a-f]{8}-[0-9a-f-]{27}\}",
        lambda found: named.setdefault(found.group(), f"{{00000000-0000-4000-8000-{len(named):012d}}}"),
        document.toString(1),
    )


if __name__ == "__main__":
    main()
