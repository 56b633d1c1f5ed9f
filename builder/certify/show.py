"""Says on the terminal who was certified and who was refused."""

from __future__ import annotations

from builder.model.outcome import Issued


def lines(issued: Issued) -> list[str]:
    """One line a certificate, one a reason of refusal."""
    people = {row["code"] for row in issued.refused}
    head = f"Class {issued.klass}: {len(issued.certificates)} on the certificate list, {len(people)} refused."
    given = [
        f"  {row['certificate']:<9}  {row['name']}: "
        f"{row['hours']} ({row['hour unit']}), {row['kind']}, {row['status']}"
        for row in issued.certificates
    ]
    refused = [f"  refused    {row['name']}: {row['requirement']}: {row['reason']}" for row in issued.refused]
    return [head, *given, *refused]
