/**
 * People, roles, sign-in, and who may ask what: the security configuration.
 *
 * <p>Allowed dependencies: the web helpers.
 */
@NullMarked
@ApplicationModule(allowedDependencies = "web")
package club.yearline.accounts;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
