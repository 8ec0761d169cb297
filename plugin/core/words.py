"""What the computing says to people, in the user's language where the plugin has set one; the core knows no Qt."""

from __future__ import annotations

from collections.abc import Callable


def _english(text: str) -> str:
    return text


_translated: Callable[[str], str] = _english


def tr(text: str) -> str:
    """The text in the user's language, ``{name}`` and ``{number:.1f}`` in it still to be filled in."""
    return _translated(text)


def speak(translated: Callable[[str], str] | None) -> None:
    """Have every text asked for from now on go through ``translated``; None is English again."""
    global _translated
    _translated = _english if translated is None else translated


def marked(text: str) -> str:
    """A text that is kept while the language is not known yet; ``spoken`` gives it in the user's language."""
    return text


def spoken(kept: str) -> str:
    """A ``marked`` text in the user's language."""
    return _translated(kept)
