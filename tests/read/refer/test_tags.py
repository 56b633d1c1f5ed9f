"""Tags of lessons."""

from pathlib import Path

import pytest

from tests.read.folders import put, read


@pytest.mark.parametrize(
    ("line", "check"),
    [
        ("[card cold]", None),
        ("[figure cold]", "figure_unknown"),
        ("[figure thigh]", None),
        ("[case thigh]", None),
        ("[test final]", None),
        ("[flags]", None),
        ("[phases]", None),
        ("[a picture of ice]", None),
        ("[film nobody]", None),  # for a check to say
        ("<!--\n[card cloud]\n[crad cold]\n-->", None),
        ("see [card](x.md)", None),
        ("[card cloud]", "card_unknown"),
        ("[figure cloud]", "figure_unknown"),
        ("[case hip]", "case_unknown"),
        ("[test finals]", "test_unknown"),
        ("[question nobody]", "question_unknown"),
        ("[crad cold]", "tag_unknown"),
        ("[card Cold]", "tag_unknown"),
        ("[flag]", "tag_unknown"),
    ],
)
def test_a_tag_names_what_is_there(line: str, check: str | None, tmp_path: Path) -> None:
    """A tag of nothing is an error at its line; what only looks like a tag is a warning."""
    reading = read(put(tmp_path / "root", {"course/lessons/cold.md": f"# Cold\n\n{line}\n"}))
    assert [(one.check, one.place.line) for one in reading.found] == ([(check, 3)] if check else [])
    assert all((one.level == "warning") == (check == "tag_unknown") for one in reading.found)
