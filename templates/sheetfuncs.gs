// Maple sugaring functions for Google Sheets, of sheetfuncs 0.2.0.
// Written by `sheetfuncs script-addin`: do not edit, but write it anew.

/**
 * Air pressure at an elevation on a standard day. Returns air pressure at the pan, inHg or hPa.
 *
 * @param {number|string} elevation height above the sea; -1,400 to 16,000 ft, or -425 to 4,900 m
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} air pressure at the pan
 * @customfunction
 */
function AIR_PRESSURE(elevation, units) {
  return cell_(AIR_PRESSURE_, [elevation, units]);
}

/**
 * Air pressure at the pan today, from the altimeter setting and the elevation. Returns air pressure at the pan, inHg or hPa.
 *
 * @param {number|string} barometer altimeter setting, as airports and the U.S. weather service report it; 26 to 32 inHg, or 880 to 1,084 hPa
 * @param {number|string} elevation height above the sea; -1,400 to 16,000 ft, or -425 to 4,900 m
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} air pressure at the pan
 * @customfunction
 */
function AIR_PRESSURE_HERE(barometer, elevation, units) {
  return cell_(AIR_PRESSURE_HERE_, [barometer, elevation, units]);
}

/**
 * Air pressure at the pan today, from sea-level pressure, the elevation and the cold outdoors. Returns air pressure at the pan, inHg or hPa.
 *
 * @param {number|string} sea_level sea-level pressure of a forecast, as telephones and weather maps show it; 26 to 32 inHg, or 880 to 1,084 hPa
 * @param {number|string} elevation height above the sea; -1,400 to 16,000 ft, or -425 to 4,900 m
 * @param {number|string} temperature air temperature outdoors, the mean of now and 12 hours ago; -60 to 130 °F, or -51 to 54.5 °C
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} air pressure at the pan
 * @customfunction
 */
function AIR_PRESSURE_BY_SEA_LEVEL(sea_level, elevation, temperature, units) {
  return cell_(AIR_PRESSURE_BY_SEA_LEVEL_, [sea_level, elevation, temperature, units]);
}

/**
 * Boiling point of pure water at an air pressure. Returns boiling point of water, °F or °C.
 *
 * @param {number|string} pressure air pressure at the pan, not reduced to sea level (AIR_PRESSURE or AIR_PRESSURE_HERE gives it); 15 to 32 inHg, or 508 to 1,084 hPa
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} boiling point of water
 * @customfunction
 */
function WATER_BOILS(pressure, units) {
  return cell_(WATER_BOILS_, [pressure, units]);
}

/**
 * How many taps a maple can bear: under 12 in none, 12 to 18 in one, over 18 in two. Returns taps the trunk can bear, count.
 *
 * @param {number|string} trunk_diameter thickness of the trunk at 4.5 ft (1.4 m); 0 to 120 in, or 0 to 305 cm
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} taps the trunk can bear
 * @customfunction
 */
function TAP_COUNT(trunk_diameter, units) {
  return cell_(TAP_COUNT_, [trunk_diameter, units]);
}

/**
 * Whether sap will run on the day after a night: 0 no, 1 maybe, 2 likely. Returns 0 no, 1 maybe, 2 likely, count.
 *
 * @param {number|string} night_low lowest temperature of the night; -60 to 130 °F, or -51 to 54.5 °C
 * @param {number|string} recent_low lowest temperature of this night and the two before; -60 to 130 °F, or -51 to 54.5 °C
 * @param {number|string} day_high highest temperature of the day after; -60 to 130 °F, or -51 to 54.5 °C
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} 0 no, 1 maybe, 2 likely
 * @customfunction
 */
function SAP_RUNS(night_low, recent_low, day_high, units) {
  return cell_(SAP_RUNS_, [night_low, recent_low, day_high, units]);
}

/**
 * Warmth of a day that brings the buds on. Added up from 1 January it tells how far spring is. Returns degree-days over 5 °C (41 °F), F°·days or C°·days.
 *
 * @param {number|string} low lowest temperature of the day; -60 to 130 °F, or -51 to 54.5 °C
 * @param {number|string} high highest temperature of the day; -60 to 130 °F, or -51 to 54.5 °C
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} degree-days over 5 °C (41 °F)
 * @customfunction
 */
function SEASON_WARMTH(low, high, units) {
  return cell_(SEASON_WARMTH_, [low, high, units]);
}

/**
 * How likely a week is still one of the season, by its frosts and warmth since 1 January. Returns probability, 0 to 1; the authors count a week as in the season from 0.51 on.
 *
 * @param {number|string} freeze_thaws days since 1 January with a low under 3 °C (37.4 °F) and a high over it; 0 to 120 count
 * @param {number|string} warmth degree-days over 5 °C (41 °F) since 1 January: the sum of SEASON_WARMTH; 0 to 3,600 F°·days, or 0 to 2,000 C°·days
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} probability, 0 to 1; the authors count a week as in the season from 0.51 on
 * @customfunction
 */
function SEASON_GOES_ON(freeze_thaws, warmth, units) {
  return cell_(SEASON_GOES_ON_, [freeze_thaws, warmth, units]);
}

/**
 * Mass of sugar in a volume of sap or syrup. It stays when the water leaves. Returns mass of sugar, lb or kg.
 *
 * @param {number|string} volume volume of sap or syrup, cold; 0 to 1,000,000 gal, or 0 to 3,800,000 L
 * @param {number|string} brix sugar in the liquid, percent by mass; 0 to 85 °Brix
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} mass of sugar
 * @customfunction
 */
function SAP_SUGAR(volume, brix, units) {
  return cell_(SAP_SUGAR_, [volume, brix, units]);
}

/**
 * How many volumes of sap boil down to one volume of syrup. Returns volumes of sap for one of syrup.
 *
 * @param {number|string} brix sugar in the liquid, percent by mass, more than none; 0.1 to 85 °Brix
 * @param {number|string} syrup_brix sugar in the syrup wanted, percent by mass (66.9 is usual); 0.1 to 85 °Brix
 * @return {number|string} volumes of sap for one of syrup
 * @customfunction
 */
function SAP_PER_SYRUP(brix, syrup_brix) {
  return cell_(SAP_PER_SYRUP_, [brix, syrup_brix]);
}

/**
 * Volume that is left when sap is boiled to a strength; from any strength to any other. Returns volume left, in the unit of `volume`, any one unit of volume.
 *
 * @param {number|string} volume volume of the liquid, cold; 0 to 10,000,000 any one unit of volume
 * @param {number|string} brix sugar in the liquid, percent by mass; 0 to 85 °Brix
 * @param {number|string} syrup_brix sugar in the syrup wanted, percent by mass (66.9 is usual); 0.1 to 85 °Brix
 * @return {number|string} volume left, in the unit of `volume`
 * @customfunction
 */
function SYRUP_FROM_SAP(volume, brix, syrup_brix) {
  return cell_(SYRUP_FROM_SAP_, [volume, brix, syrup_brix]);
}

/**
 * Strength of the liquid when ice is lifted out of freezing sap and thrown away. Returns strength of the liquid left, °Brix.
 *
 * @param {number|string} brix sugar in the liquid, percent by mass; 0 to 85 °Brix
 * @param {number|string} ice_share share of the mass that is thrown out as ice, 0.25 for a quarter; 0 to 0.95 share
 * @param {number|string} ice_brix sugar left in the ice, percent by mass (often 0.2 to 1); 0 to 85 °Brix
 * @return {number|string} strength of the liquid left
 * @customfunction
 */
function SAP_AFTER_ICE(brix, ice_share, ice_brix) {
  return cell_(SAP_AFTER_ICE_, [brix, ice_share, ice_brix]);
}

/**
 * Share of the sugar that goes out with the ice. Returns share of the sugar, 0.1 for a tenth.
 *
 * @param {number|string} brix sugar in the liquid, percent by mass, more than none; 0.1 to 85 °Brix
 * @param {number|string} ice_share share of the mass that is thrown out as ice, 0.25 for a quarter; 0 to 0.95 share
 * @param {number|string} ice_brix sugar left in the ice, percent by mass (often 0.2 to 1); 0 to 85 °Brix
 * @return {number|string} share of the sugar, 0.1 for a tenth
 * @customfunction
 */
function SAP_ICE_LOSS(brix, ice_share, ice_brix) {
  return cell_(SAP_ICE_LOSS_, [brix, ice_share, ice_brix]);
}

/**
 * Freezing point of sap. Returns temperature at which ice begins to form, °F or °C.
 *
 * @param {number|string} brix sugar in the sap, percent by mass; 0 to 42 °Brix
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} temperature at which ice begins to form
 * @customfunction
 */
function SAP_FREEZES(brix, units) {
  return cell_(SAP_FREEZES_, [brix, units]);
}

/**
 * Days that sap or part-boiled sap keeps. A judgement: smell and look before you boil. Returns days, from when it was collected or last brought to a boil.
 *
 * @param {number|string} brix sugar in the liquid, percent by mass; 0 to 85 °Brix
 * @param {number|string} temperature temperature the lot is kept at; -40 to 100 °F, or -40 to 38 °C
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} days, from when it was collected or last brought to a boil
 * @customfunction
 */
function SAP_KEEPS(brix, temperature, units) {
  return cell_(SAP_KEEPS_, [brix, temperature, units]);
}

/**
 * Strength after boiling to a measured volume; both volumes cold, no sugar lost. Returns strength after boiling, °Brix.
 *
 * @param {number|string} volume volume of the liquid, cold; 0 to 10,000,000 any one unit of volume
 * @param {number|string} brix sugar in the liquid, percent by mass; 0 to 85 °Brix
 * @param {number|string} volume_left volume left, cold, in the unit of `volume`; 0 to 10,000,000 any one unit of volume
 * @return {number|string} strength after boiling
 * @customfunction
 */
function BOIL_BRIX(volume, brix, volume_left) {
  return cell_(BOIL_BRIX_, [volume, brix, volume_left]);
}

/**
 * Water to boil away to bring sap to a strength. Returns cold volume of water, in the unit of `volume`, any one unit of volume.
 *
 * @param {number|string} volume volume of the liquid, cold; 0 to 10,000,000 any one unit of volume
 * @param {number|string} brix sugar in the liquid, percent by mass; 0 to 85 °Brix
 * @param {number|string} to_brix sugar in the syrup wanted, percent by mass (66.9 is usual); 0.1 to 85 °Brix
 * @return {number|string} cold volume of water, in the unit of `volume`
 * @customfunction
 */
function BOIL_WATER(volume, brix, to_brix) {
  return cell_(BOIL_WATER_, [volume, brix, to_brix]);
}

/**
 * Hours to bring sap to a strength at a rate of boiling, without heating up or rests. Returns hours.
 *
 * @param {number|string} volume volume of the liquid, cold; 0 to 10,000,000 any one unit of volume
 * @param {number|string} brix sugar in the liquid, percent by mass; 0 to 85 °Brix
 * @param {number|string} to_brix sugar in the syrup wanted, percent by mass (66.9 is usual); 0.1 to 85 °Brix
 * @param {number|string} rate volume of water that boils off in an hour; 0.001 to 1,000,000 the same unit an hour
 * @return {number|string} hours
 * @customfunction
 */
function BOIL_HOURS(volume, brix, to_brix, rate) {
  return cell_(BOIL_HOURS_, [volume, brix, to_brix, rate]);
}

/**
 * Heat to warm sap and boil its water off, all of it reaching the sap. Returns heat, Btu or MJ.
 *
 * @param {number|string} volume volume of sap or syrup, cold; 0 to 1,000,000 gal, or 0 to 3,800,000 L
 * @param {number|string} brix sugar in the liquid, percent by mass; 0 to 85 °Brix
 * @param {number|string} to_brix sugar in the syrup wanted, percent by mass (66.9 is usual); 0.1 to 85 °Brix
 * @param {number|string} sap_temperature temperature of the sap at the start; 20 to 212 °F, or -6.5 to 100 °C
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} heat
 * @customfunction
 */
function BOIL_HEAT(volume, brix, to_brix, sap_temperature, units) {
  return cell_(BOIL_HEAT_, [volume, brix, to_brix, sap_temperature, units]);
}

/**
 * Fuel that brings a heat to the sap; efficiency is the share of its heat that gets there. Returns amount of fuel: wood in cords or m³ stacked, propane and fuel oil in gal or L, gas in ft³ or m³, else 20-lb bottles, therms or kWh, the fuel's unit.
 *
 * @param {number|string} heat heat that must reach the sap; 0 to 1e+12 Btu, or 0 to 1,055,000,000 MJ
 * @param {number|string} fuel fuel; one of hardwood, softwood, propane, propane bottle, fuel oil, natural gas, natural gas by therm, electricity
 * @param {number|string} efficiency share of the fuel's heat that reaches the sap (FUEL_EFFICIENCY has one to start with); 0.01 to 1 share
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} amount of fuel: wood in cords or m³ stacked, propane and fuel oil in gal or L, gas in ft³ or m³, else 20-lb bottles, therms or kWh
 * @customfunction
 */
function BOIL_FUEL(heat, fuel, efficiency, units) {
  return cell_(BOIL_FUEL_, [heat, fuel, efficiency, units]);
}

/**
 * Share of a fuel's heat that reaches the sap, to start with: your own log knows better. Returns share of the fuel's heat.
 *
 * @param {number|string} fuel fuel; one of hardwood, softwood, propane, propane bottle, fuel oil, natural gas, natural gas by therm, electricity
 * @return {number|string} share of the fuel's heat
 * @customfunction
 */
function FUEL_EFFICIENCY(fuel) {
  return cell_(FUEL_EFFICIENCY_, [fuel]);
}

/**
 * How fast a flat pan over a fire boils water off. A guess to start with: measure your own. Returns volume of water an hour, gal/h or L/h.
 *
 * @param {number|string} area area of the pan's bottom; 0.05 to 1,000 sq ft, or 0.005 to 93 m²
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} volume of water an hour
 * @customfunction
 */
function PAN_RATE(area, units) {
  return cell_(PAN_RATE_, [area, units]);
}

/**
 * How fast a heat boils water off, once it boils; efficiency is the share that reaches the sap. Returns volume of water an hour, gal/h or L/h.
 *
 * @param {number|string} power power of the stove, hot plate or burner; 1 to 10,000,000 Btu/h, or 0.0003 to 2,930 kW
 * @param {number|string} efficiency share of the fuel's heat that reaches the sap (FUEL_EFFICIENCY has one to start with); 0.01 to 1 share
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} volume of water an hour
 * @customfunction
 */
function BOIL_RATE(power, efficiency, units) {
  return cell_(BOIL_RATE_, [power, efficiency, units]);
}

/**
 * Depth of a volume in a pan with upright sides. Returns depth of the liquid, in or cm.
 *
 * @param {number|string} volume volume of sap or syrup, cold; 0 to 1,000,000 gal, or 0 to 3,800,000 L
 * @param {number|string} area area of the pan's bottom; 0.05 to 1,000 sq ft, or 0.005 to 93 m²
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} depth of the liquid
 * @customfunction
 */
function PAN_DEPTH(volume, area, units) {
  return cell_(PAN_DEPTH_, [volume, area, units]);
}

/**
 * How much hotter than water sap or syrup boils, at its strength and the air pressure. Returns degrees above boiling water, F° or C°.
 *
 * @param {number|string} brix sugar in the liquid, percent by mass; 0 to 85 °Brix
 * @param {number|string} pressure air pressure at the pan, not reduced to sea level (AIR_PRESSURE or AIR_PRESSURE_HERE gives it); 15 to 32 inHg, or 508 to 1,084 hPa
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} degrees above boiling water
 * @customfunction
 */
function FINISH_RISE(brix, pressure, units) {
  return cell_(FINISH_RISE_, [brix, pressure, units]);
}

/**
 * Temperature at which sap or syrup of a strength boils, at the air pressure of the day. Returns boiling temperature, °F or °C.
 *
 * @param {number|string} brix sugar in the liquid, percent by mass; 0 to 85 °Brix
 * @param {number|string} pressure air pressure at the pan, not reduced to sea level (AIR_PRESSURE or AIR_PRESSURE_HERE gives it); 15 to 32 inHg, or 508 to 1,084 hPa
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} boiling temperature
 * @customfunction
 */
function FINISH_TEMP(brix, pressure, units) {
  return cell_(FINISH_TEMP_, [brix, pressure, units]);
}

/**
 * What this thermometer shows when the strength is reached, from what it shows in boiling water. Returns what the thermometer shows, °F or °C.
 *
 * @param {number|string} brix sugar in the liquid, percent by mass; 0 to 85 °Brix
 * @param {number|string} water_reading what the thermometer shows in water boiling hard, today; 175 to 222 °F, or 79.5 to 105.5 °C
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} what the thermometer shows
 * @customfunction
 */
function FINISH_READING(brix, water_reading, units) {
  return cell_(FINISH_READING_, [brix, water_reading, units]);
}

/**
 * Minutes until the strength is reached at a rate of boiling; 0 when it is reached or passed. Returns minutes.
 *
 * @param {number|string} volume volume of the liquid, cold; 0 to 10,000,000 any one unit of volume
 * @param {number|string} brix sugar in the liquid, percent by mass; 0 to 85 °Brix
 * @param {number|string} syrup_brix sugar in the syrup wanted, percent by mass (66.9 is usual); 0.1 to 85 °Brix
 * @param {number|string} rate volume of water that boils off in an hour; 0.001 to 1,000,000 the same unit an hour
 * @return {number|string} minutes
 * @customfunction
 */
function FINISH_MINUTES(volume, brix, syrup_brix, rate) {
  return cell_(FINISH_MINUTES_, [volume, brix, syrup_brix, rate]);
}

/**
 * Strength of sap or syrup from what one thermometer shows in it and in water, both boiling. Returns strength of what is boiling, °Brix.
 *
 * @param {number|string} reading what the thermometer shows in the boiling pan; 150 to 300 °F, or 65 to 149 °C
 * @param {number|string} water_reading what the thermometer shows in water boiling hard, today; 175 to 222 °F, or 79.5 to 105.5 °C
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} strength of what is boiling
 * @customfunction
 */
function BRIX_BY_BOIL(reading, water_reading, units) {
  return cell_(BRIX_BY_BOIL_, [reading, water_reading, units]);
}

/**
 * How far off BRIX_BY_BOIL may be, the larger side: by the thermometer and by its water reading. Returns °Brix either way.
 *
 * @param {number|string} reading what the thermometer shows in the boiling pan; 150 to 300 °F, or 65 to 149 °C
 * @param {number|string} water_reading what the thermometer shows in water boiling hard, today; 175 to 222 °F, or 79.5 to 105.5 °C
 * @param {number|string} give_or_take how far off a reading of this thermometer may be; 0 to 10 F°, or 0 to 5.5 C°
 * @param {number|string} water_from where the water reading is from; one of today, another day, barometer, elevation
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} °Brix either way
 * @customfunction
 */
function BRIX_BY_BOIL_SPREAD(reading, water_reading, give_or_take, water_from, units) {
  return cell_(BRIX_BY_BOIL_SPREAD_, [reading, water_reading, give_or_take, water_from, units]);
}

/**
 * True strength from a hydrometer marked at 60 °F, floating in syrup at a temperature. Returns true strength, °Brix.
 *
 * @param {number|string} reading what the hydrometer shows, °Brix scale marked at 60 °F; 0 to 85 °Brix
 * @param {number|string} temperature temperature of the liquid; 32 to 221 °F, or 0 to 105 °C
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} true strength
 * @customfunction
 */
function BRIX_BY_HYDROMETER(reading, temperature, units) {
  return cell_(BRIX_BY_HYDROMETER_, [reading, temperature, units]);
}

/**
 * True strength from a hydrometer marked at another temperature, as sap hydrometers are. Returns true strength, °Brix.
 *
 * @param {number|string} reading what the hydrometer shows, °Brix; 0 to 85 °Brix
 * @param {number|string} temperature temperature of the liquid; 32 to 221 °F, or 0 to 105 °C
 * @param {number|string} marked_at temperature its scale was marked for (38 °F on most sap hydrometers); 32 to 70 °F, or 0 to 21 °C
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} true strength
 * @customfunction
 */
function BRIX_BY_SAP_HYDROMETER(reading, temperature, marked_at, units) {
  return cell_(BRIX_BY_SAP_HYDROMETER_, [reading, temperature, marked_at, units]);
}

/**
 * Strength from a kitchen scale: a container weighed empty, full of water, and full of sap or syrup. Returns true strength, °Brix.
 *
 * @param {number|string} empty_weight weight of the empty container; 0 to 1,000,000 any one unit of weight
 * @param {number|string} water_weight its weight full of water to a mark, in the same unit; 0 to 1,000,000 any one unit of weight
 * @param {number|string} full_weight its weight full of the liquid to the same mark; 0 to 1,000,000 any one unit of weight
 * @param {number|string} temperature temperature of the liquid and of the water; 32 to 212 °F, or 0 to 100 °C
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} true strength
 * @customfunction
 */
function BRIX_BY_WEIGHT(empty_weight, water_weight, full_weight, temperature, units) {
  return cell_(BRIX_BY_WEIGHT_, [empty_weight, water_weight, full_weight, temperature, units]);
}

/**
 * True strength from a refractometer that does not correct for temperature itself; not under 0. Returns true strength, °Brix.
 *
 * @param {number|string} reading what the refractometer shows, no temperature compensation, marked at 20 °C; 0 to 75 °Brix
 * @param {number|string} temperature temperature of the instrument and the drop; 50 to 86 °F, or 10 to 30 °C
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} true strength
 * @customfunction
 */
function BRIX_BY_REFRACTOMETER(reading, temperature, units) {
  return cell_(BRIX_BY_REFRACTOMETER_, [reading, temperature, units]);
}

/**
 * Strength from true specific gravity 20/20 °C, that is density over that of water at 20 °C. Returns true strength, °Brix.
 *
 * @param {number|string} gravity true specific gravity 20/20 °C; 1 to 1.45 SG 20/20 °C
 * @return {number|string} true strength
 * @customfunction
 */
function BRIX_BY_GRAVITY(gravity) {
  return cell_(BRIX_BY_GRAVITY_, [gravity]);
}

/**
 * What a hydrometer marked in °Brix at 60 °F shows in syrup of a strength, that hot. Returns what the hydrometer shows, °Brix.
 *
 * @param {number|string} brix sugar in the liquid, percent by mass; 0 to 85 °Brix
 * @param {number|string} temperature temperature of the liquid; 32 to 221 °F, or 0 to 105 °C
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} what the hydrometer shows
 * @customfunction
 */
function SYRUP_FLOATS(brix, temperature, units) {
  return cell_(SYRUP_FLOATS_, [brix, temperature, units]);
}

/**
 * True specific gravity 20/20 °C: density over that of water, both at 20 °C. Returns true specific gravity, SG 20/20 °C.
 *
 * @param {number|string} brix sugar in the liquid, percent by mass; 0 to 85 °Brix
 * @return {number|string} true specific gravity
 * @customfunction
 */
function SYRUP_GRAVITY(brix) {
  return cell_(SYRUP_GRAVITY_, [brix]);
}

/**
 * Degrees Baumé of a strength, modulus 145, on the 20/20 °C gravity. Returns degrees Baumé, °Baumé.
 *
 * @param {number|string} brix sugar in the liquid, percent by mass; 0 to 85 °Brix
 * @return {number|string} degrees Baumé
 * @customfunction
 */
function SYRUP_BAUME(brix) {
  return cell_(SYRUP_BAUME_, [brix]);
}

/**
 * Density at a temperature. True mass; weighed in air a gallon reads 0.01 lb less. Returns density, true mass, lb/gal or kg/L.
 *
 * @param {number|string} brix sugar in the liquid, percent by mass; 0 to 85 °Brix
 * @param {number|string} temperature temperature of the liquid; 32 to 221 °F, or 0 to 105 °C
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} density, true mass
 * @customfunction
 */
function SYRUP_DENSITY(brix, temperature, units) {
  return cell_(SYRUP_DENSITY_, [brix, temperature, units]);
}

/**
 * Volume of hot sap or syrup once it has cooled to 68 °F (20 °C). Returns cold volume, gal or L.
 *
 * @param {number|string} volume volume of syrup; 0 to 1,000,000 gal, or 0 to 3,800,000 L
 * @param {number|string} brix sugar in the liquid, percent by mass; 0 to 85 °Brix
 * @param {number|string} temperature temperature of the liquid; 32 to 221 °F, or 0 to 105 °C
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} cold volume
 * @customfunction
 */
function SYRUP_COLD(volume, brix, temperature, units) {
  return cell_(SYRUP_COLD_, [volume, brix, temperature, units]);
}

/**
 * Water to stir in (positive) or to boil off (negative) to bring syrup to a strength. Cold volumes. Returns water, positive to stir in, negative to boil off, fl oz or mL.
 *
 * @param {number|string} volume volume of syrup; 0 to 1,000,000 gal, or 0 to 3,800,000 L
 * @param {number|string} brix sugar in the liquid, percent by mass; 0 to 85 °Brix
 * @param {number|string} syrup_brix sugar in the syrup wanted, percent by mass (66.9 is usual); 0.1 to 85 °Brix
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} water, positive to stir in, negative to boil off
 * @customfunction
 */
function SYRUP_ADJUST(volume, brix, syrup_brix, units) {
  return cell_(SYRUP_ADJUST_, [volume, brix, syrup_brix, units]);
}

/**
 * Strength of two lots poured together, cold volumes. Returns strength of the mix, °Brix.
 *
 * @param {number|string} volume volume of the liquid, cold; 0 to 10,000,000 any one unit of volume
 * @param {number|string} brix sugar in the liquid, percent by mass; 0 to 85 °Brix
 * @param {number|string} other_volume volume of the liquid, cold; 0 to 10,000,000 any one unit of volume
 * @param {number|string} other_brix sugar in the liquid, percent by mass; 0 to 85 °Brix
 * @return {number|string} strength of the mix
 * @customfunction
 */
function SYRUP_BLEND(volume, brix, other_volume, other_brix) {
  return cell_(SYRUP_BLEND_, [volume, brix, other_volume, other_brix]);
}

/**
 * Share of thick syrup, by cold volume, that brings thin syrup to a strength. Returns share of the thick syrup by volume, 0.5 for half.
 *
 * @param {number|string} thin_brix sugar in the thin syrup, percent by mass; 0 to 85 °Brix
 * @param {number|string} thick_brix sugar in the thick syrup, percent by mass; 0 to 85 °Brix
 * @param {number|string} syrup_brix sugar in the syrup wanted, percent by mass (66.9 is usual); 0.1 to 85 °Brix
 * @return {number|string} share of the thick syrup by volume, 0.5 for half
 * @customfunction
 */
function SYRUP_BLEND_SHARE(thin_brix, thick_brix, syrup_brix) {
  return cell_(SYRUP_BLEND_SHARE_, [thin_brix, thick_brix, syrup_brix]);
}

/**
 * Whether syrup is thin (it spoils), in range, or thick (it crystallises): against 66.0 to 68.9 °Brix. Returns thin, in range or thick.
 *
 * @param {number|string} brix sugar in the liquid, percent by mass; 0 to 85 °Brix
 * @return {number|string} thin, in range or thick
 * @customfunction
 */
function SYRUP_STATE(brix) {
  return cell_(SYRUP_STATE_, [brix]);
}

/**
 * Colour class from the light that passes: Golden, Amber, Dark or Very Dark. Returns grade by colour, Golden, Amber, Dark or Very Dark.
 *
 * @param {number|string} transmittance light that passes, percent, 560 nm, 10 mm, glycerol 100; 0 to 100 percent
 * @return {number|string} grade by colour
 * @customfunction
 */
function SYRUP_GRADE(transmittance) {
  return cell_(SYRUP_GRADE_, [transmittance]);
}

/**
 * Whole jars that a volume fills. Both hot or both cold: SYRUP_COLD turns one into the other. Returns jars filled, count.
 *
 * @param {number|string} volume volume of syrup; 0 to 1,000,000 gal, or 0 to 3,800,000 L
 * @param {number|string} jar_size volume of one jar, filled; 0.1 to 1,000 fl oz, or 3 to 30,000 mL
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} jars filled
 * @customfunction
 */
function JAR_COUNT(volume, jar_size, units) {
  return cell_(JAR_COUNT_, [volume, jar_size, units]);
}

/**
 * What is left over after the whole jars: for the taster. Returns what is left over, fl oz or mL.
 *
 * @param {number|string} volume volume of syrup; 0 to 1,000,000 gal, or 0 to 3,800,000 L
 * @param {number|string} jar_size volume of one jar, filled; 0.1 to 1,000 fl oz, or 3 to 30,000 mL
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} what is left over
 * @customfunction
 */
function JAR_REST(volume, jar_size, units) {
  return cell_(JAR_REST_, [volume, jar_size, units]);
}

/**
 * Weight of what a full jar holds, cold: for a label, or to see on a scale that it is full. Returns what a scale shows, less the jar, oz or g.
 *
 * @param {number|string} jar_size volume of one jar, filled; 0.1 to 1,000 fl oz, or 3 to 30,000 mL
 * @param {number|string} brix sugar in the liquid, percent by mass; 0 to 85 °Brix
 * @param {number|string} [units] unit system, "US" or "metric"; left out: "US"
 * @return {number|string} what a scale shows, less the jar
 * @customfunction
 */
function JAR_WEIGHT(jar_size, brix, units) {
  return cell_(JAR_WEIGHT_, [jar_size, brix, units]);
}

const ERRORS_ = ["#N/A", "#NUM!", "#VALUE!", "#DIV/0!", "#REF!", "#NAME?", "#NULL!", "#GETTING_DATA", "#SPILL!", "#CONNECT!", "#BLOCKED!", "#UNKNOWN!", "#FIELD!", "#CALC!"];

// One call: alone, or for each cell of its ranges.  Ranges are laid beside each other as in an array
// formula: one row or column is repeated, and where another range has no cell the answer is #N/A.
// What becomes of an error is for `failed` to say: by the text of the error, and whether it stands in a range.
function each_(relation, given, failed) {
  const ranges = given.filter(Array.isArray);
  const one = (values, inRange) => {
    try {
      const coming = values.find((value) => ERRORS_.includes(value));
      if (coming !== undefined) throw new Error(coming);
      const answer = relation(...values.map(number_));
      if (typeof answer === "number" && !isFinite(answer)) throw new Error("#NUM!");
      return answer;
    } catch (error) {
      return failed(ERRORS_.includes(error.message) ? error.message : "#VALUE!", inRange);
    }
  };
  if (ranges.length === 0) return one(given, false);
  const rows = Math.max(...ranges.map((range) => range.length));
  const columns = Math.max(...ranges.map((range) => range[0].length));
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => one(given.map((value) => element_(value, row, column)), true))
  );
}

function element_(value, row, column) {
  if (!Array.isArray(value)) return value;
  const cells = value[value.length === 1 ? 0 : row];
  if (cells === undefined) return "#N/A";
  const place = cells.length === 1 ? 0 : column;
  return place < cells.length ? cells[place] : "#N/A";
}

// Truth is 1 or 0, and a date the number of its day, as in a spreadsheet: day 0 is 30 December 1899.
function number_(value) {
  if (value === true) return 1;
  if (value === false) return 0;
  if (!(value instanceof Date)) return value;
  const day = Date.UTC(value.getFullYear(), value.getMonth(), value.getDate());
  const time = (value.getHours() * 60 + value.getMinutes()) * 60 + value.getSeconds();
  return (day - Date.UTC(1899, 11, 30)) / 86400000 + time / 86400;
}

function sameWord_(given, word) {
  return typeof given === "string" && given.toLowerCase() === word.toLowerCase();
}

// Sheets hands over an empty cell as an empty text, here 0 as in any sum, and an error as its text
// or as an Error.  A lone error is thrown: Sheets shows #ERROR! and the text beside it.  In a range
// it is the text itself, so that the other cells keep their answers.
function cell_(relation, given) {
  const plain = (value) => {
    if (Array.isArray(value)) return value.map((part) => (part === undefined || part === null ? 0 : plain(part)));
    if (value === undefined || value === null) return null;
    if (value === "") return 0;
    return value instanceof Error ? value.message : value;
  };
  return each_(relation, given.map(plain), (text, inRange) => {
    if (inRange) return text;
    throw new Error(text);
  });
}

function AIR_PRESSURE_(elevation, units) {
  if (elevation === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof elevation === "string") throw new Error("#VALUE!");
  v2 = elevation * 1;
  if (v2 < (v1 ? -425 : -1400) || v2 > (v1 ? 4900 : 16000)) throw new Error("#NUM!");
  if (v1) {
    v3 = v2;
  } else {
    v3 = v2 * 0.3048;
  }
  v4 = 101325 * Math.pow((1 - 0.0065 * (6356766 * v3 / (6356766 + v3)) / 288.15), 5.25587611327852);
  if (v1) {
    v5 = v4 / 100;
  } else {
    v5 = v4 / 3386.38864034;
  }
  return v5;
}

function AIR_PRESSURE_HERE_(barometer, elevation, units) {
  if (barometer === null || elevation === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof barometer === "string") throw new Error("#VALUE!");
  if (typeof elevation === "string") throw new Error("#VALUE!");
  v2 = barometer * 1;
  v3 = elevation * 1;
  if (v2 < (v1 ? 880 : 26) || v2 > (v1 ? 1084 : 32) || v3 < (v1 ? -425 : -1400)) throw new Error("#NUM!");
  if (v3 > (v1 ? 4900 : 16000)) throw new Error("#NUM!");
  if (v1) {
    v4 = v3;
  } else {
    v4 = v3 * 0.3048;
  }
  if (v1) {
    v5 = v2 * 100;
  } else {
    v5 = v2 * 3386.38864034;
  }
  v6 = Math.pow((v5 / 101325), 0.190263236508484) - 0.0065 * (6356766 * v4 / (6356766 + v4)) / 288.15;
  v7 = 101325 * Math.pow(v6, 5.25587611327852);
  if (v1) {
    v8 = v7 / 100;
  } else {
    v8 = v7 / 3386.38864034;
  }
  return v8;
}

function AIR_PRESSURE_BY_SEA_LEVEL_(sea_level, elevation, temperature, units) {
  if (sea_level === null || elevation === null || temperature === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8, v9, v10;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof sea_level === "string") throw new Error("#VALUE!");
  if (typeof elevation === "string" || typeof temperature === "string") throw new Error("#VALUE!");
  v2 = sea_level * 1;
  v3 = elevation * 1;
  v4 = temperature * 1;
  if (v2 < (v1 ? 880 : 26) || v2 > (v1 ? 1084 : 32) || v3 < (v1 ? -425 : -1400)) throw new Error("#NUM!");
  if (v3 > (v1 ? 4900 : 16000) || v4 < (v1 ? -51 : -60) || v4 > (v1 ? 54.5 : 130)) throw new Error("#NUM!");
  if (v1) {
    v5 = v4;
  } else {
    v5 = (v4 - 32) / 1.8;
  }
  v6 = v5 + 273.15;
  if (v1) {
    v7 = v3;
  } else {
    v7 = v3 * 0.3048;
  }
  if (v1) {
    v8 = v2 * 100;
  } else {
    v8 = v2 * 3386.38864034;
  }
  v9 = v8 * Math.pow((v6 / (v6 + 0.0065 * (6356766 * v7 / (6356766 + v7)))), 5.25587611327852);
  if (v1) {
    v10 = v9 / 100;
  } else {
    v10 = v9 / 3386.38864034;
  }
  return v10;
}

function WATER_BOILS_(pressure, units) {
  if (pressure === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8, v9, v10, v11;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof pressure === "string") throw new Error("#VALUE!");
  v2 = pressure * 1;
  if (v2 < (v1 ? 508 : 15) || v2 > (v1 ? 1084 : 32)) throw new Error("#NUM!");
  if (v1) {
    v3 = v2 * 100;
  } else {
    v3 = v2 * 3386.38864034;
  }
  v4 = Math.sqrt(v3 * 0.000001);
  v5 = Math.sqrt(v4);
  v6 = (-724213.16703206) * v4 + (-3232555.0322333) * v5 + 405113.40542057;
  v7 = 1167.0521452767 * v4 + 12020.82470247 * v5 + (-4823.2657361591);
  v8 = (-2) * v6 / (v7 + Math.sqrt(v7 * v7 - 4 * (v4 + (-17.073846940092) * v5 + 14.91510861353) * v6));
  v9 = 650.17534844798 + v8;
  v10 = (v9 - Math.sqrt(v9 * v9 - 4 * ((-0.23855557567849) + 650.17534844798 * v8))) / 2 - 273.15;
  if (v1) {
    v11 = v10;
  } else {
    v11 = v10 * 1.8 + 32;
  }
  return v11;
}

function TAP_COUNT_(trunk_diameter, units) {
  if (trunk_diameter === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof trunk_diameter === "string") throw new Error("#VALUE!");
  v2 = trunk_diameter * 1;
  if (v2 < 0 || v2 > (v1 ? 305 : 120)) throw new Error("#NUM!");
  if (v1) {
    v3 = v2 * 0.01;
  } else {
    v3 = v2 * 0.0254;
  }
  if (v3 < 0.304799999) {
    v4 = 0;
  } else {
    v4 = (v3 > 0.457200001 ? 2 : 1);
  }
  return v4;
}

function SAP_RUNS_(night_low, recent_low, day_high, units) {
  if (night_low === null || recent_low === null || day_high === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8, v9, v10;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof night_low === "string") throw new Error("#VALUE!");
  if (typeof recent_low === "string" || typeof day_high === "string") throw new Error("#VALUE!");
  v2 = night_low * 1;
  v3 = (v1 ? -51 : -60);
  v4 = (v1 ? 54.5 : 130);
  v5 = recent_low * 1;
  v6 = day_high * 1;
  if (v2 < v3 || v2 > v4 || v5 < v3 || v5 > v4 || v6 < v3 || v6 > v4) throw new Error("#NUM!");
  if (v1) {
    v7 = v5;
  } else {
    v7 = (v5 - 32) / 1.8;
  }
  if (v1) {
    v8 = v2;
  } else {
    v8 = (v2 - 32) / 1.8;
  }
  if (v1) {
    v9 = v6;
  } else {
    v9 = (v6 - 32) / 1.8;
  }
  if (!(v7 <= v8)) throw new Error("#NUM!");
  if (!(v8 <= v9)) throw new Error("#NUM!");
  if (v7 < 0) {
    if (v9 > 0) {
      if (v8 <= (-2)) {
        if (v9 >= 3.3) {
          v10 = (v9 <= 13 ? 2 : 1);
        } else {
          v10 = 1;
        }
      } else {
        v10 = 1;
      }
    } else {
      v10 = 0;
    }
  } else {
    v10 = 0;
  }
  return v10;
}

function SEASON_WARMTH_(low, high, units) {
  if (low === null || high === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8, v9, v10;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof low === "string" || typeof high === "string") throw new Error("#VALUE!");
  v2 = low * 1;
  v3 = (v1 ? -51 : -60);
  v4 = (v1 ? 54.5 : 130);
  v5 = high * 1;
  if (v2 < v3 || v2 > v4 || v5 < v3 || v5 > v4) throw new Error("#NUM!");
  if (v1) {
    v6 = v2;
  } else {
    v6 = (v2 - 32) / 1.8;
  }
  if (v1) {
    v7 = v5;
  } else {
    v7 = (v5 - 32) / 1.8;
  }
  v8 = (v6 + v7) / 2;
  if (!(v6 <= v7)) throw new Error("#NUM!");
  if (v8 > 5) {
    v9 = v8 - 5;
  } else {
    v9 = 0;
  }
  if (v1) {
    v10 = v9;
  } else {
    v10 = v9 * 1.8;
  }
  return v10;
}

function SEASON_GOES_ON_(freeze_thaws, warmth, units) {
  if (freeze_thaws === null || warmth === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof freeze_thaws === "string") throw new Error("#VALUE!");
  if (typeof warmth === "string") throw new Error("#VALUE!");
  v2 = freeze_thaws * 1;
  v3 = warmth * 1;
  if (v2 < 0 || v2 > 120 || v3 < 0 || v3 > (v1 ? 2000 : 3600)) throw new Error("#NUM!");
  if (v1) {
    v4 = v3;
  } else {
    v4 = v3 / 1.8;
  }
  return 1 / (1 + Math.exp(0 - ((-5.09) + (0.722 - 0.014 * v2) * v2 - 0.07 * v4)));
}

function SAP_SUGAR_(volume, brix, units) {
  if (volume === null || brix === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof volume === "string" || typeof brix === "string") throw new Error("#VALUE!");
  v2 = volume * 1;
  v3 = brix * 1;
  if (v2 < 0 || v2 > (v1 ? 3800000 : 1000000) || v3 < 0 || v3 > 85) throw new Error("#NUM!");
  v4 = v3 * 0.01;
  if (v1) {
    v5 = v2 * 0.001;
  } else {
    v5 = v2 * 0.003785411784;
  }
  v6 = (((((-17.289) * v4 + 13.4853) * v4 + (-3.9643)) * v4 + 40.9299) * v4 + 135.3705) * v4 + 385.1761;
  v7 = v5 * ((v6 * v4 + 998.203122737355) * v3 * 0.01);
  if (v1) {
    v8 = v7;
  } else {
    v8 = v7 / 0.45359237;
  }
  return v8;
}

function SAP_PER_SYRUP_(brix, syrup_brix) {
  if (brix === null || syrup_brix === null) throw new Error("#N/A");
  let v1, v2, v3, v4, v5, v6;
  if (typeof brix === "string" || typeof syrup_brix === "string") throw new Error("#VALUE!");
  v1 = brix * 1;
  v2 = syrup_brix * 1;
  if (v1 < 0.1 || v1 > 85 || v2 < 0.1 || v2 > 85) throw new Error("#NUM!");
  v3 = v2 * 0.01;
  v4 = v1 * 0.01;
  v5 = (((((-17.289) * v3 + 13.4853) * v3 + (-3.9643)) * v3 + 40.9299) * v3 + 135.3705) * v3 + 385.1761;
  v6 = (((((-17.289) * v4 + 13.4853) * v4 + (-3.9643)) * v4 + 40.9299) * v4 + 135.3705) * v4 + 385.1761;
  return (v5 * v3 + 998.203122737355) * v2 * 0.01 / ((v6 * v4 + 998.203122737355) * v1 * 0.01);
}

function SYRUP_FROM_SAP_(volume, brix, syrup_brix) {
  if (volume === null || brix === null || syrup_brix === null) throw new Error("#N/A");
  let v1, v2, v3, v4, v5, v6, v7, v8;
  if (typeof volume === "string" || typeof brix === "string" || typeof syrup_brix === "string") throw new Error("#VALUE!");
  v1 = volume * 1;
  v2 = brix * 1;
  v3 = syrup_brix * 1;
  if (v1 < 0 || v1 > 10000000 || v2 < 0 || v2 > 85 || v3 < 0.1 || v3 > 85) throw new Error("#NUM!");
  v4 = v2 * 0.01;
  v5 = v3 * 0.01;
  v6 = (((((-17.289) * v4 + 13.4853) * v4 + (-3.9643)) * v4 + 40.9299) * v4 + 135.3705) * v4 + 385.1761;
  v7 = (((((-17.289) * v5 + 13.4853) * v5 + (-3.9643)) * v5 + 40.9299) * v5 + 135.3705) * v5 + 385.1761;
  v8 = v1 * ((v6 * v4 + 998.203122737355) * v2 * 0.01) / ((v7 * v5 + 998.203122737355) * v3 * 0.01);
  return v8;
}

function SAP_AFTER_ICE_(brix, ice_share, ice_brix) {
  if (brix === null || ice_share === null || ice_brix === null) throw new Error("#N/A");
  let v1, v2, v3, v4;
  if (typeof brix === "string" || typeof ice_share === "string" || typeof ice_brix === "string") throw new Error("#VALUE!");
  v1 = brix * 1;
  v2 = ice_share * 1;
  v3 = ice_brix * 1;
  if (v1 < 0 || v1 > 85 || v2 < 0 || v2 > 0.95 || v3 < 0 || v3 > 85) throw new Error("#NUM!");
  v4 = (v1 - v2 * v3) / (1 - v2);
  if (!(v4 >= (-0.000000001))) throw new Error("#NUM!");
  if (!(v4 <= 85.000000001)) throw new Error("#NUM!");
  return (v4 > 0 ? v4 : 0);
}

function SAP_ICE_LOSS_(brix, ice_share, ice_brix) {
  if (brix === null || ice_share === null || ice_brix === null) throw new Error("#N/A");
  let v1, v2, v3, v4;
  if (typeof brix === "string" || typeof ice_share === "string" || typeof ice_brix === "string") throw new Error("#VALUE!");
  v1 = brix * 1;
  v2 = ice_share * 1;
  v3 = ice_brix * 1;
  if (v1 < 0.1 || v1 > 85 || v2 < 0 || v2 > 0.95 || v3 < 0 || v3 > 85) throw new Error("#NUM!");
  v4 = v2 * v3 / v1;
  if (!(v4 <= 1.000000001)) throw new Error("#NUM!");
  return v4;
}

function SAP_FREEZES_(brix, units) {
  if (brix === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof brix === "string") throw new Error("#VALUE!");
  v2 = brix * 1;
  if (v2 < 0 || v2 > 42) throw new Error("#NUM!");
  v3 = 1000 * v2 / ((100 - v2) * 342.2965);
  v4 = (-1.86) * (1 + (0.0962763 + 0.0107968 * v3) * v3) * v3;
  if (v1) {
    v5 = v4;
  } else {
    v5 = v4 * 1.8 + 32;
  }
  return v5;
}

function SAP_KEEPS_(brix, temperature, units) {
  if (brix === null || temperature === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8, v9, v10, v11;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof brix === "string") throw new Error("#VALUE!");
  if (typeof temperature === "string") throw new Error("#VALUE!");
  v2 = brix * 1;
  v3 = temperature * 1;
  if (v2 < 0 || v2 > 85 || v3 < (-40) || v3 > (v1 ? 38 : 100)) throw new Error("#NUM!");
  if (v1) {
    v4 = v3;
  } else {
    v4 = (v3 - 32) / 1.8;
  }
  v5 = 1000 * v2 / ((100 - v2) * 342.2965);
  v6 = (-1.86) * (1 + (0.0962763 + 0.0107968 * v5) * v5) * v5;
  v7 = (v6 > (-13.95) ? v6 : -13.95);
  v8 = (v4 > v7 ? v4 : v7);
  v9 = (v8 - v4) / 5;
  v10 = (v2 < 8 ? 1.94591014905531 : 2.07944154167984) + (3.34 - v8) * 0.693147180559945 / 5.55555555555556;
  if (v9 < 1) {
    v11 = Math.exp(v10 + v9 * (4.49980967033027 - v10));
  } else {
    v11 = 90;
  }
  return v11;
}

function BOIL_BRIX_(volume, brix, volume_left) {
  if (volume === null || brix === null || volume_left === null) throw new Error("#N/A");
  let v1, v2, v3, v4, v5, v6, v7, v8, v9, v10, v11, v12, v13, v14, v15, v16, v17, v18, v19, v20, v21, v22, v23, v24, v25, v26, v27, v28, v29, v30, v31, v32, v33;
  if (typeof volume === "string" || typeof brix === "string" || typeof volume_left === "string") throw new Error("#VALUE!");
  v1 = volume * 1;
  v2 = brix * 1;
  v3 = volume_left * 1;
  if (v1 < 0 || v1 > 10000000 || v2 < 0 || v2 > 85 || v3 < 0 || v3 > 10000000) throw new Error("#NUM!");
  v4 = v2 * 0.01;
  if (!(v3 > 0)) throw new Error("#NUM!");
  v5 = (((((-17.289) * v4 + 13.4853) * v4 + (-3.9643)) * v4 + 40.9299) * v4 + 135.3705) * v4 + 385.1761;
  v6 = v1 * ((v5 * v4 + 998.203122737355) * v2 * 0.01) / v3;
  if (!(v6 <= 1229.04699461455)) throw new Error("#NUM!");
  v7 = (Math.sqrt(1 + 0.0025 * v6) - 1) * 0.84;
  v8 = (-17.289) * v7;
  v9 = v8 + 13.4853;
  v10 = v9 * v7 + (-3.9643);
  v11 = v10 * v7 + 40.9299;
  v12 = v11 * v7 + 135.3705;
  v13 = v12 * v7 + 385.1761;
  v14 = v13 * v7 + 998.203122737355;
  v15 = (v14 * v7 - v6) / (v14 + v7 * (((((v8 + v9) * v7 + v10) * v7 + v11) * v7 + v12) * v7 + v13));
  v16 = v7 - v15;
  v17 = (-17.289) * v16;
  v18 = v17 + 13.4853;
  v19 = v18 * v16 + (-3.9643);
  v20 = v19 * v16 + 40.9299;
  v21 = v20 * v16 + 135.3705;
  v22 = v21 * v16 + 385.1761;
  v23 = v22 * v16 + 998.203122737355;
  v24 = (v23 * v16 - v6) / (v23 + v16 * (((((v17 + v18) * v16 + v19) * v16 + v20) * v16 + v21) * v16 + v22));
  v25 = v16 - v24;
  v26 = (-17.289) * v25;
  v27 = v26 + 13.4853;
  v28 = v27 * v25 + (-3.9643);
  v29 = v28 * v25 + 40.9299;
  v30 = v29 * v25 + 135.3705;
  v31 = v30 * v25 + 385.1761;
  v32 = v31 * v25 + 998.203122737355;
  v33 = (v32 * v25 - v6) / (v32 + v25 * (((((v26 + v27) * v25 + v28) * v25 + v29) * v25 + v30) * v25 + v31));
  return 100 * (v25 - v33);
}

function BOIL_WATER_(volume, brix, to_brix) {
  if (volume === null || brix === null || to_brix === null) throw new Error("#N/A");
  let v1, v2, v3, v4, v5;
  if (typeof volume === "string" || typeof brix === "string" || typeof to_brix === "string") throw new Error("#VALUE!");
  v1 = volume * 1;
  v2 = brix * 1;
  v3 = to_brix * 1;
  if (v1 < 0 || v1 > 10000000 || v2 < 0 || v2 > 85 || v3 < 0.1 || v3 > 85) throw new Error("#NUM!");
  v4 = v2 * 0.01;
  if (!(v2 <= v3)) throw new Error("#NUM!");
  v5 = (((((-17.289) * v4 + 13.4853) * v4 + (-3.9643)) * v4 + 40.9299) * v4 + 135.3705) * v4 + 385.1761;
  return v1 * (v5 * v4 + 998.203122737355) * (1 - v2 / v3) / 998.203122737355;
}

function BOIL_HOURS_(volume, brix, to_brix, rate) {
  if (volume === null || brix === null || to_brix === null || rate === null) throw new Error("#N/A");
  let v1, v2, v3, v4, v5, v6;
  if (typeof volume === "string" || typeof brix === "string" || typeof to_brix === "string") throw new Error("#VALUE!");
  if (typeof rate === "string") throw new Error("#VALUE!");
  v1 = volume * 1;
  v2 = brix * 1;
  v3 = to_brix * 1;
  v4 = rate * 1;
  if (v1 < 0 || v1 > 10000000 || v2 < 0 || v2 > 85 || v3 < 0.1 || v3 > 85 || v4 < 0.001) throw new Error("#NUM!");
  if (v4 > 1000000) throw new Error("#NUM!");
  v5 = v2 * 0.01;
  if (!(v2 <= v3)) throw new Error("#NUM!");
  v6 = (((((-17.289) * v5 + 13.4853) * v5 + (-3.9643)) * v5 + 40.9299) * v5 + 135.3705) * v5 + 385.1761;
  return v1 * (v6 * v5 + 998.203122737355) * (1 - v2 / v3) / 998.203122737355 / v4;
}

function BOIL_HEAT_(volume, brix, to_brix, sap_temperature, units) {
  if (volume === null || brix === null || to_brix === null || sap_temperature === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8, v9, v10, v11;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof volume === "string" || typeof brix === "string") throw new Error("#VALUE!");
  if (typeof to_brix === "string" || typeof sap_temperature === "string") throw new Error("#VALUE!");
  v2 = volume * 1;
  v3 = brix * 1;
  v4 = to_brix * 1;
  v5 = sap_temperature * 1;
  if (v2 < 0 || v2 > (v1 ? 3800000 : 1000000) || v3 < 0 || v3 > 85 || v4 < 0.1 || v4 > 85) throw new Error("#NUM!");
  if (v5 < (v1 ? -6.5 : 20) || v5 > (v1 ? 100 : 212)) throw new Error("#NUM!");
  v6 = v3 * 0.01;
  if (v1) {
    v7 = v5;
  } else {
    v7 = (v5 - 32) / 1.8;
  }
  if (!(v3 <= v4)) throw new Error("#NUM!");
  if (v1) {
    v8 = v2 * 0.001;
  } else {
    v8 = v2 * 0.003785411784;
  }
  v9 = (((((-17.289) * v6 + 13.4853) * v6 + (-3.9643)) * v6 + 40.9299) * v6 + 135.3705) * v6 + 385.1761;
  v10 = v8 * (v9 * v6 + 998.203122737355) * ((4186.8 - (25.1 - 0.075 * ((v7 + 100) / 2)) * v3) * (100 - v7) + (1 - v3 / v4) * 2256473);
  if (v1) {
    v11 = v10 / 1000000;
  } else {
    v11 = v10 / 1055.05585262;
  }
  return v11;
}

function BOIL_FUEL_(heat, fuel, efficiency, units) {
  if (heat === null || fuel === null || efficiency === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8, v9, v10, v11, v12;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof heat === "string") throw new Error("#VALUE!");
  if (!sameWord_(fuel, "hardwood") && !sameWord_(fuel, "softwood") && !sameWord_(fuel, "propane") && !sameWord_(fuel, "propane bottle") && !sameWord_(fuel, "fuel oil") && !sameWord_(fuel, "natural gas") && !sameWord_(fuel, "natural gas by therm") && !sameWord_(fuel, "electricity")) throw new Error("#VALUE!");
  if (typeof efficiency === "string") throw new Error("#VALUE!");
  v2 = heat * 1;
  v3 = efficiency * 1;
  if (v2 < 0 || v2 > (v1 ? 1055000000 : 1000000000000) || v3 < 0.01 || v3 > 1) throw new Error("#NUM!");
  v4 = sameWord_(fuel, "hardwood");
  v5 = sameWord_(fuel, "softwood");
  v6 = sameWord_(fuel, "propane");
  v7 = sameWord_(fuel, "propane bottle");
  v8 = sameWord_(fuel, "fuel oil");
  v9 = sameWord_(fuel, "natural gas");
  v10 = (sameWord_(fuel, "natural gas by therm") ? 105505600 : 3600000);
  if (v1) {
    v11 = v2 * 1000000;
  } else {
    v11 = v2 * 1055.05585262;
  }
  if (v1) {
    if (v4) {
      v12 = 6112795796.59732;
    } else {
      if (v5) {
        v12 = 3638568926.54602;
      } else {
        if (v6) {
          v12 = 25781254.9693669;
        } else {
          if (v7) {
            v12 = 460637385.253892;
          } else {
            if (v8) {
              v12 = 38602203.3865656;
            } else {
              v12 = (v9 ? 38376714.1820662 : v10);
            }
          }
        }
      }
    }
  } else {
    if (v4) {
      v12 = 22156172905.02;
    } else {
      if (v5) {
        v12 = 13188198157.75;
      } else {
        if (v6) {
          v12 = 97592666.36735;
        } else {
          if (v7) {
            v12 = 460637385.253892;
          } else {
            if (v8) {
              v12 = 146125235.58787;
            } else {
              v12 = (v9 ? 1086707.5281986 : v10);
            }
          }
        }
      }
    }
  }
  return v11 / v12 / v3;
}

function FUEL_EFFICIENCY_(fuel) {
  if (fuel === null) throw new Error("#N/A");
  let v1;
  if (!sameWord_(fuel, "hardwood") && !sameWord_(fuel, "softwood") && !sameWord_(fuel, "propane") && !sameWord_(fuel, "propane bottle") && !sameWord_(fuel, "fuel oil") && !sameWord_(fuel, "natural gas") && !sameWord_(fuel, "natural gas by therm") && !sameWord_(fuel, "electricity")) throw new Error("#VALUE!");
  if (sameWord_(fuel, "hardwood")) {
    v1 = 0.25;
  } else {
    if (sameWord_(fuel, "softwood")) {
      v1 = 0.25;
    } else {
      if (sameWord_(fuel, "propane")) {
        v1 = 0.4;
      } else {
        if (sameWord_(fuel, "propane bottle")) {
          v1 = 0.4;
        } else {
          if (sameWord_(fuel, "fuel oil")) {
            v1 = 0.5;
          } else {
            if (sameWord_(fuel, "natural gas")) {
              v1 = 0.4;
            } else {
              v1 = (sameWord_(fuel, "natural gas by therm") ? 0.4 : 0.75);
            }
          }
        }
      }
    }
  }
  return v1;
}

function PAN_RATE_(area, units) {
  if (area === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof area === "string") throw new Error("#VALUE!");
  v2 = area * 1;
  if (v2 < (v1 ? 0.005 : 0.05) || v2 > (v1 ? 93 : 1000)) throw new Error("#NUM!");
  if (v1) {
    v3 = v2;
  } else {
    v3 = v2 * 0.09290304;
  }
  v4 = 0.0244475 * v3;
  if (v3 <= 0.44128944) {
    v5 = v4;
  } else {
    if (v3 < 0.55741824) {
      v5 = v4 + 0.0782319999999998 * (v3 - 0.44128944);
    } else {
      v5 = 0.0407458333333333 * v3;
    }
  }
  if (v1) {
    v6 = v5 / 0.001;
  } else {
    v6 = v5 / 0.003785411784;
  }
  return v6;
}

function BOIL_RATE_(power, efficiency, units) {
  if (power === null || efficiency === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof power === "string") throw new Error("#VALUE!");
  if (typeof efficiency === "string") throw new Error("#VALUE!");
  v2 = power * 1;
  v3 = efficiency * 1;
  if (v2 < (v1 ? 0.0003 : 1) || v2 > (v1 ? 2930 : 10000000) || v3 < 0.01 || v3 > 1) throw new Error("#NUM!");
  if (v1) {
    v4 = v2 * 1000;
  } else {
    v4 = v2 * 0.293071070172222;
  }
  v5 = 3600 * v4 * v3 / 2256473 / 998.203122737355;
  if (v1) {
    v6 = v5 / 0.001;
  } else {
    v6 = v5 / 0.003785411784;
  }
  return v6;
}

function PAN_DEPTH_(volume, area, units) {
  if (volume === null || area === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof volume === "string" || typeof area === "string") throw new Error("#VALUE!");
  v2 = volume * 1;
  v3 = area * 1;
  if (v2 < 0 || v2 > (v1 ? 3800000 : 1000000) || v3 < (v1 ? 0.005 : 0.05) || v3 > (v1 ? 93 : 1000)) throw new Error("#NUM!");
  if (v1) {
    v4 = v2 * 0.001;
  } else {
    v4 = v2 * 0.003785411784;
  }
  if (v1) {
    v5 = v3;
  } else {
    v5 = v3 * 0.09290304;
  }
  v6 = v4 / v5;
  if (v1) {
    v7 = v6 / 0.01;
  } else {
    v7 = v6 / 0.0254;
  }
  return v7;
}

function FINISH_RISE_(brix, pressure, units) {
  if (brix === null || pressure === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8, v9, v10, v11, v12, v13, v14, v15, v16, v17, v18, v19, v20, v21, v22, v23, v24, v25, v26, v27, v28, v29, v30, v31, v32, v33, v34, v35, v36, v37, v38, v39, v40, v41, v42, v43, v44, v45, v46, v47, v48, v49, v50, v51, v52;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof brix === "string") throw new Error("#VALUE!");
  if (typeof pressure === "string") throw new Error("#VALUE!");
  v2 = brix * 1;
  v3 = pressure * 1;
  if (v2 < 0 || v2 > 85 || v3 < (v1 ? 508 : 15) || v3 > (v1 ? 1084 : 32)) throw new Error("#NUM!");
  if (v1) {
    v4 = v3 * 100;
  } else {
    v4 = v3 * 3386.38864034;
  }
  v5 = v2 * 18.015268;
  v6 = v5 / (v5 + (100 - v2) * 342.2965);
  v7 = 1 - v6;
  v8 = (1 + ((-1.0038) + (-0.24653) * v6) * v6) * v6 * v6 * (-17638) / 8.314462618;
  v9 = Math.sqrt(v4 / (v7 * Math.exp(v8 / 378.15)) * 0.000001);
  v10 = Math.sqrt(v9);
  v11 = (-724213.16703206) * v9 + (-3232555.0322333) * v10 + 405113.40542057;
  v12 = 1167.0521452767 * v9 + 12020.82470247 * v10 + (-4823.2657361591);
  v13 = (-2) * v11 / (v12 + Math.sqrt(v12 * v12 - 4 * (v9 + (-17.073846940092) * v10 + 14.91510861353) * v11));
  v14 = 650.17534844798 + v13;
  v15 = (v14 - Math.sqrt(v14 * v14 - 4 * ((-0.23855557567849) + 650.17534844798 * v13))) / 2 - 273.15;
  v16 = Math.sqrt(v4 / (v7 * Math.exp(v8 / (v15 + 273.15))) * 0.000001);
  v17 = Math.sqrt(v16);
  v18 = (-724213.16703206) * v16 + (-3232555.0322333) * v17 + 405113.40542057;
  v19 = 1167.0521452767 * v16 + 12020.82470247 * v17 + (-4823.2657361591);
  v20 = (-2) * v18 / (v19 + Math.sqrt(v19 * v19 - 4 * (v16 + (-17.073846940092) * v17 + 14.91510861353) * v18));
  v21 = 650.17534844798 + v20;
  v22 = (v21 - Math.sqrt(v21 * v21 - 4 * ((-0.23855557567849) + 650.17534844798 * v20))) / 2 - 273.15;
  v23 = Math.sqrt(v4 / (v7 * Math.exp(v8 / (v22 + 273.15))) * 0.000001);
  v24 = Math.sqrt(v23);
  v25 = (-724213.16703206) * v23 + (-3232555.0322333) * v24 + 405113.40542057;
  v26 = 1167.0521452767 * v23 + 12020.82470247 * v24 + (-4823.2657361591);
  v27 = (-2) * v25 / (v26 + Math.sqrt(v26 * v26 - 4 * (v23 + (-17.073846940092) * v24 + 14.91510861353) * v25));
  v28 = 650.17534844798 + v27;
  v29 = (v28 - Math.sqrt(v28 * v28 - 4 * ((-0.23855557567849) + 650.17534844798 * v27))) / 2 - 273.15;
  v30 = Math.sqrt(v4 / (v7 * Math.exp(v8 / (v29 + 273.15))) * 0.000001);
  v31 = Math.sqrt(v30);
  v32 = (-724213.16703206) * v30 + (-3232555.0322333) * v31 + 405113.40542057;
  v33 = 1167.0521452767 * v30 + 12020.82470247 * v31 + (-4823.2657361591);
  v34 = (-2) * v32 / (v33 + Math.sqrt(v33 * v33 - 4 * (v30 + (-17.073846940092) * v31 + 14.91510861353) * v32));
  v35 = 650.17534844798 + v34;
  v36 = (v35 - Math.sqrt(v35 * v35 - 4 * ((-0.23855557567849) + 650.17534844798 * v34))) / 2 - 273.15;
  v37 = Math.sqrt(v4 / (v7 * Math.exp(v8 / (v36 + 273.15))) * 0.000001);
  v38 = Math.sqrt(v37);
  v39 = (-724213.16703206) * v37 + (-3232555.0322333) * v38 + 405113.40542057;
  v40 = 1167.0521452767 * v37 + 12020.82470247 * v38 + (-4823.2657361591);
  v41 = (-2) * v39 / (v40 + Math.sqrt(v40 * v40 - 4 * (v37 + (-17.073846940092) * v38 + 14.91510861353) * v39));
  v42 = 650.17534844798 + v41;
  v43 = Math.sqrt(v4 * 0.000001);
  v44 = Math.sqrt(v43);
  v45 = (-724213.16703206) * v43 + (-3232555.0322333) * v44 + 405113.40542057;
  v46 = 1167.0521452767 * v43 + 12020.82470247 * v44 + (-4823.2657361591);
  v47 = (-2) * v45 / (v46 + Math.sqrt(v46 * v46 - 4 * (v43 + (-17.073846940092) * v44 + 14.91510861353) * v45));
  v48 = 650.17534844798 + v47;
  v49 = (v42 - Math.sqrt(v42 * v42 - 4 * ((-0.23855557567849) + 650.17534844798 * v41))) / 2 - 273.15;
  v50 = (v48 - Math.sqrt(v48 * v48 - 4 * ((-0.23855557567849) + 650.17534844798 * v47))) / 2 - 273.15;
  v51 = v49 - v50;
  if (v1) {
    v52 = v51;
  } else {
    v52 = v51 * 1.8;
  }
  return v52;
}

function FINISH_TEMP_(brix, pressure, units) {
  if (brix === null || pressure === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8, v9, v10, v11, v12, v13, v14, v15, v16, v17, v18, v19, v20, v21, v22, v23, v24, v25, v26, v27, v28, v29, v30, v31, v32, v33, v34, v35, v36, v37, v38, v39, v40, v41, v42, v43, v44;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof brix === "string") throw new Error("#VALUE!");
  if (typeof pressure === "string") throw new Error("#VALUE!");
  v2 = brix * 1;
  v3 = pressure * 1;
  if (v2 < 0 || v2 > 85 || v3 < (v1 ? 508 : 15) || v3 > (v1 ? 1084 : 32)) throw new Error("#NUM!");
  if (v1) {
    v4 = v3 * 100;
  } else {
    v4 = v3 * 3386.38864034;
  }
  v5 = v2 * 18.015268;
  v6 = v5 / (v5 + (100 - v2) * 342.2965);
  v7 = 1 - v6;
  v8 = (1 + ((-1.0038) + (-0.24653) * v6) * v6) * v6 * v6 * (-17638) / 8.314462618;
  v9 = Math.sqrt(v4 / (v7 * Math.exp(v8 / 378.15)) * 0.000001);
  v10 = Math.sqrt(v9);
  v11 = (-724213.16703206) * v9 + (-3232555.0322333) * v10 + 405113.40542057;
  v12 = 1167.0521452767 * v9 + 12020.82470247 * v10 + (-4823.2657361591);
  v13 = (-2) * v11 / (v12 + Math.sqrt(v12 * v12 - 4 * (v9 + (-17.073846940092) * v10 + 14.91510861353) * v11));
  v14 = 650.17534844798 + v13;
  v15 = (v14 - Math.sqrt(v14 * v14 - 4 * ((-0.23855557567849) + 650.17534844798 * v13))) / 2 - 273.15;
  v16 = Math.sqrt(v4 / (v7 * Math.exp(v8 / (v15 + 273.15))) * 0.000001);
  v17 = Math.sqrt(v16);
  v18 = (-724213.16703206) * v16 + (-3232555.0322333) * v17 + 405113.40542057;
  v19 = 1167.0521452767 * v16 + 12020.82470247 * v17 + (-4823.2657361591);
  v20 = (-2) * v18 / (v19 + Math.sqrt(v19 * v19 - 4 * (v16 + (-17.073846940092) * v17 + 14.91510861353) * v18));
  v21 = 650.17534844798 + v20;
  v22 = (v21 - Math.sqrt(v21 * v21 - 4 * ((-0.23855557567849) + 650.17534844798 * v20))) / 2 - 273.15;
  v23 = Math.sqrt(v4 / (v7 * Math.exp(v8 / (v22 + 273.15))) * 0.000001);
  v24 = Math.sqrt(v23);
  v25 = (-724213.16703206) * v23 + (-3232555.0322333) * v24 + 405113.40542057;
  v26 = 1167.0521452767 * v23 + 12020.82470247 * v24 + (-4823.2657361591);
  v27 = (-2) * v25 / (v26 + Math.sqrt(v26 * v26 - 4 * (v23 + (-17.073846940092) * v24 + 14.91510861353) * v25));
  v28 = 650.17534844798 + v27;
  v29 = (v28 - Math.sqrt(v28 * v28 - 4 * ((-0.23855557567849) + 650.17534844798 * v27))) / 2 - 273.15;
  v30 = Math.sqrt(v4 / (v7 * Math.exp(v8 / (v29 + 273.15))) * 0.000001);
  v31 = Math.sqrt(v30);
  v32 = (-724213.16703206) * v30 + (-3232555.0322333) * v31 + 405113.40542057;
  v33 = 1167.0521452767 * v30 + 12020.82470247 * v31 + (-4823.2657361591);
  v34 = (-2) * v32 / (v33 + Math.sqrt(v33 * v33 - 4 * (v30 + (-17.073846940092) * v31 + 14.91510861353) * v32));
  v35 = 650.17534844798 + v34;
  v36 = (v35 - Math.sqrt(v35 * v35 - 4 * ((-0.23855557567849) + 650.17534844798 * v34))) / 2 - 273.15;
  v37 = Math.sqrt(v4 / (v7 * Math.exp(v8 / (v36 + 273.15))) * 0.000001);
  v38 = Math.sqrt(v37);
  v39 = (-724213.16703206) * v37 + (-3232555.0322333) * v38 + 405113.40542057;
  v40 = 1167.0521452767 * v37 + 12020.82470247 * v38 + (-4823.2657361591);
  v41 = (-2) * v39 / (v40 + Math.sqrt(v40 * v40 - 4 * (v37 + (-17.073846940092) * v38 + 14.91510861353) * v39));
  v42 = 650.17534844798 + v41;
  v43 = (v42 - Math.sqrt(v42 * v42 - 4 * ((-0.23855557567849) + 650.17534844798 * v41))) / 2 - 273.15;
  if (v1) {
    v44 = v43;
  } else {
    v44 = v43 * 1.8 + 32;
  }
  return v44;
}

function FINISH_READING_(brix, water_reading, units) {
  if (brix === null || water_reading === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8, v9, v10, v11, v12, v13, v14, v15, v16, v17, v18, v19, v20, v21, v22, v23, v24, v25, v26, v27, v28, v29, v30, v31, v32, v33, v34, v35, v36, v37, v38, v39, v40, v41, v42, v43, v44, v45, v46, v47, v48, v49, v50, v51, v52, v53, v54, v55, v56, v57, v58, v59;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof brix === "string") throw new Error("#VALUE!");
  if (typeof water_reading === "string") throw new Error("#VALUE!");
  v2 = brix * 1;
  v3 = water_reading * 1;
  if (v2 < 0 || v2 > 85 || v3 < (v1 ? 79.5 : 175) || v3 > (v1 ? 105.5 : 222)) throw new Error("#NUM!");
  if (v1) {
    v4 = v3;
  } else {
    v4 = (v3 - 32) / 1.8;
  }
  v5 = v4 + 273.15;
  v6 = v5 + (-0.23855557567849) / (v5 - 650.17534844798);
  v7 = (14.91510861353 * v6 + (-4823.2657361591)) * v6 + 405113.40542057;
  v8 = ((-17.073846940092) * v6 + 12020.82470247) * v6 + (-3232555.0322333);
  v9 = 2 * v7 / (Math.sqrt(v8 * v8 - 4 * ((v6 + 1167.0521452767) * v6 + (-724213.16703206)) * v7) - v8);
  v10 = v9 * v9;
  v11 = 1000000 * v10 * v10;
  v12 = v2 * 18.015268;
  v13 = v12 / (v12 + (100 - v2) * 342.2965);
  v14 = 1 - v13;
  v15 = (1 + ((-1.0038) + (-0.24653) * v13) * v13) * v13 * v13 * (-17638) / 8.314462618;
  v16 = Math.sqrt(v11 / (v14 * Math.exp(v15 / 378.15)) * 0.000001);
  v17 = Math.sqrt(v16);
  v18 = (-724213.16703206) * v16 + (-3232555.0322333) * v17 + 405113.40542057;
  v19 = 1167.0521452767 * v16 + 12020.82470247 * v17 + (-4823.2657361591);
  v20 = (-2) * v18 / (v19 + Math.sqrt(v19 * v19 - 4 * (v16 + (-17.073846940092) * v17 + 14.91510861353) * v18));
  v21 = 650.17534844798 + v20;
  v22 = (v21 - Math.sqrt(v21 * v21 - 4 * ((-0.23855557567849) + 650.17534844798 * v20))) / 2 - 273.15;
  v23 = Math.sqrt(v11 / (v14 * Math.exp(v15 / (v22 + 273.15))) * 0.000001);
  v24 = Math.sqrt(v23);
  v25 = (-724213.16703206) * v23 + (-3232555.0322333) * v24 + 405113.40542057;
  v26 = 1167.0521452767 * v23 + 12020.82470247 * v24 + (-4823.2657361591);
  v27 = (-2) * v25 / (v26 + Math.sqrt(v26 * v26 - 4 * (v23 + (-17.073846940092) * v24 + 14.91510861353) * v25));
  v28 = 650.17534844798 + v27;
  v29 = (v28 - Math.sqrt(v28 * v28 - 4 * ((-0.23855557567849) + 650.17534844798 * v27))) / 2 - 273.15;
  v30 = Math.sqrt(v11 / (v14 * Math.exp(v15 / (v29 + 273.15))) * 0.000001);
  v31 = Math.sqrt(v30);
  v32 = (-724213.16703206) * v30 + (-3232555.0322333) * v31 + 405113.40542057;
  v33 = 1167.0521452767 * v30 + 12020.82470247 * v31 + (-4823.2657361591);
  v34 = (-2) * v32 / (v33 + Math.sqrt(v33 * v33 - 4 * (v30 + (-17.073846940092) * v31 + 14.91510861353) * v32));
  v35 = 650.17534844798 + v34;
  v36 = (v35 - Math.sqrt(v35 * v35 - 4 * ((-0.23855557567849) + 650.17534844798 * v34))) / 2 - 273.15;
  v37 = Math.sqrt(v11 / (v14 * Math.exp(v15 / (v36 + 273.15))) * 0.000001);
  v38 = Math.sqrt(v37);
  v39 = (-724213.16703206) * v37 + (-3232555.0322333) * v38 + 405113.40542057;
  v40 = 1167.0521452767 * v37 + 12020.82470247 * v38 + (-4823.2657361591);
  v41 = (-2) * v39 / (v40 + Math.sqrt(v40 * v40 - 4 * (v37 + (-17.073846940092) * v38 + 14.91510861353) * v39));
  v42 = 650.17534844798 + v41;
  v43 = (v42 - Math.sqrt(v42 * v42 - 4 * ((-0.23855557567849) + 650.17534844798 * v41))) / 2 - 273.15;
  v44 = Math.sqrt(v11 / (v14 * Math.exp(v15 / (v43 + 273.15))) * 0.000001);
  v45 = Math.sqrt(v44);
  v46 = (-724213.16703206) * v44 + (-3232555.0322333) * v45 + 405113.40542057;
  v47 = 1167.0521452767 * v44 + 12020.82470247 * v45 + (-4823.2657361591);
  v48 = (-2) * v46 / (v47 + Math.sqrt(v47 * v47 - 4 * (v44 + (-17.073846940092) * v45 + 14.91510861353) * v46));
  v49 = 650.17534844798 + v48;
  v50 = Math.sqrt(v11 * 0.000001);
  v51 = Math.sqrt(v50);
  v52 = (-724213.16703206) * v50 + (-3232555.0322333) * v51 + 405113.40542057;
  v53 = 1167.0521452767 * v50 + 12020.82470247 * v51 + (-4823.2657361591);
  v54 = (-2) * v52 / (v53 + Math.sqrt(v53 * v53 - 4 * (v50 + (-17.073846940092) * v51 + 14.91510861353) * v52));
  v55 = 650.17534844798 + v54;
  v56 = (v49 - Math.sqrt(v49 * v49 - 4 * ((-0.23855557567849) + 650.17534844798 * v48))) / 2 - 273.15;
  v57 = (v55 - Math.sqrt(v55 * v55 - 4 * ((-0.23855557567849) + 650.17534844798 * v54))) / 2 - 273.15;
  v58 = v4 + (v56 - v57);
  if (v1) {
    v59 = v58;
  } else {
    v59 = v58 * 1.8 + 32;
  }
  return v59;
}

function FINISH_MINUTES_(volume, brix, syrup_brix, rate) {
  if (volume === null || brix === null || syrup_brix === null || rate === null) throw new Error("#N/A");
  let v1, v2, v3, v4, v5, v6, v7;
  if (typeof volume === "string" || typeof brix === "string" || typeof syrup_brix === "string") throw new Error("#VALUE!");
  if (typeof rate === "string") throw new Error("#VALUE!");
  v1 = volume * 1;
  v2 = brix * 1;
  v3 = syrup_brix * 1;
  v4 = rate * 1;
  if (v1 < 0 || v1 > 10000000 || v2 < 0 || v2 > 85 || v3 < 0.1 || v3 > 85 || v4 < 0.001) throw new Error("#NUM!");
  if (v4 > 1000000) throw new Error("#NUM!");
  v5 = v2 * 0.01;
  if (v2 < v3) {
    v7 = (((((-17.289) * v5 + 13.4853) * v5 + (-3.9643)) * v5 + 40.9299) * v5 + 135.3705) * v5 + 385.1761;
    v6 = 60 * (v1 * (v7 * v5 + 998.203122737355) * (1 - v2 / v3) / 998.203122737355) / v4;
  } else {
    v6 = 0;
  }
  return v6;
}

function BRIX_BY_BOIL_(reading, water_reading, units) {
  if (reading === null || water_reading === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8, v9, v10, v11, v12, v13, v14, v15, v16, v17, v18, v19, v20, v21, v22, v23, v24, v25, v26, v27, v28, v29, v30, v31, v32, v33, v34;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof reading === "string") throw new Error("#VALUE!");
  if (typeof water_reading === "string") throw new Error("#VALUE!");
  v2 = reading * 1;
  v3 = water_reading * 1;
  if (v2 < (v1 ? 65 : 150) || v2 > (v1 ? 149 : 300) || v3 < (v1 ? 79.5 : 175)) throw new Error("#NUM!");
  if (v3 > (v1 ? 105.5 : 222)) throw new Error("#NUM!");
  if (v1) {
    v4 = v2;
  } else {
    v4 = (v2 - 32) / 1.8;
  }
  if (v1) {
    v5 = v3;
  } else {
    v5 = (v3 - 32) / 1.8;
  }
  if (!(v4 >= v5 - 0.000000001)) throw new Error("#NUM!");
  v6 = v4 + 273.15;
  v7 = v5 + 273.15;
  v8 = v7 + (-0.23855557567849) / (v7 - 650.17534844798);
  v9 = (14.91510861353 * v8 + (-4823.2657361591)) * v8 + 405113.40542057;
  v10 = ((-17.073846940092) * v8 + 12020.82470247) * v8 + (-3232555.0322333);
  v11 = 2 * v9 / (Math.sqrt(v10 * v10 - 4 * ((v8 + 1167.0521452767) * v8 + (-724213.16703206)) * v9) - v10);
  v12 = v11 * v11;
  v13 = v6 + (-0.23855557567849) / (v6 - 650.17534844798);
  v14 = (14.91510861353 * v13 + (-4823.2657361591)) * v13 + 405113.40542057;
  v15 = ((-17.073846940092) * v13 + 12020.82470247) * v13 + (-3232555.0322333);
  v16 = Math.sqrt(v15 * v15 - 4 * ((v13 + 1167.0521452767) * v13 + (-724213.16703206)) * v14) - v15;
  v17 = 2 * v14 / v16;
  v18 = v17 * v17;
  v19 = 1000000 * v12 * v12 / (1000000 * v18 * v18);
  if (!(0.770273582971355 * Math.exp((-84.6804038254306) / v6) <= v19 * 1.0000001)) throw new Error("#NUM!");
  v20 = Math.log(v19);
  v21 = (-17638) / (8.314462618 * v6);
  v22 = (-2) * v20 / (1 + Math.sqrt(1 - (2 - 4 * v21) * v20));
  v23 = 1 - v22;
  v24 = (Math.log(v23) + v21 * (1 + ((-1.0038) + (-0.24653) * v22) * v22) * v22 * v22 - v20) / (v21 * (2 + ((-3.0114) + (-0.98612) * v22) * v22) * v22 - 1 / v23);
  v25 = v22 - v24;
  v26 = 1 - v25;
  v27 = (Math.log(v26) + v21 * (1 + ((-1.0038) + (-0.24653) * v25) * v25) * v25 * v25 - v20) / (v21 * (2 + ((-3.0114) + (-0.98612) * v25) * v25) * v25 - 1 / v26);
  v28 = v25 - v27;
  v29 = 1 - v28;
  v30 = (Math.log(v29) + v21 * (1 + ((-1.0038) + (-0.24653) * v28) * v28) * v28 * v28 - v20) / (v21 * (2 + ((-3.0114) + (-0.98612) * v28) * v28) * v28 - 1 / v29);
  v31 = v28 - v30;
  v32 = v31 * 342.2965;
  v33 = 100 * v32 / (v32 + (1 - v31) * 18.015268);
  if (v33 > 0) {
    v34 = (v33 < 85 ? v33 : 85);
  } else {
    v34 = 0;
  }
  return v34;
}

function BRIX_BY_BOIL_SPREAD_(reading, water_reading, give_or_take, water_from, units) {
  if (reading === null || water_reading === null || give_or_take === null || water_from === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8, v9, v10, v11, v12, v13, v14, v15, v16, v17, v18, v19, v20, v21, v22, v23, v24, v25, v26, v27, v28, v29, v30, v31, v32, v33, v34, v35, v36, v37, v38, v39, v40, v41, v42, v43, v44, v45, v46, v47, v48, v49, v50, v51, v52, v53, v54, v55, v56, v57, v58, v59, v60, v61, v62, v63, v64, v65, v66, v67, v68, v69, v70, v71, v72, v73, v74, v75, v76, v77, v78, v79, v80, v81, v82, v83, v84, v85, v86, v87, v88, v89, v90, v91, v92, v93, v94, v95;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof reading === "string") throw new Error("#VALUE!");
  if (typeof water_reading === "string" || typeof give_or_take === "string") throw new Error("#VALUE!");
  if (!sameWord_(water_from, "today") && !sameWord_(water_from, "another day") && !sameWord_(water_from, "barometer") && !sameWord_(water_from, "elevation")) throw new Error("#VALUE!");
  v2 = reading * 1;
  v3 = water_reading * 1;
  v4 = give_or_take * 1;
  if (v2 < (v1 ? 65 : 150) || v2 > (v1 ? 149 : 300) || v3 < (v1 ? 79.5 : 175)) throw new Error("#NUM!");
  if (v3 > (v1 ? 105.5 : 222) || v4 < 0 || v4 > (v1 ? 5.5 : 10)) throw new Error("#NUM!");
  if (v1) {
    v5 = v2;
  } else {
    v5 = (v2 - 32) / 1.8;
  }
  if (v1) {
    v6 = v3;
  } else {
    v6 = (v3 - 32) / 1.8;
  }
  v7 = v5 + 273.15;
  v8 = 0.770273582971355 * Math.exp((-84.6804038254306) / v7);
  v9 = v6 + 273.15;
  v10 = v9 + (-0.23855557567849) / (v9 - 650.17534844798);
  v11 = (14.91510861353 * v10 + (-4823.2657361591)) * v10 + 405113.40542057;
  v12 = ((-17.073846940092) * v10 + 12020.82470247) * v10 + (-3232555.0322333);
  v13 = Math.sqrt(v12 * v12 - 4 * ((v10 + 1167.0521452767) * v10 + (-724213.16703206)) * v11) - v12;
  v14 = 2 * v11 / v13;
  v15 = v14 * v14;
  v16 = 1000000 * v15 * v15;
  v17 = v7 + (-0.23855557567849) / (v7 - 650.17534844798);
  v18 = (14.91510861353 * v17 + (-4823.2657361591)) * v17 + 405113.40542057;
  v19 = ((-17.073846940092) * v17 + 12020.82470247) * v17 + (-3232555.0322333);
  v20 = Math.sqrt(v19 * v19 - 4 * ((v17 + 1167.0521452767) * v17 + (-724213.16703206)) * v18) - v19;
  v21 = 2 * v18 / v20;
  v22 = v21 * v21;
  v23 = v16 / (1000000 * v22 * v22);
  if (v1) {
    v24 = v4;
  } else {
    v24 = v4 / 1.8;
  }
  if (sameWord_(water_from, "today")) {
    v25 = 0;
  } else {
    if (sameWord_(water_from, "another day")) {
      v25 = 0.47;
    } else {
      v25 = (sameWord_(water_from, "barometer") ? 0.83 : 0.953834367172834);
    }
  }
  v26 = Math.sqrt(2 * v24 * v24 + 0.01 + v25 * v25);
  v27 = v5 + v26 + 273.15;
  v28 = v27 + (-0.23855557567849) / (v27 - 650.17534844798);
  v29 = (14.91510861353 * v28 + (-4823.2657361591)) * v28 + 405113.40542057;
  v30 = ((-17.073846940092) * v28 + 12020.82470247) * v28 + (-3232555.0322333);
  v31 = Math.sqrt(v30 * v30 - 4 * ((v28 + 1167.0521452767) * v28 + (-724213.16703206)) * v29) - v30;
  v32 = 2 * v29 / v31;
  v33 = v32 * v32;
  v34 = v16 / (1000000 * v33 * v33);
  v35 = 0.770273582971355 * Math.exp((-84.6804038254306) / v27);
  if (v34 > v35) {
    v36 = (v34 < 1 ? v34 : 1);
  } else {
    v36 = v35;
  }
  v37 = Math.log(v36);
  v38 = (-17638) / (8.314462618 * v27);
  v39 = (-2) * v37 / (1 + Math.sqrt(1 - (2 - 4 * v38) * v37));
  v40 = 1 - v39;
  v41 = (Math.log(v40) + v38 * (1 + ((-1.0038) + (-0.24653) * v39) * v39) * v39 * v39 - v37) / (v38 * (2 + ((-3.0114) + (-0.98612) * v39) * v39) * v39 - 1 / v40);
  v42 = v39 - v41;
  v43 = 1 - v42;
  v44 = (Math.log(v43) + v38 * (1 + ((-1.0038) + (-0.24653) * v42) * v42) * v42 * v42 - v37) / (v38 * (2 + ((-3.0114) + (-0.98612) * v42) * v42) * v42 - 1 / v43);
  v45 = v42 - v44;
  v46 = 1 - v45;
  v47 = (Math.log(v46) + v38 * (1 + ((-1.0038) + (-0.24653) * v45) * v45) * v45 * v45 - v37) / (v38 * (2 + ((-3.0114) + (-0.98612) * v45) * v45) * v45 - 1 / v46);
  v48 = v45 - v47;
  v49 = v48 * 342.2965;
  v50 = 100 * v49 / (v49 + (1 - v48) * 18.015268);
  if (v23 > v8) {
    v51 = (v23 < 1 ? v23 : 1);
  } else {
    v51 = v8;
  }
  v52 = Math.log(v51);
  v53 = (-17638) / (8.314462618 * v7);
  v54 = (-2) * v52 / (1 + Math.sqrt(1 - (2 - 4 * v53) * v52));
  v55 = 1 - v54;
  v56 = (Math.log(v55) + v53 * (1 + ((-1.0038) + (-0.24653) * v54) * v54) * v54 * v54 - v52) / (v53 * (2 + ((-3.0114) + (-0.98612) * v54) * v54) * v54 - 1 / v55);
  v57 = v54 - v56;
  v58 = 1 - v57;
  v59 = (Math.log(v58) + v53 * (1 + ((-1.0038) + (-0.24653) * v57) * v57) * v57 * v57 - v52) / (v53 * (2 + ((-3.0114) + (-0.98612) * v57) * v57) * v57 - 1 / v58);
  v60 = v57 - v59;
  v61 = 1 - v60;
  v62 = (Math.log(v61) + v53 * (1 + ((-1.0038) + (-0.24653) * v60) * v60) * v60 * v60 - v52) / (v53 * (2 + ((-3.0114) + (-0.98612) * v60) * v60) * v60 - 1 / v61);
  v63 = v60 - v62;
  v64 = v63 * 342.2965;
  v65 = 100 * v64 / (v64 + (1 - v63) * 18.015268);
  if (v65 > 0) {
    v66 = (v65 < 85 ? v65 : 85);
  } else {
    v66 = 0;
  }
  if (v50 > 0) {
    v67 = (v50 < 85 ? v50 : 85);
  } else {
    v67 = 0;
  }
  v68 = v67 - v66;
  v69 = v5 - v26;
  v70 = (v69 > v6 ? v69 : v6) + 273.15;
  v71 = v70 + (-0.23855557567849) / (v70 - 650.17534844798);
  v72 = (14.91510861353 * v71 + (-4823.2657361591)) * v71 + 405113.40542057;
  v73 = ((-17.073846940092) * v71 + 12020.82470247) * v71 + (-3232555.0322333);
  v74 = Math.sqrt(v73 * v73 - 4 * ((v71 + 1167.0521452767) * v71 + (-724213.16703206)) * v72) - v73;
  v75 = 2 * v72 / v74;
  v76 = v75 * v75;
  v77 = v16 / (1000000 * v76 * v76);
  v78 = 0.770273582971355 * Math.exp((-84.6804038254306) / v70);
  if (v77 > v78) {
    v79 = (v77 < 1 ? v77 : 1);
  } else {
    v79 = v78;
  }
  v80 = Math.log(v79);
  v81 = (-17638) / (8.314462618 * v70);
  v82 = (-2) * v80 / (1 + Math.sqrt(1 - (2 - 4 * v81) * v80));
  v83 = 1 - v82;
  v84 = (Math.log(v83) + v81 * (1 + ((-1.0038) + (-0.24653) * v82) * v82) * v82 * v82 - v80) / (v81 * (2 + ((-3.0114) + (-0.98612) * v82) * v82) * v82 - 1 / v83);
  v85 = v82 - v84;
  v86 = 1 - v85;
  v87 = (Math.log(v86) + v81 * (1 + ((-1.0038) + (-0.24653) * v85) * v85) * v85 * v85 - v80) / (v81 * (2 + ((-3.0114) + (-0.98612) * v85) * v85) * v85 - 1 / v86);
  v88 = v85 - v87;
  v89 = 1 - v88;
  v90 = (Math.log(v89) + v81 * (1 + ((-1.0038) + (-0.24653) * v88) * v88) * v88 * v88 - v80) / (v81 * (2 + ((-3.0114) + (-0.98612) * v88) * v88) * v88 - 1 / v89);
  v91 = v88 - v90;
  v92 = v91 * 342.2965;
  v93 = 100 * v92 / (v92 + (1 - v91) * 18.015268);
  if (v93 > 0) {
    v94 = (v93 < 85 ? v93 : 85);
  } else {
    v94 = 0;
  }
  v95 = v66 - v94;
  if (!(v5 >= v6 - 0.000000001)) throw new Error("#NUM!");
  if (!(v8 <= v23 * 1.0000001)) throw new Error("#NUM!");
  return (v68 > v95 ? v68 : v95);
}

function BRIX_BY_HYDROMETER_(reading, temperature, units) {
  if (reading === null || temperature === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8, v9, v10, v11, v12, v13, v14, v15, v16, v17, v18, v19, v20, v21, v22, v23, v24, v25, v26, v27, v28, v29, v30, v31, v32, v33, v34, v35, v36, v37, v38, v39, v40, v41;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof reading === "string") throw new Error("#VALUE!");
  if (typeof temperature === "string") throw new Error("#VALUE!");
  v2 = reading * 1;
  v3 = temperature * 1;
  if (v2 < 0 || v2 > 85 || v3 < (v1 ? 0 : 32) || v3 > (v1 ? 105 : 221)) throw new Error("#NUM!");
  if (v1) {
    v4 = v3;
  } else {
    v4 = (v3 - 32) / 1.8;
  }
  v5 = v4 - 15.5555555555556;
  v6 = (v2 + 0.1 * v5) * 0.01;
  v7 = (-17.289) * v6;
  v8 = (v4 - 20) * 0.01;
  v9 = 17.5254 * v8 + 13.4853;
  v10 = v7 + v9;
  v11 = ((-35.4791) * v8 + 5.1126) * v8 + (-3.9643);
  v12 = v10 * v6 + v11;
  v13 = ((27.6301 * v8 + 12.363) * v8 + 1.1597) * v8 + 40.9299;
  v14 = v12 * v6 + v13;
  v15 = (((12.3081 * v8 + (-21.6977)) * v8 + 7.2491) * v8 + (-7.172)) * v8 + 135.3705;
  v16 = v14 * v6 + v15;
  v17 = (((18.3184 * v8 + (-47.2207)) * v8 + 59.7712) * v8 + (-46.272)) * v8 + 385.1761;
  v18 = v16 * v6 + v17;
  v19 = (((-0.00000000028103006) * v4 + 0.00000010584601) * v4 - 0.000046241757) * v4 - 0.0079905127;
  v20 = ((v19 * v4 + 16.952577) * v4 + 999.83952) / (1 + 0.016887236 * v4);
  v21 = v2 * 0.01;
  v22 = (((-17.289) * v21 + 12.7063933333333) * v21 + (-4.26160883950617)) * v21 + 40.900352830727;
  v23 = (((v22 * v21 + 135.705527663246) * v21 + 387.354916952635) * v21 + 999.013466396045) / (1 + 0.000025 * v5);
  v24 = v6 - (v18 * v6 + v20 - v23) / (((((v7 + v10) * v6 + v12) * v6 + v14) * v6 + v16) * v6 + v18);
  v25 = (-17.289) * v24;
  v26 = v25 + v9;
  v27 = v26 * v24 + v11;
  v28 = v27 * v24 + v13;
  v29 = v28 * v24 + v15;
  v30 = v29 * v24 + v17;
  v31 = (v30 * v24 + v20 - v23) / (((((v25 + v26) * v24 + v27) * v24 + v28) * v24 + v29) * v24 + v30);
  v32 = v24 - v31;
  v33 = (-17.289) * v32;
  v34 = v33 + v9;
  v35 = v34 * v32 + v11;
  v36 = v35 * v32 + v13;
  v37 = v36 * v32 + v15;
  v38 = v37 * v32 + v17;
  v39 = (v38 * v32 + v20 - v23) / (((((v33 + v34) * v32 + v35) * v32 + v36) * v32 + v37) * v32 + v38);
  v40 = 100 * (v32 - v39);
  if (!(v40 <= 85.000000001)) throw new Error("#NUM!");
  if (v40 > 0) {
    v41 = (v40 < 85 ? v40 : 85);
  } else {
    v41 = 0;
  }
  return v41;
}

function BRIX_BY_SAP_HYDROMETER_(reading, temperature, marked_at, units) {
  if (reading === null || temperature === null || marked_at === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8, v9, v10, v11, v12, v13, v14, v15, v16, v17, v18, v19, v20, v21, v22, v23, v24, v25, v26, v27, v28, v29, v30, v31, v32, v33, v34, v35, v36, v37, v38, v39, v40, v41, v42, v43, v44, v45, v46, v47, v48;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof reading === "string") throw new Error("#VALUE!");
  if (typeof temperature === "string" || typeof marked_at === "string") throw new Error("#VALUE!");
  v2 = reading * 1;
  v3 = temperature * 1;
  v4 = (v1 ? 0 : 32);
  v5 = marked_at * 1;
  if (v2 < 0 || v2 > 85 || v3 < v4 || v3 > (v1 ? 105 : 221) || v5 < v4 || v5 > (v1 ? 21 : 70)) throw new Error("#NUM!");
  if (v1) {
    v6 = v3;
  } else {
    v6 = (v3 - 32) / 1.8;
  }
  if (v1) {
    v7 = v5;
  } else {
    v7 = (v5 - 32) / 1.8;
  }
  v8 = v6 - v7;
  v9 = (v2 + 0.1 * v8) * 0.01;
  v10 = (-17.289) * v9;
  v11 = (v6 - 20) * 0.01;
  v12 = 17.5254 * v11 + 13.4853;
  v13 = v10 + v12;
  v14 = ((-35.4791) * v11 + 5.1126) * v11 + (-3.9643);
  v15 = v13 * v9 + v14;
  v16 = ((27.6301 * v11 + 12.363) * v11 + 1.1597) * v11 + 40.9299;
  v17 = v15 * v9 + v16;
  v18 = (((12.3081 * v11 + (-21.6977)) * v11 + 7.2491) * v11 + (-7.172)) * v11 + 135.3705;
  v19 = v17 * v9 + v18;
  v20 = (((18.3184 * v11 + (-47.2207)) * v11 + 59.7712) * v11 + (-46.272)) * v11 + 385.1761;
  v21 = v19 * v9 + v20;
  v22 = (((-0.00000000028103006) * v6 + 0.00000010584601) * v6 - 0.000046241757) * v6 - 0.0079905127;
  v23 = ((v22 * v6 + 16.952577) * v6 + 999.83952) / (1 + 0.016887236 * v6);
  v24 = v2 * 0.01;
  v25 = (v7 - 20) * 0.01;
  v26 = ((-17.289) * v24 + (17.5254 * v25 + 13.4853)) * v24 + (((-35.4791) * v25 + 5.1126) * v25 + (-3.9643));
  v27 = (v26 * v24 + (((27.6301 * v25 + 12.363) * v25 + 1.1597) * v25 + 40.9299)) * v24 + ((((12.3081 * v25 + (-21.6977)) * v25 + 7.2491) * v25 + (-7.172)) * v25 + 135.3705);
  v28 = v27 * v24 + ((((18.3184 * v25 + (-47.2207)) * v25 + 59.7712) * v25 + (-46.272)) * v25 + 385.1761);
  v29 = (((-0.00000000028103006) * v7 + 0.00000010584601) * v7 - 0.000046241757) * v7 - 0.0079905127;
  v30 = (v28 * v24 + ((v29 * v7 + 16.952577) * v7 + 999.83952) / (1 + 0.016887236 * v7)) / (1 + 0.000025 * v8);
  v31 = v9 - (v21 * v9 + v23 - v30) / (((((v10 + v13) * v9 + v15) * v9 + v17) * v9 + v19) * v9 + v21);
  v32 = (-17.289) * v31;
  v33 = v32 + v12;
  v34 = v33 * v31 + v14;
  v35 = v34 * v31 + v16;
  v36 = v35 * v31 + v18;
  v37 = v36 * v31 + v20;
  v38 = (v37 * v31 + v23 - v30) / (((((v32 + v33) * v31 + v34) * v31 + v35) * v31 + v36) * v31 + v37);
  v39 = v31 - v38;
  v40 = (-17.289) * v39;
  v41 = v40 + v12;
  v42 = v41 * v39 + v14;
  v43 = v42 * v39 + v16;
  v44 = v43 * v39 + v18;
  v45 = v44 * v39 + v20;
  v46 = (v45 * v39 + v23 - v30) / (((((v40 + v41) * v39 + v42) * v39 + v43) * v39 + v44) * v39 + v45);
  v47 = 100 * (v39 - v46);
  if (!(v47 <= 85.000000001)) throw new Error("#NUM!");
  if (v47 > 0) {
    v48 = (v47 < 85 ? v47 : 85);
  } else {
    v48 = 0;
  }
  return v48;
}

function BRIX_BY_WEIGHT_(empty_weight, water_weight, full_weight, temperature, units) {
  if (empty_weight === null || water_weight === null || full_weight === null || temperature === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8, v9, v10, v11, v12, v13, v14, v15, v16, v17, v18, v19, v20, v21, v22, v23, v24, v25, v26, v27, v28, v29, v30, v31, v32, v33, v34, v35, v36, v37, v38, v39, v40, v41, v42, v43, v44;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof empty_weight === "string") throw new Error("#VALUE!");
  if (typeof water_weight === "string" || typeof full_weight === "string") throw new Error("#VALUE!");
  if (typeof temperature === "string") throw new Error("#VALUE!");
  v2 = empty_weight * 1;
  v3 = water_weight * 1;
  v4 = full_weight * 1;
  v5 = temperature * 1;
  if (v2 < 0 || v2 > 1000000 || v3 < 0 || v3 > 1000000 || v4 < 0 || v4 > 1000000) throw new Error("#NUM!");
  if (v5 < (v1 ? 0 : 32) || v5 > (v1 ? 100 : 212)) throw new Error("#NUM!");
  v6 = v3 - v2;
  if (!(v6 > 0)) throw new Error("#NUM!");
  v7 = (v4 - v2) / v6;
  if (v1) {
    v8 = v5;
  } else {
    v8 = (v5 - 32) / 1.8;
  }
  v9 = (((-0.00000000028103006) * v8 + 0.00000010584601) * v8 - 0.000046241757) * v8 - 0.0079905127;
  v10 = ((v9 * v8 + 16.952577) * v8 + 999.83952) / (1 + 0.016887236 * v8);
  if (!(v7 <= 1.6)) throw new Error("#NUM!");
  if (!(v7 >= 0.9)) throw new Error("#NUM!");
  v11 = v7 * (v10 - 1.2) + 1.2;
  v12 = (Math.sqrt(1 + 0.00496 * (v11 * 998.203122737355 / v10 - 998.203122737355)) - 1) * 1.0716;
  v13 = 100 * v12 * 0.01;
  v14 = (-17.289) * v13;
  v15 = (v8 - 20) * 0.01;
  v16 = 17.5254 * v15 + 13.4853;
  v17 = v14 + v16;
  v18 = ((-35.4791) * v15 + 5.1126) * v15 + (-3.9643);
  v19 = v17 * v13 + v18;
  v20 = ((27.6301 * v15 + 12.363) * v15 + 1.1597) * v15 + 40.9299;
  v21 = v19 * v13 + v20;
  v22 = (((12.3081 * v15 + (-21.6977)) * v15 + 7.2491) * v15 + (-7.172)) * v15 + 135.3705;
  v23 = v21 * v13 + v22;
  v24 = (((18.3184 * v15 + (-47.2207)) * v15 + 59.7712) * v15 + (-46.272)) * v15 + 385.1761;
  v25 = v23 * v13 + v24;
  v26 = (v25 * v13 + v10 - v11) / (((((v14 + v17) * v13 + v19) * v13 + v21) * v13 + v23) * v13 + v25);
  v27 = v13 - v26;
  v28 = (-17.289) * v27;
  v29 = v28 + v16;
  v30 = v29 * v27 + v18;
  v31 = v30 * v27 + v20;
  v32 = v31 * v27 + v22;
  v33 = v32 * v27 + v24;
  v34 = (v33 * v27 + v10 - v11) / (((((v28 + v29) * v27 + v30) * v27 + v31) * v27 + v32) * v27 + v33);
  v35 = v27 - v34;
  v36 = (-17.289) * v35;
  v37 = v36 + v16;
  v38 = v37 * v35 + v18;
  v39 = v38 * v35 + v20;
  v40 = v39 * v35 + v22;
  v41 = v40 * v35 + v24;
  v42 = (v41 * v35 + v10 - v11) / (((((v36 + v37) * v35 + v38) * v35 + v39) * v35 + v40) * v35 + v41);
  v43 = 100 * (v35 - v42);
  if (!(v43 <= 85.000000001)) throw new Error("#NUM!");
  if (!(v43 >= (-1))) throw new Error("#NUM!");
  if (v43 > 0) {
    v44 = (v43 < 85 ? v43 : 85);
  } else {
    v44 = 0;
  }
  return v44;
}

function BRIX_BY_REFRACTOMETER_(reading, temperature, units) {
  if (reading === null || temperature === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof reading === "string") throw new Error("#VALUE!");
  if (typeof temperature === "string") throw new Error("#VALUE!");
  v2 = reading * 1;
  v3 = temperature * 1;
  if (v2 < 0 || v2 > 75 || v3 < (v1 ? 10 : 50) || v3 > (v1 ? 30 : 86)) throw new Error("#NUM!");
  if (v1) {
    v4 = v3;
  } else {
    v4 = (v3 - 32) / 1.8;
  }
  v5 = v4 - 20;
  v6 = v2 * 0.01;
  v7 = v2 + v5 * (0.06098 + (0.06408 - 0.05691 * v6) * v6 + v5 * (0.001024 - 0.00132 * v6));
  return (v7 > 0 ? v7 : 0);
}

function BRIX_BY_GRAVITY_(gravity) {
  if (gravity === null) throw new Error("#N/A");
  let v1, v2, v3, v4, v5, v6, v7, v8, v9, v10, v11, v12, v13, v14, v15, v16, v17, v18;
  if (typeof gravity === "string") throw new Error("#VALUE!");
  v1 = gravity * 1;
  if (v1 < 1 || v1 > 1.45) throw new Error("#NUM!");
  v2 = v1 * 998.203122737355;
  v3 = (Math.sqrt(1 + 0.00496 * (v2 - 998.203122737355)) - 1) * 1.0716;
  v4 = (-17.289) * v3;
  v5 = v4 + 13.4853;
  v6 = v5 * v3 + (-3.9643);
  v7 = v6 * v3 + 40.9299;
  v8 = v7 * v3 + 135.3705;
  v9 = v8 * v3 + 385.1761;
  v10 = (v9 * v3 + 998.203122737355 - v2) / (((((v4 + v5) * v3 + v6) * v3 + v7) * v3 + v8) * v3 + v9);
  v11 = v3 - v10;
  v12 = (-17.289) * v11;
  v13 = v12 + 13.4853;
  v14 = v13 * v11 + (-3.9643);
  v15 = v14 * v11 + 40.9299;
  v16 = v15 * v11 + 135.3705;
  v17 = v16 * v11 + 385.1761;
  v18 = (v17 * v11 + 998.203122737355 - v2) / (((((v12 + v13) * v11 + v14) * v11 + v15) * v11 + v16) * v11 + v17);
  return 100 * (v11 - v18);
}

function SYRUP_FLOATS_(brix, temperature, units) {
  if (brix === null || temperature === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8, v9, v10, v11, v12, v13, v14, v15, v16, v17, v18, v19, v20, v21, v22, v23, v24, v25, v26, v27, v28, v29, v30, v31, v32, v33, v34, v35, v36, v37;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof brix === "string") throw new Error("#VALUE!");
  if (typeof temperature === "string") throw new Error("#VALUE!");
  v2 = brix * 1;
  v3 = temperature * 1;
  if (v2 < 0 || v2 > 85 || v3 < (v1 ? 0 : 32) || v3 > (v1 ? 105 : 221)) throw new Error("#NUM!");
  if (v1) {
    v4 = v3;
  } else {
    v4 = (v3 - 32) / 1.8;
  }
  v5 = v4 - 15.5555555555556;
  v6 = (v2 - 0.1 * v5) * 0.01;
  v7 = (-17.289) * v6;
  v8 = v7 + 12.7063933333333;
  v9 = v8 * v6 + (-4.26160883950617);
  v10 = v9 * v6 + 40.900352830727;
  v11 = v10 * v6 + 135.705527663246;
  v12 = v11 * v6 + 387.354916952635;
  v13 = v2 * 0.01;
  v14 = (v4 - 20) * 0.01;
  v15 = ((-17.289) * v13 + (17.5254 * v14 + 13.4853)) * v13 + (((-35.4791) * v14 + 5.1126) * v14 + (-3.9643));
  v16 = (v15 * v13 + (((27.6301 * v14 + 12.363) * v14 + 1.1597) * v14 + 40.9299)) * v13 + ((((12.3081 * v14 + (-21.6977)) * v14 + 7.2491) * v14 + (-7.172)) * v14 + 135.3705);
  v17 = v16 * v13 + ((((18.3184 * v14 + (-47.2207)) * v14 + 59.7712) * v14 + (-46.272)) * v14 + 385.1761);
  v18 = (((-0.00000000028103006) * v4 + 0.00000010584601) * v4 - 0.000046241757) * v4 - 0.0079905127;
  v19 = (v17 * v13 + ((v18 * v4 + 16.952577) * v4 + 999.83952) / (1 + 0.016887236 * v4)) * (1 + 0.000025 * v5);
  v20 = (v12 * v6 + 999.013466396045 - v19) / (((((v7 + v8) * v6 + v9) * v6 + v10) * v6 + v11) * v6 + v12);
  v21 = v6 - v20;
  v22 = (-17.289) * v21;
  v23 = v22 + 12.7063933333333;
  v24 = v23 * v21 + (-4.26160883950617);
  v25 = v24 * v21 + 40.900352830727;
  v26 = v25 * v21 + 135.705527663246;
  v27 = v26 * v21 + 387.354916952635;
  v28 = (v27 * v21 + 999.013466396045 - v19) / (((((v22 + v23) * v21 + v24) * v21 + v25) * v21 + v26) * v21 + v27);
  v29 = v21 - v28;
  v30 = (-17.289) * v29;
  v31 = v30 + 12.7063933333333;
  v32 = v31 * v29 + (-4.26160883950617);
  v33 = v32 * v29 + 40.900352830727;
  v34 = v33 * v29 + 135.705527663246;
  v35 = v34 * v29 + 387.354916952635;
  v36 = (v35 * v29 + 999.013466396045 - v19) / (((((v30 + v31) * v29 + v32) * v29 + v33) * v29 + v34) * v29 + v35);
  v37 = 100 * (v29 - v36);
  if (!(v37 >= (-0.000001))) throw new Error("#NUM!");
  if (!(v37 <= 85.000001)) throw new Error("#NUM!");
  return (v37 > 0 ? v37 : 0);
}

function SYRUP_GRAVITY_(brix) {
  if (brix === null) throw new Error("#N/A");
  let v1, v2, v3;
  if (typeof brix === "string") throw new Error("#VALUE!");
  v1 = brix * 1;
  if (v1 < 0 || v1 > 85) throw new Error("#NUM!");
  v2 = v1 * 0.01;
  v3 = (((((-17.289) * v2 + 13.4853) * v2 + (-3.9643)) * v2 + 40.9299) * v2 + 135.3705) * v2 + 385.1761;
  return (v3 * v2 + 998.203122737355) / 998.203122737355;
}

function SYRUP_BAUME_(brix) {
  if (brix === null) throw new Error("#N/A");
  let v1, v2, v3;
  if (typeof brix === "string") throw new Error("#VALUE!");
  v1 = brix * 1;
  if (v1 < 0 || v1 > 85) throw new Error("#NUM!");
  v2 = v1 * 0.01;
  v3 = (((((-17.289) * v2 + 13.4853) * v2 + (-3.9643)) * v2 + 40.9299) * v2 + 135.3705) * v2 + 385.1761;
  return 145 - 145 / ((v3 * v2 + 998.203122737355) / 998.203122737355);
}

function SYRUP_DENSITY_(brix, temperature, units) {
  if (brix === null || temperature === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8, v9, v10, v11, v12;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof brix === "string") throw new Error("#VALUE!");
  if (typeof temperature === "string") throw new Error("#VALUE!");
  v2 = brix * 1;
  v3 = temperature * 1;
  if (v2 < 0 || v2 > 85 || v3 < (v1 ? 0 : 32) || v3 > (v1 ? 105 : 221)) throw new Error("#NUM!");
  v4 = v2 * 0.01;
  if (v1) {
    v5 = v3;
  } else {
    v5 = (v3 - 32) / 1.8;
  }
  v6 = (v5 - 20) * 0.01;
  v7 = ((-17.289) * v4 + (17.5254 * v6 + 13.4853)) * v4 + (((-35.4791) * v6 + 5.1126) * v6 + (-3.9643));
  v8 = (v7 * v4 + (((27.6301 * v6 + 12.363) * v6 + 1.1597) * v6 + 40.9299)) * v4 + ((((12.3081 * v6 + (-21.6977)) * v6 + 7.2491) * v6 + (-7.172)) * v6 + 135.3705);
  v9 = v8 * v4 + ((((18.3184 * v6 + (-47.2207)) * v6 + 59.7712) * v6 + (-46.272)) * v6 + 385.1761);
  v10 = (((-0.00000000028103006) * v5 + 0.00000010584601) * v5 - 0.000046241757) * v5 - 0.0079905127;
  v11 = v9 * v4 + ((v10 * v5 + 16.952577) * v5 + 999.83952) / (1 + 0.016887236 * v5);
  if (v1) {
    v12 = v11 / 1000;
  } else {
    v12 = v11 / 119.826427316897;
  }
  return v12;
}

function SYRUP_COLD_(volume, brix, temperature, units) {
  if (volume === null || brix === null || temperature === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8, v9, v10, v11, v12, v13, v14, v15, v16;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof volume === "string" || typeof brix === "string") throw new Error("#VALUE!");
  if (typeof temperature === "string") throw new Error("#VALUE!");
  v2 = volume * 1;
  v3 = brix * 1;
  v4 = temperature * 1;
  if (v2 < 0 || v2 > (v1 ? 3800000 : 1000000) || v3 < 0 || v3 > 85 || v4 < (v1 ? 0 : 32)) throw new Error("#NUM!");
  if (v4 > (v1 ? 105 : 221)) throw new Error("#NUM!");
  v5 = v3 * 0.01;
  v6 = (-17.289) * v5;
  if (v1) {
    v7 = v4;
  } else {
    v7 = (v4 - 32) / 1.8;
  }
  v8 = (v7 - 20) * 0.01;
  if (v1) {
    v9 = v2 * 0.001;
  } else {
    v9 = v2 * 0.003785411784;
  }
  v10 = ((v6 + (17.5254 * v8 + 13.4853)) * v5 + (((-35.4791) * v8 + 5.1126) * v8 + (-3.9643))) * v5;
  v11 = (v10 + (((27.6301 * v8 + 12.363) * v8 + 1.1597) * v8 + 40.9299)) * v5 + ((((12.3081 * v8 + (-21.6977)) * v8 + 7.2491) * v8 + (-7.172)) * v8 + 135.3705);
  v12 = v11 * v5 + ((((18.3184 * v8 + (-47.2207)) * v8 + 59.7712) * v8 + (-46.272)) * v8 + 385.1761);
  v13 = (((-0.00000000028103006) * v7 + 0.00000010584601) * v7 - 0.000046241757) * v7 - 0.0079905127;
  v14 = (((((v6 + 13.4853) * v5 + (-3.9643)) * v5 + 40.9299) * v5 + 135.3705) * v5 + 385.1761) * v5;
  v15 = v9 * (v12 * v5 + ((v13 * v7 + 16.952577) * v7 + 999.83952) / (1 + 0.016887236 * v7)) / (v14 + 998.203122737355);
  if (v1) {
    v16 = v15 / 0.001;
  } else {
    v16 = v15 / 0.003785411784;
  }
  return v16;
}

function SYRUP_ADJUST_(volume, brix, syrup_brix, units) {
  if (volume === null || brix === null || syrup_brix === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8, v9;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof volume === "string" || typeof brix === "string") throw new Error("#VALUE!");
  if (typeof syrup_brix === "string") throw new Error("#VALUE!");
  v2 = volume * 1;
  v3 = brix * 1;
  v4 = syrup_brix * 1;
  if (v2 < 0 || v2 > (v1 ? 3800000 : 1000000) || v3 < 0 || v3 > 85 || v4 < 0.1 || v4 > 85) throw new Error("#NUM!");
  v5 = v3 * 0.01;
  if (v1) {
    v6 = v2 * 0.001;
  } else {
    v6 = v2 * 0.003785411784;
  }
  v7 = (((((-17.289) * v5 + 13.4853) * v5 + (-3.9643)) * v5 + 40.9299) * v5 + 135.3705) * v5 + 385.1761;
  v8 = v6 * (v7 * v5 + 998.203122737355) * (v3 / v4 - 1) / 998.203122737355;
  if (v1) {
    v9 = v8 / 0.000001;
  } else {
    v9 = v8 / 0.0000295735295625;
  }
  return v9;
}

function SYRUP_BLEND_(volume, brix, other_volume, other_brix) {
  if (volume === null || brix === null || other_volume === null || other_brix === null) throw new Error("#N/A");
  let v1, v2, v3, v4, v5, v6, v7, v8, v9, v10, v11;
  if (typeof volume === "string" || typeof brix === "string" || typeof other_volume === "string") throw new Error("#VALUE!");
  if (typeof other_brix === "string") throw new Error("#VALUE!");
  v1 = volume * 1;
  v2 = brix * 1;
  v3 = other_volume * 1;
  v4 = other_brix * 1;
  if (v1 < 0 || v1 > 10000000 || v2 < 0 || v2 > 85 || v3 < 0 || v3 > 10000000 || v4 < 0 || v4 > 85) throw new Error("#NUM!");
  v5 = v2 * 0.01;
  v6 = (((((-17.289) * v5 + 13.4853) * v5 + (-3.9643)) * v5 + 40.9299) * v5 + 135.3705) * v5 + 385.1761;
  v7 = v1 * (v6 * v5 + 998.203122737355);
  v8 = v4 * 0.01;
  v9 = (((((-17.289) * v8 + 13.4853) * v8 + (-3.9643)) * v8 + 40.9299) * v8 + 135.3705) * v8 + 385.1761;
  v10 = v3 * (v9 * v8 + 998.203122737355);
  v11 = v7 + v10;
  if (!(v11 > 0)) throw new Error("#NUM!");
  return (v7 * v2 + v10 * v4) / v11;
}

function SYRUP_BLEND_SHARE_(thin_brix, thick_brix, syrup_brix) {
  if (thin_brix === null || thick_brix === null || syrup_brix === null) throw new Error("#N/A");
  let v1, v2, v3, v4, v5, v6, v7, v8, v9;
  if (typeof thin_brix === "string" || typeof thick_brix === "string") throw new Error("#VALUE!");
  if (typeof syrup_brix === "string") throw new Error("#VALUE!");
  v1 = thin_brix * 1;
  v2 = thick_brix * 1;
  v3 = syrup_brix * 1;
  if (v1 < 0 || v1 > 85 || v2 < 0 || v2 > 85 || v3 < 0.1 || v3 > 85) throw new Error("#NUM!");
  v4 = v1 * 0.01;
  if (!(v1 <= v3)) throw new Error("#NUM!");
  v5 = (((((-17.289) * v4 + 13.4853) * v4 + (-3.9643)) * v4 + 40.9299) * v4 + 135.3705) * v4 + 385.1761;
  v6 = (v3 - v1) * (v5 * v4 + 998.203122737355);
  v7 = v2 * 0.01;
  if (!(v3 <= v2)) throw new Error("#NUM!");
  v8 = (((((-17.289) * v7 + 13.4853) * v7 + (-3.9643)) * v7 + 40.9299) * v7 + 135.3705) * v7 + 385.1761;
  v9 = v6 + (v2 - v3) * (v8 * v7 + 998.203122737355);
  if (!(v9 > 0)) throw new Error("#NUM!");
  return v6 / v9;
}

function SYRUP_STATE_(brix) {
  if (brix === null) throw new Error("#N/A");
  let v1, v2;
  if (typeof brix === "string") throw new Error("#VALUE!");
  v1 = brix * 1;
  if (v1 < 0 || v1 > 85) throw new Error("#NUM!");
  if (v1 < 66) {
    v2 = "thin";
  } else {
    v2 = (v1 > 68.9 ? "thick" : "in range");
  }
  return v2;
}

function SYRUP_GRADE_(transmittance) {
  if (transmittance === null) throw new Error("#N/A");
  let v1, v2;
  if (typeof transmittance === "string") throw new Error("#VALUE!");
  v1 = transmittance * 1;
  if (v1 < 0 || v1 > 100) throw new Error("#NUM!");
  if (v1 >= 75) {
    v2 = "Golden";
  } else {
    if (v1 >= 50) {
      v2 = "Amber";
    } else {
      v2 = (v1 >= 25 ? "Dark" : "Very Dark");
    }
  }
  return v2;
}

function JAR_COUNT_(volume, jar_size, units) {
  if (volume === null || jar_size === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof volume === "string") throw new Error("#VALUE!");
  if (typeof jar_size === "string") throw new Error("#VALUE!");
  v2 = volume * 1;
  v3 = jar_size * 1;
  if (v2 < 0 || v2 > (v1 ? 3800000 : 1000000) || v3 < (v1 ? 3 : 0.1) || v3 > (v1 ? 30000 : 1000)) throw new Error("#NUM!");
  if (v1) {
    v4 = v2 * 0.001;
  } else {
    v4 = v2 * 0.003785411784;
  }
  if (v1) {
    v5 = v3 * 0.000001;
  } else {
    v5 = v3 * 0.0000295735295625;
  }
  return Math.floor((v4 + 0.000000000001 * v4) / v5);
}

function JAR_REST_(volume, jar_size, units) {
  if (volume === null || jar_size === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8, v9;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof volume === "string") throw new Error("#VALUE!");
  if (typeof jar_size === "string") throw new Error("#VALUE!");
  v2 = volume * 1;
  v3 = jar_size * 1;
  if (v2 < 0 || v2 > (v1 ? 3800000 : 1000000) || v3 < (v1 ? 3 : 0.1) || v3 > (v1 ? 30000 : 1000)) throw new Error("#NUM!");
  if (v1) {
    v4 = v2 * 0.001;
  } else {
    v4 = v2 * 0.003785411784;
  }
  if (v1) {
    v5 = v3 * 0.000001;
  } else {
    v5 = v3 * 0.0000295735295625;
  }
  v6 = 0.000000000001 * v4;
  v7 = v4 - v5 * Math.floor((v4 + v6) / v5);
  v8 = (v7 > v6 ? v7 : 0);
  if (v1) {
    v9 = v8 / 0.000001;
  } else {
    v9 = v8 / 0.0000295735295625;
  }
  return v9;
}

function JAR_WEIGHT_(jar_size, brix, units) {
  if (jar_size === null || brix === null) throw new Error("#N/A");
  if (units === null) units = "US";
  let v1, v2, v3, v4, v5, v6, v7, v8;
  v1 = !sameWord_(units, "US");
  if (v1 && !sameWord_(units, "metric") || typeof jar_size === "string") throw new Error("#VALUE!");
  if (typeof brix === "string") throw new Error("#VALUE!");
  v2 = jar_size * 1;
  v3 = brix * 1;
  if (v2 < (v1 ? 3 : 0.1) || v2 > (v1 ? 30000 : 1000) || v3 < 0 || v3 > 85) throw new Error("#NUM!");
  v4 = v3 * 0.01;
  if (v1) {
    v5 = v2 * 0.000001;
  } else {
    v5 = v2 * 0.0000295735295625;
  }
  v6 = (((((-17.289) * v4 + 13.4853) * v4 + (-3.9643)) * v4 + 40.9299) * v4 + 135.3705) * v4 + 385.1761;
  v7 = v5 * ((v6 * v4 + 998.203122737355 - 1.2) / 0.99985);
  if (v1) {
    v8 = v7 / 0.001;
  } else {
    v8 = v7 / 0.028349523125;
  }
  return v8;
}
