package org.hemwright.paper.nest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hemwright.geometry.Path;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Size;

/**
 * All pieces of one group of sizes, drawn when asked for and kept, at any quarter turn. Several
 * threads may ask at once.
 */
public final class GroupDrawing {
  private final SizeRun run;
  private final List<Size> sizes;
  private final List<Nest> nests;
  private final boolean stitchLines;
  private final List<View> views;
  private final Map<Integer, PieceDrawing> drawn = new HashMap<>();
  private final Map<Integer, Nest> turned = new HashMap<>();

  /**
   * The pieces of a group.
   *
   * @param sizes in the chart's order
   * @param nests of these sizes, in the order of the document
   * @param stitchLines whether stitch lines are drawn
   * @param views the garments that a maker may choose among; none where there is no choice
   */
  public GroupDrawing(
      SizeRun run, List<Size> sizes, List<Nest> nests, boolean stitchLines, List<View> views) {
    this.run = run;
    this.sizes = List.copyOf(sizes);
    this.nests = List.copyOf(nests);
    this.stitchLines = stitchLines;
    this.views = List.copyOf(views);
  }

  /** The pieces of a group, without a choice of garments. */
  public GroupDrawing(SizeRun run, List<Size> sizes, List<Nest> nests, boolean stitchLines) {
    this(run, sizes, nests, stitchLines, List.of());
  }

  /** The run that is drawn. */
  public SizeRun run() {
    return run;
  }

  /** The sizes, in the chart's order. */
  public List<Size> sizes() {
    return sizes;
  }

  /** The names of the sizes, in the chart's order. */
  public List<String> sizeNames() {
    return sizes.stream().map(Size::name).toList();
  }

  /** The garments that a maker may choose among; none where there is no choice. */
  public List<View> views() {
    return views;
  }

  /** The nests, grain upward. */
  public List<Nest> nests() {
    return nests;
  }

  /** A nest turned by quarters. */
  public synchronized Nest nest(int index, int quarterTurns) {
    return quarterTurns == 0
        ? nests.get(index)
        : turned.computeIfAbsent(
            4 * index + quarterTurns, key -> nests.get(index).turned(quarterTurns));
  }

  /** A piece drawn, turned by quarters. */
  public synchronized PieceDrawing piece(int index, int quarterTurns) {
    return drawn.computeIfAbsent(
        4 * index + quarterTurns,
        key -> PieceDrawing.of(run, nest(index, quarterTurns), stitchLines));
  }

  /** A piece drawn for pages that meet along some lines. */
  public PieceDrawing piece(int index, int quarterTurns, List<Path> seams) {
    return seams.isEmpty()
        ? piece(index, quarterTurns)
        : PieceDrawing.of(run, nest(index, quarterTurns), stitchLines, seams);
  }

  /** All pieces, grain upward. */
  public List<PieceDrawing> upright() {
    List<PieceDrawing> all = new ArrayList<>();
    for (int i = 0; i < nests.size(); i++) {
      all.add(piece(i, 0));
    }
    return all;
  }
}
