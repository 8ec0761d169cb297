"""An electronic chart cell (IHO S-57) opened with GDAL: what it says of itself, and its objects one by one."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from osgeo import gdal
from qgis.core import QgsGeometry

from ..core.chart.object_classes import READ_ATTRIBUTES
from ..core.errors import BadInputError
from ..core.words import marked
from ..words import tr

# Given to this open call alone: the user's own OGR_S57_OPTIONS stay as they are. UPDATES applies .001 ... beside it.
OPEN_OPTIONS = ("UPDATES=APPLY", "SPLIT_MULTIPOINT=ON", "ADD_SOUNDG_DEPTH=ON", "LIST_AS_STRING=OFF")
METRES = 1  # DSPM_DUNI, units of depth; S-57 product specification for ENC (Appendix B.1) allows no other
WGS84 = 2  # DSPM_HDAT, horizontal datum
NO_CODE = -1

# Sounding datums (S-57 attribute VERDAT, whose codes DSPM_SDAT uses) that chart readers meet: words and letters.
SOUNDING_DATUMS = {
    1: (marked("mean low water springs"), "MLWS"),
    3: (marked("mean sea level"), "MSL"),
    5: (marked("mean low water"), "MLW"),
    8: (marked("Indian spring low water"), "ISLW"),
    12: (marked("mean lower low water"), "MLLW"),
    13: (marked("low water"), "LW"),
    22: (marked("equinoctial spring low water"), "ESLW"),
    23: (marked("lowest astronomical tide"), "LAT"),
    27: (marked("lower low water large tide"), "LLWLT"),
}


@dataclass(frozen=True, kw_only=True)
class CellFacts:
    """What a cell says of itself.

    ``dated`` is the day of its issue or latest update, ISO, "" where it gives none. ``sounding_datum`` holds the words
    (marked) and the letters of the datum its depths are counted from.
    """

    name: str
    edition: str
    update: str
    dated: str
    sounding_datum: tuple[str, str]
    horizontal_datum: int

    @property
    def citation(self) -> str:
        """The words by which a chart reader finds the cell again."""
        words = tr("chart {name}, edition {edition}, update {update}").format(
            name=self.name, edition=self.edition, update=self.update
        )
        return tr("{words}, dated {dated}").format(words=words, dated=self.dated) if self.dated else words


@dataclass(frozen=True, kw_only=True)
class ChartObject:
    """One object of a cell: its class (FAIRWY ...), number in the cell, geometry or None, attributes that are set."""

    object_class: str
    number: int
    geometry: QgsGeometry | None
    attributes: dict[str, Any]

    def text(self, name: str) -> str:
        """A text attribute, trimmed; "" where it is not set."""
        return str(self.attributes.get(name, "")).strip()

    def number_or_none(self, name: str) -> float | None:
        """A number; None where it is not set."""
        value = self.attributes.get(name)
        return None if value is None else float(value)

    def codes(self, name: str) -> tuple[int, ...]:
        """The codes of a list attribute (RESTRN, CATREA) or of a single one; what is no number is left out."""
        value = self.attributes.get(name, ())
        listed = value if isinstance(value, (list, tuple)) else str(value).split(",")
        return tuple(int(code) for code in map(str, listed) if code.strip().isdigit())


class ChartCell:
    """A cell held open for reading. BadInputError where the file is no S-57 base cell or has depths in other units."""

    def __init__(self, path: str | Path) -> None:
        self.path = Path(path)
        self._dataset = _opened(self.path)
        self.facts = _facts(self._dataset, self.path)
        self._classes = {self._dataset.GetLayer(at).GetName(): at for at in range(self._dataset.GetLayerCount())}

    @property
    def object_classes(self) -> tuple[str, ...]:
        """Every class the cell has objects of, its own records (DSID) too."""
        return tuple(self._classes)

    def count(self, object_class: str) -> int:
        """Objects of a class in the whole cell, each sounding of a multipoint counted; 0 where it has none."""
        at = self._classes.get(object_class)
        return 0 if at is None else self._dataset.GetLayer(at).GetFeatureCount()

    def objects(self, object_class: str) -> Iterator[ChartObject]:
        """The objects of a class, in the order of the cell."""
        if object_class not in self._classes:
            return
        layer = self._dataset.GetLayer(self._classes[object_class])
        columns = _columns(layer.GetLayerDefn())
        layer.ResetReading()
        for feature in layer:
            yield ChartObject(
                object_class=object_class,
                number=feature.GetFID(),
                geometry=_flat_geometry(feature.GetGeometryRef()),
                attributes={
                    name: feature.GetField(index)
                    for name, index in columns.items()
                    if feature.IsFieldSetAndNotNull(index)
                },
            )


def _columns(definition: Any) -> dict[str, int]:
    """Where the attributes that are read stand in a layer: asking by number is several times quicker than by name."""
    found = {name: definition.GetFieldIndex(name) for name in READ_ATTRIBUTES}
    return {name: index for name, index in found.items() if index >= 0}


def _opened(path: Path) -> Any:
    remedy = tr("Give the base cell, a file that ends in .000, with its updates .001, .002 beside it")
    if not path.is_file():
        raise BadInputError(layer=path.name, allowed=tr("There is no file {path}").format(path=path), remedy=remedy)
    try:
        dataset = gdal.OpenEx(str(path), gdal.OF_VECTOR, allowed_drivers=["S57"], open_options=list(OPEN_OPTIONS))
    except RuntimeError:  # GDAL raises where somebody has asked it to, and returns None elsewhere
        dataset = None
    if dataset is None or dataset.GetLayerByName("DSID") is None:
        raise BadInputError(layer=path.name, allowed=tr("The file cannot be read as an S-57 chart cell"), remedy=remedy)
    return dataset


def _facts(dataset: Any, path: Path) -> CellFacts:
    record = next(iter(dataset.GetLayerByName("DSID")), None)
    said = record.items() if record is not None else {}
    if said.get("DSPM_DUNI") not in (None, METRES):
        raise BadInputError(
            layer=path.name,
            field="DSPM_DUNI",
            value=said["DSPM_DUNI"],
            allowed=tr("Depths of a cell are in metres (1)"),
            remedy=tr("Read the depths as an ordinary layer, with a conversion such as depth_m = DEPTH * 0.3048"),
        )
    datum = said.get("DSPM_SDAT", NO_CODE)
    return CellFacts(
        name=Path(said.get("DSID_DSNM") or path.name).stem,
        edition=str(said.get("DSID_EDTN") or "?"),
        update=str(said.get("DSID_UPDN") or "0"),
        dated=max(_iso_day(said.get("DSID_ISDT")), _iso_day(said.get("DSID_UADT"))),
        sounding_datum=SOUNDING_DATUMS.get(datum, (tr("S-57 datum code {datum}").format(datum=datum), "")),
        horizontal_datum=said.get("DSPM_HDAT") or WGS84,
    )


def _iso_day(text: str | None) -> str:
    digits = (text or "").strip()
    return f"{digits[:4]}-{digits[4:6]}-{digits[6:]}" if len(digits) == 8 and digits.isdigit() else ""


def _flat_geometry(reference: Any) -> QgsGeometry | None:
    """The geometry without heights (a sounding's depth is its DEPTH); None where there is none."""
    if reference is None or reference.IsEmpty():
        return None
    reference.FlattenTo2D()
    geometry = QgsGeometry()
    geometry.fromWkb(bytes(reference.ExportToWkb()))
    return None if geometry.isNull() or geometry.isEmpty() else geometry
