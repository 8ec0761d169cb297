"""Adds rows for several layers to a plan in one transaction, leaving out those that stand there already."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta, timezone
from pathlib import Path
from typing import Any

from osgeo import gdal, ogr

from ..core.errors import StoppedError, SwimPlanError
from ..plan_package.field_spec import LayerSpec
from ..plan_package.row_check import checked_geometry, checked_value, checked_values
from ..plan_package.schema import LAYER_BY_NAME
from ..plan_package.settings import require_readable
from ..words import tr
from .plan_rows import PlanRow

_UTC_FLAG = 100  # GDAL's time zone flag for UTC (ogr_core.h, OGRField.Date.TZFlag)
_ASK_EVERY = 200  # rows between two looks at the cancel button

Key = tuple[Any, ...]


@dataclass(frozen=True, kw_only=True)
class Added:
    """Rows by layer: written now, and left out because the same row (geometry and values) was there already."""

    written: Counter
    already_there: Counter


@dataclass(frozen=True, kw_only=True)
class Fill:
    """Empty fields of the row of a layer whose field ``key`` is ``name``, and what they are to hold."""

    layer: str
    key: str
    name: str
    values: Mapping[str, Any]


def append_to_plan(
    path: Path,
    rows: Sequence[PlanRow],
    *,
    fills: Sequence[Fill] = (),
    is_cancelled: Callable[[], bool] = lambda: False,
    progress: Callable[[float], None] = lambda _share: None,
    before_commit: Callable[[Added], None] = lambda _added: None,
) -> Added:
    """Add the rows and fill the empty fields, all or none.

    ``before_commit`` runs when every row is in place; where it raises, nothing is written. ``progress`` gets a share
    from 0 to 1. BadInputError for a row that the plan's schema refuses, SwimPlanError where the file cannot be written,
    StoppedError where the user stopped.
    """
    require_readable(path)
    dataset = _opened(path)
    _told(dataset.StartTransaction, path)
    try:
        for fill in fills:
            _fill(dataset, path, fill)
        added = _add_all(dataset, path, rows, is_cancelled, progress)
        before_commit(added)
        _told(dataset.CommitTransaction, path)
    except BaseException:
        dataset.RollbackTransaction()
        raise
    return added


def _add_all(
    dataset: Any,
    path: Path,
    rows: Sequence[PlanRow],
    is_cancelled: Callable[[], bool],
    progress: Callable[[float], None],
) -> Added:
    added = Added(written=Counter(), already_there=Counter())
    targets = {name: _target(dataset, path, name) for name in dict.fromkeys(row.layer for row in rows)}
    known = {name: set(_stored_keys(target, LAYER_BY_NAME[name])) for name, target in targets.items()}
    for number, row in enumerate(rows):
        if number % _ASK_EVERY == 0:
            if is_cancelled():
                raise StoppedError
            progress(number / len(rows))
        spec = LAYER_BY_NAME[row.layer]
        values = checked_values(spec, number + 1, row.values)
        for wkb in checked_geometry(spec, number + 1, row.geometry):
            key = (wkb, *values.values())
            if key in known[row.layer]:
                added.already_there[row.layer] += 1
                continue
            known[row.layer].add(key)
            _told(lambda name=row.layer, wkb=wkb, values=values: _create(targets[name], wkb, values), path)
            added.written[row.layer] += 1
    if is_cancelled():
        raise StoppedError
    return added


def _fill(dataset: Any, path: Path, fill: Fill) -> None:
    """Fill what is empty; a field that holds something by now stays."""
    layer, spec = _target(dataset, path, fill.layer), LAYER_BY_NAME[fill.layer]
    fields = {field.name: field for field in spec.fields}
    layer.ResetReading()
    found = [feature for feature in layer if _stored_value(feature, fill.key, "text") == fill.name]
    for feature in found:
        for name, value in fill.values.items():
            if _stored_value(feature, name, fields[name].kind) is None:
                feature.SetField(name, checked_value(spec, feature.GetFID(), fields[name], value))
        _told(lambda feature=feature: layer.SetFeature(feature), path)


def _opened(path: Path) -> Any:
    try:
        dataset = gdal.OpenEx(str(path), gdal.OF_VECTOR | gdal.OF_UPDATE, allowed_drivers=["GPKG"])
    except RuntimeError:  # GDAL raises where the process has asked it to, and returns None elsewhere
        dataset = None
    if dataset is None:
        raise _failure(path)
    return dataset


def _target(dataset: Any, path: Path, name: str) -> Any:
    layer = dataset.GetLayerByName(name)
    if layer is None:
        raise SwimPlanError(
            asked=tr("The plan {path} has no layer {name}").format(path=path, name=name),
            allowed=tr("A plan holds every layer of its schema"),
            remedy=tr("Make a new plan and read into that"),
        )
    return layer


def _create(layer: Any, wkb: bytes | None, values: dict[str, Any]) -> int:
    feature = ogr.Feature(layer.GetLayerDefn())
    if wkb is not None:
        feature.SetGeometryDirectly(ogr.CreateGeometryFromWkb(wkb))
    for name, value in values.items():
        if value is None:
            feature.SetFieldNull(name)
        elif isinstance(value, datetime):
            second = value.second + value.microsecond / 1e6
            clock = (value.year, value.month, value.day, value.hour, value.minute, second)
            feature.SetField(feature.GetFieldIndex(name), *clock, _UTC_FLAG)
        else:
            feature.SetField(name, value)
    return layer.CreateFeature(feature)


def _stored_keys(layer: Any, spec: LayerSpec) -> Iterable[Key]:
    """What tells a row from others, for every row of the layer: its geometry and its values."""
    layer.ResetReading()
    for feature in layer:
        geometry = feature.GetGeometryRef()
        wkb = bytes(geometry.ExportToIsoWkb()) if spec.has_geometry and geometry is not None else None
        yield (wkb, *(_stored_value(feature, field.name, field.kind) for field in spec.fields))


def _stored_value(feature: Any, name: str, kind: str) -> Any:
    index = feature.GetFieldIndex(name)
    if index < 0 or not feature.IsFieldSetAndNotNull(index):
        return None
    if kind != "datetime":
        return feature.GetField(index)
    year, month, day, hour, minute, second, _flag = feature.GetFieldAsDateTime(index)
    start = datetime(year, month, day, hour, minute, tzinfo=timezone.utc)
    return start + timedelta(milliseconds=round(second * 1000.0))


def _told(action: Callable[[], int], path: Path) -> None:
    """Run a GDAL call that may return a failure or raise, as GDAL is set up; either becomes SwimPlanError."""
    try:
        result = action()
    except RuntimeError as error:
        raise _failure(path) from error
    if result != ogr.OGRERR_NONE:
        raise _failure(path)


def _failure(path: Path) -> SwimPlanError:
    return SwimPlanError(
        asked=tr("The plan {path} could not be written ({why})").format(
            path=path, why=gdal.GetLastErrorMsg() or tr("no reason given")
        ),
        allowed=tr("A plan is a GeoPackage that nothing else is writing to"),
        remedy=tr("Save or drop the edits of its layers, check free space, and try again"),
    )
