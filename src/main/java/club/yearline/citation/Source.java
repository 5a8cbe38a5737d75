package club.yearline.citation;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A document or other evidence.
 *
 * @param key stable key
 * @param kind what kind of evidence
 * @param title its title
 * @param author "family, given"; several parted by semicolons
 * @param publisher who published it
 * @param identifier document number, with its revision
 * @param issued EDTF level 1 date (ISO 8601-2), as text
 * @param url http or https address
 * @param accessed day it was read online
 * @param note plain text
 */
public record Source(
    String key,
    SourceKind kind,
    String title,
    @Nullable String author,
    @Nullable String publisher,
    @Nullable String identifier,
    @Nullable String issued,
    @Nullable String url,
    @Nullable LocalDate accessed,
    @Nullable String note) {}
