package org.hemwright.cli;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program itself: what it does, and its commands by name. */
@Command(
    name = "hemwright",
    mixinStandardHelpOptions = true,
    version = "hemwright 0.1.0",
    description = {
      "One readable document and a size chart become a graded, checked, printable sewing pattern.",
      ""
    },
    subcommands = {
      NewCommand.class,
      WorkroomCommand.class,
      PublishCommand.class,
      CheckCommand.class,
      MeasureCommand.class,
      DrawCommand.class,
      ClothCommand.class,
      PaperCommand.class,
      BookletCommand.class,
      AdviseCommand.class,
      TailorCommand.class,
      CompareCommand.class,
      ChartCommand.class,
      TraceCommand.class,
      LayCommand.class,
      CompletionCommand.class
    },
    commandListHeading = "%nCommands:%n",
    footer = {
      "",
      "A pattern folder holds pattern.hem, the document, and the size chart that it names.",
      "Without a folder a command takes the demo, a skirt in twenty sizes.",
      "",
      "Start here:",
      "  hemwright workroom my-skirt           the pattern in your browser, to draw and change",
      "  hemwright measure                     what the demo's pieces measure, in every size",
      "  hemwright publish                     all of the demo's files, in ./out",
      "  hemwright check my-skirt              does the pattern in the folder my-skirt sew"
          + " together?",
      "  hemwright draw my-skirt --size 14     a picture of its pieces in one size",
      "  hemwright publish --help              more on one command, with examples",
      "",
      "Exit codes: 0 all is well, 1 a check fails, 2 the input is wrong, 3 the program is at fault."
    })
final class HemwrightCommand implements Runnable {
  @Spec private CommandSpec spec = CommandSpec.create();

  /** The commands' names, in the order of the help. */
  static List<String> names() {
    return List.copyOf(new CommandLine(new HemwrightCommand()).getSubcommands().keySet());
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }
}
