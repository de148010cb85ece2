package org.hemwright.workroom;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.List;
import java.util.Map;

/** One window, used as she uses it: by mouse and keyboard. */
record Table(Page page) {
  /** Where a thing of a piece is in the window (pixels). */
  double[] at(String kind, String piece, String name) {
    Object found =
        page.evaluate(
            """
            async ({ kind, piece, name }) => {
              const { looked } = await import('./table/table.js');
              const { drawing } = await import('./table/pieces.js');
              const { onScreen } = await import('./table/canvas.js');
              const view = looked();
              const drawn = drawing(piece, view.size);
              const part = drawn.part(kind, name);
              const box = document.querySelector('#table canvas').getBoundingClientRect();
              const n = drawn.numbers;
              const [x, y] = onScreen(view, view.places.get(piece), drawn, n[part.at], n[part.at + 1]);
              return [x + box.left, y + box.top, view.camera.scale];
            }
            """,
            Map.of("kind", kind, "piece", piece, "name", name));
    List<?> numbers = (List<?>) found;
    return numbers.stream().mapToDouble(each -> ((Number) each).doubleValue()).toArray();
  }

  /** Shows one size, by the tape's keys. */
  Table size(int steps) {
    page.getByRole(
            AriaRole.SLIDER,
            new Page.GetByRoleOptions().setName("Size on the table").setExact(true))
        .focus();
    for (int i = 0; i < Math.abs(steps); i++) {
      page.keyboard().press(steps < 0 ? "ArrowLeft" : "ArrowRight");
    }
    return this;
  }

  /** Selects a piece in the ledger. */
  Table choose(String title) {
    page.locator(".ledger-list button", new Page.LocatorOptions().setHasText(title))
        .first()
        .click();
    page.waitForSelector(".ledger-page h2:has-text('" + title + "')");
    return this;
  }

  /** Takes a thing and lets it go so many millimetres to the right and up, free of snapping. */
  Table drag(String kind, String piece, String name, double right, double up) {
    double[] from = at(kind, piece, name);
    double x = from[0] + right * from[2];
    double y = from[1] - up * from[2];
    page.mouse().move(from[0], from[1]);
    page.mouse().down();
    page.keyboard().down("Alt");
    page.mouse().move((from[0] + x) / 2 + 6, (from[1] + y) / 2 + 6);
    page.mouse().move(x, y);
    page.waitForSelector(".sentence-line");
    page.waitForTimeout(250);
    page.mouse().move(x, y);
    page.waitForTimeout(150);
    page.mouse().up();
    page.keyboard().up("Alt");
    return this;
  }

  /** The text in the editor. */
  String text() {
    return (String)
        page.evaluate(
            """
            async () => {
              const { EditorView } = await import('@codemirror/view');
              return EditorView.findFromDOM(document.querySelector('.cm-editor')).state.doc.toString();
            }
            """);
  }

  /** Puts the caret after these words, once the text that holds them has come. */
  Table caretAfter(String words) {
    page.evaluate(
        """
        async (words) => {
          const { EditorView } = await import('@codemirror/view');
          const view = EditorView.findFromDOM(document.querySelector('.cm-editor'));
          const find = () => view.state.doc.toString().indexOf(words);
          for (let i = 0; i < 1200 && find() < 0; i += 1) {
            await new Promise((done) => setTimeout(done, 100));
          }
          const at = find();
          view.dispatch({ selection: { anchor: at + words.length }, scrollIntoView: true });
          view.focus();
        }
        """,
        words);
    return this;
  }
}
