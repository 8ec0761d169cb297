"""The layer of a plan that says where streams are known, and in what form each station gives its stream."""

from __future__ import annotations

from . import value_lists
from . import water_fields as fields
from .field_spec import FieldSpec, LayerSpec

_BY_REFERENCE = "Differences from another station"
_SUBORDINATE = (
    FieldSpec(
        name="reference_station",
        kind="text",
        alias="Reference station",
        group=_BY_REFERENCE,
        help="Station whose slacks and maxima a subordinate place's differences are added to.",
    ),
    fields.minutes("slack_before_flood_min", "Slack before flood, later by", "Minutes to add.", group=_BY_REFERENCE),
    fields.minutes("flood_minutes", "Maximum flood, later by", "Minutes to add.", group=_BY_REFERENCE),
    fields.minutes("slack_before_ebb_min", "Slack before ebb, later by", "Minutes to add.", group=_BY_REFERENCE),
    fields.minutes("ebb_minutes", "Maximum ebb, later by", "Minutes to add.", group=_BY_REFERENCE),
    fields.number("flood_speed_ratio", "Flood rate times", "", 0.0, 10.0, "Ratio of the rates.", group=_BY_REFERENCE),
    fields.number("ebb_speed_ratio", "Ebb rate times", "", 0.0, 10.0, "Ratio of the rates.", group=_BY_REFERENCE),
)
_SETS = "Sets and slack offset"
_SLACK_OFFSET = (
    fields.minutes(
        "slack_offset_min",
        "Slack after the tide by",
        "Minutes from the reference water (high or low) to slack, later positive.",
        group=_SETS,
    ),
    fields.degrees("flood_set_deg", "Set of the flood", "True direction the flood runs towards.", group=_SETS),
    fields.degrees("ebb_set_deg", "Set of the ebb", "True direction the ebb runs towards.", group=_SETS),
    fields.rate("spring_kn", "Largest rate at springs", "Largest rate between slacks at springs.", group=_SETS),
    fields.rate("neap_kn", "Largest rate at neaps", "Largest rate between slacks at neaps.", group=_SETS),
)
_WIND = (
    fields.number(
        "wind_percent", "Rate as a share of the wind", "%", 0.0, 20.0, "Share of the wind's speed.", group="Wind"
    ),
    fields.number(
        "wind_turn_deg",
        "Turned to the right by",
        "deg",
        -180.0,
        180.0,
        "Degrees to the right of down wind, left negative. Empty means 0.",
        group="Wind",
    ),
)

STREAM_STATIONS = LayerSpec(
    name="stream_stations",
    geometry="Point",
    title="Stream stations",
    help="Places where the tidal stream is known. Where there is none, the stream is unknown, not zero.",
    fields=(
        fields.station("Name of the station; the stream tables refer to it."),
        FieldSpec(
            name="form",
            kind="text",
            alias="Form",
            choices=value_lists.STREAM_FORM,
            default="hourly",
            required=True,
            help="How the stream is given.",
        ),
        FieldSpec(
            name="reference",
            kind="text",
            alias="Hours counted from",
            choices=value_lists.STREAM_REFERENCE,
            help="Which tide an hourly table counts from. A constant station needs none.",
        ),
        fields.port("Port whose tides the hours and the range are taken from."),
        fields.tidal_range("spring_range_m", "Spring range", "Mean range of the port at springs."),
        fields.tidal_range("neap_range_m", "Neap range", "Mean range of the port at neaps."),
        fields.source(),
        FieldSpec(
            name="confidence",
            kind="text",
            alias="Confidence",
            choices=value_lists.CONFIDENCE,
            open_list=True,
            help="What kind of source it is, best first; the best one in reach rules. Empty, or any other text, means "
            "a table.",
        ),
        fields.number(
            "reach_m",
            "Rules within",
            "m",
            0.0,
            50_000.0,
            "How far from its place the station rules over what is less trusted (common practice, no source).",
            default=3000.0,
            above_low=True,
            group="Trust",
        ),
        *fields.doubts(),
        *_SUBORDINATE,
        *_SLACK_OFFSET,
        *_WIND,
    ),
)
