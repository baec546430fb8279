create sequence protector_seq start with 1 increment by 10;
create sequence protector_issue_seq start with 1 increment by 50;
create sequence fit_test_seq start with 1 increment by 50;
create sequence protection_method_seq start with 1 increment by 10;
create sequence training_session_seq start with 1 increment by 10;
create sequence training_attendance_seq start with 1 increment by 50;

-- The protectors that a site gives out, with what their labels say in dB. A label is never changed: a protector is
-- retired, with a reason, and another entered. A pair is a plug and a muff worn together.
create table protector (
    id              bigint        not null primary key,
    site            varchar(200)  not null,
    name            varchar(100)  not null,
    kind            varchar(20)   not null,
    sizes           varchar(100)  not null,
    nrr             numeric(4, 1),
    snr             numeric(4, 1),
    high            numeric(4, 1),
    medium          numeric(4, 1),
    low             numeric(4, 1),
    nrs_most        numeric(4, 1),
    nrs_few         numeric(4, 1),
    band_means      varchar(100)  not null,
    band_deviations varchar(100)  not null,
    plug_id         bigint references protector (id),
    muff_id         bigint references protector (id),
    entered_by      varchar(40)   not null,
    entered_at      timestamp with time zone not null,
    retired_on      date,
    retired_reason  varchar(500)  not null,
    retired_by      varchar(40)   not null
);

-- Which method of estimating a site's employer picked; the latest row of a site counts.
create table protection_method (
    id        bigint       not null primary key,
    site      varchar(200) not null,
    method    varchar(30)  not null,
    reason    varchar(500) not null,
    chosen_by varchar(40)  not null,
    chosen_at timestamp with time zone not null
);

-- Who was given which protector. It ends once, and is withdrawn, with a reason, where it was entered by mistake.
create table protector_issue (
    id               bigint       not null primary key,
    worker_id        bigint       not null references worker (id),
    protector_id     bigint       not null references protector (id),
    size             varchar(30)  not null,
    issued_on        date         not null,
    refit_test_date  date,
    remark           varchar(500) not null,
    entered_by       varchar(40)  not null,
    entered_at       timestamp with time zone not null,
    ended_on         date,
    ended_as         varchar(20),
    ended_by         varchar(40)  not null,
    withdrawn_reason varchar(500) not null,
    withdrawn_by     varchar(40)  not null
);
create index protector_issue_worker on protector_issue (worker_id);

-- A wearer's own attenuation as a fit test found it.
create table fit_test (
    id               bigint        not null primary key,
    worker_id        bigint        not null references worker (id),
    protector_id     bigint        not null references protector (id),
    size             varchar(30)   not null,
    tested_on        date          not null,
    par              numeric(4, 1) not null,
    percentile       integer       not null,
    method           varchar(200)  not null,
    tester           varchar(200)  not null,
    document_id      bigint references document (id),
    entered_by       varchar(40)   not null,
    entered_at       timestamp with time zone not null,
    withdrawn_reason varchar(500)  not null,
    withdrawn_by     varchar(40)   not null
);
create index fit_test_worker on fit_test (worker_id);

-- A training as it was held, with the signed sheet where it has been scanned.
create table training_session (
    id          bigint        not null primary key,
    site        varchar(200)  not null,
    held_on     date          not null,
    topics      varchar(100)  not null,
    trainer     varchar(200)  not null,
    language    varchar(10)   not null,
    minutes     integer       not null,
    materials   varchar(1000) not null,
    certified   boolean       not null,
    sheet_id    bigint references document (id),
    entered_by  varchar(40)   not null,
    entered_at  timestamp with time zone not null
);
create index training_session_day on training_session (held_on);

create table training_attendance (
    id               bigint       not null primary key,
    session_id       bigint       not null references training_session (id),
    worker_id        bigint       not null references worker (id),
    entered_by       varchar(40)  not null,
    entered_at       timestamp with time zone not null,
    withdrawn_reason varchar(500) not null,
    withdrawn_by     varchar(40)  not null
);
create index training_attendance_worker on training_attendance (worker_id);
create index training_attendance_session on training_attendance (session_id);
