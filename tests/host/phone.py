"""A phone in the hall: a browser context with a size, a browser's name and a network of its own."""

import re
from dataclasses import dataclass, field

from playwright.sync_api import Browser, BrowserContext, Page

IOS = "Mozilla/5.0 (iPhone; CPU iPhone OS 15_8 like Mac OS X) AppleWebKit/605.1.15 Version/15.6 Mobile/15E148"
ANDROID = "Mozilla/5.0 (Linux; Android {n}; K) AppleWebKit/537.36 Chrome/{c}.0.0.0 Mobile Safari/537.36"
TABLET = "Mozilla/5.0 (iPad; CPU OS 16_7 like Mac OS X) AppleWebKit/605.1.15 Version/16.6 Mobile/15E148"


@dataclass(frozen=True)
class Kind:
    """What sort of phone: size, its browser's name, milliseconds and kilobytes a second of its network."""

    name: str
    size: tuple[int, int]
    agent: str
    delay: int
    rate: int
    more: dict[str, object] = field(default_factory=dict)


KINDS = (
    Kind("small, far from the hotspot", (320, 568), IOS, 400, 50, {"timezone_id": "America/Chicago"}),
    Kind("old, on a crowded channel", (360, 640), ANDROID.format(n=8, c=99), 800, 20, {"locale": "es-MX"}),
    Kind("usual, dark", (390, 844), ANDROID.format(n=14, c=140), 60, 800, {"color_scheme": "dark"}),
    Kind("on its side", (915, 412), ANDROID.format(n=13, c=128), 120, 200, {"device_scale_factor": 2.6}),
    Kind("tablet", (768, 1024), TABLET, 20, 4000, {"timezone_id": "Europe/Warsaw"}),
    Kind(
        "folded, little motion",
        (280, 653),
        ANDROID.format(n=12, c=115),
        250,
        100,
        {"reduced_motion": "reduce"},
    ),
)


@dataclass
class Phone:
    """One phone, its page, what it complained of, and the bytes that came over its network."""

    kind: Kind
    context: BrowserContext
    page: Page
    errors: list[str] = field(default_factory=list)
    sizes: list[int] = field(default_factory=list)

    def join(self, way: str, code: str) -> None:
        """Follow the square on the screen, type the code, begin."""
        self.page.goto(f"{way}tests/final.html#class=spring")
        self.page.get_by_label("Personal code").fill(f"{code[:3]} {code[3:6].lower()}-{code[6:]}")
        self.page.keyboard.press("Enter")
        self.page.wait_for_selector("#paper:not([hidden])")

    def choose(self, question: int, option: int) -> None:
        """Tap one option."""
        self.page.locator(".question").nth(question).locator(".option").nth(option).click()

    def hand_in(self) -> None:
        """Look over, and say that these are the answers."""
        self.page.locator("#to-review").click()
        self.page.locator("#finish").click()

    def state(self, state: str, seconds: int = 60) -> None:
        """Wait until the page says so of handing in."""
        self.page.wait_for_selector(f"#post[data-state={state}]", timeout=seconds * 1000)

    def receipt(self) -> str:
        """The number on the page."""
        found = re.search(r"[2-9A-Z]{3}-[2-9A-Z]{3}", self.page.locator("#post-said").inner_text())
        return found[0] if found else ""


def bring(browser: Browser, kind: Kind) -> Phone:
    """A fresh phone of a kind, its network as slow as it is."""
    width, height = kind.size
    context = browser.new_context(
        viewport={"width": width, "height": height},
        user_agent=kind.agent,
        has_touch=True,
        **kind.more,  # type: ignore[arg-type]
    )
    phone = Phone(kind, context, context.new_page())
    phone.page.on("pageerror", lambda error: phone.errors.append(str(error)))
    line = context.new_cdp_session(phone.page)
    line.send("Network.enable")
    line.send(
        "Network.emulateNetworkConditions",
        {
            "offline": False,
            "latency": kind.delay,
            "downloadThroughput": kind.rate * 1000,
            "uploadThroughput": kind.rate * 500,
        },
    )
    line.on("Network.loadingFinished", lambda told: phone.sizes.append(int(told["encodedDataLength"])))
    return phone
