package org.hemwright.pattern.make;

import java.util.List;
import java.util.Optional;

/**
 * What a step does. Each says the word with which the document starts it; message files give its
 * phrase for the maker under that word, blanks as hyphens. All of them stand in this one file, so
 * that whoever answers for every act sees when one is added.
 */
public sealed interface Act {
  /** {@code sew}, {@code set in}. */
  String word();

  // --- edges are sewn, finished, or left ------------------------------------------------------

  /**
   * Sews seams on the machine.
   *
   * @param onePass whether all of them are sewn in one pass, as where three layers lie together
   */
  record Sew(boolean onePass) implements Act {
    @Override
    public String word() {
      return "sew";
    }
  }

  /**
   * Sews a band on by even parts, stretched or eased between them.
   *
   * @param parts 4 for quarters
   */
  record Attach(int parts) implements Act {
    public Attach {
      if (parts < 2) {
        throw new IllegalArgumentException("a band is divided into two parts or more");
      }
    }

    @Override
    public String word() {
      return "attach";
    }
  }

  /** Sets a sleeve, or what is like one, into its round hole. */
  record SetIn() implements Act {
    @Override
    public String word() {
      return "set in";
    }
  }

  /** Sews by hand: a seam, a hem, an opening. */
  record HandSew() implements Act {
    @Override
    public String word() {
      return "hand sew";
    }
  }

  /**
   * Finishes cut edges so that they do not fray.
   *
   * @param together whether the allowances of a seam are finished as one
   */
  record Finish(boolean together) implements Act {
    @Override
    public String word() {
      return "finish";
    }
  }

  /**
   * Declares that edges stay as they are cut.
   *
   * @param why in the designer's words
   */
  record LeaveRaw(Optional<String> why) implements Act {
    @Override
    public String word() {
      return "leave raw";
    }
  }

  /** Turns a hem along its fold, once or twice as its allowance is folded, and stitches it. */
  record Hem() implements Act {
    @Override
    public String word() {
      return "hem";
    }
  }

  /**
   * Encloses edges in a binding.
   *
   * @param tape the finished width of a bought tape (mm); absent where a piece of the pattern binds
   */
  record Bind(Optional<Amount> tape) implements Act {
    @Override
    public String word() {
      return "bind";
    }
  }

  /** A line of stitching that joins nothing for good. */
  record Stitching(Line line) implements Act {
    @Override
    public String word() {
      return line.word;
    }
  }

  /** What a line of stitching is for. */
  enum Line {
    /** Shows on the right side and holds an allowance or a hem down. */
    TOPSTITCH("topstitch"),
    /** Keeps an edge from stretching while it is handled. */
    STAYSTITCH("staystitch"),
    /** Holds a facing's allowance to the facing, so that it does not roll out. */
    UNDERSTITCH("understitch"),
    /** Holds layers until they are sewn. */
    BASTE("baste"),
    /** Draws an edge up into gathers. */
    GATHER("gather"),
    /** Draws an edge up without gathers. */
    EASE("ease");

    private final String word;

    Line(String word) {
      this.word = word;
    }
  }

  // --- elastics, cords, casings, zips ---------------------------------------------------------

  /**
   * Stitches the tunnel for an elastic or a cord.
   *
   * @param holds the elastic's or cord's name
   */
  record FormCasing(String holds) implements Act {
    @Override
    public String word() {
      return "form casing";
    }
  }

  /**
   * Draws an elastic or cord through its casing.
   *
   * @param opening that it goes in at
   */
  record ThreadThrough(String opening) implements Act {
    @Override
    public String word() {
      return "thread";
    }
  }

  /** Lays an elastic or cord in before its casing is stitched round it. */
  record LayIn() implements Act {
    @Override
    public String word() {
      return "lay in";
    }
  }

  /** Stitches an elastic straight onto an edge. */
  record Apply(int parts) implements Act {
    @Override
    public String word() {
      return "apply";
    }
  }

  /**
   * Joins the ends of an elastic to a ring.
   *
   * @param overlapped whether they lie on each other, by the overlap that the elastic states; else
   *     they meet end to end
   */
  record JoinEnds(boolean overlapped) implements Act {
    @Override
    public String word() {
      return "join";
    }
  }

  /**
   * Puts a zip into an opening.
   *
   * @param sold the lengths that it is sold in (mm), rising; empty where none were named
   */
  record InsertZip(List<Double> sold) implements Act {
    public InsertZip {
      sold = List.copyOf(sold);
    }

    @Override
    public String word() {
      return "insert zip";
    }
  }

  /** Closes a dart, a pleat, or an opening that was left. */
  record Close() implements Act {
    @Override
    public String word() {
      return "close";
    }
  }

  // --- preparing, pressing, handling ----------------------------------------------------------

  /** Presses; the step says which way. */
  record Press() implements Act {
    @Override
    public String word() {
      return "press";
    }
  }

  /** Folds a piece, along a line of its own or lengthwise in half. */
  record Fold(Optional<String> along, boolean wrongSidesTogether) implements Act {
    @Override
    public String word() {
      return "fold";
    }
  }

  /**
   * Cuts into an allowance, or cuts it down.
   *
   * @param to what is left of it (mm), where it is cut down
   */
  record CutInto(Cutting kind, Optional<Amount> to) implements Act {
    @Override
    public String word() {
      return kind.word;
    }
  }

  /** How an allowance is cut. */
  enum Cutting {
    CLIP("clip"),
    NOTCH("notch"),
    TRIM("trim"),
    GRADE("grade");

    private final String word;

    Cutting(String word) {
      this.word = word;
    }
  }

  /** Something done by hand that sews nothing. */
  record Handle(Handling kind) implements Act {
    @Override
    public String word() {
      return kind.word;
    }
  }

  /** What is done by hand. */
  enum Handling {
    TURN_OUT("turn out"),
    TRY_ON("try on"),
    MARK("mark"),
    PIN("pin"),
    TEST("test");

    private final String word;

    Handling(String word) {
      this.word = word;
    }
  }

  /**
   * Fuses interfacing to pieces.
   *
   * @param fabric the interfacing's name in the document
   */
  record Fuse(Optional<String> fabric) implements Act {
    @Override
    public String word() {
      return "fuse";
    }
  }

  /**
   * Buttonholes, buttons, eyelets, bar tacks.
   *
   * @param count how many, 1 or more
   * @param size the length of a buttonhole or bar tack, the width of a button or eyelet (mm)
   */
  record Fasten(Fastening kind, int count, Amount size) implements Act {
    public Fasten {
      if (count < 1) {
        throw new IllegalArgumentException("at least one is made, not " + count);
      }
    }

    @Override
    public String word() {
      return kind.word;
    }
  }

  /** What fastens. */
  enum Fastening {
    BUTTONHOLE("buttonhole"),
    BUTTON("button"),
    EYELET("eyelet"),
    BAR_TACK("bar tack");

    private final String word;

    Fastening(String word) {
      this.word = word;
    }
  }

  // --- her own words --------------------------------------------------------------------------

  /**
   * A step in the designer's own words, which says what it deals with.
   *
   * @param words for the maker
   * @param deals with what, and how
   */
  record Own(String words, List<Dealing> deals) implements Act {
    public Own {
      deals = List.copyOf(deals);
    }

    @Override
    public String word() {
      return "do";
    }
  }

  /** What a step in her own words deals with. */
  record Dealing(How how, Work work) {
    /** How. */
    public enum How {
      SEWING,
      FINISHING,
      HEMMING,
      CLOSING
    }
  }
}
