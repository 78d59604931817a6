"""Guide: for someone who has never done this."""

from __future__ import annotations

from sheetfuncs.workbook.model.parts import Rows, Sheet, Text, Units
from sheetfuncs.workbook.sheets.cautions import SHORT

ACROSS = 10


def sheet(units: Units, rows: Rows) -> Sheet:
    """The season in steps, each sheet in a sentence, words explained, cautions, sources."""
    return Sheet(
        "Guide",
        "For the newcomer: read it once before the season, then keep Weekend open.",
        (
            Text("Cautions first", SHORT, across=ACROSS, caution=True),
            Text("The season in steps", _steps(units), across=ACROSS),
            Text("The sheets", SHEETS, across=ACROSS),
            Text("Words", WORDS_EXPLAINED, across=ACROSS),
            Text("If a cell shows an error", ERRORS, across=ACROSS),
            Text("Where the numbers come from", SOURCES, across=ACROSS),
        ),
        freeze=(2, 0),
        widths=(11,) * ACROSS,
        portrait=True,
    )


def _steps(units: Units) -> tuple[str, ...]:
    u = units.pick
    return (
        "1. Before the thaw: be sure which trees are maples and measure their girth. Yard says how many taps each can bear. "
        f"Drill {u('5/16 in wide and 1.5 to 2 in', '8 mm wide and 4 to 5 cm')} deep, a little upward, away from old holes.",
        "2. Fill in Yard: elevation, thermometers, containers, pans, jars. The elevation matters most.",
        "3. Each week: copy the forecast's first day, lows and highs into Forecast. Sap runs after a freezing night and a thaw.",
        "4. Each time you bring sap in: strain it, stir it, read its sugar, and write a row in Collection. Ice on top is "
        "nearly water: throw out up to a third, let the rest melt.",
        f"5. Keep sap as cold as milk ({u('38 °F', '3 °C')} or colder). Give each container a row in Storage, with a lot name on it. "
        "Storage says which must be boiled first.",
        "6. Boil at the weekend, outdoors, a few finger-widths deep. Write a row in Boil. What is left goes into clean jars: each is "
        "a new lot in Storage, part-boiled. Write under Used on what went into the pan.",
        f"7. Part-boiled sap keeps a few days. Bringing it back to {u('180 °F', '82 °C')} or more starts its clock again.",
        "8. To finish: give the lots their batch number in Storage. In Finish, read your thermometer in water that boils hard, that "
        "day. The block says what it must show when it is syrup. Then write time and reading every few minutes: it says how "
        "long still, and when to take it off.",
        "9. Check with the hydrometer in a hot cup, and read the cup's temperature with it. Finish says thin or thick, and how much water to "
        "boil off or stir in.",
        f"10. Filter it hot, bottle it at {u('180 to 190 °F', '82 to 88 °C')} into warm clean glass, close it, and write a row in Bottles.",
        "11. Pull the taps when nights stay warm, buds swell, or sap turns cloudy or smells. Wash everything with hot water, no soap.",
        "12. Season shows what came of it. Its line for this season goes into next year's workbook.",
    )


SHEETS = (
    "Weekend: what to do now, in one page.",
    "Yard: your trees, instruments, containers, pans, jars and fuel. Filled in once.",
    "Forecast: ten days of lows and highs; will it run, and is it time to pull the taps.",
    "Collection: a row each time sap comes in; its sugar and the syrup in it.",
    "Storage: a row for each lot that waits; how long it keeps and what must be boiled first.",
    "Boil: a row for each boil; how fast, how strong, and whether sugar went missing.",
    "Finish: a block for each batch; the temperature to stop at, minutes left, and the check in the cup.",
    "Bottles: a row for each size of jar filled; colour, label, keep-until.",
    "Season: totals, where the sugar went, and earlier years.",
    "Wall card: one page to print and hang by the pan.",
    "Type only in the tinted cells. The others compute; they are locked without a password.",
)

WORDS_EXPLAINED = (
    "°Brix: grams of sugar in 100 grams of liquid. Sap has about 2, syrup 66 to 68.9.",
    "Lot: one container of sap or part-boiled sap, kept apart and named.",
    "Part-boiled: sap boiled down some of the way and kept for a finishing batch.",
    "Batch: the lots that are finished together in one pan.",
    "Hydrometer: a glass float; it stands higher in stronger syrup. Hot syrup is lighter, so the cup's temperature counts.",
    "Refractometer: a small glass you look through; it reads sugar from a drop.",
    "Barometer reduced to sea level: the number a forecast gives; the air at your pan is thinner if you live high up.",
    "Thin: under 66.0 °Brix; it ferments or moulds. Thick: over 68.9 °Brix; it crystallises.",
    "Sugar sand: grit that falls out of hot syrup; filter it out.",
    "Cold volume: what it measures at 68 °F (20 °C). Hot syrup takes 3 to 4 percent more room.",
)

ERRORS = (
    "#NUM!: a number outside what is possible; look at the numbers it is made from. #VALUE!: text where a number belongs. "
    "#N/A: something was left out.",
    "#NAME?, or empty cells where numbers should be: this program does not know the functions. Weekend says so under This "
    "workbook; take the inline edition, or install the add-in for LibreOffice.",
)

SOURCES = (
    "Water and its boiling point: IAPWS-IF97. Air: U.S. Standard Atmosphere, 1976.",
    "Density of sugar solutions: ICUMSA SPS-4 (Bubnik et al., Sugar Technologists Manual, 1995).",
    "Boiling point of syrup: water activity after Starzak and Peacock (1997); it agrees with the trade's 7 °F rule.",
    "Refractometer: OIV-MA-AS2-02 Table I and the international table of 1936. Freezing: CRC Handbook, 102nd edition.",
    "Strength and colour of syrup: U.S. Standards for Grades of Maple Syrup (2015); 21 CFR 168.140; similar in Canada.",
    "Taps, running sap, keeping times, pan rate: common practice. A judgement, and it says so.",
    "The command sheetfuncs functions NAME shows any function's source, limits and an example.",
)
