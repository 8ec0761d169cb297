"""A window for the pages of the documentation: they are read from the plugin's own folder, never from the network."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from qgis.PyQt.QtCore import QUrl
from qgis.PyQt.QtGui import (
    QDesktopServices,
    QImage,
    QKeySequence,
    QTextBlock,
    QTextCharFormat,
    QTextCursor,
    QTextFormat,
    QTextFrameFormat,
)
from qgis.PyQt.QtWidgets import QDialog, QHBoxLayout, QPushButton, QTextBrowser, QVBoxLayout, QWidget

from ..words import tr
from .help_pages import anchor_of

WIDTH_PX, HEIGHT_PX = 760, 560
CONTENTS = "user-guide.md"
HEADING_STEPS = {1: 2, 2: 1}  # sizes above the text's own, as Qt counts them; Markdown's own are larger


class HelpWindow(QDialog):
    """Shows one page at a time; links between pages stay in the window, others go to the user's own programs."""

    def __init__(self, folder: Path, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("TidelegHelp")
        self._folder = folder
        self._been: list[str] = []  # pages with their anchors; the last is the one that is shown
        self.text = PageView(folder)
        self.text.setAccessibleName(tr("Page of the documentation"))
        self.back = QPushButton(tr("Back"))
        self.back.setShortcut(QKeySequence(QKeySequence.StandardKey.Back))
        self.back.setToolTip(tr("The page before this one"))
        self.contents = QPushButton(tr("User Guide"))
        self.contents.setToolTip(tr("The page to begin with"))
        self.close_it = QPushButton(tr("Close"))
        buttons = QHBoxLayout()
        buttons.addWidget(self.back)
        buttons.addWidget(self.contents)
        buttons.addStretch()
        buttons.addWidget(self.close_it)
        for button in (self.back, self.contents, self.close_it):
            button.setAutoDefault(False)
        whole = QVBoxLayout(self)
        whole.addWidget(self.text)
        whole.addLayout(buttons)
        self.back.clicked.connect(self.go_back)
        self.contents.clicked.connect(lambda: self.show_page(CONTENTS))
        self.close_it.clicked.connect(self.close)
        self.text.anchorClicked.connect(self.follow)
        self.resize(WIDTH_PX, HEIGHT_PX)

    @property
    def page(self) -> str:
        """What is shown, such as ``dock.md#legs``; empty before the first page."""
        return self._been[-1] if self._been else ""

    def show_page(self, page: str) -> bool:
        """Show a page of the folder, at a heading where one is named after ``#``. False where there is no such page."""
        if not self.text.turn_to(page):
            return False
        if page != self.page:
            self._been.append(page)
        self._shown()
        return True

    def go_back(self) -> None:
        """Show the page before this one."""
        if len(self._been) > 1:
            self._been.pop()
            self.text.turn_to(self.page)
            self._shown()

    def follow(self, link: QUrl) -> None:
        """Go where a link of the page leads."""
        if link.scheme() in ("http", "https", "mailto"):
            QDesktopServices.openUrl(link)
            return
        page = link.path() or self.page.partition("#")[0]
        anchor = f"#{link.fragment()}" if link.fragment() else ""
        if page.endswith(".md"):
            self.show_page(page + anchor)
        elif (self._folder / page).is_file():
            QDesktopServices.openUrl(QUrl.fromLocalFile(str(self._folder / page)))

    def _shown(self) -> None:
        self.setWindowTitle(tr("Tideleg help: {}").format(self.text.title()))
        self.back.setEnabled(len(self._been) > 1)
        self.text.setFocus()


class PageView(QTextBrowser):
    """A page in Markdown, with anchors at its headings and pictures no wider than the window."""

    def __init__(self, folder: Path, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._folder = folder
        self._file: Path | None = None
        self.setOpenLinks(False)

    def turn_to(self, page: str) -> bool:
        """Show a page and the heading in it. False where there is no such page; the one that is shown stays."""
        name, _, anchor = page.partition("#")
        file = self._folder / name
        if not file.is_file():
            return False
        if file != self._file:
            self._file = file
            self._show(file.read_text(encoding="utf-8"))
        self.verticalScrollBar().setValue(0)
        if anchor:
            self.scrollToAnchor(anchor)
        return True

    def title(self) -> str:
        """The page's first line."""
        return self.document().firstBlock().text()

    def anchors(self) -> set[str]:
        """The headings that can be gone to."""
        blocks = self._blocks()
        return {name for one in blocks for piece in one.textFormats() for name in piece.format.anchorNames()}

    def loadResource(self, kind: int, name: QUrl) -> object:
        """A picture of the page, made as narrow as the window; nothing else is read, and nothing from elsewhere."""
        if not name.isRelative() or self._file is None:
            return None
        picture = QImage(str(self._file.parent / name.path()))
        widest = max(200, self.viewport().width() - 40)
        return picture.scaledToWidth(widest) if picture.width() > widest else picture

    def _show(self, text: str) -> None:
        if not hasattr(self, "setMarkdown"):  # before Qt 5.14
            self.setPlainText(text)
            return
        self.document().setMarkdown(text)
        for block in self._blocks():
            if block.blockFormat().headingLevel():
                self._mark_heading(QTextCursor(block), block.blockFormat().headingLevel())
        self._rule_tables()

    def _mark_heading(self, cursor: QTextCursor, level: int) -> None:
        look = QTextCharFormat()
        look.setAnchor(True)
        look.setAnchorNames([anchor_of(cursor.block().text())])
        look.setProperty(QTextFormat.Property.FontSizeAdjustment, HEADING_STEPS.get(level, 0))
        cursor.select(QTextCursor.SelectionType.BlockUnderCursor)
        cursor.mergeCharFormat(look)

    def _rule_tables(self) -> None:
        for frame in self.document().rootFrame().childFrames():
            shape = frame.frameFormat()
            if shape.isTableFormat():
                table = shape.toTableFormat()
                table.setBorder(1.0)
                table.setBorderCollapse(True)
                table.setBorderStyle(QTextFrameFormat.BorderStyle.BorderStyle_Solid)
                table.setCellSpacing(0.0)
                table.setCellPadding(4.0)
                frame.setFrameFormat(table)

    def _blocks(self) -> Iterator[QTextBlock]:
        block = self.document().firstBlock()
        while block.isValid():
            yield block
            block = block.next()
