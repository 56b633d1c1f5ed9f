"""What a statement rests on: sources and strength in words, and both sides of a contested point."""

from __future__ import annotations

from builder.model.card import Contested
from builder.render.maker import Maker


def rests_on(made: Maker, sources: tuple[str, ...], strength: str) -> str:
    """The strength in words and the sources' citations."""
    known = made.course.content.references.sources
    cited = [known[one].cite for one in sources if one in known]
    return made.say("rests_on", strength=made.say(f"strength_{strength}"), sources="; ".join(cited))


def contested_text(made: Maker, contested: Contested | None) -> str:
    """Both sides of a contested point, with the course's own position where it has one; else nothing."""
    if contested is None:
        return ""
    both = made.say("both_sides", taught=contested.taught, other=contested.other)
    own = made.course.file.positions.get(contested.point)
    return f"{both} {made.say('taught_here', position=own)}" if own else both
