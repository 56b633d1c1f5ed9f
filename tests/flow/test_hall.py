"""A class held open: what it needs, what it follows, where it leads, and what it never opens."""

import builtins
import io
from pathlib import Path

import pytest

from builder.fault import Fault
from builder.flow.hall import open_class
from tests.demo.small import small_course
from tests.host.made import codes, opened, sheet
from tests.render.sample_site import built


def test_without_a_built_site_or_a_class_there_is_no_hall(tmp_path: Path) -> None:
    """Each is named, with the way out."""
    course = small_course(tmp_path / "course")
    with pytest.raises(Fault, match=r"not built yet.*Run build"):
        open_class(course, "spring", tmp_path / "nothing")
    with pytest.raises(Fault, match="no class `sprng`"):
        open_class(course, "sprng", built())


def test_phones_may_arrive_at_each_test_and_at_the_course(tmp_path: Path) -> None:
    """By the addresses that the site has."""
    starts = opened(tmp_path).starts()
    assert list(starts.values()) == ["tests/final.html", "index.html"]


def test_the_secret_of_receipts_is_made_once(tmp_path: Path) -> None:
    """And read by nobody else."""
    first = opened(tmp_path).take(sheet(codes()[0]))
    path = tmp_path / "classes" / "spring" / ".hall_secret"
    assert path.stat().st_mode & 0o077 == 0
    assert opened(tmp_path).take(sheet(codes()[0])).receipt == first.receipt


def test_a_class_in_the_hall_opens_no_key(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """From the first look at the course to the last sheet, no file of `private` is touched."""
    course = small_course(tmp_path / "course")
    out = course / "out" / "private" / "keys"
    out.mkdir(parents=True)
    (out / "final.json").write_text("{}", encoding="utf-8")
    read: list[str] = []
    real = io.open

    def seen(file: object, *rest: object, **more: object) -> object:
        read.append(str(file))
        return real(file, *rest, **more)  # type: ignore[call-overload]

    monkeypatch.setattr(io, "open", seen)
    monkeypatch.setattr(builtins, "open", seen)
    desk = open_class(course, "spring", built())
    assert desk.take(sheet(codes()[0])).taken
    inside = [Path(one).relative_to(course).parts for one in read if one.startswith(str(course))]
    assert ("course.yml",) in inside
    assert not [parts for parts in inside if "private" in parts]
