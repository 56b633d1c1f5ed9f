"""The list for review: every part of the content in words, signed or not."""

from dataclasses import replace

from builder.model.card import Reviewed
from builder.render.maker import Maker, maker
from builder.render.review_list import in_text, listed, remaining, standing
from tests.demo.built import opened

BY = Reviewed(who="Some Clinician", licence="L-1", date="2026-11-01")


def demonstration() -> Maker:
    """The maker of the demonstration's pages."""
    course = opened().course
    assert course is not None
    return maker(course)


def test_the_most_urgent_comes_first() -> None:
    """Emergencies, milder stops, rules about options, techniques, actions, then phases and tables."""
    made = demonstration()
    entries = listed(made)
    content = made.course.content
    assert list(dict.fromkeys(one.part for one in entries)) == [
        "rules",
        "cards",
        "phases",
        "severity",
        "background",
    ]
    sessions = [content.rules[one.id].session for one in entries if one.part == "rules"]
    urgencies = list(dict.fromkeys(one.urgency if one else None for one in sessions))
    assert urgencies == ["emergency", "same_day", "days", None]
    kinds = [content.cards[one.id].kind for one in entries if one.part == "cards"]
    assert list(dict.fromkeys(kinds)) == ["technique", "action"]


def test_what_is_signed_shows_by_whom() -> None:
    """Name, licence and date; it is no longer counted."""
    made = demonstration()
    first, *rest = listed(made)
    signed = [replace(first, reviewed=BY), *rest]
    assert remaining(signed) == len(rest)
    assert standing(made, signed[0]) == "Reviewed by Some Clinician, L-1, 2026-11-01"
    assert standing(made, first) == "not yet reviewed"
    assert "Some Clinician" in "\n".join(in_text(made, signed))


def test_the_text_has_every_row_of_a_grid() -> None:
    """Heads and cells stand under each other."""
    made = demonstration()
    phases = next(one for one in listed(made) if one.part == "phases")
    lines = list(in_text(made, [phases]))
    assert lines[0] == "1 of 1 entries are not yet reviewed by a clinician."
    at = lines.index("  Injury: muscle, mild")
    assert lines[at + 1 : at + 3] == ["    acute until: 48 h", "    early repair (subacute) until: 7 days"]
