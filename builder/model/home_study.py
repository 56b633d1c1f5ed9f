"""How long home study takes: the published formulas side by side, each in its own unit."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from math import ceil

from builder.model.hours import study_minutes

NATIONAL_WORDS = 12_000
ANIMAL_WORDS = 10_000
ACCOUNTING_WORDS, ACCOUNTING_QUESTION, ACCOUNTING_HOUR = 180, Fraction(185, 100), 50
QUESTIONS_A_CREDIT, REVIEWS_A_CREDIT = 5, 3


@dataclass(frozen=True)
class StudyLoad:
    """What there is to study: words, minutes of film or sound, questions, and how hard it is (1 to 5)."""

    words: int
    media_minutes: Fraction
    questions: int
    difficulty: Decimal = Decimal(3)


@dataclass(frozen=True)
class StudyLength:
    """One formula: what it gives exactly, in hours of its own, and what a body credits of that."""

    id: str
    exact: Fraction
    credit: Fraction


def study_lengths(load: StudyLoad) -> tuple[StudyLength, ...]:
    """Every formula we know of, in one order; none of them is a measure of how long it really takes."""
    national = Fraction(load.words, NATIONAL_WORDS) + load.media_minutes / 60
    animal = Fraction(load.words, ANIMAL_WORDS) + load.media_minutes / 60
    mergener = Fraction(study_minutes(load.words, load.questions, load.difficulty)) + load.media_minutes
    accounting = accounting_credit(load)
    return (
        StudyLength("words_12000", national, national),
        StudyLength(
            "words_10000",
            animal,
            animal,
        ),
        StudyLength(
            "words_questions",
            accounting,
            _stepped(accounting, Fraction(1, 2)),
        ),
        StudyLength(
            "mergener_quarter",
            mergener / 60,
            _stepped(mergener / 60 + Fraction(1, 8), Fraction(1, 4)),
        ),
        StudyLength(
            "mergener_whole",
            mergener / 60,
            _stepped(mergener / 60, Fraction(1)),
        ),
    )


def accounting_credit(load: StudyLoad) -> Fraction:
    """Credits of 50 minutes by words, media and questions (NASBA's formula for self-study)."""
    minutes = (
        Fraction(load.words, ACCOUNTING_WORDS) + load.media_minutes + ACCOUNTING_QUESTION * load.questions
    )
    return minutes / ACCOUNTING_HOUR


def least_questions(credit: Fraction) -> tuple[int, int]:
    """The least scored questions and review questions for a credit in halves (NASBA): 1 asks 5 and 3."""
    return ceil(QUESTIONS_A_CREDIT * credit), ceil(REVIEWS_A_CREDIT * credit)


def _stepped(value: Fraction, step: Fraction) -> Fraction:
    return value // step * step
