"""The pages of the tool's own handbook."""

from __future__ import annotations

from collections.abc import Mapping

from builder.diagnostic import LEVELS
from builder.doors.page import Fill, filler
from builder.model.course import SiteConfig
from builder.model.manual import Manual, ManualCheck, ManualFile
from builder.model.site import SitePage, SitePlan, SiteSection
from builder.render.address import START, way
from builder.render.assets import LOOK, assets, frame
from builder.render.wording import Say, speaker

STYLE = "assets/look.css"
COMMANDS, CHECKS = "commands.md", "checks/index.md"


def of_check(name: str) -> str:
    """The page of one check."""
    return f"checks/{name.replace('_', '-')}.md"


def of_file(name: str) -> str:
    """The page of one sort of file."""
    return f"files/{name.replace('_', '-')}.md"


def manual_site(manual: Manual, words: Mapping[str, str], site: SiteConfig) -> SitePlan:
    """The plan of the handbook: the commands, each sort of file, and every name that a check may print."""
    say = speaker(words)
    fill = filler(LOOK, {"say": say})
    files = [_file(fill, one) for one in manual.files]
    checks = [_check(fill, say, one) for one in manual.checks]
    by_level = {level: [one for one in manual.checks if one.level == level] for level in LEVELS}
    pages = [
        _page(fill, START, say("man_start"), "manual_start", manual=manual, kind="start"),
        _page(fill, COMMANDS, say("man_commands"), "manual_commands", manual=manual),
        *files,
        _page(fill, CHECKS, say("man_checks"), "manual_checks", by_level=by_level),
        *checks,
    ]
    return SitePlan(
        name=say("man_title"),
        language="en",
        pages=tuple(pages),
        sections=(
            SiteSection(title=say("man_start"), pages=(START,)),
            SiteSection(title=say("man_commands"), pages=(COMMANDS,)),
            SiteSection(title=say("man_files"), pages=tuple(one.address for one in files)),
            SiteSection(title=say("man_checks"), pages=(CHECKS,)),
        ),
        assets=_assets(site),
        footer=site.caution,
        frame=frame(),
        words=dict(words),
    )


def _assets(site: SiteConfig) -> dict[str, bytes]:
    made, own = assets(site.colours, ()), (LOOK / "css" / "manual.css").read_bytes()
    return made | {STYLE: made[STYLE] + own}


def _page(fill: Fill, at: str, title: str, template: str, kind: str = "manual", **values: object) -> SitePage:
    links = {"to": lambda goal: way(at, goal), "of_check": of_check, "of_file": of_file}
    body = fill(f"pages/{template}.html", {**values, **links, "title": title})
    return SitePage(address=at, title=title, body=body, kind=kind, where="" if kind == "start" else title)


def _file(fill: Fill, file: ManualFile) -> SitePage:
    return _page(fill, of_file(file.name), file.title, "manual_file", file=file)


def _check(fill: Fill, say: Say, check: ManualCheck) -> SitePage:
    examples = [(say("man_bad"), check.bad), (say("man_good"), check.good)]
    return _page(fill, of_check(check.name), check.name, "manual_check", check=check, examples=examples)
