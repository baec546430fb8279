create sequence work_shift_seq start with 1 increment by 1;
create sequence test_day_seq start with 1 increment by 1;
create sequence test_booking_seq start with 1 increment by 50;

-- The hours that people of a site work in noise. A worker's own entry goes before that of the department.
create table work_shift (
    id        bigint       not null primary key,
    site      varchar(200) not null,
    name      varchar(60)  not null,
    starts_at time         not null,
    ends_at   time         not null,
    constraint work_shift_name_unique unique (site, name)
);

create table worker_shift (
    worker_id     bigint not null primary key references worker (id),
    work_shift_id bigint not null references work_shift (id)
);

create table department_shift (
    work_shift_id bigint       not null references work_shift (id),
    department    varchar(200) not null,
    site          varchar(200) not null,
    primary key (site, department)
);

-- How a site is tested; a site without a row has no mobile unit, shows no names, and keeps the program's time zone.
create table test_site (
    site              varchar(200) not null primary key,
    mobile_unit       boolean      not null,
    names_in_calendar boolean      not null,
    time_zone         varchar(60)  not null
);

-- Days planned together have the same visit. The breaks stand as HH:MM-HH:MM, with commas between them.
create table test_day (
    id          bigint       not null primary key,
    visit       bigint       not null,
    uid         varchar(36)  not null,
    site        varchar(200) not null,
    place       varchar(200) not null,
    test_date   date         not null,
    starts_at   time         not null,
    ends_at     time         not null,
    per_hour    integer      not null,
    breaks      varchar(200) not null,
    nurse       varchar(40)  not null,
    mobile_unit boolean      not null,
    cancelled   boolean      not null,
    revision    integer      not null,
    changed_at  timestamp with time zone not null,
    version     integer      not null,
    constraint test_day_uid_unique unique (uid)
);

create index test_day_site on test_day (site, test_date);

-- after_test and ears are those of what the test is owed for; a first test follows none.
create table test_booking (
    id                bigint       not null primary key,
    test_day_id       bigint       not null references test_day (id),
    worker_id         bigint       not null references worker (id),
    occasion          varchar(20)  not null,
    last_day          date         not null,
    basis             varchar(200) not null,
    after_test        date,
    ears              varchar(5)   not null,
    starts_at         time         not null,
    quiet_time        varchar(20)  not null,
    state             varchar(20)  not null,
    hours_since_noise numeric(5, 1),
    protectors_worn   boolean,
    note              varchar(500) not null,
    version           integer      not null
);

create index test_booking_day on test_booking (test_day_id);
create index test_booking_worker on test_booking (worker_id);

-- Who did not fit when people were last proposed.
create table test_left_out (
    test_day_id bigint      not null references test_day (id),
    worker_id   bigint      not null references worker (id),
    occasion    varchar(20) not null,
    last_day    date        not null,
    why         varchar(20) not null,
    primary key (test_day_id, worker_id)
);

-- 29 CFR 1910.95(g)(5)(ii): from when on protectors are worn by someone who waits for a mobile unit's baseline.
create table protectors_until_baseline (
    worker_id  bigint      not null primary key references worker (id),
    worn_from  date        not null,
    entered_by varchar(40) not null,
    entered_at timestamp with time zone not null
);

-- The secret part of the address is kept as its hash only.
create table calendar_link (
    username   varchar(40) not null primary key,
    uid        varchar(36) not null,
    token_hash varchar(64) not null,
    made_at    timestamp with time zone not null,
    constraint calendar_link_token_unique unique (token_hash)
);
