"""What the tool for points places: stream stations with a form for each way their stream is given, and landmarks."""

from __future__ import annotations

from collections.abc import Mapping

from qgis.core import QgsVectorLayer

from ..core.errors import SwimPlanError
from ..words import tr
from .at_hand import PlanAtHand
from .place_point import Placing
from .row_form import RowAsked, free_name, names_in

BY_TIDE = frozenset({"hourly", "coefficients", "slack_offset"})
BY_RANGE = frozenset({"hourly", "slack_offset"})
BY_REFERENCE = frozenset({"subordinate"})
BY_SLACK = frozenset({"slack_offset"})
DIFFERENCES = (
    "slack_before_flood_min",
    "flood_minutes",
    "slack_before_ebb_min",
    "ebb_minutes",
    "flood_speed_ratio",
    "ebb_speed_ratio",
)
SETS = ("flood_set_deg", "ebb_set_deg")
# For which forms of station each field is asked for; those that are not here are asked for every one.
ONLY_FOR: dict[str, frozenset[str]] = {
    "reference": BY_TIDE,
    "port": BY_TIDE,
    **dict.fromkeys(("spring_range_m", "neap_range_m"), BY_RANGE),
    "reference_station": BY_REFERENCE,
    **dict.fromkeys(DIFFERENCES, BY_REFERENCE),
    "slack_offset_min": BY_SLACK,
    **dict.fromkeys(SETS, BY_REFERENCE | BY_SLACK),
    **dict.fromkeys(("spring_kn", "neap_kn"), BY_SLACK),
    **dict.fromkeys(("wind_percent", "wind_turn_deg"), frozenset({"wind"})),
}
FIELDS = ("station", "form", *ONLY_FOR, "source", "confidence")
# Without these a station of such a form cannot be used at all.
NEEDED = ("reference_station", *DIFFERENCES, *SETS, "slack_offset_min", "spring_kn", "wind_percent")


def station_placing() -> Placing:
    """A stream station: its rates are typed into a table afterwards, but for forms that the row holds whole."""
    return Placing(
        layer="stream_stations",
        named="station",
        hint=tr("Click where the stream is known, or type its position. Drag a station to move it."),
        position_words=tr("Place Station There"),
        held_position_words=tr("Move Station There"),
        moved=tr("Move stream station"),
        asked=_station_asked,
    )


def landmark_placing() -> Placing:
    """Something ashore that can be told from the water."""
    return Placing(
        layer="landmarks",
        named="name",
        hint=tr("Click where a landmark stands, or type its position. Drag one to move it."),
        position_words=tr("Place Landmark There"),
        held_position_words=tr("Move Landmark There"),
        moved=tr("Move landmark"),
        asked=_landmark_asked,
    )


def _station_asked(plan: PlanAtHand, layer: QgsVectorLayer) -> RowAsked:
    taken, ports = names_in(layer, "station"), plan.ports()
    begun = {"station": free_name(tr("Station"), taken), "reference": "HW"}
    if len(ports) == 1:
        begun["port"] = ports[0]
    return RowAsked(
        layer="stream_stations",
        title=tr("New Stream Station"),
        words=tr("Place stream station"),
        fields=FIELDS,
        values=begun,
        needed=NEEDED,
        taken=taken,
        named="station",
        choices={"reference_station": _with_events(layer)},
        suggested={"port": ports},
        switch="form",
        only_for=ONLY_FOR,
        check=_check_station,
        decimals=2,  # as ratios and rates are printed
    )


def _with_events(layer: QgsVectorLayer) -> list[str]:
    """The stations whose slacks and maxima a subordinate place can go by."""
    rows = (row for row in layer.getFeatures() if row["form"] == "events")
    return sorted({row["station"] for row in rows if isinstance(row["station"], str)})


def _check_station(values: Mapping[str, object]) -> None:
    """SwimPlanError for ranges that cannot be those of springs and neaps."""
    springs, neaps = values["spring_range_m"], values["neap_range_m"]
    if springs is not None and neaps is not None and neaps >= springs:
        raise SwimPlanError(
            asked=tr("The neap range of {:g} m is not below the spring range of {:g} m").format(neaps, springs),
            allowed=tr("The spring range is the larger"),
            remedy=tr("Correct the ranges"),
        )


def _landmark_asked(_plan: PlanAtHand, layer: QgsVectorLayer) -> RowAsked:
    taken = names_in(layer)
    return RowAsked(
        layer="landmarks",
        title=tr("New Landmark"),
        words=tr("Place landmark"),
        fields=("name", "kind", "height_m", "note"),
        values={"name": free_name(tr("Landmark"), taken)},
        taken=taken,  # transits name their landmarks
    )
