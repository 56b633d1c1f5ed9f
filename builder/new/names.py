"""Names of files and ids from the title typed: plain letters, safe on every system, each once in a folder."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Collection

from builder.fault import Fault
from builder.model.file_name import folded, is_reserved

LONGEST = 40
_ID = re.compile(r"[a-z][a-z0-9_]{0,59}")
_FOLDED = str.maketrans(
    {"ß": "ss", "æ": "ae", "œ": "oe", "ø": "o", "đ": "d", "ł": "l", "þ": "th", "ð": "d", "\u0131": "i"}
)


def id_from(title: str, what: str) -> str:
    """The id that a title gives: accents folded, the rest `_`; a Fault where no letter is left."""
    bare = unicodedata.normalize("NFKD", title.casefold().translate(_FOLDED))
    letters = "".join(one for one in bare if not unicodedata.combining(one))
    found = re.sub(r"[^a-z0-9]+", "_", letters).strip("_")
    if not found:
        raise Fault(f"The title {title!r} gives no id of plain letters.", "Name one with --id.")
    if not found[0].isalpha():
        found = f"{what}_{found}"
    if len(found) > LONGEST:
        found = found[:LONGEST].rpartition("_")[0] or found[:LONGEST]
    return f"{found}_{what}" if is_reserved(found) else found


def own_id(given: str) -> str:
    """An id that someone chose, if it may be one; a Fault says why not."""
    if not _ID.fullmatch(given):
        raise Fault(f"{given!r} is no id.", "Use small letters, digits and _, with a letter first.")
    if is_reserved(given):
        raise Fault(f"No file may be called {given} on Windows.", "Choose another id.")
    return given


def unused(name: str, taken: Collection[str], what: str) -> str:
    """The name, if nothing in the folder has it, in small or capital letters; else a Fault."""
    other = next((one for one in sorted(taken) if folded(one) == folded(name)), None)
    if other is None:
        return name
    raise Fault(
        f"There is already a {what} called {other}; nothing was written.",
        "Choose another title, or another name with --id.",
    )
