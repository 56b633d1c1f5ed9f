"""Sits a version of the built test in a browser, as a participant would, and brings the answer sheet back."""

import hashlib
import json
from collections import Counter
from datetime import datetime, timedelta
from pathlib import Path

from playwright.sync_api import Browser, Locator, Page

from builder.model.code import version_of
from builder.model.key import KeyAnswer, KeyRing
from tests.demo.people import Sitting

ZONE = "America/New_York"
OFFSET = "-04:00"
SECONDS_A_QUESTION = 95_000

FIXED_CHANCE = """
(seed => {
  let at = 0;
  crypto.getRandomValues = array => {
    for (let i = 0; i < array.length; i++) array[i] = parseInt(seed.substr(2 * (at++ % 32), 2), 16);
    return array;
  };
})
"""


def sit(browser: Browser, publish: Path, ring: KeyRing, sitting: Sitting, klass: str) -> str:
    """The answer sheet that the page hands over for one sitting, on a clock and chance of ours."""
    key = ring.version(version_of(sitting.code, len(ring.keys)))
    if key is None:
        raise LookupError(sitting.code)
    wrong = _wrong(key.answers, sitting)
    context = browser.new_context(timezone_id=ZONE, locale="en-US", viewport={"width": 390, "height": 844})
    page = context.new_page()
    began = datetime.fromisoformat(sitting.began + OFFSET)
    page.clock.install(time=began - timedelta(minutes=1))
    page.clock.pause_at(began)
    seed = hashlib.sha256(f"{sitting.code} {sitting.began}".encode()).hexdigest()
    page.add_init_script(f"{FIXED_CHANCE}({json.dumps(seed)})")
    page.goto((publish / "tests" / f"{ring.test}.html").as_uri() + f"#class={klass}")
    page.get_by_label("Personal code").fill(f"{sitting.code[:3]} {sitting.code[3:6]}-{sitting.code[6:]}")
    page.keyboard.press("Enter")
    page.wait_for_selector("#paper:not([hidden])")
    for answer in key.answers:
        _answer(page, answer, sitting.words, spoiled=answer.question in wrong)
        page.clock.run_for(SECONDS_A_QUESTION)
    page.locator("#to-review").click()
    page.locator("#finish").click()
    text = page.locator("#sheet-text").input_value()
    context.close()
    return text


def _wrong(answers: tuple[KeyAnswer, ...], sitting: Sitting) -> set[str]:
    left = Counter({(slip.objective, slip.topic): slip.count for slip in sitting.slips})
    wrong = set()
    for answer in answers:
        about = (answer.objective, answer.topic)
        if answer.kind not in ("many", "text") and left[about] > 0:
            left[about] -= 1
            wrong.add(answer.question)
    if +left:
        raise LookupError(f"{sitting.code}: too few questions to slip on: {+left}")
    return wrong


def _answer(page: Page, answer: KeyAnswer, words: str, *, spoiled: bool) -> None:
    """Answer one question in its own controls, with a slip where one is due."""
    box = page.locator(f'fieldset[data-question="{answer.question}"]')
    if answer.kind == "order":
        _order(box, (*answer.right[1:], answer.right[0]) if spoiled else answer.right)
    elif answer.kind == "match":
        partners = [right for _, right in answer.pairs]
        for (left, _), right in zip(
            answer.pairs, [*partners[1:], partners[0]] if spoiled else partners, strict=True
        ):
            box.locator(f'select[data-left="{left}"]').select_option(right)
    elif answer.within is not None:
        box.locator("input").fill("1" if spoiled else f"{answer.within.value} {answer.within.unit}")
    elif answer.kind == "text":
        box.locator("textarea").fill(words)
    else:
        wrong = [one for one in answer.options if one not in answer.right]
        for option in wrong[:1] if spoiled else answer.right:
            box.locator(f'label:has(input[value="{option}"])').click()


def _order(box: Locator, steps: tuple[str, ...]) -> None:
    """Give each step its place, the first one first."""
    for place, step in enumerate(steps, start=1):
        box.locator(f'[data-step="{step}"] select').select_option(str(place))
    meant = box.locator(".meant input")
    if not meant.is_checked():
        meant.check(force=True)
