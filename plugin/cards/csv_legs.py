"""The legs as a comma-separated table (RFC 4180), for spreadsheets and for printing one's own sheet."""

from __future__ import annotations

import csv
import io
import math
import re
import unicodedata

from ..core.results.card import leg_state
from ..core.results.file_contents import CAUTION
from ..core.results.plain_values import iso_time
from ..core.results.shared import MARKS_LEFT_OUT, without_marks
from ..core.results.swim_plan import Leg, SwimPlan
from ..core.words import spoken
from ..words import tr

# One decimal point everywhere whatever the machine's language; the unit stands in the name of the column.
COLUMNS: tuple[tuple[str, int | None], ...] = (
    ("number", 0),
    ("start_name", None),
    ("end_name", None),
    ("start_lon", 7),
    ("start_lat", 7),
    ("end_lon", 7),
    ("end_lat", 7),
    ("distance_m", 1),
    ("bearing_true_deg", 1),
    ("bearing_mag_deg", 1),
    ("heading_true_deg", 1),
    ("heading_mag_deg", 1),
    ("card_heading", None),
    ("ground_speed_m_s", 3),
    ("minutes", 2),
    ("depart", None),
    ("arrive", None),
    ("stream_set_deg", 1),
    ("stream_kn", 2),
    ("off_line_m", 1),
    ("feasible", None),
    ("reason", None),
)
OF_A_LEG_SWUM = (
    "heading_true_deg",
    "heading_mag_deg",
    "card_heading",
    "ground_speed_m_s",
    "minutes",
    "arrive",
    "off_line_m",
)
HEADERS = {
    "start_name": "from",
    "end_name": "to",
    "start_lon": "from_lon_deg",
    "start_lat": "from_lat_deg",
    "end_lon": "to_lon_deg",
    "end_lat": "to_lat_deg",
    "depart": "depart_iso",
    "arrive": "arrive_iso",
    "minutes": "minutes_min",
}
# What spreadsheets may run when a cell begins with it (OWASP, CSV injection), as wide letters too.
FORMULA_STARTS = "=+-@＝＋－＠"
# Where the list separator is a semicolon, or text is taken line by line, a new cell begins within the text.
_NEW_CELL = re.compile(r"([;\t\r\n])")
_NO_TEXT = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\ud800-\udfff\ufffe\uffff]+")


def csv_text(plan: SwimPlan, *, private: bool = False) -> str:
    """A header and one row a leg, lines ending CRLF; unknown values are empty cells.

    The last column, ``note``, says of each row what it is; with ``private`` the marks are left out.
    """
    plan = without_marks(plan) if private else plan
    out = io.StringIO(newline="")
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerow([HEADERS.get(name, name) for name, _ in COLUMNS] + ["note"])
    for leg in plan.legs:
        writer.writerow([_cell(leg, name, decimals) for name, decimals in COLUMNS] + [harmless(row_note(leg, plan))])
    return out.getvalue()


def row_note(leg: Leg, plan: SwimPlan) -> str:
    """What a row is: predicted, of which route and zone, what it hangs on, and what is left out."""
    about = tr("Leg of {route}; times in {zone}").format(route=plan.route, zone=plan.zone)
    stuck = next((one.number for one in plan.legs if leg_state(one) == "stuck"), None)
    hangs = stuck is not None and leg.number > stuck
    only_if = [tr("Only if leg {number} could be swum").format(number=stuck)] if hangs else []
    words = ". ".join([spoken(CAUTION), about, *only_if]) + "."
    return f"{words} {spoken(MARKS_LEFT_OUT)}" if plan.marks_left_out else words


def leg_value(leg: Leg, name: str) -> object:
    """A leg's value as the table has it: no heading and no minutes of a leg that cannot be swum."""
    return None if name in OF_A_LEG_SWUM and leg_state(leg) != "swim" else getattr(leg, name)


def _cell(leg: Leg, name: str, decimals: int | None) -> str:
    value = leg_value(leg, name)
    if value is None or (decimals is not None and math.isnan(value)):
        return ""
    if name in ("depart", "arrive"):
        return iso_time(value, where=f"leg {leg.number} {name}") or ""
    if name == "feasible":
        return "yes" if value else "no"
    return harmless(str(value)) if decimals is None else f"{value:.{decimals}f}"


def harmless(text: str) -> str:
    """The text with an apostrophe wherever a spreadsheet would take what follows for a formula.

    Control characters other than tab and line ends are left out. Blanks, quotes and characters that are not seen do not
    hide a formula's sign: spreadsheets may drop them.
    """
    kept = _NO_TEXT.sub("", text)
    defused = "".join(map(_defused, _NEW_CELL.split(kept)))
    return f"'{defused}" if kept.startswith(("\t", "\r")) else defused


def _defused(piece: str) -> str:
    seen = next((letter for letter in piece if not _is_blank(letter)), None)
    return f"'{piece}" if seen is not None and seen in FORMULA_STARTS else piece


def _is_blank(letter: str) -> bool:
    return letter.isspace() or letter in "\"'" or unicodedata.category(letter) in ("Cf", "Cc", "Zs")
