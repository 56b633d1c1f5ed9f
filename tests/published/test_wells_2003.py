"""The two-level clot score: taught, never worked out for a client, and clearing nobody.

Wells PS et al., N Engl J Med 2003;349:1227-1235: nine items of one point, one of minus two, likely from 2
on. The version of 1997 (Lancet 350:1795) says over 3 cm and surgery within 4 weeks.
"""

import pytest

from tests.content.clients import client, seen
from tests.content.library import content
from tests.content.taught import rows_of

SCORE = content().severity.background["clot_score"]
POINTS = {row.name: row.points or 0 for row in SCORE.rows}


def test_the_items_and_their_points() -> None:
    """Ten items from -2 to 9 (Wells 2003)."""
    assert len(POINTS) == 10
    assert sum(one for one in POINTS.values() if one > 0) == 9
    assert sum(one for one in POINTS.values() if one < 0) == -2


@pytest.mark.parametrize(("difference", "counts"), [("2.9", False), ("3.0", True), ("3.5", True)])
def test_exactly_three_centimetres_count(difference: str, *, counts: bool) -> None:
    """At least 3 cm counts in 2003; over 3 cm is the wording of 1997 (Wells 2003)."""
    assert rows_of("clot_score", difference) == (["Calf larger"] if counts else [])


def test_surgery_within_twelve_weeks_counts() -> None:
    """Surgery 8 weeks ago counts in 2003 and not in 1997 (Wells 2003)."""
    texts = {row.name: row.text for row in SCORE.rows}
    assert "12 weeks" in texts["Bed or surgery"]
    assert "within 4 weeks" in (SCORE.note or "")


def test_a_score_of_one_still_refers() -> None:
    """Three signs make 3; less 2 for another cause is 1, and the client is still referred (Wells 2003)."""
    found = ("Calf larger", "Pitting", "Tender along the deep veins")
    assert sum(POINTS[name] for name in found) == 3
    assert sum(POINTS[name] for name in (*found, "Other cause as likely")) == 1
    signs = dict.fromkeys(("one_sided_swelling", "pitting", "deep_vein_tender"), "yes")
    values = client(48, {"injury": "unexplained", "region": "calf"}, {**signs})
    assert seen(values).session.urgency == "same_day"


@pytest.mark.parametrize(
    "sign", ["one_sided_swelling", "pitting", "deep_vein_tender", "new_surface_veins", "calf_pain_no_cause"]
)
def test_one_sign_refers_whatever_a_score_would_say(sign: str) -> None:
    """One point is unlikely in 2003, and refers here all the same (Wells 2003; own default)."""
    assert seen(client(48, {"region": "calf", sign: "yes"})).session.urgency == "same_day"
