"""The pages of the instructor's side of the host, and everything on them in words."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from urllib.parse import quote

from builder.doors.page import data_block, filler, markup
from builder.doors.qr import square
from builder.doors.serve import Answer
from builder.flow.hall import OpenClass
from builder.host.board import Place
from builder.host.shelf import TEXTS
from builder.model.arrival import Arrival
from builder.model.words import marked, unmarked

LOOK = Path(__file__).parent / "look"
OWN = ("desk.css", "desk.js", "screen.js")
SITE = ("assets/look.css", "assets/mark.svg")
COUNTED = ("in", "working", "handed", "missing")


class Pages:
    """Fills the templates of the host for one class, in the words of its course."""

    def __init__(self, desk: OpenClass) -> None:
        self._desk, self._say = desk, desk.say
        self._fill = filler(LOOK, {"say": desk.say, "course": desk.course, "taught": desk.taught.taught})

    def asset(self, path: str) -> Answer | None:
        """A style or script of these pages, or the style of the site; nothing else can be asked for."""
        name = path.removeprefix("/")
        if name in OWN:
            return Answer((LOOK / name).read_bytes(), TEXTS[Path(name).suffix])
        if name in SITE:
            return Answer((self._desk.publish / name).read_bytes(), TEXTS[Path(name).suffix])
        return None

    def closed(self) -> Answer:
        """The page for whoever has no key."""
        return self._page("closed.html", {}, 403)

    def desk(self, state: Mapping[str, object]) -> Answer:
        """The instructor's page as it stands now."""
        words = {"gone": unmarked(self._say("host_gone"))}
        data = {"state": state, "starts": self._desk.starts(), "words": words}
        return self._page("desk.html", {"data": data_block(data)})

    def start(self, at: str) -> str:
        """Where phones are led: what was asked for, if the site has it, or else the first there is."""
        starts = self._desk.starts().values()
        return at if at in starts else next(iter(starts))

    def screen(self, way: str, address: str, told: Mapping[str, object]) -> Answer:
        """What the room sees: where to point a phone, and how many are in; no names."""
        starts = {address: title for title, address in self._desk.starts().items()}
        whole = f"{way}{address}#class={quote(self._desk.taught.taught.id)}" if way else ""
        values = {
            "title": starts[address],
            "way": way,
            "square": markup(square(whole)) if way else "",
            **told,
        }
        return self._page("screen.html", {**values, "typed": way.rstrip("/")})

    def counts(self, counts: Mapping[str, int]) -> list[list[str]]:
        """How many, each with its words: number, then what it counts."""
        return [
            [str(counts[one]), unmarked(self._say(f"host_count_{one}", n=counts[one]))] for one in COUNTED
        ]

    def row(self, place: Place) -> dict[str, object]:
        """One participant: name, where they stand, and each receipt."""
        say = {
            "missing": "host_missing",
            "joined": "host_joined",
            "working": "host_working",
            "handed": "host_handed",
        }
        text = unmarked(self._say(say[place.state], n=place.answered, of=place.of))
        if place.quiet and place.state != "handed":
            text = unmarked(self._say("host_quiet", text=text))
        receipts = [f"{one.test} {one.version} · {one.at:%H:%M} · {one.receipt}" for one in place.sheets]
        return {"name": place.name, "state": place.state, "text": text, "receipts": receipts}

    def aside(self, one: Arrival) -> dict[str, str]:
        """One sheet that was set aside: when, why, and what to do."""
        return {
            "at": f"{one.at:%H:%M}",
            "fault": one.fault,
            "remedy": one.remedy,
            "file": f"{one.digest[:12]}…",
        }

    def _page(self, name: str, values: Mapping[str, object], status: int = 200) -> Answer:
        return Answer(marked(self._fill(name, values)).encode("utf-8"), status=status)
