-- The published catalogue.
--
-- An entry is an identity; what it says stands in versions. A version is valid over the revisions
-- from since_revision to before until_revision; 2147483647 means that no revision has ended it, so
-- that "one open version at most" is a plain unique key. Rows are read at revision N where
-- since_revision <= N and N < until_revision.
--
-- The same script runs on H2 (PostgreSQL mode) and PostgreSQL. The foreign key of since_revision
-- comes after the index on it, because H2 would otherwise make a second index for the key.

-- Revisions: one row each. The head is one row, which a publication locks first.

create table revision (
  number int primary key check (number > 0),
  published_at timestamp with time zone not null,
  note text not null,
  proposed_by text,
  approved_by text
);

create table head (
  id int primary key check (id = 1),
  number int not null
);
insert into head (id, number) values (1, 0);

-- Entries: who they are. Identifiers are taken from the sequences in blocks.

create sequence entry_seq start with 1 increment by 500;
create sequence version_seq start with 1 increment by 500;

create table entry (
  id bigint primary key,
  kind varchar(16) not null,
  entry_key varchar(80) not null,
  unique (kind, entry_key)
);

-- Families

create table family_version (
  id bigint primary key,
  entry_id bigint not null references entry,
  since_revision int not null,
  until_revision int not null default 2147483647,
  maker text not null,
  name text not null,
  type_certificate text,
  year_means varchar(16) not null,
  -- as recorded: 6.0 leaves as 6.0
  fuel_density varchar(40) check (cast(fuel_density as numeric) > 0),
  summary text,
  unique (entry_id, until_revision),
  check (since_revision < until_revision)
);
create index family_version_since on family_version (since_revision);
alter table family_version add foreign key (since_revision) references revision;
create index family_version_until on family_version (until_revision);

-- Variants: names, production runs, descent

create table variant_version (
  id bigint primary key,
  entry_id bigint not null references entry,
  since_revision int not null,
  until_revision int not null default 2147483647,
  family_id bigint not null references entry,
  designation text not null,
  picture text,
  summary text,
  unique (entry_id, until_revision),
  check (since_revision < until_revision)
);
create index variant_version_since on variant_version (since_revision);
alter table variant_version add foreign key (since_revision) references revision;
create index variant_version_until on variant_version (until_revision);

create table sold_name (
  version_id bigint not null references variant_version,
  position int not null,
  name text not null,
  first_year int,
  last_year int,
  primary key (version_id, position)
);

create table production_run (
  version_id bigint not null references variant_version,
  position int not null,
  first_year int not null,
  last_year int,
  built int,
  primary key (version_id, position)
);

create table descent (
  version_id bigint not null references variant_version,
  position int not null,
  from_id bigint not null references entry,
  relation varchar(16) not null,
  note text,
  primary key (version_id, position)
);

-- Series of serial numbers and their blocks

create table series_version (
  id bigint primary key,
  entry_id bigint not null references entry,
  since_revision int not null,
  until_revision int not null default 2147483647,
  family_id bigint not null references entry,
  prefix text,
  digits int,
  year_suffix boolean not null,
  note text,
  unique (entry_id, until_revision),
  check (since_revision < until_revision)
);
create index series_version_since on series_version (since_revision);
alter table series_version add foreign key (since_revision) references revision;
create index series_version_until on series_version (until_revision);

create table serial_block_version (
  id bigint primary key,
  entry_id bigint not null references entry,
  since_revision int not null,
  until_revision int not null default 2147483647,
  series_id bigint not null references entry,
  first_serial text not null,
  last_serial text,
  variant_id bigint not null references entry,
  allotted_year int,
  intermixed boolean not null,
  unique (entry_id, until_revision),
  check (since_revision < until_revision)
);
create index serial_block_version_since on serial_block_version (since_revision);
alter table serial_block_version add foreign key (since_revision) references revision;
create index serial_block_version_until on serial_block_version (until_revision);

-- Features and their values

create table feature_version (
  id bigint primary key,
  entry_id bigint not null references entry,
  since_revision int not null,
  until_revision int not null default 2147483647,
  name text not null,
  chapter varchar(2) not null,
  kind_of_value varchar(16) not null,
  unit text,
  visibility varchar(16) not null,
  exchange varchar(16) not null,
  description text,
  unique (entry_id, until_revision),
  check (since_revision < until_revision)
);
create index feature_version_since on feature_version (since_revision);
alter table feature_version add foreign key (since_revision) references revision;
create index feature_version_until on feature_version (until_revision);

create table feature_value (
  version_id bigint not null references feature_version,
  position int not null,
  value_key varchar(80) not null,
  label text not null,
  cue text,
  picture text,
  picture_credit text,
  primary key (version_id, position)
);

-- Changes: what they offer and where they cut in

create table change_version (
  id bigint primary key,
  entry_id bigint not null references entry,
  since_revision int not null,
  until_revision int not null default 2147483647,
  feature_id bigint not null references entry,
  title text not null,
  detail text,
  unique (entry_id, until_revision),
  check (since_revision < until_revision)
);
create index change_version_since on change_version (since_revision);
alter table change_version add foreign key (since_revision) references revision;
create index change_version_until on change_version (until_revision);

create table offered (
  version_id bigint not null references change_version,
  position int not null,
  offered_value text not null,
  fit varchar(16) not null,
  -- as recorded
  take_rate varchar(40) check (cast(take_rate as numeric) >= 0),
  primary key (version_id, position)
);

create table cut_in (
  version_id bigint not null references change_version,
  position int not null,
  variant_id bigint not null references entry,
  at_start boolean not null,
  first_year int,
  settled_year int,
  series_id bigint references entry,
  first_serial text,
  settled_serial text,
  primary key (version_id, position)
);

-- Retrofits

create table retrofit_version (
  id bigint primary key,
  entry_id bigint not null references entry,
  since_revision int not null,
  until_revision int not null default 2147483647,
  feature_id bigint not null references entry,
  fitted_value text not null,
  variant_id bigint not null references entry,
  first_year int,
  last_year int,
  series_id bigint references entry,
  first_serial text,
  last_serial text,
  document text not null,
  note text,
  unique (entry_id, until_revision),
  check (since_revision < until_revision)
);
create index retrofit_version_since on retrofit_version (since_revision);
alter table retrofit_version add foreign key (since_revision) references revision;
create index retrofit_version_until on retrofit_version (until_revision);

-- Sources

create table source_version (
  id bigint primary key,
  entry_id bigint not null references entry,
  since_revision int not null,
  until_revision int not null default 2147483647,
  kind varchar(40) not null,
  title text not null,
  author text,
  publisher text,
  identifier text,
  issued text,
  url text,
  accessed date,
  note text,
  unique (entry_id, until_revision),
  check (since_revision < until_revision)
);
create index source_version_since on source_version (since_revision);
alter table source_version add foreign key (since_revision) references revision;
create index source_version_until on source_version (until_revision);

-- Citations: one table for each kind that cites, so that each has a real foreign key

create table family_citation (
  version_id bigint not null references family_version,
  position int not null,
  citation_key varchar(80) not null,
  variant_id bigint references entry,
  source_id bigint not null references entry,
  locator text,
  stance varchar(10) not null,
  note text,
  primary key (version_id, position)
);

create table variant_citation (
  version_id bigint not null references variant_version,
  position int not null,
  citation_key varchar(80) not null,
  variant_id bigint references entry,
  source_id bigint not null references entry,
  locator text,
  stance varchar(10) not null,
  note text,
  primary key (version_id, position)
);

create table series_citation (
  version_id bigint not null references series_version,
  position int not null,
  citation_key varchar(80) not null,
  variant_id bigint references entry,
  source_id bigint not null references entry,
  locator text,
  stance varchar(10) not null,
  note text,
  primary key (version_id, position)
);

create table serial_block_citation (
  version_id bigint not null references serial_block_version,
  position int not null,
  citation_key varchar(80) not null,
  variant_id bigint references entry,
  source_id bigint not null references entry,
  locator text,
  stance varchar(10) not null,
  note text,
  primary key (version_id, position)
);

create table feature_citation (
  version_id bigint not null references feature_version,
  position int not null,
  citation_key varchar(80) not null,
  variant_id bigint references entry,
  source_id bigint not null references entry,
  locator text,
  stance varchar(10) not null,
  note text,
  primary key (version_id, position)
);

create table change_citation (
  version_id bigint not null references change_version,
  position int not null,
  citation_key varchar(80) not null,
  variant_id bigint references entry,
  source_id bigint not null references entry,
  locator text,
  stance varchar(10) not null,
  note text,
  primary key (version_id, position)
);

create table retrofit_citation (
  version_id bigint not null references retrofit_version,
  position int not null,
  citation_key varchar(80) not null,
  variant_id bigint references entry,
  source_id bigint not null references entry,
  locator text,
  stance varchar(10) not null,
  note text,
  primary key (version_id, position)
);

-- Pictures: names have versions; content is stored once, by its digest

create table blob (
  sha256 varchar(64) primary key,
  bytes bytea not null
);

create table picture_version (
  id bigint primary key,
  name text not null,
  since_revision int not null,
  until_revision int not null default 2147483647,
  sha256 varchar(64) not null references blob,
  media_type text not null,
  unique (name, until_revision),
  check (since_revision < until_revision)
);
create index picture_version_since on picture_version (since_revision);
alter table picture_version add foreign key (since_revision) references revision;
create index picture_version_until on picture_version (until_revision);
create index picture_version_sha256 on picture_version (sha256);
