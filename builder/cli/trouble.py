"""What is kept of a failure that should not have happened: a log entry under an id, without learner data."""

from __future__ import annotations

import os
import secrets
import traceback
from datetime import UTC, datetime
from pathlib import Path

import click


def log_trouble(error: Exception) -> str:
    """Write the trace to the log and give the line for the screen; CASELOOM_DEBUG=1 shows the trace too."""
    mark = secrets.token_hex(4)
    frames = [
        f"  {Path(frame.filename).name}:{frame.lineno} {frame.name}"
        for frame in traceback.extract_tb(error.__traceback__)
    ]
    log = Path(click.get_app_dir("caseloom")) / "caseloom.log"
    entry = [f"{datetime.now(UTC):%Y-%m-%dT%H:%M:%SZ} {mark} {type(error).__name__}", *frames]
    try:
        log.parent.mkdir(parents=True, exist_ok=True)
        with log.open("a", encoding="utf-8") as file:
            file.write("\n".join(entry) + "\n")
    except OSError:
        where = "no log could be written"
    else:
        where = f"see {log}"
    if os.environ.get("CASELOOM_DEBUG"):
        traceback.print_exception(error)
    return f"caseloom: something went wrong that should not have (error {mark}; {where})."
