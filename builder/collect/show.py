"""Says on the terminal what collecting did."""

from __future__ import annotations

from builder.model.outcome import Collected


def lines(collected: Collected) -> list[str]:
    """What was taken, what was there already, and what could not be taken and why."""
    taken, had, left = (len(one) for one in (collected.taken, collected.had, collected.left))
    told = [f"Class {collected.klass}: {taken} taken, {had} already had, {left} could not be taken."]
    told += [
        f"  taken  {_safe(one.file)}: code {one.code}, {one.test}, version {one.version}, revision {one.rev}"
        for one in collected.taken
    ]
    told += [f"  left   {_safe(one.file)}: {_safe(one.fault)} {_safe(one.remedy)}" for one in collected.left]
    return told + [f"  look   {_safe(one)}" for one in collected.notices]


def _safe(text: str) -> str:
    """The text with whatever could steer a terminal made visible."""
    return "".join(letter if letter.isprintable() else f"\\x{ord(letter):02x}" for letter in text)
