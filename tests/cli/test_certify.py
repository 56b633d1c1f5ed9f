"""`caseloom certify`: refusals are part of the answer, status 0."""

from pathlib import Path

from tests.cli.classwork import on_class
from tests.cli.run import status


def test_lists_are_written_and_refusals_named(tmp_path: Path) -> None:
    """Five certificates, three refusals with their reasons, and both files."""
    on_class("collect", tmp_path)
    on_class("grade", tmp_path)
    done = on_class("certify", tmp_path)
    assert status(done) == 0
    assert "5 on the certificate list, 3 refused" in done.output
    lists = tmp_path / "private" / "classes" / "spring"
    assert {path.name for path in lists.iterdir()} == {"certificates.csv", "refused.csv"}
