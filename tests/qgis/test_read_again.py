"""The same table read again in another zone: refused by its row, and the plan stays as it was."""

from __future__ import annotations

from pathlib import Path

import pytest
from swims import DAY, LAT, LON, Heard, Ran, digest, new_plan, run
from tideleg.processing.readstreams import ReadStreams
from tideleg.processing.readtides import ReadTides

WATERS = f"{DAY} 02:00 0.7 L\n{DAY} 08:00 3.9 H\n{DAY} 14:15 0.9 L\n{DAY} 20:30 3.7 H\n"
HEIGHTS = "Time,Height (m)\n" + "".join(
    f"{DAY} {n // 2:02}:{30 * (n % 2):02},{abs(n - 24) / 8:.2f}\n" for n in range(48)
)
SERIES = f"time,set,rate (kn)\n{DAY} 09:00,70,0.4\n{DAY} 10:00,70,0.6\n{DAY} 11:00,72,0.7\n"
EVENTS = f"time,event,rate (kn)\n{DAY} 07:10,slack,\n{DAY} 10:15,flood,0.6\n{DAY} 13:20,slack,\n"


@pytest.fixture
def plan(tmp_path: Path, qgis_app) -> Path:
    return new_plan(tmp_path / "bay.gpkg", ZONE="Europe/Lisbon")


def tides(plan: Path, text: str, zone: str, **parameters: object) -> Ran:
    asked = {"PLAN": str(plan), "REPORT": str(plan.parent / "report.json"), "UNITS": "m", "PORT": "Kettle"}
    return run(ReadTides().create(), {**asked, "TEXT": text, "ZONE": zone, **parameters}, Heard())


def streams(plan: Path, text: str, zone: str) -> Ran:
    asked = {"PLAN": str(plan), "REPORT": str(plan.parent / "report.json"), "STATION": "A"}
    return run(
        ReadStreams().create(), {**asked, "POINT": f"{LON},{LAT} [EPSG:4326]", "TEXT": text, "ZONE": zone}, Heard()
    )


@pytest.mark.parametrize("preview", [False, True])
def test_waters_in_another_zone_are_refused(plan: Path, preview: bool) -> None:
    assert tides(plan, WATERS, "UTC").ok
    before = digest(plan)
    ran = tides(plan, WATERS, "Europe/London", PREVIEW=preview)
    assert not ran.ok
    assert "row 1, field 'time'" in ran.said
    assert "The plan has a LW 60 min later" in ran.said
    assert "Correct ZONE" in ran.said
    assert digest(plan) == before


def test_another_port_and_the_same_waters_again_are_not(plan: Path) -> None:
    assert tides(plan, WATERS, "UTC").ok
    assert tides(plan, WATERS, "Europe/London", PORT="Cove").ok
    assert tides(plan, WATERS, "UTC").results["ALREADY_THERE"] == 4


def test_a_series_of_heights_in_another_zone_is_refused(plan: Path) -> None:
    assert tides(plan, HEIGHTS, "UTC", FORM="series").ok
    before = digest(plan)
    ran = tides(plan, HEIGHTS, "UTC+05:45", FORM="series")
    assert not ran.ok
    assert "a series goes in even steps" in ran.said
    assert digest(plan) == before


@pytest.mark.parametrize(("text", "zone"), [(SERIES, "UTC+5:30"), (EVENTS, "Europe/London")])
def test_streams_in_another_zone_are_refused(plan: Path, text: str, zone: str) -> None:
    assert streams(plan, text, "UTC").ok
    before = digest(plan)
    late = (
        text
        if zone == "Europe/London"
        else text.replace("09:00", "15:00").replace("10:00", "16:00").replace("11:00", "17:00")
    )
    ran = streams(plan, late, zone)
    assert not ran.ok
    assert "Was the same table read before in another zone" in ran.said
    assert "station 'A'" in ran.said
    assert digest(plan) == before
