"""What may be begun."""

from builder.cli.new import THINGS
from builder.new.fill import LOOK
from builder.new.kinds import KINDS, QUESTIONS
from builder.read.folder import LESSONS, OWN


def test_every_sort_of_file_of_a_course_may_be_begun() -> None:
    """Whatever the reader looks for in a course has a template, a folder and a command."""
    assert {kind.folder for kind in KINDS.values()} == {*OWN, LESSONS, "classes"}
    assert set(THINGS) == {"course", *KINDS}
    for kind, new in KINDS.items():
        assert (LOOK / f"{kind}{new.ending or '.yml'}").is_file()
    assert all((LOOK / f"question_{one}.yml").is_file() for one in QUESTIONS)
