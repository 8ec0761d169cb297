"""The one thread in which map projections are made and used."""

from __future__ import annotations

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from functools import cache
from typing import Any, TypeVar

Answer = TypeVar("Answer")


@cache
def _thread() -> ThreadPoolExecutor:
    return ThreadPoolExecutor(max_workers=1, thread_name_prefix="tideleg-projecting")


def in_projecting_thread(work: Callable[..., Answer], *given: Any) -> Answer:
    """``work(*given)`` done in the thread where all of Tideleg's use of pyproj's projections happens, and waited for.

    pyproj 3.7 (``_context.pyx``) keeps a thread's context by the machine's thread and destroys it with Python's state
    of that thread. A worker of QGIS gets a new such state at each task, so the second task that projects in one worker
    would use a context that is gone, and QGIS with it. This thread is Python's own and lives as long as the plugin.
    What is made in it must stay in it: ``work`` returns numbers, never a projection.
    """
    return _thread().submit(work, *given).result()
