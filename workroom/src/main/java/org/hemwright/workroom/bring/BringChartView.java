package org.hemwright.workroom.bring;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.exchange.chart.StandardMeasurement;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.BodySurvey;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;
import org.hemwright.workbench.LiveDraft;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.chart.BroughtChart;
import org.hemwright.workbench.chart.ChartAnswers;
import org.hemwright.workbench.chart.ChartLines;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workroom.history.Splice;
import org.hemwright.workroom.ledger.LedgerView;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;
import org.hemwright.workroom.text.FindingWords;

/** Takes a chart in the shape she has it, and her word for what its headings mean. */
public final class BringChartView implements View {
  private static final String SIZES = "sizes.csv";
  private static final int MOST_ANSWERS = 2000;
  private static final int MOST_PROBLEMS = 12;

  private final Parcels parcels;

  /**
   * With the files that windows send.
   *
   * @param parcels of the same room
   */
  public BringChartView(Parcels parcels) {
    this.parcels = parcels;
  }

  @Override
  public Map<String, Answering> answers() {
    return Map.of("brought chart", this::brought, "write chart", this::writeChart);
  }

  /** Her chart with her answers, and what it would come to. */
  private record Answered(BroughtChart chart, String base, Optional<String> document) {}

  /**
   * {@code {"ask": "brought chart", "text", "matches": {heading: name}, "unit", "whom", "base"}}:
   * what her chart is taken for; without {@code text}, the file that the window has sent. {@code
   * {"sizes", "base", "columns": [{"heading", "name", "standard", "proposed", "unit", "values"}],
   * "estimates": [{"name", "from", "spread", "run", "values"}], "missing", "leftOut", "unread",
   * "ranges", "withoutUnit", "twice", "names": [{"name", "standard"}], "csv", "problems"}}.
   */
  private Frame brought(Room room, Window window, Question question) throws Question.Unclear {
    Answered answered = answered(room, window, question);
    BroughtChart chart = answered.chart;
    ObjectNode head = Frame.answer();
    Wording wording = Workbench.wording(room.draft().evaluated().run());
    ArrayNode problems = head.putArray("problems");
    FindingWords.write(chart.findings(), room, wording, problems);
    if (!chart.findings().isEmpty()) {
      return new Frame(head);
    }
    texts(head.putArray("sizes"), chart.sizes());
    head.put("base", answered.base);
    ArrayNode columns = head.putArray("columns");
    for (BroughtChart.Column column : chart.columns()) {
      ObjectNode one = columns.addObject().put("heading", column.heading());
      one.put("name", column.name()).put("proposed", column.proposed());
      column.standard().ifPresent(words -> one.put("standard", words));
      column.unit().ifPresent(unit -> one.put("unit", unit));
      values(one.putArray("values"), column.values(), 1);
    }
    ArrayNode estimates = head.putArray("estimates");
    for (BroughtChart.Estimate estimate : chart.estimates()) {
      ObjectNode one = estimates.addObject().put("name", estimate.name());
      estimate.spread().ifPresent(mm -> one.put("spread", StrictMath.rint(mm) / 10));
      one.put("run", estimate.run());
      texts(one.putArray("from"), estimate.from());
      values(one.putArray("values"), estimate.mm(), 10);
    }
    texts(head.putArray("missing"), chart.missing());
    texts(head.putArray("leftOut"), chart.leftOut());
    texts(head.putArray("unread"), chart.unread());
    texts(head.putArray("ranges"), chart.ranges());
    texts(head.putArray("withoutUnit"), chart.withoutUnit());
    texts(head.putArray("twice"), chart.twice());
    names(room, head.putArray("names"));
    if (chart.isWhole() && answered.document.isPresent()) {
      head.put("csv", chart.csv());
      LiveDraft draft = draft(room, answered);
      Wording words = Workbench.wording(draft.evaluated().run());
      List<Finding> found = draft.evaluated().problems();
      FindingWords.write(
          found.subList(0, Math.min(MOST_PROBLEMS, found.size())),
          room,
          draft.evaluated().run().map(LedgerView::format).map(words::showing).orElse(words),
          problems);
    }
    return new Frame(head);
  }

  /** The measurements that headings may be matched to: what the pattern takes, then the rest. */
  private static void names(Room room, ArrayNode list) {
    List<String> all = new ArrayList<>(needed(room));
    StandardMeasurement.all().stream()
        .map(StandardMeasurement::name)
        .filter(name -> !all.contains(name))
        .forEach(all::add);
    for (String name : all) {
      ObjectNode one = list.addObject().put("name", name);
      StandardMeasurement.named(name.equals("chest") ? "bust" : name)
          .map(each -> name.equals("chest") ? "chest girth" : each.standard())
          .ifPresent(words -> one.put("standard", words));
    }
  }

  private static void texts(ArrayNode list, List<String> texts) {
    texts.forEach(list::add);
  }

  private static void values(ArrayNode list, List<OptionalDouble> values, double over) {
    for (OptionalDouble value : values) {
      if (value.isPresent()) {
        list.add(StrictMath.rint(value.getAsDouble() / over * 1000) / 1000);
      } else {
        list.addNull();
      }
    }
  }

  /**
   * {@code {"ask": "write chart", …as "brought chart"}}: puts the chart in the place of the
   * pattern's, and the base size with it.
   */
  private Frame writeChart(Room room, Window window, Question question) throws Question.Unclear {
    Answered answered = answered(room, window, question);
    if (!answered.chart.isWhole() || answered.document.isEmpty()) {
      throw new Question.Unclear("chart-cannot-taken-stands");
    }
    List<Splice> splices = new ArrayList<>();
    String before = room.text(SIZES);
    String chart = answered.chart.csv();
    if (!chart.equals(before)) {
      splices.add(Splice.between(SIZES, before, chart));
    }
    String document = room.text(PatternFolder.DOCUMENT);
    if (!answered.document.get().equals(document)) {
      splices.add(Splice.between(PatternFolder.DOCUMENT, document, answered.document.get()));
    }
    boolean changed = !splices.isEmpty() && room.change(splices, false, "chart").isPresent();
    return new Frame(Frame.answer().put("changed", changed));
  }

  private static LiveDraft draft(Room room, Answered answered) {
    byte[] csv = answered.chart.csv().getBytes(StandardCharsets.UTF_8);
    return room.tried(PatternFolder.DOCUMENT, answered.document.orElseThrow(), SIZES, csv);
  }

  // --- her answers ------------------------------------------------------------------------------

  private Answered answered(Room room, Window window, Question question) throws Question.Unclear {
    JsonNode body = question.body();
    String file = "pasted";
    byte[] bytes = body.path("text").asText("").getBytes(StandardCharsets.UTF_8);
    if (!body.path("text").isTextual()) {
      file = parcels.name(window).orElseThrow(() -> new Question.Unclear("no-chart-was-sent"));
      bytes = parcels.bytes(window).orElseThrow();
    }
    Map<String, String> matches = new LinkedHashMap<>();
    body.path("matches")
        .properties()
        .forEach(each -> matches.put(each.getKey(), name(each.getValue().asText(""))));
    if (matches.size() > MOST_ANSWERS) {
      throw new Question.Unclear("too-many-headings");
    }
    String unit = body.path("unit").asText("");
    BroughtChart chart =
        BroughtChart.of(
            file,
            bytes,
            new ChartAnswers(
                matches,
                unit.matches("cm|mm|in") ? Optional.of(unit) : Optional.empty(),
                needed(room),
                sex(body.path("whom").asText("")),
                needed(room).contains("chest"),
                body.path("whom").asText("").equals("children")));
    String base = base(room, chart, body.path("base").asText(""));
    Optional<String> document =
        room.draft().document().flatMap(read -> ChartLines.with(read, SIZES, chart.sizes(), base));
    return new Answered(chart, base, document);
  }

  private static String name(String typed) {
    return typed.strip().toLowerCase(java.util.Locale.ROOT).replaceAll("[\\s-]+", "_");
  }

  private static Optional<BodySurvey.Sex> sex(String whom) {
    return switch (whom) {
      case "women" -> Optional.of(BodySurvey.Sex.WOMEN);
      case "men" -> Optional.of(BodySurvey.Sex.MEN);
      default -> Optional.empty();
    };
  }

  /** The measurements that the pattern takes from its chart. */
  private static List<String> needed(Room room) {
    Optional<SizeRun> run = room.draft().evaluated().run();
    if (run.isEmpty()) {
      return List.of();
    }
    List<String> measured = run.get().pattern().measured();
    return measured.isEmpty()
        ? run.get().pattern().chart().columns().stream().map(SizeChart.Column::name).toList()
        : measured;
  }

  /** Her base size, else the one that the document has, else the middle one. */
  private static String base(Room room, BroughtChart chart, String said) {
    if (chart.sizes().contains(said)) {
      return said;
    }
    String before =
        room.draft().evaluated().run().map(run -> run.pattern().base().name()).orElse("");
    if (chart.sizes().contains(before) || chart.sizes().isEmpty()) {
      return before;
    }
    return chart.sizes().get(chart.sizes().size() / 2);
  }
}
