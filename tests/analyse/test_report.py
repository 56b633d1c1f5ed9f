"""The report says each figure, or the reason for its absence, once."""

import json
from pathlib import Path

from builder.analyse.report import lines, write_report
from builder.model.analysis import Analysis, Figure, OptionCount, QuestionFigures, VersionFigures

FEW = Figure(value=None, note="Too few.")
COUNTS = (
    OptionCount(option="o1", title="Cold", right=True, count=7),
    OptionCount(option="o2", title="", right=False, count=12),
)


def question(name: str, difficulty: Figure = FEW, unanswered: int = 0) -> QuestionFigures:
    """The figures of one question."""
    return QuestionFigures(
        question=name,
        stem="Which?",
        n=20,
        unanswered=unanswered,
        options=COUNTS,
        difficulty=difficulty,
        discrimination=FEW,
    )


def analysis(*questions: QuestionFigures) -> Analysis:
    """An analysis of one version."""
    version = VersionFigures(
        test="final",
        version="A",
        edition="e",
        n=20,
        questions=questions,
        coefficient="KR-20",
        reliability=FEW,
    )
    return Analysis(klass="spring", versions=(version,))


def test_a_reason_that_holds_for_all_is_said_once() -> None:
    """Figures that no question has are explained at the head, not under each."""
    told = lines(analysis(question("a1"), question("a2")))
    assert sum("Too few." in line for line in told) == 3
    assert "  difficulty of each question: Too few." in told


def test_a_question_is_told_with_its_counts_and_figures() -> None:
    """Counts, what is right, what was left open, and the share with limits."""
    shown = question("a1", Figure(value=0.35, low=0.18, high=0.566), unanswered=1)
    told = lines(analysis(shown, question("a2")))
    at = told.index("  1. a1 Which?")
    assert told[at + 1 : at + 5] == [
        "        7  right  o1 Cold",
        "       12         o2",
        "        1  left open",
        "     difficulty: 0.35 (0.18 to 0.57)",
    ]
    assert "     difficulty: Too few." in told


def test_nothing_graded_is_said() -> None:
    """An empty analysis says why it is empty."""
    assert lines(Analysis(klass="spring", versions=()))[-1] == "Nothing was graded yet."


def test_both_files_are_written(tmp_path: Path) -> None:
    """The data is JSON without anything that is no number, the text is what the terminal shows."""
    made = analysis(question("a1"))
    data, text = write_report(made, tmp_path / "spring")
    assert json.loads(data.read_text(encoding="utf-8"), parse_constant=lambda _: 1 / 0)["klass"] == "spring"
    assert text.read_text(encoding="utf-8").splitlines() == lines(made)
