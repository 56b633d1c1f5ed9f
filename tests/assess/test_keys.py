"""Keys: joined to papers that were made without them."""

from dataclasses import replace

from builder.assess.keys import reason_of
from builder.assess.papers import papers_and_keys
from builder.assess.question import Ground, Said
from builder.model.key import KeyAnswer, KeyRing
from builder.model.paper import PublishedTest
from tests.assess.sample import SECRET, a_test, case, course, judged, judged_option, judged_visit

CASE = case("alpha", 1)
PLAN = [
    {"objective": "choose", "topic": "session", "count": 1, "must_pass": True},
    {"objective": "choose", "topic": "option", "count": 1},
]
COURSE = course([CASE], tests=[a_test(["alpha"], plan=PLAN)])


def made(**changed: object) -> tuple[PublishedTest, KeyRing]:
    """The test and its ring, the visit judged with these changes."""
    (one,) = papers_and_keys(COURSE, {"alpha": (judged_visit("v1", **changed),)}, SECRET)
    return one


def answer(ring: KeyRing, topic: str) -> KeyAnswer:
    """The key of version A to the question on a topic."""
    return next(one for one in ring.keys[0].answers if one.topic == topic)


def test_every_question_has_its_key() -> None:
    """Each version's key answers exactly its paper's questions, with options in the order shown."""
    published, ring = made()
    for paper, key in zip(published.papers, ring.keys, strict=True):
        asked = {one.id: tuple(option.id for option in one.options) for one in paper.questions}
        assert {one.question: one.options for one in key.answers} == asked
        assert key.version == paper.version


def test_right_and_reasons_stand_at_their_options() -> None:
    """What was judged of an option is found under the id its text is shown with."""
    published, ring = made()
    key = answer(ring, "option")
    question = next(one for one in published.papers[0].questions if one.id == key.question)
    titles = {option.id: option.title for option in question.options}
    assert [titles[one] for one in key.right] == ["The cold"]
    assert {titles[one]: text.partition(" Ryan")[0] for one, text in key.reasons.items()} == {
        "The cold": "OK as written: Why rule_cold.",
        "The rub": "Not yet: Why rule_rub.",
        "The wrap": "Not here: Why rule_wrap.",
    }


def test_the_key_knows_where_it_comes_from() -> None:
    """Objective, topic, case, visit, policy and whether it must be passed."""
    key = answer(made()[1], "session")
    assert (key.objective, key.case, key.visit, key.policy, key.must_pass) == (
        "choose",
        "alpha",
        "v1",
        "exact",
        True,
    )
    assert not answer(made()[1], "option").must_pass


def test_the_tests_policy_is_for_questions_with_many_answers() -> None:
    """A question with one answer is marked exactly, one with many as the test says."""
    twice = case("alpha", 1)
    visit = twice.visits[0].model_copy(update={"chosen": (*twice.visits[0].chosen, twice.visits[0].wrong[0])})
    many = twice.model_copy(update={"visits": (visit.model_copy(update={"wrong": visit.wrong[1:]}),)})
    chosen = (judged_option("cold"), judged_option("rub"))
    one = {"alpha": (judged_visit("v1", chosen=chosen, wrong=(judged_option("wrap", "barred"),)),)}
    ((_, ring),) = papers_and_keys(replace(COURSE, cases={"alpha": many}), one, SECRET)
    assert answer(ring, "option").policy == "plus_minus"
    assert len(answer(ring, "option").right) == 2


def test_the_ring_carries_the_rules_of_passing() -> None:
    """Pass mark and tries stand with the keys."""
    _, ring = made()
    assert (str(ring.pass_mark), ring.tries, ring.test) == ("3/4", 2, "final")


def test_the_key_edition_chains_to_the_edition() -> None:
    """A corrected key has a new key edition under the same edition."""
    published, ring = made()
    corrected, other = made(chosen=(judged_option("cold", "barred"),), wrong=(judged_option("rub"),) * 2)
    assert corrected == published
    assert ring.edition == other.edition == published.edition
    assert len({ring.key_edition, other.key_edition, published.edition}) == 3
    assert made()[1] == ring


def test_reasons_name_rules_and_both_sides() -> None:
    """The instructor reads answer, reason, ground, rules and what is contested, in one line."""
    said = Said(
        "barred", "Not here", "Cold there.", Ground("Ryan, 1991", "Taught: a. Also held: b.", ("co1", "co2"))
    )
    assert reason_of(said) == "Not here: Cold there. Ryan, 1991 [co1, co2] Taught: a. Also held: b."


def test_judged_sample_is_used() -> None:
    """The hand-set judgement of a whole course gives the same ring as that of its one visit."""
    ((_, ring),) = papers_and_keys(COURSE, judged([CASE]), SECRET)
    assert ring == made()[1]
