/**
 * The JSON API under {@code /api/v1}: read calls for other programs, described by OpenAPI at {@code
 * /api/openapi}.
 *
 * <p>Allowed dependencies: the catalogue, the engine, citations, spotting, the estimates,
 * inspections, and the web base for refusals.
 */
@NullMarked
@ApplicationModule(
    allowedDependencies = {
      "catalog",
      "effectivity",
      "citation",
      "spotting",
      "estimation",
      "inspection",
      "web"
    })
package club.yearline.api;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
