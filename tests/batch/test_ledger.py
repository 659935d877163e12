"""The ledger of batches: what was noted is found again as it was, and corrections erase nothing."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from datetime import date, datetime
from pathlib import Path

import pytest

from designer.batch.invented import invented
from designer.batch.ledger import FILE, MIGRATIONS, Ledger
from designer.batch.liked import liked, style_of
from designer.batch.record import (
    AsMade,
    BatchError,
    Reading,
    Tasting,
    Told,
    as_forecast,
    asked,
    forecast_in,
    forecast_text,
    read_when,
    when_text,
)
from designer.forecast import Forecast, forecast
from designer.make import kernel
from designer.recipe.file import read
from styles import house
from styles.reader import reads, style

MADE = date(2024, 5, 7)
MILL = ("ph", "mill")
MOISTURE = ("moisture_pct", "")


@pytest.fixture(scope="module")
def cheddar() -> Forecast:
    kernel.warm_up()
    return forecast(read(Path(__file__).parents[1] / "widgets" / "cheddar.toml"))


@pytest.fixture
def ledger(tmp_path: Path) -> Iterator[Ledger]:
    made = Ledger(tmp_path / "data" / FILE)
    yield made
    made.close()


@pytest.fixture
def number(ledger: Ledger, cheddar: Forecast) -> int:
    """A noted batch."""
    kept = AsMade(cheddar.recipe.name, "format = 1\n", cheddar.recipe.style, as_forecast(cheddar), "0.1-abc")
    return ledger.note(kept, Told(MADE, "Ottilie Farrant", "quiet vat"))


def test_a_batch_is_found_again_as_it_was(ledger: Ledger, number: int, cheddar: Forecast) -> None:
    ledger.read(number, MOISTURE, Reading(36.4, date(2024, 5, 9), "oven"))
    ledger.read(number, MILL, Reading(5.41, datetime(2024, 5, 7, 13, 35), "pH meter"))
    tasting = Tasting(date(2024, 11, 7), "Bram Oxley", ("even colour",), ("firm", "close"), ("nutty",), 8.0, True)
    ledger.taste(number, tasting)
    again = Ledger(ledger.path)
    (one,) = again.batches()
    again.close()
    assert (one.told, one.as_made.model) == (Told(MADE, "Ottilie Farrant", "quiet vat"), "0.1-abc")
    assert one.as_made.forecast == as_forecast(cheddar)
    assert one.readings == {
        MOISTURE: Reading(36.4, date(2024, 5, 9), "oven"),
        MILL: Reading(5.41, datetime(2024, 5, 7, 13, 35), "pH meter"),
    }
    assert list(one.tastings.values()) == [tasting]
    assert one.age_days(tasting) == 184
    assert one.liked


def test_what_can_be_read_is_what_the_make_has(cheddar: Forecast) -> None:
    keys = asked(as_forecast(cheddar))
    assert MILL in keys
    assert ("ph", "brine") not in keys
    assert keys.index(("ph", "drain")) < keys.index(MILL) < keys.index(MOISTURE)


def test_a_correction_holds_and_erases_nothing(ledger: Ledger, number: int) -> None:
    for one in (Reading(36.4, MADE), Reading(35.9, instrument="oven"), None):
        ledger.read(number, MOISTURE, one)
    assert ledger.batch(number).readings == {}
    past = ledger.past(number, MOISTURE)
    assert [(one.value, one.taken, one.instrument) for one in past] == [
        (36.4, MADE, ""),
        (35.9, None, "oven"),
        (None, None, ""),
    ]
    tasting = ledger.taste(number, Tasting(date(2024, 9, 1), mark=4.0))
    ledger.retaste(tasting, Tasting(date(2024, 9, 1), mark=6.0, keep=False))
    assert ledger.batch(number).last == Tasting(date(2024, 9, 1), mark=6.0, keep=False)
    ledger.retaste(tasting, Tasting(date(2024, 9, 1), struck=True))
    assert ledger.batch(number).last is None
    ledger.tell(number, Told(MADE, struck=True))
    assert ledger.batches() == ()
    ledger.tell(number, Told(MADE))
    assert [one.number for one in ledger.batches()] == [number]
    with sqlite3.connect(str(ledger.path)) as plain:
        (rows,) = plain.execute("SELECT count(*) FROM tasting_told").fetchone()
        assert rows == 3
        for wrong in ("UPDATE reading SET value = 1", "DELETE FROM tasting_told", "DELETE FROM batch"):
            with pytest.raises(sqlite3.IntegrityError, match="only ever added"):
                plain.execute(wrong)
    plain.close()


@pytest.mark.parametrize(
    ("key", "value"), [(MOISTURE, 101.0), (MILL, -1.0), (MILL, float("nan")), (("ph", "noon"), 5.0), (("x", ""), 1.0)]
)
def test_what_no_reading_can_be_is_refused(ledger: Ledger, number: int, key: tuple[str, str], value: float) -> None:
    with pytest.raises(BatchError, match=r"can't be|no reading"):
        ledger.read(number, key, Reading(value))
    assert ledger.batch(number).readings == {}


def test_what_cannot_be_is_a_sentence(ledger: Ledger, tmp_path: Path) -> None:
    with pytest.raises(BatchError, match="no batch 7"):
        ledger.batch(7)
    with pytest.raises(BatchError, match="can't be used"):
        ledger.taste(7, Tasting(MADE))
    with pytest.raises(BatchError, match="from 0 to 10"):
        Tasting(MADE, mark=11.0)
    with pytest.raises(BatchError, match="kept with a batch"):
        forecast_in('{"outcomes": []}')
    (tmp_path / "other").write_text("no database, and long enough to be taken for one" * 40)
    with pytest.raises(BatchError, match="can't be used"):
        Ledger(tmp_path / "other")


def test_a_ledger_of_the_first_format_is_brought_up(tmp_path: Path, cheddar: Forecast) -> None:
    """What was read before when and with what could be said stays as it was."""
    path = tmp_path / FILE
    with sqlite3.connect(str(path)) as plain:
        plain.executescript(f"{MIGRATIONS[0]} PRAGMA user_version = 1;")
        kept = (cheddar.recipe.name, "format = 1", "cheddar", forecast_text(as_forecast(cheddar)), "0.1-abc")
        plain.execute("INSERT INTO batch VALUES (1, ?, ?, ?, ?, ?, '2024-05-07T12:00:00+00:00')", kept)
        plain.execute("INSERT INTO batch_told VALUES (1, 1, '2024-05-07', '', '', 0, '2024-05-07T12:00:00+00:00')")
        plain.execute("INSERT INTO reading VALUES (1, 1, 'moisture_pct', '', 36.4, '2024-05-07T12:00:00+00:00')")
    plain.close()
    ledger = Ledger(path)
    assert ledger.batch(1).readings == {MOISTURE: Reading(36.4)}
    ledger.read(1, MOISTURE, Reading(36.4, MADE, "oven"))
    assert ledger.batch(1).readings == {MOISTURE: Reading(36.4, MADE, "oven")}
    ledger.close()


def test_when_a_reading_was_taken_is_typed() -> None:
    for text, taken in (
        ("", None), ("2024-05-09", date(2024, 5, 9)), ("13:35", datetime(2024, 5, 7, 13, 35)),
        ("2024-05-08 08:10", datetime(2024, 5, 8, 8, 10)),
    ):  # fmt: skip
        assert read_when(text, MADE) == taken
        assert read_when(when_text(taken), MADE) == taken
    for wrong in ("noon", "25:00", "2024-13-01", "2024-05-07 1", "1:2:3"):
        with pytest.raises(BatchError, match="no moment"):
            read_when(wrong, MADE)
    with pytest.raises(BatchError, match="before the cheese was made"):
        read_when("2024-05-06 23:59", MADE)


def test_a_newer_ledger_is_not_touched(ledger: Ledger) -> None:
    ledger._db.execute(f"PRAGMA user_version = {len(MIGRATIONS) + 1}")
    with pytest.raises(BatchError, match="newer"):
        Ledger(ledger.path)


def test_a_forecast_is_kept_to_the_last_figure(cheddar: Forecast) -> None:
    kept = as_forecast(cheddar)
    assert forecast_in(forecast_text(kept)) == kept


def test_the_house_style_of_the_invented_batches() -> None:
    """Four of five are liked; moisture was measured in all four, fat in two, yield is there, calcium only forecast."""
    kernel.warm_up()
    ledger = invented()
    every = ledger.batches()
    ledger.close()
    chosen = liked(every, "Thistlecombe Cheddar")
    assert (len(every), len(chosen)) == (5, 4)
    own = style_of("Thistlecombe Own", chosen, style("cheddar"))
    (moisture,), (calcium,) = own.windows_of("moisture_pct"), own.windows_of("calcium_mg_per_g_protein")
    assert (moisture.low, moisture.high) == (35.8, 37.8)
    assert moisture.source == "measured in 4 of 4 liked batches"
    assert "not measured" in calcium.source
    (mill,) = (one for one in own.gates if (one.curve, one.at) == MILL)
    assert (mill.low, mill.high) == (5.35, 5.45)
    (fdm,) = own.windows_of("fdm_pct")
    assert fdm.source == "measured in 2 of 4 liked batches"
    assert reads(house.writes(own), key=own.key) == own
