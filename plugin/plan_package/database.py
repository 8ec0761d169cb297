"""The plan's file as the SQLite database it is: small reads and writes, and settling it before it is moved."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import closing, contextmanager
from contextvars import ContextVar
from pathlib import Path

from ..core.errors import SwimPlanError
from ..words import tr

BUSY_S = 10.0
_patience_s = ContextVar("how long a read waits for another program", default=BUSY_S)


def table_names(path: Path) -> set[str]:
    """Names of the tables in the file."""
    with _reading(path) as connection:
        return {row[0] for row in connection.execute("SELECT name FROM sqlite_master WHERE type = 'table'")}


def read_pairs(path: Path) -> list[tuple[str, str | None]]:
    """The rows of the `settings` table as (key, value), in the order they were written; empty without the table."""
    if "settings" not in table_names(path):
        return []
    with _reading(path) as connection:
        pairs = connection.execute("SELECT key, value FROM settings ORDER BY fid")
        # A column of numbers, as another program may have made it, gives numbers.
        return [(key, None if value is None else str(value)) for key, value in pairs]


def row_count(path: Path, table: str) -> int:
    """How many rows a table has, counted one by one; 0 where it is not there.

    GDAL is not asked: it gives up at once where QGIS is just changing the file's journal, SQLite waits.
    """
    if table not in table_names(path):
        return 0
    with _reading(path) as connection:
        return connection.execute(" ".join(("SELECT", "count(*)", "FROM", quoted(table)))).fetchone()[0]


def quoted(name: str) -> str:
    """A table's or column's name as SQL has it: a name cannot be bound as a value is; it is one of the file's own."""
    return '"' + name.replace('"', '""') + '"'


def table_columns(path: Path) -> dict[str, set[str]]:
    """The columns of every table in the file."""
    names = table_names(path)
    with _reading(path) as connection:
        return {
            name: {row[0] for row in connection.execute("SELECT name FROM pragma_table_info(?)", (name,))}
            for name in names
        }


def first_row_where(
    path: Path, table: str, columns: Sequence[str], condition: str
) -> tuple[int, tuple[object, ...]] | None:
    """Id and values of the first row for which a condition in SQL holds, as they are stored; None without one."""
    shown = ", ".join(map(quoted, columns))
    words = ("SELECT rowid,", shown, "FROM", quoted(table), "WHERE", condition, "ORDER BY rowid LIMIT 1")
    with _reading(path) as connection:
        found = connection.execute(" ".join(words)).fetchone()
    return None if found is None else (found[0], found[1:])


def replace_pairs(path: Path, pairs: Mapping[str, str]) -> None:
    """Set keys of the `settings` table, each to one row, all or none."""
    with _writing(path) as connection:
        connection.executemany("DELETE FROM settings WHERE key = ?", [(key,) for key in pairs])
        connection.executemany("INSERT INTO settings (key, value) VALUES (?, ?)", list(pairs.items()))


def edit_styles(path: Path, edit: Callable[[str], str]) -> None:
    """Pass the stored style document of every layer through `edit`."""
    with _writing(path) as connection:
        styles = connection.execute("SELECT id, styleQML FROM layer_styles").fetchall()
        connection.executemany(
            "UPDATE layer_styles SET styleQML = ? WHERE id = ?", [(edit(qml), key) for key, qml in styles]
        )


def drop_styles(path: Path, names: list[str]) -> None:
    """Forget the stored styles of these names, each of the layer of the same name; other styles stay."""
    if "layer_styles" not in table_names(path):
        return
    with _writing(path) as connection:
        connection.executemany(
            "DELETE FROM layer_styles WHERE f_table_name = ? AND styleName = ?", [(name, name) for name in names]
        )


def copy_whole(source: Path, destination: Path) -> None:
    """Copy the database as it stands, what lies in its journal included."""
    with _reading(source) as connection, closing(sqlite3.connect(destination)) as copy:
        connection.backup(copy)


def settle(path: Path) -> None:
    """Fold journal files into the file and check that it is whole; raises SwimPlanError when it is not."""
    with _writing(path) as connection:
        connection.execute("PRAGMA journal_mode = DELETE")
        verdict = connection.execute("PRAGMA quick_check").fetchone()[0]
    if verdict != "ok":
        raise SwimPlanError(
            asked=tr("The new plan {name} did not come out whole ({verdict})").format(name=path.name, verdict=verdict),
            remedy=tr("Check free space on the disk and try again"),
        )


def settle_before_replacing(path: Path) -> None:
    """Let go of the journal of a file that is about to be replaced: left behind, it would be played into the new one.

    Raises SwimPlanError while another program, or a project, has the file open.
    """
    if not any(_journal(path, ending).exists() for ending in ("-wal", "-journal")):
        return
    try:
        with closing(sqlite3.connect(path, timeout=0.0)) as connection:
            connection.execute("PRAGMA journal_mode = DELETE")
    except sqlite3.OperationalError as error:
        raise SwimPlanError(
            asked=tr("The plan {path} was to be replaced while it is open").format(path=path),
            allowed=tr("No other program or project may have it open"),
            remedy=tr("Remove its layers from open projects and try again"),
        ) from error
    except sqlite3.DatabaseError:
        # Not a database at all, so its name's journal belongs to nothing.
        for ending in ("-wal", "-shm", "-journal"):
            _journal(path, ending).unlink(missing_ok=True)


def _journal(path: Path, ending: str) -> Path:
    return path.with_name(path.name + ending)


@contextmanager
def _reading(path: Path) -> Iterator[sqlite3.Connection]:
    if not path.is_file():
        raise _not_a_plan(path, tr("there is no such file"))
    try:
        with closing(
            sqlite3.connect(path.absolute().as_uri() + "?mode=ro", uri=True, timeout=_patience_s.get())
        ) as connection:
            yield connection
    except sqlite3.OperationalError as error:
        raise (_held(path, error) if _is_held(error) else _not_a_plan(path, str(error))) from error
    except sqlite3.Error as error:
        raise _not_a_plan(path, str(error)) from error


@contextmanager
def _writing(path: Path) -> Iterator[sqlite3.Connection]:
    try:
        with closing(sqlite3.connect(path, timeout=BUSY_S)) as connection, connection:
            yield connection
    except sqlite3.Error as error:
        raise SwimPlanError(
            asked=tr("The plan {path} could not be written ({error})").format(path=path, error=error),
            allowed=tr("A plan is a GeoPackage that nothing else is writing to"),
            remedy=tr("Save or drop the edits of its layers and try again"),
        ) from error


@contextmanager
def patience(seconds: float) -> Iterator[None]:
    """Reads within wait no longer than this for another program that writes: where a window must not stand still."""
    before = _patience_s.set(seconds)
    try:
        yield
    finally:
        _patience_s.reset(before)


def _is_held(error: sqlite3.OperationalError) -> bool:
    return "locked" in str(error) or "busy" in str(error)


def _held(path: Path, error: sqlite3.OperationalError) -> SwimPlanError:
    return SwimPlanError(
        asked=tr("The plan {path} could not be read ({error})").format(path=path, error=error),
        allowed=tr("Another program is writing to it"),
        remedy=tr("Close it there, then try again"),
    )


def _not_a_plan(path: Path, reason: str) -> SwimPlanError:
    return SwimPlanError(
        asked=tr("The plan {path} could not be read ({reason})").format(path=path, reason=reason),
        allowed=tr("A plan is one GeoPackage file"),
        remedy=tr("Check the path, or make a new plan"),
    )


def is_plan(path: Path) -> bool:
    """Whether a file is there that holds a plan's tables."""
    if not path.is_file():
        return False
    with path.open("rb") as file:
        if file.read(16) != b"SQLite format 3\0":
            return False
    try:
        return {"settings", "marks", "routes"} <= table_names(path)
    except SwimPlanError:
        return True  # it cannot be looked into just now: better safe
