"""The ledger of made batches: one SQLite file in the user's data folder, to which is only ever added.

A correction is a new line that holds from then on; the old one stays, and triggers refuse to change or erase any.
"""

from __future__ import annotations

import sqlite3
from collections import defaultdict
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import UTC, date, datetime
from pathlib import Path

from designer.batch.record import (
    AsMade,
    Batch,
    BatchError,
    Key,
    Reading,
    Tasting,
    Told,
    forecast_in,
    forecast_text,
    possible,
    split_words,
)
from designer.language import say

FILE = "batches.sqlite"
BUSY_S = 5.0
"""How long another window that writes is waited for."""
MIGRATIONS = (
    """
    CREATE TABLE batch (
        id INTEGER PRIMARY KEY, recipe TEXT NOT NULL, recipe_text TEXT NOT NULL, style TEXT NOT NULL,
        forecast TEXT NOT NULL, model TEXT NOT NULL, noted TEXT NOT NULL
    ) STRICT;
    CREATE TABLE batch_told (
        id INTEGER PRIMARY KEY, batch INTEGER NOT NULL REFERENCES batch, made TEXT NOT NULL, maker TEXT NOT NULL,
        remark TEXT NOT NULL, struck INTEGER NOT NULL, noted TEXT NOT NULL
    ) STRICT;
    CREATE TABLE reading (
        id INTEGER PRIMARY KEY, batch INTEGER NOT NULL REFERENCES batch, quantity TEXT NOT NULL, moment TEXT NOT NULL,
        value REAL, noted TEXT NOT NULL
    ) STRICT;
    CREATE TABLE tasting (
        id INTEGER PRIMARY KEY, batch INTEGER NOT NULL REFERENCES batch, noted TEXT NOT NULL
    ) STRICT;
    CREATE TABLE tasting_told (
        id INTEGER PRIMARY KEY, tasting INTEGER NOT NULL REFERENCES tasting, tasted TEXT NOT NULL,
        taster TEXT NOT NULL, appearance TEXT NOT NULL, body TEXT NOT NULL, flavour TEXT NOT NULL, mark REAL,
        keep INTEGER, remark TEXT NOT NULL, struck INTEGER NOT NULL, noted TEXT NOT NULL
    ) STRICT;
    CREATE INDEX batch_told_of ON batch_told (batch);
    CREATE INDEX reading_of ON reading (batch);
    CREATE INDEX tasting_of ON tasting (batch);
    CREATE INDEX tasting_told_of ON tasting_told (tasting);
    """
    + "".join(
        f"CREATE TRIGGER {table}_{what} BEFORE {what} ON {table} BEGIN SELECT RAISE(ABORT, 'only ever added to'); END;"
        for table in ("batch", "batch_told", "reading", "tasting", "tasting_told")
        for what in ("update", "delete")
    ),
    """
    ALTER TABLE reading ADD COLUMN taken TEXT NOT NULL DEFAULT '';
    ALTER TABLE reading ADD COLUMN instrument TEXT NOT NULL DEFAULT '';
    """,
)
"""From each format to the next; the number of them is the format (PRAGMA user_version)."""


@dataclass(frozen=True, slots=True)
class Past:
    """What a reading was before, and since when; None: it was taken back."""

    value: float | None
    noted: datetime
    taken: date | None = None
    instrument: str = ""


class Ledger:
    """The open ledger. Every method raises BatchError where the file can't be read or written."""

    def __init__(self, path: Path | None) -> None:
        """Open, or begin, the ledger at a path; None: one that is gone when it is closed."""
        self.path = path
        with self._told():
            if path is not None:
                path.parent.mkdir(parents=True, exist_ok=True)
            self._db = sqlite3.connect(path or ":memory:", timeout=BUSY_S, isolation_level=None)
            try:
                self._bring_up()
            except BaseException:
                self._db.close()
                raise

    def _bring_up(self) -> None:
        self._db.execute("PRAGMA foreign_keys = ON")
        self._db.execute("PRAGMA journal_mode = WAL")
        (format_,) = self._db.execute("PRAGMA user_version").fetchone()
        if format_ > len(MIGRATIONS):
            raise BatchError(
                say("The ledger of batches has format {format}, newer than this program reads.", format=format_)
            )
        for number, script in enumerate(MIGRATIONS[format_:], format_ + 1):
            self._db.executescript(f"BEGIN IMMEDIATE; {script} PRAGMA user_version = {number}; COMMIT;")

    @contextmanager
    def _told(self) -> Iterator[None]:
        """What the file refuses, as a sentence."""
        try:
            yield
        except (sqlite3.Error, OSError) as error:
            raise BatchError(
                say("The ledger of batches{where} can't be used: {error}.", where=self._where(), error=error)
            ) from None

    def _where(self) -> str:
        return f" {self.path}" if self.path is not None else ""

    @contextmanager
    def _writing(self) -> Iterator[str]:
        """All of it or nothing; gives the time it is noted at."""
        with self._told():
            self._db.execute("BEGIN IMMEDIATE")
            try:
                yield datetime.now(UTC).isoformat(timespec="seconds")
            except BaseException:
                self._db.execute("ROLLBACK")
                raise
            self._db.execute("COMMIT")

    def close(self) -> None:
        """Let go of the file."""
        self._db.close()

    # ---- adding

    def note(self, as_made: AsMade, told: Told) -> int:
        """Note a made batch; its number."""
        with self._writing() as now:
            row = (as_made.recipe, as_made.recipe_text, as_made.style, forecast_text(as_made.forecast), as_made.model)
            number = self._add("batch", *row, now)
            self._tell(number, told, now)
        return number

    def tell(self, batch: int, told: Told) -> None:
        """Say of a batch from now on; `struck` takes it back."""
        with self._writing() as now:
            self._tell(batch, told, now)

    def _tell(self, batch: int, told: Told, now: str) -> None:
        self._add("batch_told", batch, told.made.isoformat(), told.maker, told.remark, int(told.struck), now)

    def read(self, batch: int, key: Key, one: Reading | None) -> None:
        """Note a reading in place of the one before; None takes it back."""
        if one is not None:
            possible(key, one.value)
        with self._writing() as now:
            if one is None:
                self._add("reading", batch, *key, None, now, "", "")
            else:
                taken = one.taken.isoformat() if one.taken is not None else ""
                self._add("reading", batch, *key, one.value, now, taken, one.instrument)

    def taste(self, batch: int, tasting: Tasting) -> int:
        """Note a tasting; its number."""
        with self._writing() as now:
            number = self._add("tasting", batch, now)
            self._retaste(number, tasting, now)
        return number

    def retaste(self, number: int, tasting: Tasting) -> None:
        """Correct a tasting; `struck` takes it back."""
        with self._writing() as now:
            self._retaste(number, tasting, now)

    def _retaste(self, number: int, one: Tasting, now: str) -> None:
        words = ("; ".join(part) for part in (one.appearance, one.body, one.flavour))
        keep = None if one.keep is None else int(one.keep)
        self._add(
            "tasting_told", number, one.tasted.isoformat(), one.taster, *words, one.mark, keep, one.remark,
            int(one.struck), now,
        )  # fmt: skip

    def _add(self, table: str, *values: object) -> int:
        marks = ", ".join("?" * len(values))
        return int(self._db.execute(f"INSERT INTO {table} VALUES (NULL, {marks})", values).lastrowid or 0)

    # ---- reading

    def batches(self) -> tuple[Batch, ...]:
        """Every batch that is not struck, the last made first."""
        with self._told():
            found = self._all()
        kept = [one for one in found if not one.told.struck]
        return tuple(sorted(kept, key=lambda one: (one.told.made, one.number), reverse=True))

    def batch(self, number: int) -> Batch:
        """One batch, struck or not."""
        with self._told():
            found = self._all(number)
        if not found:
            raise BatchError(say("There is no batch {number} in the ledger.", number=number))
        return found[0]

    def past(self, batch: int, key: Key) -> tuple[Past, ...]:
        """All a reading ever was, the first one first: the last holds."""
        with self._told():
            rows = self._db.execute(
                "SELECT value, noted, taken, instrument FROM reading"
                " WHERE batch = ? AND quantity = ? AND moment = ? ORDER BY id",
                (batch, *key),
            ).fetchall()
        return tuple(
            Past(value, datetime.fromisoformat(noted), _taken(taken), instrument)
            for value, noted, taken, instrument in rows
        )

    def _all(self, number: int | None = None) -> list[Batch]:
        told = {of: Told(date.fromisoformat(made), maker, remark, bool(struck)) for of, made, maker, remark, struck in
                self._db.execute("SELECT batch, made, maker, remark, struck FROM batch_told ORDER BY id")}  # fmt: skip
        readings: dict[int, dict[Key, Reading]] = defaultdict(dict)
        for of, quantity, moment, value, taken, instrument in self._db.execute(
            "SELECT batch, quantity, moment, value, taken, instrument FROM reading ORDER BY id"
        ):
            readings[of].pop((quantity, moment), None)
            if value is not None:
                readings[of][quantity, moment] = Reading(value, _taken(taken), instrument)
        tastings = self._tastings()
        only = "" if number is None else " WHERE id = ?"
        return [
            Batch(
                of, AsMade(recipe, text, style, forecast_in(forecast), model), told[of],
                datetime.fromisoformat(noted), readings[of], dict(sorted(tastings[of].items())),
            )
            for of, recipe, text, style, forecast, model, noted in self._db.execute(
                f"SELECT id, recipe, recipe_text, style, forecast, model, noted FROM batch{only} ORDER BY id",
                () if number is None else (number,),
            )
        ]  # fmt: skip

    def _tastings(self) -> dict[int, dict[int, Tasting]]:
        found: dict[int, dict[int, Tasting]] = defaultdict(dict)
        for of, number, tasted, taster, *parts, mark, keep, remark, struck in self._db.execute(
            "SELECT batch, tasting, tasted, taster, appearance, body, flavour, mark, keep, remark, struck"
            " FROM tasting_told JOIN tasting ON tasting.id = tasting_told.tasting ORDER BY tasting_told.id"
        ):
            appearance, body, flavour = (tuple(split_words(part)) for part in parts)
            found[of].pop(number, None)
            if not struck:
                kept = None if keep is None else bool(keep)
                found[of][number] = Tasting(
                    date.fromisoformat(tasted), taster, appearance, body, flavour, mark, kept, remark
                )
        return found


def _taken(text: str) -> date | None:
    """When a reading was taken, as it is kept: a day, or a day and time."""
    if not text:
        return None
    return datetime.fromisoformat(text) if "T" in text else date.fromisoformat(text)
