"""The map of the shore contact's sheet as SVG: land, the way swum, straight legs, places and drift areas, north up."""

from __future__ import annotations

from html import escape

import numpy as np

from ..core.geodesy import LocalFrame
from ..core.results.card import distinct_places
from ..core.results.confidence import DriftArea
from ..core.results.shore_sheet import ShoreSheet
from ..words import tr
from .sketch import SCALE_STEPS_M

WIDTH, HEIGHT = 480.0, 400.0  # as wide as a telephone, so that letters stay legible on it
EDGE = 50.0
LEAST_SPAN_M = 400.0
LETTERS = 15.0
NAME_CHARACTERS = 24
SAME = 20.0  # places nearer than that on the picture are one to the eye
LETTER_WIDTH = 0.55  # of a letter's height, on average


def sheet_map(sheet: ShoreSheet, *, with_drift: bool) -> str:
    """One ``<svg>`` element that needs nothing else: the swim, or the areas of drift after it. Names are escaped."""
    areas = [area for area in sheet.drift_after_return if len(area.ring)] if with_drift else []
    drawn = _Drawn(sheet, areas)
    shapes = [drawn.area(ring, "land") for ring in sheet.swim.land_rings]
    shapes += [drawn.area(np.array(area.ring), "drift") for area in areas]
    shapes += [
        drawn.line([(leg.start_lon, leg.start_lat), (leg.end_lon, leg.end_lat)], "leg") for leg in sheet.swim.legs
    ]
    tracks = [[(point.lon, point.lat) for point in leg.track] for leg in sheet.swim.legs]
    shapes += [drawn.line(track, "track") for track in tracks if len(track) > 1]
    shapes += [drawn.area_name(np.array(area.ring), f"{area.after_min:.0f} min") for area in areas]
    places = [(place.name, place.lon, place.lat) for place in distinct_places(sheet.swim)]
    places += [(one.name, one.lon, one.lat) for one in sheet.landings if drawn.holds(one.lon, one.lat)]
    shapes += drawn.places(drawn.apart(places), named=not with_drift)
    label = escape(tr("Map of the drift areas") if with_drift else tr("Map of the swim"))
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH:.0f} {HEIGHT:.0f}" role="img" '
        f'aria-label="{label}">'
        f'<rect width="{WIDTH:.0f}" height="{HEIGHT:.0f}" fill="#ffffff" stroke="#000000"/>'
        f"{''.join(shapes)}{drawn.scale_bar()}{drawn.north()}</svg>"
    )


STYLES = {
    "land": 'fill="#d8d8d8" stroke="#000000" stroke-width="1"',
    "drift": 'fill="none" stroke="#000000" stroke-width="1.6" stroke-dasharray="2 5"',
    "leg": 'fill="none" stroke="#555555" stroke-width="1.4" stroke-dasharray="9 6"',
    "track": 'fill="none" stroke="#000000" stroke-width="3"',
}


class _Drawn:
    """From degrees to the picture's units."""

    def __init__(self, sheet: ShoreSheet, areas: list[DriftArea]) -> None:
        swim = sheet.swim
        lonlat = [(place.lon, place.lat) for place in distinct_places(swim)]
        lonlat += [(point.lon, point.lat) for leg in swim.legs for point in leg.track]
        self._frame = LocalFrame.around(np.array(lonlat))
        lonlat += [place for area in areas for place in area.ring]
        xy = self._frame.to_xy(np.array(lonlat))
        low, high = xy.min(axis=0), xy.max(axis=0)
        self._middle = (low + high) / 2.0
        span = np.maximum(high - low, LEAST_SPAN_M)
        self._m = float(max(span / (np.array([WIDTH, HEIGHT]) - 2.0 * EDGE)))
        self._taken: list[tuple[float, float, float, float]] = []
        self._names: list[tuple[float, float, float, float]] = []

    def _xy(self, lonlat: np.ndarray) -> np.ndarray:
        away = (self._frame.to_xy(lonlat) - self._middle) / self._m
        return np.column_stack([WIDTH / 2.0 + away[:, 0], HEIGHT / 2.0 - away[:, 1]])

    def _points(self, lonlat: np.ndarray) -> str:
        return " ".join(f"{x:.1f},{y:.1f}" for x, y in self._xy(lonlat).tolist())

    def area(self, ring: np.ndarray, kind: str) -> str:
        return f'<polygon points="{self._points(ring)}" {STYLES[kind]}/>'

    def line(self, lonlat: list[tuple[float, float]], kind: str) -> str:
        self._taken += [(x - 3.0, y - 3.0, x + 3.0, y + 3.0) for x, y in self._xy(np.array(lonlat)).tolist()]
        return f'<polyline points="{self._points(np.array(lonlat))}" {STYLES[kind]}/>'

    def holds(self, lon: float, lat: float) -> bool:
        x, y = self._xy(np.array([(lon, lat)]))[0]
        return bool(0.0 < x < WIDTH and 0.0 < y < HEIGHT)

    def apart(self, places: list[tuple[str, float, float]]) -> list[tuple[str, float, float]]:
        """The places, one that is the same on the map under the same name once."""
        kept: dict[str, list[tuple[float, float]]] = {}
        found = []
        for name, lon, lat in places:
            ((x, y),) = self._xy(np.array([(lon, lat)])).tolist()
            if all(np.hypot(x - u, y - v) > SAME for u, v in kept.get(name, [])):
                kept.setdefault(name, []).append((x, y))
                found.append((name, lon, lat))
        return found

    def area_name(self, ring: np.ndarray, words: str) -> str:
        """On the outline, where it covers the least of other names; at the top where there is a choice."""
        spots = sorted(self._xy(ring).tolist(), key=lambda place: place[1])
        size, width = LETTERS - 3.0, LETTER_WIDTH * LETTERS * len(words)
        boxes = [(x - width / 2.0, max(y - size - 4.0, 2.0)) for x, y in spots]
        left, top = min(boxes, key=lambda box: _covered(*box, width, self._names))
        self._names.append((left, top, left + width, top + LETTERS))
        return _text(left + width / 2.0, top + size, words, "middle", size)

    def places(self, places: list[tuple[str, float, float]], *, named: bool) -> list[str]:
        """Spots, and their names where they cover the least of spots and of other names."""
        spots = self._xy(np.array([(lon, lat) for _, lon, lat in places])).tolist()
        self._taken += [(x - 7.0, y - 7.0, x + 7.0, y + 7.0) for x, y in spots]
        drawn = [
            f'<circle cx="{x:.1f}" cy="{y:.1f}" r="4.5" fill="#ffffff" stroke="#000000" stroke-width="2.2"/>'
            for x, y in spots
        ]
        names = [name for name, _, _ in places] if named else []
        return drawn + [self._name(name, x, y) for name, (x, y) in zip(names, spots)]

    def _name(self, name: str, x: float, y: float) -> str:
        name = name if len(name) <= NAME_CHARACTERS else name[: NAME_CHARACTERS - 1] + "\N{HORIZONTAL ELLIPSIS}"
        width = LETTER_WIDTH * LETTERS * len(name)
        corners = [(x + 9.0, y - 0.5 * LETTERS), (x - 9.0 - width, y - 0.5 * LETTERS)]
        corners += [(x - 0.5 * width, y + (8.0 if below else -8.0 - LETTERS)) for below in (True, False)]
        corners += [(left, top + shift) for left, top in corners[:2] for shift in (-LETTERS, LETTERS)]
        left, top = min(corners, key=lambda corner: _covered(*corner, width, self._taken))
        self._taken.append((left, top, left + width, top + LETTERS))
        return _text(left, top + 0.85 * LETTERS, name, "start", LETTERS)

    def scale_bar(self) -> str:
        length = max((step for step in SCALE_STEPS_M if step / self._m <= 140.0), default=SCALE_STEPS_M[0])
        words = f"{length / 1000:g} km" if length >= 1000 else f"{length} m"
        left, right, y = 20.0, 20.0 + length / self._m, HEIGHT - 18.0
        path = f"M{left:.1f} {y - 6:.1f}V{y:.1f}H{right:.1f}V{y - 6:.1f}"
        bar = f'<path d="{path}" fill="none" stroke="#000000" stroke-width="2"/>'
        return bar + _text((left + right) / 2.0, y - 8.0, words, "middle", LETTERS - 3.0)

    def north(self) -> str:
        x, y = WIDTH - 28.0, 18.0
        return f'<path d="M{x} {y}l9 26l-9 -6l-9 6z" fill="#000000"/>' + _text(x, y + 44.0, tr("N"), "middle", LETTERS)


def _covered(left: float, top: float, width: float, taken: list[tuple[float, float, float, float]]) -> float:
    """How much of what is there a name would cover; outside the picture counts most."""
    right, bottom = left + width, top + LETTERS
    outside = max(0.0, 4.0 - left, right - WIDTH + 4.0) * LETTERS + max(0.0, 4.0 - top, bottom - HEIGHT + 4.0) * width
    boxes = ((min(right, r) - max(left, x), min(bottom, b) - max(top, y)) for x, y, r, b in taken)
    return 100.0 * outside + sum(across * up for across, up in boxes if across > 0.0 and up > 0.0)


def _text(x: float, y: float, words: str, anchor: str, size: float) -> str:
    """Words with a white edge, so that they can be read over lines."""
    common = f'x="{x:.1f}" y="{y:.1f}" font-family="sans-serif" font-size="{size:.0f}" text-anchor="{anchor}"'
    edge = f'<text {common} stroke="#ffffff" stroke-width="4" fill="#ffffff" aria-hidden="true">{escape(words)}</text>'
    return f'{edge}<text {common} fill="#000000">{escape(words)}</text>'
