"""How questions should be worded: thresholds and word lists of the wording checks, with their sources."""

from __future__ import annotations

from decimal import Decimal

from pydantic import Field

from builder.model.noun import Format, Id, Noun, Text


class Threshold(Noun):
    """One number, what it decides, and where it comes from."""

    value: Decimal = Field(ge=0, description="The number.", examples=[1.5])
    says: Text = Field(
        description="What it decides, in a sentence.",
        examples=["A word with fewer letters is no telling one."],
    )
    source: tuple[Id, ...] = Field(
        min_length=1, description="Where it comes from.", examples=[["own_default"]]
    )


_ONE = {"value": 1.5, "says": "How much longer a right answer may be.", "source": ["own_default"]}


class Thresholds(Noun):
    """Every number that a wording check leans on."""

    longest_ratio: Threshold = Field(
        description="Words of the right answer against the average wrong one.", examples=[_ONE]
    )
    longest_words: Threshold = Field(
        description="Words it has more than the longest wrong one.", examples=[_ONE]
    )
    unequal_ratio: Threshold = Field(
        description="Words of a wrong option against the shortest option.", examples=[_ONE]
    )
    unequal_words: Threshold = Field(description="The least words of such an option.", examples=[_ONE])
    absolute_wrong: Threshold = Field(
        description="How many wrong options hold an absolute word.", examples=[_ONE]
    )
    repeated_letters: Threshold = Field(description="The least letters of a telling word.", examples=[_ONE])
    lift_words: Threshold = Field(
        description="Words in a row that are taken over from a lesson.", examples=[_ONE]
    )
    key_chance: Threshold = Field(
        description="How unlikely a spread of right answers must be.", examples=[_ONE]
    )
    key_expected: Threshold = Field(
        description="Right answers a position from which chi-square is used.", examples=[_ONE]
    )


class WordLists(Noun):
    """Every list of words or phrases that a wording check leans on; small letters."""

    absolute: tuple[Text, ...] = Field(description="Words that leave no exception.", examples=[["always"]])
    harmless: tuple[Text, ...] = Field(
        description="Phrases in which such a word means something else.", examples=[["all fours"]]
    )
    negative: tuple[Text, ...] = Field(description="Words that turn a question round.", examples=[["except"]])
    not_negative: tuple[Text, ...] = Field(
        description="Phrases in which such a word turns nothing.", examples=[["at least"]]
    )
    together: tuple[Text, ...] = Field(
        description="Words that take several options together.", examples=[["all"]]
    )
    others: tuple[Text, ...] = Field(
        description="Words that point at other options, after one of those.", examples=[["these"]]
    )
    plain: tuple[Text, ...] = Field(description="Words too plain to tell anything.", examples=[["which"]])


class WordingBook(Noun):
    """`content/wording.yml`: what the wording checks hold against, for one language."""

    format: Format
    language: Text = Field(
        description="The language they speak of; courses in others are let be.", examples=["en"]
    )
    source: tuple[Id, ...] = Field(
        min_length=1, description="The published guidelines behind the checks.", examples=[["haladyna2002"]]
    )
    thresholds: Thresholds = Field(
        description="The numbers.", examples=[dict.fromkeys(Thresholds.model_fields, _ONE)]
    )
    words: WordLists = Field(
        description="The words.", examples=[{key: ["always"] for key in WordLists.model_fields}]
    )

    def speaks(self, language: str) -> bool:
        """Whether a course in this language is meant; `en-GB` is `en`."""
        return language.replace("_", "-").partition("-")[0].lower() == self.language
