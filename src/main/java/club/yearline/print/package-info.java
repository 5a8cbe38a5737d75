/**
 * Paper: pages made of our own HTML, as PDF. Nothing is ever fetched: type faces and the sheet's
 * style lie in the application, pictures are handed over.
 *
 * <p>Allowed dependencies: the web helpers, for refusals.
 */
@NullMarked
@ApplicationModule(allowedDependencies = "web")
package club.yearline.print;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
