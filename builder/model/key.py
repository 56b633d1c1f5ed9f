"""Keys: what is right, and why. They never meet a paper on the student side."""

from __future__ import annotations

from fractions import Fraction

from builder.model.keyed import KeyedParts
from builder.model.noun import Noun, Share


class KeyAnswer(KeyedParts):
    """What is right for one question; `reviewed`: a clinician has looked at all that it rests on.

    `reasons` gives a reason for each option, step or left side and each partner of none, by its id, and for a
    number for each value by how it reads. `written` names the author's question; where it stands, `case` and
    `visit` are empty.
    """

    question: str
    policy: str
    must_pass: bool
    objective: str
    topic: str
    case: str
    visit: str
    reasons: dict[str, str]
    reviewed: bool = False
    written: str = ""


class Key(Noun):
    """The key of one version."""

    test: str
    version: str
    answers: tuple[KeyAnswer, ...]


class KeyRing(Noun):
    """Every key of one test; `key_edition` chains to the published edition."""

    test: str
    edition: str
    key_edition: str
    pass_mark: Share
    tries: int
    keys: tuple[Key, ...]

    def version(self, name: str) -> Key | None:
        """The key of one version, if there is one."""
        return next((one for one in self.keys if one.version == name), None)


Marks = Fraction
