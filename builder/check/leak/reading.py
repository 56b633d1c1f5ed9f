"""A published file as anyone can read it: escapes resolved, with and without tags, unpacked and decoded."""

from __future__ import annotations

import base64
import binascii
import gzip
import html
import re
from dataclasses import dataclass
from functools import cached_property

_PUNCTUATION = bytes(byte for byte in range(128) if not (chr(byte).isalnum() or byte == ord("_")))
_APART = bytes.maketrans(_PUNCTUATION, b" " * len(_PUNCTUATION))
_ESCAPE = re.compile(r"\\u([0-9a-fA-F]{4})|\\x([0-9a-fA-F]{2})|\\([nrtbf/\"'\\])")
_INLINE = re.compile(
    r"</?(?:a|b|i|em|strong|span|mark|code|sub|sup|u|small|wbr)(?:\s[^<>]*)?/?>", re.IGNORECASE
)
_TAG = re.compile(r"<[^<>]*>")
_PACKED = re.compile(r"(?<![A-Za-z0-9+/])[A-Za-z0-9+/]{32,}={0,2}")


@dataclass(frozen=True)
class Published:
    """One file of a published folder; `text` is all that can be read in it, packed or not."""

    name: str
    text: str

    @cached_property
    def told(self) -> tuple[bytes, ...]:
        """Its words, once with what stands in tags and once without tags."""
        plain = _ESCAPE.sub(_meant, self.text) if "\\" in self.text else self.text
        if "<" not in plain:
            return (words(html.unescape(plain)),)
        bare = _TAG.sub(" ", _INLINE.sub("", plain))
        return words(html.unescape(plain)), words(html.unescape(bare))

    @cached_property
    def vocabulary(self) -> set[bytes]:
        """Every word it says."""
        return set().union(*(told.split() for told in self.told))

    def says(self, wording: bytes) -> bool:
        """Whether it says these words one after another, whatever stands between them but words."""
        return any(wording in told for told in self.told)

    def line_of(self, piece: str) -> int:
        """The line on which a piece of text first stands, 1 where it does not stand as such."""
        found = self.text.casefold().find(piece.casefold())
        return 1 if found < 0 else self.text.count("\n", 0, found) + 1


def published(name: str, data: bytes) -> Published:
    """A file of the site; a packed one is unpacked, what is encoded in it stands decoded at its end."""
    unpacked = gzip.decompress(data) if name.endswith(".gz") else data
    text = unpacked.decode("utf-8", errors="replace").replace("\ufffd", " ")
    return Published(name, "\n".join([text, *_decoded(text)]))


def words(text: str) -> bytes:
    """The words of a text in small letters, each between single spaces."""
    return b" ".join((b"", *text.replace("\xa0", " ").lower().encode("utf-8").translate(_APART).split(), b""))


def _meant(match: re.Match[str]) -> str:
    if code := match[1] or match[2]:
        return chr(int(code, 16))
    return match[3] if match[3] in "/\"'\\" else " "


def _decoded(text: str) -> list[str]:
    found = []
    for packed in dict.fromkeys(_PACKED.findall(text)):
        try:
            found.append(base64.b64decode(packed + "=" * (-len(packed) % 4), validate=True).decode("utf-8"))
        except (binascii.Error, UnicodeDecodeError):
            continue
    return found
