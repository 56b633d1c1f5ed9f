"""The SAT solver: the only place that knows the library behind it."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from types import TracebackType
from typing import Self

from pysat.solvers import Glucose4


class Solver:
    """Clauses over numbered variables; a negative number is a negated variable."""

    def __init__(self) -> None:
        """Start without a clause."""
        self._solver = Glucose4()
        self._named = 0

    def fresh(self) -> int:
        """A variable that nothing names yet."""
        self._named += 1
        return self._named

    def add(self, clauses: Iterable[list[int]]) -> None:
        """Add clauses; each is a list of literals of which one must hold."""
        for clause in clauses:
            self._solver.add_clause(clause)

    def counted(self, literals: Sequence[int], most: int) -> list[int]:
        """Variables for 0 to `most` - 1: the one at `k` is true where more than `k` of the literals are.

        A sequential counter; to assume one of them false is to allow that many literals and no more.
        """
        before = [self.fresh() for _ in range(most)]
        self.add([-one] for one in before)
        for literal in literals:
            here = [self.fresh() for _ in range(most)]
            self.add([[-literal, here[0]]])
            self.add([-old, new] for old, new in zip(before, here, strict=True))
            self.add([-literal, -old, new] for old, new in zip(before, here[1:], strict=False))
            before = here
        return before

    def can_be(self, assumed: list[int]) -> bool:
        """Whether there is a solution under these assumptions."""
        return bool(self._solver.solve(assumptions=assumed))

    def model(self, assumed: list[int]) -> frozenset[int] | None:
        """The variables true in some solution under these assumptions, or None where there is none."""
        if not self.can_be(assumed):
            return None
        return frozenset(literal for literal in self._solver.get_model() or () if literal > 0)

    def __enter__(self) -> Self:
        """Use as a context, so that the solver's memory is given back."""
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        """Give the solver's memory back."""
        self._solver.delete()
