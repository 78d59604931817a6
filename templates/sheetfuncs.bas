Attribute VB_Name = "sheetfuncs"
Option Explicit

' Maple sugaring functions in plain VBA, of sheetfuncs 0.2.0: nothing else is needed.
' Written by `sheetfuncs excel-addin --plain`: do not edit, but write it anew.

Private Const FUNCTION_CATEGORY As String = "Maple sugaring"

Public Function AIR_PRESSURE(Optional elevation, Optional units)
    AIR_PRESSURE = Answer("AIR_PRESSURE", Array(elevation, units))
End Function

Public Function AIR_PRESSURE_HERE(Optional barometer, Optional elevation, Optional units)
    AIR_PRESSURE_HERE = Answer("AIR_PRESSURE_HERE", Array(barometer, elevation, units))
End Function

Public Function AIR_PRESSURE_BY_SEA_LEVEL(Optional sea_level, Optional elevation, Optional temperature, Optional units)
    AIR_PRESSURE_BY_SEA_LEVEL = Answer("AIR_PRESSURE_BY_SEA_LEVEL", Array(sea_level, elevation, temperature, units))
End Function

Public Function WATER_BOILS(Optional pressure, Optional units)
    WATER_BOILS = Answer("WATER_BOILS", Array(pressure, units))
End Function

Public Function TAP_COUNT(Optional trunk_diameter, Optional units)
    TAP_COUNT = Answer("TAP_COUNT", Array(trunk_diameter, units))
End Function

Public Function SAP_RUNS(Optional night_low, Optional recent_low, Optional day_high, Optional units)
    SAP_RUNS = Answer("SAP_RUNS", Array(night_low, recent_low, day_high, units))
End Function

Public Function SEASON_WARMTH(Optional low, Optional high, Optional units)
    SEASON_WARMTH = Answer("SEASON_WARMTH", Array(low, high, units))
End Function

Public Function SEASON_GOES_ON(Optional freeze_thaws, Optional warmth, Optional units)
    SEASON_GOES_ON = Answer("SEASON_GOES_ON", Array(freeze_thaws, warmth, units))
End Function

Public Function SAP_SUGAR(Optional volume, Optional brix, Optional units)
    SAP_SUGAR = Answer("SAP_SUGAR", Array(volume, brix, units))
End Function

Public Function SAP_PER_SYRUP(Optional brix, Optional syrup_brix)
    SAP_PER_SYRUP = Answer("SAP_PER_SYRUP", Array(brix, syrup_brix))
End Function

Public Function SYRUP_FROM_SAP(Optional volume, Optional brix, Optional syrup_brix)
    SYRUP_FROM_SAP = Answer("SYRUP_FROM_SAP", Array(volume, brix, syrup_brix))
End Function

Public Function SAP_AFTER_ICE(Optional brix, Optional ice_share, Optional ice_brix)
    SAP_AFTER_ICE = Answer("SAP_AFTER_ICE", Array(brix, ice_share, ice_brix))
End Function

Public Function SAP_ICE_LOSS(Optional brix, Optional ice_share, Optional ice_brix)
    SAP_ICE_LOSS = Answer("SAP_ICE_LOSS", Array(brix, ice_share, ice_brix))
End Function

Public Function SAP_FREEZES(Optional brix, Optional units)
    SAP_FREEZES = Answer("SAP_FREEZES", Array(brix, units))
End Function

Public Function SAP_KEEPS(Optional brix, Optional temperature, Optional units)
    SAP_KEEPS = Answer("SAP_KEEPS", Array(brix, temperature, units))
End Function

Public Function BOIL_BRIX(Optional volume, Optional brix, Optional volume_left)
    BOIL_BRIX = Answer("BOIL_BRIX", Array(volume, brix, volume_left))
End Function

Public Function BOIL_WATER(Optional volume, Optional brix, Optional to_brix)
    BOIL_WATER = Answer("BOIL_WATER", Array(volume, brix, to_brix))
End Function

Public Function BOIL_HOURS(Optional volume, Optional brix, Optional to_brix, Optional rate)
    BOIL_HOURS = Answer("BOIL_HOURS", Array(volume, brix, to_brix, rate))
End Function

Public Function BOIL_HEAT(Optional volume, Optional brix, Optional to_brix, Optional sap_temperature, Optional units)
    BOIL_HEAT = Answer("BOIL_HEAT", Array(volume, brix, to_brix, sap_temperature, units))
End Function

Public Function BOIL_FUEL(Optional heat, Optional fuel, Optional efficiency, Optional units)
    BOIL_FUEL = Answer("BOIL_FUEL", Array(heat, fuel, efficiency, units))
End Function

Public Function FUEL_EFFICIENCY(Optional fuel)
    FUEL_EFFICIENCY = Answer("FUEL_EFFICIENCY", Array(fuel))
End Function

Public Function PAN_RATE(Optional area, Optional units)
    PAN_RATE = Answer("PAN_RATE", Array(area, units))
End Function

Public Function BOIL_RATE(Optional power, Optional efficiency, Optional units)
    BOIL_RATE = Answer("BOIL_RATE", Array(power, efficiency, units))
End Function

Public Function PAN_DEPTH(Optional volume, Optional area, Optional units)
    PAN_DEPTH = Answer("PAN_DEPTH", Array(volume, area, units))
End Function

Public Function FINISH_RISE(Optional brix, Optional pressure, Optional units)
    FINISH_RISE = Answer("FINISH_RISE", Array(brix, pressure, units))
End Function

Public Function FINISH_TEMP(Optional brix, Optional pressure, Optional units)
    FINISH_TEMP = Answer("FINISH_TEMP", Array(brix, pressure, units))
End Function

Public Function FINISH_READING(Optional brix, Optional water_reading, Optional units)
    FINISH_READING = Answer("FINISH_READING", Array(brix, water_reading, units))
End Function

Public Function FINISH_MINUTES(Optional volume, Optional brix, Optional syrup_brix, Optional rate)
    FINISH_MINUTES = Answer("FINISH_MINUTES", Array(volume, brix, syrup_brix, rate))
End Function

Public Function BRIX_BY_BOIL(Optional reading, Optional water_reading, Optional units)
    BRIX_BY_BOIL = Answer("BRIX_BY_BOIL", Array(reading, water_reading, units))
End Function

Public Function BRIX_BY_BOIL_SPREAD(Optional reading, Optional water_reading, Optional give_or_take, Optional water_from, Optional units)
    BRIX_BY_BOIL_SPREAD = Answer("BRIX_BY_BOIL_SPREAD", Array(reading, water_reading, give_or_take, water_from, units))
End Function

Public Function BRIX_BY_HYDROMETER(Optional reading, Optional temperature, Optional units)
    BRIX_BY_HYDROMETER = Answer("BRIX_BY_HYDROMETER", Array(reading, temperature, units))
End Function

Public Function BRIX_BY_SAP_HYDROMETER(Optional reading, Optional temperature, Optional marked_at, Optional units)
    BRIX_BY_SAP_HYDROMETER = Answer("BRIX_BY_SAP_HYDROMETER", Array(reading, temperature, marked_at, units))
End Function

Public Function BRIX_BY_WEIGHT(Optional empty_weight, Optional water_weight, Optional full_weight, Optional temperature, Optional units)
    BRIX_BY_WEIGHT = Answer("BRIX_BY_WEIGHT", Array(empty_weight, water_weight, full_weight, temperature, units))
End Function

Public Function BRIX_BY_REFRACTOMETER(Optional reading, Optional temperature, Optional units)
    BRIX_BY_REFRACTOMETER = Answer("BRIX_BY_REFRACTOMETER", Array(reading, temperature, units))
End Function

Public Function BRIX_BY_GRAVITY(Optional gravity)
    BRIX_BY_GRAVITY = Answer("BRIX_BY_GRAVITY", Array(gravity))
End Function

Public Function SYRUP_FLOATS(Optional brix, Optional temperature, Optional units)
    SYRUP_FLOATS = Answer("SYRUP_FLOATS", Array(brix, temperature, units))
End Function

Public Function SYRUP_GRAVITY(Optional brix)
    SYRUP_GRAVITY = Answer("SYRUP_GRAVITY", Array(brix))
End Function

Public Function SYRUP_BAUME(Optional brix)
    SYRUP_BAUME = Answer("SYRUP_BAUME", Array(brix))
End Function

Public Function SYRUP_DENSITY(Optional brix, Optional temperature, Optional units)
    SYRUP_DENSITY = Answer("SYRUP_DENSITY", Array(brix, temperature, units))
End Function

Public Function SYRUP_COLD(Optional volume, Optional brix, Optional temperature, Optional units)
    SYRUP_COLD = Answer("SYRUP_COLD", Array(volume, brix, temperature, units))
End Function

Public Function SYRUP_ADJUST(Optional volume, Optional brix, Optional syrup_brix, Optional units)
    SYRUP_ADJUST = Answer("SYRUP_ADJUST", Array(volume, brix, syrup_brix, units))
End Function

Public Function SYRUP_BLEND(Optional volume, Optional brix, Optional other_volume, Optional other_brix)
    SYRUP_BLEND = Answer("SYRUP_BLEND", Array(volume, brix, other_volume, other_brix))
End Function

Public Function SYRUP_BLEND_SHARE(Optional thin_brix, Optional thick_brix, Optional syrup_brix)
    SYRUP_BLEND_SHARE = Answer("SYRUP_BLEND_SHARE", Array(thin_brix, thick_brix, syrup_brix))
End Function

Public Function SYRUP_STATE(Optional brix)
    SYRUP_STATE = Answer("SYRUP_STATE", Array(brix))
End Function

Public Function SYRUP_GRADE(Optional transmittance)
    SYRUP_GRADE = Answer("SYRUP_GRADE", Array(transmittance))
End Function

Public Function JAR_COUNT(Optional volume, Optional jar_size, Optional units)
    JAR_COUNT = Answer("JAR_COUNT", Array(volume, jar_size, units))
End Function

Public Function JAR_REST(Optional volume, Optional jar_size, Optional units)
    JAR_REST = Answer("JAR_REST", Array(volume, jar_size, units))
End Function

Public Function JAR_WEIGHT(Optional jar_size, Optional brix, Optional units)
    JAR_WEIGHT = Answer("JAR_WEIGHT", Array(jar_size, brix, units))
End Function

' Run this once: it puts what each function and each argument means into Excel's function help.
Public Sub sheetfuncs_help()
    help_on_air
    help_on_taps
    help_on_sap
    help_on_boil
    help_on_finish
    help_on_syrup
    help_on_jars
End Sub

Private Sub help_on_air()
    Describe "AIR_PRESSURE", "Air pressure at an elevation on a standard day. Returns air" & _
            " pressure at the pan, inHg or hPa.", _
            "height above the sea; -1,400 to 16,000 ft, or -425 to 4,900" & " m", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "AIR_PRESSURE_HERE", "Air pressure at the pan today, from the altimeter setting" & _
            " and the elevation. Returns air pressure at the pan, inHg or" & " hPa.", _
            "altimeter setting, as airports and the U.S. weather service" & _
            " report it; 26 to 32 inHg, or 880 to 1,084 hPa", _
            "height above the sea; -1,400 to 16,000 ft, or -425 to 4,900" & " m", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "AIR_PRESSURE_BY_SEA_LEVEL", "Air pressure at the pan today, from sea-level pressure, the" & _
            " elevation and the cold outdoors. Returns air pressure at" & " the pan, inHg or hPa.", _
            "sea-level pressure of a forecast, as telephones and weather" & _
            " maps show it; 26 to 32 inHg, or 880 to 1,084 hPa", _
            "height above the sea; -1,400 to 16,000 ft, or -425 to 4,900" & " m", _
            "air temperature outdoors, the mean of now and 12 hours ago;" & " -60 to 130 " & ChrW(176) & _
            "F, or -51 to 54.5 " & ChrW(176) & "C", "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "WATER_BOILS", "Boiling point of pure water at an air pressure. Returns" & _
            " boiling point of water, " & ChrW(176) & "F or " & ChrW(176) & "C.", _
            "air pressure at the pan, not reduced to sea level" & _
            " (AIR_PRESSURE or AIR_PRESSURE_HERE gives it); 15 to 32" & " inHg, or 508 to 1,084 hPa", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
End Sub

Private Sub help_on_taps()
    Describe "TAP_COUNT", "How many taps a maple can bear: under 12 in none, 12 to 18" & _
            " in one, over 18 in two. Returns taps the trunk can bear," & " count.", _
            "thickness of the trunk at 4.5 ft (1.4 m); 0 to 120 in, or 0" & " to 305 cm", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "SAP_RUNS", "Whether sap will run on the day after a night: 0 no, 1" & _
            " maybe, 2 likely. Returns 0 no, 1 maybe, 2 likely, count.", _
            "lowest temperature of the night; -60 to 130 " & ChrW(176) & "F, or -51 to 54.5 " & ChrW(176) & _
            "C", "lowest temperature of this night and the two before; -60 to" & " 130 " & ChrW(176) & _
            "F, or -51 to 54.5 " & ChrW(176) & "C", "highest temperature of the day after; -60 to 130 " & _
            ChrW(176) & "F, or -51 to 54.5 " & ChrW(176) & "C", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "SEASON_WARMTH", "Warmth of a day that brings the buds on. Added up from 1" & _
            " January it tells how far spring is. Returns degree-days" & " over 5 " & ChrW(176) & "C (41 " & _
            ChrW(176) & "F), F" & ChrW(176) & ChrW(183) & "days or C" & ChrW(176) & ChrW(183) & "days.", _
            "lowest temperature of the day; -60 to 130 " & ChrW(176) & "F, or -51 to 54.5 " & ChrW(176) & "C", _
            "highest temperature of the day; -60 to 130 " & ChrW(176) & "F, or -51 to 54.5 " & ChrW(176) & "C", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "SEASON_GOES_ON", "How likely a week is still one of the season, by its frosts" & _
            " and warmth since 1 January. Returns probability, 0 to 1;" & _
            " the authors count a week as in the season from 0.51 on.", _
            "days since 1 January with a low under 3 " & ChrW(176) & "C (37.4 " & ChrW(176) & _
            "F) and a high over it; 0 to 120 count", "degree-days over 5 " & ChrW(176) & "C (41 " & ChrW(176) & _
            "F) since 1 January: the sum of SEASON_WARMTH; 0 to 3,600 F" & ChrW(176) & ChrW(183) & _
            "days, or 0 to 2,000 C" & ChrW(176) & ChrW(183) & "days", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
End Sub

Private Sub help_on_sap()
    Describe "SAP_SUGAR", "Mass of sugar in a volume of sap or syrup. It stays when the" & _
            " water leaves. Returns mass of sugar, lb or kg.", _
            "volume of sap or syrup, cold; 0 to 1,000,000 gal, or 0 to" & " 3,800,000 L", _
            "sugar in the liquid, percent by mass; 0 to 85 " & ChrW(176) & "Brix", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "SAP_PER_SYRUP", "How many volumes of sap boil down to one volume of syrup." & _
            " Returns volumes of sap for one of syrup.", _
            "sugar in the liquid, percent by mass, more than none; 0.1 to" & " 85 " & ChrW(176) & "Brix", _
            "sugar in the syrup wanted, percent by mass (66.9 is usual);" & " 0.1 to 85 " & ChrW(176) & "Brix"
    Describe "SYRUP_FROM_SAP", "Volume that is left when sap is boiled to a strength; from" & _
            " any strength to any other. Returns volume left, in the unit" & _
            " of `volume`, any one unit of volume.", _
            "volume of the liquid, cold; 0 to 10,000,000 any one unit of" & " volume", _
            "sugar in the liquid, percent by mass; 0 to 85 " & ChrW(176) & "Brix", _
            "sugar in the syrup wanted, percent by mass (66.9 is usual);" & " 0.1 to 85 " & ChrW(176) & "Brix"
    Describe "SAP_AFTER_ICE", "Strength of the liquid when ice is lifted out of freezing" & _
            " sap and thrown away. Returns strength of the liquid left, " & ChrW(176) & "Brix.", _
            "sugar in the liquid, percent by mass; 0 to 85 " & ChrW(176) & "Brix", _
            "share of the mass that is thrown out as ice, 0.25 for a" & " quarter; 0 to 0.95 share", _
            "sugar left in the ice, percent by mass (often 0.2 to 1); 0" & " to 85 " & ChrW(176) & "Brix"
    Describe "SAP_ICE_LOSS", "Share of the sugar that goes out with the ice. Returns share" & _
            " of the sugar, 0.1 for a tenth.", "sugar in the liquid, percent by mass, more than none; 0.1 to" & _
            " 85 " & ChrW(176) & "Brix", "share of the mass that is thrown out as ice, 0.25 for a" & _
            " quarter; 0 to 0.95 share", "sugar left in the ice, percent by mass (often 0.2 to 1); 0" & _
            " to 85 " & ChrW(176) & "Brix"
    Describe "SAP_FREEZES", "Freezing point of sap. Returns temperature at which ice" & " begins to form, " & _
            ChrW(176) & "F or " & ChrW(176) & "C.", "sugar in the sap, percent by mass; 0 to 42 " & ChrW(176) & _
            "Brix", "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "SAP_KEEPS", "Days that sap or part-boiled sap keeps. A judgement: smell" & _
            " and look before you boil. Returns days, from when it was" & _
            " collected or last brought to a boil.", "sugar in the liquid, percent by mass; 0 to 85 " & _
            ChrW(176) & "Brix", "temperature the lot is kept at; -40 to 100 " & ChrW(176) & _
            "F, or -40 to 38 " & ChrW(176) & "C", "unit system, ""US"" or ""metric""; left out: ""US"""
End Sub

Private Sub help_on_boil()
    Describe "BOIL_BRIX", "Strength after boiling to a measured volume; both volumes" & _
            " cold, no sugar lost. Returns strength after boiling, " & ChrW(176) & "Brix.", _
            "volume of the liquid, cold; 0 to 10,000,000 any one unit of" & " volume", _
            "sugar in the liquid, percent by mass; 0 to 85 " & ChrW(176) & "Brix", _
            "volume left, cold, in the unit of `volume`; 0 to 10,000,000" & " any one unit of volume"
    Describe "BOIL_WATER", "Water to boil away to bring sap to a strength. Returns cold" & _
            " volume of water, in the unit of `volume`, any one unit of" & " volume.", _
            "volume of the liquid, cold; 0 to 10,000,000 any one unit of" & " volume", _
            "sugar in the liquid, percent by mass; 0 to 85 " & ChrW(176) & "Brix", _
            "sugar in the syrup wanted, percent by mass (66.9 is usual);" & " 0.1 to 85 " & ChrW(176) & "Brix"
    Describe "BOIL_HOURS", "Hours to bring sap to a strength at a rate of boiling," & _
            " without heating up or rests. Returns hours.", _
            "volume of the liquid, cold; 0 to 10,000,000 any one unit of" & " volume", _
            "sugar in the liquid, percent by mass; 0 to 85 " & ChrW(176) & "Brix", _
            "sugar in the syrup wanted, percent by mass (66.9 is usual);" & " 0.1 to 85 " & ChrW(176) & "Brix", _
            "volume of water that boils off in an hour; 0.001 to" & " 1,000,000 the same unit an hour"
    Describe "BOIL_HEAT", "Heat to warm sap and boil its water off, all of it reaching" & _
            " the sap. Returns heat, Btu or MJ.", "volume of sap or syrup, cold; 0 to 1,000,000 gal, or 0 to" & _
            " 3,800,000 L", "sugar in the liquid, percent by mass; 0 to 85 " & ChrW(176) & "Brix", _
            "sugar in the syrup wanted, percent by mass (66.9 is usual);" & " 0.1 to 85 " & ChrW(176) & "Brix", _
            "temperature of the sap at the start; 20 to 212 " & ChrW(176) & "F, or -6.5 to 100 " & ChrW(176) & _
            "C", "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "BOIL_FUEL", "Fuel that brings a heat to the sap; efficiency is the share" & _
            " of its heat that gets there. Returns amount of fuel: wood" & " in cords or m" & ChrW(179) & _
            " stacked, propane and fuel oil in gal or L, gas in ft" & ChrW(179) & " or m" & ChrW(179) & _
            ", else 20-lb bottles, therms or kWh, the fuel's unit.", _
            "heat that must reach the sap; 0 to 1e+12 Btu, or 0 to" & " 1,055,000,000 MJ", _
            "fuel; one of hardwood, softwood, propane, propane bottle," & _
            " fuel oil, natural gas, natural gas by therm, electricity", _
            "share of the fuel's heat that reaches the sap" & _
            " (FUEL_EFFICIENCY has one to start with); 0.01 to 1 share", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "FUEL_EFFICIENCY", "Share of a fuel's heat that reaches the sap, to start with:" & _
            " your own log knows better. Returns share of the fuel's" & " heat.", _
            "fuel; one of hardwood, softwood, propane, propane bottle," & _
            " fuel oil, natural gas, natural gas by therm, electricity"
    Describe "PAN_RATE", "How fast a flat pan over a fire boils water off. A guess to" & _
            " start with: measure your own. Returns volume of water an" & " hour, gal/h or L/h.", _
            "area of the pan's bottom; 0.05 to 1,000 sq ft, or 0.005 to" & " 93 m" & ChrW(178), _
            "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "BOIL_RATE", "How fast a heat boils water off, once it boils; efficiency" & _
            " is the share that reaches the sap. Returns volume of water" & " an hour, gal/h or L/h.", _
            "power of the stove, hot plate or burner; 1 to 10,000,000" & " Btu/h, or 0.0003 to 2,930 kW", _
            "share of the fuel's heat that reaches the sap" & _
            " (FUEL_EFFICIENCY has one to start with); 0.01 to 1 share", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "PAN_DEPTH", "Depth of a volume in a pan with upright sides. Returns depth" & _
            " of the liquid, in or cm.", "volume of sap or syrup, cold; 0 to 1,000,000 gal, or 0 to" & _
            " 3,800,000 L", "area of the pan's bottom; 0.05 to 1,000 sq ft, or 0.005 to" & " 93 m" & ChrW(178), _
            "unit system, ""US"" or ""metric""; left out: ""US"""
End Sub

Private Sub help_on_finish()
    Describe "FINISH_RISE", "How much hotter than water sap or syrup boils, at its" & _
            " strength and the air pressure. Returns degrees above" & " boiling water, F" & ChrW(176) & _
            " or C" & ChrW(176) & ".", "sugar in the liquid, percent by mass; 0 to 85 " & ChrW(176) & "Brix", _
            "air pressure at the pan, not reduced to sea level" & _
            " (AIR_PRESSURE or AIR_PRESSURE_HERE gives it); 15 to 32" & " inHg, or 508 to 1,084 hPa", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "FINISH_TEMP", "Temperature at which sap or syrup of a strength boils, at" & _
            " the air pressure of the day. Returns boiling temperature, " & ChrW(176) & "F or " & ChrW(176) & _
            "C.", "sugar in the liquid, percent by mass; 0 to 85 " & ChrW(176) & "Brix", _
            "air pressure at the pan, not reduced to sea level" & _
            " (AIR_PRESSURE or AIR_PRESSURE_HERE gives it); 15 to 32" & " inHg, or 508 to 1,084 hPa", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "FINISH_READING", "What this thermometer shows when the strength is reached," & _
            " from what it shows in boiling water. Returns what the" & " thermometer shows, " & ChrW(176) & _
            "F or " & ChrW(176) & "C.", "sugar in the liquid, percent by mass; 0 to 85 " & ChrW(176) & "Brix", _
            "what the thermometer shows in water boiling hard, today; 175" & " to 222 " & ChrW(176) & _
            "F, or 79.5 to 105.5 " & ChrW(176) & "C", "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "FINISH_MINUTES", "Minutes until the strength is reached at a rate of boiling;" & _
            " 0 when it is reached or passed. Returns minutes.", _
            "volume of the liquid, cold; 0 to 10,000,000 any one unit of" & " volume", _
            "sugar in the liquid, percent by mass; 0 to 85 " & ChrW(176) & "Brix", _
            "sugar in the syrup wanted, percent by mass (66.9 is usual);" & " 0.1 to 85 " & ChrW(176) & "Brix", _
            "volume of water that boils off in an hour; 0.001 to" & " 1,000,000 the same unit an hour"
    Describe "BRIX_BY_BOIL", "Strength of sap or syrup from what one thermometer shows in" & _
            " it and in water, both boiling. Returns strength of what is" & " boiling, " & ChrW(176) & "Brix.", _
            "what the thermometer shows in the boiling pan; 150 to 300 " & ChrW(176) & "F, or 65 to 149 " & _
            ChrW(176) & "C", "what the thermometer shows in water boiling hard, today; 175" & " to 222 " & _
            ChrW(176) & "F, or 79.5 to 105.5 " & ChrW(176) & "C", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "BRIX_BY_BOIL_SPREAD", "How far off BRIX_BY_BOIL may be, the larger side: by the" & _
            " thermometer and by its water reading. Returns " & ChrW(176) & "Brix either way.", _
            "what the thermometer shows in the boiling pan; 150 to 300 " & ChrW(176) & "F, or 65 to 149 " & _
            ChrW(176) & "C", "what the thermometer shows in water boiling hard, today; 175" & " to 222 " & _
            ChrW(176) & "F, or 79.5 to 105.5 " & ChrW(176) & "C", _
            "how far off a reading of this thermometer may be; 0 to 10 F" & ChrW(176) & ", or 0 to 5.5 C" & _
            ChrW(176), "where the water reading is from; one of today, another day," & " barometer, elevation", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "BRIX_BY_HYDROMETER", "True strength from a hydrometer marked at 60 " & ChrW(176) & _
            "F, floating in syrup at a temperature. Returns true" & " strength, " & ChrW(176) & "Brix.", _
            "what the hydrometer shows, " & ChrW(176) & "Brix scale marked at 60 " & ChrW(176) & _
            "F; 0 to 85 " & ChrW(176) & "Brix", "temperature of the liquid; 32 to 221 " & ChrW(176) & _
            "F, or 0 to 105 " & ChrW(176) & "C", "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "BRIX_BY_SAP_HYDROMETER", "True strength from a hydrometer marked at another" & _
            " temperature, as sap hydrometers are. Returns true strength," & " " & ChrW(176) & "Brix.", _
            "what the hydrometer shows, " & ChrW(176) & "Brix; 0 to 85 " & ChrW(176) & "Brix", _
            "temperature of the liquid; 32 to 221 " & ChrW(176) & "F, or 0 to 105 " & ChrW(176) & "C", _
            "temperature its scale was marked for (38 " & ChrW(176) & "F on most sap hydrometers); 32 to 70 " & _
            ChrW(176) & "F, or 0 to 21 " & ChrW(176) & "C", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "BRIX_BY_WEIGHT", "Strength from a kitchen scale: a container weighed empty," & _
            " full of water, and full of sap or syrup. Returns true" & " strength, " & ChrW(176) & "Brix.", _
            "weight of the empty container; 0 to 1,000,000 any one unit" & " of weight", _
            "its weight full of water to a mark, in the same unit; 0 to" & " 1,000,000 any one unit of weight", _
            "its weight full of the liquid to the same mark; 0 to" & " 1,000,000 any one unit of weight", _
            "temperature of the liquid and of the water; 32 to 212 " & ChrW(176) & "F, or 0 to 100 " & _
            ChrW(176) & "C", "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "BRIX_BY_REFRACTOMETER", "True strength from a refractometer that does not correct for" & _
            " temperature itself; not under 0. Returns true strength, " & ChrW(176) & "Brix.", _
            "what the refractometer shows, no temperature compensation," & " marked at 20 " & ChrW(176) & _
            "C; 0 to 75 " & ChrW(176) & "Brix", "temperature of the instrument and the drop; 50 to 86 " & _
            ChrW(176) & "F, or 10 to 30 " & ChrW(176) & "C", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "BRIX_BY_GRAVITY", "Strength from true specific gravity 20/20 " & ChrW(176) & _
            "C, that is density over that of water at 20 " & ChrW(176) & "C. Returns true strength, " & _
            ChrW(176) & "Brix.", "true specific gravity 20/20 " & ChrW(176) & "C; 1 to 1.45 SG 20/20 " & _
            ChrW(176) & "C"
End Sub

Private Sub help_on_syrup()
    Describe "SYRUP_FLOATS", "What a hydrometer marked in " & ChrW(176) & "Brix at 60 " & ChrW(176) & _
            "F shows in syrup of a strength, that hot. Returns what the" & " hydrometer shows, " & ChrW(176) & _
            "Brix.", "sugar in the liquid, percent by mass; 0 to 85 " & ChrW(176) & "Brix", _
            "temperature of the liquid; 32 to 221 " & ChrW(176) & "F, or 0 to 105 " & ChrW(176) & "C", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "SYRUP_GRAVITY", "True specific gravity 20/20 " & ChrW(176) & _
            "C: density over that of water, both at 20 " & ChrW(176) & _
            "C. Returns true specific gravity, SG 20/20 " & ChrW(176) & "C.", _
            "sugar in the liquid, percent by mass; 0 to 85 " & ChrW(176) & "Brix"
    Describe "SYRUP_BAUME", "Degrees Baum" & ChrW(233) & " of a strength, modulus 145, on the 20/20 " & _
            ChrW(176) & "C gravity. Returns degrees Baum" & ChrW(233) & ", " & ChrW(176) & "Baum" & ChrW(233) & _
            ".", "sugar in the liquid, percent by mass; 0 to 85 " & ChrW(176) & "Brix"
    Describe "SYRUP_DENSITY", "Density at a temperature. True mass; weighed in air a gallon" & _
            " reads 0.01 lb less. Returns density, true mass, lb/gal or" & " kg/L.", _
            "sugar in the liquid, percent by mass; 0 to 85 " & ChrW(176) & "Brix", _
            "temperature of the liquid; 32 to 221 " & ChrW(176) & "F, or 0 to 105 " & ChrW(176) & "C", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "SYRUP_COLD", "Volume of hot sap or syrup once it has cooled to 68 " & ChrW(176) & "F (20 " & _
            ChrW(176) & "C). Returns cold volume, gal or L.", _
            "volume of syrup; 0 to 1,000,000 gal, or 0 to 3,800,000 L", _
            "sugar in the liquid, percent by mass; 0 to 85 " & ChrW(176) & "Brix", _
            "temperature of the liquid; 32 to 221 " & ChrW(176) & "F, or 0 to 105 " & ChrW(176) & "C", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "SYRUP_ADJUST", "Water to stir in (positive) or to boil off (negative) to" & _
            " bring syrup to a strength. Cold volumes. Returns water," & _
            " positive to stir in, negative to boil off, fl oz or mL.", _
            "volume of syrup; 0 to 1,000,000 gal, or 0 to 3,800,000 L", _
            "sugar in the liquid, percent by mass; 0 to 85 " & ChrW(176) & "Brix", _
            "sugar in the syrup wanted, percent by mass (66.9 is usual);" & " 0.1 to 85 " & ChrW(176) & "Brix", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "SYRUP_BLEND", "Strength of two lots poured together, cold volumes. Returns" & _
            " strength of the mix, " & ChrW(176) & "Brix.", _
            "volume of the liquid, cold; 0 to 10,000,000 any one unit of" & " volume", _
            "sugar in the liquid, percent by mass; 0 to 85 " & ChrW(176) & "Brix", _
            "volume of the liquid, cold; 0 to 10,000,000 any one unit of" & " volume", _
            "sugar in the liquid, percent by mass; 0 to 85 " & ChrW(176) & "Brix"
    Describe "SYRUP_BLEND_SHARE", "Share of thick syrup, by cold volume, that brings thin syrup" & _
            " to a strength. Returns share of the thick syrup by volume," & " 0.5 for half.", _
            "sugar in the thin syrup, percent by mass; 0 to 85 " & ChrW(176) & "Brix", _
            "sugar in the thick syrup, percent by mass; 0 to 85 " & ChrW(176) & "Brix", _
            "sugar in the syrup wanted, percent by mass (66.9 is usual);" & " 0.1 to 85 " & ChrW(176) & "Brix"
    Describe "SYRUP_STATE", "Whether syrup is thin (it spoils), in range, or thick (it" & _
            " crystallises): against 66.0 to 68.9 " & ChrW(176) & "Brix. Returns thin, in range or thick.", _
            "sugar in the liquid, percent by mass; 0 to 85 " & ChrW(176) & "Brix"
    Describe "SYRUP_GRADE", "Colour class from the light that passes: Golden, Amber, Dark" & _
            " or Very Dark. Returns grade by colour, Golden, Amber, Dark" & " or Very Dark.", _
            "light that passes, percent, 560 nm, 10 mm, glycerol 100; 0" & " to 100 percent"
End Sub

Private Sub help_on_jars()
    Describe "JAR_COUNT", "Whole jars that a volume fills. Both hot or both cold:" & _
            " SYRUP_COLD turns one into the other. Returns jars filled," & " count.", _
            "volume of syrup; 0 to 1,000,000 gal, or 0 to 3,800,000 L", _
            "volume of one jar, filled; 0.1 to 1,000 fl oz, or 3 to" & " 30,000 mL", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "JAR_REST", "What is left over after the whole jars: for the taster." & _
            " Returns what is left over, fl oz or mL.", _
            "volume of syrup; 0 to 1,000,000 gal, or 0 to 3,800,000 L", _
            "volume of one jar, filled; 0.1 to 1,000 fl oz, or 3 to" & " 30,000 mL", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
    Describe "JAR_WEIGHT", "Weight of what a full jar holds, cold: for a label, or to" & _
            " see on a scale that it is full. Returns what a scale shows," & " less the jar, oz or g.", _
            "volume of one jar, filled; 0.1 to 1,000 fl oz, or 3 to" & " 30,000 mL", _
            "sugar in the liquid, percent by mass; 0 to 85 " & ChrW(176) & "Brix", _
            "unit system, ""US"" or ""metric""; left out: ""US"""
End Sub

Private Sub Describe(ByVal called As String, ByVal words As String, ParamArray arguments() As Variant)
    Dim helps As Variant
    helps = arguments
    Application.MacroOptions _
        Macro:="'" & Replace(ThisWorkbook.Name, "'", "''") & "'!" & called, _
        Description:=words, Category:=FUNCTION_CATEGORY, ArgumentDescriptions:=helps
End Sub

' One call: alone, or for each cell of its ranges. Ranges are laid beside each other as in an array
' formula: one row or column is repeated, and where another range has no cell the answer is #N/A.
Private Function Answer(ByVal called As String, ByVal given As Variant) As Variant
    Dim row As Long, column As Long, rows As Long, columns As Long, i As Long
    Dim sent() As Variant, cell() As Variant, answers() As Variant
    On Error GoTo failed
    ReDim sent(LBound(given) To UBound(given))
    ReDim cell(LBound(given) To UBound(given))
    For i = LBound(given) To UBound(given)
        If IsMissing(given(i)) Then
            sent(i) = Null
        Else
            sent(i) = Block(given(i))
        End If
        If IsArray(sent(i)) Then
            If UBound(sent(i), 1) > rows Then rows = UBound(sent(i), 1)
            If UBound(sent(i), 2) > columns Then columns = UBound(sent(i), 2)
        End If
    Next i
    If rows = 0 Then
        Answer = One(called, sent)
        Exit Function
    End If
    ReDim answers(1 To rows, 1 To columns)
    For row = 1 To rows
        For column = 1 To columns
            For i = LBound(sent) To UBound(sent)
                If IsArray(sent(i)) Then
                    cell(i) = Element(sent(i), row, column)
                Else
                    cell(i) = sent(i)
                End If
            Next i
            answers(row, column) = One(called, cell)
        Next column
    Next row
    Answer = answers
    Exit Function
failed:
    Answer = CVErr(2015)
End Function

' An argument: one value, or rows and columns of them, counted from 1.
Private Function Block(ByVal given As Variant) As Variant
    Dim found As Variant, flat As Long, last As Long, i As Long
    Dim made() As Variant
    If IsObject(given) Then
        found = given.Value2
    Else
        found = given
    End If
    If IsArray(found) Then
        last = -1 ' a single row of constants comes without a second dimension
        On Error Resume Next
        last = UBound(found, 2)
        On Error GoTo 0
        If last < 0 Then
            flat = LBound(found)
            ReDim made(1 To 1, 1 To UBound(found) - flat + 1)
            For i = flat To UBound(found)
                made(1, i - flat + 1) = found(i)
            Next i
            found = made
        End If
    End If
    Block = found
End Function

Private Function Element(ByRef values As Variant, ByVal row As Long, ByVal column As Long) As Variant
    If UBound(values, 1) = 1 Then row = 1
    If UBound(values, 2) = 1 Then column = 1
    If row > UBound(values, 1) Or column > UBound(values, 2) Then
        Element = CVErr(2042)
    Else
        Element = values(row, column)
    End If
End Function

Private Function SameWord(ByVal given As Variant, ByVal word As String) As Boolean
    If VarType(given) = vbString Then SameWord = (LCase(given) = LCase(word))
End Function

Private Function OneIf(ByVal holds As Boolean) As Double
    If holds Then OneIf = 1#
End Function

' The answer for one cell: an error that comes in goes out, a blank cell is 0, a date is its number.
Private Function One(ByVal called As String, ByRef given As Variant) As Variant
    Dim i As Long
    On Error GoTo failed
    For i = LBound(given) To UBound(given)
        If IsError(given(i)) Then
            One = given(i)
            Exit Function
        End If
    Next i
    For i = LBound(given) To UBound(given)
        Select Case VarType(given(i))
            Case vbNull, vbString, vbDouble
            Case vbBoolean
                given(i) = OneIf(given(i))
            Case Else
                given(i) = CDbl(given(i))
        End Select
    Next i
    Select Case called
        Case "AIR_PRESSURE": One = One_AIR_PRESSURE(given(0), given(1))
        Case "AIR_PRESSURE_HERE": One = One_AIR_PRESSURE_HERE(given(0), given(1), given(2))
        Case "AIR_PRESSURE_BY_SEA_LEVEL": One = One_AIR_PRESSURE_BY_SEA_LEVEL(given(0), given(1), given(2), given(3))
        Case "WATER_BOILS": One = One_WATER_BOILS(given(0), given(1))
        Case "TAP_COUNT": One = One_TAP_COUNT(given(0), given(1))
        Case "SAP_RUNS": One = One_SAP_RUNS(given(0), given(1), given(2), given(3))
        Case "SEASON_WARMTH": One = One_SEASON_WARMTH(given(0), given(1), given(2))
        Case "SEASON_GOES_ON": One = One_SEASON_GOES_ON(given(0), given(1), given(2))
        Case "SAP_SUGAR": One = One_SAP_SUGAR(given(0), given(1), given(2))
        Case "SAP_PER_SYRUP": One = One_SAP_PER_SYRUP(given(0), given(1))
        Case "SYRUP_FROM_SAP": One = One_SYRUP_FROM_SAP(given(0), given(1), given(2))
        Case "SAP_AFTER_ICE": One = One_SAP_AFTER_ICE(given(0), given(1), given(2))
        Case "SAP_ICE_LOSS": One = One_SAP_ICE_LOSS(given(0), given(1), given(2))
        Case "SAP_FREEZES": One = One_SAP_FREEZES(given(0), given(1))
        Case "SAP_KEEPS": One = One_SAP_KEEPS(given(0), given(1), given(2))
        Case "BOIL_BRIX": One = One_BOIL_BRIX(given(0), given(1), given(2))
        Case "BOIL_WATER": One = One_BOIL_WATER(given(0), given(1), given(2))
        Case "BOIL_HOURS": One = One_BOIL_HOURS(given(0), given(1), given(2), given(3))
        Case "BOIL_HEAT": One = One_BOIL_HEAT(given(0), given(1), given(2), given(3), given(4))
        Case "BOIL_FUEL": One = One_BOIL_FUEL(given(0), given(1), given(2), given(3))
        Case "FUEL_EFFICIENCY": One = One_FUEL_EFFICIENCY(given(0))
        Case "PAN_RATE": One = One_PAN_RATE(given(0), given(1))
        Case "BOIL_RATE": One = One_BOIL_RATE(given(0), given(1), given(2))
        Case "PAN_DEPTH": One = One_PAN_DEPTH(given(0), given(1), given(2))
        Case "FINISH_RISE": One = One_FINISH_RISE(given(0), given(1), given(2))
        Case "FINISH_TEMP": One = One_FINISH_TEMP(given(0), given(1), given(2))
        Case "FINISH_READING": One = One_FINISH_READING(given(0), given(1), given(2))
        Case "FINISH_MINUTES": One = One_FINISH_MINUTES(given(0), given(1), given(2), given(3))
        Case "BRIX_BY_BOIL": One = One_BRIX_BY_BOIL(given(0), given(1), given(2))
        Case "BRIX_BY_BOIL_SPREAD": One = One_BRIX_BY_BOIL_SPREAD(given(0), given(1), given(2), given(3), given(4))
        Case "BRIX_BY_HYDROMETER": One = One_BRIX_BY_HYDROMETER(given(0), given(1), given(2))
        Case "BRIX_BY_SAP_HYDROMETER": One = One_BRIX_BY_SAP_HYDROMETER(given(0), given(1), given(2), given(3))
        Case "BRIX_BY_WEIGHT": One = One_BRIX_BY_WEIGHT(given(0), given(1), given(2), given(3), given(4))
        Case "BRIX_BY_REFRACTOMETER": One = One_BRIX_BY_REFRACTOMETER(given(0), given(1), given(2))
        Case "BRIX_BY_GRAVITY": One = One_BRIX_BY_GRAVITY(given(0))
        Case "SYRUP_FLOATS": One = One_SYRUP_FLOATS(given(0), given(1), given(2))
        Case "SYRUP_GRAVITY": One = One_SYRUP_GRAVITY(given(0))
        Case "SYRUP_BAUME": One = One_SYRUP_BAUME(given(0))
        Case "SYRUP_DENSITY": One = One_SYRUP_DENSITY(given(0), given(1), given(2))
        Case "SYRUP_COLD": One = One_SYRUP_COLD(given(0), given(1), given(2), given(3))
        Case "SYRUP_ADJUST": One = One_SYRUP_ADJUST(given(0), given(1), given(2), given(3))
        Case "SYRUP_BLEND": One = One_SYRUP_BLEND(given(0), given(1), given(2), given(3))
        Case "SYRUP_BLEND_SHARE": One = One_SYRUP_BLEND_SHARE(given(0), given(1), given(2))
        Case "SYRUP_STATE": One = One_SYRUP_STATE(given(0))
        Case "SYRUP_GRADE": One = One_SYRUP_GRADE(given(0))
        Case "JAR_COUNT": One = One_JAR_COUNT(given(0), given(1), given(2))
        Case "JAR_REST": One = One_JAR_REST(given(0), given(1), given(2))
        Case "JAR_WEIGHT": One = One_JAR_WEIGHT(given(0), given(1), given(2))
    End Select
    Exit Function
failed: ' no such logarithm or root, or a number too large
    One = CVErr(2036)
End Function

Private Function One_AIR_PRESSURE(ByVal elevation, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double
    If IsNull(elevation) Then
        One_AIR_PRESSURE = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(elevation) = vbString Then
        One_AIR_PRESSURE = CVErr(2015)
        Exit Function
    End If
    v2 = elevation * 1#
    If v2 < IIf(v1, -425#, -1400#) Or v2 > IIf(v1, 4900#, 16000#) Then
        One_AIR_PRESSURE = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v3 = v2
    Else
        v3 = v2 * 0.3048
    End If
    v4 = 101325# * (1# - 0.0065 * (6356766# * v3 / (6356766# + v3)) / 288.15) ^ 5.25587611327852
    If v1 Then
        v5 = v4 / 100#
    Else
        v5 = v4 / 3386.38864034
    End If
    One_AIR_PRESSURE = v5
End Function

Private Function One_AIR_PRESSURE_HERE(ByVal barometer, ByVal elevation, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double
    If IsNull(barometer) Or IsNull(elevation) Then
        One_AIR_PRESSURE_HERE = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(barometer) = vbString Then
        One_AIR_PRESSURE_HERE = CVErr(2015)
        Exit Function
    End If
    If VarType(elevation) = vbString Then
        One_AIR_PRESSURE_HERE = CVErr(2015)
        Exit Function
    End If
    v2 = barometer * 1#
    v3 = elevation * 1#
    If v2 < IIf(v1, 880#, 26#) Or v2 > IIf(v1, 1084#, 32#) Or v3 < IIf(v1, -425#, -1400#) Then
        One_AIR_PRESSURE_HERE = CVErr(2036)
        Exit Function
    End If
    If v3 > IIf(v1, 4900#, 16000#) Then
        One_AIR_PRESSURE_HERE = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v4 = v3
    Else
        v4 = v3 * 0.3048
    End If
    If v1 Then
        v5 = v2 * 100#
    Else
        v5 = v2 * 3386.38864034
    End If
    v6 = ((v5 / 101325#) ^ 0.190263236508484 - 0.0065 * (6356766# * v4 / (6356766# + v4)) / 288.15) ^ 5.25587611327852
    v7 = 101325# * v6
    If v1 Then
        v8 = v7 / 100#
    Else
        v8 = v7 / 3386.38864034
    End If
    One_AIR_PRESSURE_HERE = v8
End Function

Private Function One_AIR_PRESSURE_BY_SEA_LEVEL(ByVal sea_level, ByVal elevation, ByVal temperature, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double, v10 As Double
    If IsNull(sea_level) Or IsNull(elevation) Or IsNull(temperature) Then
        One_AIR_PRESSURE_BY_SEA_LEVEL = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(sea_level) = vbString Then
        One_AIR_PRESSURE_BY_SEA_LEVEL = CVErr(2015)
        Exit Function
    End If
    If VarType(elevation) = vbString Or VarType(temperature) = vbString Then
        One_AIR_PRESSURE_BY_SEA_LEVEL = CVErr(2015)
        Exit Function
    End If
    v2 = sea_level * 1#
    v3 = elevation * 1#
    v4 = temperature * 1#
    If v2 < IIf(v1, 880#, 26#) Or v2 > IIf(v1, 1084#, 32#) Or v3 < IIf(v1, -425#, -1400#) Then
        One_AIR_PRESSURE_BY_SEA_LEVEL = CVErr(2036)
        Exit Function
    End If
    If v3 > IIf(v1, 4900#, 16000#) Or v4 < IIf(v1, -51#, -60#) Or v4 > IIf(v1, 54.5, 130#) Then
        One_AIR_PRESSURE_BY_SEA_LEVEL = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v5 = v4
    Else
        v5 = (v4 - 32#) / 1.8
    End If
    v6 = v5 + 273.15
    If v1 Then
        v7 = v3
    Else
        v7 = v3 * 0.3048
    End If
    If v1 Then
        v8 = v2 * 100#
    Else
        v8 = v2 * 3386.38864034
    End If
    v9 = v8 * (v6 / (v6 + 0.0065 * (6356766# * v7 / (6356766# + v7)))) ^ 5.25587611327852
    If v1 Then
        v10 = v9 / 100#
    Else
        v10 = v9 / 3386.38864034
    End If
    One_AIR_PRESSURE_BY_SEA_LEVEL = v10
End Function

Private Function One_WATER_BOILS(ByVal pressure, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double, v10 As Double, v11 As Double
    If IsNull(pressure) Then
        One_WATER_BOILS = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(pressure) = vbString Then
        One_WATER_BOILS = CVErr(2015)
        Exit Function
    End If
    v2 = pressure * 1#
    If v2 < IIf(v1, 508#, 15#) Or v2 > IIf(v1, 1084#, 32#) Then
        One_WATER_BOILS = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v3 = v2 * 100#
    Else
        v3 = v2 * 3386.38864034
    End If
    v4 = Sqr(v3 * 0.000001)
    v5 = Sqr(v4)
    v6 = (-724213.16703206) * v4 + (-3232555.0322333) * v5 + 405113.40542057
    v7 = 1167.0521452767 * v4 + 12020.82470247 * v5 + (-4823.2657361591)
    v8 = (-2#) * v6 / (v7 + Sqr(v7 * v7 - 4# * (v4 + (-17.073846940092) * v5 + 14.91510861353) * v6))
    v9 = 650.17534844798 + v8
    v10 = (v9 - Sqr(v9 * v9 - 4# * ((-0.23855557567849) + 650.17534844798 * v8))) / 2# - 273.15
    If v1 Then
        v11 = v10
    Else
        v11 = v10 * 1.8 + 32#
    End If
    One_WATER_BOILS = v11
End Function

Private Function One_TAP_COUNT(ByVal trunk_diameter, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double
    If IsNull(trunk_diameter) Then
        One_TAP_COUNT = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(trunk_diameter) = vbString Then
        One_TAP_COUNT = CVErr(2015)
        Exit Function
    End If
    v2 = trunk_diameter * 1#
    If v2 < 0# Or v2 > IIf(v1, 305#, 120#) Then
        One_TAP_COUNT = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v3 = v2 * 0.01
    Else
        v3 = v2 * 0.0254
    End If
    If v3 < 0.304799999 Then
        v4 = 0#
    Else
        v4 = IIf(v3 > 0.457200001, 2#, 1#)
    End If
    One_TAP_COUNT = v4
End Function

Private Function One_SAP_RUNS(ByVal night_low, ByVal recent_low, ByVal day_high, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double, v10 As Double
    If IsNull(night_low) Or IsNull(recent_low) Or IsNull(day_high) Then
        One_SAP_RUNS = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(night_low) = vbString Then
        One_SAP_RUNS = CVErr(2015)
        Exit Function
    End If
    If VarType(recent_low) = vbString Or VarType(day_high) = vbString Then
        One_SAP_RUNS = CVErr(2015)
        Exit Function
    End If
    v2 = night_low * 1#
    v3 = IIf(v1, -51#, -60#)
    v4 = IIf(v1, 54.5, 130#)
    v5 = recent_low * 1#
    v6 = day_high * 1#
    If v2 < v3 Or v2 > v4 Or v5 < v3 Or v5 > v4 Or v6 < v3 Or v6 > v4 Then
        One_SAP_RUNS = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v7 = v5
    Else
        v7 = (v5 - 32#) / 1.8
    End If
    If v1 Then
        v8 = v2
    Else
        v8 = (v2 - 32#) / 1.8
    End If
    If v1 Then
        v9 = v6
    Else
        v9 = (v6 - 32#) / 1.8
    End If
    If Not (v7 <= v8) Then
        One_SAP_RUNS = CVErr(2036)
        Exit Function
    End If
    If Not (v8 <= v9) Then
        One_SAP_RUNS = CVErr(2036)
        Exit Function
    End If
    If v7 < 0# Then
        If v9 > 0# Then
            If v8 <= (-2#) Then
                If v9 >= 3.3 Then
                    v10 = IIf(v9 <= 13#, 2#, 1#)
                Else
                    v10 = 1#
                End If
            Else
                v10 = 1#
            End If
        Else
            v10 = 0#
        End If
    Else
        v10 = 0#
    End If
    One_SAP_RUNS = v10
End Function

Private Function One_SEASON_WARMTH(ByVal low, ByVal high, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double, v10 As Double
    If IsNull(low) Or IsNull(high) Then
        One_SEASON_WARMTH = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And _
            Not SameWord(units, "metric") Or VarType(low) = vbString Or VarType(high) = vbString Then
        One_SEASON_WARMTH = CVErr(2015)
        Exit Function
    End If
    v2 = low * 1#
    v3 = IIf(v1, -51#, -60#)
    v4 = IIf(v1, 54.5, 130#)
    v5 = high * 1#
    If v2 < v3 Or v2 > v4 Or v5 < v3 Or v5 > v4 Then
        One_SEASON_WARMTH = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v6 = v2
    Else
        v6 = (v2 - 32#) / 1.8
    End If
    If v1 Then
        v7 = v5
    Else
        v7 = (v5 - 32#) / 1.8
    End If
    v8 = (v6 + v7) / 2#
    If Not (v6 <= v7) Then
        One_SEASON_WARMTH = CVErr(2036)
        Exit Function
    End If
    If v8 > 5# Then
        v9 = v8 - 5#
    Else
        v9 = 0#
    End If
    If v1 Then
        v10 = v9
    Else
        v10 = v9 * 1.8
    End If
    One_SEASON_WARMTH = v10
End Function

Private Function One_SEASON_GOES_ON(ByVal freeze_thaws, ByVal warmth, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double
    If IsNull(freeze_thaws) Or IsNull(warmth) Then
        One_SEASON_GOES_ON = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(freeze_thaws) = vbString Then
        One_SEASON_GOES_ON = CVErr(2015)
        Exit Function
    End If
    If VarType(warmth) = vbString Then
        One_SEASON_GOES_ON = CVErr(2015)
        Exit Function
    End If
    v2 = freeze_thaws * 1#
    v3 = warmth * 1#
    If v2 < 0# Or v2 > 120# Or v3 < 0# Or v3 > IIf(v1, 2000#, 3600#) Then
        One_SEASON_GOES_ON = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v4 = v3
    Else
        v4 = v3 / 1.8
    End If
    One_SEASON_GOES_ON = 1# / (1# + Exp(0# - ((-5.09) + (0.722 - 0.014 * v2) * v2 - 0.07 * v4)))
End Function

Private Function One_SAP_SUGAR(ByVal volume, ByVal brix, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double
    If IsNull(volume) Or IsNull(brix) Then
        One_SAP_SUGAR = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(volume) = vbString Then
        One_SAP_SUGAR = CVErr(2015)
        Exit Function
    End If
    If VarType(brix) = vbString Then
        One_SAP_SUGAR = CVErr(2015)
        Exit Function
    End If
    v2 = volume * 1#
    v3 = brix * 1#
    If v2 < 0# Or v2 > IIf(v1, 3800000#, 1000000#) Or v3 < 0# Or v3 > 85# Then
        One_SAP_SUGAR = CVErr(2036)
        Exit Function
    End If
    v4 = v3 * 0.01
    If v1 Then
        v5 = v2 * 0.001
    Else
        v5 = v2 * 0.003785411784
    End If
    v6 = (((((-17.289) * v4 + 13.4853) * v4 + (-3.9643)) * v4 + 40.9299) * v4 + 135.3705) * v4 + 385.1761
    v7 = v5 * ((v6 * v4 + 998.203122737355) * v3 * 0.01)
    If v1 Then
        v8 = v7
    Else
        v8 = v7 / 0.45359237
    End If
    One_SAP_SUGAR = v8
End Function

Private Function One_SAP_PER_SYRUP(ByVal brix, ByVal syrup_brix)
    Dim v1 As Double, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    If IsNull(brix) Or IsNull(syrup_brix) Then
        One_SAP_PER_SYRUP = CVErr(2042)
        Exit Function
    End If
    If VarType(brix) = vbString Or VarType(syrup_brix) = vbString Then
        One_SAP_PER_SYRUP = CVErr(2015)
        Exit Function
    End If
    v1 = brix * 1#
    v2 = syrup_brix * 1#
    If v1 < 0.1 Or v1 > 85# Or v2 < 0.1 Or v2 > 85# Then
        One_SAP_PER_SYRUP = CVErr(2036)
        Exit Function
    End If
    v3 = v2 * 0.01
    v4 = v1 * 0.01
    v5 = (((((-17.289) * v3 + 13.4853) * v3 + (-3.9643)) * v3 + 40.9299) * v3 + 135.3705) * v3 + 385.1761
    v6 = (((((-17.289) * v4 + 13.4853) * v4 + (-3.9643)) * v4 + 40.9299) * v4 + 135.3705) * v4 + 385.1761
    One_SAP_PER_SYRUP = (v5 * v3 + 998.203122737355) * v2 * 0.01 / ((v6 * v4 + 998.203122737355) * v1 * 0.01)
End Function

Private Function One_SYRUP_FROM_SAP(ByVal volume, ByVal brix, ByVal syrup_brix)
    Dim v1 As Double, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double
    If IsNull(volume) Or IsNull(brix) Or IsNull(syrup_brix) Then
        One_SYRUP_FROM_SAP = CVErr(2042)
        Exit Function
    End If
    If VarType(volume) = vbString Or VarType(brix) = vbString Or VarType(syrup_brix) = vbString Then
        One_SYRUP_FROM_SAP = CVErr(2015)
        Exit Function
    End If
    v1 = volume * 1#
    v2 = brix * 1#
    v3 = syrup_brix * 1#
    If v1 < 0# Or v1 > 10000000# Or v2 < 0# Or v2 > 85# Or v3 < 0.1 Or v3 > 85# Then
        One_SYRUP_FROM_SAP = CVErr(2036)
        Exit Function
    End If
    v4 = v2 * 0.01
    v5 = v3 * 0.01
    v6 = (((((-17.289) * v4 + 13.4853) * v4 + (-3.9643)) * v4 + 40.9299) * v4 + 135.3705) * v4 + 385.1761
    v7 = (((((-17.289) * v5 + 13.4853) * v5 + (-3.9643)) * v5 + 40.9299) * v5 + 135.3705) * v5 + 385.1761
    v8 = v1 * ((v6 * v4 + 998.203122737355) * v2 * 0.01) / ((v7 * v5 + 998.203122737355) * v3 * 0.01)
    One_SYRUP_FROM_SAP = v8
End Function

Private Function One_SAP_AFTER_ICE(ByVal brix, ByVal ice_share, ByVal ice_brix)
    Dim v1 As Double, v2 As Double, v3 As Double, v4 As Double
    If IsNull(brix) Or IsNull(ice_share) Or IsNull(ice_brix) Then
        One_SAP_AFTER_ICE = CVErr(2042)
        Exit Function
    End If
    If VarType(brix) = vbString Or VarType(ice_share) = vbString Or VarType(ice_brix) = vbString Then
        One_SAP_AFTER_ICE = CVErr(2015)
        Exit Function
    End If
    v1 = brix * 1#
    v2 = ice_share * 1#
    v3 = ice_brix * 1#
    If v1 < 0# Or v1 > 85# Or v2 < 0# Or v2 > 0.95 Or v3 < 0# Or v3 > 85# Then
        One_SAP_AFTER_ICE = CVErr(2036)
        Exit Function
    End If
    v4 = (v1 - v2 * v3) / (1# - v2)
    If Not (v4 >= (-0.000000001)) Then
        One_SAP_AFTER_ICE = CVErr(2036)
        Exit Function
    End If
    If Not (v4 <= 85.000000001) Then
        One_SAP_AFTER_ICE = CVErr(2036)
        Exit Function
    End If
    One_SAP_AFTER_ICE = IIf(v4 > 0#, v4, 0#)
End Function

Private Function One_SAP_ICE_LOSS(ByVal brix, ByVal ice_share, ByVal ice_brix)
    Dim v1 As Double, v2 As Double, v3 As Double, v4 As Double
    If IsNull(brix) Or IsNull(ice_share) Or IsNull(ice_brix) Then
        One_SAP_ICE_LOSS = CVErr(2042)
        Exit Function
    End If
    If VarType(brix) = vbString Or VarType(ice_share) = vbString Or VarType(ice_brix) = vbString Then
        One_SAP_ICE_LOSS = CVErr(2015)
        Exit Function
    End If
    v1 = brix * 1#
    v2 = ice_share * 1#
    v3 = ice_brix * 1#
    If v1 < 0.1 Or v1 > 85# Or v2 < 0# Or v2 > 0.95 Or v3 < 0# Or v3 > 85# Then
        One_SAP_ICE_LOSS = CVErr(2036)
        Exit Function
    End If
    v4 = v2 * v3 / v1
    If Not (v4 <= 1.000000001) Then
        One_SAP_ICE_LOSS = CVErr(2036)
        Exit Function
    End If
    One_SAP_ICE_LOSS = v4
End Function

Private Function One_SAP_FREEZES(ByVal brix, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double
    If IsNull(brix) Then
        One_SAP_FREEZES = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(brix) = vbString Then
        One_SAP_FREEZES = CVErr(2015)
        Exit Function
    End If
    v2 = brix * 1#
    If v2 < 0# Or v2 > 42# Then
        One_SAP_FREEZES = CVErr(2036)
        Exit Function
    End If
    v3 = 1000# * v2 / ((100# - v2) * 342.2965)
    v4 = (-1.86) * (1# + (0.0962763 + 0.0107968 * v3) * v3) * v3
    If v1 Then
        v5 = v4
    Else
        v5 = v4 * 1.8 + 32#
    End If
    One_SAP_FREEZES = v5
End Function

Private Function One_SAP_KEEPS(ByVal brix, ByVal temperature, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double, v10 As Double, v11 As Double
    If IsNull(brix) Or IsNull(temperature) Then
        One_SAP_KEEPS = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(brix) = vbString Then
        One_SAP_KEEPS = CVErr(2015)
        Exit Function
    End If
    If VarType(temperature) = vbString Then
        One_SAP_KEEPS = CVErr(2015)
        Exit Function
    End If
    v2 = brix * 1#
    v3 = temperature * 1#
    If v2 < 0# Or v2 > 85# Or v3 < (-40#) Or v3 > IIf(v1, 38#, 100#) Then
        One_SAP_KEEPS = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v4 = v3
    Else
        v4 = (v3 - 32#) / 1.8
    End If
    v5 = 1000# * v2 / ((100# - v2) * 342.2965)
    v6 = (-1.86) * (1# + (0.0962763 + 0.0107968 * v5) * v5) * v5
    v7 = IIf(v6 > (-13.95), v6, -13.95)
    v8 = IIf(v4 > v7, v4, v7)
    v9 = (v8 - v4) / 5#
    v10 = IIf(v2 < 8#, 1.94591014905531, 2.07944154167984) + (3.34 - v8) * 0.693147180559945 / 5.55555555555556
    If v9 < 1# Then
        v11 = Exp(v10 + v9 * (4.49980967033027 - v10))
    Else
        v11 = 90#
    End If
    One_SAP_KEEPS = v11
End Function

Private Function One_BOIL_BRIX(ByVal volume, ByVal brix, ByVal volume_left)
    Dim v1 As Double, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double, v10 As Double, v11 As Double, v12 As Double
    Dim v13 As Double, v14 As Double, v15 As Double, v16 As Double, v17 As Double
    Dim v18 As Double, v19 As Double, v20 As Double, v21 As Double, v22 As Double
    Dim v23 As Double, v24 As Double, v25 As Double, v26 As Double, v27 As Double
    Dim v28 As Double, v29 As Double, v30 As Double, v31 As Double, v32 As Double
    Dim v33 As Double
    If IsNull(volume) Or IsNull(brix) Or IsNull(volume_left) Then
        One_BOIL_BRIX = CVErr(2042)
        Exit Function
    End If
    If VarType(volume) = vbString Or VarType(brix) = vbString Or VarType(volume_left) = vbString Then
        One_BOIL_BRIX = CVErr(2015)
        Exit Function
    End If
    v1 = volume * 1#
    v2 = brix * 1#
    v3 = volume_left * 1#
    If v1 < 0# Or v1 > 10000000# Or v2 < 0# Or v2 > 85# Or v3 < 0# Or v3 > 10000000# Then
        One_BOIL_BRIX = CVErr(2036)
        Exit Function
    End If
    v4 = v2 * 0.01
    If Not (v3 > 0#) Then
        One_BOIL_BRIX = CVErr(2036)
        Exit Function
    End If
    v5 = (((((-17.289) * v4 + 13.4853) * v4 + (-3.9643)) * v4 + 40.9299) * v4 + 135.3705) * v4 + 385.1761
    v6 = v1 * ((v5 * v4 + 998.203122737355) * v2 * 0.01) / v3
    If Not (v6 <= 1229.04699461455) Then
        One_BOIL_BRIX = CVErr(2036)
        Exit Function
    End If
    v7 = (Sqr(1# + 0.0025 * v6) - 1#) * 0.84
    v8 = (-17.289) * v7
    v9 = v8 + 13.4853
    v10 = v9 * v7 + (-3.9643)
    v11 = v10 * v7 + 40.9299
    v12 = v11 * v7 + 135.3705
    v13 = v12 * v7 + 385.1761
    v14 = v13 * v7 + 998.203122737355
    v15 = (v14 * v7 - v6) / (v14 + v7 * (((((v8 + v9) * v7 + v10) * v7 + v11) * v7 + v12) * v7 + v13))
    v16 = v7 - v15
    v17 = (-17.289) * v16
    v18 = v17 + 13.4853
    v19 = v18 * v16 + (-3.9643)
    v20 = v19 * v16 + 40.9299
    v21 = v20 * v16 + 135.3705
    v22 = v21 * v16 + 385.1761
    v23 = v22 * v16 + 998.203122737355
    v24 = (v23 * v16 - v6) / (v23 + v16 * (((((v17 + v18) * v16 + v19) * v16 + v20) * v16 + v21) * v16 + v22))
    v25 = v16 - v24
    v26 = (-17.289) * v25
    v27 = v26 + 13.4853
    v28 = v27 * v25 + (-3.9643)
    v29 = v28 * v25 + 40.9299
    v30 = v29 * v25 + 135.3705
    v31 = v30 * v25 + 385.1761
    v32 = v31 * v25 + 998.203122737355
    v33 = (v32 * v25 - v6) / (v32 + v25 * (((((v26 + v27) * v25 + v28) * v25 + v29) * v25 + v30) * v25 + v31))
    One_BOIL_BRIX = 100# * (v25 - v33)
End Function

Private Function One_BOIL_WATER(ByVal volume, ByVal brix, ByVal to_brix)
    Dim v1 As Double, v2 As Double, v3 As Double, v4 As Double, v5 As Double
    If IsNull(volume) Or IsNull(brix) Or IsNull(to_brix) Then
        One_BOIL_WATER = CVErr(2042)
        Exit Function
    End If
    If VarType(volume) = vbString Or VarType(brix) = vbString Or VarType(to_brix) = vbString Then
        One_BOIL_WATER = CVErr(2015)
        Exit Function
    End If
    v1 = volume * 1#
    v2 = brix * 1#
    v3 = to_brix * 1#
    If v1 < 0# Or v1 > 10000000# Or v2 < 0# Or v2 > 85# Or v3 < 0.1 Or v3 > 85# Then
        One_BOIL_WATER = CVErr(2036)
        Exit Function
    End If
    v4 = v2 * 0.01
    If Not (v2 <= v3) Then
        One_BOIL_WATER = CVErr(2036)
        Exit Function
    End If
    v5 = (((((-17.289) * v4 + 13.4853) * v4 + (-3.9643)) * v4 + 40.9299) * v4 + 135.3705) * v4 + 385.1761
    One_BOIL_WATER = v1 * (v5 * v4 + 998.203122737355) * (1# - v2 / v3) / 998.203122737355
End Function

Private Function One_BOIL_HOURS(ByVal volume, ByVal brix, ByVal to_brix, ByVal rate)
    Dim v1 As Double, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    If IsNull(volume) Or IsNull(brix) Or IsNull(to_brix) Or IsNull(rate) Then
        One_BOIL_HOURS = CVErr(2042)
        Exit Function
    End If
    If VarType(volume) = vbString Or VarType(brix) = vbString Or VarType(to_brix) = vbString Then
        One_BOIL_HOURS = CVErr(2015)
        Exit Function
    End If
    If VarType(rate) = vbString Then
        One_BOIL_HOURS = CVErr(2015)
        Exit Function
    End If
    v1 = volume * 1#
    v2 = brix * 1#
    v3 = to_brix * 1#
    v4 = rate * 1#
    If v1 < 0# Or v1 > 10000000# Or v2 < 0# Or v2 > 85# Or v3 < 0.1 Or v3 > 85# Or v4 < 0.001 Then
        One_BOIL_HOURS = CVErr(2036)
        Exit Function
    End If
    If v4 > 1000000# Then
        One_BOIL_HOURS = CVErr(2036)
        Exit Function
    End If
    v5 = v2 * 0.01
    If Not (v2 <= v3) Then
        One_BOIL_HOURS = CVErr(2036)
        Exit Function
    End If
    v6 = (((((-17.289) * v5 + 13.4853) * v5 + (-3.9643)) * v5 + 40.9299) * v5 + 135.3705) * v5 + 385.1761
    One_BOIL_HOURS = v1 * (v6 * v5 + 998.203122737355) * (1# - v2 / v3) / 998.203122737355 / v4
End Function

Private Function One_BOIL_HEAT(ByVal volume, ByVal brix, ByVal to_brix, ByVal sap_temperature, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double, v10 As Double, v11 As Double, v12 As Double
    If IsNull(volume) Or IsNull(brix) Or IsNull(to_brix) Or IsNull(sap_temperature) Then
        One_BOIL_HEAT = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(volume) = vbString Then
        One_BOIL_HEAT = CVErr(2015)
        Exit Function
    End If
    If VarType(brix) = vbString Or VarType(to_brix) = vbString Then
        One_BOIL_HEAT = CVErr(2015)
        Exit Function
    End If
    If VarType(sap_temperature) = vbString Then
        One_BOIL_HEAT = CVErr(2015)
        Exit Function
    End If
    v2 = volume * 1#
    v3 = brix * 1#
    v4 = to_brix * 1#
    v5 = sap_temperature * 1#
    If v2 < 0# Or v2 > IIf(v1, 3800000#, 1000000#) Or v3 < 0# Or v3 > 85# Or v4 < 0.1 Or v4 > 85# Then
        One_BOIL_HEAT = CVErr(2036)
        Exit Function
    End If
    If v5 < IIf(v1, -6.5, 20#) Or v5 > IIf(v1, 100#, 212#) Then
        One_BOIL_HEAT = CVErr(2036)
        Exit Function
    End If
    v6 = v3 * 0.01
    If v1 Then
        v7 = v5
    Else
        v7 = (v5 - 32#) / 1.8
    End If
    If Not (v3 <= v4) Then
        One_BOIL_HEAT = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v8 = v2 * 0.001
    Else
        v8 = v2 * 0.003785411784
    End If
    v9 = (((((-17.289) * v6 + 13.4853) * v6 + (-3.9643)) * v6 + 40.9299) * v6 + 135.3705) * v6 + 385.1761
    v10 = (4186.8 - (25.1 - 0.075 * ((v7 + 100#) / 2#)) * v3) * (100# - v7) + (1# - v3 / v4) * 2256473#
    v11 = v8 * (v9 * v6 + 998.203122737355) * v10
    If v1 Then
        v12 = v11 / 1000000#
    Else
        v12 = v11 / 1055.05585262
    End If
    One_BOIL_HEAT = v12
End Function

Private Function One_BOIL_FUEL(ByVal heat, ByVal fuel, ByVal efficiency, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Boolean, v5 As Boolean
    Dim v6 As Boolean, v7 As Boolean, v8 As Boolean, v9 As Boolean, v10 As Double
    Dim v11 As Double, v12 As Double
    If IsNull(heat) Or IsNull(fuel) Or IsNull(efficiency) Then
        One_BOIL_FUEL = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(heat) = vbString Then
        One_BOIL_FUEL = CVErr(2015)
        Exit Function
    End If
    If Not SameWord(fuel, "hardwood") And _
            Not SameWord(fuel, "softwood") And _
            Not SameWord(fuel, "propane") And _
            Not SameWord(fuel, "propane bottle") And _
            Not SameWord(fuel, "fuel oil") And _
            Not SameWord(fuel, "natural gas") And _
            Not SameWord(fuel, "natural gas by therm") And _
            Not SameWord(fuel, "electricity") Then
        One_BOIL_FUEL = CVErr(2015)
        Exit Function
    End If
    If VarType(efficiency) = vbString Then
        One_BOIL_FUEL = CVErr(2015)
        Exit Function
    End If
    v2 = heat * 1#
    v3 = efficiency * 1#
    If v2 < 0# Or v2 > IIf(v1, 1055000000#, 1000000000000#) Or v3 < 0.01 Or v3 > 1# Then
        One_BOIL_FUEL = CVErr(2036)
        Exit Function
    End If
    v4 = SameWord(fuel, "hardwood")
    v5 = SameWord(fuel, "softwood")
    v6 = SameWord(fuel, "propane")
    v7 = SameWord(fuel, "propane bottle")
    v8 = SameWord(fuel, "fuel oil")
    v9 = SameWord(fuel, "natural gas")
    v10 = IIf(SameWord(fuel, "natural gas by therm"), 105505600#, 3600000#)
    If v1 Then
        v11 = v2 * 1000000#
    Else
        v11 = v2 * 1055.05585262
    End If
    If v1 Then
        If v4 Then
            v12 = 6112795796.59732
        Else
            If v5 Then
                v12 = 3638568926.54602
            Else
                If v6 Then
                    v12 = 25781254.9693669
                Else
                    If v7 Then
                        v12 = 460637385.253892
                    Else
                        If v8 Then
                            v12 = 38602203.3865656
                        Else
                            v12 = IIf(v9, 38376714.1820662, v10)
                        End If
                    End If
                End If
            End If
        End If
    Else
        If v4 Then
            v12 = 22156172905.02
        Else
            If v5 Then
                v12 = 13188198157.75
            Else
                If v6 Then
                    v12 = 97592666.36735
                Else
                    If v7 Then
                        v12 = 460637385.253892
                    Else
                        If v8 Then
                            v12 = 146125235.58787
                        Else
                            v12 = IIf(v9, 1086707.5281986, v10)
                        End If
                    End If
                End If
            End If
        End If
    End If
    One_BOIL_FUEL = v11 / v12 / v3
End Function

Private Function One_FUEL_EFFICIENCY(ByVal fuel)
    Dim v1 As Double
    If IsNull(fuel) Then
        One_FUEL_EFFICIENCY = CVErr(2042)
        Exit Function
    End If
    If Not SameWord(fuel, "hardwood") And _
            Not SameWord(fuel, "softwood") And _
            Not SameWord(fuel, "propane") And _
            Not SameWord(fuel, "propane bottle") And _
            Not SameWord(fuel, "fuel oil") And _
            Not SameWord(fuel, "natural gas") And _
            Not SameWord(fuel, "natural gas by therm") And _
            Not SameWord(fuel, "electricity") Then
        One_FUEL_EFFICIENCY = CVErr(2015)
        Exit Function
    End If
    If SameWord(fuel, "hardwood") Then
        v1 = 0.25
    Else
        If SameWord(fuel, "softwood") Then
            v1 = 0.25
        Else
            If SameWord(fuel, "propane") Then
                v1 = 0.4
            Else
                If SameWord(fuel, "propane bottle") Then
                    v1 = 0.4
                Else
                    If SameWord(fuel, "fuel oil") Then
                        v1 = 0.5
                    Else
                        If SameWord(fuel, "natural gas") Then
                            v1 = 0.4
                        Else
                            v1 = IIf(SameWord(fuel, "natural gas by therm"), 0.4, 0.75)
                        End If
                    End If
                End If
            End If
        End If
    End If
    One_FUEL_EFFICIENCY = v1
End Function

Private Function One_PAN_RATE(ByVal area, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    If IsNull(area) Then
        One_PAN_RATE = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(area) = vbString Then
        One_PAN_RATE = CVErr(2015)
        Exit Function
    End If
    v2 = area * 1#
    If v2 < IIf(v1, 0.005, 0.05) Or v2 > IIf(v1, 93#, 1000#) Then
        One_PAN_RATE = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v3 = v2
    Else
        v3 = v2 * 0.09290304
    End If
    v4 = 0.0244475 * v3
    If v3 <= 0.44128944 Then
        v5 = v4
    Else
        If v3 < 0.55741824 Then
            v5 = v4 + 0.0782319999999998 * (v3 - 0.44128944)
        Else
            v5 = 0.0407458333333333 * v3
        End If
    End If
    If v1 Then
        v6 = v5 / 0.001
    Else
        v6 = v5 / 0.003785411784
    End If
    One_PAN_RATE = v6
End Function

Private Function One_BOIL_RATE(ByVal power, ByVal efficiency, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    If IsNull(power) Or IsNull(efficiency) Then
        One_BOIL_RATE = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(power) = vbString Then
        One_BOIL_RATE = CVErr(2015)
        Exit Function
    End If
    If VarType(efficiency) = vbString Then
        One_BOIL_RATE = CVErr(2015)
        Exit Function
    End If
    v2 = power * 1#
    v3 = efficiency * 1#
    If v2 < IIf(v1, 0.0003, 1#) Or v2 > IIf(v1, 2930#, 10000000#) Or v3 < 0.01 Or v3 > 1# Then
        One_BOIL_RATE = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v4 = v2 * 1000#
    Else
        v4 = v2 * 0.293071070172222
    End If
    v5 = 3600# * v4 * v3 / 2256473# / 998.203122737355
    If v1 Then
        v6 = v5 / 0.001
    Else
        v6 = v5 / 0.003785411784
    End If
    One_BOIL_RATE = v6
End Function

Private Function One_PAN_DEPTH(ByVal volume, ByVal area, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double
    If IsNull(volume) Or IsNull(area) Then
        One_PAN_DEPTH = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(volume) = vbString Then
        One_PAN_DEPTH = CVErr(2015)
        Exit Function
    End If
    If VarType(area) = vbString Then
        One_PAN_DEPTH = CVErr(2015)
        Exit Function
    End If
    v2 = volume * 1#
    v3 = area * 1#
    If v2 < 0# Or v2 > IIf(v1, 3800000#, 1000000#) Or v3 < IIf(v1, 0.005, 0.05) Then
        One_PAN_DEPTH = CVErr(2036)
        Exit Function
    End If
    If v3 > IIf(v1, 93#, 1000#) Then
        One_PAN_DEPTH = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v4 = v2 * 0.001
    Else
        v4 = v2 * 0.003785411784
    End If
    If v1 Then
        v5 = v3
    Else
        v5 = v3 * 0.09290304
    End If
    v6 = v4 / v5
    If v1 Then
        v7 = v6 / 0.01
    Else
        v7 = v6 / 0.0254
    End If
    One_PAN_DEPTH = v7
End Function

Private Function One_FINISH_RISE(ByVal brix, ByVal pressure, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double, v10 As Double, v11 As Double, v12 As Double
    Dim v13 As Double, v14 As Double, v15 As Double, v16 As Double, v17 As Double
    Dim v18 As Double, v19 As Double, v20 As Double, v21 As Double, v22 As Double
    Dim v23 As Double, v24 As Double, v25 As Double, v26 As Double, v27 As Double
    Dim v28 As Double, v29 As Double, v30 As Double, v31 As Double, v32 As Double
    Dim v33 As Double, v34 As Double, v35 As Double, v36 As Double, v37 As Double
    Dim v38 As Double, v39 As Double, v40 As Double, v41 As Double, v42 As Double
    Dim v43 As Double, v44 As Double, v45 As Double, v46 As Double, v47 As Double
    Dim v48 As Double, v49 As Double, v50 As Double, v51 As Double, v52 As Double
    If IsNull(brix) Or IsNull(pressure) Then
        One_FINISH_RISE = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(brix) = vbString Then
        One_FINISH_RISE = CVErr(2015)
        Exit Function
    End If
    If VarType(pressure) = vbString Then
        One_FINISH_RISE = CVErr(2015)
        Exit Function
    End If
    v2 = brix * 1#
    v3 = pressure * 1#
    If v2 < 0# Or v2 > 85# Or v3 < IIf(v1, 508#, 15#) Or v3 > IIf(v1, 1084#, 32#) Then
        One_FINISH_RISE = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v4 = v3 * 100#
    Else
        v4 = v3 * 3386.38864034
    End If
    v5 = v2 * 18.015268
    v6 = v5 / (v5 + (100# - v2) * 342.2965)
    v7 = 1# - v6
    v8 = (1# + ((-1.0038) + (-0.24653) * v6) * v6) * v6 * v6 * (-17638#) / 8.314462618
    v9 = Sqr(v4 / (v7 * Exp(v8 / 378.15)) * 0.000001)
    v10 = Sqr(v9)
    v11 = (-724213.16703206) * v9 + (-3232555.0322333) * v10 + 405113.40542057
    v12 = 1167.0521452767 * v9 + 12020.82470247 * v10 + (-4823.2657361591)
    v13 = (-2#) * v11 / (v12 + Sqr(v12 * v12 - 4# * (v9 + (-17.073846940092) * v10 + 14.91510861353) * v11))
    v14 = 650.17534844798 + v13
    v15 = (v14 - Sqr(v14 * v14 - 4# * ((-0.23855557567849) + 650.17534844798 * v13))) / 2# - 273.15
    v16 = Sqr(v4 / (v7 * Exp(v8 / (v15 + 273.15))) * 0.000001)
    v17 = Sqr(v16)
    v18 = (-724213.16703206) * v16 + (-3232555.0322333) * v17 + 405113.40542057
    v19 = 1167.0521452767 * v16 + 12020.82470247 * v17 + (-4823.2657361591)
    v20 = (-2#) * v18 / (v19 + Sqr(v19 * v19 - 4# * (v16 + (-17.073846940092) * v17 + 14.91510861353) * v18))
    v21 = 650.17534844798 + v20
    v22 = (v21 - Sqr(v21 * v21 - 4# * ((-0.23855557567849) + 650.17534844798 * v20))) / 2# - 273.15
    v23 = Sqr(v4 / (v7 * Exp(v8 / (v22 + 273.15))) * 0.000001)
    v24 = Sqr(v23)
    v25 = (-724213.16703206) * v23 + (-3232555.0322333) * v24 + 405113.40542057
    v26 = 1167.0521452767 * v23 + 12020.82470247 * v24 + (-4823.2657361591)
    v27 = (-2#) * v25 / (v26 + Sqr(v26 * v26 - 4# * (v23 + (-17.073846940092) * v24 + 14.91510861353) * v25))
    v28 = 650.17534844798 + v27
    v29 = (v28 - Sqr(v28 * v28 - 4# * ((-0.23855557567849) + 650.17534844798 * v27))) / 2# - 273.15
    v30 = Sqr(v4 / (v7 * Exp(v8 / (v29 + 273.15))) * 0.000001)
    v31 = Sqr(v30)
    v32 = (-724213.16703206) * v30 + (-3232555.0322333) * v31 + 405113.40542057
    v33 = 1167.0521452767 * v30 + 12020.82470247 * v31 + (-4823.2657361591)
    v34 = (-2#) * v32 / (v33 + Sqr(v33 * v33 - 4# * (v30 + (-17.073846940092) * v31 + 14.91510861353) * v32))
    v35 = 650.17534844798 + v34
    v36 = (v35 - Sqr(v35 * v35 - 4# * ((-0.23855557567849) + 650.17534844798 * v34))) / 2# - 273.15
    v37 = Sqr(v4 / (v7 * Exp(v8 / (v36 + 273.15))) * 0.000001)
    v38 = Sqr(v37)
    v39 = (-724213.16703206) * v37 + (-3232555.0322333) * v38 + 405113.40542057
    v40 = 1167.0521452767 * v37 + 12020.82470247 * v38 + (-4823.2657361591)
    v41 = (-2#) * v39 / (v40 + Sqr(v40 * v40 - 4# * (v37 + (-17.073846940092) * v38 + 14.91510861353) * v39))
    v42 = 650.17534844798 + v41
    v43 = Sqr(v4 * 0.000001)
    v44 = Sqr(v43)
    v45 = (-724213.16703206) * v43 + (-3232555.0322333) * v44 + 405113.40542057
    v46 = 1167.0521452767 * v43 + 12020.82470247 * v44 + (-4823.2657361591)
    v47 = (-2#) * v45 / (v46 + Sqr(v46 * v46 - 4# * (v43 + (-17.073846940092) * v44 + 14.91510861353) * v45))
    v48 = 650.17534844798 + v47
    v49 = (v42 - Sqr(v42 * v42 - 4# * ((-0.23855557567849) + 650.17534844798 * v41))) / 2# - 273.15
    v50 = (v48 - Sqr(v48 * v48 - 4# * ((-0.23855557567849) + 650.17534844798 * v47))) / 2# - 273.15
    v51 = v49 - v50
    If v1 Then
        v52 = v51
    Else
        v52 = v51 * 1.8
    End If
    One_FINISH_RISE = v52
End Function

Private Function One_FINISH_TEMP(ByVal brix, ByVal pressure, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double, v10 As Double, v11 As Double, v12 As Double
    Dim v13 As Double, v14 As Double, v15 As Double, v16 As Double, v17 As Double
    Dim v18 As Double, v19 As Double, v20 As Double, v21 As Double, v22 As Double
    Dim v23 As Double, v24 As Double, v25 As Double, v26 As Double, v27 As Double
    Dim v28 As Double, v29 As Double, v30 As Double, v31 As Double, v32 As Double
    Dim v33 As Double, v34 As Double, v35 As Double, v36 As Double, v37 As Double
    Dim v38 As Double, v39 As Double, v40 As Double, v41 As Double, v42 As Double
    Dim v43 As Double, v44 As Double
    If IsNull(brix) Or IsNull(pressure) Then
        One_FINISH_TEMP = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(brix) = vbString Then
        One_FINISH_TEMP = CVErr(2015)
        Exit Function
    End If
    If VarType(pressure) = vbString Then
        One_FINISH_TEMP = CVErr(2015)
        Exit Function
    End If
    v2 = brix * 1#
    v3 = pressure * 1#
    If v2 < 0# Or v2 > 85# Or v3 < IIf(v1, 508#, 15#) Or v3 > IIf(v1, 1084#, 32#) Then
        One_FINISH_TEMP = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v4 = v3 * 100#
    Else
        v4 = v3 * 3386.38864034
    End If
    v5 = v2 * 18.015268
    v6 = v5 / (v5 + (100# - v2) * 342.2965)
    v7 = 1# - v6
    v8 = (1# + ((-1.0038) + (-0.24653) * v6) * v6) * v6 * v6 * (-17638#) / 8.314462618
    v9 = Sqr(v4 / (v7 * Exp(v8 / 378.15)) * 0.000001)
    v10 = Sqr(v9)
    v11 = (-724213.16703206) * v9 + (-3232555.0322333) * v10 + 405113.40542057
    v12 = 1167.0521452767 * v9 + 12020.82470247 * v10 + (-4823.2657361591)
    v13 = (-2#) * v11 / (v12 + Sqr(v12 * v12 - 4# * (v9 + (-17.073846940092) * v10 + 14.91510861353) * v11))
    v14 = 650.17534844798 + v13
    v15 = (v14 - Sqr(v14 * v14 - 4# * ((-0.23855557567849) + 650.17534844798 * v13))) / 2# - 273.15
    v16 = Sqr(v4 / (v7 * Exp(v8 / (v15 + 273.15))) * 0.000001)
    v17 = Sqr(v16)
    v18 = (-724213.16703206) * v16 + (-3232555.0322333) * v17 + 405113.40542057
    v19 = 1167.0521452767 * v16 + 12020.82470247 * v17 + (-4823.2657361591)
    v20 = (-2#) * v18 / (v19 + Sqr(v19 * v19 - 4# * (v16 + (-17.073846940092) * v17 + 14.91510861353) * v18))
    v21 = 650.17534844798 + v20
    v22 = (v21 - Sqr(v21 * v21 - 4# * ((-0.23855557567849) + 650.17534844798 * v20))) / 2# - 273.15
    v23 = Sqr(v4 / (v7 * Exp(v8 / (v22 + 273.15))) * 0.000001)
    v24 = Sqr(v23)
    v25 = (-724213.16703206) * v23 + (-3232555.0322333) * v24 + 405113.40542057
    v26 = 1167.0521452767 * v23 + 12020.82470247 * v24 + (-4823.2657361591)
    v27 = (-2#) * v25 / (v26 + Sqr(v26 * v26 - 4# * (v23 + (-17.073846940092) * v24 + 14.91510861353) * v25))
    v28 = 650.17534844798 + v27
    v29 = (v28 - Sqr(v28 * v28 - 4# * ((-0.23855557567849) + 650.17534844798 * v27))) / 2# - 273.15
    v30 = Sqr(v4 / (v7 * Exp(v8 / (v29 + 273.15))) * 0.000001)
    v31 = Sqr(v30)
    v32 = (-724213.16703206) * v30 + (-3232555.0322333) * v31 + 405113.40542057
    v33 = 1167.0521452767 * v30 + 12020.82470247 * v31 + (-4823.2657361591)
    v34 = (-2#) * v32 / (v33 + Sqr(v33 * v33 - 4# * (v30 + (-17.073846940092) * v31 + 14.91510861353) * v32))
    v35 = 650.17534844798 + v34
    v36 = (v35 - Sqr(v35 * v35 - 4# * ((-0.23855557567849) + 650.17534844798 * v34))) / 2# - 273.15
    v37 = Sqr(v4 / (v7 * Exp(v8 / (v36 + 273.15))) * 0.000001)
    v38 = Sqr(v37)
    v39 = (-724213.16703206) * v37 + (-3232555.0322333) * v38 + 405113.40542057
    v40 = 1167.0521452767 * v37 + 12020.82470247 * v38 + (-4823.2657361591)
    v41 = (-2#) * v39 / (v40 + Sqr(v40 * v40 - 4# * (v37 + (-17.073846940092) * v38 + 14.91510861353) * v39))
    v42 = 650.17534844798 + v41
    v43 = (v42 - Sqr(v42 * v42 - 4# * ((-0.23855557567849) + 650.17534844798 * v41))) / 2# - 273.15
    If v1 Then
        v44 = v43
    Else
        v44 = v43 * 1.8 + 32#
    End If
    One_FINISH_TEMP = v44
End Function

Private Function One_FINISH_READING(ByVal brix, ByVal water_reading, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double, v10 As Double, v11 As Double, v12 As Double
    Dim v13 As Double, v14 As Double, v15 As Double, v16 As Double, v17 As Double
    Dim v18 As Double, v19 As Double, v20 As Double, v21 As Double, v22 As Double
    Dim v23 As Double, v24 As Double, v25 As Double, v26 As Double, v27 As Double
    Dim v28 As Double, v29 As Double, v30 As Double, v31 As Double, v32 As Double
    Dim v33 As Double, v34 As Double, v35 As Double, v36 As Double, v37 As Double
    Dim v38 As Double, v39 As Double, v40 As Double, v41 As Double, v42 As Double
    Dim v43 As Double, v44 As Double, v45 As Double, v46 As Double, v47 As Double
    Dim v48 As Double, v49 As Double, v50 As Double, v51 As Double, v52 As Double
    Dim v53 As Double, v54 As Double, v55 As Double, v56 As Double, v57 As Double
    Dim v58 As Double, v59 As Double
    If IsNull(brix) Or IsNull(water_reading) Then
        One_FINISH_READING = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(brix) = vbString Then
        One_FINISH_READING = CVErr(2015)
        Exit Function
    End If
    If VarType(water_reading) = vbString Then
        One_FINISH_READING = CVErr(2015)
        Exit Function
    End If
    v2 = brix * 1#
    v3 = water_reading * 1#
    If v2 < 0# Or v2 > 85# Or v3 < IIf(v1, 79.5, 175#) Or v3 > IIf(v1, 105.5, 222#) Then
        One_FINISH_READING = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v4 = v3
    Else
        v4 = (v3 - 32#) / 1.8
    End If
    v5 = v4 + 273.15
    v6 = v5 + (-0.23855557567849) / (v5 - 650.17534844798)
    v7 = (14.91510861353 * v6 + (-4823.2657361591)) * v6 + 405113.40542057
    v8 = ((-17.073846940092) * v6 + 12020.82470247) * v6 + (-3232555.0322333)
    v9 = 2# * v7 / (Sqr(v8 * v8 - 4# * ((v6 + 1167.0521452767) * v6 + (-724213.16703206)) * v7) - v8)
    v10 = v9 * v9
    v11 = 1000000# * v10 * v10
    v12 = v2 * 18.015268
    v13 = v12 / (v12 + (100# - v2) * 342.2965)
    v14 = 1# - v13
    v15 = (1# + ((-1.0038) + (-0.24653) * v13) * v13) * v13 * v13 * (-17638#) / 8.314462618
    v16 = Sqr(v11 / (v14 * Exp(v15 / 378.15)) * 0.000001)
    v17 = Sqr(v16)
    v18 = (-724213.16703206) * v16 + (-3232555.0322333) * v17 + 405113.40542057
    v19 = 1167.0521452767 * v16 + 12020.82470247 * v17 + (-4823.2657361591)
    v20 = (-2#) * v18 / (v19 + Sqr(v19 * v19 - 4# * (v16 + (-17.073846940092) * v17 + 14.91510861353) * v18))
    v21 = 650.17534844798 + v20
    v22 = (v21 - Sqr(v21 * v21 - 4# * ((-0.23855557567849) + 650.17534844798 * v20))) / 2# - 273.15
    v23 = Sqr(v11 / (v14 * Exp(v15 / (v22 + 273.15))) * 0.000001)
    v24 = Sqr(v23)
    v25 = (-724213.16703206) * v23 + (-3232555.0322333) * v24 + 405113.40542057
    v26 = 1167.0521452767 * v23 + 12020.82470247 * v24 + (-4823.2657361591)
    v27 = (-2#) * v25 / (v26 + Sqr(v26 * v26 - 4# * (v23 + (-17.073846940092) * v24 + 14.91510861353) * v25))
    v28 = 650.17534844798 + v27
    v29 = (v28 - Sqr(v28 * v28 - 4# * ((-0.23855557567849) + 650.17534844798 * v27))) / 2# - 273.15
    v30 = Sqr(v11 / (v14 * Exp(v15 / (v29 + 273.15))) * 0.000001)
    v31 = Sqr(v30)
    v32 = (-724213.16703206) * v30 + (-3232555.0322333) * v31 + 405113.40542057
    v33 = 1167.0521452767 * v30 + 12020.82470247 * v31 + (-4823.2657361591)
    v34 = (-2#) * v32 / (v33 + Sqr(v33 * v33 - 4# * (v30 + (-17.073846940092) * v31 + 14.91510861353) * v32))
    v35 = 650.17534844798 + v34
    v36 = (v35 - Sqr(v35 * v35 - 4# * ((-0.23855557567849) + 650.17534844798 * v34))) / 2# - 273.15
    v37 = Sqr(v11 / (v14 * Exp(v15 / (v36 + 273.15))) * 0.000001)
    v38 = Sqr(v37)
    v39 = (-724213.16703206) * v37 + (-3232555.0322333) * v38 + 405113.40542057
    v40 = 1167.0521452767 * v37 + 12020.82470247 * v38 + (-4823.2657361591)
    v41 = (-2#) * v39 / (v40 + Sqr(v40 * v40 - 4# * (v37 + (-17.073846940092) * v38 + 14.91510861353) * v39))
    v42 = 650.17534844798 + v41
    v43 = (v42 - Sqr(v42 * v42 - 4# * ((-0.23855557567849) + 650.17534844798 * v41))) / 2# - 273.15
    v44 = Sqr(v11 / (v14 * Exp(v15 / (v43 + 273.15))) * 0.000001)
    v45 = Sqr(v44)
    v46 = (-724213.16703206) * v44 + (-3232555.0322333) * v45 + 405113.40542057
    v47 = 1167.0521452767 * v44 + 12020.82470247 * v45 + (-4823.2657361591)
    v48 = (-2#) * v46 / (v47 + Sqr(v47 * v47 - 4# * (v44 + (-17.073846940092) * v45 + 14.91510861353) * v46))
    v49 = 650.17534844798 + v48
    v50 = Sqr(v11 * 0.000001)
    v51 = Sqr(v50)
    v52 = (-724213.16703206) * v50 + (-3232555.0322333) * v51 + 405113.40542057
    v53 = 1167.0521452767 * v50 + 12020.82470247 * v51 + (-4823.2657361591)
    v54 = (-2#) * v52 / (v53 + Sqr(v53 * v53 - 4# * (v50 + (-17.073846940092) * v51 + 14.91510861353) * v52))
    v55 = 650.17534844798 + v54
    v56 = (v49 - Sqr(v49 * v49 - 4# * ((-0.23855557567849) + 650.17534844798 * v48))) / 2# - 273.15
    v57 = (v55 - Sqr(v55 * v55 - 4# * ((-0.23855557567849) + 650.17534844798 * v54))) / 2# - 273.15
    v58 = v4 + (v56 - v57)
    If v1 Then
        v59 = v58
    Else
        v59 = v58 * 1.8 + 32#
    End If
    One_FINISH_READING = v59
End Function

Private Function One_FINISH_MINUTES(ByVal volume, ByVal brix, ByVal syrup_brix, ByVal rate)
    Dim v1 As Double, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double
    If IsNull(volume) Or IsNull(brix) Or IsNull(syrup_brix) Or IsNull(rate) Then
        One_FINISH_MINUTES = CVErr(2042)
        Exit Function
    End If
    If VarType(volume) = vbString Or VarType(brix) = vbString Or VarType(syrup_brix) = vbString Then
        One_FINISH_MINUTES = CVErr(2015)
        Exit Function
    End If
    If VarType(rate) = vbString Then
        One_FINISH_MINUTES = CVErr(2015)
        Exit Function
    End If
    v1 = volume * 1#
    v2 = brix * 1#
    v3 = syrup_brix * 1#
    v4 = rate * 1#
    If v1 < 0# Or v1 > 10000000# Or v2 < 0# Or v2 > 85# Or v3 < 0.1 Or v3 > 85# Or v4 < 0.001 Then
        One_FINISH_MINUTES = CVErr(2036)
        Exit Function
    End If
    If v4 > 1000000# Then
        One_FINISH_MINUTES = CVErr(2036)
        Exit Function
    End If
    v5 = v2 * 0.01
    If v2 < v3 Then
        v7 = (((((-17.289) * v5 + 13.4853) * v5 + (-3.9643)) * v5 + 40.9299) * v5 + 135.3705) * v5 + 385.1761
        v6 = 60# * (v1 * (v7 * v5 + 998.203122737355) * (1# - v2 / v3) / 998.203122737355) / v4
    Else
        v6 = 0#
    End If
    One_FINISH_MINUTES = v6
End Function

Private Function One_BRIX_BY_BOIL(ByVal reading, ByVal water_reading, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double, v10 As Double, v11 As Double, v12 As Double
    Dim v13 As Double, v14 As Double, v15 As Double, v16 As Double, v17 As Double
    Dim v18 As Double, v19 As Double, v20 As Double, v21 As Double, v22 As Double
    Dim v23 As Double, v24 As Double, v25 As Double, v26 As Double, v27 As Double
    Dim v28 As Double, v29 As Double, v30 As Double, v31 As Double, v32 As Double
    Dim v33 As Double
    If IsNull(reading) Or IsNull(water_reading) Then
        One_BRIX_BY_BOIL = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(reading) = vbString Then
        One_BRIX_BY_BOIL = CVErr(2015)
        Exit Function
    End If
    If VarType(water_reading) = vbString Then
        One_BRIX_BY_BOIL = CVErr(2015)
        Exit Function
    End If
    v2 = reading * 1#
    v3 = water_reading * 1#
    If v2 < IIf(v1, 65#, 150#) Or v2 > IIf(v1, 149#, 300#) Or v3 < IIf(v1, 79.5, 175#) Then
        One_BRIX_BY_BOIL = CVErr(2036)
        Exit Function
    End If
    If v3 > IIf(v1, 105.5, 222#) Then
        One_BRIX_BY_BOIL = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v4 = v2
    Else
        v4 = (v2 - 32#) / 1.8
    End If
    If v1 Then
        v5 = v3
    Else
        v5 = (v3 - 32#) / 1.8
    End If
    If Not (v4 >= v5 - 0.000000001) Then
        One_BRIX_BY_BOIL = CVErr(2036)
        Exit Function
    End If
    v6 = v4 + 273.15
    v7 = v5 + 273.15
    v8 = v7 + (-0.23855557567849) / (v7 - 650.17534844798)
    v9 = (14.91510861353 * v8 + (-4823.2657361591)) * v8 + 405113.40542057
    v10 = ((-17.073846940092) * v8 + 12020.82470247) * v8 + (-3232555.0322333)
    v11 = 2# * v9 / (Sqr(v10 * v10 - 4# * ((v8 + 1167.0521452767) * v8 + (-724213.16703206)) * v9) - v10)
    v12 = v11 * v11
    v13 = v6 + (-0.23855557567849) / (v6 - 650.17534844798)
    v14 = (14.91510861353 * v13 + (-4823.2657361591)) * v13 + 405113.40542057
    v15 = ((-17.073846940092) * v13 + 12020.82470247) * v13 + (-3232555.0322333)
    v16 = 2# * v14 / (Sqr(v15 * v15 - 4# * ((v13 + 1167.0521452767) * v13 + (-724213.16703206)) * v14) - v15)
    v17 = v16 * v16
    v18 = 1000000# * v12 * v12 / (1000000# * v17 * v17)
    If Not (0.770273582971355 * Exp((-84.6804038254306) / v6) <= v18 * 1.0000001) Then
        One_BRIX_BY_BOIL = CVErr(2036)
        Exit Function
    End If
    v19 = Log(v18)
    v20 = (-17638#) / (8.314462618 * v6)
    v21 = (-2#) * v19 / (1# + Sqr(1# - (2# - 4# * v20) * v19))
    v22 = 1# - v21
    v23 = (Log(v22) + v20 * (1# + ((-1.0038) + (-0.24653) * v21) * v21) * v21 * v21 - v19) / (v20 * (2# + ((-3.0114) + (-0.98612) * v21) * v21) * v21 - 1# / v22)
    v24 = v21 - v23
    v25 = 1# - v24
    v26 = (Log(v25) + v20 * (1# + ((-1.0038) + (-0.24653) * v24) * v24) * v24 * v24 - v19) / (v20 * (2# + ((-3.0114) + (-0.98612) * v24) * v24) * v24 - 1# / v25)
    v27 = v24 - v26
    v28 = 1# - v27
    v29 = (Log(v28) + v20 * (1# + ((-1.0038) + (-0.24653) * v27) * v27) * v27 * v27 - v19) / (v20 * (2# + ((-3.0114) + (-0.98612) * v27) * v27) * v27 - 1# / v28)
    v30 = v27 - v29
    v31 = v30 * 342.2965
    v32 = 100# * v31 / (v31 + (1# - v30) * 18.015268)
    If v32 > 0# Then
        v33 = IIf(v32 < 85#, v32, 85#)
    Else
        v33 = 0#
    End If
    One_BRIX_BY_BOIL = v33
End Function

Private Function One_BRIX_BY_BOIL_SPREAD(ByVal reading, ByVal water_reading, ByVal give_or_take, ByVal water_from, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double, v10 As Double, v11 As Double, v12 As Double
    Dim v13 As Double, v14 As Double, v15 As Double, v16 As Double, v17 As Double
    Dim v18 As Double, v19 As Double, v20 As Double, v21 As Double, v22 As Double
    Dim v23 As Double, v24 As Double, v25 As Double, v26 As Double, v27 As Double
    Dim v28 As Double, v29 As Double, v30 As Double, v31 As Double, v32 As Double
    Dim v33 As Double, v34 As Double, v35 As Double, v36 As Double, v37 As Double
    Dim v38 As Double, v39 As Double, v40 As Double, v41 As Double, v42 As Double
    Dim v43 As Double, v44 As Double, v45 As Double, v46 As Double, v47 As Double
    Dim v48 As Double, v49 As Double, v50 As Double, v51 As Double, v52 As Double
    Dim v53 As Double, v54 As Double, v55 As Double, v56 As Double, v57 As Double
    Dim v58 As Double, v59 As Double, v60 As Double, v61 As Double, v62 As Double
    Dim v63 As Double, v64 As Double, v65 As Double, v66 As Double, v67 As Double
    Dim v68 As Double, v69 As Double, v70 As Double, v71 As Double, v72 As Double
    Dim v73 As Double, v74 As Double, v75 As Double, v76 As Double, v77 As Double
    Dim v78 As Double, v79 As Double, v80 As Double, v81 As Double, v82 As Double
    Dim v83 As Double, v84 As Double, v85 As Double, v86 As Double, v87 As Double
    Dim v88 As Double, v89 As Double, v90 As Double, v91 As Double
    If IsNull(reading) Or IsNull(water_reading) Or IsNull(give_or_take) Or IsNull(water_from) Then
        One_BRIX_BY_BOIL_SPREAD = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(reading) = vbString Then
        One_BRIX_BY_BOIL_SPREAD = CVErr(2015)
        Exit Function
    End If
    If VarType(water_reading) = vbString Or VarType(give_or_take) = vbString Then
        One_BRIX_BY_BOIL_SPREAD = CVErr(2015)
        Exit Function
    End If
    If Not SameWord(water_from, "today") And _
            Not SameWord(water_from, "another day") And _
            Not SameWord(water_from, "barometer") And _
            Not SameWord(water_from, "elevation") Then
        One_BRIX_BY_BOIL_SPREAD = CVErr(2015)
        Exit Function
    End If
    v2 = reading * 1#
    v3 = water_reading * 1#
    v4 = give_or_take * 1#
    If v2 < IIf(v1, 65#, 150#) Or v2 > IIf(v1, 149#, 300#) Or v3 < IIf(v1, 79.5, 175#) Then
        One_BRIX_BY_BOIL_SPREAD = CVErr(2036)
        Exit Function
    End If
    If v3 > IIf(v1, 105.5, 222#) Or v4 < 0# Or v4 > IIf(v1, 5.5, 10#) Then
        One_BRIX_BY_BOIL_SPREAD = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v5 = v2
    Else
        v5 = (v2 - 32#) / 1.8
    End If
    If v1 Then
        v6 = v3
    Else
        v6 = (v3 - 32#) / 1.8
    End If
    v7 = v5 + 273.15
    v8 = 0.770273582971355 * Exp((-84.6804038254306) / v7)
    v9 = v6 + 273.15
    v10 = v9 + (-0.23855557567849) / (v9 - 650.17534844798)
    v11 = (14.91510861353 * v10 + (-4823.2657361591)) * v10 + 405113.40542057
    v12 = ((-17.073846940092) * v10 + 12020.82470247) * v10 + (-3232555.0322333)
    v13 = 2# * v11 / (Sqr(v12 * v12 - 4# * ((v10 + 1167.0521452767) * v10 + (-724213.16703206)) * v11) - v12)
    v14 = v13 * v13
    v15 = 1000000# * v14 * v14
    v16 = v7 + (-0.23855557567849) / (v7 - 650.17534844798)
    v17 = (14.91510861353 * v16 + (-4823.2657361591)) * v16 + 405113.40542057
    v18 = ((-17.073846940092) * v16 + 12020.82470247) * v16 + (-3232555.0322333)
    v19 = 2# * v17 / (Sqr(v18 * v18 - 4# * ((v16 + 1167.0521452767) * v16 + (-724213.16703206)) * v17) - v18)
    v20 = v19 * v19
    v21 = v15 / (1000000# * v20 * v20)
    If v1 Then
        v22 = v4
    Else
        v22 = v4 / 1.8
    End If
    If SameWord(water_from, "today") Then
        v23 = 0#
    Else
        If SameWord(water_from, "another day") Then
            v23 = 0.47
        Else
            v23 = IIf(SameWord(water_from, "barometer"), 0.83, 0.953834367172834)
        End If
    End If
    v24 = Sqr(2# * v22 * v22 + 0.01 + v23 * v23)
    v25 = v5 + v24 + 273.15
    v26 = v25 + (-0.23855557567849) / (v25 - 650.17534844798)
    v27 = (14.91510861353 * v26 + (-4823.2657361591)) * v26 + 405113.40542057
    v28 = ((-17.073846940092) * v26 + 12020.82470247) * v26 + (-3232555.0322333)
    v29 = 2# * v27 / (Sqr(v28 * v28 - 4# * ((v26 + 1167.0521452767) * v26 + (-724213.16703206)) * v27) - v28)
    v30 = v29 * v29
    v31 = v15 / (1000000# * v30 * v30)
    v32 = 0.770273582971355 * Exp((-84.6804038254306) / v25)
    If v31 > v32 Then
        v33 = IIf(v31 < 1#, v31, 1#)
    Else
        v33 = v32
    End If
    v34 = Log(v33)
    v35 = (-17638#) / (8.314462618 * v25)
    v36 = (-2#) * v34 / (1# + Sqr(1# - (2# - 4# * v35) * v34))
    v37 = 1# - v36
    v38 = (Log(v37) + v35 * (1# + ((-1.0038) + (-0.24653) * v36) * v36) * v36 * v36 - v34) / (v35 * (2# + ((-3.0114) + (-0.98612) * v36) * v36) * v36 - 1# / v37)
    v39 = v36 - v38
    v40 = 1# - v39
    v41 = (Log(v40) + v35 * (1# + ((-1.0038) + (-0.24653) * v39) * v39) * v39 * v39 - v34) / (v35 * (2# + ((-3.0114) + (-0.98612) * v39) * v39) * v39 - 1# / v40)
    v42 = v39 - v41
    v43 = 1# - v42
    v44 = (Log(v43) + v35 * (1# + ((-1.0038) + (-0.24653) * v42) * v42) * v42 * v42 - v34) / (v35 * (2# + ((-3.0114) + (-0.98612) * v42) * v42) * v42 - 1# / v43)
    v45 = v42 - v44
    v46 = v45 * 342.2965
    v47 = 100# * v46 / (v46 + (1# - v45) * 18.015268)
    If v21 > v8 Then
        v48 = IIf(v21 < 1#, v21, 1#)
    Else
        v48 = v8
    End If
    v49 = Log(v48)
    v50 = (-17638#) / (8.314462618 * v7)
    v51 = (-2#) * v49 / (1# + Sqr(1# - (2# - 4# * v50) * v49))
    v52 = 1# - v51
    v53 = (Log(v52) + v50 * (1# + ((-1.0038) + (-0.24653) * v51) * v51) * v51 * v51 - v49) / (v50 * (2# + ((-3.0114) + (-0.98612) * v51) * v51) * v51 - 1# / v52)
    v54 = v51 - v53
    v55 = 1# - v54
    v56 = (Log(v55) + v50 * (1# + ((-1.0038) + (-0.24653) * v54) * v54) * v54 * v54 - v49) / (v50 * (2# + ((-3.0114) + (-0.98612) * v54) * v54) * v54 - 1# / v55)
    v57 = v54 - v56
    v58 = 1# - v57
    v59 = (Log(v58) + v50 * (1# + ((-1.0038) + (-0.24653) * v57) * v57) * v57 * v57 - v49) / (v50 * (2# + ((-3.0114) + (-0.98612) * v57) * v57) * v57 - 1# / v58)
    v60 = v57 - v59
    v61 = v60 * 342.2965
    v62 = 100# * v61 / (v61 + (1# - v60) * 18.015268)
    If v62 > 0# Then
        v63 = IIf(v62 < 85#, v62, 85#)
    Else
        v63 = 0#
    End If
    If v47 > 0# Then
        v64 = IIf(v47 < 85#, v47, 85#)
    Else
        v64 = 0#
    End If
    v65 = v64 - v63
    v66 = v5 - v24
    v67 = IIf(v66 > v6, v66, v6) + 273.15
    v68 = v67 + (-0.23855557567849) / (v67 - 650.17534844798)
    v69 = (14.91510861353 * v68 + (-4823.2657361591)) * v68 + 405113.40542057
    v70 = ((-17.073846940092) * v68 + 12020.82470247) * v68 + (-3232555.0322333)
    v71 = 2# * v69 / (Sqr(v70 * v70 - 4# * ((v68 + 1167.0521452767) * v68 + (-724213.16703206)) * v69) - v70)
    v72 = v71 * v71
    v73 = v15 / (1000000# * v72 * v72)
    v74 = 0.770273582971355 * Exp((-84.6804038254306) / v67)
    If v73 > v74 Then
        v75 = IIf(v73 < 1#, v73, 1#)
    Else
        v75 = v74
    End If
    v76 = Log(v75)
    v77 = (-17638#) / (8.314462618 * v67)
    v78 = (-2#) * v76 / (1# + Sqr(1# - (2# - 4# * v77) * v76))
    v79 = 1# - v78
    v80 = (Log(v79) + v77 * (1# + ((-1.0038) + (-0.24653) * v78) * v78) * v78 * v78 - v76) / (v77 * (2# + ((-3.0114) + (-0.98612) * v78) * v78) * v78 - 1# / v79)
    v81 = v78 - v80
    v82 = 1# - v81
    v83 = (Log(v82) + v77 * (1# + ((-1.0038) + (-0.24653) * v81) * v81) * v81 * v81 - v76) / (v77 * (2# + ((-3.0114) + (-0.98612) * v81) * v81) * v81 - 1# / v82)
    v84 = v81 - v83
    v85 = 1# - v84
    v86 = (Log(v85) + v77 * (1# + ((-1.0038) + (-0.24653) * v84) * v84) * v84 * v84 - v76) / (v77 * (2# + ((-3.0114) + (-0.98612) * v84) * v84) * v84 - 1# / v85)
    v87 = v84 - v86
    v88 = v87 * 342.2965
    v89 = 100# * v88 / (v88 + (1# - v87) * 18.015268)
    If v89 > 0# Then
        v90 = IIf(v89 < 85#, v89, 85#)
    Else
        v90 = 0#
    End If
    v91 = v63 - v90
    If Not (v5 >= v6 - 0.000000001) Then
        One_BRIX_BY_BOIL_SPREAD = CVErr(2036)
        Exit Function
    End If
    If Not (v8 <= v21 * 1.0000001) Then
        One_BRIX_BY_BOIL_SPREAD = CVErr(2036)
        Exit Function
    End If
    One_BRIX_BY_BOIL_SPREAD = IIf(v65 > v91, v65, v91)
End Function

Private Function One_BRIX_BY_HYDROMETER(ByVal reading, ByVal temperature, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double, v10 As Double, v11 As Double, v12 As Double
    Dim v13 As Double, v14 As Double, v15 As Double, v16 As Double, v17 As Double
    Dim v18 As Double, v19 As Double, v20 As Double, v21 As Double, v22 As Double
    Dim v23 As Double, v24 As Double, v25 As Double, v26 As Double, v27 As Double
    Dim v28 As Double, v29 As Double, v30 As Double, v31 As Double, v32 As Double
    Dim v33 As Double, v34 As Double, v35 As Double, v36 As Double, v37 As Double
    Dim v38 As Double, v39 As Double, v40 As Double, v41 As Double
    If IsNull(reading) Or IsNull(temperature) Then
        One_BRIX_BY_HYDROMETER = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(reading) = vbString Then
        One_BRIX_BY_HYDROMETER = CVErr(2015)
        Exit Function
    End If
    If VarType(temperature) = vbString Then
        One_BRIX_BY_HYDROMETER = CVErr(2015)
        Exit Function
    End If
    v2 = reading * 1#
    v3 = temperature * 1#
    If v2 < 0# Or v2 > 85# Or v3 < IIf(v1, 0#, 32#) Or v3 > IIf(v1, 105#, 221#) Then
        One_BRIX_BY_HYDROMETER = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v4 = v3
    Else
        v4 = (v3 - 32#) / 1.8
    End If
    v5 = v4 - 15.5555555555556
    v6 = (v2 + 0.1 * v5) * 0.01
    v7 = (-17.289) * v6
    v8 = (v4 - 20#) * 0.01
    v9 = 17.5254 * v8 + 13.4853
    v10 = v7 + v9
    v11 = ((-35.4791) * v8 + 5.1126) * v8 + (-3.9643)
    v12 = v10 * v6 + v11
    v13 = ((27.6301 * v8 + 12.363) * v8 + 1.1597) * v8 + 40.9299
    v14 = v12 * v6 + v13
    v15 = (((12.3081 * v8 + (-21.6977)) * v8 + 7.2491) * v8 + (-7.172)) * v8 + 135.3705
    v16 = v14 * v6 + v15
    v17 = (((18.3184 * v8 + (-47.2207)) * v8 + 59.7712) * v8 + (-46.272)) * v8 + 385.1761
    v18 = v16 * v6 + v17
    v19 = (((-0.00000000028103006) * v4 + 0.00000010584601) * v4 - 0.000046241757) * v4 - 0.0079905127
    v20 = ((v19 * v4 + 16.952577) * v4 + 999.83952) / (1# + 0.016887236 * v4)
    v21 = v2 * 0.01
    v22 = (((-17.289) * v21 + 12.7063933333333) * v21 + (-4.26160883950617)) * v21 + 40.900352830727
    v23 = (((v22 * v21 + 135.705527663246) * v21 + 387.354916952635) * v21 + 999.013466396045) / (1# + 0.000025 * v5)
    v24 = v6 - (v18 * v6 + v20 - v23) / (((((v7 + v10) * v6 + v12) * v6 + v14) * v6 + v16) * v6 + v18)
    v25 = (-17.289) * v24
    v26 = v25 + v9
    v27 = v26 * v24 + v11
    v28 = v27 * v24 + v13
    v29 = v28 * v24 + v15
    v30 = v29 * v24 + v17
    v31 = (v30 * v24 + v20 - v23) / (((((v25 + v26) * v24 + v27) * v24 + v28) * v24 + v29) * v24 + v30)
    v32 = v24 - v31
    v33 = (-17.289) * v32
    v34 = v33 + v9
    v35 = v34 * v32 + v11
    v36 = v35 * v32 + v13
    v37 = v36 * v32 + v15
    v38 = v37 * v32 + v17
    v39 = (v38 * v32 + v20 - v23) / (((((v33 + v34) * v32 + v35) * v32 + v36) * v32 + v37) * v32 + v38)
    v40 = 100# * (v32 - v39)
    If Not (v40 <= 85.000000001) Then
        One_BRIX_BY_HYDROMETER = CVErr(2036)
        Exit Function
    End If
    If v40 > 0# Then
        v41 = IIf(v40 < 85#, v40, 85#)
    Else
        v41 = 0#
    End If
    One_BRIX_BY_HYDROMETER = v41
End Function

Private Function One_BRIX_BY_SAP_HYDROMETER(ByVal reading, ByVal temperature, ByVal marked_at, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double, v10 As Double, v11 As Double, v12 As Double
    Dim v13 As Double, v14 As Double, v15 As Double, v16 As Double, v17 As Double
    Dim v18 As Double, v19 As Double, v20 As Double, v21 As Double, v22 As Double
    Dim v23 As Double, v24 As Double, v25 As Double, v26 As Double, v27 As Double
    Dim v28 As Double, v29 As Double, v30 As Double, v31 As Double, v32 As Double
    Dim v33 As Double, v34 As Double, v35 As Double, v36 As Double, v37 As Double
    Dim v38 As Double, v39 As Double, v40 As Double, v41 As Double, v42 As Double
    Dim v43 As Double, v44 As Double, v45 As Double, v46 As Double, v47 As Double
    Dim v48 As Double
    If IsNull(reading) Or IsNull(temperature) Or IsNull(marked_at) Then
        One_BRIX_BY_SAP_HYDROMETER = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(reading) = vbString Then
        One_BRIX_BY_SAP_HYDROMETER = CVErr(2015)
        Exit Function
    End If
    If VarType(temperature) = vbString Or VarType(marked_at) = vbString Then
        One_BRIX_BY_SAP_HYDROMETER = CVErr(2015)
        Exit Function
    End If
    v2 = reading * 1#
    v3 = temperature * 1#
    v4 = IIf(v1, 0#, 32#)
    v5 = marked_at * 1#
    If v2 < 0# Or v2 > 85# Or v3 < v4 Or v3 > IIf(v1, 105#, 221#) Or v5 < v4 Then
        One_BRIX_BY_SAP_HYDROMETER = CVErr(2036)
        Exit Function
    End If
    If v5 > IIf(v1, 21#, 70#) Then
        One_BRIX_BY_SAP_HYDROMETER = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v6 = v3
    Else
        v6 = (v3 - 32#) / 1.8
    End If
    If v1 Then
        v7 = v5
    Else
        v7 = (v5 - 32#) / 1.8
    End If
    v8 = v6 - v7
    v9 = (v2 + 0.1 * v8) * 0.01
    v10 = (-17.289) * v9
    v11 = (v6 - 20#) * 0.01
    v12 = 17.5254 * v11 + 13.4853
    v13 = v10 + v12
    v14 = ((-35.4791) * v11 + 5.1126) * v11 + (-3.9643)
    v15 = v13 * v9 + v14
    v16 = ((27.6301 * v11 + 12.363) * v11 + 1.1597) * v11 + 40.9299
    v17 = v15 * v9 + v16
    v18 = (((12.3081 * v11 + (-21.6977)) * v11 + 7.2491) * v11 + (-7.172)) * v11 + 135.3705
    v19 = v17 * v9 + v18
    v20 = (((18.3184 * v11 + (-47.2207)) * v11 + 59.7712) * v11 + (-46.272)) * v11 + 385.1761
    v21 = v19 * v9 + v20
    v22 = (((-0.00000000028103006) * v6 + 0.00000010584601) * v6 - 0.000046241757) * v6 - 0.0079905127
    v23 = ((v22 * v6 + 16.952577) * v6 + 999.83952) / (1# + 0.016887236 * v6)
    v24 = v2 * 0.01
    v25 = (v7 - 20#) * 0.01
    v26 = ((-17.289) * v24 + (17.5254 * v25 + 13.4853)) * v24 + (((-35.4791) * v25 + 5.1126) * v25 + (-3.9643))
    v27 = (v26 * v24 + (((27.6301 * v25 + 12.363) * v25 + 1.1597) * v25 + 40.9299)) * v24 + ((((12.3081 * v25 + (-21.6977)) * v25 + 7.2491) * v25 + (-7.172)) * v25 + 135.3705)
    v28 = v27 * v24 + ((((18.3184 * v25 + (-47.2207)) * v25 + 59.7712) * v25 + (-46.272)) * v25 + 385.1761)
    v29 = (((-0.00000000028103006) * v7 + 0.00000010584601) * v7 - 0.000046241757) * v7 - 0.0079905127
    v30 = (v28 * v24 + ((v29 * v7 + 16.952577) * v7 + 999.83952) / (1# + 0.016887236 * v7)) / (1# + 0.000025 * v8)
    v31 = v9 - (v21 * v9 + v23 - v30) / (((((v10 + v13) * v9 + v15) * v9 + v17) * v9 + v19) * v9 + v21)
    v32 = (-17.289) * v31
    v33 = v32 + v12
    v34 = v33 * v31 + v14
    v35 = v34 * v31 + v16
    v36 = v35 * v31 + v18
    v37 = v36 * v31 + v20
    v38 = (v37 * v31 + v23 - v30) / (((((v32 + v33) * v31 + v34) * v31 + v35) * v31 + v36) * v31 + v37)
    v39 = v31 - v38
    v40 = (-17.289) * v39
    v41 = v40 + v12
    v42 = v41 * v39 + v14
    v43 = v42 * v39 + v16
    v44 = v43 * v39 + v18
    v45 = v44 * v39 + v20
    v46 = (v45 * v39 + v23 - v30) / (((((v40 + v41) * v39 + v42) * v39 + v43) * v39 + v44) * v39 + v45)
    v47 = 100# * (v39 - v46)
    If Not (v47 <= 85.000000001) Then
        One_BRIX_BY_SAP_HYDROMETER = CVErr(2036)
        Exit Function
    End If
    If v47 > 0# Then
        v48 = IIf(v47 < 85#, v47, 85#)
    Else
        v48 = 0#
    End If
    One_BRIX_BY_SAP_HYDROMETER = v48
End Function

Private Function One_BRIX_BY_WEIGHT(ByVal empty_weight, ByVal water_weight, ByVal full_weight, ByVal temperature, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double, v10 As Double, v11 As Double, v12 As Double
    Dim v13 As Double, v14 As Double, v15 As Double, v16 As Double, v17 As Double
    Dim v18 As Double, v19 As Double, v20 As Double, v21 As Double, v22 As Double
    Dim v23 As Double, v24 As Double, v25 As Double, v26 As Double, v27 As Double
    Dim v28 As Double, v29 As Double, v30 As Double, v31 As Double, v32 As Double
    Dim v33 As Double, v34 As Double, v35 As Double, v36 As Double, v37 As Double
    Dim v38 As Double, v39 As Double, v40 As Double, v41 As Double, v42 As Double
    Dim v43 As Double, v44 As Double
    If IsNull(empty_weight) Or IsNull(water_weight) Or IsNull(full_weight) Or IsNull(temperature) Then
        One_BRIX_BY_WEIGHT = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(empty_weight) = vbString Then
        One_BRIX_BY_WEIGHT = CVErr(2015)
        Exit Function
    End If
    If VarType(water_weight) = vbString Or VarType(full_weight) = vbString Then
        One_BRIX_BY_WEIGHT = CVErr(2015)
        Exit Function
    End If
    If VarType(temperature) = vbString Then
        One_BRIX_BY_WEIGHT = CVErr(2015)
        Exit Function
    End If
    v2 = empty_weight * 1#
    v3 = water_weight * 1#
    v4 = full_weight * 1#
    v5 = temperature * 1#
    If v2 < 0# Or v2 > 1000000# Or v3 < 0# Or v3 > 1000000# Or v4 < 0# Or v4 > 1000000# Then
        One_BRIX_BY_WEIGHT = CVErr(2036)
        Exit Function
    End If
    If v5 < IIf(v1, 0#, 32#) Or v5 > IIf(v1, 100#, 212#) Then
        One_BRIX_BY_WEIGHT = CVErr(2036)
        Exit Function
    End If
    v6 = v3 - v2
    If Not (v6 > 0#) Then
        One_BRIX_BY_WEIGHT = CVErr(2036)
        Exit Function
    End If
    v7 = (v4 - v2) / v6
    If v1 Then
        v8 = v5
    Else
        v8 = (v5 - 32#) / 1.8
    End If
    v9 = (((-0.00000000028103006) * v8 + 0.00000010584601) * v8 - 0.000046241757) * v8 - 0.0079905127
    v10 = ((v9 * v8 + 16.952577) * v8 + 999.83952) / (1# + 0.016887236 * v8)
    If Not (v7 <= 1.6) Then
        One_BRIX_BY_WEIGHT = CVErr(2036)
        Exit Function
    End If
    If Not (v7 >= 0.9) Then
        One_BRIX_BY_WEIGHT = CVErr(2036)
        Exit Function
    End If
    v11 = v7 * (v10 - 1.2) + 1.2
    v12 = 100# * ((Sqr(1# + 0.00496 * (v11 * 998.203122737355 / v10 - 998.203122737355)) - 1#) * 1.0716)
    v13 = v12 * 0.01
    v14 = (-17.289) * v13
    v15 = (v8 - 20#) * 0.01
    v16 = 17.5254 * v15 + 13.4853
    v17 = v14 + v16
    v18 = ((-35.4791) * v15 + 5.1126) * v15 + (-3.9643)
    v19 = v17 * v13 + v18
    v20 = ((27.6301 * v15 + 12.363) * v15 + 1.1597) * v15 + 40.9299
    v21 = v19 * v13 + v20
    v22 = (((12.3081 * v15 + (-21.6977)) * v15 + 7.2491) * v15 + (-7.172)) * v15 + 135.3705
    v23 = v21 * v13 + v22
    v24 = (((18.3184 * v15 + (-47.2207)) * v15 + 59.7712) * v15 + (-46.272)) * v15 + 385.1761
    v25 = v23 * v13 + v24
    v26 = (v25 * v13 + v10 - v11) / (((((v14 + v17) * v13 + v19) * v13 + v21) * v13 + v23) * v13 + v25)
    v27 = v13 - v26
    v28 = (-17.289) * v27
    v29 = v28 + v16
    v30 = v29 * v27 + v18
    v31 = v30 * v27 + v20
    v32 = v31 * v27 + v22
    v33 = v32 * v27 + v24
    v34 = (v33 * v27 + v10 - v11) / (((((v28 + v29) * v27 + v30) * v27 + v31) * v27 + v32) * v27 + v33)
    v35 = v27 - v34
    v36 = (-17.289) * v35
    v37 = v36 + v16
    v38 = v37 * v35 + v18
    v39 = v38 * v35 + v20
    v40 = v39 * v35 + v22
    v41 = v40 * v35 + v24
    v42 = (v41 * v35 + v10 - v11) / (((((v36 + v37) * v35 + v38) * v35 + v39) * v35 + v40) * v35 + v41)
    v43 = 100# * (v35 - v42)
    If Not (v43 <= 85.000000001) Then
        One_BRIX_BY_WEIGHT = CVErr(2036)
        Exit Function
    End If
    If Not (v43 >= (-1#)) Then
        One_BRIX_BY_WEIGHT = CVErr(2036)
        Exit Function
    End If
    If v43 > 0# Then
        v44 = IIf(v43 < 85#, v43, 85#)
    Else
        v44 = 0#
    End If
    One_BRIX_BY_WEIGHT = v44
End Function

Private Function One_BRIX_BY_REFRACTOMETER(ByVal reading, ByVal temperature, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double
    If IsNull(reading) Or IsNull(temperature) Then
        One_BRIX_BY_REFRACTOMETER = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(reading) = vbString Then
        One_BRIX_BY_REFRACTOMETER = CVErr(2015)
        Exit Function
    End If
    If VarType(temperature) = vbString Then
        One_BRIX_BY_REFRACTOMETER = CVErr(2015)
        Exit Function
    End If
    v2 = reading * 1#
    v3 = temperature * 1#
    If v2 < 0# Or v2 > 75# Or v3 < IIf(v1, 10#, 50#) Or v3 > IIf(v1, 30#, 86#) Then
        One_BRIX_BY_REFRACTOMETER = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v4 = v3
    Else
        v4 = (v3 - 32#) / 1.8
    End If
    v5 = v4 - 20#
    v6 = v2 * 0.01
    v7 = v2 + v5 * (0.06098 + (0.06408 - 0.05691 * v6) * v6 + v5 * (0.001024 - 0.00132 * v6))
    One_BRIX_BY_REFRACTOMETER = IIf(v7 > 0#, v7, 0#)
End Function

Private Function One_BRIX_BY_GRAVITY(ByVal gravity)
    Dim v1 As Double, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double, v10 As Double, v11 As Double, v12 As Double
    Dim v13 As Double, v14 As Double, v15 As Double, v16 As Double, v17 As Double
    Dim v18 As Double
    If IsNull(gravity) Then
        One_BRIX_BY_GRAVITY = CVErr(2042)
        Exit Function
    End If
    If VarType(gravity) = vbString Then
        One_BRIX_BY_GRAVITY = CVErr(2015)
        Exit Function
    End If
    v1 = gravity * 1#
    If v1 < 1# Or v1 > 1.45 Then
        One_BRIX_BY_GRAVITY = CVErr(2036)
        Exit Function
    End If
    v2 = v1 * 998.203122737355
    v3 = (Sqr(1# + 0.00496 * (v2 - 998.203122737355)) - 1#) * 1.0716
    v4 = (-17.289) * v3
    v5 = v4 + 13.4853
    v6 = v5 * v3 + (-3.9643)
    v7 = v6 * v3 + 40.9299
    v8 = v7 * v3 + 135.3705
    v9 = v8 * v3 + 385.1761
    v10 = (v9 * v3 + 998.203122737355 - v2) / (((((v4 + v5) * v3 + v6) * v3 + v7) * v3 + v8) * v3 + v9)
    v11 = v3 - v10
    v12 = (-17.289) * v11
    v13 = v12 + 13.4853
    v14 = v13 * v11 + (-3.9643)
    v15 = v14 * v11 + 40.9299
    v16 = v15 * v11 + 135.3705
    v17 = v16 * v11 + 385.1761
    v18 = (v17 * v11 + 998.203122737355 - v2) / (((((v12 + v13) * v11 + v14) * v11 + v15) * v11 + v16) * v11 + v17)
    One_BRIX_BY_GRAVITY = 100# * (v11 - v18)
End Function

Private Function One_SYRUP_FLOATS(ByVal brix, ByVal temperature, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double, v10 As Double, v11 As Double, v12 As Double
    Dim v13 As Double, v14 As Double, v15 As Double, v16 As Double, v17 As Double
    Dim v18 As Double, v19 As Double, v20 As Double, v21 As Double, v22 As Double
    Dim v23 As Double, v24 As Double, v25 As Double, v26 As Double, v27 As Double
    Dim v28 As Double, v29 As Double, v30 As Double, v31 As Double, v32 As Double
    Dim v33 As Double, v34 As Double, v35 As Double, v36 As Double, v37 As Double
    If IsNull(brix) Or IsNull(temperature) Then
        One_SYRUP_FLOATS = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(brix) = vbString Then
        One_SYRUP_FLOATS = CVErr(2015)
        Exit Function
    End If
    If VarType(temperature) = vbString Then
        One_SYRUP_FLOATS = CVErr(2015)
        Exit Function
    End If
    v2 = brix * 1#
    v3 = temperature * 1#
    If v2 < 0# Or v2 > 85# Or v3 < IIf(v1, 0#, 32#) Or v3 > IIf(v1, 105#, 221#) Then
        One_SYRUP_FLOATS = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v4 = v3
    Else
        v4 = (v3 - 32#) / 1.8
    End If
    v5 = v4 - 15.5555555555556
    v6 = (v2 - 0.1 * v5) * 0.01
    v7 = (-17.289) * v6
    v8 = v7 + 12.7063933333333
    v9 = v8 * v6 + (-4.26160883950617)
    v10 = v9 * v6 + 40.900352830727
    v11 = v10 * v6 + 135.705527663246
    v12 = v11 * v6 + 387.354916952635
    v13 = v2 * 0.01
    v14 = (v4 - 20#) * 0.01
    v15 = ((-17.289) * v13 + (17.5254 * v14 + 13.4853)) * v13 + (((-35.4791) * v14 + 5.1126) * v14 + (-3.9643))
    v16 = (v15 * v13 + (((27.6301 * v14 + 12.363) * v14 + 1.1597) * v14 + 40.9299)) * v13 + ((((12.3081 * v14 + (-21.6977)) * v14 + 7.2491) * v14 + (-7.172)) * v14 + 135.3705)
    v17 = v16 * v13 + ((((18.3184 * v14 + (-47.2207)) * v14 + 59.7712) * v14 + (-46.272)) * v14 + 385.1761)
    v18 = (((-0.00000000028103006) * v4 + 0.00000010584601) * v4 - 0.000046241757) * v4 - 0.0079905127
    v19 = (v17 * v13 + ((v18 * v4 + 16.952577) * v4 + 999.83952) / (1# + 0.016887236 * v4)) * (1# + 0.000025 * v5)
    v20 = (v12 * v6 + 999.013466396045 - v19) / (((((v7 + v8) * v6 + v9) * v6 + v10) * v6 + v11) * v6 + v12)
    v21 = v6 - v20
    v22 = (-17.289) * v21
    v23 = v22 + 12.7063933333333
    v24 = v23 * v21 + (-4.26160883950617)
    v25 = v24 * v21 + 40.900352830727
    v26 = v25 * v21 + 135.705527663246
    v27 = v26 * v21 + 387.354916952635
    v28 = (v27 * v21 + 999.013466396045 - v19) / (((((v22 + v23) * v21 + v24) * v21 + v25) * v21 + v26) * v21 + v27)
    v29 = v21 - v28
    v30 = (-17.289) * v29
    v31 = v30 + 12.7063933333333
    v32 = v31 * v29 + (-4.26160883950617)
    v33 = v32 * v29 + 40.900352830727
    v34 = v33 * v29 + 135.705527663246
    v35 = v34 * v29 + 387.354916952635
    v36 = (v35 * v29 + 999.013466396045 - v19) / (((((v30 + v31) * v29 + v32) * v29 + v33) * v29 + v34) * v29 + v35)
    v37 = 100# * (v29 - v36)
    If Not (v37 >= (-0.000001)) Then
        One_SYRUP_FLOATS = CVErr(2036)
        Exit Function
    End If
    If Not (v37 <= 85.000001) Then
        One_SYRUP_FLOATS = CVErr(2036)
        Exit Function
    End If
    One_SYRUP_FLOATS = IIf(v37 > 0#, v37, 0#)
End Function

Private Function One_SYRUP_GRAVITY(ByVal brix)
    Dim v1 As Double, v2 As Double, v3 As Double
    If IsNull(brix) Then
        One_SYRUP_GRAVITY = CVErr(2042)
        Exit Function
    End If
    If VarType(brix) = vbString Then
        One_SYRUP_GRAVITY = CVErr(2015)
        Exit Function
    End If
    v1 = brix * 1#
    If v1 < 0# Or v1 > 85# Then
        One_SYRUP_GRAVITY = CVErr(2036)
        Exit Function
    End If
    v2 = v1 * 0.01
    v3 = (((((-17.289) * v2 + 13.4853) * v2 + (-3.9643)) * v2 + 40.9299) * v2 + 135.3705) * v2 + 385.1761
    One_SYRUP_GRAVITY = (v3 * v2 + 998.203122737355) / 998.203122737355
End Function

Private Function One_SYRUP_BAUME(ByVal brix)
    Dim v1 As Double, v2 As Double, v3 As Double
    If IsNull(brix) Then
        One_SYRUP_BAUME = CVErr(2042)
        Exit Function
    End If
    If VarType(brix) = vbString Then
        One_SYRUP_BAUME = CVErr(2015)
        Exit Function
    End If
    v1 = brix * 1#
    If v1 < 0# Or v1 > 85# Then
        One_SYRUP_BAUME = CVErr(2036)
        Exit Function
    End If
    v2 = v1 * 0.01
    v3 = (((((-17.289) * v2 + 13.4853) * v2 + (-3.9643)) * v2 + 40.9299) * v2 + 135.3705) * v2 + 385.1761
    One_SYRUP_BAUME = 145# - 145# / ((v3 * v2 + 998.203122737355) / 998.203122737355)
End Function

Private Function One_SYRUP_DENSITY(ByVal brix, ByVal temperature, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double, v10 As Double, v11 As Double, v12 As Double
    If IsNull(brix) Or IsNull(temperature) Then
        One_SYRUP_DENSITY = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(brix) = vbString Then
        One_SYRUP_DENSITY = CVErr(2015)
        Exit Function
    End If
    If VarType(temperature) = vbString Then
        One_SYRUP_DENSITY = CVErr(2015)
        Exit Function
    End If
    v2 = brix * 1#
    v3 = temperature * 1#
    If v2 < 0# Or v2 > 85# Or v3 < IIf(v1, 0#, 32#) Or v3 > IIf(v1, 105#, 221#) Then
        One_SYRUP_DENSITY = CVErr(2036)
        Exit Function
    End If
    v4 = v2 * 0.01
    If v1 Then
        v5 = v3
    Else
        v5 = (v3 - 32#) / 1.8
    End If
    v6 = (v5 - 20#) * 0.01
    v7 = ((-17.289) * v4 + (17.5254 * v6 + 13.4853)) * v4 + (((-35.4791) * v6 + 5.1126) * v6 + (-3.9643))
    v8 = (v7 * v4 + (((27.6301 * v6 + 12.363) * v6 + 1.1597) * v6 + 40.9299)) * v4 + ((((12.3081 * v6 + (-21.6977)) * v6 + 7.2491) * v6 + (-7.172)) * v6 + 135.3705)
    v9 = v8 * v4 + ((((18.3184 * v6 + (-47.2207)) * v6 + 59.7712) * v6 + (-46.272)) * v6 + 385.1761)
    v10 = (((-0.00000000028103006) * v5 + 0.00000010584601) * v5 - 0.000046241757) * v5 - 0.0079905127
    v11 = v9 * v4 + ((v10 * v5 + 16.952577) * v5 + 999.83952) / (1# + 0.016887236 * v5)
    If v1 Then
        v12 = v11 / 1000#
    Else
        v12 = v11 / 119.826427316897
    End If
    One_SYRUP_DENSITY = v12
End Function

Private Function One_SYRUP_COLD(ByVal volume, ByVal brix, ByVal temperature, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double, v10 As Double, v11 As Double, v12 As Double
    Dim v13 As Double, v14 As Double, v15 As Double, v16 As Double
    If IsNull(volume) Or IsNull(brix) Or IsNull(temperature) Then
        One_SYRUP_COLD = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(volume) = vbString Then
        One_SYRUP_COLD = CVErr(2015)
        Exit Function
    End If
    If VarType(brix) = vbString Or VarType(temperature) = vbString Then
        One_SYRUP_COLD = CVErr(2015)
        Exit Function
    End If
    v2 = volume * 1#
    v3 = brix * 1#
    v4 = temperature * 1#
    If v2 < 0# Or v2 > IIf(v1, 3800000#, 1000000#) Or v3 < 0# Or v3 > 85# Or v4 < IIf(v1, 0#, 32#) Then
        One_SYRUP_COLD = CVErr(2036)
        Exit Function
    End If
    If v4 > IIf(v1, 105#, 221#) Then
        One_SYRUP_COLD = CVErr(2036)
        Exit Function
    End If
    v5 = v3 * 0.01
    v6 = (-17.289) * v5
    If v1 Then
        v7 = v4
    Else
        v7 = (v4 - 32#) / 1.8
    End If
    v8 = (v7 - 20#) * 0.01
    If v1 Then
        v9 = v2 * 0.001
    Else
        v9 = v2 * 0.003785411784
    End If
    v10 = ((v6 + (17.5254 * v8 + 13.4853)) * v5 + (((-35.4791) * v8 + 5.1126) * v8 + (-3.9643))) * v5
    v11 = (v10 + (((27.6301 * v8 + 12.363) * v8 + 1.1597) * v8 + 40.9299)) * v5 + ((((12.3081 * v8 + (-21.6977)) * v8 + 7.2491) * v8 + (-7.172)) * v8 + 135.3705)
    v12 = v11 * v5 + ((((18.3184 * v8 + (-47.2207)) * v8 + 59.7712) * v8 + (-46.272)) * v8 + 385.1761)
    v13 = (((-0.00000000028103006) * v7 + 0.00000010584601) * v7 - 0.000046241757) * v7 - 0.0079905127
    v14 = (((((v6 + 13.4853) * v5 + (-3.9643)) * v5 + 40.9299) * v5 + 135.3705) * v5 + 385.1761) * v5
    v15 = v9 * (v12 * v5 + ((v13 * v7 + 16.952577) * v7 + 999.83952) / (1# + 0.016887236 * v7)) / (v14 + 998.203122737355)
    If v1 Then
        v16 = v15 / 0.001
    Else
        v16 = v15 / 0.003785411784
    End If
    One_SYRUP_COLD = v16
End Function

Private Function One_SYRUP_ADJUST(ByVal volume, ByVal brix, ByVal syrup_brix, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double
    If IsNull(volume) Or IsNull(brix) Or IsNull(syrup_brix) Then
        One_SYRUP_ADJUST = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(volume) = vbString Then
        One_SYRUP_ADJUST = CVErr(2015)
        Exit Function
    End If
    If VarType(brix) = vbString Or VarType(syrup_brix) = vbString Then
        One_SYRUP_ADJUST = CVErr(2015)
        Exit Function
    End If
    v2 = volume * 1#
    v3 = brix * 1#
    v4 = syrup_brix * 1#
    If v2 < 0# Or v2 > IIf(v1, 3800000#, 1000000#) Or v3 < 0# Or v3 > 85# Or v4 < 0.1 Or v4 > 85# Then
        One_SYRUP_ADJUST = CVErr(2036)
        Exit Function
    End If
    v5 = v3 * 0.01
    If v1 Then
        v6 = v2 * 0.001
    Else
        v6 = v2 * 0.003785411784
    End If
    v7 = (((((-17.289) * v5 + 13.4853) * v5 + (-3.9643)) * v5 + 40.9299) * v5 + 135.3705) * v5 + 385.1761
    v8 = v6 * (v7 * v5 + 998.203122737355) * (v3 / v4 - 1#) / 998.203122737355
    If v1 Then
        v9 = v8 / 0.000001
    Else
        v9 = v8 / 0.0000295735295625
    End If
    One_SYRUP_ADJUST = v9
End Function

Private Function One_SYRUP_BLEND(ByVal volume, ByVal brix, ByVal other_volume, ByVal other_brix)
    Dim v1 As Double, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double, v10 As Double, v11 As Double
    If IsNull(volume) Or IsNull(brix) Or IsNull(other_volume) Or IsNull(other_brix) Then
        One_SYRUP_BLEND = CVErr(2042)
        Exit Function
    End If
    If VarType(volume) = vbString Or VarType(brix) = vbString Or VarType(other_volume) = vbString Then
        One_SYRUP_BLEND = CVErr(2015)
        Exit Function
    End If
    If VarType(other_brix) = vbString Then
        One_SYRUP_BLEND = CVErr(2015)
        Exit Function
    End If
    v1 = volume * 1#
    v2 = brix * 1#
    v3 = other_volume * 1#
    v4 = other_brix * 1#
    If v1 < 0# Or v1 > 10000000# Or v2 < 0# Or v2 > 85# Or v3 < 0# Or v3 > 10000000# Or v4 < 0# Then
        One_SYRUP_BLEND = CVErr(2036)
        Exit Function
    End If
    If v4 > 85# Then
        One_SYRUP_BLEND = CVErr(2036)
        Exit Function
    End If
    v5 = v2 * 0.01
    v6 = (((((-17.289) * v5 + 13.4853) * v5 + (-3.9643)) * v5 + 40.9299) * v5 + 135.3705) * v5 + 385.1761
    v7 = v1 * (v6 * v5 + 998.203122737355)
    v8 = v4 * 0.01
    v9 = (((((-17.289) * v8 + 13.4853) * v8 + (-3.9643)) * v8 + 40.9299) * v8 + 135.3705) * v8 + 385.1761
    v10 = v3 * (v9 * v8 + 998.203122737355)
    v11 = v7 + v10
    If Not (v11 > 0#) Then
        One_SYRUP_BLEND = CVErr(2036)
        Exit Function
    End If
    One_SYRUP_BLEND = (v7 * v2 + v10 * v4) / v11
End Function

Private Function One_SYRUP_BLEND_SHARE(ByVal thin_brix, ByVal thick_brix, ByVal syrup_brix)
    Dim v1 As Double, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double
    If IsNull(thin_brix) Or IsNull(thick_brix) Or IsNull(syrup_brix) Then
        One_SYRUP_BLEND_SHARE = CVErr(2042)
        Exit Function
    End If
    If VarType(thin_brix) = vbString Or VarType(thick_brix) = vbString Then
        One_SYRUP_BLEND_SHARE = CVErr(2015)
        Exit Function
    End If
    If VarType(syrup_brix) = vbString Then
        One_SYRUP_BLEND_SHARE = CVErr(2015)
        Exit Function
    End If
    v1 = thin_brix * 1#
    v2 = thick_brix * 1#
    v3 = syrup_brix * 1#
    If v1 < 0# Or v1 > 85# Or v2 < 0# Or v2 > 85# Or v3 < 0.1 Or v3 > 85# Then
        One_SYRUP_BLEND_SHARE = CVErr(2036)
        Exit Function
    End If
    v4 = v1 * 0.01
    If Not (v1 <= v3) Then
        One_SYRUP_BLEND_SHARE = CVErr(2036)
        Exit Function
    End If
    v5 = (((((-17.289) * v4 + 13.4853) * v4 + (-3.9643)) * v4 + 40.9299) * v4 + 135.3705) * v4 + 385.1761
    v6 = (v3 - v1) * (v5 * v4 + 998.203122737355)
    v7 = v2 * 0.01
    If Not (v3 <= v2) Then
        One_SYRUP_BLEND_SHARE = CVErr(2036)
        Exit Function
    End If
    v8 = (((((-17.289) * v7 + 13.4853) * v7 + (-3.9643)) * v7 + 40.9299) * v7 + 135.3705) * v7 + 385.1761
    v9 = v6 + (v2 - v3) * (v8 * v7 + 998.203122737355)
    If Not (v9 > 0#) Then
        One_SYRUP_BLEND_SHARE = CVErr(2036)
        Exit Function
    End If
    One_SYRUP_BLEND_SHARE = v6 / v9
End Function

Private Function One_SYRUP_STATE(ByVal brix)
    Dim v1 As Double, v2 As String
    If IsNull(brix) Then
        One_SYRUP_STATE = CVErr(2042)
        Exit Function
    End If
    If VarType(brix) = vbString Then
        One_SYRUP_STATE = CVErr(2015)
        Exit Function
    End If
    v1 = brix * 1#
    If v1 < 0# Or v1 > 85# Then
        One_SYRUP_STATE = CVErr(2036)
        Exit Function
    End If
    If v1 < 66# Then
        v2 = "thin"
    Else
        v2 = IIf(v1 > 68.9, "thick", "in range")
    End If
    One_SYRUP_STATE = v2
End Function

Private Function One_SYRUP_GRADE(ByVal transmittance)
    Dim v1 As Double, v2 As String
    If IsNull(transmittance) Then
        One_SYRUP_GRADE = CVErr(2042)
        Exit Function
    End If
    If VarType(transmittance) = vbString Then
        One_SYRUP_GRADE = CVErr(2015)
        Exit Function
    End If
    v1 = transmittance * 1#
    If v1 < 0# Or v1 > 100# Then
        One_SYRUP_GRADE = CVErr(2036)
        Exit Function
    End If
    If v1 >= 75# Then
        v2 = "Golden"
    Else
        If v1 >= 50# Then
            v2 = "Amber"
        Else
            v2 = IIf(v1 >= 25#, "Dark", "Very Dark")
        End If
    End If
    One_SYRUP_GRADE = v2
End Function

Private Function One_JAR_COUNT(ByVal volume, ByVal jar_size, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double
    If IsNull(volume) Or IsNull(jar_size) Then
        One_JAR_COUNT = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(volume) = vbString Then
        One_JAR_COUNT = CVErr(2015)
        Exit Function
    End If
    If VarType(jar_size) = vbString Then
        One_JAR_COUNT = CVErr(2015)
        Exit Function
    End If
    v2 = volume * 1#
    v3 = jar_size * 1#
    If v2 < 0# Or v2 > IIf(v1, 3800000#, 1000000#) Or v3 < IIf(v1, 3#, 0.1) Then
        One_JAR_COUNT = CVErr(2036)
        Exit Function
    End If
    If v3 > IIf(v1, 30000#, 1000#) Then
        One_JAR_COUNT = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v4 = v2 * 0.001
    Else
        v4 = v2 * 0.003785411784
    End If
    If v1 Then
        v5 = v3 * 0.000001
    Else
        v5 = v3 * 0.0000295735295625
    End If
    One_JAR_COUNT = Int((v4 + 0.000000000001 * v4) / v5)
End Function

Private Function One_JAR_REST(ByVal volume, ByVal jar_size, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double, v9 As Double
    If IsNull(volume) Or IsNull(jar_size) Then
        One_JAR_REST = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(volume) = vbString Then
        One_JAR_REST = CVErr(2015)
        Exit Function
    End If
    If VarType(jar_size) = vbString Then
        One_JAR_REST = CVErr(2015)
        Exit Function
    End If
    v2 = volume * 1#
    v3 = jar_size * 1#
    If v2 < 0# Or v2 > IIf(v1, 3800000#, 1000000#) Or v3 < IIf(v1, 3#, 0.1) Then
        One_JAR_REST = CVErr(2036)
        Exit Function
    End If
    If v3 > IIf(v1, 30000#, 1000#) Then
        One_JAR_REST = CVErr(2036)
        Exit Function
    End If
    If v1 Then
        v4 = v2 * 0.001
    Else
        v4 = v2 * 0.003785411784
    End If
    If v1 Then
        v5 = v3 * 0.000001
    Else
        v5 = v3 * 0.0000295735295625
    End If
    v6 = 0.000000000001 * v4
    v7 = v4 - v5 * Int((v4 + v6) / v5)
    v8 = IIf(v7 > v6, v7, 0#)
    If v1 Then
        v9 = v8 / 0.000001
    Else
        v9 = v8 / 0.0000295735295625
    End If
    One_JAR_REST = v9
End Function

Private Function One_JAR_WEIGHT(ByVal jar_size, ByVal brix, ByVal units)
    Dim v1 As Boolean, v2 As Double, v3 As Double, v4 As Double, v5 As Double, v6 As Double
    Dim v7 As Double, v8 As Double
    If IsNull(jar_size) Or IsNull(brix) Then
        One_JAR_WEIGHT = CVErr(2042)
        Exit Function
    End If
    If IsNull(units) Then units = "US"
    v1 = Not SameWord(units, "US")
    If v1 And Not SameWord(units, "metric") Or VarType(jar_size) = vbString Then
        One_JAR_WEIGHT = CVErr(2015)
        Exit Function
    End If
    If VarType(brix) = vbString Then
        One_JAR_WEIGHT = CVErr(2015)
        Exit Function
    End If
    v2 = jar_size * 1#
    v3 = brix * 1#
    If v2 < IIf(v1, 3#, 0.1) Or v2 > IIf(v1, 30000#, 1000#) Or v3 < 0# Or v3 > 85# Then
        One_JAR_WEIGHT = CVErr(2036)
        Exit Function
    End If
    v4 = v3 * 0.01
    If v1 Then
        v5 = v2 * 0.000001
    Else
        v5 = v2 * 0.0000295735295625
    End If
    v6 = (((((-17.289) * v4 + 13.4853) * v4 + (-3.9643)) * v4 + 40.9299) * v4 + 135.3705) * v4 + 385.1761
    v7 = v5 * ((v6 * v4 + 998.203122737355 - 1.2) / 0.99985)
    If v1 Then
        v8 = v7 / 0.001
    Else
        v8 = v7 / 0.028349523125
    End If
    One_JAR_WEIGHT = v8
End Function
