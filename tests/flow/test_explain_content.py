"""Rules, cards, policies and settings, told in eighty columns and as data."""

import pytest

from builder.fault import Fault
from builder.flow.explain_content import CONTENT, WIDTH
from tests.demo.built import opened


def told(what: str, name: str | None) -> str:
    """All that is said, as one text."""
    return "\n".join(CONTENT[what](opened(), name)[0])


def test_a_rule_says_when_it_fires_what_it_does_and_what_it_rests_on() -> None:
    """The condition as a tree, the referral with its first action, the options, the ground, the signature."""
    text = told("rule", "knee_fracture_screen")
    assert "Fires      any of these\n             Kneecap alone tender: yes" in text
    assert "Session    stop and refer, same day" in text
    assert "At once    Protect the knee" in text
    assert "Options    move_active, heat (everywhere): not here" in text
    assert "Bachmann LM et al, 2004" in text
    assert text.endswith("not yet reviewed by a clinician")


def test_a_rule_that_needs_something_says_what() -> None:
    """Limits read as on the pages, at the sites they hold for."""
    assert "needs tension at most light" in told("rule", "wrap_reduced_arteries")


def test_a_card_answers_for_every_phase_and_site() -> None:
    """As many answers as its baseline has rows, with limits and both sides of what is contested."""
    course = opened().course
    assert course is not None
    text = told("card", "cold_pack")
    assert text.count("Answer     ") == len(course.content.cards["cold_pack"].baseline)
    assert "time at most 20 min" in text
    assert "Also held: " in text


def test_a_policy_says_who_asks_for_it() -> None:
    """One by name, or all of them: those that are written and those that are asked for."""
    assert "asked for by A body without rules" in told("policy", "refund")
    assert "refund" in told("policy", None)
    assert "practice_clients" in told("policy", None)


def test_a_setting_says_where_it_comes_from() -> None:
    """What the course file says, and one line for a setting asked for by name."""
    assert told("settings", "final.tries") == "final.tries               2  (course.yml)"
    assert "caution" in told("settings", None)


@pytest.mark.parametrize(
    ("what", "name", "said"),
    [
        ("rule", "fever_todday", "fever_today"),
        ("card", None, "Which card?"),
        ("policy", "refnd", "refund"),
        ("settings", "final.trys", "final.tries"),
    ],
)
def test_what_is_not_there_is_said_with_the_nearest(what: str, name: str | None, said: str) -> None:
    """Or with all there is, where no name is given."""
    with pytest.raises(Fault) as fault:
        told(what, name)
    assert said in f"{fault.value.message} {fault.value.remedy}"


@pytest.mark.parametrize("what", ["rule", "card"])
def test_every_one_fits_the_screen(what: str) -> None:
    """No line is longer than eighty columns, and the data names the same thing."""
    course = opened().course
    assert course is not None
    for name in course.content.rules if what == "rule" else course.content.cards:
        lines, data = CONTENT[what](opened(), name)
        assert max(map(len, lines)) <= WIDTH
        assert data[what]["id"] == name
