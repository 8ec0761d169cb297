"""What a card has room for: little paper, few sides, rows if late, areas on the sketch, and cards to share."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import timedelta
from itertools import combinations

import numpy as np
import pytest
from plans import make_plan, with_turn_backs, with_ways_home
from qgis.core import QgsLayoutExporter, QgsLayoutItemLabel, QgsLayoutItemShape
from qgis.PyQt.QtGui import QFontMetricsF, QImage
from tideleg.cards.card_refusal import first_legs
from tideleg.cards.card_templates import CardError
from tideleg.cards.paper import SMALL_BOLD
from tideleg.cards.sketch_areas import polygon
from tideleg.cards.wet_card import CardLook, card_layout
from tideleg.core.geodesy import LocalFrame
from tideleg.core.results.card import card_angle, position_text
from tideleg.core.results.shared import without_marks
from tideleg.core.results.swim_plan import ChartShape

LONG = "The very long slipway below the old light where nobody lands any more"
HEBREW, ARABIC = "שוברת הגלים הישנה", "رصيف الصيادين القديم"
PLANS = {
    "not feasible": with_turn_backs(make_plan(legs=3, unswimmable=(3,))),
    "one leg": make_plan(legs=1),
    "two legs": with_ways_home(with_turn_backs(make_plan(legs=2))),
    "three legs": with_ways_home(with_turn_backs(make_plan(legs=3))),
    "twelve legs": with_ways_home(with_turn_backs(make_plan(legs=12))),
    "long names": with_ways_home(with_turn_backs(make_plan(legs=3, names=(LONG, LONG + " too")), else_exit=LONG)),
    "right to left": with_ways_home(with_turn_backs(make_plan(legs=3, names=(HEBREW, ARABIC)), else_exit=ARABIC)),
    "to share": without_marks(with_turn_backs(make_plan(legs=3))),
}
LOOKS = [CardLook(paper=paper, sides=sides) for paper in ("A6", "A5") for sides in (1, 2, 4)]


def labels_of(layout, page=None):
    found = [item for item in layout.items() if isinstance(item, QgsLayoutItemLabel)]
    found = [label for label in found if page is None or label.page() == page]
    return sorted(found, key=lambda label: (label.page(), label.pagePos().y(), label.pagePos().x()))


def words_of(card):
    return " ".join(label.currentText() for label in labels_of(card.layout)).replace("\u00a0", " ")


def ink_of(label):
    """Left, top, right, bottom of the capitals in millimetres, and their height."""
    font = label.textFormat().font() if hasattr(label, "setTextFormat") else label.font()
    size = label.textFormat().size() if hasattr(label, "setTextFormat") else font.pointSizeF()
    font.setPixelSize(1000)
    metrics, em = QFontMetricsF(font), size * 25.4 / 72.0
    top = label.pagePos().y() + em * (metrics.ascent() - metrics.capHeight()) / 1000.0
    width = em * metrics.horizontalAdvance(label.currentText()) / 1000.0
    high = em * metrics.capHeight() / 1000.0
    left = label.pagePos().x()
    return (left, top, left + width, top + high), high


@pytest.mark.parametrize("look", LOOKS, ids=lambda look: f"{look.paper}-{look.sides}")
@pytest.mark.parametrize("name", PLANS)
def test_words_stand_apart_at_their_full_size_within_the_page_or_the_card_is_refused(qgis_app, name, look) -> None:
    try:
        card = card_layout(PLANS[name], look)
    except CardError as error:
        assert "Choose larger paper or more sides" in str(error)
        assert look.sides == 1 or name in ("twelve legs", "long names", "not feasible")
        return
    for page in range(card.sides):
        size = card.layout.pageCollection().page(page).pageSize()
        inked = [(label.currentText(), *ink_of(label)) for label in labels_of(card.layout, page)]
        for text, (left, top, right, bottom), high in inked:
            assert 4.5 < left and right < size.width() - 4.5 and 4.5 < top and bottom < size.height() - 4.5, text
            assert high >= (7.0 if re.fullmatch(r"\d\d:\d\d", text) else 4.0), text
        for (one, a, _), (other, b, _) in combinations(inked, 2):
            apart = a[2] - 0.2 <= b[0] or b[2] - 0.2 <= a[0] or a[3] - 0.2 <= b[1] or b[3] - 0.2 <= a[1]
            assert apart, (one, other)


def test_columns_of_low_rows_have_a_gap_between_them(qgis_app) -> None:
    card = card_layout(PLANS["three legs"], CardLook(paper="A5", sides=1))
    rows: dict[float, list] = {}
    for label in labels_of(card.layout):
        if re.fullmatch(r"\d+ min|\d{3}M|\d+ m|\d\.\d", label.currentText()) and ink_of(label)[1] < 5.0:
            rows.setdefault(round(label.pagePos().y(), 1), []).append(ink_of(label)[0])
    found = [sorted(boxes) for boxes in rows.values() if len(boxes) == 4]
    assert len(found) == 3
    assert all(right[0] - left[2] > 1.5 for boxes in found for left, right in zip(boxes, boxes[1:]))


def test_one_side_of_a5_gives_the_heading_home_where_it_has_no_table_of_them(qgis_app) -> None:
    plan = PLANS["three legs"]
    card = card_layout(plan, CardLook(paper="A5", sides=1))
    assert card.sides == 1 and {"if late", "home by departure"} <= set(card.leaves_out)
    words = words_of(card)
    for stop in plan.turn_back.stops:
        moment = stop.latest_planned_exit_pessimistic
        way = min(stop.by_departure, key=lambda one: abs(one.leave - moment))
        said = f"home {card_angle(way.headings_mag_deg[0], plan.heading_step_deg)}M"
        assert (said in words) == (len(way.headings_mag_deg) == 1), stop.name
        assert f"{moment:%H:%M}" in words
    assert "ways home" in words and "home 2" not in words_of(card_layout(plan, CardLook(paper="A5", sides=2)))


def test_the_count_of_legs_in_a_refusal_is_what_the_paper_holds(qgis_app) -> None:
    plan, look = with_turn_backs(make_plan(legs=6)), CardLook(paper="A5", sides=1)
    with pytest.raises(CardError) as refused:
        card_layout(plan, look)
    legs = int(re.search(r"legs of this swim that there is room for: (\d+)", str(refused.value)).group(1))
    assert card_layout(first_legs(plan, legs), look).sides == 1
    with pytest.raises(CardError):
        card_layout(first_legs(plan, legs + 1), look)


def test_a_refusal_names_cards_that_take_the_swim(qgis_app) -> None:
    plan = PLANS["three legs"]
    with pytest.raises(CardError) as refused:
        card_layout(plan, CardLook(paper="A6", sides=1))
    assert "does not fit A6, 1 side" in str(refused.value) and "no room for a single leg" in str(refused.value)
    named = re.search(r"what takes this swim: (.+)\.", str(refused.value)).group(1).split(" or ")
    assert named == ["A6, 2 sides", "A5, 1 side"]
    for paper, sides in (("A6", 2), ("A5", 1)):
        assert card_layout(plan, CardLook(paper=paper, sides=sides)).sides == sides


def late_every_ten_minutes(rows: int):
    """A swim of two legs whose one mark can be left later every ten minutes, until the last row is too late."""
    plan = PLANS["two legs"]
    (stop,) = plan.turn_back.stops
    like = replace(stop.if_late[0], exit=stop.planned_exit, safe=True, safe_pessimistic=True)
    ways = [replace(like, leave=stop.leave + timedelta(minutes=10 * number)) for number in range(rows)]
    ways[-1] = replace(ways[-1], safe=False)
    late = replace(stop, if_late=tuple(ways), by_departure=())
    return replace(plan, turn_back=replace(plan.turn_back, stops=(late,)), flags=())


def test_two_sides_of_a6_give_rows_if_late_every_twenty_minutes_and_count_those_left_out(qgis_app) -> None:
    plan = late_every_ten_minutes(10)
    words = words_of(card_layout(plan, CardLook(paper="A6", sides=2)))
    table = words[words.index("LATE at") : words.index("TOO LATE after")]
    (stop,) = plan.turn_back.stops
    shown = [way.leave for way in stop.if_late if f"{way.leave:%H:%M}" in table]
    assert len(shown) >= 5 and shown[0] == stop.if_late[0].leave and shown[-1] == stop.if_late[-2].leave
    assert all(later - earlier <= timedelta(minutes=20) for earlier, later in zip(shown, shown[1:]))
    left_out = len(stop.if_late) - 1 - len(shown)
    assert not left_out or re.search(rf"TOO LATE after \d\d:\d\d\. {left_out} rows? (is|are) left out", words)


def test_rows_that_are_not_for_a_bad_day_say_it_once_above_them_where_it_has_no_room_beside(qgis_app) -> None:
    plan = late_every_ten_minutes(7)
    (stop,) = plan.turn_back.stops
    ways = tuple(replace(way, safe_pessimistic=number < 2) for number, way in enumerate(stop.if_late))
    plan = replace(plan, turn_back=replace(plan.turn_back, stops=(replace(stop, if_late=ways),)))
    narrow = words_of(card_layout(plan, CardLook(paper="A6", sides=4)))
    assert narrow.count("not on a bad day") == 1
    after = narrow[narrow.index("not on a bad day:") : narrow.index("TOO LATE")]
    assert all(f"{way.leave:%H:%M}" in after for way in ways[2:-1])
    assert not any(f"{way.leave:%H:%M}" in after for way in ways[:2])
    assert words_of(card_layout(plan, CardLook(paper="A5", sides=4))).count("not on a bad day, ") == 4


@pytest.mark.parametrize("paper", ["A6", "A5", "A4"])
def test_a_card_to_share_has_no_empty_strip_in_its_rows(qgis_app, paper) -> None:
    card = card_layout(PLANS["to share"], CardLook(paper=paper))
    tops = {label.currentText(): label.pagePos().y() for label in labels_of(card.layout, 0)}
    assert tops["2"] - tops["1"] == pytest.approx(tops["3"] - tops["2"]) and tops["2"] - tops["1"] < 17.0
    lefts = [label.pagePos().x() for label in labels_of(card.layout, 0) if label.currentText() == "leave"]
    assert lefts[0] < 20.0  # where headings stand on a whole card


@pytest.mark.parametrize("look", [CardLook(paper="A6"), CardLook(paper="A5")], ids=["A6", "A5"])
def test_nothing_black_covers_the_feet_of_the_head_of_the_black_block(qgis_app, look) -> None:
    card = card_layout(PLANS["three legs"], look)
    heads = [label for label in labels_of(card.layout) if label.currentText().startswith("TURN BACK BY, to")]
    (head,) = heads
    font = head.textFormat().font() if hasattr(head, "setTextFormat") else head.font()
    font.setPixelSize(1000)
    feet = ink_of(head)[0][3] + SMALL_BOLD.em_mm * QFontMetricsF(font).boundingRect("gp").bottom() / 1000.0
    boxes = [item for item in card.layout.items() if isinstance(item, QgsLayoutItemShape)]
    boxes = [box for box in boxes if box.page() == head.page() and box.rect().height() > 3.0]
    over = [box.pagePos().y() for box in boxes if head.zValue() < box.zValue()]
    assert over and not any(ink_of(head)[0][1] < top < feet for top in over)


def shape(kind: str, plan, *, beside_deg: float) -> ChartShape:
    """A square of about 200 m, beside the swim's entry."""
    lon, lat, half = plan.legs[0].start_lon + beside_deg, plan.legs[0].start_lat + 0.001, 0.001
    ring = [(lon - half, lat - half), (lon + half, lat - half), (lon + half, lat + half), (lon - half, lat + half)]
    return ChartShape(kind=kind, name="Somewhere", rings=(np.array([*ring, ring[0]]),))


def sketch_pixels(card) -> np.ndarray:
    chart = card.sketch
    image = QgsLayoutExporter(card.layout).renderPageToImage(chart.page(), dpi=150)
    image = image.convertToFormat(QImage.Format.Format_Grayscale8)
    raw = np.array(image.constBits().asarray(image.sizeInBytes()), dtype=np.uint8).reshape(image.height(), -1)
    scale = 150 / 25.4
    x, y, w, h = chart.pagePos().x(), chart.pagePos().y(), chart.rect().width(), chart.rect().height()
    return raw[int((y + 1) * scale) : int((y + h - 1) * scale), int((x + 1) * scale) : int((x + w - 1) * scale)] < 128


def test_the_sketch_shows_channels_ferries_and_areas_and_says_what_they_are(qgis_app) -> None:
    plan = replace(make_plan(), land_rings=())
    kinds = {"channel": 0.004, "ferry": 0.0065, "rules": -0.0025}
    look = CardLook(paper="A4", sides=1)
    whole = card_layout(
        replace(plan, chart_shapes=tuple(shape(kind, plan, beside_deg=at) for kind, at in kinds.items())), look
    )
    words = [label.currentText() for label in labels_of(whole.layout)]
    for kind, said in (("channel", "channel"), ("ferry", "ferry"), ("rules", "area with rules")):
        one = card_layout(replace(plan, chart_shapes=(shape(kind, plan, beside_deg=kinds[kind]),)), look)
        far = card_layout(replace(plan, chart_shapes=(shape(kind, plan, beside_deg=5.0),)), look)
        only = [label.currentText() for label in labels_of(one.layout)]
        assert said in words and said in only and said not in [label.currentText() for label in labels_of(far.layout)]
        assert sketch_pixels(one).sum() > sketch_pixels(far).sum() + 100, kind


def test_areas_on_the_sketch_lie_below_track_and_places(qgis_app) -> None:
    plan = make_plan()
    over = tuple(shape(kind, plan, beside_deg=0.0) for kind in ("channel", "ferry", "rules"))
    card = card_layout(replace(plan, chart_shapes=over), CardLook(paper="A4", sides=1))
    layers = card.sketch.layers()
    kinds = [layer.renderer().symbol().symbolLayer(0).layerType() for layer in layers]
    assert kinds[0] == "SimpleMarker"
    widths = [layer.renderer().symbol().width() for layer in layers[1:] if hasattr(layer.renderer().symbol(), "width")]
    assert widths[0] == max(widths) == 0.9 and max(widths[3:]) <= 0.4  # track, legs, drift, then areas and land


def test_a_ring_within_another_is_a_hole_of_the_area(qgis_app) -> None:
    plan = make_plan()
    outer = shape("rules", plan, beside_deg=0.0).rings[0]
    middle = outer[:-1].mean(axis=0)
    inner = middle + (outer - middle) * 0.5
    frame = LocalFrame.around(outer)
    whole = polygon(ChartShape(kind="rules", name="", rings=(outer,)), frame).area()
    assert polygon(ChartShape(kind="rules", name="", rings=(outer, inner)), frame).area() == pytest.approx(0.75 * whole)


def test_a_card_to_share_knows_no_areas(qgis_app) -> None:
    plan = replace(make_plan(), chart_shapes=(shape("rules", make_plan(), beside_deg=0.0),))
    assert without_marks(plan).chart_shapes == ()


def test_positions_in_the_rows_are_not_named_as_left_out(qgis_app) -> None:
    plan = PLANS["twelve legs"]
    for look in LOOKS:
        try:
            card = card_layout(plan, look)
        except CardError:
            continue
        printed = position_text(plan.legs[0].end_lon, plan.legs[0].end_lat) in words_of(card)
        assert printed == ("positions" not in card.leaves_out)
