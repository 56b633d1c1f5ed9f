"""The log of what should not have happened."""

from pathlib import Path

import pytest

from builder.cli.trouble import log_trouble


def trouble(words: str) -> Exception:
    """An error that was really raised, with these words in it."""
    with pytest.raises(ValueError, match=words) as caught:
        raise ValueError(words)
    return caught.value


def test_the_log_holds_the_id_and_no_words_of_the_error(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Where it happened is kept; what the data said is not, since it may be a participant's."""
    monkeypatch.setattr("click.get_app_dir", lambda _: str(tmp_path / "state"))
    said = log_trouble(trouble("Keiko's answers"))
    log = (tmp_path / "state" / "caseloom.log").read_text(encoding="utf-8")
    mark = said.partition("error ")[2][:8]
    assert f" {mark} ValueError" in log
    assert "test_trouble.py" in log
    assert "Keiko" not in log + said


def test_an_unwritable_log_is_said(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Without a place for the log the line still comes."""
    (tmp_path / "file").write_text("", encoding="utf-8")
    monkeypatch.setattr("click.get_app_dir", lambda _: str(tmp_path / "file"))
    assert "no log could be written" in log_trouble(trouble("x"))


def test_the_trace_shows_only_when_asked_for(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """CASELOOM_DEBUG=1 prints the whole trace."""
    monkeypatch.setattr("click.get_app_dir", lambda _: str(tmp_path))
    log_trouble(trouble("quiet"))
    assert capsys.readouterr().err == ""
    monkeypatch.setenv("CASELOOM_DEBUG", "1")
    log_trouble(trouble("loud"))
    assert "ValueError: loud" in capsys.readouterr().err
