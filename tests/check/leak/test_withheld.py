"""What is withheld, and what is said on purpose all the same."""

from dataclasses import replace

from builder.check.leak.reading import published, words
from builder.check.leak.withheld import (
    Lookout,
    Withheld,
    frame_words,
    of_authors,
    of_content,
    of_keys,
    of_written,
    papers_texts,
    pool_cases,
    pool_questions,
    said_on_purpose,
    shown_in_papers,
    stems_of,
)
from builder.model.question import QUESTION_KINDS
from tests.check.leak.site import CASES, COURSE, RINGS


def seen(lookout: Lookout, text: str) -> list[str]:
    """The withheld texts that a page with this text says."""
    return [one.text for one in lookout.in_file(published("a.html", text.encode()))]


def test_a_withheld_text_is_seen() -> None:
    """Found whole, not in part."""
    lookout = Lookout([Withheld("Wait a day.", "a reason")], b"")
    assert seen(lookout, "<p>So wait a day, then look.</p>") == ["Wait a day."]
    assert seen(lookout, "<p>Wait a week.</p>") == []


def test_a_single_word_is_no_secret() -> None:
    """One word cannot be told from chance."""
    assert seen(Lookout([Withheld("Ankle", "a title")], b""), "Ankle") == []


def test_what_is_said_on_purpose_is_no_secret() -> None:
    """A text that the course itself publishes elsewhere gives nothing away."""
    assert seen(Lookout([Withheld("Wait a day.", "a reason")], words("You wait a day.")), "wait a day") == []


def test_only_pools_are_tested() -> None:
    """A case in a practice set is not tested."""
    assert [one.id for one in pool_cases(COURSE)] == ["wire_walker", "beta"]


def test_authors_words_are_withheld() -> None:
    """Titles of case and visits, endings and the word on an option."""
    texts = {one.text for one in of_authors(CASES[:1])}
    assert {
        "Secret title of wire_walker",
        "Secret visit 1 of wire_walker",
        "Secret ending 2 of wire_walker told afterwards.",
        "Secret word on wire_walker 1.",
    } <= texts


def test_papers_show_mechanism_and_story() -> None:
    """These may stand on pages of a test and nowhere else."""
    assert {one.text for one in shown_in_papers(CASES[1:2])} == {
        "A pole hit beta",
        "Everyday it hurts beta 1 times.",
        "Everyday it hurts beta 2 times.",
    }


def test_reasons_of_keys_are_withheld() -> None:
    """Every reason that names its rules."""
    texts = [one.text for one in of_keys(RINGS)]
    assert any(text.startswith("Not yet: Why rule_rub.") for text in texts)
    assert all("[" in text for text in texts)


def test_reasons_of_cards_are_withheld_from_tests() -> None:
    """What cards say elsewhere may not stand beside a question."""
    assert {one.text for one in of_content(COURSE)} == {"Because it helps."}


def test_the_course_says_lessons_and_practice_on_purpose() -> None:
    """Lessons, practice cases and cards are public, tested cases are not."""
    said = said_on_purpose(COURSE)
    assert words("The hamstring lesson says") in said
    assert words("Secret ending 1 of practised") in said
    assert words("Secret ending 1 of beta") not in said
    assert words("The cold") in said
    assert words("Secret") not in frame_words(COURSE)


def test_what_an_author_says_of_a_tested_question_is_withheld() -> None:
    """Reasons of every kind, the example and the levels; what it asks may stand on papers alone."""
    questions = pool_questions(COURSE)
    texts = {one.text for one in of_written(questions)}
    assert {f"Secret ground of the {kind} kind." for kind in QUESTION_KINDS if kind != "text"} <= texts
    assert "It still bleeds." in texts
    assert {one.text for one in stems_of(questions)} == {one.stem for one in questions}
    assert {"Lay the pad", "limit the injury", "acute", "Wait"} <= set(papers_texts(questions))


def test_a_practice_question_is_said_on_purpose() -> None:
    """What a lesson places may be said; a question of a test may not, even where nothing draws it yet."""
    ours = {name: one.model_copy(update={"use": "practice"}) for name, one in COURSE.questions.items()}
    assert words("Secret ground of the one kind") not in said_on_purpose(COURSE)
    assert words("Secret ground of the one kind") in said_on_purpose(replace(COURSE, questions=ours))
