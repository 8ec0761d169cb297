"""Times of a plan that were stored with an offset other than UTC's."""

from __future__ import annotations

from pathlib import Path

from osgeo import gdal

from ..core.errors import BadInputError
from ..words import tr
from .schema import LAYERS

# The end of a text such as 2027-06-05T11:40:00+02:00. QGIS 3.22 reads its digits and drops the offset without a word.
_OTHER_OFFSET = "(\"{0}\" LIKE '%+__:__' OR \"{0}\" LIKE '%T%-__:__') AND \"{0}\" NOT LIKE '%+00:00'"


def check_offsets(plan: str | Path) -> None:
    """BadInputError naming the first row whose time has an offset other than UTC's: it could be read hours wrong."""
    dataset = gdal.OpenEx(str(plan), gdal.OF_VECTOR | gdal.OF_READONLY)
    if dataset is None:
        return  # whoever opens the plan's layers says what is wrong with it
    for spec in LAYERS:
        layer = dataset.GetLayerByName(spec.name)
        for field in spec.fields if layer is not None else ():
            if field.kind != "datetime" or layer.GetLayerDefn().GetFieldIndex(field.name) < 0:
                continue
            layer.SetAttributeFilter(_OTHER_OFFSET.format(field.name))
            row = layer.GetNextFeature()
            if row is not None:
                raise BadInputError(
                    layer=spec.name,
                    row=row.GetFID(),
                    field=field.name,
                    value=row.GetFieldAsString(field.name),
                    allowed=tr("Times in this table are stored in UTC"),
                    remedy=tr("Store it in UTC, like 2027-06-05T09:40:00Z"),
                )
