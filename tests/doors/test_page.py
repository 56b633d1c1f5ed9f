"""The door to page templates."""

import json
from pathlib import Path

import pytest

from builder.doors.page import data_block, filler, markup
from builder.fault import Fault


def filled(folder: Path, template: str, **values: object) -> str:
    """A template filled, from a folder of its own."""
    (folder / "x.html").write_text(template, encoding="utf-8")
    return filler(folder, {"known": "here"})("x.html", values)


def test_values_are_escaped_and_markup_is_not(tmp_path: Path) -> None:
    """Text cannot become markup by accident; what is declared markup stays so."""
    assert filled(tmp_path, "{{ a }} {{ b }}", a="<i>", b=markup("<b>")) == "&lt;i&gt; <b>"


def test_known_values_are_there_in_macros_too(tmp_path: Path) -> None:
    """A part that is imported without the page's values still knows what every page knows."""
    (tmp_path / "part.html").write_text("{% macro m() %}{{ known }}{% endmacro %}", encoding="utf-8")
    assert filled(tmp_path, '{% from "part.html" import m %}{{ m() }}') == "here"


@pytest.mark.parametrize("template", ["{{ missing }}", "{% if %}", '{% include "nowhere.html" %}'])
def test_a_template_that_cannot_be_filled_is_a_fault(tmp_path: Path, template: str) -> None:
    """A missing value, bad syntax or a missing part is named with its template."""
    with pytest.raises(Fault, match=r"x\.html"):
        filled(tmp_path, template)


def test_data_cannot_end_the_element_it_stands_in(tmp_path: Path) -> None:
    """As JSON it is what it was, and no part of it reads as a tag."""
    given = {"text": "</script><b>", "é": [1, None]}
    written = filled(tmp_path, "{{ data }}", data=data_block(given))
    assert "<" not in written
    assert json.loads(written) == given
