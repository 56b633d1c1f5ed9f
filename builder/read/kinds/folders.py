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
        "name_not_kept",
        "error",
        "A course is copied, and its pages are handed out. A name that Windows keeps for itself, or cannot "
        "write, is lost on the way.",
        Example("media/aux.txt", "Where the pictures come from."),
        Example("media/sources.txt", "Where the pictures come from."),
        "A file, a folder or a test has a name that Windows can keep no file of.",
    ),
    Kind(
        "name_in_two_cases",
        "error",
        "Where capitals count for nothing, on Windows and macOS, one of the two would overwrite the other.",
        Example("media/Pad.txt", "A pad.", more=(Example("media/pad.txt", "Another pad."),)),
        Example("media/pad.txt", "A pad."),
        "Two names in one folder differ only in capitals, or in how an accent is stored.",
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
