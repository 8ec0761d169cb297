"""Where everything of a day's picture lies: its lanes, and the one axis of time that they share."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from functools import cached_property, lru_cache

from qgis.PyQt.QtCore import QRectF

from ..core.clock import later
from ..core.results.day_strip import DayStrip
from .day_labels import letters
from .day_legend import ROW_LINES, legend_places
from .day_words import legend_hatches, notes

LEAST_SIZE, MOST_SIZE = 9, 12  # of letters, in the picture's units of 1/96 inch
WIDE = 520.0  # from here on lanes are named in the margin
LEAST_LANE = 3.0  # lines high: below it the stream stands alone
NAMED_LANE = 4.5  # from here on a curve leaves a line at the top of its lane for the name
# What is added around the lanes while each curve keeps so many lines.
ADDED = {"swims": 3.6, "legend": 4.2, "notes": 4.2}
QUARTER = timedelta(minutes=15)  # every zone's offset is a multiple of it
STEPS_H = (1, 2, 3, 4, 6, 12)


@dataclass(frozen=True, kw_only=True)
class HourTick:
    """A full hour of the day's clock: seconds from the start, and the hour; 24 at a midnight that ends the day."""

    seconds: float
    hour: int


def letters_size(width: float, height: float) -> int:
    """The size of the letters in a picture so large."""
    return int(min(max(round(min(width / 62.0, height / 25.0)), LEAST_SIZE), MOST_SIZE))


@lru_cache(maxsize=256)
def _wrapped(size: int, note: str, width: float) -> tuple[str, ...]:
    """A note in lines: kept, since measuring words takes most of the time of a picture that is dragged on."""
    return tuple(letters(size).wrap(note, width, 3))


class DayAxis:
    """Lanes and time axis of a day's picture in a rectangle; the picture and whoever drags on it use the same.

    Units are those of the painter. ``lanes`` has the rectangle of each lane that there is room for: title, times,
    departures, swims, stream, tide, light, hours, legend, notes; those from times to hours span the day from left to
    right. ``glance`` is the low form for one of many days: stream and departures alone, the date in the margin.
    """

    def __init__(self, rect: QRectF, strip: DayStrip, *, glance: bool = False) -> None:
        self.rect = QRectF(rect)
        self.strip = strip
        self.glance = glance
        self.size = LEAST_SIZE if glance else letters_size(self.rect.width(), self.rect.height())
        self.letters = letters(self.size)
        self.bold = letters(self.size, True)
        self.line = self.letters.line_mm
        self.named = self.rect.width() >= WIDE or glance
        edge = 0.6 * self.size
        margin = (11.0 if glance else 10.2 if self.named else 2.4) * self.size
        self.inner = self.rect.adjusted(edge, 0.25 * edge if glance else edge, -1.2 * edge, -0.25 * edge)
        self.plot = self.inner.adjusted(margin, 0.0, 0.0, 0.0)
        self.lanes = self._glance_lanes() if glance else self._lanes()

    def x_of(self, moment: datetime) -> float:
        """Where an aware moment lies; beyond the plot's edges for one of another day."""
        return self.x_of_s(self.strip.seconds(moment))

    def x_of_s(self, seconds: float) -> float:
        """Where so many seconds after the day's start lie."""
        return self.plot.left() + self.plot.width() * seconds / self.strip.length_s

    def moment_at(self, x: float) -> datetime:
        """The moment at an x, in the day's zone; beyond the plot's edges the day's start or end."""
        share = min(max((x - self.plot.left()) / self.plot.width(), 0.0), 1.0)
        return self.strip.moment(share * self.strip.length_s)

    @cached_property
    def ticks(self) -> tuple[HourTick, ...]:
        """The full hours of the day's clock: one that repeats comes twice, one that is skipped does not come."""
        strip, found = self.strip, []
        for moment in self._quarters:
            if moment.minute == 0:
                at_end = strip.seconds(moment) == strip.length_s and moment.hour == 0
                found.append(HourTick(seconds=strip.seconds(moment), hour=24 if at_end else moment.hour))
        return tuple(found)

    @cached_property
    def changes(self) -> tuple[tuple[datetime, datetime], ...]:
        """The last quarter before, and the first moment after, each change of the clocks."""
        pairs = zip(self._quarters, self._quarters[1:])
        return tuple((a, b) for a, b in pairs if a.utcoffset() != b.utcoffset())

    @cached_property
    def step_h(self) -> int:
        """Every how many hours one is written, so that they stay apart."""
        room = 1.9 * self.letters.width("00")
        hour = self.plot.width() * 3600.0 / self.strip.length_s
        return next((step for step in STEPS_H if step * hour >= room), STEPS_H[-1])

    @cached_property
    def _quarters(self) -> tuple[datetime, ...]:
        """The full quarters of an hour in the day, in its zone."""
        strip = self.strip
        first = strip.moment(0.0)
        past = timedelta(minutes=first.minute % 15, seconds=first.second, microseconds=first.microsecond)
        moment = later(first, QUARTER - past if past else past)
        found = []
        while strip.seconds(moment) <= strip.length_s:
            found.append(moment)
            moment = later(moment, QUARTER)
        return tuple(found)

    def legend_rows(self) -> list[list[tuple[str, float]]]:
        """(hatch, x) of the legend's entries, row by row."""
        return legend_places(legend_hatches(self.strip), self.inner, self.size)

    def note_lines(self) -> tuple[str, ...]:
        """The notes that there is room for, in lines of the picture's width."""
        room = self.lanes["notes"].height() + 0.5 * self.line if "notes" in self.lanes else 0.0
        return next((lines for lines in self._notes_kept if len(lines) * self.line <= room), ())

    @cached_property
    def _notes_kept(self) -> tuple[tuple[str, ...], ...]:
        """The lines of all notes, and of fewer and fewer of them down to the last one."""
        wrapped = [_wrapped(self.size, note, self.inner.width()) for note in notes(self.strip)]
        fewer = [wrapped[:count] + wrapped[-1:] for count in range(len(wrapped) - 1, -1, -1)]
        return tuple(tuple(line for lines in kept for line in lines) for kept in fewer)

    def leaves_name_room(self, lane: QRectF) -> bool:
        """Whether a curve leaves the top line of its lane free for the lane's name."""
        return not self.named and lane.height() >= NAMED_LANE * self.line

    def _lanes(self) -> dict[str, QRectF]:
        """Rows from the top down; what is not needed most is added while the two curves keep a good height."""
        line, gap = self.line, 0.35 * self.line
        fixed = {
            "title": 1.15 * line,
            "times": 1.15 * line,
            "departures": 1.5 * line,
            "light": 1.15 * line,
            "hours": 1.2 * line,
        }
        curves, extra = ("stream", "tide"), {}
        spare = self.inner.height() - sum(fixed.values()) - 5.0 * gap
        legend = len(self.legend_rows()) * ROW_LINES * line
        # Also under a planned departure that cannot be swum: nothing may jump while it is dragged.
        swims = 1.1 * line if self.strip.windows or self.strip.planned else 0.0
        # Of the notes all that there is room for: the windows' own sentences go before the last one does.
        noted = [("notes", len(lines) * line) for lines in self._notes_kept]
        for name, height in [("swims", swims), ("legend", legend), *noted]:
            if height and name not in extra and spare - height - gap >= 2.0 * ADDED[name] * line:
                extra[name] = height
                spare -= height + gap
        if spare < 2.0 * LEAST_LANE * line:  # rather one lane that can be read
            curves = ("stream",)
        each = max(spare / len(curves), 0.0)
        heights = {**fixed, **extra, **{name: each for name in curves}}
        order = ("title", "times", "departures", "swims", "stream", "tide", "light", "hours", "legend", "notes")
        joined = {"times", "light", *(["departures"] if "swims" in heights else [])}
        return self._stacked([name for name in order if name in heights], heights, gap, joined)

    def _glance_lanes(self) -> dict[str, QRectF]:
        fixed = {"times": 1.1 * self.line, "departures": 1.1 * self.line, "hours": 1.2 * self.line}
        heights = {**fixed, "stream": max(self.inner.height() - sum(fixed.values()) - 0.3 * self.line, 0.0)}
        return self._stacked(["times", "departures", "stream", "hours"], heights, 0.3 * self.line, {"times", "stream"})

    def _stacked(self, order: list[str], heights: dict[str, float], gap: float, joined: set[str]) -> dict[str, QRectF]:
        lanes: dict[str, QRectF] = {}
        y = self.inner.top()
        for name in order:
            across = self.inner if name in ("title", "legend", "notes") else self.plot
            lanes[name] = QRectF(across.left(), y, across.width(), heights[name])
            y += heights[name] + (0.0 if name in joined else gap)
        return lanes
