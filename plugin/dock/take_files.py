"""The files of a swim to take along: what each is called, what writes it, and a folder that holds nothing else."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path

from ..cards.gps_options import GpsOptions
from ..cards.swim_files import card_text_writer, csv_writer, geojson_writer, gpx_writer, kml_writer
from ..cards.wet_card import CardLook, card_writers
from ..cards.whole_files import text_writer, write_whole
from ..core.errors import SwimPlanError
from ..core.results.report import report_text
from ..core.results.swim_plan import SwimPlan
from ..version import tideleg_version
from ..words import tr
from .file_names import plain_name

MOST_FOLDERS = 1000
Writer = Callable[[Path], None]


@dataclass(frozen=True, kw_only=True)
class TakeFile:
    """One kind of file: its button, what its name ends in, what the dialog calls it, and what writes a swim so.

    ``writer`` makes a function that writes to a path; it runs on the main thread, where print layouts live.
    """

    key: str
    button: str
    tip: str
    ending: str
    kind: str
    writer: Callable[[SwimPlan], Writer]

    @property
    def suffix(self) -> str:
        """``.pdf``."""
        return Path(f"x{self.ending}").suffix


def take_files(
    look: Callable[[], CardLook] = CardLook, gps: Callable[[], GpsOptions] = GpsOptions
) -> tuple[TakeFile, ...]:
    """Every kind there is, in the order of the buttons; ``look`` and ``gps`` say how when they are written."""
    return (
        TakeFile(
            key="card",
            button=tr("Wet Card…"),
            tip=tr("The card to carry on the water, as a PDF to print black on white"),
            ending=tr(" card") + ".pdf",
            kind=tr("PDF (*.pdf)"),
            # Laid out when it is written, like the others' texts; ``write_whole`` is what calls it.
            writer=lambda swim: lambda path: card_writers(swim, path, look=look())[path](path),
        ),
        TakeFile(
            key="text",
            button=tr("Card as Text…"),
            tip=tr("The same card in plain text, for a message or a slate"),
            ending=tr(" card") + ".txt",
            kind=tr("Text (*.txt)"),
            writer=lambda swim: card_text_writer(swim, gps()),
        ),
        TakeFile(
            key="gpx",
            button=tr("GPX…"),
            tip=tr("Marks, route and track for a GPS (GPX 1.1); settings gps_... of the plan say how"),
            ending=".gpx",
            kind=tr("GPX (*.gpx)"),
            writer=lambda swim: gpx_writer(swim, gps()),
        ),
        TakeFile(
            key="kml",
            button=tr("KML…"),
            tip=tr("Places, legs, track and flags for globes and maps (KML 2.2)"),
            ending=".kml",
            kind=tr("KML (*.kml)"),
            writer=lambda swim: kml_writer(swim, gps()),
        ),
        TakeFile(
            key="geojson",
            button=tr("GeoJSON…"),
            tip=tr("Places, legs, track and flags for other map programs (GeoJSON)"),
            ending=".geojson",
            kind=tr("GeoJSON (*.geojson)"),
            writer=lambda swim: geojson_writer(swim, gps()),
        ),
        TakeFile(
            key="csv",
            button=tr("Table of Legs…"),
            tip=tr("The legs as a table for a spreadsheet (CSV)"),
            ending=tr(" legs") + ".csv",
            kind=tr("CSV (*.csv)"),
            writer=lambda swim: csv_writer(swim, gps()),
        ),
        TakeFile(
            key="report",
            button=tr("Report…"),
            tip=tr("All numbers of the swim for other programs (JSON)"),
            ending=tr(" report") + ".json",
            kind=tr("JSON (*.json)"),
            writer=lambda swim: text_writer(report_text(swim, tideleg_version())),
        ),
    )


def proposed_name(swim: SwimPlan) -> str:
    """``Ledge 2027-06-05 1000``: route and departure, of letters, digits, blanks and hyphens alone, on any system."""
    return f"{plain_name(swim.route) or tr('route')} {swim.depart:%Y-%m-%d %H%M}"


def file_name(file: TakeFile, swim: SwimPlan) -> str:
    """What a file of the swim is called; one made to share ends in that word, and is never taken for another."""
    return f"{proposed_name(swim)}{Path(f'x{file.ending}').stem[1:]}{_shared(swim)}{file.suffix}"


def folder_name(swim: SwimPlan) -> str:
    """What a folder of the swim's files is called."""
    return f"{proposed_name(swim)}{_shared(swim)}"


def _shared(swim: SwimPlan) -> str:
    return tr(" shared") if swim.marks_left_out else ""


def write_one(file: TakeFile, swim: SwimPlan, path: Path) -> None:
    """Write one file whole or not at all. SwimPlanError where it cannot be written."""
    write_whole({path: file.writer(swim)})


def write_all(files: Iterable[TakeFile], swim: SwimPlan, parent: Path) -> Path:
    """Write every file into a new folder of this one, and return it; all of them or none. SwimPlanError where not.

    A folder that is there already is left as it is: the new one gets a number.
    """
    folder = _new_folder(parent, folder_name(swim))
    try:
        write_whole({folder / file_name(file, swim): file.writer(swim) for file in files})
    except BaseException:
        with suppress(OSError):  # somebody else has put something into it meanwhile
            folder.rmdir()
        raise
    return folder


def _new_folder(parent: Path, name: str) -> Path:
    names = (name, *(f"{name} ({number})" for number in range(2, MOST_FOLDERS)))
    try:
        for one in names:
            with suppress(FileExistsError):
                (parent / one).mkdir()
                return parent / one
    except OSError as error:
        raise SwimPlanError(
            asked=tr("No folder could be made in {}: {}").format(parent, error.strerror),
            remedy=tr("Choose another folder"),
        ) from error
    raise SwimPlanError(
        asked=tr("{} holds {} folders named {}").format(parent, MOST_FOLDERS, name), remedy=tr("Choose another folder")
    )
