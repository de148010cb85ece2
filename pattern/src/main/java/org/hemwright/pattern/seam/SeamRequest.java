package org.hemwright.pattern.seam;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hemwright.pattern.finding.Origin;

/**
 * A seam as the document states it, before it is known which copies and halves meet: the names are
 * as written and may not exist. {@link SeamResolution} turns it into a {@link Seam}.
 *
 * @param name {@code waist_seam}
 * @param layers two or more, in the order of the document
 * @param ease how much longer the first layer may be; {@link Seam.Ease#NONE} when nothing is said
 * @param even where evenly spaced notches of one layer meet seams and folds of the others
 * @param origin where the document states it
 */
public record SeamRequest(
    String name, List<Run> layers, Seam.Ease ease, Optional<Even> even, Origin origin) {
  public SeamRequest {
    layers = List.copyOf(layers);
    if (layers.size() < 2) {
      throw new IllegalArgumentException("a seam has two layers or more: " + name);
    }
  }

  /** A seam without ease or even marks. */
  public static SeamRequest of(String name, Origin origin, Run... layers) {
    return new SeamRequest(name, List.of(layers), Seam.Ease.NONE, Optional.empty(), origin);
  }

  /**
   * One layer as written: {@code front.armhole then back.armhole}.
   *
   * @param places end to end, at least one
   */
  public record Run(List<Term> places) {
    public Run {
      places = List.copyOf(places);
      if (places.isEmpty()) {
        throw new IllegalArgumentException("a layer has at least one edge");
      }
    }

    /** A layer of these places. */
    public static Run of(Term... places) {
      return new Run(List.of(places));
    }

    /** As the designer writes it. */
    public String text() {
      return places.stream().map(Term::text).collect(Collectors.joining(" then "));
    }

    /** The same layer sewn from its other end. */
    public Run turned() {
      List<Term> back = new ArrayList<>(places.stream().map(Term::turned).toList());
      Collections.reverse(back);
      return new Run(back);
    }
  }

  /**
   * One place as written: {@code [every] piece[.copy].edge [from NOTCH] [to NOTCH] [reversed]}.
   *
   * @param every whether all copies and halves are taken end to end, as round a waist
   * @param piece the piece's name
   * @param copy the copy's name, where only that one is meant
   * @param edge the name of an edge, or of a placement line
   * @param from the notch where the stretch starts, in the direction of the drawing
   * @param to the notch where it ends
   * @param reversed whether the stretch is sewn against the direction of the drawing
   * @param origin where the document states it
   */
  public record Term(
      boolean every,
      String piece,
      Optional<String> copy,
      String edge,
      Optional<String> from,
      Optional<String> to,
      boolean reversed,
      Origin origin) {
    /** A whole edge of every cut copy in turn. */
    public static Term of(String piece, String edge, Origin origin) {
      return new Term(
          false, piece, Optional.empty(), edge, Optional.empty(), Optional.empty(), false, origin);
    }

    /** The same place, all copies and halves end to end. */
    public Term taken(boolean all) {
      return new Term(all, piece, copy, edge, from, to, reversed, origin);
    }

    /** The same place on one named copy. */
    public Term ofCopy(String name) {
      return new Term(every, piece, Optional.of(name), edge, from, to, reversed, origin);
    }

    /** The stretch of the same place between two notches. */
    public Term between(Optional<String> first, Optional<String> last) {
      return new Term(every, piece, copy, edge, first, last, reversed, origin);
    }

    /** The same place sewn the other way. */
    public Term turned() {
      return new Term(every, piece, copy, edge, from, to, !reversed, origin);
    }

    /** Whether another term is of the same stretch of the same edge, whichever way it is sewn. */
    public boolean isStretchOf(Term other) {
      return piece.equals(other.piece)
          && copy.equals(other.copy)
          && edge.equals(other.edge)
          && from.equals(other.from)
          && to.equals(other.to);
    }

    /** As the designer writes it. */
    public String text() {
      StringBuilder text = new StringBuilder(every ? "every " : "").append(piece);
      copy.ifPresent(name -> text.append('.').append(name));
      text.append('.').append(edge);
      from.ifPresent(notch -> text.append(" from ").append(notch));
      to.ifPresent(notch -> text.append(" to ").append(notch));
      return text.append(reversed ? " reversed" : "").toString();
    }
  }

  /**
   * {@code quarters at sides and centres}.
   *
   * @param parts 2 or more: 4 for quarters
   * @param marks what the designer calls the places where the parts end, in her words
   */
  public record Even(int parts, List<String> marks) {
    public Even {
      marks = List.copyOf(marks);
      if (parts < 2) {
        throw new IllegalArgumentException("an edge is divided into two parts or more");
      }
    }
  }
}
