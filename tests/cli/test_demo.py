"""`caseloom demo` as anyone can start it."""

from tests.cli.run import status
from tests.demo.built import OUT, demo_run


def test_the_demonstration_runs_into_the_folder_named() -> None:
    """It ends by saying what to open, and answers 0."""
    _, done = demo_run()
    assert status(done) == 0
    assert f"{OUT / 'publish' / 'index.html'}" in done.output
