"""What the computing says of a swim is said in the user's language, and the numbers stay the same."""

from __future__ import annotations

import json
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest
from swims import DAY, add_route, invented_bay, moved, swim, swum
from tideleg import translation
from tideleg.core.errors import NaiveTimeError, SwimPlanError
from tideleg.core.results.card import names_a_leg
from tideleg.core.swimmer import Swimmer, group_of, in_words

# English words that stand in none of the German sentences.
ENGLISH = {"the", "is", "you", "not", "known", "leg", "stream", "with", "cannot", "swum", "while", "there"}


@contextmanager
def german() -> Iterator[None]:
    translator = translation.install_translator("de")
    try:
        yield
    finally:
        translation.remove_translator(translator)


@pytest.fixture()
def in_german(qgis_app: object) -> Iterator[None]:
    with german():
        yield


def sentences(report: dict[str, Any]) -> list[str]:
    flags = [flag[key] for flag in report["flags"] for key in ("message", "brief") if flag.get(key)]
    return [*flags, *report["warnings"], *(leg["reason"] for leg in report["legs"] if leg["reason"])]


def numbers(report: dict[str, Any]) -> str:
    legs = [{key: value for key, value in leg.items() if not isinstance(value, str)} for leg in report["legs"]]
    kinds = [(flag["kind"], flag["severity"], flag["leg"]) for flag in report["flags"]]
    return json.dumps([legs, kinds, report["feasible"]])


@pytest.mark.parametrize("depart", [f"{DAY}T10:00", f"{DAY}T20:30", "2027-09-26T10:00"])
def test_a_swim_is_told_in_german_with_the_same_numbers(qgis_app, tmp_path: Path, depart: str) -> None:
    plan = invented_bay(tmp_path / "bay.gpkg")
    add_route(plan, "Far", moved(0, 0), moved(3000, 900), moved(0, 0))
    asked = {"ROUTE": "Far", "DEPART": depart}
    for name in ("english", "german"):
        (tmp_path / name).mkdir()
    english = swum(plan, tmp_path / "english", **asked)
    with german():
        told = swum(plan, tmp_path / "german", **asked)
    assert numbers(told) == numbers(english)
    assert sentences(english) and len(sentences(told)) == len(sentences(english))
    left = [one for one in sentences(told) if ENGLISH & set(one.lower().replace(".", " ").replace(",", " ").split())]
    assert left == []


def test_a_refusal_names_layer_and_value_in_german(in_german, tmp_path: Path) -> None:
    plan = invented_bay(tmp_path / "bay.gpkg")
    ran = swim(plan, tmp_path, ROUTE="Nirgends", DEPART=f"{DAY}T10:00")
    assert not ran.ok
    assert "Verlangt ist die Route „Nirgends“" in ran.said


def test_a_time_without_a_zone_and_a_wrong_pace_are_refused_in_german(in_german) -> None:
    assert str(NaiveTimeError(value="10:00")).startswith("Die Zeit 10:00 hat keine Zeitzone.")
    with pytest.raises(SwimPlanError, match="Schwimmer „Runa“ hat pace_m_s = 9"):
        Swimmer(name="Runa", pace_m_s=9.0)


def test_a_group_is_named_and_measured_in_german(in_german) -> None:
    both = group_of([Swimmer(name="Runa"), Swimmer(name="Ivo", pace_m_s=0.4)])
    assert both.name == "Runa und Ivo"
    assert both.set_by == ("Tempo 0.4 m/s und Wegfaktor 1.1 durch Ivo",)
    assert in_words(both, "max_hours") == "4 Stunden"


def test_a_sentence_that_names_its_leg_is_known_in_german(in_german) -> None:
    assert names_a_leg("Abschnitt 2: Strom hochgerechnet") and not names_a_leg("Tempo und Grenzen sind geschätzt")


def test_english_is_back_when_the_plugin_goes(qgis_app) -> None:
    with german():
        pass
    assert in_words(Swimmer(), "max_hours") == "4 hours" and names_a_leg("Leg 2: stream extrapolated")
