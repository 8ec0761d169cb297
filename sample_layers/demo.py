#!/usr/bin/env python3
"""Plan the three swims of the sample without a screen and write everything into a folder (`out` unless named).

`./run demo` calls this. The first route's files lie at the top of the folder, the others in a folder of their own.
"""

from __future__ import annotations

import json
import os
import re
import shutil
import sys
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

import bay_plan
import make_bay
import numpy as np
from chart_picture import draw_chart
from demo_words import Report, flag_sentences, headline, legs_table, stop_lines, window_lines
from osgeo import gdal
from qgis.core import (
    QgsApplication,
    QgsMapLayer,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProject,
    QgsVectorLayer,
)

SINKS = ("legs", "track", "flags", "stops")
RESULT_LAYERS = "plan_layers.gpkg"
SWIMMER = "Steady"
CARD_DPI = 110
# First on top. The tables and the log have nothing to draw.
ON_THE_CHART = (
    "marks",
    "stream_stations",
    "soundings",
    "channels",
    "stream_areas",
    "closed_areas",
    "depth_contours",
    "land",
)


class DemoError(Exception):
    """The demo cannot go on; the text says why."""


class Feedback(QgsProcessingFeedback):
    """Keeps what an algorithm reports, and shows its progress on a terminal."""

    def __init__(self) -> None:
        super().__init__(False)
        self.errors: list[str] = []
        self.progressChanged.connect(self._show)

    def reportError(self, error: str, fatalError: bool = False) -> None:
        self.errors.append(error)

    def _show(self, percent: float) -> None:
        if sys.stderr.isatty():
            print(f"\r   {percent:3.0f} %  ", end="\r", file=sys.stderr, flush=True)


def say(words: str) -> None:
    """A step, to the error stream, so that the tables alone can be piped."""
    print(f"   {words}", file=sys.stderr, flush=True)


def slug(name: str) -> str:
    return re.sub(r"[^a-z0-9]+", "-", name.lower()).strip("-")


def start_qgis() -> QgsApplication:
    """QGIS without a window and without the user's profile, with Tideleg's algorithms."""
    make_bay.plugin_on_path()
    application = QgsApplication([], False)
    application.initQgis()
    from tideleg.processing.provider import TidelegProvider

    provider = TidelegProvider()
    if not QgsApplication.processingRegistry().addProvider(provider):
        raise DemoError("Tideleg's Processing provider could not be added to QGIS.")
    application.tideleg_provider = provider  # the registry does not keep Python's half of it alive
    return application


def plan_swim(plan: Path, route: str, folder: Path, depart: str = bay_plan.DEPART) -> Report:
    """Run `tideleg:planswim` for one route, leaving its files in the folder; `depart` is read in the plan's zone."""
    folder.mkdir(parents=True, exist_ok=True)
    layers = folder / RESULT_LAYERS
    parameters = {
        "PLAN": str(plan),
        "ROUTE": route,
        "DEPART": depart,
        "SWIMMER": SWIMMER,
        "HEADING_MODE": 0,
        **{sink.upper(): f"ogr:dbname='{layers}' table=\"{sink}\" (geom)" for sink in SINKS},
        "REPORT": str(folder / "report.json"),
        "GPX": str(folder / "marks.gpx"),
        "CARD": str(folder / "card.pdf"),
        "CSV": str(folder / "legs.csv"),
    }
    run_algorithm("tideleg:planswim", parameters)
    return json.loads((folder / "report.json").read_text(encoding="utf-8"))


def find_windows(plan: Path, route: str, folder: Path) -> Report:
    """Run `tideleg:departurewindows` over the days round the sample's, leaving its picture and report in the folder."""
    first, last = bay_plan.WINDOW_DAYS
    parameters = {
        "PLAN": str(plan),
        "ROUTE": route,
        "FROM": first,
        "TO": last,
        "STEP": 10,
        "SWIMMER": SWIMMER,
        "REPORT": str(folder / "windows.json"),
        "PICTURE": str(folder / "days.png"),
    }
    run_algorithm("tideleg:departurewindows", parameters)
    return json.loads((folder / "windows.json").read_text(encoding="utf-8"))


def run_algorithm(algorithm_id: str, parameters: dict[str, object]) -> dict[str, object]:
    """Run one algorithm; raises DemoError with its own words when it refuses or fails."""
    algorithm = QgsApplication.processingRegistry().createAlgorithmById(algorithm_id)
    if algorithm is None:
        raise DemoError(f"There is no algorithm {algorithm_id}.")
    context, feedback = QgsProcessingContext(), Feedback()
    context.setProject(QgsProject.instance())
    context.setFeedback(feedback)
    accepted, why = algorithm.checkParameterValues(parameters, context)
    if not accepted:
        raise DemoError(f"{algorithm_id}: {why}")
    results, done = algorithm.run(parameters, context, feedback)
    if not done:
        raise DemoError(f"{algorithm_id}: {' '.join(feedback.errors) or 'failed and did not say why'}")
    return results


def picture_of_card(card: Path) -> Path:
    """The card's sides beside each other as a PNG next to it, each read by GDAL out of the PDF."""
    whole = gdal.OpenEx(str(card))
    if whole is None:
        raise DemoError(f"{card} could not be read back as a picture.")
    names = [name for name, _ in whole.GetSubDatasets()] or [str(card)]  # a page each, where there are several
    sides = [gdal.OpenEx(name, open_options=[f"DPI={CARD_DPI}"]).ReadAsArray()[:3] for name in names]
    between = np.full((3, sides[0].shape[1], 8), 128, dtype=np.uint8)
    pixels = np.concatenate([part for side in sides for part in (side, between)][:-1], axis=2)
    png = card.with_suffix(".png")
    bands = gdal.GetDriverByName("MEM").Create("", pixels.shape[2], pixels.shape[1], 3, gdal.GDT_Byte)
    bands.WriteArray(pixels)
    gdal.GetDriverByName("PNG").CreateCopy(str(png), bands)
    png.with_suffix(".png.aux.xml").unlink(missing_ok=True)
    return png


def chart_layers(plan: Path, folder: Path, route: str) -> list[QgsMapLayer]:
    """Results over the plan's own layers, first on top; a mark that is a stop of the route is drawn as a stop only."""
    from tideleg.layers_out.styling import STYLES
    from tideleg.plan_package import store
    from tideleg.plan_package.schema import LAYER_BY_NAME

    shown: list[QgsMapLayer] = []
    for name in ("stops", "flags", "track", "legs"):
        layer = QgsVectorLayer(f"{folder / RESULT_LAYERS}|layername={name}", name, "ogr")
        if not layer.isValid():
            raise DemoError(f"{folder / RESULT_LAYERS} has no layer {name}.")
        STYLES[name.upper()](layer)
        shown.append(layer)
    # A swim that ends where it began is named there once.
    shown[0].setSubsetString('"fid" IN (SELECT min("fid") FROM "stops" GROUP BY "name")')
    for name in ON_THE_CHART:
        parts = LAYER_BY_NAME[name].geometry_types
        shown += [store.open_layer(plan, name, geometry_type=part if len(parts) > 1 else "") for part in parts]
    stops = ", ".join(f"'{stop}'" for stop in bay_plan.ROUTES[route][0])
    next(layer for layer in shown if layer.source().endswith("=marks")).setSubsetString(f'"name" NOT IN ({stops})')
    return shown


def chart_title(report: Report) -> str:
    """The route, and with it that it cannot be swum: a picture travels without its report."""
    return report["route"] if report["feasible"] else f"{report['route']} - NOT FEASIBLE at this hour"


def one_swim(plan: Path, route: str, folder: Path) -> None:
    """Plan one route, print what it says, and make its pictures."""
    say(f"planning {route}")
    report = plan_swim(plan, route, folder)
    picture_of_card(folder / "card.pdf")
    draw_chart(chart_layers(plan, folder, route), folder / "map.png", chart_title(report))
    print(
        "\n"
        + "\n".join([*headline(report), "", *legs_table(report), "", *stop_lines(report), "", *flag_sentences(report)])
    )
    print(
        f"  Files: {folder}/ (card.pdf, card.png, map.png, report.json, legs.csv, marks.gpx, {RESULT_LAYERS})",
        flush=True,
    )


def main(out: Path) -> None:
    if make_bay.is_stale():
        say("making the sample plan")
        make_bay.make(say=say)
    out.mkdir(parents=True, exist_ok=True)
    say("looking for windows")
    windows = find_windows(make_bay.SAMPLE, next(iter(bay_plan.ROUTES)), out)
    print("\n" + "\n".join([*window_lines(windows), f"  Files: {out}/days.png, {out}/windows.json"]), flush=True)
    for number, route in enumerate(bay_plan.ROUTES):
        folder = out if number == 0 else out / slug(route)
        for name in (RESULT_LAYERS, f"{RESULT_LAYERS}-wal", f"{RESULT_LAYERS}-shm"):
            (folder / name).unlink(missing_ok=True)
        one_swim(make_bay.SAMPLE, route, folder)
    shutil.copyfile(make_bay.SAMPLE, out / "plan.gpkg")
    print(f"\nThe plan itself, to open in QGIS: {out / 'plan.gpkg'}. {make_bay.NOTICE}.")
    print("A prediction, not an observation. Feasible is not safe. Never dive alone.")


if __name__ == "__main__":
    application = start_qgis()
    try:
        main(Path(sys.argv[1] if len(sys.argv) > 1 else "out"))
    except DemoError as error:
        sys.exit(f"The demo stopped: {error}")
    finally:
        QgsProject.instance().clear()
        application.exitQgis()
