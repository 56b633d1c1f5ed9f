"""Work shared out among the processors of a machine: this process does its part, helpers the rest."""

from __future__ import annotations

import os
from collections import deque
from collections.abc import Callable, Sequence
from concurrent.futures import Future, ProcessPoolExecutor
from multiprocessing import get_context
from typing import Self, TypeVar

S = TypeVar("S")
R = TypeVar("R")
MOST = 4  # as many processes in all; each holds a part of the course
AHEAD = 2  # a helper has the next share at hand while it works on one


class Crew:
    """Helpers, started when the first shares are given out and kept until the end; there may be none."""

    def __init__(self, helpers: int) -> None:
        self._helpers = helpers
        self._pool: ProcessPoolExecutor | None = None

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        if self._pool is not None:
            self._pool.shutdown(cancel_futures=True)

    def done(self, work: Callable[[S], R], shares: Sequence[S]) -> list[R]:
        """What `work` gives for every share, in their order; the first fault of any of them is raised.

        Work and shares are sent to other processes, so both must be plain values of modules.
        """
        given: dict[int, Future[R]] = {}
        own: dict[int, R] = {}
        left = deque(range(len(shares)))
        while left:
            while self._helpers and len(left) > 1 and _unfinished(given) < AHEAD * self._helpers:
                at = left.popleft()
                given[at] = self._ready().submit(work, shares[at])
            at = left.pop()
            own[at] = work(shares[at])
        return [own[at] if at in own else given[at].result() for at in range(len(shares))]

    def _ready(self) -> ProcessPoolExecutor:
        if self._pool is None:
            self._pool = ProcessPoolExecutor(self._helpers, mp_context=get_context("spawn"))
        return self._pool


def helpers() -> int:
    """How many more processes this machine has room for."""
    able = len(os.sched_getaffinity(0)) if hasattr(os, "sched_getaffinity") else os.cpu_count() or 1
    return min(able, MOST) - 1


def _unfinished(given: dict[int, Future[R]]) -> int:
    return sum(not one.done() for one in given.values())
