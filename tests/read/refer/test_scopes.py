"""What each condition may ask about."""

from pathlib import Path

import pytest

from builder.read.refer.scopes import CONDITIONS, LIMITS
from tests.read.folders import changed

RULE = "content/rules/numb_cold.yml"
SESSION = "session: {urgency: days}\noptions:"


@pytest.mark.parametrize(
    ("file", "old", "new", "check"),
    [
        (RULE, "when: {numb: yes}", "when: {written.minutes: {over: 3}}", None),
        (RULE, "when: {numb: yes}", "when: {session_urgency: [days, emergency]}", None),
        (RULE, "when: {numb: yes}", "when: {session_urgency: {at_least: same_day}}", None),
        (
            RULE,
            "when: {numb: yes}\noptions:",
            "when: {written.minutes: 3}\n" + SESSION,
            "condition_out_of_reach",
        ),
        (
            RULE,
            "when: {numb: yes}\noptions:",
            "when: {session_urgency: days}\n" + SESSION,
            "condition_out_of_reach",
        ),
        (RULE, "when: {numb: yes}\noptions:", "when: {phase: acute}\n" + SESSION, None),
        (RULE, "when: {numb: yes}", "when: {minutes: 3}", "fact_unknown"),
        (RULE, "answer: barred", "needs: {minutes: {at_most: 5}}", None),
        (RULE, "answer: barred", "needs: {written.minutes: {at_most: 5}}", "attribute_unknown"),
        (RULE, "given: {numb: yes}", "given: {written.barrier: yes, session_urgency: none}", None),
        (RULE, "given: {numb: yes}", "given: {barrier: yes}", "fact_unknown"),
        ("content/cards/cold.yml", "limits: {minutes:", "limits: {bend:", "attribute_unknown"),
        ("content/phases.yml", "when: {heat: clear}", "when: {phase: acute}", "condition_out_of_reach"),
        ("content/phases.yml", "{injury: strain}", "{written.minutes: 3}", "condition_out_of_reach"),
        (
            "content/severity.yml",
            "applies: {injury: contusion,",
            "applies: {phase: acute,",
            "condition_out_of_reach",
        ),
    ],
)
def test_nothing_asks_for_what_is_not_known_yet(
    file: str, old: str, new: str, check: str | None, tmp_path: Path
) -> None:
    """A sign cannot ask for the phase, nor a session for how an option is written; options may."""
    assert [one.check for one in changed(tmp_path / "root", file, old, new).found] == (
        [check] if check else []
    )


def test_every_condition_of_the_nouns_is_listed() -> None:
    """Each place where a noun has a condition or limits has its scope."""
    assert {(one.model.__name__, one.pattern) for one in (*CONDITIONS, *LIMITS)} == {
        ("Rule", "when"),
        ("Rule", "options/*/needs"),
        ("Rule", "examples/*/given"),
        ("Card", "baseline/*/limits"),
        ("FactBook", "facts/*/asked_where"),
        ("PhaseBook", "does_not_apply"),
        ("PhaseBook", "signs/*/when"),
        ("PhaseBook", "doubt/*/when"),
        ("SeverityBook", "tables/*/applies"),
        ("SeverityBook", "tables/*/bands/*/when"),
        ("SeverityBook", "tables/*/raised/*/when"),
    }
