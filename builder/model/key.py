"""Keys: what is right, and why. They never meet a paper on the student side."""

from __future__ import annotations

from fractions import Fraction
from typing import Literal

from builder.model.noun import Noun, Share


class KeyAnswer(Noun):
    """What is right for one question; `reasons` gives each option's answer, reason and rules.

    `reviewed`: a clinician has looked at all that it rests on.
    """

    question: str
    kind: Literal["one", "many"]
    right: tuple[str, ...]
    options: tuple[str, ...]
    policy: Literal["exact", "plus_minus"]
    must_pass: bool
    objective: str
    topic: str
    case: str
    visit: str
    reasons: dict[str, str]
    reviewed: bool = False


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
