-- What is published stays as it was published: versions may be ended once, nothing else.

create trigger family_version_is_fixed before update, delete on family_version
  for each row call "club.yearline.catalog.PublishedRows";
create trigger variant_version_is_fixed before update, delete on variant_version
  for each row call "club.yearline.catalog.PublishedRows";
create trigger series_version_is_fixed before update, delete on series_version
  for each row call "club.yearline.catalog.PublishedRows";
create trigger serial_block_version_is_fixed before update, delete on serial_block_version
  for each row call "club.yearline.catalog.PublishedRows";
create trigger feature_version_is_fixed before update, delete on feature_version
  for each row call "club.yearline.catalog.PublishedRows";
create trigger change_version_is_fixed before update, delete on change_version
  for each row call "club.yearline.catalog.PublishedRows";
create trigger retrofit_version_is_fixed before update, delete on retrofit_version
  for each row call "club.yearline.catalog.PublishedRows";
create trigger source_version_is_fixed before update, delete on source_version
  for each row call "club.yearline.catalog.PublishedRows";
create trigger picture_version_is_fixed before update, delete on picture_version
  for each row call "club.yearline.catalog.PublishedRows";
create trigger sold_name_is_fixed before update, delete on sold_name
  for each row call "club.yearline.catalog.PublishedRows";
create trigger production_run_is_fixed before update, delete on production_run
  for each row call "club.yearline.catalog.PublishedRows";
create trigger descent_is_fixed before update, delete on descent
  for each row call "club.yearline.catalog.PublishedRows";
create trigger feature_value_is_fixed before update, delete on feature_value
  for each row call "club.yearline.catalog.PublishedRows";
create trigger offered_is_fixed before update, delete on offered
  for each row call "club.yearline.catalog.PublishedRows";
create trigger cut_in_is_fixed before update, delete on cut_in
  for each row call "club.yearline.catalog.PublishedRows";
create trigger family_citation_is_fixed before update, delete on family_citation
  for each row call "club.yearline.catalog.PublishedRows";
create trigger variant_citation_is_fixed before update, delete on variant_citation
  for each row call "club.yearline.catalog.PublishedRows";
create trigger series_citation_is_fixed before update, delete on series_citation
  for each row call "club.yearline.catalog.PublishedRows";
create trigger serial_block_citation_is_fixed before update, delete on serial_block_citation
  for each row call "club.yearline.catalog.PublishedRows";
create trigger feature_citation_is_fixed before update, delete on feature_citation
  for each row call "club.yearline.catalog.PublishedRows";
create trigger change_citation_is_fixed before update, delete on change_citation
  for each row call "club.yearline.catalog.PublishedRows";
create trigger retrofit_citation_is_fixed before update, delete on retrofit_citation
  for each row call "club.yearline.catalog.PublishedRows";
create trigger revision_is_fixed before update, delete on revision
  for each row call "club.yearline.catalog.PublishedRows";
create trigger entry_is_fixed before update, delete on entry
  for each row call "club.yearline.catalog.PublishedRows";
create trigger blob_is_fixed before update, delete on blob
  for each row call "club.yearline.catalog.PublishedRows";
