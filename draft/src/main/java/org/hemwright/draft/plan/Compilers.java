package org.hemwright.draft.plan;

/** Those who turn rules and terms into nodes; each may need the others. */
final class Compilers {
  private final NumberCompiler numbers;
  private final PointCompiler points;
  private final DirectionCompiler directions;
  private final MoveCompiler moves;
  private final PathCompiler paths;
  private final GirthCompiler girths;
  private final PieceSources sources;
  private final Tracings tracings;

  Compilers(Compilation shared) {
    this.numbers = new NumberCompiler(shared, this);
    this.points = new PointCompiler(shared, this);
    this.directions = new DirectionCompiler(shared, this);
    this.moves = new MoveCompiler(shared, this);
    this.paths = new PathCompiler(shared, this);
    this.girths = new GirthCompiler(shared);
    this.sources = new PieceSources(shared);
    this.tracings = new Tracings(shared);
  }

  NumberCompiler numbers() {
    return numbers;
  }

  PointCompiler points() {
    return points;
  }

  DirectionCompiler directions() {
    return directions;
  }

  MoveCompiler moves() {
    return moves;
  }

  PathCompiler paths() {
    return paths;
  }

  GirthCompiler girths() {
    return girths;
  }

  Tracings tracings() {
    return tracings;
  }

  PieceSources sources() {
    return sources;
  }
}
