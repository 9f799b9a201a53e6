package hingewise.wizard.model;

import hingewise.casefile.CaseFile;
import hingewise.casefile.store.CaseChangedException;
import hingewise.casefile.store.CaseFileStore;
import hingewise.casefile.store.Stored;
import hingewise.wizard.model.Saving.Status;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Keeps the open case in its file: after every answer, in order, never over somebody else's work. */
final class Keeper {
    private final Background background;
    private final Consumer<Saving> tell;
    private @Nullable Place place;
    private int sent;

    Keeper(Background background, Consumer<Saving> tell) {
        this.background = background;
        this.tell = tell;
    }

    /** The case has no file. */
    void noFile() {
        place = null;
        sent++;
        tell.accept(new Saving(Status.NO_FILE, "A practice copy, not saved"));
    }

    /** The case lies in this file. */
    void opened(Path file, Stored stored) {
        place = new Place(file, false, new AtomicReference<>(stored));
        sent++;
        tell.accept(saved(file));
    }

    /** Puts the case into a file that must not exist yet, and keeps it there. */
    void create(CaseFile caseFile, Path file) {
        place = new Place(file, false, new AtomicReference<>());
        keep(caseFile);
    }

    /** Puts the case into this file, whatever was there, and keeps it there. */
    void moveTo(CaseFile caseFile, Path file) {
        place = new Place(file, true, new AtomicReference<>());
        keep(caseFile);
    }

    /** The file of the case. */
    Optional<Path> file() {
        return Optional.ofNullable(place).map(Place::file);
    }

    /** Puts the case into its file. */
    void keep(CaseFile caseFile) {
        Place here = place;
        if (here == null) {
            return;
        }
        int ticket = ++sent;
        tell.accept(new Saving(Status.RUNNING, "Saving …"));
        background.run(
                () -> here.put(caseFile),
                done -> ifLast(ticket, saved(here.file())),
                failed -> ifLast(
                        ticket,
                        new Saving(
                                failed instanceof CaseChangedException ? Status.CONFLICT : Status.FAILED,
                                Words.of(failed))));
    }

    private void ifLast(int ticket, Saving saving) {
        if (ticket == sent) {
            tell.accept(saving);
        }
    }

    private static Saving saved(Path file) {
        return new Saving(Status.SAVED, "Saved in " + file.getFileName());
    }

    /**
     * Where the case lies.
     *
     * @param overwrite whether the first write may replace what is there
     * @param before what was last read or written; only the thread that keeps files touches it
     */
    private record Place(Path file, boolean overwrite, AtomicReference<@Nullable Stored> before) {
        Stored put(CaseFile caseFile) {
            Stored known = before.get();
            Stored stored = known != null
                    ? CaseFileStore.save(known, caseFile, file)
                    : overwrite ? CaseFileStore.write(caseFile, file) : CaseFileStore.create(caseFile, file);
            before.set(stored);
            return stored;
        }
    }
}
