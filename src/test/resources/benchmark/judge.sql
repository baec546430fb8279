-- Judges a roster and its audiograms by 29 CFR 1910.95(g) and 1904.10, in DuckDB, and writes determinations.csv: the
-- job as queries would do it, to measure the register against and to check it. Rule set osha, age correction on,
-- baselines not revised, no decisions. It trusts its files: every row is in order.
--
-- Given: the variables roster, audiograms, age_tables (a folder), out, and as_of.
-- Null is a number that is not known. Nothing bounds it on either side, so it passes through every sum and difference.

-- [read]

create type purpose as enum ('baseline', 'annual', 'exit', 'retest'); -- in the order of a day; no other is judged
create type ear as enum ('left', 'right');

-- A level is a number of dB. No response at 95 is no number, and at least 100.
create macro level(cell) as try_cast(cell as smallint);
create macro at_least(cell) as
    case when cell[1] = '>' then try_cast(cell[2:] as smallint) + 5 else try_cast(cell as smallint) end;

create macro age_table(name) as table
select
    substr(age, 1, 2)::smallint as age,
    "2000"::smallint as at_2000,
    "3000"::smallint as at_3000,
    "4000"::smallint as at_4000
from read_csv(getvariable('age_tables') || '/' || name, skip = 2, header = true, delim = ',');

create table age_correction as
select 'M' as sex, * from age_table('osha-table-f1-male.csv')
union all
select 'F' as sex, * from age_table('osha-table-f2-female.csv');

create table roster as
select row_number() over (order by worker_id)::integer as worker, worker_id, birth_date, sex
from read_csv(getvariable('roster'), header = true, all_varchar = true, types = {'birth_date': 'date'});

create table test as
select
    worker,
    row_number() over (partition by worker order by test_date, purpose)::smallint as test_no,
    test_date,
    purpose,
    level(left_2000) as left_2000,
    level(left_3000) as left_3000,
    level(left_4000) as left_4000,
    at_least(left_2000) + at_least(left_3000) + at_least(left_4000) as left_at_least,
    level(right_2000) as right_2000,
    level(right_3000) as right_3000,
    level(right_4000) as right_4000,
    at_least(right_2000) + at_least(right_3000) + at_least(right_4000) as right_at_least
from (
    select * replace (try_cast(purpose as purpose) as purpose)
    from read_csv(getvariable('audiograms'), header = true, all_varchar = true, types = {'test_date': 'date'})
)
join roster using (worker_id)
where purpose is not null and test_date <= getvariable('as_of')::date;

-- [judge]

-- Completed years.
create macro age_on(day, birth_date) as (
    year(day) - year(birth_date) - ((month(day), day(day)) < (month(birth_date), day(birth_date)))::integer
)::smallint;

create macro reaches(lowest, highest, decibels) as
    case when lowest >= decibels then 'yes' when highest < decibels then 'no' else 'undecided' end;

-- A standard threshold shift is a mean of 10 dB after the allowance, which is nothing or more where it is not known.
create macro is_shift(level, at_least, correction, level_before, at_least_before, correction_before) as
    reaches(
        at_least - level_before - (correction - correction_before),
        level - at_least_before - coalesce(correction - correction_before, 0),
        30);

-- The age corrections on the day of a test are not known where sex or birth date is not given.
create table test_at_age as
with aged as (
    select test.*, sex, age_on(test_date, birth_date) as age from test join roster using (worker)
)
select aged.*, at_2000, at_3000, at_4000, at_2000 + at_3000 + at_4000 as correction
from aged
left join age_correction
    on age_correction.sex = aged.sex
    and age_correction.age = case when aged.age < 20 then 20 when aged.age > 60 then 60 else aged.age end;

-- Every test of an ear; level, at_least and correction are sums over the three frequencies.
create view measured as
select
    worker, test_no, 'left'::ear as ear, test_date, purpose, age, at_2000, at_3000, at_4000, correction,
    left_2000 as level_2000, left_3000 as level_3000, left_4000 as level_4000,
    left_2000 + left_3000 + left_4000 as level, left_at_least as at_least
from test_at_age
union all
select
    worker, test_no, 'right', test_date, purpose, age, at_2000, at_3000, at_4000, correction,
    right_2000, right_3000, right_4000,
    right_2000 + right_3000 + right_4000, right_at_least
from test_at_age;

-- The first test with that purpose; with none, the first test.
create table baseline as
select measured.*
from measured
join (
    select worker, coalesce(min(test_no) filter (where purpose = 'baseline'), 1) as test_no
    from test
    group by worker
) using (worker, test_no);

-- Each later test beside the baseline.
create table compared as
select
    now.worker, now.test_no, now.ear, now.test_date, now.purpose, now.level, now.at_least, now.correction,
    baseline.test_date as baseline_date,
    baseline.age as age_baseline,
    now.age as age_test,
    now.level_2000 - baseline.level_2000 as shift_2000,
    now.level_3000 - baseline.level_3000 as shift_3000,
    now.level_4000 - baseline.level_4000 as shift_4000,
    now.at_2000 - baseline.at_2000 as allowance_2000,
    now.at_3000 - baseline.at_3000 as allowance_3000,
    now.at_4000 - baseline.at_4000 as allowance_4000,
    now.level - baseline.level - (now.correction - baseline.correction) as shift,
    is_shift(now.level, now.at_least, now.correction, baseline.level, baseline.at_least, baseline.correction) as sts
from measured as now
join baseline using (worker, ear)
where now.test_no > baseline.test_no;

-- A retest takes the place of the latest test, up to thirty days before it, that shows a shift in either ear; any other
-- retest is judged by itself and may open a window of its own. So the tests that matter are walked one by one.
create table stand_in as
with recursive event as (
    select *, row_number() over (partition by worker order by test_no) as event_no
    from (
        select worker, test_no, test_date, purpose, bool_or(sts = 'yes') as shifted
        from compared
        group by all
    )
    where shifted or purpose = 'retest'
),
walk as (
    select
        worker,
        event_no,
        test_no,
        null::smallint as stands_for,
        case when shifted then test_no end as opened_by,
        test_date as opened_on
    from event
    where event_no = 1
    union all
    select
        event.worker,
        event.event_no,
        event.test_no,
        case when in_window then opened_by end,
        case when in_window or not shifted then opened_by else event.test_no end,
        case when in_window or not shifted then opened_on else test_date end
    from walk
    join event on event.worker = walk.worker and event.event_no = walk.event_no + 1
    cross join lateral (
        select event.purpose = 'retest' and opened_by is not null and event.test_date <= opened_on + 30 as in_window
    )
)
select worker, test_no, stands_for
from walk
where stands_for is not null;

-- The last retest in a window settles an ear, unless it leaves that ear undecided.
create table retest as
select * exclude (place)
from (
    select
        worker, stands_for as test_no, ear, test_no as retest_no, test_date as retest_date, sts,
        row_number() over (partition by worker, stands_for, ear order by test_no desc) as place
    from stand_in
    join compared using (worker, test_no)
)
where place = 1 and sts <> 'undecided';

-- The tests that show no shift and have no retest need no second look.
create table questioned as
select
    compared.worker,
    compared.test_no,
    compared.ear,
    test_date,
    retest_no,
    retest_date,
    case
        when stand_in.stands_for is not null then 'retest'
        when retest.sts = 'yes' then 'confirmed'
        when retest.sts = 'no' and compared.sts = 'yes' then 'not-confirmed'
        when retest.sts = 'no' or compared.sts = 'no' then 'no-shift'
        when compared.sts = 'undecided' then 'undecided'
        when getvariable('as_of')::date <= test_date + 30 then 'awaiting-retest'
        else 'confirmed'
    end as outcome
from compared
left join stand_in using (worker, test_no)
left join retest using (worker, test_no, ear)
where compared.sts <> 'no' or stand_in.stands_for is not null or retest.sts is not null;

-- What settled each shift that stands; the level reached is a mean of 25 dB HL.
create table confirmed as
select
    questioned.worker,
    questioned.test_no,
    questioned.ear,
    settled.test_date as settled_on,
    settled.level,
    settled.at_least,
    settled.correction,
    reaches(settled.at_least, settled.level, 75) as level_reached
from questioned
join compared as settled
    on settled.worker = questioned.worker
    and settled.ear = questioned.ear
    and settled.test_no = coalesce(questioned.retest_no, questioned.test_no)
where outcome = 'confirmed';

-- What a shift is measured from for the injury log: the baseline, then each case in turn. The next case is the first
-- confirmed shift from the last one, settled later, at a mean level of 25 dB or more.
create table reference as
with recursive reference as (
    select worker, ear, 0 as cases, 0 as test_no, test_date as settled_on, level, at_least, correction
    from baseline
    where (worker, ear) in (select (worker, ear) from confirmed)
    union all
    select
        now.worker, now.ear, reference.cases + 1, now.test_no, now.settled_on, now.level, now.at_least, now.correction
    from reference
    join confirmed as now using (worker, ear)
    where now.test_no > reference.test_no
        and (reference.cases = 0 or now.settled_on > reference.settled_on)
        and is_shift(
            now.level, now.at_least, now.correction,
            reference.level, reference.at_least, reference.correction) = 'yes'
        and level_reached = 'yes'
    qualify row_number() over (partition by now.worker, now.ear order by now.test_no) = 1
)
from reference;

create table recorded as
select
    now.worker,
    now.test_no,
    now.ear,
    is_shift(
        now.level, now.at_least, now.correction,
        reference.level, reference.at_least, reference.correction) as shifted,
    case
        when reference.cases > 0 and (shifted = 'no' or now.settled_on <= reference.settled_on) then 'already-recorded'
        when shifted = 'no' or level_reached = 'no' then 'no'
        when shifted = 'yes' and level_reached = 'yes' then 'yes'
        else 'undecided'
    end as recordable
from confirmed as now
asof join reference
    on reference.worker = now.worker and reference.ear = now.ear and reference.test_no < now.test_no;

create table answered as
select
    worker,
    test_no,
    ear,
    outcome,
    case
        when outcome = 'confirmed' then recorded.recordable
        when outcome in ('no-shift', 'not-confirmed') then 'no'
        when outcome <> 'retest' then outcome -- undecided or awaiting-retest
    end as recordable,
    case when outcome = 'awaiting-retest' then test_date + 30 end as retest_by,
    case when outcome in ('confirmed', 'awaiting-retest') then coalesce(retest_date, test_date) + 21 end as notify_by,
    case when recorded.recordable = 'yes' then coalesce(retest_date + 7, test_date + 30) end as record_by
from questioned
left join recorded using (worker, test_no, ear);

create view determination as
select
    compared.* exclude (at_least, correction),
    coalesce(outcome, 'no-shift') as outcome,
    case when outcome is null then 'no' else recordable end as recordable,
    retest_by,
    notify_by,
    record_by
from compared
left join answered using (worker, test_no, ear)
union all by name
select
    measured.worker, measured.test_no, measured.ear, measured.test_date, measured.purpose, measured.level,
    case when measured.test_no = baseline.test_no then 'baseline' else 'before-baseline' end as outcome
from measured
join baseline using (worker, ear)
where measured.test_no <= baseline.test_no;

-- [write]

-- A third is never half of a hundredth, so that any rounding gives the same.
create macro mean(total) as (total / 3.0)::decimal(6, 2);

copy (
    select
        worker_id, test_date, purpose, ear, 'osha' as rule_set, baseline_date, age_baseline, age_test,
        shift_2000, shift_3000, shift_4000, allowance_2000, allowance_3000, allowance_4000,
        mean(shift) as average_shift, sts, mean(level) as average_level,
        outcome, recordable, retest_by, notify_by, record_by
    from determination
    join roster using (worker)
    order by worker, test_no, ear
) to (getvariable('out')) (format csv, header, delimiter ',');
