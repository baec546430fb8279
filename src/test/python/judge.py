#!/usr/bin/env python3
"""Judges a roster and its audiograms by 29 CFR 1910.95(g) and 1904.10 and writes determinations.csv.

    judge.py --roster roster.csv --audiograms audiograms.csv --out determinations.csv --as-of 2026-06-30

The job as a script would do it, to measure the register against and to check it: rule set osha, age correction on,
baselines not revised, no decisions. It needs the standard library only, and trusts its files: every row is in order.
With --timings it prints what reading, judging and writing took, in seconds.
"""

import argparse
import csv
import functools
import pathlib
import time
from datetime import date, timedelta

EARS = ("left", "right")
FREQUENCIES = (2000, 3000, 4000)
PURPOSES = {"baseline": 0, "annual": 1, "exit": 2, "retest": 3}  # in order of a day; any other is never judged

SHIFT_SUM = 30  # a mean of 10 dB at the three frequencies
LEVEL_SUM = 75  # a mean of 25 dB HL
RETEST_DAYS = timedelta(days=30)
NOTICE_DAYS = timedelta(days=21)
RECORD_AFTER_RETEST_DAYS = timedelta(days=7)
RECORD_WITHOUT_RETEST_DAYS = timedelta(days=30)

# What a quantity may be is a pair, the lowest and the highest value.
INFINITE = float("inf")
ANY_VALUE = (-INFINITE, INFINITE)

AGE_TABLES = pathlib.Path(__file__).resolve().parents[2] / "main/resources/org/thresholdregister/core/aging"

HEADER = (
    "worker_id,test_date,purpose,ear,rule_set,baseline_date,age_baseline,age_test,"
    "shift_2000,shift_3000,shift_4000,allowance_2000,allowance_3000,allowance_4000,"
    "average_shift,sts,average_level,outcome,recordable,retest_by,notify_by,record_by"
).split(",")


class Worker:
    def __init__(self, birth_date, age_table):
        self.birth_date = birth_date  # None if not given
        self.age_table = age_table  # None if the sex is not given
        self.tests = []


class Test:
    __slots__ = ("date", "purpose", "ears", "comparisons", "retests", "stands_for")

    def __init__(self, test_date, purpose, left, right):
        self.date = test_date
        self.purpose = purpose
        self.ears = (left, right)  # for each ear the ranges at 2000, 3000 and 4000 Hz
        self.comparisons = None  # with the baseline, for each ear
        self.retests = []  # those inside this test's window
        self.stands_for = None  # the test whose place this retest may take


class Comparison:
    __slots__ = ("ages", "shifts", "allowances", "total", "sts")

    def __init__(self, worker, earlier, later, ear):
        self.shifts = [(now[0] - then[1], now[1] - then[0]) for then, now in zip(earlier.ears[ear], later.ears[ear])]
        lowest, highest = sum_of(self.shifts)
        self.ages = self.allowances = None
        if worker.birth_date is not None:
            self.ages = (age_on(earlier.date, worker.birth_date), age_on(later.date, worker.birth_date))
        if self.ages is not None and worker.age_table is not None:
            before, now = (worker.age_table[min(max(age, 20), 60)] for age in self.ages)
            self.allowances = (now[0] - before[0], now[1] - before[1], now[2] - before[2])
            allowance = sum(self.allowances)
            self.total = (lowest - allowance, highest - allowance)
        else:
            self.total = (-INFINITE, highest)  # the allowance is nothing or more
        self.sts = is_at_least(self.total, SHIFT_SUM)


# ---- small things


def sum_of(ranges):
    (a, b), (c, d), (e, f) = ranges
    return (a + c + e, b + d + f)


def is_at_least(values, limit):
    if values[0] >= limit:
        return "yes"
    return "no" if values[1] < limit else "undecided"


def both(one, other):
    if "no" in (one, other):
        return "no"
    return "yes" if one == other == "yes" else "undecided"


def age_on(day, birth_date):
    return day.year - birth_date.year - ((day.month, day.day) < (birth_date.month, birth_date.day))


def plain(values):
    return values[0] if values[0] == values[1] else ""


def mean(total):
    # A third is never half of a hundredth, so no rounding rule is needed.
    return f"{total[0] / 3:.2f}" if total[0] == total[1] else ""


# ---- reading

parse_date = functools.cache(date.fromisoformat)


@functools.cache
def parse_threshold(cell):
    """The hearing levels that a cell allows: a number is one, no response at 95 is 100 or more, a blank is any."""
    if cell.startswith(">"):
        return (int(cell[1:]) + 5, INFINITE)
    if cell in ("", "NR", "DNT", "CNT"):
        return ANY_VALUE
    return (int(cell), int(cell))


def read_age_table(name):
    with open(AGE_TABLES / name, newline="") as file:
        rows = csv.DictReader(line for line in file if not line.startswith("#"))
        return {int(row["age"].split()[0]): tuple(int(row[str(f)]) for f in FREQUENCIES) for row in rows}


def read(roster_path, audiograms_path, as_of):
    tables = {"M": read_age_table("osha-table-f1-male.csv"), "F": read_age_table("osha-table-f2-female.csv")}
    workers = {}
    with open(roster_path, newline="", encoding="utf-8") as file:
        for row in csv.DictReader(file):
            birth_date = parse_date(row["birth_date"]) if row["birth_date"] else None
            workers[row["worker_id"]] = Worker(birth_date, tables.get(row["sex"]))

    with open(audiograms_path, newline="", encoding="utf-8") as file:
        rows = csv.reader(file)
        column = {name: i for i, name in enumerate(next(rows))}
        worker_id, test_date, purpose = column["worker_id"], column["test_date"], column["purpose"]
        left, right = ([column[f"{ear}_{f}"] for f in FREQUENCIES] for ear in EARS)
        for row in rows:
            day = parse_date(row[test_date])
            if row[purpose] in PURPOSES and day <= as_of:
                workers[row[worker_id]].tests.append(
                    Test(
                        day,
                        row[purpose],
                        [parse_threshold(row[i]) for i in left],
                        [parse_threshold(row[i]) for i in right],
                    )
                )
    return workers


# ---- judging


def judge(worker_id, worker, as_of):
    """The rows of one worker's determinations."""
    tests = sorted(worker.tests, key=lambda test: (test.date, PURPOSES[test.purpose]))
    if not tests:
        return []
    baseline = next((test for test in tests if test.purpose == "baseline"), tests[0])
    after_baseline = tests[tests.index(baseline) + 1 :]
    compare_and_find_retests(worker, baseline, after_baseline)

    rows = []
    references = [baseline, baseline]  # what each ear's shift is measured from for the injury log
    for test in tests:
        for ear in (0, 1):
            if test.comparisons is None:
                outcome = "baseline" if test is baseline else "before-baseline"
                rows.append(row_of(worker_id, test, ear, None, None, outcome))
            elif test.stands_for is not None:
                rows.append(row_of(worker_id, test, ear, baseline, test.comparisons[ear], "retest"))
            else:
                rows.append(judge_by_itself(worker_id, worker, baseline, references, test, ear, as_of))
    return rows


def compare_and_find_retests(worker, baseline, tests):
    """A retest takes the place of the latest test, up to thirty days before it, that shows a shift in either ear."""
    opener = None
    for test in tests:
        test.comparisons = [Comparison(worker, baseline, test, ear) for ear in (0, 1)]
        if test.purpose == "retest" and opener is not None and test.date - opener.date <= RETEST_DAYS:
            test.stands_for = opener
            opener.retests.append(test)
        elif "yes" in (test.comparisons[0].sts, test.comparisons[1].sts):
            opener = test


def judge_by_itself(worker_id, worker, baseline, references, test, ear, as_of):
    own = test.comparisons[ear]
    retest = test.retests[-1] if test.retests else None
    if retest is not None and retest.comparisons[ear].sts == "undecided":
        retest = None  # this ear stays with the test itself
    settled = retest or test

    if retest is not None:
        if retest.comparisons[ear].sts == "yes":
            outcome = "confirmed"
        else:
            outcome = "not-confirmed" if own.sts == "yes" else "no-shift"
    elif own.sts == "yes":
        outcome = "awaiting-retest" if as_of - test.date <= RETEST_DAYS else "confirmed"
    else:
        outcome = "no-shift" if own.sts == "no" else "undecided"

    retest_by = notify_by = record_by = ""
    if outcome == "confirmed":
        recordable = is_recordable(worker, baseline, references[ear], settled, ear)
        notify_by = settled.date + NOTICE_DAYS
        if recordable == "yes":
            references[ear] = settled
            if retest is not None:
                record_by = retest.date + RECORD_AFTER_RETEST_DAYS
            else:
                record_by = test.date + RECORD_WITHOUT_RETEST_DAYS
    elif outcome == "awaiting-retest":
        recordable = "awaiting-retest"
        retest_by = test.date + RETEST_DAYS
        notify_by = test.date + NOTICE_DAYS
    else:
        recordable = "undecided" if outcome == "undecided" else "no"
    return row_of(worker_id, test, ear, baseline, own, outcome, recordable, retest_by, notify_by, record_by)


def is_recordable(worker, baseline, reference, settled, ear):
    """Whether a confirmed shift is a case: a shift from the reference, and a mean level of 25 dB or more."""
    shifted = Comparison(worker, reference, settled, ear).sts
    if reference is not baseline and (shifted == "no" or settled.date <= reference.date):
        return "already-recorded"
    return both(shifted, is_at_least(sum_of(settled.ears[ear]), LEVEL_SUM))


# ---- writing


def row_of(
    worker_id, test, ear, baseline, comparison, outcome, recordable="", retest_by="", notify_by="", record_by=""
):
    if comparison is None:
        compared = [""] * 11
    else:
        compared = [
            baseline.date,
            *(comparison.ages or ("", "")),
            *map(plain, comparison.shifts),
            *(comparison.allowances or ("", "", "")),
            mean(comparison.total),
            comparison.sts,
        ]
    level = mean(sum_of(test.ears[ear]))
    identity = (worker_id, test.date, test.purpose, EARS[ear], "osha")
    return (*identity, *compared, level, outcome, recordable, retest_by, notify_by, record_by)


def write(path, rows):
    with open(path, "w", newline="", encoding="utf-8") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(HEADER)
        writer.writerows(rows)


def main():
    options = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    options.add_argument("--roster", required=True)
    options.add_argument("--audiograms", required=True)
    options.add_argument("--out", required=True)
    options.add_argument("--as-of", required=True, type=date.fromisoformat)
    options.add_argument("--timings", action="store_true")
    given = options.parse_args()

    began = time.perf_counter()
    workers = read(given.roster, given.audiograms, given.as_of)
    have_read = time.perf_counter()
    rows = []
    for worker_id in sorted(workers):
        rows.extend(judge(worker_id, workers[worker_id], given.as_of))
    have_judged = time.perf_counter()
    write(given.out, rows)
    have_written = time.perf_counter()
    if given.timings:
        print(f"read {have_read - began:.3f}")
        print(f"judge {have_judged - have_read:.3f}")
        print(f"write {have_written - have_judged:.3f}")


if __name__ == "__main__":
    main()
