package org.hemwright.workbench.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hemwright.booklet.BookletMaking;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Picture;
import org.hemwright.paper.PrintedFile;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.DiskFolder;
import org.hemwright.workbench.folder.PackedFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The designer's pictures: hers stand in place of ours, and none can act or reach anything. */
class PicturesTest {
  private static final String SVG =
      "<svg xmlns='http://www.w3.org/2000/svg' width='90' height='60'";

  @TempDir Path folder;

  @BeforeEach
  void aTee() throws Exception {
    PackedFolder tee = new PackedFolder("inlet-tee");
    for (String name : tee.names()) {
      byte[] bytes = ((org.hemwright.workbench.folder.FolderFile.Content) tee.file(name)).bytes();
      Files.write(folder.resolve(name), bytes);
    }
    Files.createDirectories(folder.resolve("pictures"));
  }

  private BookletMaking with(String name, String text) throws Exception {
    Files.writeString(folder.resolve("pictures").resolve(name), text);
    return Examples.booklet(new DiskFolder(folder), "");
  }

  private static List<String> told(BookletMaking making) {
    return making.findings().stream().map(PicturesTest::line).toList();
  }

  private static String line(Finding finding) {
    return Workbench.wording(Optional.empty()).line(finding);
  }

  private static Optional<Figure> figure(BookletMaking making, String id) {
    return making.booklet().figures().stream().filter(figure -> figure.id().equals(id)).findFirst();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"eddy-skirt", "inlet-tee", "marram-trousers", "brackish-skirt", "shingle-shirt"})
  void everyPictureOfAnExampleIsPacked(String example) throws Exception {
    PackedFolder packed = new PackedFolder(example);
    Path pictures = Path.of("../examples", example, "pictures");
    List<String> there = new ArrayList<>();
    if (Files.isDirectory(pictures)) {
      try (Stream<Path> files = Files.list(pictures)) {
        files.map(file -> file.getFileName().toString()).sorted().forEach(there::add);
      }
    }
    assertThat(packed.pictures()).isEqualTo(there);
  }

  @Test
  void technicalDrawingsStandOnTheCoverAndWhereTheGarmentIsTriedOn() {
    BookletMaking tee = Examples.booklet("inlet-tee");
    List<Figure> cover =
        tee.booklet().cover().stream()
            .filter(Block.Gallery.class::isInstance)
            .flatMap(block -> ((Block.Gallery) block).figures().stream())
            .toList();
    assertThat(cover).extracting(Figure::id).containsExactly("view-A-front", "view-A-back");
    assertThat(cover).allSatisfy(figure -> assertThat(figure.own()).isPresent());
    assertThat(tee.booklet().logo().map(Picture::name)).contains("pictures/logo.svg");
    Figure triedOn = figure(tee, "step-try_on").orElseThrow();
    assertThat(triedOn.own().map(Picture::name)).contains("pictures/view-A-front.svg");
    assertThat(triedOn.alt()).isEqualTo("Inlet tee, front");
  }

  @Test
  void herDrawingOfAStepGoesIntoThePostsToo() {
    BookletMaking shirt = Examples.booklet("shingle-shirt");
    assertThat(figure(shirt, "step-roll_yoke").orElseThrow().alt()).startsWith("The fronts laid");
    List<PrintedFile> posts = shirt.posts(Optional.empty());
    assertThat(posts)
        .extracting(PrintedFile::name)
        .contains("posts/figures/step-roll_yoke.svg", "posts/figures/step-bind_slits.svg");
    String told =
        posts.stream()
            .filter(file -> file.name().endsWith(".md"))
            .map(file -> new String(file.bytes(), StandardCharsets.UTF_8))
            .reduce("", String::concat);
    assertThat(told).contains("(figures/step-roll_yoke.svg)").doesNotContain("../pictures");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "><script>alert(1)</script></svg>                          | acts by itself",
        " onload='alert(1)'/>                                      | acts by itself",
        "><foreignObject><p/></foreignObject></svg>                | acts by itself",
        "><a href='javascript:alert(1)'><path d='M0 0'/></a></svg> | acts by itself",
        "><image href='file:///etc/hostname'/></svg>               | reaches for something outside",
        "><image href='http://terncove.example/a.png'/></svg>      | reaches for something outside",
        "><use href='other.svg#x'/></svg>                          | reaches for something outside",
        "><style>@import 'a.css';</style></svg>                    | reaches for something outside",
        "><path fill='url(http://terncove.example/#x)'/></svg>     | reaches for something outside",
        "><path d='M0 0                                            | no picture that can be read",
        " />nonsense                                               | no picture that can be read"
      })
  void aDrawingThatActsOrReachesIsLeftOutAndTold(String rest, String said) throws Exception {
    BookletMaking made = with("try_on.svg", SVG + " " + rest.strip());
    assertThat(told(made)).singleElement().asString().contains("pictures/try_on.svg", said);
    assertThat(figure(made, "step-try_on").orElseThrow().own()).isEmpty();
  }

  @Test
  void entitiesThatGrowOrReadAreNotResolved() throws Exception {
    String bomb =
        "<?xml version='1.0'?><!DOCTYPE svg [<!ENTITY a 'aaaaaaaaaa'><!ENTITY b '&a;&a;&a;&a;'>"
            + "<!ENTITY f SYSTEM 'file:///etc/hostname'>]>"
            + SVG
            + "><title>&b;&f;</title></svg>";
    BookletMaking made = with("try_on.svg", bomb);
    assertThat(told(made)).singleElement().asString().contains("no picture that can be read");
  }

  @Test
  void whatIsNoPictureIsTold() throws Exception {
    assertThat(told(with("cover.png", "no picture")))
        .singleElement()
        .asString()
        .contains("pictures/cover.png", "no picture that can be read", "Save it again");
  }

  @Test
  void aPlainDrawingIsTaken() throws Exception {
    BookletMaking made =
        with(
            "try_on.svg",
            SVG
                + "><title>On a stand</title><defs><path id='p' d='M0 0H9'/></defs><use"
                + " href='#p'/></svg>");
    assertThat(told(made)).isEmpty();
    assertThat(figure(made, "step-try_on").orElseThrow().alt()).isEqualTo("On a stand");
  }
}
