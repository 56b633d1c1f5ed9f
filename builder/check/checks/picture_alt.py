"""A picture in a lesson says in words what it shows."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.model.lesson import lesson_pictures

LEVEL: Level = "warning"
WHY = "Who cannot see a picture hears its words instead. Without words there is nothing in its place."
_FILE = Example("media/pad.svg", "<svg xmlns='http://www.w3.org/2000/svg'/>\n")
BAD = Example("lessons/cold.md", "# Cold\n\n[card cold_pack]\n\n![](../media/pad.svg)\n", more=(_FILE,))
GOOD = Example(
    "lessons/cold.md",
    "# Cold\n\n[card cold_pack]\n\n![A pad under a wrap](../media/pad.svg)\n",
    more=(_FILE,),
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Every picture without words."""
    for stem, text in evidence.course.lessons.items():
        for picture in lesson_pictures(text):
            if not picture.alt:
                yield Finding(
                    f"lessons/{stem}.md",
                    (),
                    f"The picture `{picture.target[:60]}` has no words for whoever cannot see it.",
                    "Write between the brackets, in one sentence, what it shows.",
                    line=picture.line,
                    column=picture.column,
                )
