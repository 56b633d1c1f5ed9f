"""The key of one version: every question with what is right and why; and the same on one sheet of paper."""

from __future__ import annotations

from dataclasses import dataclass

from builder.fault import Fault
from builder.model.exact import percent
from builder.model.key import Key, KeyAnswer, KeyRing
from builder.model.paper import Paper, PaperQuestion, PublishedTest
from builder.model.site import SitePage
from builder.render.address import of_version, way
from builder.render.instructor_address import of_table, of_visit
from builder.render.instructor_said import Linked
from builder.render.key_line import KeyLine, key_lines
from builder.render.maker import Maker


@dataclass(frozen=True)
class KeyedQuestion:
    """One question of a paper with its key."""

    id: str
    stem: str
    scene: str
    board: str
    policy: str
    must_pass: bool
    objective: str
    topic: str
    source: Linked
    lines: tuple[KeyLine, ...]

    @property
    def right(self) -> tuple[KeyLine, ...]:
        """The lines of what is right."""
        return tuple(one for one in self.lines if one.mark == "right")


def key_pages(made: Maker, test: PublishedTest, ring: KeyRing) -> list[SitePage]:
    """For each version the whole key, then its table on one sheet."""
    return [page for paper in test.papers for page in _pages(made, paper, ring)]


def _pages(made: Maker, paper: Paper, ring: KeyRing) -> list[SitePage]:
    key, at = _key_of(ring, paper), of_version(paper.test, paper.version)
    answers = {one.question: one for one in key.answers}
    questions = [_question(made, at, one, answers[one.id]) for one in paper.questions]
    values: dict[str, object] = {
        "paper": paper,
        "ring": ring,
        "pass_mark": percent(ring.pass_mark),
        "questions": questions,
        "must": sum(one.must_pass for one in questions),
        "reviewed": all(one.reviewed for one in key.answers),
    }
    sheet = of_table(paper.test, paper.version)
    named = {"test": paper.title, "letter": paper.version}
    return [
        made.page(at, made.say("i_key_of", **named), "instructor_key", kind="key", table=sheet, **values),
        made.page(sheet, made.say("i_table_of", **named), "instructor_table", kind="table", key=at, **values),
    ]


def _key_of(ring: KeyRing, paper: Paper) -> Key:
    key = ring.version(paper.version)
    if key is None or ring.test != paper.test:
        raise Fault(f"There is no key for {paper.test}, version {paper.version}.", "Build the course again.")
    return key


def _question(made: Maker, at: str, asked: PaperQuestion, answer: KeyAnswer) -> KeyedQuestion:
    objectives = {one.id: one.text for one in made.course.file.objectives}
    seen = asked.scene
    return KeyedQuestion(
        id=asked.id,
        stem=asked.stem,
        scene=" · ".join(part for part in (seen.title, seen.client) if part) if seen else "",
        board="; ".join(f"{cell.label}: {cell.value}" for cell in seen.board) if seen else "",
        policy="" if answer.kind == "one" else made.say(f"i_policy_{answer.policy}"),
        must_pass=answer.must_pass,
        objective=objectives.get(answer.objective, answer.objective),
        topic=made.say(f"i_topic_{answer.topic}"),
        source=_source(made, at, answer),
        lines=key_lines(made.say, asked, answer, answer.reasons),
    )


def _source(made: Maker, at: str, answer: KeyAnswer) -> Linked:
    """What a question was made from: a visit, with the way to its judgement, or the author's own file."""
    if answer.written:
        return Linked(f"questions/{answer.written}.yml", "")
    case = made.course.cases[answer.case]
    visit = next(one for one in case.visits if one.id == answer.visit)
    return Linked(f"{case.title}, {visit.title}", way(at, of_visit(case.id, visit.id)))
