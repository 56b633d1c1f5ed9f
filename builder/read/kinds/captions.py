"""Lines of captions and chapters that browsers would drop or misread."""

from __future__ import annotations

from functools import partial

from builder.model.kind import Kind, kind

_of_captions = partial(
    kind, where="media/pad.vtt", good="WEBVTT\n\n00:01.000 --> 00:02.000\nA pad, cut to size.\n"
)

OF_CAPTIONS: tuple[Kind, ...] = (
    _of_captions(
        "vtt_header",
        "Browsers know captions and chapters by the word WEBVTT at the very beginning, and an empty line.",
        bad="00:01.000 --> 00:02.000\nA pad, cut to size.\n",
    ),
    _of_captions(
        "vtt_timing",
        "A caption whose times cannot be read is left out by browsers, without a word.",
        bad="WEBVTT\n\n00:00:01,000 --> 00:00:02,000\nA pad, cut to size.\n",
    ),
    _of_captions(
        "vtt_block",
        "Empty lines part captions from each other. One too many or too few loses words, or shows them "
        "at the wrong time.",
        bad="WEBVTT\n\n00:01.000 --> 00:02.000\nA pad, cut to size.\n\nIt goes on the bruise.\n",
    ),
    _of_captions(
        "vtt_markup",
        "A less-than sign begins a mark. Where it does not, browsers leave out the words behind it.",
        bad="WEBVTT\n\n00:01.000 --> 00:02.000\nColour is back in < 3 seconds.\n",
    ),
)
