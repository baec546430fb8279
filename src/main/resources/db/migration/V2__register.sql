-- Texts that are not given are empty, never null. Thresholds stand as in the files: 25, >95, NR, DNT, CNT, or null.

create sequence worker_seq start with 1 increment by 100;
create sequence audiogram_seq start with 1 increment by 100;
create sequence decision_seq start with 1 increment by 100;
create sequence determination_seq start with 1 increment by 100;
create sequence follow_up_seq start with 1 increment by 100;
create sequence import_batch_seq start with 1 increment by 1;

create table import_batch (
    id                  bigint      not null primary key,
    imported_at         timestamp with time zone not null,
    imported_by         varchar(40) not null,
    new_workers         integer     not null,
    changed_workers     integer     not null,
    unchanged_workers   integer     not null,
    new_tests           integer     not null,
    unchanged_tests     integer     not null,
    new_decisions       integer     not null,
    unchanged_decisions integer     not null,
    rows_left_out       integer     not null
);

create table import_batch_file (
    import_batch_id bigint       not null references import_batch (id),
    kind            varchar(20)  not null,
    name            varchar(400) not null,
    sha256          varchar(64)  not null,
    primary key (import_batch_id, kind)
);

create table worker (
    id            bigint       not null primary key,
    worker_id     varchar(100) not null,
    birth_date    date,
    sex           varchar(1),
    family_name   varchar(200) not null,
    given_name    varchar(200) not null,
    hire_date     date,
    end_date      date,
    site          varchar(200) not null,
    department    varchar(200) not null,
    job_title     varchar(200) not null,
    noise_group   varchar(200) not null,
    twa_dba       numeric(12, 9),
    enrolled_from date,
    email         varchar(320) not null,
    language      varchar(20)  not null,
    search        varchar(510) not null,
    import_batch_id bigint references import_batch (id),
    version       integer      not null,
    constraint worker_worker_id_unique unique (worker_id)
);

create index worker_site on worker (site, department);
create index worker_department on worker (department);
create index worker_search on worker (search, id);
create index worker_import_batch on worker (import_batch_id);

create table audiogram (
    id                bigint       not null primary key,
    worker_id         bigint       not null references worker (id),
    test_date         date         not null,
    purpose           varchar(20)  not null,
    left_500          varchar(4),
    left_1000         varchar(4),
    left_2000         varchar(4),
    left_3000         varchar(4),
    left_4000         varchar(4),
    left_6000         varchar(4),
    left_8000         varchar(4),
    right_500         varchar(4),
    right_1000        varchar(4),
    right_2000        varchar(4),
    right_3000        varchar(4),
    right_4000        varchar(4),
    right_6000        varchar(4),
    right_8000        varchar(4),
    hours_since_noise numeric(15, 9),
    protectors_worn   boolean,
    tester            varchar(200)  not null,
    instrument        varchar(200)  not null,
    transducer        varchar(200)  not null,
    remark            varchar(2000) not null,
    import_batch_id   bigint        not null references import_batch (id),
    constraint audiogram_test_unique unique (worker_id, test_date, purpose)
);

create index audiogram_import_batch on audiogram (import_batch_id);

create table decision (
    id              bigint        not null primary key,
    worker_id       bigint        not null references worker (id),
    ears            varchar(5)    not null,
    test_date       date          not null,
    kind            varchar(20)   not null,
    decided_on      date          not null,
    decided_by      varchar(200)  not null,
    reason          varchar(2000) not null,
    entered_by      varchar(40)   not null,
    entered_at      timestamp with time zone not null,
    import_batch_id bigint references import_batch (id)
);

create index decision_worker on decision (worker_id);
create index decision_import_batch on decision (import_batch_id);

-- When a worker's record was last judged, and from which day on time alone may change the judgement.
create table worker_judgement (
    worker_id      bigint not null primary key references worker (id),
    judged_on      date   not null,
    next_change_on date
);

create index worker_judgement_next_change on worker_judgement (next_change_on);
create index worker_judgement_judged_on on worker_judgement (judged_on);

-- What the engine found, kept for lists and counts. The sums are of 2000, 3000 and 4000 Hz in dB, null where they are
-- no plain numbers; shift_sum is after the age allowance.
create table determination (
    id             bigint      not null primary key,
    audiogram_id   bigint      not null references audiogram (id),
    worker_id      bigint      not null references worker (id),
    ear            varchar(5)  not null,
    test_date      date        not null,
    purpose        varchar(20) not null,
    rule_set       varchar(20) not null,
    baseline_date  date,
    age_baseline   integer,
    age_test       integer,
    shift_2000     integer,
    shift_3000     integer,
    shift_4000     integer,
    allowance_2000 integer,
    allowance_3000 integer,
    allowance_4000 integer,
    shift_sum      integer,
    sts            varchar(10),
    level_sum      integer,
    outcome        varchar(20) not null,
    recordable     varchar(20),
    retest_by      date,
    notify_by      date,
    record_by      date,
    settled_on     date,
    judged_as_of   date        not null,
    constraint determination_unique unique (audiogram_id, ear)
);

create index determination_worker on determination (worker_id);
create index determination_shift on determination (test_date, sts, outcome, worker_id);

create table follow_up (
    id        bigint      not null primary key,
    worker_id bigint      not null references worker (id),
    kind      varchar(20) not null,
    due_date  date        not null,
    test_date date,
    ears      varchar(5)  not null
);

create index follow_up_worker on follow_up (worker_id);
create index follow_up_due on follow_up (due_date, id);
create index follow_up_kind on follow_up (kind, due_date, id);
