package org.gusset.workbench;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.gusset.core.draft.Draft;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** The command line. Exit codes: 0 good, 1 the draft or a body has errors, 2 wrong use or unreadable files. */
@Command(
        name = "gusset",
        mixinStandardHelpOptions = true,
        versionProvider = Workbench.Version.class,
        description = "Draws garment patterns, true to scale, from a draft and a table of measures.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  gusset draw smock.gusset --measures cast.csv --out paper",
            "  gusset draw smock.gusset --measures cast.csv#'Ottilie Fenn' --set ease='10 cm' --out paper",
            "  gusset check smock.gusset --measures cast.csv",
            "  gusset values smock.gusset --measures cast.csv#'Ottilie Fenn' --unit in",
            "",
            "Exit codes: 0 good, 1 the draft or a body has errors, 2 wrong use or unreadable files."
        })
public final class Workbench implements Runnable {
    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    private Workbench() {}

    /** The version of the library and the program. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"gusset " + Draft.LIBRARY_VERSION};
        }
    }

    /** Runs the command line and ends the Java machine. */
    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        int code = run(Bench.standard(), out, err, args);
        out.flush();
        err.flush();
        System.exit(code);
    }

    static int run(Bench bench, PrintWriter out, PrintWriter err, String... args) {
        CommandLine line = new CommandLine(new Workbench());
        line.addSubcommand(new MeasuresCommand(bench));
        line.addSubcommand(new DrawCommand(bench));
        line.addSubcommand(new CheckCommand(bench));
        line.addSubcommand(new SeamsCommand(bench));
        line.addSubcommand(new ChalkCommand(bench));
        line.addSubcommand(new SheetCommand(bench));
        line.addSubcommand(new ValuesCommand(bench));
        line.addSubcommand(new StepsCommand(bench));
        line.addSubcommand(new LessonCommand(bench));
        line.addSubcommand(new GradeCommand(bench));
        line.addSubcommand(new SizesCommand(bench));
        line.addSubcommand(new FormatCommand(bench));
        line.addSubcommand(new LintCommand(bench));
        line.addSubcommand(new StressCommand(bench));
        for (CommandLine command : line.getSubcommands().values()) {
            command.getCommandSpec().mixinStandardHelpOptions(true);
            command.getCommandSpec().versionProvider(new Version());
        }
        line.setOut(out);
        line.setErr(err);
        line.setParameterExceptionHandler((e, given) -> wrongUse(e));
        line.setExecutionExceptionHandler((e, command, result) -> failed(e, command));
        try {
            return line.execute(args);
        } catch (StackOverflowError | OutOfMemoryError e) {
            err.println("gusset: this is more than the memory of the machine takes.");
            return ExitCodes.OWN_FAULT;
        }
    }

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(),
                "a command is missing: measures, draw, check, seams, chalk, sheet, values, steps, lesson, grade, sizes, format, lint or stress");
    }

    private static int wrongUse(ParameterException e) {
        CommandLine command = e.getCommandLine();
        PrintWriter err = command.getErr();
        err.println("gusset: " + e.getMessage());
        UnmatchedArgumentException.printSuggestions(e, err);
        err.println("`" + command.getCommandSpec().qualifiedName() + " --help` tells how it is used.");
        err.flush();
        return ExitCodes.WRONG_USE;
    }

    private static int failed(Exception e, CommandLine command) {
        PrintWriter err = command.getErr();
        if (e instanceof Refusal refusal) {
            err.println("gusset: " + refusal.words());
            return ExitCodes.WRONG_USE;
        }
        err.println("gusset: a fault of this program, not of the draft: "
                + e.getClass().getSimpleName() + (e.getMessage() == null ? "" : " (" + e.getMessage() + ")"));
        err.println("Please report it with the draft and the measures that led to it.");
        return ExitCodes.OWN_FAULT;
    }
}
