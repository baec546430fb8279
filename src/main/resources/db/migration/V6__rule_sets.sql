-- Which rule set makes a follow-up due. Follow-ups are projections: those of before are written again on the next look.
alter table follow_up add column rule_set varchar(20) default 'osha' not null;
