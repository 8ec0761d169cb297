"""How sure a plan is: swum by many members, each with his own doubtful pace, path and water."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field

import numpy as np

from ..daylight import daylight_on
from ..results.confidence import Confidence, Ellipse, HomeBy, LatestHome, LegDoubt, StopSpread
from ..water.stream import StoppableStream
from ..words import marked, tr
from .dead_reckoning import Spread, reckoned_places
from .doubts import SEED, Doubts, Members, draw_members
from .drift import Wind
from .drift_areas import drift_areas, wind_words
from .latest_departure import latest_of_each
from .member_swims import HELD_BACK, MembersSwum, quantile, swim_members, water_of
from .request import SwimRequest
from .swim import GridStream, RouteSwum, swim_route, swimmable
from .swum import NEVER_ARRIVES, NO_SINGLE_HEADING, STREAM_UNKNOWN, TOO_STRONG_ACROSS, Line
from .turn_back.hard_stops import hard_stops_of

MEMBERS = 500
REASONS = {
    HELD_BACK: marked("pushed back, set off or too slow on the way"),
    STREAM_UNKNOWN: marked("the stream is not known"),
    TOO_STRONG_ACROSS: marked("the stream across is too strong"),
    NEVER_ARRIVES: marked("no arrival within 12 hours"),
    NO_SINGLE_HEADING: marked("no single heading is found"),
}


@dataclass(frozen=True, kw_only=True)
class Asked:
    """What is asked besides the swim: the doubts, how many members from which seed, and the wind, None if unknown."""

    doubts: Doubts = field(default_factory=Doubts)
    members: int = MEMBERS
    seed: int = SEED
    wind: Wind | None = None


@dataclass(frozen=True, kw_only=True)
class Planned:
    """The swim as planned: arrivals and leaving times (n_stops,), NaN from the first leg on that cannot be swum."""

    swum: RouteSwum
    arrive_s: np.ndarray
    leave_s: np.ndarray

    @classmethod
    def of(cls, request: SwimRequest, is_cancelled: Callable[[], bool]) -> Planned:
        """Swim the route once, as ``plan_swim`` does."""
        depart = np.array([request.clock.seconds(request.depart)])
        swum = swim_route(
            request.stream,
            request.frame,
            request.stops_m,
            request.stays_s,
            depart,
            request.swimmer,
            request.way,
            is_cancelled=is_cancelled,
        )
        lines = [Line(start=start, end=end) for start, end in zip(request.stops_m[:-1], request.stops_m[1:])]
        can = [bool(swimmable(leg, line, request.swimmer)[0]) for leg, line in zip(swum.legs, lines)]
        there = np.logical_and.accumulate([True, *can])
        return cls(
            swum=swum,
            arrive_s=np.where(there, swum.arrive_s[0], np.nan),
            leave_s=np.where(there, swum.leave_s[0], np.nan),
        )


def how_sure(
    request: SwimRequest,
    asked: Asked,
    *,
    progress: Callable[[float], None] | None = None,
    is_cancelled: Callable[[], bool] = bool,
) -> Confidence:
    """Swim the route with members drawn from the doubts, and say how sure the plan is; see ``results.confidence``.

    The same request and seed give the same numbers. A share of n members is within about 1 / sqrt(n) of that of very
    many. Raises StoppedError when stopped.
    """
    tell = progress or (lambda share: None)
    members = draw_members(request.swimmer, asked.doubts, asked.members, asked.seed)
    planned = Planned.of(request, is_cancelled)
    depart_s = float(planned.arrive_s[0])
    swum = swim_members(request, members, depart_s, progress=lambda share: tell(0.4 * share), is_cancelled=is_cancelled)
    ellipses = _ellipses(request, planned, members, is_cancelled)
    tell(0.5)
    warnings = list(request.warnings)
    areas = drift_areas(
        request,
        planned.swum,
        planned.arrive_s,
        planned.leave_s,
        members,
        asked.wind,
        warnings,
        progress=lambda share: tell(0.5 + 0.5 * share),
        is_cancelled=is_cancelled,
    )
    if np.isnan(planned.arrive_s[-1]):
        warnings.append(
            tr("The plan itself cannot be swum: there is no planned return, and so no alarm to be home by.")
        )
    deadline_s, latest = _latest_home(request, is_cancelled)
    return Confidence(
        route=request.route.name,
        swimmer=request.swimmer.name,
        zone=request.clock.zone_name,
        depart=request.clock.moment(depart_s),
        arrive=request.clock.moment(planned.arrive_s[-1]),
        members=asked.members,
        seed=asked.seed,
        doubts=_doubt_words(request, asked.doubts),
        completed_share=float(np.isfinite(swum.arrive_s[:, -1]).mean()),
        home_by=_home_by(request, planned, swum),
        stops=tuple(_stop(request, planned, swum, number, ellipses) for number in range(len(request.stops))),
        legs=tuple(_leg(request, swum, number) for number in range(len(request.stops) - 1)),
        wind=wind_words(asked.wind),
        drift=areas,
        home_deadline=request.clock.moment(deadline_s),
        latest_home=latest,
        warnings=tuple(warnings),
    )


def _ellipses(
    request: SwimRequest, planned: Planned, members: Members, is_cancelled: Callable[[], bool]
) -> list[Ellipse | None]:
    """An ellipse for every stop after the first; None where the plan does not get there or the water is not known."""
    water = GridStream(stream=water_of(request, members), frame=request.frame)
    stops_m, found = request.stops_m, []
    for number, leg in enumerate(planned.swum.legs):
        spread = None
        if np.isfinite(planned.arrive_s[number + 1]):
            line = Line(start=stops_m[number], end=stops_m[number + 1])
            places = reckoned_places(water, line, leg.nodes, members.pace_m_s, is_cancelled=is_cancelled)
            spread = Spread.of(places)
        found.append(None if spread is None else _ellipse(request, spread, stops_m[number + 1]))
    return found


def _ellipse(request: SwimRequest, spread: Spread, stop_m: np.ndarray) -> Ellipse:
    frame = request.frame
    (lon, lat), *ring = frame.to_lonlat(np.vstack([spread.mean_m, spread.ring()])).tolist()
    (long, short), _ = spread.axes
    return Ellipse(
        lon=lon,
        lat=lat,
        off_m=float(np.hypot(*(spread.mean_m - stop_m))),
        east_m2=float(spread.covariance_m2[0, 0]),
        north_m2=float(spread.covariance_m2[1, 1]),
        east_north_m2=float(spread.covariance_m2[0, 1]),
        semi_major_m=float(long),
        semi_minor_m=float(short),
        major_true_deg=float((spread.major_grid_deg + frame.convergence_at(spread.mean_m[0])) % 180.0),
        ring=tuple((lon, lat) for lon, lat in ring),
        unknown_share=spread.unknown_share,
    )


def _stop(
    request: SwimRequest, planned: Planned, swum: MembersSwum, number: int, ellipses: list[Ellipse | None]
) -> StopSpread:
    stop, arrive = request.stops[number], swum.arrive_s[:, number]
    after_min = (arrive[np.isfinite(arrive)] - planned.arrive_s[0]) / 60.0
    moments = {f"p{round(100 * share)}": quantile(arrive, share) for share in (0.1, 0.5, 0.9)}
    return StopSpread(
        number=number,
        name=stop.name,
        lon=stop.lon,
        lat=stop.lat,
        planned=request.clock.moment(planned.arrive_s[number]),
        **{name: request.clock.moment(seconds) for name, seconds in moments.items()},
        arrives_share=len(after_min) / len(arrive),
        mean_min=float(after_min.mean()) if len(after_min) else None,
        sd_min=float(after_min.std()) if len(after_min) else None,
        ellipse=ellipses[number - 1] if number else None,
    )


def _leg(request: SwimRequest, swum: MembersSwum, number: int) -> LegDoubt:
    why = swum.why[swum.failed[:, number], number]
    counts = {words: int(np.sum(why == ending)) for ending, words in REASONS.items()}
    return LegDoubt(
        number=number + 1,
        start_name=request.stops[number].name,
        end_name=request.stops[number + 1].name,
        began=int(swum.began[:, number].sum()),
        failed=len(why),
        reasons=tuple((words, count) for words, count in counts.items() if count),
    )


def _home_by(request: SwimRequest, planned: Planned, swum: MembersSwum) -> tuple[HomeBy, ...]:
    """Home by the alarm, by civil dusk and within the swimmer's hours; who never arrives is not home."""
    home, clock = swum.arrive_s[:, -1], request.clock
    light = daylight_on(request.stops[0].lon, request.stops[0].lat, request.depart, clock)
    dusk_s = np.nan if light.civil_dusk is None else clock.seconds(light.civil_dusk)
    limits = {
        "alarm": planned.arrive_s[-1] + 60.0 * request.settings.alarm_after_min,
        "civil dusk": np.nan if light.always_light else dusk_s,
        "hours": planned.arrive_s[0] + 3600.0 * request.swimmer.max_hours,
    }
    shares = {name: None if np.isnan(by_s) else float(np.mean(home <= by_s)) for name, by_s in limits.items()}
    if not light.always_light and light.civil_dusk is None:
        shares["civil dusk"] = 0.0  # it is dark all day
    return tuple(HomeBy(name=name, moment=clock.moment(by_s), share=shares[name]) for name, by_s in limits.items())


def _latest_home(request: SwimRequest, is_cancelled: Callable[[], bool]) -> tuple[float, tuple[LatestHome, ...]]:
    """Of a group: when each alone and all together leave the last mark to be home by the plan's ``back_by``."""
    if not request.swimmer.members:
        return np.nan, ()
    stops = [stop for stop in hard_stops_of(request, np.nan) if stop.name == "back_by"]
    if not stops:
        return np.nan, ()
    by_s, settings = request.clock.seconds(stops[0].moment), request.settings
    found = latest_of_each(
        GridStream(stream=StoppableStream(stream=request.stream, is_cancelled=is_cancelled), frame=request.frame),
        request.stops_m[-2],
        request.stops_m[-1],
        request.swimmer,
        earliest_s=request.clock.seconds(request.depart),
        by_s=by_s,
        factor=settings.reserve_factor,
        fixed_s=60.0 * settings.reserve_min,
    )
    return by_s, tuple(LatestHome(who=one.who, latest=request.clock.moment(one.latest_s)) for one in found)


def _doubt_words(request: SwimRequest, doubts: Doubts) -> tuple[str, ...]:
    """What the members are drawn from, in words."""
    swimmer = request.swimmer
    water = tuple(
        tr("stream of {name} +-{rate_times:.0f} % and +-{phase_times:.0f} min").format(
            name=one.name,
            rate_times=100.0 * doubts.rate_times * one.rate_uncertainty,
            phase_times=doubts.phase_times * one.phase_uncertainty_s / 60.0,
        )
        for one in (*request.stream.stations, *request.stream.models)
    )
    return (
        tr("+- holds 95 of 100 days: two standard deviations of a normal spread, none beyond three"),
        tr("pace {pace_m_s:g} m/s +-{pace:g} %").format(pace_m_s=swimmer.pace_m_s, pace=100.0 * doubts.pace),
        tr("path factor {path_factor:g} +-{path:g}, never below 1").format(
            path_factor=swimmer.path_factor, path=doubts.path
        ),
        *water,
        tr("all streams are off together, by their own measure"),
    )
