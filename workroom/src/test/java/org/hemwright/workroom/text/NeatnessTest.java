package org.hemwright.workroom.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.hemwright.draft.syntax.DocumentFormatter;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.workbench.folder.FolderFile;
import org.hemwright.workbench.folder.PackedFolder;
import org.hemwright.workroom.history.Splice;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NeatnessTest {
  private static final String FILE = "pattern.hem";

  private static String applied(String text, List<Splice> splices) {
    String now = text;
    for (Splice splice : splices) {
      now = splice.applyTo(now);
    }
    return now;
  }

  @ParameterizedTest
  @ValueSource(strings = {"inlet-tee", "eddy-skirt", "brackish-skirt", "shingle-shirt"})
  void everyLineIsChangedByItself(String example) throws Exception {
    assertThat(new PackedFolder(example).file(FILE)).isInstanceOf(FolderFile.Content.class);
    FolderFile.Content content = (FolderFile.Content) new PackedFolder(example).file(FILE);
    String neat = new String(content.bytes(), StandardCharsets.UTF_8);
    String untidy = neat.replace("\n  ", "\n     ").replace(" = ", "   = ");
    String set = DocumentFormatter.format(DocumentReader.read(FILE, untidy));
    List<Splice> splices = Neatness.splices(FILE, untidy, set);
    assertThat(splices).hasSizeGreaterThan(50);
    assertThat(applied(untidy, splices)).isEqualTo(set);
    assertThat(Neatness.splices(FILE, set, set)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"a\nb", "", "a\n\n\nb\n", "b"})
  void aTextWithOtherLinesIsChangedAsOne(String text) {
    String neat = "a\nb\n";
    assertThat(applied(text, Neatness.splices(FILE, text, neat))).isEqualTo(neat);
  }
}
