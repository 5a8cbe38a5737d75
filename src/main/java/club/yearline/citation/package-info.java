/**
 * Sources and citations: documents and other evidence, pointers into them, what grade of evidence
 * they make, and references in CSL data, BibTeX and RIS.
 *
 * <p>Allowed dependencies: none of ours.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package club.yearline.citation;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
