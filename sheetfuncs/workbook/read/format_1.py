"""Format 1: lots were typed into Storage by hand, each batch had a block of its own, a forecast lasted ten days."""

from __future__ import annotations

import datetime
from collections.abc import Mapping
from typing import Any

from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.read.upgrade import Upgrade

SHEETS = {"weekend", "forecast", "storage", "finish"}
NOT_YET = {"weather", "batches"}
MOST_BATCHES = 40
OF_BATCH = ("batch1", "check1", "readings1", "line1")
BATCH_ROWS = 64  # from one batch's block to the next
SAP_BELOW = 10  # °Brix: a lot below it was sap

# Cells that are called otherwise now; those that kept their name and block are in KEPT.
RENAMED = {
    **{
        f"yard.{key}": f"know.{key}"
        for key in (
            "target split typed_rate fuel_price efficiency finish_pan atc "
            "brix_error hydrometer_error volume_error store"
        ).split()
    },
    "containers.name": "places.name",
    "containers.holds": "places.holds",
    "containers.place": "places.where",
    "containers.kept": "places.kept",
    "collection.container": "collection.into",
    "boil.left": "boil.rest",
}
KEPT = (
    "weekend.today weekend.barometer yard.name yard.year yard.keeper yard.elevation yard.typed_taps yard.fuel "
    "thermometers.name thermometers.error thermometers.water thermometers.read_on "
    "pans.name pans.length pans.width pans.depth jars.name jars.size jars.have "
    "trees.name trees.species trees.girth trees.taps trees.tapped trees.pulled "
    "signs.buds signs.cloudy signs.smell "
    "collection.date collection.from_tree collection.sap collection.brix collection.warmth collection.ice "
    "collection.ice_brix collection.note "
    "boil.date boil.pan boil.start boil.end boil.water boil.reading boil.left_at boil.left_brix boil.fuel "
    "bottles.batch bottles.date bottles.volume bottles.at bottles.brix bottles.jar bottles.filled bottles.light "
    "bottles.taste "
    "past.season past.taps past.sap past.brix past.syrup past.first past.last past.days past.hours past.fuel past.note"
).split()
OF_A_BATCH = {  # a labelled cell of a batch's block -> the column of Batches
    "batch{}.date": "date",
    "batch{}.thermometer": "thermometer",
    "batch{}.water_typed": "water",
    "batch{}.pan": "pan",
    "batch{}.volume_typed": "volume_typed",
    "batch{}.brix_typed": "brix_typed",
    "check{}.shows": "cup_shows",
    "check{}.cup": "cup_at",
    "check{}.pan_volume": "pan_volume",
}


def batches(said: set[str]) -> int:
    """How many batches a workbook has room for: the last whose title it says."""
    return max((number for number in range(1, MOST_BATCHES + 1) if f"batch {number}" in said), default=1)


def of_batch(block: Mapping[str, Any], number: int) -> Mapping[str, Any] | None:
    """A block as it stands for a batch; of the others, each once."""
    key = str(block.get("fields") or block.get("table") or "")
    if key not in OF_BATCH:
        return block if number == 1 else None
    if number == 1:
        return block
    kind = "fields" if "fields" in block else "table"
    title = block["title"].replace("Batch 1", f"Batch {number}")
    row = block["row"] + (number - 1) * BATCH_ROWS
    return {**block, kind: key.removesuffix("1") + str(number), "title": title, "row": row}


def bring(upgrade: Upgrade, units: Units) -> None:
    """Every typed cell of format 1 to its place in format 2."""
    for name in KEPT:
        upgrade.move(name, name)
    for old, new in RENAMED.items():
        upgrade.move(old, new)
    _weather(upgrade)
    lots = _lots(upgrade)
    _boils(upgrade, lots)
    _batches(upgrade, lots)


def _weather(upgrade: Upgrade) -> None:
    """A forecast's rows had no dates of their own: they followed its first day, where none was given Today."""
    source = next((name for name in ("signs.starts", "weekend.today") if upgrade.column(name)), "")
    starts = upgrade.column(source)[0] if source else None
    for key in ("low", "high"):
        for offset, value in enumerate(upgrade.column(f"forecast.{key}")):
            if isinstance(starts, datetime.date) and value is not None:
                upgrade.put("weather.date", offset, starts + datetime.timedelta(days=offset), source)
                upgrade.put(f"weather.{key}", offset, value, f"forecast.{key}", offset)


def _lots(upgrade: Upgrade) -> dict[str, str]:
    """What the lots of Storage are called now: sap is all sap, part-boiled is what a boil of its day gave."""
    boils = {day: number for number, day in reversed(list(enumerate(upgrade.column("boil.date"), 1)))}
    days, strengths = upgrade.column("storage.put"), upgrade.column("storage.brix")
    found = {}
    for row, lot in enumerate(upgrade.column("storage.lot")):
        brix = strengths[row] if row < len(strengths) else None
        boil = boils.get(days[row] if row < len(days) else None)
        if lot is not None and isinstance(brix, float) and brix < SAP_BELOW:
            found[str(lot).casefold()] = "all sap"
        elif lot is not None and boil:
            found[str(lot).casefold()] = f"B{boil}"
    return found


def _boils(upgrade: Upgrade, lots: Mapping[str, str]) -> None:
    for row in range(len(upgrade.column("boil.date"))):
        names = []
        for key in ("lot_a", "lot_b", "lot_c", "lot_d"):
            column = upgrade.column(f"boil.{key}")
            lot = column[row] if row < len(column) else None
            if lot is not None and str(lot).casefold() in lots:
                names.append(lots[str(lot).casefold()])
        sap = upgrade.column("boil.sap")
        if row < len(sap) and sap[row] is not None:
            names.append("all sap")
        if names and set(names) != {"all sap"}:
            upgrade.put("boil.took", row, ", ".join(dict.fromkeys(names)))


def _batches(upgrade: Upgrade, lots: Mapping[str, str]) -> None:
    meant = upgrade.column("storage.meant")
    names = upgrade.column("storage.lot")
    row = 0
    for number in range(1, MOST_BATCHES + 1):
        for old, new in OF_A_BATCH.items():
            name = old.format(number)
            if upgrade.column(name):
                upgrade.put(f"batches.{new}", number - 1, upgrade.column(name)[0], name)
        mine = [lots.get(str(names[at]).casefold(), "") for at, batch in enumerate(meant) if batch == number]
        boils = [name for name in dict.fromkeys(mine) if name.startswith("B")]
        if boils:
            upgrade.put("batches.goes_in", number - 1, ", ".join(boils))
        times, readings = (upgrade.column(f"readings{number}.{key}") for key in ("time", "reading"))
        for offset in range(max(len(times), len(readings))):
            for key, column in (("time", times), ("reading", readings)):
                if offset < len(column) and column[offset] is not None:
                    upgrade.put(f"run.{key}", row, column[offset], f"readings{number}.{key}", offset)
            if offset == 0:
                upgrade.put("run.batch", row, float(number))
            row += 1
