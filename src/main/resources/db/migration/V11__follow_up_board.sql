-- The follow-ups become all that is open about workers: also what a case leaves owed, baseline proposals, and what
-- changed after a notice. Some of it has no date: open_since tells since when it is open; booked says when and where a retest
-- is booked for. All of it is a projection and
-- is written again at the next look.
alter table follow_up alter column due_date drop not null;
alter table follow_up add column open_since date default date '2000-01-01' not null;
alter table follow_up alter column open_since drop default;
alter table follow_up add column basis varchar(200) default '' not null;
alter table follow_up alter column basis drop default;
alter table follow_up add column booked varchar(2000) default '' not null;
alter table follow_up alter column booked drop default;
update worker_judgement set rule_edition = 0;

-- The follow-ups of tests alone, each of which has a date.
create view test_follow_up as
    select id, worker_id, kind, due_date, test_date, ears, rule_set
    from follow_up
    where kind in ('retest', 'notice', 'record', 'annual-test', 'baseline-test');

-- That something owed is put off: until when, why and by whom. It changes no due date. A later one takes its place.
create sequence postponement_seq start with 1 increment by 100;
create table postponement (
    id           bigint        not null primary key,
    worker_id    bigint        not null references worker (id),
    kind         varchar(20)   not null,
    test_date    date,
    ears         varchar(5)    not null,
    due_date     date,
    until_day    date          not null,
    reason       varchar(2000) not null,
    postponed_by varchar(40)   not null,
    postponed_at timestamp with time zone not null
);

create index postponement_worker on postponement (worker_id);

alter table follow_up add column postponement_id bigint references postponement (id);
alter table follow_up add column postponed_until date;
create index follow_up_postponement on follow_up (postponement_id);

-- How something was done, and the file that shows it.
create table decision_evidence (
    decision_id bigint        not null primary key references decision (id),
    means       varchar(20)   not null,
    note        varchar(2000) not null,
    document_id bigint references document (id)
);

create index decision_evidence_document on decision_evidence (document_id);

-- Finds what was found since a day.
create index determination_judged on determination (judged_as_of);
