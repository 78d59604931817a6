"""What came out of a boil: its volume, its strength by what was read, what was lost, and where it went."""

from __future__ import annotations

from sheetfuncs.workbook.model.formula import NOTHING, cases, say
from sheetfuncs.workbook.model.kinds import (
    BRIX,
    COUNT,
    DATE,
    FUEL,
    HOURS,
    MASS,
    RATE,
    SHARE,
    TEMPERATURE,
    TEXT,
    VOLUME,
)
from sheetfuncs.workbook.model.parts import Column
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets.collection import MOST_BOILS
from sheetfuncs.workbook.sheets.happenings import thrown_out, was_taken
from sheetfuncs.workbook.sheets.naming import ALL_PART, ALL_SAP, literally, naming
from sheetfuncs.workbook.sheets.phrases import numbers, of_row, rounded, when

READ, BY_READING, BY_VOLUME, NOT_KNOWN = 1, 2, 3, 0  # where the strength out is from
SAP_LIKE = 10  # °Brix: below it what is left over is sap, and goes with all sap
SHARP = 0.15  # of the strength: a reading less sure than that says nothing new of the sap
FAR = 999  # more batches than there are


def shown(units: Units) -> tuple[Column, ...]:
    of_strength = cases(
        ("ISNUMBER([read_brix])", "[read_brix]"), ("ISNUMBER([brix_reading])", "[brix_reading]"), otherwise="30"
    )
    return (
        Column("out_volume", "Came out, cold", VOLUME,
               cases(("NOT(ISNUMBER([out_hot]))", NOTHING), ("NOT(ISNUMBER([left_at]))", "[out_hot]"),
                     otherwise=f'IFERROR(SYRUP_COLD([out_hot],{of_strength},[left_at],UNITS),[out_hot])')),
        Column("brix_reading", "Sugar out, by reading", BRIX,
               when(numbers("reading", "water_used"), "BRIX_BY_BOIL([reading],[water_used],UNITS)")),
        Column("brix_volume", "Sugar out, by volume", BRIX,
               when(numbers("syrup_in", "out_volume"), "BOIL_BRIX([syrup_in],@know.target,[out_volume])")),
        Column("brix_out", "Sugar out, taken", BRIX,
               'IF(N([out_from])=0,"",CHOOSE([out_from],[read_brix],[brix_reading],[brix_volume]))', guess="out_guess"),
        Column("syrup_out", "Syrup out", VOLUME,
               cases((f'OR([out_from]={READ},[out_from]={BY_READING})',
                      'IF(COUNT([out_volume],[brix_out])=2,IFERROR(SYRUP_FROM_SAP([out_volume],[brix_out],@know.target),""),[syrup_in])'),
                     otherwise="[syrup_in]"), guess="out_guess"),
        Column("sugar_out", "Sugar out", MASS, when(numbers("out_volume", "brix_out"), "SAP_SUGAR([out_volume],[brix_out],UNITS)"),
               guess="out_guess"),
        Column("lost", "Sugar lost", SHARE,
               f"IF(AND(OR([out_from]={READ},[out_from]={BY_READING}),[in_guess]=0,COUNT([sugar_in],[sugar_out])=2,"
               'N([sugar_in])>0),1-[sugar_out]/[sugar_in],"")'),
        Column("sap_was", "Sugar of the sap, from that", BRIX,
               when(f"AND(N([guessed_syrup])>0,N([out_error])<={SHARP}*N([brix_out]))", "BOIL_BRIX([guessed_syrup],@know.target,[guessed_sap])")),
        Column("water_off", "Water boiled off", VOLUME,
               cases((numbers("volume_in", "out_volume"), 'IF([volume_in]>=[out_volume],[volume_in]-[out_volume],"")'),
                     (numbers("volume_in", "brix_in", "brix_out"), 'IFERROR(BOIL_WATER([volume_in],[brix_in],[brix_out]),"")'))),
        Column("rate", "Water boiled off, an hour", RATE,
               'IF(AND(ISNUMBER([water_off]),N([spent])>0),[water_off]/[spent],"")'),
        Column("fuel_each", "Fuel for one of water", FUEL,
               'IF(AND(N([fuel])>0,N([water_off])>0),[fuel]/[water_off],"")'),
        Column("name", "Name", TEXT, 'IF([list]="","","B"&[number])'),
    )  # fmt: skip


def hidden(units: Units, rows: Rows) -> tuple[Column, ...]:
    size = f'IF([jar]="",INDEX(@jars.size,1),{of_row("@jars.size", "@jars.name", "TRIM([jar])")})'
    jar = 'IF([jar]="",INDEX(@jars.name,1),TRIM([jar]))'
    numbered = "ISNUMBER(VALUE(LEFT([jar_name],1)))"  # a name like 1 L
    plural = 'IF([jars_out]=1,"","s")'
    jars = cases(
        (numbered, say("{count} jar{s} of {jar}", count="FIXED([jars_out],0,TRUE)", s=plural, jar="[jar_name]")),
        ('ISNUMBER(SEARCH("jar",[jar_name]))',
         say("{count} {jar}{s}", count="FIXED([jars_out],0,TRUE)", s=plural, jar="[jar_name]")),
        otherwise=say("{count} {jar} jar{s}", count="FIXED([jars_out],0,TRUE)", s=plural, jar="[jar_name]"),
    )  # fmt: skip
    rest = f'{rounded("[rest]", units.pick(2, 1))}&" {units.volume}"'
    # the meter: the one named, else the first of Yard; its reading in water that day, or how far off it was another day
    meter = 'IF([thermometer]="",1,IFERROR(MATCH(TRIM([thermometer]),@thermometers.name,0),0))'
    error = units.pick(0.5, 0.3)
    lot_row = f"{rows.collections}+[number]"
    return (
        Column("jar_size", "A jar holds", VOLUME,
               f'IF([list]="","",IFERROR(IF({size}>0,{size}/{units.small_in_volume:g},""),""))', hidden=True),
        Column("jar_name", "Jar, by name", TEXT, f'IF(N([jars_out])>0,{jar}&"","")', hidden=True),
        Column("amount", "How much, in words", TEXT,
               cases(('OR([list]="",[out_hot]="")', NOTHING), ("AND(N([jars_out])>0,N([rest])>0)", f'({jars})&" and "&{rest}'),
                     ("N([jars_out])>0", jars), otherwise=rest), hidden=True),
        Column("out_hot", "Came out, as measured", VOLUME,
               cases(('[list]=""', NOTHING), ("OR(ISTEXT([jars_out]),ISTEXT([rest]),MIN([jars_out],[rest])<0)", NOTHING),
                     ("N([jars_out])+N([rest])=0", NOTHING), ("N([jars_out])=0", "[rest]"),
                     ("ISNUMBER([jar_size])", "[jars_out]*[jar_size]+N([rest])")), hidden=True),
        Column("between", "Hours, start to end", HOURS,
               'IF(COUNT([start],[end])=2,IF([start]=[end],"",24*MOD([end]-[start],1)),"")', hidden=True),
        Column("spent", "Hours, taken", HOURS, 'IF(N([hours])>0,[hours],[between])', hidden=True),
        Column("meter", "Row of the thermometer", COUNT, f'IF(AND(ISNUMBER([reading]),[list]<>""),{meter},0)', hidden=True),
        Column("water_air", "Water boils at, by the air", TEMPERATURE,
               when("[meter_asked]=1", "WATER_BOILS(IF([date]=@weekend.today,@weekend.pressure,@weekend.standard),UNITS)"), hidden=True),
        Column("meter_asked", "Air is asked", COUNT,
               'IF(AND(ISNUMBER([reading]),[list]<>"",NOT(ISNUMBER([water])),[same_day]=0),1,0)', hidden=True),
        Column("same_day", "This thermometer was read in water that day", COUNT,
               "IF([meter]=0,0,IF(AND(ISNUMBER(INDEX(@thermometers.water,[meter])),N(INDEX(@thermometers.read_on,[meter]))=N([date])),1,0))",
               hidden=True),
        Column("water_used", "Water boils at, taken", TEMPERATURE,
               cases(('OR([list]="",NOT(ISNUMBER([reading])))', NOTHING), ("ISNUMBER([water])", "[water]"),
                     ("[same_day]=1", "INDEX(@thermometers.water,[meter])"), ("NOT(ISNUMBER([water_air]))", NOTHING),
                     ("[meter]=0", "[water_air]"),
                     otherwise="[water_air]+N(INDEX(@thermometers.off,[meter]))"), hidden=True),
        Column("water_from", "and that is from", TEXT,
               cases(('[water_used]=""', NOTHING), ("OR(ISNUMBER([water]),[same_day]=1)", '"today"'),
                     ("IF([meter]=0,FALSE,ISNUMBER(INDEX(@thermometers.off,[meter])))", '"another day"'),
                     ("AND([date]=@weekend.today,ISNUMBER(@weekend.barometer))", '"barometer"'), otherwise='"elevation"'), hidden=True),
        Column("reading_error", "By reading, give or take", BRIX,
               when("ISNUMBER([brix_reading])",
                    "BRIX_BY_BOIL_SPREAD([reading],[water_used],"
                    f"IF([meter]=0,{error},IF(N(INDEX(@thermometers.error,[meter]))>0,N(INDEX(@thermometers.error,[meter])),{error})),"
                    "[water_from],UNITS)"), hidden=True),
        Column("volume_spread", "By volume, give or take", BRIX,
               when(numbers("brix_volume", "in_share"), "[brix_volume]*SQRT([in_share]^2+2*N(@know.volume_error)^2)"), hidden=True),
        Column("read_brix", "Sugar out, as read", BRIX,
               'IF(AND(ISNUMBER([left_brix]),N([left_brix])>0,N([left_brix])<=85,[list]<>""),[left_brix],"")', hidden=True),
        Column("out_from", "Strength out is from", COUNT,
               cases(('[list]=""', NOTHING), ("ISNUMBER([read_brix])", str(READ)),
                     ("IF(ISNUMBER([brix_reading]),IF(COUNT([reading_error],[volume_spread])=2,[reading_error]<=[volume_spread],"
                      "NOT(ISNUMBER([brix_volume]))),FALSE)", str(BY_READING)),
                     ("ISNUMBER([brix_volume])", str(BY_VOLUME)), ("ISNUMBER([brix_reading])", str(BY_READING)),
                     otherwise=str(NOT_KNOWN)), hidden=True),
        Column("out_error", "Strength out, give or take", BRIX,
               'IF(N([out_from])=0,"",CHOOSE([out_from],N(@know.brix_error),[reading_error],[volume_spread]))', hidden=True),
        Column("out_guess", "Strength out is a guess", COUNT,
               f'IF([list]="","",IF(OR([out_from]={READ},[out_from]={BY_READING}),0,[in_guess]))', hidden=True),
        Column("known", "Both ends are known", COUNT, 'IF([list]="","",IF(ISNUMBER([water_off]),1,0))', hidden=True),
        Column("guessed_sap", "Sap of guessed strength that went in", VOLUME,
               f"IF(AND(OR([out_from]={READ},[out_from]={BY_READING}),[in_guess]=1,ISNUMBER([out_volume]),N([volume_in])>0),"
               "IF(COUNTIFS(@collection.used_by,[number],@collection.guess,1)=[guesses],"
               'SUMIFS(@collection.available,@collection.used_by,[number],@collection.guess,1),""),"")', hidden=True),
        Column("guessed_syrup", "Syrup that it must have held", VOLUME,
               "IF(AND(ISNUMBER([guessed_sap]),COUNT([syrup_out],[named_syrup])=2),[syrup_out]*[named]/[volume_in]-[named_syrup]"
               '+SUMIFS(@collection.syrup_left,@collection.used_by,[number],@collection.guess,1),"")', hidden=True),
        *_fate("", "[name]", "1"),
        Column("available", "Of it, for a boil", VOLUME,
               f'IF([name]="","",IF({thrown_out("[name]")},0,IF(ISNUMBER([out_volume]),MAX(0,[out_volume]-{was_taken("[name]")}),"")))',
               hidden=True),
        Column("syrup_left", "Syrup in that", VOLUME,
               cases(('OR([name]="",[syrup_out]="")', NOTHING), ("ISNUMBER([out_volume])", "[syrup_out]*[available]/[out_volume]"),
                     otherwise=f'IF({thrown_out("[name]")},0,[syrup_out])'), hidden=True),
        Column("left", "Still in store", VOLUME, _left("[name]", "[used_on]", "[available]"), hidden=True),
        Column("waits", "Is in store", COUNT,
               cases(('[name]=""', "0"), ("AND(ISNUMBER([used_on]),N([used_on])<=@weekend.today)", "0"),
                     (thrown_out("[name]"), "0"), ("ISNUMBER([left])", "IF([left]>0,1,0)"),
                     otherwise="IF([date]<@weekend.today,1,0)"), hidden=True),
        Column("clock", "Last boiled on", DATE,
               'IF([name]="","",MAX([date],MAXIFS(@happenings.again,@happenings.key,[name])))', hidden=True),
        Column("go_on_by", "Go on by", DATE, f'IF([name]="","",INDEX(@lots.by,{lot_row}))', hidden=True),
        Column("over_name", "What was left over, its name", TEXT, 'IF(AND([list]<>"",N([over])>0),"R"&[number],"")', hidden=True),
        Column("over_sap", "It is sap", COUNT, f'IF([over_name]="","",IF(N([brix_in])>={SAP_LIKE},0,1))', hidden=True),
        Column("over_place", "Its place", TEXT,
               'IF([over_name]="","",IF(AND([item_b]="",COUNTIF(@places.name,[item_a])>0),[item_a],""))', hidden=True),
        *_fate("over_", "[over_name]", "[over_sap]"),
        Column("over_available", "Of what was left over, for a boil", VOLUME,
               cases(('[over_name]=""', NOTHING), ("AND(ISNUMBER([named]),[over]>N([named])*1.001)", "0"),
                     (thrown_out("[over_name]"), "0"), otherwise=f'MAX(0,[over]-{was_taken("[over_name]")})'), hidden=True),
        Column("over_syrup_left", "Syrup in what was left over", VOLUME,
               'IF(AND(ISNUMBER([over_available]),ISNUMBER([named_syrup]),N([named])>0),[named_syrup]*[over_available]/[named],"")', hidden=True),
        Column("over_left", "Left over, still in store", VOLUME, _left("[over_name]", "[over_used_on]", "[over_available]"), hidden=True),
        Column("over_clock", "Oldest of what it is from", DATE,
               'IF([over_name]="","",MAX([oldest],MAXIFS(@happenings.again,@happenings.key,[over_name])))', hidden=True),
        Column("oldest", "Oldest of what it took", DATE, _oldest(), hidden=True),
    )  # fmt: skip


def _fate(prefix: str, name: str, sap: str) -> tuple[Column, ...]:
    """Which boil or batch takes a lot of this row, the first that names it; a boil before a batch of the same day."""
    of = ": what was left over" if prefix else ""
    first, batch = f"[{prefix}first]", f"[{prefix}first_batch]"
    later = '@boil.number,">"&[number]'
    boils = [f"MAXIFS(@boil.rank,{later},@boil.list,{naming(name)})"]
    if prefix:
        boils.append(f"IF({sap}=1,MAXIFS(@boil.rank,{later},@boil.list,{literally(ALL_SAP)}),0)")
        boils.append(f'IF([over_place]="",0,MAXIFS(@boil.rank,{later},@boil.list,{naming("[over_place]")}))')

    def first_batch(names: str) -> str:
        criteria = f'@batches.list,{names},@batches.date,">="&[date]'
        return f"IF(COUNTIFS({criteria})=0,{FAR},MINIFS(@batches.number,{criteria}))"

    every = first_batch(literally(ALL_PART))
    every = f"IF({sap}=1,{FAR},{every})" if prefix else every
    boil_day = f"INDEX(@boil.date,{MOST_BOILS}-{first})"
    boil_is_first = f"IF({first}=0,FALSE,IF({batch}={FAR},TRUE,{boil_day}<=INDEX(@batches.date,{batch})))"
    return (
        Column(f"{prefix}first", f"Rank of the next boil that names it{of}", COUNT, f'IF({name}="","",MAX({",".join(boils)}))', hidden=True),
        Column(f"{prefix}first_batch", f"First batch that names it{of}", COUNT,
               f'IF({name}="","",MIN({first_batch(naming(name))},{every}))', hidden=True),
        Column(f"{prefix}used_by", f"Boil that took it{of}", COUNT,
               f'IF({name}="","",IF({boil_is_first},{MOST_BOILS}-{first},0))', hidden=True),
        Column(f"{prefix}batch", f"Batch that took it{of}", COUNT,
               f'IF({name}="","",IF(OR([{prefix}used_by]>0,{batch}={FAR}),0,{batch}))', hidden=True),
        Column(f"{prefix}used_on", f"Used on{of}", DATE,
               cases((f'{name}=""', NOTHING), (f"[{prefix}used_by]>0", f"INDEX(@boil.date,[{prefix}used_by])"),
                     (f"[{prefix}batch]>0", f"INDEX(@batches.date,[{prefix}batch])")), hidden=True),
    )  # fmt: skip


def _left(name: str, used_on: str, available: str) -> str:
    return f'IF({name}="","",IF(AND(ISNUMBER({used_on}),N({used_on})<=@weekend.today),0,{available}))'


def _oldest() -> str:
    """The oldest clock of what a row took: sap, earlier boils, what was left over of those."""

    def oldest(clock: str, used_by: str) -> str:
        return f'IF(COUNTIFS({used_by},[number],{clock},">0")=0,[date],MINIFS({clock},{used_by},[number],{clock},">0"))'

    lots = (
        ("@collection.clock", "@collection.used_by"),
        ("[clock<]", "[used_by<]"),
        ("[over_clock<]", "[over_used_by<]"),
    )
    return f'IF([over_name]="","",MIN({",".join(oldest(*lot) for lot in lots)}))'
