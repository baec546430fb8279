-- Noise as it was measured. A row is never changed: a later measurement takes its place from its day on, and one that was
-- entered by mistake is withdrawn. Levels are lines of "dBA hours", octave bands lines of "hertz=dB".
create sequence noise_measurement_seq start with 1 increment by 10;
create table noise_measurement (
    id                bigint        not null primary key,
    site              varchar(200)  not null,
    subject_kind      varchar(20)   not null,
    subject_name      varchar(200)  not null,
    worker_id         bigint        references worker (id),
    measured_on       date          not null,
    kind              varchar(30)   not null,
    instrument        varchar(200)  not null,
    calibrated_before boolean       not null,
    calibrated_after  boolean       not null,
    shift_hours       numeric(6, 3) not null,
    result_kind       varchar(20)   not null,
    levels            varchar(2000) not null,
    twa_dba           numeric(7, 3),
    dose_from_80      numeric(12, 3),
    dose_from_90      numeric(12, 3),
    c_weighted_dbc    numeric(7, 3),
    octave_bands      varchar(400)  not null,
    peak_db           numeric(7, 3),
    process           varchar(2000) not null,
    measured_by       varchar(200)  not null,
    entered_by        varchar(40)   not null,
    entered_at        timestamp with time zone not null
);

create index noise_measurement_subject on noise_measurement (site, subject_kind, subject_name, measured_on);
create index noise_measurement_worker on noise_measurement (worker_id);

create table noise_measurement_withdrawn (
    measurement_id bigint        not null primary key references noise_measurement (id),
    reason         varchar(2000) not null,
    withdrawn_by   varchar(40)   not null,
    withdrawn_at   timestamp with time zone not null
);

-- Who was told of which measurement.
create sequence noise_result_told_seq start with 1 increment by 100;
create table noise_result_told (
    id             bigint       not null primary key,
    measurement_id bigint       not null references noise_measurement (id),
    worker_id      bigint       not null references worker (id),
    told_on        date         not null,
    how            varchar(20)  not null,
    entered_by     varchar(40)  not null,
    entered_at     timestamp with time zone not null,
    constraint noise_result_told_unique unique (measurement_id, worker_id)
);

create index noise_result_told_worker on noise_result_told (worker_id);
