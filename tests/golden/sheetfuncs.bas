Attribute VB_Name = "sheetfuncs"
Option Explicit

' Maple sugaring functions, computed by Python through xlwings 0.37.
' Written by `sheetfuncs excel-addin`: do not edit, but write it anew.

Private Const PYTHON_MODULE As String = "sheetfuncs.hosts.excel"
Private Const FUNCTION_CATEGORY As String = "Maple sugaring"
Private Const LEFT_OUT As String = "(left out)"

' Why Python last did not answer. Waiting for a Python that is not there takes a minute or two: while
' this holds a reason no cell asks again. sheetfuncs_check does, and so does opening the workbook anew.
Private silence As String

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

' Run this when every cell shows #VALUE!: it asks Python anew, and says whether it answers and if not, why.
Public Sub sheetfuncs_check()
    Dim words As String
    words = Asked()
    If silence = "" Then Application.CalculateFull
    MsgBox words, IIf(silence = "", vbInformation, vbExclamation)
End Sub

Private Function Asked() As String
    Dim before As String
    before = silence
    On Error GoTo failed
    Asked = "Python answers: sheetfuncs " & XLPy.Str(XLPy.GetAttr(XLPy.Module("sheetfuncs"), "__version__")) & _
        " is at work. All cells are computed anew."
    silence = ""
    If before <> "" Then Asked = Asked & vbCrLf & "Before, it did not answer: " & before
    Exit Function
failed:
    Remember Err.Description
    Asked = "Python does not answer: " & silence & vbCrLf & _
        "Until it does every cell says #VALUE! at once. Mend the cause and run this again."
End Function

Private Sub Remember(ByVal reason As String)
    silence = reason
    If silence = "" Then silence = "no reason was given"
End Sub

' One call: ranges go to Python as their values, and error texts come back as errors.
Private Function Answer(ByVal called As String, ByVal given As Variant) As Variant
    Dim sent() As Variant, result As Variant
    Dim i As Long, j As Long, last As Long
    If silence <> "" Then
        Answer = CVErr(2015)
        Exit Function
    End If
    On Error GoTo failed
    ReDim sent(LBound(given) To UBound(given))
    For i = LBound(given) To UBound(given)
        If IsMissing(given(i)) Then
            sent(i) = LEFT_OUT
        ElseIf IsObject(given(i)) Then
            sent(i) = given(i).Value2
        Else
            sent(i) = given(i)
        End If
    Next i
    On Error GoTo silent
    result = XLPy.CallUDF(PYTHON_MODULE, called, sent)
    On Error GoTo failed
    If Not IsArray(result) Then
        Answer = Shown(result)
        Exit Function
    End If
    last = -1 ' a single row comes without a second dimension
    On Error Resume Next
    last = UBound(result, 2)
    On Error GoTo failed
    For i = LBound(result) To UBound(result)
        If last < 0 Then
            result(i) = Shown(result(i))
        Else
            For j = LBound(result, 2) To last
                result(i, j) = Shown(result(i, j))
            Next j
        End If
    Next i
    Answer = result
    Exit Function
silent:
    Remember Err.Description
failed:
    Answer = CVErr(2015)
End Function

Private Function Shown(ByVal value As Variant) As Variant
    Shown = value
    If VarType(value) <> vbString Then Exit Function
    Select Case value
        Case "#NULL!": Shown = CVErr(2000)
        Case "#DIV/0!": Shown = CVErr(2007)
        Case "#VALUE!": Shown = CVErr(2015)
        Case "#REF!": Shown = CVErr(2023)
        Case "#NAME?": Shown = CVErr(2029)
        Case "#NUM!": Shown = CVErr(2036)
        Case "#N/A": Shown = CVErr(2042)
        Case "#GETTING_DATA": Shown = CVErr(2043)
        Case "#SPILL!": Shown = CVErr(2045)
        Case "#CONNECT!": Shown = CVErr(2046)
        Case "#BLOCKED!": Shown = CVErr(2047)
        Case "#UNKNOWN!": Shown = CVErr(2048)
        Case "#FIELD!": Shown = CVErr(2049)
        Case "#CALC!": Shown = CVErr(2050)
    End Select
End Function
