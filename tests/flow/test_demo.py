"""The whole job on the demonstration, as `make demo` runs it."""

from pathlib import Path

import pytest

from builder.flow.demo import run_demo
from tests.demo.built import demo


def test_every_step_is_told_in_order() -> None:
    """Check, build, collect, grade, certify, analyse, and what to open."""
    out, said = demo()
    steps = [line.split()[1].rstrip(":") for line in said if line[:1].isdigit()]
    assert steps == ["Check", "Build", "Collect", "Grade", "Certify", "Analyse"]
    assert f"  students      {out / 'publish' / 'index.html'}" in said


def test_a_folder_named_from_here_is_meant_from_here(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A relative folder lands below the current one, with both sites in it."""
    monkeypatch.chdir(tmp_path)
    run_demo(Path("some where/out"), lambda _: None)
    assert (tmp_path / "some where/out/publish/index.html").is_file()
    assert (tmp_path / "some where/out/private/instructor/index.html").is_file()


def test_every_file_it_names_is_there() -> None:
    """Each path after `Open these` exists and holds something."""
    out, said = demo()
    named = [line.split()[-1] for line in said[said.index("Open these") + 2 :]]
    assert len(named) == 5
    assert all((out / path).stat().st_size > 0 for path in named)
