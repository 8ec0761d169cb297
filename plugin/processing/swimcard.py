"""`tideleg:swimcard`: what goes along and what stays ashore: the wet card, and the shore contact's sheet."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from qgis.core import (
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingOutputBoolean,
    QgsProcessingParameterFileDestination,
)
from qgis.PyQt.QtCore import QLocale

from .card_look import add_card_look, card_look, layout_file
from .file_options import add_private, is_private
from .main_thread import in_main_thread
from .plan_algorithm import PlanAlgorithm, check_apart
from .whole_outputs import Paper, WholeOutputs, write_each

FILES = {
    "CARD": "PDF (*.pdf)",
    "CARD_PNG": "PNG (*.png)",
    "CARD_TEXT": "Text (*.txt)",
    "SHEET": "PDF (*.pdf)",
    "SHEET_HTML": "HTML (*.html)",
}
FACTS = {"FLOAT": "float_colours", "FLAG": "flag", "EMERGENCY": "emergency_numbers"}


class SwimCard(PlanAlgorithm):
    """Plans the swim as planswim does and writes its papers; it fails where one cannot be made, and the others stay."""

    def __init__(self) -> None:
        super().__init__()
        self._request: Any = None
        self._settings: dict[str, str] = {}
        self._sheet: Any = None
        self._paths: dict[str, str] = {}
        self._look: Any = None
        self._private = False

    def name(self) -> str:
        return "swimcard"

    def displayName(self) -> str:
        return self._tr("Wet card and shore contact's sheet")

    def tags(self) -> list[str]:
        return self._tr("card,sheet,print,shore contact,alarm,drift,emergency").split(",")

    def shortHelpString(self) -> str:
        return self._tr(
            "Plans a swim and writes its papers.\n\n"
            "Wet card: headings, minutes, turn back, headings home by the time of leaving, tides, to be carried along. "
            "Letters are never made smaller than can be read at arm's length: what does not fit a side goes on the "
            "next one, and what is left out is named. A layout of your own is a print layout template in which labels "
            "say what stands where: begin with one of Tideleg's.\n"
            "Shore contact's sheet: who is out, where, when they are back, at what time the contact acts and what they "
            "do then, where a float would drift in 30, 60 and 120 minutes. As pages of A4, and as one HTML file that "
            "opens on a telephone without any network.\n\n"
            "Float, flag, emergency numbers: what is left empty comes from the plan's settings; nothing is assumed. "
            "Several numbers have a semicolon between them.\n"
            "Wind: pushes the float that drifts; left empty its push is not counted, and the sheet says so.\n\n"
            "A prediction, not an observation; feasible is not safe; never dive alone. Not for the navigation of "
            "vessels."
        )

    def initAlgorithm(self, configuration: dict[str, Any] | None = None) -> None:
        self.add_plan()
        self.add_text("ROUTE", self._tr("Name of the route"), optional=True)
        self.add_text("DEPART", self._tr("Departure (date and time)"))
        self.add_swimmer()
        self.add_way()
        self.add_wind()
        words = {
            "FLOAT": self._tr("Colours of the float"),
            "FLAG": self._tr("Flag and its colours"),
            "EMERGENCY": self._tr("Emergency numbers (with ; between them)"),
            "NOTE": self._tr("Note to the shore contact"),
            "CARD": self._tr("Wet card"),
            "CARD_PNG": self._tr("Wet card as a picture"),
            "CARD_TEXT": self._tr("Wet card as plain text"),
            "SHEET": self._tr("Shore contact's sheet"),
            "SHEET_HTML": self._tr("Shore contact's sheet for a telephone"),
        }
        for name in (*FACTS, "NOTE"):
            self.add_text(name, words[name], optional=True)
        add_card_look(self)
        add_private(self, self._tr("Leave the marks out, to share the card: no positions, headings or distances"))
        for name, ending in FILES.items():
            self.addParameter(
                QgsProcessingParameterFileDestination(
                    name, words[name], ending, optional=True, createByDefault=name in ("CARD", "SHEET")
                )
            )
        self.addOutput(QgsProcessingOutputBoolean("FEASIBLE", self._tr("Can be swum")))

    def checkParameterValues(self, parameters: dict[str, Any], context: QgsProcessingContext) -> tuple[bool, str]:
        why = self.wind_problem(parameters)
        if not why and is_private(self, parameters, context):
            sheets = [name for name in ("SHEET", "SHEET_HTML") if self.file_of(parameters, name, context)]
            if sheets:
                why = self._tr("The shore contact's sheet says where you are and is not to be shared: leave {} empty.")
                why = why.format(", ".join(sheets))
        return (False, why) if why else super().checkParameterValues(parameters, context)

    def gather(self, parameters: dict[str, Any], context: QgsProcessingContext) -> None:
        from ..layers_in.swim_in import request_from
        from ..plan_package.settings import read_settings

        plan = self.plan(parameters, context)
        asked = replace(self.swim_asked(parameters, context), way=self.way(parameters, context))
        self._settings = read_settings(plan)
        self._request = request_from(plan, {}, asked)

    def compute(
        self, parameters: dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> dict[str, Any]:
        from ..core.results.shore_sheet import ContactFacts
        from ..core.solve.shore_sheet import shore_sheet

        typed = {key: self.text(parameters, name, context) for name, key in FACTS.items()}
        facts = {key: text or self._settings.get(key, "") for key, text in typed.items()}
        self._sheet = shore_sheet(
            self._request,
            ContactFacts(**facts, note=self.text(parameters, "NOTE", context)),
            self.wind(parameters, context),
            progress=lambda share: feedback.setProgress(90.0 * share),
            is_cancelled=feedback.isCanceled,
        )
        swim = self._sheet.swim
        self.tell(feedback, swim.warnings, (f"[{flag.severity}] {flag.message}" for flag in swim.flags))
        self._paths = {name: self.file_of(parameters, name, context) for name in FILES}
        self._private = is_private(self, parameters, context)
        self._look = card_look(self, parameters, context)
        written = [path for path in self._paths.values() if path]
        if not written:
            raise QgsProcessingException(self._tr("No file was asked for: name at least one."))
        read = [self.plan(parameters, context), layout_file(self, parameters, context)]
        WholeOutputs(written, read=read)  # which refuses what cannot be written
        check_apart(written, [])
        # Print layouts and pages of text belong to the main thread.
        in_main_thread(lambda: write_each(self._papers()), feedback.isCanceled)
        return {"FEASIBLE": swim.feasible, **{name: path for name, path in self._paths.items() if path}}

    def _papers(self) -> list[Paper]:
        """Each paper asked for by itself: one that cannot be made keeps no other back."""
        from ..cards.card_text import card_text
        from ..cards.sheet_files import html_writer, pdf_writer
        from ..cards.wet_card import card_writers
        from ..cards.whole_files import text_writer
        from ..core.results.shared import without_marks

        swim = without_marks(self._sheet.swim) if self._private else self._sheet.swim
        card, png, text, sheet, html = (self._paths[name] for name in FILES)
        pages = [path for path in (card, png) if path]
        papers: list[Paper] = [
            (pages, lambda: card_writers(swim, card or None, png_path=png or None, look=self._look)),
            ([text], lambda: {text: text_writer(card_text(swim))}),
            ([sheet], lambda: {sheet: pdf_writer(self._sheet)}),
            ([html], lambda: {html: html_writer(self._sheet, QLocale().name())}),
        ]
        return [(paths, writers) for paths, writers in papers if all(paths) and paths]
