package org.hemwright.checks;

import java.util.List;
import org.hemwright.pattern.Check;
import org.hemwright.pattern.construction.Assembly;
import org.hemwright.pattern.construction.Trouble.Question;
import org.hemwright.pattern.finding.Messages;

/** The checks of this module, in the order in which they are told. */
public final class StandardChecks {
  private StandardChecks() {}

  /** Every check, held to these settings. */
  public static List<Check> with(CheckSettings settings) {
    CutLines cutLines = new CutLines();
    OncePerRun<List<Assembly>> followed = new OncePerRun<>(Assembly::all);
    return List.of(
        new OutlineCheck(),
        new AllowanceDrawnCheck(cutLines),
        new CutCountCheck(),
        new ClothRoleCheck(),
        new SplitCheck(),
        new FoldCheck(),
        new LabelCheck(),
        new GrainCheck(settings),
        new SeamSidesCheck(),
        new SeamLengthCheck(settings),
        new SeamMarksCheck(settings),
        new AllowanceEqualCheck(settings),
        new AllowanceEndsCheck(cutLines, settings),
        new DartCheck(settings),
        new IntakeMarksCheck(settings),
        new HemFlatCheck(settings),
        new HemEaseCheck(settings),
        new LiningHemCheck(settings),
        new NotchMatesCheck(settings),
        new LoopMarksCheck(settings),
        new CapEaseCheck(settings),
        new JunctionCheck(settings),
        new SquareAtFoldCheck(settings),
        new EdgeUsedCheck(),
        new ViewWholeCheck(),
        new GirthEaseCheck(settings),
        new BandRatioCheck(settings),
        new RiseCheck(settings),
        new ElasticCasingCheck(settings),
        new OpeningPassesCheck(settings),
        new ClosureLengthCheck(settings),
        new SizeChartCheck(settings),
        new GradeOrderCheck(settings),
        new NestAlikeCheck(),
        new GradeEvenCheck(settings),
        new StretchArrowCheck(settings),
        new LengthenCheck(settings),
        new ClothWidthCheck(cutLines, settings),
        new ConstructionCheck(Question.EDGES, followed),
        new ConstructionCheck(Question.ORDER, followed),
        new ConstructionCheck(Question.OPENINGS, followed),
        new ConstructionCheck(Question.PRESSING, followed),
        new ConstructionCheck(Question.STITCHES, followed),
        new ConstructionCheck(Question.MARKS, followed),
        new StitchSettingsCheck(settings.stitches()),
        new ChildCordCheck(ChildLimits.HANDBOOK),
        new ChildSmallPartsCheck(ChildLimits.HANDBOOK),
        new ChildSleepwearCheck(ChildLimits.HANDBOOK));
  }

  /** Their sentences. */
  public static Messages messages() {
    return Messages.beside(StandardChecks.class, "checks.properties");
  }
}
