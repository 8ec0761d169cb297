"""The schema of a plan: every layer and table, every field, as data.

To add a layer, write its `LayerSpec` in the schema module of its topic and name it in `LAYERS`; to add a field, add its
`FieldSpec`. Making, checking, forms, documentation and bringing older plans up to date follow from the data.
"""

from __future__ import annotations

from . import (
    schema_chart,
    schema_people,
    schema_settings,
    schema_stations,
    schema_streams,
    schema_tides,
    schema_transits,
)
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
    schema_transits.LANDMARKS,
    schema_transits.TRANSITS,
    schema_tides.TIDES,
    schema_tides.TIDE_PORTS,
    schema_tides.TIDE_SERIES,
    schema_tides.TIDE_CONSTANTS,
    schema_tides.TIDE_COEFFICIENTS,
    schema_stations.STREAM_STATIONS,
    schema_streams.STREAM_RATES,
    schema_streams.STREAM_EVENTS,
    schema_streams.STREAM_SERIES,
    schema_streams.STREAM_CONSTANTS,
    schema_streams.STREAM_MODELS,
    schema_streams.STREAM_AREAS,
    schema_streams.WINDS,
    schema_streams.DRIFTS,
    schema_chart.FERRIES,
    schema_people.SWIMMERS,
    schema_settings.SETTINGS_TABLE,
    schema_people.SESSIONS,
    schema_people.CATCHES,
)

# Younger than the rest: a plan that lacks one of these simply has nothing of it.
YOUNGER = (
    "landmarks",
    "transits",
    "tide_ports",
    "tide_series",
    "tide_constants",
    "tide_coefficients",
    "stream_series",
    "stream_constants",
    "stream_models",
    "winds",
    "drifts",
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
    "YOUNGER",
    "FieldSpec",
    "LayerSpec",
    "SettingSpec",
    "default_settings",
]
