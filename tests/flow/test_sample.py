"""Examples are laid over the sample: keys take the place of the same keys, whole files of whole files."""

from pathlib import Path

import pytest

from builder.disk import shipped
from builder.doors.yaml import read_yaml
from builder.flow.sample import SAMPLE, lay_over, merged
from builder.model.kind import Example

WHOLE = """\
id: a
list:
  - id: one
    word: old
    block:
      deep: yes
  - id: two
end: here
"""


@pytest.mark.parametrize(
    ("written", "at", "expected"),
    [
        ("end: there", "", WHOLE.replace("end: here", "end: there")),
        ("word: new", "list/0", WHOLE.replace("word: old", "word: new")),
        ("id: uno", "list/0", WHOLE.replace("- id: one", "- id: uno")),
        ("block: flat", "list/0", WHOLE.replace("block:\n      deep: yes", "block: flat")),
        ("added: 1", "list/0", WHOLE.replace("deep: yes\n", "deep: yes\n    added: 1\n")),
        ("added: 1", "", WHOLE + "added: 1\n"),
        ("end: a\nend: b", "", WHOLE.replace("end: here", "end: a\nend: b")),
        ("word: new\n  odd: 1", "list/0", WHOLE.replace("word: old", "word: new\n      odd: 1")),
    ],
)
def test_keys_take_the_place_of_the_same_keys(written: str, at: str, expected: str) -> None:
    """In the block that is meant, at its margin, added where there are none, faults and all."""
    assert merged(WHOLE, written, at) == expected


def test_whole_files_are_written_whole_and_others_taken_away(tmp_path: Path) -> None:
    """A text with its format is a file; none is no file; a byte that is no text is kept."""
    own = Example("rules/own.yml", "format: 1\nwhy: caf\udce9\n")
    lay_over(Example("lessons/cold.md", more=(own,)), tmp_path)
    assert not (tmp_path / "course/lessons/cold.md").exists()
    assert (tmp_path / "course/rules/own.yml").read_bytes() == b"format: 1\nwhy: caf\xe9\n"


def test_the_sample_speaks_of_what_is_shipped() -> None:
    """Its facts, cards and rules bear names that an author finds in the real content too."""
    for folder in ("cards", "rules"):
        ours = {path.stem for path in (SAMPLE / "content" / folder).iterdir()}
        own = {"refer_soon_enough"}
        assert ours - own <= {path.stem for path in (shipped("content") / folder).iterdir()}
    ours, theirs = (_facts(root) for root in (SAMPLE / "content", shipped("content")))
    assert ours <= theirs


def _facts(content: Path) -> set[str]:
    data = read_yaml((content / "facts.yml").read_bytes(), "facts.yml").value
    assert isinstance(data, dict)
    return set(data["facts"]) | set(data["written"])
