"""What a file may be called so that Windows, macOS and Linux all can keep it."""

from __future__ import annotations

import unicodedata

RESERVED = frozenset(
    {"con", "prn", "aux", "nul", "conin$", "conout$", "conin", "conout"}
    | {f"{port}{number}" for port in ("com", "lpt") for number in (*range(10), *"¹²³")}
)
UNKEPT = '<>:"/\\|?*'


def is_reserved(name: str) -> bool:
    """Whether Windows takes a name for a device, whatever comes after its first dot."""
    return name.partition(".")[0].rstrip(" ").casefold() in RESERVED


def unkept(name: str) -> str:
    """Why Windows can keep no file or folder of this name, as the end of a sentence; empty where it can."""
    if is_reserved(name):
        return f"`{name.partition('.')[0]}` is the name of a device there"
    if name.endswith((".", " ")):
        return "a dot or a space at its end is dropped there"
    odd = next((one for one in name if one in UNKEPT or unicodedata.category(one) in ("Cc", "Cs")), "")
    if not odd:
        return ""
    return (
        f"`{odd}` may stand in no name there" if odd in UNKEPT else "it holds a character that cannot be seen"
    )


def folded(name: str) -> str:
    """The name as Windows and macOS compare it: capitals and the way accents are stored count for nothing."""
    return unicodedata.normalize("NFC", unicodedata.normalize("NFD", name).casefold())
