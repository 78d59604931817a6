"""What holds for every test: random ones draw alike on every run, and what shares a costly fixture runs together.

Modules that share a running LibreOffice name it in a mark, `pytest.mark.xdist_group`: one worker runs all of them.
"""

from __future__ import annotations

import gc
import itertools
from collections.abc import Iterator

import pytest
from hypothesis import settings

from tests.tools import cases
from tests.tools.calc_office import OLDEST, Office, own_folder, with_addin

TESTS = 20  # from one look for garbage to the next
ENDED = itertools.count(1)

settings.register_profile("same", derandomize=True, database=None, deadline=None)
settings.load_profile("same")


@pytest.hookimpl(tryfirst=True)  # before xdist reads the groups
def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """A file runs in one worker, its tests of each host in one; a test that names a group of its own keeps it."""
    for item in items:
        if item.get_closest_marker("xdist_group") is None:
            host = item.callspec.params.get("host", "") if hasattr(item, "callspec") else ""
            item.add_marker(pytest.mark.xdist_group(f"{item.path.name} {host}".strip()))


def pytest_collection_finish(session: pytest.Session) -> None:
    """What was collected stays until the end, and garbage is looked for every so many tests: an eighth of the time."""
    if getattr(session.config.option, "loadgroup", False) and any("@" not in item.nodeid for item in session.items):
        raise pytest.UsageError("this pytest-xdist groups no tests with this pytest: fixtures would be made twice")
    gc.collect()
    gc.freeze()
    gc.disable()


@pytest.fixture(autouse=True)
def _garbage() -> Iterator[None]:
    yield
    if next(ENDED) % TESTS == 0:
        gc.collect()


@pytest.fixture(autouse=True, scope="module")
def _forgotten(request: pytest.FixtureRequest) -> Iterator[None]:
    """What a module keeps for its tests ends with it: many commands run in a fork, which is slow in a large process."""
    yield
    for kept in (*vars(request.module).values(), *vars(cases).values()):
        if hasattr(kept, "cache_clear"):
            kept.cache_clear()


@pytest.fixture(scope="session")
def plain_office() -> Iterator[Office]:
    """LibreOffice without our add-in."""
    with own_folder() as folder:
        yield Office(folder)


@pytest.fixture(scope="session")
def addin_office() -> Iterator[Office]:
    """LibreOffice with our add-in installed."""
    with with_addin(OLDEST) as made:
        yield made
