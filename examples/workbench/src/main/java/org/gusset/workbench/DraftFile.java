package org.gusset.workbench;

import java.util.OptionalLong;
import org.gusset.dsl.Source;

/** A draft's text and the short name that its drawings are called by. */
record DraftFile(Source source, String shortName) {
    private static final String ENDING = ".gusset";

    static DraftFile read(String written) {
        return of(written, FileBytes.read(written, "draft"));
    }

    /** The draft of a file with these bytes. */
    static DraftFile of(String written, byte[] bytes) {
        if (TextFile.binary(bytes)) {
            throw new Refusal("The draft `" + written + "` is not a text file.");
        }
        OptionalLong badLine = TextFile.firstBadLine(bytes);
        if (badLine.isPresent()) {
            throw new Refusal("The draft `" + written + "` is not UTF-8 text (line " + badLine.getAsLong()
                    + "); save it again with the encoding UTF-8.");
        }
        String file = String.valueOf(FileBytes.path(written).getFileName());
        String shortName = file.endsWith(ENDING) ? file.substring(0, file.length() - ENDING.length()) : file;
        return new DraftFile(Source.of(written, TextFile.text(bytes)), shortName);
    }
}
