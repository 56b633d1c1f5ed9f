"""Practice cases, with something said of every option."""

from dataclasses import replace

from builder.assess.practice import practice_cases
from builder.model.practice import PracticeCase
from tests.assess.sample import REFERRED, case, course, judged, judged_visit

SETS = [
    {"id": "one", "title": "One", "cases": ["beta", "alpha"]},
    {"id": "two", "title": "Two", "cases": ["alpha"]},
]
CASES = [case("alpha"), case("beta"), case("tested")]


def practised(**changed: object) -> tuple[PracticeCase, ...]:
    """The practice cases of a course with three cases, two of them in its sets."""
    of = course(CASES, practice=SETS)
    one = {each.id: tuple(judged_visit(visit.id, **changed) for visit in each.visits) for each in CASES}
    return practice_cases(of, one if changed else judged(CASES))


def test_the_cases_of_the_sets_are_practised_once() -> None:
    """In the order of the sets, and no case of a test pool."""
    assert [one.id for one in practised()] == ["beta", "alpha"]


def test_a_case_is_told_with_its_titles() -> None:
    """Title, client and what happened first stand above the visits."""
    beta = practised()[0]
    assert (beta.title, beta.subtitle, beta.mechanism) == (
        "Secret title of beta",
        "Acrobat, 24 · right thigh",
        "A pole hit beta",
    )
    assert [visit.scene.title for visit in beta.visits] == ["Secret visit 1", "Secret visit 2"]
    assert beta.visits[0].next == "Secret ending 1 told afterwards."


def test_every_option_is_spoken_of_in_the_order_shown() -> None:
    """No option goes without a word and a reason, and what is right is marked as such."""
    for visit in practised()[0].visits:
        assert [one.topic for one in visit.questions] == ["session", "phase", "option", "dose"]
        for one in visit.questions:
            assert [said.option for said in one.feedback] == [option.id for option in one.question.options]
            assert all(said.word and said.reason for said in one.feedback)
            right = [said.option for said in one.feedback if said.mark in ("ok", "right")]
            assert set(right) >= set(one.right)
            assert one.topic == "dose" or right == list(one.right)


def test_an_option_is_asked_for_one_dose() -> None:
    """A second dose of the same option is left out, so that a visit stays short."""
    minutes = judged_visit("v").doses[0]
    visit = practised(doses=(minutes, replace(minutes, attribute="urgency")))[0].visits[0]
    assert [one.topic for one in visit.questions].count("dose") == 1


def test_ids_are_unique_on_a_page() -> None:
    """All questions and options of a visit differ by id."""
    for visit in practised()[0].visits:
        ids = [one.question.id for one in visit.questions]
        ids += [option.id for one in visit.questions for option in one.question.options]
        assert len(set(ids)) == len(ids)


def test_an_emergency_says_what_to_do_at_once() -> None:
    """The first action comes with the visit, and no timeline."""
    visit = practised(session=REFERRED, doses=())[0].visits[0]
    assert visit.first_action_do == ("Call.",)
    assert visit.first_action_avoid == ("Do not rub.",)


def test_the_timeline_is_given_where_phase_applies() -> None:
    """A visit in a phase has its timeline."""
    timeline = practised()[0].visits[0].timeline
    assert timeline is not None
    assert timeline.today == 30


def test_unreviewed_rules_say_so() -> None:
    """While a rule behind an answer is not reviewed, the question is not."""
    for visit in practised()[0].visits:
        assert not any(one.reviewed for one in visit.questions if one.topic != "session")
        assert not visit.reviewed
