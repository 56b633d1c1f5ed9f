"""Every question of the demonstration's visits: what is right is right by the judge, the rest surely wrong.

Each is judged anew here, from the case and from what the option says, not from what the question was made of.
That a finding or a question changes what it is said to change is held by the probe's own tests.
"""

from collections.abc import Iterator
from dataclasses import dataclass

import pytest

from builder.assess.question import Choice, Question
from builder.assess.questions import questions_of
from builder.assess.scene import choice_of
from builder.judge.judge import Judge
from builder.model.card import ANSWERS, PHASES
from builder.model.case import Case, CaseOption, Visit
from builder.model.judgement import OptionJudgement, VisitJudgement
from builder.model.plan import TOPICS
from tests.demo.built import opened

MADE = tuple(one for one in TOPICS if one != "written")
LEAST = {"order": 3, "phase": 50, "ask_first": 50, "stop": 50}


@dataclass(frozen=True)
class Asked:
    """One question of one visit, with what it was made from."""

    judge: Judge
    case: Case
    visit: Visit
    judged: VisitJudgement
    question: Question

    @property
    def titles(self) -> dict[str, bool]:
        """Each option by its title, and whether it is right."""
        right = set(self.question.judged.right)
        return {one.title: place in right for place, one in enumerate(self.question.shown.options)}

    def again(self, option: CaseOption) -> OptionJudgement:
        """An option of the visit, judged anew on a visit where it alone is chosen."""
        at = self.case.visits.index(self.visit)
        visits = [*self.case.visits]
        visits[at] = self.visit.model_copy(update={"chosen": (option,), "wrong": ()})
        (judged,) = self.judge.answered(self.case.model_copy(update={"visits": tuple(visits)}))[at].chosen
        return judged


def asked(topic: str) -> Iterator[Asked]:
    """Every question on a topic, as it is practised."""
    course = opened().course
    assert course is not None
    judge = Judge(course.content)
    for case in course.cases.values():
        judged = opened().judged[case.id]
        made = questions_of(course, case, judged, alone=False)
        for visit, one, questions in zip(case.visits, judged, made, strict=True):
            yield from (
                Asked(judge, case, visit, one, each) for each in questions if each.shown.topic == topic
            )


def held_session(one: Asked) -> None:
    """The right answer is what the judge says of the session; no other answer is its name."""
    session = one.judge.answered(one.case)[one.case.visits.index(one.visit)].session
    answer = session.urgency if session.answer == "refer" else session.answer
    right = [title for title, held in one.titles.items() if held]
    assert right == [one.judge.content.words[f"q_answer_{answer}"]]


def held_phase(one: Asked) -> None:
    """Right is the only phase that time and signs leave."""
    words = one.judge.content.phases.phase_words
    judged = one.judge.answered(one.case)[one.case.visits.index(one.visit)]
    assert one.titles == {words[phase]: (phase,) == judged.phase.possible for phase in PHASES}


def held_option(one: Asked) -> None:
    """An option is right where it is OK at worst and serves the aim, and wrong for a reason that is said."""
    options = (*one.visit.chosen, *one.visit.wrong)
    by_choice = {choice_of(one.judge.content, option): option for option in options}
    for place, choice in enumerate(one.question.shown.options):
        judged, said = one.again(by_choice[choice]), one.question.judged.said[place]
        assert (place in one.question.judged.right) == judged.right == (said.mark in ("ok", "refer"))
        assert judged.right == (judged.at_worst == "ok" and judged.serves_aim)


def held_dose(one: Asked) -> None:
    """Right is accepted, and the last that is; every other dose must change or is not the limit."""
    card, _, attribute = one.question.shown.part.split(".")
    fact = one.judge.content.facts.written[attribute]
    option = next(
        each
        for each in one.visit.chosen
        if f"{each.card}.{each.site}" in one.question.shown.part and each.card == card
    )
    ladder = {*one.judge.content.cards[card].ladder[attribute], option.written[attribute]}
    by_title = {fact.in_words(dose): dose for dose in ladder}
    answers = {}
    for title in one.titles:
        written = {**option.written, attribute: by_title[title]}
        answers[title] = one.again(option.model_copy(update={"written": written})).at_worst
    (right,) = (title for title, held in one.titles.items() if held)
    accepted = [by_title[title] for title, answer in answers.items() if answer == "ok"]
    assert set(answers.values()) <= {"ok", "change"}
    assert len(accepted) < len(answers)
    limit = {"higher": max, "lower": min}.get(fact.worse_when)
    assert by_title[right] == (limit(accepted) if limit else accepted[0])


def held_order(one: Asked) -> None:
    """The steps are right today, and rise in the order of their cards."""
    cards = {card.name: card for card in one.judge.content.cards.values()}
    steps = [cards[one.question.shown.options[place].title] for place in one.question.judged.right]
    assert [card.order for card in steps] == sorted({card.order for card in steps if card.order})
    chosen = {option.card: option for option in one.visit.chosen}
    assert all(one.again(chosen[card.id]).right for card in steps)


def held_stop(one: Asked) -> None:
    """The right finding refers at once; each of the others is one that surely changes nothing."""
    facts = one.judge.content.facts.facts
    turns = {
        facts[turn.fact].label
        if facts[turn.fact].kind == "yes_no"
        else f"{facts[turn.fact].label}: {facts[turn.fact].in_words(turn.value)}": turn.urgency
        for turn in one.judged.turns
    }
    for title, held in one.titles.items():
        assert turns[title] in (("same_day", "emergency") if held else (None,))


def held_ask_first(one: Asked) -> None:
    """The right question is waited for; no rule of the visit waits for any of the others."""
    for title, held in one.titles.items():
        matters = {doubt.matters for doubt in one.judged.doubts if doubt.question == title}
        assert held in matters
        assert held or one.judged.session.answer != "ask_first" or matters == {False}


HELD = {
    "session": held_session,
    "phase": held_phase,
    "option": held_option,
    "dose": held_dose,
    "order": held_order,
    "stop": held_stop,
    "ask_first": held_ask_first,
}


@pytest.mark.parametrize("topic", MADE)
def test_every_key_is_right_and_every_other_option_wrong(topic: str) -> None:
    """On all visits of all cases, for every topic there is."""
    seen = 0
    for one in asked(topic):
        right = one.question.judged.right
        assert right
        assert topic == "order" or len(right) < len(one.question.shown.options)
        HELD[topic](one)
        seen += 1
    assert seen >= LEAST.get(topic, 100)


@pytest.mark.parametrize("topic", ["ask_first", "stop"])
def test_the_length_of_an_option_does_not_tell(topic: str) -> None:
    """Whoever takes the longest, or the shortest, is right no more often than chance would have it."""
    sizes = [[len(title) for title in one.titles] for one in asked(topic)]
    rights = [next(len(title) for title, held in one.titles.items() if held) for one in asked(topic)]
    for end in (max, min):
        hits = sum(right == end(size) for right, size in zip(rights, sizes, strict=True))
        assert hits <= 0.42 * len(rights), (end.__name__, hits, len(rights))


def test_the_answers_of_the_judge_are_all_met() -> None:
    """Options of every sort stand in the questions, so that the proof above has been put to the test."""
    marks = {said.mark for one in asked("option") for said in one.question.judged.said}
    assert marks >= set(ANSWERS)
    assert all(isinstance(choice, Choice) for one in asked("option") for choice in one.question.shown.options)
