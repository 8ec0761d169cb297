"""The layers of a plan about people: the swimmers and the log of what they met."""

from __future__ import annotations

from . import value_lists
from .field_spec import FieldSpec, LayerSpec


def _positive(
    name: str, title: str, unit: str, default: float, maximum: float, help_text: str, *, group: str
) -> FieldSpec:
    return FieldSpec(
        name=name,
        kind="real",
        alias=f"{title} ({unit})",
        unit=unit,
        default=default,
        minimum=0.0,
        above_minimum=True,
        maximum=maximum,
        required=True,
        group=group,
        help=help_text,
    )


def _measured(
    name: str, title: str, unit: str, minimum: float, maximum: float, help_text: str, *, group: str
) -> FieldSpec:
    return FieldSpec(
        name=name,
        kind="real",
        alias=f"{title} ({unit})",
        unit=unit,
        minimum=minimum,
        maximum=maximum,
        group=group,
        help=help_text,
    )


SWIMMERS = LayerSpec(
    name="swimmers",
    geometry="none",
    title="Swimmers",
    help="Who swims, and how. The defaults are guesses until own figures are known.",
    fields=(
        FieldSpec(name="name", kind="text", alias="Name", required=True, help="The name by which a plan is asked for."),
        FieldSpec(
            name="pace_m_s",
            kind="real",
            alias="Pace (m/s)",
            unit="m/s",
            default=0.5,
            minimum=0.1,
            maximum=2.5,
            required=True,
            group="Pace",
            help="Speed through the water with float and gear.",
        ),
        FieldSpec(
            name="path_factor",
            kind="real",
            alias="Path factor",
            default=1.10,
            minimum=1.0,
            maximum=2.0,
            required=True,
            group="Pace",
            help="Length of the path really swum over the straight line.",
        ),
        _positive("range_m", "Range", "m", 5000.0, 50_000.0, "Longest swim of a day.", group="Limits"),
        _positive(
            "max_hours", "Longest time in the water", "h", 4.0, 24.0, "Longest swim, stops and all.", group="Limits"
        ),
        _positive("depth_limit_m", "Depth limit", "m", 12.0, 200.0, "Deepest bottom to work at.", group="Limits"),
        _positive(
            "min_ground_speed_m_s",
            "Least ground speed",
            "m/s",
            0.15,
            1.0,
            "A leg made good more slowly counts as not swimmable.",
            group="Pace",
        ),
        FieldSpec(
            name="fluid_l",
            kind="real",
            alias="Fluid carried (L)",
            unit="L",
            default=2.0,
            minimum=0.0,
            maximum=20.0,
            required=True,
            group="Gear",
            help="Drink carried on the float.",
        ),
        FieldSpec(
            name="fluid_l_h",
            kind="real",
            alias="Fluid needed (L/h)",
            unit="L/h",
            default=0.7,
            minimum=0.0,
            maximum=3.0,
            required=True,
            group="Gear",
            help="Drink needed for each hour in the water.",
        ),
        _positive("line_m", "Anchor line", "m", 30.0, 300.0, "Line carried for the float.", group="Gear"),
    ),
)

SESSIONS = LayerSpec(
    name="sessions",
    geometry="Point",
    title="Log: sessions",
    help="One row per session at a mark, those without a catch as well.",
    fields=(
        FieldSpec(
            name="name",
            kind="text",
            alias="Session",
            required=True,
            group="Session",
            help="A name of its own, such as date and mark; the catches refer to it.",
        ),
        FieldSpec(name="mark", kind="text", alias="Mark", group="Session", help="Name of the mark."),
        FieldSpec(name="swimmer", kind="text", alias="Swimmer", group="Session", help="Name of the swimmer."),
        FieldSpec(
            name="started",
            kind="datetime",
            alias="Started (UTC)",
            unit="UTC",
            required=True,
            group="Session",
            help="Moment the session at the mark began, in UTC.",
        ),
        FieldSpec(
            name="ended",
            kind="datetime",
            alias="Ended (UTC)",
            unit="UTC",
            group="Session",
            help="Moment it ended, in UTC.",
        ),
        _measured("hunting_min", "Time hunting", "min", 0.0, 1440.0, "Minutes really spent hunting.", group="Session"),
        FieldSpec(
            name="felt_stream",
            kind="text",
            alias="Stream as felt",
            choices=value_lists.FELT_STREAM,
            group="Met",
            help="How the stream felt at the mark.",
        ),
        _measured("felt_set_deg", "Set as felt", "deg true", 0.0, 360.0, "True direction it ran towards.", group="Met"),
        _measured("visibility_m", "Visibility", "m", 0.0, 100.0, "How far one saw under water.", group="Met"),
        _measured("water_c", "Water temperature", "deg C", -3.0, 40.0, "Temperature of the water.", group="Met"),
        _measured("wind_kn", "Wind", "kn", 0.0, 100.0, "Speed of the wind.", group="Met"),
        _measured(
            "wind_from_deg", "Wind from", "deg true", 0.0, 360.0, "True direction the wind came from.", group="Met"
        ),
        _measured("swell_m", "Swell", "m", 0.0, 20.0, "Height of the swell.", group="Met"),
        _measured(
            "hours_from_hw",
            "Hours from high water",
            "h",
            -13.0,
            13.0,
            "Hours before (-) or after (+) the nearest high water.",
            group="Worked out",
        ),
        _measured("range_m", "Range of the tide", "m", 0.0, 25.0, "Range of the day's tide.", group="Worked out"),
        _measured(
            "stream_set_deg", "Set predicted", "deg true", 0.0, 360.0, "Set the plan predicted.", group="Worked out"
        ),
        _measured("stream_kn", "Rate predicted", "kn", 0.0, 15.0, "Rate the plan predicted.", group="Worked out"),
        _measured(
            "depth_m", "Depth at the time", "m", 0.0, 12_000.0, "Charted depth and tide together.", group="Worked out"
        ),
        FieldSpec(
            name="note",
            kind="text",
            alias="Note",
            long_text=True,
            group="Session",
            help="Anything worth knowing, in words.",
        ),
    ),
)


def _count(name: str, alias: str, help_text: str) -> FieldSpec:
    return FieldSpec(
        name=name, kind="integer", alias=alias, default=0, minimum=0, maximum=10_000, required=True, help=help_text
    )


CATCHES = LayerSpec(
    name="catches",
    geometry="none",
    title="Log: catches",
    help="What was seen and kept in a session, one row per species.",
    fields=(
        FieldSpec(name="session", kind="text", alias="Session", required=True, help="Name of the session in the log."),
        FieldSpec(name="species", kind="text", alias="Species", required=True, help="Name of the species."),
        _count("count_kept", "Kept (count)", "How many were kept."),
        _count("count_seen", "Seen (count)", "How many were seen, the kept ones included."),
        FieldSpec(
            name="size_cm",
            kind="real",
            alias="Size (cm)",
            unit="cm",
            minimum=0.0,
            above_minimum=True,
            maximum=1000.0,
            help="Length of the largest.",
        ),
        FieldSpec(name="note", kind="text", alias="Note", long_text=True, help="Anything worth knowing, in words."),
    ),
)
