"""What must the thermometer read tonight?  Two ways to know, and what an error costs.

python examples/tonight.py
"""

from sheetfuncs import AIR_PRESSURE_HERE, BRIX_BY_BOIL, FINISH_READING, FINISH_TEMP

TARGET = 66.9  # °Brix
BAROMETER, ELEVATION = 29.85, 650.0  # inHg, altimeter setting; ft
IN_WATER = 211.5  # °F, this thermometer in boiling water, tonight

pressure = AIR_PRESSURE_HERE(BAROMETER, ELEVATION)
goal = FINISH_READING(TARGET, IN_WATER)
print(f"by the barometer a thermometer without error reads {FINISH_TEMP(TARGET, pressure):.1f} °F")
print(f"this one, by its reading in boiling water, reads   {goal:.1f} °F")
for late in (-1.0, -0.5, 0.5, 1.0):
    print(f"stopped {late:+.1f} F° from that: {BRIX_BY_BOIL(goal + late, IN_WATER):.1f} °Brix")
