package org.hemwright.checks;

import java.lang.ref.WeakReference;
import java.util.List;
import java.util.function.BiFunction;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;

/**
 * What several checks read of every size, worked out once for all of them. Only the last run that
 * was asked for is kept, and it is not kept alive.
 *
 * <p>Sizes are worked out side by side; what is worked out must therefore ask for nothing that is
 * kept in this way itself.
 *
 * @param <T> what is known of one size; never changed afterwards
 */
final class OncePerRun<T> {
  private final BiFunction<Pattern, SizedPattern, T> work;
  private WeakReference<SizeRun> run = new WeakReference<>(null);
  private List<T> known = List.of();

  OncePerRun(BiFunction<Pattern, SizedPattern, T> work) {
    this.work = work;
  }

  /** One value for each size of the run, in its order. */
  synchronized List<T> of(SizeRun asked) {
    if (!run.refersTo(asked)) {
      known =
          asked.sizes().parallelStream().map(sized -> work.apply(asked.pattern(), sized)).toList();
      run = new WeakReference<>(asked);
    }
    return known;
  }
}
