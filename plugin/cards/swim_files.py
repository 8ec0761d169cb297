"""The files of a swim for a GPS and other programs: each is written, read again, and only then put in its place."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from ..core.results.shared import without_marks
from ..core.results.swim_plan import SwimPlan
from .card_text import card_text
from .csv_legs import csv_text
from .geojson import geojson_text
from .gps_options import GpsOptions
from .gpx import gpx_text
from .kml import kml_text
from .read_back import check_csv, check_geojson, check_gpx, check_kml
from .whole_files import text_writer
from .xml_text import UNWRITABLE

Writer = Callable[[Path], None]


def gpx_writer(plan: SwimPlan, options: GpsOptions) -> Writer:
    """A function that writes the GPX file. SwimPlanError, here or there, for what cannot be written as asked."""
    return _checked(gpx_text(plan, options), lambda path: check_gpx(path, plan, options))


def kml_writer(plan: SwimPlan, options: GpsOptions) -> Writer:
    """The same for KML; of the options only ``private`` counts, here and below."""
    return _checked(kml_text(plan, private=options.private), lambda path: check_kml(path, plan, options.private))


def geojson_writer(plan: SwimPlan, options: GpsOptions) -> Writer:
    """The same for GeoJSON."""
    text = geojson_text(plan, private=options.private)
    return _checked(text, lambda path: check_geojson(path, plan, options.private))


def csv_writer(plan: SwimPlan, options: GpsOptions) -> Writer:
    """The same for the table of legs."""
    return _checked(csv_text(plan, private=options.private), lambda path: check_csv(path, plan, options.private))


def card_text_writer(plan: SwimPlan, options: GpsOptions) -> Writer:
    """The same for the card as plain text, which nothing but a person reads again."""
    text = card_text(without_marks(plan) if options.private else plan)
    lines = (UNWRITABLE.sub(" ", line) for line in text.split("\n"))
    return text_writer("\n".join(lines))


# By the names of the algorithm's parameters.
WRITERS: dict[str, Callable[[SwimPlan, GpsOptions], Writer]] = {
    "GPX": gpx_writer,
    "KML": kml_writer,
    "GEOJSON": geojson_writer,
    "CSV": csv_writer,
    "TEXT": card_text_writer,
}


def _checked(text: str, check: Callable[[Path], None]) -> Writer:
    """Writes the text, then reads it again; SwimPlanError where that is not what the plan holds."""
    write = text_writer(text)

    def write_and_check(path: Path) -> None:
        write(path)
        check(path)

    return write_and_check
