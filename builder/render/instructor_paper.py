"""A test on paper: booklets in plain and large print, the answer sheet, and the page to type answers in."""

from __future__ import annotations

from builder.doors.page import data_block
from builder.model.owed import policies_at
from builder.model.paper import Paper, PaperQuestion, PublishedTest
from builder.model.site import SitePage
from builder.render.instructor_address import of_answers, of_booklet, of_typing
from builder.render.maker import Maker, all_reviewed
from builder.render.script_data import about_test

SCRIPT = "assets/typing.js"
LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"
SAID = (
    "code_missing",
    "code_wrong",
    "typing_pass",
    "typing_again",
    "typing_differs",
    "typing_alike",
    "typing_unreadable",
    "typing_left",
    "typing_saved",
)


def paper_pages(made: Maker, test: PublishedTest) -> list[SitePage]:
    """For each version two booklets and an answer sheet, then one page to type in for the whole test."""
    pages = [page for paper in test.papers for page in _version(made, test, paper)]
    return [*pages, _typing(made, test)]


def _version(made: Maker, test: PublishedTest, paper: Paper) -> list[SitePage]:
    values: dict[str, object] = {"test": test, "paper": paper, "reviewed": all_reviewed(made.course)}
    named = {"test": paper.title, "letter": paper.version}
    rows = [_row(made, number, one) for number, one in enumerate(paper.questions, start=1)]
    booklet = {"policies": policies_at(made.course.file, "test"), **values}
    return [
        *(
            made.page(
                of_booklet(test.test, paper.version, large=large),
                made.say("i_large_of" if large else "i_booklet_of", **named),
                "paper_booklet",
                kind="handouts",
                large=large,
                **booklet,
            )
            for large in (False, True)
        ),
        made.page(
            of_answers(test.test, paper.version),
            made.say("i_answers_of", **named),
            "paper_answers",
            kind="handouts",
            rows=rows,
            **values,
        ),
    ]


def _row(made: Maker, number: int, asked: PaperQuestion) -> dict[str, object]:
    """One line of an answer sheet: what is to be written, and the boxes for it."""
    known = asked.partners if asked.kind == "match" else asked.options
    return {
        "number": number,
        "kind": asked.kind,
        "how": made.say(f"answers_{asked.kind}"),
        "letters": LETTERS[: len(known)],
        "places": len(asked.options),
        "unit": asked.unit,
    }


def _typing(made: Maker, test: PublishedTest) -> SitePage:
    papers = {paper.version: [_asked(one) for one in paper.questions] for paper in test.papers}
    data = {"entry": False, "papers": papers, **about_test(made, test, SAID)}
    return made.page(
        of_typing(test.test),
        made.say("i_typing_of", test=test.title),
        "paper_typing",
        kind="typing",
        scripts=(SCRIPT,),
        search=False,
        reviewed=all_reviewed(made.course),
        test=test,
        papers=[
            (one.version, [_row(made, n, asked) for n, asked in enumerate(one.questions, start=1)])
            for one in test.papers
        ],
        data=data_block(data),
    )


def _asked(asked: PaperQuestion) -> dict[str, object]:
    """What the script must know of a question: no words, only which letter stands for what."""
    return {
        "q": asked.id,
        "kind": asked.kind,
        "options": [one.id for one in asked.options],
        "partners": [one.id for one in asked.partners],
        "unit": asked.unit,
    }
