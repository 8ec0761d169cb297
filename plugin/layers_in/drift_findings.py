"""What timed drifts say: their sets and rates, and how the plan's stations would be corrected by them that day."""

from __future__ import annotations

from collections import defaultdict
from pathlib import Path
from typing import Any

from ..core.clock import PlanClock
from ..core.errors import SwimPlanError
from ..core.quantities import SECONDS_PER_MINUTE, knots_from_m_s
from ..core.water.timed_drift import TimedDrift, day_correction
from ..plan_package.store import read_settings
from ..words import tr
from .drifts_in import correction_words
from .water_in import water_at


def drift_findings(plan: Path, drifts: list[dict[str, Any]]) -> list[dict[str, Any]]:
    """For each drift its set and rate, and for each station the correction that its drifts give or why they give none.

    The correction comes on top of what the plan's station and its drifts of that day correct already.
    """
    if not drifts:
        return []
    clock = PlanClock(start=drifts[0]["time"], zone_name=read_settings(plan)["zone"])
    found, groups = [], defaultdict(list)
    for values in drifts:
        drift = TimedDrift(
            start_s=clock.seconds(values["time"]),
            end_s=clock.seconds(values["end_time"]),
            **{name: values[name] for name in ("lon", "lat", "end_lon", "end_lat")},
        )
        rate_kn = float(knots_from_m_s(drift.rate_m_s))
        found.append(
            {
                "time": values["time"].isoformat(),
                "set_deg": round(drift.set_deg, 1),
                "rate_kn": round(rate_kn, 3),
                "words": tr("Drift: set {set_deg:03d}, {rate_kn:.2f} kn").format(
                    set_deg=round(drift.set_deg) % 360, rate_kn=rate_kn
                ),
            }
        )
        if values["station"]:
            groups[values["station"]].append(drift)
    if groups:
        field, _frame = water_at(plan, drifts[0]["lon"], drifts[0]["lat"], clock, [])
        streams = {station.name: station.stream for station in field.stations}
        found += [_correction(name, group, streams) for name, group in groups.items() if name in streams]
    return found


def _correction(name: str, drifts: list[TimedDrift], streams: dict[str, Any]) -> dict[str, Any]:
    try:
        correction = day_correction(tuple(drifts), streams[name])
    except SwimPlanError as error:
        words = tr("Station '{name}' is not corrected: {error}").format(name=name, error=error)
        return {"station": name, "rate_factor": None, "shift_min": None, "words": words}
    shift_min = round(correction.shift_s / SECONDS_PER_MINUTE, 1) if correction.shift_known else None
    return {
        "station": name,
        "rate_factor": round(correction.rate_factor, 3),
        "shift_min": shift_min,
        "misfit_kn": round(float(knots_from_m_s(correction.misfit_m_s)), 3),
        "words": tr("Station '{name}', {drifts}").format(name=name, drifts=correction_words(correction, drifts)),
    }
