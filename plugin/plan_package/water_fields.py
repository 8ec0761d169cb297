"""Fields that several water tables of a plan share: stations, ports, times, directions, rates, minutes."""

from __future__ import annotations

from .field_spec import FieldSpec

FASTEST_STREAM_KN = 15.0
A_DAY_MIN = 1440.0


def station(help_text: str) -> FieldSpec:
    """The name of a stream station."""
    return FieldSpec(name="station", kind="text", alias="Station", required=True, help=help_text)


def port(help_text: str) -> FieldSpec:
    """The name of a port."""
    return FieldSpec(name="port", kind="text", alias="Port", help=help_text)


def source(help_text: str = "Where the figures come from.") -> FieldSpec:
    """Where the figures of the row come from."""
    return FieldSpec(name="source", kind="text", alias="Source", help=help_text)


def time_utc(help_text: str, *, name: str = "time", alias: str = "Time", required: bool = True) -> FieldSpec:
    """A moment in UTC."""
    return FieldSpec(name=name, kind="datetime", alias=f"{alias} (UTC)", unit="UTC", required=required, help=help_text)


def number(
    name: str,
    alias: str,
    unit: str,
    low: float,
    high: float,
    help_text: str,
    *,
    default: float | None = None,
    required: bool = False,
    above_low: bool = False,
    group: str = "",
) -> FieldSpec:
    """A real number from ``low`` to ``high`` in ``unit``."""
    return FieldSpec(
        name=name,
        kind="real",
        alias=f"{alias} ({unit})" if unit else alias,
        unit=unit,
        minimum=low,
        maximum=high,
        default=default,
        required=required,
        above_minimum=above_low,
        group=group,
        help=help_text,
    )


def degrees(name: str, alias: str, help_text: str, *, group: str = "") -> FieldSpec:
    """A true direction."""
    return number(name, alias, "deg true", 0.0, 360.0, help_text, group=group)


def phase(name: str, alias: str, help_text: str, *, required: bool = False) -> FieldSpec:
    """A Greenwich phase lag."""
    return number(name, alias, "deg", 0.0, 360.0, help_text, required=required)


def rate(name: str, alias: str, help_text: str, *, lowest_kn: float = 0.0, group: str = "") -> FieldSpec:
    """A rate of stream."""
    return number(name, alias, "kn", lowest_kn, FASTEST_STREAM_KN, help_text, group=group)


def tidal_range(name: str, alias: str, help_text: str) -> FieldSpec:
    """A range of tide."""
    return number(name, alias, "m", 0.0, 25.0, help_text, above_low=True)


def minutes(name: str, alias: str, help_text: str, *, group: str = "") -> FieldSpec:
    """A difference of time, later positive."""
    return number(name, alias, "min", -A_DAY_MIN, A_DAY_MIN, help_text, group=group)


def doubts() -> tuple[FieldSpec, ...]:
    """How far a source may be off, and what a day's own observation says of it."""
    return (
        number(
            "rate_uncertainty",
            "Rate may be off by this share",
            "",
            0.0,
            1.0,
            "Share of the rate by which it may be stronger or weaker; 0.30 is common practice, no source.",
            default=0.30,
            group="Trust",
        ),
        number(
            "phase_uncertainty_min",
            "Clock may be off by",
            "min",
            0.0,
            360.0,
            "Minutes by which the stream may turn earlier or later; 30 is common practice, no source.",
            default=30.0,
            group="Trust",
        ),
        number(
            "rate_factor",
            "Rate of the day times",
            "",
            0.0,
            5.0,
            "The day's correction of the rate, from a timed drift for instance.",
            default=1.0,
            group="Trust",
        ),
        number(
            "shift_min",
            "Clock of the day later by",
            "min",
            -360.0,
            360.0,
            "The day's correction of the clock, later positive, from timed drifts for instance.",
            default=0.0,
            group="Trust",
        ),
    )
