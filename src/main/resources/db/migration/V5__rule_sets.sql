-- Which rule set makes a follow-up due. Follow-ups are projections: those of before are written again on the next look.
alter table follow_up add column rule_set varchar(20) default 'osha' not null;

-- Which rule set a site answers to from a day on; an empty site stands for every site without a choice of its own.
-- Settings are the numbers of the rule set that could not be verified, as NAME=VALUE by lines. A choice is never
-- changed: a later one with the same day takes its place.
create sequence site_rule_set_seq start with 1 increment by 1;
create table site_rule_set (
    id             bigint       not null primary key,
    site           varchar(200) not null,
    effective_from date         not null,
    rule_set       varchar(20)  not null,
    age_correction varchar(3)   not null,
    settings       varchar(400) not null,
    reason         varchar(2000) not null,
    chosen_by      varchar(40)  not null,
    chosen_at      timestamp with time zone not null
);

create index site_rule_set_site on site_rule_set (site, effective_from);

-- The days besides weekends that deadlines in working days skip.
create table holiday (
    holiday_on date         not null primary key,
    name       varchar(100) not null
);
