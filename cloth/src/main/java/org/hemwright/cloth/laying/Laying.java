package org.hemwright.cloth.laying;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import org.hemwright.pattern.finding.Messages;

/**
 * Finds a short layout for a {@link StripProblem}.
 *
 * <p>Workers, each with its own random numbers, search by overlap: copies may overlap on a strip
 * that is a little too short, and are moved apart until none does; then the strip becomes shorter
 * still. Two go on in legs of equal work; after each the shorter layout is handed to the other. The
 * result is the same whether the legs run side by side or one after the other. One alone finds
 * shorter layouts with the same work, but keeps one core busy only.
 *
 * <p>Few shapes come out exactly right: each layout of them is made as tight as its shapes' order
 * allows by a linear program.
 *
 * <p>Sources: Egeblad, Nielsen and Odgaard 2007; Umetani et al. 2009; Gardeyn, Vanden Berghe and
 * Wauters 2025 for the search; Imamichi, Yagiura and Nagamochi 2009 for the depth of an overlap.
 */
public final class Laying {

  /** How many search one problem side by side. */
  private static final int WORKERS = 2;

  /** Up to so many copies a beam search goes first, and takes this share of the work. */
  private static final int FEW = 12;

  private static final double BEAM_SHARE = 0.15;
  private static final long MOST_BEAM_WORK = 300_000;
  private static final int LEGS = 200;
  private static final long SHORTEST_LEG = 2_000;
  private static final long LONGEST_LEG = 400_000;

  private final LayTask task;
  private final SearchRules rules;
  private final int workers;
  private final int threads;

  /** A laying of this problem, ready to be searched by two workers. */
  public Laying(StripProblem problem) {
    this(new LayTask(problem), SearchRules.STANDARD, WORKERS, WORKERS);
  }

  /**
   * A laying that one worker searches: for many problems side by side. Its layout is another than
   * that of two workers.
   *
   * @param store what is known from problems with the same shapes
   */
  public static Laying byOneWorker(StripProblem problem, NoFitStore store) {
    return new Laying(new LayTask(problem, store), SearchRules.STANDARD, 1, 1);
  }

  /**
   * A laying.
   *
   * @param threads how many workers search at once; the layout is the same
   */
  Laying(LayTask task, SearchRules rules, int workers, int threads) {
    this.task = task;
    this.rules = rules;
    this.workers = workers;
    this.threads = threads;
  }

  /** The sentences for what shapes and layouts can say: faults, objections, refused files. */
  public static Messages messages() {
    return Messages.beside(Laying.class, "laying.properties");
  }

  /** Searches until the work is done, the layout cannot be shorter, or the watcher says stop. */
  public LayResult lay(LayBudget budget, LayWatcher watcher) {
    return lay(budget, watcher, Optional.empty());
  }

  /**
   * Searches likewise, with a layout to begin from: of this problem, and the result is not longer;
   * or of a like one (a neighbouring size, a narrower strip) with the same ids, whose places are
   * then a hint.
   */
  public LayResult lay(LayBudget budget, LayWatcher watcher, Layout start) {
    return lay(budget, watcher, Optional.of(start));
  }

  /**
   * An accepted layout of this problem, tidied: copies are moved to the strip's edges and into line
   * with one another. See {@link #tidiness}.
   *
   * @param longest how long it may become; where that is less than the layout's own length, no
   *     longer than it is
   */
  public Layout tidied(Layout layout, double longest) {
    Places places = task.like(layout, task.columns());
    double length = Math.max(places.length, Math.floor(grid(longest)));
    Layout tidied = task.layout(Tidying.tidy(task, places, length));
    boolean holds =
        tidied.length() <= Math.max(layout.length(), longest)
            && new LayoutChecker(task.problem).accepts(tidied);
    return holds ? tidied : layout;
  }

  private double grid(double length) {
    return (double) task.grid.toGrid(length);
  }

  /**
   * How easily a person lays the pieces by a layout, 0 to 1: the share of places along and across
   * the strip that need not be measured, since the shape's box stands at an end or an edge there,
   * or (counting three quarters) in line with another's; long shapes weigh more.
   */
  public double tidiness(Layout layout) {
    return Tidying.tidiness(task, task.like(layout, task.columns()));
  }

  private LayResult lay(LayBudget budget, LayWatcher watcher, Optional<Layout> hint) {
    Places plain = task.columns();
    List<Searcher> searchers = new ArrayList<>();
    for (int worker = 0; worker < workers; worker++) {
      Searcher searcher = new Searcher(task, rules, seed(budget.seed(), worker), plain);
      searcher.beginAtRandom();
      searchers.add(searcher);
    }
    long beamWork = 0;
    if (task.shapeOf.length <= FEW) {
      BeamSearch beam =
          new BeamSearch(task, Math.min(MOST_BEAM_WORK, (long) (budget.work() * BEAM_SHARE)));
      Places found = beam.search(plain);
      beamWork = beam.work();
      if (found != plain) {
        searchers.get(0).adopt(found);
      }
    }
    hint.ifPresent(layout -> begin(searchers.get(workers - 1), task.like(layout, plain)));
    ExecutorService pool = Executors.newFixedThreadPool(threads, Laying::thread);
    boolean complete;
    try {
      complete = search(searchers, budget, beamWork, watcher, pool);
    } finally {
      pool.shutdownNow();
    }
    long work = beamWork + searchers.stream().mapToLong(Searcher::work).sum();
    return new LayResult(accepted(shortest(searchers).best(), plain), complete, work);
  }

  private void begin(Searcher searcher, Places hint) {
    if (new LayoutChecker(task.problem).accepts(task.layout(hint))) {
      searcher.adopt(hint);
    } else {
      searcher.beginFrom(hint);
    }
  }

  private boolean search(
      List<Searcher> searchers,
      LayBudget budget,
      long beamWork,
      LayWatcher watcher,
      ExecutorService pool) {
    long each = Math.max(1, (budget.work() - beamWork) / workers);
    long explored = Math.max(1, (long) (each * rules.explored()));
    long leg = Math.max(SHORTEST_LEG, Math.min(LONGEST_LEG, each / LEGS));
    boolean complete = true;
    double told = Double.POSITIVE_INFINITY;
    for (long done = 0; done < each && !shortest(searchers).finished(); ) {
      boolean exploring = done < explored;
      done = Math.min(exploring ? explored : each, done + leg);
      long until = done;
      double share = (double) (done - explored) / Math.max(1, each - explored);
      run(searchers, pool, s -> runLeg(s, exploring, until, share));
      Searcher leader = shortest(searchers);
      for (Searcher other : searchers) {
        if (other.best().length > leader.best().length) {
          other.adopt(leader.best());
        }
      }
      Places shortest = leader.best();
      if (shortest.length < told) {
        told = shortest.length;
        watcher.shorter(() -> task.layout(shortest));
      }
      LayWatcher.Wish wish = watcher.follow(progress(searchers, beamWork, budget));
      if (wish == LayWatcher.Wish.STOP) {
        return false;
      }
      if (wish == LayWatcher.Wish.COME_TO_AN_END && done < explored) {
        complete = false;
        explored = done;
        each = Math.max(done + 1, (long) (done / rules.explored()));
      }
    }
    return complete;
  }

  private static void runLeg(Searcher searcher, boolean exploring, long until, double share) {
    if (exploring) {
      searcher.explore(until);
    } else {
      searcher.compress(until, share);
    }
  }

  private static void run(List<Searcher> searchers, ExecutorService pool, Consumer<Searcher> leg) {
    List<Future<?>> running = new ArrayList<>();
    for (Searcher searcher : searchers) {
      running.add(pool.submit(() -> leg.accept(searcher)));
    }
    for (Future<?> one : running) {
      try {
        one.get();
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new IllegalStateException("the search was interrupted; stop it by its watcher", e);
      } catch (ExecutionException e) {
        throw new IllegalStateException("a worker failed", e.getCause());
      }
    }
  }

  private LayWatcher.Progress progress(List<Searcher> searchers, long beamWork, LayBudget budget) {
    long work = beamWork + searchers.stream().mapToLong(Searcher::work).sum();
    double length = task.grid.toUnit(shortest(searchers).best().length);
    double density = task.problem.totalArea() / (task.problem.stripWidth() * length);
    return new LayWatcher.Progress(work, Math.max(work, budget.work()), length, density);
  }

  private static Searcher shortest(List<Searcher> searchers) {
    Searcher shortest = searchers.get(0);
    for (Searcher other : searchers) {
      shortest = other.best().length < shortest.best().length ? other : shortest;
    }
    return shortest;
  }

  /**
   * The shortest of these layouts that the checker accepts: tightened, settled, as found, or the
   * plain one.
   */
  private Layout accepted(Places found, Places plain) {
    LayoutChecker checker = new LayoutChecker(task.problem);
    Places settled = new Settling(task).settle(found);
    Places tightened = new Tightening(task).tighten(settled);
    List<Places> all = new ArrayList<>(List.of(tightened, settled, found, plain));
    all.sort(Comparator.comparingDouble(places -> places.length));
    for (Places places : all) {
      Layout layout = task.layout(places);
      if (checker.accepts(layout)) {
        return layout;
      }
    }
    throw new IllegalStateException("not even laying box beside box was accepted");
  }

  private long seed(long seed, int worker) {
    long hash = Chance.mix(seed);
    for (int form = 0; form < task.forms.count(); form++) {
      GridOutline outline = task.forms.outline(form);
      for (int i = 0; i < outline.size(); i++) {
        hash = Chance.mix(Chance.mix(hash + outline.x[i]) + outline.y[i]);
      }
    }
    for (int shape : task.shapeOf) {
      hash = Chance.mix(hash + shape);
    }
    return Chance.mix(Chance.mix(hash + task.grid.width()) + worker);
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "laying");
    thread.setDaemon(true);
    return thread;
  }
}
