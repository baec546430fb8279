create sequence letter_seq start with 1 increment by 10;
create sequence letter_text_seq start with 1 increment by 1;

-- A letter as it was printed, and when and how it was given to its reader. Nothing else of a row ever changes.
create table letter (
    id          bigint      not null primary key,
    worker_id   bigint      not null references worker (id),
    kind        varchar(20) not null,
    language    varchar(10) not null,
    test_id     bigint      not null references audiogram (id),
    test_date   date        not null,
    ears        varchar(5)  not null,
    document_id bigint      not null references document (id),
    printed_on  date        not null,
    printed_by  varchar(40) not null,
    given_on    date,
    method      varchar(20),
    given_by    varchar(40)
);

create index letter_worker on letter (worker_id, kind, test_date);
create index letter_printed_on on letter (printed_on);

-- A text that a site wrote itself; the latest of a site, language and part counts, an empty one brings the standard back.
create table letter_text (
    id       bigint       not null primary key,
    site     varchar(200) not null,
    language varchar(10)  not null,
    part     varchar(20)  not null,
    content  varchar(6000) not null,
    saved_by varchar(40)  not null,
    saved_at timestamp with time zone not null
);

create index letter_text_place on letter_text (site, language, part);
