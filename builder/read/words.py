"""The words of the interface: a file for each language, English under all of them, a course's own on top."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path
from string import Formatter

from builder.diagnostic import Diagnostic
from builder.doors.shape import pour_words
from builder.model.noun import Noun
from builder.model.words import ENGLISH, ONE, as_english
from builder.place import Place, Places
from builder.read.folder import WORDS as FOLDER
from builder.read.misfit import in_plain_words
from builder.read.nearest import suggest
from builder.read.written import Written, read_written

SHOWN = 6
_TAG = re.compile(r"[A-Za-z0-9-]+")


@dataclass(frozen=True)
class Words:
    """The texts by id; None where the English ones do not hold. `places` are those of every file read."""

    texts: dict[str, str] | None
    found: tuple[Diagnostic, ...]
    places: dict[str, Places]


@dataclass(frozen=True)
class _File:
    written: Written
    texts: dict[str, str] | None
    found: tuple[Diagnostic, ...]


def read_words(content: Path, course: Path | None = None, language: str = ENGLISH, at: str = "") -> Words:
    """The words in one language: `words/<language>.yml` of the content, and of the course over it.

    What neither translates stays English and is told of at the file `at` or at the translation.
    """
    base = _read(content / FOLDER / f"{ENGLISH}.yml", f"content/{FOLDER}/{ENGLISH}.yml")
    over = [_read(path, file) for path, file in _over(content, course, language)]
    found = [fault for one in (base, *over) for fault in one.found]
    places = {one.written.file: one.written.places for one in (base, *over)}
    if base.texts is None:
        return Words(None, tuple(found), places)
    for one in over:
        found += _unfit(one, base.texts)
    own = _laid(one.texts for one in over if one.texts is not None)
    left = [] if _primary(language) == ENGLISH else [key for key in base.texts if key not in own]
    left = [key for key in left if key.removesuffix(ONE) not in own]
    if left:
        found.append(_untranslated(left, language, over[-1].written.file if over else "", at))
    texts = {key: as_english(text) if key in left else text for key, text in base.texts.items()}
    return Words(_laid((texts, own)), tuple(found), places)


def _read(path: Path, file: str) -> _File:
    """The texts of one file; its `format` is no text and is left out."""
    written = read_written(path, file)
    data = written.value
    if not written.whole:
        return _File(written, None, written.found)
    texts = {key: text for key, text in data.items() if key != "format"} if isinstance(data, dict) else data
    poured, misfits = pour_words(texts)
    faults = tuple(in_plain_words(Noun, misfits, written.places))
    return _File(written, None if faults else poured, (*written.found, *faults))


def _over(content: Path, course: Path | None, language: str) -> Iterator[tuple[Path, str]]:
    """The files that lie above English: of the language, then of its country; shipped, then own."""
    if not _TAG.fullmatch(language):
        return
    for root, before in ((content, "content/"), (course, "")):
        for name in dict.fromkeys((_primary(language), language)):
            file = f"{FOLDER}/{name}.yml"
            if root and (root / file).is_file() and (before, name) != ("content/", ENGLISH):
                yield root / file, before + file


def _primary(language: str) -> str:
    return language.partition("-")[0]


def _laid(layers: Iterator[dict[str, str]] | tuple[dict[str, str], ...]) -> dict[str, str]:
    """Texts over texts; one that is the same for any number takes the text for one away."""
    texts: dict[str, str] = {}
    for layer in layers:
        texts = {key: text for key, text in texts.items() if key.removesuffix(ONE) not in layer} | layer
    return texts


def _untranslated(left: list[str], language: str, file: str, at: str) -> Diagnostic:
    named = ", ".join(f"`{key}`" for key in left[:SHOWN])
    more = f" and {len(left) - SHOWN} more" if len(left) > SHOWN else ""
    message = f"Words of the interface without a text in `{language}`: {named}{more}."
    if not file:
        message = f"The words of the interface have no texts in `{language}`."
    remedy = f"Give them in {FOLDER}/{language}.yml of the course. Until then they are shown in English."
    return Diagnostic("words_untranslated", "warning", Place(file or at), message, remedy)


def _unfit(one: _File, base: Mapping[str, str]) -> Iterator[Diagnostic]:
    """Names that no page says, and blanks that nothing fills."""
    for key, text in (one.texts or {}).items():
        name = key.removesuffix(ONE)
        path = (name,) if name == key else (name, "one")
        if name not in base:
            words = (f"No page says `{name}`.", suggest(name, [k for k in base if not k.endswith(ONE)]))
            yield one.written.fault("words_not_used", (name,), words, key=True, level="advice")
        elif not _fillable(text, base[name]):
            message = f"The blanks of `{name}` cannot be filled."
            known = ", ".join(f"{{{blank}}}" for blank in sorted(_blanks(base[name]) or ()))
            remedy = f"Blanks here: {known}." if known else "This text has no blanks."
            yield one.written.fault("words_blanks", path, (message, remedy))


def _fillable(text: str, english: str) -> bool:
    blanks = _blanks(text)
    return blanks is not None and blanks <= (_blanks(english) or set())


def _blanks(text: str) -> set[str] | None:
    """The names of the blanks; None where the braces are not in order."""
    try:
        parts = list(Formatter().parse(text))
    except ValueError:
        return None
    plain = all(not (spec or turned) for _, _, spec, turned in parts)
    return {name for _, name, _, _ in parts if name is not None} if plain else None
