-- The expected configuration of one serial, from the stored rows: for each feature the changes that
-- decide, oldest first. Parameter: the serial as stamped.
--
-- It says what domain rules the engine follows, for records as the generator makes them: serials
-- of one length, so that their order is that of their text; blocks with a year that do not overlap.
with asked as (
  select ?::text as serial
), place as (
  select b.variant_id, b.series_id, b.allotted_year as year, a.serial
  from asked a
  join series_version s
    on s.prefix = substring(a.serial from '^.*-') and s.until_revision = 2147483647
  join serial_block_version b
    on b.series_id = s.entry_id and b.first_serial <= a.serial and a.serial <= b.last_serial
    and b.until_revision = 2147483647
), step as (
  -- A serial counts, for comparing it with years, by the block that holds it or the next above.
  select v.feature_id, v.entry_id as change_id, c.at_start,
    c.first_year, c.first_serial, c.settled_year, c.settled_serial, c.series_id,
    f.year as first_serial_year, s.year as settled_serial_year,
    p.serial, p.year, c.series_id is not distinct from p.series_id as same_series
  from place p
  join cut_in c on c.variant_id = p.variant_id
  join change_version v on v.id = c.version_id and v.until_revision = 2147483647
  left join lateral (
    select b.allotted_year as year from serial_block_version b
    where b.variant_id = c.variant_id and b.series_id = c.series_id
      and b.last_serial >= c.first_serial and b.until_revision = 2147483647
    order by b.last_serial limit 1) f on true
  left join lateral (
    select b.allotted_year as year from serial_block_version b
    where b.variant_id = c.variant_id and b.series_id = c.series_id
      and b.last_serial >= c.settled_serial and b.until_revision = 2147483647
    order by b.last_serial limit 1) s on true
), sided as (
  -- Whether the place lies below an end of the window; null where the records do not tell.
  select *,
    case
      when first_serial is not null and same_series then serial < first_serial
      when first_year is not null then year < first_year
      when first_serial is null then false
      when first_serial_year <> year then year < first_serial_year
    end as below_first,
    case
      when settled_serial is not null and same_series then serial < settled_serial
      when settled_year is not null then year < settled_year
      when settled_serial is null then true
      when settled_serial_year <> year then year < settled_serial_year
    end as below_settled,
    coalesce(settled_year, settled_serial_year, first_year, first_serial_year) as rank_year,
    coalesce(settled_serial, first_serial) as rank_serial
  from step
), ranked as (
  select *,
    at_start or below_settled is false as after,
    not at_start and first_year is null and first_serial is null
      and below_settled is distinct from false as leans,
    row_number() over (
      partition by feature_id
      order by not at_start, rank_year nulls last, rank_serial is not null,
        case when rank_serial is null then 0 else series_id end, rank_serial nulls first,
        first_year nulls first, first_serial nulls first, change_id) as rank
  from sided
), leaning as (
  -- A window without a first end begins where the change before it does.
  select *, count(*) filter (where not leans) over (partition by feature_id order by rank) as lean
  from ranked
), standing as (
  select *,
    not after and case
      when leans then coalesce(bool_or(not leans and not after and below_first is true)
        over (partition by feature_id, lean), false)
      else below_first is true
    end as before
  from leaning
), based as (
  select *, max(rank) filter (where after) over (partition by feature_id) as base
  from standing
)
select f.entry_key as feature, c.entry_key as change,
  not b.after and (b.below_first is null or b.below_settled is null) as open,
  b.base is null as nothing_before
from based b
join entry f on f.id = b.feature_id
join entry c on c.id = b.change_id
where (b.base is null or b.rank >= b.base) and not b.before
order by b.feature_id, b.rank
