create sequence employment_event_seq start with 1 increment by 50;
create sequence plant_sale_seq start with 1 increment by 1;
create sequence clinical_entry_seq start with 1 increment by 10;
create sequence test_refusal_seq start with 1 increment by 10;

-- A plant sold with its workers. Nothing changes a row; who received the records stands in the row beside it.
create table plant_sale (
    id         bigint       not null primary key,
    site       varchar(200) not null,
    sold_on    date         not null,
    successor  varchar(200) not null,
    entered_by varchar(40)  not null,
    entered_at timestamp with time zone not null
);

create table plant_sale_handover (
    plant_sale_id  bigint        not null primary key references plant_sale (id),
    handed_over_on date          not null,
    received_by    varchar(200)  not null,
    remark         varchar(2000) not null,
    entered_by     varchar(40)   not null,
    entered_at     timestamp with time zone not null
);

-- The events of working lives. Nothing changes a row: a later row corrects it, or takes it back. A worker without a row
-- has the life that the roster tells; at the first change that is written down, and then the change.
create table employment_event (
    id              bigint        not null primary key,
    worker_id       bigint        not null references worker (id),
    kind            varchar(20)   not null,
    happened_on     date          not null,
    until_on        date,
    site            varchar(200)  not null,
    department      varchar(200)  not null,
    job_title       varchar(200)  not null,
    other_party     varchar(200)  not null,
    engagement      varchar(20),
    supervised_here boolean       not null,
    corrects_id     bigint references employment_event (id),
    reason          varchar(2000) not null,
    entered_by      varchar(40)   not null,
    entered_at      timestamp with time zone not null,
    import_batch_id bigint references import_batch (id),
    plant_sale_id   bigint references plant_sale (id)
);

create index employment_event_worker on employment_event (worker_id);
create index employment_event_kind on employment_event (kind, happened_on);
create index employment_event_corrects on employment_event (corrects_id);
create index employment_event_import_batch on employment_event (import_batch_id);
create index employment_event_plant_sale on employment_event (plant_sale_id);

-- Health history, the look into the ears, and what the worker said, as of a day. Nothing changes a row: a later row of
-- the same day takes its place, with the reason. Answers stand by lines as question=yes=note.
create table clinical_entry (
    id             bigint        not null primary key,
    worker_id      bigint        not null references worker (id),
    taken_on       date          not null,
    answers        text          not null,
    shoulder       varchar(5),
    left_findings  varchar(200)  not null,
    left_note      varchar(500)  not null,
    right_findings varchar(200)  not null,
    right_note     varchar(500)  not null,
    postponed      boolean       not null,
    said           varchar(2000) not null,
    corrects_id    bigint references clinical_entry (id),
    reason         varchar(2000) not null,
    entered_by     varchar(40)   not null,
    entered_at     timestamp with time zone not null
);

create index clinical_entry_worker on clinical_entry (worker_id, taken_on);
create index clinical_entry_corrects on clinical_entry (corrects_id);

-- The same while a test is being typed, under the key of its draft; it becomes an entry when the test is signed.
create table clinical_draft (
    draft_key      bigint        not null primary key,
    worker_id      bigint        not null references worker (id),
    answers        text          not null,
    shoulder       varchar(5),
    left_findings  varchar(200)  not null,
    left_note      varchar(500)  not null,
    right_findings varchar(200)  not null,
    right_note     varchar(500)  not null,
    postponed      boolean       not null,
    said           varchar(2000) not null,
    typed_by       varchar(40)   not null,
    typed_at       timestamp with time zone not null
);

create index clinical_draft_worker on clinical_draft (worker_id);

-- A worker who does not want to be tested. Nothing changes a row; a later row takes it back, with the reason.
create table test_refusal (
    id           bigint        not null primary key,
    worker_id    bigint        not null references worker (id),
    refused_on   date          not null,
    reason       varchar(2000) not null,
    document_id  bigint references document (id),
    takes_back_id bigint references test_refusal (id),
    entered_by   varchar(40)   not null,
    entered_at   timestamp with time zone not null
);

create index test_refusal_worker on test_refusal (worker_id);
create index test_refusal_document on test_refusal (document_id);
create index test_refusal_takes_back on test_refusal (takes_back_id);
