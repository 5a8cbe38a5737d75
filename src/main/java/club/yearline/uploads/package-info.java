/**
 * What uploaded bytes are, judged by content, and what of them is kept.
 *
 * <p>Allowed dependencies: none of ours.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package club.yearline.uploads;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
