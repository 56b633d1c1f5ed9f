"""Exports of a whole course: searched for keys, written where told, the same bytes each time."""

from pathlib import Path

import pytest

from builder.check.leaks import Search
from builder.diagnostic import Diagnostic
from builder.fault import Fault
from builder.flow import build
from builder.flow.build import KeyInPublished
from builder.flow.export import export_case, export_site, export_tests
from builder.flow.opened import Opened
from builder.place import Place
from tests.demo.built import demo, opened
from tests.demo.small import made_small, small


def test_a_build_writes_what_an_export_writes(tmp_path: Path) -> None:
    """Byte for byte, beside the instructor's site and never below the student site."""
    out, _ = demo()
    written = export_tests(opened(), small(), tmp_path, None, None)
    assert [path.name for path in written] == ["final-a.html", "final-b.html"]
    for path in written:
        assert path.read_bytes() == (out / "private" / "handouts" / path.name).read_bytes()
    assert not list((out / "publish").rglob("*handout*"))


def test_one_version_alone(tmp_path: Path) -> None:
    """Named in either case."""
    (path,) = export_tests(opened(), small(), tmp_path, "final", "b")
    assert path == tmp_path / "private" / "handouts" / "final-b.html"


def test_what_is_not_there_is_named(tmp_path: Path) -> None:
    """A test, a version, a case, a site with a name."""
    with pytest.raises(Fault, match="no test `middle`"):
        export_tests(opened(), small(), tmp_path, "middle", None)
    with pytest.raises(Fault, match="no version `Z`"):
        export_tests(opened(), small(), tmp_path, "final", "Z")
    with pytest.raises(Fault, match="No case is named"):
        export_case(opened(), small(), tmp_path, None)
    with pytest.raises(Fault, match="belongs to nothing"):
        export_site(opened(), small(), tmp_path, "x")
    with pytest.raises(Fault, match="errors to fix"):
        export_case(Opened(None, {}, (), {}), small(), tmp_path, "x")


def test_a_key_in_a_handout_stops_it(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Nothing is written where the search finds anything."""
    seen: list[str] = []

    def found(files: dict[str, bytes], _search: Search) -> list[Diagnostic]:
        seen.extend(files)
        return [
            Diagnostic(check="key_published", level="error", place=Place("x"), message="A key.", remedy="No.")
        ]

    monkeypatch.setattr(build, "leaks_in", found)
    with pytest.raises(KeyInPublished):
        export_case(opened(), small(), tmp_path, "unicycle_thigh")
    assert seen == ["unicycle-thigh.html"]
    assert not list(tmp_path.rglob("*.html"))


def test_the_site_is_left_without_a_key(tmp_path: Path) -> None:
    """Settings, pages and media of the course; searched like the finished site."""
    (settings,) = export_site(made_small(opened()), small(), tmp_path, None)
    assert settings == tmp_path / "site_source" / "mkdocs.yml"
    assert (settings.parent / "docs" / "index.md").is_file()
    assert (settings.parent / "frame" / "main.html").is_file()
