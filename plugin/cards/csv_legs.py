"""The legs as a comma-separated table (RFC 4180), for spreadsheets and for printing one's own sheet."""

from __future__ import annotations

import csv
import io

from ..core.results.plain_values import iso_time
from ..core.results.swim_plan import Leg, SwimPlan

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
FORMULA_STARTS = ("=", "+", "-", "@", "\t", "\r")  # what spreadsheets may run (OWASP, CSV injection)


def csv_text(plan: SwimPlan) -> str:
    """A header and one row a leg, lines ending CRLF; unknown values are empty cells."""
    out = io.StringIO(newline="")
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerow([HEADERS.get(name, name) for name, _ in COLUMNS])
    for leg in plan.legs:
        writer.writerow([_cell(leg, name, decimals) for name, decimals in COLUMNS])
    return out.getvalue()


def _cell(leg: Leg, name: str, decimals: int | None) -> str:
    value = getattr(leg, name)
    if value is None:
        return ""
    if name in ("depart", "arrive"):
        return iso_time(value, where=f"leg {leg.number} {name}") or ""
    if name == "feasible":
        return "yes" if value else "no"
    return harmless(str(value)) if decimals is None else f"{value:.{decimals}f}"


def harmless(text: str) -> str:
    """The text with an apostrophe before it where a spreadsheet would take it for a formula."""
    return f"'{text}" if text.startswith(FORMULA_STARTS) else text
