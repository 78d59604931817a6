"""The cautions: in one place, for Weekend, the cards and the Guide."""

from __future__ import annotations

from sheetfuncs.workbook.model.systems import Units


def short(units: Units) -> tuple[str, ...]:
    """What can hurt, a line each."""
    galvanized, moldy = units.pick(("galvanized", "Moldy"), ("galvanised", "Mouldy"))
    return (
        "Boiling sugar burns deep. Keep children and pets away. Never leave the pan: near the end it boils over in seconds.",
        "Water into hot syrup spatters: take it off the fire, use hot water, pour slowly. A hot filter or ladle burns too.",
        "Boil outdoors or under a hood that draws. Never run a fuel burner indoors or in a garage: carbon monoxide kills.",
        "Watch fire, sparks and hot ash; keep water and an extinguisher near. Warm the glass before hot syrup goes in.",
        f"Food-grade or stainless ware only: old solder, bronze and {galvanized} ware can hold lead.",
        "Jars of part-boiled sap must stay cold however well they sealed: never on a shelf. Refrigerate syrup once opened.",
        f"Milk, butter and cream against foam are allergens: say so on the label. {moldy} or fermented syrup is thrown out, "
        "not scraped. Thin syrup spoils.",
        "Be sure the tree is a maple. These numbers are guidance: local food, fire and burning rules and licensed trades "
        "come first, and selling has its own rules.",
    )
