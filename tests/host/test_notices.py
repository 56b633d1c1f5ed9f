"""Notices: each said once, shown until it is over."""

from builder.host.notices import Notices


def test_a_notice_is_heard_once_and_shown_until_it_is_over() -> None:
    """The same again is silent; a new one about the same thing takes its place."""
    heard: list[str] = []
    notices = Notices(lambda word, **blanks: f"{word} {blanks.get('n', '')}".strip(), heard.append)
    for number in (1, 1, 2):
        notices.add("disk", "full", n=number)
    notices.add("roster", "odd")
    assert heard == ["full 1", "full 2", "odd"]
    assert notices.lines() == ["full 2", "odd"]
    notices.drop("disk")
    notices.drop("nothing")
    assert notices.lines() == ["odd"]
    notices.add("disk", "full", n=2)
    assert heard[-1] == "full 2"
