"""Which object classes of an electronic chart (IHO S-57) a swim is planned with, and as what.

Classes and attributes: S-57 Edition 3.1, Appendix A, Chapter 1, compared with the list that GDAL ships
(``s57objectclasses.csv``). Charts give no width to a channel drawn as a line: the widths here are common practice, no
source, and the report says where one was supplied.
"""

from __future__ import annotations

from dataclasses import dataclass
from types import MappingProxyType

from ..words import marked
from .landmark_classes import LANDMARKS


@dataclass(frozen=True, kw_only=True)
class ChannelClass:
    """What a class of channel is in a plan: its kind, marked words for one without a name, the width of its lines."""

    kind: str
    words: str
    width_m: float = 100.0


CHANNELS = MappingProxyType(
    {
        # Fairways first: a dredged area that lies in one is not read a second time.
        "FAIRWY": ChannelClass(kind="fairway", words=marked("fairway")),
        "DRGARE": ChannelClass(kind="fairway", words=marked("dredged area")),
        "TSSLPT": ChannelClass(kind="lane", words=marked("traffic lane")),
        "TSSCRS": ChannelClass(kind="lane", words=marked("crossing of traffic lanes")),
        "TSSRON": ChannelClass(kind="lane", words=marked("roundabout of traffic lanes")),
        "DWRTPT": ChannelClass(kind="lane", words=marked("deep water route")),
        "TWRTPT": ChannelClass(kind="lane", words=marked("two-way route")),
        "RCTLPT": ChannelClass(kind="lane", words=marked("recommended traffic lane")),
        "DWRTCL": ChannelClass(kind="lane", words=marked("deep water route"), width_m=500.0),
        "RCRTCL": ChannelClass(kind="lane", words=marked("recommended route"), width_m=500.0),
        "RECTRC": ChannelClass(kind="fairway", words=marked("recommended track")),
        "NAVLNE": ChannelClass(kind="fairway", words=marked("leading line")),
        "FERYRT": ChannelClass(kind="ferry", words=marked("ferry route")),
    }
)
AREAS = MappingProxyType(
    {
        "RESARE": marked("restricted area"),
        "MIPARE": marked("military practice area"),
        "CTNARE": marked("caution area"),
        "PRCARE": marked("precautionary area"),
        "ACHARE": marked("anchorage"),
        "MARCUL": marked("marine farm"),
        "CBLARE": marked("cable area"),
        "PIPARE": marked("pipeline area"),
        "DMPGRD": marked("dumping ground"),
        "SPLARE": marked("seaplane landing area"),
        "SUBTLN": marked("submarine transit lane"),
        "OSPARE": marked("offshore production area"),
        "ICNARE": marked("incineration area"),
        "ISTZNE": marked("inshore traffic zone"),
        "UNSARE": marked("unsurveyed area"),
    }
)
HAZARDS = MappingProxyType({"UWTROC": marked("rock"), "OBSTRN": marked("obstruction"), "WRECKS": marked("wreck")})
HAZARDS_OF_UNKNOWN_DEPTH = MappingProxyType(
    {
        "UWTROC": marked("rock of unknown depth"),
        "OBSTRN": marked("obstruction of unknown depth"),
        "WRECKS": marked("wreck of unknown depth"),
    }
)
CONTOURS, SOUNDINGS, LAND = "DEPCNT", "SOUNDG", "LNDARE"
STREAM_PANEL, STREAM_SERIES, TIDE_SERIES = "TS_PAD", "TS_TIS", "T_TIMS"
STREAM_WORDS_ONLY = MappingProxyType(
    {
        "TS_PRH": marked("harmonic constants of a stream, which a plan cannot hold"),
        "TS_PNH": marked("non-harmonic constants of a stream, which a plan cannot hold"),
        "TS_FEB": marked("one rate for flood or ebb without its hours, which a plan cannot hold"),
    }
)
COVERAGE = "M_COVR"

# CATNAV: only a leading line that bears a recommended track is one along which vessels run.
TRACK_BEARING_LINE = 3
# WATLEV of what rises to the sounding datum or above it: its depth is at most 0. Code 3 is always under water.
AT_OR_ABOVE_DATUM = MappingProxyType(
    {
        1: marked("partly above high water"),
        2: marked("always dry"),
        4: marked("covers and uncovers"),
        5: marked("awash"),
    }
)
TRAFFIC = MappingProxyType(
    {
        1: marked("traffic inbound"),
        2: marked("traffic outbound"),
        3: marked("traffic one-way"),
        4: marked("traffic two-way"),
    }
)

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
