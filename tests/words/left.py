"""What is left of English on a page in the made-up language, once all that is content has been taken away."""

import re
from collections import defaultdict
from collections.abc import Iterator, Mapping
from pathlib import Path

import yaml

from builder.disk import shipped
from builder.model.tables import ReferenceBook
from builder.read.written import read_entry

_WORD = re.compile(r"[A-Za-z][A-Za-z'’]+|[A-Za-z]+\d\w*|\d+[A-Za-z]\w*")
_BREAK = re.compile(r"[.;:!?|*_()\[\]{}#>\"“”·\n,]+")
_FOREIGN = re.compile(r"[^\x00-\x7f’“”–—…]+")
_BLANK = re.compile(r"\{\w+\}")
Phrase = tuple[str, ...]


def _words(text: str) -> Phrase:
    return tuple(one.lower() for one in _WORD.findall(text))


def _chunks(text: str) -> Iterator[Phrase]:
    parts = (part for run in _FOREIGN.split(_BLANK.sub("", text)) for part in _BREAK.split(run))
    yield from (words for part in parts if (words := _words(part)))


class Vocabulary:
    """The texts of a course and of the content, as phrases that may stand on a page beside each other."""

    def __init__(self, course: Path, *further: str) -> None:
        self._phrases: Mapping[str, set[Phrase]] = defaultdict(set)
        for text in (*further, *_texts(course), *_texts(shipped("content")), *_short_references()):
            for phrase in (*_chunks(text), *_chunks(text.replace("_", " "))):
                self._phrases[phrase[0]].add(phrase)

    def unknown(self, texts: list[str]) -> list[str]:
        """The runs of plain letters that these phrases do not make up."""
        return [" ".join(words) for text in texts for words in _chunks(text) if not self._made_up(words)]

    def _made_up(self, words: Phrase) -> bool:
        reached = {0}
        for at in range(len(words)):
            if at in reached:
                known = self._phrases.get(words[at], ())
                reached |= {at + len(one) for one in known if words[at : at + len(one)] == one}
        return len(words) in reached


def _texts(root: Path) -> Iterator[str]:
    for path in sorted(root.rglob("*.yml")):
        if "words" not in path.parts:
            yield from _strings(yaml.load(path.read_text(encoding="utf-8"), Loader=yaml.BaseLoader))  # noqa: S506 - plain strings
    for path in sorted(path for path in root.rglob("*") if path.suffix in (".md", ".vtt")):
        yield path.read_text(encoding="utf-8")


def _strings(value: object) -> Iterator[str]:
    if isinstance(value, dict):
        value = [*value.keys(), *value.values()]
    if isinstance(value, list):
        for one in value:
            yield from _strings(one)
    elif isinstance(value, str):
        yield value


def _short_references() -> Iterator[str]:
    book = read_entry(ReferenceBook, shipped("content") / "references.yml", "references.yml").noun
    if isinstance(book, ReferenceBook):
        yield from (one.short for one in book.sources.values())
