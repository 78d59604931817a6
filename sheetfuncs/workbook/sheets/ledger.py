"""The sugar ledger: what came from the trees is in the ice, in store, in jars, thrown out, or not accounted for.

Every "good to" of Yard is taken as what nineteen readings in twenty stay within, and so is every ± here.
What one instrument misreads it misreads the same way all season.  So for each instrument there is first the
sugar that hangs on it, sap that came in less sap that still waits, and only then the root of the squares
over the instruments (JCGM 100:2008, 5.2.2).
"""

from __future__ import annotations

from sheetfuncs.workbook.model.formula import cases, say
from sheetfuncs.workbook.model.kinds import MASS, SHARE, TEXT, VOLUME, WORDS
from sheetfuncs.workbook.model.parts import Block, Column, Field, Fields, Table
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets import boil_out
from sheetfuncs.workbook.sheets.lots import OVER, SAP
from sheetfuncs.workbook.sheets.phrases import rounded, when

LINES = {
    "trees": "Came from the trees",
    "ice": "Thrown out with ice",
    "thrown": "Thrown out, or used otherwise",
    "store": "In store: sap and part-boiled",
    "bottled": "Bottled",
    "missing": "Not accounted for",
    "pan": "Passed through the pan",
}
ICE_BY_EYE = 0.25  # share of ice is judged by eye: good to a quarter; a judgement
UNREAD = 3  # °Brix: what syrup that nobody measured is good to; a judgement
# A volume that is 1 % stronger holds so many % more sugar, since it is denser too: from SYRUP_DENSITY at 30 and 67 °Brix.
DENSER_PART, DENSER_SYRUP = 1.13, 1.31

KEPT, ICE, BOTTLED, THROWN = (
    "SUM(@collection.sugar)",
    "SUM(@collection.ice_sugar)",
    "SUM(@bottles.sugar)",
    "@sugar.thrown",
)


def blocks(units: Units) -> tuple[Block, ...]:
    return (_table(), _behind(units))


def row(key: str) -> int:
    """Which line of the ledger a key is, from 0."""
    return list(LINES).index(key)


def root(*limits: str) -> str:
    """The root of the sum of squares."""
    return f"SQRT({'+'.join(f'({limit})^2' for limit in limits)})"


def _table() -> Table:
    mass = {
        "trees": f"{KEPT}+{ICE}",
        "ice": ICE,
        "thrown": THROWN,
        "store": "@sugar.store",
        "bottled": BOTTLED,
        "missing": f"{KEPT}-{THROWN}-@sugar.store-{BOTTLED}",
        "pan": "SUM(@boil.sugar_in)",
    }
    read, guessed, volume, jars = (
        "N(@know.brix_error)",
        "N(@know.sap_spread)",
        "N(@know.volume_error)",
        "N(@know.volume_error)",
    )
    strength = root(f"{read}*@sugar.by_reading", f"{guessed}*@sugar.by_guess", f"{volume}*{KEPT}")
    of_kept = f"IF({KEPT}>0,{strength}/{KEPT},0)"  # what is like the sap that was kept, by its share
    error = {
        "trees": root(f"{read}*(@sugar.by_reading+@sugar.ice_reading)", f"{guessed}*@sugar.by_guess",
                      f"{volume}*({KEPT}+{ICE})", "@sugar.ice_eye"),
        "ice": root(f"{read}*@sugar.ice_reading", f"{volume}*{ICE}", "@sugar.ice_eye"),
        "thrown": f"{THROWN}*{of_kept}",
        "store": root(f"{read}*@sugar.store_reading", f"{guessed}*@sugar.store_guess", f"{volume}*@sugar.store_sap",
                      f"{jars}*(@sugar.store_jars+@sugar.store_over)", "@sugar.store_boil", "@sugar.over_strength"),
        "bottled": root("@sugar.bottled_strength", f"{jars}*{BOTTLED}"),
        "missing": root(f"{read}*(@sugar.by_reading*@sugar.stays-@sugar.store_reading)",
                        f"{guessed}*(@sugar.by_guess*@sugar.stays-@sugar.store_guess)",
                        f"{volume}*({KEPT}*@sugar.stays-@sugar.store_sap)", f"{jars}*({BOTTLED}+@sugar.store_jars+@sugar.store_over)",
                        "@sugar.store_boil", "@sugar.bottled_strength+@sugar.over_strength"),
        "pan": f"SUM(@boil.sugar_in)*{of_kept}",
    }  # fmt: skip
    return Table(
        "ledger",
        "Where the sugar went",
        (
            Column("what", "Sugar", TEXT, fixed=tuple(LINES.values())),
            Column("mass", "Sugar", MASS, tuple(mass[key] for key in LINES)),
            Column(
                "share",
                "Of all",
                SHARE,
                tuple('""' if key == "pan" else f'IF({KEPT}+{ICE}>0,[mass]/({KEPT}+{ICE}),"")' for key in LINES),
            ),
            Column("error", "More or less, ±", MASS, tuple(error[key] for key in LINES)),
            Column("syrup", "As syrup", VOLUME, when("TRUE", "[mass]/SAP_SUGAR(1,@know.target,UNITS)")),
        ),
        len(LINES),
    )


def _behind(units: Units) -> Fields:
    """The last line in words, and what each instrument's error acts on."""
    missing, error = (f"INDEX(@ledger.{column},{row('missing') + 1})" for column in ("mass", "error"))
    unit = units.mass

    def sap_in_store(guess: int) -> str:
        return f'SUMIFS(@lots.volume,@lots.open,1,@lots.what,"{SAP}",@lots.guess,{guess})*@sugar.step'

    read = f"@boil.waits,1,@boil.out_from,{boil_out.READ}"
    boiled = f"@boil.waits,1,@boil.out_from,{boil_out.BY_READING}"
    by_boil = f"SUMIFS(@boil.sugar_out,{boiled})"
    ice_brix = 'AVERAGEIFS(@collection.ice_brix,@collection.ice_sugar,">0")'
    ice_share = 'AVERAGEIFS(@collection.ice,@collection.ice_sugar,">0")'
    return Fields(
        "sugar",
        "The ledger in words",
        (
            Field(
                "said",
                "Is any missing?",
                WORDS,
                cases(
                    (f"{KEPT}=0", say("No sap is written down yet.")),
                    ("@store.unknown>0", say("Not known: a lot in store has no amount yet.")),
                    (f"AND({BOTTLED}=0,ABS({missing})<={error})", say("Nothing is bottled yet, and nothing is missing.")),
                    (f"{BOTTLED}=0", say("Nothing is bottled yet: what is not accounted for was used, or is in the pan.")),
                    (f"ABS({missing})<={error}", say(
                        "Nothing is missing: {missing} " + unit + " is within the {error} " + unit + " that the instruments leave open.",
                        missing=rounded(f"ABS({missing})", 2), error=rounded(error, 2))),
                    (f"{missing}>0", say(
                        "{missing} " + unit + " of sugar is missing, give or take {error}: spilled, scorched, or left in pan and filter?",
                        missing=rounded(missing, 2), error=rounded(error, 2))),
                    otherwise=say(
                        "{missing} " + unit + " more was bottled than came in, give or take {error}: is a collection missing, or a reading wrong?",
                        missing=rounded(f"-{missing}", 2), error=rounded(error, 2)),
                ),
            ),
            Field("store", "Sugar in store", MASS, "SUMIFS(@lots.sugar,@lots.open,1)"),
            Field("thrown", "Sugar thrown out or used otherwise", MASS, "SUM(@happenings.sugar)"),
            Field("step", f"Sugar in a {units.pick('gallon', 'litre')} at 1 °Brix", MASS, "SAP_SUGAR(1,1,UNITS)"),
            Field("by_reading", "Sap that was read: sugar for 1 °Brix", MASS, "SUMIFS(@collection.volume,@collection.guess,0)*@sugar.step",
                  note="so much more came in if each reading is 1 °Brix low"),
            Field("by_guess", "Sap that was guessed: sugar for 1 °Brix", MASS, "SUMIFS(@collection.volume,@collection.guess,1)*@sugar.step"),
            Field("ice_reading", "Ice: sugar for 1 °Brix", MASS, f'IF({ICE}>0,{ICE}/{ice_brix},0)'),
            Field("ice_eye", "Ice, judged by eye: good to", MASS, f"IF({ICE}>0,{ICE}*{ICE_BY_EYE}/(1-{ice_share}),0)"),
            Field("stays", "Of the sap, not thrown out", SHARE, f"IF({KEPT}>0,1-{THROWN}/{KEPT},0)"),
            Field("store_sap", "In store, by what sap was read", MASS, "@sugar.store-@sugar.store_jars-@sugar.store_over"),
            Field("store_jars", "In store, by what jars of it were read", MASS, f"SUMIFS(@boil.sugar_out,{read})+{by_boil}"),
            Field("store_over", "In store, left of batches", MASS, f'SUMIFS(@lots.sugar,@lots.open,1,@lots.what,"{OVER}")'),
            Field("over_strength", "Left of batches, by its strength: good to", MASS,
                  f"{DENSER_SYRUP}*@sugar.store_over*IF(COUNT(@batches.error)=0,{UNREAD},AVERAGE(@batches.error))/MAX(1,N(@know.target))"),
            Field("store_balance", "In store, part-boiled, by what sap went in", MASS,
                  f'MAX(0,@sugar.store_sap-SUMIFS(@lots.sugar,@lots.open,1,@lots.what,"{SAP}"))'),
            Field("store_reading", "In store: sugar for 1 °Brix that is read", MASS,
                  f"{sap_in_store(0)}+IF({KEPT}>0,@sugar.store_balance*@sugar.by_reading/{KEPT},0)"
                  f"+IF(SUMIFS(@boil.left,{read})>0,{DENSER_PART}*SUMIFS(@boil.sugar_out,{read})/AVERAGEIFS(@boil.brix_out,{read}),0)"),
            Field("store_guess", "In store: sugar for 1 °Brix that is guessed", MASS,
                  f"{sap_in_store(1)}+IF({KEPT}>0,@sugar.store_balance*@sugar.by_guess/{KEPT},0)"),
            Field("store_boil", "In store, by boiling readings: good to", MASS,
                  f"IF({by_boil}>0,IFERROR({DENSER_PART}*{by_boil}*AVERAGEIFS(@boil.reading_error,{boiled})/AVERAGEIFS(@boil.brix_out,{boiled}),0),0)"),
            Field("bottled_strength", "Bottled, by its strength: good to", MASS,
                  f"SUM(@by_batch.open)+{DENSER_SYRUP}*MAX(0,{BOTTLED}-SUM(@by_batch.sugar))*{UNREAD}/MAX(1,N(@know.target))"),
        ),
        span=1,
    )  # fmt: skip
