package org.hemwright.cli;

import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints what a shell needs to complete commands and options. */
@Command(
    name = "completion",
    description = "Print what bash or zsh needs to complete commands and options.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  source <(./hemwright completion)                      in this shell, until it closes",
      "  ./hemwright completion > ~/.hemwright-completion      once; then, in ~/.bashrc or ~/.zshrc:",
      "  source ~/.hemwright-completion"
    })
final class CompletionCommand implements Runnable {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public void run() {
    var program = spec.root().commandLine();
    program.getOut().print(AutoComplete.bash("hemwright", program));
    program.getOut().println("complete -F _complete_hemwright -o default ./hemwright");
    program.getOut().flush();
  }
}
