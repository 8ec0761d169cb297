#!/usr/bin/env python3
"""Print the speed table: each row measured in this one run, beside something to compare it with. `./run bench`."""

from __future__ import annotations

import os
import resource
import sys
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
sys.path.insert(0, str(Path(__file__).resolve().parent))
sys.path.append("/usr/share/qgis/python/plugins")

from qgis.core import QgsApplication


def main() -> int:
    """Run every row."""
    application = QgsApplication([], False)
    application.initQgis()
    from processing.core.Processing import Processing

    Processing.initialize()
    import confidence_bench
    import mesh_sampling
    import order_bench
    import reach_bench
    import replan
    import stream_sampling
    import windows_bench

    replan.report()
    stream_sampling.report()
    mesh_sampling.report()
    windows_bench.report()
    confidence_bench.report()
    order_bench.report()
    reach_bench.report()
    peak_mb = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024.0
    print(f"peak memory of this run: {peak_mb:.0f} MB (QGIS itself included)")
    application.exitQgis()
    return 0


if __name__ == "__main__":
    sys.exit(main())
