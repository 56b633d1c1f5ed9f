"""What is asked before a new file is written: in words, with what is suggested and what may be answered."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Asking:
    """One question; without a suggestion it has to be answered, without choices by any words."""

    name: str
    words: str
    suggested: str | None = None
    choices: tuple[str, ...] = ()
