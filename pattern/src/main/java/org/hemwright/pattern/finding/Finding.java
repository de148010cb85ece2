package org.hemwright.pattern.finding;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One thing found, as data: what it is about, in which sizes, what was found and expected, where,
 * and what would mend it. It carries no sentence: {@link Wording} makes one from the code and the
 * arguments, so that a terminal, a page and a booklet can each show it.
 *
 * @param code the check's or problem's own name, such as {@code seam-length}; the key of its
 *     wording
 * @param status how bad it is
 * @param subject what it is about, in the document's names: {@code front.side}, {@code seam cap}
 * @param sizes the sizes concerned, in the chart's order; empty when it holds whatever the size
 * @param arguments what the wording may name, in order
 * @param found the value found, if it is one number
 * @param expected the value expected, if it is one number
 * @param unit the unit of both: {@code mm}, {@code deg}, {@code %}, or empty
 * @param places where it is, the main place first
 * @param edit a change of the text that would mend it, if one is known
 */
public record Finding(
    String code,
    Status status,
    String subject,
    List<String> sizes,
    Map<String, Argument> arguments,
    OptionalDouble found,
    OptionalDouble expected,
    String unit,
    List<Place> places,
    Optional<TextEdit> edit) {
  /** The argument that holds the reason of an accepted finding. */
  private static final String REASON = "accepted_because";

  public Finding {
    if (code.isBlank()) {
      throw new IllegalArgumentException("a finding has a code");
    }
    sizes = List.copyOf(sizes);
    arguments = Collections.unmodifiableMap(new LinkedHashMap<>(arguments));
    places = List.copyOf(places);
  }

  /** Starts a finding that must be mended. */
  public static Builder fail(String code, String subject) {
    return new Builder(code, Status.FAIL, subject);
  }

  /** Starts a finding that is worth a look. */
  public static Builder warn(String code, String subject) {
    return new Builder(code, Status.WARN, subject);
  }

  /** Starts a finding that says all is well. */
  public static Builder ok(String code, String subject) {
    return new Builder(code, Status.OK, subject);
  }

  /** The same finding with another status. */
  public Finding as(Status other) {
    return new Finding(code, other, subject, sizes, arguments, found, expected, unit, places, edit);
  }

  /** The same finding, accepted by the designer for a reason, which its wording gives. */
  public Finding accepted(String reason) {
    Map<String, Argument> with = new LinkedHashMap<>(arguments);
    with.put(REASON, Argument.of(reason));
    return new Finding(
        code, Status.ACCEPTED, subject, sizes, with, found, expected, unit, places, edit);
  }

  /** Why the designer accepts it, if she does. */
  public Optional<String> reason() {
    return status == Status.ACCEPTED && arguments.get(REASON) instanceof Argument.Text reason
        ? Optional.of(reason.text())
        : Optional.empty();
  }

  /** The same finding in other sizes. */
  public Finding in(List<String> names) {
    return new Finding(
        code, status, subject, names, arguments, found, expected, unit, places, edit);
  }

  /** The same finding with a change of the text that would mend it. */
  public Finding mendedBy(TextEdit change) {
    return new Finding(
        code,
        status,
        subject,
        sizes,
        arguments,
        found,
        expected,
        unit,
        places,
        Optional.of(change));
  }

  /** Where in a text it is, if anywhere. */
  public Optional<Origin> origin() {
    return places.stream().flatMap(place -> place.origin().stream()).findFirst();
  }

  /** Collects a finding's parts. */
  public static final class Builder {
    private final String code;
    private final Status status;
    private final String subject;
    private List<String> sizes = List.of();
    private final Map<String, Argument> arguments = new LinkedHashMap<>();
    private OptionalDouble found = OptionalDouble.empty();
    private OptionalDouble expected = OptionalDouble.empty();
    private String unit = "";
    private final List<Place> places = new java.util.ArrayList<>();
    private Optional<TextEdit> edit = Optional.empty();

    private Builder(String code, Status status, String subject) {
      this.code = code;
      this.status = status;
      this.subject = subject;
    }

    /** The sizes concerned. */
    public Builder sizes(List<String> names) {
      sizes = names;
      return this;
    }

    /** A value that the wording names. */
    public Builder with(String name, Argument argument) {
      arguments.put(name, argument);
      return this;
    }

    /** A text that the wording names. */
    public Builder with(String name, String text) {
      return with(name, Argument.of(text));
    }

    /** The value found and the one expected. */
    public Builder values(double foundValue, double expectedValue, String unitName) {
      found = OptionalDouble.of(foundValue);
      expected = OptionalDouble.of(expectedValue);
      unit = unitName;
      return this;
    }

    /** The value found, where none in particular was expected. */
    public Builder found(double foundValue, String unitName) {
      found = OptionalDouble.of(foundValue);
      unit = unitName;
      return this;
    }

    /** A place; the first given is the main one. */
    public Builder at(Place place) {
      places.add(place);
      return this;
    }

    /** A place in a text. */
    public Builder at(Origin origin) {
      return at(Place.in(origin));
    }

    /** A change of the text that would mend it. */
    public Builder mendedBy(TextEdit change) {
      edit = Optional.of(change);
      return this;
    }

    /** The finding. */
    public Finding build() {
      return new Finding(
          code, status, subject, sizes, arguments, found, expected, unit, places, edit);
    }
  }
}
