"""A kind of fault: its name, why it is one, and an example that has it beside one that does not."""

from __future__ import annotations

import textwrap
from dataclasses import dataclass

from builder.diagnostic import Level


@dataclass(frozen=True)
class Example:
    """What an author may have written, as lines of one file of the small sample course.

    A text that begins with `format:`, or of a file that the sample has not, is the whole file. Any other
    text is some keys of the block `at` (such as `visits/0`; empty is the file itself), put in place of the
    same keys there. Without a text the file is not there at all, or is a link. `more` holds files that
    belong to it.
    """

    file: str
    text: str = ""
    at: str = ""
    more: tuple[Example, ...] = ()
    link: str = ""

    @property
    def written(self) -> str:
        """The lines as they are shown, without the margin they have in the source."""
        return textwrap.dedent(self.text).lstrip("\n")


@dataclass(frozen=True)
class Kind:
    """One kind of fault; `why` is for an instructor, in one or two plain sentences.

    `says` is the rule in a line; empty where what is printed of the bad example says it best.
    """

    name: str
    level: Level
    why: str
    bad: Example
    good: Example
    says: str = ""


def kind(name: str, why: str, where: str, bad: str, good: str, level: Level = "error") -> Kind:
    """A kind whose two examples are the same lines of one file; `where` is the file, a space, the block."""
    file, _, at = where.partition(" ")
    return Kind(name, level, why, Example(file, bad, at), Example(file, good, at))
