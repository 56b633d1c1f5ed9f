"""A miniature student site made by hand, and a course whose test it publishes."""

from __future__ import annotations

import html
import json
from dataclasses import replace
from typing import Any

from builder.assess.papers import papers_and_keys
from builder.model.case import Case
from builder.model.key import KeyRing
from builder.model.library import Course
from builder.model.paper import Paper, PaperQuestion, PublishedTest
from builder.model.question import QUESTION_KINDS, AuthorQuestion
from tests.assess.sample import SECRET, a_test, case, course, judged, visit
from tests.model.question_blocks import BLOCKS, QUESTION

OF_CASES = [{"objective": "choose", "topic": one, "count": 2} for one in ("option", "phase")]
WRITTEN = [{"objective": "choose", "topic": "written", "kind": one, "count": 1} for one in QUESTION_KINDS]
CHOSEN = ("one", "many", "panel")
TOLD = "The hamstring lesson says that it hurts."
Site = dict[str, bytes]


def own_visit(name: str, number: int) -> dict[str, Any]:
    """A visit whose every text is its own."""
    chosen = [{**visit(1)["chosen"][0], "because": f"Secret word on {name} {number}."}]
    return visit(
        number,
        title=f"Secret visit {number} of {name}",
        story=f"Everyday it hurts {name} {number} times.",
        next=f"Secret ending {number} of {name} told afterwards.",
        chosen=chosen,
    )


def own_case(name: str) -> Case:
    """A case whose every text is its own."""
    return case(name, visits=[own_visit(name, number) for number in (1, 2)])


def own_question(kind: str) -> AuthorQuestion:
    """A question of a kind, kept for the test, whose every reason is its own."""
    block = json.loads(
        json.dumps(BLOCKS[kind]).replace("So it is taught.", f"Secret ground of the {kind} kind.")
    )
    name, stem = f"asked_{kind}", f"Which is it, by {kind}, on a wet day?"
    return AuthorQuestion.model_validate({**QUESTION, "id": name, "stem": stem, "use": "test", kind: block})


CASES = [own_case("wire_walker"), own_case("beta"), own_case("practised")]
QUESTIONS = {one.id: one for one in map(own_question, QUESTION_KINDS)}
COURSE: Course = replace(
    course(
        CASES,
        tests=[a_test(["wire_walker", "beta"], plan=[*OF_CASES, *WRITTEN], questions=list(QUESTIONS))],
        practice=[{"id": "set", "title": "A set", "cases": ["practised"]}],
        lessons=[{"file": "first.md", "title": "A lesson"}],
    ),
    lessons={"first": TOLD},
    questions=QUESTIONS,
)
((TEST, RING),) = papers_and_keys(COURSE, judged(CASES), SECRET)
RINGS: tuple[KeyRing, ...] = (RING,)


def version_page(paper: Paper) -> str:
    """One version as a page: every option a label around its control."""
    parts = [f"<h1>{html.escape(paper.title)} {paper.version}</h1>"]
    for asked in paper.questions:
        parts.append(f'<section id="{asked.id}"><p>{html.escape(_story(asked))}</p><h2>{asked.stem}</h2>')
        parts += _fields(asked)
        for option in asked.options if asked.kind in CHOSEN else ():
            chips = "".join(f'<span class="chip">{html.escape(one)}</span>' for one in option.chips)
            control = f'<input type="radio" name="{asked.id}" value="{option.id}">'
            parts.append(f'<label class="option">{control}<b>{html.escape(option.title)}</b>{chips}</label>')
        parts.append("</section>")
    data = json.dumps([{"q": one.id, "kind": one.kind} for one in paper.questions])
    return f"<html>{''.join(parts)}<script>var asked={data}</script></html>"


def _fields(asked: PaperQuestion) -> list[str]:
    """The fields of a question that is not answered by choosing an option."""
    if asked.kind == "order":
        return [f'<li data-step="{one.id}"><select></select>{one.title}</li>' for one in asked.options]
    if asked.kind == "match":
        partners = "".join(f'<option value="{one.id}">{one.title}</option>' for one in asked.partners)
        return [
            f'<p>{one.title}<select data-left="{one.id}">{partners}</select></p>' for one in asked.options
        ]
    return [] if asked.kind in CHOSEN else [f'<input name="{asked.id}">']


def _story(asked: PaperQuestion) -> str:
    return asked.scene.story if asked.scene else ""


def site(test: PublishedTest = TEST) -> Site:
    """Every file of the site."""
    files = {
        "index.html": "<html><h1>A course</h1><a href='tests/final-a.html'>The test</a></html>",
        "lessons/first.html": f"<html><h1 id='wire'>A lesson</h1><p>{TOLD}</p></html>",
        "cases/practised.html": "<html><h1>Secret title of practised</h1><p>Why rule_rub.</p></html>",
        "search/search_index.js": 'var index = {"docs": [{"location": "index.html", "text": "A course"}]};',
        "assets/test.js": "function right(a){return a.key==='ArrowRight'}",
    }
    files |= {f"tests/final-{paper.version.lower()}.html": version_page(paper) for paper in test.papers}
    return {name: text.encode() for name, text in files.items()}


def with_text(files: Site, name: str, text: str) -> Site:
    """The site with a text added at the end of one of its files, or in a new one."""
    return files | {name: files.get(name, b"") + text.encode()}
