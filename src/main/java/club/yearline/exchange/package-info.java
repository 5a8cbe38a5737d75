/**
 * What goes in and out: the data package, the command line, the demo at start, and the package by
 * HTTP.
 *
 * <p>Allowed dependencies: the catalogue, corrections, people, the register, the tables of the
 * format, the engine's entry types, citations, what uploaded bytes are, and the web helpers.
 */
@NullMarked
@ApplicationModule(
    allowedDependencies = {
      "accounts",
      "catalog",
      "citation",
      "corrections",
      "effectivity",
      "fleet",
      "tables",
      "uploads",
      "upkeep",
      "web"
    })
package club.yearline.exchange;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
