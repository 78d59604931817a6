"""Guide: for someone who has never done this."""

from __future__ import annotations

from sheetfuncs.workbook.model.parts import ASK, MEND, TELL, Sheet, Text
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets import weather
from sheetfuncs.workbook.sheets.cautions import short
from sheetfuncs.workbook.sheets.trouble import trouble

ACROSS = 10


def sheet(units: Units, rows: Rows) -> Sheet:
    """The first hour, the season in steps, trouble, each sheet in a sentence, words, cautions, sources."""
    return Sheet(
        "Guide",
        "For the newcomer: read it once before the season, then keep Weekend open.",
        (
            Text("Cautions first", short(units), across=ACROSS, caution=True),
            Text("The first hour", _first_hour(units), across=ACROSS),
            Text(units.pick("Colors", "Colours"), tuple(COLOURS.values()), across=ACROSS, looks=tuple(COLOURS)),
            Text("The season in steps", _steps(units), across=ACROSS),
            Text("Trouble", trouble(units), across=ACROSS),
            Text("The sheets", SHEETS, across=ACROSS, leads=True),
            Text("Words", _words(units), across=ACROSS),
            Text("If a cell shows an error", ERRORS, across=ACROSS),
            weather.rule(units, ACROSS),
            Text("Where the numbers come from", SOURCES, across=ACROSS),
        ),
        tab="once",
        freeze=(3, 0),
        widths=(10,) * ACROSS,
        portrait=True,
    )


def _first_hour(units: Units) -> tuple[str, ...]:
    u = units.pick
    return (
        "Yard: type the elevation (a map tells), how many taps, the fuel. That is enough; the rest is for later.",
        "Yard: name your thermometer. No refractometer and no hydrometer? Leave them out: sugar is then a guess, and says so, "
        "until the boiling itself tells it. A kitchen scale does as well: weigh a jar empty, full of water and full of sap.",
        "Places and jars are listed already; change what is not yours.",
        f"To buy or borrow: a pail and a spout for each tap, room for {u('1 to 2 gallons', '4 to 8 L')} of sap a tap, a wide pot, "
        "a thermometer, a filter, jars. Print the Wall card.",
    )


def _steps(units: Units) -> tuple[str, ...]:
    u = units.pick
    return (
        "1. Before the thaw: be sure which trees are maples. Yard says how many taps a girth can bear. "
        f"Drill {u('5/16 in wide and 1.5 to 2 in', '8 mm wide and 4 to 5 cm')} deep, a little upward, away from old holes, when days begin to thaw: an "
        "open hole gives less and less after four weeks.",
        "2. Each week paste a forecast into Weather. Sap runs after frost and a thaw, and for a day or two more.",
        "3. Each time you bring sap in: strain it and write a row in Collection: date, volume, where it went. Ice on top is nearly "
        "water: throw out up to a third, let the rest melt.",
        f"4. Keep sap as cold as milk ({u('38 °F', '3 °C')} or colder). Storage says what must be boiled first, and by when.",
        "5. Boil at the weekend, outdoors, a few finger-widths deep, and pour last week's jars in first. Write one row in Boil: date, "
        "hours, how many jars came out. It takes all sap in store unless you name a place or earlier boils. It says what to write on the jars.",
        f"6. Jar part-boiled sap boiling hot, close it, keep it cold: it lasts a week and a day. Bringing it back to {u('180 °F', '82 °C')} or "
        "more, or freezing it, is a line in Storage.",
        "7. To finish: a row in Batches says which boils go in. Read your thermometer in water that boils hard, that day. Then write time and "
        "reading every few minutes in Finish: it says when it is syrup, how long at the earliest, and what to do.",
        "8. Batches says thin or thick, and how much hot water to stir in or to boil off. A hydrometer in a hot cup makes it sure.",
        f"9. Filter it hot through a damp filter, fill at {u('180 to 190 °F', '82 to 88 °C')} into warm clean glass, close, lay the jar on its side "
        "for some minutes, and write a row in Bottles. Next morning press the lid: it must not give.",
        "10. Taste the early against the late: Batches has two side by side, and codes for tasting blind.",
        "11. Pull the taps when a boiled cup tastes of buds, or when warmth is all that is ahead. Wash everything with hot water, no soap. "
        "Leave the holes open: they heal by themselves.",
        "12. Season shows what came of it and where the sugar went. Write words to the next keeper there; `sheetfuncs handover` makes next year's workbook.",
    )


# What each colour means, by the look that shows it.
COLOURS = {
    "like typed": "Tinted: to type in. All other cells compute, and are locked without a password.",
    "like next": "Darker: the next row of a log begins here.",
    "like a guess": "Slanted: a number that rests on a guess.",
    f"like {MEND}": "Bold on red: must be mended; the sentence says how.",
    f"like {ASK}": "Amber: wants a look.",
    f"like {TELL}": "Blue: for your information.",
}
SHEETS = (
    "Weekend: what to do now, in one page.",
    "Yard: your instruments, places, jars, pans, trees and fuel. Filled in once.",
    "Weather: a row a day; will it run, and is it time to pull the taps.",
    "Collection: a row each time sap comes in.",
    "Boil: a row for each boil: what came of it, what to write on the jars, by when to go on.",
    "Storage: what waits, most urgent first; and a line for what happened to a lot besides.",
    "Batches: what is finished together; planned, then judged.",
    "Finish: the race: time, reading, and what to do.",
    "Bottles: a row for each size of jar filled; label, keep-until, eat first.",
    "Season: totals, where the sugar went, what was learned, earlier years.",
    "Charts: the same to look at.",
    "Wall card: to print and hang by the pan. Functions: every function with a call to try.",
    "Batch card: for one batch, what each half degree means.",
    "Pencil log: a blank sheet to write on, typed in later.",
    "Labels: one for each jar.",
    "Underlined words lead to a sheet: from an answer to where it is typed, and back to Weekend.",
)


def _words(units: Units) -> tuple[str, ...]:
    crystallizes, molds = units.pick(("crystallizes", "molds"), ("crystallises", "moulds"))
    return (
        "°Brix: grams of sugar in 100 grams of liquid. Sap has about 2, syrup 66 to 68.9.",
        "Lot: sap of one collection, or what one boil gave. The workbook names them: S3 is the third row of Collection, B2 the "
        "second row of Boil, R2 what that boil left over, K1 what batch 1 left over.",
        "Part-boiled: sap boiled down some of the way and kept for finishing.",
        "Batch: the boils that are finished together in one pan.",
        "Hydrometer: a glass float; it stands higher in stronger syrup. Hot syrup is lighter, so the cup's temperature counts.",
        "Refractometer: a small glass you look through; it reads sugar from a drop.",
        "Barometer: the number a forecast or an airport gives, as if at sea level; the air at your pan is thinner if you live high up.",
        f"Thin: under 66.0 °Brix; it ferments or {molds}. Thick: over 68.9 °Brix; it {crystallizes}.",
        "Sugar sand: grit that falls out of hot syrup; filter it out.",
        "Buddy: the taste of syrup from sap of swelling buds; it does not go away.",
        f"Cold volume: what it measures at {units.pick('68 °F', '20 °C')}. Hot syrup takes 3 to 4 percent more room.",
    )


ERRORS = (
    "#NUM!: a number outside what is possible; look at the numbers it is made from. #VALUE!: text where a number belongs. "
    "#N/A: something was left out.",
    "#NAME?, Err:508, or empty cells where numbers should be: this program does not know the functions. Take the default "
    "edition, which holds every formula whole.",
)

SOURCES = (
    "Water and its boiling point: IAPWS-IF97. Air: U.S. Standard Atmosphere, 1976.",
    "Density of sugar solutions: ICUMSA SPS-4 (Bubnik et al., Sugar Technologists Manual, 1995).",
    "Boiling point of syrup: water activity after Starzak and Peacock (1997); it agrees with the trade's 7 °F rule.",
    "Refractometer: OIV-MA-AS2-02 Table I and the international table of 1936. Freezing: CRC Handbook, 102nd edition.",
    "Strength and color of syrup: U.S. Standards for Grades of Maple Syrup (2015); 21 CFR 168.140; similar in Canada.",
    "End of the season: Houle et al., PLoS ONE 10(12): e0144844 (2015). The ±: JCGM 100:2008, 5.2.2.",
    "Taps, running sap, keeping times, pan rate: common practice. A judgement, and it says so.",
    "The sheet Functions, or the command sheetfuncs functions NAME, shows any function's source, limits and an example.",
)
