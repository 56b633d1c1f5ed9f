"""The mark of the instructor's side: on every page, on every sheet of paper, in the bar."""

from __future__ import annotations

from builder.model.site import SitePage, SitePlan
from builder.render.assets import LOOK
from builder.render.maker import Maker

STYLE = "assets/look.css"
OWN = ("instructor", "room", "matrix", "paper")
MARGIN = "font: 8pt system-ui, sans-serif;"


def marked(made: Maker, plan: SitePlan) -> SitePlan:
    """The plan with its name, its pages and its paper marked, and the instructor's own look added."""
    own = "".join((LOOK / "css" / f"{name}.css").read_text(encoding="utf-8") for name in OWN) + _paper(made)
    banner = made.fill("parts/instructor_banner.html", {})
    return plan.model_copy(
        update={
            "name": made.say("i_site", course=plan.name),
            "pages": tuple(_bannered(page, banner) for page in plan.pages),
            "assets": plan.assets | {STYLE: plan.assets[STYLE] + own.encode("utf-8")},
        }
    )


def _bannered(page: SitePage, banner: str) -> SitePage:
    marked_before = page.body.startswith(banner)
    # What is shown to the room must not tell the room to look away.
    return (
        page if marked_before or page.kind == "room" else page.model_copy(update={"body": banner + page.body})
    )


def _paper(made: Maker) -> str:
    """What the margins of a printed sheet say; one that is handed out does not call itself private."""
    private, handed = made.say("i_margin"), made.course.file.title
    caution = made.course.site.short_caution
    return (
        "@media print {\n"
        f"  @page {{ @top-left {{ content: {_quoted(private)}; {MARGIN} }} }}\n"
        f"  @page {{ @bottom-left {{ content: {_quoted(caution)}; {MARGIN} }} }}\n"
        f"  @page handout {{ @top-left {{ content: {_quoted(handed)}; {MARGIN} }} }}\n"
        f"  @page {{ @bottom-right {{ content: counter(page); {MARGIN} }} }}\n"
        "}\n"
    )


def _quoted(text: str) -> str:
    """A text as a CSS string."""
    escaped = text.replace("\\", "\\\\").replace('"', '\\"').replace("\n", " ")
    return f'"{escaped}"'
