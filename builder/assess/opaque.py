"""Names and orders that tell nothing: keyed digests, cut as short as they stay apart."""

from __future__ import annotations

import base64
import hashlib
import hmac
import json
from collections.abc import Iterable

from builder.fault import Fault

LEAST_SECRET = 16
LEAST_LENGTH = 5
EDITION_LENGTH = 8


class Opaque:
    """Digests under one secret for one scope, such as one version of one test."""

    def __init__(self, secret: bytes, scope: str) -> None:
        """Refuse a secret so short that it could be tried out."""
        if len(secret) < LEAST_SECRET:
            raise Fault(
                f"The secret that names questions is shorter than {LEAST_SECRET} bytes.",
                "Remove it, and a new one is made.",
            )
        self._key = hmac.new(secret, scope.encode("utf-8"), hashlib.sha256).digest()

    def token(self, *parts: str) -> str:
        """A digest of these parts in lower-case base32, as long as it gets."""
        message = json.dumps(parts, ensure_ascii=False).encode("utf-8")
        return lower_base32(hmac.new(self._key, message, hashlib.sha256).digest())


def shortened(letter: str, tokens: Iterable[str]) -> dict[str, str]:
    """An id for every token: the letter and the least number of characters that keeps them all apart."""
    kept = list(dict.fromkeys(tokens))
    length = LEAST_LENGTH
    while len({token[:length] for token in kept}) < len(kept):
        length += 1
    return {token: letter + token[:length] for token in kept}


def edition_of(text: str) -> str:
    """The short name of exactly this text."""
    return lower_base32(hashlib.sha256(text.encode("utf-8")).digest())[:EDITION_LENGTH]


def canonical(value: object) -> str:
    """The one JSON text of plain values: keys sorted, no spaces."""
    return json.dumps(value, sort_keys=True, ensure_ascii=False, separators=(",", ":"))


def lower_base32(data: bytes) -> str:
    """Bytes in lower-case base32 without padding."""
    return base64.b32encode(data).decode("ascii").rstrip("=").lower()
