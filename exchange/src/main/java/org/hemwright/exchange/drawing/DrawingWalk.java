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

  TracedDrawing walk(SvgElement root) {
    learn(root);
    boolean real =
        root.attribute("width").filter(SvgLength::isReal).isPresent()
            && root.attribute("height").filter(SvgLength::isReal).isPresent();
    double mm = SvgLength.MM_PER_PIXEL;
    Affine upright = new Affine(mm, 0, 0, -mm, 0, 0);
    Viewport outside = new Viewport(USUAL_WIDTH, USUAL_HEIGHT);
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

  private void walk(SvgElement element, Affine around, Viewport view) {
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

  private void shown(SvgElement element, Affine around, Viewport view) {
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
    names.push(SvgNames.of(element));
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
                    .with("read", SvgNames.shortened(text.get())));
  }

  private void viewport(
      SvgElement element,
      Affine around,
      Viewport outer,
      boolean root,
      Optional<SvgElement> placed) {
    double x = root ? 0 : SvgLength.of(file, element, "x", outer.width(), 0);
    double y = root ? 0 : SvgLength.of(file, element, "y", outer.height(), 0);
    Optional<double[]> box = Viewport.viewBox(element);
    double width = extent(element, placed, "width", outer.width(), box, 2);
    double height = extent(element, placed, "height", outer.height(), box, 3);
    Affine inside = around.times(Affine.move(x, y));
    Viewport view = new Viewport(width, height);
    if (box.isPresent() && box.get()[2] > 0 && box.get()[3] > 0) {
      inside =
          inside.times(
              Viewport.fitted(
                  box.get(), width, height, element.attribute("preserveAspectRatio", "")));
      view = new Viewport(box.get()[2], box.get()[3]);
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
      throw SvgLength.refused(file, element, said.get());
    }
    return value.getAsDouble();
  }

  private void use(SvgElement use, Affine here, Viewport view) {
    String href = use.attribute("href", "");
    if (!href.startsWith("#")) {
      throw new DrawingRefused("drawing-outside", file, use.origin())
          .with("what", href.isEmpty() ? "nothing" : SvgNames.shortened(href));
    }
    SvgElement target = byId.get(href.substring(1));
    if (target == null) {
      findings.add(
          Finding.warn("drawing-use-absent", file)
              .with("name", SvgNames.shortened(href.substring(1)))
              .at(use.origin())
              .build());
      return;
    }
    if (!inUse.add(target)) {
      throw new DrawingRefused("drawing-use-ring", file, use.origin())
          .with("name", SvgNames.shortened(href.substring(1)));
    }
    Affine moved =
        here.times(
            Affine.move(
                SvgLength.of(file, use, "x", view.width(), 0),
                SvgLength.of(file, use, "y", view.height(), 0)));
    if (target.kind().equals("symbol")) {
      names.push(SvgNames.of(target));
      viewport(target, moved, view, false, Optional.of(use));
      names.pop();
    } else if (target.kind().equals("svg")) {
      names.push(SvgNames.of(target));
      viewport(target, moved.times(transform(target)), view, false, Optional.of(use));
      names.pop();
    } else {
      walk(target, moved, view);
    }
    inUse.remove(target);
  }

  private void shape(SvgElement element, Affine here, Viewport view) {
    if (!SvgShape.is(element)) {
      list(element, "other");
      return;
    }
    PenLine pen = new PenLine(here);
    boolean whole = new SvgShape(file, element, view, styles).draw(pen, MOST_CURVES - curves);
    if (styles.property(element, "visibility").filter("hidden"::equals).isPresent()) {
      list(element, "hidden");
      return;
    }
    if (!whole) {
      findings.add(
          Finding.warn("drawing-path-broken", file)
              .with("name", SvgNames.told(element))
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

  private void list(SvgElement element, String why) {
    String words =
        switch (why) {
          case "hidden" -> "hidden " + SvgNames.told(element);
          case "clipped" -> "the clipping of " + SvgNames.told(element);
          default -> SvgNames.told(element);
        };
    if (element.kind().equals("text")) {
      words = "text \"" + SvgNames.shortened(element.text()) + "\"";
    }
    if (unread.size() < MOST_LISTED) {
      unread.add(words);
    }
  }

  /** What a slip of the geometry itself is told as. */
  static Finding broken(String file, GeometryProblem problem) {
    return Finding.fail("drawing-broken-line", file)
        .with("reason", Argument.of(problem.reason()))
        .at(new Origin(file, 1, 1))
        .build();
  }
}
