"""Water: boiling, and the density and heats that the sugar relations stand on."""

from __future__ import annotations

from sheetfuncs.science.maths import Value, fifteen, sqrt

KELVIN = 273.15  # 0 °C, exact by definition

# IAPWS R7-97(2012), Table 34.
N1, N2, N3, N4, N5 = 1167.0521452767, -724213.16703206, -17.073846940092, 12020.82470247, -3232555.0322333
N6, N7, N8, N9, N10 = 14.91510861353, -4823.2657361591, 405113.40542057, -0.23855557567849, 650.17534844798


def saturation_pressure(celsius: Value) -> Value:
    """Pressure at which water boils at a temperature, Pa.

    Source: IAPWS-IF97 (R7-97, 2012), region 4, eq. 30.  0 to 373.946 °C.
    """
    kelvin = celsius + KELVIN
    theta = kelvin + N9 / (kelvin - N10)
    a = (theta + N1) * theta + N2
    b = (N3 * theta + N4) * theta + N5
    c = (N6 * theta + N7) * theta + N8
    root = 2.0 * c / (sqrt(b * b - 4.0 * a * c) - b)
    square = root * root
    return 1000000.0 * square * square


def saturation_temperature(pressure: Value) -> Value:
    """Temperature at which water boils at a pressure, °C.

    Source: IAPWS-IF97 (R7-97, 2012), region 4, eq. 31.  611.213 Pa to 22.064 MPa.
    """
    square = sqrt(pressure * 0.000001)
    beta = sqrt(square)
    e = square + N3 * beta + N6
    f = N1 * square + N4 * beta + N7
    g = N2 * square + N5 * beta + N8
    d = -2.0 * g / (f + sqrt(f * f - 4.0 * e * g))
    s = N10 + d
    return (s - sqrt(s * s - 4.0 * (N9 + N10 * d))) / 2.0 - KELVIN


def density(celsius: Value) -> Value:
    """Density of air-free water at atmospheric pressure, kg/m³.

    Source: the equation of Kell, J. Chem. Eng. Data 20 (1975) 97, brought to the temperature scale
    of 1990 by Bettin & Spieweck, as in IP Standard Methods (1998), appendix G (0.006 kg/m³), and
    used with the sucrose polynomial in Bubnik, Kadlec, Urban & Bruhns, Sugar Technologists Manual
    (1995), p. 164.  0 to 150 °C.
    """
    t = celsius
    top = (
        (((-0.00000000028103006 * t + 0.00000010584601) * t - 0.000046241757) * t - 0.0079905127) * t + 16.952577
    ) * t + 999.83952
    return top / (1.0 + 0.016887236 * t)


DENSITY_20 = fifteen(density(20.0))  # what volumes of cold water are measured with


def latent_heat(celsius: Value) -> Value:
    """Heat that turns boiling water into steam, J/kg.

    Source: a quadratic fitted to IAPWS-IF97, 80 to 110 °C, within 60 J/kg.
    """
    t = celsius - 100.0
    return 2256473.0 - (2644.48 + 3.242 * t) * t
