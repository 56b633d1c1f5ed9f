"""What search knows of a page, section by section: what Material's parser finds, in a tenth of its time."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from html import escape, unescape
from itertools import islice
from math import inf

from material.plugins.search.plugin import Parser

VOID = frozenset(
    ("area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "param", "source", "track")
) | {"wbr"}
KEPT = frozenset(["p", "code", "pre", "li", "ol", "ul", "sub", "sup"])
HEADS = frozenset(["h1", "h2", "h3", "h4", "h5", "h6"])
# What is in these is no markup, to some parsers at least, or is passed over.
RAW = frozenset(
    ["object", "script", "style", "iframe", "noembed", "noframes", "noscript", "plaintext", "textarea", "xmp"]
)
PERMALINK = "headerlink"
NUMBERS = "linenodiv"
TOP = "hx"
HIDDEN = "data-search-exclude"
_TAG = re.compile(r'<(/?)([a-zA-Z][a-zA-Z0-9-]*+)((?:\s++[^\s"\'<>/=]++(?:="[^"]*+")?)*+)\s*+(/?)>')
_ATTRIBUTE = re.compile(r'\s([^\s"\'<>/=]++)(?:="([^"]*+)")?')
_PIECES = 5


@dataclass(slots=True)
class Section:
    """What follows one heading; `depth` is how deep it stands, `hidden` whether it is not to be found."""

    tag: str = TOP
    depth: float = 0
    id: str | None = None
    hidden: bool = False
    title: list[str] = field(default_factory=list)
    text: list[str] = field(default_factory=list)


def entries(html: str, url: str, title: str) -> tuple[str, ...]:
    """The entries of a page for the index, as JSON; `title` is that of a section without a heading."""
    made = (_entry(one, url, title) for one in sections(html) if not one.hidden)
    return tuple(json.dumps(one, separators=(",", ":")) for one in made)


def sections(html: str) -> list[Section]:
    """The sections of a page; markup that is not plain goes to Material's own parser."""
    pieces = _TAG.split(html)
    names = {name.lower() for name in pieces[2::_PIECES]}
    if any("<" in text for text in pieces[::_PIECES]) or names & RAW or PERMALINK in html:
        return list(_by_material(html))
    reader = _Reader()
    reader.read(pieces)
    return reader.found


def _by_material(html: str) -> Iterator[Section]:
    parser = Parser()
    parser.feed(html)
    parser.close()
    for one in parser.data:
        yield Section(one.el.tag, one.depth, one.id, one.is_excluded(), one.title, one.text)


def _entry(section: Section, url: str, title: str) -> dict[str, str]:
    at = f"{url}#{section.id}" if section.id else url
    named, text = "".join(section.title or [title]), "".join(section.text)
    return {"location": at, "title": named.strip(), "text": text.strip()}


class _Reader:
    """Goes through the tags of a page; what is open is known by the names of its tags alone."""

    def __init__(self) -> None:
        self.found: list[Section] = []
        self._now = Section()
        self._open: list[str] = []
        self._skip: set[str] = set()

    def read(self, pieces: list[str]) -> None:
        """Take text and tags in turn: text, whether it closes, name, attributes, whether it closes itself."""
        tags = (pieces[part::_PIECES] for part in range(_PIECES))
        for text, closing, written, attributes, alone in zip(*tags, strict=False):
            if text:
                self._say(text)
            name = written.lower()
            if not closing and name not in VOID:
                self._begin(name, attributes)
            if closing or alone:
                self._end(name)
        if pieces[-1]:
            self._say(pieces[-1])

    def _begin(self, name: str, written: str) -> None:
        self._open.append(name)
        attributes = (
            _attributes(written) if name in HEADS or HIDDEN in written or "linenodiv" in written else {}
        )
        if name in HEADS and "id" in attributes:
            self._head(name, attributes)
        self._at_least_one()
        if HIDDEN in attributes or attributes.get("class") == NUMBERS:
            self._skip.add(name)
        elif name in KEPT and self._skip.isdisjoint(self._open):
            self._place().append(f"<{name}>")

    def _head(self, name: str, attributes: dict[str, str]) -> None:
        if name != "h1":
            self._at_least_one(len(self._open))
        new = Section(name, len(self._open), hidden=HIDDEN in attributes)
        new.id = attributes["id"] if self.found else None
        self.found.append(new)
        self._now = new

    def _at_least_one(self, depth: int = 0) -> None:
        if not self.found:
            self._now = Section(depth=depth)
            self.found.append(self._now)

    def _end(self, name: str) -> None:
        if not self._open or self._open[-1] != name:
            return
        if self._now.depth > len(self._open):
            self._leave()
        self._open.pop()
        if name in self._skip:
            self._skip.remove(name)
        elif name in KEPT and self._skip.isdisjoint(self._open):
            _closed(self._place(), name)

    def _leave(self) -> None:
        """Go back to the section around the one that ends here."""
        for one in reversed(self.found):
            if one.depth <= len(self._open):
                self._now.depth = inf
                self._now = one
                return

    def _say(self, text: str) -> None:
        if not self._skip.isdisjoint(self._open):
            return
        said = unescape(text) if "&" in text else text
        blank = said.isspace()
        if "pre" not in self._open:
            said = " " if blank else said.replace("\n", " ")
        self._at_least_one()
        place = self._place()
        if blank and place is self._now.text and place and place[-1].isspace() and "pre" not in self._open:
            return
        place.append(escape(said, quote=False))

    def _place(self) -> list[str]:
        """Where what is said now belongs: to the heading while it is open, else below it."""
        return self._now.title if self._now.tag in self._open else self._now.text


def _attributes(written: str) -> dict[str, str]:
    return {name.lower(): unescape(value) for name, value in _ATTRIBUTE.findall(written)}


def _closed(said: list[str], name: str) -> None:
    """Close a tag that is kept; where nothing has been said since the first of its kind, take it out."""
    first = said.index(f"<{name}>")
    if all(one.isspace() for one in islice(said, first + 1, None)):
        del said[first:]
    else:
        said.append(f"</{name}>")
