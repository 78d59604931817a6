"""What goes into a batch: the names of its list, the lots that it takes, and what it leaves for a later one."""

from __future__ import annotations

from sheetfuncs.workbook.model.formula import NOTHING, cases
from sheetfuncs.workbook.model.kinds import BRIX, COUNT, TEXT, VOLUME
from sheetfuncs.workbook.model.parts import Column
from sheetfuncs.workbook.sheets.naming import ALL_PART, MOST_NAMES, listed, literally, naming, nth
from sheetfuncs.workbook.sheets.phrases import when

NAMES = "abcdefgh"[:MOST_NAMES]  # a column for each name of a list
NO_BATCH = 999  # more than there are
SOME = '">=0"'  # any number, and no blank


def hidden() -> tuple[Column, ...]:
    """Columns of Batches: a lot is taken by the first batch that names it, as Boil finds."""
    names = listed("[goes_in]", ALL_PART)
    guessed = "COUNTIFS(@boil.batch,[number],@boil.out_guess,1)+COUNTIFS(@boil.over_batch,[number],@boil.in_guess,1)"
    volume, syrup = _lots("SUMIFS", "available"), _lots("SUMIFS", "syrup_left")
    mixed = "BOIL_BRIX([lots_syrup],@know.target,[lots_volume])"
    found = (
        ("list", "Names, as a list", TEXT, f'IF(OR([planned]="",AND(N([date])=0,[goes_in]="")),"",{names})'),
        ("all_part", "It takes all that is part-boiled", COUNT, f'IF([list]=",{ALL_PART},",1,0)'),
        *((f"name_{letter}", f"Name {letter}", TEXT, nth("[list]", place)) for place, letter in enumerate(NAMES, 1)),
        ("unknown", "A name that nobody knows", TEXT, _first_name("{known}=0")),
        ("taken", "A name that is not in it", TEXT, _first_name("{batch}<>[number]")),
        ("lots_in", "Lots in it", COUNT, _lots("COUNTIFS", "")),
        ("lots_known", "of known volume", COUNT, _lots("COUNTIFS", "available", SOME)),
        ("lots_strong", "of known strength", COUNT, _lots("COUNTIFS", "syrup_left", SOME)),
        ("lots_guessed", "of guessed strength", COUNT, guessed),
        ("lots_volume", "Volume of its lots", VOLUME, f'IF(AND([lots_in]>0,[lots_known]=[lots_in]),{volume},"")'),
        ("lots_syrup", "Syrup in its lots", VOLUME, f'IF(AND([lots_in]>0,[lots_strong]=[lots_in]),{syrup},"")'),
        ("boiled", "Sugar of its lots", BRIX, when("AND(N([lots_volume])>0,N([lots_syrup])>0)", mixed)),
        ("guess", "Rests on a guess", COUNT, "IF(AND(NOT(ISNUMBER([brix_typed])),[lots_guessed]>0),1,0)"),
        ("over_name", "What is left over, its name", TEXT, 'IF(N([over])>0,"K"&[number],"")'),
        ("over_batch", "Batch that takes it", COUNT, _taker()),
        ("over_available", "Of it, for a batch", VOLUME, 'IF([over_name]="","",[over])'),
        (
            "over_syrup_left",
            "Syrup in that",
            VOLUME,
            when('AND([over_name]<>"",ISNUMBER([strength]))', "SYRUP_FROM_SAP([over],[strength],@know.target)"),
        ),
    )
    return tuple(Column(key, words, kind, formula, hidden=True) for key, words, kind, formula in found)


def _first_name(wrong: str) -> str:
    """The first name of the list with something wrong: `known` says how many lots have it, `batch` which one takes it."""

    def of(name: str) -> str:
        known = f"(COUNTIF(@boil.name,{name})+COUNTIF(@boil.over_name,{name})+COUNTIF([over_name<],{name}))"
        batch = f"(SUMIFS(@boil.batch,@boil.name,{name})+SUMIFS(@boil.over_batch,@boil.over_name,{name})"
        batch += f"+SUMIFS([over_batch<],[over_name<],{name}))"
        return wrong.format(known=known, batch=batch)

    names = [f"[name_{letter}]" for letter in NAMES]
    return cases(
        ("[all_part]=1", NOTHING),
        *((f'IF({name}="",FALSE,{of(name)})', f"UPPER({name})") for name in names),
    )


def _lots(function: str, key: str, criterion: str = "") -> str:
    """Over the boils, what was left over of them, and of earlier batches, that this batch takes."""
    each = []
    for table, below in (("@boil.", ""), ("@boil.over_", ""), ("[over_", "<]")):
        taker, of = f"{table}batch{below}", f"{table}{key}{below}"
        if function == "SUMIFS":
            each.append(f"SUMIFS({of},{taker},[number])")
        else:
            each.append(f"COUNTIFS({taker},[number]{f',{of},{criterion}' if key else ''})")
    return "+".join(each)


def _taker() -> str:
    """The first later batch that names what is left over of this one, or takes all."""
    later = '@batches.number,">"&[number],@batches.list'
    found = [f"{later},{naming('[over_name]')}", f"{later},{literally(ALL_PART)}"]
    first = [f"IF(COUNTIFS({one})=0,{NO_BATCH},MINIFS(@batches.number,{one}))" for one in found]
    return f'IF([over_name]="",0,MOD(MIN({",".join(first)}),{NO_BATCH}))'
