"""What a batch is told: its plan, whether the pan fits, and its verdict once it is off the fire."""

from __future__ import annotations

from sheetfuncs.formulas.syrup import THICKEST, THINNEST
from sheetfuncs.workbook.model.formula import NOTHING, cases, say
from sheetfuncs.workbook.model.parts import Finding
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets.naming import too_many
from sheetfuncs.workbook.sheets.phrases import ask, counted, mend, of_row, rounded
from sheetfuncs.workbook.sheets.readings import amount

NEARLY = 60  # °Brix: from here on the last reading may be the end, and the batch gets a verdict
AGREED = 2  # batches that must have been checked in the cup before a thermometer's offset is spoken of


def findings(units: Units) -> tuple[Finding, ...]:
    """What is wrong with a batch."""
    yard_water = of_row("@thermometers.water", "@thermometers.name", 'TRIM([thermometer]&"")')
    open_yet = "NOT(ISNUMBER([strength]))"
    return (
        mend('AND([date]="",[goes_in]<>"")', "When is it finished? Type its day.", "date"),
        mend('[unknown]<>""', "There is no {name} among the boils: type them as B1, B2, or leave it blank for all.", "goes_in", name="[unknown]"),
        mend('[taken]<>""', "{name} went into another batch or boil, or was not there yet: it is not counted.", "goes_in", name="[taken]"),
        mend(too_many("[list]"), "Too many names to look up one by one: leave it blank for all.", "goes_in"),
        mend("N([lots_known])<N([lots_in])", "It takes a boil whose jars or volume are not typed: type them in Boil, or the volume here.", "volume_typed"),
        ask('AND(TRIM([thermometer]&"")<>"",COUNTIF(@thermometers.name,TRIM([thermometer]&""))=0)', "Yard lists no thermometer of this name.", "thermometer"),
        ask('AND(TRIM([pan]&"")<>"",COUNTIF(@pans.name,TRIM([pan]&""))=0)', "Yard lists no pan of this name.", "pan"),
        ask(
            f"AND(ISNUMBER([water]),IFERROR(ABS({yard_water}-N([water]))>{units.pick(1, 0.5)},FALSE),IFERROR(N({yard_water})>0,FALSE),{open_yet})",
            "Yard has {yard} for {meter} in boiling water, here stands {water}: this batch uses what stands here, for {meter} alone.",
            "water",
            yard=rounded(yard_water),
            meter="[thermometer]",
            water=rounded("N([water])"),
        ),
        ask("AND(ISNUMBER([cup_shows]),NOT(ISNUMBER([cup_at])))", "How hot is the syrup in the cup? Read both together.", "cup_at"),
        ask("AND(ISNUMBER([cup_at]),NOT(ISNUMBER([cup_shows])))", "What does the hydrometer show in the cup?", "cup_shows"),
        ask("AND(ISNUMBER([off_at]),NOT(ISNUMBER([strength])))", "Its strength is not known: read the thermometer in boiling water.", "off_at"),
        ask(f"AND(ISNUMBER([volume]),ISNUMBER([holds]),{open_yet},N([volume])>N([holds]))", "Over the rim: {volume} {unit} into a pan of {holds}. Pour it in as it boils down, or see the plan below.", "pan", volume=rounded("N([volume])", 2), unit=f'"{units.volume}"', holds=rounded("N([holds])", 2)),
        ask(f"AND(ISNUMBER([depth_end]),{open_yet},N([depth_end])<{units.pick(0.4, 1)})", "Too shallow at the end, it scorches: finish in a smaller pan.", "pan"),
        ask("AND(ISNUMBER([volume_typed]),NOT(ISNUMBER([brix])))", "Its sugar is not known: name its boils, or measure it.", "brix_typed"),
        ask("AND(ISNUMBER([brix_typed]),NOT(ISNUMBER([volume])))", "How much goes in? Measure it, or name its boils.", "volume_typed"),
    )  # fmt: skip


def fits_words(units: Units) -> str:
    """Whether the pan takes the batch, at the start and at the end."""
    stop, shallow = units.pick(0.4, 1), units.pick(1, 2.5)
    return cases(
        ("NOT(ISNUMBER([depth_end]))", NOTHING),
        ("AND(ISNUMBER([holds]),N([volume])>N([holds]))", say("Over the rim.")),
        (f"[depth_end]<{stop}", say("Too shallow: it scorches.")),
        (f"[depth_end]<{shallow}", say("Shallow at the end: low fire, and stay.")),
        otherwise=say("Fits."),
    )


def goal_words(units: Units) -> str:
    """Where it is syrup; before that is known, what to do for it, and a guess that is called one."""
    meter = 'TRIM([thermometer]&"")'
    offset = of_row("@thermometers.offset", "@thermometers.name", meter)
    checked = f'COUNTIFS(@batches.meter,{meter},@batches.offset,">-100")'
    air = say("By the air it is syrup near {near}, a guess.", near=rounded("[by_air]", 0))
    none = say("Yard has no elevation, so nothing tells what it should show.")
    name = say("Name the thermometer and read it in boiling water.")
    read = say("Read {meter} in boiling water and type it in Yard.", meter=meter)
    return cases(
        ('[planned]=""', NOTHING),
        (
            "ISNUMBER([goal])",
            cases(
                (
                    f"AND({checked}>={AGREED},IFERROR(ABS(N({offset}))>={units.pick(0.1, 0.05)},FALSE))",
                    say(
                        "Syrup at {goal}; by the cup of {batches} it would be at {other}.",
                        goal=rounded("[goal]"),
                        batches=counted(checked, "batch", "batches"),
                        other=rounded(f"[goal]+N({offset})"),
                    ),
                ),
                otherwise=say("Syrup at {goal}.", goal=rounded("[goal]")),
            ),
        ),
        (f'AND({meter}="",ISNUMBER([by_air]))', f'{name}&" "&{air}'),
        (f'{meter}=""', f'{name}&" "&{none}'),
        ("ISNUMBER([by_air])", f'{read}&" "&{air}'),
        otherwise=f'{read}&" "&{none}',
    )


def of_batch(units: Units) -> str:
    """The plan of a batch, and its verdict when there is a strength to judge."""
    by_cup = "ISNUMBER([true])"
    about = f'IF({by_cup},"","about ")'
    brix = rounded("[strength]")
    small = f'"{units.small}"'
    thicken, thin_out = amount("-[fix]", units), amount("[fix]", units)
    running = f"NOT(OR({by_cup},ISNUMBER([off_at])))"  # only a last reading: it may still be on the fire
    thin = cases(
        (f"AND({running},[strength]<{NEARLY})", say("On the fire: about {brix} °Brix at the last reading.", brix=brix)),
        (
            f"AND({running},ISNUMBER([fix]))",
            say(
                "The last reading says about {brix} °Brix. If it is off the fire, it is thin: boil off about {water} {small} more.",
                brix=brix,
                water=thicken,
                small=small,
            ),
        ),
        (
            running,
            say("The last reading says about {brix} °Brix. If it is off the fire, it is thin: boil it on.", brix=brix),
        ),
        (
            "ISNUMBER([fix])",
            say(
                "Thin: {about}{brix} °Brix, it spoils. Boil off about {water} {small} more.",
                about=about,
                brix=brix,
                water=thicken,
                small=small,
            ),
        ),
        otherwise=say("Thin: {about}{brix} °Brix, it spoils. Boil it on.", about=about, brix=brix),
    )
    hot = units.pick("crystallizes", "crystallises")
    thick = cases(
        (
            "ISNUMBER([fix])",
            say(
                "Thick: {about}{brix} °Brix, it {hot}. Stir in about {water} {small} of hot water, off the fire, slowly (it spatters).",
                about=about,
                brix=brix,
                hot=f'"{hot}"',
                water=thin_out,
                small=small,
            ),
        ),
        otherwise=say(
            "Thick: {about}{brix} °Brix, it {hot}. Stir in hot water, off the fire, slowly (it spatters).",
            about=about,
            brix=brix,
            hot=f'"{hot}"',
        ),
    )
    jars = counted("[jars_day]", "jar", "jars")
    plan = cases(
        (
            "ISNUMBER([syrup])",
            cases(
                (
                    "ISNUMBER([jars_day])",
                    say(
                        "{goal} It makes {about}{syrup} {unit} of syrup: have {jars} hot for that day.",
                        goal="[goal_words]",
                        about='IF([guess]=1,"about ","")',
                        syrup=rounded("[syrup]", 2),
                        unit=f'"{units.volume}"',
                        jars=jars,
                    ),
                ),
                otherwise=say(
                    "{goal} It makes {about}{syrup} {unit} of syrup.",
                    goal="[goal_words]",
                    about='IF([guess]=1,"about ","")',
                    syrup=rounded("[syrup]", 2),
                    unit=f'"{units.volume}"',
                ),
            ),
        ),
        otherwise="[goal_words]",
    )
    return cases(
        ('[planned]=""', NOTHING),
        (f"AND(ISNUMBER([strength]),N([strength])<{THINNEST})", thin),
        (f"AND(ISNUMBER([strength]),N([strength])>{THICKEST})", thick),
        (
            "ISNUMBER([strength])",
            say("In range: {about}{brix} °Brix. Filter and bottle it hot.", about=about, brix=brix),
        ),
        otherwise=plan,
    )
