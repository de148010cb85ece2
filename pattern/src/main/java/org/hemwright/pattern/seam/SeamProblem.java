package org.hemwright.pattern.seam;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.NearName;
import org.hemwright.pattern.finding.Origin;

/** Why a seam could not be resolved, or looks unlike what was meant; wording by {@link #code}. */
public enum SeamProblem {
  /** No piece has the name. */
  PIECE_UNKNOWN("seam-piece-unknown"),
  /** The piece has no edge or placement line of the name. */
  EDGE_UNKNOWN("seam-edge-unknown"),
  /** The piece has no copy of the name. */
  COPY_UNKNOWN("seam-copy-unknown"),
  /** The edge has no notch of the name. */
  NOTCH_UNKNOWN("seam-notch-unknown"),
  /** The edge is the fold: there is no cloth edge to sew. */
  EDGE_ON_FOLD("seam-edge-on-fold"),
  /** The stretch would end before it starts. */
  NOTCHES_TURNED("seam-notches-turned"),
  /** An edge of a run does not start where the one before it ends. */
  RUN_BREAKS("seam-run-breaks"),
  /** One layer occurs more often in the cut pieces than the other. */
  COUNTS_DIFFER("seam-counts-differ"),
  /** An edge is sewn to itself, and there is one only. */
  SINGLE_COPY("seam-single-copy"),
  /** The copies are cut the same way, and each needs a mirrored one. */
  CUT_ALIKE("seam-cut-alike"),
  /** The layers would come together the other way round. */
  STARTS_APART("seam-starts-apart"),
  /** The layers do not face each other in every copy. */
  HANDS_DIFFER("seam-hands-differ"),
  /** There is more than one way to sew it. */
  TWO_WAYS("seam-two-ways"),
  /** It joins a copy to another copy, where it reads as if each were joined to itself. */
  CROSSES("seam-crosses"),
  /** It brings one piece's hem to the other's waist, where the other way both would match. */
  ENDS_UNLIKE("seam-ends-unlike");

  private final String code;

  SeamProblem(String code) {
    this.code = code;
  }

  /** The finding's code. */
  public String code() {
    return code;
  }

  /** All codes, for who checks that each is worded. */
  public static List<String> codes() {
    return Arrays.stream(values()).map(SeamProblem::code).toList();
  }

  Finding.Builder in(SeamRequest request, Origin origin) {
    String subject = "seam " + request.name();
    Finding.Builder finding =
        this == CROSSES || this == ENDS_UNLIKE
            ? Finding.warn(code, subject)
            : Finding.fail(code, subject);
    return finding.at(origin).with("seam", request.name());
  }

  /** A name that nothing bears, with the one that was probably meant, or else all there are. */
  Finding unknown(
      SeamRequest request, SeamRequest.Term term, String name, Collection<String> known) {
    Finding.Builder finding =
        in(request, term.origin())
            .with("name", name)
            .with("piece", term.piece())
            .with("edge", term.edge());
    NearName.to(name, known)
        .ifPresentOrElse(
            near -> finding.with("near", near),
            () -> {
              if (!known.isEmpty()) {
                finding.with("known", Argument.of(List.copyOf(known)));
              }
            });
    return finding.build();
  }
}
