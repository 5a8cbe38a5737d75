/** Yearline: the club's shared, sourced and moderated memory of what changed when. */
@NullMarked
package club.yearline;

import org.jspecify.annotations.NullMarked;
