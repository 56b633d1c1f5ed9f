"""What the commands share."""

from pathlib import Path

from builder.cli.options import colour, out_of, records_of, width


def test_where_things_go_unless_told() -> None:
    """Sites beside the course, the record on its private side."""
    assert out_of(Path("course"), None) == Path("course/out")
    assert records_of(Path("course"), None) == Path("course/private/records.db")
    assert out_of(Path("course"), Path("else")) == Path("else")
    assert records_of(Path("course"), Path("r.db")) == Path("r.db")


def test_a_pipe_is_narrow_and_plain() -> None:
    """Output that is no terminal has no colour and at most 100 columns."""
    assert not colour()
    assert width() <= 100
