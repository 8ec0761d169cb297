"""What the dock says of each map tool: words, tooltip, icon and keys."""

from __future__ import annotations

from ..words import tr


def tool_words() -> dict[str, tuple[str, str, str, str]]:
    """Of each tool: its words, its tooltip, its icon of QGIS's, and its keys unless the user chose others."""
    return {
        "place_mark": (
            tr("Place Mark"),
            tr("Place a mark; depth and distance in metres and bearing in degrees show beside the cursor"),
            "mActionCapturePoint",
            "Alt+1",
        ),
        "move_mark": (
            tr("Move Mark"),
            tr("Drag a mark, or type where it goes; routes stay as they are drawn"),
            "mActionMoveFeaturePoint",
            "Alt+2",
        ),
        "draw_route": (
            tr("Draw Route"),
            tr("Click the stops in swimming order; a stop at a mark takes the mark's exact place"),
            "mActionAddPolyline",
            "Alt+3",
        ),
        "edit_route": (
            tr("Edit Route"),
            tr("Move, put in and take out the stops of a route"),
            "mActionVertexTool",
            "Alt+4",
        ),
        "channel_line": (
            tr("Channel Line"),
            tr("Draw a boat channel along its middle; its width in metres is asked for"),
            "mActionCaptureLine",
            "Alt+5",
        ),
        "channel_area": (
            tr("Channel Area"),
            tr("Draw a boat channel by its corners"),
            "mActionCapturePolygon",
            "Alt+6",
        ),
        "closed_area": (
            tr("Closed Area"),
            tr("Draw an area with a rule, such as no entry or no anchoring"),
            "mActionAddPolygon",
            "Alt+7",
        ),
        "stream_station": (
            tr("Stream Station"),
            tr("Place a stream station, or drag one to its new place; its rates are typed into a table"),
            "mActionAddArrow",
            "Alt+9",
        ),
        "eddy_area": (
            tr("Eddy Area"),
            tr("Draw an area in which one stream station alone rules, such as an eddy behind a headland"),
            "mActionAddBasicCircle",
            "Alt+0",
        ),
        "landmark": (
            tr("Landmark"),
            tr("Place a landmark ashore, or drag one to its new place; two in line make a transit"),
            "mActionAddMarker",
            "Alt+Shift+L",
        ),
        "measure_leg": (
            tr("Measure Leg"),
            tr("Distance in metres, bearings and heading to hold in degrees, minutes, speed over the ground in m/s"),
            "mActionMeasure",
            "Alt+8",
        ),
    }
