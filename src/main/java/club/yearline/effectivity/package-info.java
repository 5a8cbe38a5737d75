/**
 * The engine: serial numbers, series, blocks, cut-ins, timelines, expected configuration,
 * differences, findings and impact. Immutable and pure; no framework is known here.
 *
 * <p>Allowed dependencies: the value types of {@code citation} (a source's kind decides the grade
 * of an answer's evidence).
 */
@NullMarked
@ApplicationModule(allowedDependencies = "citation")
package club.yearline.effectivity;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
