"""Which answers stand side by side where there are many: drawn, so that length tells nothing."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from hashlib import sha256
from typing import TypeVar

WRONG = 3

Answer = TypeVar("Answer")


def beside(
    name: str,
    right: Sequence[Answer],
    wrong: Sequence[Answer],
    text: Callable[[Answer], str],
    weight: Callable[[Answer], int] = lambda _: 1,
) -> list[Answer]:
    """One right answer and three wrong ones, the right one first; nothing where there are fewer.

    `name` draws them, a wrong one as many times likelier as its weight says. It also draws how many of the
    wrong ones are longer than the right one; a right answer that has as many beside it goes before one that
    has not. So its length tells nothing.
    """
    if not right or len(wrong) < WRONG:
        return []
    others = sorted(wrong, key=lambda one: _earliest(name, text(one), weight(one)))
    wanted = _number(name) % (WRONG + 1)

    def parted(one: Answer) -> tuple[list[Answer], list[Answer]]:
        longer, shorter = _by_length(others, len(text(one)), text)
        return longer[:wanted], shorter[: WRONG - wanted]

    def lacking(one: Answer) -> int:
        return WRONG - sum(map(len, parted(one)))

    chosen = min(right, key=lambda one: (lacking(one), _number(name, text(one))))
    longer, shorter = parted(chosen)
    spare = [one for one in others if one not in longer and one not in shorter]
    return [chosen, *longer, *shorter, *spare[: lacking(chosen)]]


def _by_length(
    others: Sequence[Answer], size: int, text: Callable[[Answer], str]
) -> tuple[list[Answer], list[Answer]]:
    """Those whose text is longer than a size, and those whose text is shorter."""
    longer = [other for other in others if len(text(other)) > size]
    return longer, [other for other in others if len(text(other)) < size]


def _number(*parts: str) -> int:
    return int.from_bytes(sha256("|".join(parts).encode("utf-8")).digest()[:8], "big")


def _earliest(name: str, text: str, weight: int) -> int:
    """The least of as many drawn numbers as the weight says: the more of them, the earlier in the order."""
    return min(_number(name, text, *([str(turn)] if turn else [])) for turn in range(weight))
