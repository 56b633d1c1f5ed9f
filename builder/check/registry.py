"""Every check, registered once; its name is its file name."""

from __future__ import annotations

from types import ModuleType

from builder.check.checks import (
    absolute_words,
    agenda_gap,
    agenda_times,
    agenda_without_objective,
    all_or_none,
    boards_disagree,
    captions_missing,
    case_without_page,
    certificate_field_empty,
    chapters_missing,
    chosen_not_right,
    contested_position,
    cue_beyond_film,
    cue_empty,
    cue_overlap,
    cue_reversed,
    declared_phase,
    declared_severity,
    film_format,
    film_missing,
    film_unreadable,
    grammar_cue,
    grid_filled,
    hands_on_short,
    key_position,
    lesson_lift,
    longest_option,
    meal_missing,
    not_recorded,
    not_reviewed,
    objective_hole,
    objective_unserved,
    objective_verb,
    objective_whole,
    options_alike,
    overlapping_numbers,
    picture_alt,
    picture_missing,
    policy_missing,
    pool_case_shown,
    pool_question_use,
    questions_not_shown,
    real_person,
    recorded_twice,
    references_old,
    referral_missing,
    repeated_word,
    reviews_hold,
    rule_coverage,
    rule_example,
    rule_idle,
    rule_loosens,
    rule_set_hole,
    still_to_write,
    test_question_shown,
    unequal_options,
    unmarked_negative,
    visit_times,
    wrong_is_right,
)
from builder.check.evidence import Evidence, diagnostic
from builder.diagnostic import Diagnostic
from builder.model.kind import Kind

CHECKS: tuple[ModuleType, ...] = (
    absolute_words,
    agenda_gap,
    agenda_times,
    agenda_without_objective,
    all_or_none,
    boards_disagree,
    captions_missing,
    case_without_page,
    certificate_field_empty,
    chapters_missing,
    chosen_not_right,
    contested_position,
    cue_beyond_film,
    cue_empty,
    cue_overlap,
    cue_reversed,
    declared_phase,
    declared_severity,
    film_format,
    film_missing,
    film_unreadable,
    grammar_cue,
    grid_filled,
    hands_on_short,
    key_position,
    lesson_lift,
    longest_option,
    meal_missing,
    not_recorded,
    not_reviewed,
    objective_hole,
    objective_unserved,
    objective_verb,
    objective_whole,
    options_alike,
    overlapping_numbers,
    picture_alt,
    picture_missing,
    policy_missing,
    pool_case_shown,
    pool_question_use,
    questions_not_shown,
    real_person,
    recorded_twice,
    references_old,
    referral_missing,
    repeated_word,
    reviews_hold,
    rule_coverage,
    rule_example,
    rule_idle,
    rule_loosens,
    rule_set_hole,
    still_to_write,
    test_question_shown,
    unequal_options,
    unmarked_negative,
    visit_times,
    wrong_is_right,
)


def run_checks(evidence: Evidence) -> list[Diagnostic]:
    """Everything the checks find in a course."""
    return [
        diagnostic(evidence, name_of(check), check.LEVEL, found)
        for check in CHECKS
        for found in check.check(evidence)
    ]


def name_of(check: ModuleType) -> str:
    """A check's name, as printed."""
    return check.__name__.rpartition(".")[2]


def kind_of(check: ModuleType) -> Kind:
    """What a check finds, as the manual tells it."""
    says = (check.__doc__ or "").partition("\n")[0]
    return Kind(name_of(check), check.LEVEL, check.WHY, check.BAD, check.GOOD, says)
