"""Writes a small S-57 cell of an invented sea, INVENTED - NOT FOR NAVIGATION, with GDAL's S-57 writer."""

from __future__ import annotations

from itertools import count
from pathlib import Path

from osgeo import ogr

ISOLATED_NODE, CONNECTED_NODE, EDGE = 110, 120, 130  # RCNM, S-57 Edition 3.1, Part 3, 2.2.1
POINT, LINE, AREA = 1, 2, 3  # PRIM
FORWARD, EXTERIOR, NOT_MASKED = 1, 1, 255  # ORNT, USAG, MASK


class InventedCell:
    """A cell being written; leave the `with` block to have the file whole."""

    def __init__(self, path: Path, **options: object) -> None:
        told = {"S57_EDTN": 4, "S57_UPDN": 0, "S57_ISDT": 20270105, "S57_UADT": 20270101, "S57_SDAT": 23, **options}
        self.path = path
        self._dataset = ogr.GetDriverByName("S57").CreateDataSource(
            str(path), [f"{name}={value}" for name, value in told.items()]
        )
        self._numbers = count(1)

    def __enter__(self) -> InventedCell:
        return self

    def __exit__(self, *_exception: object) -> None:
        self._dataset = None

    def point(self, object_class: str, lon: float, lat: float, **attributes: object) -> None:
        """An object at a point."""
        node = self._write("IsolatedNode", ogr.CreateGeometryFromWkt(f"POINT ({lon} {lat})"), RCNM=ISOLATED_NODE)
        self._object(object_class, POINT, [(ISOLATED_NODE, node)], attributes)

    def soundings(self, lonlatdepths: list[tuple[float, float, float]], **attributes: object) -> None:
        """One SOUNDG object of several soundings."""
        places = ", ".join(f"({lon} {lat} {depth})" for lon, lat, depth in lonlatdepths)
        node = self._write("IsolatedNode", ogr.CreateGeometryFromWkt(f"MULTIPOINT Z ({places})"), RCNM=ISOLATED_NODE)
        self._object("SOUNDG", POINT, [(ISOLATED_NODE, node)], attributes)

    def line(self, object_class: str, lonlats: list[tuple[float, float]], **attributes: object) -> None:
        """An object along a line."""
        self._object(object_class, LINE, [(EDGE, self._edge(lonlats))], attributes)

    def area(self, object_class: str, lonlats: list[tuple[float, float]], **attributes: object) -> None:
        """An object over the polygon whose corners are given, the first one not repeated."""
        first, half = lonlats[0], len(lonlats) // 2
        edges = [self._edge(lonlats[: half + 1]), self._edge([*lonlats[half:], first])]
        self._object(object_class, AREA, [(EDGE, edge) for edge in edges], attributes)

    def box(
        self, object_class: str, west: float, south: float, east: float, north: float, **attributes: object
    ) -> None:
        """An object over a box."""
        self.area(object_class, [(west, south), (east, south), (east, north), (west, north)], **attributes)

    def _edge(self, lonlats: list[tuple[float, float]]) -> int:
        ends = [
            self._write("ConnectedNode", ogr.CreateGeometryFromWkt(f"POINT ({lon} {lat})"), RCNM=CONNECTED_NODE)
            for lon, lat in (lonlats[0], lonlats[-1])
        ]
        inner = ", ".join(f"{lon} {lat}" for lon, lat in lonlats[1:-1])
        shape = ogr.CreateGeometryFromWkt(f"LINESTRING ({inner})") if len(lonlats) > 2 else None
        values = {"RCNM": EDGE}
        for at, (end, topology) in enumerate(zip(ends, (1, 2), strict=True)):
            values |= {f"NAME_RCNM_{at}": CONNECTED_NODE, f"NAME_RCID_{at}": end, f"ORNT_{at}": 255}
            values |= {f"USAG_{at}": 255, f"TOPI_{at}": topology, f"MASK_{at}": 255}
        return self._write("Edge", shape, **values)

    def _object(self, name: str, primitive: int, parts: list[tuple[int, int]], attributes: dict[str, object]) -> None:
        size = len(parts)
        self._write(
            name,
            None,
            PRIM=primitive,
            GRUP=2,
            AGEN=540,
            FIDS=1,
            NAME_RCNM=[kind for kind, _ in parts],
            NAME_RCID=[number for _, number in parts],
            ORNT=[FORWARD if primitive != POINT else 255] * size,
            USAG=[EXTERIOR if primitive == AREA else 255] * size,
            MASK=[NOT_MASKED] * size,
            **attributes,
        )

    def _write(self, layer_name: str, geometry: ogr.Geometry | None, **values: object) -> int:
        """Write one record and return its number."""
        layer = self._dataset.GetLayerByName(layer_name)
        feature = ogr.Feature(layer.GetLayerDefn())
        number = next(self._numbers)
        feature.SetField("RCID", number)
        if "FIDN" not in values and feature.GetFieldIndex("FIDN") >= 0:
            feature.SetField("FIDN", number)
        for name, value in values.items():
            index = feature.GetFieldIndex(name)
            if isinstance(value, list) and value and isinstance(value[0], int):
                feature.SetFieldIntegerList(index, value)
            elif isinstance(value, list):
                feature.SetFieldStringList(index, value)
            else:
                feature.SetField(index, value)
        feature.SetGeometry(geometry)
        layer.CreateFeature(feature)
        return number
