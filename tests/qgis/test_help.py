"""Help: a button on each section opens the page and the place that speak of it, in a window of the plugin's own."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from desk import Desk, desk_with_dock, opened
from qgis.core import QgsApplication
from qgis.PyQt.QtCore import Qt, QUrl
from qgis.PyQt.QtGui import QDesktopServices, QImage
from qgis.PyQt.QtTest import QTest
from qgis.PyQt.QtWidgets import QMainWindow
from swims import DAY, invented_bay
from tideleg.dock.dock import TidelegDock
from tideleg.dock.help_pages import anchor_of, anchors_in, docs_folder
from tideleg.dock.help_window import HelpWindow
from tideleg.dock.section import SectionFrame

ROOT = Path(__file__).resolve().parents[2]
LINK = re.compile(r"!?\[[^\]]*\]\(([^)\s]+)\)")


@pytest.fixture()
def at_desk(qgis_app: object) -> Iterator[tuple[Desk, TidelegDock]]:
    with desk_with_dock() as both:
        yield both


@pytest.fixture()
def with_plan(at_desk: tuple[Desk, TidelegDock], tmp_path: Path) -> tuple[Desk, TidelegDock]:
    opened(at_desk[1], invented_bay(tmp_path / "bay.gpkg"), depart=f"{DAY} 10:00")
    return at_desk


@pytest.fixture()
def window(qgis_app: object) -> Iterator[HelpWindow]:
    made = HelpWindow(docs_folder())
    made.show()
    yield made
    made.close()


def frames(dock: TidelegDock) -> list[SectionFrame]:
    return dock.findChildren(SectionFrame)


def help_of(desk: Desk) -> HelpWindow:
    return desk.window.findChild(HelpWindow)


def test_each_section_has_one_help_button_with_a_name_at_the_same_place(with_plan) -> None:
    _, dock = with_plan
    assert len(frames(dock)) >= 5
    QgsApplication.processEvents()
    names = [frame.help.accessibleName() for frame in frames(dock)]
    assert len(set(names)) == len(names)
    for frame in frames(dock):
        assert frame.section.title() in frame.help.accessibleName()
        assert frame.help.isEnabled() and frame.help.focusPolicy() & Qt.FocusPolicy.TabFocus
        assert (frame.width() - frame.help.geometry().right(), frame.help.y()) == (1, 0)


def test_each_section_names_a_heading_that_stands_in_its_page(at_desk, window) -> None:
    _, dock = at_desk
    for frame in frames(dock):
        assert frame.section.page != "dock.md", f"{frame.section.objectName()}: which heading?"
        page, _, anchor = frame.section.page.partition("#")
        text = (docs_folder() / page).read_text(encoding="utf-8")
        assert not anchor or anchor in anchors_in(text), f"{frame.section.objectName()}: no {frame.section.page}"
        assert window.show_page(frame.section.page)
        assert not anchor or anchor in window.text.anchors()


def test_the_help_of_a_section_that_is_still_grey_opens_its_page_at_its_heading(at_desk) -> None:
    desk, dock = at_desk
    assert not dock.turn_back.isEnabled()
    frame = next(one for one in frames(dock) if one.section is dock.turn_back)
    QTest.mouseClick(frame.help, Qt.MouseButton.LeftButton)
    shown = help_of(desk)
    assert shown.isVisible() and shown.page == "dock.md#turn-back"
    assert "dock" in shown.windowTitle()
    top = shown.text.cursorForPosition(shown.text.viewport().rect().topLeft()).block().text()
    assert top == "Turn back" or shown.text.verticalScrollBar().value() == shown.text.verticalScrollBar().maximum()


def test_the_space_bar_opens_the_help_too_and_one_window_serves_all_sections(with_plan) -> None:
    desk, dock = with_plan
    for frame in frames(dock)[:2]:
        frame.help.setFocus()
        QTest.keyClick(frame.help, Qt.Key.Key_Space)
        assert help_of(desk).page == frame.section.page
    assert len(desk.window.findChildren(HelpWindow)) == 1


def test_a_folded_section_keeps_its_help_and_a_hidden_one_takes_it_along(with_plan) -> None:
    _, dock = with_plan
    frame = next(one for one in frames(dock) if one.section is dock.legs)
    dock.legs.setCollapsed(True)
    assert frame.help.isVisible()
    dock.legs.setCollapsed(False)
    dock.legs.hide()
    assert frame.isHidden()
    dock.legs.show()
    assert frame.help.isVisible()


def test_a_link_leads_to_its_page_and_back_returns(window) -> None:
    assert window.show_page("dock.md") and not window.back.isEnabled()
    window.follow(QUrl("turn-back.md"))
    assert window.page == "turn-back.md" and window.back.isEnabled()
    window.follow(QUrl("dock.md#legs"))
    QTest.mouseClick(window.back, Qt.MouseButton.LeftButton)
    assert window.page == "turn-back.md"
    window.go_back()
    window.go_back()
    assert window.page == "dock.md"


def test_a_page_that_is_not_there_leaves_the_one_that_is_shown(window) -> None:
    assert window.show_page("dock.md")
    assert not window.show_page("no-such-page.md")
    assert window.page == "dock.md"


def test_links_to_elsewhere_leave_the_window_and_nothing_is_fetched(window, monkeypatch) -> None:
    opened = []
    monkeypatch.setattr(QDesktopServices, "openUrl", lambda url: opened.append(url.toString()))
    window.show_page("dock.md")
    window.follow(QUrl("https://somewhere.example/page.md"))
    window.follow(QUrl("report.schema.json"))
    window.follow(QUrl("no-such-file.txt"))
    assert len(opened) == 2 and opened[1].endswith("docs/report.schema.json")
    assert window.page == "dock.md"
    assert window.text.loadResource(2, QUrl("https://somewhere.example/picture.png")) is None


def test_a_picture_is_shown_no_wider_than_the_window(window) -> None:
    window.show_page("user-guide.md")
    whole = QImage(str(docs_folder() / "pictures" / "desktop.png"))
    shown = window.text.loadResource(2, QUrl("pictures/desktop.png"))
    assert 0 < shown.width() <= window.text.viewport().width() and whole.width() > 0


@pytest.mark.parametrize("page", sorted(path.name for path in (ROOT / "docs").glob("*.md")))
def test_every_link_between_the_pages_leads_somewhere(page: str) -> None:
    text = (ROOT / "docs" / page).read_text(encoding="utf-8")
    broken = []
    for link in LINK.findall(text):
        target, _, anchor = link.partition("#")
        if "://" in target:
            continue
        file = ROOT / "docs" / (target or page)
        # The zip has no more than docs/, so no link may leave it.
        inside = file.is_file() and (ROOT / "docs") in file.resolve().parents
        if not inside or (anchor and anchor not in anchors_in(file.read_text(encoding="utf-8"))):
            broken.append(link)
    assert broken == []


def test_anchors_are_the_headings_in_small_letters_with_hyphens() -> None:
    assert anchor_of("What to mind") == "what-to-mind"
    assert anchor_of("Layers: LEGS, TRACK") == "layers-legs-track"
    assert anchors_in("# One\n```\n# not a heading\n```\n## Two words ##\n") == {"one", "two-words"}


def test_the_help_window_goes_with_the_plugin(qgis_iface) -> None:
    import tideleg
    from desk import flush_deletions

    window: QMainWindow = qgis_iface.mainWindow()
    plugin = tideleg.classFactory(qgis_iface)
    plugin.initGui()
    plugin.help_action.trigger()
    (shown,) = window.findChildren(HelpWindow)
    assert shown.page == "user-guide.md"
    plugin.show_help("dock.md")
    plugin.show_help("no-such-page.md")
    assert shown.page == "user-guide.md"  # rather than an empty window
    plugin.unload()
    flush_deletions()
    assert window.findChildren(HelpWindow) == []
