"""What collecting says on the terminal."""

from builder.collect.show import lines
from builder.model.outcome import Collected, LeftFile, TakenFile

TOLD = Collected(
    klass="spring",
    taken=(TakenFile(file="ann.json", digest="d", code="A", test="final", version="B", rev=2),),
    had=("ben.json",),
    left=(LeftFile(file="\x1b[2Jx.json", fault="Damaged\n.", remedy="Ask again."),),
    notices=("Look.",),
)


def test_every_file_that_matters_has_a_line() -> None:
    """Taken and left files are named, those already there are counted, notices stand last."""
    assert lines(TOLD) == [
        "Class spring: 1 taken, 1 already had, 1 could not be taken.",
        "  taken  ann.json: code A, final, version B, revision 2",
        "  left   \\x1b[2Jx.json: Damaged\\x0a. Ask again.",
        "  look   Look.",
    ]


def test_a_file_name_cannot_steer_the_terminal() -> None:
    """Whatever is not printable is shown as what it is."""
    assert "\x1b" not in "".join(lines(TOLD))
