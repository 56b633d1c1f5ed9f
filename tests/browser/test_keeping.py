"""What was answered is kept twice, comes together from everywhere, and is never lost in silence."""

import json
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from playwright.sync_api import Browser, Dialog, Page

from tests.browser.codes import code_for
from tests.browser.conftest import Visit
from tests.browser.doomed import started
from tests.browser.test_taking import BLOCKED, PAPER, chosen, option
from tests.browser.visitor import Visitor
from tests.render.sample_site import built

pytestmark = pytest.mark.browser
CODE = code_for("A")
NAME = f"caseloom/k7q2m9xa/final/A/{CODE}"
ALONE = "delete window.BroadcastChannel;"
LOST = "This browser does not keep your answers."
EMPTY_SAFE = """
new Promise(done => {
  const asked = indexedDB.open('caseloom', 1);
  asked.onsuccess = () => {
    const deal = asked.result.transaction('answers', 'readwrite');
    deal.objectStore('answers').clear();
    deal.oncomplete = () => { asked.result.close(); done(true); };
  };
})
"""
FILL = """
async () => {
  for (let size = 1 << 21; size; size >>= 1) for (let n = 0; n < 4; n++)
    try { localStorage.setItem('fill' + size + n, 'x'.repeat(size)); } catch (full) { break; }
  const asked = indexedDB.open('caseloom', 1);
  const base = await new Promise(done => { asked.onsuccess = () => done(asked.result); });
  const put = (name, size) => new Promise(done => {
    const deal = base.transaction('answers', 'readwrite');
    deal.objectStore('answers').put(crypto.getRandomValues(new Uint8Array(size)), name);
    deal.oncomplete = () => done(true);
    deal.onabort = () => done(false);
  });
  for (const size of [65536, 4096, 64]) for (let n = 0; n < 200 && await put(size + ' ' + n, size); n++);
}
"""
CELL = st.fixed_dictionaries({"tick": st.integers(1, 9), "value": st.sampled_from("ab")})
CELLS = st.dictionaries(st.sampled_from(["q1", "q2"]), CELL)
STATE = st.fixed_dictionaries(
    {
        "sheet": st.sampled_from(["0" * 32, "1" * 32]),
        "started": st.sampled_from(["2026-11-21T09:00:00+00:00", "2026-11-21T10:00:00+01:00"]),
        "rev": st.integers(0, 3),
        "tick": st.integers(0, 9),
        "answers": CELLS,
        "marks": CELLS,
    }
)
LAWS = """
all => all.map(([a, b, c]) => {
  const m = caseloom.merge, same = caseloom.same, ab = m(a, b);
  return [same(ab, m(b, a)), same(m(ab, c), m(a, m(b, c))), same(m(a, a), a), ab];
})
"""


def kept_line(page: Page, words: str) -> None:
    """Wait until the page says so of how the answers are kept."""
    page.locator(".keeping", has_text=words).wait_for(state="attached")


def sure(page: Page) -> None:
    """Wait until the page says that the answers are kept."""
    kept_line(page, "Your answers are kept on this device.")


@settings(max_examples=40)
@given(st.lists(st.tuples(STATE, STATE, STATE), min_size=1, max_size=20))
def _hold(page: Page, all_three: list[tuple[dict[str, Any], ...]]) -> None:
    for (one, other, _), found in zip(all_three, page.evaluate(LAWS, all_three), strict=True):
        assert found[:3] == [True, True, True]
        for part in ("answers", "marks"):
            for name in {*one[part], *other[part]}:
                ticks = [state[part][name]["tick"] for state in (one, other) if name in state[part]]
                assert found[3][part][name]["tick"] == max(ticks)


def test_what_is_merged_is_whole(visit: Visit) -> None:
    """In whichever order states come together the result is the same, and the later answer is in it."""
    _hold(visit().go("tests/final.html"))


@pytest.mark.parametrize("lost", ["quick", "safe"])
def test_either_store_is_enough(visit: Visit, lost: str) -> None:
    """What one store has lost comes back from the other, and then stands in both again."""
    visitor = visit()
    page = visitor.go(PAPER)
    option(page, 0, 1)
    option(page, 1, 2)
    sure(page)
    page.goto(f"{visitor.root}index.html")
    page.evaluate("localStorage.clear()" if lost == "quick" else EMPTY_SAFE)
    page.goto(visitor.root + PAPER)
    sure(page)
    assert chosen(page) == ["pack", "rub"]
    other = "localStorage.clear()" if lost == "safe" else EMPTY_SAFE
    page.goto(f"{visitor.root}index.html")
    page.evaluate(other)
    page.goto(visitor.root + PAPER)
    sure(page)
    assert chosen(page) == ["pack", "rub"]


@pytest.mark.parametrize("place", ["folder", "server"])
@pytest.mark.parametrize("channel", [True, False])
def test_two_windows_lose_nothing(visit: Visit, served: str, place: str, *, channel: bool) -> None:
    """Answers from both come together, with messages between windows or without them."""
    visitor = visit(served if place == "server" else None)
    if not channel:
        visitor.context.add_init_script(ALONE)
    first, second = visitor.go(PAPER), visitor.context.new_page()
    second.goto(visitor.root + PAPER)
    option(first, 0, 1)
    option(second, 1, 2)
    option(first, 2, 0)
    sure(first)
    if channel:
        first.wait_for_function("document.querySelectorAll('input:checked').length === 3")
        second.wait_for_function("document.querySelectorAll('input:checked').length === 3")
        assert "another window" in first.locator("#others").inner_text()
        assert "another window" in second.locator("#others").inner_text()
    second.close()
    first.reload()
    sure(first)
    assert chosen(first) == ["pack", "rub", "glide"]
    assert first.locator("#others").inner_text() == ""


def draft_of(page: Page, folder: Path) -> Path:
    """Save a draft as a participant would."""
    if not page.locator("#draft-save").is_visible():
        page.locator("#drafts summary").click()
    with page.expect_download() as coming:
        page.locator("#draft-save").click()
    assert coming.value.suggested_filename == f"final-A-{CODE}-draft.json"
    coming.value.save_as(folder / "draft.json")
    return folder / "draft.json"


def opened(page: Page, draft: Path) -> str:
    """What the page says of a draft that is opened on it."""
    page.locator("#draft-said").evaluate("line => line.replaceChildren()")
    page.locator("#draft-open").set_input_files(draft)
    page.wait_for_selector("#draft-said:not(:empty)", state="attached")
    said: str = page.locator("#draft-said").text_content() or ""
    return said


def test_blocked_storage_ends_in_a_draft(visit: Visit, tmp_path: Path) -> None:
    """Said at once, also in the bar; what was saved brings the answers back on another device."""
    visitor = visit()
    visitor.context.add_init_script(BLOCKED)
    page = visitor.go(PAPER)
    kept_line(page, LOST)
    option(page, 0, 1)
    assert page.locator(".where").inner_text() == "not kept"
    draft = draft_of(page, tmp_path)
    again = visit().go(PAPER)
    assert opened(again, draft).startswith("Answers found in the draft: 1.")
    assert chosen(again) == ["pack"]
    option(again, 0, 0)
    opened(again, draft)
    assert chosen(again) == ["glide"]


def test_a_full_device_is_said(visit: Visit, served: str, tmp_path: Path) -> None:
    """With both stores really full the page says so; a draft saves everything; with room it keeps again."""
    visitor = visit(served)
    rights = visitor.context.new_cdp_session(visitor.page)
    origin = served.removesuffix("/a%20course/")
    rights.send("Storage.overrideQuotaForOrigin", {"origin": origin, "quotaSize": 1 << 21})
    page = visitor.go(PAPER)
    sure(page)
    page.evaluate(FILL)
    option(page, 0, 1)
    option(page, 1, 1)
    kept_line(page, LOST)
    assert json.loads(draft_of(page, tmp_path).read_text(encoding="utf-8"))["answers"][1]["value"] == "pack"
    page.evaluate("localStorage.clear()")
    option(page, 2, 0)
    kept_line(page, "the last few seconds could be missing")


def test_a_browser_told_to_keep_nothing(browser: Browser, tmp_path: Path) -> None:
    """Where the person has forbidden pages to keep anything, the page says so and goes on."""
    settings_of = {"profile": {"default_content_setting_values": {"cookies": 2}}}
    (tmp_path / "profile" / "Default").mkdir(parents=True)
    file = tmp_path / "profile" / "Default" / "Preferences"
    file.write_text(json.dumps(settings_of), encoding="utf-8")
    process, port = started(tmp_path / "profile")
    try:
        page = browser.browser_type.connect_over_cdp(f"http://127.0.0.1:{port}").contexts[0].new_page()
        page.goto(f"{built().as_uri()}/{PAPER}")
        kept_line(page, LOST)
        option(page, 0, 1)
        assert chosen(page) == ["pack"]
        page.locator("#to-review").click()
        page.locator("#finish").click()
        assert json.loads(page.locator("#sheet-text").input_value())["answers"][0]["value"] == "pack"
    finally:
        process.kill()
        process.wait()


def test_leaving_is_asked_where_nothing_is_kept(visit: Visit, tmp_path: Path) -> None:
    """The browser asks before a page with answers goes away; after a draft was saved it does not."""
    visitor = visit()
    visitor.context.add_init_script(BLOCKED)
    page = visitor.go(PAPER)
    kept_line(page, LOST)
    option(page, 0, 1)
    asked: list[str] = []

    def accept(dialog: Dialog) -> None:
        asked.append(dialog.type)
        dialog.accept()

    page.on("dialog", accept)
    page.reload()
    assert asked == ["beforeunload"]
    kept_line(page, LOST)
    option(page, 0, 1)
    draft_of(page, tmp_path)
    page.reload()
    assert asked == ["beforeunload"]


@pytest.mark.parametrize(
    ("old", "new"), [('"}', ""), ('"pack"', '"rub"'), ("caseloom/answers/1", "something/1"), ("{", "\x00")]
)
def test_what_is_no_draft_changes_nothing(visit: Visit, tmp_path: Path, old: str, new: str) -> None:
    """A damaged or altered file is named as such."""
    page = visit().go(PAPER)
    option(page, 0, 1)
    draft = draft_of(page, tmp_path)
    text = draft.read_text(encoding="utf-8")
    assert old in text
    draft.write_text(text.replace(old, new), encoding="utf-8")
    option(page, 0, 0)
    assert "damaged" in opened(page, draft)
    assert chosen(page) == ["glide"]


def test_a_draft_of_someone_else_is_not_taken(visit: Visit, tmp_path: Path) -> None:
    """Attempts and people never mix: the draft names its code and is left alone."""
    page = visit().go(PAPER)
    option(page, 0, 1)
    draft = draft_of(page, tmp_path)
    other: Visitor = visit()
    page = other.go(f"tests/final-a.html#code={code_for('A', '4G9K2MX')}")
    assert f"code {CODE}" in opened(page, draft)
    assert chosen(page) == []


def test_a_draft_handed_in_is_no_finished_sheet(visit: Visit, tmp_path: Path) -> None:
    """It can be read like an answer sheet, has no time of finishing, and shares its revision with none."""
    page = visit().go(PAPER)
    option(page, 0, 1)
    draft = json.loads(draft_of(page, tmp_path).read_text(encoding="utf-8"))
    page.locator("#to-review").click()
    page.locator("#finish").click()
    sheet = json.loads(page.locator("#sheet-text").input_value())
    assert (draft["finished"], draft["sheet"]) == (None, sheet["sheet"])
    assert sheet["rev"] == draft["rev"] + 1
