"""The second language: every text has its German words, they fit the English, and QGIS's own language decides."""

from __future__ import annotations

import ast
import re
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
import tideleg
from desk import Desk, flush_deletions
from qgis.core import QgsApplication, QgsSettings
from qgis.PyQt.QtCore import QCoreApplication
from tideleg import translation

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "tools"))

import strings  # noqa: E402

PLACEHOLDER = re.compile(r"\{[^{}]*\}")
LANGUAGES = [pytest.param(language, id=language) for language in strings.LANGUAGES]


def tr(text: str) -> str:
    return QCoreApplication.translate("Tideleg", text)


@pytest.fixture(scope="module")
def gathered() -> dict[str, list[str]]:
    return strings.gathered()


@pytest.fixture()
def in_german(qgis_app: object) -> Iterator[None]:
    translator = translation.install_translator("de")
    yield
    translation.remove_translator(translator)


# ---------------------------------------------------------------- the code
@pytest.mark.parametrize(("name", "tree"), list(strings.sources()), ids=[name for name, _ in strings.sources()])
def test_each_text_that_is_shown_can_be_translated(name: str, tree: ast.Module) -> None:
    assert strings.faults(name, tree) == []


@pytest.mark.parametrize(
    ("code", "fault"),
    [
        ('def f(self):\n    self.button.setText("Open")', "'Open' is not translated"),
        ('def f(self):\n    return QPushButton("Open")', "'Open' is not translated"),
        ('def f(self):\n    self.x.setText(f"{count} rows")', "' rows' is not translated"),
        ('def f(self):\n    self.x.setText("On" if on else tr("Off"))', "'On' is not translated"),
        ('def f(self):\n    bar.pushMessage("Done")', "'Done' is not translated"),
        ('def f(self):\n    self.x.setText("{} rows".format(3))', "'{} rows' is not translated"),
        ('def f(self):\n    raise SwimPlanError(asked="No day", remedy=tr("Give one"))', "'No day' is not translated"),
        ('def f(self):\n    self.addParameter(QgsProcessingParameterFile("PLAN", "Plan"))', "'Plan' is not translated"),
        ('def displayName(self):\n    return "Plan swim"', "'Plan swim' is not translated"),
        ('def f(self):\n    return tr(f"{count} rows")', "only a plain text"),
        ("def f(self, words):\n    return tr(words)", "only a plain text"),
        ('TITLE = tr("Legs")', "before the language is known"),
    ],
)
def test_what_would_stay_english_is_found(code: str, fault: str) -> None:
    found = strings.faults("dock/x.py", ast.parse(code))
    assert len(found) == 1 and fault in found[0]


@pytest.mark.parametrize(
    "code",
    [
        'def f(self):\n    self.x.setText(tr("Open"))',
        'def f(self):\n    self.x.setText(f"{speed:.2f} m/s")',
        'def f(self):\n    self.x.setSuffix(" kn")',
        'def f(self):\n    self.setObjectName("TidelegLegs")',
        'def f(self):\n    QAction(QIcon("/x.svg"), f"{name}…", parent)',
        "def f(self, field):\n    return schema_words(field.help)",
        "def f(painter):\n    painter.translate(0.0, 2.0)",
        'def f(self):\n    self.addParameter(QgsProcessingParameterFile("PLAN", self._tr("Plan"), extension="gpkg"))',
        'def f(self):\n    super().__init__("Tideleg", parent)',
        'def tr(text):\n    return QCoreApplication.translate("Tideleg", text)',
    ],
)
def test_what_may_stand_there_passes(code: str) -> None:
    assert strings.faults("dock/x.py", ast.parse(code)) == []


def test_words_are_gathered_under_whatever_name_they_are_asked_for() -> None:
    tree = ast.parse('tr("One")\nself._tr("Two")\nwords = QCoreApplication.translate\nwords("Tideleg", "Three")')
    assert strings.words_in(tree) == ["One", "Two", "Three"]


def test_the_words_of_the_schema_are_gathered_too(gathered) -> None:
    assert "plan_package/schema.py" in gathered["Charted depth (m)"]
    assert {"High water", "Fairway", "Least ground speed (m/s)"} <= set(gathered)


# ---------------------------------------------------------------- the files
@pytest.mark.parametrize("language", LANGUAGES)
def test_every_text_of_the_code_is_translated_and_no_other(language: str, gathered) -> None:
    known = strings.read_ts(strings.ts_file(language))
    assert [text for text in gathered if text not in known] == [], "run ./run strings, then translate what is new"
    assert [text for text in known if text not in gathered] == [], "run ./run strings"


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_translation_keeps_what_is_filled_in_and_how_it_is_laid_out(language: str) -> None:
    wrong = []
    for text, words in strings.read_ts(strings.ts_file(language)).items():
        same_places = sorted(PLACEHOLDER.findall(text)) == sorted(PLACEHOLDER.findall(words))
        same_shape = text.count("\n") == words.count("\n") and bool(text.startswith(" ")) == words.startswith(" ")
        same_end = text.endswith(" ") == words.endswith(" ") and text.endswith("…") == words.endswith("…")
        same_keys = text.replace("&&", "").count("&") == words.replace("&&", "").count("&")
        filters = re.findall(r"\*\.\w+", text) == re.findall(r"\*\.\w+", words)
        if not (same_places and same_shape and same_end and same_keys and filters):
            wrong.append(text)
    assert wrong == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_is_filled_in_without_a_name_comes_in_the_same_order(language: str) -> None:
    """Python fills {} from left to right, so a translation may not change their order; formats show where it has."""
    for text, words in strings.read_ts(strings.ts_file(language)).items():
        assert unnamed(words) == unnamed(text), text


def unnamed(text: str) -> list[str]:
    """What is filled in without a name: ``{}`` and ``{:.1f}``, not ``{rate_kn:.1f}``."""
    return [one for one in PLACEHOLDER.findall(text) if not re.match(r"\{[a-z_]\w*[!:}]", one)]


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_file_that_qgis_loads_says_what_the_translators_file_says(language: str) -> None:
    known = strings.read_ts(strings.ts_file(language))
    translator = translation.install_translator(language)
    stale = [text for text, words in known.items() if tr(text) != words]
    translation.remove_translator(translator)
    assert known and stale == [], "run ./run strings"


def test_the_terms_of_the_trade_are_those_of_german_charts_and_tables(in_german) -> None:
    """As the German hydrographic office's tables and INT 1 have them; from memory."""
    terms = {
        "High water": "Hochwasser",
        "Low water": "Niedrigwasser",
        "Slack": "Stauwasser",
        "Charted depth (m)": "Kartentiefe (m)",
        "Soundings": "Lotungen",
        "Secondary port": "Anschlussort",
        "Constituent": "Teiltide",
        "Spring range (m)": "Springtidenhub (m)",
        "Neap range (m)": "Nipptidenhub (m)",
    }
    assert {text: tr(text) for text in terms} == terms
    assert "Missweisung" in tr("M is magnetic: variation {variation}, {model}, {day}.")


# ---------------------------------------------------------------- the plugin's life
@pytest.mark.parametrize(
    ("locale", "file"),
    [
        ("de", "tideleg_de.qm"),
        ("de_AT", "tideleg_de.qm"),
        ("de-CH", "tideleg_de.qm"),
        ("de_DE.UTF-8", "tideleg_de.qm"),
        ("en", None),
        ("en_GB", None),
        ("xx", None),
        ("", None),
        ("C", None),
    ],
)
def test_a_locale_finds_its_language_and_an_unknown_one_stays_english(locale: str, file: str | None) -> None:
    found = translation.file_for(locale)
    assert (found.name if found else None) == file


def test_each_language_that_is_gathered_can_be_loaded() -> None:
    assert {path.stem for path in translation.FOLDER.glob("*.qm")} == {f"tideleg_{one}" for one in strings.LANGUAGES}


@pytest.fixture()
def german_qgis(qgis_app: object) -> Iterator[None]:
    """QGIS told to speak German, as its options dialog does it."""
    settings = QgsSettings()
    before = {key: settings.value(key) for key in ("locale/overrideFlag", "locale/userLocale")}
    settings.setValue("locale/overrideFlag", True)
    settings.setValue("locale/userLocale", "de")
    yield
    for key, value in before.items():
        settings.remove(key) if value is None else settings.setValue(key, value)


def test_the_plugin_speaks_qgiss_language_while_it_is_loaded_and_leaves_none_behind(german_qgis) -> None:
    assert QgsApplication.locale() == "de"
    desk = Desk()
    for _ in range(3):
        plugin = tideleg.classFactory(desk)
        plugin.initGui()
        assert "Tideleg-Handbuch" in [action.text() for action in desk.menu.actions()]
        assert "Tour planen" in {algorithm.displayName() for algorithm in plugin.provider.algorithms()}
        plugin.unload()
        assert tr("Legs") == "Legs"
    desk.window.deleteLater()
    flush_deletions()


def test_without_a_desktop_processing_speaks_it_too(german_qgis) -> None:
    plugin = tideleg.classFactory(None)
    plugin.initProcessing()
    try:
        assert plugin.provider.longName() == tr("Tideleg swim planning") != "Tideleg swim planning"
    finally:
        plugin.unload()
    assert tr("Tideleg swim planning") == "Tideleg swim planning"
