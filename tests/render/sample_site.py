"""The student site of the samples, planned and built once for the tests that look at it."""

from atexit import register
from functools import cache
from pathlib import Path
from shutil import rmtree
from tempfile import mkdtemp

from bs4 import BeautifulSoup
from bs4.element import Tag

from builder.doors.site import build_site
from builder.model.site import SitePage, SitePlan
from builder.render.student import student_site
from tests.render.sample_cases import practice_case, published_test
from tests.render.samples import course


@cache
def plan() -> SitePlan:
    """The plan of the sample site."""
    return student_site(course(), (practice_case(),), (published_test(),))


def page(address: str) -> SitePage:
    """One planned page."""
    return next(one for one in plan().pages if one.address == address)


def body(address: str) -> BeautifulSoup:
    """The inside of one planned page, parsed."""
    return parsed(page(address).body)


def parsed(html: str) -> BeautifulSoup:
    """Markup as a tree."""
    return BeautifulSoup(html, "html.parser")


def one(tree: BeautifulSoup | Tag, selector: str) -> Tag:
    """The one element a selector finds; more or fewer is a fault of the test's subject."""
    found = tree.select(selector)
    assert len(found) == 1, f"{selector} finds {len(found)}"
    return found[0]


def said(tree: BeautifulSoup | Tag) -> str:
    """The text of a tree, its white space closed up."""
    return " ".join(tree.get_text(" ").split())


@cache
def built() -> Path:
    """The sample site, built into a folder that goes when the tests end."""
    folder = Path(mkdtemp(prefix="caseloom-site-"))
    register(rmtree, folder, ignore_errors=True)
    build_site(plan(), folder)
    return folder
