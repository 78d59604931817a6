"""What went wrong, and what to do: a line each.  Common practice where no source is named."""

from __future__ import annotations

from sheetfuncs.workbook.model.systems import Units


def trouble(units: Units) -> tuple[str, ...]:
    """From the pail to the opened jar."""
    u = units.pick
    crystals, mold, moldy = u(("crystallize", "Mold", "moldy"), ("crystallise", "Mould", "mouldy"))
    return (
        "Sap is cloudy or ropy: spoiled in the pail, not in the tree. Throw it out, wash with hot water, hang again if frost is ahead.",
        "Sap smells sour: it stood too warm. Do not boil it in with good sap.",
        "Foam climbs: turn the heat down, touch the foam with a drop of fat on a stick. Butter and cream are allergens: mark the batch.",
        "It scorches: off the fire at once, into another pot, do not scrape. Less than a finger of depth asks for a smaller pan.",
        "The pan must be left: take it off the fire. Never let it coast overnight on embers.",
        "Too thin (under 66): boil it again to the goal, then filter again: new sugar sand falls out. Until then it keeps only cold.",
        "Too thick (over 68.9): stir in hot water, off the fire, slowly; Batches says how much. Warm it through before you fill.",
        f"Crystals in the jar: warm the jar in hot water until they melt; thick syrup will {crystals} again, so thin it a little.",
        f"{mold} on top: throw it out, do not skim and boil. Heat does not undo what {moldy} syrup holds.",
        "It bubbles or smells of yeast: fermented; throw it out.",
        "Buddy taste: it does not boil away. Pull the taps.",
        "The filter runs slowly: it is cold, dry or full. Wet it hot, keep the syrup hot, change it; a cone takes a few gallons at most.",
        "A lid gives when pressed next morning: it did not seal. Into the refrigerator, eat it first.",
        "Thermometer and hydrometer disagree: read both again, hot cup and boiling water on the same day. The cup wins; "
        "Yard learns the thermometer's offset from it. Late sap boils hotter for its strength: a tenth of its sugar turned makes syrup over a degree Brix thin.",
    )
