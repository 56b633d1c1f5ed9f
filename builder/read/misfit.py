"""What does not fit a noun, as a Diagnostic: its place, and plain words instead of a validator's."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from builder.diagnostic import Diagnostic
from builder.doors.shape import TRUTH, Misfit, keys_at
from builder.model.noun import Noun
from builder.place import Path, Place, Places
from builder.read.misfit_words import Words, words_for
from builder.read.nearest import suggest

_KEY = "[key]"


def in_plain_words(model: type[Noun], misfits: Sequence[Misfit], places: Places) -> Iterator[Diagnostic]:
    """A Diagnostic for every misfit; those of one value that may be of several types are one."""
    said: set[tuple[Path, str]] = set()
    for misfit in misfits:
        path, words, place = _told(model, misfit, places)
        about = (path, "" if _is_choice(misfit, path) or misfit.sort == TRUTH else words.check)
        if about in said or (path, "") in said:
            continue
        said.add(about)
        yield Diagnostic(words.check, "error", place, words.message, words.remedy, path)


def _told(model: type[Noun], misfit: Misfit, places: Places) -> tuple[Path, Words, Place]:
    """The path in the file, the words, and the place of the value or, where that is meant, of its key."""
    known = places.within(misfit.path)
    if misfit.sort == "missing":
        parent = places.within(misfit.path[:-1])
        key = str(misfit.path[-1])
        return (*parent, key), _missing(key, parent), places.of_key(parent)
    if misfit.sort == "extra_forbidden":
        return known, _unknown(model, known), places.of_key(known)
    words = words_for(misfit, _name(known), choice=_is_choice(misfit, known))
    at_key = bool(misfit.path) and misfit.path[-1] == _KEY
    return known, words, places.of_key(known) if at_key else places.of(known)


def _is_choice(misfit: Misfit, known: Path) -> bool:
    """Whether the validator's path ends in the name of one of several types."""
    return misfit.sort != "missing" and len(misfit.path) > len(known) and misfit.path[-1] != _KEY


def _missing(key: str, parent: Path) -> Words:
    where = f" in `{_name(parent)}`" if _name(parent) else ""
    return Words("key_missing", f"`{key}` is missing{where}.", f"Add `{key}:` with its value.")


def _unknown(model: type[Noun], path: Path) -> Words:
    key = str(path[-1])
    remedy = suggest(key, keys_at(model, path[:-1]))
    return Words("key_unknown", f"`{key}` is not known here.", remedy)


def _name(path: Path) -> str:
    """The nearest key above a value; empty for the file itself."""
    return next((step for step in reversed(path) if isinstance(step, str)), "")
