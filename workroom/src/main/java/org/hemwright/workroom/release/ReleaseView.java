package org.hemwright.workroom.release;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.cloth.yardage.YardageRequest;
import org.hemwright.paper.PaperOptions;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Progress;
import org.hemwright.workbench.Publication;
import org.hemwright.workbench.PublishOrder;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.EditedFolder;
import org.hemwright.workbench.out.KeptLayings;
import org.hemwright.workbench.out.OutFolder;
import org.hemwright.workbench.release.ReleaseShelf;
import org.hemwright.workroom.keep.Keeper;
import org.hemwright.workroom.ledger.LedgerView;
import org.hemwright.workroom.paper.MadeFile;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;
import org.hemwright.workroom.text.FindingWords;

/** Publishes the pattern as it stands. */
public final class ReleaseView implements View {
  private static final String PROOF = "Proof, not for sale";

  private boolean publishing;

  @Override
  public Map<String, Answering> answers() {
    return Map.of("publish", this::publish, "shelf", ReleaseView::shelf);
  }

  /** {@code {"ask": "shelf"}}: what was released, and what the document calls this version. */
  private static Frame shelf(Room room, Window window, Question question) {
    ObjectNode head = Frame.answer();
    ArrayNode versions = head.putArray("released");
    room.place().ifPresent(place -> ReleaseShelf.of(place).versions().forEach(versions::add));
    room.draft()
        .evaluated()
        .run()
        .ifPresent(run -> head.put("version", run.pattern().details().version()));
    return new Frame(head);
  }

  /**
   * {@code {"ask": "publish", "proof", "release"}}: publishes, or makes a proof of which every page
   * says so. Told by and by: {@code publishing} how far it has come, {@code published} what it came
   * to.
   */
  private Frame publish(Room room, Window window, Question question) throws Question.Unclear {
    if (publishing) {
      throw new Question.Unclear("publishing-already");
    }
    if (!room.draft().evaluated().sound() || room.place().isEmpty()) {
      throw new Question.Unclear("slips-first");
    }
    publishing = true;
    EditedFolder folder = room.edited();
    boolean proof = question.body().path("proof").asBoolean();
    boolean release = !proof && question.body().path("release").asBoolean();
    int revision = room.revision();
    Path place = room.place().get();
    Progress progress =
        (doing, done, of) ->
            room.later(
                () ->
                    room.tell(
                        new Frame(
                            Frame.tell("publishing")
                                .put("doing", doing)
                                .put("done", done)
                                .put("of", of))));
    room.atLength(
        () -> published(room, folder, revision, place, proof, release, progress),
        told -> {
          publishing = false;
          room.tell(new Frame(told));
        });
    return new Frame(Frame.answer());
  }

  private static ObjectNode published(
      Room room,
      EditedFolder folder,
      int revision,
      Path place,
      boolean proof,
      boolean release,
      Progress progress) {
    ObjectNode told = Frame.tell("published").put("proof", proof);
    told.put("revision", revision);
    ArrayNode findings = told.putArray("findings");
    ArrayNode files = told.putArray("files");
    try {
      Evaluated evaluated = Workbench.evaluate(folder);
      SizeRun run = evaluated.run().orElseThrow();
      KeptLayings kept = KeptLayings.in(place.resolve(Keeper.PLACE));
      PaperOptions options = PaperOptions.everything().withPictures();
      Publication publication =
          Publication.of(
              evaluated,
              run,
              new PublishOrder(
                  proof ? options.asProof(PROOF) : options,
                  laid ->
                      Workbench.yardage(evaluated, run, YardageRequest.everything(), kept, laid),
                  new OutFolder(place.resolve("out")),
                  Optional.of(ReleaseShelf.of(place)),
                  release),
              progress);
      kept.keep();
      List<Finding> open =
          publication.findings().stream()
              .filter(finding -> finding.status() == Status.FAIL || finding.status() == Status.WARN)
              .toList();
      FindingWords.write(
          open,
          folder.texts(),
          revision,
          Workbench.wording(Optional.of(run)).showing(LedgerView.format(run)),
          findings);
      publication.folder().ifPresent(made -> told.put("folder", made.toString()));
      publication.zip().ifPresent(zip -> told.put("zip", zip));
      publication.release().ifPresent(frozen -> told.put("release", frozen.toString()));
      publication
          .printed()
          .ifPresent(printed -> printed.files().forEach(file -> MadeFile.tell(file, files)));
    } catch (IOException full) {
      told.put(
          "trouble",
          "The files could not be written: "
              + full.getMessage()
              + ". What was published before stands as it was.");
    } catch (RuntimeException fault) {
      room.note("publishing met a fault of the program: " + fault);
      told.put(
          "trouble", "Publishing met a fault of the program. What was published before stands.");
    }
    return told;
  }
}
