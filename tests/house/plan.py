"""The plan of the house: who leans on whom, who opens which door, how large things grow."""

import re
from pathlib import Path

ROOT = Path(__file__).parents[2]

VERBS = (
    "read",
    "judge",
    "check",
    "assess",
    "render",
    "collect",
    "grade",
    "certify",
    "analyse",
    "export",
    "new",
)
GROUND = ("place", "diagnostic", "fault", "disk")

# For each part of builder/, the other parts it may import; a part may always import itself.
MAY_IMPORT: dict[str, tuple[str, ...]] = {
    **dict.fromkeys(GROUND, GROUND),
    "model": GROUND,
    "doors": (*GROUND, "model"),
    **dict.fromkeys(VERBS, (*GROUND, "model", "doors")),
    "flow": (*GROUND, "model", "doors", *VERBS),
    "host": (*GROUND, "model", "doors", "flow"),
    "preview": (*GROUND, "model", "doors", "flow"),
    "cli": (*GROUND, "model", "flow", "host", "preview"),
    "__main__": ("cli",),
}

# For each library, the modules (with all below them) that alone may import it; nothing else is used.
OPENED_BY: dict[str, tuple[str, ...]] = {
    "alembic": ("builder.doors.store",),
    "bs4": ("builder.doors.html",),
    "click": ("builder.cli",),
    "cryptography": ("builder.doors.seal",),
    "csv": ("builder.doors.sheet",),
    "icalendar": ("builder.doors.calendar",),
    "jinja2": ("builder.doors.page",),
    "markdown": ("builder.doors.site",),
    "markupsafe": ("builder.doors.page",),
    "material": ("builder.doors.site",),
    "mkdocs": ("builder.doors.site",),
    "openpyxl": ("builder.doors.sheet",),
    "psutil": ("builder.doors.machine",),
    "pydantic": ("builder.model", "builder.doors"),
    "pydantic_core": ("builder.model", "builder.doors"),
    "pymediainfo": ("builder.doors.film",),
    "pysat": ("builder.doors.solver",),
    "segno": ("builder.doors.qr",),
    "sqlalchemy": ("builder.doors.store",),
    "sqlite3": ("builder.doors.store",),
    "starlette": ("builder.doors.serve",),
    "typst": ("builder.doors.press",),
    "uvicorn": ("builder.doors.serve",),
    "watchfiles": ("builder.doors.watch",),
    "yaml": ("builder.doors.yaml",),
}

# Modules tested elsewhere: the steps of an upgrade by the test of upgrading, all in a row; the kinds of
# fault, each with two examples, by the test that lays every example over the sample.
TESTED_BY = {
    "builder.doors.store.migrations": "tests/doors/store/test_upgrade",
    "builder.read.kinds": "tests/flow/test_kinds",
}

# Clock, randomness and environment enter at the edge, as arguments: these parts never reach for them.
SEALED = ("place", "diagnostic", "fault", "model", *VERBS)
EDGE_CALLS = ("now", "utcnow", "today", "time", "time_ns", "monotonic", "getenv", "urandom", "getcwd")
EDGE_NAMES = ("environ",)
EDGE_MODULES = ("random", "secrets")

# Nouns know no disk.
DISK_MODULES = ("pathlib", "os", "io", "shutil", "tempfile", "builder.disk")

STUDENT = "builder.render.student"
KEY = "builder.model.key"

MOST_LINES = 300
MOST_FUNCTION_LINES = 30
MEASURED_SUFFIXES = (".py", ".js", ".css", ".html", ".j2", ".svg")

TOP_LEVEL = {
    "README.md",
    "DEVELOPERS.md",
    "LICENSE",
    "Makefile",
    "pyproject.toml",
    "requirements.lock",
    "requirements-test.lock",
    "site_config.yml",
    "builder",
    "content",
    "demo_course",
    "tests",
    ".ci",
    ".gitattributes",
    ".gitignore",
}

VAGUE_NAMES = {"util", "utils", "helper", "helpers", "common", "misc", "manager", "managers"}

# What no tracked file may hold, each with the words that say why.
TRACES: dict[str, re.Pattern[str]] = {
    "a path of one machine": re.compile(r"(?<![\w.])/(?:work|root|tmp|home|opt)/"),
    "an address of a package registry": re.compile(r"pypi\.org|pythonhosted\.org|npmjs\.(?:org|com)"),
    "unfinished work": re.compile(r"\b(?:TO[D]O|FIX[M]E|XX[X]|Not[I]mplemented(?:Error)?)\b"),
}
