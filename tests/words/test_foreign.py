"""A translation is a file and nothing else: in a made-up language all is said in it, and all of it fits."""

import calendar
import re
from functools import cache

import pytest
from playwright.sync_api import Browser

from builder.disk import shipped
from builder.flow.build import build
from builder.flow.opened import open_course
from builder.model.course import SiteConfig
from builder.model.words import as_english
from builder.read.written import read_entry
from tests.browser.codes import code_for
from tests.demo.built import fresh_folder
from tests.demo.small import small_course
from tests.walk.fit import misfits
from tests.walk.kinds import KINDS, PUBLISH
from tests.walk.sites import foreign, foreign_course, in_language
from tests.walk.walker import walker
from tests.words.left import Vocabulary
from tests.words.pseudo import LANGUAGE, OPEN, stretched
from tests.words.shown import shown

FILE = "yml"  # a question's file is named in its key
DATES = (*calendar.day_name, *calendar.month_name)  # the browser tells them in the language of the page
CUT_SHORT = "document.querySelectorAll('.finds').forEach(one => one.remove())"


@cache
def vocabulary() -> Vocabulary:
    """All that is content: the course, the tool's own, the provider's lines, and the ids of papers."""
    look = read_entry(SiteConfig, shipped("site_config.yml"), "site_config.yml").noun
    assert isinstance(look, SiteConfig)
    private = [path.read_text(encoding="utf-8") for path in (foreign() / "private").rglob("*.json")]
    ids = {name for text in private for name in re.findall(r'"([a-z0-9]{4,9})"', text)}
    lines = (look.caution, look.short_caution, look.unreviewed, code_for("A"), FILE, *DATES)
    return Vocabulary(foreign_course(), *lines, *ids)


def test_the_language_is_longer_and_strange() -> None:
    """Four tenths longer, no plain letter left, its blanks as they were."""
    text = "Choose first, then decide on {n} of {all}."
    strange = stretched(text)
    assert len(strange) >= 1.25 * len(text)
    assert re.findall(r"[A-Za-z]+", strange) == ["n", "all"]
    assert re.findall(r"\{\w+\}", strange) == ["{n}", "{all}"]


def test_no_page_says_anything_in_english_but_content() -> None:
    """Of every page of both sites: texts, labels, titles and what scripts are given to say."""
    pages = sorted(foreign().rglob("*.html"))
    left = {
        path.relative_to(foreign()).as_posix(): vocabulary().unknown(shown(path.read_text(encoding="utf-8")))
        for path in pages
    }
    assert {page: found for page, found in left.items() if found} == {}
    assert len(pages) > 60
    assert all(f'lang="{LANGUAGE}"' in path.read_text(encoding="utf-8") for path in pages)


def test_english_that_is_no_content_would_be_found() -> None:
    """The test above can fail, by a word as by a sentence."""
    assert vocabulary().unknown(["Zip", f"{OPEN}ñéẋţ{OPEN} Zebras hum"]) == ["zip", "zebras hum"]


def test_a_word_without_a_translation_says_that_it_is_english() -> None:
    """A course in a language that has a few words: they are said in it, the rest in marked English."""
    course = small_course(fresh_folder() / "course")
    in_language(course, "nb", "format: 1\nskip: Hopp til siden\n")
    opened = open_course(course)
    told = [one.place.file for one in opened.to_fix if one.check == "words_untranslated"]
    assert (told, opened.sound) == (["words/nb.yml"], True)
    build(opened, course, course / "out")
    page = (course / "out" / PUBLISH / "index.html").read_text(encoding="utf-8")
    assert '<html lang="nb"' in page
    assert ">Hopp til siden</a>" in page
    assert '<span lang="en">Read the lessons</span>' in page
    assert as_english("") not in page


@pytest.mark.browser
@pytest.mark.parametrize("width", [320, 390])
def test_longer_words_fit_everywhere(browser: Browser, width: int) -> None:
    """On every kind of page in every state: nothing cut off, out of its box, too wide or said in English."""
    found: dict[str, list[str]] = {}
    with walker(browser, foreign(), width=width) as visitor:
        for kind in KINDS:
            visitor.walk_to(kind)
            fits = misfits(visitor.page)
            visitor.page.evaluate(CUT_SHORT)
            english = vocabulary().unknown(shown(visitor.page.content()))
            found[kind.name] = [*fits, *(f"English: {one}" for one in english)]
    assert {name: faults for name, faults in found.items() if faults} == {}
