"""An answer as the web framework sends it: bytes as they are, a file in the pieces that a player asks for."""

from __future__ import annotations

from collections.abc import Mapping

from starlette.responses import FileResponse, Response

from builder.doors.serve.answer import Answer


def respond(answer: Answer, headers: Mapping[str, str]) -> Response:
    """The response to send, with these headers beside the answer's own."""
    every = {**headers, **answer.headers}
    if answer.file is None:
        return Response(answer.body, answer.status, every, answer.kind)
    return FileResponse(answer.file, answer.status, every, answer.kind)
