-- What is published stays as it was published: versions may be ended once, nothing else.

create function refuse_rewriting() returns trigger language plpgsql as $$
begin
  if tg_op = 'UPDATE' and to_jsonb(old) ? 'until_revision' then
    if old.until_revision = 2147483647
        and to_jsonb(old) - 'until_revision' = to_jsonb(new) - 'until_revision' then
      return new;
    end if;
  end if;
  raise exception 'Published rows of % are never changed or deleted', tg_table_name
    using errcode = 'integrity_constraint_violation';
end
$$;

create trigger family_version_is_fixed before update or delete on family_version
  for each row execute function refuse_rewriting();
create trigger family_version_is_kept before truncate on family_version
  for each statement execute function refuse_rewriting();
create trigger variant_version_is_fixed before update or delete on variant_version
  for each row execute function refuse_rewriting();
create trigger variant_version_is_kept before truncate on variant_version
  for each statement execute function refuse_rewriting();
create trigger series_version_is_fixed before update or delete on series_version
  for each row execute function refuse_rewriting();
create trigger series_version_is_kept before truncate on series_version
  for each statement execute function refuse_rewriting();
create trigger serial_block_version_is_fixed before update or delete on serial_block_version
  for each row execute function refuse_rewriting();
create trigger serial_block_version_is_kept before truncate on serial_block_version
  for each statement execute function refuse_rewriting();
create trigger feature_version_is_fixed before update or delete on feature_version
  for each row execute function refuse_rewriting();
create trigger feature_version_is_kept before truncate on feature_version
  for each statement execute function refuse_rewriting();
create trigger change_version_is_fixed before update or delete on change_version
  for each row execute function refuse_rewriting();
create trigger change_version_is_kept before truncate on change_version
  for each statement execute function refuse_rewriting();
create trigger retrofit_version_is_fixed before update or delete on retrofit_version
  for each row execute function refuse_rewriting();
create trigger retrofit_version_is_kept before truncate on retrofit_version
  for each statement execute function refuse_rewriting();
create trigger source_version_is_fixed before update or delete on source_version
  for each row execute function refuse_rewriting();
create trigger source_version_is_kept before truncate on source_version
  for each statement execute function refuse_rewriting();
create trigger picture_version_is_fixed before update or delete on picture_version
  for each row execute function refuse_rewriting();
create trigger picture_version_is_kept before truncate on picture_version
  for each statement execute function refuse_rewriting();
create trigger sold_name_is_fixed before update or delete on sold_name
  for each row execute function refuse_rewriting();
create trigger sold_name_is_kept before truncate on sold_name
  for each statement execute function refuse_rewriting();
create trigger production_run_is_fixed before update or delete on production_run
  for each row execute function refuse_rewriting();
create trigger production_run_is_kept before truncate on production_run
  for each statement execute function refuse_rewriting();
create trigger descent_is_fixed before update or delete on descent
  for each row execute function refuse_rewriting();
create trigger descent_is_kept before truncate on descent
  for each statement execute function refuse_rewriting();
create trigger feature_value_is_fixed before update or delete on feature_value
  for each row execute function refuse_rewriting();
create trigger feature_value_is_kept before truncate on feature_value
  for each statement execute function refuse_rewriting();
create trigger offered_is_fixed before update or delete on offered
  for each row execute function refuse_rewriting();
create trigger offered_is_kept before truncate on offered
  for each statement execute function refuse_rewriting();
create trigger cut_in_is_fixed before update or delete on cut_in
  for each row execute function refuse_rewriting();
create trigger cut_in_is_kept before truncate on cut_in
  for each statement execute function refuse_rewriting();
create trigger family_citation_is_fixed before update or delete on family_citation
  for each row execute function refuse_rewriting();
create trigger family_citation_is_kept before truncate on family_citation
  for each statement execute function refuse_rewriting();
create trigger variant_citation_is_fixed before update or delete on variant_citation
  for each row execute function refuse_rewriting();
create trigger variant_citation_is_kept before truncate on variant_citation
  for each statement execute function refuse_rewriting();
create trigger series_citation_is_fixed before update or delete on series_citation
  for each row execute function refuse_rewriting();
create trigger series_citation_is_kept before truncate on series_citation
  for each statement execute function refuse_rewriting();
create trigger serial_block_citation_is_fixed before update or delete on serial_block_citation
  for each row execute function refuse_rewriting();
create trigger serial_block_citation_is_kept before truncate on serial_block_citation
  for each statement execute function refuse_rewriting();
create trigger feature_citation_is_fixed before update or delete on feature_citation
  for each row execute function refuse_rewriting();
create trigger feature_citation_is_kept before truncate on feature_citation
  for each statement execute function refuse_rewriting();
create trigger change_citation_is_fixed before update or delete on change_citation
  for each row execute function refuse_rewriting();
create trigger change_citation_is_kept before truncate on change_citation
  for each statement execute function refuse_rewriting();
create trigger retrofit_citation_is_fixed before update or delete on retrofit_citation
  for each row execute function refuse_rewriting();
create trigger retrofit_citation_is_kept before truncate on retrofit_citation
  for each statement execute function refuse_rewriting();
create trigger revision_is_fixed before update or delete on revision
  for each row execute function refuse_rewriting();
create trigger revision_is_kept before truncate on revision
  for each statement execute function refuse_rewriting();
create trigger entry_is_fixed before update or delete on entry
  for each row execute function refuse_rewriting();
create trigger entry_is_kept before truncate on entry
  for each statement execute function refuse_rewriting();
create trigger blob_is_fixed before update or delete on blob
  for each row execute function refuse_rewriting();
create trigger blob_is_kept before truncate on blob
  for each statement execute function refuse_rewriting();
