package org.hemwright.booklet.post;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.hemwright.booklet.words.Telling;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Messages;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.measure.Measurements;
import org.hemwright.pattern.quantity.Length;
import org.hemwright.pattern.quantity.LengthUnit;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.quantity.Reading;

/**
 * What testers wrote in their forms, beside what the pattern says.
 *
 * @param measured finished girths, as measured and as predicted
 * @param cloth cloth used, and what the table says to buy
 * @param problems by step, in the order of the steps
 * @param findings answers that could not be read
 */
public record Feedback(
    List<Measured> measured,
    List<Used> cloth,
    Map<String, List<Problem>> problems,
    List<Finding> findings) {
  private static final double METRE = 1000;

  /** The side of the large test square (mm), and how far a printer may be off (mm). */
  private static final double SQUARE = 100;

  private static final double SQUARE_OFF = 1;

  /** What the form asks beside measurements, cloth and steps. */
  private static final Set<String> FIELDS =
      Set.of(
          "tester",
          "version",
          "size",
          "view",
          "machine",
          "paper",
          "scale",
          "alterations",
          "time",
          "photos",
          "remarks");

  public Feedback {
    measured = List.copyOf(measured);
    cloth = List.copyOf(cloth);
    findings = List.copyOf(findings);
  }

  /** The same, told after what was found before the forms were read. */
  public Feedback after(List<Finding> before) {
    List<Finding> all = new ArrayList<>(before);
    all.addAll(findings);
    return new Feedback(measured, cloth, problems, all);
  }

  /**
   * A finished girth.
   *
   * @param measured by the tester (mm)
   * @param predicted by the pattern (mm)
   */
  public record Measured(
      String tester, String size, String level, double measured, double predicted) {
    /** By how much the garment came out larger (mm). */
    public double difference() {
      return measured - predicted;
    }
  }

  /**
   * Cloth.
   *
   * @param width of it (mm)
   * @param used by the tester (mm)
   * @param predicted what the table says to buy in that width (mm); absent where it has no such row
   */
  public record Used(
      String tester,
      String size,
      String view,
      String fabric,
      double width,
      double used,
      OptionalDouble predicted) {}

  /** What was hard in a step. */
  public record Problem(String tester, String size, String words) {}

  /** The sentences for what can be wrong with a form. */
  public static Messages messages() {
    return Messages.beside(Feedback.class, "feedback.properties");
  }

  /**
   * Reads forms.
   *
   * @param forms their texts, by file name
   */
  public static Feedback read(
      Map<String, String> forms, Telling telling, Optional<YardageTable> yardage) {
    Reader reader = new Reader(telling, yardage);
    forms.forEach(reader::read);
    return reader.done();
  }

  /** Collects answers, form by form. */
  private static final class Reader {
    private final Telling telling;
    private final Optional<YardageTable> yardage;
    private final List<Measured> measured = new ArrayList<>();
    private final List<Used> cloth = new ArrayList<>();
    private final Map<String, List<Problem>> problems = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();

    Reader(Telling telling, Optional<YardageTable> yardage) {
      this.telling = telling;
      this.yardage = yardage;
      telling
          .run()
          .pattern()
          .making()
          .steps()
          .forEach(step -> problems.put(step.id(), new ArrayList<>()));
    }

    Feedback done() {
      problems.values().removeIf(List::isEmpty);
      return new Feedback(measured, cloth, problems, findings);
    }

    /** An answer with its place. */
    private record Answer(String text, Origin origin) {}

    void read(String file, String text) {
      Map<String, Answer> answers = new LinkedHashMap<>();
      if (text.isBlank()) {
        findings.add(Finding.fail("feedback-empty", file).at(new Origin(file, 1, 1)).build());
        return;
      }
      List<CsvRow> rows = CsvRow.all(text);
      if (rows.stream().noneMatch(row -> row.cells().size() >= 3)) {
        findings.add(Finding.fail("feedback-columns", file).at(new Origin(file, 1, 1)).build());
        return;
      }
      for (CsvRow row : rows) {
        if (row.cells().size() >= 3 && !row.cells().get(2).isBlank()) {
          Answer answer = new Answer(row.cells().get(2).strip(), new Origin(file, row.line(), 1));
          Answer before = answers.putIfAbsent(row.cells().get(0).strip(), answer);
          if (before != null) {
            findings.add(
                Finding.fail("feedback-twice", row.cells().get(0).strip())
                    .with("first", before.text())
                    .with("second", answer.text())
                    .with("line", String.valueOf(before.origin().line()))
                    .at(answer.origin())
                    .build());
          }
        }
      }
      Answer none = new Answer("", new Origin(file, 1, 1));
      String tester = answers.getOrDefault("tester", none).text();
      Answer size = answers.getOrDefault("size", none);
      boolean sized = telling.run().size(size.text()).isPresent();
      if (!sized) {
        findings.add(
            Finding.fail("feedback-size", size.text())
                .with("there", Argument.of(telling.sizeNames()))
                .at(size.origin())
                .build());
      }
      Answer version = answers.getOrDefault("version", none);
      String current = telling.run().pattern().details().version();
      if (!version.text().equals(current)) {
        findings.add(
            Finding.warn("feedback-version", version.text())
                .with("current", current)
                .at(version.origin())
                .build());
      }
      String view =
          sized || answers.containsKey("view") ? view(answers.getOrDefault("view", none)) : "";
      scale(answers);
      String of = sized ? size.text() : "";
      answers.forEach((field, answer) -> take(field, answer, tester, of, view, answers));
    }

    /** A sheet that was printed in another scale makes every other number worthless. */
    private void scale(Map<String, Answer> answers) {
      Answer answer = answers.get("scale");
      OptionalDouble mm = answer == null ? OptionalDouble.empty() : length(answer);
      if (answer != null
          && mm.isPresent()
          && StrictMath.abs(mm.getAsDouble() - SQUARE) > SQUARE_OFF) {
        findings.add(
            Finding.warn("feedback-scale", answer.text())
                .with("square", Argument.of(Quantity.length(SQUARE)))
                .at(answer.origin())
                .build());
      }
    }

    private String view(Answer said) {
      List<String> views =
          telling.run().pattern().views().stream().map(view -> view.name()).toList();
      if (views.contains(said.text()) || views.size() == 1) {
        return views.contains(said.text()) ? said.text() : views.get(0);
      }
      findings.add(
          Finding.fail("feedback-view", said.text())
              .with("there", Argument.of(views))
              .at(said.origin())
              .build());
      return "";
    }

    private void take(
        String field,
        Answer answer,
        String tester,
        String size,
        String view,
        Map<String, Answer> answers) {
      String[] parts = field.split("\\.", 3);
      if (parts[0].equals("finished") && parts.length == 2) {
        OptionalDouble mm = length(answer);
        Optional<Double> predicted = predicted(view, parts[1], size);
        if (mm.isPresent() && mm.getAsDouble() <= 0) {
          findings.add(Finding.fail("feedback-length", answer.text()).at(answer.origin()).build());
          return;
        }
        if (mm.isPresent() && !view.isEmpty() && !size.isEmpty() && predicted.isEmpty()) {
          findings.add(Finding.warn("feedback-level", parts[1]).at(answer.origin()).build());
        }
        if (mm.isPresent() && predicted.isPresent()) {
          measured.add(new Measured(tester, size, parts[1], mm.getAsDouble(), predicted.get()));
        }
      } else if (parts[0].equals("cloth") && parts.length == 3 && parts[2].equals("used")) {
        OptionalDouble used = length(answer);
        Answer width = answers.get("cloth." + parts[1] + ".width");
        OptionalDouble wide = width == null ? OptionalDouble.empty() : length(width);
        if (width == null) {
          findings.add(Finding.warn("feedback-width", parts[1]).at(answer.origin()).build());
        }
        if (used.isPresent() && wide.isPresent() && !size.isEmpty()) {
          cloth.add(
              new Used(
                  tester,
                  size,
                  view,
                  parts[1],
                  wide.getAsDouble(),
                  used.getAsDouble(),
                  toBuy(view, parts[1], wide.getAsDouble(), size)));
        }
      } else if (parts[0].equals("step") && parts.length == 2) {
        List<Problem> known = problems.get(parts[1]);
        if (known == null) {
          findings.add(Finding.warn("feedback-step", parts[1]).at(answer.origin()).build());
        } else {
          known.add(new Problem(tester, size, answer.text()));
        }
      } else if (parts[0].equals("body") && parts.length == 2) {
        length(answer);
      } else if (!isKnown(field, parts)) {
        findings.add(Finding.warn("feedback-field", field).at(answer.origin()).build());
      }
    }

    /** A field of the form that is read as it stands, or read with another. */
    private static boolean isKnown(String field, String[] parts) {
      boolean cloth = parts[0].equals("cloth") && parts.length == 3;
      return FIELDS.contains(field)
          || field.equals("field")
          || (cloth && (parts[2].equals("what") || parts[2].equals("width")));
    }

    /** A length as people write it, metres and yards too; centimetres where no unit is said. */
    private OptionalDouble length(Answer answer) {
      String text =
          answer.text().replace(',', '.').strip().replaceAll(" ?[\"\u2033\u201d]$", " in");
      if (text.matches("([0-9]+(\\.[0-9]*)?|\\.[0-9]+) ?m")) {
        return OptionalDouble.of(METRE * Double.parseDouble(text.replaceAll("[^0-9.]", "")));
      }
      boolean yards = text.endsWith("yd");
      String inches = yards ? text.substring(0, text.length() - 2).strip() + " in" : text;
      Reading<Length> read = Length.read(inches, LengthUnit.CENTIMETRES);
      if (read instanceof Reading.Read<Length> length) {
        return OptionalDouble.of(length.value().mm() * (yards ? 36 : 1));
      }
      findings.add(Finding.fail("feedback-length", answer.text()).at(answer.origin()).build());
      return OptionalDouble.empty();
    }

    private Optional<Double> predicted(String view, String level, String size) {
      return telling.measured().girths().stream()
          .filter(girth -> girth.view().equals(view) && girth.level().equals(level))
          .map(Measurements.OfLevel::girth)
          .flatMap(girths -> Optional.ofNullable(girths.get(size)).stream())
          .findFirst();
    }

    /** What to buy in the cloth's own width, or the next narrower one that the table has. */
    private OptionalDouble toBuy(String view, String fabric, double width, String size) {
      return yardage.map(YardageTable::rows).orElse(List.of()).stream()
          .filter(row -> row.best() && row.fits() && row.view().name().equals(view))
          .filter(row -> row.fabric().name().equals(fabric) && row.size().name().equals(size))
          .filter(row -> row.width() <= width + 1)
          .max(Comparator.comparingDouble(YardageRow::width))
          .flatMap(YardageRow::need)
          .map(need -> OptionalDouble.of(need.bought()))
          .orElse(OptionalDouble.empty());
    }
  }
}
