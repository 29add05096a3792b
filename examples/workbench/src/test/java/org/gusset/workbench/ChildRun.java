package org.gusset.workbench;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A Java machine of its own that runs a class of the tests or of the program. */
final class ChildRun {
    private ChildRun() {}

    static ProcessBuilder of(List<String> before, Class<?> main, String... args) {
        List<String> command = new ArrayList<>(before);
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-Xshare:auto", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx128m", "-cp"));
        command.add(System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")));
        command.add(main.getName());
        command.addAll(List.of(args));
        return new ProcessBuilder(command);
    }

    /** True if a command of the system runs and ends with 0. */
    static boolean does(String... command) throws IOException, InterruptedException {
        try {
            return new ProcessBuilder(command)
                            .redirectErrorStream(true)
                            .redirectOutput(new File("/dev/null"))
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException e) {
            return false;
        }
    }
}
