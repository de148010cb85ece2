package org.hemwright.pattern.construction;

import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Stitch;

/**
 * Something that stands in the way of making it.
 *
 * @param kind what
 * @param about what it is about, as the document names it: {@code seam side_seams}, {@code
 *     panel.hem}, {@code opening feed}
 * @param name the same without the word before it
 * @param step at which it shows; nothing where a step is missing
 * @param other the step that it depends on: the one that closed it, or sewed it before
 * @param strip the edge concerned, where there is one
 * @param mate another thing concerned, by name: a seam that comes first, an elastic, an edge
 * @param stitch the choice of stitch concerned
 * @param found a length or count as it is
 * @param wanted as it would have to be
 */
public record Trouble(
    Kind kind,
    String about,
    String name,
    Optional<Step> step,
    Optional<Step> other,
    Optional<Strip> strip,
    Optional<String> mate,
    Optional<Stitch> stitch,
    OptionalDouble found,
    OptionalDouble wanted) {

  /** The questions that the checks ask, one each. */
  public enum Question {
    /** Is every edge sewn, hemmed, finished or left raw, once? */
    EDGES("making-edges"),
    /** Is all that a step needs there, and within reach, when it is done? */
    ORDER("making-order"),
    /** Is every opening closed again, and every elastic in? */
    OPENINGS("making-openings"),
    /** Is all pressed that has to be, and in a way that it can be? */
    PRESSING("making-pressing"),
    /** Does each stitch do what it has to? */
    STITCHES("making-stitches"),
    /** Does the maker find the places? */
    MARKS("making-marks");

    private final String id;

    Question(String id) {
      this.id = id;
    }

    /** The check's name. */
    public String id() {
      return id;
    }
  }

  /** What can go wrong; its wording stands under {@link #code}. */
  public enum Kind {
    UNSEWN(Question.EDGES, "step-unsewn", true),
    SEWN_TWICE(Question.EDGES, "step-sewn-twice", true),
    UNTREATED(Question.EDGES, "step-untreated", true),
    TREATED_TWICE(Question.EDGES, "step-treated-twice", true),
    HEMMED_AND_SEWN(Question.EDGES, "step-hemmed-and-sewn", true),
    UNFINISHED(Question.EDGES, "step-unfinished", true),
    FINISHED_TWICE(Question.EDGES, "step-finished-twice", true),
    FINISH_CUT_OFF(Question.EDGES, "step-finish-cut-off", true),
    UNTAKEN(Question.EDGES, "step-intake-open", true),
    NO_HEM(Question.EDGES, "step-no-hem", true),
    ONLY_BASTED(Question.EDGES, "step-only-basted", true),
    RAW_FRAYS(Question.EDGES, "step-raw-frays", false),

    NOT_SEWN_YET(Question.ORDER, "step-not-sewn-yet", true),
    SEWN_ALREADY(Question.ORDER, "step-sewn-already", true),
    ENCLOSED(Question.ORDER, "step-enclosed", true),
    PART_MISSING(Question.ORDER, "step-part-missing", true),
    ROUND_TO_FLAT(Question.ORDER, "step-round-to-flat", true),
    HEM_BEFORE_SEAM(Question.ORDER, "step-hem-before-seam", false),
    BOUND_BEFORE_SEAM(Question.ORDER, "step-bound-before-seam", false),
    FLAT_AFTER_ROUND(Question.ORDER, "step-flat-after-round", false),
    CROSSED(Question.ORDER, "step-crossed", false),
    NOT_TURNED_UNDER(Question.ORDER, "step-not-turned-under", false),
    NOT_FOLDED(Question.ORDER, "step-not-folded", true),
    FOLDED_ALREADY(Question.ORDER, "step-folded-already", true),
    NOT_TURNED_OUT(Question.ORDER, "step-not-turned-out", true),
    INTAKE_LATE(Question.ORDER, "step-intake-late", true),
    FUSED_LATE(Question.ORDER, "step-fused-late", false),
    BUTTON_FIRST(Question.ORDER, "step-button-first", false),
    BUTTON_COUNT(Question.ORDER, "step-button-count", false),
    TEST_LATE(Question.ORDER, "step-test-late", false),
    NO_TEST(Question.ORDER, "step-no-test", false),
    NOT_TOGETHER(Question.ORDER, "step-not-together", true),
    SET_IN_FLAT(Question.ORDER, "step-set-in-flat", false),
    ZIP_LATE(Question.ORDER, "step-zip-late", true),
    FASTENED_EARLY(Question.ORDER, "step-fastened-early", false),
    EYELET_LATE(Question.ORDER, "step-eyelet-late", false),
    NOWHERE_TO_TURN(Question.ORDER, "step-nowhere-to-turn", true),
    INSIDE_OUT(Question.ORDER, "step-inside-out", true),
    APPLIED_FLAT(Question.ORDER, "step-applied-flat", true),

    NOT_LEFT_YET(Question.OPENINGS, "step-not-left-yet", true),
    CLOSED_ALREADY(Question.OPENINGS, "step-closed-already", true),
    NEVER_CLOSED(Question.OPENINGS, "step-never-closed", true),
    OPENING_NARROW(Question.OPENINGS, "step-opening-narrow", true),
    NO_CASING(Question.OPENINGS, "step-no-casing", true),
    CASING_CLOSED(Question.OPENINGS, "step-casing-closed", true),
    LEFT_OUT(Question.OPENINGS, "step-left-out", true),
    ENDS_APART(Question.OPENINGS, "step-ends-apart", true),
    APPLIED_APART(Question.OPENINGS, "step-applied-apart", true),
    JOINED_FIRST(Question.OPENINGS, "step-joined-first", true),
    CLOSED_BEFORE_JOINED(Question.OPENINGS, "step-closed-before-joined", true),
    NO_TRY_ON(Question.OPENINGS, "step-no-try-on", false),
    LAID_UNTRIED(Question.OPENINGS, "step-laid-untried", false),
    ZIP_SHORT(Question.OPENINGS, "step-zip-short", true),
    OPENING_LONG(Question.OPENINGS, "step-opening-long", true),
    WRONG_OPENING(Question.OPENINGS, "step-wrong-opening", true),
    WRONG_CASING(Question.OPENINGS, "step-wrong-casing", true),
    CASING_NARROW(Question.OPENINGS, "step-casing-narrow", true),
    HELD_TWICE(Question.OPENINGS, "step-held-twice", true),
    CLOSED_BEFORE_TURNED(Question.OPENINGS, "step-closed-before-turned", true),

    UNPRESSED(Question.PRESSING, "step-unpressed", false),
    STACKED(Question.PRESSING, "step-stacked", false),
    CANNOT_OPEN(Question.PRESSING, "step-cannot-open", true),
    PRESS_UNCLEAR(Question.PRESSING, "step-press-unclear", true),
    PRESSED_OTHER_WAY(Question.PRESSING, "step-pressed-other-way", false),
    UNDERSTITCH_WAY(Question.PRESSING, "step-understitch-way", true),
    TOPSTITCH_UNPRESSED(Question.PRESSING, "step-topstitch-unpressed", false),

    RIGID(Question.STITCHES, "step-rigid", true),
    RIGID_SEAM(Question.STITCHES, "step-rigid-seam", false),
    MISSES_HEM(Question.STITCHES, "step-misses-hem", true),
    NOTHING_TRIMMED(Question.STITCHES, "step-nothing-trimmed", true),
    NOTHING_GATHERED(Question.STITCHES, "step-nothing-gathered", false),
    MISSES_ALLOWANCE(Question.STITCHES, "step-misses-allowance", true),
    OUTSIDE_ALLOWANCE(Question.STITCHES, "step-outside-allowance", true),
    OFF_SEAM_LINE(Question.STITCHES, "step-off-seam-line", true),
    WRONG_BEND(Question.STITCHES, "step-wrong-bend", false),
    HOLE_SMALL(Question.STITCHES, "step-hole-small", true),

    UNMARKED(Question.MARKS, "step-unmarked", false),
    DART_UNMARKED(Question.MARKS, "step-dart-unmarked", false),
    PARTS_UNMARKED(Question.MARKS, "step-parts-unmarked", false);

    private final Question question;
    private final String code;
    private final boolean fails;

    Kind(Question question, String code, boolean fails) {
      this.question = question;
      this.code = code;
      this.fails = fails;
    }

    /** The question that it answers. */
    public Question question() {
      return question;
    }

    /** The finding's code. */
    public String code() {
      return code;
    }

    /** Whether it must be mended; else it is worth a look. */
    public boolean fails() {
      return fails;
    }
  }

  static Trouble about(Kind kind, String word, String name) {
    return new Trouble(
        kind,
        word.isEmpty() ? name : word + " " + name,
        name,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty());
  }

  static Trouble seam(Kind kind, Pass pass) {
    return about(kind, "seam", pass.seam().name()).at(pass.strips().get(0));
  }

  static Trouble edge(Kind kind, Strip strip) {
    return about(kind, "", strip.text()).at(strip);
  }

  Trouble in(Step shown) {
    return new Trouble(
        kind, about, name, Optional.of(shown), other, strip, mate, stitch, found, wanted);
  }

  Trouble after(Step before) {
    return new Trouble(
        kind, about, name, step, Optional.of(before), strip, mate, stitch, found, wanted);
  }

  Trouble at(Strip where) {
    return new Trouble(
        kind, about, name, step, other, Optional.of(where), mate, stitch, found, wanted);
  }

  Trouble with(String named) {
    return new Trouble(
        kind, about, name, step, other, strip, Optional.of(named), stitch, found, wanted);
  }

  Trouble by(Stitch choice) {
    return new Trouble(
        kind, about, name, step, other, strip, mate, Optional.of(choice), found, wanted);
  }

  Trouble values(double is, double should) {
    return new Trouble(
        kind,
        about,
        name,
        step,
        other,
        strip,
        mate,
        stitch,
        OptionalDouble.of(is),
        OptionalDouble.of(should));
  }
}
