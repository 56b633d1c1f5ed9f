"""The one rule on which kinds of fault are shown, whole or with a part written otherwise."""

from __future__ import annotations

FILE = "rules/numb_glide.yml"


def sample_rule(
    *,
    name: str = "numb_glide",
    when: str = "{numb_skin: yes}",
    about: str = "cards: [glide]",
    source: str = "common_practice",
    fires: str = "{numb_skin: yes}",
    does_not: str = "{numb_skin: no}",
) -> str:
    """The lines of its file; `fires` and `does_not` are what its two examples record."""
    return f"""
format: 1
id: {name}
title: No strokes on skin that feels less
when: {when}
options:
  - {about}
    answer: barred
why: The client cannot tell when it is too hard.
source: [{source}]
strength: expert
examples:
  - {{fires: yes, given: {fires}}}
  - {{fires: no, given: {does_not}}}
"""


GOOD_RULE = sample_rule()
