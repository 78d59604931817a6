"""Which jars to finish together: two part-boiled jars, poured together and boiled to syrup.

python examples/compare_batches.py
"""

from sheetfuncs import BOIL_BRIX, BOIL_WATER, JAR_COUNT, SYRUP_FROM_SAP

TARGET = 66.9  # °Brix
JARS = {"J1": (1.1, 29.3), "J2": (1.4, 33.4)}  # gal, °Brix

syrup = sum(SYRUP_FROM_SAP(volume, brix, TARGET) for volume, brix in JARS.values())
volume = sum(volume for volume, _ in JARS.values())
brix = BOIL_BRIX(syrup, TARGET, volume)
print(f"{volume:.1f} gal at {brix:.1f} °Brix goes in, {BOIL_WATER(volume, brix, TARGET):.2f} gal of water must leave")
print(f"{syrup:.2f} gal of syrup comes out: {JAR_COUNT(syrup, 16.0)} pints")
