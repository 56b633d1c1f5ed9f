"""A visitor of the built site: one fresh browser context that notes every request and every error."""

from __future__ import annotations

from dataclasses import dataclass, field

from playwright.sync_api import BrowserContext, ConsoleMessage, Page, Request

from tests.axe import violations

INSIDE = ("file:", "data:", "blob:", "http://127.0.0.1:")


@dataclass
class Visitor:
    """Someone at a page, with all that their browser asked for and complained of."""

    context: BrowserContext
    page: Page
    root: str
    requests: list[str] = field(default_factory=list)
    errors: list[str] = field(default_factory=list)

    def watch(self) -> None:
        """Note every request and every error from now on."""
        self.page.on("request", self._requested)
        self.page.on("pageerror", lambda error: self.errors.append(str(error)))
        self.page.on("console", self._said)

    def go(self, address: str) -> Page:
        """Open a page of the site by its address."""
        self.page.goto(self.root + address)
        return self.page

    def outside(self) -> list[str]:
        """The requests that left the machine."""
        return [url for url in self.requests if not url.startswith(INSIDE)]

    def faults(self) -> list[str]:
        """What the accessibility checker finds on the page as it stands: rule and place."""
        return violations(self.page)

    def tab_to(self, selector: str, most: int = 60) -> None:
        """Press Tab until what the selector finds has the focus."""
        for _ in range(most):
            self.page.keyboard.press("Tab")
            if self.page.evaluate("selector => document.activeElement.matches(selector)", selector):
                return
        raise AssertionError(f"{selector} cannot be reached by {most} tabs")

    def _requested(self, request: Request) -> None:
        self.requests.append(request.url)

    def _said(self, message: ConsoleMessage) -> None:
        if message.type == "error":
            self.errors.append(message.text)
