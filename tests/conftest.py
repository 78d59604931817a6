"""Random tests draw the same examples on every run: a failure in one place fails everywhere."""

from __future__ import annotations

from hypothesis import settings

settings.register_profile("same", derandomize=True, database=None, deadline=None)
settings.load_profile("same")
