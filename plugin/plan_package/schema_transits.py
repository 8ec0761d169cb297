"""The layers of a plan that hold what stands ashore, and which of it is held in line to find a mark."""

from __future__ import annotations

from . import value_lists
from .field_spec import FieldSpec, LayerSpec

TALLEST_M = 9000.0


def _named(name: str, alias: str, help_text: str) -> FieldSpec:
    return FieldSpec(name=name, kind="text", alias=alias, required=True, help=help_text)


def _note() -> FieldSpec:
    return FieldSpec(name="note", kind="text", alias="Note", long_text=True, help="Anything worth knowing, in words.")


LANDMARKS = LayerSpec(
    name="landmarks",
    geometry="Point",
    title="Landmarks",
    help="Things ashore that can be told from the water. Two of them in line make a transit.",
    fields=(
        _named("name", "Name", "The name printed on the card. Transits refer to it, so it stands once."),
        FieldSpec(
            name="kind",
            kind="text",
            alias="Kind",
            choices=value_lists.LANDMARK_KIND,
            open_list=True,
            help="What it is: one of these, or a word of your own.",
        ),
        FieldSpec(
            name="height_m",
            kind="real",
            alias="Height of the top (m)",
            unit="m",
            minimum=0.0,
            maximum=TALLEST_M,
            help="Height of its top above high water.",
        ),
        _note(),
    ),
)

TRANSITS = LayerSpec(
    name="transits",
    geometry="LineString",
    title="Transits",
    help="Two landmarks in line as seen from a mark. The names count; the line only shows it.",
    fields=(
        _named("mark", "Mark", "Name of the mark that lies on the line."),
        _named("front", "Front", "Name of the nearer landmark."),
        _named("rear", "Rear", "Name of the farther landmark, seen over or beside the front one."),
        _note(),
    ),
)
