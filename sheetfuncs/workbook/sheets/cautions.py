"""The cautions: in one place, for Weekend, Wall card, Guide and README."""

from __future__ import annotations

SHORT = (
    "Boiling sugar burns deep. Keep children and pets away. Never leave the pan: near the end it boils over in seconds.",
    "Boil outdoors or under a hood that draws. Never run a fuel burner indoors or in a garage: carbon monoxide kills.",
    "Watch fire, sparks and hot ash; keep water and an extinguisher near. Warm the glass before hot syrup goes in.",
    "Food-grade or stainless ware only: old solder, bronze and galvanised ware can hold lead.",
    "Milk, butter and lard against foam are allergens. Mouldy or fermented syrup is thrown out, not scraped.",
    "Be sure the tree is a maple. These numbers are guidance: local food, fire and burning rules and licensed trades "
    "come first, and selling has its own rules.",
)
