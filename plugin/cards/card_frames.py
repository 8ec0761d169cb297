"""Fills the frames of a layout with the parts of a card: in order, whole blocks only, going on in the next frame."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field

from .block import Block
from .card_detail import FLAGS, SKETCH, TITLE
from .card_parts import PartBlocks

SKETCH_LEAST_MM, SKETCH_MOST = 52.0, 1.25  # height; and as a share of its width, past which more shows no more
ROUNDING_MM = 0.05


@dataclass(frozen=True, kw_only=True)
class Frame:
    """A place of a layout for so many parts: millimetres on its page, pages counted from 0."""

    name: str
    page: int
    x_mm: float
    y_mm: float
    width_mm: float
    height_mm: float
    parts: tuple[str, ...]


@dataclass(kw_only=True)
class Filled:
    """What a frame holds from the top down; ``sketch_at`` is the number of the block that the sketch is."""

    frame: Frame
    blocks: list[Block] = field(default_factory=list)
    sketch_at: int | None = None

    @property
    def left_mm(self) -> float:
        """Height that is still free."""
        return self.frame.height_mm - sum(block.height_mm for block in self.blocks)


@dataclass(frozen=True, kw_only=True)
class Shortfall:
    """What found no place any more: a part, and the frame that was the last to take it (none: no frame names it)."""

    part: str
    frame: str | None


def fill(
    frames: Sequence[Frame],
    parts: Mapping[str, PartBlocks],
    *,
    with_sketch: bool,
    running_title: Callable[[int], Block],
) -> list[Filled] | Shortfall:
    """Every part in the frames that name it, in their order; ``running_title(page)`` heads what goes on."""
    # What no frame names was taken out of the layout by its maker.
    named = {name for frame in frames for name in frame.parts}
    waiting = {name: list(part.blocks) for name, part in parts.items() if name in named}
    sketch_waits = with_sketch and any(SKETCH in frame.parts for frame in frames)
    done: list[Filled] = []
    for frame in frames:
        filled = Filled(frame=frame)
        for name in frame.parts:
            if name == SKETCH:
                sketch_waits = sketch_waits and not _place_sketch(filled)
                continue
            if name == TITLE and not waiting[TITLE]:
                if _anything_waits(frame, waiting, sketch_waits):
                    filled.blocks.append(running_title(frame.page))
                continue
            if not _place(filled, waiting[name], parts[name].head):
                # Flags read alone: they take what room is left below a block that waits for the next frame.
                if FLAGS in frame.parts[frame.parts.index(name) + 1 :]:
                    _place(filled, waiting.get(FLAGS, []), None)
                break
        done.append(filled)
    left = [name for name, blocks in waiting.items() if blocks] + ([SKETCH] if sketch_waits else [])
    if left:
        last = [frame.name for frame in frames if left[0] in frame.parts]
        return Shortfall(part=left[0], frame=last[-1] if last else None)
    for filled in done:
        _stretch_sketch(filled)
    return done


def _anything_waits(frame: Frame, waiting: Mapping[str, list[Block]], sketch_waits: bool) -> bool:
    """True where something besides the title would stand in this frame."""
    return any(waiting.get(name) for name in frame.parts) or (sketch_waits and SKETCH in frame.parts)


def _place(filled: Filled, waiting: list[Block], head: Block | None) -> bool:
    """Move blocks that fit; False where some must wait for another frame.

    Above the first here stands the part's head, or what that block wants said again.
    """
    above = [block for block in (head, waiting[0].again if waiting else None) if block is not None]
    if waiting and waiting[0].instead is not None:
        waiting[0] = waiting[0].instead
    while waiting:
        if waiting[0].height_mm + sum(block.height_mm for block in above) > filled.left_mm + ROUNDING_MM:
            return False
        filled.blocks += [*above, waiting.pop(0)]
        above = []
    return True


def _place_sketch(filled: Filled) -> bool:
    """Keep the least height for the sketch here if it is free."""
    if filled.sketch_at is not None or filled.left_mm < SKETCH_LEAST_MM:
        return False
    filled.sketch_at = len(filled.blocks)
    filled.blocks.append(Block(height_mm=SKETCH_LEAST_MM, draw=lambda paper, x, y: None))
    return True


def _stretch_sketch(filled: Filled) -> None:
    """Give the sketch all that is left, up to a height that shows more."""
    if filled.sketch_at is None:
        return
    most_mm = max(SKETCH_MOST * filled.frame.width_mm, SKETCH_LEAST_MM)
    height_mm = min(SKETCH_LEAST_MM + max(filled.left_mm, 0.0), most_mm)
    filled.blocks[filled.sketch_at] = Block(height_mm=height_mm, draw=lambda paper, x, y: None)
