package org.hemwright.pattern.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Amount;
import org.hemwright.pattern.make.Needle;
import org.hemwright.pattern.make.PressDirection;
import org.hemwright.pattern.make.Sewing;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Stitch;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.quantity.LengthFormat;
import org.hemwright.pattern.quantity.LengthKind;

/**
 * What a step says, in the document's words and with the names that things have now.
 *
 * @param names what is called otherwise now; none for a step of the new version
 * @param lengths how lengths are shown; what a machine is set to stays in millimetres
 */
record StepText(Optional<Renaming> names, LengthFormat lengths) {
  /** What is done, without what it is done to: {@code attach in 4 parts}. */
  String act(Act act) {
    String more = "";
    if (act instanceof Act.Sew sew) {
      more = sew.onePass() ? " in one pass" : "";
    } else if (act instanceof Act.Attach attach) {
      more = " in " + attach.parts() + " parts";
    } else if (act instanceof Act.Apply apply) {
      more = " in " + apply.parts() + " parts";
    } else if (act instanceof Act.Finish finish) {
      more = finish.together() ? " together" : " apart";
    } else if (act instanceof Act.LeaveRaw raw) {
      more = quoted(raw.why());
    } else if (act instanceof Act.FormCasing casing) {
      more = " for " + casing.holds();
    } else if (act instanceof Act.ThreadThrough thread) {
      more = " through " + thread.opening();
    } else if (act instanceof Act.JoinEnds join) {
      more = join.overlapped() ? " overlapped" : " end to end";
    } else if (act instanceof Act.InsertZip zip) {
      more =
          zip.sold().isEmpty()
              ? ""
              : " sold in "
                  + zip.sold().stream()
                      .map(sold -> lengths.text(sold, LengthKind.NOTION))
                      .collect(Collectors.joining(", "));
    } else if (act instanceof Act.Fold fold) {
      more =
          fold.along().map(line -> " along " + line).orElse("")
              + (fold.wrongSidesTogether() ? " wrong sides together" : " right sides together");
    } else if (act instanceof Act.Fuse fuse) {
      more = fuse.fabric().map(fabric -> " with " + fabric).orElse("");
    } else if (act instanceof Act.Fasten fasten) {
      more = ", " + fasten.count();
    } else if (act instanceof Act.Bind bind) {
      more = bind.tape().isPresent() ? " with tape" : "";
    } else if (act instanceof Act.Own own) {
      more =
          quoted(Optional.of(own.words()))
              + own.deals().stream().map(this::deal).collect(Collectors.joining());
    }
    return act.word() + more;
  }

  private String deal(Act.Dealing dealing) {
    return ", " + lower(dealing.how()) + " " + work(dealing.work());
  }

  /** What it is done to. */
  List<String> work(Step step) {
    return step.work().stream().map(this::work).toList();
  }

  private String work(Work work) {
    if (names.isEmpty()) {
      return work.text();
    } else if (work instanceof Work.OfEdge edge) {
      String piece = piece(edge.piece());
      return new Work.OfEdge(piece, edge.copy(), names.get().edge(piece, edge.edge())).text();
    } else if (work instanceof Work.OfPiece whole) {
      return new Work.OfPiece(piece(whole.piece()), whole.copy()).text();
    } else if (work instanceof Work.OfMark mark) {
      return new Work.OfMark(piece(mark.piece()), mark.mark()).text();
    } else if (work instanceof Work.OfIntake intake) {
      return new Work.OfIntake(piece(intake.piece()), intake.intake()).text();
    }
    return work.text();
  }

  /** The name that a piece has now. */
  String piece(String name) {
    return names.map(own -> own.piece(name)).orElse(name);
  }

  /** How it is stitched: {@code overlock three or zigzag 5 mm by 2 mm, 2 rows}. */
  String stitching(Sewing sewing) {
    List<String> parts = new ArrayList<>();
    sewing.choices().forEach(stitch -> parts.add(stitch(stitch)));
    sewing.raw().ifPresent(raw -> parts.add("leave raw" + quoted(raw.when())));
    StringBuilder text = new StringBuilder(String.join(" or ", parts));
    if (sewing.rows() > 1) {
      text.append(text.length() == 0 ? "" : ", ").append(sewing.rows()).append(" rows");
    }
    sewing
        .needle()
        .ifPresent(
            needle ->
                text.append(text.length() == 0 ? "" : ", ")
                    .append("needle ")
                    .append(needle(needle)));
    return text.toString();
  }

  private static String stitch(Stitch stitch) {
    String name = stitch.kind().key().replace('-', ' ');
    String width = stitch.width().isPresent() ? " " + mm(stitch.width().getAsDouble()) : "";
    String length = stitch.length().isPresent() ? " " + mm(stitch.length().getAsDouble()) : "";
    return name + (width.isEmpty() || length.isEmpty() ? width + length : width + " by" + length);
  }

  /** {@code ballpoint 70 to 80}. */
  static String needle(Needle needle) {
    return (needle.twin() ? "twin " : "")
        + needle.point().word()
        + " "
        + needle.from()
        + (needle.to() > needle.from() ? " to " + needle.to() : "")
        + needle.apart().map(apart -> ", " + mm(apart)).orElse("");
  }

  /** Which way it is pressed. */
  String press(PressDirection direction) {
    if (direction instanceof PressDirection.Toward toward) {
      return "toward "
          + piece(toward.piece())
          + toward.copy().map(copy -> "." + copy).orElse("")
          + ", from the "
          + lower(toward.seenFrom())
          + " side";
    }
    return direction.getClass().getSimpleName().toLowerCase(Locale.ROOT);
  }

  /** Her own words beside it. */
  static List<String> words(Step step) {
    List<String> words = new ArrayList<>(step.words().notes());
    words.addAll(step.words().look());
    step.leaves().forEach(left -> left.where().ifPresent(words::add));
    return words.stream().map(word -> "“" + word + "”").toList();
  }

  /** The lengths that it speaks of, by what they are for. */
  static List<Length> lengths(Step step) {
    List<Length> lengths = new ArrayList<>();
    step.leaves().forEach(left -> lengths.add(new Length("opening " + left.name(), left.length())));
    step.sewing()
        .distance()
        .ifPresent(
            distance ->
                lengths.add(
                    new Length("distance from the " + lower(distance.from()), distance.amount())));
    step.sewing()
        .apart()
        .ifPresent(apart -> lengths.add(new Length("distance of the rows", apart)));
    if (step.act() instanceof Act.CutInto cut) {
      cut.to().ifPresent(left -> lengths.add(new Length("rest", left)));
    } else if (step.act() instanceof Act.Fasten fasten) {
      lengths.add(new Length("size", fasten.size()));
    } else if (step.act() instanceof Act.Bind bind) {
      bind.tape().ifPresent(tape -> lengths.add(new Length("tape width", tape)));
    }
    return lengths;
  }

  /** A length of a step and what it is for. */
  record Length(String of, Amount amount) {}

  private static String quoted(Optional<String> words) {
    return words.map(text -> " “" + text + "”").orElse("");
  }

  private static String lower(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** To a tenth of a millimetre. */
  private static String mm(double mm) {
    double tenths = StrictMath.rint(mm * 10);
    return tenths % 10 == 0 ? (long) (tenths / 10) + " mm" : tenths / 10 + " mm";
  }
}
