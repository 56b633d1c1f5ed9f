"""`caseloom analyse`: what can be said of eight sitters, and why no more."""

from pathlib import Path

from tests.cli.classwork import on_class
from tests.cli.run import status


def test_few_sitters_give_counts_and_the_reason(tmp_path: Path) -> None:
    """No discrimination under 30 sitters, and no difficulty under 10, each said with its reason."""
    on_class("collect", tmp_path)
    on_class("grade", tmp_path)
    done = on_class("analyse", tmp_path)
    assert status(done) == 0
    assert "Fewer than 30" in done.output
    assert "Fewer than 10" in done.output
