"""`caseloom demo` as anyone can start it."""

from pathlib import Path

from tests.cli.run import run, status


def test_the_demonstration_runs_into_the_folder_named(tmp_path: Path) -> None:
    """It ends by saying what to open, and answers 0."""
    done = run("demo", "--out", tmp_path / "here")
    assert status(done) == 0
    assert f"{tmp_path / 'here' / 'publish' / 'index.html'}" in done.output
