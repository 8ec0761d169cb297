"""How the core's refusals reach whoever runs an algorithm."""

from __future__ import annotations

import traceback
from collections.abc import Callable, Iterator
from contextlib import contextmanager

from qgis.core import QgsProcessingException
from qgis.PyQt.QtCore import QCoreApplication

from ..core.errors import StoppedError, SwimPlanError


@contextmanager
def refusals(undo: Callable[[], None] | None = None) -> Iterator[None]:
    """Turns SwimPlanError and StoppedError into QGIS's own exception, in words alone; ``undo`` is called before.

    QGIS keeps the last exception of an algorithm for as long as it runs. Chained to the core's, or with its frames, it
    would keep the user's layers open as long.
    """
    words = ""
    try:
        yield
    except SwimPlanError as error:
        words = str(error)
        traceback.clear_frames(error.__traceback__)
    except StoppedError as error:
        words = QCoreApplication.translate("Tideleg", "Stopped: everything is as it was.")
        traceback.clear_frames(error.__traceback__)
    if words:
        if undo is not None:
            undo()
        raise QgsProcessingException(words)
