"""Which charted objects are landmarks of a plan, of what kind, and by what words where they have no name.

Classes and codes: S-57 Edition 3.1, Appendix A, Chapters 1 and 2, compared with the lists that GDAL ships
(``s57objectclasses.csv``, ``s57expectedinput.csv``).
"""

from __future__ import annotations

from collections.abc import Sequence
from types import MappingProxyType

from ..words import marked, spoken, tr

BUILDING, LIGHT = "BUISGL", "LIGHTS"
BEACONS = ("BCNCAR", "BCNISD", "BCNLAT", "BCNSAW", "BCNSPP")
# What is charted as a landmark comes first: a light or building at the same place is part of it.
LANDMARKS = ("LNDMRK", *BEACONS, BUILDING, "SILTNK", LIGHT)
# A light on one of these swings with it.
FLOATS = ("BOYCAR", "BOYINB", "BOYISD", "BOYLAT", "BOYSAW", "BOYSPP", "LITFLT", "LITVES")

# CATLMK and CATSIL: the plan's kind, and the words.
CATLMK = MappingProxyType(
    {
        1: ("cairn", marked("cairn")),
        2: ("cemetery", marked("cemetery")),
        3: ("chimney", marked("chimney")),
        4: ("dish aerial", marked("dish aerial")),
        5: ("flagpole", marked("flagpole")),
        6: ("chimney", marked("flare stack")),
        7: ("mast", marked("mast")),
        8: ("windsock", marked("windsock")),
        9: ("monument", marked("monument")),
        10: ("monument", marked("column")),
        11: ("monument", marked("memorial plaque")),
        12: ("monument", marked("obelisk")),
        13: ("monument", marked("statue")),
        14: ("cross", marked("cross")),
        15: ("dome", marked("dome")),
        16: ("radar scanner", marked("radar scanner")),
        17: ("tower", marked("tower")),
        18: ("windmill", marked("windmill")),
        19: ("windmill", marked("wind turbine")),
        20: ("spire", marked("spire or minaret")),
    }
)
CATSIL = MappingProxyType(
    {
        1: ("tank", marked("silo")),
        2: ("tank", marked("tank")),
        3: ("tank", marked("grain elevator")),
        4: ("tower", marked("water tower")),
    }
)
# FUNCTN of a building or tower by which one knows it from afar.
FUNCTN = MappingProxyType(
    {
        5: marked("hospital"),
        7: marked("hotel"),
        16: marked("factory"),
        17: marked("power station"),
        20: marked("church"),
        21: marked("chapel"),
        22: marked("temple"),
        23: marked("pagoda"),
        26: marked("mosque"),
        28: marked("lookout"),
        33: marked("lighthouse"),
        35: marked("cooling tower"),
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
        return "beacon", tr("beacon")
    if object_class == LIGHT:
        return "light", tr("light")
    if object_class == BUILDING or function:
        return "building", spoken(function) if function else tr("building")
    return ("tank", tr("tank or silo")) if object_class == "SILTNK" else ("", "")


def _with_function(kind: str, words: str, functions: Sequence[int]) -> tuple[str, str]:
    """A tower of a church is looked for among the spires, one that bears a light is a lighthouse."""
    if kind == "tower" and 20 in functions:
        return "spire", tr("church tower")
    if kind == "tower" and 33 in functions:
        return "light", tr("lighthouse")
    return kind, spoken(words)
