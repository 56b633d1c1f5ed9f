"""Names of files and ids from the title typed."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.fault import Fault
from builder.model.file_name import unkept
from builder.new.names import LONGEST, id_from, own_id, unused


@pytest.mark.parametrize(
    ("title", "expected"),
    [
        ("The falling unicycle", "the_falling_unicycle"),
        ("Ärger mit der Wade!", "arger_mit_der_wade"),
        ("Curro Peñalisa, Straße 7", "curro_penalisa_strasse_7"),
        ("Łódź – Ørsted", "lodz_orsted"),
        ("3 visits", "case_3_visits"),
        ("CON", "con_case"),
        ("lpt1", "lpt1_case"),
        ("A  B", "a_b"),
        ("../../etc/passwd", "etc_passwd"),
    ],
)
def test_a_title_gives_plain_letters(title: str, expected: str) -> None:
    """Accents are folded, a digit in front and the reserved names of Windows are avoided."""
    assert id_from(title, "case") == expected


@given(st.text(max_size=200))
def test_whatever_is_typed_gives_a_safe_name_or_a_plain_fault(title: str) -> None:
    """The id is one that every file may have on every system."""
    try:
        found = id_from(title, "case")
    except Fault as fault:
        found = fault.remedy
    if found != "Name one with --id.":
        assert re.fullmatch(r"[a-z][a-z0-9_]*", found)
        assert len(found) <= LONGEST + len("_case") + len("case_")
        assert not unkept(found)
        assert own_id(found) == found


@pytest.mark.parametrize("given", ["", "Thigh", "my case", "é", "1st", "con", "aux", "a/b", "a" * 61])
def test_an_id_that_may_not_be_one_is_refused(given: str) -> None:
    """With what would be one."""
    with pytest.raises(Fault):
        own_id(given)


def test_a_name_that_differs_in_case_alone_is_taken() -> None:
    """Windows and macOS would take both for one file."""
    assert unused("thigh", {"calf"}, "case") == "thigh"
    with pytest.raises(Fault, match="already a case called Thigh"):
        unused("thigh", {"calf", "Thigh"}, "case")
