"""How sure a plan is, as layers: the stops with their arrivals, ellipses of dead reckoning, areas of drift."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime

from qgis.core import QgsGeometry, QgsPointXY, QgsWkbTypes
from qgis.PyQt.QtCore import QCoreApplication

from ..core.results.card import clock_nearest
from ..core.results.confidence import Confidence, Ring
from ..core.results.report import unwrapped
from ..core.words import spoken
from .plan_layers import OutputLayer, Row, both_times


def _polygon(ring: Ring) -> QgsGeometry | None:
    """The ring as a polygon, drawn on beyond the date line; None where there is none or it has no size."""
    if len(ring) < 4:
        return None
    polygon = QgsGeometry.fromPolygonXY([[QgsPointXY(lon, lat) for lon, lat in unwrapped(list(ring))]])
    return polygon if polygon.area() > 0.0 else None


ARRIVAL_COLUMNS = (
    ("number", "whole"),
    ("name", "text"),
    *((name, "time") for name in ("planned", "p10", "p50", "p90")),
    *((f"{name}_local", "text") for name in ("planned", "p10", "p50", "p90")),
    ("arrives_share", "number"),
    ("mean_min", "number"),
    ("sd_min", "number"),
    ("off_m", "number"),
    ("semi_major_m", "number"),
    ("semi_minor_m", "number"),
    ("major_true_deg", "number"),
)


def _arrival_rows(found: Confidence) -> Iterator[Row]:
    """The stops in swimming order; what is not known is NULL."""
    for stop in found.stops:
        place = QgsGeometry.fromPointXY(QgsPointXY(stop.lon, stop.lat))
        ellipse = {
            name: getattr(stop.ellipse, name, None)
            for name in ("off_m", "semi_major_m", "semi_minor_m", "major_true_deg")
        }
        copied = {name: getattr(stop, name) for name in ("number", "name", "arrives_share", "mean_min", "sd_min")}
        times = both_times(planned=stop.planned, p10=stop.p10, p50=stop.p50, p90=stop.p90)
        yield place, {**copied, **ellipse, **times}


ELLIPSE_COLUMNS = (
    ("number", "whole"),
    ("name", "text"),
    ("off_m", "number"),
    ("semi_major_m", "number"),
    ("semi_minor_m", "number"),
    ("major_true_deg", "number"),
    ("east_m2", "number"),
    ("north_m2", "number"),
    ("east_north_m2", "number"),
    ("unknown_share", "number"),
)


def _ellipse_rows(found: Confidence) -> Iterator[Row]:
    """One polygon for every stop at which dead reckoning ends somewhere."""
    for stop in found.stops:
        if stop.ellipse is not None:
            values = {name: getattr(stop.ellipse, name) for name, _ in ELLIPSE_COLUMNS[2:]}
            yield _polygon(stop.ellipse.ring), {"number": stop.number, "name": stop.name, **values}


DRIFT_COLUMNS = (
    ("stopped", "time"),
    ("stopped_local", "text"),
    ("place", "text"),
    ("counted_from", "text"),
    ("after_min", "number"),
    ("moment", "time"),
    ("moment_local", "text"),
    ("farthest_m", "number"),
    ("ashore_share", "number"),
    ("unknown_share", "number"),
)


def _drift_rows(found: Confidence) -> Iterator[Row]:
    """The widest areas first, so that the others are drawn on top; one that is not known has no polygon."""
    tr = QCoreApplication.translate
    for area in sorted(found.drift, key=lambda area: (area.start is not None, -area.after_min)):
        counted = tr("Tideleg", "the planned return") if area.start is None else tr("Tideleg", "the stop")
        copied = {name: getattr(area, name) for name in ("place", "after_min", "farthest_m", "ashore_share")}
        yield (
            _polygon(area.ring),
            {
                **copied,
                "counted_from": counted,
                "unknown_share": area.unknown_share,
                **both_times(stopped=area.start, moment=area.moment),
            },
        )


ARRIVALS = OutputLayer(
    parameter="ARRIVALS", wkb_type=QgsWkbTypes.Type.Point, columns=ARRIVAL_COLUMNS, rows=_arrival_rows
)
ELLIPSES = OutputLayer(
    parameter="ELLIPSES", wkb_type=QgsWkbTypes.Type.Polygon, columns=ELLIPSE_COLUMNS, rows=_ellipse_rows
)
DRIFT = OutputLayer(parameter="DRIFT", wkb_type=QgsWkbTypes.Type.Polygon, columns=DRIFT_COLUMNS, rows=_drift_rows)


def confidence_sentences(found: Confidence) -> list[str]:
    """What the members are drawn from, the chances, the arrivals, the legs that fail, and the wind, in words."""
    tr = QCoreApplication.translate
    home = tr("Tideleg", "Home by {} ({}): {} of 100.")
    arrival = tr("Tideleg", "{}: planned {}, 10 of 100 by {}, half by {}, 90 of 100 by {}.")
    fails = tr("Tideleg", "Leg {} to {} fails in {} of {}: {}.")
    latest = tr("Tideleg", "{} leaves the last mark by {}.")
    return [
        tr("Tideleg", "{} members. {}.").format(found.members, "; ".join(found.doubts)),
        *(
            home.format(one.name, _clock(one.moment), _of_hundred(one.share))
            for one in found.home_by
            if one.share is not None
        ),
        *(
            arrival.format(stop.name, *(_clock(getattr(stop, name)) for name in ("planned", "p10", "p50", "p90")))
            for stop in found.stops[1:]
        ),
        *(
            fails.format(
                leg.number, leg.end_name, leg.failed, leg.began, "; ".join(f"{spoken(w)} {n}" for w, n in leg.reasons)
            )
            for leg in found.legs
            if leg.failed
        ),
        *(latest.format(one.who, _clock(one.latest)) for one in found.latest_home),
        found.wind,
    ]


def _of_hundred(share: float) -> str:
    """A share of 100, which is neither 0 nor 100 unless it is so of all members."""
    return f"{min(max(round(100.0 * share), 1 if share > 0.0 else 0), 99 if share < 1.0 else 100)}"


def _clock(moment: datetime | None) -> str:
    return QCoreApplication.translate("Tideleg", "never") if moment is None else clock_nearest(moment)
