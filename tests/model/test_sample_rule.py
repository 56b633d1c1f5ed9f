"""The sample rule reads as a rule, whole and with a part written otherwise."""

from builder.doors.yaml import read_yaml
from builder.model.rule import Rule
from builder.model.sample_rule import FILE, GOOD_RULE, sample_rule


def test_it_is_a_rule() -> None:
    """Under the name of its file, with both of its examples."""
    parsed = read_yaml(GOOD_RULE.encode(), FILE)
    assert parsed.found == ()
    rule = Rule.model_validate(parsed.value)
    assert f"rules/{rule.id}.yml" == FILE
    assert [one.fires for one in rule.examples] == ["yes", "no"]


def test_a_part_may_be_written_otherwise() -> None:
    """Only that part changes."""
    other = sample_rule(source="ryan1991")
    changed = [(a, b) for a, b in zip(GOOD_RULE.split("\n"), other.split("\n"), strict=True) if a != b]
    assert changed == [("source: [common_practice]", "source: [ryan1991]")]
