"""YAML, read strictly: plain data, the place of every value, and every fault placed."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import Protocol

import yaml
from yaml.events import (
    AliasEvent,
    CollectionStartEvent,
    DocumentStartEvent,
    Event,
    MappingEndEvent,
    MappingStartEvent,
    ScalarEvent,
    SequenceEndEvent,
    SequenceStartEvent,
)

from builder.diagnostic import Diagnostic
from builder.doors.scalar import meaning
from builder.doors.text import decode, is_odd
from builder.doors.yaml_fault import fault, syntax
from builder.place import Path, Place, Places

DEPTH = 40
NODES = 50_000

Box = dict[str, object] | list[object] | None


class Mark(Protocol):
    """What is used of a parser's mark: 0-based line, column and index, in code points."""

    line: int
    column: int
    index: int


class Source(Protocol):
    """What is used of a YAML parser: one event after another."""

    def check_event(self) -> bool:
        """Whether an event is left."""

    def get_event(self) -> Event | None:
        """The next event."""

    def dispose(self) -> None:
        """Let go of everything."""


Loader = Callable[[str], Source]
PURE = yaml.SafeLoader
LOADERS: tuple[Loader, ...] = (*([yaml.CSafeLoader] if yaml.__with_libyaml__ else []), PURE)


@dataclass(frozen=True)
class Parsed:
    """One file as written; `whole` is False where reading could not go on to its end."""

    value: object
    places: Places
    found: tuple[Diagnostic, ...]
    whole: bool = True


def read_yaml(data: bytes, file: str, loader: Loader = LOADERS[0]) -> Parsed:
    """The plain data of a YAML file: text, int, Decimal, bool, None, lists, dicts with text keys."""
    decoded = decode(data, file)
    if decoded.text is None:
        return Parsed(None, Places(Place(file), lines=decoded.lines), decoded.found, whole=False)
    growth = _Growth(file, decoded.text)
    growth.feed(loader)
    places = Places(Place(file), growth.values, growth.keys, decoded.lines)
    return Parsed(growth.root, places, (*decoded.found, *growth.found), whole=not growth.stopped)


class _Growth:
    """Data and places as they grow, event by event; without recursion, so that no depth can break it."""

    def __init__(self, file: str, text: str) -> None:
        self.root: object = None
        self.values: dict[Path, Place] = {}
        self.keys: dict[Path, Place] = {}
        self.found: list[Diagnostic] = []
        self.stopped = False
        self._file, self._text = file, text
        self._box: Box = None
        self._path: Path = ()
        self._key: str | None = None
        self._above: list[tuple[Box, Path, str | None]] = []
        self._end = (1, 1)
        self._nodes = self._documents = 0

    def feed(self, loader: Loader) -> None:
        """Take every event of the text, until its end or until reading cannot go on."""
        takers = self._takers()
        source = loader(self._text)
        try:
            while not self.stopped and source.check_event():
                event = source.get_event()
                if event is not None and (take := takers.get(type(event))) is not None:
                    take(event)
        except yaml.MarkedYAMLError as error:
            self._syntax(error.problem or "", error.context or "", error.problem_mark, error.context_mark)
        except (yaml.YAMLError, ValueError, OverflowError):  # an escape that makes no character
            self._syntax("escape", "", source.get_mark() if isinstance(source, PURE) else None, None)
        finally:
            source.dispose()

    def _takers(self) -> dict[type[Event], Callable[..., None]]:
        return {
            ScalarEvent: self._scalar,
            MappingStartEvent: self._open,
            SequenceStartEvent: self._open,
            MappingEndEvent: self._close,
            SequenceEndEvent: self._close,
            AliasEvent: self._alias,
            DocumentStartEvent: self._document,
        }

    def _syntax(self, problem: str, context: str, mark: Mark | None, opening: Mark | None) -> None:
        self.stopped = True
        letter = self._text[mark.index : mark.index + 1] if mark else ""
        meant = syntax(problem, context, letter)
        place = self._at((opening if meant.at_opening else mark) or mark)
        box = self.values.get(self._path)
        if meant.check == "yaml_start" and not letter and self._box is not None and box is not None:
            self.found.append(fault("yaml_open_bracket", replace(box, end_column=box.column + 1)))
        else:
            self.found.append(fault(meant.check, place))

    def _at(self, mark: Mark | None) -> Place:
        line, column = (mark.line + 1, mark.column + 1) if mark else self._end
        return Place(self._file, line, column, line, column + 1)

    def _span(self, event: Event) -> Place:
        start, end = event.start_mark, event.end_mark
        if start is None or end is None:  # as its annotations allow; no parser does it
            return Place(self._file, *self._end, *self._end)
        self._end = (end.line + 1, end.column + 1)
        return Place(self._file, start.line + 1, start.column + 1, *self._end)

    def _stop(self, check: str, place: Place) -> None:
        self.found.append(fault(check, place))
        self.stopped = True

    def _node(self, event: ScalarEvent | CollectionStartEvent | AliasEvent) -> Place:
        place = self._span(event)
        self._nodes += 1
        if self._nodes > NODES:
            self._stop("yaml_too_many", place)
        if event.anchor:
            self.found.append(fault("yaml_alias" if isinstance(event, AliasEvent) else "yaml_anchor", place))
        if not isinstance(event, AliasEvent) and event.tag:
            self.found.append(fault("yaml_tag", place))
        return place

    def _put(self, value: object, place: Place) -> Path:
        if isinstance(self._box, list):
            path: Path = (*self._path, len(self._box))
            self._box.append(value)
        elif self._box is None:
            path, self.root = (), value
        else:
            key = self._key or ""
            path = (*self._path, key)
            self._box[key] = value
            self._key = None
        self.values[path] = place
        return path

    def _is_key(self) -> bool:
        return self._key is None and isinstance(self._box, dict)

    def _scalar(self, event: ScalarEvent) -> None:
        place = self._node(event)
        if event.style == '"' and is_odd(event.value):
            self.found.append(fault("yaml_odd_escape", place))
        if self._is_key():
            self._name(event.value, place, plain=not event.style)
        else:
            self._put(event.value if event.style else meaning(event.value), place)

    def _name(self, key: str, place: Place, *, plain: bool) -> None:
        path = (*self._path, key)
        if plain and key == "<<":
            self.found.append(fault("yaml_merge", place))
        elif plain and not isinstance(meaning(key), str):
            self.found.append(fault("yaml_key_not_text", place))
        elif path in self.keys:
            self.found.append(fault("yaml_key_twice", place, self.keys[path], key))
        self.keys[path] = place
        self._key = key

    def _open(self, event: CollectionStartEvent) -> None:
        place = self._node(event)
        box: Box = {} if isinstance(event, MappingStartEvent) else []
        if self._is_key():  # a block where a key belongs: read on beside the data
            self.found.append(fault("yaml_key_not_text", place))
            path: Path = (*self._path, "")
            self._above.append((self._box, self._path, ""))
        else:
            above = (self._box, self._path)
            path = self._put(box, place)
            self._above.append((*above, None))
        self._box, self._path, self._key = box, path, None
        if len(self._above) > DEPTH:
            self._stop("yaml_too_deep", place)

    def _close(self, event: Event) -> None:
        last = self._end
        bracket = self._span(event)
        if (bracket.line, bracket.column) == self._end:  # no bracket: a block ends with its last value
            self._end = last
        if (place := self.values.get(self._path)) is not None:
            self.values[self._path] = Place(place.file, place.line, place.column, *self._end)
        self._box, self._path, self._key = self._above.pop()

    def _alias(self, event: AliasEvent) -> None:
        place = self._node(event)
        if self._is_key():
            self._key = ""
        else:
            self._put(None, place)

    def _document(self, event: DocumentStartEvent) -> None:
        self._documents += 1
        if self._documents > 1:
            self._stop("yaml_two_documents", self._span(event))
        elif event.version or event.tags:
            self.found.append(fault("yaml_directive", self._span(event)))
