"""What does not fit a noun, as a Diagnostic: its place, and plain words instead of a validator's."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from builder.diagnostic import Diagnostic
from builder.doors.shape import TRUTH, Misfit, keys_at
from builder.model.noun import Noun
from builder.place import Path, Places
from builder.read.misfit_words import Words, words_for
from builder.read.nearest import suggest

_KEY = "[key]"


def in_plain_words(model: type[Noun], misfits: Sequence[Misfit], places: Places) -> Iterator[Diagnostic]:
    """A Diagnostic for every misfit; those of one value that may be of several types are one."""
    said: set[tuple[Path, str]] = set()
    for misfit in misfits:
        path, words, at_key = _told(model, misfit, places)
        about = (path, "" if _is_choice(misfit, path) or misfit.sort == TRUTH else words.check)
        if about in said or (path, "") in said:
            continue
        said.add(about)
        place = places.of_key(path) if at_key else places.of(path)
        yield Diagnostic(words.check, "error", place, words.message, words.remedy, path)


def _told(model: type[Noun], misfit: Misfit, places: Places) -> tuple[Path, Words, bool]:
    """The path in the file, the words, and whether the key is meant rather than the value."""
    known = places.within(misfit.path)
    if misfit.sort == "missing":
        parent = places.within(misfit.path[:-1])
        return (*parent, misfit.path[-1]), _missing(str(misfit.path[-1]), parent), True
    if misfit.sort == "extra_forbidden":
        return known, _unknown(model, known), True
    at_key = bool(misfit.path) and misfit.path[-1] == _KEY
    choice = _is_choice(misfit, known)
    return known, words_for(misfit, _name(known), choice=choice), at_key


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
