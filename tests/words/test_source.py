"""No word that anybody sees stands in a template, a script or a style sheet: all are in the words file."""

import re
from html.parser import HTMLParser
from pathlib import Path

import pytest

from builder.render.assets import LOOK
from tests.words.shown import SPOKEN

TEMPLATES = sorted(LOOK.rglob("*.html"))
SCRIPTS = sorted(LOOK.rglob("*.js"))
STYLES = sorted(LOOK.rglob("*.css"))
FILLED = re.compile(r"\{#.*?#\}|\{%.*?%\}|\{\{.*?\}\}|<script\b.*?</script>|<style\b.*?</style>", re.DOTALL)
EXPRESSION = re.compile(r"\{\{(.*?)\}\}", re.DOTALL)
CLASSES = re.compile(r'class="(?:\{\{.*?\}\}|[^"])*"')
ATTRIBUTES = re.compile(r'\b[\w-]+=""')
LITERAL = re.compile(r'"((?:[^"\\\n]|\\.)*)"|' + r"'((?:[^'\\\n]|\\.)*)'")
COMMENT = re.compile(r"/\*.*?\*/|(?m:^\s*//.*$)", re.DOTALL)
SENTENCE = re.compile(r"[^\W\d_]{2,}[.,!?]? [^\W\d_]{2,}|^[A-Z][a-z]+")
CODE = re.compile(r"[#.\[>=/<]|^[a-z]+(, [a-z]+)+$|^(Arrow|Page|Shift|Key)[A-Z]\w*$")
NAMES = {"use strict", "Escape", "Enter", "Home", "End", "Tab", "Delete", "Backspace", "NFD", "Blob", "UTC"}


class _Words(HTMLParser):
    """What is left of a template once everything that is filled in has been taken out."""

    def __init__(self) -> None:
        super().__init__()
        self.found: list[str] = []
        self._lines_of_a_file = False

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Keep what attributes say."""
        self._lines_of_a_file |= tag == "pre"
        self.found += [value for name, value in attrs if name in SPOKEN and value]

    def handle_endtag(self, tag: str) -> None:
        """Leave the lines of a file: they are written so in any language."""
        self._lines_of_a_file &= tag != "pre"

    def handle_data(self, data: str) -> None:
        """Keep text."""
        if not self._lines_of_a_file:
            self.found.append(data)


def in_template(text: str) -> list[str]:
    """The words that a template says by itself, in markup and in what it fills in."""
    parser = _Words()
    parser.feed(ATTRIBUTES.sub("", FILLED.sub("", text)))
    literals = [one for part in EXPRESSION.findall(CLASSES.sub("", text)) for one in in_script(part)]
    return [*(one.strip() for one in parser.found if re.search(r"[^\W\d_]{2,}", one)), *literals]


def in_script(text: str) -> list[str]:
    """The string literals of a script that read like something said to somebody."""
    found = ("".join(pair) for pair in LITERAL.findall(COMMENT.sub("", text)))
    return [one for one in found if SENTENCE.search(one) and not CODE.search(one) and one not in NAMES]


def in_style(text: str) -> list[str]:
    """The words that a style sheet puts on a page."""
    return [one for one in re.findall(r'content:\s*"([^"]*)"', text) if re.search(r"[^\W\d_]{2,}", one)]


@pytest.mark.parametrize("path", TEMPLATES, ids=lambda path: path.relative_to(LOOK).as_posix())
def test_a_template_says_nothing_by_itself(path: Path) -> None:
    """Text, labels and titles are asked of `say`."""
    assert in_template(path.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize("path", SCRIPTS, ids=lambda path: path.relative_to(LOOK).as_posix())
def test_a_script_says_nothing_by_itself(path: Path) -> None:
    """A script is given its words as data."""
    assert in_script(path.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize("path", STYLES, ids=lambda path: path.relative_to(LOOK).as_posix())
def test_a_style_sheet_says_nothing(path: Path) -> None:
    """Marks may stand there, no words."""
    assert in_style(path.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize(
    ("find", "text"),
    [
        (in_template, "<p>Next page</p>"),
        (in_template, '<a aria-label="Close">x</a>'),
        (in_template, '<p>{{ "Choose one" }}</p>'),
        (in_template, '<input placeholder="Name {{ name }}">'),
        (in_script, 'line.textContent = "Not saved";'),
        (in_script, "say('Saved');"),
        (in_style, 'p::after { content: "New"; }'),
    ],
)
def test_what_is_looked_for_is_found(find: object, text: str) -> None:
    """The tests above can fail."""
    assert callable(find)
    assert find(text) != []
