#!/usr/bin/env python3
"""Print the speed table: each row measured in this one run, beside something to compare it with.

`./run bench` prints all of it, `./run bench live_bench replan` these rows.
"""

from __future__ import annotations

import os
import resource
import sys
from importlib import import_module
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
sys.path.insert(0, str(Path(__file__).resolve().parents[2] / "sample_layers"))
sys.path.insert(0, str(Path(__file__).resolve().parents[2] / "tests" / "qgis"))
sys.path.insert(0, str(Path(__file__).resolve().parent))
sys.path.append("/usr/share/qgis/python/plugins")

from qgis.core import QgsApplication

ROWS = (
    "replan",
    "stream_sampling",
    "mesh_sampling",
    "windows_bench",
    "confidence_bench",
    "order_bench",
    "reach_bench",
    "live_bench",
    "map_tools_bench",
    "tables_bench",
    "card_bench",
)


def main(wanted: list[str]) -> int:
    """Run every row, or those wanted by name."""
    strange = sorted(set(wanted) - set(ROWS))
    if strange:
        print(f"There is no {', '.join(strange)}; there are {', '.join(ROWS)}.", file=sys.stderr)
        return 2
    application = QgsApplication([], True)
    application.initQgis()
    from processing.core.Processing import Processing

    Processing.initialize()
    for row in wanted or ROWS:
        import_module(row).report()
    peak_mb = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024.0
    print(f"peak memory of this run: {peak_mb:.0f} MB (QGIS itself included)")
    application.exitQgis()
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
