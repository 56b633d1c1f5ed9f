"""How a listener behaves towards those it does not know: whose names it answers to, how much, how often."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

MOST_PEERS = 4096
SHUT = {
    "Cache-Control": "no-store",
    "Content-Security-Policy": (
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; media-src 'self'; "
        "connect-src 'self'; frame-ancestors 'none'; form-action 'none'; base-uri 'none'"
    ),
    "Cross-Origin-Resource-Policy": "same-origin",
    "Permissions-Policy": "camera=(), geolocation=(), microphone=()",
    "Referrer-Policy": "no-referrer",
    "X-Content-Type-Options": "nosniff",
    "X-Frame-Options": "DENY",
}


@dataclass(frozen=True)
class Manners:
    """`hosts`: the only names answered to; `largest`: bytes taken; `burst` and `a_second`: how often."""

    hosts: frozenset[str]
    largest: int = 10_000
    burst: int = 600
    a_second: float = 60.0
    headers: Mapping[str, str] = field(default_factory=lambda: SHUT)


class Pace:
    """How often each address has asked: a burst at once, then so many a second."""

    def __init__(self, burst: int, a_second: float) -> None:
        self._burst, self._a_second = burst, a_second
        self._left: dict[str, tuple[float, float]] = {}

    def allows(self, peer: str, now: float) -> bool:
        """Whether one more is within measure; `now` is in seconds of any clock that never goes back."""
        left, since = self._left.pop(peer, (float(self._burst), now))
        left = min(self._burst, left + (now - since) * self._a_second)
        if len(self._left) >= MOST_PEERS:
            self._left.pop(next(iter(self._left)))
        self._left[peer] = (left - 1 if left >= 1 else left, now)
        return left >= 1
