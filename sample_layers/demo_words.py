"""A planned swim as a person reads it in a terminal, from the report that `tideleg:planswim` wrote."""

from __future__ import annotations

import datetime as dt
import textwrap
from typing import Any

from make_bay import plugin_on_path

plugin_on_path()

from tideleg.core.results.card import clock_down, clock_up, whole_minutes  # noqa: E402

Report = dict[str, Any]

WIDTH = 110
COLUMNS = ("leg", "from", "to", "dist m", "bearing T", "steer", "stream", "min", "leave", "arrive", "bow m")
SEVERITY_WORDS = {"stop": "STOP", "warn": "Mind", "note": "Note"}


def _clock(iso: str | None) -> str:
    """As the card has it, so that the two agree."""
    return clock_up(dt.datetime.fromisoformat(iso)) if iso else "-"


def _minutes(minutes: float | None) -> str:
    return "-" if minutes is None else whole_minutes(minutes)


def _number(value: float | None, form: str) -> str:
    return "-" if value is None else format(value, form)


def _leg_cells(leg: Report) -> tuple[str, ...]:
    stream = "-"
    if leg["stream_kn"] is not None:
        stream = f"{_number(leg['stream_set_deg'], '03.0f')} {leg['stream_kn']:.1f} kn"
    return (
        str(leg["number"]),
        leg["from"],
        leg["to"],
        _number(leg["distance_m"], ".0f"),
        _number(leg["bearing_true_deg"], "03.0f"),
        (leg["card_heading"] or "none") if leg["feasible"] else "not swimmable",
        stream,
        *(_swum_cells(leg) if leg["feasible"] else ("-", "-", "-", "-")),
    )


def _swum_cells(leg: Report) -> tuple[str, ...]:
    """Minutes, times and bow: of a leg that cannot be swum they would be a promise."""
    times = (_minutes(leg["minutes"]), _clock(leg["depart"]), _clock(leg["arrive"]))
    return (*times, _number(leg["off_line_m"], ".0f"))


def legs_table(report: Report) -> list[str]:
    """The legs in columns, then the reason of each leg that cannot be swum and what that means for those behind it."""
    rows = [COLUMNS, *(_leg_cells(leg) for leg in report["legs"])]
    widths = [max(len(row[column]) for row in rows) for column in range(len(COLUMNS))]
    left = {"from", "to", "steer", "stream"}
    lines = []
    for row in rows:
        cells = [c.ljust(w) if n in left else c.rjust(w) for c, w, n in zip(row, widths, COLUMNS)]
        lines.append("  " + "  ".join(cells).rstrip())
    lines.insert(1, "  " + "  ".join("-" * width for width in widths))
    for leg in report["legs"]:
        if not leg["feasible"]:
            lines += _paragraph(f"Leg {leg['number']} cannot be swum: ", leg["reason"] or "no reason was given")
            if leg is not report["legs"][-1]:
                lines += _paragraph("", f"What follows is true only if leg {leg['number']} could be swum.")
    return lines


def stop_lines(report: Report) -> list[str]:
    """Each stop on the way with its times, the water over it, and by when it must be left."""
    lines = []
    for stop in report["stops"][1:-1]:
        depth = "depth unknown" if stop["depth_now_m"] is None else f"{stop['depth_now_m']:.1f} m of water on arrival"
        lines.append(f"  {stop['name']}: {_clock(stop['arrive'])} to {_clock(stop['leave'])}, {depth}")
        lines.append(f"    {_turn_back(stop)}")
    return lines


def _turn_back(stop: Report) -> str:
    if stop["latest_leave"] is None:
        return "no exit is reached in time from here"
    bad = stop["latest_leave_pessimistic"]
    bad_day = f"on a bad day by {_down(bad)}" if bad else "on a bad day do not come here"
    return f"turn back by {_down(stop['latest_leave'])} at the latest, to {stop['exit']}; {bad_day}"


def _down(iso: str) -> str:
    return clock_down(dt.datetime.fromisoformat(iso))


def window_lines(report: Report) -> list[str]:
    """The days by their rank, each with its windows, from the report of `tideleg:departurewindows`."""
    lines = [f"When to swim {report['route']}: {report['feasible_departures']} of {report['departures']} departures."]
    for day in report["days"]:
        best = f"best {_clock(day['best'])}, {_minutes(day['best_min'])} min"
        lines.append(f"  {day['rank']}. {day['day']}: longest window {day['longest_window_min']:.0f} min, {best}")
        for window in report["windows"]:
            if window["first"].startswith(day["day"]):
                ends = f"{_clock(window['first'])} to {_down(window['last'])}"
                lines += _paragraph(f"     {ends}; after it ", window["closes"]["words"] + ".")
    return lines


def flag_sentences(report: Report) -> list[str]:
    """Each flag as a sentence, gravest first, then the warnings about the data."""
    order = list(SEVERITY_WORDS)
    lines = []
    for flag in sorted(report["flags"], key=lambda flag: order.index(flag["severity"])):
        lines += _paragraph(f"{SEVERITY_WORDS[flag['severity']]}: ", flag["message"])
    for warning in report["warnings"]:
        lines += _paragraph("Data: ", warning)
    return lines or ["  No flags."]


def headline(report: Report) -> list[str]:
    """Who, when, how far and whether it can be swum at all."""
    start = dt.datetime.fromisoformat(report["depart"])
    every_leg = all(leg["feasible"] for leg in report["legs"])
    can = "NOT FEASIBLE at this hour" if not report["feasible"] else "every leg can be swum"
    if any(flag["severity"] == "stop" for flag in report["flags"]):
        can += ", see STOP below"
    variation = report["variation_deg"]
    turned = f"variation {abs(variation):.1f} {'E' if variation >= 0 else 'W'}"
    lines = [f"{report['route']} - {report['swimmer']}, leaving {start:%A %d %B %Y %H:%M} ({report['zone']})"]
    swum = f"{report['total_m']:.0f} m in all; {can}; {turned} ({report['variation_model']})"
    if report["arrive"] and every_leg:
        swum = f"home {_clock(report['arrive'])}, {_minutes(report['swim_min'])} min swimming, {swum}"
    return [*lines, swum[0].upper() + swum[1:] + "."]


def _paragraph(head: str, words: str) -> list[str]:
    return textwrap.wrap(head + words, WIDTH, initial_indent="  ", subsequent_indent="    ")
