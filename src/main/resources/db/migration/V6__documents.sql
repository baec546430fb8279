create sequence document_seq start with 1 increment by 10;

-- Files kept as evidence. Nothing changes a row; the records that name a file say whose it is.
create table document (
    id         bigint       not null primary key,
    name       varchar(200) not null,
    media_type varchar(10)  not null,
    byte_count integer      not null,
    content    bytea        not null,
    stored_at  timestamp with time zone not null,
    stored_by  varchar(40)  not null
);
