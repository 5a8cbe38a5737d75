/**
 * All that is stored, carried whole: backups, restoring them, and moving to another database.
 *
 * <p>Allowed dependencies: none of ours. Tables are found in the database, so that whatever a
 * module stores is carried without being listed here.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package club.yearline.upkeep;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
