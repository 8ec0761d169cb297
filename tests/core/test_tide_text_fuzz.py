"""Any text at all: it is read, or refused by an error of ours that names a row; never a crash or a shifted row."""

from __future__ import annotations

import math
from datetime import timedelta

from hypothesis import given, settings
from hypothesis import strategies as st
from tideleg.core.errors import BadInputError, SwimPlanError
from tideleg.core.water.tide_reading import TideReading, TidesAsked
from tideleg.core.water.tide_text import read_tides

SLOWLY = settings(derandomize=True, max_examples=400, deadline=None)
CELLS = st.sampled_from(
    """2027-06-15 15/06/2027 06/05/2027 05-06-27 20270615 15.06.2027 5-Jun-2027 Jun 2027 02:10 2:10am 13:10pm 0210 24:00
    25:00 2027-06-15T02:10Z 2027-06-15T02:10+01:00 0.7 3,9 -0.2 3.9m 12ft 1e5 9999 nan inf - H L high low HW X M2 S2
    K1 Z0 QX9 210.5 28.9841042 Date Time Height port hw_minutes_springs lw_minutes hw_height_m lw_height +0020
    -0:15 Tue \u00b2 \u0663 \u2212 " ' { [ ] } : UTC GMT""".split()
)
SEPARATORS = st.sampled_from([",", ";", "\t", " ", "  ", " | "])
ASKED = st.builds(
    TidesAsked,
    form=st.sampled_from(["", "", "events", "series", "constants", "secondary"]),
    zone=st.sampled_from(["UTC", "Europe/Lisbon", "UTC-8", "", "Nowhere"]),
    units=st.sampled_from(["m", "", "ft"]),
    date_order=st.sampled_from(["", "", "dmy", "mdy", "ymd"]),
    columns=st.sampled_from(["", "", "", "date,time,height", "moment,height", "x", "skip"]),
)


DAYS = ("2027-06-15", "15/06/2027", "13/06/2027", "06/05/2027", "16-Jun-2027", "20270617", "2027-10-31", "")
CLOCKS = ("02:10", "8:22", "2:30pm", "20:45", "24:00", "01:30", "0210", "")
MOMENTS = ("2027-06-15 02:10", "2027-06-15T08:22Z", "15/06/2027 14:30", "2027-06-15T20:45+01:00", "2027-10-31 01:30")
HEIGHTS = ("0.7", "3.9", "0,8", "4.1m", "12.5 ft", "-0.3", "-", "0.7", "3.9")
KINDS = ("H", "L", "high", "LW", "")
LAYOUTS = ((DAYS, CLOCKS, HEIGHTS), (DAYS, CLOCKS, HEIGHTS, KINDS), (MOMENTS, HEIGHTS), (MOMENTS, HEIGHTS, KINDS))
LAYOUTS += ((DAYS, CLOCKS, HEIGHTS, CLOCKS, HEIGHTS), (("M2", "S2", "K1", "Z0"), HEIGHTS, ("210.5", "12", "300")))


@st.composite
def nearly_good(draw: st.DrawFn) -> str:
    """Rows of one sense in each column, of one or two of its spellings, with now and then any other cell."""
    separator, layout = draw(SEPARATORS), draw(st.sampled_from(LAYOUTS))
    columns = [draw(st.lists(st.sampled_from(cells), min_size=1, max_size=2)) for cells in layout]
    rows = [[draw(st.sampled_from(column)) for column in columns] for _ in range(draw(st.integers(1, 5)))]
    if draw(st.integers(0, 3)) == 0:
        rows[draw(st.integers(0, len(rows) - 1))][draw(st.integers(0, len(layout) - 1))] = draw(CELLS)
    return "\n".join(separator.join(row) for row in rows)


@st.composite
def tables(draw: st.DrawFn) -> str:
    separator = draw(SEPARATORS)
    rows = draw(st.lists(st.lists(CELLS, min_size=1, max_size=6), max_size=8))
    return "\n".join(separator.join(row) for row in rows)


def sound(text: str, asked: TidesAsked) -> TideReading | None:
    """The reading, checked; None where the text was refused, whose row is then one of the text's."""
    try:
        reading = read_tides(text, asked)
    except SwimPlanError as error:
        assert str(error).strip()
        row = getattr(error, "row", None)
        assert row is None or 1 <= row <= len(text.splitlines()) or text.lstrip()[:1] in ("{", "["), row
        return None
    assert reading.count > 0
    assert all(math.isfinite(row.height_m) and -10.0 <= row.height_m <= 25.0 for row in reading.heights)
    assert all(row.time.utcoffset() == timedelta(0) for row in reading.heights)
    assert all(a.time < b.time for a, b in zip(reading.heights, reading.heights[1:]))
    assert all(0.0 <= one.phase_deg < 360.0 and one.amplitude_m >= 0.0 for one in reading.constants)
    if reading.form == "events":
        assert {row.is_high for row in reading.heights} <= {True, False}
    reading.preview()
    return reading


@SLOWLY
@given(st.text(max_size=300), ASKED)
def test_any_text_is_read_or_refused(text: str, asked: TidesAsked) -> None:
    sound(text, asked)


@SLOWLY
@given(tables() | nearly_good(), ASKED)
def test_any_table_of_likely_cells_is_read_or_refused(text: str, asked: TidesAsked) -> None:
    sound(text, asked)


@SLOWLY
@given(
    st.recursive(
        st.none() | st.booleans() | st.floats() | CELLS, lambda one: st.lists(one) | st.dictionaries(CELLS, one)
    )
)
def test_any_json_is_read_or_refused(content: object) -> None:
    import json

    sound(json.dumps(content), TidesAsked(zone="UTC", units="m"))


GOOD = [f"2027-06-{15 + n // 4:02},{2 + 6 * (n % 4):02}:10,{(0.7, 3.9)[n % 2]},{'LH'[n % 2]}" for n in range(12)]
AS_READ = {n + 1: read_tides("\n".join(GOOD), TidesAsked(zone="UTC", units="m")).heights[n] for n in range(12)}


@SLOWLY
@given(st.integers(0, 11), st.data())
def test_one_wrong_character_is_refused_in_its_row_or_changes_no_other(row: int, data: st.DataObject) -> None:
    """Rows beside it may be named where it breaks the turn of high and low, or the times' order."""
    place = data.draw(st.integers(0, len(GOOD[row]) - 1))
    put = data.draw(st.sampled_from("0123456789-:,./;HLx \tam"))
    lines = [*GOOD]
    lines[row] = lines[row][:place] + put + lines[row][place + 1 :]
    asked = TidesAsked(zone="UTC", units="m")
    try:
        reading = read_tides("\n".join(lines), asked)
    except BadInputError as error:
        # A changed day or hour moves the row among the others: then the one it meets there is named.
        moved = place < 16
        assert moved or error.row is None or abs(error.row - row - 1) <= 1
        return
    found = {one.row: one for one in reading.heights}
    skipped = {one.row: one.reason for one in reading.skipped}
    # Changed into the very twin of another row it may stand for that one.
    others = {n: one for n, one in AS_READ.items() if n != row + 1 and skipped.get(n) != "given twice"}
    assert others.items() <= found.items()
    assert len(others) >= 10
    assert row + 1 in found or row + 1 in skipped


def test_the_good_table_is_read_whole() -> None:
    assert len(AS_READ) == 12
    assert AS_READ[2].is_high
    assert AS_READ[2].height_m == 3.9
