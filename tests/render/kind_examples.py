"""The examples that lie beside the template of each kind, and a site whose test asks all of them."""

from __future__ import annotations

from atexit import register
from functools import cache
from pathlib import Path
from shutil import rmtree
from tempfile import mkdtemp
from typing import Any

import yaml

from builder.doors.site import build_site
from builder.model.paper import Paper, PaperQuestion, PublishedTest
from builder.model.question import QUESTION_KINDS
from builder.render.assets import LOOK
from builder.render.student import student_site
from tests.render.samples import course


def examples() -> list[dict[str, Any]]:
    """Every example, in the order of the kinds; each named after its kind as well."""
    found = []
    for kind in QUESTION_KINDS:
        text = (LOOK / "kinds" / kind / "examples.yml").read_text(encoding="utf-8")
        found += [{**one, "name": f"{kind}: {one['name']}"} for one in yaml.safe_load(text)]
    return found


EXAMPLES = examples()


def asked(example: dict[str, Any]) -> PaperQuestion:
    """The question of an example, as a paper holds it."""
    return PaperQuestion.model_validate(example["asked"])


def every_kind() -> PublishedTest:
    """A test with one version that asks every example."""
    shown = tuple(asked(one) for one in EXAMPLES)
    paper = Paper(test="final", title="Every kind", version="A", language="en", questions=shown)
    return PublishedTest(test="final", title="Every kind", edition="k7q2m9xa", papers=(paper,))


@cache
def built() -> Path:
    """The folder of the site with that test."""
    folder = Path(mkdtemp(prefix="caseloom-kinds-"))
    register(rmtree, folder, ignore_errors=True)
    build_site(student_site(course(lessons=[], practice=[]), (), (every_kind(),)), folder)
    return folder
