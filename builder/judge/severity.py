"""How bad the injury is: by a published table in its window, else as declared, else the worse."""

from __future__ import annotations

from decimal import Decimal

from builder.judge.space import Space, Value, holds
from builder.judge.truth import Truth, compiled, open_facts
from builder.model.condition import Among, Within
from builder.model.judgement import Reason, SeverityJudgement
from builder.model.tables import SEVERITIES, Severity, SeverityBook, SeverityTable


class SeverityJudge:
    """The severity tables of one rule set, ready to grade."""

    def __init__(self, book: SeverityBook, space: Space) -> None:
        """Compile where each table applies."""
        self.book, self.space = book, space
        self.applies = {name: compiled(table.applies, space) for name, table in book.tables.items()}

    def judge(
        self, state: list[int], declared: Severity | None, earlier: Severity | None
    ) -> SeverityJudgement:
        """The grades an injury may have; `earlier` is the grade a table gave since the same injury."""
        may_apply: list[SeverityJudgement] = []
        for name, table in self.book.tables.items():
            applies = self.applies[name](state)
            if applies is Truth.TRUE:
                return self._by_table(name, table, state, declared, earlier)
            if applies is Truth.OPEN:
                may_apply.append(self._by_table(name, table, state, declared, earlier))
        return _any_of([_as_declared(declared), *may_apply]) if may_apply else _as_declared(declared)

    def waits_for(self, state: list[int]) -> list[str]:
        """What a grade waits for: the measure of a table that may apply, or where it applies."""
        waiting: list[str] = []
        for name, table in self.book.tables.items():
            if self.applies[name](state) is not Truth.FALSE:
                waiting += open_facts(table.applies, self.space, state)
                measure = table.measure if self._in_time(table, state) else table.recalled or table.measure
                waiting += [measure] if self._single(state, measure) is None else []
        return waiting

    def _by_table(
        self,
        name: str,
        table: SeverityTable,
        state: list[int],
        declared: Severity | None,
        earlier: Severity | None,
    ) -> SeverityJudgement:
        graded = self._in_window(table, state) or self._recalled(table, state) or earlier
        if graded is not None:
            label = self.space.variables[table.measure].fact.label
            words = self.book.words[graded]
            text = f"{label}, taken {table.not_before} to {table.not_after} h after the injury: {words}."
            return SeverityJudgement((graded,), name, True, (Reason(text, (table.measure,), table.source),))
        least = declared or "mild"
        worse = SEVERITIES[SEVERITIES.index(least) :]
        text = (
            f"This table cannot grade it: it needs the measure {table.not_before} to {table.not_after} h "
            "after the injury. Treat as the worse."
        )
        return SeverityJudgement(worse, name, False, (Reason(text, (table.measure, "hours"), table.source),))

    def _in_window(self, table: SeverityTable, state: list[int]) -> Severity | None:
        return self._grade(table, self._single(state, table.measure)) if self._in_time(table, state) else None

    def _in_time(self, table: SeverityTable, state: list[int]) -> bool:
        hours = self._single(state, "hours")
        return isinstance(hours, Decimal) and table.not_before <= hours <= table.not_after

    def _recalled(self, table: SeverityTable, state: list[int]) -> Severity | None:
        # What was measured after the first injury says nothing of a second one.
        if table.recalled is None or self._single(state, "reinjured") != "no":
            return None
        return self._grade(table, self._single(state, table.recalled))

    def _single(self, state: list[int], name: str) -> Value | None:
        mask = state[self.space.index[name]]
        values = self.space.variables[name].values_in(mask) if mask.bit_count() == 1 else []
        return values[0] if values else None

    def _grade(self, table: SeverityTable, value: Value | None) -> Severity | None:
        if value is None:
            return None
        fact = self.space.variables[table.measure].fact
        for band in table.bands:
            if isinstance(band.when, Among | Within) and holds(band.when, value, fact):
                return band.grade
        return None


def _as_declared(declared: Severity | None) -> SeverityJudgement:
    if declared is None:
        text = "No severity is declared and no table applies: the worse is taken."
        return SeverityJudgement(SEVERITIES, None, False, (Reason(text),))
    return SeverityJudgement((declared,), None, False, (Reason("As declared; no published table applies."),))


def _any_of(may_be: list[SeverityJudgement]) -> SeverityJudgement:
    possible = {grade for one in may_be for grade in one.possible}
    ordered = tuple(grade for grade in SEVERITIES if grade in possible)
    return SeverityJudgement(ordered, None, False, tuple(reason for one in may_be for reason in one.reasons))
