"""Which object classes of an electronic chart (IHO S-57) a swim is planned with, and as what.

Classes and attributes: S-57 Edition 3.1, Appendix A, Chapter 1, compared with the list that GDAL ships
(``s57objectclasses.csv``). Charts give no width to a channel drawn as a line: the widths here are common practice, no
source, and the report says where one was supplied.
"""

from __future__ import annotations

from dataclasses import dataclass
from types import MappingProxyType

from .landmark_classes import LANDMARKS


@dataclass(frozen=True, kw_only=True)
class ChannelClass:
    """What a class of channel is in a plan: its kind, the words for one without a name, the width of its lines."""

    kind: str
    words: str
    width_m: float = 100.0


CHANNELS = MappingProxyType(
    {
        # Fairways first: a dredged area that lies in one is not read a second time.
        "FAIRWY": ChannelClass(kind="fairway", words="fairway"),
        "DRGARE": ChannelClass(kind="fairway", words="dredged area"),
        "TSSLPT": ChannelClass(kind="lane", words="traffic lane"),
        "TSSCRS": ChannelClass(kind="lane", words="crossing of traffic lanes"),
        "TSSRON": ChannelClass(kind="lane", words="roundabout of traffic lanes"),
        "DWRTPT": ChannelClass(kind="lane", words="deep water route"),
        "TWRTPT": ChannelClass(kind="lane", words="two-way route"),
        "RCTLPT": ChannelClass(kind="lane", words="recommended traffic lane"),
        "DWRTCL": ChannelClass(kind="lane", words="deep water route", width_m=500.0),
        "RCRTCL": ChannelClass(kind="lane", words="recommended route", width_m=500.0),
        "RECTRC": ChannelClass(kind="fairway", words="recommended track"),
        "NAVLNE": ChannelClass(kind="fairway", words="leading line"),
        "FERYRT": ChannelClass(kind="ferry", words="ferry route"),
    }
)
AREAS = MappingProxyType(
    {
        "RESARE": "restricted area",
        "MIPARE": "military practice area",
        "CTNARE": "caution area",
        "PRCARE": "precautionary area",
        "ACHARE": "anchorage",
        "MARCUL": "marine farm",
        "CBLARE": "cable area",
        "PIPARE": "pipeline area",
        "DMPGRD": "dumping ground",
        "SPLARE": "seaplane landing area",
        "SUBTLN": "submarine transit lane",
        "OSPARE": "offshore production area",
        "ICNARE": "incineration area",
        "ISTZNE": "inshore traffic zone",
        "UNSARE": "unsurveyed area",
    }
)
HAZARDS = MappingProxyType({"UWTROC": "rock", "OBSTRN": "obstruction", "WRECKS": "wreck"})
CONTOURS, SOUNDINGS, LAND = "DEPCNT", "SOUNDG", "LNDARE"
STREAM_PANEL, STREAM_SERIES, TIDE_SERIES = "TS_PAD", "TS_TIS", "T_TIMS"
STREAM_WORDS_ONLY = MappingProxyType(
    {
        "TS_PRH": "harmonic constants of a stream, which a plan cannot hold",
        "TS_PNH": "non-harmonic constants of a stream, which a plan cannot hold",
        "TS_FEB": "one rate for flood or ebb without its hours, which a plan cannot hold",
    }
)
COVERAGE = "M_COVR"

# CATNAV: only a leading line that bears a recommended track is one along which vessels run.
TRACK_BEARING_LINE = 3
# WATLEV of what rises to the sounding datum or above it: its depth is at most 0. Code 3 is always under water.
AT_OR_ABOVE_DATUM = MappingProxyType(
    {1: "partly above high water", 2: "always dry", 4: "covers and uncovers", 5: "awash"}
)
TRAFFIC = MappingProxyType({1: "inbound", 2: "outbound", 3: "one-way", 4: "two-way"})

# DEPTH is GDAL's own: the third coordinate of a sounding.
READ_ATTRIBUTES = (
    *("OBJNAM", "INFORM", "TXTDSC", "ORIENT", "TRAFIC", "CATNAV", "CATCOV"),
    *("RESTRN", "CATREA", "PERSTA", "PEREND", "DATSTA", "DATEND"),
    *("VALDCO", "DEPTH", "VALSOU", "WATLEV", "TS_TSP", "TS_TSV", "T_HWLW"),
    *("CATLMK", "CATSIL", "FUNCTN", "CONVIS", "HEIGHT"),
)
READ_ORDER = (
    *CHANNELS,
    *AREAS,
    LAND,
    CONTOURS,
    SOUNDINGS,
    *HAZARDS,
    *LANDMARKS,
    STREAM_PANEL,
    STREAM_SERIES,
    *STREAM_WORDS_ONLY,
    TIDE_SERIES,
)
