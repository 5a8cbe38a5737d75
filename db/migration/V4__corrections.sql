-- Corrections: what members propose. Nothing here is published; what is approved is copied into
-- versions of the catalogue's own tables.

create sequence correction_seq start with 1 increment by 50;

create table correction (
  id bigint primary key,
  lock_version int not null,
  author_id bigint not null references person,
  -- where it comes from: typed, undo of a revision, data package
  origin varchar(16) not null,
  title text not null,
  state varchar(16) not null,
  begun_at timestamp with time zone not null,
  changed_at timestamp with time zone not null,
  submitted_at timestamp with time zone,
  decided_at timestamp with time zone,
  decided_by bigint references person,
  -- the revision that it became
  revision int references revision,
  -- given by the form that began it, so that a form sent twice begins one correction
  form_token varchar(40) not null unique,
  check ((state in ('approved', 'rejected')) = (decided_by is not null)),
  check ((state = 'approved') = (revision is not null))
);
create index correction_author on correction (author_id);
create index correction_state on correction (state);
create unique index correction_revision on correction (revision);

-- What it proposes for each entry: the entry as rows of the format's tables, or its withdrawal

create sequence proposed_edit_seq start with 1 increment by 50;

create table proposed_edit (
  id bigint primary key,
  correction_id bigint not null references correction,
  kind varchar(16) not null,
  entry_key text not null,
  -- the revision at which the author saw the entry
  base_revision int not null,
  withdrawn boolean not null,
  sheet text not null,
  unique (correction_id, kind, entry_key)
);
create index proposed_edit_entry on proposed_edit (kind, entry_key);

-- The sources that it stands on, each at a place

create table ground (
  correction_id bigint not null references correction,
  position int not null,
  source_key text not null,
  locator text not null,
  stance varchar(16) not null,
  note text,
  primary key (correction_id, position)
);

-- What happened to it, and what was said about it

create sequence correction_event_seq start with 1 increment by 50;

create table correction_event (
  id bigint primary key,
  correction_id bigint not null references correction,
  happened_at timestamp with time zone not null,
  actor_id bigint not null references person,
  what varchar(16) not null,
  note text,
  -- of a slip mended by a moderator: the entry, and how the author had it
  mended_kind varchar(16),
  mended_key text,
  mended_sheet text,
  form_token varchar(40) unique
);
create index correction_event_correction on correction_event (correction_id);

-- Files: evidence that readers of the correction may fetch, and pictures that it would publish

create sequence correction_file_seq start with 1 increment by 50;

create table correction_file (
  id bigint primary key,
  correction_id bigint not null references correction,
  purpose varchar(16) not null,
  name text not null,
  media_type varchar(40) not null,
  sha256 varchar(64) not null,
  size int not null,
  bytes bytea not null,
  added_by bigint not null references person,
  added_at timestamp with time zone not null,
  unique (correction_id, purpose, sha256, name)
);

-- Who proposed and approved a revision, where they have accounts; a name can be taken back when an
-- account is closed, a published row cannot be changed

alter table revision add column proposer_id bigint references person;
alter table revision add column approver_id bigint references person;
