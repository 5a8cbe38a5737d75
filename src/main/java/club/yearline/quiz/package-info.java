/**
 * Quizzes made from the catalogue: questions whose one right answer is the engine's, the same for
 * one number at one revision for ever; to take on screen or on paper, alone or as a class. A pure
 * core ({@code Quiz}, {@code Judge}, {@code Claim}) and its pages.
 *
 * <p>Allowed dependencies: the catalogue's readings, the engine, what citations say, people (for
 * the links of classes), and the page layout.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"catalog", "effectivity", "citation", "accounts", "web"})
package club.yearline.quiz;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
