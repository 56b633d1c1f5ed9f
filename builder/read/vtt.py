"""Captions and chapters as WebVTT (W3C), read strictly: what browsers would drop or misread is told."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from builder.diagnostic import Diagnostic
from builder.model.film import Cue, Track, stamp
from builder.place import Place
from builder.read.vtt_text import plain_text, wrong_markup

ARROW = "-->"
EXAMPLE = f"{stamp(1000)} {ARROW} {stamp(4000)}"
LONGEST = 200  # characters of a line that may have been meant as times
MOST = 200  # faults of one file; whoever mends them sees the next
_HEADER = re.compile(r"WEBVTT(?:[ \t](.*))?")
_TIME = r"((?:[0-9]{2,4}:)?[0-5][0-9]:[0-5][0-9]\.[0-9]{3})"
_TIMING = re.compile(rf"{_TIME}[ \t]+-->[ \t]+{_TIME}(?:[ \t](.*))?")
_ALMOST = re.compile(r"\d:\d\d.*-+>|-+>.*\d:\d\d|\d:\d\d\S*[ \t]*-+[ \t]*\d+:\d\d")
_NOTE = re.compile(r"NOTE(?:[ \t].*)?")
_UNUSED = re.compile(r"(?:STYLE|REGION)[ \t]*")
_SHARE = r"(?:100(?:\.0+)?|[0-9]{1,2}(?:\.[0-9]+)?)%"
_SETTINGS = {
    "align": re.compile(r"start|center|end|left|right"),
    "line": re.compile(rf"(?:-?[0-9]{{1,3}}|{_SHARE})(?:,(?:start|center|end))?"),
    "position": re.compile(rf"{_SHARE}(?:,(?:line-left|center|line-right))?"),
    "region": re.compile(r"\S+"),
    "size": re.compile(_SHARE),
    "vertical": re.compile(r"rl|lr"),
}


@dataclass(frozen=True)
class _Block:
    """Lines without an empty one between them; `line` is the number of the first."""

    line: int
    lines: tuple[str, ...]


@dataclass(frozen=True)
class _Reader:
    """The file that is read, for the places of what is wrong in it."""

    file: str

    def fault(self, check: str, line: int, text: str, message: str, remedy: str) -> Diagnostic:
        """A fault that a whole line has."""
        place = Place(self.file, line, 1, line, max(len(text), 1) + 1)
        return Diagnostic(check, "error", place, message, remedy)


def read_track(text: str, file: str) -> tuple[Track, tuple[Diagnostic, ...]]:
    """The cues of a WebVTT text, and all that is wrong with its lines; what could not be read is left out."""
    reader, blocks = _Reader(file), list(_blocks(text))
    cues: list[Cue] = []
    found: list[Diagnostic] = []
    head = _HEADER.fullmatch(text.partition("\n")[0])
    if head is None or len(blocks[0].lines) > 1:
        found.append(_no_header(reader, text, named=head is not None))
    for block in blocks:
        if block.line == 1 and (head or not _timed(block)):
            continue
        cue, wrong = _cue(reader, block)
        cues += [cue] if cue else []
        found += wrong
    return Track(file, tuple(cues), (head[1] or "").strip() if head else ""), tuple(found[:MOST])


def _blocks(text: str) -> Iterator[_Block]:
    lines: list[str] = []
    for number, line in enumerate(text.split("\n"), start=1):
        if line:
            lines.append(line)
        elif lines:
            yield _Block(number - len(lines), tuple(lines))
            lines = []
    if lines:
        yield _Block(text.count("\n") + 2 - len(lines), tuple(lines))


def _timed(block: _Block) -> bool:
    """Whether its first line, or the one below a name, is meant to hold times."""
    return any(ARROW in line for line in block.lines[:2])


def _no_header(reader: _Reader, text: str, *, named: bool) -> Diagnostic:
    if named:
        second = text.split("\n")[1]
        message, remedy = "The line after `WEBVTT` is not empty.", "Leave one line empty after it."
        return reader.fault("vtt_header", 2, second, message, remedy)
    message = "The file does not begin with `WEBVTT`, so no browser takes it for captions or chapters."
    remedy = "Write `WEBVTT` alone on the first line, and leave the second empty."
    return reader.fault("vtt_header", 1, text.partition("\n")[0], message, remedy)


def _cue(reader: _Reader, block: _Block) -> tuple[Cue | None, list[Diagnostic]]:
    """What a block shows, with its faults; neither for a note."""
    first = block.lines[0]
    aside = _NOTE.fullmatch(first) or _UNUSED.fullmatch(first)
    if aside:
        return None, list(_arrows(reader, block, 1))
    if not _timed(block):
        return None, [_untimed(reader, block)]
    at = 0 if ARROW in first else 1
    timing = _TIMING.fullmatch(block.lines[at])
    if timing is None:
        return None, [_mistimed(reader, block.line + at, block.lines[at])]
    settings = tuple((timing[3] or "").split())
    found = [*_odd_settings(reader, block.line + at, block.lines[at], settings)]
    found += _arrows(reader, block, at + 1)
    for number, line in enumerate(block.lines[at + 1 :], start=block.line + at + 1):
        found += [reader.fault("vtt_markup", number, line, *wrong) for wrong in wrong_markup(line)]
    words = plain_text("\n".join(block.lines[at + 1 :]))
    known = tuple((one.partition(":")[0], one.partition(":")[2]) for one in settings)
    return Cue(_length(timing[1]), _length(timing[2]), words, block.line + at, known), found


def _arrows(reader: _Reader, block: _Block, after: int) -> Iterator[Diagnostic]:
    """Lines that browsers take for the times of the next cue, though no empty line stands before them."""
    for number, line in enumerate(block.lines[after:], start=block.line + after):
        if ARROW in line:
            message = f"An arrow `{ARROW}` stands inside a block, where browsers begin a new one."
            remedy = f"Leave a line empty above the times, and write no `{ARROW}` into words or notes."
            yield reader.fault("vtt_block", number, line, message, remedy)


def _untimed(reader: _Reader, block: _Block) -> Diagnostic:
    for number, line in enumerate(block.lines[:2], start=block.line):
        if _ALMOST.search(line[:LONGEST]):
            return _mistimed(reader, number, line)
    remedy = f"Write above them a line such as `{EXAMPLE}`, with no empty line between."
    message = "These words have no times, so they would never be shown."
    return reader.fault("vtt_block", block.line, block.lines[0], message, remedy)


def _mistimed(reader: _Reader, number: int, line: str) -> Diagnostic:
    mended = re.sub(r"([0-9]),([0-9]{3})\b", r"\1.\2", line)
    right = mended if mended != line and _TIMING.fullmatch(mended) else EXAMPLE
    remedy = f"Write hours, minutes, seconds and three figures after a point: `{right}`."
    return reader.fault("vtt_timing", number, line, "These times cannot be read.", remedy)


def _odd_settings(reader: _Reader, number: int, line: str, settings: tuple[str, ...]) -> Iterator[Diagnostic]:
    for one in settings:
        name, _, value = one.partition(":")
        if name not in _SETTINGS or not _SETTINGS[name].fullmatch(value):
            message = f"`{one}` says nothing of where a caption stands."
            remedy = "Leave it out, or write a setting such as `line:0` or `align:start`."
            yield reader.fault("vtt_timing", number, line, message, remedy)


def _length(time: str) -> int:
    """A WebVTT time in thousandths of a second."""
    whole, _, thousandths = time.partition(".")
    seconds = 0
    for part in whole.split(":"):
        seconds = seconds * 60 + int(part)
    return seconds * 1000 + int(thousandths)
