"""Text from bytes: UTF-8 alone, with every byte and character that does not belong there placed."""

from __future__ import annotations

import re
from dataclasses import dataclass

from builder.diagnostic import Diagnostic
from builder.place import Place

LIMIT = 1_000_000
REPLACED = "\ufffd"
SHOWN = 20

_ODD = re.compile(
    "[\x00-\x08\x0b-\x1f\x7f-\x9f\u2028\u2029\u202a-\u202e\u2066-\u2069\ufeff\ufffe\uffff\ud800-\udfff]",
)
_WIDE_MARKS = (b"\xff\xfe", b"\xfe\xff", b"\x00\x00\xfe\xff")
_SAVE = "Save the file as UTF-8."


@dataclass(frozen=True)
class Decoded:
    r"""The text of a file, every line ended by `\n`; None where the bytes are no text that could be read.

    What did not belong is replaced one for one, so that places hold and reading can go on.
    """

    text: str | None
    found: tuple[Diagnostic, ...] = ()

    @property
    def lines(self) -> tuple[str, ...]:
        """The lines as shown above a caret."""
        return tuple((self.text or "").split("\n"))


def decode(data: bytes, file: str) -> Decoded:
    """The text of `data`, with a Diagnostic for each thing in it that is no text."""
    if len(data) > LIMIT:
        return _refused(file, "file_unreadable", f"This file is larger than {LIMIT:,} bytes.", "Split it.")
    if data.startswith(_WIDE_MARKS) or data[:64].count(0) * 4 > len(data[:64]):
        return _refused(
            file, "not_utf8", "This is not UTF-8 text: it looks like UTF-16, or like no text.", _SAVE
        )
    text = data.decode("utf-8", errors="surrogateescape").removeprefix("\ufeff").replace("\r\n", "\n")
    text += "" if text.endswith("\n") else "\n"
    if (first := _ODD.search(text)) is None:
        return Decoded(text)
    bad = [one.start() for one in _ODD.finditer(text, first.start())]
    found = (*_bad_bytes(text, bad, file), *_odd_characters(text, bad, file))
    return Decoded(_ODD.sub(REPLACED, text) if len(bad) <= SHOWN or _is_byte(text[bad[0]]) else None, found)


def is_odd(text: str) -> bool:
    """Whether a text holds a character that belongs in no file."""
    return _ODD.search(text) is not None


def _refused(file: str, check: str, message: str, remedy: str) -> Decoded:
    return Decoded(None, (Diagnostic(check, "error", Place(file), message, remedy),))


def _is_byte(letter: str) -> bool:
    return "\udc80" <= letter <= "\udcff"


def _at(text: str, index: int, file: str) -> Place:
    line = text.count("\n", 0, index) + 1
    column = index - text.rfind("\n", 0, index)
    return Place(file, line, column, line, column + 1)


def _bad_bytes(text: str, bad: list[int], file: str) -> list[Diagnostic]:
    bytes_at = [index for index in bad if _is_byte(text[index])]
    if not bytes_at:
        return []
    byte = text[bytes_at[0]].encode("utf-8", errors="surrogateescape")
    guess = byte.decode("cp1252", errors="replace")
    more = f", and {len(bytes_at) - 1} more" if len(bytes_at) > 1 else ""
    meant = "" if guess == REPLACED else f" (on old Windows systems it is `{guess}`)"
    message = f"The byte {byte.hex().upper()} is not UTF-8{meant}{more}."
    return [Diagnostic("not_utf8", "error", _at(text, bytes_at[0], file), message, _SAVE)]


def _odd_characters(text: str, bad: list[int], file: str) -> list[Diagnostic]:
    odd = [index for index in bad if not _is_byte(text[index])]
    return [
        Diagnostic(
            "odd_character",
            "error",
            _at(text, index, file),
            f"An invisible character (U+{ord(text[index]):04X}) stands here.",
            "Delete it; an editor that shows invisible characters helps.",
        )
        for index in odd[:SHOWN]
    ]
