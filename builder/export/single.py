"""One page of a site as a single file: style, script and data inside, and nothing asked of anyone."""

from __future__ import annotations

import re
from pathlib import Path

from builder.doors.page import filler, markup
from builder.fault import Fault
from builder.model.site import SitePage, SitePlan
from builder.model.words import marked

LOOK = Path(__file__).parent / "look"
STYLE = "assets/look.css"
# What the file may do: show itself and hand out what was answered; no address may be asked for anything.
POLICY = (
    "default-src 'none'; style-src 'unsafe-inline'; script-src 'unsafe-inline'; img-src data:; "
    "base-uri 'none'; form-action 'none'"
)
_LINK = re.compile(r'<a\b[^>]*?\shref="(?!#|mailto:|tel:)[^"]*"[^>]*>(.*?)</a>', re.DOTALL)
_ASKS = re.compile(
    r"<(?:link|iframe|object|embed|base)\b|<[a-z][^>]*\s(?:src|srcset|poster)\s*=", re.IGNORECASE
)
_END = re.compile(r"</(?=script)", re.IGNORECASE)


def single_file(plan: SitePlan, at: str, *, with_flags: bool) -> str:
    """The page `at` of a plan as one HTML file; links to other pages become plain text.

    `with_flags` lays the page of red flags below it. A page that shows a file of the course is a Fault.
    """
    page = _page(plan, at)
    flags = _inside(_page(plan, plan.flags)) if with_flags else ""
    values = {
        "plan": plan,
        "page": page,
        "policy": POLICY,
        "style": markup(_text(plan, STYLE)),
        "body": markup(_inside(page)),
        "flags": markup(flags),
        "script": markup("".join(_END.sub(r"<\\/", _text(plan, name)) for name in page.scripts)),
    }
    return marked(filler(LOOK, {})("single.html", values))


def _page(plan: SitePlan, at: str) -> SitePage:
    found = next((page for page in plan.pages if page.address == at), None)
    if found is None:
        raise Fault(f"The site has no page {at}.", "Build it again.")
    return found


def _inside(page: SitePage) -> str:
    """The inside of a page without ways to other pages."""
    inside = _LINK.sub(r"\1", page.body)
    if asks := _ASKS.search(_without_scripts(inside)):
        raise Fault(
            f"{page.title} shows more than one file can hold ({asks[0]} ...).", "Hand out the site instead."
        )
    return inside


def _without_scripts(html: str) -> str:
    return re.sub(r"(?s)<script\b.*?</script>", "", html)


def _text(plan: SitePlan, name: str) -> str:
    return plan.assets[name].decode("utf-8")
