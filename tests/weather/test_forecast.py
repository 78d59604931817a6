"""Saved forecasts: read into the right days, or refused in one line."""

from __future__ import annotations

import datetime
import os
import subprocess
import sys
import time
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from sheetfuncs import cli
from sheetfuncs.files import Refused
from sheetfuncs.weather import saved
from sheetfuncs.weather.days import Found, Odd
from sheetfuncs.weather.names import dated, period
from tests.weather.samples import DEGREES, FOLDER, NAMES, SYSTEMS, WAYS, Row, expected, spoiled

resource = pytest.importorskip("resource", reason="only POSIX limits what a process may use")

EXPECTED = expected()


def rows(found: Found) -> list[Row]:
    return [(str(day), low, high) for day, low, high in found.rows(found.system)]


def refusal(tmp_path: Path, capsys: pytest.CaptureFixture[str], content: bytes | str, *options: str) -> str:
    """The one line that `forecast` gives up with."""
    path = tmp_path / "saved"
    path.write_bytes(content if isinstance(content, bytes) else content.encode())
    assert cli.main(["forecast", str(path), *options]) == 2
    printed = capsys.readouterr()
    assert printed.out == ""
    assert printed.err.count("\n") == 1, printed.err
    assert str(path) in printed.err
    return printed.err


def read(tmp_path: Path, content: str, system: str | None = None, night_after: bool = False) -> list[Row]:
    path = tmp_path / "saved"
    path.write_text(content, encoding="utf-8")
    return rows(saved.read(path, system, night_after))


def test_every_sample_has_its_rows() -> None:
    assert set(EXPECTED) == set(NAMES)


@pytest.mark.parametrize("name", NAMES)
def test_a_sample_is_read(name: str) -> None:
    assert rows(saved.read(FOLDER / name, SYSTEMS[DEGREES.get(name)])) == EXPECTED[name]


@pytest.mark.parametrize("name", NAMES)
def test_its_name_does_not_matter(name: str, tmp_path: Path) -> None:
    (tmp_path / "page.html").write_bytes((FOLDER / name).read_bytes())
    assert rows(saved.read(tmp_path / "page.html", SYSTEMS[DEGREES.get(name)])) == EXPECTED[name]


def test_what_is_printed(capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["forecast", str(FOLDER / "national-periods.json")]) == 0
    printed = capsys.readouterr()
    assert printed.out.splitlines()[:2] == ["2026-03-06\t\t41", "2026-03-07\t26\t44"]
    assert printed.out.splitlines()[-1] == "2026-03-13\t25\t"
    assert printed.err.splitlines() == [
        "from U.S. National Weather Service, 44.02° N, 72.50° W: 2026-03-06 14:00 to 2026-03-13 06:00",
        "no low of the night before for 2026-03-06",
        "no high for 2026-03-13",
    ]
    assert cli.main(["forecast", str(FOLDER / "national-periods.json"), "--units", "metric"]) == 0
    assert capsys.readouterr().out.splitlines()[1] == "2026-03-07\t-3.3\t6.7"


def test_a_name_that_would_steer_the_terminal_is_only_shown(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    content = (FOLDER / "city-page.json").read_text(encoding="utf-8")
    name = "\\u001b[2J\\nSaint-Mélèze"
    (tmp_path / "saved").write_text(content.replace('"en": "Saint-Mélèze"', f'"en": "{name}"'), encoding="utf-8")
    assert cli.main(["forecast", str(tmp_path / "saved")]) == 0
    printed = capsys.readouterr().err
    assert "\x1b" not in printed
    assert printed.startswith("from Environment Canada, city page,  [2J Saint-Mélèze: ")


def test_without_a_file_it_says_how_to_get_one(capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["forecast"]) == 0
    printed = capsys.readouterr().out
    for words in (
        "api.weather.gov",
        "FcstType=dwml",
        "api.weather.gc.ca",
        "api.open-meteo.com",
        "ncei.noaa.gov",
        "table",
    ):
        assert words in printed


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("way", range(len(WAYS)), ids=[way.__name__.strip("_") for way in WAYS])
def test_a_spoiled_file_is_refused_in_one_line_or_gives_no_wrong_day(name: str, way: int, tmp_path: Path) -> None:
    """A hundred spoilings of each sample.  Its temperatures differ, so that one on a wrong day is seen."""
    content = (FOLDER / name).read_bytes()
    system = SYSTEMS[DEGREES.get(name)]
    lows = {low: day for day, low, _ in EXPECTED[name] if low is not None}
    highs = {high: day for day, _, high in EXPECTED[name] if high is not None}
    path = tmp_path / "saved"
    read_at_all = 0
    for number in range(10):
        path.write_bytes(spoiled(content, number * len(WAYS) + way))
        try:
            found = rows(saved.read(path, system))
        except Refused as refused:
            assert "\n" not in str(refused)
            assert str(refused).startswith(str(path))
            continue
        read_at_all += 1
        for day, low, high in found:
            assert low is None or lows.get(low, day) == day, (number, day, low)
            assert high is None or highs.get(high, day) == day, (number, day, high)


FORECAST = '"forecastGenerator": "x", "periods": '
BAD = {
    "empty": (b"", "the file is empty"),
    "blank": (b" \n\n\t", "the file is empty"),
    "a web page": (b"\n<!DOCTYPE html><html><body>7 day forecast</body></html>", "this is a web page"),
    "a web page as XHTML": (b'<?xml version="1.0"?>\n<html xmlns="x"><body/></html>', "this is a web page"),
    "a picture": (b"\x89PNG\r\n\x1a\n" + b"\0" * 100, "this is not text"),
    "another XML": (b"<rss><channel/></rss>", "XML, but of no service known here"),
    "another JSON": (b'{"list": [1, 2]}', "JSON, but of no service known here"),
    "XML cut short": (b"<dwml><data>", "damaged or cut short, not XML"),
    "XML with entities": (b'<!DOCTYPE a [<!ENTITY a "b">]><dwml>&a;</dwml>', "defines entities"),
    "JSON cut short": (b'{"properties": {"periods": [', "damaged or cut short, not JSON"),
    "deep JSON": (b"[" * 1000 + b"]" * 1000, "deep"),
    "very deep JSON": (b'{"a":' * 200_000 + b"1" + b"}" * 200_000, "deep"),
    "prose": (b"A mild week ahead.\nHighs in the forties, lows near freezing.\n", "does not say whether it is in"),
    "a pseudo-table": (b"date,low,high F\nsoon,cold,warm 1 F\nlater,colder,warmer\n", "no day where the heading says"),
    "no periods": (b'{"properties": {"forecast": "https://..", "gridId": "X"}}', "leads to the forecast"),
    "an error of the service": (b'{"error": true, "reason": "Out of range"}', "'Out of range'"),
    "two places": (b'[{"utc_offset_seconds": 0}, {"utc_offset_seconds": 0}]', "more than one place"),
    "no unit": (b"2026-03-07 26 44\n2026-03-08 28 47\n", "add --degrees F or --degrees C"),
    "both units": (b"2026-03-07 26 F 44 F\n2026-03-08 2 C 7 C\n", "both °F and °C"),
    "out of order": (b"2026-03-08 28 47 F\n2026-03-07 26 44 F\n", "out of order"),
    "a day twice": (b"2026-03-08 28 47 F\n2026-03-08 26 44 F\n", "out of order"),
    "no date of issue": (b"Tonight\nLow: 26 F\nSaturday\nHigh: 44 F\n", "write the day it was copied in a first line"),
    "a wrong weekday": (b"Sunday 2026-03-07 26 44 F\nMonday 2026-03-08 28 47 F\n", "not the day of the week"),
    "a heading missing": (
        b"2026-03-06\nToday\nHigh: 40 F\nTonight\nLow: 26 F\nWashington's Birthday\nHigh: 44 F\n",
        "is a heading missing?",
    ),
    "day or month first": (b"3/7/2026 26 44 F\n3/8/2026 28 47 F\n3/11/2026 2 4 F\n", "begins with the day or"),
    "no such day": (b"2026-02-30 26 44 F\n", "there is no day"),
    "hotter than the Earth": (b"2026-03-07 26 444 F\n", "outside -60 to 130"),
    "one number": (b"2026-03-07 26 F\n", "which is the low and which the high"),
    "another age": (b"0206-03-07 26 44 F\n0206-03-08 28 47 F\n", "is the year right?"),
    "a heading twice": (b"2026-03-06\nTonight\nLow: 26 F\nX\nHigh: 44 F\nSaturday Night\nLow: 28 F\n", "comes after"),
    "a long record": (
        b'"STATION","DATE","TMAX"\n"X","2020-03-07","44"\n"X","2026-03-08","47"\n', "longer than 800 days"),
}  # fmt: skip


@pytest.mark.parametrize("name", BAD)
def test_what_is_no_forecast_is_refused(name: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    content, words = BAD[name]
    assert words in refusal(tmp_path, capsys, content, *(("--degrees", "F") if name == "a long record" else ()))


KELVIN = [
    ("national-periods.json", b'"temperatureUnit": "F"', b'"temperatureUnit": "K"', "'K', neither"),
    ("national-overnight-si.json", b"wmoUnit:degC", b"wmoUnit:K", "'wmoUnit:K', neither"),
    ("dwml-page.xml", b'units="Fahrenheit"', b'units="Kelvin"', "'Kelvin', neither"),
    ("city-page-en.xml", b'units="C" class', b'units="K" class', "'K', neither"),
    ("city-page.json", b'"en": "C"', b'"en": "K"', "'K', neither"),
    ("open-meteo.json", "°C".encode(), b"K", "'K', neither"),
    ("open-meteo.csv", "(°C)".encode(), b"(K)", "'K', neither"),
]


@pytest.mark.parametrize(("name", "unit", "other", "words"), KELVIN, ids=[one[0] for one in KELVIN])
def test_another_unit_is_refused(
    name: str, unit: bytes, other: bytes, words: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    content = (FOLDER / name).read_bytes()
    assert unit in content
    assert words in refusal(tmp_path, capsys, content.replace(unit, other))


def test_days_counted_in_greenwich_are_refused(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    content = (FOLDER / "open-meteo.json").read_bytes().replace(b"-14400", b"0")
    assert "add timezone=auto" in refusal(tmp_path, capsys, content)


def test_daily_summaries_must_be_told_their_unit(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    content = (FOLDER / "daily-summaries.csv").read_bytes()
    assert "add --degrees F" in refusal(tmp_path, capsys, content)
    tenths = content.replace(b'"26"', b'"-33"').replace(b'"44"', b'"67"')  # as without units=: tenths of °C
    assert "outside -51 to 54.5" in refusal(tmp_path, capsys, tenths, "--degrees", "C")


def test_holes_in_a_record_are_told(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    lines = (FOLDER / "daily-summaries.csv").read_bytes().splitlines(keepends=True)
    (tmp_path / "saved").write_bytes(b"".join(lines[:3] + lines[4:]))
    assert cli.main(["forecast", str(tmp_path / "saved"), "--degrees", "F"]) == 0
    printed = capsys.readouterr()
    assert "2026-03-08\t\t\n" in printed.out
    assert "no high for 2026-03-08" in printed.err


def test_no_file_a_folder_and_a_device(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    os.mkfifo(tmp_path / "pipe")
    for path, words in (
        (tmp_path / "none", "no such file"),
        (tmp_path, "this is a folder, a device or a pipe"),
        (tmp_path / "pipe", "this is a folder, a device or a pipe"),
    ):
        assert cli.main(["forecast", str(path)]) == 2
        assert words in capsys.readouterr().err
    assert cli.main(["forecast", "/dev/zero"]) == 2
    assert "this is a folder, a device or a pipe" in capsys.readouterr().err


@pytest.mark.parametrize("start", [b"", b'{"properties": {"periods": [', b"<dwml>", b"2026-03-07 26 44 F\n"])
def test_a_file_of_100_megabytes_is_refused_at_once(start: bytes, tmp_path: Path) -> None:
    """Without reading it: in little memory and time."""
    path = tmp_path / "large"
    with path.open("wb") as file:
        file.write(start)
        file.truncate(100_000_000)
    run = bounded(path)
    assert run.returncode == 2
    assert "over 4 MB" in run.stderr


HOSTILE = {
    "numbers": b'{"properties": {"periods": [' + b"1," * 1_900_000 + b"1]}}",
    "elements": b"<dwml>" + b"<a/>" * 990_000 + b"</dwml>",
    "one long line": b"9" * 3_900_000,
    "spaces": b"2026-03-07" + b" " * 3_900_000,
    "low, without end": b"2026-03-07 low" + b" near" * 700_000,
    "lines of days": b"saturday low 26 F\n" * 200_000,
    "commas": b"date,low,high" + b"," * 3_900_000,
    "blank CSV": b"latitude,longitude,utc_offset_seconds\n" + b"\n" * 3_900_000,
    "letters with accents": "é̂".encode() * 700_000,
    "dates": b"2026-03-07 " * 350_000,
}


@pytest.mark.parametrize("name", HOSTILE)
def test_a_hostile_file_is_refused_in_bounded_time_and_memory(name: str, tmp_path: Path) -> None:
    path = tmp_path / "hostile"
    path.write_bytes(HOSTILE[name])
    start = time.monotonic()
    run = bounded(path)
    assert run.returncode == 2, run.stderr[-500:]
    assert run.stderr.count("\n") == 1
    assert time.monotonic() - start < 20


def bounded(path: Path) -> subprocess.CompletedProcess[str]:
    """`forecast` with 600 MB of memory."""

    def little() -> None:
        resource.setrlimit(resource.RLIMIT_AS, (600_000_000, 600_000_000))

    code = "import sys; from sheetfuncs import cli; sys.exit(cli.main(['forecast', sys.argv[1]]))"
    return subprocess.run([sys.executable, "-c", code, str(path)], capture_output=True, text=True, preexec_fn=little)


SEVEN = [("2026-03-07", 26.0, 44.0), ("2026-03-08", 28.0, 47.0)]
TABLES = {
    "columns, low first": "date,low,high\n2026-03-07,26,44\n2026-03-08,28,47\nF\n".replace("F\n", ""),
    "columns, high first": "Day;Max °F;Min °F\n2026-03-07;44;26\n2026-03-08;47;28\n",
    "spaces": "Date        High  Low (°F)\n2026-03-07   44   26\n2026-03-08   47   28\n",
    "month names": "Mar 6, 2026\nSat Mar 7   44 / 26 °F\nSun Mar 8   47 / 28 °F\n",
    "full dates": "March 7, 2026: high 44, low 26 °F\nMarch 8, 2026: high 47, low 28\n",
    "French dates": "7 mars 2026 min 26 °F max 44\n8 mars 2026 min 28 max 47\n",
    "month first": "2/28/2026 1 2 F\n",
    "day names": "Issued 2026-03-06\nSaturday High near 44 Low around 26 °F\nSunday High near 47 Low around 28 °F\n",
    "noise": "2026-03-06\nSat 44° 26°F wind 15 mph 40% 0.2 in\nSun 47° 28°F wind 5 mph 10% 0 in\n",
    "normals": "2026-03-06\nSat\nNormals: high 2, low 1\nHigh 44 °F low 26\nSun High 47 Low 28\nRecord high 70\n",
    "names said twice": "2026-03-06\nSaturday\nSaturday: High 44 F, low 26\nSunday\nSunday: high 47, low 28\nMonday\n",
    "a Windows file": "date\tlow\thigh °F\r\n2026-03-07\t26\t44\r\n2026-03-08\t28\t47\r\n",
}


@pytest.mark.parametrize("name", TABLES)
def test_tables_in_many_shapes(name: str, tmp_path: Path) -> None:
    wanted = [("2026-02-28", 1.0, 2.0)] if name == "month first" else SEVEN
    assert read(tmp_path, TABLES[name], "US") == wanted


def test_a_table_in_celsius_with_commas_and_true_minus_signs(tmp_path: Path) -> None:
    text = "date;min °C;max °C\n2026-03-07;−4,5;6,5\n2026-03-08;–3;-\n"
    assert read(tmp_path, text) == [("2026-03-07", -4.5, 6.5), ("2026-03-08", -3.0, None)]


def test_lows_of_the_night_after(tmp_path: Path) -> None:
    text = "2026-03-06\nSat 44/26 F\nSun 47/28 F\n"
    after = [("2026-03-07", None, 44.0), ("2026-03-08", 26.0, 47.0), ("2026-03-09", 28.0, None)]
    assert read(tmp_path, text, night_after=True) == after
    assert read(tmp_path, "date\thigh\tovernight low °F\n2026-03-07\t44\t26\n2026-03-08\t47\t28\n") == after


def test_names_over_two_lines_and_sentences(tmp_path: Path) -> None:
    text = """Updated: March 6, 2026 at 1:55 pm
This
Afternoon
Sunny, with a high near 41 °F. West wind around 6 mph.
Tonight
A 20 percent chance of snow before 1am. Low around 26. Wind chill values as low as -2.
Saturday
High pressure; highs 40 to 46.
Saturday
Night
Lows in the upper 20s, down to a low near 28.
"""
    assert read(tmp_path, text) == [("2026-03-06", None, 41.0), ("2026-03-07", 26.0, None), ("2026-03-08", 28.0, None)]


def test_a_new_year_is_crossed(tmp_path: Path) -> None:
    text = "2026-12-30\nDec 31 44 26 F\nJan 1 47 28 F\n"
    assert read(tmp_path, text) == [("2026-12-31", 26.0, 44.0), ("2027-01-01", 28.0, 47.0)]


DAY_OF_ISSUE = datetime.date(2026, 3, 6)  # a Friday


@pytest.mark.parametrize(
    ("names", "days"),
    [
        (["Tonight", "Saturday", "Saturday night"], [6, 7, 7]),
        (["Today", "Tonight", "Saturday"], [6, 6, 7]),
        (["Friday night", "Saturday"], [6, 7]),
        (["Thursday night", "Friday"], [5, 6]),  # issued after midnight
        (["Tonight", "Friday"], [5, 6]),  # the night that is going on
        (["Saturday", "Sunday", "Monday"], [7, 8, 9]),
        (["ce soir et cette nuit", "samedi", "samedi soir et nuit", "dimanche"], [6, 7, 7, 8]),
        (["Aujourd'hui", "vendredi soir et nuit"], [6, 6]),
    ],
)
def test_named_days_are_dated(names: list[str], days: list[int]) -> None:
    periods = [one for name in names if (one := period(name))]
    assert [one.day for one in dated(periods, DAY_OF_ISSUE, DAY_OF_ISSUE)] == days


@pytest.mark.parametrize(
    "names",
    [
        ["Monday", "Tuesday"],  # three days ahead
        ["Saturday", "Saturday"],
        ["Saturday night", "Saturday"],
        ["Saturday", "Tonight"],
        ["Today", "Today", "Saturday"],
        ["Today", "Sunday"],  # today would be tomorrow
        ["Saturday", "Monday"],
        ["Tonight", "Saturday", "Sunday"],
        ["Tonight"] * 2,
    ],
)
def test_days_that_do_not_follow_are_refused(names: list[str]) -> None:
    periods = [one for name in names if (one := period(name))]
    with pytest.raises(Odd):
        dated(periods, DAY_OF_ISSUE, DAY_OF_ISSUE)


@settings(max_examples=300, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(
    first=st.dates(datetime.date(2020, 1, 1), datetime.date(2030, 1, 1)),
    days=st.lists(st.tuples(st.integers(-40, 60), st.integers(0, 30)), min_size=1, max_size=12),
    split=st.sampled_from(["\t", ";", "  ", ","]),
    order=st.permutations([0, 1, 2]),
    written=st.sampled_from(["%Y-%m-%d", "%d %B %Y", "%b %d, %Y"]),
)
def test_any_table_is_read_back(
    first: datetime.date,
    days: list[tuple[int, int]],
    split: str,
    order: list[int],
    written: str,
    tmp_path: Path,
) -> None:
    if split == "," and "," in written:
        return
    wanted, lines = [], [split.join(("Date", "Low °F", "High °F")[part] for part in order)]
    for number, (low, rise) in enumerate(days):
        day = first + datetime.timedelta(days=number)
        wanted.append((str(day), float(low), float(low + rise)))
        lines.append(split.join((day.strftime(written), str(low), str(low + rise))[part] for part in order))
    assert read(tmp_path, "\n".join(lines)) == wanted
