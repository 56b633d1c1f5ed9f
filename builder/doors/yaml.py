"""YAML, read strictly: plain data, the place of every value, and every fault placed."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
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
from builder.place import Place, Places, Rows, Span, Spans

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

    def get_event(self) -> Event | None:
        """The next event; None where none is left."""

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
    rows = growth.rows
    places = Places(Place(file), Spans(file, rows.by_path), Spans(file, rows.keys_by_path), decoded.lines)
    return Parsed(growth.root, places, (*decoded.found, *growth.found), whole=not growth.stopped)


class _Growth:
    """Data and places as they grow, event by event; without recursion, so that no depth can break it."""

    def __init__(self, file: str, text: str) -> None:
        self.root: object = None
        self.rows = Rows()
        self.found: list[Diagnostic] = []
        self.stopped = False
        self._file, self._text = file, text
        self._box: Box = None
        self._row = -1
        self._key: str | None = None
        self._above: list[tuple[Box, int, str | None]] = []
        self._last: Span = (0, 0, 0, 0)
        self._nodes = self._documents = 0

    def feed(self, loader: Loader) -> None:
        """Take every event of the text, until its end or until reading cannot go on."""
        takers = self._takers()
        source = loader(self._text)
        try:
            while not self.stopped and (event := source.get_event()) is not None:
                if (take := takers.get(type(event))) is not None:
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

    def _say(self, check: str, span: Span, first: Span | None = None, key: str = "") -> None:
        self.found.append(fault(check, self._place(span), self._place(first) if first else None, key))

    def _place(self, span: Span) -> Place:
        line, column, end_line, end_column = span
        return Place(self._file, line + 1, column + 1, end_line + 1, end_column + 1)

    def _stop(self, check: str, span: Span) -> None:
        self._say(check, span)
        self.stopped = True

    def _syntax(self, problem: str, context: str, mark: Mark | None, opening: Mark | None) -> None:
        letter = self._text[mark.index : mark.index + 1] if mark else ""
        meant = syntax(problem, context, letter)
        if meant.check == "yaml_start" and not letter and self._box is not None:  # the text ends in a bracket
            self._stop("yaml_open_bracket", _first_of(self.rows.values[self._row][2] or self._last))
            return
        at = (opening if meant.at_opening else mark) or mark
        self._stop(meant.check, _first_of((at.line, at.column, 0, 0) if at else self._last))

    def _node(self, event: ScalarEvent | CollectionStartEvent | AliasEvent) -> Span:
        self._last = span = _span(event)
        self._nodes += 1
        if self._nodes > NODES:
            self._stop("yaml_too_many", span)
        if event.anchor:
            self._say("yaml_alias" if isinstance(event, AliasEvent) else "yaml_anchor", span)
        return span

    def _put(self, value: object, span: Span) -> None:
        box, step = self._box, self._key
        if isinstance(box, dict):
            self.rows.values.append((self._row, step or "", span))
            box[step or ""] = value
            self._key = None
        elif box is None:
            self.rows.values.append((-1, "", span))
            self.root = value
        else:
            self.rows.values.append((self._row, len(box), span))
            box.append(value)

    def _is_key(self) -> bool:
        return self._key is None and isinstance(self._box, dict)

    def _scalar(self, event: ScalarEvent) -> None:
        span, value, style = self._node(event), event.value, event.style
        if event.tag:
            self._say("yaml_tag", span)
        if style == '"' and is_odd(value):
            self._say("yaml_odd_escape", span)
        if self._key is None and isinstance(self._box, dict):
            self._name(self._box, value, span, plain=not style)
        else:
            self._put(value if style else meaning(value), span)

    def _name(self, box: dict[str, object], key: str, span: Span, *, plain: bool) -> None:
        if plain and key == "<<":
            self._say("yaml_merge", span)
        elif plain and not isinstance(meaning(key), str):
            self._say("yaml_key_not_text", span)
        elif key in box:
            before = (at for row, name, at in reversed(self.rows.keys) if (row, name) == (self._row, key))
            self._say("yaml_key_twice", span, next(before), key)
        self.rows.keys.append((self._row, key, span))
        self._key = key

    def _open(self, event: CollectionStartEvent) -> None:
        span = self._node(event)
        if event.tag:
            self._say("yaml_tag", span)
        box: Box = {} if isinstance(event, MappingStartEvent) else []
        if self._is_key():  # a block where a key belongs: read on beside the data
            self._say("yaml_key_not_text", span)
            self._above.append((self._box, self._row, ""))
            self.rows.values.append((self._row, "", None))
        else:
            self._above.append((self._box, self._row, None))
            self._put(box, span)
        self._box, self._row, self._key = box, len(self.rows.values) - 1, None
        if len(self._above) > DEPTH:
            self._stop("yaml_too_deep", span)

    def _close(self, event: Event) -> None:
        bracket = _span(event)
        if bracket[:2] != bracket[2:]:  # else there is no bracket: a block ends with its last value
            self._last = bracket
        row, step, span = self.rows.values[self._row]
        if span is not None:
            self.rows.values[self._row] = (row, step, (*span[:2], *self._last[2:]))
        self._box, self._row, self._key = self._above.pop()

    def _alias(self, event: AliasEvent) -> None:
        span = self._node(event)
        if self._is_key():
            self._key = ""
        else:
            self._put(None, span)

    def _document(self, event: DocumentStartEvent) -> None:
        self._documents += 1
        if self._documents > 1:
            self._stop("yaml_two_documents", _span(event))
        elif event.version or event.tags:
            self._say("yaml_directive", _span(event))


def _span(event: Event) -> Span:
    start, end = event.start_mark, event.end_mark
    if start is None or end is None:
        return (0, 0, 0, 0)
    return (start.line, start.column, end.line, end.column)


def _first_of(span: Span) -> Span:
    line, column = span[:2]
    return (line, column, line, column + 1)
