package org.gusset.workbench;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.gusset.core.draft.Draft;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** The command line. Exit codes: 0 good, 1 the draft or a body has errors, 2 wrong use or unreadable files. */
@Command(
        addMethodSubcommands = false,
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
    private static final Map<String, Function<Bench, Object>> COMMANDS = commands();
    private static final Faults FAULTS = new Faults();

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    private Workbench() {}

    private static Map<String, Function<Bench, Object>> commands() {
        Map<String, Function<Bench, Object>> commands = new LinkedHashMap<>();
        commands.put("measures", MeasuresCommand::new);
        commands.put("draw", DrawCommand::new);
        commands.put("check", CheckCommand::new);
        commands.put("seams", SeamsCommand::new);
        commands.put("chalk", ChalkCommand::new);
        commands.put("lay", LayCommand::new);
        commands.put("sheet", SheetCommand::new);
        commands.put("values", ValuesCommand::new);
        commands.put("steps", StepsCommand::new);
        commands.put("lesson", LessonCommand::new);
        commands.put("watch", WatchCommand::new);
        commands.put("grade", GradeCommand::new);
        commands.put("sizes", SizesCommand::new);
        commands.put("format", FormatCommand::new);
        commands.put("lint", LintCommand::new);
        commands.put("stress", StressCommand::new);
        return Collections.unmodifiableMap(commands);
    }

    /** The version of the library and the program. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"gusset " + Draft.LIBRARY_VERSION};
        }
    }

    /** Runs the command line and ends the Java machine. */
    public static void main(String[] args) {
        Outlet outlet = new Outlet(new FileOutputStream(FileDescriptor.out));
        PrintWriter out = new PrintWriter(outlet, false, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        int code = run(Bench.standard(), out, err, args);
        out.flush();
        if (outlet.cutOff().isPresent()) {
            err.println("gusset: the output could not be written whole ("
                    + FileBytes.reason(outlet.cutOff().get()) + "). Send it somewhere else and run this again.");
            code = ExitCodes.WRONG_USE;
        }
        err.flush();
        System.exit(code);
    }

    static int run(Bench bench, PrintWriter out, PrintWriter err, String... words) {
        String[] args = askedForHelp(words);
        Function<Bench, Object> named = args.length == 0 ? null : COMMANDS.get(args[0]);
        // What is told of the program itself is read for help alone.
        CommandLine line = new CommandLine(
                named == null
                        ? CommandSpec.forAnnotatedObject(new Workbench())
                        : CommandSpec.create().name("gusset"));
        // One that is named is enough; help, and hints at what may be meant, need all.
        (named == null ? COMMANDS.values() : List.of(named)).forEach(c -> line.addSubcommand(c.apply(bench)));
        for (CommandLine command : line.getSubcommands().values()) {
            command.getCommandSpec().mixinStandardHelpOptions(true);
            command.getCommandSpec().versionProvider(new Version());
        }
        line.setOut(out);
        line.setErr(err);
        line.setParameterExceptionHandler(FAULTS);
        line.setExecutionExceptionHandler(FAULTS);
        try {
            return line.execute(args);
        } catch (StackOverflowError | OutOfMemoryError e) {
            err.println("gusset: this is more than the memory of the machine takes.");
            return ExitCodes.OWN_FAULT;
        }
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "a command is missing: " + names());
    }

    /** {@code help} and {@code help draw} are what people type who do not know the options yet. */
    private static String[] askedForHelp(String... words) {
        if (words.length == 0 || !words[0].equals("help")) {
            return words;
        } else if (words.length == 2 && COMMANDS.containsKey(words[1])) {
            return new String[] {words[1], "--help"};
        }
        return words.length == 1 ? new String[] {"--help"} : words;
    }

    private static String names() {
        List<String> names = List.copyOf(COMMANDS.keySet());
        int last = names.size() - 1;
        return String.join(", ", names.subList(0, last)) + " or " + names.get(last);
    }

    /** A class and no lambdas: the archive of classes holds none of these two interfaces, so that each start would make them. */
    private static final class Faults implements IParameterExceptionHandler, IExecutionExceptionHandler {
        @Override
        public int handleParseException(ParameterException e, String[] given) {
            return wrongUse(e);
        }

        @Override
        public int handleExecutionException(Exception e, CommandLine command, ParseResult result) {
            return failed(e, command);
        }
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
