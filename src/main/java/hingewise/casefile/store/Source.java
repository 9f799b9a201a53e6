package hingewise.casefile.store;

import hingewise.plain.Quoted;
import java.nio.file.Path;

/** The file a value came from, for saying where a problem lies. */
record Source(Path file) {
    String name() {
        return Quoted.line(file.toString());
    }

    CaseFileException problem(Json.Spot at, String what) {
        return new CaseFileException(name() + ":" + at.line() + ":" + at.column() + ": " + what);
    }

    CaseFileException problem(String what) {
        return new CaseFileException(name() + ": " + what);
    }
}
