package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.FileChooser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.workbench.BrowserDoor;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.DiskFolder;
import org.hemwright.workbench.starter.Starter;
import org.hemwright.workroom.keep.Remembered;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The first hour, by mouse and keyboard alone: from an empty folder, her own chart pasted, one
 * piece traced from her own drawing, the rest from a block, checked, one size printed.
 *
 * <p>The drawing's truth is known: it is the block's front in its base size, with a hem and a leg
 * of her own, drawn in a unit that only its scale line explains.
 */
class FirstHourTest {
  @TempDir Path place;

  @SuppressWarnings("NullAway.Init")
  private Page page;

  @SuppressWarnings("NullAway.Init")
  private Hands hands;

  @SuppressWarnings("NullAway.Init")
  private Axe day;

  /**
   * As she has it in a spreadsheet: a title, a merged heading, sizes across, a blank column, inches
   * with fractions, her own words.
   */
  private static final String CHART =
      """
      My sizes, all in inches
      \tXS\tS\tM\t\tL\tXL\t2X\t3X
      Body\t\t\t\t\t\t\t\t
      Natural waist\t26\t28\t30\t\t32 1/2\t35\t38\t41 1/2
      Full hip\t36\t38\t40\t\t42 1/2\t45\t47 1/2\t50 1/4
      Rise\t10 1/4\t10 1/2\t10 3/4\t\t11\t11 1/4\t11 5/8\t12
      Elbow\t9\t9 1/2\t10\t\t10 1/2\t11\t12\t13
      """;

  private void look(String view) throws Exception {
    day.picture("hour-" + view);
  }

  private Path folder() {
    return place.resolve("tide-trousers");
  }

  private OnDisk file(String name) {
    return new OnDisk(folder().resolve(name));
  }

  @Test
  void fromNothingToOnePrintedSize() throws Exception {
    Path drawing = Files.writeString(place.resolve("My front.svg"), drawing());
    List<String> log = new CopyOnWriteArrayList<>();
    try (BrowserDoor.Opened opened =
            new Workroom(Remembered.in(place.resolve("remembered")), place)
                .open(Optional.empty(), 0, log::add);
        Chromium chromium = Chromium.start()) {
      page = chromium.page(opened.address(), 1280, 800, false);
      page.setDefaultTimeout(25_000);
      hands = new Hands(page);
      begin();
      chart();
      trace(drawing);
      grow();
      check();
      print();
      assertThat(chromium.complaints()).isEmpty();
    }
    assertThat(log).isEmpty();
  }

  private void begin() throws Exception {
    page.waitForSelector(".start-cards");
    page.locator(".start-card", new Page.LocatorOptions().setHasText("front and back apart"))
        .first()
        .click();
    page.getByLabel("What is it called?").click();
    page.keyboard().type("Tide trousers");
    page.keyboard().press("Enter");
    page.waitForSelector(".guide");
    hands.press("Not now");
    page.waitForSelector(".cm-line");
    day = Axe.in(page, 1280, false);
  }

  private void chart() throws Exception {
    hands.job("Bodies");
    hands.press("Bring in a chart…");
    look("chart-open");
    page.getByLabel("Paste your chart here").click();
    hands.paste(CHART);
    page.waitForSelector(".bring-columns");
    assertThat(page.locator(".bring-columns tbody tr").count()).isEqualTo(4);
    assertThat(page.locator(".bring-columns").textContent())
        .contains("Natural waist", "waist girth", "Full hip", "hip girth", "in");
    // A heading that means nothing here is left out, by the keyboard.
    page.locator("[data-match='Elbow']").focus();
    page.keyboard().press("Home");
    page.waitForSelector("tr.out th:has-text('Elbow')");
    // What the block needs and she lacks: estimated from what she has, and told so.
    assertThat(page.locator(".sheet").textContent()).contains("inside leg is missing");
    page.getByLabel("Estimate it for").focus();
    page.keyboard().press("ArrowDown");
    page.waitForSelector(".bring-list li:has-text('one body in three')");
    page.getByLabel("Base size").focus();
    page.keyboard().type("M");
    page.waitForSelector(".ledger-page:has-text('without a problem')");
    stray("chart");
    hands.press("It is so: take this chart");
    String csv = file("sizes.csv").once("2X,38,47.5,11.625");
    assertThat(csv)
        .contains("# inside_leg is an estimate from", "Measure before you rely on it.")
        .contains("size,waist (in),hip (in),body rise (in),inside leg (in)")
        .doesNotContain("lbow");
    assertThat(file("pattern.hem").once("base M")).contains("groups XS to L, M to \"3X\"");
    page.waitForSelector("input[value='2X']");
    look("chart-taken");
  }

  private void trace(Path drawing) throws Exception {
    hands.job("Bring in");
    page.waitForSelector(".file-label");
    look("open");
    FileChooser chooser = page.waitForFileChooser(() -> page.locator(".file-label").click());
    chooser.setFiles(drawing);
    page.waitForSelector(".bring-parts select");
    assertThat(page.locator(".sheet").textContent())
        .contains("does not say how large it is", "text \"Front, size M\"", "proposed");
    assertThat(part("sewing line").inputValue()).isEqualTo("left out");
    choose("sewing line", "stitch line, without allowance");
    page.waitForSelector(".corner-number");
    // The crotch bends where it meets the hip: no end of an edge, so corners are to be sharper.
    assertThat(page.locator(".corner-number").count()).isEqualTo(6);
    page.getByLabel("A corner turns by at least (degrees)").click();
    page.keyboard().press("Control+a");
    page.keyboard().type("25");
    page.waitForFunction("() => document.querySelectorAll('.corner-number').length === 5");
    page.getByLabel("The scale line is this long in truth").fill("20 cm");
    choose("side hip", "points by their names");
    choose("knee inside", "points by their names");
    page.getByLabel("It takes the place of").selectOption("Trouser front");
    String[] edges = {"waist", "crotch", "inseam", "hem", "outseam"};
    for (int i = 0; i < edges.length; i++) {
      page.locator("[placeholder='edge_" + (i + 1) + "']").click();
      page.keyboard().type(edges[i]);
    }
    page.waitForSelector(".bring-picture .edge-name:has-text('outseam')");
    page.waitForSelector(".bring-lines:has-text('grade outseam at end')");
    page.waitForTimeout(500);
    stray("trace");
    assertThat(page.locator(".bring-lines").first().textContent())
        .contains(
            "piece front traced \"traced/My front.svg\", where \"ruler\" is 20 cm, as",
            "outline traced \"sewing line\" from the top left clockwise, corners over 25 deg, edges"
                + " waist, crotch, inseam, hem, outseam",
            "level hip at side_hip",
            "lengthen at knee_inside",
            "point side_hip traced \"side hip\"",
            "grade outseam at \"side hip\" down",
            "grain traced \"grain\"",
            "notch outseam traced \"notches\"",
            "notch inseam traced \"notches\"")
        .doesNotContain("notch hem");
    assertThat(Files.readString(folder().resolve("pattern.hem"))).doesNotContain("traced");
    assertThat(folder().resolve("traced")).doesNotExist();
    hands.press("It is so: write the piece");
    file("pattern.hem").once("piece front traced \"traced/My front.svg\"");
    assertThat(Files.readAllBytes(folder().resolve("traced/My front.svg")))
        .isEqualTo(Files.readAllBytes(drawing));
    // The piece is as it was drawn, to the hundredth of a millimetre.
    SizeRun run = run();
    Piece traced = run.size("M").orElseThrow().piece("front").orElseThrow();
    double hem = traced.edge("hem").orElseThrow().path().length();
    assertThat(hem).isCloseTo(hemOfHers(), org.assertj.core.data.Offset.offset(0.01));
  }

  private com.microsoft.playwright.Locator part(String name) {
    return page.locator("[data-part='" + name + "']");
  }

  private void choose(String name, String words) {
    part(name).focus();
    part(name).selectOption(new com.microsoft.playwright.options.SelectOption().setLabel(words));
  }

  private void grow() throws Exception {
    page.waitForSelector(".bring-picture .found.other");
    assertThat(page.locator(".bring-picture .found").count()).isEqualTo(7);
    String before = Files.readString(folder().resolve("pattern.hem"));
    // One step typed, one as a quarter of what the chart adds: shown before it is written.
    page.getByLabel("Up at corner 1", new Page.GetByLabelOptions().setExact(true)).click();
    page.getByLabel("Across at corner 3", new Page.GetByLabelOptions().setExact(true)).click();
    page.keyboard().press("Control+a");
    page.keyboard().type("1/4 hip");
    page.waitForSelector(".bring-lines:has-text('right 1/4 of the hip step')");
    stray("grade");
    assertThat(Files.readString(folder().resolve("pattern.hem"))).isEqualTo(before);
    hands.press("Write the steps");
    file("pattern.hem").once("right 1/4 of the hip step");
    hands.press("Undo");
    assertThat(file("pattern.hem").once(before::equals)).isEqualTo(before);
  }

  private void check() throws Exception {
    hands.job("Proof");
    page.waitForTimeout(3000);
    look("proof");
    SizeRun run = run();
    assertThat(Workbench.evaluate(new DiskFolder(folder())).problems())
        .noneMatch(problem -> problem.status() == Status.FAIL);
    assertThat(Workbench.check(run))
        .flatExtracting(answer -> answer.findings())
        .noneMatch(finding -> finding.status() == Status.FAIL);
  }

  private void print() throws Exception {
    hands.job("Paper");
    page.waitForSelector(".paper-leaf img");
    page.getByLabel("A4", new Page.GetByLabelOptions().setExact(true)).click();
    page.getByLabel("Size M alone", new Page.GetByLabelOptions().setExact(true)).click();
    page.waitForSelector(".paper-leaf img");
    hands.press("Make these files");
    page.waitForSelector(".made li", new Page.WaitForSelectorOptions().setTimeout(600_000));
    look("paper");
    assertThat(page.locator(".made").textContent()).contains(".pdf");
    try (var files = Files.walk(folder().resolve("out"))) {
      assertThat(files.filter(file -> file.toString().endsWith(".pdf")))
          .isNotEmpty()
          .allSatisfy(
              file ->
                  assertThat(Files.readString(file, StandardCharsets.ISO_8859_1))
                      .startsWith("%PDF-"));
    }
  }

  /** Nothing stands in anybody's way, by day in a wide window and by night in a narrow one. */
  private void stray(String view) throws Exception {
    day.look("hour-" + view);
    page.setViewportSize(820, 1180);
    page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
    page.waitForTimeout(400);
    new Axe(page, 820, true).look("hour-" + view);
    page.setViewportSize(1280, 800);
    page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
    page.waitForTimeout(200);
  }

  private SizeRun run() {
    return Workbench.evaluate(new DiskFolder(folder())).run().orElseThrow();
  }

  // --- her drawing
  // --------------------------------------------------------------------------------

  /** Of what is drawn, each unit is so many millimetres: only the ruler says so. */
  private static final double UNIT = 25.4 / 72;

  /** Her hem is narrower than the block's on either side (mm). */
  private static final double NARROWER = 4;

  private static Piece front() {
    SizeRun run =
        Workbench.draft(Starter.named("trousers").orElseThrow().folder())
            .evaluated()
            .run()
            .orElseThrow();
    return run.size("12").orElseThrow().piece("front").orElseThrow();
  }

  private static double hemOfHers() {
    return front().edge("hem").orElseThrow().path().length() - 2 * NARROWER;
  }

  /** The block's front with a hem of her own. */
  private static String drawing() {
    Piece front = front();
    Point left = front.edge("hem").orElseThrow().path().end();
    Point right = front.edge("hem").orElseThrow().path().start();
    if (left.x() > right.x()) {
      Point other = left;
      left = right;
      right = other;
    }
    StringBuilder path = new StringBuilder();
    for (Edge edge : front.edges()) {
      for (Curve curve : edge.path().curves()) {
        if (path.isEmpty()) {
          path.append("M").append(at(curve.start(), left, right));
        }
        if (curve instanceof Cubic cubic) {
          path.append("C")
              .append(at(cubic.control1(), left, right))
              .append(' ')
              .append(at(cubic.control2(), left, right))
              .append(' ')
              .append(at(cubic.end(), left, right));
        } else {
          path.append("L").append(at(curve.end(), left, right));
        }
      }
    }
    Edge outseam = front.edge("outseam").orElseThrow();
    Edge inseam = front.edge("inseam").orElseThrow();
    Point hip = outseam.path().at(notch(front, "outseam")).point();
    Point knee = inseam.path().at(notch(front, "inseam")).point();
    return """
    <svg xmlns="http://www.w3.org/2000/svg" viewBox="-500 -1000 1500 3000">
      <g id="Front"><path id="sewing line" d="%sZ"/>
      <g id="notches">%s%s</g>
      <path id="grain" d="M%s L%s"/></g>
      <circle id="side hip" cx="%s" cy="%s" r="3"/>
      <circle id="knee inside" cx="%s" cy="%s" r="3"/>
      <path id="ruler" d="M-400 -900 h%s"/>
      <text x="0" y="0">Front, size M</text>
    </svg>
    """
        .formatted(
            path,
            tick(hip),
            tick(knee),
            at(new Point(150, -700), left, right),
            at(new Point(150, -100), left, right),
            number(hip.x() / UNIT),
            number(-hip.y() / UNIT),
            number(knee.x() / UNIT),
            number(-knee.y() / UNIT),
            number(200 / UNIT));
  }

  private static double notch(Piece piece, String edge) {
    return piece.notches().stream()
        .filter(notch -> notch.edge().equals(edge))
        .findFirst()
        .orElseThrow()
        .distance();
  }

  private static String tick(Point at) {
    return "<path d=\"M%s %s h8 h-16\"/>".formatted(number(at.x() / UNIT), number(-at.y() / UNIT));
  }

  private static String at(Point point, Point left, Point right) {
    double x = point.x();
    if (point.distanceTo(left) < 0.01) {
      x += NARROWER;
    } else if (point.distanceTo(right) < 0.01) {
      x -= NARROWER;
    }
    return number(x / UNIT) + " " + number(-point.y() / UNIT);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.6f", value);
  }
}
