"""A picture in a lesson is a file in `media/`."""

from __future__ import annotations

from collections.abc import Iterator
from difflib import get_close_matches

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.model.lesson import Picture, lesson_pictures, media_of

LEVEL: Level = "error"
WHY = "A course is read in halls without a network: a picture has to lie in the course itself."
_FILE = Example("media/pad.svg", "<svg xmlns='http://www.w3.org/2000/svg'/>\n")
BAD = Example(
    "lessons/cold.md",
    "# Cold\n\n[card cold_pack]\n\n![A pad under a wrap](../media/pda.svg)\n",
    more=(_FILE,),
)
GOOD = Example(
    "lessons/cold.md",
    "# Cold\n\n[card cold_pack]\n\n![A pad under a wrap](../media/pad.svg)\n",
    more=(_FILE,),
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Every picture whose file is not there, or lies elsewhere."""
    media = evidence.course.media
    for stem, text in evidence.course.lessons.items():
        for picture in lesson_pictures(text):
            if media_of(picture) not in media:
                yield Finding(
                    f"lessons/{stem}.md",
                    (),
                    f"There is no picture `{picture.target[:60]}`.",
                    _remedy(picture, media),
                    line=picture.line,
                    column=picture.column,
                )


def _remedy(picture: Picture, media: frozenset[str]) -> str:
    near = get_close_matches(picture.target[-60:], sorted(f"../{one}" for one in media), n=1)
    if near:
        return f"Did you mean `{near[0]}`?"
    return "Put the file into `media/`, and write `../media/` before its name."
