"""How long a report over a club's folder takes, and how much memory: a script to run by hand, not a test.

    python -m tests.tools.benchmark_folder [WORKBOOKS]

A thousand workbooks if no number is given, copies of one season with the example in it.
"""

from __future__ import annotations

import os
import resource
import shutil
import sys
import tempfile
import time
from pathlib import Path

from sheetfuncs import cli
from tests.tools.edits import example


def main(count: int) -> None:
    with tempfile.TemporaryDirectory() as folder:
        first = Path(folder) / "yard 0001.xlsx"
        example().write(first, "carried")
        for number in range(2, count + 1):
            shutil.copyfile(first, first.with_name(f"yard {number:04}.xlsx"))
        start = time.perf_counter()
        code = cli.main(["report", folder, "--csv", f"{folder}/all.csv", "--html", f"{folder}/all.html"])
        seconds = time.perf_counter() - start
    own, largest = (
        resource.getrusage(who).ru_maxrss / 1024 for who in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN)
    )
    print(f"{count} workbooks, {os.cpu_count()} cores, exit {code}: {seconds:.0f} s, {seconds / count:.2f} s each")
    print(f"memory: {own:.0f} MB, and at most {largest:.0f} MB for each workbook that is being read")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 1000)
