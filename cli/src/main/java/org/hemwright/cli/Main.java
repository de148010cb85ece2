package org.hemwright.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Where the program starts. */
public final class Main {
  private Main() {}

  /** Runs one command and leaves with its exit code. */
  public static void main(String[] args) {
    PrintStream out = utf8(FileDescriptor.out);
    PrintStream err = utf8(FileDescriptor.err);
    if (args.length == 1 && args[0].equals("--warm-up")) {
      warmUp();
      return;
    }
    int code = run(out, err, args);
    out.flush();
    err.flush();
    System.exit(code);
  }

  /**
   * Runs one command.
   *
   * @param out for answers
   * @param err for messages
   * @return the exit code
   */
  public static int run(OutputStream out, OutputStream err, String... args) {
    PrintWriter answers = new PrintWriter(out, true, StandardCharsets.UTF_8);
    PrintWriter messages = new PrintWriter(err, true, StandardCharsets.UTF_8);
    try {
      boolean advise = args.length > 0 && args[0].equals("advise");
      return commandLine(answers, messages).execute(advise ? AdviseCommand.plain(args) : args);
    } catch (StackOverflowError | OutOfMemoryError tooMuch) {
      messages.println(
          "hemwright: this needs more memory than there is; HEMWRIGHT_JAVA_OPTIONS=-Xmx4g gives it"
              + " more.");
      return ExitCode.PROGRAM_AT_FAULT;
    } catch (LinkageError | AssertionError broken) {
      messages.println("hemwright: the program itself is broken; build it anew. " + broken);
      return ExitCode.PROGRAM_AT_FAULT;
    } finally {
      answers.flush();
      messages.flush();
    }
  }

  static CommandLine commandLine(PrintWriter answers, PrintWriter messages) {
    CommandLine line = new CommandLine(new HemwrightCommand());
    line.setOut(answers);
    line.setErr(messages);
    line.setUsageHelpWidth(96);
    String[] version = line.getCommandSpec().version();
    line.getSubcommands().values().forEach(each -> each.getCommandSpec().version(version));
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setParameterExceptionHandler(argumentsAreWrong());
    line.setExecutionExceptionHandler(Main::programIsAtFault);
    return line;
  }

  private static IParameterExceptionHandler argumentsAreWrong() {
    return (problem, args) -> {
      problem.getCommandLine().getErr().println(ArgumentWords.of(problem));
      return ExitCode.INPUT_WRONG;
    };
  }

  private static int programIsAtFault(Exception fault, CommandLine line, ParseResult parsed) {
    String name = line.getCommandSpec().qualifiedName();
    if (fault instanceof IOException refused) {
      line.getErr().println(name + ": " + DiskWords.of(refused));
      return ExitCode.INPUT_WRONG;
    }
    line.getErr()
        .println(
            name
                + ": this is a fault of the program, not of the pattern. Please report it with"
                + " the pattern folder: "
                + fault.getClass().getSimpleName()
                + (fault.getMessage() == null ? "" : ", " + fault.getMessage())
                + place(fault));
    return ExitCode.PROGRAM_AT_FAULT;
  }

  private static String place(Exception fault) {
    StackTraceElement[] trace = fault.getStackTrace();
    return trace.length == 0 ? "" : " at " + trace[0];
  }

  /** Loads what most commands need, so that the launcher can keep it in its archive of classes. */
  private static void warmUp() {
    OutputStream nowhere = OutputStream.nullOutputStream();
    for (String line : List.of("--help", "publish --help", "measure --json", "check")) {
      run(nowhere, nowhere, line.split(" "));
    }
    WorkroomCommand.warmUp();
  }

  private static PrintStream utf8(FileDescriptor stream) {
    return new PrintStream(new FileOutputStream(stream), false, StandardCharsets.UTF_8);
  }
}
