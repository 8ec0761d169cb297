"""The value lists of a plan: what a field may hold, and the words shown for each value."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType


def _choices(**labels: str) -> Mapping[str, str]:
    return MappingProxyType(labels)


MARK_KIND = _choices(
    entry="Entry (where the swim starts)",
    mark="Mark (a place to dive)",
    exit="Exit (where one can land)",
    waypoint="Waypoint (passed without a stop)",
)
LANDMARK_KIND = _choices(
    tower="Tower",
    spire="Church tower or spire",
    chimney="Chimney",
    mast="Mast",
    windmill="Windmill or wind turbine",
    dome="Dome",
    monument="Monument",
    cross="Cross",
    cairn="Cairn",
    flagpole="Flagpole",
    building="Building",
    tank="Tank or silo",
    beacon="Beacon",
    light="Light",
    rock="Rock",
    headland="Edge of a headland",
)
CHANNEL_KIND = _choices(
    fairway="Fairway",
    ferry="Ferry track",
    lane="Traffic lane",
    small_craft="Small craft channel",
)
AREA_RULE = _choices(
    no_entry="No entry",
    no_spearing="No spearing",
    no_anchoring="No anchoring",
    loaded_gun_ban="No loaded gun",
    caution="Caution",
)
TIDE_KIND = _choices(HW="High water", LW="Low water")
TIDE_FORM = _choices(
    events="High and low waters",
    series="Heights at even times",
    harmonic="Harmonic constants",
    secondary="Differences from another port",
)
STREAM_FORM = _choices(
    hourly="Hourly table (-6 h to +6 h)",
    events="Slack and maximum events",
    constant="Constant (no tide needed)",
    coefficients="Hourly table by tide coefficient (45 and 95)",
    subordinate="Slacks and maxima by differences from another station",
    slack_offset="Slack so long after high or low water, and one rate",
    series="Set and rate at set times",
    harmonic="Harmonic constants",
    wind="Driven by the wind",
)
CONFIDENCE = _choices(
    measured="Own measurement",
    official="Official table of the place",
    table="Hourly table of the region",
    model="Model",
    words="Words (a pilot book, a local)",
)
STREAM_REFERENCE = _choices(HW="Hours from high water", LW="Hours from low water")
STREAM_EVENT_KIND = _choices(slack="Slack", max="Maximum")
STREAM_PHASE = _choices(flood="On the flood", ebb="On the ebb", always="Always")
MODEL_KIND = _choices(mesh="Mesh", raster="Raster")
FELT_STREAM = _choices(
    none="None (the float hangs still)",
    weak="Weak (easily swum against)",
    moderate="Moderate (slow headway)",
    strong="Strong (no headway)",
)
