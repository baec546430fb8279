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
