package club.yearline.api;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A body that differs from a true one in a single place where no description could allow it.
 *
 * @param what what was done to it, and where
 * @param body the body after that
 */
record Mutation(String what, JsonNode body) {

  /** Everything that can be done to a body: to each of its objects, and to each member of them. */
  static List<Mutation> all(JsonNode body) {
    List<Mutation> all = new ArrayList<>();
    collect(body, body, "", all);
    return all;
  }

  private static void collect(JsonNode whole, JsonNode node, String at, List<Mutation> all) {
    if (node.isObject()) {
      all.add(at(whole, at, "a member more", object -> object.put("unheardOf", 1)));
      for (String member : node.propertyNames()) {
        all.addAll(of(whole, at, member, node.get(member)));
        collect(whole, node.get(member), at + "/" + member, all);
      }
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        collect(whole, node.get(i), at + "/" + i, all);
      }
    }
  }

  private static List<Mutation> of(JsonNode whole, String at, String member, JsonNode value) {
    List<Mutation> all = new ArrayList<>();
    all.add(
        at(
            whole,
            at,
            member + " renamed",
            object -> object.set("the" + member, object.remove(member))));
    all.add(
        at(
            whole,
            at,
            member + " of another type",
            object -> object.set(member, other(object, value))));
    if (!value.isNull()) {
      all.add(
          at(whole, at, member + " null in a list", object -> object.putArray(member).addNull()));
    }
    return all;
  }

  private static JsonNode other(ObjectNode object, JsonNode value) {
    return value.isObject() || value.isNull()
        ? object.booleanNode(true)
        : object.objectNode().put("unheardOf", 1);
  }

  private static Mutation at(
      JsonNode whole, String at, String what, java.util.function.Consumer<ObjectNode> change) {
    JsonNode copy = whole.deepCopy();
    change.accept((ObjectNode) copy.at(at));
    return new Mutation(what + " at " + at, copy);
  }
}
