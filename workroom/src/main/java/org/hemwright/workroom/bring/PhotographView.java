package org.hemwright.workroom.bring;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.exchange.photograph.Guide;
import org.hemwright.exchange.photograph.OutlineDrawing;
import org.hemwright.exchange.photograph.OutlineDrawing.Named;
import org.hemwright.exchange.photograph.PhotographReader;
import org.hemwright.exchange.photograph.Picture;
import org.hemwright.exchange.photograph.PictureReader;
import org.hemwright.exchange.photograph.Pixel;
import org.hemwright.exchange.photograph.ReadPhotograph;
import org.hemwright.exchange.photograph.ReadPhotograph.SeenPiece;
import org.hemwright.exchange.photograph.ShownPicture;
import org.hemwright.exchange.photograph.Straightening;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.GeometryProblem;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.paper.card.CardPage;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.quantity.Length;
import org.hemwright.pattern.quantity.Reading;
import org.hemwright.workbench.Workbench;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;
import org.hemwright.workroom.text.FindingWords;

/**
 * Shows a photograph of a paper piece, straightened, with the outline that was read off it; takes
 * the outline back as she has corrected it, and makes a drawing of it that is then told apart like
 * any other.
 */
public final class PhotographView implements View {
  private static final double ROUND_IT = 30;
  private static final int MOST_CURVES = 500;
  private static final int MOST_NOTCHES = 200;

  private final Parcels parcels;

  /**
   * With the files that windows send.
   *
   * @param parcels of the same room
   */
  public PhotographView(Parcels parcels) {
    this.parcels = parcels;
  }

  @Override
  public Map<String, Answering> answers() {
    return Map.of(
        "photograph", this::photograph,
        "photograph drawing", this::drawing,
        "reference card", (room, window, question) -> card());
  }

  private static Frame card() {
    return new Frame(Frame.answer().put("pdf", Base64.getEncoder().encodeToString(CardPage.pdf())));
  }

  /**
   * {@code {"ask": "photograph", "card": [[x, y], …] | "marks": [[x, y], [x, y]], "ruler"}}: reads
   * the photograph that the window has sent; without either the card is looked for. Once it is read
   * the window is told {@code {"tell": "photograph", "file", "width", "height", "picture",
   * "problems"}}, the picture as it is while nothing tells how large things are; otherwise
   * straightened, with {@code "box"} (mm) and {@code "pieces": [{"start", "curves", "doubt"}]}.
   */
  private Frame photograph(Room room, Window window, Question question) throws Question.Unclear {
    String name = parcels.name(window).orElseThrow(() -> new Question.Unclear("photograph-none"));
    byte[] bytes = parcels.bytes(window).orElseThrow();
    Guide guide = guide(question.body());
    room.atLength(
        () -> seen(name, bytes, guide),
        seen -> {
          FindingWords.write(
              seen.findings,
              room,
              Workbench.wording(room.draft().evaluated().run()),
              seen.head.putArray("problems"));
          window.send(new Frame(seen.head));
        });
    return new Frame(Frame.answer());
  }

  /** What is told of a photograph, its findings still without words. */
  private record Seen(ObjectNode head, List<Finding> findings) {}

  private static Seen seen(String name, byte[] bytes, Guide guide) {
    ObjectNode head = Frame.tell("photograph").put("file", name);
    List<Finding> findings = new ArrayList<>();
    Optional<Picture> picture = PictureReader.read(name, bytes, findings);
    if (picture.isPresent()) {
      head.put("width", picture.get().width()).put("height", picture.get().height());
      ReadPhotograph read = PhotographReader.read(name, picture.get(), guide);
      findings.addAll(read.findings());
      if (read.pieces().isEmpty()) {
        shown(ShownPicture.of(picture.get()), head);
      } else {
        pieces(picture.get(), read.straightening().orElseThrow(), read.pieces(), head);
      }
    }
    return new Seen(head, findings);
  }

  private static void pieces(
      Picture picture, Straightening straightening, List<SeenPiece> pieces, ObjectNode head) {
    Box box = pieces.get(0).outline().bounds();
    ArrayNode all = head.putArray("pieces");
    for (SeenPiece piece : pieces) {
      box = box.union(piece.outline().bounds());
      ObjectNode one = all.addObject().put("doubt", piece.doubt());
      point(one.putArray("start"), piece.outline().start());
      ArrayNode curves = one.putArray("curves");
      for (Curve curve : piece.outline().curves()) {
        ArrayNode numbers = curves.addArray();
        if (curve instanceof Cubic cubic) {
          point(numbers, cubic.control1());
          point(numbers, cubic.control2());
        }
        point(numbers, curve.end());
      }
    }
    Box around = box.grown(ROUND_IT);
    head.putArray("box")
        .add(around.minX())
        .add(around.minY())
        .add(around.maxX())
        .add(around.maxY());
    shown(ShownPicture.of(picture, straightening, around), head);
  }

  private static void shown(ShownPicture picture, ObjectNode head) {
    head.put("picture", Base64.getEncoder().encodeToString(picture.jpeg()));
  }

  private static void point(ArrayNode numbers, Point point) {
    numbers.add(point.x()).add(point.y());
  }

  private static Guide guide(JsonNode body) throws Question.Unclear {
    try {
      if (body.path("card").size() == 4) {
        return new Guide.CardCorners(pixels(body.path("card")));
      }
      if (body.path("marks").size() == 2) {
        if (Length.read(body.path("ruler").asText("").strip()) instanceof Reading.Read<Length> read
            && read.value().mm() > 0) {
          List<Pixel> marks = pixels(body.path("marks"));
          return new Guide.Ruler(marks.get(0), marks.get(1), read.value().mm());
        }
        throw new Question.Unclear("ruler-length");
      }
      return new Guide.Card();
    } catch (IllegalArgumentException beyond) {
      throw new Question.Unclear("picture-place");
    }
  }

  private static List<Pixel> pixels(JsonNode places) {
    List<Pixel> pixels = new ArrayList<>();
    for (JsonNode place : places) {
      pixels.add(new Pixel(place.path(0).asDouble(), place.path(1).asDouble()));
    }
    return pixels;
  }

  /**
   * {@code {"ask": "photograph drawing", "start", "curves", "notches": [[x, y, x, y]], "grain": [x,
   * y, x, y]}}: the outline as she has it now becomes the drawing that the window has sent, as if
   * it came from a file. The answer has {@code file}.
   */
  private Frame drawing(Room room, Window window, Question question) throws Question.Unclear {
    String photograph =
        parcels.name(window).orElseThrow(() -> new Question.Unclear("photograph-none"));
    JsonNode body = question.body();
    if (body.path("curves").size() > MOST_CURVES || body.path("notches").size() > MOST_NOTCHES) {
      throw new Question.Unclear("outline-many");
    }
    try {
      List<Named> lines = new ArrayList<>();
      Path outline = outline(body);
      if (!outline.isClosed()) {
        throw new Question.Unclear("outline-open");
      }
      lines.add(new Named("outline", outline));
      for (JsonNode notch : body.path("notches")) {
        lines.add(new Named("notches", stroke(notch)));
      }
      if (body.path("grain").size() == 4) {
        lines.add(new Named("grain", stroke(body.path("grain"))));
      }
      String name = photograph.replaceFirst("\\.[^.]*$", "") + ".svg";
      parcels.hold(window, name, OutlineDrawing.svg(lines));
      return new Frame(Frame.answer().put("file", name));
    } catch (GeometryProblem broken) {
      throw new Question.Unclear("outline-open");
    }
  }

  private static Path outline(JsonNode body) {
    List<Curve> curves = new ArrayList<>();
    Point at = point(body.path("start"), 0);
    for (JsonNode numbers : body.path("curves")) {
      Curve curve =
          numbers.size() == 6
              ? new Cubic(at, point(numbers, 0), point(numbers, 2), point(numbers, 4))
              : new Line(at, point(numbers, 0));
      curves.add(curve);
      at = curve.end();
    }
    return Path.of(curves);
  }

  private static Path stroke(JsonNode numbers) {
    return Path.straight(point(numbers, 0), point(numbers, 2));
  }

  private static Point point(JsonNode numbers, int from) {
    return new Point(
        numbers.path(from).asDouble(Double.NaN), numbers.path(from + 1).asDouble(Double.NaN));
  }
}
