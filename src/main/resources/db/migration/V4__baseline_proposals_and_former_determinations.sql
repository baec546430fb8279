create sequence baseline_proposal_seq start with 1 increment by 100;

-- The baseline revisions that wait for a professional, kept for the list; written again whenever a worker is judged.
create table baseline_proposal (
    id               bigint      not null primary key,
    worker_id        bigint      not null references worker (id),
    ear              varchar(5)  not null,
    kind             varchar(10) not null,
    from_date        date        not null,
    to_date          date        not null,
    first_test_date  date        not null,
    second_test_date date        not null,
    constraint baseline_proposal_unique unique (worker_id, ear)
);

create index baseline_proposal_second_test on baseline_proposal (second_test_date, id);

-- A mark without an edition is of a judgement before editions were kept: the worker is judged anew.
alter table worker_judgement add column rule_edition integer default 0 not null;
alter table worker_judgement alter column rule_edition drop default;

-- What a determination rests on. Those on record were made by the first edition, with the allowance and without proposals.
alter table determination add column rule_set_edition varchar(20) default '2026-11' not null;
alter table determination alter column rule_set_edition drop default;
alter table determination add column age_correction varchar(3) default 'on' not null;
alter table determination alter column age_correction drop default;
alter table determination add column baseline_revision varchar(10) default 'off' not null;
alter table determination alter column baseline_revision drop default;
alter table determination add column rule_edition integer default 1 not null;
alter table determination alter column rule_edition drop default;

create sequence determination_history_seq start with 1 increment by 100;

-- Determinations as they were made, once another has taken their place or the test is judged no more. Nothing changes or
-- removes a row. The first columns are those of determination.
create table determination_history (
    id                bigint      not null primary key,
    audiogram_id      bigint      not null references audiogram (id),
    worker_id         bigint      not null references worker (id),
    ear               varchar(5)  not null,
    test_date         date        not null,
    purpose           varchar(20) not null,
    rule_set          varchar(20) not null,
    baseline_date     date,
    age_baseline      integer,
    age_test          integer,
    shift_2000        integer,
    shift_3000        integer,
    shift_4000        integer,
    allowance_2000    integer,
    allowance_3000    integer,
    allowance_4000    integer,
    shift_sum         integer,
    sts               varchar(10),
    level_sum         integer,
    outcome           varchar(20) not null,
    recordable        varchar(20),
    retest_by         date,
    notify_by         date,
    record_by         date,
    settled_on        date,
    judged_as_of      date        not null,
    rule_set_edition  varchar(20) not null,
    age_correction    varchar(3)  not null,
    baseline_revision varchar(10) not null,
    rule_edition      integer     not null,
    replaced_at       timestamp with time zone not null,
    replaced_on       date        not null,
    cause             varchar(20) not null,
    decision_id       bigint references decision (id),
    import_batch_id   bigint references import_batch (id)
);

create index determination_history_worker on determination_history (worker_id);
create index determination_history_audiogram on determination_history (audiogram_id);
create index determination_history_decision on determination_history (decision_id);
create index determination_history_import_batch on determination_history (import_batch_id);

create sequence alteration_seq start with 1 increment by 100;

-- A determination that changed after the worker had been told of it, or a case had been recorded on it. It stays open
-- until a person acknowledges it with a reason. What was determined before stands in the history row.
create table alteration (
    id                    bigint     not null primary key,
    worker_id             bigint     not null references worker (id),
    ear                   varchar(5) not null,
    test_date             date       not null,
    former_id             bigint     not null references determination_history (id),
    notice_given_on       date,
    recorded_on           date,
    now_outcome           varchar(20),
    now_recordable        varchar(20),
    now_baseline_date     date,
    now_shift_sum         integer,
    altered_on            date       not null,
    acknowledged_at       timestamp with time zone,
    acknowledged_on       date,
    acknowledged_by       varchar(40),
    acknowledgement       varchar(2000)
);

create index alteration_worker on alteration (worker_id);
create index alteration_former on alteration (former_id);
create index alteration_open on alteration (acknowledged_at, altered_on, id);
