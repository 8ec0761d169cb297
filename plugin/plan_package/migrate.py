"""Brings a plan up to this version's schema, on a copy."""

from __future__ import annotations

from pathlib import Path

from . import database
from .geopackage import GeoPackage
from .placing import placed_whole
from .schema import EPSG, LAYERS, PACKAGE_VERSION, VERSION_KEY, default_settings
from .settings import require_readable, settings_of, write_settings
from .styles import store_styles


def bring_up_to_date(path: str | Path, destination: str | Path) -> Path:
    """Copy the plan to `destination` and add there what this version's schema has and the plan lacks.

    Missing layers, fields and settings are added empty or with their defaults, forms and styles are stored anew under
    their own names; rows, other layers and other styles stay as they are. The plan at `path` is not touched. Raises
    SwimPlanError for a plan of a newer version and for a destination that is already there.
    """
    path, destination = Path(path), Path(destination)
    require_readable(path)
    settings = settings_of(database.read_pairs(path))
    with placed_whole(destination) as draft:
        database.copy_whole(path, draft)
        _complete_layers(draft)
        known = {key: settings[key] for key in default_settings()}
        write_settings(draft, {**known, VERSION_KEY: str(PACKAGE_VERSION)})
        database.drop_styles(draft, [spec.name for spec in LAYERS])
        store_styles(draft, LAYERS)
    return destination


def _complete_layers(draft: Path) -> None:
    with GeoPackage(draft) as package:
        present = set(package.layer_names())
        for spec in LAYERS:
            if spec.name not in present:
                package.add_layer(spec, EPSG)
                continue
            fields = set(package.field_names(spec.name))
            for field in spec.fields:
                if field.name not in fields:
                    # Rows that are already there have no value for it.
                    package.add_field(spec.name, field, nullable=True)
