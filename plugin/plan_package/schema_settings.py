"""The keys of a plan's `settings` table, their defaults and what their texts must mean."""

from __future__ import annotations

from .field_spec import FieldSpec, LayerSpec, SettingSpec

PACKAGE_VERSION = 1
VERSION_KEY = "package_version"

SETTINGS_TABLE = LayerSpec(
    name="settings",
    geometry="none",
    title="Settings",
    help="What holds for the whole plan. Where a key stands twice, the later row counts.",
    fields=(
        FieldSpec(name="key", kind="text", alias="Setting", required=True, help="Name of the setting."),
        FieldSpec(name="value", kind="text", alias="Value", help="Its value."),
    ),
)


def _text(key: str, default: str, help_text: str) -> SettingSpec:
    return SettingSpec(key=key, value=FieldSpec(name="value", kind="text", alias=key, default=default, help=help_text))


def _number(
    key: str,
    default: float,
    minimum: float,
    maximum: float,
    help_text: str,
    *,
    unit: str = "",
    kind: str = "real",
    above_minimum: bool = False,
) -> SettingSpec:
    alias = f"{key} ({unit})" if unit else key
    value = FieldSpec(
        name="value",
        kind=kind,
        alias=alias,
        unit=unit,
        default=default,
        minimum=minimum,
        maximum=maximum,
        above_minimum=above_minimum,
        help=help_text,
    )
    return SettingSpec(key=key, value=value)


SETTINGS: tuple[SettingSpec, ...] = (
    _text("title", "", "Title of the plan."),
    _text("zone", "UTC", "IANA name of the time zone in which the plan is read and shown."),
    _text("datum", "chart datum", "Name of the level depths and tide heights are counted from."),
    _text("port", "", "Port whose tides give the heights at the marks, where the tides table has several."),
    _number("reserve_factor", 1.3, 1.0, 5.0, "The way home is reckoned this many times longer."),
    _number("reserve_min", 25, 0.0, 240.0, "Minutes kept in hand on the way home.", unit="min"),
    _number(
        "heading_step_deg", 5, 0.0, 45.0, "Headings on the card are rounded to this.", unit="deg", above_minimum=True
    ),
    _number(
        "alarm_after_min", 30, 0.0, 720.0, "Minutes after the planned return when the shore contact acts.", unit="min"
    ),
    _number(
        "square_within_deg", 20, 0.0, 90.0, "How far from a right angle a crossing still counts as square.", unit="deg"
    ),
    _number("shallow_depth_m", 1.5, 0.0, 50.0, "A mark with less water over it is flagged.", unit="m"),
    _number(
        "ashore_before_sunset_min",
        45,
        -60.0,
        240.0,
        "A turn back has you ashore, reserve included, so many minutes before sunset.",
        unit="min",
    ),
    _text("back_by", "", "Clock time, HH:MM in the plan's zone, by which you must be ashore; empty for none."),
    _text("float_colours", "", "Colours of the float, for the shore contact's sheet."),
    _text("flag", "", "The flag flown and its colours, for the shore contact's sheet."),
    _text(
        "emergency_numbers",
        "",
        "Numbers the shore contact rings, with ; between them. None is assumed: write those of your coast.",
    ),
    _number(
        "gps_name_length",
        0,
        0,
        10,
        "Letters that the GPS shows of a name, 6 to 10, in files for it; 0 for any number.",
        kind="integer",
    ),
    _number("gps_upper_case", 0, 0, 1, "1 where the GPS shows capitals alone, in files for it.", kind="integer"),
    _number(
        "gps_every_m",
        0,
        0.0,
        5000.0,
        "A waypoint every so many metres on the track swum, 25 at the least, in files for the GPS; 0 for none.",
        unit="m",
    ),
    _number(VERSION_KEY, PACKAGE_VERSION, 1, 1_000_000, "Version of the plan package; leave it alone.", kind="integer"),
)

SETTING_BY_KEY: dict[str, SettingSpec] = {spec.key: spec for spec in SETTINGS}


def default_settings() -> dict[str, str]:
    """Every setting with its default, as the table stores it."""
    return {spec.key: spec.default_text for spec in SETTINGS}
