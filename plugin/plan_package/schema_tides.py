"""The tables of a plan that say how the tide rises and falls at its ports."""

from __future__ import annotations

from . import value_lists
from . import water_fields as fields
from .field_spec import FieldSpec, LayerSpec


def _height() -> FieldSpec:
    return fields.number(
        "height_m",
        "Height",
        "m",
        -10.0,
        25.0,
        "Height above the plan's datum, positive up.",
        required=True,
    )


def _height_difference(name: str, alias: str, what: str) -> FieldSpec:
    help_text = f"Metres to add to the reference port's {what}."
    return fields.number(name, alias, "m", -10.0, 10.0, help_text, group="Secondary port")


def _mean_level(name: str, what: str) -> FieldSpec:
    help_text = (
        f"Mean height of the port's {what} above the plan's datum. Secondary ports that refer to it are interpolated "
        "between these; empty means told from its table."
    )
    return fields.number(name, f"Mean {what}", "m", -10.0, 25.0, help_text, group="Mean levels")


TIDES = LayerSpec(
    name="tides",
    geometry="none",
    title="Tides",
    help="High and low waters, by port.",
    fields=(
        fields.port("Name of the port the heights belong to."),
        fields.time_utc("Moment of the high or low water, in UTC."),
        _height(),
        FieldSpec(
            name="kind",
            kind="text",
            alias="Kind",
            choices=value_lists.TIDE_KIND,
            required=True,
            help="High water or low water.",
        ),
    ),
)

TIDE_PORTS = LayerSpec(
    name="tide_ports",
    geometry="none",
    title="Tide ports",
    help="How the tide of each port is given. A port without a row here is given by its high and low waters.",
    fields=(
        FieldSpec(name="port", kind="text", alias="Port", required=True, help="Name of the port."),
        FieldSpec(
            name="form",
            kind="text",
            alias="Form",
            choices=value_lists.TIDE_FORM,
            default="events",
            required=True,
            help="How the tide of the port is given.",
        ),
        fields.number(
            "datum_offset_m",
            "Mean level above the plan's datum",
            "m",
            -20.0,
            20.0,
            "Height of the level that the constants swing about (Z0) above the plan's datum. Empty means 0.",
        ),
        FieldSpec(
            name="reference_port",
            kind="text",
            alias="Reference port",
            group="Secondary port",
            help="Port whose waters a secondary port's differences are added to.",
        ),
        fields.minutes(
            "hw_minutes_springs",
            "High water, springs, later by",
            "Minutes to add to the reference port's time of high water at springs.",
            group="Secondary port",
        ),
        fields.minutes(
            "hw_minutes_neaps",
            "High water, neaps, later by",
            "Minutes to add to the reference port's time of high water at neaps.",
            group="Secondary port",
        ),
        fields.minutes(
            "lw_minutes_springs",
            "Low water, springs, later by",
            "Minutes to add to the reference port's time of low water at springs.",
            group="Secondary port",
        ),
        fields.minutes(
            "lw_minutes_neaps",
            "Low water, neaps, later by",
            "Minutes to add to the reference port's time of low water at neaps.",
            group="Secondary port",
        ),
        _height_difference("hw_height_springs_m", "High water, springs, higher by", "height of high water at springs"),
        _height_difference("hw_height_neaps_m", "High water, neaps, higher by", "height of high water at neaps"),
        _height_difference("lw_height_springs_m", "Low water, springs, higher by", "height of low water at springs"),
        _height_difference("lw_height_neaps_m", "Low water, neaps, higher by", "height of low water at neaps"),
        fields.source(),
        fields.number(
            "latitude_deg",
            "Latitude",
            "deg",
            -90.0,
            90.0,
            "Latitude of the port, north positive: a small part of what corrects its constants for the year. Empty "
            "leaves that part out.",
        ),
        _mean_level("high_springs_m", "high water at springs"),
        _mean_level("high_neaps_m", "high water at neaps"),
        _mean_level("low_neaps_m", "low water at neaps"),
        _mean_level("low_springs_m", "low water at springs"),
    ),
)

TIDE_SERIES = LayerSpec(
    name="tide_series",
    geometry="none",
    title="Tide heights at even times",
    help="Heights of tide every few minutes or every hour, by port.",
    fields=(
        fields.port("Name of the port the heights belong to."),
        fields.time_utc("Moment of the height, in UTC."),
        _height(),
    ),
)

TIDE_CONSTANTS = LayerSpec(
    name="tide_constants",
    geometry="none",
    title="Tide constants",
    help="Harmonic constants of the height of tide, by port.",
    fields=(
        fields.port("Name of the port the constants belong to."),
        FieldSpec(
            name="constituent",
            kind="text",
            alias="Constituent",
            required=True,
            help="Standard name of the constituent, such as M2.",
        ),
        fields.number("amplitude_m", "Amplitude", "m", 0.0, 25.0, "Half the range it makes.", required=True),
        fields.phase("phase_deg", "Phase", "Greenwich phase lag, in UTC.", required=True),
    ),
)

TIDE_COEFFICIENTS = LayerSpec(
    name="tide_coefficients",
    geometry="none",
    title="Tide coefficients",
    help="Coefficient of each tide, by port: about 20 at the smallest, 120 at the largest, 45 at mean neaps and 95 at "
    "mean springs.",
    fields=(
        fields.port("Name of the port the coefficients belong to."),
        fields.time_utc("Moment of the high water the coefficient stands beside, in UTC."),
        fields.number("coefficient", "Coefficient", "", 10.0, 130.0, "Coefficient of that tide.", required=True),
    ),
)
