"""The words of the interface: said by id, of one or of several; English that stands in says so."""

from __future__ import annotations

import re
from collections.abc import Mapping

ENGLISH = "en"
ONE = ".one"
# Unicode's language tag for English, and its end: nothing that is seen or that an author would write.
_FROM, _TO = "\U000e0001\U000e0065\U000e006e", "\U000e007f"
_MARKED = re.compile(f"{_FROM}(.*?){_TO}", re.DOTALL)
_UNSPOKEN = re.compile(r"(?s)<script\b.*?</script>|<title>.*?</title>|<textarea\b.*?</textarea>|<[^>]*>")


def said(words: Mapping[str, str], key: str, **blanks: object) -> str:
    """The text with this id, its blanks filled by name; the text for one where the blank `n` is 1."""
    if blanks and str(blanks.get("n")) == "1":
        key = key + ONE if key + ONE in words else key
    return words[key].format(**blanks) if blanks else words[key]


def as_english(text: str) -> str:
    """A text that stands in for one that has no translation."""
    return f"{_FROM}{text}{_TO}"


def unmarked(text: str) -> str:
    """The text as it reads, whatever language it is in."""
    return text.replace(_FROM, "").replace(_TO, "")


def marked(html: str) -> str:
    """A finished page whose English stand-ins say that they are English, where a page can say so."""
    if _FROM not in html:
        return html
    made, at = [], 0
    for tag in _UNSPOKEN.finditer(html):
        made += [html[at : tag.start()], unmarked(tag[0])]
        at = tag.end()
    return unmarked(_MARKED.sub(rf'<span lang="{ENGLISH}">\1</span>', "".join([*made, html[at:]])))
