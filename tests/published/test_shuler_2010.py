"""Compartment syndrome: a soft feel clears nobody.

Shuler FD, Dietz MJ, J Bone Joint Surg Am 2010;92:361-367: feeling by hand found 24 % of raised pressures,
with a specificity of 55 %.
"""

from builder.judge.space import Value
from tests.content.clients import HOT, client, option, seen
from tests.content.library import content

SOFT: dict[str, Value] = {"tense_compartment": "no", "pain_out_of_proportion": "yes"}


def test_a_soft_muscle_changes_nothing() -> None:
    """Soft or not asked: an emergency as before, and no wrap, cold or raising (Shuler 2010)."""
    frame = seen(client(24, HOT, SOFT))
    assert frame.session.urgency == "emergency"
    assert all(
        option(frame, card).answer == "barred" for card in ("wrap_pad", "cold_pack", "elevate", "lymph")
    )


def test_the_rule_shows_both_sides() -> None:
    """What is taught, that a soft muscle rules it out, stands beside what was found (Shuler 2010)."""
    rule = content().rules["compartment_syndrome"]
    assert "shuler2010" in rule.source
    assert rule.contested is not None
    assert "misses most" in rule.contested.other
    assert rule.session is not None
    assert rule.session.first_action is not None
    assert any("feels soft" in one for one in rule.session.first_action.avoid)
