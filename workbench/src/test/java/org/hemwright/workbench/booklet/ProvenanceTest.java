package org.hemwright.workbench.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.hemwright.booklet.BookletMaking;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Provenance.Source;
import org.hemwright.booklet.post.Posts;
import org.hemwright.booklet.words.Telling;
import org.hemwright.booklet.words.Wordbook;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Amount;
import org.hemwright.pattern.make.Needle;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Stitch;
import org.hemwright.pattern.measure.Measurements;
import org.hemwright.pattern.notion.NotionSettings;
import org.hemwright.pattern.notion.Notions;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.PieceCard;
import org.hemwright.pattern.quantity.DecimalText;
import org.hemwright.pattern.quantity.LengthKind;
import org.hemwright.pattern.quantity.Quantity;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every value that a maker reads, in the booklet, the posts, the shot list, the listing and the
 * testers' call, is fetched again from where it says that it comes from, after one dial was
 * changed; none is left over from before.
 */
class ProvenanceTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "eddy-skirt      | elastic_width = 3 cm    | elastic_width = 4 cm",
        "eddy-skirt      | short_length  = 48 cm   | short_length  = 50 cm",
        "inlet-tee       | bust_ease      = 4 cm   | bust_ease      = 6 cm",
        "marram-trousers | hip_ease      = 4 in    | hip_ease      = 5 in",
        "brackish-skirt  | hip_ease     = 2 in     | hip_ease     = 3 in",
        "shingle-shirt   | chest_ease    = 16 cm   | chest_ease    = 18 cm"
      })
  void everyValueIsWhatItsSourceSaysAfterADialWasTurned(
      String example, String before, String after) {
    BookletMaking old = Examples.booklet(example);
    BookletMaking now = Examples.changed(example, before.strip(), after.strip());
    List<String> wrong = new ArrayList<>();
    int fetched = 0;
    for (Inline.Value value : values(now)) {
      Set<String> expected = fetch(value, now.given().telling());
      fetched++;
      if (!expected.contains(value.text())) {
        wrong.add(value.from() + " says " + value.text() + ", its source " + expected);
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(fetched).isGreaterThan(200);
    assertThat(texts(now)).as("the dial shows in the booklet").isNotEqualTo(texts(old));
  }

  private static List<String> texts(BookletMaking making) {
    return values(making).stream().map(Inline.Value::text).toList();
  }

  private static List<Inline.Value> values(BookletMaking making) {
    List<List<Inline>> texts = new ArrayList<>(making.booklet().texts());
    Posts.pages(making.given()).forEach(page -> texts.addAll(page.texts()));
    List<Inline.Value> values = new ArrayList<>();
    for (List<Inline> text : texts) {
      for (Inline inline : Inline.all(text)) {
        if (inline instanceof Inline.Value value) {
          values.add(value);
        }
      }
    }
    return values;
  }

  // --- fetching a value again -----------------------------------------------------------------

  private static Set<String> fetch(Inline.Value value, Telling telling) {
    List<String> keys = value.from().keys();
    SizeRun run = telling.run();
    Wordbook words = telling.words();
    Source source = value.from().source();
    return switch (source) {
      case BODY -> lengths(words, LengthKind.BODY, body(run, keys.get(1), keys.get(0)));
      case FINISHED -> finished(telling, keys);
      case ELASTIC -> elastic(telling, keys);
      case NUMBER -> number(telling, keys);
      case FABRIC -> fabric(telling, keys);
      case PIECE -> piece(run, keys);
      case ALLOWANCE -> allowance(telling, keys);
      case STEP -> step(telling, keys);
      case DETAILS ->
          Set.of(
              switch (keys.get(0)) {
                case "title" -> run.pattern().details().title();
                case "version" -> run.pattern().details().version();
                case "dated" -> words.dateText(run.pattern().details().dated());
                default -> run.pattern().details().by();
              });
      case NAME -> name(telling, keys);
      case ORDER -> order(run, keys);
      case SETTING ->
          switch (last(keys)) {
            // Handbook section 8: two testers or more for each band of sizes.
            case "testers-each-band" -> Set.of("2");
            // To a sixteenth: an eighth would leave the square 1.6 mm short.
            case "large" -> lengths(words, LengthKind.DIFFERENCE, Optional.of(100.0));
            case "small" -> lengths(words, LengthKind.NOTION, Optional.of(25.4));
            default -> lengths(words, LengthKind.FINISHED, Optional.of(100.0));
          };
      case STANDARD ->
          keys.size() == 1
              ? Set.of("ISO\u00a04915")
              : Stream.of(Stitch.Kind.values())
                  .filter(kind -> kind.key().equals(keys.get(1)))
                  .flatMap(kind -> kind.iso4915().stream())
                  .collect(Collectors.toSet());
      case NEEDS -> needs(telling, keys);
      case CLOTH, PRINTED, SEAM -> Set.of();
    };
  }

  private static Set<String> lengths(Wordbook words, LengthKind kind, Optional<Double> mm) {
    return mm.map(length -> Set.of(words.lengthText(length, kind))).orElse(Set.of());
  }

  private static Set<String> lengths(Wordbook words, DoubleStream all, String which) {
    double[] mm = all.toArray();
    Set<String> texts = new TreeSet<>();
    for (LengthKind kind : LengthKind.values()) {
      if (!which.equals("most")) {
        texts.add(words.lengthText(DoubleStream.of(mm).min().orElse(0), kind));
      }
      if (!which.equals("least")) {
        texts.add(words.lengthText(DoubleStream.of(mm).max().orElse(0), kind));
      }
    }
    return texts;
  }

  private static String last(List<String> keys) {
    return keys.get(keys.size() - 1);
  }

  private static Optional<Double> body(SizeRun run, String measure, String size) {
    Size at = run.pattern().chart().size(size).orElseThrow();
    return run.pattern()
        .chart()
        .column(measure)
        .map(column -> column.cells().get(at.position()).value().orElseThrow());
  }

  private static Set<String> finished(Telling telling, List<String> keys) {
    double girth =
        Measurements.of(telling.run()).girths().stream()
            .filter(g -> g.view().equals(keys.get(0)) && g.level().equals(keys.get(1)))
            .map(g -> g.girth().get(keys.get(2)))
            .findFirst()
            .orElseThrow();
    double shown =
        keys.size() > 3
            ? girth - body(telling.run(), keys.get(1), keys.get(2)).orElseThrow()
            : girth;
    return lengths(telling.words(), LengthKind.FINISHED, Optional.of(shown));
  }

  private static Set<String> elastic(Telling telling, List<String> keys) {
    DoubleStream.Builder all = DoubleStream.builder();
    for (SizedPattern sized : telling.run().sizes()) {
      if (keys.size() < 3
          || List.of("least", "most").contains(keys.get(2))
          || sized.size().name().equals(keys.get(2))) {
        sized.elastics().stream()
            .filter(elastic -> elastic.name().equals(keys.get(0)))
            .forEach(
                elastic ->
                    all.add(
                        switch (keys.get(1)) {
                          case "width" -> elastic.width();
                          case "cut" -> elastic.cut();
                          case "overlap" -> elastic.overlap();
                          default -> elastic.finished();
                        }));
      }
    }
    return lengths(telling.words(), all.build(), last(keys));
  }

  private static Set<String> number(Telling telling, List<String> keys) {
    DoubleStream.Builder all = DoubleStream.builder();
    Set<String> texts = new TreeSet<>();
    for (SizedPattern sized : telling.run().sizes()) {
      Quantity number = sized.numbers().get(keys.get(0));
      boolean meant =
          keys.size() == 1
              || List.of("least", "most").contains(keys.get(1))
              || sized.size().name().equals(keys.get(1));
      if (number != null && meant) {
        all.add(number.amount());
        texts.add(telling.words().percentText(number.amount()));
        texts.add(DecimalText.of(number.amount(), 3));
      }
    }
    texts.addAll(lengths(telling.words(), all.build(), last(keys)));
    return texts;
  }

  private static Set<String> fabric(Telling telling, List<String> keys) {
    Fabric fabric = telling.run().pattern().fabric(keys.get(0)).orElseThrow();
    return switch (keys.get(1)) {
      case "title" -> Set.of(fabric.title());
      case "stretch-across" ->
          Set.of(telling.words().percentText(fabric.stretchAcross().orElseThrow()));
      case "stretch-along" ->
          Set.of(telling.words().percentText(fabric.stretchAlong().orElseThrow()));
      default -> Set.of();
    };
  }

  private static Set<String> piece(SizeRun run, List<String> keys) {
    PieceCard card =
        run.pattern().pieces().stream()
            .filter(each -> each.name().equals(keys.get(0)))
            .findFirst()
            .orElseThrow();
    return switch (keys.get(1)) {
      case "title" -> Set.of(card.title());
      case "number" -> Set.of(Integer.toString(card.number()));
      default -> Set.of(Integer.toString(card.cuts().get(Integer.parseInt(keys.get(2))).count()));
    };
  }

  private static Set<String> allowance(Telling telling, List<String> keys) {
    DoubleStream.Builder all = DoubleStream.builder();
    for (SizedPattern sized : telling.run().sizes()) {
      sized
          .piece(keys.get(0))
          .flatMap(piece -> piece.edge(keys.get(1)))
          .map(edge -> edge.allowance())
          .ifPresent(
              allowance -> {
                if (keys.get(2).equals("whole")) {
                  all.add(allowance.width());
                } else if (allowance instanceof Allowance.TurnedBack back) {
                  all.add(back.folds().get(Integer.parseInt(keys.get(2))));
                } else {
                  all.add(allowance.width());
                }
              });
    }
    return lengths(telling.words(), all.build(), last(keys));
  }

  private static Set<String> step(Telling telling, List<String> keys) {
    if (keys.get(1).equals("usual-needle")) {
      Needle needle = telling.run().pattern().making().usualNeedle().orElseThrow();
      return Set.of(Needle.label(needle.from()), Needle.label(needle.to()));
    }
    Step step = telling.run().pattern().making().step(keys.get(0)).orElseThrow();
    if (last(keys).equals("count")) {
      int count =
          keys.subList(0, keys.size() - 1).stream()
              .map(id -> telling.run().pattern().making().step(id).orElseThrow())
              .mapToInt(each -> ((Act.Fasten) each.act()).count())
              .sum();
      return Set.of(Integer.toString(count));
    }
    return switch (keys.get(1)) {
      case "stitch" -> stitch(step, keys);
      case "distance" ->
          amount(telling, step.sewing().distance().orElseThrow().amount(), last(keys));
      case "apart" -> amount(telling, step.sewing().apart().orElseThrow(), last(keys));
      case "sold" ->
          lengths(
              telling.words(),
              DoubleStream.of(
                  ((Act.InsertZip) step.act()).sold().get(Integer.parseInt(keys.get(2)))),
              "");
      case "rows" -> Set.of(Integer.toString(step.sewing().rows()));
      case "to" -> amount(telling, ((Act.CutInto) step.act()).to().orElseThrow(), last(keys));
      case "size" -> amount(telling, ((Act.Fasten) step.act()).size(), last(keys));
      case "needle" ->
          Set.of(
              Needle.label(step.sewing().needle().orElseThrow().from()),
              Needle.label(step.sewing().needle().orElseThrow().to()));
      default ->
          keys.get(1).startsWith("leaves/")
              ? step.leaves().stream()
                  .filter(left -> keys.get(1).equals("leaves/" + left.name()))
                  .findFirst()
                  .map(left -> amount(telling, left.length(), last(keys)))
                  .orElse(Set.of())
              : Set.of();
    };
  }

  /** By the place among a step's choices, or in the table of stitches by its kind. */
  private static Set<String> stitch(Step step, List<String> keys) {
    Set<String> texts = new TreeSet<>();
    for (int i = 0; i < step.sewing().choices().size(); i++) {
      Stitch stitch = step.sewing().choices().get(i);
      boolean meant =
          keys.get(2).equals(Integer.toString(i)) || keys.get(2).equals(stitch.kind().key());
      if (meant) {
        double mm = keys.get(3).equals("length") ? stitch.lengthOrUsual() : stitch.widthOrUsual();
        texts.add(DecimalText.of(mm, 2) + "\u00a0mm");
      }
    }
    return texts;
  }

  private static Set<String> amount(Telling telling, Amount amount, String which) {
    DoubleStream all =
        telling.run().sizes().stream()
            .flatMapToDouble(sized -> amount.in(sized.numbers()).stream());
    return lengths(telling.words(), all, which);
  }

  private static Set<String> name(Telling telling, List<String> keys) {
    SizeRun run = telling.run();
    return switch (keys.size() == 1 ? "" : keys.get(0)) {
      case "size" -> run.size(keys.get(1)).map(sized -> Set.of(keys.get(1))).orElse(Set.of());
      case "view" -> run.pattern().view(keys.get(1)).map(v -> Set.of(v.title())).orElse(Set.of());
      case "stage" ->
          run.pattern().making().stages().stream()
              .map(stage -> stage.title())
              .filter(keys.get(1)::equals)
              .collect(Collectors.toSet());
      case "seam" ->
          telling.drawn().seams().stream().anyMatch(seam -> seam.name().startsWith(keys.get(1)))
              ? Set.of(keys.get(1).replace('_', ' '))
              : Set.of();
      case "dial" ->
          run.pattern().dials().stream()
              .filter(dial -> dial.name().equals(keys.get(1)))
              .map(dial -> dial.text())
              .collect(Collectors.toSet());
      default -> {
        String shown = keys.get(0).replace('_', ' ');
        Set<String> texts = new TreeSet<>();
        // Documents write "centre", the language's own word; American booklets spell it "center".
        texts.add(
            telling.words().tag().equals("en-US") ? shown.replace("centre", "center") : shown);
        texts.add(shown.substring(0, 1).toUpperCase(Locale.ROOT) + shown.substring(1));
        for (String key : List.of("measure.", "copy.")) {
          if (telling.words().has(key + keys.get(0))) {
            String word = telling.words().plain(key + keys.get(0));
            texts.add(word);
            texts.add(word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1));
          }
        }
        yield texts;
      }
    };
  }

  private static Set<String> order(SizeRun run, List<String> keys) {
    List<String> ids = run.pattern().making().steps().stream().map(Step::id).toList();
    if (keys.size() > 1) {
      return Set.of(Integer.toString(ids.indexOf(keys.get(1)) + 1));
    }
    Set<String> numbers = new TreeSet<>();
    for (int i = 1; i <= ids.size(); i++) {
      numbers.add(Integer.toString(i));
    }
    return numbers;
  }

  private static Set<String> needs(Telling telling, List<String> keys) {
    DoubleStream all =
        Notions.all(telling.run(), NotionSettings.HANDBOOK).stream()
            .flatMap(notions -> notions.thread().stream())
            .filter(need -> need.machine().name().toLowerCase(Locale.ROOT).equals(keys.get(1)))
            .mapToDouble(
                need -> keys.get(2).equals("least") ? need.thread().least() : need.thread().most());
    double mm = keys.get(2).equals("least") ? all.min().orElse(0) : all.max().orElse(0);
    return Set.of(telling.words().threadText(mm));
  }
}
