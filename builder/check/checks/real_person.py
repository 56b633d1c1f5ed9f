"""A case tells of nobody who could be found."""

from __future__ import annotations

import re
from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding, case_file
from builder.diagnostic import Level
from builder.model.case import Case
from builder.model.kind import Example
from builder.place import Path

LEVEL: Level = "warning"
WHY = (
    "A case that tells of a real client breaks a confidence. Names, days, addresses and telephone numbers "
    "are what a client is found by."
)
BAD = Example("cases/fair.yml", 'mechanism: "Ms Orlanda Vexley was kicked on 3 May 2025."')
GOOD = Example("cases/fair.yml", "mechanism: A horse kicked the thigh.")
_MONTH = r"(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*"
_SIGNS: tuple[tuple[str, re.Pattern[str]], ...] = (
    ("a name", re.compile(r"\b(?:Mr|Mrs|Ms|Miss|Dr|Prof)\.? [A-Z]\w+(?: [A-Z]\w+)?")),
    ("a name", re.compile(r"(?<=[a-z,] )[A-Z][a-z]+ [A-Z][a-z]+\b")),
    (
        "a day",
        re.compile(rf"\b\d{{1,2}}\.? {_MONTH} \d{{4}}\b|\b{_MONTH} \d{{1,2}}, \d{{4}}\b", re.IGNORECASE),
    ),
    ("a day", re.compile(r"\b\d{4}-\d{2}-\d{2}\b|\b\d{1,2}[./]\d{1,2}[./]\d{2,4}\b")),
    ("an address", re.compile(r"\b[\w.+-]+@[\w-]+\.\w+\b")),
    ("a telephone number", re.compile(r"(?<!\w)\+?\d[\d ()/-]{7,}\d\b")),
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Texts of cases in which something looks like a name, a day, an address or a telephone number."""
    for case in evidence.course.cases.values():
        for path, text in _texts(case):
            for what, pattern in _SIGNS:
                if found := pattern.search(text):
                    yield Finding(
                        case_file(case),
                        path,
                        f"This looks like {what}: `{found[0].strip()}`.",
                        "Tell it without, or accept it where it stands if it is invented.",
                    )
                    break


def _texts(case: Case) -> Iterator[tuple[Path, str]]:
    yield ("title",), case.title
    yield ("mechanism",), case.mechanism
    yield ("client", "role"), case.client.role
    for index, visit in enumerate(case.visits):
        for key in ("title", "story", "next"):
            if text := getattr(visit, key):
                yield ("visits", index, key), text
