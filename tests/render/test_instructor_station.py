"""A station: briefs, rubric, and the sheet to mark it on."""

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from builder.model.matrix import objectives_of_station
from builder.render.instructor_station import most_points, points_needed
from tests.render.sample_instructor import private_page
from tests.render.sample_judged import judged_course, station
from tests.render.sample_site import one, said

PAGE = private_page("stations/friction-station.md")
HANDOUTS = private_page("stations/friction-station-handouts.md")
SHEET = private_page("stations/friction-station-sheet.md")


def test_points_are_weighted() -> None:
    """Three levels above nothing, once and twice."""
    assert most_points(station()) == 9
    assert points_needed(station()) == 7


@given(st.fractions(0, 1, max_denominator=500))
def test_the_points_needed_are_the_fewest_that_pass(mark: Fraction) -> None:
    """One point less than needed is below the pass mark, exactly."""
    asked = station().model_copy(update={"pass_mark": mark})
    needed = points_needed(asked)
    assert Fraction(needed, 9) >= mark
    assert needed == 0 or Fraction(needed - 1, 9) < mark


def test_a_station_proves_what_it_names() -> None:
    """Its own objectives, or else those of its case."""
    made = judged_course()
    assert objectives_of_station(made, station()) == ("hands",)
    assert objectives_of_station(made, station().model_copy(update={"objectives": ()})) == ("phases",)


def test_the_rubric_has_a_sentence_for_every_level() -> None:
    """Each criterion with its weight, each level with its number and anchor."""
    heads = [said(node) for node in PAGE.select(".rubric h3")]
    assert heads == ["Agrees counts once", "Works counts 2 times"]
    rows = [said(node) for node in PAGE.select(".rubric ol")[0].select("li")]
    assert rows == ["Not at all.", "In part.", "Well.", "Well, and says why."]
    assert {node["start"] for node in PAGE.select(".rubric ol")} == {"0"}
    assert "7 of 9 points pass (75 %)." in said(PAGE)


def test_the_examiner_is_told_what_fails() -> None:
    """Automatic fails stand apart from points; the examiner's brief is on the same page."""
    assert "Do not help." in said(PAGE)
    assert said(one(PAGE, ".aside-clay")) == (
        "Fails the station, whatever the points Each is seen or not seen. One that is seen fails. "
        "Went on after stop."
    )


def test_the_sheets_to_hand_out_hold_no_judgement() -> None:
    """Participant and practice client read brief, board and caution; nothing of what is marked."""
    first, second = HANDOUTS.select(".handout")
    assert "Show friction. Think aloud." in said(first)
    assert "Say once: that is sharp." in said(second)
    for sheet in (first, second):
        text = said(sheet)
        assert "Swelling still rising" in text
        assert "stop and refer" in text
        for never in ("acute", "Agrees", "Went on after stop", "Do not help", "points"):
            assert never not in text, never


def test_only_the_practice_client_reads_the_screen() -> None:
    """A participant has to ask; the practice client has to know the answers."""
    first, second = HANDOUTS.select(".handout")
    assert "Screening" not in said(first)
    assert "Screening none recorded" in said(second)
    assert "Consent" not in said(HANDOUTS)


def test_the_check_off_sheet_has_a_box_for_everything() -> None:
    """Boxes for each level and each fail, room for code, times, notes and signature."""
    assert [len(node.select("ol .tick i")) for node in SHEET.select(".check-off > li")] == [4, 4]
    assert [said(node) for node in SHEET.select(".check-off h3 small")] == ["level × 1", "level × 2"]
    (fail,) = SHEET.select(".fails li")
    assert said(fail) == "Went on after stop. seen not seen"
    assert len(fail.select(".tick i")) == 2
    assert len(SHEET.select(".boxes i")) == 9
    assert SHEET.select(".room")
    for name in ("Participant", "Examiner", "Begun", "Ended", "Signature of the examiner", "Sum, of 9"):
        assert name in said(SHEET)
