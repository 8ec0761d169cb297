"""A group swims: several names of the swimmers table in planswim's SWIMMER."""

from __future__ import annotations

from pathlib import Path

import pytest
from swims import LAT, LON, add_constant_stream, add_route, add_swimmer, flags_of, new_plan, offset, swim, swum

ROUTE = ((LON, LAT), offset(0.0, 900.0), (LON, LAT))


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    made = new_plan(tmp_path / "plan.gpkg")
    add_route(made, "Out", *ROUTE)
    add_swimmer(made, 0.75, name="Runa", range_m=1500.0)
    add_swimmer(made, 0.55, name="Odd", range_m=4000.0, max_hours=0.5)
    add_constant_stream(made, 0.1, 90.0)
    return made


def test_a_group_goes_at_the_pace_of_the_slowest_and_keeps_the_tightest_limits(plan: Path, tmp_path: Path) -> None:
    ran = swim(plan, tmp_path, DEPART="2027-06-05T10:00", SWIMMER="Runa; Odd")
    assert ran.ok, ran.said
    together, slowest = ran.report, swum(plan, tmp_path, DEPART="2027-06-05T10:00", SWIMMER="Odd")
    assert together["swimmer"] == "Runa and Odd"
    assert together["total_min"] == slowest["total_min"]
    # 1.8 km is over Runa's range and takes longer than Odd's hours.
    assert flags_of(together, "over_range") and flags_of(together, "over_time")
    assert not flags_of(slowest, "over_range")
    (said,) = [words for words in together["warnings"] if "slowest sets the pace" in words]
    assert "pace 0.55 m/s and path factor 1 by Odd" in said and "range 1500 m by Runa" in said


def test_a_name_of_a_group_that_is_not_in_the_table_is_refused_by_name(plan: Path, tmp_path: Path) -> None:
    ran = swim(plan, tmp_path, DEPART="2027-06-05T10:00", SWIMMER="Runa;Nobody")
    assert not ran.ok and "'Nobody'" in ran.said and "Runa, Odd" in ran.said


def test_empty_and_repeated_names_make_no_group_and_a_name_with_a_semicolon_is_itself(
    plan: Path, tmp_path: Path
) -> None:
    assert swum(plan, tmp_path, DEPART="2027-06-05T10:00", SWIMMER="Runa; ;Runa;")["swimmer"] == "Runa"
    add_swimmer(plan, 0.6, name="Runa;Odd")
    assert swum(plan, tmp_path, DEPART="2027-06-05T10:00", SWIMMER="Runa;Odd")["swimmer"] == "Runa;Odd"


def test_a_pace_given_is_the_groups(plan: Path, tmp_path: Path) -> None:
    ran = swim(plan, tmp_path, DEPART="2027-06-05T10:00", SWIMMER="Runa;Odd", PACE=0.65)
    (said,) = [words for words in ran.report["warnings"] if "slowest sets the pace" in words]
    assert "pace 0.65 m/s as given" in said and "by Odd" in said
    assert ran.report["total_min"] < swum(plan, tmp_path, DEPART="2027-06-05T10:00", SWIMMER="Odd")["total_min"]
