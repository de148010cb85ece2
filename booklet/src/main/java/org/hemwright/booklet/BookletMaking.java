package org.hemwright.booklet;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Booklet;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Picture;
import org.hemwright.booklet.leaf.Section;
import org.hemwright.booklet.part.Given;
import org.hemwright.booklet.part.NamedPlaces;
import org.hemwright.booklet.part.Parts;
import org.hemwright.booklet.part.StepDrawings;
import org.hemwright.booklet.part.Untranslated;
import org.hemwright.booklet.post.Feedback;
import org.hemwright.booklet.post.Posts;
import org.hemwright.booklet.prose.OwnWordsReader;
import org.hemwright.booklet.prose.Prose;
import org.hemwright.booklet.prose.ProseOutline;
import org.hemwright.booklet.prose.ProseProposals;
import org.hemwright.booklet.prose.ProseReader;
import org.hemwright.booklet.words.OwnWords;
import org.hemwright.booklet.words.Telling;
import org.hemwright.booklet.words.Wordbook;
import org.hemwright.booklet.write.BookletHtml;
import org.hemwright.booklet.write.BookletPdf;
import org.hemwright.booklet.write.FontCheck;
import org.hemwright.booklet.write.PictureCheck;
import org.hemwright.booklet.write.PrintForm;
import org.hemwright.paper.PrintedFile;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.finding.Finding;

/**
 * The booklet of a pattern and its files.
 *
 * @param booklet the booklet as a value
 * @param findings what is wrong with the designer's text and pictures
 * @param given what it was made from
 */
public record BookletMaking(Booklet booklet, List<Finding> findings, Given given) {
  public BookletMaking {
    findings = List.copyOf(findings);
  }

  /** Makes the booklet of a pattern. */
  public static BookletMaking of(BookletInput input, String language) {
    Details details = input.run().pattern().details();
    String tag = language.isBlank() ? Wordbook.language(details) : language;
    String there = primary(tag);
    boolean translated = !there.equals(primary(Wordbook.language(details)));
    String own = BookletInput.prose(there);
    boolean written = translated && input.prose().containsKey(own);
    String file = written ? own : BookletInput.PROSE;
    Optional<String> prose = Optional.ofNullable(input.prose().get(file));
    OwnWords words = written ? OwnWordsReader.read(prose.orElse("")) : OwnWords.NONE;
    Telling telling = Telling.of(input.run(), Wordbook.of(tag, details.units()), words);
    List<Finding> findings = new ArrayList<>();
    SortedMap<String, Picture> pictures = new TreeMap<>();
    input
        .pictures()
        .forEach(
            (name, picture) -> {
              Optional<Finding> problem = PictureCheck.problem(picture);
              problem.ifPresentOrElse(findings::add, () -> pictures.put(name, picture));
            });
    Given given =
        new Given(
            telling,
            input.yardage(),
            Prose.NONE,
            pictures,
            input.printed(),
            input.type(),
            new StepDrawings());
    if (translated) {
      findings.addAll(Untranslated.in(telling, own, written));
    }
    return of(given, findings, file, prose);
  }

  private static String primary(String tag) {
    return tag.replaceFirst("-.*", "");
  }

  /**
   * The booklet of the same pattern with another text of the designer's; its drawings are not drawn
   * again.
   *
   * @param prose the text; absent where she wrote none
   */
  public BookletMaking with(Optional<String> prose) {
    List<Finding> ofPictures =
        findings.stream()
            .filter(
                each -> each.origin().filter(at -> at.file().equals(BookletInput.PROSE)).isEmpty())
            .filter(each -> !FontCheck.CODES.contains(each.code()))
            .toList();
    return of(given, ofPictures, BookletInput.PROSE, prose);
  }

  private static BookletMaking of(
      Given before, List<Finding> ofPictures, String file, Optional<String> prose) {
    NamedPlaces places = new NamedPlaces(before.telling(), before.yardage(), before.pictures());
    ProseReader.Read read =
        prose
            .map(text -> ProseReader.read(file, text, Parts.IDS, before.telling(), places))
            .orElse(new ProseReader.Read(Prose.NONE, List.of()));
    Given given =
        new Given(
            before.telling(),
            before.yardage(),
            read.prose(),
            before.pictures(),
            before.printed(),
            before.type(),
            before.drawings());
    List<Finding> findings = new ArrayList<>(ofPictures);
    findings.addAll(read.findings());
    Booklet booklet = Parts.booklet(given);
    findings.addAll(FontCheck.of(booklet));
    return new BookletMaking(booklet, findings, given);
  }

  /**
   * What may be written next in the designer's text.
   *
   * @param before the text up to the caret
   */
  public ProseProposals proposals(String before) {
    NamedPlaces places = new NamedPlaces(given.telling(), given.yardage(), given.pictures());
    return ProseProposals.at(
        before, new ProseProposals.Names(parts(), steps(), given.telling(), places));
  }

  /** Where words for a part or a step go in a text that she has written so far. */
  public ProseOutline.Spot spot(String text, ProseOutline.Where where) {
    return ProseOutline.of(text)
        .spot(where, List.copyOf(parts().keySet()), List.copyOf(steps().keySet()));
  }

  /** What each part is called, by its id; nothing where the booklet leaves it out. */
  private Map<String, String> parts() {
    Map<String, String> titles = new LinkedHashMap<>();
    for (String id : Parts.IDS) {
      titles.put(id, Parts.part(booklet, id).map(part -> Inline.plain(part.title())).orElse(""));
    }
    return titles;
  }

  /** What each step is called, by its id, in the order of making. */
  private Map<String, String> steps() {
    Map<String, String> titles = new LinkedHashMap<>();
    for (Section part : booklet.sections()) {
      for (Block block : part.blocks()) {
        if (block instanceof Block.Step step) {
          titles.put(step.id(), Inline.plain(step.title()));
        }
      }
    }
    return titles;
  }

  /**
   * The booklet's files: a page, and a PDF for each printed form.
   *
   * @param proof the word that marks every page, if anything does
   */
  public List<PrintedFile> files(List<PrintForm> forms, Optional<String> proof) {
    List<PrintedFile> files = new ArrayList<>();
    String stem = stem();
    files.add(
        new PrintedFile(
            stem + ".html",
            "",
            BookletHtml.of(booklet, proof).getBytes(StandardCharsets.UTF_8),
            1,
            List.of()));
    for (PrintForm form : forms) {
      BookletPdf.Printed printed = BookletPdf.write(booklet, form, proof);
      String name =
          stem
              + "-"
              + form.paper().title().toLowerCase(Locale.ROOT)
              + (form.large() ? "-large-print" : "")
              + ".pdf";
      files.add(
          new PrintedFile(name, form.paper().title(), printed.bytes(), printed.pages(), List.of()));
    }
    return files;
  }

  /**
   * The posts, the shot list, the listing and the papers for testers, for the designer.
   *
   * @param proof the word that marks every page, if anything does
   */
  public List<PrintedFile> posts(Optional<String> proof) {
    return Posts.files(given, proof);
  }

  /**
   * Testers' forms beside what the pattern says.
   *
   * @param forms their texts, by file name
   */
  public Feedback feedback(SortedMap<String, String> forms) {
    return Feedback.read(forms, given.telling(), given.yardage());
  }

  private String stem() {
    Details details = given.telling().run().pattern().details();
    String language =
        given.telling().words().tag().equals(Wordbook.language(details))
            ? ""
            : "-" + given.telling().words().tag().toLowerCase(Locale.ROOT);
    return slug(details.title())
        + "-"
        + details.version().replaceAll("[^A-Za-z0-9.]+", "-")
        + "-booklet"
        + language;
  }

  private static String slug(String text) {
    String slug = text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    String trimmed = slug.replaceAll("^-|-$", "");
    return trimmed.isEmpty() ? "pattern" : trimmed;
  }
}
