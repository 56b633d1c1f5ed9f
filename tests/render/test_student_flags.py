"""The red-flags page: the most urgent first, with what to do at once."""

from tests.render.sample_site import body, one, said

FLAGS = body("red-flags.md")


def test_the_most_urgent_come_first() -> None:
    """Emergency before same day; an urgency without rules has no heading."""
    assert [said(node) for node in FLAGS.select("h2")] == ["Emergency", "Same day"]


def test_a_flag_says_what_to_notice_and_do() -> None:
    """Title, why, questions, first actions and what to leave."""
    text = said(one(FLAGS, "#flag-rf_pulse_gone"))
    for part in (
        "No pulse at the foot",
        "Is the pulse at the foot gone?",
        "At once Loosen any wrap",
        "Not now No ice",
    ):
        assert part in text
    assert "guideline: Example A." in text


def test_a_flag_without_a_list_of_what_to_leave_has_none() -> None:
    """An empty list leaves no heading behind."""
    assert "Not now" not in said(one(FLAGS, "#flag-rf_calf_pain"))
