-- Nothing to mend here: only H2 keeps the connection that made a check.
select 1;
