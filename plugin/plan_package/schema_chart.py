"""The layers of a plan that lie on the chart: marks, routes, channels, closed areas, land and depths."""

from __future__ import annotations

from . import value_lists
from .field_spec import (
    CLOCK_OR_DATED_PATTERN,
    DAILY_OR_DATED_PATTERN,
    DATE_PATTERN,
    FieldSpec,
    LayerSpec,
)

DEEPEST_M = 12_000.0
FASTEST_BOAT_KN = 60.0
_DAILY_OR_DATED_WORDS = "HH:MM each day, a date YYYY-MM-DD, a date and time, or --MMDD each year"


def _name(help_text: str, *, required: bool = False) -> FieldSpec:
    return FieldSpec(name="name", kind="text", alias="Name", required=required, help=help_text)


def _note() -> FieldSpec:
    return FieldSpec(name="note", kind="text", alias="Note", long_text=True, help="Anything worth knowing, in words.")


def _depth(help_text: str) -> FieldSpec:
    return FieldSpec(
        name="depth_m",
        kind="real",
        alias="Depth (m)",
        unit="m",
        minimum=0.0,
        maximum=DEEPEST_M,
        required=True,
        help=help_text,
    )


MARKS = LayerSpec(
    name="marks",
    geometry="Point",
    title="Marks",
    help="Places a swim starts, stops, passes or ends at.",
    fields=(
        _name("The name printed on the card. A vertex of a route within 15 m of the mark takes it.", required=True),
        FieldSpec(
            name="kind",
            kind="text",
            alias="Kind",
            choices=value_lists.MARK_KIND,
            default="mark",
            required=True,
            help="What the place is for.",
        ),
        FieldSpec(
            name="stay_min",
            kind="real",
            alias="Stay (min)",
            unit="min",
            default=0.0,
            minimum=0.0,
            maximum=720.0,
            help="Minutes spent here before swimming on.",
        ),
        FieldSpec(
            name="charted_depth_m",
            kind="real",
            alias="Charted depth (m)",
            unit="m",
            minimum=0.0,
            maximum=DEEPEST_M,
            help="Depth below the plan's datum, positive down. Left empty, it is taken from soundings and contours.",
        ),
        FieldSpec(
            name="bottom", kind="text", alias="Bottom", help="What the seabed is made of: rock, sand, weed and so on."
        ),
        _note(),
    ),
)

ROUTES = LayerSpec(
    name="routes",
    geometry="LineString",
    title="Routes",
    help="One line per swim. Vertices are the stops in swimming order.",
    fields=(_name("The name by which a plan is asked for.", required=True), _note()),
)

CHANNELS = LayerSpec(
    name="channels",
    geometry="LineString or Polygon",
    title="Channels",
    help="Where boats run. An area, or a line with a width.",
    fields=(
        _name("The name used in warnings; ferry times refer to it."),
        FieldSpec(
            name="kind",
            kind="text",
            alias="Kind",
            choices=value_lists.CHANNEL_KIND,
            default="fairway",
            required=True,
            help="What sort of channel it is.",
        ),
        FieldSpec(
            name="width_m",
            kind="real",
            alias="Width of a line (m)",
            unit="m",
            minimum=0.0,
            above_minimum=True,
            maximum=50_000.0,
            help="Full width of a channel drawn as a line. Areas need none.",
        ),
        FieldSpec(
            name="flow_deg",
            kind="real",
            alias="Boats' direction (deg true)",
            unit="deg true",
            minimum=0.0,
            maximum=360.0,
            help="True direction boats run. Left empty, it is taken from the shape.",
        ),
        FieldSpec(
            name="boat_kn",
            kind="real",
            alias="Boat speed (kn)",
            unit="kn",
            minimum=0.0,
            maximum=FASTEST_BOAT_KN,
            help="Speed of the boats to reckon with; gives the clear water a crossing needs.",
        ),
    ),
)

CLOSED_AREAS = LayerSpec(
    name="closed_areas",
    geometry="Polygon",
    title="Closed areas",
    help="Areas with a rule. An area that is not drawn here is not thereby permitted.",
    fields=(
        _name("The name used in warnings."),
        FieldSpec(
            name="rule",
            kind="text",
            alias="Rule",
            choices=value_lists.AREA_RULE,
            required=True,
            help="What the area forbids or warns of.",
        ),
        FieldSpec(
            name="from_time",
            kind="text",
            alias="From (plan's zone)",
            pattern=DAILY_OR_DATED_PATTERN,
            pattern_words=_DAILY_OR_DATED_WORDS,
            help="Start of the rule: " + _DAILY_OR_DATED_WORDS + ".",
        ),
        FieldSpec(
            name="to_time",
            kind="text",
            alias="To (plan's zone)",
            pattern=DAILY_OR_DATED_PATTERN,
            pattern_words=_DAILY_OR_DATED_WORDS,
            help="End of the rule: " + _DAILY_OR_DATED_WORDS + ".",
        ),
        FieldSpec(
            name="citation", kind="text", alias="Citation", long_text=True, help="Where the rule is written down."
        ),
        FieldSpec(
            name="checked_on",
            kind="text",
            alias="Checked on",
            pattern=DATE_PATTERN,
            pattern_words="a date YYYY-MM-DD",
            help="The day somebody last read the rule, YYYY-MM-DD.",
        ),
    ),
)

LAND = LayerSpec(
    name="land",
    geometry="Polygon",
    title="Land",
    help="Dry land, islands and rocks. Swims do not cross it, streams are not carried across it.",
    fields=(_name("A name, if it has one."),),
)

DEPTH_CONTOURS = LayerSpec(
    name="depth_contours",
    geometry="LineString",
    title="Depth contours",
    help="Lines of equal charted depth.",
    fields=(_depth("Depth of the line below the plan's datum, positive down."),),
)

SOUNDINGS = LayerSpec(
    name="soundings",
    geometry="Point",
    title="Soundings",
    help="Single charted depths, rocks and wrecks among them.",
    fields=(_depth("Depth below the plan's datum, positive down."),),
)

FERRIES = LayerSpec(
    name="ferries",
    geometry="none",
    title="Ferry times",
    help="When a ferry runs in a channel. A timetable is not traffic: others come too.",
    fields=(
        FieldSpec(
            name="channel", kind="text", alias="Channel", required=True, help="Name of the channel the ferry uses."
        ),
        FieldSpec(
            name="time",
            kind="text",
            alias="Passes at (plan's zone)",
            required=True,
            pattern=CLOCK_OR_DATED_PATTERN,
            pattern_words="HH:MM each day, or a date and time",
            help="HH:MM each day in the plan's zone, or one date and time.",
        ),
        FieldSpec(
            name="clear_before_min",
            kind="real",
            alias="Keep clear before (min)",
            unit="min",
            default=10.0,
            minimum=0.0,
            maximum=240.0,
            help="Minutes before the passing in which nobody is in the channel.",
        ),
        FieldSpec(
            name="clear_after_min",
            kind="real",
            alias="Keep clear after (min)",
            unit="min",
            default=10.0,
            minimum=0.0,
            maximum=240.0,
            help="Minutes after the passing in which nobody is in the channel.",
        ),
    ),
)
