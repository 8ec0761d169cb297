"""The layers of a plan that say how the water runs: tidal streams, models, winds, drifts."""

from __future__ import annotations

from . import value_lists
from . import water_fields as fields
from .field_spec import FieldSpec, LayerSpec


def _speed(name: str, alias: str, help_text: str) -> FieldSpec:
    return fields.number(name, alias, "m/s", -8.0, 8.0, help_text)


def _place(name: str, alias: str, limit: float, help_text: str) -> FieldSpec:
    return fields.number(name, alias, "deg", -limit, limit, help_text, required=True)


STREAM_RATES = LayerSpec(
    name="stream_rates",
    geometry="none",
    title="Stream rates by the hour",
    help="Set and rate for each hour from the reference tide. A constant station has one row, hour 0.",
    fields=(
        fields.station("Name of the stream station."),
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
        fields.degrees("set_deg", "Set", "True direction the stream runs towards."),
        fields.rate("spring_kn", "Rate at springs", "Rate at springs. Empty means unknown, not zero."),
        fields.rate("neap_kn", "Rate at neaps", "Rate at neaps. Empty means unknown, not zero."),
    ),
)

STREAM_EVENTS = LayerSpec(
    name="stream_events",
    geometry="none",
    title="Stream slacks and maxima",
    help="Moments of slack water and of the strongest stream.",
    fields=(
        fields.station("Name of the stream station."),
        fields.time_utc("Moment of the slack or maximum, in UTC."),
        FieldSpec(
            name="kind",
            kind="text",
            alias="Kind",
            choices=value_lists.STREAM_EVENT_KIND,
            required=True,
            help="Slack or maximum.",
        ),
        fields.rate(
            "rate_kn",
            "Rate, flood +, ebb -",
            "Rate at the moment: flood positive, ebb negative, slack 0.",
            lowest_kn=-fields.FASTEST_STREAM_KN,
        ),
        fields.degrees("flood_set_deg", "Set of the flood", "True direction the flood runs towards."),
        fields.degrees("ebb_set_deg", "Set of the ebb", "True direction the ebb runs towards."),
    ),
)

STREAM_AREAS = LayerSpec(
    name="stream_areas",
    geometry="Polygon",
    title="Stream areas",
    help="Inside, one station alone rules: eddies behind headlands, for instance.",
    fields=(
        fields.station("Name of the station whose stream rules inside."),
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

STREAM_SERIES = LayerSpec(
    name="stream_series",
    geometry="none",
    title="Streams at set times",
    help="Set and rate at moments, as a current meter or a chart's time series gives them.",
    fields=(
        fields.station("Name of the stream station."),
        fields.time_utc("Moment of the set and rate, in UTC."),
        fields.degrees("set_deg", "Set", "True direction the stream runs towards."),
        fields.rate("rate_kn", "Rate", "Rate at the moment. Empty means unknown, not zero."),
    ),
)

STREAM_CONSTANTS = LayerSpec(
    name="stream_constants",
    geometry="none",
    title="Stream constants",
    help="Harmonic constants of the stream's east and north parts, by station. Z0 is a mean, with phase 0.",
    fields=(
        fields.station("Name of the stream station."),
        FieldSpec(
            name="constituent",
            kind="text",
            alias="Constituent",
            required=True,
            help="Standard name of the constituent, such as M2; Z0 for the mean.",
        ),
        _speed("u_amplitude_m_s", "East amplitude", "Amplitude of the part towards east."),
        fields.phase("u_phase_deg", "East phase", "Greenwich phase lag of the part towards east, in UTC."),
        _speed("v_amplitude_m_s", "North amplitude", "Amplitude of the part towards north."),
        fields.phase("v_phase_deg", "North phase", "Greenwich phase lag of the part towards north, in UTC."),
    ),
)

STREAM_MODELS = LayerSpec(
    name="stream_models",
    geometry="none",
    title="Stream models",
    help="Meshes and rasters of the stream in time. Their files stay where they are.",
    fields=(
        FieldSpec(name="model", kind="text", alias="Model", required=True, help="Name of the model."),
        FieldSpec(
            name="kind",
            kind="text",
            alias="Kind",
            choices=value_lists.MODEL_KIND,
            default="mesh",
            required=True,
            help="What QGIS opens the file as.",
        ),
        FieldSpec(name="path", kind="text", alias="File", required=True, help="The file, or the east part's file."),
        FieldSpec(name="group", kind="text", alias="Group", help="Dataset group, or first letters of its bands."),
        FieldSpec(name="v_path", kind="text", alias="North part's file", help="Where the north part has its own."),
        FieldSpec(name="v_group", kind="text", alias="North part's group", help="Where the north part has its own."),
        FieldSpec(
            name="crs",
            kind="text",
            alias="Coordinate system",
            help="Code such as EPSG:32610, for a file that names no coordinate reference system.",
        ),
        fields.time_utc(
            "First moment of a file that does not carry its own times.", name="start", alias="Start", required=False
        ),
        fields.number(
            "step_min",
            "Step",
            "min",
            0.0,
            1440.0,
            "Minutes from step to step of a file that does not carry its own times.",
            above_low=True,
        ),
        *fields.doubts(),
        fields.source(),
    ),
)

WINDS = LayerSpec(
    name="winds",
    geometry="none",
    title="Winds",
    help="The forecast or observed wind, for streams that it drives.",
    fields=(
        fields.time_utc("Moment of the wind, in UTC."),
        fields.degrees("from_deg", "Wind from", "True direction the wind blows from."),
        fields.number("speed_kn", "Wind speed", "kn", 0.0, 100.0, "Speed of the wind. Empty means unknown."),
    ),
)

DRIFTS = LayerSpec(
    name="drifts",
    geometry="none",
    title="Timed drifts",
    help="Drifts timed from place to place: what the stream did.",
    fields=(
        fields.time_utc("When the drift began, in UTC."),
        _place("lon", "Longitude", 180.0, "Where it began, east positive."),
        _place("lat", "Latitude", 89.0, "Where it began, north positive."),
        fields.time_utc("When it ended, in UTC.", name="end_time", alias="End"),
        _place("end_lon", "End longitude", 180.0, "Where it ended, east positive."),
        _place("end_lat", "End latitude", 89.0, "Where it ended, north positive."),
        FieldSpec(name="station", kind="text", alias="Station", help="Stream station it is compared with."),
        FieldSpec(name="note", kind="text", alias="Note", long_text=True, help="Anything worth knowing, in words."),
    ),
)
