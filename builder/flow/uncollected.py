"""Work that makes a million small values and no cycles, done without looking for cycles all the while."""

from __future__ import annotations

import gc
from collections.abc import Iterator
from contextlib import contextmanager


@contextmanager
def uncollected() -> Iterator[None]:
    """Let the collector rest; what nobody holds any more is given back all the same.

    What was made meanwhile is old when it wakes, so that it does not begin by walking through all of it.
    """
    working = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if working:
            gc.freeze()
            gc.unfreeze()
            gc.enable()
