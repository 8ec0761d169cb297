"""The shore contact's sheet as one HTML file that needs nothing else, and as a PDF of A4 pages."""

from __future__ import annotations

import re
from collections.abc import Callable
from html import escape
from pathlib import Path

from qgis.PyQt.QtCore import QByteArray, QMarginsF, QRectF, QSizeF, QUrl
from qgis.PyQt.QtGui import QImage, QPageLayout, QPageSize, QPainter, QPdfWriter, QTextDocument

from ..core.errors import SwimPlanError
from ..core.results.shore_sheet import ShoreSheet
from ..words import tr
from .sheet_map import HEIGHT, WIDTH, sheet_map
from .sheet_words import Part, sheet_parts, sheet_title
from .whole_files import text_writer

# Nothing may be fetched and nothing run, whatever stands in a name.
POLICY = "default-src 'none'; style-src 'unsafe-inline'; img-src data:"
STYLE = """
body{font:18px/1.45 sans-serif;color:#000;background:#fff;margin:0 auto;max-width:46rem;padding:0 .8rem 2rem}
body{overflow-wrap:break-word}.clock{white-space:nowrap}h1{font-size:1.4rem;margin:.8rem 0 .2rem}
h2{font-size:1.15rem;margin:1.4rem 0 .3rem;border-bottom:2px solid #000}p{margin:.35rem 0}
table{border-collapse:collapse;width:100%}
th,td{text-align:start;vertical-align:top;padding:.3rem .4rem;border-bottom:1px solid #767676}
section.urgent{border:4px solid #000;padding:0 .7rem .6rem;margin-top:.8rem}section.urgent h2{border:0}
.big{font-size:2.9rem;line-height:1.1;font-weight:bold;margin:.2rem 0 .5rem}
.call{font-size:1.5rem;font-weight:bold}.call a{color:#000}svg{width:100%;height:auto}
@media(max-width:40rem){table,tbody,tr,td{display:block}thead{display:none}td{border:0;padding:.05rem 0}
tr{border-bottom:1px solid #767676;padding:.35rem 0}td:not([data-head=""])::before{content:attr(data-head) ": "}}
"""
PDF_DPI, SCREEN_DPI, MAP_PX = 300, 96, 2000
MAP_SHARE = 0.5  # of the page's width: the first page then holds all of the map
MARGIN_MM = 14.0
FOOT_PX = 80  # below the text, in the lower margin
PDF_STYLE = (
    "body{font-family:sans-serif;font-size:9.5pt;color:black}h2{font-size:12pt;margin-top:36px;"
    "margin-bottom:8px}p{margin-top:8px;margin-bottom:8px}"
)
# Clock times, and each half of a position.
_WHOLE = re.compile(r"\b\d{1,2}:\d{2}\b|\d{2,3}\N{DEGREE SIGN}\d{2}\.\d{3}&#x27;[NSEW]")
_CALLED = re.compile(r"\+?\d[\d ()/-]*\d|\d{3}")


def sheet_html(sheet: ShoreSheet, language: str = "en") -> str:
    """The whole document. Texts of the user's stand as text, whatever they hold."""
    body = "".join(_section(part, sheet) for part in sheet_parts(sheet))
    title = escape(sheet_title(sheet))
    return (
        f'<!DOCTYPE html>\n<html lang="{_language(language)}" dir="auto"><head><meta charset="utf-8">'
        f'<meta http-equiv="Content-Security-Policy" content="{POLICY}">'
        '<meta name="viewport" content="width=device-width, initial-scale=1">'
        f"<title>{title}</title><style>{STYLE}</style></head><body><h1>{title}</h1>"
        f"<p>{escape(_about(sheet))}</p>{body}</body></html>\n"
    )


def html_writer(sheet: ShoreSheet, language: str = "en") -> Callable[[Path], None]:
    """A function that writes the HTML file."""
    return text_writer(sheet_html(sheet, language))


def _language(name: str) -> str:
    """A locale's name as a code of its language: ``de`` of de_AT; English where it names none, as C does not."""
    code = name.split("_")[0].lower()
    return code if re.fullmatch("[a-z]{2,3}", code) else "en"


def _about(sheet: ShoreSheet) -> str:
    stamp = tr("PREDICTED") if sheet.swim.feasible else tr("NOT FEASIBLE AS PLANNED, PREDICTED")
    return f"{stamp}. " + tr("Route: {route}.").format(route=sheet.swim.route)


def _section(part: Part, sheet: ShoreSheet) -> str:
    lines = "".join(f'<p dir="auto">{_words(line)}</p>' for line in part.lines)
    lines = f'<p class="big">{_words(part.big)}</p>{lines}' if part.big else lines
    calls = "".join(f'<p class="call">{_call(number)}</p>' for number in part.numbers)
    drawn = sheet_map(sheet, with_drift=part.picture == "drift") if part.picture else ""
    kind = ' class="urgent"' if part.urgent else ""
    return f"<section{kind}><h2>{escape(part.title)}</h2>{lines}{calls}{drawn}{_table(part)}</section>"


def _words(text: str) -> str:
    """The text as it is, clock times and positions never broken over two lines."""
    return _WHOLE.sub(r'<span class="clock">\g<0></span>', escape(text))


def _call(number: str) -> str:
    """A number that a telephone can ring where there is one among the words."""
    found = _CALLED.search(number)
    if found is None:
        return escape(number)
    digits = re.sub(r"[^+\d]", "", found.group())
    before, after = number[: found.start()], number[found.end() :]
    return f'{escape(before)}<a href="tel:{digits}">{escape(found.group())}</a>{escape(after)}'


def _table(part: Part) -> str:
    if not part.rows:
        return ""
    heads = "".join(f'<th scope="col">{escape(head)}</th>' for head in part.heads)
    rows = "".join(f"<tr>{_cells(part.heads, row)}</tr>" for row in part.rows)
    return f"<table>{f'<thead><tr>{heads}</tr></thead>' if heads else ''}<tbody>{rows}</tbody></table>"


def _cells(heads: tuple[str, ...], row: tuple[str, ...]) -> str:
    """The cells of a row, each with its heading, which a narrow screen shows before it."""
    titles = heads or ("",) * len(row)
    return "".join(f'<td dir="auto" data-head="{escape(head)}">{_words(cell)}</td>' for head, cell in zip(titles, row))


def pdf_writer(sheet: ShoreSheet) -> Callable[[Path], None]:
    """A function that writes A4 pages; it must run on the main thread. OSError where the file cannot be written."""

    def write(path: Path) -> None:
        writer = QPdfWriter(str(path))
        writer.setPageSize(QPageSize(QPageSize.PageSizeId.A4))
        writer.setPageMargins(QMarginsF(*(4 * [MARGIN_MM])), QPageLayout.Unit.Millimeter)
        writer.setResolution(PDF_DPI)
        writer.setTitle(sheet_title(sheet))
        writer.setCreator("Tideleg")
        document, painter = _document(sheet, writer), QPainter()
        if not painter.begin(writer):
            raise OSError(0, tr("the file cannot be written"), str(path))
        for number in range(document.pageCount()):
            if number:
                writer.newPage()
            _draw_page(document, painter, number)
            foot = f"{sheet_title(sheet)}    {number + 1} / {document.pageCount()}"
            painter.drawText(0, round(document.pageSize().height()) + FOOT_PX, foot)
        painter.end()

    return write


def _draw_page(document: QTextDocument, painter: QPainter, number: int) -> None:
    size = document.pageSize()
    painter.save()
    painter.translate(0.0, -number * size.height())
    document.drawContents(painter, QRectF(0.0, number * size.height(), size.width(), size.height()))
    painter.restore()


def _document(sheet: ShoreSheet, writer: QPdfWriter) -> QTextDocument:
    document = QTextDocument()
    document.documentLayout().setPaintDevice(writer)
    document.setPageSize(QSizeF(writer.width(), writer.height()))
    document.setDocumentMargin(0.0)
    document.setDefaultStyleSheet(PDF_STYLE)
    for name in ("swim", "drift"):
        image = _map_image(sheet, with_drift=name == "drift")
        document.addResource(QTextDocument.ResourceType.ImageResource, QUrl(name), image)
    title = escape(sheet_title(sheet))
    body = "".join(_paper_section(part, writer.width()) for part in sheet_parts(sheet))
    head = (
        f'<p><span style="font-size:15pt;font-weight:bold">{title}</span></p>'  # Qt makes a h1 larger than it is told
    )
    document.setHtml(f"<body>{head}<p>{escape(_about(sheet))}</p>{body}</body>")
    return document


def _paper_section(part: Part, width: int) -> str:
    lines = "".join(f"<p>{escape(line)}</p>" for line in part.lines)
    if part.big:
        lines = f'<p><span style="font-size:30pt;font-weight:bold">{escape(part.big)}</span></p>{lines}'
    calls = "".join(
        f'<p><span style="font-size:15pt;font-weight:bold">{escape(number)}</span></p>' for number in part.numbers
    )
    # Qt takes the sizes of pictures for those of a screen.
    wide, high = (round(MAP_SHARE * width * side / WIDTH * SCREEN_DPI / PDF_DPI) for side in (WIDTH, HEIGHT))
    drawn = f'<p align="center"><img src="{part.picture}" width="{wide}" height="{high}"></p>' if part.picture else ""
    heads = "".join(f'<th align="left">{escape(head)}</th>' for head in part.heads)
    rows = "".join("<tr>" + "".join(f"<td>{escape(cell)}</td>" for cell in row) + "</tr>" for row in part.rows)
    rows = f"<thead><tr>{heads}</tr></thead>{rows}" if heads else rows  # a head that every page repeats
    table = f'<table width="100%" border="1" cellspacing="0" cellpadding="5">{rows}</table>' if rows else ""
    new_page = ' style="page-break-before:always"' if part.on_new_page else ""
    inside = f"<h2{new_page}>{escape(part.title)}</h2>{lines}{calls}{drawn}{table}"
    if not part.urgent:
        return inside
    return f'<table width="100%" border="4" cellspacing="0" cellpadding="24"><tr><td>{inside}</td></tr></table>'


def _map_image(sheet: ShoreSheet, *, with_drift: bool) -> QImage:
    try:
        from qgis.PyQt.QtSvg import QSvgRenderer
    except ImportError as error:
        raise SwimPlanError(
            asked=tr("Asked for the sheet as a PDF, and this QGIS has no QtSvg to draw its map"),
            remedy=tr("Install PyQt's QtSvg, or write the sheet as HTML"),
        ) from error
    image = QImage(MAP_PX, int(MAP_PX * HEIGHT / WIDTH), QImage.Format.Format_RGB32)
    image.fill(0xFFFFFFFF)
    painter = QPainter(image)
    QSvgRenderer(QByteArray(sheet_map(sheet, with_drift=with_drift).encode("utf-8"))).render(painter)
    painter.end()
    return image
