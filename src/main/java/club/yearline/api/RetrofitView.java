package club.yearline.api;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Retrofit;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A value that may lawfully be installed later, with the approval to look for.
 *
 * @param mandatory whether an airworthiness directive demands it
 * @param applies whether it is recorded for the position of the answer; absent where the answer is
 *     not about one position
 */
record RetrofitView(
    String key,
    String value,
    String document,
    @Schema(description = "Whether an airworthiness directive demands it.") boolean mandatory,
    @Schema(
            description =
                "Whether it is recorded for the position asked about. Absent where the answer is"
                    + " about a stretch of positions.")
        @Nullable Boolean applies,
    @Nullable Integer firstYear,
    @Nullable Integer lastYear,
    @Nullable String series,
    @Nullable String firstSerial,
    @Nullable String lastSerial,
    @Nullable String note,
    List<CitationView> citations) {

  static RetrofitView of(Catalogue catalogue, Retrofit retrofit, @Nullable Position position) {
    return new RetrofitView(
        retrofit.key(),
        retrofit.value(),
        retrofit.document(),
        catalogue.isMandatory(retrofit),
        position == null ? null : retrofit.fits(position),
        retrofit.firstYear(),
        retrofit.lastYear(),
        retrofit.series(),
        retrofit.firstSerial(),
        retrofit.lastSerial(),
        retrofit.note(),
        CitationView.all(retrofit.citations()));
  }
}
