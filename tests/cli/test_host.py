"""`caseloom host`, as far as it goes before it serves."""

import socket
from pathlib import Path

import pytest

from builder.fault import Fault
from tests.cli.run import run, status
from tests.demo.small import small
from tests.render.sample_site import built


def test_what_is_missing_is_named_before_anything_is_served(tmp_path: Path) -> None:
    """The site, the class, a free port, an address that is ours."""
    (tmp_path / "publish").symlink_to(built(), target_is_directory=True)
    out = ("--out", tmp_path)
    with socket.socket() as other:
        other.bind(("127.0.0.1", 0))
        other.listen()
        port = other.getsockname()[1]
        for more, words in (
            (("spring", "--out", tmp_path / "nothing"), "not built yet"),
            (("autumn", *out), "no class `autumn`"),
            (("spring", *out, "--port", port), "in use"),
            (("spring", *out, "--port", 0, "--hall", "203.0.113.9"), "no address"),
        ):
            done = run("host", small(), *more)
            with pytest.raises(Fault, match=words):
                status(done)
            assert done.output == ""


def test_help_says_where_sheets_lie() -> None:
    """And that they are safe before anyone is told so."""
    said = " ".join(run("host", "--help").output.split())
    assert "COURSE/classes/CLASS/answers" in said
    assert 'before anyone is told "received"' in said
