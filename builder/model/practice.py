"""Practice: questions with a reason for every option; never made from a test's cases."""

from __future__ import annotations

from decimal import Decimal
from typing import Literal

from builder.model.card import Phase
from builder.model.keyed import KeyedParts
from builder.model.noun import Noun
from builder.model.paper import PaperQuestion, Scene
from builder.model.plan import QuestionTopic

Mark = Literal["ok", "change", "not_yet", "barred", "refer", "right", "wrong"]


class Feedback(Noun):
    """What is said of one option: a word with its shape, the reason, and what it rests on."""

    option: str
    mark: Mark
    word: str
    reason: str
    rests_on: str = ""
    contested: str = ""
    would_change: tuple[str, ...] = ()


class PracticeQuestion(Noun):
    """One question, what is right, and what is said of each option."""

    topic: QuestionTopic
    question: PaperQuestion
    right: tuple[str, ...]
    feedback: tuple[Feedback, ...]
    reviewed: bool


class PlacedQuestion(Noun):
    """An author-written practice question: as shown, what is right, how it is marked, and why, by part."""

    question: PaperQuestion
    keyed: KeyedParts
    policy: str
    reasons: dict[str, str]


class Band(Noun):
    """One phase on the timeline, in hours since the latest injury."""

    phase: Phase
    word: str
    start: Decimal
    end: Decimal


class Timeline(Noun):
    """The healing timeline of a visit: bands by the calendar, earlier visits, and today.

    `held` is the phase at which the signs hold it, where the calendar alone would say a later one.
    """

    bands: tuple[Band, ...]
    earlier: tuple[Decimal, ...]
    today: Decimal
    words: str
    held: Phase | None = None


class PracticeVisit(Noun):
    """One visit as it unfolds; the timeline is shown only after the phase is decided.

    `reviewed`: a clinician has looked at all that its questions and its timeline rest on.
    """

    id: str
    scene: Scene
    questions: tuple[PracticeQuestion, ...]
    timeline: Timeline | None
    first_action_do: tuple[str, ...] = ()
    first_action_avoid: tuple[str, ...] = ()
    next: str = ""
    reviewed: bool = False


class PracticeCase(Noun):
    """One case to practise on."""

    id: str
    title: str
    subtitle: str
    mechanism: str
    visits: tuple[PracticeVisit, ...]
