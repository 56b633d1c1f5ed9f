"""Which files a folder holds, and which of them nobody reads."""

from pathlib import Path

from builder.read.folder import files_in, strays
from tests.read.folders import put


def made(root: Path, *names: str) -> Path:
    """A folder with empty files of these names."""
    for name in names:
        (root / name).parent.mkdir(parents=True, exist_ok=True)
        (root / name).write_bytes(b"")
    return root


def told(root: Path) -> list[tuple[str, str, str]]:
    """Check, file and remedy of every stray."""
    return [(one.check, one.place.file, one.remedy) for one in strays(root)]


def test_files_are_found_below_a_folder_in_order(tmp_path: Path) -> None:
    """Folders within are searched, what is hidden or a folder itself is not taken."""
    root = made(
        tmp_path, "rules/b.yml", "rules/a/c.yml", "rules/.x.yml", "rules/.git/d.yml", "rules/e.yml/f.txt"
    )
    assert [one.file for one in files_in(root, "rules", ".yml", "content/")] == [
        "content/rules/a/c.yml",
        "content/rules/b.yml",
    ]
    assert list(files_in(root, "cases", ".yml")) == []


def test_a_course_without_strays_is_quiet(tmp_path: Path) -> None:
    """Known folders, known files, a readme and what an operating system leaves behind are let be."""
    root = put(tmp_path / "root") / "course"
    made(
        root, "README.md", ".DS_Store", "cases/Thumbs.db", "media/a.png", "out/x", "private/y", "cases/a.yml~"
    )
    assert told(root) == []


def test_strays_are_told_with_what_they_may_have_been(tmp_path: Path) -> None:
    """Wrong endings, misspelt names and folders that are not read yet."""
    root = made(tmp_path, "case/a.yml", "cases/b.yaml", "course.yaml", "panel/c.csv", "lessons/d.txt", "zzz")
    (root / "questions").mkdir()
    assert told(root) == [
        ("folder_not_read", "case/", "Did you mean `cases`?"),
        ("file_not_read", "cases/b.yaml", "Call it `b.yml` if it should be, or move it away."),
        ("file_not_read", "course.yaml", "Did you mean `course.yml`?"),
        ("file_not_read", "lessons/d.txt", "Call it `d.md` if it should be, or move it away."),
        ("folder_not_read", "panel/", "Nothing is lost; it is only not used yet."),
        ("file_not_read", "zzz", "Move it away if it is not needed."),
    ]


def test_links_out_of_the_course_are_not_followed(tmp_path: Path) -> None:
    """Nothing outside is read through a file, a folder or a ring of links; inside a link is a file."""
    made(tmp_path, "elsewhere/b.yml")
    root = made(tmp_path / "course", "rules/a.yml", "cases/c.yml", "out/d.yml")
    (root / "rules/away.yml").symlink_to(tmp_path / "elsewhere/b.yml")
    (root / "rules/lost.yml").symlink_to("nothing.yml")
    (root / "rules/same.yml").symlink_to("a.yml")
    (root / "stations").symlink_to(tmp_path / "elsewhere")
    (root / "cases/ring").symlink_to(root)
    (root / "out/away.yml").symlink_to(tmp_path / "elsewhere/b.yml")
    names = [one.file for folder in ("rules", "stations", "cases") for one in files_in(root, folder, ".yml")]
    assert names == ["rules/a.yml", "rules/same.yml", "cases/c.yml"]
    remedy = "Put a copy of the file in its place, or remove it."
    assert [one for one in told(root) if one[0] == "link_not_followed"] == [
        ("link_not_followed", "rules/away.yml", remedy),
        ("link_not_followed", "rules/lost.yml", remedy),
        ("link_not_followed", "stations", remedy),
    ]
