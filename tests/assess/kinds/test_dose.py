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


def test_the_written_dose_stands_among_doses_to_be_changed() -> None:
    """Doses that would have to be changed are offered, others as right as the written one are not."""
    (question,) = asked(DOSE)
    titles = [one.title for one in question.shown.options]
    assert sorted(titles) == ["10 min", "30 min", "45 min"]
    assert [titles[place] for place in question.judged.right] == ["10 min"]


def test_the_stem_names_the_technique_and_the_rest_of_it() -> None:
    """Everything but the dose in question stands as written."""
    (question,) = asked(DOSE)
    assert question.shown.stem == "The cold, time: which do you choose?"
    assert question.shown.hint == "Choose one. The rest stays as written: on the injury; cloth between."


def test_the_reasons_name_what_is_accepted() -> None:
    """A dose to be changed says which doses the rules accept, the right one why."""
    (question,) = asked(DOSE)
    said = {one.title: told for one, told in zip(question.shown.options, question.judged.said, strict=True)}
    assert said["45 min"].reason == "As everything else is written, the rules accept: 5 min, 10 min."
    assert said["45 min"].mark == "change"
    assert said["10 min"].reason == "Why rule_cold."


def test_doses_rise_only_in_practice() -> None:
    """In a test the place of a dose would tell, because the right one is often the least."""
    (tested,) = asked(DOSE)
    (practised,) = questions(replace(material(doses=(DOSE,)), alone=False))
    assert [one.title for one in practised.shown.options] == ["10 min", "30 min", "45 min"]
    assert (tested.shown.in_order, practised.shown.in_order) == (False, True)


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
