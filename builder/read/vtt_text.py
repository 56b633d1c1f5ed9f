"""The words of a WebVTT cue without its few marks, and where a browser would swallow words."""

from __future__ import annotations

import html
import re
from collections.abc import Iterator

_CLASSES = r"(?:\.[^\s.<>&]+)*"
_MARK = re.compile(
    rf"<(?:/?(?:c|i|b|u|ruby|rt|v|lang)|(?:c|i|b|u|ruby|rt){_CLASSES}"
    rf"|(?:v|lang){_CLASSES}[ \t][^<>]*|(?:[0-9]{{2,4}}:)?[0-5][0-9]:[0-5][0-9]\.[0-9]{{3}})>"
)
_VOICE = re.compile(rf"<v{_CLASSES}[ \t]([^<>]*)>")


def plain_text(written: str) -> str:
    """The words alone, line by line; who speaks stands before what they say."""
    spoken = _VOICE.sub(lambda voice: f"{voice[1].strip()}: ", written)
    lines = html.unescape(_MARK.sub("", spoken)).split("\n")
    return "\n".join(line for line in (" ".join(one.split()) for one in lines) if line)


def wrong_markup(line: str) -> Iterator[tuple[str, str]]:
    """Message and remedy where a `<` begins no mark: browsers drop what follows it."""
    left = _MARK.sub("", line)
    if "<" in left:
        piece = left[left.index("<") :].partition(">")[0][:20]
        message = f"`{piece}` is no mark of WebVTT, so browsers leave out words from there on."
        yield message, "Write `&lt;` for a less-than sign, and leave other marks out."
