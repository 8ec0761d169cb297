"""A plan's table edited in its window by keys, clicks and the clipboard, through the edit buffer of its layer."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from datetime import datetime, timezone
from pathlib import Path

import pytest
from desk import flush_deletions
from grids import (
    CONTROL,
    answering,
    checked,
    editor_of,
    paste,
    press,
    retype,
    shown_rows,
    stand_on,
    tide_plan,
    values_of,
    window_on,
)
from qgis.core import QgsProject
from qgis.PyQt.QtCore import QEvent, Qt
from qgis.PyQt.QtTest import QTest
from qgis.PyQt.QtWidgets import QApplication, QComboBox, QDialog, QWidget
from tideleg.dock.tables.table_window import TableWindow
from tideleg.plan_package.store import append_rows, create_plan, open_layer

UTC = timezone.utc
KEY = Qt.Key


@pytest.fixture(scope="module")
def four_waters(qgis_app: object, tmp_path_factory: pytest.TempPathFactory) -> Path:
    return tide_plan(tmp_path_factory.mktemp("tables") / "plan.gpkg")


@pytest.fixture()
def tides(four_waters: Path, tmp_path: Path) -> Iterator[TableWindow]:
    with window_on(Path(shutil.copy(four_waters, tmp_path))) as window:
        yield window


def click(widget: QWidget) -> None:
    QTest.mouseClick(widget, Qt.MouseButton.LeftButton)


def heights(window: TableWindow) -> list[object]:
    return values_of(window, "height_m")


def stored(window: TableWindow, table: str = "tides") -> int:
    """How many rows the file itself has."""
    return len(list(open_layer(window.rows.path, table).getFeatures()))


def marked(window: TableWindow) -> set[tuple[int, str]]:
    """Row, counted from 0, and field of each cell that is marked."""
    return {(window.model.fids.index(one.fid), one.field) for one in window.model.problems()}


def test_a_window_is_no_larger_than_it_may_be_and_shows_titles_with_units_and_the_zone(tides) -> None:
    assert tides.width() <= 1000 and tides.height() <= 580 and not tides.isModal()
    titles = [tides.model.headerData(n, Qt.Orientation.Horizontal).replace("\n", " ") for n in range(4)]
    assert titles == ["Port", "Time (Europe/Lisbon)", "Height (m)", "Kind"]
    assert shown_rows(tides)[0] == ["Port Tern", "2027-06-05 10:40", "3.5", "High water"]  # 09:40 UTC, Lisbon in summer
    assert tides.state.text() == "Rows: 4. All saved." and not tides.rows.layer.isEditable()


def test_a_cell_typed_over_is_in_the_edit_buffer_and_not_in_the_file(tides) -> None:
    retype(tides, 0, "height_m", "3,7")
    assert heights(tides)[0] == 3.7 and tides.rows.layer.isModified()
    assert next(open_layer(tides.rows.path, "tides").getFeatures())["height_m"] == 3.5
    assert "Not saved yet" in tides.state.text() and tides.isWindowModified()


def test_any_letter_begins_to_edit_and_enter_goes_down_and_tab_to_the_side(tides) -> None:
    stand_on(tides, 0, "height_m")
    press(tides, KEY.Key_4)
    QTest.keyClick(editor_of(tides), KEY.Key_Return)
    QApplication.processEvents()
    assert heights(tides)[0] == 4.0 and tides.view.currentIndex().row() == 1
    press(tides, KEY.Key_1)
    QTest.keyClick(editor_of(tides), KEY.Key_Tab)
    QApplication.processEvents()
    assert heights(tides)[1] == 1.0 and tides.view.currentIndex().column() == 3
    press(tides, KEY.Key_Return)
    assert tides.view.currentIndex().row() == 2
    press(tides, KEY.Key_Tab)
    assert (tides.view.currentIndex().row(), tides.view.currentIndex().column()) == (3, 0)


def test_tab_at_the_last_cell_leaves_the_grid_so_that_nobody_is_caught_in_it(tides) -> None:
    stand_on(tides, 3, "kind")
    press(tides, KEY.Key_Tab)
    assert tides.view.currentIndex().row() == 3 and not tides.view.hasFocus()


def test_a_time_is_typed_in_the_plans_zone_and_stored_in_utc(tides) -> None:
    retype(tides, 0, "time", "2027-12-24 08:15")
    assert values_of(tides, "time")[0] == datetime(2027, 12, 24, 8, 15, tzinfo=UTC)  # Lisbon's winter is UTC
    retype(tides, 0, "time", "2027-06-05 08:15")
    assert values_of(tides, "time")[0] == datetime(2027, 6, 5, 7, 15, tzinfo=UTC)
    click(tides.save)
    assert values_of(tides, "time")[0] == datetime(2027, 6, 5, 7, 15, tzinfo=UTC)


def test_a_wrong_text_stays_marked_in_its_cell_and_out_of_the_layer_until_it_is_corrected(tides) -> None:
    retype(tides, 0, "height_m", "high")
    assert shown_rows(tides)[0][2] == "high" and heights(tides)[0] == 3.5
    cell = tides.model.index(0, 2)
    assert not cell.data(Qt.ItemDataRole.DecorationRole).isNull()
    tip = cell.data(Qt.ItemDataRole.ToolTipRole)
    assert all(words in tip for words in ("Got 'high'", "a number from -10 to 25 m", "the plan still has 3.5 here"))
    assert "Stop" in cell.data(Qt.ItemDataRole.AccessibleDescriptionRole)
    assert not tides.rows.layer.isModified()
    retype(tides, 0, "height_m", "3.6")
    assert marked(tides) == set() and heights(tides)[0] == 3.6


def test_an_hour_that_clocks_skip_or_show_twice_is_refused_with_words(tides) -> None:
    before = values_of(tides, "time")
    retype(tides, 0, "time", "2027-03-28 01:30")
    assert "clocks jump over it" in tides.problems.item(0, 0).text()
    retype(tides, 0, "time", "2027-10-31 01:30")
    assert "comes twice that night" in tides.problems.item(0, 0).text()
    assert values_of(tides, "time") == before


def test_while_one_types_the_line_says_what_is_wrong_and_takes_it_back(tides) -> None:
    stand_on(tides, 0, "height_m")
    press(tides, KEY.Key_F2)
    line = editor_of(tides)
    line.selectAll()
    QTest.keyClicks(line, "99")
    assert line.wrong in line.actions() and "from -10 to 25 m" in tides.status.text()
    QTest.keyClick(line, KEY.Key_Backspace)
    assert line.wrong not in line.actions() and tides.status.isHidden()
    QTest.keyClicks(line, "99")
    QTest.keyClick(line, KEY.Key_Escape)
    assert heights(tides)[0] == 3.5 and tides.status.isHidden()


def test_a_list_of_the_schema_is_a_combo_box_with_its_words(tides) -> None:
    stand_on(tides, 1, "kind")
    press(tides, KEY.Key_F2)
    (box,) = tides.view.viewport().findChildren(QComboBox)
    assert [box.itemText(n) for n in range(box.count())] == ["High water", "Low water"]
    QTest.keyClick(box, KEY.Key_Up)
    QTest.keyClick(box, KEY.Key_Return)
    QApplication.processEvents()
    assert values_of(tides, "kind")[1] == "HW"
    checked(tides)
    assert (1, "kind") in marked(tides)


def test_undo_and_redo_are_those_of_qgis_and_each_takes_one_step(tides) -> None:
    retype(tides, 0, "height_m", "3.7")
    retype(tides, 1, "height_m", "0.7")
    tides.rows.layer.undoStack().undo()  # as the button of QGIS's own toolbar does
    tides.model.catch_up()
    assert [row[2] for row in shown_rows(tides)[:2]] == ["3.7", "0.5"]
    press(tides, KEY.Key_Z, CONTROL)
    assert heights(tides)[0] == 3.5 and not tides.undo.isEnabled()
    press(tides, KEY.Key_Y, CONTROL)
    press(tides, KEY.Key_Y, CONTROL)
    assert [row[2] for row in shown_rows(tides)[:2]] == ["3.7", "0.7"] and not tides.redo.isEnabled()


def test_undo_takes_back_what_was_refused_before_what_was_written(tides) -> None:
    retype(tides, 0, "height_m", "3.7")
    retype(tides, 1, "height_m", "low")
    press(tides, KEY.Key_Z, CONTROL)
    assert [row[2] for row in shown_rows(tides)[:2]] == ["3.7", "0.5"]
    press(tides, KEY.Key_Z, CONTROL)
    assert heights(tides)[0] == 3.5


def test_edits_that_the_user_began_elsewhere_are_shown_and_kept(qgis_app, tmp_path: Path) -> None:
    plan = tide_plan(tmp_path / "plan.gpkg")
    QgsProject.instance().clear()
    layer = open_layer(plan, "tides")
    QgsProject.instance().addMapLayer(layer)
    layer.startEditing()
    first = next(layer.getFeatures()).id()
    layer.changeAttributeValue(first, layer.fields().lookupField("height_m"), 4.4)
    from tideleg.plan_package.schema import LAYER_BY_NAME

    window = TableWindow(layer, LAYER_BY_NAME["tides"], "UTC", names=dict)
    assert shown_rows(window)[0][2] == "4.4"
    layer.changeAttributeValue(first, layer.fields().lookupField("height_m"), 4.5)
    window.model.catch_up()
    assert shown_rows(window)[0][2] == "4.5"
    window.release()
    flush_deletions()
    assert layer.isModified() and layer.isEditable()
    layer.rollBack()
    QgsProject.instance().clear()


def test_delete_empties_cells_to_no_value_and_never_to_0(qgis_app, tmp_path: Path) -> None:
    plan = create_plan(tmp_path / "plan.gpkg", zone="UTC")
    row = {"station": "Sill", "hour": 0, "set_deg": 90.0, "spring_kn": 1.0, "neap_kn": 0.5}
    append_rows(plan, "stream_rates", [(None, row)])
    with window_on(plan, "stream_rates", zone="UTC") as window:
        stand_on(window, 0, "spring_kn")
        press(window, KEY.Key_Delete)
        assert values_of(window, "spring_kn") == [None] and shown_rows(window)[0][3] == ""
        stand_on(window, 0, "hour")  # must be filled: stays in the plan, and is marked here
        press(window, KEY.Key_Delete)
        assert values_of(window, "hour") == [0] and marked(window) == {(0, "hour")}


def test_a_row_added_is_of_the_same_port_and_says_what_it_lacks_until_it_is_whole(tides) -> None:
    press(tides, KEY.Key_Insert)
    assert shown_rows(tides)[4] == ["Port Tern", "", "", ""]
    assert marked(tides) == {(4, "time"), (4, "height_m"), (4, "kind")}
    assert tides.model.headerData(4, Qt.Orientation.Vertical) == "5 *"
    retype(tides, 4, "time", "2027-06-06 12:28")
    retype(tides, 4, "height_m", "3.6")
    retype_choice(tides, 4, "High water")
    checked(tides)
    assert marked(tides) == set()
    click(tides.save)
    assert tides.status.text() == "Saved." and stored(tides) == 5 and tides.model.fids[4] > 0


def retype_choice(window: TableWindow, row: int, words: str) -> None:
    stand_on(window, row, "kind")
    press(window, KEY.Key_F2)
    (box,) = [one for one in window.view.viewport().findChildren(QComboBox) if one.isVisible()]
    box.setCurrentText(words)
    QTest.keyClick(box, KEY.Key_Return)
    QApplication.processEvents()


def test_a_row_that_is_not_whole_is_not_saved_and_qgis_says_why_with_the_edits_kept(tides) -> None:
    press(tides, KEY.Key_Insert)
    click(tides.save)
    assert "Not saved; your edits are kept." in tides.status.text() and len(tides.status.text()) > 60
    assert tides.rows.layer.isModified() and stored(tides) == 4 and len(shown_rows(tides)) == 5


def test_rows_are_deleted_and_come_back_where_they_stood(tides) -> None:
    before = shown_rows(tides)
    stand_on(tides, 1, "height_m")
    press(tides, KEY.Key_Minus, CONTROL)
    assert shown_rows(tides) == [before[0], *before[2:]]
    press(tides, KEY.Key_Z, CONTROL)
    assert shown_rows(tides) == before and stored(tides) == 4


def test_sorting_changes_what_is_shown_and_not_what_is_stored(tides) -> None:
    order = list(values_of(tides, "time"))
    bar = tides.view.horizontalHeader()
    for expected in (["0.5", "0.5", "3.5", "3.5"], ["3.5", "3.5", "0.5", "0.5"], ["3.5", "0.5", "3.5", "0.5"]):
        place = bar.sectionViewportPosition(2) + 10
        QTest.mouseClick(bar.viewport(), Qt.MouseButton.LeftButton, pos=bar.viewport().rect().topLeft() + _right(place))
        assert [row[2] for row in shown_rows(tides)] == expected
    assert values_of(tides, "time") == order and not tides.rows.layer.isModified()


def _right(pixels: int):
    from qgis.PyQt.QtCore import QPoint

    return QPoint(pixels, 5)


def test_an_edit_in_sorted_rows_goes_to_the_row_it_is_typed_in(tides) -> None:
    tides.view.sort_by(2)
    moment = shown_rows(tides)[0][1]
    retype(tides, 0, "height_m", "0.4")
    assert [row[2] for row in shown_rows(tides) if row[1] == moment] == ["0.4"]
    assert sorted(heights(tides)) == [0.4, 0.5, 3.5, 3.5]


def test_rows_beside_each_other_that_cannot_be_are_listed_and_a_click_goes_to_the_cell(tides) -> None:
    retype(tides, 2, "height_m", "0.3")
    checked(tides)
    assert marked(tides) == {(1, "height_m"), (2, "height_m"), (3, "height_m")}
    assert "Row 2, Height (m)" in tides.problems.item(0, 0).text()
    stand_on(tides, 0, "port")
    place = tides.problems.visualItemRect(tides.problems.item(1, 0)).center()
    QTest.mouseClick(tides.problems.viewport(), Qt.MouseButton.LeftButton, pos=place)
    assert (tides.view.currentIndex().row(), tides.view.currentIndex().column()) == (2, 2)


def test_more_problems_than_are_listed_are_counted(tides) -> None:
    for row in range(4):
        retype(tides, row, "height_m", "x")
    assert tides.problems.rowCount() == 4 and "And 1 more" in tides.problems.item(3, 0).text()


TWO_DAYS = (
    "Port\tTime (UTC)\tHeight (m)\tKind\nPort Tern\t2027-06-07 10:40\t3.4\tHW\nPort Tern\t2027-06-07 16:52\t0.6\tLW\n"
)


def test_a_table_pasted_with_headings_is_shown_first_added_at_the_end_and_undone_in_one_step(tides) -> None:
    seen = answering(lambda dialog: click(dialog.all))
    paste(tides, TWO_DAYS)
    assert seen and len(shown_rows(tides)) == 6
    assert values_of(tides, "time")[-2] == datetime(2027, 6, 7, 10, 40, tzinfo=UTC)
    assert "Rows pasted: 2, new among them: 2." in tides.status.text()
    press(tides, KEY.Key_Z, CONTROL)
    assert len(shown_rows(tides)) == 4 and not tides.rows.layer.undoStack().canUndo()


def test_cells_pasted_without_headings_go_from_the_current_cell_on_at_once_and_grow_rows(tides) -> None:
    stand_on(tides, 2, "height_m")
    paste(tides, "3,1\tHW\n0,9\tLW\n3,2\tHW\n")
    assert [row[2] for row in shown_rows(tides)[2:]] == ["3.1", "0.9", "3.2"]
    assert shown_rows(tides)[4][0] == "Port Tern" and "'Port Tern', as in the rows there" in tides.status.text()


def test_the_preview_tells_what_is_refused_and_pastes_the_good_rows_or_nothing(tides) -> None:
    text = TWO_DAYS + "Port Tern\t2027-06-07 23:04\t=1+1\tHW\nPort Tern\tsoon\t0.5\tLW\n"
    told = []

    def look(dialog: QDialog) -> None:
        told.append((dialog.summary.text(), dialog.refused.rowCount(), dialog.refused.item(0, 1).text()))
        assert dialog.width() <= 1000 and dialog.height() <= 580 and not dialog.all.isEnabled()
        click(dialog.some)

    answering(look)
    paste(tides, text)
    assert told[0][0] == "Rows that can be pasted: 2. Refused: 2." and told[0][1] == 2 and "a formula" in told[0][2]
    assert len(shown_rows(tides)) == 6
    answering(lambda dialog: QTest.keyClick(dialog, KEY.Key_Escape))
    paste(tides, text)
    assert len(shown_rows(tides)) == 6 and tides.status.text() == "Nothing was pasted."


def test_a_table_with_headings_goes_over_the_rows_there_where_the_user_says_so(tides) -> None:
    stand_on(tides, 0, "port")

    def over(dialog: QDialog) -> None:
        QTest.keyClick(dialog.where, KEY.Key_Down)
        click(dialog.all)

    answering(over)
    paste(tides, TWO_DAYS)
    assert len(shown_rows(tides)) == 4 and heights(tides) == [3.4, 0.6, 3.5, 0.5]


def test_cells_pasted_where_nothing_is_selected_become_new_rows_and_go_over_none(tides) -> None:
    tides.view.setFocus()  # Qt then makes the first cell the current one
    paste(tides, "Port Auk\t2027-06-07 10:40\t3,1\tHW\n")
    assert [row[2] for row in shown_rows(tides)] == ["3.5", "0.5", "3.5", "0.5", "3.1"]


def test_one_cell_copied_goes_alone_into_others(tides) -> None:
    stand_on(tides, 0, "height_m")
    press(tides, KEY.Key_C, CONTROL)
    assert QApplication.clipboard().text() == "3.5\n"
    stand_on(tides, 1, "height_m")
    press(tides, KEY.Key_V, CONTROL)
    assert heights(tides) == [3.5, 3.5, 3.5, 0.5]


def test_one_cell_pasted_into_several_fills_each(tides) -> None:
    tides.view.selectColumn(0)
    paste(tides, "Port Auk")
    assert set(values_of(tides, "port")) == {"Port Auk"}
    press(tides, KEY.Key_Z, CONTROL)
    assert set(values_of(tides, "port")) == {"Port Tern"}


def test_what_is_copied_has_headings_and_pastes_back_as_itself(tides) -> None:
    before = shown_rows(tides)
    tides.view.selectAll()
    press(tides, KEY.Key_C, CONTROL)
    text = QApplication.clipboard().text()
    assert text.splitlines()[0] == "Port\tTime (Europe/Lisbon)\tHeight (m)\tKind"
    assert text.splitlines()[1] == "Port Tern\t2027-06-05 10:40\t3.5\tHW"
    answering(lambda dialog: (QTest.keyClick(dialog.where, KEY.Key_Down), click(dialog.all)))
    stand_on(tides, 0, "port")
    paste(tides, text)
    assert shown_rows(tides) == before


@pytest.mark.parametrize(
    "text",
    ["x" * 10_000_001, "a\tb\n" * 30_000, "\x00\x07\x1b[2J", "\t" * 100_000, ""],
    ids=["10 MB", "30000 rows", "control characters", "tabs", "nothing"],
)
def test_hostile_text_changes_nothing_and_the_window_goes_on(tides, text: str) -> None:
    answering(lambda dialog: QTest.keyClick(dialog, KEY.Key_Escape))
    paste(tides, text)
    assert not tides.rows.layer.isModified() and tides.status.text()
    retype(tides, 0, "height_m", "3.6")
    assert heights(tides)[0] == 3.6


def test_saving_saves_this_layer_alone(qgis_app, tmp_path: Path) -> None:
    plan = tide_plan(tmp_path / "plan.gpkg")
    append_rows(plan, "swimmers", [(None, {"name": "Wren"})])
    with window_on(plan) as window:
        other = open_layer(plan, "swimmers")
        QgsProject.instance().addMapLayer(other)
        other.startEditing()
        other.changeAttributeValue(next(other.getFeatures()).id(), other.fields().lookupField("name"), "Rook")
        retype(window, 0, "height_m", "3.7")
        click(window.save)
        assert window.status.text() == "Saved." and not window.rows.layer.isModified()
        assert not window.rows.layer.isEditable()  # the session began here, and nothing of it is left
        assert other.isModified() and next(open_layer(plan, "swimmers").getFeatures())["name"] == "Wren"
        other.rollBack()


def test_a_closed_window_leaves_the_edits_in_the_buffer_and_says_so(tides) -> None:
    retype(tides, 0, "height_m", "3.7")
    layer, told = tides.rows.layer, []
    tides.closed.connect(told.append)
    click(tides.close_button)
    flush_deletions()
    assert "not saved yet" in told[0] and layer.isModified() and layer.isEditable()


def test_escape_closes_no_window_and_keeps_what_was_typed(tides) -> None:
    retype(tides, 0, "height_m", "3.7")
    press(tides, KEY.Key_Escape)
    QTest.keyClick(tides, KEY.Key_Escape)
    assert tides.isVisible() and heights(tides)[0] == 3.7


def test_the_cell_one_works_on_stays_in_sight_when_problems_are_listed_below(tides) -> None:
    tides.resize(700, 360)
    for _ in range(3):
        press(tides, KEY.Key_Insert)
    checked(tides)
    QApplication.processEvents()
    place = tides.view.visualRect(tides.view.currentIndex())
    assert tides.problems.rowCount() == 4 and tides.view.viewport().rect().contains(place)


def test_closing_over_what_the_plan_cannot_hold_is_asked_first(tides) -> None:
    retype(tides, 0, "height_m", "abc")
    answering(lambda box: QTest.keyClick(box, KEY.Key_Escape))
    click(tides.close_button)
    assert tides.isVisible() and shown_rows(tides)[0][2] == "abc"
    answering(lambda box: click(next(one for one in box.buttons() if "Anyway" in one.text())))
    told = []
    tides.closed.connect(told.append)
    click(tides.close_button)
    assert told == [""]


def test_a_layer_taken_out_of_the_project_takes_its_window_with_it(tides) -> None:
    gone = []
    tides.closed.connect(gone.append)
    QgsProject.instance().removeMapLayer(tides.rows.layer.id())
    assert gone == [""]


def test_a_row_rolled_back_by_the_user_is_shown_as_it_is_in_the_file(tides) -> None:
    retype(tides, 0, "height_m", "3.7")
    tides.rows.layer.rollBack()
    tides.model.catch_up()
    assert shown_rows(tides)[0][2] == "3.5" and "All saved" in tides.state.text()


def test_rows_written_to_the_file_beside_the_window_are_read_when_it_is_looked_at_again(tides) -> None:
    append_rows(
        tides.rows.path, "tides", [(None, {"time": datetime(2027, 6, 9, tzinfo=UTC), "height_m": 1.0, "kind": "LW"})]
    )
    QApplication.sendEvent(tides, QEvent(QEvent.Type.WindowActivate))
    assert len(shown_rows(tides)) == 5


def test_places_cannot_be_added_in_their_table_and_the_button_says_where(qgis_app, tmp_path: Path) -> None:
    plan = create_plan(tmp_path / "plan.gpkg", zone="UTC")
    with window_on(plan, "stream_stations", zone="UTC") as window:
        assert not window.add.isEnabled() and "draw it on the map" in window.add.toolTip()
        press(window, KEY.Key_Insert)
        assert window.model.rowCount() == 0 and "draw it on the map" in window.status.text()
