-- H2 keeps, with a check against a list of values, the connection that made it, and refuses every row
-- once that connection has been closed ("The database has been closed"), until the next start. A case
-- keeps nothing. The checks have names that H2 made up.

execute immediate (
  select 'alter table person drop constraint "' || c.constraint_name || '"'
  from information_schema.check_constraints c
  join information_schema.table_constraints t using (constraint_schema, constraint_name)
  where t.table_name = 'person' and c.check_clause like '%"role" IN(%');
alter table person add constraint person_role_is_known check (
  case role when 'MEMBER' then true when 'MODERATOR' then true when 'KEEPER' then true else false end);

execute immediate (
  select 'alter table person drop constraint "' || c.constraint_name || '"'
  from information_schema.check_constraints c
  join information_schema.table_constraints t using (constraint_schema, constraint_name)
  where t.table_name = 'person' and c.check_clause like '%"state" IN(%');
alter table person add constraint person_state_is_known check (
  case state when 'ACTIVE' then true when 'CLOSED' then true else false end);

execute immediate (
  select 'alter table join_request drop constraint "' || c.constraint_name || '"'
  from information_schema.check_constraints c
  join information_schema.table_constraints t using (constraint_schema, constraint_name)
  where t.table_name = 'join_request' and c.check_clause like '%"state" IN(%');
alter table join_request add constraint join_request_state_is_known check (
  case state when 'OPEN' then true when 'ACCEPTED' then true when 'DECLINED' then true else false end);

execute immediate (
  select 'alter table watch drop constraint "' || c.constraint_name || '"'
  from information_schema.check_constraints c
  join information_schema.table_constraints t using (constraint_schema, constraint_name)
  where t.table_name = 'watch' and c.check_clause like '%"kind" IN(%');
alter table watch add constraint watch_kind_is_known check (
  case kind when 'FAMILY' then true when 'VARIANT' then true when 'FEATURE' then true else false end);

execute immediate (
  select 'alter table outgoing_mail drop constraint "' || c.constraint_name || '"'
  from information_schema.check_constraints c
  join information_schema.table_constraints t using (constraint_schema, constraint_name)
  where t.table_name = 'outgoing_mail' and c.check_clause like '%"state" IN(%');
alter table outgoing_mail add constraint outgoing_mail_state_is_known check (
  case state when 'WAITING' then true when 'SENDING' then true when 'SENT' then true when 'DROPPED' then true else false end);

execute immediate (
  select 'alter table mail_wish drop constraint "' || c.constraint_name || '"'
  from information_schema.check_constraints c
  join information_schema.table_constraints t using (constraint_schema, constraint_name)
  where t.table_name = 'mail_wish' and c.check_clause like '%"wish" IN(%');
alter table mail_wish add constraint mail_wish_wish_is_known check (
  case wish when 'NONE' then true when 'EACH' then true when 'DAILY' then true else false end);

execute immediate (
  select 'alter table used_observation drop constraint "' || c.constraint_name || '"'
  from information_schema.check_constraints c
  join information_schema.table_constraints t using (constraint_schema, constraint_name)
  where t.table_name = 'used_observation' and c.check_clause like '%"place" IN(%');
alter table used_observation add constraint used_observation_place_is_known check (
  case place when 'BELOW' then true when 'INSIDE' then true when 'ABOVE' then true else false end);

execute immediate (
  select 'alter table correction drop constraint "' || c.constraint_name || '"'
  from information_schema.check_constraints c
  join information_schema.table_constraints t using (constraint_schema, constraint_name)
  where t.table_name = 'correction' and c.check_clause like '%"state" IN(%');
alter table correction add constraint correction_decided_by_somebody check (
  (case state when 'approved' then true when 'rejected' then true else false end)
    = (decided_by is not null));
