"""The schema of a plan: every layer and table, every field, as data.

To add a layer, write its `LayerSpec` in the schema module of its topic and name it in `LAYERS`; to add a field, add its
`FieldSpec`. Making, checking, forms, documentation and bringing older plans up to date follow from the data.
"""

from __future__ import annotations

from . import schema_chart, schema_people, schema_settings, schema_water
from .field_spec import FieldSpec, LayerSpec, SettingSpec
from .schema_settings import PACKAGE_VERSION, SETTING_BY_KEY, SETTINGS, VERSION_KEY, default_settings

EPSG = 4326

LAYERS: tuple[LayerSpec, ...] = (
    schema_chart.MARKS,
    schema_chart.ROUTES,
    schema_chart.CHANNELS,
    schema_chart.CLOSED_AREAS,
    schema_chart.LAND,
    schema_chart.DEPTH_CONTOURS,
    schema_chart.SOUNDINGS,
    schema_water.TIDES,
    schema_water.STREAM_STATIONS,
    schema_water.STREAM_RATES,
    schema_water.STREAM_EVENTS,
    schema_water.STREAM_AREAS,
    schema_chart.FERRIES,
    schema_people.SWIMMERS,
    schema_settings.SETTINGS_TABLE,
    schema_people.SESSIONS,
    schema_people.CATCHES,
)

LAYER_BY_NAME: dict[str, LayerSpec] = {layer.name: layer for layer in LAYERS}

__all__ = [
    "EPSG",
    "LAYERS",
    "LAYER_BY_NAME",
    "PACKAGE_VERSION",
    "SETTINGS",
    "SETTING_BY_KEY",
    "VERSION_KEY",
    "FieldSpec",
    "LayerSpec",
    "SettingSpec",
    "default_settings",
]
