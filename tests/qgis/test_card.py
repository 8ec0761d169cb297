"""The wet card as a real layout, a real PDF and real pixels."""

import re
from dataclasses import replace
from itertools import combinations

import numpy as np
import pytest
from plans import make_plan, with_legs, with_turn_backs, with_ways_home
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsLayoutExporter,
    QgsLayoutItemLabel,
    QgsLayoutItemPage,
    QgsLayoutItemPolygon,
    QgsLayoutItemScaleBar,
    QgsLayoutSize,
    QgsPrintLayout,
    QgsProject,
)
from qgis.PyQt.QtCore import QRectF
from qgis.PyQt.QtGui import QFontMetricsF, QImage
from tideleg.cards import card_flags, card_foot
from tideleg.cards.block import Item, stacked
from tideleg.cards.card_templates import CardError
from tideleg.cards.card_text import card_text
from tideleg.cards.paper import BIG, BIG_BOLD, SMALL, Paper
from tideleg.cards.ways_home import late_ways
from tideleg.cards.wet_card import CardLook, card_layout, write_card
from tideleg.core.errors import SwimPlanError
from tideleg.core.results.card import clock_up, position_text
from tideleg.core.results.flag import Flag
from tideleg.core.results.transits import Transit

LONG = "The very long slipway below the old light where nobody lands any more"
PLANS = {
    "two legs": make_plan(),
    "six legs": make_plan(legs=6),
    "twelve legs, the tenth not swimmable": make_plan(legs=12, unswimmable=(10,)),
    "twenty legs": make_plan(legs=20),
    "nothing known": make_plan(bare=True),
    "five headings a leg": make_plan(legs=3, headings_per_leg=5),
    "thirty headings a leg": make_plan(legs=6, headings_per_leg=30),
    "long names": make_plan(legs=5, names=(LONG, LONG, LONG + " at all", "[% 40 + 2 %]", "W" * 200)),
    "date line, south": make_plan(legs=4, lon=179.998, lat=-47.98, zone="Pacific/Auckland"),
    "70 N": make_plan(legs=4, lon=-9.0, lat=70.0, zone="UTC"),
    "many flags": make_plan(
        flags=tuple(
            Flag(kind="channel", severity="warn", message=f"Mind gut {n}, " + "it is deep, " * 20, points=((0.0, 0.0),))
            for n in range(12)
        )
    ),
}
PLANS |= {
    "turn backs": with_turn_backs(make_plan(legs=4)),
    "turn backs of twelve legs": with_turn_backs(make_plan(legs=12)),
    "turn backs, long names": with_turn_backs(make_plan(legs=3, names=(LONG, LONG)), else_exit=LONG, exit=LONG),
    "no turn back is safe": with_turn_backs(make_plan(legs=3), latest_leave=None, latest_planned_exit=None, exit=None),
}
RIGHT_TO_LEFT = ("שוברת הגלים הישנה", "رصيف الصيادين القديم", "חוף 12 (צפון)")
PLANS["ways home"] = with_ways_home(with_turn_backs(make_plan(legs=3)))
PLANS["ways home, long names"] = with_ways_home(PLANS["turn backs, long names"], exit=LONG)
PLANS["right to left"] = with_ways_home(
    with_turn_backs(
        make_plan(legs=3, names=("שוברת הגלים הישנה", "رصيف الصيادين القديم", "חוף 12 (צפון)")), else_exit="رصيف"
    ),
    exit="رصيف",
)
PAPERS = ("A6", "A5", "A4")
# These are longer than two cards of A6 with letters that can be read; they are refused.
NOT_ON_A6 = {
    "twelve legs, the tenth not swimmable",
    "twenty legs",
    "turn backs of twelve legs",
}
MM, DPI = 25.4, 100


class Drawn:
    """A card with the pixels of each side (height, width, 3)."""

    def __init__(self, plan, paper):
        self.plan, self.card = plan, card_layout(plan, CardLook(paper=paper))
        self.layout = self.card.layout
        self.pages = [self._pixels(page) for page in range(self.card.sides)]

    def _pixels(self, page):
        image = QgsLayoutExporter(self.layout).renderPageToImage(page, dpi=DPI)
        image = image.convertToFormat(QImage.Format.Format_RGB32)
        raw = np.array(image.constBits().asarray(image.sizeInBytes()), dtype=np.uint8)
        return raw.reshape(image.height(), image.width(), 4)[:, :, :3].astype(int)

    @property
    def sketch_side(self):
        return self.pages[self.card.sketch.page()]


CARDS = [(name, paper) for name in PLANS for paper in PAPERS if paper != "A6" or name not in NOT_ON_A6]


@pytest.fixture(scope="module")
def cards(qgis_app):
    """Every plan on every paper, made when it is first asked for; the name alone is its card on A4."""
    made = {}

    def card(name, paper="A4"):
        if (name, paper) not in made:
            made[name, paper] = Drawn(PLANS[name], paper)
        return made[name, paper]

    return card


def every_card(function):
    return pytest.mark.parametrize(("name", "paper"), CARDS)(function)


def every_sketch(function):
    sketched = [(name, paper) for name, paper in CARDS if paper == "A4" or name == "two legs"]
    sketched.append(("date line, south", "A5"))
    return pytest.mark.parametrize(("name", "paper"), sketched)(function)


def paper_of(layout):
    page = QgsLayoutItemPage(layout)
    page.setPageSize(QgsLayoutSize(210.0, 297.0))
    layout.pageCollection().addPage(page)
    return Paper(layout)


def labels_of(layout):
    return [item for item in layout.items() if isinstance(item, QgsLayoutItemLabel)]


def texts_of(layout):
    """The texts in the order they are read."""
    labels = sorted(labels_of(layout), key=lambda label: (label.page(), label.pagePos().y(), label.pagePos().x()))
    return [label.currentText() for label in labels]


def on_a4(plan):
    return card_layout(plan, CardLook(paper="A4")).layout


def font_of(label):
    return label.textFormat().font() if hasattr(label, "setTextFormat") else label.font()


def cap_mm(label):
    font = font_of(label)
    size = label.textFormat().size() if hasattr(label, "setTextFormat") else font.pointSizeF()
    font.setPixelSize(1000)
    return QFontMetricsF(font).capHeight() / 1000.0 * size * MM / 72.0


def letters_of(label):
    tall = cap_mm(label) > 5.0
    return (BIG_BOLD if font_of(label).bold() else BIG) if tall else SMALL


def ink(label):
    """The box of the capitals on their page, in millimetres, narrowed so that touching is not overlapping."""
    letters = letters_of(label)
    font = font_of(label)
    font.setPixelSize(1000)
    width = QFontMetricsF(font).horizontalAdvance(label.currentText()) / 1000.0 * letters.em_mm
    top = label.pagePos().y() + letters.ascent_mm - letters.cap_mm
    return QRectF(label.pagePos().x(), top, width, letters.cap_mm).adjusted(0.2, 0.2, -0.2, -0.2)


@every_card
def test_a_card_has_four_sides_at_most_and_nothing_leaves_them(cards, name, paper):
    card = cards(name, paper)
    assert 1 <= card.card.sides <= 4
    for label in labels_of(card.layout):
        size = card.layout.pageCollection().page(label.page()).pageSize()
        page = QRectF(4.5, 4.5, size.width() - 9.0, size.height() - 9.0)  # what most printers can print
        assert page.contains(ink(label)), label.currentText()


@every_card
def test_no_words_lie_over_others(cards, name, paper):
    boxes = [(label.currentText(), label.page(), ink(label)) for label in labels_of(cards(name, paper).layout)]
    for (one, page, box), (other, second_page, second) in combinations(boxes, 2):
        assert page != second_page or not box.intersects(second), (one, other)


@every_card
def test_headings_and_times_are_seven_millimetres_high_and_the_rest_four(cards, name, paper):
    for label in labels_of(cards(name, paper).layout):
        text = label.currentText()
        is_time = re.fullmatch(r"\d\d:\d\d", text)
        is_heading = re.fullmatch(r"\d{3}M", text) and font_of(label).bold()
        assert cap_mm(label) >= (7.0 if is_time or is_heading else 4.0), text


@every_card
def test_the_card_is_black_and_white_and_no_side_is_blank(cards, name, paper):
    card = cards(name, paper)
    for side, pixels in enumerate(card.pages):
        assert (pixels[:, :, 0] == pixels[:, :, 1]).all() and (pixels[:, :, 1] == pixels[:, :, 2]).all()
        grey = pixels.mean(axis=2)
        assert (grey < 64).mean() > 0.005
        # Nothing pale: what is neither black nor white is the edge of a letter; the hatch is thinner than a dot.
        if card.card.sketch is not None and card.card.sketch.page() == side:
            map_pixels(card, grey)[:] = 255.0
        assert ((grey > 96) & (grey < 176)).sum() < 0.5 * (grey < 96).sum()


@every_card
def test_every_side_says_which_it_is_and_that_it_is_predicted(cards, name, paper):
    card = cards(name, paper)
    for side in range(card.card.sides):
        texts = [label.currentText() for label in labels_of(card.layout) if label.page() == side]
        assert "PREDICTED" in texts and ("NOT FEASIBLE" in texts) == (not card.plan.feasible)
        assert f"{side + 1}/{card.card.sides}" in texts


def map_pixels(card, pixels=None):
    chart, pixels = card.card.sketch, card.sketch_side if pixels is None else pixels
    scale = DPI / MM
    x, y, w, h = chart.pagePos().x(), chart.pagePos().y(), chart.rect().width(), chart.rect().height()
    inset = 1.0
    rows = slice(int((y + inset) * scale), int((y + h - inset) * scale))
    return pixels[rows, int((x + inset) * scale) : int((x + w - inset) * scale)]


@every_sketch
def test_the_sketch_is_not_blank(cards, name, paper):
    assert (map_pixels(cards(name, paper)) < 128).any(axis=2).sum() > 300


def test_the_sketch_hatches_land_lightly(cards):
    def darkness_of_the_west(name):
        inside = map_pixels(cards(name))
        return (inside[:, : inside.shape[1] // 10] < 250).any(axis=2).mean()

    assert 0.05 < darkness_of_the_west("two legs") < 0.5
    assert darkness_of_the_west("nothing known") < 0.02  # a name at most


@every_sketch
def test_the_sketch_is_north_up_in_metres_and_holds_the_swim(cards, name, paper):
    card = cards(name, paper)
    chart = card.card.sketch
    assert chart.mapRotation() == 0.0 and "tmerc" in chart.crs().toProj()
    assert card.plan.total_m / 8.0 < max(chart.extent().width(), chart.extent().height()) < 40.0 * card.plan.total_m


def longest_run(dark):
    """Length of the longest row of True in a row of a grid of truth values."""
    best = 0
    for row in dark:
        edges = np.flatnonzero(np.diff(np.concatenate([[0], row.astype(int), [0]])))
        best = max([best, *(edges[1::2] - edges[::2])])
    return best


@every_sketch
def test_the_scale_bar_is_as_long_as_it_says(cards, name, paper):
    card = cards(name, paper)
    chart, pixels = card.card.sketch, card.sketch_side
    bar = next(item for item in card.layout.items() if isinstance(item, QgsLayoutItemScaleBar))
    scale = DPI / MM
    left, below = chart.pagePos().x(), chart.pagePos().y() + chart.rect().height()
    strip = pixels[int((below + 1.0) * scale) : int((below + 11.0) * scale), int(left * scale) :]
    drawn_mm = longest_run(strip[:, : int(0.7 * chart.rect().width() * scale)].mean(axis=2) < 128) / scale
    metres_a_mm = chart.extent().width() / chart.rect().width()
    said_mm = bar.unitsPerSegment() * bar.numberOfSegments() / metres_a_mm
    assert drawn_mm == pytest.approx(said_mm, abs=0.8)
    assert 0.1 * chart.rect().width() < said_mm < 0.45 * chart.rect().width() and bar.unitLabel() == "m"


@every_card
def test_every_leg_stands_on_the_card(cards, name, paper):
    card = cards(name, paper)
    texts = texts_of(card.layout)
    for leg in card.plan.legs:
        assert str(leg.number) in texts
        if "positions" not in card.card.leaves_out or paper != "A6":
            assert position_text(leg.end_lon, leg.end_lat) in texts
        if leg.feasible:
            assert leg.card_heading in texts


@every_card
def test_what_a_card_leaves_out_stands_on_it(cards, name, paper):
    card = cards(name, paper)
    joined = " ".join(texts_of(card.layout))
    assert bool(card.card.leaves_out) == ("Not on this card: " in joined or "Left out: all but" in joined)
    assert (card.card.sketch is None) == ("sketch" in card.card.leaves_out)


@pytest.mark.parametrize("paper", PAPERS)
def test_ways_home_stand_with_headings_and_minutes_and_end_at_the_first_that_is_too_late(cards, paper):
    texts = texts_of(cards("ways home", paper).layout)
    joined = " ".join(texts)
    stop = PLANS["ways home"].turn_back.stops[-1]
    assert "LATE at Long Sill: to Boat Steps, leave at" in joined
    if paper == "A6":
        assert "Not on this card: sketch, positions, headings home." in joined
    else:
        assert "HOME from Long Sill to Kettle Slip" in joined and "37 min" in joined
    assert {f"{way.leave:%H:%M}" for way in late_ways(stop, 2)} <= set(texts)
    assert texts.count("190M") >= 1 and "not on a bad day, 38 min" in joined
    assert joined.count("TOO LATE") <= 4 and f"{stop.if_late[-1].leave:%H:%M}" not in texts


@pytest.mark.parametrize("name", sorted(NOT_ON_A6))
def test_a_swim_that_is_too_long_for_two_cards_of_a6_is_refused_with_what_to_do(qgis_app, name):
    with pytest.raises(CardError, match="Choose larger paper"):
        card_layout(PLANS[name], CardLook(paper="A6"))


@pytest.mark.parametrize("paper", ["A5", "A4"])
def test_transits_picked_for_a_mark_stand_on_the_card_and_in_its_text(qgis_app, paper):
    about = {"mark": "Gannet Heads", "sensitivity_m": 4.0, "front_m": 700.0, "rear_m": 1500.0}
    line = ((-28.5, 42.4), (-28.5, 42.41), (-28.5, 42.42))
    over = Transit(
        front="Post", rear="Mill", bearing_true_deg=1.0, bearing_mag_deg=4.6, offset_m=2.0, lonlat=line, **about
    )
    beside = replace(over, front="Barn", rear="Spire", bearing_mag_deg=95.2, offset_m=12.4)
    plan = make_plan()
    stops = (plan.stops[0], replace(plan.stops[1], transits=(over, beside, replace(beside, offset_m=-7.0))))
    plan = replace(plan, stops=stops + plan.stops[2:])
    printed = " ".join(texts_of(card_layout(plan, CardLook(paper=paper)).layout))
    for text in (printed, card_text(plan)):
        assert "IN LINE at Gannet Heads, front / rear:" in text and "Post / Mill 005M" in text
        # The line passes 12 m to the right of the mark as one looks at it: the mark lies left of the line.
        assert "Barn / Spire 095M, mark 12 m left of the line" in text and "mark 7 m right of the line" in text


def test_an_order_of_names_from_right_to_left_stays_within_its_column(cards):
    texts = texts_of(cards("right to left", "A6").layout)
    assert any("שוברת" in text for text in texts) and any("رصيف" in text for text in texts)


def test_a_row_reads_as_the_plan_says(cards):
    plan, texts = PLANS["two legs"], texts_of(cards("two legs").layout)
    leg = plan.legs[0]
    assert {"050M", "064M", "09:40", "10:05", "25", "700 m", "0.5", "Gannet Heads"} <= set(texts)
    assert leg.minutes == pytest.approx(24.15, abs=0.01)  # printed as 25


def test_the_foot_says_what_the_water_and_the_light_do(cards):
    texts = texts_of(cards("two legs").layout)
    assert {
        "ALARM (shore contact)",
        "sunset",
        "20:04",
        "HW",
        "14:21",
        "4.1 m",
        "LW",
        "08:12",
        "11:34",
        "0.1 kn",
    } <= set(texts)
    joined = " ".join(texts)
    assert "TURN BACK BY" in joined and "ELSE EXIT" in joined and "PREDICTED" in texts
    assert "variation 4.0°W" in joined and "30 m of line" in joined and "INVENTED - NOT FOR NAVIGATION" in joined
    assert "STOP: Leg 2 enters Tern Reserve" in joined and "Round of the sills, from Kettle Slip" in texts
    assert {"9.4", "9.8", "10.2"} <= set(texts)


def test_the_black_block_says_by_when_to_turn_back_and_which_exit_else(cards):
    texts = texts_of(cards("turn backs").layout)
    (first, *_) = PLANS["turn backs"].turn_back.stops
    assert texts.count("TURN BACK BY") == 3
    assert texts.count("ELSE EXIT Boat Steps") == 3
    # Rounded down, as no limit may be printed later than it is; the large time is that of a bad day.
    assert f"{first.latest_planned_exit_pessimistic:%H:%M}" in texts
    assert f"{first.latest_planned_exit:%H:%M}" not in texts
    assert f"as predicted {first.latest_planned_exit:%H:%M}" in texts and "to Kettle Slip, on a bad day" in texts
    many = texts_of(cards("turn backs of twelve legs").layout)
    assert many.count("TURN BACK BY") == 11


def test_a_turn_back_that_is_none_and_one_before_the_planned_leaving_say_so(qgis_app, cards):
    none = texts_of(cards("no turn back is safe").layout)
    assert {"--:--", "no exit is reached in time", "do not plan to be here"} <= set(none)
    plan = make_plan()
    early = with_turn_backs(plan, latest_planned_exit=None, latest_leave=plan.stops[1].arrive)
    kept = on_a4(early)
    texts = texts_of(kept)
    assert any(text.startswith("ONLY TO Boat Steps") for text in texts)
    leave = early.turn_back.stops[0].leave
    late = next(label for label in labels_of(kept) if label.currentText().startswith("THE PLAN LEAVES TOO LATE:"))
    assert late.currentText().endswith(f"{clock_up(leave)}") and cap_mm(late) > 7.0
    assert texts.index(late.currentText()) < texts.index("TURN BACK BY")
    assert any(text.startswith("as predicted") for text in texts)
    never = with_turn_backs(plan, latest_planned_exit_pessimistic=None, else_exit=None)
    texts = texts_of(on_a4(never))
    assert {"on a bad day not safe at all", "later no exit in time"} <= set(texts)


def test_the_column_of_the_straight_line_is_called_bearing(cards):
    texts = texts_of(cards("two legs").layout)
    assert "bearing" in texts and "track" not in texts


def test_flags_that_read_alike_stand_once_with_their_legs(qgis_app):
    def flag(leg, brief, severity="warn"):
        return Flag(kind="closed_area", severity=severity, message="long", brief=brief, points=((0.0, 0.0),), leg=leg)

    found = (flag(3, "Gull Bank: take care"), flag(1, "Gull Bank: take care"), flag(2, "Leg 2 runs on a rock"))
    found += (flag(2, "Seal Ledge: take care", "note"), flag(None, "Carry 3 L to drink"))
    texts = texts_of(on_a4(make_plan(legs=3, flags=found)))
    assert sorted(text for text in texts if text.startswith(("WARNING", "note"))) == [
        "WARNING: Carry 3 L to drink",
        "WARNING: Leg 2 runs on a rock",
        "WARNING: legs 1 and 3, Gull Bank: take care",
        "note: leg 2, Seal Ledge: take care",
    ]


def test_one_flag_past_the_room_is_one(qgis_app):
    tall = [Flag(kind="channel", severity="note", message=f"Gut {n}.", points=((0.0, 0.0),)) for n in range(4)]
    long = Flag(kind="channel", severity="note", message="It is deep, " * 60, points=((0.0, 0.0),))
    for flags, lines, said in ((tall, 3, "2 more flags: read the report."), (tall[:1] + [long], 2, "1 more flag")):
        layout = QgsPrintLayout(QgsProject.instance())
        stacked(card_flags.flags(make_plan(flags=tuple(flags)), lines, 60, 194.0)).draw(paper_of(layout), 10.0, 10.0)
        assert any(text.startswith(said) for text in texts_of(layout)) and "note: Gut 0." in texts_of(layout)


def test_a_title_that_is_too_long_gives_the_entry_a_line_below(qgis_app):
    plan = replace(make_plan(), route="Round by the Cinder Patch", feasible=False)
    texts = texts_of(on_a4(plan))
    assert "Round by the Cinder Patch" in texts and "NOT FEASIBLE" in texts
    assert any(text.startswith("from Kettle Slip, 2027-06-05") for text in texts)
    assert not any("…" in text for text in texts)


def test_whose_alarm_it_is_stands_in_a_narrow_foot_too(qgis_app):
    layout = QgsPrintLayout(QgsProject.instance())
    stacked(card_foot.foot(make_plan(), 112.0, 2, 4)).draw(paper_of(layout), 10.0, 10.0)
    assert {"shore ALARM", "sunset"} <= set(texts_of(layout))


def test_a_depth_on_arrival_is_a_known_depth(qgis_app):
    plan = make_plan()
    passing = replace(plan, stops=tuple(replace(stop, depth_by_hour=()) for stop in plan.stops))
    unknown = replace(plan, stops=tuple(replace(stop, depth_by_hour=(), depth_now_m=None) for stop in plan.stops))
    assert "Depths not known." not in " ".join(texts_of(on_a4(passing)))
    assert "Depths not known." in " ".join(texts_of(on_a4(unknown)))


def test_the_swing_is_said_in_a_whole_sentence(qgis_app):
    plan = make_plan()
    anchored = replace(plan, stops=tuple(replace(stop, swing_m=28.4) for stop in plan.stops[1:2]))
    joined = " ".join(texts_of(on_a4(anchored)))
    assert "Let out up to 30 m of line. On all of it the float swings: Gannet Heads 28 m." in joined


def test_the_sketch_does_not_look_past_the_cut_end_of_the_land(qgis_app):
    """Land drawn as a band along the south: its lower edge is where the chart was cut, not a shore."""
    made = make_plan(legs=2)
    lons, south = [leg.start_lon for leg in made.legs], made.legs[0].start_lat
    plan = with_legs(made, start_lat=south, end_lat=south, track=())  # due east and back: room above and below
    west, east = min(lons) - 0.1, max(lons) + 0.1
    bands = {}
    for depth in (0.0008, 0.05):
        band = [(west, south), (east, south), (east, south - depth), (west, south - depth), (west, south)]
        bands[depth] = card_layout(replace(plan, land_rings=(np.array(band),)))
    frame_of = {depth: found.sketch for depth, found in bands.items()}
    shown = {depth: chart.extent().yMinimum() for depth, chart in frame_of.items()}
    to_metres = QgsCoordinateTransform(
        QgsCoordinateReferenceSystem("EPSG:4326"), frame_of[0.05].crs(), QgsProject.instance()
    )
    cut = {depth: to_metres.transform(west, south - depth).y() for depth in bands}
    assert shown[0.05] > cut[0.05]
    assert shown[0.0008] == pytest.approx(cut[0.0008], abs=2.0) and shown[0.0008] > shown[0.05] + 20.0
    assert frame_of[0.0008].extent().height() == pytest.approx(frame_of[0.05].extent().height())


def test_a_track_that_nobody_can_swim_does_not_make_the_sketch_smaller(qgis_app):
    plan = make_plan(legs=3)
    leg = plan.legs[1]
    away = tuple(replace(point, lon=point.lon + 0.2 * n) for n, point in enumerate(leg.track))
    slow = replace(leg, feasible=False, reason="you make good 0.10 m/s", track=away)
    drifted = replace(plan, feasible=False, legs=(plan.legs[0], slow, plan.legs[2]))
    cards_made = [card_layout(one) for one in (plan, drifted)]  # a map goes with its layout
    widths = [card.sketch.extent().width() for card in cards_made]
    assert widths[1] < 1.5 * widths[0]


def test_the_zone_is_printed_once(cards):
    assert sum("Atlantic/Azores" in text for text in texts_of(cards("twenty legs").layout)) == 1


def test_what_is_not_known_is_said_not_left_out(cards):
    joined = " ".join(texts_of(cards("nothing known").layout))
    assert "Tide not known." in joined and "Depths not known." in joined and "No flags. Feasible is not safe." in joined


def test_a_leg_that_cannot_be_swum_says_so_and_why(cards):
    texts = texts_of(cards("twelve legs, the tenth not swimmable").layout)
    assert texts.count("NOT SWIMMABLE") == 1 and texts.count("NOT REACHED") == 2
    assert any(text.startswith("Across-stream 1.1 kn") for text in texts)
    assert "No arrival, so no alarm time." in " ".join(texts)


def test_new_headings_on_a_leg_are_listed_by_time(cards):
    texts = texts_of(cards("five headings a leg").layout)
    assert {"09:45", "060M", "09:50", "070M"} <= set(texts)


def test_headings_past_counting_are_counted(cards):
    assert any(
        re.search(r"and \d+ more new headings", text) for text in texts_of(cards("thirty headings a leg").layout)
    )


def test_warnings_stand_in_words_where_there_is_room_for_all(cards):
    joined = " ".join(texts_of(cards("many flags").layout))
    assert len(re.findall(r"WARNING: Mind gut", joined)) == 12 and "more flag" not in joined


def test_an_expression_in_a_name_is_not_evaluated(cards):
    texts = texts_of(cards("long names").layout)
    assert "[ % 40 + 2 %]" in texts and "42" not in texts


def test_a_card_grows_before_letters_shrink(qgis_app):
    made = {legs: card_layout(make_plan(legs=legs)) for legs in (1, 2, 12, 40)}
    assert [made[legs].template.stem for legs in made] == ["card_a5_2", "card_a5_2", "card_a5_4", "card_a4_4"]


def test_legs_that_fit_no_page_are_named_on_it(qgis_app):
    layout = card_layout(make_plan(legs=90)).layout
    texts = texts_of(layout)
    said = next(text for text in texts if text.startswith("LEGS "))
    first = int(re.fullmatch(r"LEGS (\d+)-90 ARE NOT ON THIS CARD", said).group(1))
    assert 25 < first <= 90 and str(first - 1) in texts


def test_an_arrow_points_to_where_the_stream_sets(qgis_app):
    layout = QgsPrintLayout(QgsProject.instance())
    paper = paper_of(layout)
    for towards, direction in ((0.0, (0, -1)), (90.0, (1, 0)), (200.0, (-0.342, 0.940))):
        paper.arrow(100.0, 100.0, 10.0, towards)
        item = [found for found in layout.items() if isinstance(found, QgsLayoutItemPolygon)][0]
        tip = item.mapToScene(item.nodes()[0])
        assert ((tip.x() - 100.0) / 5.0, (tip.y() - 100.0) / 5.0) == pytest.approx(direction, abs=0.01)
        layout.removeLayoutItem(item)


def test_a_stream_of_nothing_has_no_arrow(qgis_app):
    def arrows(plan):
        return sum(isinstance(item, QgsLayoutItemPolygon) for item in card_layout(plan).layout.items())

    plan = make_plan(bare=True)
    still = replace(plan, legs=tuple(replace(leg, stream_kn=0.01) for leg in plan.legs))
    assert arrows(plan) - arrows(still) == 2


def test_a_stream_that_is_not_known_is_not_nothing(qgis_app):
    plan = make_plan(bare=True)
    unknown = replace(plan, legs=tuple(replace(leg, stream_kn=None, stream_set_deg=None) for leg in plan.legs))
    texts = texts_of(on_a4(unknown))
    assert texts.count("not known") == 2 and "0.0" not in texts


def words_on_the_sketch(card):
    chart = card.card.sketch
    area = QRectF(chart.pagePos(), chart.rect().size())
    on_it = [item for item in labels_of(card.layout) if item.page() == chart.page() and area.contains(ink(item))]
    return sorted(label.currentText() for label in on_it)


def test_names_stand_on_the_sketch_and_numbers_when_there_is_no_room(cards):
    assert words_on_the_sketch(cards("two legs")) == ["Gannet Heads", "Kettle Slip"]
    assert words_on_the_sketch(cards("six legs")) == sorted(leg.end_name for leg in PLANS["six legs"].legs)
    assert len(words_on_the_sketch(cards("twenty legs"))) in (0, 20)


def test_times_behind_a_leg_that_cannot_be_swum_say_so(qgis_app):
    plan = make_plan(legs=3)
    slow = replace(plan.legs[1], feasible=False, reason="you make good 0.10 m/s")
    texts = texts_of(on_a4(replace(plan, feasible=False, legs=(plan.legs[0], slow, plan.legs[2]))))
    assert texts.count("Only if leg 2 could be swum.") == 1 and texts.count("NOT SWIMMABLE") == 1
    assert "You make good 0.10 m/s" in texts and "NOT FEASIBLE" in texts
    assert "NOT FEASIBLE" not in texts_of(on_a4(plan))


def test_a_flag_is_cut_between_sentences():
    text = "One is short. Two is a good deal longer than one was. Three follows."
    width = SMALL.width("One is short. Two is a …")
    assert SMALL.whole_sentences(text, width, 1) == ["One is short. …"]
    assert SMALL.whole_sentences(text, 500.0, 1) == [text]
    assert SMALL.whole_sentences(text, SMALL.width("One is"), 1)[0].endswith("…")


def test_an_item_is_as_wide_as_its_parts():
    plain = Item(before="HW", clock="14:21")
    assert Item(before="HW", clock="14:21", after="4.1 m").width_mm > plain.width_mm > BIG.width("14:21")


def test_wrapping_loses_no_word_and_cuts_with_an_ellipsis():
    text = "one two three four five six seven eight nine ten " * 3
    lines = SMALL.wrap(text, 60.0, 99)
    assert " ".join(lines).split() == text.split() and all(SMALL.width(line) <= 60.0 for line in lines)
    cut = SMALL.wrap(text, 60.0, 2)
    assert len(cut) == 2 and cut[1].endswith("…") and SMALL.width(cut[1]) <= 60.0
    assert SMALL.elide("W" * 99, 20.0).endswith("…") and SMALL.elide("short", 99.0) == "short"


def test_pdf_and_png_are_written_and_the_users_project_is_left_alone(tmp_path, qgis_app):
    project = QgsProject.instance()
    before = (list(project.mapLayers()), project.isDirty(), len(project.layoutManager().layouts()))
    write_card(make_plan(), tmp_path / "new" / "card.pdf", png_path=tmp_path / "new" / "card.png")
    assert sorted(path.name for path in (tmp_path / "new").iterdir()) == ["card.pdf", "card.png"]
    pdf = (tmp_path / "new" / "card.pdf").read_bytes()
    assert pdf.startswith(b"%PDF") and re.search(rb"/Count 2\b", pdf)
    image = QImage(str(tmp_path / "new" / "card.png"))
    assert image.width() / image.height() == pytest.approx(2 * 148.0 / 210.0, abs=0.02)  # its sides one below the other
    assert (list(project.mapLayers()), project.isDirty(), len(project.layoutManager().layouts())) == before


def test_a_place_that_cannot_be_written_is_named_and_what_was_there_stays(tmp_path, qgis_app):
    old = tmp_path / "card.pdf"
    old.mkdir()
    with pytest.raises(SwimPlanError, match="card.pdf"):
        write_card(make_plan(), old)
    assert [path.name for path in tmp_path.iterdir()] == ["card.pdf"] and old.is_dir()
