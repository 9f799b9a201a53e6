package hingewise.costing.csv;

import hingewise.plain.Quoted;
import java.util.ArrayList;
import java.util.List;

/** Collects what is wrong with one file. */
final class Problems {
    /** More than anybody reads; the rest is counted. */
    private static final int LISTED_AT_MOST = 200;

    private final String file;
    private final List<String> listed = new ArrayList<>();
    private int unlisted;

    Problems(String file) {
        this.file = Quoted.line(file);
    }

    void add(String what) {
        list(file + ": " + what);
    }

    void add(int line, String what) {
        list(file + ":" + line + ": " + what);
    }

    private void list(String problem) {
        if (listed.size() < LISTED_AT_MOST) {
            listed.add(problem);
        } else {
            unlisted++;
        }
    }

    List<String> all() {
        List<String> all = new ArrayList<>(listed);
        if (unlisted > 0) {
            all.add(file + ": and " + unlisted + " more; mend these first");
        }
        return List.copyOf(all);
    }
}
