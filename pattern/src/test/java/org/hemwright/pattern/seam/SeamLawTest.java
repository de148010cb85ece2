package org.hemwright.pattern.seam;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.Garments;
import org.hemwright.pattern.Sketch;
import org.hemwright.pattern.piece.Corner;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;
import org.junit.jupiter.api.Test;

/** What must hold however the designer happens to draw the pieces. */
class SeamLawTest {
  private static final Motion MIRROR = Motion.mirror(new Point(0, 0), new Point(0, 1));

  private static List<Garments> garments() {
    return List.of(
        Garments.skirt(),
        Garments.trousers(),
        Garments.onePieceLeg(),
        Garments.tee(),
        Garments.pocket(2));
  }

  /** The piece drawn as its mirror image; the designer's direction of each edge is kept. */
  private static Piece mirrored(Piece piece) {
    List<Edge> edges = new ArrayList<>();
    List<Corner> corners = new ArrayList<>();
    for (Edge edge : piece.edges()) {
      edges.add(
          0,
          new Edge(
              edge.name(),
              edge.path().moved(MIRROR).reversed(),
              edge.onFold(),
              edge.allowance(),
              !edge.reversed(),
              edge.origin()));
    }
    for (int i = 0; i < edges.size(); i++) {
      String before = edges.get((i + edges.size() - 1) % edges.size()).name();
      corners.add(
          new Corner(
              before,
              edges.get(i).name(),
              edges.get(i).path().start(),
              piece.corners().get(0).finish()));
    }
    List<Notch> notches = new ArrayList<>();
    for (Notch notch : piece.notches()) {
      double length = piece.edge(notch.edge()).orElseThrow().path().length();
      notches.add(
          new Notch(
              notch.edge(), length - notch.distance(), notch.kind(), notch.name(), notch.origin()));
    }
    List<Mark> marks = new ArrayList<>();
    for (Mark.Placement line : piece.marks(Mark.Placement.class)) {
      marks.add(
          new Mark.Placement(line.name(), line.path().moved(MIRROR), line.text(), line.origin()));
    }
    return new Piece(
        piece.card(),
        new Outline(piece.stitchLine().path().moved(MIRROR).reversed()),
        edges,
        corners,
        notches,
        piece.grain(),
        marks,
        piece.openings(),
        piece.stackPoint());
  }

  private static Piece redrawn(Piece piece, Set<String> otherWay) {
    List<Edge> edges = new ArrayList<>();
    for (Edge edge : piece.edges()) {
      boolean turn = otherWay.contains(piece.name() + "." + edge.name());
      edges.add(
          new Edge(
              edge.name(),
              edge.path(),
              edge.onFold(),
              edge.allowance(),
              edge.reversed() != turn,
              edge.origin()));
    }
    return new Piece(
        piece.card(),
        piece.stitchLine(),
        edges,
        piece.corners(),
        piece.notches(),
        piece.grain(),
        piece.marks(),
        piece.openings(),
        piece.stackPoint());
  }

  private static SeamRequest rewritten(SeamRequest seam, Set<String> otherWay) {
    List<SeamRequest.Run> layers = new ArrayList<>();
    for (SeamRequest.Run run : seam.layers()) {
      layers.add(
          new SeamRequest.Run(
              run.places().stream()
                  .map(
                      term ->
                          otherWay.contains(term.piece() + "." + term.edge())
                              ? term.turned()
                              : term)
                  .toList()));
    }
    return new SeamRequest(seam.name(), layers, seam.ease(), seam.even(), seam.origin());
  }

  private static SeamResolution resolve(List<SeamRequest> seams, List<Piece> pieces) {
    SeamResolution resolution = SeamResolution.resolve(seams, pieces);
    assertThat(resolution.findings()).isEmpty();
    return resolution;
  }

  /** Which places come together, whatever the order and the sense. */
  private static Set<Set<String>> together(SeamResolution resolution, Set<String> mirroredPieces) {
    Set<Set<String>> joins = new HashSet<>();
    for (Seam seam : resolution.seams()) {
      for (Seam.Join join : seam.joins()) {
        Set<String> places = new TreeSet<>();
        for (Seam.Layer layer : join.layers()) {
          for (EdgePlace place : layer.run()) {
            boolean swap = mirroredPieces.contains(place.piece());
            places.add(
                place.piece()
                    + "."
                    + place.edge()
                    + (swap ? swapped(place) : place.copy() + place.half()));
          }
        }
        joins.add(places);
      }
    }
    return joins;
  }

  private static String swapped(EdgePlace place) {
    String copy =
        switch (place.copy()) {
          case "1" -> "2";
          case "2" -> "1";
          case "left" -> "right";
          default -> "left";
        };
    return switch (place.half()) {
      case WHOLE -> copy + EdgePlace.Half.WHOLE;
      case DRAWN -> place.copy() + EdgePlace.Half.MIRRORED;
      case MIRRORED -> place.copy() + EdgePlace.Half.DRAWN;
    };
  }

  /** Of pockets and cuffs that no one can tell apart, either may go to either side. */
  @Test
  void aPieceDrawnAsItsMirrorImageIsSewnTheSame() {
    Random random = new Random(1);
    for (int trial = 0; trial < 60; trial++) {
      for (Garments garment : garments()) {
        List<Piece> pieces = new ArrayList<>();
        Set<String> mirrored = new TreeSet<>();
        for (Piece piece : garment.pieces()) {
          boolean turn = random.nextBoolean();
          pieces.add(turn ? mirrored(piece) : piece);
          boolean copiesMirrored = piece.card().copies().stream().anyMatch(c -> c.mirrored());
          if (turn && (copiesMirrored || piece.foldEdge().isPresent())) {
            mirrored.add(piece.name());
          }
        }
        Set<Set<String>> drawn = together(resolve(garment.seams(), garment.pieces()), Set.of());
        Set<Set<String>> other = together(resolve(garment.seams(), pieces), mirrored);
        assertThat(other).hasSameSizeAs(drawn);
        if (garment.pieces().stream().noneMatch(p -> p.name().matches("pocket|cuff"))) {
          assertThat(other).isEqualTo(drawn);
        }
      }
    }
  }

  @Test
  void anEdgeDrawnTheOtherWayAndWrittenReversedIsSewnTheSame() {
    Random random = new Random(2);
    for (int trial = 0; trial < 60; trial++) {
      for (Garments garment : garments()) {
        Set<String> otherWay = new TreeSet<>();
        for (Piece piece : garment.pieces()) {
          for (Edge edge : piece.edges()) {
            if (random.nextBoolean()) {
              otherWay.add(piece.name() + "." + edge.name());
            }
          }
        }
        SeamResolution drawn = resolve(garment.seams(), garment.pieces());
        SeamResolution other =
            resolve(
                garment.seams().stream().map(seam -> rewritten(seam, otherWay)).toList(),
                garment.pieces().stream().map(piece -> redrawn(piece, otherWay)).toList());
        assertThat(together(other, Set.of())).isEqualTo(together(drawn, Set.of()));
      }
    }
  }

  /** Remembered or worked out, the answers are the same, whatever was asked before. */
  @Test
  void aMemoryAnswersAsIfItHadNone() {
    Random random = new Random(4);
    for (int trial = 0; trial < 40; trial++) {
      SeamMemory memory = new SeamMemory();
      for (int size = 0; size < 6; size++) {
        Garments garment = garments().get(random.nextInt(garments().size()));
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : garment.pieces()) {
          pieces.add(random.nextInt(3) == 0 ? mirrored(piece) : piece);
        }
        List<SeamRequest> seams = new ArrayList<>();
        for (SeamRequest seam : garment.seams()) {
          Seam.Ease ease = new Seam.Ease(0, random.nextInt(30), false);
          seams.add(new SeamRequest(seam.name(), seam.layers(), ease, seam.even(), seam.origin()));
        }
        if (random.nextInt(4) == 0) {
          seams.remove(random.nextInt(seams.size()));
        }
        assertThat(memory.resolve(seams, pieces, Set.of()))
            .isEqualTo(SeamResolution.resolve(seams, pieces));
      }
    }
  }

  /** A notch that passes another in one size is told there, though the sizes before were well. */
  @Test
  void aMemoryLooksAtWhereNotchesLie() {
    SeamMemory memory = new SeamMemory();
    List<SeamRequest> seams =
        List.of(Garments.seam("s", "front.side from low to high with back.side"));
    for (double low : new double[] {100, 300, 500}) {
      List<Piece> pieces = new ArrayList<>();
      pieces.add(
          Sketch.rectangle("front", 200, 600, "hem", "side", "waist", "centre")
              .notch("side", low, "low")
              .notch("side", 400, "high")
              .draw());
      pieces.add(Sketch.rectangle("back", 200, 600, "hem", "centre", "waist", "side").draw());
      SeamResolution resolution = memory.resolve(seams, pieces, Set.of());
      assertThat(resolution).isEqualTo(SeamResolution.resolve(seams, pieces));
      assertThat(resolution.findings()).hasSize(low > 400 ? 1 : 0);
    }
  }

  /** Each cut copy and half gives each sewn edge once to each layer that names it. */
  @Test
  void everyEdgeIsSewnOnce() {
    for (Garments garment : garments()) {
      for (Seam seam : resolve(garment.seams(), garment.pieces()).seams()) {
        List<String> places = new ArrayList<>();
        for (Seam.Join join : seam.joins()) {
          for (Seam.Layer layer : join.layers()) {
            layer.run().forEach(p -> places.add(p.piece() + p.copy() + p.half() + p.edge()));
          }
        }
        assertThat(places).doesNotHaveDuplicates();
      }
    }
  }
}
