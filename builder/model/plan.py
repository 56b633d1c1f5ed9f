"""The tests of a course: what they are drawn from and by which plan, how they are marked, and what passes."""

from __future__ import annotations

from typing import Literal, get_args

from pydantic import Field

from builder.model.noun import Id, Noun, Share, Text, Truth
from builder.model.policy import USUAL, ManyPolicy, MatchPolicy, OrderPolicy
from builder.model.question import QuestionKind

QuestionTopic = Literal["session", "phase", "option", "dose", "order", "ask_first", "stop", "written"]
TOPICS: tuple[QuestionTopic, ...] = get_args(QuestionTopic)


class PlanRow(Noun):
    """How many questions of one topic a version draws for one objective."""

    objective: Id = Field(description="The objective the questions are drawn for.", examples=["choose"])
    topic: QuestionTopic = Field(
        description="What is asked: go on or refer, the phase, the option, its dose, the order of strokes, "
        "what to ask first, what would end the session; or `written`, one of the test's `questions`.",
        examples=["option"],
    )
    kind: QuestionKind | None = Field(
        default=None,
        description="The kind of answer, where only questions of one kind are drawn; else any.",
        examples=["order"],
    )
    count: int = Field(ge=1, le=50, description="How many questions.", examples=[2])
    must_pass: Truth = Field(
        default=False,
        description="Whether each of these must be right, whatever the total.",
        examples=["yes"],
    )


class CourseTest(Noun):
    """A test that counts: its pool of cases, its plan, its versions and its pass rules."""

    id: Id = Field(description="A short name; it stands in the address of the page.", examples=["final"])
    title: Text = Field(description="The test as it is headed.", examples=["Final test"])
    cases: tuple[Id, ...] = Field(
        min_length=1,
        description="The pool: cases that appear nowhere else.",
        examples=[["drum_calf", "tent_calf"]],
    )
    questions: tuple[Id, ...] = Field(
        default=(),
        description="The pool of author-written questions, each with `use: test`; they appear nowhere else.",
        examples=[["wrap_order", "cold_minutes"]],
    )
    plan: tuple[PlanRow, ...] = Field(
        min_length=1,
        description="How many questions of which sort a version draws.",
        examples=[[{"objective": "phase", "topic": "phase", "count": 3}]],
    )
    versions: int = Field(default=2, ge=1, le=6, description="How many versions are drawn.", examples=[2])
    seed: Text = Field(
        description="Any words; the draw of every version follows from them.", examples=["final, first draw"]
    )
    pass_mark: Share = Field(description="The share of the marks that passes.", examples=["75 %"])
    many_policy: ManyPolicy = Field(
        default="plus_minus",
        description="How several right options are marked, such as right less wrong, or all or nothing.",
        examples=["exact"],
    )
    order_policy: OrderPolicy = Field(
        default="pairs",
        description="How an order is marked, such as by the share of pairs that stand the right way round.",
        examples=["longest_beyond_one"],
    )
    match_policy: MatchPolicy = Field(
        default="per_pair",
        description="How matching is marked: the share of right pairs, or all or nothing.",
        examples=["exact"],
    )
    tries: int = Field(default=2, ge=1, le=9, description="How often it may be taken.", examples=[2])

    def policy(self, kind: QuestionKind) -> str:
        """The name of the policy by which a kind of question is marked here."""
        own = {"many": self.many_policy, "order": self.order_policy, "match": self.match_policy}
        return own.get(kind, USUAL[kind])

    time_limit: int | None = Field(
        default=None,
        ge=5,
        le=600,
        description="Minutes, only where a board asks for a limit. It is told before, each participant may "
        "be given more, and nothing is cut off: what comes later is kept and marked as late.",
        examples=[90],
    )


EXAMPLE_TEST = {
    "id": "final",
    "title": "Final test",
    "cases": ["drum_calf"],
    "plan": [{"objective": "phase", "topic": "phase", "count": 1}],
    "seed": "first draw",
    "pass_mark": "75 %",
}
