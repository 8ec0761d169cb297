"""What transits are looked for: the marks and landmarks of a plan, or another layer's things ashore."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime, timezone
from pathlib import Path

from qgis.core import QgsFeatureSource
from qgis.PyQt.QtCore import QMetaType

from ..core.chart.marks import Mark
from ..core.errors import BadInputError, SwimPlanError
from ..core.results.report import wrapped_lon
from ..core.solve.transit_lines import TransitLimits
from ..core.solve.transits import Landmarks
from ..plan_package.field_spec import FieldSpec, LayerSpec
from ..plan_package.settings import read_settings
from ..words import tr
from .day_asked import midnights
from .marks_in import marks_from
from .plan_tables import tables_of
from .table import Table
from .transits_in import landmarks_from


@dataclass(frozen=True, kw_only=True)
class TransitsAsked:
    """What the user asked for: a mark's name, empty for all of kind mark; ``day`` as typed, empty for today."""

    mark: str = ""
    day: str = ""
    offset_m: float = 20.0


@dataclass(frozen=True, kw_only=True)
class TransitsRequest:
    """Marks and landmarks to look for transits with.

    ``held`` are the plan's own landmarks, ``has_rows`` the marks that have transits in the plan already.
    """

    marks: tuple[Mark, ...]
    landmarks: Landmarks
    date: datetime
    limits: TransitLimits
    held: Landmarks
    has_rows: frozenset[str]
    warnings: tuple[str, ...] = ()


def transits_request(
    plan: str | Path, source: QgsFeatureSource | None, asked: TransitsAsked, now: datetime | None = None
) -> TransitsRequest:
    """The request; ``source`` is a layer of points in the place of the plan's landmarks.

    Raises SwimPlanError, and BadInputError naming layer, row, field and value.
    """
    warnings: list[str] = []
    limits = TransitLimits(offset_m=asked.offset_m)
    tables = tables_of(plan, {}, warnings)
    held = landmarks_from(tables.get("landmarks"))
    rows = tables["transits"].rows() if "transits" in tables else ()
    return TransitsRequest(
        marks=_marks_asked(marks_from(tables.get("marks")), asked.mark),
        landmarks=held if source is None else _things_of(source, warnings),
        date=midnights(asked.day, read_settings(plan)["zone"])[0] if asked.day else now or datetime.now(timezone.utc),
        limits=limits,
        held=held,
        has_rows=frozenset(row.values["mark"] for row in rows),
        warnings=tuple(warnings),
    )


def _marks_asked(marks: list[Mark], name: str) -> tuple[Mark, ...]:
    chosen = [mark for mark in marks if (mark.name == name if name else mark.kind == "mark")]
    if not chosen:
        names = ", ".join(mark.name for mark in marks) or tr("no rows")
        raise SwimPlanError(
            asked=tr("Asked for transits of the mark '{name}'").format(name=name)
            if name
            else tr("Asked for transits of all of kind mark"),
            allowed=(
                tr("The marks layer has {names}") if name else tr("The marks layer has {names}, none of that kind")
            ).format(names=names),
            remedy=tr("Name one of them, or add the mark"),
        )
    return tuple(replace(mark, lon=wrapped_lon(mark.lon)) for mark in chosen[: 1 if name else None])


def _things_of(source: QgsFeatureSource, warnings: list[str]) -> Landmarks:
    """The points of any layer that have a name: in a field ``name``, in whatever letters, else in its first text."""
    texts = [field.name() for field in source.fields() if field.type() == QMetaType.Type.QString]
    names = [field.name() for field in source.fields() if field.name().lower() == "name"] or texts
    if not names:
        raise BadInputError(
            layer=source.sourceName(),
            field="name",
            allowed=tr("A layer of landmarks has a field of text with their names"),
            remedy=tr("Add one, or choose another layer"),
        )
    field = FieldSpec(name=names[0], kind="text", alias="Name")
    spec = LayerSpec(name="landmarks", geometry="Point", title="Landmarks", fields=(field,))
    landmarks = landmarks_from(Table(source, spec, warnings), names[0])
    unnamed = source.featureCount() - len(landmarks.names)
    if unnamed > 0:
        warnings.append(
            tr(
                "Layer '{layer}': {unnamed} of {count} rows give no landmark: they have nothing "
                "in the field '{field}', or no place."
            ).format(layer=source.sourceName(), unnamed=unnamed, count=source.featureCount(), field=names[0])
        )
    return landmarks
