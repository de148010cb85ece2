package org.hemwright.exchange.drawing;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.geometry.GeometryProblem;
import org.hemwright.geometry.Path;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.traced.TracedDrawing;
import org.hemwright.pattern.traced.TracedLine;

/** Walks through the elements of a file and takes up every line that is shown. */
final class DrawingWalk {
  static final int MOST_WALKED = 50_000;
  static final int MOST_CURVES = 100_000;

  /** Groups within groups, copies of copies counted as what they are copies of. */
  private static final int MOST_DEEP = 400;

  private static final int MOST_LISTED = 50;
  private static final int LONGEST_WORDS = 40;

  /** What a viewport without a size is taken for, as browsers do (CSS 2, 10.3.2). */
  private static final double USUAL_WIDTH = 300;

  private static final double USUAL_HEIGHT = 150;

  /** What groups things and is shown. */
  private static final Set<String> GROUPS = Set.of("g", "a", "switch");

  /** What is shown only where something refers to it, or never. */
  private static final Set<String> ASIDE =
      Set.of(
          "defs",
          "symbol",
          "clipPath",
          "mask",
          "marker",
          "pattern",
          "linearGradient",
          "radialGradient",
          "filter",
          "style",
          "title",
          "desc",
          "metadata",
          "script",
          "view",
          "");

  private static final Pattern ESCAPED = Pattern.compile("_x([0-9A-Fa-f]{2,4})_");

  private final String file;
  private final StyleRules styles = new StyleRules();
  private final Map<String, SvgElement> byId = new HashMap<>();
  private final List<TracedLine> lines = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final Set<String> unread = new LinkedHashSet<>();
  private final Deque<List<String>> names = new ArrayDeque<>();
  private final Set<SvgElement> inUse = new HashSet<>();
  private int walked;
  private int deep;
  private int curves;

  DrawingWalk(String file) {
    this.file = file;
  }

  /** What a view of the drawing is, for percentages. */
  private record View(double width, double height) {
    double diagonal() {
      return Math.sqrt((width * width + height * height) / 2);
    }
  }

  TracedDrawing walk(SvgElement root) {
    learn(root);
    boolean real =
        root.attribute("width").filter(SvgLength::isReal).isPresent()
            && root.attribute("height").filter(SvgLength::isReal).isPresent();
    double mm = SvgLength.MM_PER_PIXEL;
    Affine upright = new Affine(mm, 0, 0, -mm, 0, 0);
    View outside = new View(USUAL_WIDTH, USUAL_HEIGHT);
    viewport(root, upright, outside, true, Optional.empty());
    List<String> listed = new ArrayList<>(unread);
    return new TracedDrawing(file, lines, real, listed);
  }

  List<Finding> findings() {
    return findings;
  }

  private void learn(SvgElement element) {
    element.attribute("id").ifPresent(id -> byId.putIfAbsent(id, element));
    if (element.kind().equals("style") && styles.add(element.rawText())) {
      throw new DrawingRefused("drawing-outside", file, element.origin())
          .with("what", "a style sheet");
    }
    element.children().forEach(this::learn);
  }

  private void walk(SvgElement element, Affine around, View view) {
    if (++walked > MOST_WALKED) {
      throw new DrawingRefused("drawing-too-many", file, element.origin());
    }
    if (deep >= MOST_DEEP) {
      throw new DrawingRefused("drawing-too-deep", file, element.origin());
    }
    deep++;
    shown(element, around, view);
    deep--;
  }

  private void shown(SvgElement element, Affine around, View view) {
    String kind = element.kind();
    if (ASIDE.contains(kind)) {
      return;
    }
    if (styles.property(element, "display").filter("none"::equals).isPresent()) {
      list(element, "hidden");
      return;
    }
    Affine here = around.times(transform(element));
    if (element.attribute("clip-path").isPresent() || element.attribute("mask").isPresent()) {
      list(element, "clipped");
    }
    names.push(namesOf(element));
    if (GROUPS.contains(kind)) {
      element.children().forEach(child -> walk(child, here, view));
    } else if (kind.equals("svg")) {
      viewport(element, here, view, false, Optional.empty());
    } else if (kind.equals("use")) {
      use(element, here, view);
    } else {
      shape(element, here, view);
    }
    names.pop();
  }

  private Affine transform(SvgElement element) {
    Optional<String> text = styles.property(element, "transform").filter(t -> !t.equals("none"));
    if (text.isEmpty()) {
      return Affine.IDENTITY;
    }
    return TransformText.read(text.get())
        .orElseThrow(
            () ->
                new DrawingRefused("drawing-transform", file, element.origin())
                    .with("read", shortened(text.get())));
  }

  /** What an element can be called by. */
  private static List<String> namesOf(SvgElement element) {
    Set<String> names = new LinkedHashSet<>();
    element.attribute("label").ifPresent(names::add);
    element.attribute("data-name").ifPresent(names::add);
    element.attribute("id").ifPresent(id -> names.add(unescaped(id)));
    element.children().stream()
        .filter(child -> child.kind().equals("title"))
        .map(SvgElement::text)
        .filter(words -> !words.isEmpty())
        .forEach(names::add);
    names.addAll(element.classes());
    return List.copyOf(names);
  }

  /** Drawing programs write a blank of a layer's name as {@code _x20_}. */
  private static String unescaped(String id) {
    Matcher escaped = ESCAPED.matcher(id);
    StringBuilder plain = new StringBuilder();
    while (escaped.find()) {
      String letter = Character.toString((char) Integer.parseInt(escaped.group(1), 16));
      escaped.appendReplacement(plain, Matcher.quoteReplacement(letter));
    }
    return escaped.appendTail(plain).toString();
  }

  private void viewport(
      SvgElement element, Affine around, View outer, boolean root, Optional<SvgElement> placed) {
    double x = root ? 0 : length(element, "x", outer.width(), 0);
    double y = root ? 0 : length(element, "y", outer.height(), 0);
    Optional<double[]> box = viewBox(element);
    double width = extent(element, placed, "width", outer.width(), box, 2);
    double height = extent(element, placed, "height", outer.height(), box, 3);
    Affine inside = around.times(Affine.move(x, y));
    View view = new View(width, height);
    if (box.isPresent() && box.get()[2] > 0 && box.get()[3] > 0) {
      inside =
          inside.times(
              fitted(box.get(), width, height, element.attribute("preserveAspectRatio", "")));
      view = new View(box.get()[2], box.get()[3]);
    }
    for (SvgElement child : element.children()) {
      walk(child, inside, view);
    }
  }

  private double extent(
      SvgElement element,
      Optional<SvgElement> placed,
      String name,
      double outer,
      Optional<double[]> box,
      int place) {
    Optional<String> said = placed.flatMap(use -> use.attribute(name));
    if (said.isEmpty()) {
      said = element.attribute(name).filter(text -> !text.equals("auto"));
    }
    if (said.isEmpty() || said.get().strip().equals("100%")) {
      return box.map(numbers -> numbers[place]).orElse(outer);
    }
    OptionalDouble value = SvgLength.pixels(said.get(), outer);
    if (value.isEmpty()) {
      throw lengthRefused(element, said.get());
    }
    return value.getAsDouble();
  }

  private static Optional<double[]> viewBox(SvgElement element) {
    Optional<String> text = element.attribute("viewBox");
    if (text.isEmpty()) {
      return Optional.empty();
    }
    SvgNumbers numbers = new SvgNumbers(text.get());
    double[] box = new double[4];
    for (int i = 0; i < 4; i++) {
      OptionalDouble number = numbers.number();
      if (number.isEmpty()) {
        return Optional.empty();
      }
      box[i] = number.getAsDouble();
    }
    return Optional.of(box);
  }

  /** A view box brought into its viewport (SVG 2, 8.2). */
  private static Affine fitted(double[] box, double width, double height, String preserve) {
    double sx = width / box[2];
    double sy = height / box[3];
    if (!preserve.startsWith("none")) {
      boolean slice = preserve.endsWith("slice");
      sx = slice ? Math.max(sx, sy) : Math.min(sx, sy);
      sy = sx;
    }
    double spareX = width - box[2] * sx;
    double spareY = height - box[3] * sy;
    double alongX = preserve.contains("xMin") ? 0 : preserve.contains("xMax") ? 1 : 0.5;
    double alongY = preserve.contains("YMin") ? 0 : preserve.contains("YMax") ? 1 : 0.5;
    return new Affine(sx, 0, 0, sy, spareX * alongX - box[0] * sx, spareY * alongY - box[1] * sy);
  }

  private void use(SvgElement use, Affine here, View view) {
    String href = use.attribute("href", "");
    if (!href.startsWith("#")) {
      throw new DrawingRefused("drawing-outside", file, use.origin())
          .with("what", href.isEmpty() ? "nothing" : shortened(href));
    }
    SvgElement target = byId.get(href.substring(1));
    if (target == null) {
      findings.add(
          Finding.warn("drawing-use-absent", file)
              .with("name", shortened(href.substring(1)))
              .at(use.origin())
              .build());
      return;
    }
    if (!inUse.add(target)) {
      throw new DrawingRefused("drawing-use-ring", file, use.origin())
          .with("name", shortened(href.substring(1)));
    }
    Affine moved =
        here.times(
            Affine.move(length(use, "x", view.width(), 0), length(use, "y", view.height(), 0)));
    if (target.kind().equals("symbol")) {
      names.push(namesOf(target));
      viewport(target, moved, view, false, Optional.of(use));
      names.pop();
    } else if (target.kind().equals("svg")) {
      names.push(namesOf(target));
      viewport(target, moved.times(transform(target)), view, false, Optional.of(use));
      names.pop();
    } else {
      walk(target, moved, view);
    }
    inUse.remove(target);
  }

  private void shape(SvgElement element, Affine here, View view) {
    PenLine pen = new PenLine(here);
    boolean whole = true;
    switch (element.kind()) {
      case "path" -> whole = path(element, pen);
      case "line" -> {
        pen.moveTo(length(element, "x1", view.width(), 0), length(element, "y1", view.height(), 0));
        pen.lineTo(length(element, "x2", view.width(), 0), length(element, "y2", view.height(), 0));
      }
      case "polyline", "polygon" -> whole = points(element, pen);
      case "rect" -> rectangle(element, pen, view);
      case "circle", "ellipse" -> ellipse(element, pen, view);
      default -> {
        list(element, "other");
        return;
      }
    }
    if (styles.property(element, "visibility").filter("hidden"::equals).isPresent()) {
      list(element, "hidden");
      return;
    }
    if (!whole) {
      findings.add(
          Finding.warn("drawing-path-broken", file)
              .with("name", nameFor(element))
              .at(element.origin())
              .build());
    }
    curves += pen.count();
    if (curves > MOST_CURVES) {
      throw new DrawingRefused("drawing-too-many", file, element.origin());
    }
    List<String> all = new ArrayList<>();
    names.forEach(level -> level.stream().filter(name -> !all.contains(name)).forEach(all::add));
    for (Path line : pen.lines()) {
      lines.add(new TracedLine(all, line, element.origin()));
    }
  }

  private boolean path(SvgElement element, PenLine pen) {
    String data = styles.property(element, "d").orElse("");
    if (data.startsWith("path(")) {
      data = data.replaceAll("^path\\(\\s*[\"']?|[\"']?\\s*\\)$", "");
    }
    return data.equals("none") || PathText.draw(data, pen, MOST_CURVES - curves);
  }

  private boolean points(SvgElement element, PenLine pen) {
    SvgNumbers numbers = new SvgNumbers(element.attribute("points", ""));
    boolean first = true;
    while (!numbers.atEnd()) {
      OptionalDouble x = numbers.number();
      OptionalDouble y = numbers.number();
      if (x.isEmpty() || y.isEmpty()) {
        return false;
      }
      if (first) {
        pen.moveTo(x.getAsDouble(), y.getAsDouble());
      } else {
        pen.lineTo(x.getAsDouble(), y.getAsDouble());
      }
      first = false;
    }
    if (element.kind().equals("polygon") && !first) {
      pen.close();
    }
    return true;
  }

  /** A rectangle, its corners rounded as far as it says (SVG 2, 10.2). */
  private void rectangle(SvgElement element, PenLine pen, View view) {
    double x = length(element, "x", view.width(), 0);
    double y = length(element, "y", view.height(), 0);
    double width = length(element, "width", view.width(), 0);
    double height = length(element, "height", view.height(), 0);
    if (!(width > 0 && height > 0)) {
      return;
    }
    double rx = length(element, "rx", view.width(), -1);
    double ry = length(element, "ry", view.height(), -1);
    rx = Math.min(rx < 0 ? Math.max(0, ry) : rx, width / 2);
    ry = Math.min(ry < 0 ? rx : ry, height / 2);
    pen.moveTo(x + rx, y);
    pen.lineTo(x + width - rx, y);
    pen.arcTo(rx, ry, 0, false, true, x + width, y + ry);
    pen.lineTo(x + width, y + height - ry);
    pen.arcTo(rx, ry, 0, false, true, x + width - rx, y + height);
    pen.lineTo(x + rx, y + height);
    pen.arcTo(rx, ry, 0, false, true, x, y + height - ry);
    pen.lineTo(x, y + ry);
    pen.arcTo(rx, ry, 0, false, true, x + rx, y);
    pen.close();
  }

  private void ellipse(SvgElement element, PenLine pen, View view) {
    boolean circle = element.kind().equals("circle");
    double cx = length(element, "cx", view.width(), 0);
    double cy = length(element, "cy", view.height(), 0);
    double rx =
        circle ? length(element, "r", view.diagonal(), 0) : length(element, "rx", view.width(), 0);
    double ry = circle ? rx : length(element, "ry", view.height(), 0);
    if (!(rx > 0 && ry > 0)) {
      return;
    }
    pen.moveTo(cx + rx, cy);
    pen.ellipse(new Affine(rx, 0, 0, ry, cx, cy), 0, 2 * Math.PI, cx + rx, cy);
    pen.close();
  }

  private double length(SvgElement element, String name, double whole, double otherwise) {
    Optional<String> text = element.attribute(name).filter(said -> !said.equals("auto"));
    if (text.isEmpty()) {
      return otherwise;
    }
    OptionalDouble value = SvgLength.pixels(text.get(), whole);
    if (value.isEmpty()) {
      throw lengthRefused(element, text.get());
    }
    return value.getAsDouble();
  }

  private DrawingRefused lengthRefused(SvgElement element, String text) {
    return new DrawingRefused("drawing-length", file, element.origin())
        .with("read", shortened(text));
  }

  private void list(SvgElement element, String why) {
    String words =
        switch (why) {
          case "hidden" -> "hidden " + nameFor(element);
          case "clipped" -> "the clipping of " + nameFor(element);
          default -> nameFor(element);
        };
    if (element.kind().equals("text")) {
      words = "text \"" + shortened(element.text()) + "\"";
    }
    if (unread.size() < MOST_LISTED) {
      unread.add(words);
    }
  }

  private static String nameFor(SvgElement element) {
    List<String> names = namesOf(element);
    return names.isEmpty() ? element.kind() : element.kind() + " " + shortened(names.get(0));
  }

  static String shortened(String text) {
    String line = text.replaceAll("\\s+", " ").strip();
    return line.length() <= LONGEST_WORDS ? line : line.substring(0, LONGEST_WORDS - 1) + "…";
  }

  /** What a slip of the geometry itself is told as. */
  static Finding broken(String file, GeometryProblem problem) {
    return Finding.fail("drawing-broken-line", file)
        .with("reason", Argument.of(problem.reason()))
        .at(new Origin(file, 1, 1))
        .build();
  }
}
