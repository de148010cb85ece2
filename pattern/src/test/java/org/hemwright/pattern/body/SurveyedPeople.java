package org.hemwright.pattern.body;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.hemwright.pattern.body.BodySurvey.Sex;

/** The survey's own rows in ../shared/data/body (README.md there names their origin), in place. */
public final class SurveyedPeople {
  private final List<String> heading;
  private final List<String[]> rows;

  private SurveyedPeople(List<String> lines) {
    heading = List.of(lines.get(0).split(",", -1));
    rows = lines.subList(1, lines.size()).stream().map(line -> line.split(",", -1)).toList();
  }

  /** Whether they are here; where a checkout stands alone they are not. */
  public static boolean present() {
    return Files.isRegularFile(file(Sex.WOMEN)) && Files.isRegularFile(file(Sex.MEN));
  }

  /** Those of one sex. */
  public static SurveyedPeople of(Sex sex) throws IOException {
    return new SurveyedPeople(Files.readAllLines(file(sex)));
  }

  /** How many there are. */
  public int count() {
    return rows.size();
  }

  /** One measurement of everybody (mm), by the survey's own name. */
  public double[] column(String name) {
    int index = heading.indexOf(name);
    return rows.stream().mapToDouble(row -> Double.parseDouble(row[index])).toArray();
  }

  /** The natural logarithms of the same. */
  public double[] logarithms(String name) {
    return Arrays.stream(column(name)).map(Math::log).toArray();
  }

  private static Path file(Sex sex) {
    String name = sex == Sex.WOMEN ? "ansur2_female.csv" : "ansur2_male.csv";
    Path start = Path.of("").toAbsolutePath();
    for (Path p = start; p != null; p = p.getParent()) {
      Path file = p.resolve("shared/data/body").resolve(name);
      if (Files.isRegularFile(file)) {
        return file;
      }
    }
    return start.resolve("shared/data/body").resolve(name);
  }
}
