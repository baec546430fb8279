-- Tests entered by hand come from no import and carry a signature instead.
alter table audiogram alter column import_batch_id drop not null;
alter table audiogram add column room varchar(200) default '' not null;
alter table audiogram alter column room drop default;
alter table audiogram add column signed_by varchar(40);
alter table audiogram add column signed_name varchar(200);
alter table audiogram add column signed_at timestamp with time zone;

-- 0 while the test counts; its own key once another took its place or it turned out to be entered in error. Of one
-- purpose and day only one test counts.
alter table audiogram add column taken_out bigint default 0 not null;
alter table audiogram drop constraint audiogram_test_unique;
alter table audiogram add constraint audiogram_test_unique unique (worker_id, test_date, purpose, taken_out);

-- Why a test counts no more, and which one took its place: none where it was entered in error. Nothing changes a row.
create table superseded_test (
    audiogram_id  bigint        not null primary key references audiogram (id),
    successor_id  bigint        references audiogram (id),
    reason        varchar(2000) not null,
    superseded_by varchar(40)   not null,
    superseded_at timestamp with time zone not null,
    superseded_on date          not null
);

create index superseded_test_successor on superseded_test (successor_id);

create sequence test_draft_seq start with 1 increment by 1;

-- Tests that are being typed. Thresholds stand as typed, separated by tabs; nothing here counts until it is signed, and
-- the row goes when it is. in_place_of is the test that is to be superseded, 0 where the test is a new one.
create table test_draft (
    id              bigint        not null primary key,
    worker_id       bigint        not null references worker (id),
    typed_by        varchar(40)   not null,
    in_place_of     bigint        not null,
    thresholds      varchar(400)  not null,
    limit_db        varchar(8)    not null,
    test_date       date,
    purpose         varchar(20),
    hours           varchar(40)   not null,
    protectors_worn boolean,
    tester          varchar(200)  not null,
    instrument      varchar(200)  not null,
    transducer      varchar(200)  not null,
    room            varchar(200)  not null,
    remark          varchar(2000) not null,
    reason          varchar(2000) not null,
    changed_at      timestamp with time zone,
    constraint test_draft_unique unique (worker_id, typed_by, in_place_of)
);

create index test_draft_typed_by on test_draft (typed_by, changed_at);
