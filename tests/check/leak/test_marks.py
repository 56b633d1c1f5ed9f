"""What marks a right answer without saying so."""

import pytest

from builder.check.leak.marks import marked
from builder.model.key import KeyAnswer

ANSWER = KeyAnswer(
    question="q1aaaa",
    kind="one",
    right=("o2bbbb",),
    options=("o1aaaa", "o2bbbb", "o3cccc"),
    policy="exact",
    must_pass=False,
    objective="choose",
    topic="option",
    case="alpha",
    visit="v1",
    reasons={},
)


def page(*, right: str = "", label: str = "", after: str = "", text: str = "") -> str:
    """A question whose right option differs by what is given, put where its name says."""
    parts = []
    for option in ANSWER.options:
        here = option in ANSWER.right
        control = f'<input type="radio" value="{option}"{right if here else ""}>'
        spoken = f"<b>The cold{text if here else ''}</b>{after if here else ''}"
        parts.append(f'<label class="option{label if here else ""}">{control}{spoken}</label>')
    return f'<section id="q1aaaa" class="question">{"".join(parts)}</section>'


@pytest.mark.parametrize(
    "leaky",
    [
        page(right=" data-right"),
        page(right=' data-answer="ok"'),
        page(label=" is-right"),
        page(label=" barred"),
        page(after='<i class="correct"></i>'),
        '[{"id":"o1aaaa","right":false},{"id":"o2bbbb","right":true},{"id":"o3cccc","right":false}]',
        '[{"right":0,"id":"o1aaaa"},{"right":1,"id":"o2bbbb"},{"right":0,"id":"o3cccc"}]',
        '{"o1aaaa":"not_yet","o2bbbb":"ok","o3cccc":"not_yet"}',
        '{"o1aaaa":{"points":0},"o2bbbb":{"points":1},"o3cccc":{"points":0}}',
        "var s={o1aaaa:{score:0},o2bbbb:{score:1},o3cccc:{score:0}}",
        page() + '<script>{"q1aaaa":"o2bbbb"}</script>',
        page() + '<script>{"right":["o2bbbb"]}</script>',
        page().replace("o2bbbb", "", 1),
        "data-best='o2bbbb'",
    ],
)
def test_a_mark_is_seen(leaky: str) -> None:
    """In attributes, classes, beside, in data by option or by question, by naming more or less often."""
    assert {answer.question for answer, _ in marked(leaky, [ANSWER])} == {"q1aaaa"}


@pytest.mark.parametrize(
    "clean",
    [
        page(),
        page(text=" on the right thigh, the best and only correct one: yes"),
        page(right=' aria-label="right thigh"'),
        page(right=' style="margin-right: 2px"'),
        page(right=" checked"),
        page().replace('class="option"', 'class="option right"'),
        '[{"id":"o1aaaa","right":null},{"id":"o2bbbb","right":null},{"id":"o3cccc","right":null}]',
        '{"o1aaaa":"The rub","o2bbbb":"The cold","o3cccc":"The wrap"}',
        "nothing of this question",
    ],
)
def test_what_is_even_is_no_mark(clean: str) -> None:
    """Visible words, and whatever stands beside every option, tell nothing."""
    assert list(marked(clean, [ANSWER])) == []


def test_naming_one_option_more_is_a_mark_only_if_it_fits_everywhere() -> None:
    """A page that names the first option of each question once more does not give the key away."""
    other = ANSWER.model_copy(
        update={"question": "q2bbbb", "right": ("o4dddd",), "options": ("o4dddd", "o5eeee")}
    )
    first = 'label for="o1aaaa" for="o4dddd"'
    everywhere = "o1aaaa o2bbbb o3cccc o4dddd o5eeee"
    assert list(marked(f"{everywhere} {first}", [ANSWER, other])) == []
    right = "o2bbbb o4dddd"
    assert len(list(marked(f"{everywhere} {right}", [ANSWER, other]))) == 2


@pytest.mark.parametrize("kind", ["order", "number", "text"])
def test_where_no_option_is_wrong_none_is_marked_out(kind: str) -> None:
    """All steps of an order are right, and what is written has no options: nothing is found by mistake."""
    options = ANSWER.options if kind == "order" else ()
    answer = ANSWER.model_copy(update={"kind": kind, "options": options, "right": options})
    assert list(marked(page(right=" data-right"), [answer])) == []
