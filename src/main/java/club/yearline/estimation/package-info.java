/**
 * Where a change cut in, learnt from airframes that were looked at. Pure and immutable.
 *
 * <p>Allowed dependencies: the engine.
 */
@NullMarked
@ApplicationModule(allowedDependencies = "effectivity")
package club.yearline.estimation;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
