"""The host as a process of its own, as an instructor starts it."""

import json
import os
import signal
import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

from builder.doors.machine import reachable
from tests.doors.serve.asking import Place

# As a terminal starts it: in the background of a script Ctrl-C would be ignored from the start.
CODE = (
    "import signal; signal.signal(signal.SIGINT, signal.default_int_handler); "
    "from builder.cli import main; main()"
)


@dataclass(frozen=True)
class Running:
    """One host process: what it said first, and its two ways in."""

    process: subprocess.Popen[str]
    opened: dict[str, Any]

    @property
    def ways(self) -> dict[str, str]:
        """Where it can be reached."""
        found: dict[str, str] = self.opened["ways"]
        return found

    @property
    def hall(self) -> Place:
        """The hall, as a phone reaches it."""
        address, _, port = self.ways["hall"].removeprefix("http://").rstrip("/").rpartition(":")
        return Place(int(port), [], address)

    def end(self, how: signal.Signals = signal.SIGINT) -> list[dict[str, Any]]:
        """End it, and give all that it said since."""
        self.process.send_signal(how)
        said, errors = self.process.communicate(timeout=60)
        assert "Traceback" not in errors
        return [json.loads(line) for line in said.splitlines()]


def own_address() -> str:
    """An address of this machine that is not loopback."""
    found = reachable()
    if not found:
        pytest.skip("this machine is in no network")
    return found[0].address


def start(course: Path, out: Path, home: Path, *more: str) -> Running:
    """Start the host of the class `spring`, and wait until it listens."""
    process = subprocess.Popen(
        [sys.executable, "-u", "-c", CODE, "host", str(course), "spring", "--out", str(out), "--json", *more],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
        env=os.environ | {"XDG_CONFIG_HOME": str(home)},
    )
    assert process.stdout is not None
    line = process.stdout.readline()
    if not line:
        raise LookupError(process.communicate()[1])
    return Running(process, json.loads(line))


@contextmanager
def running(course: Path, out: Path, home: Path, *more: str) -> Iterator[Running]:
    """A host that is gone at the end, whatever happened."""
    host = start(course, out, home, *more)
    try:
        yield host
    finally:
        if host.process.poll() is None:
            host.process.kill()
            host.process.communicate()


def free_port() -> int:
    """The first of two ports in a row that nobody has just now."""
    for _ in range(50):
        with socket.socket() as one, socket.socket() as two:
            one.bind(("127.0.0.1", 0))
            port: int = one.getsockname()[1]
            try:
                two.bind((own_address(), port + 1))
            except OSError:
                time.sleep(0.01)
                continue
            return port
    raise LookupError("no two ports in a row are free")
