"""What the files of a course may name."""

from pathlib import Path

from builder.read.editor.known import known_in
from tests.read.folders import BASE, put


def test_the_content_alone_gives_facts_cards_and_sources() -> None:
    """Without a course there are no objectives and no cases."""
    known = known_in(BASE / "content")
    assert "heat" in known.facts
    assert "minutes" in known.attributes
    assert set(known.names["card"]) == {"ask", "cold"}
    assert known.names["objective"] == known.names["case"] == ()


def test_a_course_adds_its_own(tmp_path: Path) -> None:
    """Its objectives, cases, lessons, stations, and cards of its own."""
    root = put(tmp_path, {"course/cards/mine.yml": "id: mine\n"})
    known = known_in(root / "content", root / "course")
    assert "mine" in known.names["card"]
    assert known.names["case"] == ("thigh",)
    assert known.names["lesson"] == ("cold.md",)
    assert known.names["station"] == ("cooling",)
    assert known.names["objective"]
