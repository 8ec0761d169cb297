"""Charted restrictions read as rules for a swimmer."""

import csv
from pathlib import Path

import pytest
from tideleg.core.chart.restrictions import CATREA, RESTRN, STRICTEST_FIRST, Restriction, restriction_of, season_of

CATALOGUE = Path("/usr/share/gdal/s57expectedinput.csv")  # GDAL's copy of the IHO S-57 lists of attribute values
ATTRIBUTE_NUMBER = {"RESTRN": "131", "CATREA": "56"}  # IHO S-57 Edition 3.1, Appendix A, Chapter 2


@pytest.mark.parametrize(
    ("restrn", "catrea", "rule"),
    [
        # Meanings of the codes: IHO S-57 Edition 3.1, Appendix A, Chapter 2, RESTRN (131) and CATREA (56).
        ((1,), (), "no_anchoring"),
        ((2,), (), "no_anchoring"),
        ((3,), (), "no_spearing"),
        ((4,), (), "no_spearing"),
        ((7,), (), "no_entry"),
        ((8,), (), "no_entry"),
        ((11,), (), "no_spearing"),
        ((12,), (), "no_spearing"),
        ((13,), (), "caution"),
        ((14,), (), "caution"),
        ((), (18,), "loaded_gun_ban"),
        ((), (), "caution"),
    ],
)
def test_rule_of_a_code(restrn, catrea, rule):
    assert restriction_of(restrn, catrea).rule == rule


def test_strictest_rule_wins_and_all_is_said():
    found = restriction_of([2, 4, 8, 16], [4])
    assert found.rule == "no_entry"
    assert found.words == (
        "anchoring restricted, fishing restricted, entry restricted, discharging prohibited, nature reserve"
    )


def test_order_of_codes_does_not_matter():
    assert restriction_of([8, 1]).rule == restriction_of([1, 8]).rule == "no_entry"
    assert restriction_of([1], [22]).rule == "no_spearing"


def test_unknown_code_is_caution_and_is_said():
    assert restriction_of([99]) == Restriction(rule="caution", words="RESTRN code 99, not known here")


def test_every_code_has_a_rule_of_the_plan():
    assert {rule for table in (RESTRN, CATREA) for _, rule in table.values()} == set(STRICTEST_FIRST)


@pytest.mark.skipif(not CATALOGUE.exists(), reason="GDAL's catalogue is not at its Debian place")
@pytest.mark.parametrize(("name", "table"), [("RESTRN", RESTRN), ("CATREA", CATREA)])
def test_words_are_those_of_the_catalogue(name, table):
    with CATALOGUE.open(encoding="latin-1", newline="") as rows:
        listed = {int(row[1]): row[2] for row in csv.reader(rows) if row[0] == ATTRIBUTE_NUMBER[name]}
    assert len(listed) >= 15
    assert {code: table[code][0] for code in listed} == listed


@pytest.mark.parametrize(
    ("charted", "from_time", "to_time", "words"),
    [
        ({}, "", "", ""),
        ({"persta": "--0401", "perend": "--0930"}, "--0401", "--0930", ""),
        ({"persta": "--11", "perend": "--02"}, "--1101", "--0229", ""),
        ({"persta": "--11--", "perend": "--02--"}, "--1101", "--0229", ""),
        ({"persta": "20250401", "perend": "20250930"}, "--0401", "--0930", ""),
        ({"datsta": "20250401", "datend": "20250930"}, "2025-04-01", "2025-09-30", ""),
        ({"datend": "20250930"}, "", "2025-09-30", ""),
        (
            {"persta": "--0401", "perend": "--0930", "datend": "20271231"},
            "--0401",
            "--0930",
            "DATEND 20271231",
        ),
        ({"persta": "--0401"}, "", "", "PERSTA --0401"),
        ({"persta": "---15", "perend": "--0930"}, "", "", "PERSTA ---15, PEREND --0930"),
        ({"persta": "--1301", "perend": "--0930"}, "", "", "PERSTA --1301, PEREND --0930"),
        ({"persta": "--0631", "perend": "--0930"}, "", "", "PERSTA --0631, PEREND --0930"),
        ({"datsta": "2025"}, "", "", "DATSTA 2025"),
    ],
)
def test_when_an_area_is_in_force(charted, from_time, to_time, words):
    season = season_of(**charted)
    assert (season.from_time, season.to_time, season.words) == (from_time, to_time, words)


def test_rule_outside_the_plan_is_refused():
    with pytest.raises(ValueError, match="no_entry"):
        Restriction(rule="no_swimming", words="")
