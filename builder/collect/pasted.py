"""Finds the answer sheet in a text that was pasted, mailed or quoted; the checksum proves it whole."""

from __future__ import annotations

import re
from collections.abc import Iterator
from html import unescape
from itertools import islice, product

from builder.model.handed import sheet_of

MARK = "caseloom/answers/"
AMBIGUOUS = 6  # so many broken strings are tried either way
BEGINNINGS = 8  # so many places are looked at where a sheet may begin
BREAK = "\n"
_BEGIN = re.compile(r'\{[\s>|]*["\u201c-\u201f\u2033]?[\s>|]*format')
_PREFIX = re.compile(r"(?m)^[ \t]*(?:[>|][ \t]?)+")
_UNSEEN = re.compile("[\u00ad\u200b-\u200f\u2060\ufeff\r]")
_STRING = re.compile(r'"(?:[^"\\]|\\.)*"', re.DOTALL)
_CURLY = str.maketrans(dict.fromkeys("\u201c\u201d\u201e\u201f\u2033", '"') | {"\u00a0": " "})


def recovered(data: bytes) -> bytes:
    """The bytes of the one answer sheet in a text, as the page made them; a ValueError says why not."""
    text = _decoded(data)
    if MARK not in "".join(next(_plainer(text)).split()):
        raise ValueError("This text holds no answer sheet.")
    found = {sheet for plain in _plainer(text) for sheet in _sheets(plain)}
    if len(found) > 1:
        raise ValueError("This text holds more than one answer sheet.")
    if not found:
        raise ValueError("The answer sheet in this text is not whole: its checksum does not fit.")
    return found.pop().encode("utf-8")


def _decoded(data: bytes) -> str:
    """The text, in whichever encoding an editor or a mail program has put it."""
    if data.startswith((b"\xff\xfe", b"\xfe\xff")):
        return data.decode("utf-16", "replace")
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError:
        return data.decode("cp1252", "replace")


def _plainer(text: str) -> Iterator[str]:
    """The text as it is, and without what mail programs make of it."""
    plain = _PREFIX.sub("", _UNSEEN.sub("", text))
    yield plain
    for other in (plain.translate(_CURLY), unescape(plain).translate(_CURLY)):
        if other != plain:
            yield other


def _sheets(text: str) -> Iterator[str]:
    """Every whole sheet that begins somewhere in a text."""
    for begin in islice(_BEGIN.finditer(text), BEGINNINGS):
        pieces = _pieces(text[begin.start() :])
        whole = next((made for made in _joined(pieces) if _is_whole(made)), None)
        if whole is not None:
            yield whole


def _pieces(text: str) -> list[str]:
    """One block from brace to brace: strings as they stand, and what is between them without white space."""
    pieces: list[str] = []
    depth = at = 0
    for string in _STRING.finditer(text):
        for letter in text[at : string.start()]:
            depth += {"{": 1, "}": -1}.get(letter, 0)
            if not letter.isspace():
                pieces.append(letter)
            if depth == 0:
                return pieces
        pieces.append(string[0])
        at = string.end()
    closing = "".join(text[at:].split())
    return [*pieces, closing[: closing.find("}") + 1]]


def _joined(pieces: list[str]) -> Iterator[str]:
    """The block with its broken strings put together: at each break there was a space, or there was none.

    Likeliest is a space in a string that has others; then all are tried alike, then the first few apart.
    """
    broken = [number for number, piece in enumerate(pieces) if BREAK in piece]
    yield _filled(pieces, {number: " " if " " in pieces[number] else "" for number in broken})
    yield _filled(pieces, dict.fromkeys(broken, ""))
    for fills in product((" ", ""), repeat=min(len(broken), AMBIGUOUS)):
        yield _filled(pieces, dict.fromkeys(broken, " ") | dict(zip(broken, fills, strict=False)))


def _filled(pieces: list[str], fills: dict[int, str]) -> str:
    return "".join(
        _mended(piece, fills[number]) if number in fills else piece for number, piece in enumerate(pieces)
    )


def _mended(piece: str, fill: str) -> str:
    return re.sub(r"[ \t]*\n[ \t]*", fill, piece)


def _is_whole(text: str) -> bool:
    try:
        sheet_of(text.encode("utf-8", "replace"))
    except ValueError:
        return False
    return True
