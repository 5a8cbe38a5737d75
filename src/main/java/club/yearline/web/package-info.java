/**
 * The frame of every page: layout, marks, form fields, drawings, errors, static files.
 *
 * <p>Allowed dependencies: none of ours.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package club.yearline.web;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
