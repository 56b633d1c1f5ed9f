"""The schemas beside a course, and how they are kept in step with it."""

import json
from pathlib import Path

from builder.flow.schema import BESIDE, refresh_schemas, schema_files, write_schemas
from tests.demo.small import small_course


def test_a_schema_is_written_for_every_sort_of_file(tmp_path: Path) -> None:
    """Each is JSON; a second writing changes nothing."""
    changed = write_schemas(None, tmp_path / "shapes")
    assert {path.relative_to(tmp_path / "shapes").as_posix() for path in changed} == set(schema_files())
    assert tmp_path / "shapes" / "outputs" / "check.json" in changed
    assert all(json.loads(path.read_text(encoding="utf-8"))["title"] for path in changed)
    assert write_schemas(None, tmp_path / "shapes") == []


def test_a_course_that_has_schemas_gets_them_renewed(tmp_path: Path) -> None:
    """A card of the course's own is known after the next check; where there are none, none are written."""
    course = small_course(tmp_path / "course")
    refresh_schemas(course)
    assert not (course / BESIDE).exists()
    write_schemas(course, course / BESIDE)
    (course / "cards").mkdir()
    (course / "cards" / "my_stroke.yml").write_text("id: my_stroke\n", encoding="utf-8")
    refresh_schemas(course)
    assert "my_stroke" in (course / BESIDE / "case.json").read_text(encoding="utf-8")
