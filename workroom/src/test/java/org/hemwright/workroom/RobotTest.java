package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.TimeoutError;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A robot does what it likes, by mouse and keyboard: the console stays empty, no edit is lost, and
 * the text and the drawing agree. Its chance is seeded; {@code -Dhemwright.robot.minutes=60
 * -Dhemwright.robot.seed=1} has it go on for an hour ({@code bench/robot}).
 */
class RobotTest {
  private static final int SHORT = 45;
  private static final String DRAWN =
      """
      async () => {
        const { names, drawing } = await import('./table/pieces.js');
        const { get } = await import('./state.js');
        const all = [];
        for (const name of names()) {
          get('sizes').forEach((size, at) => {
            const drawn = drawing(name, at);
            if (drawn) all.push(name + ' ' + size + ' ' + drawn.structure.parts.length + ' '
              + [...drawn.numbers].map((n) => n.toFixed(2)).join(','));
          });
        }
        return all;
      }
      """;

  @TempDir Path folder;

  private final List<String> did = new ArrayList<>();

  @Test
  void doesWhatItLikes() throws Exception {
    long seed = Long.getLong("hemwright.robot.seed", 20261127);
    double minutes = Double.parseDouble(System.getProperty("hemwright.robot.minutes", "0"));
    Random random = new Random(seed);
    try (OpenFolder open = OpenFolder.example(folder, "eddy-skirt");
        Chromium chromium = Chromium.start()) {
      Table table = chromium.window(open.address());
      long end = System.nanoTime() + (long) (minutes * 60e9);
      for (int step = 0; minutes > 0 ? System.nanoTime() < end : step < SHORT; step++) {
        try {
          act(table, random, step);
        } catch (TimeoutError gone) {
          // What was there a moment ago is not any more, as where an answer came meanwhile.
          did.add("gone");
        }
        if (step % 15 == 14) {
          agree(open, chromium, table);
        }
      }
      agree(open, chromium, table);
      assertThat(open.log()).as("faults of the program").noneMatch(told -> told.contains("fault"));
    }
  }

  /** The editor, the room and the disk say the same, and a new window draws the same. */
  private void agree(OpenFolder open, Chromium chromium, Table table) throws Exception {
    Page page = table.page();
    page.keyboard().press("Escape");
    page.keyboard().press("Escape");
    new Hands(page).job("Draft");
    page.waitForTimeout(300);
    String written = open.documentOnce(text -> text.equals(table.text()));
    assertThat(written).as("after " + did).isEqualTo(table.text());
    Table fresh = chromium.window(open.address());
    List<?> there = (List<?>) fresh.page().evaluate(DRAWN);
    OnDisk.await(() -> there.equals(page.evaluate(DRAWN)));
    assertThat(page.evaluate(DRAWN)).as("after " + did).isEqualTo(there);
    fresh.page().close();
    assertThat(chromium.complaints()).as("after " + did).isEmpty();
    did.clear();
  }

  private void act(Table table, Random random, int step) {
    Page page = table.page();
    int choice = random.nextInt(14);
    double x = 150 + random.nextDouble() * 700;
    double y = 90 + random.nextDouble() * 480;
    did.add(choice + "@" + (int) x + "," + (int) y);
    switch (choice) {
      case 0, 1 -> page.mouse().click(x, y);
      case 2, 3 -> drag(page, random, x, y);
      case 4 -> click(page.locator("#undo:not([disabled])"));
      case 5 -> click(page.locator("#redo:not([disabled])"));
      case 6 -> {
        page.locator("[data-tape='size']").focus();
        page.keyboard().press(random.nextBoolean() ? "ArrowRight" : "ArrowLeft");
      }
      case 7 -> type(page, random, step);
      case 8 -> job(page, random);
      case 9 -> add(page, random, x, y);
      case 10 -> number(page, random);
      case 11 -> {
        page.mouse().move(x, y);
        page.mouse().wheel(0, random.nextInt(400) - 200);
        page.locator(".table-acts button", new Page.LocatorOptions().setHasText("Show all"))
            .dispatchEvent("click");
      }
      case 12 -> click(page.locator(".tape-end"));
      default -> dial(page, random);
    }
  }

  private static void click(Locator locator) {
    if (locator.count() > 0 && locator.first().isVisible()) {
      locator.first().click(new Locator.ClickOptions().setTimeout(2000));
    }
  }

  private static void drag(Page page, Random random, double x, double y) {
    page.mouse().click(x, y);
    page.mouse().move(x, y);
    page.mouse().down();
    for (int i = 1; i <= 4; i++) {
      page.mouse().move(x + i * (random.nextInt(21) - 10), y + i * (random.nextInt(21) - 10));
      page.waitForTimeout(20);
    }
    if (random.nextInt(4) == 0) {
      page.keyboard().press("Escape");
    }
    page.mouse().up();
  }

  private static void type(Page page, Random random, int step) {
    Locator lines = page.locator(".cm-line");
    int count = lines.count();
    if (count == 0 || !lines.first().isVisible()) {
      return;
    }
    lines.nth(random.nextInt(count)).click(new Locator.ClickOptions().setTimeout(2000));
    page.keyboard().press("End");
    String[] words = {
      "   # robot " + step, " 3 cm", "\n  point robot_" + step + " at 1 cm, 2 cm\n"
    };
    page.keyboard().insertText(words[random.nextInt(words.length)]);
  }

  private static void job(Page page, Random random) {
    Locator jobs = page.locator("#jobs button");
    jobs.nth(random.nextInt(jobs.count())).click();
    page.waitForTimeout(100);
    new Hands(page).job("Draft");
  }

  private static void add(Page page, Random random, double x, double y) {
    Locator words = page.locator("[data-add]");
    if (!words.first().isVisible()) {
      return;
    }
    words.nth(random.nextInt(words.count())).click();
    for (int i = 0; i < 1 + random.nextInt(3); i++) {
      page.mouse().click(x + 40 * i, Math.min(420, y + 25 * i));
      page.waitForTimeout(80);
    }
    if (random.nextBoolean()) {
      page.waitForTimeout(250);
      click(page.locator("#sentence .chief:not([disabled])"));
    }
    page.keyboard().press("Escape");
  }

  private static void number(Page page, Random random) {
    Locator fields = page.locator(".said-line .number-field");
    int count = fields.count();
    if (count > 0 && fields.first().isVisible()) {
      String[] typed = {"2 cm", "1 1/4 in", "-3 mm", "30%", "soon", "1/2", "2,5 cm"};
      fields
          .nth(random.nextInt(count))
          .fill(typed[random.nextInt(typed.length)], new Locator.FillOptions().setTimeout(2000));
      page.waitForTimeout(150);
      page.keyboard().press(random.nextInt(3) == 0 ? "Escape" : "Enter");
    }
  }

  private static void dial(Page page, Random random) {
    Locator dials = page.locator("[data-dial]");
    int count = dials.count();
    if (count > 0 && dials.first().isVisible()) {
      dials.nth(random.nextInt(count)).focus(new Locator.FocusOptions().setTimeout(2000));
      page.keyboard().press(random.nextBoolean() ? "ArrowRight" : "PageDown");
    }
  }
}
