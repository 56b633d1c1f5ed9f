"""The page of rules."""

from dataclasses import replace

from bs4.element import Tag

from builder.model.card import Reviewed
from builder.model.rule import Rule
from builder.render.instructor_rules import rules_page
from builder.render.maker import maker
from tests.render.sample_instructor import private_page
from tests.render.sample_judged import judged_course
from tests.render.sample_site import one, parsed, said
from tests.render.samples import flag

RULES = private_page("rules.md")


def page_with(*rules: Rule, own: frozenset[str] = frozenset()) -> Tag:
    """The page of a course that has just these rules."""
    course = judged_course()
    content = replace(course.content, rules={rule.id: rule for rule in rules}, own_rules=own)
    return parsed(rules_page(maker(replace(course, content=content))).body)


def option_rule(**effect: object) -> Rule:
    """A rule about options, with one effect."""
    plain = flag("calf_pain", "Sore calf", "days").model_dump(mode="json", exclude={"session"})
    point = {"point": "early_friction", "taught": "Only late.", "other": "Early too."}
    return Rule.model_validate(plain | {"id": "sore", "options": [effect], "contested": point})


def test_rules_stand_by_urgency() -> None:
    """The most urgent first, each group by title, with how many are unreviewed."""
    assert [said(node) for node in RULES.select("h2")] == ["Emergency", "Same day"]
    assert [said(node) for node in RULES.select("summary")] == [
        "No pulse at the foot",
        "Calf pain without a cause",
    ]
    assert "Rules: 2. Not yet reviewed by a clinician: 2." in said(RULES)


def test_a_rule_tells_when_then_and_why() -> None:
    """Condition, effect with first action, reason, strength, source, and that it is unreviewed."""
    text = said(one(RULES, "#rule-rf_pulse_gone"))
    for part in (
        "rf_pulse_gone",
        "When Pulse at the foot: yes",
        "The session stops: emergency",
        "At once Loosen any wrap",
        "Not now No ice",
        "It can be the sign of something that hands cannot help.",
        "guideline: Example A, 2020",
        "not yet reviewed",
    ):
        assert part in text, part


def test_an_effect_on_options_names_cards_sites_and_needs() -> None:
    """What it bars, for which cards and groups, where; what it needs, in words."""
    effect = {
        "cards": ["friction"],
        "groups": ["hands_on", "cold_things"],
        "sites": ["on"],
        "answer": "barred",
    }
    text = said(page_with(option_rule(**effect)))
    assert "Not here : all hands-on cards, all cards of the group “cold things”, Cross-fibre friction" in text
    assert "only on the injury" in text
    needs = said(page_with(option_rule(cards=["friction"], needs={"minutes": {"at_most": 3}})))
    assert "Only if changed : Cross-fibre friction · needs: time at most 3 min" in needs


def test_a_contested_rule_shows_both_sides() -> None:
    """The summary says that it is contested, the rule tells both sides and the course's own."""
    tree = page_with(option_rule(cards=["friction"], answer="not_yet"))
    assert said(one(tree, "summary")) == "Sore calf contested"
    assert "As often taught: Only late. On the other side: Early too. As taught here:" in said(tree)


def test_a_review_is_told_with_its_name() -> None:
    """Who, with which licence, when; then the page's last line goes too."""
    seen = Reviewed(who="A. Reader", licence="MD 17", date="2026-11-01")
    tree = page_with(flag("calf_pain", "Sore calf", "days").model_copy(update={"reviewed": seen}))
    assert "Reviewed by A. Reader, MD 17, 2026-11-01" in said(tree)
    assert "Rules: 1." in said(tree)
    assert "Not yet reviewed" not in said(tree)
    assert not tree.select(".unreviewed")


def test_a_courses_own_rule_says_so() -> None:
    """A rule the course added is told apart from the shipped ones."""
    rule = flag("calf_pain", "Sore calf", "days")
    assert "the course's own rule" in said(page_with(rule, own=frozenset({rule.id})))
    assert "the course's own rule" not in said(page_with(rule))
