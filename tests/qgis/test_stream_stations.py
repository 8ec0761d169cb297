"""Every form of stream station, from the plan's tables to the legs of a planned swim."""

from __future__ import annotations

import math
import shutil
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest
from swims import (
    DAY,
    KNOT_M_S,
    LAT,
    LON,
    Heard,
    add_route,
    add_swimmer,
    edited,
    flags_of,
    moved,
    new_plan,
    offset,
    point,
    swim,
    swum,
    utc,
)
from tideleg.plan_package.store import append_rows

TIDES = (("03:50", 0.5, "LW"), ("10:00", 4.5, "HW"), ("16:10", 0.5, "LW"), ("22:20", 4.5, "HW"))
MARK = moved(0.0, 800.0)
SET = 70.0


@pytest.fixture(scope="module")
def still_water(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A swim of 800 m to the north at 10:00 by a swimmer of 0.6 m/s; a tide of 4 m with high water at 10:00."""
    path = new_plan(tmp_path_factory.mktemp("forms") / "plan.gpkg")
    add_route(path, "R", (LON, LAT), MARK)
    add_swimmer(path, 0.6)
    rows = [{"port": "P", "time": utc(when), "height_m": height, "kind": kind} for when, height, kind in TIDES]
    append_rows(path, "tides", [(None, row) for row in rows])
    return path


@pytest.fixture
def plan(still_water: Path, tmp_path: Path) -> Path:
    return Path(shutil.copy(still_water, tmp_path / "plan.gpkg"))


def add_station(plan: Path, form: str, station: str = "A", at: tuple[float, float] = (LON, LAT), **values: Any) -> None:
    append_rows(plan, "stream_stations", [(point(at), {"station": station, "form": form, "port": "P", **values})])


def add(plan: Path, table: str, *rows: dict[str, Any]) -> None:
    append_rows(plan, table, [(None, row) for row in rows])


def leg(plan: Path, tmp_path: Path, depart: str = f"{DAY}T10:00") -> dict[str, Any]:
    return swum(plan, tmp_path, ROUTE="R", DEPART=depart)["legs"][0]


def hourly(plan: Path, form: str = "hourly", spring: float = 0.8, neap: float = 0.4, **values: Any) -> None:
    add_station(plan, form, reference="HW", **values)
    rates = {"station": "A", "set_deg": SET, "spring_kn": spring, "neap_kn": neap}
    add(plan, "stream_rates", *({**rates, "hour": hour} for hour in range(-6, 7)))


def events(plan: Path, station: str = "A", flood_kn: float = 0.6, **values: Any) -> None:
    """Slack 07:00, maximum flood 10:15, slack 13:30, maximum ebb 16:45, slack 20:00."""
    add_station(plan, "events", station=station, at=moved(30_000.0, 0.0) if station != "A" else (LON, LAT), **values)
    moments = (("07:00", 0), ("10:15", flood_kn), ("13:30", 0), ("16:45", -flood_kn), ("20:00", 0))
    add(
        plan,
        "stream_events",
        *(
            {"station": station, "time": utc(when), "kind": "max" if rate else "slack", "rate_kn": rate}
            for when, rate in moments
        ),
    )


def check(got: dict[str, Any], rate_kn: float, towards: float = SET, within: float = 0.006) -> None:
    assert got["stream_kn"] == pytest.approx(rate_kn, abs=within)
    assert got["stream_set_deg"] == pytest.approx(towards, abs=0.6)


def test_rates_at_two_coefficients_by_the_days_own(plan: Path, tmp_path: Path) -> None:
    hourly(plan, "coefficients")
    add(plan, "tide_coefficients", {"port": "P", "time": utc("10:00"), "coefficient": 70.0})
    check(leg(plan, tmp_path), 0.6)


def test_station_without_a_port_takes_the_only_ports_coefficients(plan: Path, tmp_path: Path) -> None:
    hourly(plan, "coefficients")
    edited(plan, "stream_stations", {"port": None})
    add(plan, "tide_coefficients", {"port": "P", "time": utc("10:00"), "coefficient": 70.0})
    check(leg(plan, tmp_path), 0.6)


def test_without_a_coefficient_the_rate_at_95_is_used_and_flagged(plan: Path, tmp_path: Path) -> None:
    hourly(plan, "coefficients")
    report = swum(plan, tmp_path, ROUTE="R", DEPART=f"{DAY}T10:00")
    check(report["legs"][0], 0.8)
    assert any("tide coefficients" in warning for warning in report["warnings"])
    assert flags_of(report, "stream_extrapolated")


def test_hourly_table_from_low_water(plan: Path, tmp_path: Path) -> None:
    add_station(plan, "hourly", reference="LW", spring_range_m=4.0, neap_range_m=2.0)
    rows = ({"station": "A", "hour": hour, "set_deg": SET, "spring_kn": 0.1 * (hour + 6)} for hour in range(-6, 7))
    add(plan, "stream_rates", *rows)
    # 14:10 is two hours before low water: 0.1 x 4 there, and more with every minute.
    got = leg(plan, tmp_path, f"{DAY}T14:10")
    assert 0.4 < got["stream_kn"] < 0.46


def test_events_take_their_sets_from_the_station(plan: Path, tmp_path: Path) -> None:
    events(plan, flood_set_deg=SET, ebb_set_deg=250.0)
    check(leg(plan, tmp_path), 0.6)


def test_subordinate_place_by_differences_and_ratios(plan: Path, tmp_path: Path) -> None:
    """The reference's flood of 2 kn at 10:15 comes an hour later and at 0.3 of its rate."""
    events(plan, "Far", 2.0, flood_set_deg=10.0, ebb_set_deg=190.0)
    hour = dict.fromkeys(("slack_before_flood_min", "flood_minutes", "slack_before_ebb_min", "ebb_minutes"), 60.0)
    ratios = {"flood_speed_ratio": 0.3, "ebb_speed_ratio": 0.5}
    add_station(
        plan,
        "subordinate",
        reference_station="Far",
        flood_set_deg=SET,
        ebb_set_deg=250.0,
        reach_m=3000.0,
        **hour,
        **ratios,
    )
    edited(plan, "stream_stations", {"confidence": "official"}, "\"station\" = 'A'")
    check(leg(plan, tmp_path, f"{DAY}T11:00"), 0.6)


@pytest.mark.parametrize("field", ["flood_minutes", "ebb_speed_ratio", "flood_set_deg", "reference_station"])
def test_subordinate_place_that_lacks_something_is_refused_by_the_field(plan: Path, tmp_path: Path, field: str) -> None:
    events(plan, "Far", 2.0, flood_set_deg=10.0, ebb_set_deg=190.0)
    names = ("slack_before_flood_min", "flood_minutes", "slack_before_ebb_min", "ebb_minutes")
    values = {**dict.fromkeys(names, 0.0), "flood_speed_ratio": 1.0, "ebb_speed_ratio": 1.0}
    values |= {"flood_set_deg": 70.0, "ebb_set_deg": 250.0, "reference_station": "Far", field: None}
    add_station(plan, "subordinate", **values)
    ran = swim(plan, tmp_path, ROUTE="R", DEPART=f"{DAY}T10:00")
    assert not ran.ok
    assert f"field '{field}'" in ran.said and "stream_stations" in ran.said


def test_slack_offset_and_one_rate(plan: Path, tmp_path: Path) -> None:
    """Slack 200 min after each water: 07:10 and 13:20, so 0.6 kn at 10:15."""
    add_station(
        plan,
        "slack_offset",
        slack_offset_min=200.0,
        spring_kn=0.6,
        spring_range_m=4.0,
        flood_set_deg=SET,
        ebb_set_deg=250.0,
    )
    check(leg(plan, tmp_path), 0.6)
    check(leg(plan, tmp_path, f"{DAY}T16:10"), 0.6, 250.0)


def test_series(plan: Path, tmp_path: Path) -> None:
    add_station(plan, "series")
    rows = ({"station": "A", "time": utc(f"{hour:02}:00"), "set_deg": SET, "rate_kn": 0.5} for hour in (9, 10, 11))
    add(plan, "stream_series", *rows)
    check(leg(plan, tmp_path), 0.5)


def test_harmonic_constants(plan: Path, tmp_path: Path) -> None:
    """A mean alone, of 0.5 kn; M2 beside it makes the stream of two half-days differ."""
    add_station(plan, "harmonic")
    east, north = (0.5 * KNOT_M_S * part(math.radians(SET)) for part in (math.sin, math.cos))
    mean = {"station": "A", "constituent": "Z0", "u_phase_deg": 0.0, "v_phase_deg": 0.0}
    add(plan, "stream_constants", {**mean, "u_amplitude_m_s": east, "v_amplitude_m_s": north})
    check(leg(plan, tmp_path), 0.5)
    swing = {"u_amplitude_m_s": 0.1, "u_phase_deg": 0.0, "v_amplitude_m_s": 0.0, "v_phase_deg": 0.0}
    add(plan, "stream_constants", {"station": "A", "constituent": "M2", **swing})
    rates = [leg(plan, tmp_path, f"{DAY}T{clock}")["stream_kn"] for clock in ("06:00", "09:00", "12:00")]
    assert max(rates) - min(rates) > 0.05


def test_share_of_the_wind(plan: Path, tmp_path: Path) -> None:
    """5 % of 10 kn from 230, turned 20 to the right: 0.5 kn towards 070."""
    add_station(plan, "wind", wind_percent=5.0, wind_turn_deg=20.0)
    winds = ({"time": utc(clock), "from_deg": 230.0, "speed_kn": 10.0} for clock in ("09:00", "12:00"))
    add(plan, "winds", *winds)
    check(leg(plan, tmp_path), 0.5)


def test_wind_that_is_not_known_leaves_the_stream_unknown(plan: Path, tmp_path: Path) -> None:
    add_station(plan, "wind", wind_percent=5.0)
    report = swum(plan, tmp_path, ROUTE="R", DEPART=f"{DAY}T10:00")
    assert report["legs"][0]["stream_kn"] is None
    assert flags_of(report, "stream_unknown")
    assert any("winds table is empty" in warning for warning in report["warnings"])


@pytest.mark.parametrize(("form", "field"), [("wind", "wind_percent"), ("slack_offset", "slack_offset_min")])
def test_form_that_lacks_its_number_is_refused_by_the_field(plan: Path, tmp_path: Path, form: str, field: str) -> None:
    add_station(plan, form)
    ran = swim(plan, tmp_path, ROUTE="R", DEPART=f"{DAY}T10:00")
    assert not ran.ok
    assert f"field '{field}'" in ran.said and "empty is not 0" in ran.said


def test_unknown_constituent_is_refused_by_name(plan: Path, tmp_path: Path) -> None:
    add_station(plan, "harmonic")
    amounts = dict.fromkeys(("u_amplitude_m_s", "u_phase_deg", "v_amplitude_m_s", "v_phase_deg"), 0.0)
    add(plan, "stream_constants", {"station": "A", "constituent": "XX9", **amounts})
    ran = swim(plan, tmp_path, ROUTE="R", DEPART=f"{DAY}T10:00")
    assert not ran.ok and "XX9" in ran.said and "stream_stations" in ran.said


def test_rate_factor_multiplies_and_a_positive_shift_is_later(plan: Path, tmp_path: Path) -> None:
    events(plan, flood_set_deg=SET, ebb_set_deg=250.0)
    before = leg(plan, tmp_path, f"{DAY}T08:00")["stream_kn"]
    edited(plan, "stream_stations", {"rate_factor": 1.5, "shift_min": 45.0})
    assert leg(plan, tmp_path, f"{DAY}T08:45")["stream_kn"] == pytest.approx(1.5 * before, abs=0.012)


def add_drift(
    plan: Path, start: str, minutes: float, towards: float, rate_kn: float, station: str | None = "A"
) -> None:
    end_lon, end_lat = offset(towards, rate_kn * KNOT_M_S * 60.0 * minutes)
    times = {"time": utc(start), "end_time": utc(start) + timedelta(minutes=minutes)}
    places = {"lon": LON, "lat": LAT, "end_lon": end_lon, "end_lat": end_lat}
    add(plan, "drifts", {**times, **places, "station": station})


def test_a_timed_drift_corrects_its_station_for_the_day_and_says_so(plan: Path, tmp_path: Path) -> None:
    hourly(plan, spring_range_m=4.0, neap_range_m=2.0)
    add_drift(plan, "08:00", 20.0, SET, 1.0)
    heard = Heard()
    ran = swim(plan, tmp_path, heard, ROUTE="R", DEPART=f"{DAY}T10:00")
    assert ran.ok, ran.said
    check(ran.report["legs"][0], 1.0)
    assert any("1 timed drift: rates x 1.25" in warning for warning in ran.report["warnings"])


def test_drifts_of_another_day_and_of_no_station_correct_nothing(plan: Path, tmp_path: Path) -> None:
    hourly(plan, spring_range_m=4.0, neap_range_m=2.0)
    add_drift(plan, "08:00", 20.0, SET, 1.0, station=None)
    end = {"time": utc("08:00", "2027-06-02"), "end_time": utc("08:20", "2027-06-02")}
    add_places = {"lon": LON, "lat": LAT, "end_lon": LON + 0.01, "end_lat": LAT, "station": "A"}
    add(plan, "drifts", {**end, **add_places})
    check(leg(plan, tmp_path), 0.8)


def test_a_drift_against_the_table_changes_nothing_and_says_why(plan: Path, tmp_path: Path) -> None:
    hourly(plan, spring_range_m=4.0, neap_range_m=2.0)
    add_drift(plan, "08:00", 20.0, SET + 180.0, 1.0)
    report = swum(plan, tmp_path, ROUTE="R", DEPART=f"{DAY}T10:00")
    check(report["legs"][0], 0.8)
    assert any("do not correct" in warning and "250 at 1.0 kn" in warning for warning in report["warnings"])


def test_an_absurd_drift_is_refused_by_its_row(plan: Path, tmp_path: Path) -> None:
    hourly(plan, spring_range_m=4.0, neap_range_m=2.0)
    add_drift(plan, "08:00", -5.0, SET, 1.0)
    ran = swim(plan, tmp_path, ROUTE="R", DEPART=f"{DAY}T10:00")
    assert not ran.ok and "'drifts', row 1" in ran.said


@pytest.mark.parametrize(
    ("table", "row"),
    [
        ("stream_series", {"time": utc("10:00"), "set_deg": 70.0, "rate_kn": 1.0}),
        ("stream_constants", {"constituent": "M2"}),
        (
            "drifts",
            {"time": utc("10:00"), "end_time": utc("10:20"), "lon": LON, "lat": LAT, "end_lon": LON, "end_lat": LAT},
        ),
    ],
)
def test_row_whose_station_is_not_there_is_refused(plan: Path, tmp_path: Path, table: str, row: dict[str, Any]) -> None:
    hourly(plan, spring_range_m=4.0, neap_range_m=2.0)
    add(plan, table, {**row, "station": "Nowhere"})
    ran = swim(plan, tmp_path, ROUTE="R", DEPART=f"{DAY}T10:00")
    assert not ran.ok and "Nowhere" in ran.said and table in ran.said


def test_an_hour_given_twice_is_refused_by_the_row_of_its_table(plan: Path, tmp_path: Path) -> None:
    hourly(plan, spring_range_m=4.0, neap_range_m=2.0)
    add(plan, "stream_rates", {"station": "A", "hour": 2, "set_deg": SET, "spring_kn": 0.1, "neap_kn": 0.1})
    ran = swim(plan, tmp_path, ROUTE="R", DEPART=f"{DAY}T10:00")
    assert not ran.ok and "stream_rates" in ran.said and "row 14" in ran.said and "hour" in ran.said


def test_confidence_in_the_users_own_words_counts_as_a_table(plan: Path, tmp_path: Path) -> None:
    hourly(plan, spring_range_m=4.0, neap_range_m=2.0, confidence="a neighbour's notes")
    check(leg(plan, tmp_path), 0.8)
