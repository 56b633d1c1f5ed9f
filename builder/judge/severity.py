"""How bad the injury is: by a published table in its window, else as declared, else the worse."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from builder.judge.space import RECORDED, Space, Value, holds
from builder.judge.truth import FALSE, OPEN, TRUE, compiled, open_facts
from builder.model.condition import Among, Recorded, Within, atoms
from builder.model.judgement import Reason, SeverityJudgement
from builder.model.tables import SEVERITIES, Band, Severity, SeverityBook, SeverityTable


class SeverityJudge:
    """The severity tables of one rule set, ready to grade."""

    def __init__(self, book: SeverityBook, space: Space) -> None:
        """Compile where each table applies."""
        self.book, self.space = book, space
        self.applies = {name: compiled(table.applies, space) for name, table in book.tables.items()}
        self.raised = {
            name: [(band, compiled(band.when, space)) for band in table.raised]
            for name, table in book.tables.items()
        }
        tables = book.tables.values()
        self.reads = frozenset(one for table in tables for one in ("hours", *_read_by(table)))
        read = [name for one in self.reads for name in (one, RECORDED + one)]
        self.places = [space.index[name] for name in read if name in space.index]

    def same(self, state: Sequence[int], other: Sequence[int]) -> bool:
        """Whether two states of one visit have the same grade, since nothing that grades it differs."""
        return all(state[at] == other[at] for at in self.places)

    def judge(
        self, state: list[int], declared: Severity | None, earlier: Severity | None
    ) -> SeverityJudgement:
        """The grades an injury may have; `earlier` is the grade a table gave since the same injury."""
        may_apply: list[SeverityJudgement] = []
        for name, table in self.book.tables.items():
            applies = self.applies[name](state)
            if applies is not FALSE:
                may_apply.append(self._by_table(name, table, state, declared, earlier))
            if applies is TRUE:
                return may_apply[0] if len(may_apply) == 1 else _any_of(may_apply)
        return (
            _any_of([self._as_declared(declared), *may_apply]) if may_apply else self._as_declared(declared)
        )

    def waits_for(self, state: list[int]) -> list[str]:
        """What a grade waits for: the measure of a table that may apply, or where it applies."""
        waiting: list[str] = []
        for name, table in self.book.tables.items():
            if self.applies[name](state) is not FALSE:
                waiting += open_facts(table.applies, self.space, state)
                maybe = [band for band, test in self.raised[name] if test(state) is OPEN]
                waiting += [one for band in maybe for one in open_facts(band.when, self.space, state)]
                if table.least and self._out_of_time(table, state):
                    continue
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
        if table.least:
            return self._at_least(name, table, state, _worst(declared, earlier))
        graded = self._in_window(table, state) or self._recalled(table, state) or earlier
        if graded is not None:
            label = self.space.variables[table.measure].fact.label
            words = self.book.words[graded]
            text = self._of_window("graded", table, of=label, grade=words)
            return SeverityJudgement((graded,), name, True, (Reason(text, (table.measure,), table.source),))
        return self._not_graded(name, table, declared)

    def _at_least(
        self, name: str, table: SeverityTable, state: list[int], known: Severity | None
    ) -> SeverityJudgement:
        """The worst of what is known, what the measure shows in its window, and what raises it on any day."""
        truths = [(band, test(state)) for band, test in self.raised[name]]
        sure = [band for band, truth in truths if truth is TRUE]
        maybe = [band.grade for band, truth in truths if truth is OPEN]
        worst = _worst(known, *(band.grade for band in sure))
        reasons = tuple(self._raised_reason(table, band, state) for band in sure)
        graded = self._in_window(table, state)
        if graded is not None:
            worst = _worst(worst, graded) or graded
            judged = SeverityJudgement((worst,), name, True, (self._window_reason(table, graded),))
        elif self._out_of_time(table, state):
            possible = (worst,) if known and worst else _from(worst)
            judged = (
                SeverityJudgement(possible, name, known is not None, ()) if sure else self._as_declared(known)
            )
        else:
            judged = self._not_graded(name, table, worst)
        return _or_worse(replace(judged, reasons=(*judged.reasons, *reasons)), maybe)

    def _window_reason(self, table: SeverityTable, graded: Severity) -> Reason:
        label = self.space.variables[table.measure].fact.label
        text = self._of_window("graded_least", table, of=label, grade=self.book.words[graded])
        return Reason(text, (table.measure,), table.source)

    def _raised_reason(self, table: SeverityTable, band: Band, state: list[int]) -> Reason:
        leaves = [one for one in atoms(band.when) if not isinstance(one, Recorded)]
        held = [one.name for one in leaves if not state[self.space.index[one.name]] & ~self.space.mask(one)]
        names = tuple(dict.fromkeys(held))
        labels = self.space.say("and").join(self.space.variables[name].fact.in_sentence for name in names)
        text = self.space.say("raised", labels=labels, grade=self.book.words[band.grade])
        return Reason(text, names, table.source)

    def _of_window(self, key: str, table: SeverityTable, **blanks: str) -> str:
        return self.space.say(key, begins=table.not_before, ends=table.not_after, **blanks)

    def _not_graded(self, name: str, table: SeverityTable, declared: Severity | None) -> SeverityJudgement:
        reason = Reason(self._of_window("not_graded", table), (table.measure, "hours"), table.source)
        return SeverityJudgement(_from(declared), name, False, (reason,))

    def _as_declared(self, declared: Severity | None) -> SeverityJudgement:
        if declared is None:
            return SeverityJudgement(SEVERITIES, None, False, (Reason(self.space.say("none_declared")),))
        return SeverityJudgement((declared,), None, False, (Reason(self.space.say("as_declared")),))

    def _in_window(self, table: SeverityTable, state: list[int]) -> Severity | None:
        return self._grade(table, self._single(state, table.measure)) if self._in_time(table, state) else None

    def _in_time(self, table: SeverityTable, state: list[int]) -> bool:
        hours = self._single(state, "hours")
        return isinstance(hours, Decimal) and table.not_before <= hours <= table.not_after

    def _out_of_time(self, table: SeverityTable, state: list[int]) -> bool:
        return self._single(state, "hours") is not None and not self._in_time(table, state)

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
            when = band.when
            if isinstance(when, Among | Within) and when.name == table.measure and holds(when, value, fact):
                return band.grade
        return None


def _worst(*grades: Severity | None) -> Severity | None:
    return max((grade for grade in grades if grade), key=SEVERITIES.index, default=None)


def _from(grade: Severity | None) -> tuple[Severity, ...]:
    return SEVERITIES[SEVERITIES.index(grade or "mild") :]


def _or_worse(judged: SeverityJudgement, maybe: list[Severity]) -> SeverityJudgement:
    """The same judgement, open to every grade that is worse than its mildest."""
    least = SEVERITIES.index(judged.possible[0])
    possible = {*judged.possible, *(one for one in maybe if SEVERITIES.index(one) > least)}
    ordered = tuple(grade for grade in SEVERITIES if grade in possible)
    return replace(judged, possible=ordered, gradable=judged.gradable and len(ordered) == 1)


def _read_by(table: SeverityTable) -> tuple[str, ...]:
    recalled = (table.recalled, "reinjured") if table.recalled else ()
    conditions = [table.applies, *(band.when for band in table.raised)]
    return (table.measure, *recalled, *(atom.name for node in conditions for atom in atoms(node)))


def _any_of(may_be: list[SeverityJudgement]) -> SeverityJudgement:
    possible = {grade for one in may_be for grade in one.possible}
    ordered = tuple(grade for grade in SEVERITIES if grade in possible)
    return SeverityJudgement(ordered, None, False, tuple(reason for one in may_be for reason in one.reasons))
