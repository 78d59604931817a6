"""Bottles: a row each time jars of one size are filled."""

from __future__ import annotations

from collections.abc import Callable

from sheetfuncs.formulas import quantities
from sheetfuncs.formulas.syrup import LIGHT, THICKEST, THINNEST
from sheetfuncs.formulas.vocabulary import CUP_TEMPERATURE, STRENGTH
from sheetfuncs.workbook.model.formula import NOTHING, cases, say
from sheetfuncs.workbook.model.kinds import BRIX, COUNT, DATE, MASS, SHARE, SMALL, TEMPERATURE, TEXT, VOLUME, WORDS
from sheetfuncs.workbook.model.parts import Column, Finding, Sheet, Table
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets.phrases import ask, judged, look, numbers, of_row, rounded, tell, when

HOT_PACK = (185, 85)  # °F and °C at which jars are taken to be filled, where nobody says
COOL, NEW_SAND = (180, 82), (200, 93)  # below it does not seal safely; above new sugar sand clouds it
LITTLE = 0.05  # of a batch: as much more than it held passes as rounding of jars
MILLILITRES = quantities.SMALL_VOLUME.unit("US").into_si(1.0) / quantities.SMALL_VOLUME.unit("metric").into_si(1.0)


def sheet(units: Units, rows: Rows) -> Sheet:
    """The bottling log: cold volume, net contents, against expected, label and keep-until."""
    return Sheet(
        "Bottles",
        "A row each time jars of one size are filled. "
        + units.pick(
            "Hot pack at 180 to 190 °F, warm glass; syrup burns: gloves, no children near.",
            "Hot pack at 82 to 88 °C, warm glass; syrup burns: gloves, no children near.",
        ),
        (Table("bottles", "", judged(_columns(units, rows), units), rows.bottlings, lines=3),),
        tab="log",
        freeze=(4, 2),
    )


def _columns(units: Units, rows: Rows) -> tuple[Column, ...]:
    def of_batch(key: str) -> str:
        return f"INDEX(@batches.{key},[place])"

    hot = units.pick(*HOT_PACK)
    named = of_row("@jars.size", "@jars.name", 'TRIM([jar]&"")')
    size = cases(('TRIM([jar]&"")=""', "INDEX(@jars.size,1)"), otherwise=named)
    filled = "AND(N([filled])>0,ISNUMBER([size]))"
    warm = f"IF(ISNUMBER([at]),[at],{hot})"
    known = cases(
        ("ISNUMBER([brix])", "[brix]"),
        (f"IFERROR(ISNUMBER({of_batch('strength')}),FALSE)", of_batch("strength")),
        ("OR(N([filled])>0,ISNUMBER([volume]))", "@know.target"),
    )
    held = f"IF(ISNUMBER({of_batch('cold')}),{of_batch('cold')},{of_batch('syrup')})"
    light = f'IF(ISNUMBER([light]),[light],IF(ISNUMBER({of_batch("light")}),{of_batch("light")},""))'
    # the cold share of what a hot jar holds is the same in any unit of volume
    net = when(filled, f"SYRUP_COLD([size],[brix_used],{hot},UNITS)")
    return (
        Column("batch", "Batch", COUNT, limits=(1, rows.batches), width=6),
        Column("date", "Date", DATE, width=12),
        Column("jar", "Jar", TEXT, choices="@jars.name", width=10, hint="Blank: the first jar of Yard."),
        Column("filled", "Jars filled", COUNT, limits=(0, 100000), width=6),
        look(*_findings(units), width=17),
        Column("sealed", "Sealed", TEXT, choices=("yes", "no"), hint="Next morning: the middle of the lid does not give."),
        Column("given", "Given to", TEXT),
        Column("taste", "Taste, note", TEXT, width=26),
        Column("volume", "Syrup, if measured", VOLUME, hint="Else jars times their size."),
        Column("at", "It was at", TEMPERATURE, called="The temperature of the syrup", limits=units.limits(CUP_TEMPERATURE), hint=f"Blank: {hot} {units.temperature}, filled hot."),
        Column("brix", "Sugar, if measured", BRIX, was=("°Brix, if measured",), width=9, limits=units.limits(STRENGTH), hint="Blank: as in Batches."),
        Column("light", "Light through, %", COUNT, limits=units.limits(LIGHT), hint="Percent at 560 nm, if you measure it."),
        Column("note", "Note", TEXT, width=20),
        Column("in_jars", "In jars, hot", VOLUME, when(filled, f"[filled]*[size]/{units.small_in_volume:g}")),
        Column("brix_used", "°Brix taken as", BRIX, known, guess="guess"),
        Column("cold", "Syrup, cold", VOLUME, when("COUNT([volume],[in_jars])>0", f"SYRUP_COLD(IF(ISNUMBER([volume]),[volume],[in_jars]),[brix_used],{warm},UNITS)")),
        Column("sugar", "Sugar", MASS, when(numbers("cold", "brix_used"), "SAP_SUGAR([cold],[brix_used],UNITS)"), guess="guess"),
        Column("net", "Net contents of a jar, cold", SMALL, net),
        Column("jars_due", "Jars it should fill", COUNT, when(numbers("volume", "size"), "JAR_COUNT([volume],[size],UNITS)")),
        Column("against", "Batch so far, of expected", SHARE, when(numbers("place", "cold"), f"SUMIFS([cold^],[batch^],[batch])/({held})")),
        Column("grade", units.pick("Color", "Colour"), TEXT, f'IFERROR(IF(ISNUMBER([shade]),SYRUP_GRADE([shade]),{of_batch("colour")}&""),"")', width=11),
        Column("label", "For the label", WORDS, _label(units, of_batch), width=60),
        Column("until", "Keeps until", DATE, 'IF(AND(N([date])>=1,[eat_first]=0),IFERROR(DATE(YEAR([date])+1,MONTH([date]),DAY([date])),""),"")'),
        Column("eat_first", "Eat first", COUNT, f'IF(AND(N([filled])=0,NOT(ISNUMBER([volume]))),"",IF(OR(AND([guess]=0,N([brix_used])<{THINNEST}),TRIM([sealed]&"")="no"),1,0))'),
        Column("lot", "Lot", TEXT, 'IF(AND(ISNUMBER([place]),N([date])>=1),IFERROR(YEAR([date])&"-"&[batch]&"-"&COUNTIF([batch^],[batch]),""),"")', width=11),
        Column("jars_sum", "Jars filled so far", COUNT, "SUM([filled^])", hidden=True),
        Column("place", "Row of its batch", COUNT, f'IF(AND(ISNUMBER([batch]),N([batch])>=1,N([batch])<={rows.batches}),INT([batch]),"")', hidden=True),
        Column("size", "Size of the jar", SMALL, f'IFERROR(IF({size}>0,{size},""),"")', hidden=True),
        Column("shade", "Light, as counted", COUNT, f'IFERROR({light},"")', hidden=True),
        Column("guess", "Its strength is a guess", COUNT, f"IF(OR(ISNUMBER([brix]),IFERROR(ISNUMBER({of_batch('strength')}),FALSE)),0,1)", hidden=True),
        Column("fat", "Fat against foam", TEXT, f'IFERROR({of_batch("fat")}&"","")', hidden=True),
        Column("more", "As much as passes", SHARE, _tolerance(of_batch), hidden=True),
    )  # fmt: skip


def _tolerance(of_batch: Callable[[str], str]) -> str:
    """The share of what was expected that instruments leave open, twice: volumes in and out, and sugar."""
    brix = of_batch("brix")
    guess = of_batch("guess")
    sugar = f"IF({guess}=1,N(@know.sap_spread)/MAX(0.1,N(@know.sap_brix)),N(@know.brix_error)/MAX(1,N({brix})))"
    return f"IFERROR(1+{LITTLE}+2*SQRT(2*N(@know.volume_error)^2+({sugar})^2),1.25)"


def _label(units: Units, of_batch: Callable[[str], str]) -> str:
    """What a label may say; net contents as they are cold, rounded down."""
    ounces, millilitres = units.pick(("[net]", f"[net]*{MILLILITRES:.6f}"), (f"[net]/{MILLILITRES:.6f}", "[net]"))
    fluid_ounces, metric = f"FIXED(ROUNDDOWN({ounces},1),1,TRUE)", f"FIXED(ROUNDDOWN({millilitres},0),0,TRUE)"
    net = units.pick(
        say("{ounces} fl oz ({metric} mL)", ounces=fluid_ounces, metric=metric),
        say("{metric} mL ({ounces} fl oz)", ounces=fluid_ounces, metric=metric),
    )
    made_by = cases(
        (
            'AND(@yard.keeper<>"",@yard.name<>"")',
            say(" Made by {keeper}, {name}.", keeper="@yard.keeper", name="@yard.name"),
        ),
        ('@yard.keeper<>""', say(" Made by {keeper}.", keeper="@yard.keeper")),
        ('@yard.name<>""', say(" Made by {name}.", name="@yard.name")),
    )
    allergen = cases(
        ('[fat]="butter or cream"', say(" Contains milk.")),
        ('[fat]="oil"', say(" A drop of cooking oil was used against foam.")),
        ('OR([fat]="",[fat]="no")', NOTHING),
        otherwise=say(" {fat} was used against foam: name it if it is an allergen.", fat="[fat]"),
    )
    own = 'IF(@know.label_line<>""," "&@know.label_line,"")'
    lot = 'IF([lot]<>""," Lot "&[lot]&".","")'
    cold = say(" Refrigerate after opening.")
    said = f'"Maple syrup, "&{net}&"."&{made_by}&{lot}&" Ingredients: maple syrup."&{allergen}&{cold}&{own}'
    return f'IF(ISNUMBER([net]),{said},"")'


def _findings(units: Units) -> tuple[Finding, ...]:
    cool, sand = units.pick(*COOL), units.pick(*NEW_SAND)
    there = "OR(N([filled])>0,ISNUMBER([volume]))"
    mold, crystals = units.pick(("mold", "crystallizes"), ("mould", "crystallises"))
    return (
        ask(f'AND([batch]="",{there})', "Which batch is it from?", "batch"),
        ask('AND(ISNUMBER([batch]),IFERROR(INDEX(@batches.planned,[place])="",FALSE))', "Batches has no such batch yet.", "batch"),
        ask(f'AND([date]="",{there})', "When was it?", "date"),
        ask('AND(ISNUMBER([date]),[filled]="",[volume]="")', "How many jars?", "filled"),
        ask('AND(TRIM([jar]&"")<>"",[size]="")', "Yard lists no jar of this name: it holds nothing here.", "jar"),
        ask('AND(TRIM([sealed]&"")="no",N([filled])>0)', "Not sealed: keep it in the refrigerator and eat it first.", "sealed"),
        ask(f"AND({there},[guess]=0,N([brix_used])<{THINNEST})", f"Thin, {{brix}} °Brix: it can ferment or {mold}. Boil it again, or keep it cold and eat it first.", "brix", brix=rounded("[brix_used]")),
        ask(f"AND({there},[guess]=0,N([brix_used])>{THICKEST})", f"Thick, {{brix}} °Brix: it {crystals}. Warm it and stir in a little hot water, off the fire.", "brix", brix=rounded("[brix_used]")),
        ask(f"AND(N([filled])>0,ISNUMBER([at]),N([at])<{cool})", f"Under {cool} {units.temperature}: too cool to seal safely.", "at"),
        ask(f"AND(ISNUMBER([at]),N([at])>{sand})", f"Over {sand} {units.temperature}: new sugar sand clouds it, filter it again.", "at"),
        ask("AND(N([filled])>0,ISNUMBER([jars_due]),N([filled])>N([jars_due])+1)", "More jars than the volume fills.", "filled"),
        ask("AND(ISNUMBER([against]),N([against])>[more])", "{share} % of what the batch held: check its volumes.", "filled", share="FIXED(100*N([against]),0,TRUE)"),
        tell(f"AND({there},[guess]=1)", "Its strength is not known: counted as the target.", "brix"),
    )  # fmt: skip
