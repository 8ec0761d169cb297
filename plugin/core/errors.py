"""Errors that say what was asked, what is allowed and what to do about it."""

from __future__ import annotations

from .words import tr


class SwimPlanError(Exception):
    """A plan that cannot be computed as asked.

    ``asked``, ``allowed`` and ``remedy`` are sentences or parts of one; the message joins them.
    """

    def __init__(self, *, asked: str, allowed: str = "", remedy: str = "") -> None:
        self.asked = asked
        self.allowed = allowed
        self.remedy = remedy
        super().__init__(" ".join(_sentence(part) for part in (asked, allowed, remedy) if part))


class BadInputError(SwimPlanError):
    """A value of the user's that was refused, with the layer, row and field it stands in.

    ``row`` is the feature id or the line number as the user sees it; None speaks of the whole layer.
    """

    def __init__(
        self, *, layer: str, allowed: str, remedy: str, row: object = None, field: str = "", value: object = None
    ) -> None:
        self.layer = layer
        self.row = row
        self.field = field
        self.value = value
        super().__init__(asked=self._place(), allowed=allowed, remedy=remedy)

    def _place(self) -> str:
        place = tr("Layer '{layer}'").format(layer=self.layer)
        if self.row is not None:
            place += tr(", row {row}").format(row=self.row)
        if self.field:
            place += tr(", field '{field}'").format(field=self.field)
        return place if self.value is None else tr("{place}: got {value!r}").format(place=place, value=self.value)


class NaiveTimeError(SwimPlanError):
    """A time without a zone: it could be an hour wrong, so it is refused."""

    def __init__(self, *, value: object, where: str = "") -> None:
        self.value = value
        super().__init__(
            asked=(
                tr("Got the time {value} in {where} without a time zone")
                if where
                else tr("Got the time {value} without a time zone")
            ).format(value=value, where=where),
            allowed=tr("Times carry a zone or an offset"),
            remedy=tr("Write the offset, for example 2027-06-05T09:40+00:00"),
        )


class StoppedError(Exception):
    """The user asked to stop; nothing was written."""


class MissingLibraryError(SwimPlanError, ImportError):
    """A library that the plugin needs is neither installed nor inside the plugin."""


class OutsideModelError(SwimPlanError):
    """A place or date outside what a model (declination, daylight, tide table) covers."""


def _sentence(text: str) -> str:
    text = text.strip()
    return text if text.endswith((".", "!", "?")) else text + "."
