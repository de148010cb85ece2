package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A drag on the table writes the number that she wrote, rounded as she writes it (design, "Edits").
 */
class DragInBrowserTest {
  @TempDir Path folder;

  @Test
  void inCentimetresInTheBaseSizeAndInAnother() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "inlet-tee");
        Chromium chromium = Chromium.start()) {
      String before = open.document();
      assertThat(before).contains("notch side at 50% from start");
      Table table = chromium.window(open.address()).choose("Back");
      table.drag("notch", "back", "1", 0, 60);
      String after = open.documentOnce(text -> !text.equals(before));
      assertThat(after.lines().count()).isEqualTo(before.lines().count());
      assertThat(changedLine(before, after)).matches(" {2}notch side at \\d+(\\.5)?% from start");
      assertThat(table.text()).isEqualTo(after);

      table.size(3);
      table.drag("notch", "back", "0", 12, -14);
      String third = open.documentOnce(text -> !text.equals(after));
      assertThat(changedLine(after, third))
          .matches(" {2}double notch armhole at \\d+(\\.5)?% from end");
      assertThat(chromium.complaints()).isEmpty();
    }
  }

  @Test
  void inInchesAsFractions() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "marram-trousers");
        Chromium chromium = Chromium.start()) {
      String before = open.document();
      Table table = chromium.window(open.address()).choose("Trouser front");
      String line = "  point centre_waist from centre_fork up rise - 1/4 in then left 1/4 in";
      assertThat(before).contains(line);
      table.drag("point", "front", "centre_waist", 25, 20);
      String after = open.documentOnce(text -> !text.equals(before));
      String changed = changedLine(before, after);
      assertThat(changed)
          .matches(
              " {2}point centre_waist from centre_fork up rise \\+ N in then right N in"
                  .replace("N", "(\\d+ )?\\d+(/\\d+)?"));
      assertThat(chromium.complaints()).isEmpty();
    }
  }

  private static String changedLine(String before, String after) {
    String[] old = before.split("\n", -1);
    String[] now = after.split("\n", -1);
    assertThat(now).hasSameSizeAs(old);
    String changed = "";
    for (int i = 0; i < old.length; i++) {
      if (!old[i].equals(now[i])) {
        assertThat(changed).as("one line changes").isEmpty();
        changed = now[i];
      }
    }
    return changed;
  }
}
