"""What an algorithm's worker has done in the main thread: done there, its errors raised, and given up when stopped."""

from __future__ import annotations

import threading

import pytest
from desk import wait_for
from tideleg.core.errors import StoppedError, SwimPlanError
from tideleg.processing.main_thread import in_main_thread


def outcome(work, **about) -> list:
    """What a worker gets, a result or an error; the main thread goes on meanwhile."""
    got: list = []

    def ask() -> None:
        try:
            got.append(in_main_thread(work, **about))
        except Exception as error:
            got.append(error)

    worker = threading.Thread(target=ask)
    worker.start()
    wait_for(lambda: bool(got), "the worker")
    worker.join()
    return got


def test_a_workers_errand_is_done_in_the_main_thread(qgis_app) -> None:
    assert outcome(threading.get_ident) == [threading.main_thread().ident]


def test_in_the_main_thread_itself_it_is_done_at_once(qgis_app) -> None:
    assert in_main_thread(threading.get_ident) == threading.main_thread().ident


def test_an_error_there_is_raised_in_the_worker(qgis_app) -> None:
    def refused() -> None:
        raise SwimPlanError(asked="Asked for the moon")

    (error,) = outcome(refused)
    assert isinstance(error, SwimPlanError) and "moon" in str(error)


def test_a_stopped_worker_does_not_wait_for_a_main_thread_that_waits_for_it(qgis_app) -> None:
    done: list = []
    got: list = []

    def ask() -> None:
        with pytest.raises(StoppedError):
            in_main_thread(lambda: done.append(1), lambda: True)
        got.append("stopped")

    worker = threading.Thread(target=ask)
    worker.start()
    worker.join(30.0)  # the main thread does nothing else meanwhile
    assert got == ["stopped"]
    wait_for(lambda: True, "what was asked for")
    assert done == []
