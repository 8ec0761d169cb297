"""The layers of a plan that say what the water does: tides and tidal streams."""

from __future__ import annotations

from . import value_lists
from .field_spec import FieldSpec, LayerSpec

FASTEST_STREAM_KN = 15.0


def _station(help_text: str) -> FieldSpec:
    return FieldSpec(name="station", kind="text", alias="Station", required=True, help=help_text)


def _degrees(name: str, alias: str, help_text: str) -> FieldSpec:
    return FieldSpec(
        name=name,
        kind="real",
        alias=f"{alias} (deg true)",
        unit="deg true",
        minimum=0.0,
        maximum=360.0,
        help=help_text,
    )


def _rate(name: str, alias: str, help_text: str, *, lowest_kn: float = 0.0) -> FieldSpec:
    return FieldSpec(
        name=name,
        kind="real",
        alias=f"{alias} (kn)",
        unit="kn",
        minimum=lowest_kn,
        maximum=FASTEST_STREAM_KN,
        help=help_text,
    )


def _tidal_range(name: str, alias: str, help_text: str) -> FieldSpec:
    return FieldSpec(
        name=name,
        kind="real",
        alias=f"{alias} (m)",
        unit="m",
        minimum=0.0,
        above_minimum=True,
        maximum=25.0,
        help=help_text,
    )


def _time_utc(help_text: str) -> FieldSpec:
    return FieldSpec(name="time", kind="datetime", alias="Time (UTC)", unit="UTC", required=True, help=help_text)


TIDES = LayerSpec(
    name="tides",
    geometry="none",
    title="Tides",
    help="High and low waters, by port.",
    fields=(
        FieldSpec(name="port", kind="text", alias="Port", help="Name of the port the heights belong to."),
        _time_utc("Moment of the high or low water, in UTC."),
        FieldSpec(
            name="height_m",
            kind="real",
            alias="Height (m)",
            unit="m",
            minimum=-10.0,
            maximum=25.0,
            required=True,
            help="Height above the plan's datum, positive up.",
        ),
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

STREAM_STATIONS = LayerSpec(
    name="stream_stations",
    geometry="Point",
    title="Stream stations",
    help="Places where the tidal stream is known. Where there is none, the stream is unknown, not zero.",
    fields=(
        _station("Name of the station; the stream tables refer to it."),
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
        FieldSpec(
            name="port", kind="text", alias="Port", help="Port whose tides the hours and the range are taken from."
        ),
        _tidal_range("spring_range_m", "Spring range", "Mean range of the port at springs."),
        _tidal_range("neap_range_m", "Neap range", "Mean range of the port at neaps."),
        FieldSpec(name="source", kind="text", alias="Source", help="Where the figures come from."),
        FieldSpec(
            name="confidence",
            kind="text",
            alias="Confidence",
            help="How far to trust it, in words. Best to worst: own measurement, official local table, hourly table "
            "of the region, model, words.",
        ),
    ),
)

STREAM_RATES = LayerSpec(
    name="stream_rates",
    geometry="none",
    title="Stream rates by the hour",
    help="Set and rate for each hour from the reference tide. A constant station has one row, hour 0.",
    fields=(
        _station("Name of the stream station."),
        FieldSpec(
            name="hour",
            kind="integer",
            alias="Hour from the tide (h)",
            unit="h",
            minimum=-6,
            maximum=6,
            required=True,
            help="Hours before (-) or after (+) the reference tide.",
        ),
        _degrees("set_deg", "Set", "True direction the stream runs towards."),
        _rate("spring_kn", "Rate at springs", "Rate at springs. Empty means unknown, not zero."),
        _rate("neap_kn", "Rate at neaps", "Rate at neaps. Empty means unknown, not zero."),
    ),
)

STREAM_EVENTS = LayerSpec(
    name="stream_events",
    geometry="none",
    title="Stream slacks and maxima",
    help="Moments of slack water and of the strongest stream.",
    fields=(
        _station("Name of the stream station."),
        _time_utc("Moment of the slack or maximum, in UTC."),
        FieldSpec(
            name="kind",
            kind="text",
            alias="Kind",
            choices=value_lists.STREAM_EVENT_KIND,
            required=True,
            help="Slack or maximum.",
        ),
        _rate(
            "rate_kn",
            "Rate, flood +, ebb -",
            "Rate at the moment: flood positive, ebb negative, slack 0.",
            lowest_kn=-FASTEST_STREAM_KN,
        ),
        _degrees("flood_set_deg", "Set of the flood", "True direction the flood runs towards."),
        _degrees("ebb_set_deg", "Set of the ebb", "True direction the ebb runs towards."),
    ),
)

STREAM_AREAS = LayerSpec(
    name="stream_areas",
    geometry="Polygon",
    title="Stream areas",
    help="Inside, one station alone rules: eddies behind headlands, for instance.",
    fields=(
        _station("Name of the station whose stream rules inside."),
        FieldSpec(
            name="phase",
            kind="text",
            alias="Rules",
            choices=value_lists.STREAM_PHASE,
            default="always",
            required=True,
            help="When the station rules.",
        ),
    ),
)
