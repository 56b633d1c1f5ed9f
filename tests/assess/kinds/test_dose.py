"""How much of a chosen technique."""

from dataclasses import replace
from decimal import Decimal

from builder.assess.kinds.dose import questions
from builder.assess.question import Question
from builder.model.card import Answer
from builder.model.judgement import DoseJudgement
from tests.assess.sample import judged_option, judged_visit, material

DOSE = judged_visit("v1").doses[0]


def asked(dose: DoseJudgement, **changed: object) -> list[Question]:
    """The questions a visit with this dose yields."""
    return list(questions(material(doses=(dose,), **changed)))


def with_answers(**answers: Answer) -> DoseJudgement:
    """The dose with these answers, each keyed by `m` and its minutes."""
    return replace(DOSE, answers={Decimal(name[1:]): one for name, one in answers.items()})


def test_the_most_that_is_accepted_is_right() -> None:
    """Every dose of the ladder is offered, rising, so that the place of the right one tells nothing."""
    (question,) = asked(DOSE)
    titles = [one.title for one in question.shown.options]
    assert titles == ["5 min", "10 min", "30 min", "45 min"]
    assert [titles[place] for place in question.judged.right] == ["10 min"]


def in_a_course_where(worse_when: str, dose: DoseJudgement) -> Question:
    """The question where minutes are dangerous in this direction."""
    made = material(doses=(dose,))
    content = made.course.content
    minutes = content.facts.written["minutes"].model_copy(update={"worse_when": worse_when})
    facts = content.facts.model_copy(update={"written": {**content.facts.written, "minutes": minutes}})
    course = replace(made.course, content=replace(content, facts=facts))
    (question,) = questions(replace(made, course=course))
    return question


def test_where_less_is_dangerous_the_least_is_right() -> None:
    """A pause is asked for from below."""
    question = in_a_course_where("lower", with_answers(m5="change", m10="ok", m30="ok"))
    titles = [one.title for one in question.shown.options]
    assert [titles[place] for place in question.judged.right] == ["10 min"]
    assert "the least" in question.shown.stem


def test_where_both_ways_are_dangerous_the_written_dose_is_right() -> None:
    """A pad can be too small and too large: other sizes that are accepted are not offered."""
    question = in_a_course_where("both", DOSE)
    titles = [one.title for one in question.shown.options]
    assert titles == ["10 min", "30 min", "45 min"]
    assert [titles[place] for place in question.judged.right] == ["10 min"]


def test_the_stem_names_the_technique_and_the_rest_of_it() -> None:
    """Everything but the dose in question stands as written."""
    (question,) = asked(DOSE)
    assert question.shown.stem == "The cold, time: which is the most that is still right here?"
    assert question.shown.hint == "Choose one. The rest stays as written: on the injury; cloth between."


def test_the_reasons_name_what_is_accepted() -> None:
    """A dose to be changed says which doses the rules accept, the right one why."""
    (question,) = asked(DOSE)
    said = {one.title: told for one, told in zip(question.shown.options, question.judged.said, strict=True)}
    assert said["45 min"].reason == "As everything else is written, the rules accept: 5 min, 10 min."
    assert said["45 min"].mark == "change"
    assert said["10 min"].reason == "Why rule_cold."


def test_doses_rise_in_practice_and_in_tests() -> None:
    """Numbers stand in their order: the order is that of the ladder, whatever is right."""
    (tested,) = asked(DOSE)
    (practised,) = questions(replace(material(doses=(DOSE,)), alone=False))
    assert tested.shown.options == practised.shown.options
    assert tested.shown.in_order


def test_less_than_the_limit_is_allowed_and_not_the_answer() -> None:
    """A smaller dose is told to be allowed, with the limit beside it."""
    (question,) = asked(DOSE)
    assert (question.judged.said[0].mark, question.judged.said[0].word) == (
        "ok",
        "Allowed, but not the limit",
    )
    assert "10 min" in question.judged.said[0].reason


def test_one_wrong_dose_is_too_few() -> None:
    """At least two doses must be to change."""
    assert asked(with_answers(m10="ok", m30="change")) == []


def test_doses_barred_outright_are_not_offered() -> None:
    """A dose question is about how much, not about whether."""
    assert asked(with_answers(m10="ok", m30="barred", m45="barred")) == []


def test_a_written_dose_that_is_not_ok_asks_nothing() -> None:
    """Where the written dose would have to be changed itself, nothing is right."""
    assert asked(with_answers(m10="change", m30="change", m45="change")) == []


def test_an_option_that_is_not_right_asks_nothing() -> None:
    """The dose of a technique that does not serve today is no question."""
    useless = judged_option("cold", serves_aim=False, right=False)
    assert asked(DOSE, chosen=(useless,)) == []


def test_an_action_has_no_dose() -> None:
    """Only techniques are dosed."""
    chosen = {"chosen": [{"card": "refer"}]}
    assert list(questions(material(chosen, chosen=(judged_option("refer"),), doses=(DOSE,)))) == []


def test_a_written_dose_off_the_ladder_is_not_offered() -> None:
    """An odd number among round ones would show which dose the author wrote."""
    odd = replace(with_answers(m5="ok", m6="ok", m10="ok", m30="change", m45="change"), written=Decimal(6))
    (question,) = asked(odd)
    assert [one.title for one in question.shown.options] == ["5 min", "10 min", "30 min", "45 min"]
