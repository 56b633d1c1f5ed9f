"""A practice case as a page that can be read without script."""

from builder.render.maker import maker
from builder.render.student_case import case_page, held
from tests.render.sample_cases import option_question, practice_case, visit
from tests.render.sample_site import body, one, page, parsed, said
from tests.render.samples import course

CASE = body("cases/landing.md")


def test_visits_stand_in_order() -> None:
    """Each visit has its number, title and board."""
    assert [said(node) for node in CASE.select(".visit > h2")] == ["The next afternoon", "Nine days later"]
    assert [said(node) for node in CASE.select(".visit > .kicker")] == ["visit 1 of 2", "visit 2 of 2"]
    assert len(CASE.select(".visit .board")) == 2


def test_time_since_injury_is_said() -> None:
    """What the scene says of the client is told on each visit, since the phase rests on it."""
    assert [said(node) for node in CASE.select(".when")] == [
        "Acrobat base, 24 · right thigh · 30 hours ago"
    ] * 2


def test_the_subtitle_is_not_said_twice() -> None:
    """A scene that begins as the case does says only what is new."""
    case = practice_case().model_copy(update={"subtitle": "Acrobat base, 24 · right thigh"})
    tree = parsed(case_page(maker(course()), case).body)
    assert {said(node) for node in tree.select(".when")} == {"30 hours ago"}


def test_options_are_native_controls() -> None:
    """One of several are radio buttons of one name, several are boxes, each inside its label."""
    first, _, many = CASE.select("form.step")
    assert {node["type"] for node in first.select("label.option input")} == {"radio"}
    assert {node["type"] for node in many.select("label.option input")} == {"checkbox"}
    assert all(
        len({str(node["name"]) for node in form.select("input")}) == 1 for form in CASE.select("form.step")
    )
    assert all(len(form.select("fieldset > legend")) == 1 for form in CASE.select("form.step"))


def test_nothing_is_chosen_beforehand() -> None:
    """No option is ticked and none tells by its markup which is right."""
    assert CASE.select("input[checked]") == []
    attributes = {tuple(sorted(node.attrs)) for node in CASE.select("form.step input")}
    assert attributes == {("name", "type", "value")}


def test_reasons_wait_behind_a_summary() -> None:
    """Without script the reasons of every question are one step away, and all there."""
    reveals = CASE.select("form.step > details.reveal")
    assert len(reveals) == 3
    assert not any(node.has_attr("open") for node in reveals)
    assert [len(node.select(".yours")) for node in reveals] == [3, 3, 3]


def test_what_is_right_is_told_apart_from_the_others() -> None:
    """It stands first; the others follow in a part that can be folded, open until somebody does."""
    for reveal in CASE.select("details.reveal"):
        others = one(reveal, "details.besides")
        assert others.has_attr("open")
        assert reveal.select(".marks > li .which")[0].find_parent("details", class_="besides") is None
        assert len(others.select(".which")) == 2


def test_a_line_says_what_holds() -> None:
    """For a question that is over: what it was about and what is right, in the words of its options."""
    lines = [said(one(node, ".line b")) for node in CASE.select("details.reveal > summary")]
    assert lines == ["acute", *["Cold pack, then felt pad and wrap"] * 2]
    assert all(node.has_attr("hidden") for node in CASE.select(".line"))


def test_several_right_options_and_steps_in_order_read_as_one_line() -> None:
    """Options stand beside each other; steps follow one another."""
    asked = option_question("q7", kind="many").model_copy(update={"right": ("pack", "glide")})
    assert held(asked) == "Cold pack, then felt pad and wrap; Light gliding strokes"
    steps = asked.model_copy(update={"question": asked.question.model_copy(update={"kind": "order"})})
    assert held(steps) == "Cold pack, then felt pad and wrap → Light gliding strokes"


def test_it_can_be_used_in_three_ways() -> None:
    """Each has an address of its own on the page; they wait for the script that lays them out."""
    links = CASE.select(".modes a")
    assert [node["href"] for node in links] == ["#blank", "#part", "#worked"]
    assert one(CASE, ".modes").has_attr("hidden")


def test_answers_are_kept_under_a_name_of_this_case() -> None:
    """Course and case are in it, so that nothing else on the device is touched."""
    assert one(CASE, ".case")["data-kept"] == f"caseloom/practice/{course().file.id}/landing"


def test_an_answer_is_a_word_with_its_shape() -> None:
    """Every row of reasons has a drawing and a word; the drawing is not read out."""
    rows = CASE.select(".marks > li")
    assert rows
    assert all(one(row, "svg.mark")["aria-hidden"] == "true" and said(one(row, "p.word")) for row in rows)


def test_contested_points_are_marked() -> None:
    """A contested reason says so before it is opened, and gives both sides."""
    grounds = next(node for node in CASE.select("details.rests") if node.select("summary .tag"))
    assert said(one(grounds, "summary")) == "What it rests on contested"
    assert "Others: comfort only." in said(grounds)


def test_the_timeline_waits_for_the_phase() -> None:
    """It stands inside the reasons of the phase, or of the last question where no phase is asked."""
    placed = [
        [bool(form.select("svg.timeline")) for form in visit.select("form.step")]
        for visit in CASE.select(".visit")
    ]
    assert placed == [[True, False], [True]]
    assert all(node.find_parent("details", class_="reveal") for node in CASE.select("svg.timeline"))


def test_the_answers_are_not_searchable() -> None:
    """Questions, reasons and what happened next stay out of the search index."""
    assert all(form.has_attr("data-search-exclude") for form in CASE.select("form.step, .next"))


def test_first_actions_follow_the_session() -> None:
    """What to do at once is told with the reasons of the session question."""
    asked = option_question("q9").model_copy(update={"topic": "session"})
    urgent = visit(
        "v1", "Now", (asked,), first_action_do=("Loosen the wrap",), first_action_avoid=("No ice",)
    )
    tree = parsed(case_page(maker(course()), practice_case().model_copy(update={"visits": (urgent,)})).body)
    assert "At once Loosen the wrap Not now No ice" in said(one(tree, ".told"))


def test_text_is_escaped() -> None:
    """What an author writes is text, never markup."""
    case = practice_case().model_copy(update={"title": "<script>alert(1)</script>"})
    assert "<script>" not in case_page(maker(course()), case).body


def test_the_page_names_its_script() -> None:
    """Only a practice case loads what unfolds it."""
    assert page("cases/landing.md").scripts == ("assets/kinds.js", "assets/practice.js")
