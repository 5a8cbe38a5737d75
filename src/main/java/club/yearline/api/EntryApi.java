package club.yearline.api;

import club.yearline.catalog.Reading;
import club.yearline.effectivity.Catalogue;
import club.yearline.web.Refusal;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** The entries of the catalogue. */
@RestController
@RequestMapping(path = "/api/v1", produces = MediaType.APPLICATION_JSON_VALUE)
@Tag(name = "Entries")
class EntryApi {

  @Operation(summary = "All families")
  @GetMapping("/families")
  EntryViews.Families families(Reading reading) {
    return EntryViews.families(reading);
  }

  @Operation(summary = "One family")
  @GetMapping("/families/{key}")
  EntryViews.Read<EntryViews.FamilyView> family(
      @Parameter(description = "Key of the family.", example = "turnstone") @PathVariable
          String key,
      Reading reading) {
    Catalogue catalogue = reading.catalogue();
    return catalogue
        .family(key)
        .map(f -> new EntryViews.Read<>(reading.revision(), EntryViews.of(catalogue, f)))
        .orElseThrow(() -> Refusal.notFound("unknown-family", key));
  }

  @Operation(summary = "One variant, with its serial blocks")
  @GetMapping("/variants/{key}")
  EntryViews.Read<EntryViews.VariantView> variant(
      @Parameter(description = "Key of the variant.", example = "la-2b") @PathVariable String key,
      Reading reading) {
    Catalogue catalogue = reading.catalogue();
    return catalogue
        .variant(key)
        .map(v -> new EntryViews.Read<>(reading.revision(), EntryViews.of(catalogue, v)))
        .orElseThrow(() -> Refusal.notFound("unknown-variant", key));
  }

  @Operation(summary = "One feature, with its values")
  @GetMapping("/features/{key}")
  EntryViews.Read<EntryViews.FeatureView> feature(
      @Parameter(description = "Key of the feature.", example = "door-latch") @PathVariable
          String key,
      Reading reading) {
    Catalogue catalogue = reading.catalogue();
    return catalogue
        .feature(key)
        .map(f -> new EntryViews.Read<>(reading.revision(), EntryViews.of(catalogue, f)))
        .orElseThrow(() -> Refusal.notFound("unknown-feature", key));
  }

  @Operation(summary = "One change, with its offering and cut-ins")
  @GetMapping("/changes/{key}")
  EntryViews.Read<EntryViews.ChangeView> change(
      @Parameter(description = "Key of the change.", example = "door-latch-rotary") @PathVariable
          String key,
      Reading reading) {
    Catalogue catalogue = reading.catalogue();
    return catalogue
        .change(key)
        .map(c -> new EntryViews.Read<>(reading.revision(), EntryViews.of(catalogue, c)))
        .orElseThrow(() -> Refusal.notFound("unknown-change", key));
  }

  @Operation(summary = "One source, with what cites it")
  @GetMapping("/sources/{key}")
  EntryViews.Read<EntryViews.SourceView> source(
      @Parameter(description = "Key of the source.", example = "parts-book-7") @PathVariable
          String key,
      Reading reading) {
    Catalogue catalogue = reading.catalogue();
    return catalogue
        .source(key)
        .map(s -> new EntryViews.Read<>(reading.revision(), EntryViews.of(catalogue, s.source())))
        .orElseThrow(() -> Refusal.notFound("unknown-source", key));
  }
}
