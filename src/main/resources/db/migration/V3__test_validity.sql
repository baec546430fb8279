-- The second reading at 1000 Hz, in the notation of the files.
alter table audiogram add column left_1000_repeat varchar(4);
alter table audiogram add column right_1000_repeat varchar(4);

-- Finds who else was tested on a day.
create index audiogram_test_date on audiogram (test_date, worker_id);
