package club.yearline.api;

import club.yearline.effectivity.Retrofit;
import org.jspecify.annotations.Nullable;

/** A value that may lawfully be installed later, with the approval to look for. */
record RetrofitView(
    String key,
    String value,
    String document,
    @Nullable Integer firstYear,
    @Nullable Integer lastYear,
    @Nullable String series,
    @Nullable String firstSerial,
    @Nullable String lastSerial,
    @Nullable String note) {

  static RetrofitView of(Retrofit retrofit) {
    return new RetrofitView(
        retrofit.key(),
        retrofit.value(),
        retrofit.document(),
        retrofit.firstYear(),
        retrofit.lastYear(),
        retrofit.series(),
        retrofit.firstSerial(),
        retrofit.lastSerial(),
        retrofit.note());
  }
}
