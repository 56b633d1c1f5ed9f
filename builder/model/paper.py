"""Papers: what a participant may see of a test. Nothing here knows what is right."""

from __future__ import annotations

from builder.model.noun import Noun
from builder.model.question import QuestionKind


class BoardCell(Noun):
    """One finding as shown: label, value in words, and the fact it came from for its drawing."""

    label: str
    value: str
    fact: str
    number: str | None = None


class Scene(Noun):
    """What the therapist could know at one visit, in words."""

    title: str
    client: str
    story: str
    board: tuple[BoardCell, ...]
    screen: str


class PaperOption(Noun):
    """One option as shown: a title and chips for how it is done."""

    id: str
    title: str
    chips: tuple[str, ...] = ()


class PaperQuestion(Noun):
    """One question as shown; a question that an author wrote has no scene.

    `options` are what can be chosen (one, many, panel), the steps (order) or the left sides (match), in the
    order shown; `partners` the right sides (match), `unit` that of the field (number), `words` about how many
    are asked for (text). What a kind has not is empty.
    """

    id: str
    kind: QuestionKind
    stem: str
    hint: str
    scene: Scene | None = None
    options: tuple[PaperOption, ...] = ()
    partners: tuple[PaperOption, ...] = ()
    unit: str = ""
    words: int = 0


class Paper(Noun):
    """One version of a test, without key."""

    test: str
    title: str
    version: str
    language: str
    questions: tuple[PaperQuestion, ...]


class PublishedTest(Noun):
    """All papers of one test, and the edition they belong to."""

    test: str
    title: str
    edition: str
    papers: tuple[Paper, ...]
