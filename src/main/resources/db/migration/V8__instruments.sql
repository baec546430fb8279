-- The register of instruments, rooms and testers. No row is changed: a correction is a later row that names the first
-- row of its line in corrects, with a reason; the row of a line with the highest id counts. withdrawn takes a line back.
create sequence instrument_entry_seq start with 1 increment by 50;

-- An empty site stands for a unit that travels between the sites. Limits and readings are in test order, 500 to 8000 Hz.
create table audiometer (
    id            bigint        not null primary key,
    corrects      bigint        references audiometer (id),
    withdrawn     boolean       not null,
    reason        varchar(1000) not null,
    entered_by    varchar(40)   not null,
    entered_at    timestamp with time zone not null,
    site          varchar(200)  not null,
    identity      varchar(100)  not null,
    serial_number varchar(100)  not null,
    unit_type     varchar(20)   not null,
    output_limits varchar(60)   not null,
    used_from     date          not null,
    used_to       date
);

create table headset (
    id         bigint        not null primary key,
    corrects   bigint        references headset (id),
    withdrawn  boolean       not null,
    reason     varchar(1000) not null,
    entered_by varchar(40)   not null,
    entered_at timestamp with time zone not null,
    site       varchar(200)  not null,
    identity   varchar(100)  not null,
    headset_type varchar(20) not null,
    earphone   varchar(100)  not null
);

-- To which unit a headset is calibrated, from when to when. headset_id and audiometer_id name the first row of a line.
create table headset_unit (
    id            bigint        not null primary key,
    corrects      bigint        references headset_unit (id),
    withdrawn     boolean       not null,
    reason        varchar(1000) not null,
    entered_by    varchar(40)   not null,
    entered_at    timestamp with time zone not null,
    headset_id    bigint        not null references headset (id),
    audiometer_id bigint        not null references audiometer (id),
    used_from     date          not null,
    used_to       date
);

create table calibration (
    id             bigint        not null primary key,
    corrects       bigint        references calibration (id),
    withdrawn      boolean       not null,
    reason         varchar(1000) not null,
    entered_by     varchar(40)   not null,
    entered_at     timestamp with time zone not null,
    audiometer_id  bigint        not null references audiometer (id),
    calibration_kind varchar(20) not null,
    calibrated_on  date          not null,
    calibrated_by  varchar(200)  not null,
    as_found       varchar(20)   not null,
    as_left        varchar(20)   not null,
    earphone       varchar(100)  not null,
    left_readings  varchar(80)   not null,
    right_readings varchar(80)   not null
);

create index calibration_audiometer on calibration (audiometer_id);

create table functional_check (
    id              bigint        not null primary key,
    corrects        bigint        references functional_check (id),
    withdrawn       boolean       not null,
    reason          varchar(1000) not null,
    entered_by      varchar(40)   not null,
    entered_at      timestamp with time zone not null,
    audiometer_id   bigint        not null references audiometer (id),
    headset_id      bigint        references headset (id),
    checked_on      date          not null,
    checked_by      varchar(200)  not null,
    person          varchar(200)  not null,
    left_reference  varchar(60)   not null,
    right_reference varchar(60)   not null,
    left_readings   varchar(60)   not null,
    right_readings  varchar(60)   not null,
    listening       varchar(20)   not null,
    heard           varchar(1000) not null,
    verdict         varchar(20)   not null
);

create index functional_check_audiometer on functional_check (audiometer_id, checked_on);
create index functional_check_corrects on functional_check (corrects);

create table test_room (
    id         bigint        not null primary key,
    corrects   bigint        references test_room (id),
    withdrawn  boolean       not null,
    reason     varchar(1000) not null,
    entered_by varchar(40)   not null,
    entered_at timestamp with time zone not null,
    site       varchar(200)  not null,
    name       varchar(100)  not null,
    used_from  date          not null,
    used_to    date
);

-- Levels in dB, octave bands 125 to 8000 Hz in order, - where a band was not measured.
create table room_measurement (
    id           bigint        not null primary key,
    corrects     bigint        references room_measurement (id),
    withdrawn    boolean       not null,
    reason       varchar(1000) not null,
    entered_by   varchar(40)   not null,
    entered_at   timestamp with time zone not null,
    room_id      bigint        not null references test_room (id),
    measured_on  date          not null,
    measured_by  varchar(200)  not null,
    meter        varchar(200)  not null,
    levels       varchar(80)   not null
);

create table tester (
    id            bigint        not null primary key,
    corrects      bigint        references tester (id),
    withdrawn     boolean       not null,
    reason        varchar(1000) not null,
    entered_by    varchar(40)   not null,
    entered_at    timestamp with time zone not null,
    site          varchar(200)  not null,
    name          varchar(200)  not null,
    qualification varchar(30)   not null,
    supervisor    varchar(200)  not null
);

create table tester_certificate (
    id          bigint        not null primary key,
    corrects    bigint        references tester_certificate (id),
    withdrawn   boolean       not null,
    reason      varchar(1000) not null,
    entered_by  varchar(40)   not null,
    entered_at  timestamp with time zone not null,
    tester_id   bigint        not null references tester (id),
    number      varchar(100)  not null,
    issued_on   date          not null,
    expires_on  date
);
