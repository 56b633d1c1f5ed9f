"""A drafted case rests on the rules alone."""

from builder.flow.new_case import drafted
from tests.content.library import judge


def draft(**given: str) -> tuple[str, list[str], list[str]]:
    """Phase, what is chosen, and what is wrong, of a case drafted with these answers."""
    answers = {"id": "a", "title": "A", "region": "thigh", "tissue": "muscle", "injury": "strain"}
    visit = drafted(judge(), {**answers, "since": "20 h", **given}, ("phase",)).visits[0]
    return visit.phase, [one.card for one in visit.chosen], [one.card for one in visit.wrong]


def test_the_phase_follows_time_and_signs() -> None:
    """The same injury, younger and older."""
    assert [draft(since=since)[0] for since in ("20 h", "6 days", "10 weeks")] == [
        "acute", "early_repair", "remodelling",
    ]  # fmt: skip


def test_where_the_session_refers_the_referral_is_chosen() -> None:
    """With the urgency that the rules ask for."""
    phase, chosen, _ = draft(injury="tendon_tear", tissue="tendon")
    assert (phase, chosen) == ("none", ["refer"])


def test_chosen_is_right_and_wrong_is_wrong() -> None:
    """By the judge, for every visit that is drafted."""
    answers = {"id": "a", "title": "A", "region": "calf", "tissue": "muscle", "injury": "strain"}
    (visit,) = judge().answered(drafted(judge(), {**answers, "since": "6 days"}, ("phase",)))
    assert all(one.right for one in visit.chosen)
    assert visit.wrong
    assert all(one.answer in ("barred", "not_yet") for one in visit.wrong)
