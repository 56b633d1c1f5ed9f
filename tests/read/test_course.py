"""Reading a whole course."""

from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from builder.disk import shipped
from builder.read.course import read_all, read_course
from tests.read.folders import BASE, changed, checks, put, read

T = "course/cases/thigh.yml"


def test_the_small_course_is_read_whole() -> None:
    """Every part is there, keyed by id, with its places."""
    course, found = read_course(BASE / "course", BASE / "content")
    assert found == []
    assert course is not None
    assert (course.file.id, list(course.cases), list(course.stations)) == ("little", ["thigh"], ["cooling"])
    assert course.lessons == {"cold": "# Cold\n\n[card cold]\n"}
    assert sorted(course.content.cards) == ["ask", "cold"]
    assert (list(course.content.rules), course.content.own_rules) == (["numb_cold"], frozenset())
    assert (list(course.content.boards), course.content.words) == (["generic"], {"next": "Next"})
    assert course.site.short_caution == "Not medical advice."
    assert course.places["cases/thigh.yml"].of(("visits", 0, "phase")).line == 18
    assert course.places["content/facts.yml"].of(("facts", "heat")).line == 6


def test_the_shipped_course_has_nothing_to_fix() -> None:
    """What comes with the tool is sound against the content that comes with it."""
    course, found = read_course(shipped("demo_course"), shipped("content"), shipped("site_config.yml"))
    assert found == []
    assert course is not None
    assert course.cases


def test_own_rules_cards_boards_and_look_are_added(tmp_path: Path) -> None:
    """A course's own files stand beside the shipped ones, and its own rules are known as such."""
    text = {name: (BASE / f"content/{name}.yml").read_text(encoding="utf-8") for name in
            ("rules/numb_cold", "cards/ask", "boards/generic")}  # fmt: skip
    look = (BASE / "site_config.yml").read_text(encoding="utf-8").replace("Not medical", "No medical")
    root = put(tmp_path / "root", {
        "course/rules/deep/mine.yml": text["rules/numb_cold"].replace("id: numb_cold", "id: mine"),
        "course/cards/tell.yml": text["cards/ask"].replace("id: ask", "id: tell"),
        "course/boards/west.yml": text["boards/generic"].replace("id: generic", "id: west"),
        "course/site_config.yml": look,
    })  # fmt: skip
    reading = read(root)
    assert reading.found == []
    assert reading.course is not None
    content = reading.course.content
    assert (sorted(content.own_rules), sorted(content.rules)) == (["mine"], ["mine", "numb_cold"])
    assert sorted(content.cards) == ["ask", "cold", "tell"]
    assert sorted(content.boards) == ["generic", "west"]
    assert reading.course.site.short_caution == "No medical advice."


def test_a_faulty_case_is_left_out_and_the_rest_stands(tmp_path: Path) -> None:
    """What can be judged is handed on, so that all faults show in one go."""
    reading = changed(tmp_path / "root", T, "heat: clear", "heat: claer")
    assert checks(reading) == [("fact_value", "cases/thigh.yml")]
    assert reading.course is not None
    assert reading.course.cases == {}


def test_a_case_that_leans_on_a_faulty_card_is_left_out(tmp_path: Path) -> None:
    """The fault is told at the card alone; the case waits for it."""
    reading = changed(tmp_path / "root", "content/cards/cold.yml", "hands_on: false", "hands_on: perhaps")
    assert checks(reading) == [("yes_or_no_expected", "content/cards/cold.yml")]
    assert reading.course is not None
    assert (reading.course.cases, list(reading.course.content.cards)) == ({}, ["ask"])


@pytest.mark.parametrize(
    "name", ["course/course.yml", "site_config.yml", "content/facts.yml", "content/words/en.yml"]
)
def test_there_is_no_course_without_its_books(name: str, tmp_path: Path) -> None:
    """Where a needed file is broken there is no course, and the lines of all files are still there."""
    reading = read(put(tmp_path / "root", {name: "format: 'x\n", T: "format: 'y\n"}))
    assert reading.course is None
    assert [one.check for one in reading.found] == ["yaml_open_quote", "yaml_open_quote"]
    assert all(reading.places[one.place.file].lines[0].startswith("format") for one in reading.found)


def test_an_empty_folder_is_no_crash(tmp_path: Path) -> None:
    """Every file that is missing is said."""
    (tmp_path / "course").mkdir()
    reading = read_all(tmp_path / "course", tmp_path / "content")
    assert reading.course is None
    assert {check for check, _ in checks(reading)} == {"file_unreadable"}
    assert len(reading.found) == 8


def test_faults_are_sorted_by_place(tmp_path: Path) -> None:
    """File, line and column give the order, whatever found them."""
    reading = read(put(tmp_path / "root", over=BASE.parent / "kinds_of_value"))
    places = [one.place for one in reading.found]
    assert len(places) > 10
    assert places == sorted(places)


def test_names_with_spaces_and_accents_make_no_difference(tmp_path: Path) -> None:
    """A course may lie in any folder."""
    assert read(put(tmp_path / "Übung für Zoë (2)")).found == []


def test_line_ends_make_no_difference(tmp_path: Path) -> None:
    """A course saved with CRLF and byte-order marks reads the same."""
    files = {
        path.relative_to(BASE).as_posix(): b"\xef\xbb\xbf" + path.read_bytes().replace(b"\n", b"\r\n")
        for path in BASE.rglob("*")
        if path.is_file()
    }
    reading = read(put(tmp_path / "root", files))
    assert reading.found == []
    assert reading.course is not None
    assert reading.course.cases == getattr(read(BASE).course, "cases", None)


@settings(max_examples=60)
@given(data=st.data())
def test_no_damage_to_a_file_raises(data: st.DataObject, tmp_path_factory: pytest.TempPathFactory) -> None:
    """Bytes cut out of any file, or put into it, are found or do no harm."""
    names = sorted(path.relative_to(BASE).as_posix() for path in BASE.rglob("*") if path.is_file())
    name = data.draw(st.sampled_from(names))
    whole = (BASE / name).read_bytes()
    start = data.draw(st.integers(0, len(whole)))
    end = data.draw(st.integers(start, min(len(whole), start + 40)))
    put_in = data.draw(
        st.binary(max_size=6) | st.sampled_from([b"\n", b": ", b"- ", b"[", b"  ", b"&a ", b"x"])
    )
    root = put(tmp_path_factory.mktemp("damaged") / "root", {name: whole[:start] + put_in + whole[end:]})
    reading = read(root)
    assert reading.course is not None or any(one.level == "error" for one in reading.found)
