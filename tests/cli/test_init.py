"""The command line as a whole: quick to help, plain about faults."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from builder.cli import COMMANDS, main
from tests.cli.run import run

MOST_MODULES = 180  # Python itself loads about a hundred at its start; the model alone would bring 300 more


def caseloom(*arguments: str, cwd: Path | None = None) -> subprocess.CompletedProcess[str]:
    """The real program in a process of its own."""
    start = "from builder.cli import main; main()"
    return subprocess.run(
        [sys.executable, "-c", start, *arguments], cwd=cwd, capture_output=True, text=True, check=False
    )


def test_help_lists_every_command_and_imports_none() -> None:
    """`--help` names all commands and loads none; so few modules are loaded in a tenth of a second."""
    code = (
        "import sys\nfrom builder.cli import group\n"
        "group.main(['--help'], standalone_mode=False)\n"
        "print(*[name for name in sys.modules if name.partition('.')[0] == 'builder'], len(sys.modules))"
    )
    alone = {name: value for name, value in os.environ.items() if not name.startswith("COVERAGE")}
    told = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True, env=alone)
    said = told.stdout
    assert all(f"  {name} " in said for name in COMMANDS)
    *ours, count = said.splitlines()[-1].split()
    assert set(ours) == {"builder", "builder.cli", "builder.fault"}
    assert int(count) < MOST_MODULES


@pytest.mark.parametrize("name", COMMANDS)
def test_every_command_has_its_help(name: str) -> None:
    """Each command says what it does."""
    said = run(name, "--help").output
    assert said.startswith("Usage: ")
    assert len(said.splitlines()) > 3


def test_a_fault_is_one_plain_line_and_status_two(tmp_path: Path) -> None:
    """A folder without a course gives no trace."""
    done = caseloom("check", str(tmp_path))
    assert done.returncode == 2
    assert done.stderr.startswith("caseloom: ")
    assert "Traceback" not in done.stderr
    assert len(done.stderr.splitlines()) == 1


def test_an_unknown_command_is_status_two() -> None:
    """A misspelt command is told as such."""
    done = caseloom("chekc")
    assert done.returncode == 2
    assert "chekc" in done.stderr


def test_what_should_not_happen_gets_an_id_and_no_trace(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    """An unforeseen error is one line with an id, and status 2."""
    monkeypatch.setattr("click.get_app_dir", lambda _: str(tmp_path))
    monkeypatch.setattr("builder.cli.group.main", lambda **_: 1 / 0)
    with pytest.raises(SystemExit) as stopped:
        main()
    said = capsys.readouterr().err
    assert stopped.value.code == 2
    assert "something went wrong that should not have (error " in said
    assert "Traceback" not in said
