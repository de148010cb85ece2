package org.hemwright.pattern.construction;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.PathPlace;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.construction.Corners.Corner;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/** What lies on the table before the first step: the cut copies of one view in one size. */
final class CutCloth {
  private final Pattern pattern;
  private final SizedPattern sized;
  private final Map<String, Piece> pieces = new LinkedHashMap<>();
  private final Map<String, Map<String, Edge>> edges = new HashMap<>();
  private final List<Strip> strips = new ArrayList<>();
  private final Map<Part, List<Strip>> stripsOf = new HashMap<>();
  private final List<Pass> passes = new ArrayList<>();
  private final Map<String, List<Pass>> passesOfSeam = new HashMap<>();
  private final Map<Strip, List<Pass>> passesAlong = new HashMap<>();
  private final Map<Part, List<Pass>> passesOn = new HashMap<>();
  private final Map<Strip, PathPlace> middles = new HashMap<>();

  CutCloth(Pattern pattern, View view, SizedPattern sized) {
    this.pattern = pattern;
    this.sized = sized;
    for (Piece piece : sized.pieces()) {
      if (view.pieces().contains(piece.name())) {
        add(piece);
      }
    }
    for (Seam seam : sized.seams()) {
      for (int i = 0; i < seam.joins().size(); i++) {
        Pass pass = new Pass(seam, i);
        if (pass.parts().stream().allMatch(part -> pieces.containsKey(part.piece()))) {
          add(pass);
        }
      }
    }
  }

  private void add(Piece piece) {
    pieces.put(piece.name(), piece);
    Map<String, Edge> named = new HashMap<>();
    piece.edges().forEach(edge -> named.putIfAbsent(edge.name(), edge));
    edges.put(piece.name(), named);
    for (Strip strip : strips(piece)) {
      strips.add(strip);
      put(stripsOf, strip.part(), strip);
    }
  }

  private void add(Pass pass) {
    passes.add(pass);
    put(passesOfSeam, pass.seam().name(), pass);
    pass.strips().forEach(strip -> put(passesAlong, strip, pass));
    pass.parts().forEach(part -> put(passesOn, part, pass));
  }

  private static <K, V> void put(Map<K, List<V>> lists, K key, V value) {
    lists.computeIfAbsent(key, each -> new ArrayList<>()).add(value);
  }

  private static List<Strip> strips(Piece piece) {
    List<Strip> strips = new ArrayList<>();
    boolean half = piece.foldEdge().isPresent();
    for (String copy : copies(piece)) {
      for (Edge edge : piece.edges()) {
        if (edge.onFold()) {
          continue;
        }
        if (half) {
          strips.add(new Strip(piece.name(), copy, EdgePlace.Half.DRAWN, edge.name()));
          strips.add(new Strip(piece.name(), copy, EdgePlace.Half.MIRRORED, edge.name()));
        } else {
          strips.add(new Strip(piece.name(), copy, EdgePlace.Half.WHOLE, edge.name()));
        }
      }
    }
    return strips;
  }

  private static List<String> copies(Piece piece) {
    List<String> copies = piece.card().copies().stream().map(Copy::name).toList();
    return copies.isEmpty() ? List.of("1") : copies;
  }

  SizedPattern sized() {
    return sized;
  }

  Optional<Piece> piece(String name) {
    return Optional.ofNullable(pieces.get(name));
  }

  Map<String, Piece> pieces() {
    return pieces;
  }

  List<Strip> strips() {
    return strips;
  }

  /** Every pass of every seam that this view sews. */
  List<Pass> passes() {
    return passes;
  }

  List<Pass> passes(String seam) {
    return passesOfSeam.getOrDefault(seam, List.of());
  }

  List<Pass> passesOf(Strip strip) {
    return passesAlong.getOrDefault(strip, List.of());
  }

  /** The passes that take a part, in order. */
  List<Pass> passesOn(Part part) {
    return passesOn.getOrDefault(part, List.of());
  }

  List<Part> parts(Work.OfPiece work) {
    return piece(work.piece()).stream()
        .flatMap(piece -> copies(piece).stream())
        .filter(copy -> work.copy().stream().allMatch(copy::equals))
        .map(copy -> new Part(work.piece(), copy))
        .toList();
  }

  List<Strip> strips(Work.OfEdge work) {
    return strips.stream()
        .filter(strip -> strip.piece().equals(work.piece()) && strip.edge().equals(work.edge()))
        .filter(strip -> work.copy().stream().allMatch(strip.copy()::equals))
        .toList();
  }

  List<Strip> strips(Part part) {
    return stripsOf.getOrDefault(part, List.of());
  }

  Optional<Edge> edge(Strip strip) {
    return Optional.ofNullable(edges.getOrDefault(strip.piece(), Map.of()).get(strip.edge()));
  }

  /** Whether it is a line on a piece, not an edge. */
  boolean isLine(Strip strip) {
    return edge(strip).isEmpty();
  }

  /** Whether the pass sews something on along a line. */
  boolean isPlaced(Pass pass) {
    return pass.strips().stream().anyMatch(this::isLine);
  }

  double allowance(Strip strip) {
    return edge(strip).map(edge -> edge.allowance().width()).orElse(0.0);
  }

  /** How deep each fold of its hem is; none where nothing is turned back. */
  List<Double> folds(Strip strip) {
    return edge(strip)
        .filter(edge -> edge.allowance() instanceof Allowance.TurnedBack)
        .map(edge -> ((Allowance.TurnedBack) edge.allowance()).folds())
        .orElse(List.of());
  }

  /** The kind of the cloth that a piece is cut from, where the document says. */
  Optional<Fabric.Kind> cloth(String piece) {
    return piece(piece)
        .flatMap(each -> each.card().cuts().stream().findFirst())
        .flatMap(cut -> pattern.fabric(cut.fabric()))
        .map(Fabric::kind);
  }

  boolean isKnit(Pass pass) {
    return pass.parts().stream()
        .allMatch(part -> cloth(part.piece()).filter(Fabric.Kind.KNIT::equals).isPresent());
  }

  boolean isKnit(Strip strip) {
    return cloth(strip.piece()).filter(Fabric.Kind.KNIT::equals).isPresent();
  }

  /** How a strip bends. */
  Bend bend(Strip strip) {
    return Bend.of(edge(strip).orElseThrow().path());
  }

  // --- corners --------------------------------------------------------------------------------

  /** The corner at which who walks along a place sets out; nothing where that is a notch. */
  Optional<Corner> start(EdgePlace place) {
    return end(place, true);
  }

  Optional<Corner> end(EdgePlace place) {
    return end(place, false);
  }

  private Optional<Corner> end(EdgePlace place, boolean first) {
    boolean drawnStart = first != place.reversed();
    if ((drawnStart ? place.from() : place.to()).isPresent()) {
      return Optional.empty();
    }
    return edge(Strip.of(place))
        .map(edge -> corner(Strip.of(place), drawnStart != edge.reversed()));
  }

  /** The corner where the path of a strip's edge begins, round the drawing, or where it ends. */
  Corner corner(Strip strip, boolean begins) {
    Piece piece = pieces.get(strip.piece());
    if (piece == null) {
      throw new IllegalStateException("no piece " + strip.piece());
    }
    int count = piece.edges().size();
    int index = index(piece, strip.edge());
    int at = begins ? index : (index + 1) % count;
    boolean onFold =
        piece.edges().get(at).onFold() || piece.edges().get((at + count - 1) % count).onFold();
    return new Corner(
        strip.piece(), strip.copy(), onFold ? EdgePlace.Half.WHOLE : strip.half(), at);
  }

  private static int index(Piece piece, String edge) {
    for (int i = 0; i < piece.edges().size(); i++) {
      if (piece.edges().get(i).name().equals(edge)) {
        return i;
      }
    }
    throw new IllegalStateException("no edge " + edge + " on " + piece.name());
  }

  /** The strip that meets this one at its corner; nothing where that is the fold. */
  Optional<Strip> beside(Strip strip, boolean begins) {
    Piece piece = pieces.get(strip.piece());
    if (piece == null || isLine(strip)) {
      return Optional.empty();
    }
    int count = piece.edges().size();
    int index = index(piece, strip.edge());
    Edge other = piece.edges().get((index + (begins ? count - 1 : 1)) % count);
    return other.onFold()
        ? Optional.empty()
        : Optional.of(new Strip(strip.piece(), strip.copy(), strip.half(), other.name()));
  }

  /** The strip that meets a place where a walk along it sets out, or ends. */
  Optional<Strip> beside(EdgePlace place, boolean first) {
    boolean drawnStart = first != place.reversed();
    if ((drawnStart ? place.from() : place.to()).isPresent()) {
      return Optional.empty();
    }
    Strip strip = Strip.of(place);
    return edge(strip).flatMap(edge -> beside(strip, drawnStart != edge.reversed()));
  }

  /** Brings together what a pass sews at its start and at its end. */
  void bring(Pass pass, Corners corners) {
    for (boolean first : new boolean[] {true, false}) {
      List<Corner> met = new ArrayList<>();
      for (Seam.Layer layer : pass.join().layers()) {
        EdgePlace place = layer.run().get(first ? 0 : layer.run().size() - 1);
        end(place, first).ifPresent(met::add);
      }
      for (int i = 1; i < met.size(); i++) {
        corners.bring(met.get(0), met.get(i));
      }
    }
  }

  /** Whether a layer closes to a round; nothing where it starts or ends at a notch. */
  Optional<Boolean> round(Seam.Layer layer, Corners corners) {
    Optional<Corner> start = start(layer.run().get(0));
    Optional<Corner> end = end(layer.run().get(layer.run().size() - 1));
    return start.isPresent() && end.isPresent()
        ? Optional.of(corners.together(start.get(), end.get()))
        : Optional.empty();
  }

  /** Away from the cloth, at the middle of a strip, as its half lies when the piece is opened. */
  Vector outward(Strip strip) {
    Vector out = drawnMiddle(strip).tangent().right();
    return mirror(strip).map(out::moved).orElse(out);
  }

  /** The middle of a strip, as its half lies when the piece is opened. */
  Point middle(Strip strip) {
    Point middle = drawnMiddle(strip).point();
    return mirror(strip).map(motion -> motion.apply(middle)).orElse(middle);
  }

  private PathPlace drawnMiddle(Strip strip) {
    return middles.computeIfAbsent(
        strip,
        each -> {
          Path path = edge(each).orElseThrow().path();
          return path.at(path.length() / 2);
        });
  }

  private Optional<Motion> mirror(Strip strip) {
    return strip.half() == EdgePlace.Half.MIRRORED
        ? piece(strip.piece())
            .flatMap(Piece::foldEdge)
            .map(fold -> Motion.mirror(fold.path().start(), fold.path().end()))
        : Optional.empty();
  }
}
