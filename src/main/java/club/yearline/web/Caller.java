package club.yearline.web;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Who looks at a page, as far as its frame shows it. Stands as an attribute on the request, under
 * the name of this class.
 *
 * @param name the name of who is signed in; null for a visitor
 * @param links what the frame links to for this person, in order
 * @param mayRead whether the catalogue is open to this person
 */
public record Caller(@Nullable String name, List<Section> links, boolean mayRead) {

  static final Caller VISITOR = new Caller(null, List.of(), true);
}
