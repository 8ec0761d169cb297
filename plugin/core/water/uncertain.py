"""The water on a bad day: every source stronger and earlier or later by its own uncertainty."""

from __future__ import annotations

from dataclasses import replace

from .corrected import CorrectedStream
from .field import Station, StreamField
from .model_stream import ModelStream


def worse_water(field: StreamField, *, later: float) -> StreamField:
    """The field with rates raised by each source's rate uncertainty and its clock moved by its phase uncertainty.

    ``later`` is +1 for a stream that turns late, -1 for one that turns early, 0 to raise the rates alone. What is not
    known stays so; the tide that decides which way a ruled area turns keeps its clock. Common practice, no source.
    """
    return field.with_sources(
        tuple(_worse_station(station, later) for station in field.stations),
        tuple(_worse_model(model, later) for model in field.models),
    )


def _worse_station(station: Station, later: float) -> Station:
    stream = CorrectedStream(
        stream=station.stream,
        rate_factor=1.0 + station.rate_uncertainty,
        shift_s=later * station.phase_uncertainty_s,
    )
    return replace(station, stream=stream)


def _worse_model(model: ModelStream, later: float) -> ModelStream:
    return replace(
        model,
        rate_factor=model.rate_factor * (1.0 + model.rate_uncertainty),
        shift_s=model.shift_s + later * model.phase_uncertainty_s,
    )
