package org.hemwright.workroom.bring;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.pattern.traced.OutlineRequest;
import org.hemwright.workbench.traced.PartRole;
import org.hemwright.workbench.traced.TracingAnswers;
import org.hemwright.workroom.talk.Question;

/** What the designer says of a drawing, as the page sends it. */
final class SentAnswers {
  private static final int MOST_ROLES = 5000;
  private static final int MOST_EDGES = 200;

  private SentAnswers() {}

  /**
   * The answers.
   *
   * @param file the drawing's name in the pattern folder
   * @param body what was sent
   * @throws Question.Unclear where an answer is missing or beyond what is asked
   */
  static TracingAnswers read(String file, JsonNode body) throws Question.Unclear {
    Map<String, PartRole> roles = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> each : body.path("roles").properties()) {
      roles.put(
          each.getKey(),
          PartRole.of(each.getValue().asText())
              .orElseThrow(() -> new Question.Unclear("part-none")));
    }
    JsonNode told = body.path("edges");
    if (roles.size() > MOST_ROLES || told.size() > MOST_EDGES) {
      throw new Question.Unclear("too-many-parts-or");
    }
    List<TracingAnswers.EdgeAnswer> edges = new ArrayList<>();
    for (JsonNode edge : told) {
      edges.add(
          new TracingAnswers.EdgeAnswer(
              edge.path("name").asText(""),
              edge.path("less").asText(""),
              edge.path("leftOut").asBoolean()));
    }
    double corners = body.path("corners").asDouble(OutlineRequest.USUAL_CORNER_DEGREES);
    if (!(corners > 0 && corners < 180)) {
      throw new Question.Unclear("corner-turns-by-more");
    }
    return new TracingAnswers(
        file,
        roles,
        body.path("scale").asText(""),
        body.path("start").asText("top left"),
        body.path("clockwise").asBoolean(true),
        corners,
        body.path("less").asText(""),
        edges,
        card(body.path("piece")));
  }

  private static TracingAnswers.Card card(JsonNode told) throws Question.Unclear {
    String name = told.path("name").asText("").strip().replaceAll("\\s+", "_");
    int number = told.path("number").asInt(0);
    int count = told.path("count").asInt(0);
    if (name.isEmpty() || number < 0 || count < 0) {
      throw new Question.Unclear("piece-name-number-and");
    }
    String instead = told.path("instead").asText("");
    return new TracingAnswers.Card(
        name,
        told.path("title").asText(""),
        number,
        count,
        told.path("fabric").asText("").strip(),
        told.path("mirrored").asBoolean(),
        told.path("fold").asText("").strip(),
        told.path("allowance").asText(""),
        told.path("size").asText(""),
        instead.isBlank() ? Optional.empty() : Optional.of(instead));
  }
}
