"""What a finished page shows or says to somebody: its texts, labels and what its scripts will say."""

import json
from collections.abc import Iterator
from html.parser import HTMLParser

SPOKEN = ("alt", "title", "aria-label", "aria-description", "placeholder", "aria-roledescription")
SILENT = ("style", "template")


class Shown(HTMLParser):
    """Collects every text of a page, in the order in which it stands."""

    def __init__(self) -> None:
        super().__init__()
        self.texts: list[str] = []
        self._inside: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Keep what its attributes say; a script may say what is in any `data-` attribute."""
        if tag in ("script", *SILENT):
            self._inside.append("json" if ("type", "application/json") in attrs else tag)
        self.texts += [value for name, value in attrs if value and name in SPOKEN]

    def handle_endtag(self, tag: str) -> None:
        """Leave a script or style."""
        if self._inside and tag in ("script", *SILENT):
            self._inside.pop()

    def handle_data(self, data: str) -> None:
        """Keep a text; of data for scripts, what they are to say."""
        if not self._inside:
            self.texts += [data.strip()] * bool(data.strip())
        elif self._inside[-1] == "json":
            self.texts += _said(json.loads(data).get("say", {}))


def _said(say: object) -> Iterator[str]:
    if isinstance(say, str):
        yield say
    elif isinstance(say, dict):
        for one in say.values():
            yield from _said(one)


def shown(html: str) -> list[str]:
    """Every text of a page."""
    found = Shown()
    found.feed(html)
    return found.texts
