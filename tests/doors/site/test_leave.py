"""A site left on disk is built by plain MkDocs into the very pages that the tool builds."""

import os
import re
import subprocess
import sys
from pathlib import Path

from bs4 import BeautifulSoup

from builder.doors.site.leave import leave_site
from tests.render.sample_site import built, plan

APART = re.compile(r"\s+")


def plainly_built(folder: Path) -> Path:
    """The folder that `mkdocs build` writes, warnings being faults."""
    leave_site(plan(), folder)
    told = {**os.environ, "NO_MKDOCS_2_WARNING": "1"}
    subprocess.run(
        [sys.executable, "-m", "mkdocs", "build", "--strict", "--quiet"],
        cwd=folder,
        env=told,
        check=True,
        capture_output=True,
    )
    return folder / "site"


def inside(path: Path) -> str:
    """A page as its tree says it, without the block that held it together and without idle white space."""
    tree = BeautifulSoup(path.read_text(encoding="utf-8"), "html.parser")
    block = tree.select_one("article > div")
    if block is not None and not block.attrs:
        block.unwrap()
    return APART.sub("", str(tree))


def test_plain_mkdocs_builds_the_same_pages(tmp_path: Path) -> None:
    """Every page, asset and the index of the site: the same page for page."""
    made, ours = plainly_built(tmp_path), built()
    pages = sorted(path.relative_to(ours) for path in ours.rglob("*.html"))
    assert len(pages) > 5
    assert [page for page in pages if inside(made / page) != inside(ours / page)] == []
    others = [path for path in ours.rglob("*") if path.is_file() and path.suffix != ".html"]
    assert all((made / path.relative_to(ours)).read_bytes() == path.read_bytes() for path in others)


def test_the_same_plan_leaves_the_same_bytes(tmp_path: Path) -> None:
    """Twice the same folder."""
    one, two = tmp_path / "one", tmp_path / "two"
    leave_site(plan(), one)
    leave_site(plan(), two)
    names = [path.relative_to(one) for path in one.rglob("*") if path.is_file()]
    assert len(names) > 10
    assert all((one / name).read_bytes() == (two / name).read_bytes() for name in names)
