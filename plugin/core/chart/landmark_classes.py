"""Which charted objects are landmarks of a plan, of what kind, and by what words where they have no name.

Classes and codes: S-57 Edition 3.1, Appendix A, Chapters 1 and 2, compared with the lists that GDAL ships
(``s57objectclasses.csv``, ``s57expectedinput.csv``).
"""

from __future__ import annotations

from collections.abc import Sequence
from types import MappingProxyType

BUILDING, LIGHT = "BUISGL", "LIGHTS"
BEACONS = ("BCNCAR", "BCNISD", "BCNLAT", "BCNSAW", "BCNSPP")
# What is charted as a landmark comes first: a light or building at the same place is part of it.
LANDMARKS = ("LNDMRK", *BEACONS, BUILDING, "SILTNK", LIGHT)
# A light on one of these swings with it.
FLOATS = ("BOYCAR", "BOYINB", "BOYISD", "BOYLAT", "BOYSAW", "BOYSPP", "LITFLT", "LITVES")

# CATLMK and CATSIL: the plan's kind, and the words.
CATLMK = MappingProxyType(
    {
        1: ("cairn", "cairn"),
        2: ("cemetery", "cemetery"),
        3: ("chimney", "chimney"),
        4: ("dish aerial", "dish aerial"),
        5: ("flagpole", "flagpole"),
        6: ("chimney", "flare stack"),
        7: ("mast", "mast"),
        8: ("windsock", "windsock"),
        9: ("monument", "monument"),
        10: ("monument", "column"),
        11: ("monument", "memorial plaque"),
        12: ("monument", "obelisk"),
        13: ("monument", "statue"),
        14: ("cross", "cross"),
        15: ("dome", "dome"),
        16: ("radar scanner", "radar scanner"),
        17: ("tower", "tower"),
        18: ("windmill", "windmill"),
        19: ("windmill", "wind turbine"),
        20: ("spire", "spire or minaret"),
    }
)
CATSIL = MappingProxyType(
    {1: ("tank", "silo"), 2: ("tank", "tank"), 3: ("tank", "grain elevator"), 4: ("tower", "water tower")}
)
# FUNCTN of a building or tower by which one knows it from afar.
FUNCTN = MappingProxyType(
    {
        5: "hospital",
        7: "hotel",
        16: "factory",
        17: "power station",
        20: "church",
        21: "chapel",
        22: "temple",
        23: "pagoda",
        26: "mosque",
        28: "lookout",
        33: "lighthouse",
        35: "cooling tower",
    }
)
SEEN_WELL, SEEN_BADLY = 1, 2  # CONVIS: visually conspicuous, or not


def kind_and_words(
    object_class: str, catlmk: Sequence[int], catsil: Sequence[int], functions: Sequence[int]
) -> tuple[str, str]:
    """The plan's kind of a charted thing and the words for one without a name; both "" where the chart says nothing."""
    for table, codes in ((CATLMK, catlmk), (CATSIL, catsil)):
        known = next((table[code] for code in codes if code in table), None)
        if known:
            return _with_function(*known, functions)
    function = next((FUNCTN[code] for code in functions if code in FUNCTN), "")
    if object_class in BEACONS:
        return "beacon", "beacon"
    if object_class == LIGHT:
        return "light", "light"
    if object_class == BUILDING or function:
        return "building", function or "building"
    return ("tank", "tank or silo") if object_class == "SILTNK" else ("", "")


def _with_function(kind: str, words: str, functions: Sequence[int]) -> tuple[str, str]:
    """A tower of a church is looked for among the spires, one that bears a light is a lighthouse."""
    if kind == "tower" and 20 in functions:
        return "spire", "church tower"
    if kind == "tower" and 33 in functions:
        return "light", "lighthouse"
    return kind, words
