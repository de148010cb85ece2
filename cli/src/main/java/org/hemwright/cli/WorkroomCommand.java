package org.hemwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.hemwright.workbench.BrowserDoor;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The page in the browser. */
@Command(
    name = "workroom",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Open the pattern in the browser of this machine, to draw, change, check and make it.",
      "Nobody else can reach the page: it answers this machine alone, and only at its full address."
    },
    footer = {
      "",
      "Examples:",
      "  hemwright workroom my-skirt                opens the page",
      "  hemwright workroom my-skirt --no-open      only prints its address",
      "  hemwright workroom                         choose a folder, or begin one, on the page",
      "",
      "The page stays until the command is ended, with Ctrl+C."
    })
final class WorkroomCommand implements Callable<Integer> {
  /** The page's server is a program of its own, loaded only when it is asked for. */
  private static final String DOOR = "org.hemwright.workroom.Workroom";

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "FOLDER",
      description = "The pattern folder; chosen on the page when it is left out.")
  private Optional<Path> folder = Optional.empty();

  @Option(names = "--no-open", description = "Print the address and open no browser.")
  private boolean quiet;

  @Option(
      names = "--port",
      paramLabel = "PORT",
      description = "The port to listen on; any that is free when it is left out.")
  private int port;

  @Option(
      names = "--desk",
      description =
          "As from an icon on the desktop: open the pattern that was open last, put new ones into"
              + " the folder “Patterns” of your home, and end when the last page has been closed"
              + " for two minutes.")
  private boolean desk;

  @Override
  public Integer call() throws IOException, InterruptedException {
    PrintWriter messages = spec.commandLine().getErr();
    if (port < 0 || port > 65535) {
      messages.println("--port " + port + ": a port is a number from 0 to 65535");
      return ExitCode.INPUT_WRONG;
    }
    try (BrowserDoor.Opened opened =
        opened(sentence -> messages.println("workroom: " + sentence))) {
      PrintWriter out = spec.commandLine().getOut();
      out.println(opened.address());
      out.flush();
      Runtime.getRuntime().addShutdownHook(new Thread(opened::close, "closing"));
      if (!quiet) {
        show(opened.address(), messages);
      }
      opened.await();
      return ExitCode.ALL_WELL;
    } catch (BrowserDoor.Refused refused) {
      messages.println("hemwright workroom: " + refused.sentence());
      return ExitCode.INPUT_WRONG;
    }
  }

  private BrowserDoor.Opened opened(Consumer<String> log) throws IOException, BrowserDoor.Refused {
    return desk && folder.isEmpty() ? door().openAtDesk(port, log) : door().open(folder, port, log);
  }

  /** Loads whatever the page needs; where that fails, its first start takes a little longer. */
  static void warmUp() {
    try {
      door().warmUp();
    } catch (IOException | LinkageError slower) {
      System.err.println("the workroom was not warmed up: " + slower);
    }
  }

  private static BrowserDoor door() {
    try {
      return Class.forName(DOOR)
          .asSubclass(BrowserDoor.class)
          .getDeclaredConstructor()
          .newInstance();
    } catch (ReflectiveOperationException absent) {
      throw new NoClassDefFoundError(DOOR);
    }
  }

  /** Opens the page the way this system opens addresses; where that fails the address is enough. */
  private static void show(String address, PrintWriter messages) {
    String system = System.getProperty("os.name", "");
    String[] command =
        system.startsWith("Windows")
            ? new String[] {"rundll32", "url.dll,FileProtocolHandler", address}
            : new String[] {system.startsWith("Mac") ? "open" : "xdg-open", address};
    try {
      new ProcessBuilder(command)
          .redirectErrorStream(true)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException none) {
      messages.println("workroom: no browser could be opened; open the address above yourself");
    }
  }
}
