"""Where pages stand, and how one page of a site leads to another."""

from __future__ import annotations

from posixpath import dirname, relpath

START = "index.md"
FLAGS = "red-flags.md"
LOST = "404.md"
CARDS = "cards/index.md"


def of_case(name: str) -> str:
    """The page of a practice case."""
    return f"cases/{_slug(name)}.md"


def of_card(name: str) -> str:
    """The page of a card."""
    return f"cards/{_slug(name)}.md"


def of_lesson(stem: str) -> str:
    """The page of a lesson."""
    return f"lessons/{_slug(stem)}.md"


def of_test(name: str) -> str:
    """The page where a personal code leads to its version of a test."""
    return f"tests/{_slug(name)}.md"


def of_version(name: str, version: str) -> str:
    """The page of one version of a test."""
    return f"tests/{_slug(name)}-{version.lower()}.md"


def way(start: str, goal: str) -> str:
    """The relative link from one page to another page or asset; an anchor on the goal is kept."""
    page, mark, anchor = goal.partition("#")
    return relpath(published(page), dirname(start) or ".") + mark + anchor


def published(page: str) -> str:
    """The address of a page in the built site."""
    return f"{page.removesuffix('.md')}.html" if page.endswith(".md") else page


def _slug(name: str) -> str:
    return name.replace("_", "-")
