"""Files that were cut short never take the place of what was there."""

from __future__ import annotations

from pathlib import Path

import pytest
from tideleg.cards.whole_files import write_whole
from tideleg.core.errors import SwimPlanError

PDF, PNG = b"%PDF-1.4\n1 0 obj\n%%EOF\n", b"\x89PNG\r\n\x1a\n....IEND\xaeB`\x82"


@pytest.mark.parametrize(("name", "whole"), [("card.pdf", PDF), ("card.png", PNG)])
@pytest.mark.parametrize("kept", [0, 12])
def test_a_page_that_was_cut_short_leaves_the_old_one(tmp_path: Path, name: str, whole: bytes, kept: int) -> None:
    path = tmp_path / name
    write_whole({path: lambda draft: draft.write_bytes(whole)})
    with pytest.raises(SwimPlanError, match="could not be written whole"):
        write_whole({path: lambda draft: draft.write_bytes(whole[:kept])})
    assert path.read_bytes() == whole
    assert [one.name for one in tmp_path.iterdir()] == [name]


def test_a_name_as_long_as_the_disk_allows_is_written(tmp_path: Path) -> None:
    path = tmp_path / ("n" * 251 + ".csv")
    write_whole({path: lambda draft: draft.write_text("a,b\n")})
    assert path.read_text() == "a,b\n"


def test_where_one_of_several_cannot_be_moved_all_places_are_as_they_were(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    first, second, third = (tmp_path / name for name in ("a.csv", "b.csv", "c.csv"))
    first.write_text("old a")
    third.write_text("old c")
    move = Path.replace

    def held(draft: Path, to: Path) -> Path:
        """As where another program holds the last file."""
        if Path(to) == third:
            raise PermissionError(13, "Permission denied", str(to))
        return move(draft, to)

    monkeypatch.setattr(Path, "replace", held)
    with pytest.raises(SwimPlanError, match="Could not write"):
        write_whole({path: lambda draft: draft.write_text("new") for path in (first, second, third)})
    assert first.read_text() == "old a" and third.read_text() == "old c"
    assert sorted(one.name for one in tmp_path.iterdir()) == ["a.csv", "c.csv"]


def test_several_files_take_the_places_of_those_before(tmp_path: Path) -> None:
    paths = [tmp_path / name for name in ("a.csv", "b.csv")]
    paths[0].write_text("old")
    write_whole({path: lambda draft: draft.write_text("new") for path in paths})
    assert [path.read_text() for path in paths] == ["new", "new"] and len(list(tmp_path.iterdir())) == 2
