package org.hemwright.booklet.prose;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Inline;

/**
 * The designer's words, part by part.
 *
 * @param parts what stands under each part's heading, by the part's id
 * @param titles what a step is called in place of our title, by the step's id
 * @param steps what stands beside each step, by the step's id
 * @param posts the same, kept for the posts alone
 */
public record Prose(
    Map<String, List<Block>> parts,
    Map<String, List<Inline>> titles,
    Map<String, List<Block>> steps,
    Map<String, List<Block>> posts) {
  /** She wrote nothing. */
  public static final Prose NONE = new Prose(Map.of(), Map.of(), Map.of(), Map.of());

  public Prose {
    parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
    titles = Collections.unmodifiableMap(new LinkedHashMap<>(titles));
    steps = Collections.unmodifiableMap(new LinkedHashMap<>(steps));
    posts = Collections.unmodifiableMap(new LinkedHashMap<>(posts));
  }

  /** What she wrote for a part; nothing where she did not. */
  public List<Block> part(String id) {
    return parts.getOrDefault(id, List.of());
  }

  /** What she calls a step; absent where she leaves that to us. */
  public Optional<List<Inline>> title(String id) {
    return Optional.ofNullable(titles.get(id));
  }

  /** What she wrote beside a step; nothing where she did not. */
  public List<Block> step(String id) {
    return steps.getOrDefault(id, List.of());
  }

  /** What she wrote for the posts beside a step; nothing where she did not. */
  public List<Block> post(String id) {
    return posts.getOrDefault(id, List.of());
  }
}
