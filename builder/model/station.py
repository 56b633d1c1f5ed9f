"""Practical stations: what is shown, what is marked, and what fails regardless of points."""

from __future__ import annotations

from pydantic import Field

from builder.model.noun import Format, Id, Noun, Share, Text


class Criterion(Noun):
    """One thing an examiner marks, with a sentence for each level from 0 upwards."""

    id: Id = Field(description="A name for it, once in a station.", examples=["dose"])
    title: Text = Field(description="What is marked.", examples=["Checks the dose"])
    levels: tuple[Text, ...] = Field(
        min_length=2,
        max_length=6,
        description="A sentence for each level, from 0 points upwards.",
        examples=[["Never asks about pain.", "Asks once.", "Asks at each step."]],
    )
    weight: int = Field(
        default=1, ge=1, le=10, description="How much it counts beside the others.", examples=[2]
    )
    objectives: tuple[Id, ...] = Field(
        default=(),
        description="What it proves; empty means all that its station proves.",
        examples=[["perform"]],
    )


class AutomaticFail(Noun):
    """Something seen that fails the station whatever the points; answered yes or no."""

    id: Id = Field(description="A name for it, once in a station.", examples=["no_consent"])
    seen: Text = Field(
        description="What the examiner saw.", examples=["Hands on before the client has agreed."]
    )


class Station(Noun):
    """One practical station."""

    format: Format
    id: Id = Field(
        description="The name of the station, the same as the name of its file.",
        examples=["friction_station"],
    )
    title: Text = Field(description="The station as it is headed.", examples=["Friction, then lengthening"])
    case: Id = Field(description="The case whose visit is shown.", examples=["unicycle_thigh"])
    visit: Id = Field(description="The visit that is shown.", examples=["back_on_stage"])
    minutes: int = Field(ge=1, le=120, description="How long it takes.", examples=[15])
    participant: Text = Field(
        description="What the participant reads.",
        examples=["In 15 minutes: agree the work with the client, prepare, and show it."],
    )
    practice_client: Text = Field(
        description="What the practice client reads.",
        examples=["Your word is stop, and you may use it for any reason."],
    )
    examiner: Text = Field(
        description="What the examiner reads.", examples=["Mark what you see, not what you expect."]
    )
    objectives: tuple[Id, ...] = Field(
        default=(),
        description="What it proves; empty means all that its case is for.",
        examples=[["perform"]],
    )
    criteria: tuple[Criterion, ...] = Field(
        min_length=1,
        description="What is marked.",
        examples=[[{"id": "dose", "title": "Checks the dose", "levels": ["No.", "Yes."]}]],
    )
    automatic_fails: tuple[AutomaticFail, ...] = Field(
        min_length=1,
        description="What fails the station whatever the points.",
        examples=[[{"id": "no_consent", "seen": "Hands on before the client has agreed."}]],
    )
    pass_mark: Share = Field(description="The share of the points that passes.", examples=["75 %"])


class StationSheet(Noun):
    """`classes/<name>/stations/*.yml`: what one examiner saw of one participant."""

    format: Format
    station: Id = Field(description="The station it is about.", examples=["friction_station"])
    code: Text = Field(description="The participant's personal code.", examples=["QZVNRBLAD"])
    examiner: Text = Field(description="Who marked.", examples=["Tamsin Oakfell"])
    marked: dict[Id, int] = Field(
        description="The points of each criterion.", examples=[{"agree": 3, "dose": 2}]
    )
    seen: tuple[Id, ...] = Field(
        default=(), description="Automatic fails that were seen.", examples=[["no_consent"]]
    )
    note: Text | None = Field(
        default=None, description="Anything worth keeping.", examples=["Pressure first checked in minute 1."]
    )
