"""The sample, an invented bay: where it came with the plugin, and the copy of it that a user may work in."""

from __future__ import annotations

import shutil
from pathlib import Path

from qgis.core import QgsApplication

from ..core.errors import SwimPlanError
from ..version import tideleg_version
from ..words import tr

NAME = "invented_bay.gpkg"
PLUGIN = Path(__file__).resolve().parents[1]
SHIPPED = PLUGIN / "sample" / NAME  # in the zip
OF_CHECKOUT = PLUGIN.parent / "sample_layers" / NAME
WALK_ROUTE = "Slantwise from the slip"  # of the sample's routes the one that meets most


def has_sample() -> bool:
    """Whether this copy of the plugin has the sample."""
    return SHIPPED.is_file() or OF_CHECKOUT.is_file()


def is_sample(path: Path | None) -> bool:
    """Whether a plan's file is the sample or a copy of it."""
    return path is not None and path.name == NAME


def own_copy() -> Path:
    """Where the user's copy is kept: in the QGIS profile, apart for each version, since plans change with it."""
    return Path(QgsApplication.qgisSettingsDirPath()) / "tideleg" / f"sample-{tideleg_version()}" / NAME


def sample_plan() -> Path:
    """The sample to open: what the zip brought is copied once to where the user may write, and what was changed in the
    copy stays. SwimPlanError where it cannot be copied."""
    if not SHIPPED.is_file():
        return OF_CHECKOUT
    copy = own_copy()
    if not copy.is_file():
        unfinished = copy.with_suffix(".unfinished")
        try:
            copy.parent.mkdir(parents=True, exist_ok=True)
            shutil.copyfile(SHIPPED, unfinished)
            unfinished.replace(copy)
        except OSError as error:
            raise SwimPlanError(
                asked=tr("The sample could not be copied to {} ({})").format(copy, error),
                remedy=tr("Check the free space and the rights of that folder, and try again"),
            ) from error
    return copy
