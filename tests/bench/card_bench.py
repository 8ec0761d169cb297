"""The wet card of a swim of twelve legs: laid out and written as PDF and picture on every paper that takes it."""

from __future__ import annotations

import sys
import tempfile
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from plans import make_plan, with_turn_backs, with_ways_home
from tideleg.cards.wet_card import CardLook, card_layout, write_card

LEGS = 12
TARGET_S = 3.0


def report() -> None:
    """Print the row of the speed table: seconds, the first time with all that is loaded then."""
    plan = with_ways_home(with_turn_backs(make_plan(legs=LEGS)))
    told = []
    with tempfile.TemporaryDirectory() as name:
        for paper in ("", "A5", "A4"):
            pdf, look = Path(name) / f"card {paper}.pdf", CardLook(paper=paper)
            begun = time.perf_counter()
            write_card(plan, pdf, look=look)
            took = time.perf_counter() - begun
            sides = card_layout(plan, look).sides
            told.append(f"{paper or 'as needed'} ({sides} sides) {took:.2f}")
        begun = time.perf_counter()
        write_card(plan, Path(name) / "card.pdf", png_path=Path(name) / "card.png", look=CardLook(paper="A4"))
        told.append(f"A4 with its picture {time.perf_counter() - begun:.2f}")
    print(f"card of {LEGS} legs: s, target {TARGET_S:g}: {', '.join(told)}")
