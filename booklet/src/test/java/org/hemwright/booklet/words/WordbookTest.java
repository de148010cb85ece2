package org.hemwright.booklet.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Provenance;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.quantity.LengthKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WordbookTest {
  private static final Provenance ANY = Provenance.of(Provenance.Source.SETTING, "any");

  private static Wordbook words(String tag) {
    return Wordbook.of(tag, Details.Units.CENTIMETRES);
  }

  @Test
  void noSentenceHoldsADigit() {
    for (String file : new String[] {"en", "en-GB", "de"}) {
      for (Map.Entry<String, String> entry : Wordbook.read(file).entrySet()) {
        assertThat(entry.getValue())
            .as(file + " " + entry.getKey())
            .doesNotContainPattern("\\p{N}");
      }
    }
  }

  @Test
  void britishSaysOnlyWhatAmericanSaysToo() {
    assertThat(Wordbook.read("en").keySet()).containsAll(Wordbook.read("en-GB").keySet());
  }

  @Test
  void aTranslationIsOneFileWithEverySentenceAndEverySlot() {
    Map<String, String> english = Wordbook.read("en");
    Map<String, String> german = Wordbook.read("de");
    assertThat(german.keySet()).isEqualTo(english.keySet());
    Pattern slot = Pattern.compile("\\{([a-z-]+)}");
    english.forEach(
        (key, sentence) -> {
          Set<String> here = slots(slot, sentence, english);
          assertThat(slots(slot, german.getOrDefault(key, ""), german)).as(key).isEqualTo(here);
        });
  }

  /** The slots of a sentence that are no words of the language. */
  private static Set<String> slots(Pattern slot, String sentence, Map<String, String> words) {
    Set<String> slots = new TreeSet<>();
    slot.matcher(sentence).results().forEach(found -> slots.add(found.group(1)));
    slots.removeIf(name -> words.containsKey("word." + name));
    return slots;
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de"})
  void everyTermUsedIsExplained(String language) {
    Map<String, String> sentences = Wordbook.read(language);
    sentences.forEach(
        (key, sentence) ->
            Pattern.compile("\\[([a-z-]+)\\|")
                .matcher(sentence)
                .results()
                .forEach(
                    found ->
                        assertThat(sentences)
                            .as(key)
                            .containsKeys("term." + found.group(1), "glossary." + found.group(1))));
  }

  @Test
  void slotsAndWordsAndTermsAreFilled() {
    var said = words("en-GB").say("layings.lead");
    assertThat(Inline.plain(said))
        .isEqualTo(
            "Lay the cloth as the drawing says, and every piece with its grain arrow along the"
                + " selvedge.");
    assertThat(said).anyMatch(inline -> inline instanceof Inline.Term);
    assertThat(Inline.plain(words("en-US").say("layings.lead"))).contains("fabric", "selvage");
  }

  @Test
  void lengthsStandInBothUnitsWithFractionsAsOneCharacter() {
    // design, "Numbers": 62.5 cm is 24 5/8 in to the eighth; 1 cm goes with 3/8 in.
    assertThat(words("en-GB").length(625, LengthKind.FINISHED, ANY).text())
        .isEqualTo("62.5\u00a0cm\u00a0\u00b7\u00a024\u215d\u00a0in");
    assertThat(words("en-GB").length(10, LengthKind.ALLOWANCE, ANY).text())
        .isEqualTo("1\u00a0cm\u00a0\u00b7\u00a0\u215c\u00a0in");
    assertThat(
            Wordbook.of("en-US", Details.Units.INCHES)
                .length(25.4, LengthKind.FINISHED, ANY)
                .text())
        .startsWith("1\u00a0in");
  }

  @Test
  void clothIsBoughtInBothUnits() {
    // Handbook section 10, value 26: 1.52 m is bought as 1.6 m or 1 3/4 yd.
    assertThat(words("en-GB").buyText(16, 14)).isEqualTo("1.6\u00a0m \u00b7 1\u00be\u00a0yd");
    assertThat(words("en-GB").buyText(9, 8)).isEqualTo("0.9\u00a0m \u00b7 1\u00a0yd");
    assertThat(words("en-GB").buyText(2, 2)).isEqualTo("0.2\u00a0m \u00b7 \u00bc\u00a0yd");
  }
}
