"""A practice case: one decision after another, each followed by its reasons."""

import pytest

from tests.browser.conftest import Visit

pytestmark = pytest.mark.browser
CASE = "cases/landing.html"


def test_it_unfolds_step_by_step(visit: Visit) -> None:
    """Only the first question is there; reasons, the next question and what happened then follow."""
    page = visit().go(CASE)
    steps, visits = page.locator("form.step"), page.locator(".visit")
    assert [one.is_visible() for one in steps.all()] == [True, False, False]
    assert not page.locator("svg.timeline.narrow").first.is_visible()
    steps.nth(0).locator(".option").nth(1).click()
    steps.nth(0).locator(".decide").click()
    assert page.locator("svg.timeline.narrow").first.is_visible()
    assert not page.locator("svg.timeline.broad").first.is_visible()
    assert steps.nth(1).is_visible()
    assert not page.locator(".next").first.is_visible()
    steps.nth(1).locator(".option").nth(0).click()
    steps.nth(1).locator(".decide").click()
    assert page.locator(".next").first.is_visible()
    assert not visits.nth(1).is_visible()
    page.locator(".on").click()
    assert visits.nth(1).is_visible()
    assert page.locator(".where").inner_text() == "visit 2 of 2"


def test_ones_own_choice_is_named(visit: Visit) -> None:
    """The reasons say which option was chosen, and that of every option."""
    page = visit().go(CASE)
    step = page.locator("form.step").nth(0)
    step.locator(".option", has_text="remodelling").click()
    step.locator(".decide").click()
    assert (
        step.locator(".which")
        .filter(has=page.locator(".yours:visible"))
        .inner_text()
        .startswith("Remodelling")
    )
    assert step.locator(".which").count() == 3


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
        assert page.locator(".told:visible").count() == number + 1
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


def test_a_visit_that_is_over_folds(visit: Visit) -> None:
    """The next visit has the screen; the one before can be looked at again."""
    page = visit().go(CASE)
    for step in page.locator(".visit").first.locator("form.step").all():
        step.locator(".option").first.click()
        step.locator(".decide").click()
    page.locator(".on").click()
    assert not page.locator(".board").first.is_visible()
    page.get_by_role("button", name="Look at visit 1 again").click()
    assert page.locator(".board").first.is_visible()
    assert page.locator(".told:visible").count() == 2


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing_after_decisions(visit: Visit, scheme: str) -> None:
    """The reasons as they are shown have no fault either."""
    visitor = visit(color_scheme=scheme)
    page = visitor.go(CASE)
    for step in page.locator(".visit").first.locator("form.step").all():
        step.locator(".option").first.click()
        step.locator(".decide").click()
    page.locator(".on").click()
    assert visitor.faults() == []


def test_without_script_everything_is_there(visit: Visit) -> None:
    """Visits in order, each question's reasons one tap away, no button that does nothing."""
    page = visit(scripts=False).go(CASE)
    assert page.locator(".visit:visible").count() == 2
    assert page.locator("form.step:visible").count() == 3
    assert page.locator("button:visible").count() == 0
    page.locator(".reveal > summary").first.click()
    assert page.locator(".told").first.is_visible()


def test_practice_is_not_kept(visit: Visit) -> None:
    """Nothing of a practice case stays on the device."""
    page = visit().go(CASE)
    page.locator(".option").first.click()
    page.locator(".decide").first.click()
    assert page.evaluate("Object.keys(localStorage)") == []
