"""Every policy of the course on one sheet to hand out, and which approving body asks for it."""

from __future__ import annotations

from builder.model.owed import policies_at, title_of
from builder.model.site import SitePage
from builder.render.instructor_address import POLICIES
from builder.render.maker import Maker, all_reviewed


def policies_page(made: Maker) -> SitePage:
    """The sheet; who asks for what is told on screen alone."""
    file = made.course.file
    boards = [made.course.content.boards[name] for name in file.boards if name in made.course.content.boards]
    asked = {
        title_of(one): made.say(
            "i_policies_asked", names=", ".join(board.name for board in boards if one in board.policies)
        )
        for one in file.policies
        if any(one in board.policies for board in boards)
    }
    missing = dict.fromkeys(one for board in boards for one in board.policies if one not in file.policies)
    return made.page(
        POLICIES,
        made.say("i_policies"),
        "instructor_policies",
        kind="policies",
        reviewed=all_reviewed(made.course),
        texts=policies_at(file, "handout"),
        asked=asked,
        missing=", ".join(map(title_of, missing)),
    )
