package org.hemwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.exchange.photograph.Guide;
import org.hemwright.exchange.photograph.Pixel;
import org.hemwright.pattern.quantity.Length;
import org.hemwright.pattern.quantity.Reading;
import picocli.CommandLine.Option;

/** What a photograph's owner says of it: where its card or its ruler is. */
final class PhotographQuestions {
  private static final Pattern PLACE = Pattern.compile("(\\d+(?:\\.\\d+)?),(\\d+(?:\\.\\d+)?)");

  private static final Pattern BLANKS = Pattern.compile("[ ;]+");

  @Option(
      names = "--card",
      paramLabel = "CORNERS",
      description =
          "A photograph whose card is not found: its four outer corners, lower left, lower right, "
              + "upper right, upper left, in pixels: \"410,1630 980,1655 965,910 402,905\".")
  private Optional<String> card = Optional.empty();

  @Option(
      names = "--ruler",
      paramLabel = "LENGTH",
      description = "A scan without a card: the length between two marks of a ruler in it.")
  private Optional<String> ruler = Optional.empty();

  @Option(
      names = "--marks",
      paramLabel = "MARKS",
      description = "Where those two marks are, in pixels: \"120,2210 3890,2204\".")
  private Optional<String> marks = Optional.empty();

  /**
   * What tells how large things are.
   *
   * @param problems where is told, a line each, what cannot be understood
   */
  Guide guide(List<String> problems) {
    if (card.isPresent() && (ruler.isPresent() || marks.isPresent())) {
      problems.add("--card and --ruler: one picture needs one of the two; leave out the other");
    }
    if (ruler.isPresent() != marks.isPresent()) {
      problems.add(
          ruler.isPresent()
              ? "--ruler: say with --marks where the two marks are, in pixels"
              : "--marks: say with --ruler how long it is between the two marks");
    }
    Optional<List<Pixel>> corners = card.map(text -> places("--card", text, 4, problems));
    Optional<List<Pixel>> ends = marks.map(text -> places("--marks", text, 2, problems));
    Optional<Double> length = ruler.map(text -> length(text, problems));
    if (!problems.isEmpty()) {
      return new Guide.Card();
    }
    if (corners.isPresent()) {
      return new Guide.CardCorners(corners.get());
    }
    if (ends.isPresent() && length.isPresent()) {
      return new Guide.Ruler(ends.get().get(0), ends.get().get(1), length.get());
    }
    return new Guide.Card();
  }

  /** Whether anything was said of a photograph. */
  boolean isAsked() {
    return card.isPresent() || ruler.isPresent() || marks.isPresent();
  }

  private static List<Pixel> places(String option, String text, int count, List<String> problems) {
    List<Pixel> places = new ArrayList<>();
    for (String word : BLANKS.split(text.strip(), -1)) {
      Matcher place = PLACE.matcher(word);
      if (place.matches()) {
        places.add(
            new Pixel(Double.parseDouble(place.group(1)), Double.parseDouble(place.group(2))));
      } else {
        problems.add(
            "%s: \"%s\" is no place; write it as 410,1630, pixels from the left and from the top"
                .formatted(option, word));
        return places;
      }
    }
    if (places.size() != count) {
      problems.add(
          String.format(
              Locale.ROOT, "%s: %d places are needed, and %d given", option, count, places.size()));
    }
    return places;
  }

  private static double length(String text, List<String> problems) {
    if (Length.read(text.strip()) instanceof Reading.Read<Length> read && read.value().mm() > 0) {
      return read.value().mm();
    }
    problems.add(
        "--ruler %s: that is no length; write it as 30cm, 300mm or \"12in\"".formatted(text));
    return 1;
  }
}
