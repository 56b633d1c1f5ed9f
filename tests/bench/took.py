"""Whole processes, timed from start to end as a person waits for them, with all the work they cause."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path
from statistics import median

PROGRAM = "from builder.cli import main; main()"
WATCH = """
import resource, subprocess, sys, time
before = time.perf_counter()
status = subprocess.call(sys.argv[1:], stdout=subprocess.DEVNULL)
passed = time.perf_counter() - before
used = resource.getrusage(resource.RUSAGE_CHILDREN)
print(passed, used.ru_utime + used.ru_stime, used.ru_maxrss)
sys.exit(status)
"""
KIB_IN_MIB = 1024


@dataclass(frozen=True)
class Took:
    """Seconds from start to end; seconds of processors in all processes; MiB of the largest of them."""

    seconds: float
    work: float
    memory: float


def took(home: Path, *command: object) -> Took:
    """One Python process, watched by a small one: else it would inherit the peak of its parent."""
    environment = {**os.environ, "XDG_CONFIG_HOME": str(home), "NO_MKDOCS_2_WARNING": "1"}
    environment.pop("PYTHONDONTWRITEBYTECODE", None)
    words = [sys.executable, "-c", WATCH, sys.executable, *(str(one) for one in command)]
    said = subprocess.run(words, env=environment, capture_output=True, text=True, check=True)
    seconds, work, memory = said.stdout.split()
    return Took(float(seconds), float(work), float(memory) / KIB_IN_MIB)


def middle(runs: Iterable[Took]) -> Took:
    """The median of runs, each measure by itself."""
    every = list(runs)
    return Took(
        median(one.seconds for one in every),
        median(one.work for one in every),
        max(one.memory for one in every),
    )


def ratio(name: str, one: Took, other: Took, aim: str) -> None:
    """One line: times as long, times as much work, and the memory."""
    longer, more = one.seconds / other.seconds, one.work / other.work
    memory = f"{one.memory:.0f} MiB beside {other.memory:.0f}"
    print(f"  {name:<44} {longer:5.2f} times as long, {more:5.2f} the work  (aim {aim}; {memory})")


def load() -> str:
    """How busy the machine is just now."""
    return f"{os.cpu_count()} processors, {os.getloadavg()[0]:.1f} processes wanting them"
