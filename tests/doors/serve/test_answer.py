"""What is asked, and what is answered."""

import pytest

from builder.doors.serve.answer import Asked, elsewhere


@pytest.mark.parametrize(
    ("cookies", "value"),
    [
        ("key=a", "a"),
        ("other=b; key=a=c", "a=c"),
        ("keys=b;key=a", "a"),
        ("key", ""),
        ("", ""),
        ("xkey=a", ""),
    ],
)
def test_a_cookie_is_found_by_its_whole_name(cookies: str, value: str) -> None:
    """Among others, with any value; nothing where there is none."""
    assert Asked("GET", "/", headers={"cookie": cookies}).cookie("key") == value


def test_the_way_elsewhere_is_named() -> None:
    """As a browser follows it."""
    led = elsewhere("/there")
    assert (led.status, led.headers) == (307, {"Location": "/there"})
