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
