"""The draw: numbers and orders that follow from a seed, the same for ever."""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from typing import TypeVar

METHOD = "draw_sha256_counter_1"
WORDS = 2**64

Item = TypeVar("Item")


class Draw:
    """The method `draw_sha256_counter_1`.

    Block n is the first eight bytes, big-endian, of SHA-256 over `draw_sha256_counter_1|<seed>|<n>` in UTF-8,
    n counting from 0. A number below b is a block modulo b; blocks from the largest multiple of b upwards
    are passed over, so that every number is equally likely.
    """

    def __init__(self, seed: str) -> None:
        """Start at block 0 of this seed."""
        self._seed = seed
        self._block = 0

    def below(self, bound: int) -> int:
        """The next number from 0 to bound - 1."""
        limit = WORDS - WORDS % bound
        while (block := self._next()) >= limit:
            pass
        return block % bound

    def shuffled(self, items: Sequence[Item]) -> list[Item]:
        """The items in a drawn order, each equally likely (Fisher and Yates, from the last place down)."""
        order = list(items)
        for last in range(len(order) - 1, 0, -1):
            other = self.below(last + 1)
            order[last], order[other] = order[other], order[last]
        return order

    def _next(self) -> int:
        text = f"{METHOD}|{self._seed}|{self._block}"
        self._block += 1
        return int.from_bytes(hashlib.sha256(text.encode("utf-8")).digest()[:8], "big")
