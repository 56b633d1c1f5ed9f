"""What must be asked before hands-on work."""

from builder.assess.kinds.ask_first import questions
from builder.assess.question import Question
from builder.model.judgement import Doubt
from tests.assess.sample import ASKED, fired, judged_option, material

NEEDED = Doubt("tingling", "Any tingling?", 0, (fired("numb", "barred", truth="open"),), matters=True)
IDLE = tuple(Doubt(f"fact_{one}", f"Is it {one}?", 0) for one in ("red", "blue", "green"))


def asked(*doubts: Doubt, **changed: object) -> list[Question]:
    """The questions of a visit with these doubts."""
    return list(questions(material(doubts=doubts, **changed)))


def of_session(*doubts: Doubt) -> tuple[Doubt, ...]:
    """The same doubts, of the session."""
    return tuple(Doubt(one.fact, one.question, None, one.rules, matters=one.matters) for one in doubts)


def right(question: Question) -> list[str]:
    """The titles of what is right."""
    return [question.shown.options[place].title for place in question.judged.right]


def test_a_technique_is_asked_about_by_its_name() -> None:
    """One question that a rule waits for stands among three that none reads."""
    (question,) = asked(NEEDED, *IDLE)
    assert question.shown.stem == "The cold: which of these must be asked before you begin?"
    assert right(question) == ["Any tingling?"]
    assert [one.title for one in question.shown.options] == sorted(
        [NEEDED.question, *(one.question for one in IDLE)]
    )


def test_the_reason_is_that_of_the_rules_that_wait() -> None:
    """And what is not needed says so, without blaming the asking."""
    (question,) = asked(NEEDED, *IDLE)
    told = question.judged.said[question.judged.right[0]]
    assert (told.mark, told.word, told.reason) == ("right", "To be asked first", "Why numb.")
    others = [one for place, one in enumerate(question.judged.said) if place not in question.judged.right]
    assert {(one.mark, one.word) for one in others} == {("wrong", "Not for this")}


def test_a_session_that_waits_is_asked_about_as_such() -> None:
    """Nothing is said of a technique."""
    (question,) = asked(*of_session(NEEDED, *IDLE), session=ASKED)
    assert question.shown.stem == "What is still to be asked, before any hands-on work?"
    assert right(question) == ["Any tingling?"]


def test_a_visit_yields_one_question_of_the_first_technique_that_has_enough() -> None:
    """The second option is asked about where the first has too few, and only then."""
    second = [Doubt(one.fact, one.question, 1, one.rules, matters=one.matters) for one in (NEEDED, *IDLE)]
    chosen = (judged_option("cold"), judged_option("rub"))
    (question,) = asked(NEEDED, *IDLE[:2], *second, chosen=chosen)
    assert question.shown.stem.startswith("The rub")
    (question,) = asked(NEEDED, *IDLE, *second, chosen=chosen)
    assert question.shown.stem.startswith("The cold")


def test_nothing_to_ask_or_too_little_beside_it_makes_no_question() -> None:
    """A wrong option is never made up."""
    assert asked() == []
    assert asked(NEEDED, *IDLE[:2]) == []
    assert asked(*IDLE) == []
