"""Files that nothing reads, and files that cannot be read."""

from __future__ import annotations

from builder.model.kind import Example, Kind, kind
from builder.model.sample_rule import FILE, GOOD_RULE
from builder.read.kinds.syntax import CLASS, OF_THE_CLASS

OF_FOLDERS: tuple[Kind, ...] = (
    Kind(
        "file_unreadable",
        "error",
        "A file that belongs here is missing, is far too large, or the computer does not let it be read.",
        Example(CLASS),
        Example(CLASS, OF_THE_CLASS),
    ),
    Kind(
        "link_not_followed",
        "error",
        "A link that leads out of the course could print what is no part of it, and breaks elsewhere.",
        Example(FILE, link="../../elsewhere/numb_glide.yml"),
        Example(FILE, GOOD_RULE),
        "A link in the course folder leads out of it, or to nothing.",
    ),
    Kind(
        "file_not_read",
        "advice",
        "Only files with the right ending in the right folder are read. This one is passed over.",
        Example("rules/numb_glide.yaml", GOOD_RULE),
        Example(FILE, GOOD_RULE),
    ),
    Kind(
        "folder_not_read",
        "advice",
        "Only folders with known names are read. What lies in this one is passed over.",
        Example("ruels/numb_glide.yml", GOOD_RULE),
        Example(FILE, GOOD_RULE),
    ),
    kind(
        "lesson_not_listed",
        "A lesson that the list does not name gets no page, and nobody will ever see it.",
        "course.yml",
        bad="lessons: []",
        good="lessons:\n  - {file: cold.md, title: Cold}",
        level="advice",
    ),
)
