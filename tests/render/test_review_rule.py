"""A rule as it is read for review."""

from builder.render.review_rule import said_of_rule
from tests.render.test_review_list import demonstration


def told(name: str) -> list[tuple[str, str]]:
    """What a shipped rule says, by label."""
    made = demonstration()
    return [(one.label, one.line) for one in said_of_rule(made, made.course.content.rules[name]).said]


def test_a_stop_rule_says_what_to_do_at_once() -> None:
    """When, how urgent, what to do and not to do, what else it bars, why, and examples."""
    said = told("compartment_syndrome")
    labels = [label for label, _ in said]
    assert labels[:4] == ["When", "Then", "At once", "Not now"]
    assert dict(said[1:2]) == {"Then": "Stop and refer: emergency"}
    assert {"Why", "Rests on", "Contested", "Fires for", "Not for"} <= set(labels)


def test_a_group_is_spelt_out() -> None:
    """Whoever signs sees which cards are meant, without knowing the groups."""
    text = dict(told("cold_reaction_bars_cold"))["Then"]
    assert text == "Not here: all cards of the group “cold” (Cold massage, Cold pack)"


def test_every_shipped_rule_can_be_read() -> None:
    """All rules with their why and every example."""
    for rule in demonstration().course.content.rules.values():
        labels = [label for label, _ in told(rule.id)]
        assert labels.count("Fires for") + labels.count("Not for") == len(rule.examples)
