package org.hemwright.pattern.body;

import java.util.List;

/**
 * Whom a size chart is for, as the designer declares it.
 *
 * @param people who
 * @param builds of them only these, where she says so; all when empty, names all different
 */
public record Wearers(People people, List<Build> builds) {
  /** Who. */
  public enum People {
    WOMEN,
    MEN,
    /** Women and men alike. */
    ADULTS,
    TEENAGERS,
    CHILDREN,
    BABIES
  }

  /** A part of them that a chart may be made for. */
  public enum Build {
    PLUS,
    PETITE,
    TALL,
    MATERNITY
  }

  public Wearers {
    builds = List.copyOf(builds);
    if (builds.stream().distinct().count() < builds.size()) {
      throw new IllegalArgumentException("a build is named once");
    }
  }

  /**
   * The surveys that measured such people: none where no survey is carried that did, as of
   * children, or where it holds too few of a build to speak for it.
   */
  public List<BodySurvey.Sex> surveyed() {
    if (!builds.isEmpty()) {
      return List.of();
    }
    return switch (people) {
      case WOMEN -> List.of(BodySurvey.Sex.WOMEN);
      case MEN -> List.of(BodySurvey.Sex.MEN);
      case ADULTS -> List.of(BodySurvey.Sex.WOMEN, BodySurvey.Sex.MEN);
      case TEENAGERS, CHILDREN, BABIES -> List.of();
    };
  }
}
