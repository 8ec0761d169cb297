"""The bands of a raster file that hold one component of the stream, step by step, opened with GDAL."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path

import numpy as np
from osgeo import gdal

from ..core.clock import UTC
from ..words import tr
from .model_row import ModelRow, listed
from .model_times import since

EPOCH = datetime(1970, 1, 1, tzinfo=UTC)
EAST_NAMES = ("uogrd", "eastward_sea_water_velocity", "sea_water_x_velocity", "surface_eastward_sea_water_velocity")
NORTH_NAMES = ("vogrd", "northward_sea_water_velocity", "sea_water_y_velocity", "surface_northward_sea_water_velocity")
LEVEL = re.compile(r"NETCDF_DIM_(?P<name>.+)$")


@dataclass(frozen=True, kw_only=True)
class Component:
    """One component: the open file, its bands step by step, their moments (None where the file does not say)."""

    dataset: gdal.Dataset
    label: str
    bands: list[int]
    moments: list[datetime] | None

    @property
    def unit(self) -> str:
        """The unit as the file writes it, "" where it does not."""
        band = self.dataset.GetRasterBand(self.bands[0])
        metadata = band.GetMetadata()
        return band.GetUnitType() or metadata.get("units") or metadata.get("GRIB_UNIT") or ""

    @property
    def is_true(self) -> bool:
        """Whether it is east or north whatever the projection, by its standard name."""
        metadata = self.dataset.GetRasterBand(self.bands[0]).GetMetadata()
        name = metadata.get("standard_name") or metadata.get("long_name") or ""
        return name.lower().startswith(("eastward", "northward", "surface_eastward", "surface_northward"))

    def read(self, step: int, windows: list[tuple[int, int]], top: int, height: int) -> np.ndarray:
        """The values (height, n) of one step in columns given as (first, count) pieces, scaled, NaN where masked."""
        band = self.dataset.GetRasterBand(self.bands[step])
        scale, offset = band.GetScale(), band.GetOffset()
        pieces = []
        for left, width in windows:
            values = band.ReadAsArray(left, top, width, height).astype(np.float32)
            mask = band.GetMaskBand().ReadAsArray(left, top, width, height)
            values = values * (1.0 if scale is None else scale) + (0.0 if offset is None else offset)
            pieces.append(np.where(mask == 0, np.nan, values))
        return np.hstack(pieces)


def component(row: ModelRow, path: Path, field: str, asked: str, names: tuple[str, ...]) -> Component:
    """The bands that a row's ``field`` asks for, or that bear one of the trade's ``names`` where it asks for none."""
    dataset = _opened(row, path, field, asked, names)
    labels = [_label(dataset.GetRasterBand(number)) for number in range(1, dataset.RasterCount + 1)]
    bands = _bands(row, dataset, field, asked, names, labels)
    bands = _nearest_surface(dataset, bands)
    moments = [_moment(row, dataset, dataset.GetRasterBand(band)) for band in bands]
    if None not in moments:
        pairs = sorted(zip(moments, bands))
        moments, bands = [moment for moment, _ in pairs], [band for _, band in pairs]
    return Component(
        dataset=dataset,
        label=labels[bands[0] - 1] or asked,
        bands=bands,
        moments=None if None in moments else moments,
    )


def _opened(row: ModelRow, path: Path, field: str, asked: str, names: tuple[str, ...]) -> gdal.Dataset:
    dataset = _open(str(path))
    if dataset is None:
        raise row.refused(
            "v_path" if field == "v_group" and row.v_path else "path",
            path.name,
            tr("GDAL does not open this file as a raster"),
            tr("Name a raster file, or write kind 'mesh' if it is a mesh"),
        )
    parts = dataset.GetSubDatasets()
    if not parts:
        return dataset
    variables = {uri.rsplit(":", 1)[-1].strip("/"): (uri, text) for uri, text in parts}
    wanted = [asked] if asked in variables else []
    if not asked:
        wanted = [name for name, (_, text) in variables.items() if any(_has(text + " " + name, one) for one in names)]
    found = _open(variables[wanted[0]][0]) if len(wanted) == 1 else None
    if found is None or not found.RasterCount:
        raise row.refused(
            field,
            asked or None,
            tr("The file's groups are {names}").format(names=listed(list(variables))),
            tr("Name the one for this part"),
        )
    return found


def _bands(
    row: ModelRow, dataset: gdal.Dataset, field: str, asked: str, names: tuple[str, ...], labels: list[str]
) -> list[int]:
    """Numbers, from 1, of the bands that belong to the component."""
    numbers = range(1, dataset.RasterCount + 1)
    variable = dataset.GetRasterBand(1).GetMetadataItem("NETCDF_VARNAME") if dataset.RasterCount else None
    if variable and len({label.lower() for label in labels}) == 1 and (not asked or variable == asked):
        found = list(numbers)
    elif asked:
        found = [number for number in numbers if labels[number - 1].lower().startswith(asked.lower())]
    else:
        found = [number for number in numbers if any(_has(labels[number - 1], name) for name in names)]
        # A file of its own for each part needs no names.
        found = found or (list(numbers) if row.v_path is not None else [])
    if not found:
        raise row.refused(
            field,
            asked or None,
            tr("The file's bands are {names}").format(names=listed(list(dict.fromkeys(labels)))),
            tr("Give the letters the bands of this part begin with"),
        )
    return found


def _label(band: gdal.Band) -> str:
    metadata = band.GetMetadata()
    return metadata.get("NETCDF_VARNAME") or metadata.get("GRIB_ELEMENT") or band.GetDescription() or ""


def _nearest_surface(dataset: gdal.Dataset, bands: list[int]) -> list[int]:
    """Of bands that differ in level as well as in time, those of the level nearest to nothing: the surface."""
    levels = {}
    for number in bands:
        metadata = dataset.GetRasterBand(number).GetMetadata()
        found = [(match["name"], metadata[key]) for key in metadata if (match := LEVEL.match(key))]
        level = [float(value) for name, value in found if " since " not in _units(dataset, name)]
        level += [float(digits) for digits in re.findall(r"^(\d+(?:\.\d+)?)-", metadata.get("GRIB_SHORT_NAME", ""))]
        levels[number] = tuple(abs(value) for value in level)
    shallowest = min(levels.values())
    return [number for number in bands if levels[number] == shallowest]


def _moment(row: ModelRow, dataset: gdal.Dataset, band: gdal.Band) -> datetime | None:
    """When a band holds, by its own metadata; None where it does not say."""
    metadata = band.GetMetadata()
    grib = re.match(r"\s*(\d+)", metadata.get("GRIB_VALID_TIME", ""))
    if grib:
        return EPOCH + timedelta(seconds=int(grib[1]))
    for key, value in metadata.items():
        match = LEVEL.match(key)
        units = _units(dataset, match["name"]) if match else ""
        if " since " in units:
            reference, factor = since(row, units, dataset.GetMetadataItem(f"{match['name']}#calendar") or "")
            return reference + timedelta(seconds=round(float(value) * factor, 3))
    return None


def _units(dataset: gdal.Dataset, dimension: str) -> str:
    return dataset.GetMetadataItem(f"{dimension}#units") or ""


def _has(text: str, name: str) -> bool:
    return re.search(rf"(?<![a-z_]){re.escape(name)}(?![a-z_])", text.lower()) is not None


def _open(uri: str) -> gdal.Dataset | None:
    gdal.PushErrorHandler("CPLQuietErrorHandler")
    try:
        return gdal.OpenEx(uri, gdal.OF_RASTER)
    except RuntimeError:
        # Where someone switched GDAL's exceptions on; None says the same.
        return None
    finally:
        gdal.PopErrorHandler()
