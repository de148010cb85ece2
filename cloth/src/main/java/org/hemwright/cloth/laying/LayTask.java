package org.hemwright.cloth.laying;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A {@link StripProblem} made ready for the search: on the grid, with its no-fit table. Shared by
 * all workers, never changed.
 */
final class LayTask {

  final StripProblem problem;
  final StripGrid grid;
  final Forms forms;
  final NoFitTable table;
  final Room room;

  /** The shape of each copy; copies of one shape stand together. */
  final int[] shapeOf;

  /** Areas by shape, in grid steps squared. */
  final double[] areaOfShape;

  /**
   * No layout is shorter than all shapes' area over the strip's width, rounded up, in grid steps.
   */
  final double leastLengthByArea;

  /** Nor shorter than this: the same, or the longest shape in its shortest turn. */
  final double leastLength;

  LayTask(StripProblem problem) {
    this(problem, new NoFitStore());
  }

  LayTask(StripProblem problem, NoFitStore store) {
    this.problem = problem;
    grid = StripGrid.of(problem);
    forms = new Forms(problem, grid);
    table = new NoFitTable(forms, store);
    int shapes = problem.shapes().size();
    room = new Room(this, shapes);
    List<Integer> copies = new ArrayList<>();
    areaOfShape = new double[shapes];
    double area = 0;
    double longest = 0;
    for (int shape = 0; shape < shapes; shape++) {
      Cut first = forms.cutsOf(shape).get(0);
      areaOfShape[shape] = forms.outline(first.form()).area();
      double shortest = Double.POSITIVE_INFINITY;
      for (int cut : room.cutsOf(shape)) {
        shortest = Math.min(shortest, room.nextX(cut, 0) + (double) forms.cuts().get(cut).width());
      }
      longest = Math.max(longest, shortest);
      for (int copy = 0; copy < problem.shapes().get(shape).demand(); copy++) {
        copies.add(shape);
        area += areaOfShape[shape];
      }
    }
    shapeOf = copies.stream().mapToInt(Integer::intValue).toArray();
    leastLengthByArea = Math.ceil(area / (double) grid.width());
    leastLength = Math.max(longest, leastLengthByArea);
  }

  /**
   * A plain layout to begin with: box beside box in columns across the strip, the longest boxes
   * first.
   */
  Places columns() {
    int n = shapeOf.length;
    int[] cut = new int[n];
    double[] x = new double[n];
    double[] y = new double[n];
    List<Integer> order = new ArrayList<>();
    for (int copy = 0; copy < n; copy++) {
      cut[copy] = shortestCut(shapeOf[copy]);
      order.add(copy);
    }
    order.sort(Comparator.comparingLong(copy -> -forms.cuts().get(cut[copy]).width()));
    double start = 0;
    double end = 0;
    double top = 0;
    for (int copy : order) {
      Cut own = forms.cuts().get(cut[copy]);
      double across = room.nearestY(cut[copy], top);
      if (across < top) {
        start = end;
        across = own.lanes().get(0).low();
      }
      x[copy] = room.nextX(cut[copy], start);
      y[copy] = across;
      top = across + own.height();
      end = Math.max(end, x[copy] + own.width());
    }
    return new Places(end, 0, cut, x, y);
  }

  private int shortestCut(int shape) {
    List<Cut> cuts = forms.cuts();
    int shortest = room.cutsOf(shape)[0];
    for (int other : room.cutsOf(shape)) {
      shortest = cuts.get(other).width() < cuts.get(shortest).width() ? other : shortest;
    }
    return shortest;
  }

  /**
   * Places like those of a layout, which may be of other shapes with the same ids: each copy at the
   * place of one placement of its id, in the same turn where it is allowed, moved onto the strip.
   * What is not placed there stays where the other places have it. The copies may overlap.
   */
  Places like(Layout layout, Places otherwise) {
    int n = shapeOf.length;
    int[] cut = otherwise.cut.clone();
    double[] x = otherwise.x.clone();
    double[] y = otherwise.y.clone();
    Map<String, Deque<Placement>> waiting = new HashMap<>();
    for (Placement placement : layout.placements()) {
      waiting.computeIfAbsent(placement.id(), id -> new ArrayDeque<>()).add(placement);
    }
    double length = leastLength;
    for (int copy = 0; copy < n; copy++) {
      Deque<Placement> own = waiting.get(problem.shapes().get(shapeOf[copy]).id());
      if (own != null && !own.isEmpty()) {
        Placement placement = own.remove();
        cut[copy] = cutInTurn(shapeOf[copy], placement.turn(), cut[copy]);
        Cut chosen = forms.cuts().get(cut[copy]);
        x[copy] = (double) (grid.toGrid(placement.x()) - chosen.originX());
        y[copy] = (double) (grid.toGrid(placement.y()) - chosen.originY());
      }
      x[copy] = onBar(cut[copy], Math.max(0, x[copy]));
      y[copy] = room.nearestY(cut[copy], y[copy]);
      length = Math.max(length, x[copy] + (double) forms.cuts().get(cut[copy]).width());
    }
    return new Places(length, 0, cut, x, y);
  }

  private double onBar(int cut, double x) {
    double far = x + (double) forms.cuts().get(cut).width() + 2 * room.repeat(cut);
    return room.nearestX(cut, far, x);
  }

  private int cutInTurn(int shape, Turn turn, int otherwise) {
    for (int cut : room.cutsOf(shape)) {
      if (forms.cuts().get(cut).turn().equals(turn)) {
        return cut;
      }
    }
    return otherwise;
  }

  /** The layout in the problem's own unit; its length is that of the copies' far end. */
  Layout layout(Places places) {
    List<Placement> placements = new ArrayList<>();
    double length = 0;
    for (int copy = 0; copy < shapeOf.length; copy++) {
      Cut cut = forms.cuts().get(places.cut[copy]);
      LooseShape shape = problem.shapes().get(cut.shape());
      double x = grid.toUnit(places.x[copy] + cut.originX());
      double y = grid.toUnit(places.y[copy] + cut.originY());
      placements.add(new Placement(shape.id(), cut.turn(), x, y));
      for (Spot corner : shape.outline()) {
        length = Math.max(length, cut.turn().apply(corner).x() + x);
      }
    }
    return new Layout(length, placements);
  }
}
