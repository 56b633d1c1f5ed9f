"""A practice case: each decision followed by its reasons; to decide, half worked or worked."""

import pytest
from playwright.sync_api import Page

from tests.browser.conftest import Visit

pytestmark = pytest.mark.browser
CASE = "cases/landing.html"


def decide(page: Page, step: int, option: int = 0) -> None:
    """Choose an option of a step and decide."""
    page.locator("form.step").nth(step).locator(".option").nth(option).click()
    page.locator("form.step").nth(step).locator(".decide").click()


def told(page: Page) -> list[bool]:
    """Of which steps the reasons are to be seen."""
    return [one.is_visible() for one in page.locator(".told").all()]


def test_it_unfolds_step_by_step(visit: Visit) -> None:
    """Only the first question is there; reasons, the next question and what happened then follow."""
    page = visit().go(CASE)
    steps, visits = page.locator("form.step"), page.locator(".visit")
    assert [one.is_visible() for one in steps.all()] == [True, False, False]
    assert not page.locator("svg.timeline.narrow").first.is_visible()
    decide(page, 0, 1)
    assert page.locator("svg.timeline.narrow").first.is_visible()
    assert not page.locator("svg.timeline.broad").first.is_visible()
    assert steps.nth(1).is_visible()
    assert not page.locator(".next").first.is_visible()
    decide(page, 1)
    assert page.locator(".next").first.is_visible()
    assert not visits.nth(1).is_visible()
    page.locator(".on").click()
    assert visits.nth(1).is_visible()
    assert page.locator(".where").inner_text() == "visit 2 of 2"


def test_what_is_decided_folds_to_a_line(visit: Visit) -> None:
    """The line says what it was about, what holds, and one's own choice where it was another."""
    page = visit().go(CASE)
    decide(page, 0, 2)
    assert told(page) == [True, False, False]
    decide(page, 1, 1)
    assert told(page) == [False, True, False]
    line = page.locator(".line").first
    assert line.inner_text().split("\n") == ["The phase", "Acute", "You chose: remodelling"]
    line.click()
    assert told(page) == [True, True, False]


def test_ones_own_choice_is_named(visit: Visit) -> None:
    """The reasons say which option was chosen, and that of every option."""
    page = visit().go(CASE)
    decide(page, 0, 2)
    step = page.locator("form.step").nth(0)
    own = step.locator(".which").filter(has=page.locator(".yours:visible"))
    assert own.inner_text().startswith("Remodelling")
    assert [one.is_visible() for one in step.locator(".which").all()] == [True, True, True]


def test_deciding_without_a_choice_is_told(visit: Visit) -> None:
    """The fault is said in an alert, the focus goes to the first option, nothing is given away."""
    page = visit().go(CASE)
    page.locator(".decide").first.click()
    assert page.locator(".problem[role=alert]").first.inner_text() == "Choose first, then decide."
    assert page.evaluate("document.activeElement.type") == "radio"
    assert not page.locator(".reveal").first.is_visible()


def test_a_whole_case_by_keyboard(visit: Visit) -> None:
    """From the first option to the end without a pointer; after each decision the focus is at its reasons."""
    visitor = visit()
    page = visitor.go(CASE)
    for number in range(2):
        visitor.tab_to("input[type=radio]")
        page.keyboard.press("ArrowDown")
        visitor.tab_to(".decide")
        page.keyboard.press("Enter")
        assert page.evaluate("document.activeElement.className") == "told"
        assert told(page) == [place == number for place in range(3)]
    visitor.tab_to(".on")
    page.keyboard.press("Enter")
    assert page.evaluate("document.activeElement.textContent") == "Nine days later"
    visitor.tab_to("input[type=checkbox]")
    page.keyboard.press("Space")
    visitor.tab_to(".decide")
    page.keyboard.press("Enter")
    assert page.locator(".next").last.is_visible()
    visitor.tab_to(".again button")
    page.keyboard.press("Enter")
    page.wait_for_function("document.querySelectorAll('form.step fieldset:disabled').length === 0")
    assert page.locator(".told:visible").count() == 0


def test_the_ways_to_use_it_by_keyboard(visit: Visit) -> None:
    """Each is a link that says which one is on; a folded line opens on a key as well."""
    visitor = visit()
    page = visitor.go(CASE)
    visitor.tab_to(".modes a[href='#worked']")
    page.keyboard.press("Enter")
    page.wait_for_selector(".modes a[href='#worked'][aria-current]")
    page.keyboard.press("Shift+Tab")
    page.keyboard.press("Shift+Tab")
    page.keyboard.press("Enter")
    page.wait_for_selector(".modes a[href='#blank'][aria-current]")
    decide(page, 0)
    decide(page, 1)
    page.locator(".reveal summary").first.focus()
    page.keyboard.press("Enter")
    assert told(page) == [True, True, False]


def test_a_visit_that_is_over_folds(visit: Visit) -> None:
    """The next visit has the screen; the one before can be looked at again."""
    page = visit().go(CASE)
    decide(page, 0)
    decide(page, 1)
    page.locator(".on").click()
    assert not page.locator(".board").first.is_visible()
    page.get_by_role("button", name="Look at visit 1 again").click()
    assert page.locator(".board").first.is_visible()
    assert page.evaluate("document.activeElement.textContent") == "The next afternoon"


def test_worked_shows_everything_and_asks_nothing(visit: Visit) -> None:
    """Every visit with its reasons and what happened next; the other options one tap away."""
    page = visit().go(f"{CASE}#worked")
    assert [one.is_visible() for one in page.locator(".visit").all()] == [True, True]
    assert told(page) == [True, True, True]
    assert [one.is_visible() for one in page.locator(".next").all()] == [True, True]
    for never in (".option", ".decide", ".on", ".again", ".yours"):
        assert page.locator(f"{never}:visible").count() == 0
    others = page.locator(".besides").first
    assert others.locator(".which").count() == 2
    assert not others.locator(".which").first.is_visible()
    others.locator("summary").click()
    assert others.locator(".which").first.is_visible()


def test_half_worked_shows_the_first_visit_and_asks_the_second(visit: Visit) -> None:
    """The first is worked with what happened next; the second waits to be gone on to, and asks."""
    page = visit().go(f"{CASE}#part")
    assert told(page) == [True, True, False]
    assert page.locator(".next").first.is_visible()
    assert not page.locator(".visit").nth(1).is_visible()
    page.locator(".on").click()
    assert page.locator(".option:visible").count() == 3
    decide(page, 2)
    assert told(page) == [False, False, True]


def test_a_single_visit_half_worked_gives_its_first_questions(visit: Visit) -> None:
    """The first question is worked, the last one asked; decided, it folds the one before."""
    page = visit().go(CASE)
    page.evaluate("document.querySelectorAll('.visit')[1].remove()")
    script = page.locator("script[src*=practice]").get_attribute("src")
    page.evaluate("location.hash = '#part'")
    page.add_script_tag(url=f"{page.url.split('#')[0].rsplit('/', 1)[0]}/{script}")
    assert told(page) == [True, False]
    assert page.locator("form.step").nth(1).locator(".option:visible").count() == 3


def test_the_way_to_use_it_can_change_in_the_middle(visit: Visit) -> None:
    """What was decided is there again when one comes back to deciding."""
    page = visit().go(CASE)
    decide(page, 0, 2)
    page.get_by_role("link", name="Worked", exact=True).click()
    assert page.locator(".yours:visible").count() == 0
    page.get_by_role("link", name="Decide").click()
    assert told(page) == [True, False, False]
    assert page.locator(".yours:visible").count() == 1


def test_it_goes_on_after_a_reload(visit: Visit) -> None:
    """Visit, decisions and choices are as they were left; a link leads to the question that is open."""
    page = visit().go(CASE)
    decide(page, 0, 2)
    decide(page, 1)
    page.locator(".on").click()
    page.reload()
    assert page.locator(".where").inner_text() == "visit 2 of 2"
    assert page.locator(".resumed").is_visible()
    page.get_by_role("button", name="Go on where you were").click()
    assert page.evaluate("document.activeElement.type") == "checkbox"
    assert not page.locator(".resumed").is_visible()
    page.get_by_role("button", name="Look at visit 1 again").click()
    page.locator(".line").first.click()
    assert page.locator(".yours:visible").count() >= 1


def test_start_again_clears_what_was_kept(visit: Visit) -> None:
    """One entry under a name of this case alone; afterwards none, and the first question is open."""
    page = visit().go(CASE)
    decide(page, 0)
    assert page.evaluate("Object.keys(localStorage)") == ["caseloom/practice/lanternfall/landing"]
    page.get_by_role("button", name="Start this case again").click()
    page.wait_for_function("document.querySelector('.told').offsetParent === null")
    assert page.evaluate("Object.keys(localStorage)") == []
    assert page.locator(".option:visible").count() == 3


@pytest.mark.parametrize(
    "kept", ["{", '{"visit": 0}', '{"visit": 9, "answers": {"q1": "gone", "x": [1]}}', "null"]
)
def test_what_was_kept_by_something_else_is_passed_over(visit: Visit, kept: str) -> None:
    """A torn entry, and answers that the case no longer offers, leave the page as if they were not there."""
    page = visit().go(CASE)
    page.evaluate("kept => localStorage.setItem('caseloom/practice/lanternfall/landing', kept)", kept)
    page.reload()
    assert page.locator(".option:visible").count() == 3
    decide(page, 0)
    assert told(page) == [True, False, False]


def test_a_browser_that_keeps_nothing_still_practises(visit: Visit) -> None:
    """Without storage the case unfolds all the same."""
    visitor = visit()
    visitor.context.add_init_script(
        "Object.defineProperty(window, 'localStorage', {get() { throw new Error('blocked'); }})"
    )
    page = visitor.go(CASE)
    decide(page, 0)
    decide(page, 1)
    assert page.locator(".on").is_visible()


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("mode", ["blank", "part", "worked"])
def test_axe_finds_nothing_in_any_of_its_ways(visit: Visit, scheme: str, mode: str) -> None:
    """After decisions, half worked and worked: the page has no fault."""
    visitor = visit(color_scheme=scheme)
    page = visitor.go(f"{CASE}#{mode}")
    if mode == "blank":
        decide(page, 0)
        decide(page, 1)
    if mode != "worked":
        page.locator(".on").click()
    page.evaluate("window.scrollTo(0, 0)")  # what the bar covers by half would count as a small target
    assert visitor.faults() == []


def printed(page: Page) -> tuple[list[bool], list[bool], list[bool]]:
    """Of each question whether its options and its reasons are on paper; and what happened next."""
    page.emulate_media(media="print")
    steps = page.locator("form.step").all()
    options = [one.locator(".option").first.is_visible() for one in steps]
    reasons = [one.locator(".which").last.is_visible() for one in steps]
    return options, reasons, [one.is_visible() for one in page.locator(".next").all()]


@pytest.mark.parametrize(
    ("mode", "worked"), [("blank", [False] * 3), ("part", [True, True, False]), ("worked", [True] * 3)]
)
def test_paper_shows_the_way_that_was_chosen(visit: Visit, mode: str, worked: list[bool]) -> None:
    """Every question: worked with all of its reasons, or to be answered; never both, whatever was decided."""
    page = visit(color_scheme="dark").go(f"{CASE}#{mode}")
    if mode == "blank":
        decide(page, 0, 2)
    options, reasons, ends = printed(page)
    assert reasons == worked
    assert options == [not one for one in worked]
    assert ends == [worked[1], worked[2]]
    assert page.locator(".visit:visible").count() == 2
    for never in (".modes", ".decide", ".on", ".again", ".look-back", ".bar"):
        assert page.locator(f"{never}:visible").count() == 0


def test_without_script_everything_is_there(visit: Visit) -> None:
    """Visits in order, each question's reasons one tap away, no button that does nothing."""
    page = visit(scripts=False).go(CASE)
    assert page.locator(".visit:visible").count() == 2
    assert page.locator("form.step:visible").count() == 3
    assert page.locator("button:visible").count() == 0
    assert not page.locator(".modes").is_visible()
    page.locator(".reveal > summary").first.click()
    assert page.locator(".told").first.is_visible()
    assert page.locator(".besides .which").first.is_visible()
