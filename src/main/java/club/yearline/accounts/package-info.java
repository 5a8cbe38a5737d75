/**
 * People, roles, sign-in, and who may ask what: the security configuration.
 *
 * <p>Allowed dependencies: none of ours.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package club.yearline.accounts;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
