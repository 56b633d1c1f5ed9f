"""Pictures of lessons say what they show."""

from builder.check.checks.picture_alt import check
from tests.check.wording.written import course_of


def test_a_picture_without_words_is_found_at_its_line() -> None:
    """Spaces are no words; a picture in a note to oneself is none."""
    text = "![A pad](../media/a.png)\n\n![ ](../media/b.png)\n\n<!-- ![](../media/c.png)\n-->\n![](d.png)\n"
    assert [one.line for one in check(course_of(lesson=text))] == [3, 7]
