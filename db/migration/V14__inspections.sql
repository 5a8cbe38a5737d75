-- Inspections that members have saved: what was claimed, what was seen, and by which revision of the
-- catalogue. What was seen stands in the register too, which photographs belong to; this is what
-- reopens an inspection as it was. It goes with its airframe.

create table inspection (
  person_id bigint not null references person,
  -- given by the inspector's device, so that one that is sent again is saved once
  id uuid not null,
  airframe_id bigint not null references airframe on delete cascade,
  revision int not null,
  variant_key varchar(80) not null,
  model_year int,
  serial varchar(80),
  -- FEATURE:VALUE, one to a line
  seen text not null,
  seen_on date not null,
  saved_at timestamp with time zone not null,
  primary key (person_id, id)
);
create index inspection_airframe on inspection (airframe_id);
